//! Quick price: find it, type the quoted price, see what moved, and on to the next.

mod groups;
mod names;
mod row;

use leptos::prelude::*;

use super::figures_to_check;
use super::tabs::Tabs;
use super::todays_changes::todays_changes;
use crate::app::route::Route;
use crate::book::{IngredientId, Key, PackagingId};
use crate::say;
use crate::ui::fields::{Draft, Hangs, Search};
use crate::ui::kept;
use crate::ui::live::{flag, live, press, text, when};
use crate::ui::order;
use crate::ui::parts::filter_chip;
use crate::ui::random::random;
use crate::ui::state::AppState;
use groups::{Group, Grouping, grouped, groups, old_ones, price_rows};
use names::{Names, Row, found, in_order, names_as_written};

/// How many are found before more letters narrow them down.
const LISTED: usize = 30;

/// Where the letters are typed.
const SEARCH: &str = ".price-search input";

/// Everything that is bought, with the price of its packs.
#[component]
pub fn QuickPrice() -> impl IntoView {
    let state = AppState::here();
    let search = kept::text("letters", "");
    let grouping = kept::chosen("grouping", Grouping::Supplier, |it| it.id().to_string(), Grouping::from_id);
    let named = Memo::new(move |_| state.book.with(names_as_written));
    let names = Memo::new(move |_| named.with(|named| in_order(named)));
    let empty = Memo::new(move |_| names.with(Vec::is_empty));
    let narrowed = flag(move || !search.with(String::is_empty));
    let prices = Hangs::new();
    let [by_supplier, by_age] =
        [Grouping::Supplier, Grouping::Age].map(|grouping| Grouped::new(state, names, grouping));
    view! {
        <h1>{say!(first::buying)}</h1>
        <Tabs here=Route::Buying />
        {when(move || empty.get(), teach)}
        {when(
            move || !empty.get(),
            move || {
                view! {
                    <div class="panes price-panes">
                        <div class="pane-asked price-asked">
                            {tools(state, names, grouping, search)} {todays_changes(prices)}
                        </div>
                        <div class="pane" data-next=SEARCH>
                            {when(move || narrowed.get(), move || by_letters(names, search, prices))}
                            {when(move || !narrowed.get(), move || in_groups(by_supplier, by_age, grouping, prices))}
                        </div>
                    </div>
                }
                    .into_any()
            },
        )}
        <p class="actions">
            <button class="main" on:click=press(move || add_ingredient(state))>
                {say!(goods::add_ingredient)}
            </button>
            <button class="button" on:click=press(move || add_packaging(state))>
                {say!(goods::add_packaging)}
            </button>
            {figures_to_check::link()}
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

/// What was found by the letters that are typed.
fn by_letters(names: Memo<Vec<Names>>, search: RwSignal<String>, prices: Hangs) -> AnyView {
    let found = Memo::new(move |_| {
        let letters = order::lower_case(&search.get());
        names.with(|names| found(names, &letters))
    });
    let listed = Memo::new(move |_| found.with(|found| found.iter().take(LISTED).map(|(_, row)| *row).collect()));
    // What was found by its name was all that was looked for: the search comes next.
    let next = Signal::derive(move || {
        let by_name = found.with(|found| found.first().is_some_and(|(how, _)| how.is_by_name()));
        by_name.then_some(SEARCH)
    });
    let said = text(move || match found.with(Vec::len) {
        0 => say!(market::no_matches).to_string(),
        count if count > LISTED => say!(market::more_items, count = count.saturating_sub(LISTED)),
        _ => String::new(),
    });
    view! {
        <ul class="prices prices-narrowed">{price_rows(listed, next, true, prices)}</ul>
        <p class="hollow">{said}</p>
    }
    .into_any()
}

/// All prices in groups, and the names of those that stand open, each in a line.
#[derive(Clone, Copy)]
struct Grouped {
    groups: Memo<Vec<Group>>,
    opened: RwSignal<String>,
}

impl Grouped {
    fn new(state: AppState, names: Memo<Vec<Names>>, grouping: Grouping) -> Grouped {
        // What was listed stays while its price is typed, also where it is not old any more.
        let grouped = move |names: &Vec<Names>| state.book.with_untracked(|book| grouped(book, names, grouping));
        let groups = Memo::new(move |_| names.with(grouped));
        let first = untrack(|| groups.with(|groups| groups.first().map(Group::name))).unwrap_or_default();
        Grouped { groups, opened: kept::text(grouping.id(), &first) }
    }
}

/// All prices in their groups.
fn in_groups(by_supplier: Grouped, by_age: Grouped, grouping: RwSignal<Grouping>, prices: Hangs) -> AnyView {
    live(move || {
        let grouped = match grouping.get() {
            Grouping::Supplier => by_supplier,
            Grouping::Age => by_age,
        };
        view! { <div class="price-groups">{groups(grouped.groups, grouped.opened, prices)}</div> }.into_any()
    })
}

/// The letters of what is looked for, and how the prices are grouped.
fn tools(state: AppState, names: Memo<Vec<Names>>, grouping: RwSignal<Grouping>, search: RwSignal<String>) -> AnyView {
    let old = text(move || {
        let current = |names: &Vec<Names>| names.iter().filter(|it| it.is_current).map(|it| it.row).collect();
        let current: Vec<Row> = names.with(current);
        match state.book.with(|book| old_ones(book, &current)) {
            0 => String::new(),
            old => old.to_string(),
        }
    });
    let chip = move |name: &'static str, this: Grouping, count: Signal<String>| {
        let pressed = text(move || (grouping.get() == this).to_string());
        filter_chip(name, pressed, Signal::stored(false), count, move || grouping.set(this))
    };
    view! {
        <div class="price-search">
            <Search label=say!(market::find_item) search />
        </div>
        <div class="chips price-filters" role="group" aria-label=say!(market::group_prices)>
            {chip(say!(market::by_supplier), Grouping::Supplier, Signal::stored(String::new()))}
            {chip(say!(market::needs_new_price), Grouping::Age, old)}
        </div>
    }
    .into_any()
}

fn add_ingredient(state: AppState) {
    let id = IngredientId::from_random(random());
    Draft::of_record(Key::Ingredient(id)).begin_on(state, Route::Ingredient(id));
}

fn add_packaging(state: AppState) {
    let id = PackagingId::from_random(random());
    Draft::of_record(Key::Packaging(id)).begin_on(state, Route::Packaging(id));
}
