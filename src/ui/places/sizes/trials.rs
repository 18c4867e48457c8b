//! Trials of changes.

use std::sync::Arc;

use leptos::prelude::*;

use super::asked;
use super::trial_shown::TrialShown;
use super::tried_out::span;
use crate::app::route::{Route, scope_from_text, scope_text};
use crate::book::{Book, Edit, Key, Record, Scope, Trial, TrialId};
use crate::foundation::in_order;
use crate::foundation::measure::Date;
use crate::say;
use crate::sizes::trial::judge;
use crate::ui::fields::{self, Addition, Choice, Choose, Day, Draft, Entry, Field};
use crate::ui::live::{press, rows, text, trouble, when};
use crate::ui::parts::{Back, Fold, is_wide, page_of};
use crate::ui::present::Present;
use crate::ui::random::random;
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words;

/// Weeks before the change that a new trial counts.
const WEEKS_BEFORE: i32 = 6;

/// Trials of changes.
#[component]
pub fn Trials() -> impl IntoView {
    let state = AppState::here();
    let today = today();
    let trials = Memo::new(move |_| state.book.with(listed));
    let row = move |key| {
        let Key::Trial(id) = key else { return ().into_any() };
        let name = text(move || state.book.with(|book| book.name(key)));
        let about = text(move || {
            state.book.with(|book| {
                let said = |trial: &Trial| {
                    let (drinks, day) = (words::scope(trial.scope, book), words::day(trial.start));
                    if trial.start > today {
                        say!(sales::trial_from, drinks = drinks, day = day)
                    } else {
                        say!(sales::trial_since, drinks = drinks, day = day)
                    }
                };
                book.trial(id).map(said).unwrap_or_default()
            })
        });
        let verdict = text(move || {
            let planned = |book: &Book| book.trial(id).is_some_and(|trial| trial.start > today);
            if state.book.with(planned) {
                return say!(sales::trial_planned).to_string();
            }
            state.book.with(|book| {
                match book.trial(id).map(|trial| state.ledger.with(|ledger| judge(book, ledger, trial, today))) {
                    Some(Ok(judged)) => words::verdict(judged.verdict).to_string(),
                    Some(Err(error)) => words::overflow(error),
                    None => String::new(),
                }
            })
        });
        view! {
            <li>
                <a class="row trial-row" href=Route::Trial(id).address()>
                    <span class="row-name">{name} <span class="row-about">{about}</span></span>
                    <span class="row-price">{verdict}</span>
                </a>
            </li>
        }
        .into_any()
    };
    let empty = move || trials.with(Vec::is_empty);
    let unwritten = move || state.book.with(|book| book.weeks().next().is_none());
    let teach = || {
        view! {
            <div class="teach">
                <h2>{say!(sales::did_it_work)}</h2>
                <p>{say!(sales::teach_trials)}</p>
            </div>
        }
        .into_any()
    };
    let write = || {
        view! {
            <p class="hollow">
                {say!(sales::trials_need_weeks)} " " <a href=Route::Sales.address()>{say!(sales::enter_weekly_sales)}</a>
            </p>
        }
        .into_any()
    };
    let start = move || {
        let id = TrialId::from_random(random());
        Draft::of_record(Key::Trial(id)).begin_on(state, Route::Trial(id));
    };
    view! {
        <Back to=Route::Sizes name=say!(first::sizes) />
        <h1>{say!(sales::trials)}</h1>
        <p class="about">{say!(sales::about_trials)}</p>
        {when(empty, teach)}
        {when(unwritten, write)}
        <ul class="rows section">{rows(trials, row)}</ul>
        <p class="actions">
            <button class="main" on:click=press(start)>
                {say!(sales::start_trial)}
            </button>
        </p>
    }
}

/// Every trial, the latest change first.
fn listed(book: &Book) -> Vec<Key> {
    let mut trials: Vec<(Date, Key)> = Vec::new();
    for trial in book.trials() {
        in_order::insert(&mut trials, (trial.start, Key::Trial(trial.id)), |other, trial| other.0 >= trial.0);
    }
    trials.into_iter().map(|(_, key)| key).collect()
}

/// The field of a new trial, by what is missing while it is empty.
const NAME: Field = Field::Name;

/// One trial.
#[component]
pub fn TrialPage(
    /// The trial.
    id: TrialId,
) -> impl IntoView {
    page_of(Key::Trial(id), Route::Trials, say!(sales::trials), move || view! { <Page id /> }.into_any())
}

fn changed(book: &Book, id: TrialId, change: impl FnOnce(&mut Trial)) -> Option<Edit> {
    let mut trial = book.trial(id)?.clone();
    change(&mut trial);
    Some(Edit::Put(Record::Trial(trial)))
}

