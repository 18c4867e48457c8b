//! How the numbers of a size came about, all on one page to read or to print.

use leptos::prelude::*;

use crate::app::route::Route;
use crate::book::{Key, OfferId};
use crate::say;
use crate::ui::how::drawn;
use crate::ui::live::{live, press, text};
use crate::ui::mend::stuck;
use crate::ui::parts::{Back, page_of};
use crate::ui::state::AppState;
use crate::working::{AtPrice, OfOffer, OfPackaged, OfPrice, Shown, Step, opened};

/// The workings of a drink at a size.
#[component]
pub fn WorkingPage(
    /// The offer.
    id: OfferId,
) -> impl IntoView {
    page_of(Key::Offer(id), Route::Offer(id), say!(working::this_size), move || view! { <Page id /> }.into_any())
}

/// The numbers that an owner asks for first; those that they come from follow by themselves, and
/// what is packaged ahead only where it is.
fn wanted(id: OfferId) -> [Shown; 7] {
    let of = |of| Shown::Offer(id, of);
    let asked = |price| of(OfOffer::At(AtPrice::Asked, price));
    let packaged = |of| Shown::Packaged(id, of);
    [
        of(OfOffer::Suggested),
        asked(OfPrice::Margin),
        asked(OfPrice::Contribution),
        asked(OfPrice::CustomerPays),
        packaged(OfPackaged::GiveawayCostInAYear),
        packaged(OfPackaged::Highest),
        packaged(OfPackaged::Room),
    ]
}

#[component]
fn Page(id: OfferId) -> impl IntoView {
    let state = AppState::here();
    let drink = text(move || state.book.with(|book| book.name(Key::Drink(id.drink))));
    let container = text(move || state.book.with(|book| book.name(Key::Container(id.container))));
    let workings = live(move || {
        let mut steps: Vec<(Shown, Step)> = Vec::new();
        state.book.with(|book| {
            state.ledger.with(|ledger| {
                for shown in wanted(id) {
                    for (shown, step) in opened(book, ledger, shown).unwrap_or_default() {
                        if steps.iter().all(|(before, _)| *before != shown) {
                            steps.push((shown, step));
                        }
                    }
                }
            });
        });
        let steps = steps.iter().map(|(_, step)| view! { <section class="section">{drawn(step, true)}</section> });
        steps.collect_view().into_any()
    });
    let print = move || {
        // A browser that cannot print does nothing.
        let _ = window().print();
    };
    view! {
        <Back to=Route::Offer(id) name=say!(working::this_size) />
        <h1>{drink} <span class="h1-size">{container}</span></h1>
        <p class="about">{say!(working::about)}</p>
        <p class="actions">
            <button class="button" on:click=press(print)>
                {say!(working::print)}
            </button>
        </p>
        {stuck(state, id)}
        {workings}
    }
}
