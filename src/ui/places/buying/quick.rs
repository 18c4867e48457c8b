//! Quick price: find it, type the quoted price, see what moved.

use leptos::prelude::*;

use super::tabs::Tabs;
use super::usable;
use crate::book::{Book, Edit, Goods, Ingredient, IngredientId, Key, Packaging, PackagingId, Record};
use crate::ui::fields::{self, Entry};
use crate::ui::live::{live, press, rows, text, when};
use crate::ui::moved::Moved;
use crate::ui::order;
use crate::ui::parts::Search;
use crate::ui::random::random;
use crate::ui::route::{Route, go};
use crate::ui::state::AppState;
use crate::ui::today::today;

/// How many are listed before letters narrow them down.
const LISTED: usize = 60;

/// Everything that is bought, with the price of its pack.
#[component]
pub fn QuickPrice() -> impl IntoView {
    let state = AppState::here();
    let search = RwSignal::new(String::new());
    let found = Memo::new(move |_| {
        let wanted = order::lower_case(&search.get());
        state.book.with(|book| goods(book, &wanted))
    });
    let listed = Memo::new(move |_| found.with(|found| found.iter().take(LISTED).copied().collect::<Vec<Key>>()));
    let hidden = move || found.with(Vec::len).saturating_sub(LISTED);
    let empty =
        move || state.book.with(|book| book.ingredients().next().is_none() && book.packagings().next().is_none());
    let teach = when(empty, || {
        view! {
            <div class="teach">
                <h2>"Start with what you buy"</h2>
                <p>
                    "An ingredient has a pack: how much it holds and what it costs. Say what is left after trimming and pressing, and you see what a usable pound or ounce truly costs."
                </p>
            </div>
        }
        .into_any()
    });
    let price = |key| match key {
        Key::Ingredient(id) => view! { <PriceRow goods=Goods::Ingredient(id) /> }.into_any(),
        Key::Packaging(id) => view! { <PriceRow goods=Goods::Packaging(id) /> }.into_any(),
        _ => ().into_any(),
    };
    let more = text(move || match hidden() {
        0 => String::new(),
        count => format!("{count} more. Type some letters of a name to find them."),
    });
    let none = text(move || match found.with(Vec::is_empty) && !empty() {
        true => "Nothing by that name. Type other letters, or add it below.".to_string(),
        false => String::new(),
    });
    view! {
        <h1>"Buying"</h1>
        <Tabs here=Route::Buying />
        {teach}
        {when(move || !empty(), move || view! { <Search label="Find what you buy" search /> }.into_any())}
        <ul class="prices">{rows(listed, price)}</ul>
        <p class="hollow">{more} {none}</p>
        <p class="actions">
            <button class="main" on:click=press(move || add_ingredient(state))>
                "Add an ingredient"
            </button>
            <button class="button" on:click=press(move || add_packaging(state))>
                "Add packaging"
            </button>
        </p>
    }
}

/// Everything bought whose name holds these letters, by name, ingredients first.
fn goods(book: &Book, wanted: &str) -> Vec<Key> {
    let mut keys = order::ingredients(book);
    keys.extend(order::packagings(book));
    let named = |key: &Key| wanted.is_empty() || order::lower_case(&book.name(*key)).contains(wanted);
    keys.into_iter().filter(named).collect()
}

/// The screen of goods.
fn route(goods: Goods) -> Route {
    match goods {
        Goods::Ingredient(id) => Route::Ingredient(id),
        Goods::Packaging(id) => Route::Packaging(id),
    }
}

#[component]
fn PriceRow(goods: Goods) -> impl IntoView {
    let state = AppState::here();
    let name = text(move || state.book.with(|book| book.name(Key::from(goods))));
    let pack = move || state.book.with(|book| book.packs(goods).first().cloned());
    let holds = text(move || {
        let Some(pack) = pack() else { return String::new() };
        let mut said = vec![state.amount(pack.contents)];
        if !pack.supplier.is_empty() {
            said.push(pack.supplier);
        }
        if !pack.at_a_time.is_one() {
            said.push(format!("{} at a time", state.number(pack.at_a_time)));
        }
        said.join(", ")
    });
    let usable = move || {
        let pack = pack()?;
        let costs = match goods {
            Goods::Ingredient(id) => state.book.with(|book| Some(usable::costs(state, book.ingredient(id)?, &pack)))?,
            Goods::Packaging(_) => usable::piece(state, goods, &pack).into_iter().collect(),
        };
        let (name, figure, _) = costs.last()?;
        Some(format!("{figure} {}", order::lower_case(name)))
    };
    let usable = text(move || usable().unwrap_or_default());
    let price = text(move || pack().map(|pack| state.plain_money(pack.price_now())).unwrap_or_default());
    let step = format!("Price of {}", name.get_untracked());
    let has_pack = Memo::new(move |_| state.book.with(|book| !book.packs(goods).is_empty()));
    let field = live(move || match has_pack.get() {
        true => {
            let set = move |book: &Book, price| {
                let pack = book.packs(goods).first()?.id;
                Some(Edit::SetPackPrice { goods, pack, price, day: Some(today()) })
            };
            let commit = fields::money(step.clone(), set);
            view! { <Entry label=step.clone() label_hidden=true large=true value=price commit /> }.into_any()
        }
        false => view! { <a class="button" href=route(goods).address()>"Enter a pack"</a> }.into_any(),
    });
    view! {
        <li class="price-row">
            <div class="price-name">
                <a href=route(goods).address()>{name}</a>
                <span class="soft">{holds}</span>
                <span class="soft">{usable}</span>
            </div>
            {field}
            <Moved by=Key::from(goods) even_none=true />
        </li>
    }
}

fn add_ingredient(state: AppState) {
    let id = IngredientId::from_random(random());
    let ingredient = Ingredient::named(id, "New ingredient");
    if state.apply("Add an ingredient", Edit::Put(Record::Ingredient(ingredient))).is_ok() {
        go(Route::Ingredient(id));
    }
}

fn add_packaging(state: AppState) {
    let id = PackagingId::from_random(random());
    let packaging = Packaging::named(id, "New packaging");
    if state.apply("Add packaging", Edit::Put(Record::Packaging(packaging))).is_ok() {
        go(Route::Packaging(id));
    }
}
