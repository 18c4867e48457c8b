//! What is here, and how many drinks it makes.

use leptos::prelude::*;

use super::best::Best;
use super::said::said;
use super::tabs::Tabs;
use crate::app::route::Route;
use crate::book::{Book, Goods, Key, OfferId, OnHand as Count};
use crate::counter::batch::on_shelf;
use crate::counter::on_hand::{Makes, NotMade, Reach, Reached, Wish, makes, put, reach};
use crate::drink::make::{Needs, needs};
use crate::foundation::measure::{Dimension, Exact, Unit, Wanted};
use crate::say;
use crate::ui::fields::{self, Entry, Hangs, Search, Tick};
use crate::ui::live::{flag, rows, text, when};
use crate::ui::order;
use crate::ui::parts::Section;
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words;

/// Rows shown at once: more fields would keep a phone waiting.
const SHOWN: usize = 40;

/// What is here, and how many drinks it makes.
#[component]
pub fn OnHand() -> impl IntoView {
    let hangs = Hangs::new();
    view! {
        <h1>{say!(counter::on_hand)}</h1>
        <Tabs here=Route::OnHand />
        <Shelf hangs />
        {hangs.answer(|| view! { <WhatItMakes /> }.into_any())}
    }
}

/// Those whose name has the letters, and how many of them are not shown.
fn found(state: AppState, search: RwSignal<String>, all: Memo<Vec<Key>>) -> (Memo<Vec<Key>>, Signal<String>) {
    let matching = Memo::new(move |_| -> Vec<Key> {
        let wanted = order::lower_case(&search.get());
        let fits = |book: &Book, key: &Key| order::lower_case(&book.name(*key)).contains(&wanted);
        state.book.with(|book| all.get().into_iter().filter(|key| fits(book, key)).collect())
    });
    let shown = Memo::new(move |_| matching.with(|keys| keys.iter().take(SHOWN).copied().collect()));
    let rest = text(move || match matching.with(Vec::len).saturating_sub(SHOWN) {
        0 if matching.with(Vec::is_empty) && !search.with(String::is_empty) => say!(counter::no_matches).to_string(),
        0 => String::new(),
        more => say!(counter::more_not_shown, more = more),
    });
    (shown, rest)
}

fn goods(key: Key) -> Option<Goods> {
    match key {
        Key::Ingredient(id) => Some(Goods::Ingredient(id)),
        Key::Packaging(id) => Some(Goods::Packaging(id)),
        _ => None,
    }
}

/// What is counted: what today's batch needs first.
#[component]
fn Shelf(hangs: Hangs) -> impl IntoView {
    let state = AppState::here();
    let now = today();
    let needed = Memo::new(move |_| -> Vec<Reached> {
        state.book.with(|book| {
            let Some(batch) = book.batch(now) else { return Vec::new() };
            let takes = on_shelf(batch)
                .and_then(|counts| state.ledger.with(|ledger| needs(book, ledger, &mut counts.into_iter())));
            takes.and_then(|takes: Needs| reach(book, &takes)).unwrap_or_default()
        })
    });
    let all = Memo::new(move |_| {
        state.book.with(|book| {
            let all: Vec<Key> = order::ingredients(book).into_iter().chain(order::packagings(book)).collect();
            let first = |key: &Key| needed.with(|needed| needed.iter().any(|it| Key::from(it.goods) == *key));
            let (mut keys, rest): (Vec<Key>, Vec<Key>) = all.into_iter().partition(first);
            keys.extend(rest);
            keys
        })
    });
    let search = RwSignal::new(String::new());
    let (shown, rest) = found(state, search, all);
    let row = move |key| match goods(key) {
        Some(goods) => view! { <ShelfRow goods needed hangs /> }.into_any(),
        None => ().into_any(),
    };
    let none = move || all.with(Vec::is_empty);
    view! {
        <Section
            heading=say!(counter::stock_count)
            about=say!(counter::stock_count_about)
        >
            <Search label=say!(counter::search_stock) search=search />
            {when(none, || view! {
                <p class="hollow">{say!(counter::nothing_to_count)}</p>
            }.into_any())}
            <ul class="shelf">{rows(shown, row)}</ul>
            <p class="soft">{rest}</p>
        </Section>
    }
}

