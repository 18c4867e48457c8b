//! Quick price: find it, type the quoted price, see what moved, and on to the next.

use leptos::prelude::*;

use super::change::price_set;
use super::heard::{heard_on, still_so};
use super::tabs::Tabs;
use super::todays_changes::todays_changes;
use crate::app::route::Route;
use crate::book::{Book, Goods, IngredientId, Key, Pack, PackId, PackagingId, Settings};
use crate::buying::quotes::{Age, Found, age, cost_of, find, usable};
use crate::foundation::in_order;
use crate::foundation::jump::Kind;
use crate::foundation::measure::Date;
use crate::ui::fields::{self, Draft, Entry, Hangs, Search, asks};
use crate::ui::live::{flag, live, press, rows, text, when};
use crate::ui::moved::Moved;
use crate::ui::order;
use crate::ui::parts::filter_chip;
use crate::ui::random::random;
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words;

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
    const ALL: [(Filter, &'static str); 3] =
        [(Filter::All, "All"), (Filter::Old, "Old prices"), (Filter::Undated, "No day")];

    fn takes(self, book: &Book, goods: Goods, today: Date) -> bool {
        let age = || book.packs(goods).first().map(|pack| age(pack, book.settings(), today));
        match self {
            Filter::All => true,
            Filter::Old => matches!(age(), Some(Age::Old(_))),
            Filter::Undated => age() == Some(Age::Undated),
        }
    }
}

/// What goods are found by: their name, and who sells the pack whose price is typed.
#[derive(Clone, PartialEq, Eq)]
struct Names {
    goods: Key,
    name: String,
    supplier: String,
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
    let count = move |filter: Filter| {
        let takes = |key: Key| {
            let goods = goods_of(key);
            goods.is_some_and(|goods| state.book.with(|book| filter.takes(book, goods, today)))
        };
        names.with(|names| names.iter().filter(|names| takes(names.goods)).count())
    };
    let chip = move |(this, name): (Filter, &'static str)| {
        let pressed = text(move || (filter.get() == this).to_string());
        let count = Memo::new(move |_| count(this));
        let needless = flag(move || this != Filter::All && filter.get() != this && count.get() == 0);
        let count = text(move || if this == Filter::All { String::new() } else { count.get().to_string() });
        filter_chip(name, pressed, needless, count, move || filter.set(this))
    };
    let prices = Hangs::new();
    let price = move |key| goods_of(key).map(|goods| view! { <PriceRow goods next prices /> }).into_any();
    let more = text(move || match hidden() {
        0 => String::new(),
        count => format!("{count} more. Type some letters of a name or supplier to find them."),
    });
    let none = text(move || match found.with(Vec::is_empty) && !empty() {
        true => "Nothing like that. Type other letters, show all, or add it below.".to_string(),
        false => String::new(),
    });
    let tools = move || {
        view! {
            <div class="chips price-filters" role="group" aria-label="Which prices">
                {Filter::ALL.into_iter().map(chip).collect_view()}
            </div>
            <div class="price-search">
                <Search label="Find what you buy" search />
            </div>
        }
        .into_any()
    };
    view! {
        <h1>"Buying"</h1>
        <Tabs here=Route::Buying />
        {teach}
        {when(move || !empty(), tools)}
        {when(move || !empty(), move || todays_changes(prices))}
        <ul class="prices" class:prices-narrowed=narrowed data-next=SEARCH>
            {rows(listed, price)}
        </ul>
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

const fn goods_of(key: Key) -> Option<Goods> {
    match key {
        Key::Ingredient(id) => Some(Goods::Ingredient(id)),
        Key::Packaging(id) => Some(Goods::Packaging(id)),
        _ => None,
    }
}

/// The names of all that is bought and of who sells it, ingredients first.
fn names_as_written(book: &Book) -> Vec<Names> {
    let names = |goods, name: &String, packs: &[Pack]| {
        let supplier = packs.first().map(|pack| pack.supplier.clone()).unwrap_or_default();
        Names { goods, name: name.clone(), supplier }
    };
    let ingredients = book.ingredients().map(|it| names(Key::Ingredient(it.id), &it.name, &it.packs));
    let packagings = book.packagings().map(|it| names(Key::Packaging(it.id), &it.name, &it.packs));
    ingredients.chain(packagings).collect()
}

/// In lower case, ingredients before packaging, each by name.
fn in_order(names: &[Names]) -> Vec<Names> {
    let mut ordered: Vec<Names> = Vec::new();
    let of = |names: &Names| (matches!(names.goods, Key::Packaging(_)), names.name.clone());
    for names in names {
        let (name, supplier) = (order::lower_case(&names.name), order::lower_case(&names.supplier));
        let names = Names { goods: names.goods, name, supplier };
        in_order::insert(&mut ordered, names, |other, names| of(other) <= of(names));
    }
    ordered
}

/// What is found by these letters: what begins with them first, each kind in its order.
fn found(names: &[Names], letters: &str, shown: &dyn Fn(Key) -> bool) -> Vec<(Found, Key)> {
    let mut all: Vec<(Found, Key)> = Vec::new();
    for names in names.iter().filter(|names| shown(names.goods)) {
        if let Some(how) = find(&names.name, &names.supplier, letters) {
            in_order::insert(&mut all, (how, names.goods), |(other, _), (how, _)| other <= how);
        }
    }
    all
}

/// What was bought under this name, with the price of its pack.
#[component]
fn PriceRow(
    /// What is bought.
    goods: Goods,
    /// Where Enter leads from its price, if not to the next row.
    next: Signal<Option<&'static str>>,
    /// The prices that it is one of.
    prices: Hangs,
) -> impl IntoView {
    let state = AppState::here();
    let key = Key::from(goods);
    // Most edits leave most rows as they are.
    let record = Memo::new(move |_| state.book.with(|book| book.record(key)));
    let settings = Memo::new(move |_| state.book.with(|book| book.settings().clone()));
    let in_force = move || (record.with(|_| ()), settings.with(|settings: &Settings| settings.currency));
    let name = text(move || {
        in_force();
        state.book.with_untracked(|book| book.name(key))
    });
    let pack = move || {
        in_force();
        state.book.with_untracked(|book| book.packs(goods).first().cloned())
    };
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
    let cost = Memo::new(move |_| {
        in_force();
        state.book.with_untracked(|book| {
            let per = usable(book, goods);
            let cost = cost_of(book, goods, book.packs(goods).first()?, per).ok()?;
            Some((per, cost))
        })
    });
    let cost_before = Memo::new(move |_| {
        let (per, now) = cost.get()?;
        let was = state.last_change.with(|change| {
            let change = change.as_ref().filter(|change| change.touched.len() == 1 && change.touched.contains(&key))?;
            change.was.clone()?.packs_mut()?.first().cloned()
        })?;
        state.book.with_untracked(|book| cost_of(book, goods, &was, per)).ok().filter(|was| *was != now)
    });
    let cost_shown = move || {
        let Some((per, now)) = cost.get() else { return ().into_any() };
        let per = words::quotes::per(per, &state.speaker.get());
        match cost_before.get() {
            Some(was) => view! {
                <span class="price-cost">
                    <s class="was">
                        <span class="unseen">"before "</span>
                        {state.fine_money(was)}
                    </s>
                    " "
                    <strong>
                        <span class="unseen">"now "</span>
                        {state.fine_money(now)}
                    </strong>
                    {format!(" {per}")}
                </span>
            }
            .into_any(),
            None => view! { <span class="soft">{format!("{} {per}", state.fine_money(now))}</span> }.into_any(),
        }
    };
    let price = text(move || pack().map(|pack| state.plain_money(pack.price_now())).unwrap_or_default());
    let step = format!("Price of {}", name.get_untracked());
    let hangs = prices.within();
    let has_pack = Memo::new(move |_| pack().is_some());
    let field = live(move || match has_pack.get() {
        true => {
            let id = untrack(pack).map_or(PackId::FIRST, |pack| pack.id);
            let set = move |book: &Book, price| Some(price_set(goods, book.packs(goods).first()?.id, price, today()));
            let commit = fields::money(step.clone(), set);
            let asks = asks(Kind::Price, goods, format!("{id}/price"));
            view! { <Entry label=step.clone() label_hidden=true large=true asks hangs value=price commit /> }.into_any()
        }
        false => view! { <a class="button" href=Route::of_goods(goods).address()>"Enter a pack"</a> }.into_any(),
    });
    view! {
        <li class="price-row" data-next=next data-to-the-top="">
            <div class="price-name">
                <a href=Route::of_goods(goods).address()>{name}</a>
                <span class="soft">{holds}</span>
                {hangs.while_read(move || view! { {live(cost_shown)} {heard_on(state, pack)} }.into_any())}
            </div>
            <div class="price-field">{field} {hangs.while_read(move || still_so(state, goods, pack))}</div>
            {hangs.answer(move || view! { <Moved by=key even_none=true answers=goods /> }.into_any())}
        </li>
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
