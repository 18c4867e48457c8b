//! What is here, counted in rows: what is short first.

use leptos::prelude::*;

use super::found::found;
use super::said::said;
use super::tabs::Tabs;
use crate::app::route::Route;
use crate::book::{Book, Goods, Key, OnHand as Count};
use crate::counter::batch::on_shelf;
use crate::counter::on_hand::{Reach, Reached, put, reach};
use crate::drink::make::{Needs, needs};
use crate::foundation::jump::Kind;
use crate::foundation::measure::{Dimension, Unit, Wanted};
use crate::say;
use crate::ui::fields::{self, Entry, Search, asks};
use crate::ui::kept;
use crate::ui::live::{flag, rows, text, when};
use crate::ui::mend::fill_in;
use crate::ui::order;
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words;

/// Days after which a row says when it was counted. Our own choice, no source.
const OLD_AFTER: i32 = 7;

/// What is here.
#[component]
pub fn OnHand() -> impl IntoView {
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
    // As it was when the screen was opened: a row must not leave from under the caret.
    let at_first = needed.get_untracked();
    let urgent = move |key: &Key| {
        let reached = at_first.iter().find(|it| Key::from(it.goods) == *key).map(|it| it.reach);
        match reached {
            Some(Reach::Short(_)) => 0,
            Some(Reach::NotCounted | Reach::Unknown(_)) => 1,
            Some(Reach::Enough(_)) => 2,
            None => 3,
        }
    };
    let all = Memo::new(move |_| {
        let all: Vec<Key> =
            state.book.with(|book| order::ingredients(book).into_iter().chain(order::packagings(book)).collect());
        (0..4).flat_map(|rank| all.iter().copied().filter(|key| urgent(key) == rank).collect::<Vec<Key>>()).collect()
    });
    let search = kept::text("find", "");
    let (shown, rest) = found(state, search, all);
    let row = move |key| match goods(key) {
        Some(goods) => view! { <ShelfRow goods needed /> }.into_any(),
        None => ().into_any(),
    };
    let none = move || all.with(Vec::is_empty);
    view! {
        <h1>{say!(counter::on_hand)}</h1>
        <Tabs here=Route::OnHand />
        <Search label=say!(counter::search_stock) search=search />
        <p class="about">{say!(counter::stock_count_about)}</p>
        {when(none, || view! {
            <p class="hollow">{say!(counter::nothing_to_count)}</p>
        }.into_any())}
        <ul class="shelf across">{rows(shown, row)}</ul>
        {rest}
    }
}

fn goods(key: Key) -> Option<Goods> {
    match key {
        Key::Ingredient(id) => Some(Goods::Ingredient(id)),
        Key::Packaging(id) => Some(Goods::Packaging(id)),
        _ => None,
    }
}

#[component]
fn ShelfRow(goods: Goods, needed: Memo<Vec<Reached>>) -> impl IntoView {
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
    let commit =
        fields::optional_amount(say!(counter::stock_count), fields::Example::Amount, wanted, move |book, amount| {
            put(book, goods, amount.map(|amount| Count { amount, day: now }))
        });
    let value = text(move || count().map(|count| state.amount(count.amount)).unwrap_or_default());
    let note = text(move || {
        let count = count();
        let old = count.filter(|count| now.days_since(count.day) > OLD_AFTER);
        let age = old.map(|count| words::counted(count.day, now)).unwrap_or_default();
        let reach = needed.with(|needed| needed.iter().find(|it| it.goods == goods).map(|it| it.reach));
        let reach = reach.filter(|reach| !matches!(reach, Reach::Enough(_)));
        let today = reach.map(|reach| said(state, |words| words.reach_today(&reach))).unwrap_or_default();
        [today, age].into_iter().filter(|sentence| !sentence.is_empty()).collect::<Vec<_>>().join(" ")
    });
    let short = flag(move || {
        let is = |it: &Reached| it.goods == goods && matches!(it.reach, Reach::Short(_));
        needed.with(|needed| needed.iter().any(is))
    });
    let unknown = move || {
        let is = |it: &Reached| it.goods == goods && matches!(it.reach, Reach::Unknown(_));
        needed.with(|needed| needed.iter().any(is))
    };
    let name = state.book.with_untracked(|book| book.name(Key::from(goods)));
    view! {
        <li class="shelf-row" class:shelf-short=short>
            <Entry label=name asks=asks(Kind::Stock, goods, "on-hand") value=value units=fields::units(wanted) commit=commit note=note />
            {when(unknown, move || fill_in(Route::of_goods(goods)))}
        </li>
    }
}
