//! Asks whether the amount of a line as purchased was weighed with its peel. The line stays as it is until that
//! is answered.

use leptos::prelude::*;

use super::{line_changed, line_of};
use crate::book::{Book, DrinkId, Edit, Key, Line, LineId, Stage};
use crate::drink::make::{asks_about_peel, without_peel};
use crate::foundation::measure::Dimension;
use crate::say;
use crate::ui::live::{press, text, when};
use crate::ui::state::AppState;

/// The sentence with its two answers; a piece is counted whole, so that there is one.
pub(super) fn peel(state: AppState, drink: DrinkId, line: LineId) -> AnyView {
    let this = move || state.book.with(|book| line_of(book, drink, line).copied());
    let asks = move || this().is_some_and(|line| state.book.with(|book| asks_about_peel(book, &line)));
    let in_pieces = move || this().is_some_and(|line| line.amount.unit.dimension() == Dimension::Count);
    let apply = move |edit: Option<Edit>| {
        // A prep that the ingredient has a yield for is never refused.
        let _ = edit.map(|edit| state.apply(say!(drinks::prep), edit));
    };
    let trimmed = move || {
        apply(state.book.with_untracked(|book| line_changed(book, drink, line, |it| it.stage = Stage::Trimmed)));
    };
    let with_peel = move || {
        let left = |book: &Book| without_peel(book, *line_of(book, drink, line)?).ok()?;
        apply(state.book.with_untracked(|book| {
            let left: Line = left(book)?;
            line_changed(book, drink, line, |it| *it = left)
        }));
    };
    when(asks, move || {
        let sentence = text(move || {
            let name = this().map(|line| state.book.with(|book| book.name(Key::Ingredient(line.ingredient))));
            let name = name.unwrap_or_default();
            if in_pieces() {
                say!(drinks::peel_asked_piece, name = name)
            } else {
                say!(drinks::peel_asked, name = name)
            }
        });
        let with_peel = when(
            move || !in_pieces(),
            move || {
                view! { <button class="button" on:click=press(with_peel)>{say!(drinks::weighed_with_peel)}</button> }
                    .into_any()
            },
        );
        let name = text(move || {
            let name = if in_pieces() { say!(drinks::count_trimmed) } else { say!(drinks::weighed_trimmed) };
            name.to_string()
        });
        view! {
            <div class="peel" role="group">
                <p>{sentence}</p>
                <p class="actions">{with_peel} <button class="button" on:click=press(trimmed)>{name}</button></p>
            </div>
        }
        .into_any()
    })
}
