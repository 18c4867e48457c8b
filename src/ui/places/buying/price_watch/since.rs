//! What the prices since a day moved.

use std::sync::Arc;

use leptos::prelude::*;

use super::moved::shown;
use crate::buying::price_watch::{Since, WatchError, since};
use crate::foundation::measure::Date;
use crate::say;
use crate::ui::fields::{Choose, Day};
use crate::ui::kept;
use crate::ui::live::{flag, press, text, trouble, when};
use crate::ui::parts::{Says, verdict};
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words;

/// Weeks back that one tap chooses; the second is chosen at the start.
const BACK: [u8; 4] = [1, 2, 4, 12];

/// What the prices since a day moved.
#[component]
pub fn SinceADay() -> impl IntoView {
    let state = AppState::here();
    let today = today();
    let back = move |weeks: u8| today.plus_days(i32::from(weeks).saturating_mul(7).saturating_neg());
    let day = kept::chosen("since", back(2), |day| day.to_string(), Date::from_text);
    let found = Memo::new(move |_| -> Option<Result<Since, WatchError>> {
        Some(state.book.with(|book| state.ledger.with(|ledger| since(book, ledger, day.get()))))
    });
    let ok = move |read: fn(&Since, Date, AppState) -> String| {
        text(move || {
            found.with(|found| match found {
                Some(Ok(found)) => read(found, day.get(), state),
                _ => String::new(),
            })
        })
    };
    let wrong = move || {
        let error = found.with(|found| found.as_ref()?.as_ref().err().cloned())?;
        Some(state.book.with(|book| words::watch::watch_error(&error, book)))
    };
    let sentence = ok(|found, on, _| words::watch::since(found, on));
    let risen = ok(|found, _, state| state.book.with(|book| words::watch::risen_in_fallen(&found.watched, book)));
    let answered = move || found.with(|found| found.as_ref().is_some_and(Result::is_ok));
    let answer = move || {
        verdict(move || {
            found.with(|found| match found {
                Some(Ok(found)) if found.watched.fallen() > 0 => {
                    (Says::No, words::watch::fallen_since(found, day.get()))
                }
                Some(Ok(found)) => (Says::Yes, words::watch::fallen_since(found, day.get())),
                _ => (Says::Open, String::new()),
            })
        })
    };
    let unknown = ok(|found, on, state| state.book.with(|book| words::watch::unknown(&found.unknown, on, book)));
    let watched = Memo::new(move |_| found.with(|found| found.as_ref()?.as_ref().ok().map(|it| it.watched.clone())));
    let choose: Choose = Arc::new(move |chosen| {
        let chosen = Date::from_text(chosen).ok_or(say!(market::choose_past_day))?;
        if chosen > today {
            return Err(words::watch::ahead(chosen));
        }
        day.set(chosen);
        Ok(())
    });
    let chip = |weeks: u8| {
        let name = say!(market::weeks_back, weeks = usize::from(weeks));
        let pressed = flag(move || day.get() == back(weeks));
        let pressed = text(move || pressed.get().to_string());
        view! {
            <button class="chip" aria-pressed=pressed on:click=press(move || day.set(back(weeks)))>
                {name}
            </button>
        }
    };
    view! {
        <div class="panes watch-panes">
            <section class="pane-asked watch-asked">
                <h2 class="unseen">{say!(market::price_changes)}</h2>
                <div class="chips" role="group" aria-label=say!(market::choose_period)>
                    {BACK.map(chip).collect_view()}
                </div>
                <Day label=say!(market::since) past=true value=text(move || day.get().to_string()) choose=choose />
                {trouble(wrong)}
            </section>
            <div class="pane">
                {when(answered, answer)}
                <p class="watch-said">{risen}</p>
                <p class="hollow" role="status">{sentence}</p>
                {shown(state, watched, [say!(market::before), say!(market::now), say!(market::change)])}
                <p class="hollow">{unknown}</p>
            </div>
        </div>
    }
}
