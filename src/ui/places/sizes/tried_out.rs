//! Trying a change out: a press says what trial it would set up, another sets it up, and what it shows comes back.

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

/// A trial of more weeks tells nothing that is still true then: half a year. Our own choice, no source.
pub const MOST_WEEKS: u32 = 26;

/// How long a trial takes to tell.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Takes {
    /// So many weeks.
    Weeks(u32),
    /// No number of weeks that anyone would wait for: the difference is too small.
    TooLong,
    /// Nobody knows how far weeks swing.
    Unknown,
}

impl Takes {
    /// Weeks that a trial is set up for.
    const fn weeks(self) -> u32 {
        match self {
            Takes::Weeks(weeks) => weeks,
            Takes::TooLong | Takes::Unknown => USUAL_WEEKS,
        }
    }
}

/// A change that can be tried.
#[derive(Clone, PartialEq)]
pub struct TryIt {
    /// The part of the menu by whose sales it is judged.
    pub scope: Scope,
    /// The question, as its page says it.
    pub name: String,
    /// How long a trial takes to tell.
    pub takes: Takes,
    /// Whether it is worth a trial: it can pay.
    pub offered: bool,
}

/// The button that sets a trial up; where there is one, what it shows so far.
pub fn tried_out(asked: impl Fn() -> Option<TryIt> + Send + Sync + 'static) -> AnyView {
    let state = AppState::here();
    let (refused, open) = (RwSignal::new(None::<String>), RwSignal::new(false));
    let asked = Memo::new(move |_| asked());
    let trial = Memo::new(move |_| {
        let asked = asked.get()?;
        state.book.with(|book| trial_for(book, asked.scope, &asked.name).cloned())
    });
    let shown = move || match (asked.get(), trial.get()) {
        (_, Some(trial)) => result(state, &trial),
        (Some(asked), None) if asked.offered => offer(state, asked, open, refused),
        _ => ().into_any(),
    };
    view! {
        {live(shown)}
        {trouble(move || refused.get())}
    }
    .into_any()
}

fn offer(state: AppState, asked: TryIt, open: RwSignal<bool>, refused: RwSignal<Option<String>>) -> AnyView {
    let (button, said) = match asked.takes {
        Takes::TooLong => return view! { <p class="to-enter">{say!(sales::trial_never_tells)}</p> }.into_any(),
        Takes::Weeks(weeks) if weeks > MOST_WEEKS => {
            let said = say!(sales::trial_cannot_tell, weeks = count(weeks));
            return view! { <p class="to-enter">{said}</p> }.into_any();
        }
        Takes::Weeks(weeks) => {
            (say!(sales::try_it_for, weeks = count(weeks)), say!(sales::trial_length, weeks = count(weeks)))
        }
        Takes::Unknown if state.book.with(|book| book.weeks().next().is_some()) => {
            (say!(sales::try_it).to_string(), say!(sales::trial_length_elsewhere).to_string())
        }
        Takes::Unknown => (say!(sales::try_it).to_string(), say!(sales::trial_length_unknown).to_string()),
    };
    let made = StoredValue::new(asked);
    let trial = move || {
        let asked = made.get_value();
        let weeks = asked.takes.weeks();
        let id = TrialId::from_random(random());
        state.book.with_untracked(|book| trial_of(book, asked.scope, id, &asked.name, weeks, today()))
    };
    let begin = move || {
        let trial = trial();
        let begun = trial
            .map_err(words::overflow)
            .and_then(|trial| state.apply(say!(sales::set_up_trial), Edit::Put(Record::Trial(trial))));
        refused.set(begun.err());
        open.set(false);
    };
    let press_it = move || {
        let button = button.clone();
        view! {
            <p class="actions">
                <button class="main" on:click=press(move || open.set(true))>
                    {button}
                </button>
            </p>
            <p class="soft to-enter">{said.clone()}</p>
        }
        .into_any()
    };
    let sets_up = move || {
        let weeks = made.with_value(|asked| asked.takes.weeks());
        let runs = trial().map_or_else(words::overflow, |trial| {
            let last = trial.last.unwrap_or(trial.start).plus_days(6);
            say!(sales::trial_runs, weeks = count(weeks), first = words::day(trial.start), last = words::day(last))
        });
        view! {
            <div class="use-this">
                <h3>{say!(sales::trial_sets_up)}</h3>
                <p>{runs}</p>
                <p class="soft">{say!(sales::trial_compares)}</p>
                <p class="actions">
                    <button class="main" on:click=press(begin)>{say!(sales::set_up_trial)}</button>
                    <button class="quiet" on:click=press(move || open.set(false))>{say!(decide::not_yet)}</button>
                </p>
            </div>
        }
        .into_any()
    };
    live(move || if open.get() { sets_up() } else { press_it() })
}

fn count(weeks: u32) -> usize {
    usize::try_from(weeks).unwrap_or(usize::MAX)
}

/// What a trial shows so far, and the way to it.
fn result(state: AppState, trial: &Trial) -> AnyView {
    let day = today();
    let since = span(trial, day);
    if trial.start > day {
        let open = Route::Trial(trial.id).address();
        return view! {
            <p>
                <strong>{since}</strong>
            </p>
            <p class="about">{say!(sales::trial_not_begun)}</p>
            <p class="actions">
                <a class="button" href=open>{say!(sales::open_trial)}</a>
            </p>
        }
        .into_any();
    }
    let judged = state.book.with(|book| state.ledger.with(|ledger| judge(book, ledger, trial, day)));
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
pub fn span(trial: &Trial, today: Date) -> String {
    let start = words::day(trial.start);
    match trial.last {
        Some(last) if trial.start > today => {
            say!(sales::trial_plan_from, first = start, last = words::day(last.plus_days(6)))
        }
        None if trial.start > today => say!(sales::trial_begins, day = start),
        Some(last) if last.plus_weeks(1) <= today => {
            say!(sales::trial_ended, first = start, last = words::day(last.plus_days(6)))
        }
        _ => say!(sales::trial_began, day = start),
    }
}
