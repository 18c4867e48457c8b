//! Trying a change out: its trial is set up in one press, and what it shows comes back.

use leptos::prelude::*;

use crate::app::route::Route;
use crate::book::{Edit, Record, Scope, Trial, TrialId};
use crate::foundation::measure::Date;
use crate::say;
use crate::sizes::decision::trial_of;
use crate::sizes::trial::{judge, trial_for};
use crate::ui::live::{live, press, trouble};
use crate::ui::parts::answer_figures;
use crate::ui::random::random;
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words;

/// Weeks of a trial where nobody knows how far weeks swing.
const USUAL_WEEKS: u32 = 6;

/// A change that can be tried.
#[derive(Clone, PartialEq)]
pub struct TryIt {
    /// The part of the menu by whose sales it is judged.
    pub scope: Scope,
    /// The question, as its page says it.
    pub name: String,
    /// Weeks that a trial takes to tell. It is `None` where it is not known.
    pub weeks: Option<u32>,
    /// Whether it is worth a trial: it can pay.
    pub offered: bool,
}

/// The button that sets a trial up; where there is one, what it shows so far.
pub fn tried_out(asked: impl Fn() -> Option<TryIt> + Send + Sync + 'static) -> AnyView {
    let state = AppState::here();
    let refused = RwSignal::new(None::<String>);
    let asked = Memo::new(move |_| asked());
    let trial = Memo::new(move |_| {
        let asked = asked.get()?;
        state.book.with(|book| trial_for(book, asked.scope, &asked.name).cloned())
    });
    let shown = move || match (asked.get(), trial.get()) {
        (_, Some(trial)) => result(state, &trial),
        (Some(asked), None) if asked.offered => offer(state, asked, refused),
        _ => ().into_any(),
    };
    view! {
        {live(shown)}
        {trouble(move || refused.get())}
    }
    .into_any()
}

fn offer(state: AppState, asked: TryIt, refused: RwSignal<Option<String>>) -> AnyView {
    let (button, said) = match asked.weeks {
        Some(weeks) => (say!(sales::try_it_for, weeks = count(weeks)), say!(sales::trial_length, weeks = count(weeks))),
        None if state.book.with(|book| book.weeks().next().is_some()) => {
            (say!(sales::try_it).to_string(), say!(sales::trial_length_elsewhere).to_string())
        }
        None => (say!(sales::try_it).to_string(), say!(sales::trial_length_unknown).to_string()),
    };
    let begin = move || {
        let trial = state.book.with_untracked(|book| {
            let (id, weeks) = (TrialId::from_random(random()), asked.weeks.unwrap_or(USUAL_WEEKS));
            trial_of(book, asked.scope, id, &asked.name, weeks, today())
        });
        let begun = trial
            .map_err(words::overflow)
            .and_then(|trial| state.apply(say!(sales::set_up_trial), Edit::Put(Record::Trial(trial))));
        refused.set(begun.err());
    };
    view! {
        <p class="actions">
            <button class="main" on:click=press(begin)>
                {button}
            </button>
        </p>
        <p class="soft to-enter">{said}</p>
    }
    .into_any()
}

fn count(weeks: u32) -> usize {
    usize::try_from(weeks).unwrap_or(usize::MAX)
}

/// What a trial shows so far, and the way to it.
fn result(state: AppState, trial: &Trial) -> AnyView {
    let day = today();
    let since = span(trial, day);
    let judged = state.book.with(|book| judge(book, trial, day));
    let (verdict, means, interval) = match judged {
        Ok(judged) => (words::verdict(judged.verdict), words::verdict_means(&judged), judged.interval),
        Err(error) => ("", words::overflow(error), None),
    };
    let figures = interval.map(|interval| {
        let speaker = state.speaker.get();
        let figures = vec![
            (say!(sales::weekly_difference).to_string(), words::trial_difference(&interval, &speaker)),
            (say!(sales::likely_range).to_string(), words::trial_interval(&interval, &speaker)),
        ];
        answer_figures(move || figures.clone())
    });
    view! {
        <p>
            <strong>{say!(sales::named_figure, name = since, figure = verdict)}</strong>
        </p>
        {figures}
        <p class="about">{means}</p>
        <p class="actions">
            <a class="button" href=Route::Trial(trial.id).address()>
                {say!(sales::open_trial)}
            </a>
        </p>
    }
    .into_any()
}

/// From when to when a trial goes: "Trial since Nov 2, 2026".
fn span(trial: &Trial, today: Date) -> String {
    let start = words::day(trial.start);
    match trial.last {
        _ if trial.start > today => say!(sales::trial_begins, day = start),
        Some(last) if last.plus_weeks(1) <= today => {
            say!(sales::trial_ended, first = start, last = words::day(last.plus_days(6)))
        }
        _ => say!(sales::trial_began, day = start),
    }
}
