//! Which lines go straight into the glass: nothing of them stays in the press or jug, and no air is beaten in.

use leptos::prelude::*;

use super::{line_changed, line_of};
use crate::book::{Book, Drink, DrinkId, Key, Line, LineId};
use crate::say;
use crate::ui::fields::Tick;
use crate::ui::live::{flag, parts, text, when};
use crate::ui::parts::Fold;
use crate::ui::state::AppState;

/// A tick for each line, on a fold that names those that are ticked. It is there where it makes a difference:
/// where something stays behind, air is beaten in, or a line is ticked.
pub fn in_glass(state: AppState, id: DrinkId) -> AnyView {
    let counts = move || {
        let differs =
            |it: &Drink| !it.process_loss.is_zero() || !it.air.is_zero() || it.lines.iter().any(|it| it.in_glass);
        state.book.with(|book| book.drink(id).is_some_and(|it| !it.lines.is_empty() && differs(it)))
    };
    when(counts, move || {
        let names = text(move || {
            state.book.with(|book| {
                let name = |line: &Line| book.name(Key::Ingredient(line.ingredient));
                let lines = book.drink(id).into_iter().flat_map(|it| &it.lines);
                let names: Vec<String> = lines.filter(|it| it.in_glass).map(name).collect();
                if names.is_empty() { say!(common::none).to_string() } else { names.join(", ") }
            })
        });
        // Ice says by itself where it is.
        let lines = move || {
            let of = |book: &Book| -> Option<Vec<u64>> {
                let lines = book.drink(id)?.lines.iter().filter(|it| it.ice.is_none());
                Some(lines.map(|it| it.id.number()).collect())
            };
            state.book.with(of).unwrap_or_default()
        };
        view! {
            <Fold name=say!(drinks::in_glass) figure=names>
                <p class="about">{say!(drinks::in_glass_about)}</p>
                {parts(lines, move |line| tick(state, id, LineId::from_random(line)))}
            </Fold>
        }
        .into_any()
    })
}

fn tick(state: AppState, id: DrinkId, line: LineId) -> AnyView {
    let done = flag(move || state.book.with(|book| line_of(book, id, line).is_some_and(|line| line.in_glass)));
    let set = move |on: bool| {
        let edit = state.book.with_untracked(|book| line_changed(book, id, line, |it| it.in_glass = on));
        // Neither is ever refused.
        let _ = edit.map(|edit| state.apply(say!(drinks::in_glass), edit));
    };
    let name = text(move || {
        let name = |book: &Book| Some(book.name(Key::Ingredient(line_of(book, id, line)?.ingredient)));
        state.book.with(name).unwrap_or_default()
    });
    view! { <Tick done set>{name}</Tick> }.into_any()
}
