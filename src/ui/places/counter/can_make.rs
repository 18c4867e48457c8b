//! How many of each drink and size what is here makes, alone or together.

use leptos::prelude::*;

use super::best::{Best, best_of};
use super::found::found;
use super::said::said;
use super::tabs::Tabs;
use crate::app::mend::mended_at;
use crate::app::route::Route;
use crate::book::{DrinkId, Key, OfferId};
use crate::counter::on_hand::{Makes, NotMade, Wish, makes};
use crate::drink::make::Unmade;
use crate::foundation::measure::Exact;
use crate::say;
use crate::ui::fields::Search;
use crate::ui::kept;
use crate::ui::live::{live, press, rows, text, when};
use crate::ui::mend::fill_in;
use crate::ui::order;
use crate::ui::state::AppState;

/// A drink in a size, and how many of it can be made.
type Made = Memo<Vec<(OfferId, Result<Makes, NotMade>)>>;

/// How many of each drink and size what is here makes.
#[component]
pub fn CanMake() -> impl IntoView {
    let state = AppState::here();
    let made: Made = Memo::new(move |_| {
        state.book.with(|book| {
            state.ledger.with(|ledger| {
                let all = order::offers_on_cards(book).map(|offer| (offer, makes(book, ledger, offer)));
                all.filter(|(_, makes)| *makes != Err(NotMade::NothingCounted)).collect()
            })
        })
    });
    let drinks = Memo::new(move |_| {
        let mut drinks: Vec<Key> = Vec::new();
        made.with(|made| {
            for (offer, _) in made {
                if !drinks.contains(&Key::Drink(offer.drink)) {
                    drinks.push(Key::Drink(offer.drink));
                }
            }
        });
        drinks
    });
    let search = kept::text("find", "");
    let (shown, rest) = found(state, search, drinks);
    let left_out = text(move || without_counts(state, drinks));
    let together = RwSignal::new(Vec::<OfferId>::new());
    let wishes = Memo::new(move |_| {
        let wish = |offer: &OfferId| Wish { offer: *offer, least: Exact::ZERO, most: None };
        together.with(|together| together.iter().map(wish).collect::<Vec<Wish>>())
    });
    let row = move |key| match key {
        Key::Drink(id) => view! { <MakesRow id made together /> }.into_any(),
        _ => ().into_any(),
    };
    let none = move || drinks.with(Vec::is_empty);
    let any = move || !together.with(Vec::is_empty);
    view! {
        <h1>{say!(counter::can_make)}</h1>
        <Tabs here=Route::CanMake />
        {when(none, || view! {
            <p class="hollow">{say!(counter::count_to_see_drinks)}</p>
        }.into_any())}
        {when(move || !none(), move || view! {
            <Search label=say!(first::find_drink) search=search />
            <p class="about">{say!(counter::drinks_from_stock_about)}</p>
        }.into_any())}
        {when(any, move || view! {
            <section class="together">
                <h2>{say!(counter::best_plan_together)}</h2>
                <Best wishes best=best_of(state, wishes) fixed=None adopt=None />
            </section>
        }.into_any())}
        <ul class="can-make across">{rows(shown, row)}</ul>
        {rest}
        {when(move || !none(), move || view! { <p class="soft">{left_out}</p> }.into_any())}
    }
}

/// The drinks of the cards that are not listed, since nothing in them is counted.
fn without_counts(state: AppState, listed: Memo<Vec<Key>>) -> String {
    let sold = state.book.with(order::sold_drinks);
    let missing = sold.into_iter().filter(|key| listed.with(|listed| !listed.contains(key)));
    let names: Vec<String> = missing.map(|key| state.book.with(|book| book.name(key))).collect();
    if names.is_empty() { String::new() } else { say!(counter::drinks_without_counts, drinks = names.join(", ")) }
}

/// A drink: what runs out first, and how many of each of its sizes can be made.
#[component]
fn MakesRow(id: DrinkId, made: Made, together: RwSignal<Vec<OfferId>>) -> impl IntoView {
    let state = AppState::here();
    let name = text(move || state.book.with(|book| book.name(Key::Drink(id))));
    let note = text(move || {
        made.with(|made| {
            let sizes: Vec<_> = made.iter().filter(|(offer, _)| offer.drink == id).map(|(_, makes)| makes).collect();
            said(state, |words| words.makes(&sizes))
        })
    });
    let sizes = live(move || {
        let one = |(offer, makes): &(OfferId, Result<Makes, NotMade>)| size(state, *offer, makes, together);
        made.with(|made| made.iter().filter(|(offer, _)| offer.drink == id).map(one).collect_view()).into_any()
    });
    // The way to what is missing for the first size that cannot be made.
    let way = Memo::new(move |_| {
        let way = |(offer, makes): &(OfferId, Result<Makes, NotMade>)| match makes {
            Err(NotMade::Unmade(Unmade::Stuck(error))) if offer.drink == id => mended_at(error, id),
            _ => None,
        };
        made.with(|made| made.iter().find_map(way))
    });
    view! {
        <li class="can-make-row">
            <h2>{name}</h2>
            <p class="soft">{note}</p>
            {live(move || way.get().map(fill_in).into_any())}
            <div class="can-make-sizes">{sizes}</div>
        </li>
    }
}

fn size(
    state: AppState,
    offer: OfferId,
    makes: &Result<Makes, NotMade>,
    together: RwSignal<Vec<OfferId>>,
) -> impl IntoView + use<> {
    let number = match makes {
        // What nobody counted may run out before, yet none is none.
        Ok(makes) if makes.not_counted.is_empty() || makes.count.is_zero() => state.number(makes.count),
        Ok(makes) => say!(counter::at_most, number = state.number(makes.count)),
        Err(_) => say!(common::none).to_string(),
    };
    let (container, whole) =
        state.book.with(|book| (book.name(Key::Container(offer.container)), book.name(Key::Offer(offer))));
    let label = say!(counter::can_make_of, drink = whole, number = number.clone());
    let chosen = text(move || together.with(|together| together.contains(&offer)).to_string());
    let choose = move || {
        together.update(|together| {
            let before = together.len();
            together.retain(|of| *of != offer);
            if together.len() == before {
                together.push(offer);
            }
        });
    };
    view! {
        <button class="chip" aria-label=label aria-pressed=chosen on:click=press(choose)>
            {container} " " <b>{number}</b>
        </button>
    }
}
