//! The target margin, and how prices end.

use std::sync::Arc;

use leptos::prelude::*;

use super::{Setting, changed, choice, part, percent, shown};
use crate::book::{self, CostBasis, Key};
use crate::foundation::jump::Kind;
use crate::foundation::measure::read_endings;
use crate::say;
use crate::ui::fields::{Commit, Entry, Example, asks};
use crate::ui::live::text;
use crate::ui::state::AppState;
use crate::words;

/// The target margin, what it is figured on, and how prices end.
pub(super) fn target(state: AppState) -> AnyView {
    let bases = CostBasis::ALL.iter().map(|basis| (words::cost_basis(*basis).to_string(), *basis)).collect();
    let Setting { value, commit } = percent(
        state,
        say!(common::target_margin),
        Example::TargetMargin,
        |it| it.target,
        |it, share| it.target = share,
    );
    let ends = |it: &book::Settings, state: AppState| {
        it.endings.iter().map(|ending| state.plain_money(*ending)).collect::<Vec<_>>().join("  ")
    };
    let inside = view! {
            <div class="fields">
                <Entry
                    label=say!(common::target_margin)
                    asks=asks(Kind::Margin, Key::Settings, "target")
                    unit="%"
                    large=true
                    value
                    commit
                />
                {choice(
                    state,
                    say!(book::margin_figured_on),
                    bases,
                    |it, _| words::cost_basis(it.cost_basis).to_string(),
                    |it, basis| it.cost_basis = basis,
                )}
                <Entry
                    label=say!(book::price_endings)
                    example=say!(book::any_ending)
                    note=text(move || say!(book::price_endings_about, example = Example::PriceEndings.said(&state.speaker.get())))
                    letters=true
                    value=shown(state, ends)
                    commit=endings(state)
                />
            </div>
    };
    let figure = move || state.percent(state.book.with(|book| book.settings().target));
    part(say!(common::target_margin), words::target_margin(), figure, inside.into_any())
}

/// Reads several endings: ".50 .95".
fn endings(state: AppState) -> Commit {
    Arc::new(move |text, session| {
        let digits = state.book.with_untracked(|book| book.settings().currency.digits());
        let speaker = state.speaker.get_untracked();
        let endings = read_endings(text, digits, speaker.style());
        let endings = endings.map_err(|error| words::read_error(&error, &Example::PriceEndings.said(&speaker)))?;
        let edit = state.book.with_untracked(|book| changed(book, |it| it.endings = endings));
        edit.map_or(Ok(()), |edit| state.apply_in(say!(book::price_endings), edit, Some(session)))
    })
}
