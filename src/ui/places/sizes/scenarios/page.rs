//! One scenario: what it brings against today, what it changes, and its drinks.

use leptos::prelude::*;

use super::adopting::Adopting;
use super::compared::Compared;
use super::drinks::Drinks;
use super::{COVER, changed, now, said, stuck, then, then_ours, weekly};
use crate::app::route::Route;
use crate::book::{Book, Edit, KeptConditions, Key, Record, Scenario, ScenarioId};
use crate::drink::ledger::Ledger;
use crate::foundation::measure::Money;
use crate::say;
use crate::sizes::scenario::{Menu, WeeklyToday, drafted, uses};
use crate::ui::address::go;
use crate::ui::fields::{self, Addition, Commit, Draft, Entry, Field};
use crate::ui::live::{live, press, text};
use crate::ui::parts::{Back, Says, answer_figures, page_of, verdict};
use crate::ui::places::sizes::what_if::{left_out, said as said_of_uses};
use crate::ui::present::Present;
use crate::ui::state::AppState;
use crate::words::scenarios::Scenarios as Words;

/// The field of a new scenario, by what is missing while it is empty.
const NAME: Field = Field::Name;

/// One scenario.
#[component]
pub fn ScenarioPage(
    /// The scenario.
    id: ScenarioId,
) -> impl IntoView {
    page_of(Key::Scenario(id), Route::Scenarios, say!(sales::scenarios), move || view! { <Page id /> }.into_any())
}

#[component]
fn Page(id: ScenarioId) -> impl IntoView {
    let state = AppState::here();
    let name = text(move || state.book.with(|book| book.name(Key::Scenario(id))));
    let key = Key::Scenario(id);
    let there = move |book: &Book| book.contains(key);
    let new = Addition::of(Draft::of_record(key), there, say!(sales::copy_menu), move |typed, book| {
        let offers = book.offers().cloned().collect();
        let scenario = Scenario { id, name: typed.name(NAME)?, offers, conditions: KeptConditions::default() };
        Some(Edit::Put(Record::Scenario(scenario)))
    });
    let is_new = !untrack(|| new.is_there());
    let rename = rename(id);
    let rest = new.once_there(move || view! { <Rest id named=!is_new /> }.into_any());
    view! {
        <Back to=Route::Scenarios name=say!(sales::scenarios) />
        <div class="title-row">
            <h1>{new.heading(say!(sales::new_scenario), name)}</h1>
            <Present />
        </div>
        {is_new.then(|| view! {
            <Entry
                label=say!(common::name)
                letters=true
                caret=true
                example=say!(sales::example_scenario)
                value=new.value(NAME, name)
                commit=new.commit(NAME, rename)
            />
        })}
        {new.needs()}
        {new.discard()}
        {rest}
    }
}

/// Gives it another name.
fn rename(id: ScenarioId) -> Commit {
    fields::text(say!(sales::scenario_name), move |book, name| changed(book, id, |it| it.name = name))
}

/// What is there once it has a name; the field of the name too, where it was `named` before.
#[component]
fn Rest(id: ScenarioId, named: bool) -> impl IntoView {
    let state = AppState::here();
    let name = text(move || state.book.with(|book| book.name(Key::Scenario(id))));
    let ledger = Memo::new(move |_| {
        let draft = |book: &Book| Some(drafted(book, book.scenario(id)?).ok()?.ledger);
        state.book.with(draft).unwrap_or_default()
    });
    let ledger: Signal<Ledger> = ledger.into();
    let drop_it = move || {
        if state.apply(say!(sales::discard_scenario), Edit::Remove(Key::Scenario(id))).is_ok() {
            go(Route::Scenarios);
        }
    };
    let weekly = weekly(state);
    let both = Memo::new(move |_| now(state, weekly, COVER).zip(then(state, id, weekly, COVER)));
    let answer = move || match both.get() {
        Some((today, then)) => (says(&today, &then), said(state, |words| words.against_today(&today, &then))),
        None => (Says::Open, stuck(state, id).unwrap_or_else(|| say!(decide::no_sales_yet).to_string())),
    };
    let figures = move || {
        let Some((today, then)) = both.get() else { return Vec::new() };
        let words = |book: &Book| Words { book, speaker: &state.speaker.get() }.now_and_then(&today, &then);
        let names = [say!(common::today), say!(sales::in_this_scenario), say!(sales::difference)];
        names.map(str::to_string).into_iter().zip(state.book.with(words)).collect()
    };
    view! {
        <div class="answer-bar earned">
            {verdict(answer)}
            {answer_figures(figures)}
        </div>
        <p class="soft">{say!(sales::scenario_terms)}</p>
        {live(move || stays_out(state, id, weekly))}
        <div class="panes">
            <div class="pane">
                <Adopting id />
                {named.then(|| view! {
                    <Entry label=say!(common::name) letters=true value=name commit=rename(id) />
                })}
                <p class="actions">
                    <button class="quiet" on:click=press(drop_it)>
                        {say!(sales::discard_scenario)}
                    </button>
                </p>
            </div>
            <div class="pane">
                <Compared id weekly />
                <Drinks id ledger />
            </div>
        </div>
    }
}

/// What the figures count and making it the menu leaves out, since the owner does not set it.
fn stays_out(state: AppState, id: ScenarioId, weekly: Memo<WeeklyToday>) -> AnyView {
    let uses = state.book.with(|book| book.scenario(id).map(|scenario| uses(book, scenario)).unwrap_or_default());
    let [_, left] = said_of_uses(state, &uses);
    left_out(state, left, || {
        let both = now(state, weekly, COVER).zip(then_ours(state, id, weekly, COVER));
        both.map(|(today, then)| (today.profit, then.profit))
    })
}

/// What a scenario says against today.
fn says(today: &Menu, then: &Menu) -> Says {
    match then.profit.minus(today.profit).unwrap_or(Money::ZERO) {
        more if more.is_positive() => Says::Yes,
        more if more.is_negative() => Says::No,
        _ => Says::Open,
    }
}
