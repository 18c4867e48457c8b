//! What the prices since a day moved.

use std::sync::Arc;

use leptos::prelude::*;

use super::moved::shown;
use crate::buying::price_watch::{Since, WatchError, since};
use crate::foundation::measure::Date;
use crate::say;
use crate::ui::fields::{Choose, Day};
use crate::ui::live::{flag, press, text, trouble};
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
    let day = RwSignal::new(back(2));
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
        <section class="section">
            <h2>{say!(market::price_changes)}</h2>
            <div class="chips" role="group" aria-label=say!(market::choose_period)>
                {BACK.map(chip).collect_view()}
            </div>
            <div class="fields">
                <Day label=say!(market::since) past=true value=text(move || day.get().to_string()) choose=choose />
            </div>
            <p class="watch-said" role="status">{sentence}</p>
            {trouble(wrong)}
            <p class="hollow">{unknown}</p>
            <p class="about">{say!(market::current_packs_only)}</p>
        </section>
        {shown(state, watched, [say!(market::before), say!(market::now), say!(market::change)])}
    }
}
