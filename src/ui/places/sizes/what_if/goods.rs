//! Ingredients and packaging bought in another pack, or at another price.

use std::sync::Arc;

use leptos::prelude::*;

use super::Trying;
use crate::book::{Book, Goods, Key};
use crate::foundation::jump::Kind;
use crate::foundation::measure::Exact;
use crate::say;
use crate::ui::fields::{Choice, Entry, Take, asks, tried_number};
use crate::ui::live::{live, text};
use crate::ui::order;
use crate::ui::state::AppState;
use crate::words;
use crate::words::Example;

/// Goods to choose from, and the fields of those that were chosen.
#[component]
pub fn GoodsTried(trying: Trying) -> impl IntoView {
    let state = AppState::here();
    let chosen = RwSignal::new(Vec::<Goods>::new());
    let options = Signal::derive(move || {
        state.book.with(|book| {
            let taken = |goods: &Goods| chosen.with(|chosen| chosen.contains(goods));
            let free = used(trying, book).into_iter().filter(|key| goods_of(*key).is_some_and(|it| !taken(&it)));
            let mut options = order::options(book, free.collect());
            options.insert(0, (String::new(), say!(sales::choose_goods).to_string()));
            options
        })
    });
    let choose = Arc::new(move |key: &str| {
        if let Some(goods) = Key::from_text(key).and_then(goods_of) {
            chosen.update(|chosen| chosen.insert(0, goods));
        }
        Ok(())
    });
    let fields = live(move || chosen.get().into_iter().map(|goods| of(state, trying, goods)).collect_view().into_any());
    view! {
        <Choice label=say!(sales::goods_to_change) options value=Signal::stored(String::new()) choose />
        {fields}
    }
}

fn goods_of(key: Key) -> Option<Goods> {
    match key {
        Key::Ingredient(id) => Some(Goods::Ingredient(id)),
        Key::Packaging(id) => Some(Goods::Packaging(id)),
        _ => None,
    }
}

/// What the drinks compared are made of and sold in, ingredients before packaging.
fn used(trying: Trying, book: &Book) -> Vec<Key> {
    let sizes = trying.chosen.get();
    let offers =
        book.offers().filter(|offer| sizes.contains(&offer.container) && book.belongs(offer.drink, trying.scope));
    let cut = book.cut(offers.map(|offer| Key::Offer(offer.id())));
    order::ingredients(&cut).into_iter().chain(order::packagings(&cut)).collect()
}

/// The pack in which goods are bought, and its price.
fn of(state: AppState, trying: Trying, goods: Goods) -> AnyView {
    let key = Key::from(goods);
    let (name, several) = state.book.with_untracked(|book| (book.name(key), book.packs(goods).len() > 1));
    let options = Signal::derive(move || {
        let option = |pack: &_| (pack_text(pack), words::quotes::pack(pack, &state.speaker.get()));
        state.book.with(|book| book.packs(goods).iter().map(option).collect::<Vec<_>>())
    });
    let value = text(move || trying.pack(goods).map(|pack| pack_text(&pack)).unwrap_or_default());
    let choose = Arc::new(move |chosen: &str| {
        let packs = state.book.with_untracked(|book| book.packs(goods).to_vec());
        if let Some(pack) = packs.iter().find(|pack| pack_text(pack) == chosen) {
            trying.set_pack(goods, pack.id);
        }
        Ok(())
    });
    let pack = several.then(|| {
        view! { <Choice label=say!(sales::pack_of, goods = &name) options value choose /> }
    });
    let take: Take<Exact> =
        Box::new(move |read, visit| trying.take(read, Some(visit), |number| trying.set_pack_price(goods, number)));
    let price = text(move || trying.pack_price(goods).map(|price| state.plain_money(price)).unwrap_or_default());
    let note = text(move || {
        trying.pack(goods).map(|pack| words::quotes::pack(&pack, &state.speaker.get())).unwrap_or_default()
    });
    view! {
        <div class="tries-goods">
            {pack}
            <Entry
                label=say!(sales::pack_price_of, goods = &name)
                asks=asks(Kind::Price, key, "tried/pack").while_tried()
                hangs=trying.hangs
                value=price
                note
                commit=tried_number(Example::CasePrice, take)
            />
        </div>
    }
    .into_any()
}

fn pack_text(pack: &crate::book::Pack) -> String {
    pack.id.to_string()
}
