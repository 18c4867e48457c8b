//! Menus to play with beside today's.

mod adopting;
mod beside;
mod compared;
mod drinks;
mod kept;
mod page;

use leptos::prelude::*;

use crate::app::route::Route;
use crate::book::{Book, Edit, Key, Offer, OfferId, Record, Scenario, ScenarioId, Scope};
use crate::foundation::measure::Exact;
use crate::say;
use crate::sizes::scenario::{Menu, WeeklyToday, drafted, ours};
use crate::ui::fields::Draft;
use crate::ui::live::{flag, press, rows, text, when};
use crate::ui::order;
use crate::ui::parts::Back;
use crate::ui::present::Present;
use crate::ui::random::random;
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words;
use crate::words::scenarios::Scenarios as Words;
use crate::words::texts::{HOLE, around};

use beside::{Beside, Columns};
pub use kept::keep_as_scenario;
pub use page::ScenarioPage;

/// Weeks that opening stock lasts, where nobody said.
const COVER: Exact = Exact::new(4, 0);

/// Menus to play with beside today's.
#[component]
pub fn Scenarios() -> impl IntoView {
    let state = AppState::here();
    let listed = Memo::new(move |_| state.book.with(order::scenarios));
    let none = flag(move || listed.with(Vec::is_empty));
    let copy = move || {
        let id = ScenarioId::from_random(random());
        Draft::of_record(Key::Scenario(id)).begin_on(state, Route::Scenario(id));
    };
    let teach = move || {
        let (before, after) = around(&say!(sales::teach_plan, screen = HOLE));
        view! {
            <div class="teach">
                <h2>{say!(sales::teach_scenarios)}</h2>
                <p>
                    {say!(sales::teach_copy)} " " {before}
                    <a href=Route::HowMany(Scope::Menu).address()>{say!(decide::how_many_sizes)}</a> {after}
                </p>
            </div>
        }
        .into_any()
    };
    let weekly = weekly(state);
    let now = Memo::new(move |_| now(state, weekly, COVER));
    let row = move |key| match key {
        Key::Scenario(id) => row(state, id, weekly, now),
        _ => ().into_any(),
    };
    view! {
        <Back to=Route::Sizes name=say!(first::sizes) />
        <div class="title-row">
            <h1>{say!(sales::scenarios)}</h1>
            {when(move || !none.get(), || view! { <Present /> }.into_any())}
        </div>
        <p class="about">{say!(sales::about_scenarios)}</p>
        {when(move || none.get(), teach)}
        <ul class="rows section">{rows(listed, row)}</ul>
        <p class="actions">
            <button class="main" on:click=press(copy)>
                {say!(sales::copy_menu)}
            </button>
        </p>
        {when(move || !none.get(), move || view! { <Beside weekly now /> }.into_any())}
    }
}

fn row(state: AppState, id: ScenarioId, weekly: Memo<WeeklyToday>, now: Memo<Option<Menu>>) -> AnyView {
    let name = text(move || state.book.with(|book| book.name(Key::Scenario(id))));
    let menu = Memo::new(move |_| then(state, id, weekly, COVER));
    let earned = text(move || menu.get().map(|menu| state.money(menu.profit)).unwrap_or_default());
    let about = text(move || {
        let both = now.get().zip(menu.get());
        let sentence = |(now, then): (Menu, Menu)| {
            let against = said(state, |words| words.against_today(&now, &then));
            say!(sales::scenario_line, sizes = words::sizes(then.sizes), difference = against)
        };
        both.map(sentence).or_else(|| stuck(state, id)).unwrap_or_default()
    });
    view! {
        <li>
            <a class="row" href=Route::Scenario(id).address()>
                <span class="row-name">{name} <span class="row-about">{about}</span></span>
                <span class="row-price">{earned}</span>
            </a>
        </li>
    }
    .into_any()
}

/// Words about scenarios.
fn said(state: AppState, say: impl FnOnce(&Words) -> String) -> String {
    state.book.with(|book| say(&Words { book, speaker: &state.speaker.get() }))
}

/// Today's weekly numbers, on which both sides rest.
fn weekly(state: AppState) -> Memo<WeeklyToday> {
    Memo::new(move |_| {
        let weekly = state.book.with(|book| state.ledger.with(|ledger| WeeklyToday::of(book, ledger, today())));
        weekly.unwrap_or_default()
    })
}

/// The figures of today's menu.
fn now(state: AppState, weekly: Memo<WeeklyToday>, cover: Exact) -> Option<Menu> {
    state.book.with(|book| {
        let offers: Vec<Offer> = book.offers().cloned().collect();
        let menu =
            |weekly: &WeeklyToday| state.ledger.with(|ledger| Menu::of(book, ledger, &offers, weekly, cover).ok());
        weekly.with(menu)
    })
}

/// The figures of a scenario.
fn then(state: AppState, id: ScenarioId, weekly: Memo<WeeklyToday>, cover: Exact) -> Option<Menu> {
    state.book.with(|book| menu_of(book, book.scenario(id)?, weekly, cover))
}

/// Those without what the owner does not set.
fn then_ours(state: AppState, id: ScenarioId, weekly: Memo<WeeklyToday>, cover: Exact) -> Option<Menu> {
    state.book.with(|book| menu_of(book, &ours(book.scenario(id)?), weekly, cover))
}

fn menu_of(book: &Book, scenario: &Scenario, weekly: Memo<WeeklyToday>, cover: Exact) -> Option<Menu> {
    let draft = drafted(book, scenario).ok()?;
    weekly.with(|weekly| Menu::of(&draft.book, &draft.ledger, &scenario.offers_in(book), weekly, cover).ok())
}

/// Why a scenario cannot be computed, or nothing.
fn stuck(state: AppState, id: ScenarioId) -> Option<String> {
    state.book.with(|book| {
        let error = drafted(book, book.scenario(id)?).err()?;
        Some(words::what_if_error(&error, book, &state.speaker.get()))
    })
}

/// Today's menu beside the scenarios, for a sheet. Returns `None` where there is no scenario.
pub fn compared_on_paper(state: AppState) -> Option<Columns> {
    state.book.with(|book| book.scenarios().next().map(drop))?;
    let weekly = weekly(state);
    beside::columns(state, weekly, now(state, weekly, COVER))
}

/// The edit that changes a scenario, and nothing else.
fn changed(book: &Book, id: ScenarioId, change: impl FnOnce(&mut Scenario)) -> Option<Edit> {
    let mut scenario = book.scenario(id)?.clone();
    change(&mut scenario);
    Some(Edit::Put(Record::Scenario(scenario)))
}

/// One of its offers.
fn offer_of(book: &Book, id: ScenarioId, offer: OfferId) -> Option<&Offer> {
    book.scenario(id)?.offers.iter().find(|it| it.id() == offer)
}
