//! Quick price: find it, type the quoted price, see what moved, and on to the next.

mod names;
mod row;

use leptos::prelude::*;

use super::tabs::Tabs;
use super::todays_changes::todays_changes;
use crate::app::route::Route;
use crate::book::{Book, Goods, IngredientId, Key, PackagingId};
use crate::buying::quotes::{Age, age};
use crate::foundation::measure::Date;
use crate::say;
use crate::ui::fields::{Draft, Hangs, Search};
use crate::ui::live::{flag, press, rows, text, when};
use crate::ui::order;
use crate::ui::parts::filter_chip;
use crate::ui::random::random;
use crate::ui::state::AppState;
use crate::ui::today::today;
use names::{Names, found, in_order, names_as_written};
use row::PriceRow;

/// How many are listed before letters narrow them down.
const LISTED: usize = 60;

/// Where the letters are typed.
const SEARCH: &str = ".price-search input";

/// Which prices are listed.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Filter {
    All,
    Old,
    Undated,
}

impl Filter {
    const ALL: [Filter; 3] = [Filter::All, Filter::Old, Filter::Undated];

    fn name(self) -> &'static str {
        match self {
            Filter::All => say!(market::all_prices),
            Filter::Old => say!(market::needs_new_price),
            Filter::Undated => say!(market::no_date),
        }
    }

    fn takes(self, book: &Book, goods: Goods, today: Date) -> bool {
        let age = || book.packs(goods).first().map(|pack| age(pack, book.settings(), today));
        match self {
            Filter::All => true,
            Filter::Old => matches!(age(), Some(Age::Old(_))),
            Filter::Undated => age() == Some(Age::Undated),
        }
    }
}

/// Everything that is bought, with the price of its pack.
#[component]
pub fn QuickPrice() -> impl IntoView {
    let state = AppState::here();
    let today = today();
    let search = RwSignal::new(String::new());
    let filter = RwSignal::new(Filter::All);
    let named = Memo::new(move |_| state.book.with(names_as_written));
    let names = Memo::new(move |_| named.with(|named| in_order(named)));
    // What was listed stays while its price is typed, also where it is not old any more.
    let found = Memo::new(move |_| {
        let (letters, filter) = (order::lower_case(&search.get()), filter.get());
        names.with(|names| {
            state.book.with_untracked(|book| {
                let shown = |key: Key| goods_of(key).is_some_and(|goods| filter.takes(book, goods, today));
                found(names, &letters, &shown)
            })
        })
    });
    let listed = Memo::new(move |_| found.with(|found| found.iter().take(LISTED).map(|(_, key)| *key).collect()));
    let narrowed = flag(move || !search.with(String::is_empty));
    // What was found by its name was all that was looked for: the search comes next.
    let next = Signal::derive(move || {
        let by_name = found.with(|found| found.first().is_some_and(|(how, _)| how.is_by_name()));
        (by_name && narrowed.get()).then_some(SEARCH)
    });
    let hidden = move || found.with(Vec::len).saturating_sub(LISTED);
    let empty =
        move || state.book.with(|book| book.ingredients().next().is_none() && book.packagings().next().is_none());
    let prices = Hangs::new();
    let price = move |key| goods_of(key).map(|goods| view! { <PriceRow goods next prices /> }).into_any();
    let more = text(move || match hidden() {
        0 => String::new(),
        count => say!(market::more_items, count = count),
    });
    let none =
        text(
            move || {
                if found.with(Vec::is_empty) && !empty() { say!(market::no_matches).to_string() } else { String::new() }
            },
        );
    view! {
        <h1>{say!(first::buying)}</h1>
        <Tabs here=Route::Buying />
        {when(empty, teach)}
        {when(move || !empty(), move || tools(state, names, filter, search))}
        {when(move || !empty(), move || todays_changes(prices))}
        <ul class="prices" class:prices-narrowed=narrowed data-next=SEARCH>
            {rows(listed, price)}
        </ul>
        <p class="hollow">{more} {none}</p>
        <p class="actions">
            <button class="main" on:click=press(move || add_ingredient(state))>
                {say!(goods::add_ingredient)}
            </button>
            <button class="button" on:click=press(move || add_packaging(state))>
                {say!(goods::add_packaging)}
            </button>
        </p>
    }
}

fn teach() -> AnyView {
    view! {
        <div class="teach">
            <h2>{say!(market::first_ingredient)}</h2>
            <p>{say!(market::first_ingredient_how)}</p>
        </div>
    }
    .into_any()
}

/// Which prices are listed, and the letters of what is looked for.
fn tools(state: AppState, names: Memo<Vec<Names>>, filter: RwSignal<Filter>, search: RwSignal<String>) -> AnyView {
    let today = today();
    let count = move |filter: Filter| {
        let takes = |key: Key| {
            let goods = goods_of(key);
            goods.is_some_and(|goods| state.book.with(|book| filter.takes(book, goods, today)))
        };
        names.with(|names| names.iter().filter(|names| takes(names.goods)).count())
    };
    let chip = move |this: Filter| {
        let pressed = text(move || (filter.get() == this).to_string());
        let count = Memo::new(move |_| count(this));
        let needless = flag(move || this != Filter::All && filter.get() != this && count.get() == 0);
        let count = text(move || if this == Filter::All { String::new() } else { count.get().to_string() });
        filter_chip(this.name(), pressed, needless, count, move || filter.set(this))
    };
    view! {
        <div class="chips price-filters" role="group" aria-label=say!(market::filter_prices)>
            {Filter::ALL.into_iter().map(chip).collect_view()}
        </div>
        <div class="price-search">
            <Search label=say!(market::find_item) search />
        </div>
    }
    .into_any()
}

const fn goods_of(key: Key) -> Option<Goods> {
    match key {
        Key::Ingredient(id) => Some(Goods::Ingredient(id)),
        Key::Packaging(id) => Some(Goods::Packaging(id)),
        _ => None,
    }
}

fn add_ingredient(state: AppState) {
    let id = IngredientId::from_random(random());
    Draft::of_record(Key::Ingredient(id)).begin_on(state, Route::Ingredient(id));
}

fn add_packaging(state: AppState) {
    let id = PackagingId::from_random(random());
    Draft::of_record(Key::Packaging(id)).begin_on(state, Route::Packaging(id));
}
