//! Quick price: find it, type the quoted price, see what moved.

use leptos::prelude::*;

use super::tabs::Tabs;
use super::usable;
use crate::book::{Book, Edit, Goods, Ingredient, IngredientId, Key, Packaging, PackagingId, Record};
use crate::ui::fields::{self, Entry};
use crate::ui::moved::Moved;
use crate::ui::random::random;
use crate::ui::route::{Route, go};
use crate::ui::state::AppState;

/// How many are listed before letters narrow them down.
const LISTED: usize = 60;

/// Everything that is bought, with the price of its pack.
#[component]
pub fn QuickPrice() -> impl IntoView {
    let state = AppState::here();
    let search = RwSignal::new(String::new());
    let found = Memo::new(move |_| {
        let wanted = search.get().to_lowercase();
        state.book.with(|book| goods(book, &wanted))
    });
    let add_ingredient = move |_| add_ingredient(state);
    let add_packaging = move |_| add_packaging(state);
    let hidden = move || found.with(Vec::len).saturating_sub(LISTED);
    let empty = move || state.book.with(|book| goods(book, "").is_empty());
    view! {
        <h1>"Buying"</h1>
        <Tabs here=Route::Buying />
        <Show when=empty>
            <div class="teach">
                <h2>"Start with what you buy"</h2>
                <p>
                    "An ingredient has a pack: how much it holds and what it costs. Say what is left after trimming and pressing, and you see what a usable pound or ounce truly costs."
                </p>
            </div>
        </Show>
        <Show when=move || !empty()>
            <div class="tools">
                <input
                    class="search"
                    type="search"
                    aria-label="Find what you buy"
                    placeholder="Find what you buy"
                    prop:value=move || search.get()
                    on:input=move |event| search.set(event_target_value(&event))
                />
            </div>
            <ul class="prices">
                <For
                    each=move || found.with(|found| found.iter().take(LISTED).copied().collect::<Vec<_>>())
                    key=|goods| *goods
                    let(goods)
                >
                    <PriceRow goods />
                </For>
            </ul>
            <Show when=move || { hidden() > 0 }>
                <p class="hollow">{move || format!("{} more. Type some letters of a name to find them.", hidden())}</p>
            </Show>
            <Show when=move || found.with(Vec::is_empty)>
                <p class="hollow">"Nothing by that name. Type other letters, or add it below."</p>
            </Show>
        </Show>
        <p class="actions">
            <button class="main" on:click=add_ingredient>
                "Add an ingredient"
            </button>
            <button class="button" on:click=add_packaging>
                "Add packaging"
            </button>
        </p>
    }
}

/// Everything bought whose name holds these letters, by name, ingredients first.
fn goods(book: &Book, wanted: &str) -> Vec<Goods> {
    let mut ingredients: Vec<(String, Goods)> =
        book.ingredients().map(|it| (it.name.to_lowercase(), Goods::Ingredient(it.id))).collect();
    let mut packagings: Vec<(String, Goods)> =
        book.packagings().map(|it| (it.name.to_lowercase(), Goods::Packaging(it.id))).collect();
    ingredients.sort();
    packagings.sort();
    ingredients.extend(packagings);
    ingredients.into_iter().filter(|(name, _)| name.contains(wanted)).map(|(_, goods)| goods).collect()
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
    let name = move || state.book.with(|book| book.name(Key::from(goods)));
    let pack = Memo::new(move |_| state.book.with(|book| book.packs(goods).first().cloned()));
    let holds = move || {
        pack.get().map(|pack| match pack.supplier.as_str() {
            "" => state.amount(pack.contents),
            supplier => format!("{}, {supplier}", state.amount(pack.contents)),
        })
    };
    let usable = move || {
        let pack = pack.get()?;
        let costs = match goods {
            Goods::Ingredient(id) => state.book.with(|book| Some(usable::costs(state, book.ingredient(id)?, &pack)))?,
            Goods::Packaging(_) => usable::piece(state, &pack).into_iter().collect(),
        };
        let last = costs.last()?.clone();
        Some(format!("{} {}", last.1, last.0.to_lowercase()))
    };
    let price = Signal::derive(move || pack.get().map(|pack| state.plain_money(pack.price)).unwrap_or_default());
    let step = move || format!("Price of {}", state.book.with_untracked(|book| book.name(Key::from(goods))));
    let has_pack = move || pack.with(Option::is_some);
    view! {
        <li class="price-row">
            <div class="price-name">
                <a href=route(goods).address()>{name}</a>
                <span class="soft">{holds}</span>
                <span class="soft">{usable}</span>
            </div>
            <Show
                when=has_pack
                fallback=move || view! { <a class="button" href=route(goods).address()>"Enter a pack"</a> }
            >
                <Entry
                    label=step()
                    label_hidden=true
                    large=true
                    value=price
                    commit=fields::money(step(), move |book, price| {
                        let pack = book.packs(goods).first()?.id;
                        Some(Edit::SetPackPrice { goods, pack, price })
                    })
                />
            </Show>
            <Moved by=Key::from(goods) />
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