#[component]
fn ShelfRow(goods: Goods, needed: Memo<Vec<Reached>>, hangs: Hangs) -> impl IntoView {
    let state = AppState::here();
    let now = today();
    let count = move || state.book.with(|book| book.on_hand(goods));
    let wanted = move |book: &Book| {
        let now = book.on_hand(goods).map(|count| count.amount.unit);
        let bought = || book.packs(goods).first().map(|pack| pack.contents.unit);
        let unit = now.or_else(bought).unwrap_or(book.settings().units.buying_weight_unit());
        match goods {
            Goods::Ingredient(_) => {
                Wanted { dimensions: &[Dimension::Mass, Dimension::Volume, Dimension::Count], unit }
            }
            Goods::Packaging(_) => Wanted { dimensions: &[Dimension::Count], unit: Unit::Piece },
        }
    };
    let commit = fields::optional_amount(say!(counter::stock_count), wanted, move |book, amount| {
        put(book, goods, amount.map(|amount| Count { amount, day: now }))
    });
    let value = text(move || count().map(|count| state.amount(count.amount)).unwrap_or_default());
    let note = text(move || {
        let age = count().map(|count| words::counted(count.day, now)).unwrap_or_default();
        let reach = needed.with(|needed| needed.iter().find(|it| it.goods == goods).map(|it| it.reach));
        let today = reach.map(|reach| said(state, |words| words.reach_today(&reach))).unwrap_or_default();
        [age, today].into_iter().filter(|sentence| !sentence.is_empty()).collect::<Vec<_>>().join(" ")
    });
    let short = flag(move || {
        let is = |it: &Reached| it.goods == goods && matches!(it.reach, Reach::Short(_));
        needed.with(|needed| needed.iter().any(is))
    });
    let name = state.book.with_untracked(|book| book.name(Key::from(goods)));
    view! {
        <li class="shelf-row" class:shelf-short=short>
            <Entry label=name hangs value=value units=fields::units(wanted) commit=commit note=note />
        </li>
    }
}

/// How many of each drink and size it makes, alone or together.
#[component]
fn WhatItMakes() -> impl IntoView {
    let state = AppState::here();
    let made = Memo::new(move |_| -> Vec<(OfferId, Result<Makes, NotMade>)> {
        state.book.with(|book| {
            state.ledger.with(|ledger| {
                let all = order::offers_on_cards(book).map(|offer| (offer, makes(book, ledger, offer)));
                all.filter(|(_, makes)| *makes != Err(NotMade::NothingCounted)).collect()
            })
        })
    });
    let all = Memo::new(move |_| made.with(|made| made.iter().map(|(offer, _)| Key::Offer(*offer)).collect()));
    let search = RwSignal::new(String::new());
    let (shown, rest) = found(state, search, all);
    let together = RwSignal::new(Vec::<OfferId>::new());
    let wishes = Memo::new(move |_| {
        let wish = |offer: &OfferId| Wish { offer: *offer, least: Exact::ZERO, most: None };
        together.with(|together| together.iter().map(wish).collect::<Vec<Wish>>())
    });
    let row = move |key| match key {
        Key::Offer(offer) => view! { <MakesRow offer made together /> }.into_any(),
        _ => ().into_any(),
    };
    let none = move || all.with(Vec::is_empty);
    let any = move || !together.with(Vec::is_empty);
    view! {
        <Section
            heading=say!(counter::drinks_from_stock)
            about=say!(counter::drinks_from_stock_about)
        >
            {when(none, || view! {
                <p class="hollow">{say!(counter::count_to_see_drinks)}</p>
            }.into_any())}
            {when(any, move || view! {
                <div class="together">
                    <h3>{say!(counter::best_plan_together)}</h3>
                    <Best wishes fixed=None adopt=None />
                </div>
            }.into_any())}
            {when(move || !none(), move || view! { <Search label=say!(first::find_drink) search=search /> }.into_any())}
            <ul class="takes">{rows(shown, row)}</ul>
            <p class="soft">{rest}</p>
        </Section>
    }
}

#[component]
fn MakesRow(
    offer: OfferId,
    made: Memo<Vec<(OfferId, Result<Makes, NotMade>)>>,
    together: RwSignal<Vec<OfferId>>,
) -> impl IntoView {
    let state = AppState::here();
    let name = text(move || state.book.with(|book| book.name(Key::Offer(offer))));
    let alone = move || made.with(|made| made.iter().find(|(of, _)| *of == offer).map(|(_, makes)| makes.clone()));
    let count = text(move || match alone() {
        Some(Ok(makes)) => state.number(makes.count),
        _ => say!(common::none).to_string(),
    });
    let first = text(move || alone().map(|makes| said(state, |words| words.makes(&makes))).unwrap_or_default());
    let done = flag(move || together.with(|together| together.contains(&offer)));
    let set = move |chosen: bool| {
        together.update(|together| {
            together.retain(|of| *of != offer);
            if chosen {
                together.push(offer);
            }
        });
    };
    view! {
        <li class="take makes-row">
            <Tick done=done set=set>
                {name}
            </Tick>
            <b class="take-piece">{count}</b>
            <p class="soft">{first}</p>
        </li>
    }
}