#[component]
fn Page(id: TrialId) -> impl IntoView {
    let state = AppState::here();
    let today = today();
    let name = text(move || state.book.with(|book| book.name(Key::Trial(id))));
    let refused = RwSignal::new(None::<String>);
    let remove = move || refused.set(state.apply(say!(sales::delete_trial), Edit::Remove(Key::Trial(id))).err());
    let key = Key::Trial(id);
    let there = move |book: &Book| book.contains(key);
    let new = Addition::of(Draft::of_record(key), there, say!(sales::start_trial), move |typed, _| {
        let start = today.monday();
        let first = start.plus_weeks(-WEEKS_BEFORE);
        let trial = Trial { id, name: typed.name(NAME)?, scope: Scope::Menu, first, start, last: None };
        Some(Edit::Put(Record::Trial(trial)))
    });
    let is_new = !untrack(|| new.is_there());
    let rename =
        move || fields::text(say!(sales::trial_name), move |book, name| changed(book, id, |trial| trial.name = name));
    let rest = new.once_there(move || {
        view! {
            <div class="panes panes-answer-first">
                <div class="pane">
                    <TrialShown id today />
                </div>
                <div class="pane pane-asked">
                    {(!is_new).then(|| view! {
                        <Entry label=say!(sales::trial_name) letters=true value=name commit=rename() />
                    })}
                    <TrialFields id open=is_new />
                    {trouble(move || refused.get())}
                    <p class="actions">
                        <button class="quiet" on:click=press(remove)>
                            {say!(sales::delete_trial)}
                        </button>
                    </p>
                </div>
            </div>
        }
        .into_any()
    });
    view! {
        <Back to=Route::Trials name=say!(sales::trials) />
        <div class="title-row">
            <h1>{new.heading(say!(sales::new_trial), name)}</h1>
            {(!is_new).then(|| view! { <Present /> })}
        </div>
        {is_new.then(|| view! {
            <Entry
                label=say!(sales::trial_name)
                letters=true
                caret=true
                example=say!(sales::example_change)
                value=new.value(NAME, name)
                commit=new.commit(NAME, rename())
            />
        })}
        {new.needs()}
        {rest}
    }
}

/// What is compared; the fold stands `open` at first, as it does where there is room.
#[component]
fn TrialFields(id: TrialId, open: bool) -> impl IntoView {
    let state = AppState::here();
    let since =
        text(move || state.book.with(|book| book.trial(id).map(|trial| span(trial, today())).unwrap_or_default()));
    let open = Signal::stored(open || is_wide());
    let of = move |show: fn(&Trial) -> String| {
        text(move || state.book.with(|book| book.trial(id).map(show)).unwrap_or_default())
    };
    let set = move |step: &str, change: &dyn Fn(&mut Trial)| {
        let edit = state.book.with_untracked(|book| changed(book, id, |trial| change(trial)));
        edit.map_or(Ok(()), |edit| state.apply(step, edit))
    };
    let options = Memo::new(move |_| {
        state.book.with(|book| {
            let mut options = asked::all_scope_options(book);
            // Its drink may no longer be sold.
            let own = asked::scope_options(book, book.trial(id).map(|trial| trial.scope));
            options.extend(own.into_iter().filter(|own| !options.contains(own)).collect::<Vec<_>>());
            options
        })
    });
    let choose_scope: Choose = Arc::new(move |chosen| {
        let Some(scope) = scope_from_text(chosen) else { return Ok(()) };
        set(say!(sales::drinks_compared), &|trial| trial.scope = scope)
    });
    let monday =
        |chosen: &str| Date::from_text(chosen).map(Date::monday).ok_or_else(|| say!(sales::day_of_week).to_string());
    let choose_first: Choose = Arc::new(move |chosen| {
        let first = monday(chosen)?;
        set(say!(sales::compare_from), &|trial| trial.first = first)
    });
    let choose_start: Choose = Arc::new(move |chosen| {
        let start = monday(chosen)?;
        set(say!(sales::change_starts), &|trial| trial.start = start)
    });
    let choose_last: Choose = Arc::new(move |chosen| {
        let last = if chosen.is_empty() { None } else { Some(monday(chosen)?) };
        set(say!(sales::last_week), &|trial| trial.last = last)
    });
    view! {
        <Fold name=say!(sales::trial_setup) figure=since open>
            <p class="about">{say!(sales::about_trial_setup)}</p>
            <div class="fields">
                <Choice
                    label=say!(sales::drinks_compared)
                    options=options
                    value=of(|trial| scope_text(trial.scope))
                    choose=choose_scope
                />
                // A change may be planned, and so may the end of its trial; the weeks before have been.
                <Day label=say!(sales::compare_from) past=true weekly=true value=of(|trial| trial.first.to_string()) choose=choose_first />
                <Day
                    label=say!(sales::change_starts)
                    value=of(|trial| trial.start.to_string())
                    choose=choose_start
                />
                <Day
                    label=say!(sales::last_week)
                    note=say!(sales::blank_while_running)
                    value=of(|trial| trial.last.map(|last| last.to_string()).unwrap_or_default())
                    choose=choose_last
                />
            </div>
        </Fold>
    }
}
