//! The list of drinks.

use leptos::prelude::*;

use super::menu::menu;
use crate::app::route::{FirstPrice, Route};
use crate::book::{Book, DrinkId, Key, OfferId};
use crate::drink::ledger::{Ledger, OfferStatus};
use crate::say;
use crate::ui::fields::{Draft, Search};
use crate::ui::kept;
use crate::ui::live::{flag, press, text, when};
use crate::ui::order;
use crate::ui::parts::filter_chip;
use crate::ui::random::random;
use crate::ui::state::AppState;
use crate::words;

/// What of the list is shown.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Filter {
    All,
    Only(OfferStatus),
}

impl Filter {
    const ALL: [Filter; 4] = [
        Filter::All,
        Filter::Only(OfferStatus::UnderTarget),
        Filter::Only(OfferStatus::WithoutPrice),
        Filter::Only(OfferStatus::CannotCompute),
    ];

    fn name(self) -> &'static str {
        match self {
            Filter::All => say!(first::all_drinks),
            Filter::Only(status) => words::offer_status(status),
        }
    }

    /// Whether a size is shown.
    pub fn takes(self, ledger: &Ledger, offer: OfferId) -> bool {
        match self {
            Filter::All => true,
            Filter::Only(wanted) => ledger.get(offer).is_some_and(|result| OfferStatus::from(result) == wanted),
        }
    }

    fn written(self) -> String {
        Filter::ALL.iter().position(|it| *it == self).unwrap_or(0).to_string()
    }

    fn read(text: &str) -> Option<Filter> {
        Filter::ALL.get(text.parse::<usize>().ok()?).copied()
    }
}

/// Every drink with its sizes.
#[component]
pub fn List() -> impl IntoView {
    let state = AppState::here();
    let search = kept::text("search", "");
    let filter = kept::chosen("filter", Filter::All, Filter::written, Filter::read);
    let worst = kept::flag("worst", false);
    let listed = Memo::new(move |_| {
        let wanted = order::lower_case(&search.get());
        let filter = filter.get();
        let worst = worst.get() || filter == Filter::Only(OfferStatus::UnderTarget);
        state.book.with(|book| {
            state.ledger.with(|ledger| {
                let listed = listed(book, ledger, &wanted, filter);
                if worst { order::worst_first(book, ledger, listed) } else { listed }
            })
        })
    });
    let count = move |filter: Filter| {
        state.ledger.with(|ledger| ledger.offers().filter(|(offer, _)| filter.takes(ledger, *offer)).count())
    };
    let chip = move |this: Filter| {
        let pressed = text(move || (filter.get() == this).to_string());
        let needless = flag(move || this != Filter::All && filter.get() != this && count(this) == 0);
        let count = text(move || count(this).to_string());
        filter_chip(this.name(), pressed, needless, count, move || filter.set(this))
    };
    let empty = move || state.book.with(|book| book.drinks().next().is_none());
    let none = text(move || {
        if listed.with(Vec::is_empty) && !empty() { say!(first::no_drink_matches).to_string() } else { String::new() }
    });
    let by_margin = text(move || worst.get().to_string());
    view! {
        <h1>{say!(first::drinks)}</h1>
        {when(empty, || view! { <FirstSteps /> }.into_any())}
        {when(
            move || !empty(),
            move || {
                view! {
                    <div class="tools">
                        <Search label=say!(first::find_drink) search />
                        <div class="chips" role="group" aria-label=say!(first::show_drinks)>
                            {Filter::ALL.into_iter().map(chip).collect_view()}
                            <button class="chip" aria-pressed=by_margin on:click=press(move || worst.update(|it| *it = !*it))>
                                {say!(first::lowest_first)}
                            </button>
                        </div>
                    </div>
                }
                    .into_any()
            },
        )}
        <p class="hollow">{none}</p>
        {menu(state, listed, filter)}
        <p class="actions">
            <button class="main" on:click=press(move || add_drink(state))>
                {say!(first::add_drink)}
            </button>
            <a class="button" href="#/print/prices">
                {say!(first::price_sheet)}
            </a>
        </p>
    }
}

fn listed(book: &Book, ledger: &Ledger, wanted: &str, filter: Filter) -> Vec<Key> {
    let takes = |key: &Key| match key {
        Key::Drink(id) => {
            let named = wanted.is_empty() || order::lower_case(&book.name(*key)).contains(wanted);
            named && (filter == Filter::All || book.offers_of(*id).any(|it| filter.takes(ledger, it.id())))
        }
        _ => false,
    };
    order::drinks(book).into_iter().filter(takes).collect()
}

/// What an empty list leads to: the first price.
#[component]
fn FirstSteps() -> impl IntoView {
    let way = Route::FirstPrice(FirstPrice::of(DrinkId::from_random(random())));
    view! {
        <div class="teach">
            <h2>{say!(first::first_price_steps)}</h2>
            <p>{say!(first::price_first_drink_about)}</p>
            <p>
                <a class="main" href=way.address()>
                    {say!(first::price_first_drink)}
                </a>
            </p>
        </div>
    }
}

fn add_drink(state: AppState) {
    let id = DrinkId::from_random(random());
    Draft::of_record(Key::Drink(id)).begin_on(state, Route::Drink(id));
}
