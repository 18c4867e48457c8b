//! What is made on a day: the plan, what it takes to tick off, and its best use where what is here
//! does not reach.

mod after;
mod delete;
mod plan;
mod takes;

use leptos::prelude::*;

use super::best::Best;
use super::said::said;
use crate::app::route::{Route, Sheet as Print};
use crate::book::{Batch, Book, Edit, Key, OfferId};
use crate::counter::batch::{Sheet, on_shelf, sheet, takes_up};
use crate::counter::on_hand::{Reach, Reached, Wish, reach};
use crate::drink::make::{Needs, needs};
use crate::foundation::measure::{Date, Exact, Overflow};
use crate::say;
use crate::ui::fields::Hangs;
use crate::ui::live::{live, press, text, trouble, when};
use crate::ui::parts::{Back, Section, page_of};
use crate::ui::state::AppState;
use crate::words;

/// What is made on a day.
#[component]
pub fn BatchPage(
    /// The day.
    day: Date,
) -> impl IntoView {
    page_of(Key::Batch(day), Route::Batches, say!(counter::batches), move || view! { <Page day /> }.into_any())
}

/// What a batch takes, and whether what is here reaches.
#[derive(Clone, Debug, PartialEq)]
struct Takes {
    sheet: Sheet,
    reach: Vec<Reached>,
}

/// What a batch takes, following the book.
fn takes(state: AppState, day: Date) -> Memo<Result<Takes, Overflow>> {
    Memo::new(move |_| {
        state.book.with(|book| {
            state.ledger.with(|ledger| {
                let none = Batch { day, makes: Vec::new(), ready: Vec::new() };
                let batch = book.batch(day).unwrap_or(&none);
                let needs: Needs = needs(book, ledger, &mut on_shelf(batch)?.into_iter())?;
                Ok(Takes { sheet: sheet(book, ledger, batch)?, reach: reach(book, &needs)? })
            })
        })
    })
}

/// How many are to be made and filled on a day, following the book.
pub fn stands(state: AppState, day: Date) -> String {
    let said = |batch: &Batch| words::batch_stands(batch, &state.speaker.get());
    let stands = state.book.with(|book| book.batch(day).map(said));
    stands.map(|said| said.unwrap_or_else(words::overflow)).unwrap_or_default()
}

#[component]
fn Page(day: Date) -> impl IntoView {
    let state = AppState::here();
    let takes = takes(state, day);
    let unmade = move || {
        live(move || {
            let left_out =
                takes.with(|takes| takes.as_ref().map(|takes| takes.sheet.left_out.clone()).unwrap_or_default());
            let one = |(offer, why)| {
                let sentence = said(state, |words| words.unmade(offer, &why));
                view! { <li class="trouble">{sentence}</li> }
            };
            left_out.into_iter().map(one).collect_view().into_any()
        })
    };
    let is_short = move |it: &Reached| matches!(it.reach, Reach::Short(_));
    let short =
        Memo::new(move |_| takes.with(|takes| takes.as_ref().is_ok_and(|takes| takes.reach.iter().any(is_short))));
    let overflow = move || takes.with(|takes| takes.as_ref().err().map(|error| words::overflow(*error)));
    let hangs = Hangs::new();
    let stands = text(move || if hangs.is_unread() { hangs.sentence() } else { stands(state, day) });
    let answer = move || {
        view! {
            <ul class="steps">{unmade()}</ul>
            {trouble(overflow)}
            {when(move || short.get(), move || view! { <NewCount day /> }.into_any())}
            <takes::TakesList day takes />
        }
        .into_any()
    };
    view! {
        <Back to=Route::Batches name=say!(counter::batches) />
        <h1>{words::batch(day)}</h1>
        <p class="about">{stands}</p>
        <p class="actions">
            <a class="button" href=Route::Sheet(Print::Batch(day)).address()>{say!(counter::print_sheet)}</a>
        </p>
        <plan::Plan day hangs />
        {hangs.answer(answer)}
        <after::After day hangs />
        <delete::Delete day />
    }
}

/// So many of each drink beside those whose ingredients are off the shelf already.
fn made_of_the_rest(book: &Book, day: Date, counts: Vec<(OfferId, Exact)>) -> Option<Edit> {
    let off_shelf = |offer| {
        let makes = book.batch(day).map(|batch| batch.makes.as_slice()).unwrap_or_default();
        makes.iter().find(|make| make.offer() == offer).map_or(Exact::ZERO, |make| make.off_shelf)
    };
    let all = counts.into_iter().map(|(offer, units)| (offer, units.plus(off_shelf(offer)).unwrap_or(units)));
    takes_up(book, day, &mut all.into_iter())
}

/// The best use of what is here, where it does not reach.
#[component]
fn NewCount(day: Date) -> impl IntoView {
    let state = AppState::here();
    let asked = RwSignal::new(false);
    let fixed = RwSignal::new(Vec::<OfferId>::new());
    let wishes = Memo::new(move |_| {
        state.book.with(|book| {
            let Some(batch) = book.batch(day) else { return Vec::new() };
            let wish = |(offer, units): (OfferId, Exact)| {
                let least = if fixed.with(|fixed| fixed.contains(&offer)) { units } else { Exact::ZERO };
                Wish { offer, least, most: Some(units) }
            };
            on_shelf(batch).unwrap_or_default().into_iter().map(wish).collect()
        })
    });
    let refused = RwSignal::new(None::<String>);
    let adopt = Callback::new(move |counts: Vec<(OfferId, Exact)>| {
        let edit = state.book.with_untracked(|book| made_of_the_rest(book, day, counts));
        refused.set(edit.and_then(|edit| state.apply(say!(counter::use_best_plan), edit).err()));
    });
    let ask = move || {
        view! {
            <p class="actions">
                <button class="main" on:click=press(move || asked.set(true))>
                    {say!(counter::find_best_plan)}
                </button>
            </p>
        }
        .into_any()
    };
    view! {
        <Section heading=say!(counter::not_enough_on_hand)>
            <p class="about">{say!(counter::not_enough_about)}</p>
            {when(move || !asked.get(), ask)}
            {when(move || asked.get(), move || view! { <Best wishes fixed=Some(fixed) adopt=Some(adopt) /> }.into_any())}
            {trouble(move || refused.get())}
        </Section>
    }
}
