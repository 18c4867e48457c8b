//! Menus to play with beside today's.

mod compared;
mod drinks;

use leptos::prelude::*;

use crate::app::route::Route;
use crate::backup::restore_points::Why;
use crate::book::{Book, Edit, Key, Offer, OfferId, Record, Scenario, ScenarioId};
use crate::drink::ledger::Ledger;
use crate::foundation::measure::Exact;
use crate::say;
use crate::sizes::plan::{Totals, scenario_ledger};
use crate::ui::address::go;
use crate::ui::fields::{self, Addition, Draft, Entry, Field};
use crate::ui::library::Library;
use crate::ui::live::{press, rows, text, trouble, when};
use crate::ui::order;
use crate::ui::parts::{Back, Section, page_of};
use crate::ui::random::random;
use crate::ui::state::AppState;
use crate::words::texts::{HOLE, around};
use crate::words::{self, Plans};

use compared::Compared;
use drinks::Drinks;

/// The field of a new scenario, by what is missing while it is empty.
const NAME: Field = Field::Name;

/// Menus to play with beside today's.
#[component]
pub fn Scenarios() -> impl IntoView {
    let state = AppState::here();
    let listed = Memo::new(move |_| state.book.with(order::scenarios));
    let none = move || listed.with(Vec::is_empty);
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
                    <a href=Route::HowMany.address()>{say!(decide::how_many_sizes)}</a> {after}
                </p>
            </div>
        }
        .into_any()
    };
    view! {
        <Back to=Route::Sizes name=say!(first::sizes) />
        <h1>{say!(sales::scenarios)}</h1>
        <p class="about">{say!(sales::about_scenarios)}</p>
        {when(none, teach)}
        <ul class="rows section">{rows(listed, row)}</ul>
        <p class="actions">
            <button class="main" on:click=press(copy)>
                {say!(sales::copy_menu)}
            </button>
        </p>
    }
}

fn row(key: Key) -> AnyView {
    let Key::Scenario(id) = key else { return ().into_any() };
    let state = AppState::here();
    let name = text(move || state.book.with(|book| book.name(key)));
    let both = move || Some((today(state, Exact::ZERO)?, then(state, id, Exact::ZERO)?));
    let earned = text(move || both().map(|(_, then)| state.money(then.contribution)).unwrap_or_default());
    let about = text(move || {
        let sentence = |(today, then): (Totals, Totals)| {
            let against = said(state, |words| words.against_today(&today, &then));
            say!(sales::scenario_line, sizes = words::sizes(then.sizes), difference = against)
        };
        both().map(sentence).unwrap_or_default()
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

/// Words about plans and scenarios.
fn said(state: AppState, say: impl FnOnce(&Plans) -> String) -> String {
    state.book.with(|book| say(&Plans { book, speaker: &state.speaker.get() }))
}

/// The figures of today's menu.
fn today(state: AppState, cover: Exact) -> Option<Totals> {
    state.book.with(|book| {
        let offers: Vec<Offer> = book.offers().cloned().collect();
        state.ledger.with(|ledger| Totals::of(book, ledger, &offers, cover).ok())
    })
}

/// The figures of a scenario.
fn then(state: AppState, id: ScenarioId, cover: Exact) -> Option<Totals> {
    state.book.with(|book| {
        let scenario = book.scenario(id)?;
        Totals::of(book, &scenario_ledger(book, scenario), &scenario.offers, cover).ok()
    })
}

/// One scenario.
#[component]
pub fn ScenarioPage(
    /// The scenario.
    id: ScenarioId,
) -> impl IntoView {
    page_of(Key::Scenario(id), Route::Scenarios, say!(sales::scenarios), move || view! { <Page id /> }.into_any())
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

#[component]
fn Page(id: ScenarioId) -> impl IntoView {
    let state = AppState::here();
    let name = text(move || state.book.with(|book| book.name(Key::Scenario(id))));
    let ledger = Memo::new(move |_| {
        state.book.with(|book| book.scenario(id).map(|scenario| scenario_ledger(book, scenario)).unwrap_or_default())
    });
    let ledger: Signal<Ledger> = ledger.into();
    let library = Library::here();
    let refused = RwSignal::new(None::<String>);
    let adopt = move || {
        let edit = state.book.with_untracked(|book| book.scenario(id).map(|scenario| scenario.adopted(book)));
        let Some(edit) = edit else { return };
        library.before(Why::Adoption);
        match state.apply(say!(sales::scenario_made_menu), edit) {
            Ok(()) => go(Route::Drinks),
            Err(sentence) => {
                library.not_done();
                refused.set(Some(sentence));
            }
        }
    };
    let drop_it = move || {
        if state.apply(say!(sales::discard_scenario), Edit::Remove(Key::Scenario(id))).is_ok() {
            go(Route::Scenarios);
        }
    };
    let key = Key::Scenario(id);
    let there = move |book: &Book| book.contains(key);
    let new = Addition::of(Draft::of_record(key), there, say!(sales::copy_menu), move |typed, book| {
        let scenario = Scenario { id, name: typed.name(NAME)?, offers: book.offers().cloned().collect() };
        Some(Edit::Put(Record::Scenario(scenario)))
    });
    let is_new = !untrack(|| new.is_there());
    let rename = fields::text(say!(sales::scenario_name), move |book, name| changed(book, id, |it| it.name = name));
    let rest = new.once_there(move || {
        view! {
            <Compared id />
            <p class="actions">
                <button class="main" on:click=press(adopt)>
                    {say!(sales::make_menu)}
                </button>
                <button class="quiet" on:click=press(drop_it)>
                    {say!(sales::discard_scenario)}
                </button>
            </p>
            {trouble(move || refused.get())}
            <p class="hollow">{say!(sales::about_make_menu)}</p>
            <Section heading=say!(sales::drinks_and_sizes) about=say!(sales::about_drinks_and_sizes)>
                <Drinks id ledger />
            </Section>
        }
        .into_any()
    });
    view! {
        <Back to=Route::Scenarios name=say!(sales::scenarios) />
        <h1>{new.heading(say!(sales::new_scenario), name)}</h1>
        <p class="about">{say!(sales::about_scenario)}</p>
        <Entry
            label=say!(common::name)
            letters=true
            caret=is_new
            example=say!(sales::example_scenario)
            value=new.value(NAME, name)
            commit=new.commit(NAME, rename)
        />
        {new.needs()}
        {new.discard()}
        {rest}
    }
}
