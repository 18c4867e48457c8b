//! What is made on a day: what is short for it and what can be made all the same, the plan, and what it
//! takes, to tick off.

mod after;
mod delete;
mod plan;
mod short;
mod takes;

use leptos::prelude::*;

use crate::app::route::{Route, Sheet as Print};
use crate::book::{Batch, Key};
use crate::counter::batch::Sheet;
use crate::counter::on_hand::{Reach, Reached};
use crate::foundation::measure::{Date, Overflow};
use crate::say;
use crate::ui::fields::Hangs;
use crate::ui::live::{text, when};
use crate::ui::parts::{Back, page_of};
use crate::ui::places::sheets::needed;
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
                let (sheet, reach) = needed(book, ledger, batch)?;
                Ok(Takes { sheet, reach })
            })
        })
    })
}

/// Whether something of the day's plan is deducted from stock, so that what is short is short for the rest.
fn some_deducted(state: AppState, day: Date) -> bool {
    let is = |batch: &Batch| batch.makes.iter().any(|make| make.off_shelf.is_positive());
    state.book.with(|book| book.batch(day).is_some_and(is))
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
    let hangs = Hangs::new();
    // What stands in place of the answer says which number is to be mended.
    let stands = text(move || if hangs.is_unread() { String::new() } else { stands(state, day) });
    let not_counted = Memo::new(move |_| {
        let is = |it: &Reached| it.reach == Reach::NotCounted;
        takes.with(|takes| takes.as_ref().is_ok_and(|takes| takes.reach.iter().any(is)))
    });
    let needed = move || view! { <takes::TakesList day takes /> }.into_any();
    view! {
        <Back to=Route::Batches name=say!(counter::batches) />
        <h1>{words::batch(day)}</h1>
        <p class="about">{stands}</p>
        {hangs.answer(move || view! { <short::Short day takes /> }.into_any())}
        <p class="actions">
            {when(
                move || not_counted.get() && !hangs.is_unread(),
                || {
                    view! { <a class="button" href=Route::OnHand.address()>{say!(counter::count_items)}</a> }.into_any()
                },
            )}
            <a class="button" href=Route::Sheet(Print::Batch(day)).address()>{say!(counter::print_sheet)}</a>
        </p>
        <div class="panes batch-panes">
            <div class="pane">
                <plan::Plan day hangs />
            </div>
            <div class="pane">
                {when(move || !hangs.is_unread(), needed)}
                <after::After day hangs />
                <delete::Delete day />
            </div>
        </div>
    }
}
