//! The fill target of a drink that is packaged ahead of sale, from its weighings.

mod answer;
mod rules;
mod weighings;

use leptos::prelude::*;

use crate::book::{Accepted, Book, Edit, FillRule, Filling, Offer, OfferId, Record, Settings};
use crate::drink::label::Law;
use crate::foundation::measure::System;
use crate::say;
use crate::ui::fields::Hangs;
use crate::ui::live::{live, press};
use crate::ui::parts::Section;
use crate::ui::state::AppState;
use answer::Answer;
use rules::Rules;
use weighings::Weighings;

/// A start to change: the rule of the book's law, no weighing yet.
fn first(settings: &Settings) -> Filling {
    let rule = match Law::of(settings) {
        Law::UnitedStates => FillRule::UnitedStates,
        Law::European => FillRule::EuropeanOrBritish,
    };
    let accepted = match settings.units {
        System::Metric => Accepted::TwoPercent,
        System::UsCustomary | System::Imperial => Accepted::TwoAndAHalfPercent,
    };
    Filling::new(rule, accepted)
}

fn filling(book: &Book, id: OfferId) -> Option<&Filling> {
    book.offer(id)?.filling.as_ref()
}

/// The edit that changes the filling of an offer. Returns `None` if it has none.
fn changed(book: &Book, id: OfferId, change: impl FnOnce(&mut Filling)) -> Option<Edit> {
    let mut filling = filling(book, id)?.clone();
    change(&mut filling);
    with(book, id, Some(filling))
}

fn with(book: &Book, id: OfferId, filling: Option<Filling>) -> Option<Edit> {
    Some(Edit::Put(Record::Offer(Offer { filling, ..book.offer(id)?.clone() })))
}

/// The fill target of a packaged drink.
#[component]
pub fn FillTarget(
    /// The offer.
    id: OfferId,
) -> impl IntoView {
    let state = AppState::here();
    let packaged = Memo::new(move |_| state.book.with(|book| filling(book, id).is_some()));
    let set = move |filling: Option<Filling>, step: &'static str| {
        let edit = state.book.with_untracked(|book| with(book, id, filling));
        // A filling without weighings holds, and so does none; neither is refused.
        let _ = edit.map(|edit| state.apply(step, edit));
    };
    let hangs = Hangs::new();
    let target = live(move || {
        if packaged.get() {
            view! {
                {hangs.answer(move || view! { <Answer id /> }.into_any())}
                <Rules id hangs />
                <Weighings id hangs />
                <p class="actions">
                    <button class="quiet" on:click=press(move || set(None, say!(labels::remove_fill_target)))>
                        {say!(labels::remove_fill_target)}
                    </button>
                </p>
            }
            .into_any()
        } else {
            let start = move || {
                set(Some(state.book.with_untracked(|book| first(book.settings()))), say!(labels::add_fill_target));
            };
            view! {
                <p class="actions">
                    <button class="button" on:click=press(start)>
                        {say!(labels::add_fill_target)}
                    </button>
                </p>
            }
            .into_any()
        }
    });
    view! {
        <Section heading=say!(labels::fill_target)>
            {target}
            <p class="about">
                {say!(labels::fill_target_about)}
            </p>
        </Section>
    }
}
