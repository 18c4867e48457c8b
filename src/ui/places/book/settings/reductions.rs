//! What of the sales brings less than the menu price.

use leptos::prelude::*;

use super::{Put, Setting, changed, percent, small_share};
use crate::book::Settings;
use crate::foundation::measure::Share;
use crate::say;
use crate::ui::fields::{self, Entry, Example};
use crate::ui::live::text;
use crate::ui::parts::{Fold, is_wide};
use crate::ui::state::AppState;

/// Discounts, free drinks, and drinks that are marked down late in the day.
pub(super) fn reductions(state: AppState) -> AnyView {
    let to = percent(
        state,
        say!(book::marked_down_to),
        Example::MarkedDownTo,
        |it| it.reductions.marked_down_to,
        |it, share| it.reductions.marked_down_to = share,
    );
    view! {
        <Fold name=say!(book::below_menu_price) figure=text(move || taken(state)) open=is_wide()>
            <p class="about">{say!(book::below_menu_price_about)}</p>
            <div class="fields">
                {share(
                    state,
                    say!(book::discounts),
                    "discounts",
                    Example::Discounts,
                    |example| say!(book::discounts_about, example = example),
                    |it| it.reductions.discounts,
                    |it, share| it.reductions.discounts = share,
                )}
                {share(
                    state,
                    say!(book::free_drinks),
                    "free",
                    Example::FreeDrinks,
                    |example| say!(book::free_drinks_about, example = example),
                    |it| it.reductions.free,
                    |it, share| it.reductions.free = share,
                )}
                {share(
                    state,
                    say!(book::marked_down),
                    "marked-down",
                    Example::MarkedDown,
                    |example| say!(book::marked_down_about, example = example),
                    |it| it.reductions.marked_down,
                    |it, share| it.reductions.marked_down = share,
                )}
                <Entry
                    label=say!(book::marked_down_to)
                    unit="%"
                    note=note(state, Example::MarkedDownTo, |example| say!(book::marked_down_to_about, example = example))
                    value=to.value
                    commit=to.commit
                />
            </div>
        </Fold>
    }
    .into_any()
}

/// What is taken, each by its name: "Discounts 2%, Free drinks 1%".
fn taken(state: AppState) -> String {
    let reductions = state.book.with(|book| book.settings().reductions);
    let all = [
        (say!(book::discounts), reductions.discounts),
        (say!(book::free_drinks), reductions.free),
        (say!(book::marked_down), reductions.marked_down),
    ];
    let taken = all.into_iter().filter(|(_, share)| !share.is_zero());
    let said = taken.map(|(name, share)| [name, &state.speaker.get().short_percent(share, 1)].join(" "));
    let said: Vec<String> = said.collect();
    if said.is_empty() { say!(common::none).to_string() } else { said.join(", ") }
}

/// A share that most shops leave at zero: its field is then empty.
fn share(
    state: AppState,
    label: &'static str,
    of: &'static str,
    example: Example,
    about: fn(String) -> String,
    get: fn(&Settings) -> Share,
    put: Put<Share>,
) -> AnyView {
    let value = text(move || state.percent_if_any(state.book.with(|book| get(book.settings()))));
    let commit = fields::optional_percent(label, example, move |book, share| {
        changed(book, |it| put(it, share.unwrap_or(Share::ZERO)))
    });
    small_share(label, of, note(state, example, about), Setting { value, commit })
}

/// What is asked for, with an example in percent.
fn note(state: AppState, example: Example, about: fn(String) -> String) -> Signal<String> {
    text(move || about(example.in_percent(&state.speaker.get())))
}
