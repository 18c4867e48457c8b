//! What a week brings, now and with what is tried: the answer that stays in view.

use leptos::prelude::*;

use super::Trying;
use crate::app::route::Route;
use crate::book::Book;
use crate::foundation::measure::Exact;
use crate::say;
use crate::sizes::side_by_side::Week;
use crate::ui::live::{live, text};
use crate::ui::parts::{Says, answer_figures, verdict};
use crate::ui::state::AppState;
use crate::words::Decisions;
use crate::words::scenarios::without_sign;

/// The answer: a sentence and its figures.
#[component]
pub fn Earned(trying: Trying) -> impl IntoView {
    let state = AppState::here();
    let weeks = Memo::new(move |_| {
        trying.columns.with(|columns| {
            let then = columns.then.as_ref().and_then(|then| then.as_ref().ok()).map(|then| then.week);
            columns.week.map(|now| (now, then))
        })
    });
    let said = move || match weeks.get() {
        None => (Says::Open, say!(sales::no_week_known).to_string()),
        Some((now, None)) => (Says::Open, say!(sales::week_earned, profit = state.money(now.profit))),
        Some((now, Some(then))) => changed(state, now, then),
    };
    let figures = move || {
        let Some((now, Some(then))) = weeks.get() else { return Vec::new() };
        let names = [say!(common::today), say!(sales::with_changes), say!(sales::difference)];
        names.map(str::to_string).into_iter().zip(said_of(state, now, then)).collect()
    };
    let terms = live(move || match weeks.get() {
        None => view! {
            <p class="soft">
                {say!(sales::enter_week_first)} " " <a href=Route::Sales.address()>{say!(sales::enter_weekly_sales)}</a>
            </p>
        }
        .into_any(),
        Some((now, then)) => {
            let same = say!(sales::same_sales, drinks = state.speaker.get().counted(now.units.rounded(1)));
            let even = then.and_then(|then| even(now, then));
            let even = even.map(|buyers| say!(sales::even_at, buyers = state.number(buyers)));
            view! { <p class="soft">{same} " " {even}</p> }.into_any()
        }
    });
    let unread = text(move || trying.hangs.sentence());
    view! {
        <div class="answer-bar earned">
            {trying.hangs.while_read(move || view! {
                {verdict(said)}
                {answer_figures(figures)}
            }.into_any())}
            <p class="hollow" role="status">{unread}</p>
        </div>
        {terms}
    }
}

/// What a week brings now and then, and the difference.
fn said_of(state: AppState, now: Week, then: Week) -> [String; 3] {
    let words = |book: &Book| Decisions { book, speaker: &state.speaker.get() }.now_and_then(now.profit, then.profit);
    state.book.with(words)
}

/// How much more or less a week brings.
fn changed(state: AppState, now: Week, then: Week) -> (Says, String) {
    let more = then.profit.minus(now.profit).unwrap_or_default();
    let [_, _, difference] = said_of(state, now, then);
    let by = without_sign(&difference);
    match (more.is_positive(), more.is_negative()) {
        (true, _) => (Says::Yes, say!(sales::earns_more_a_week, profit = by)),
        (_, true) => (Says::No, say!(sales::earns_less_a_week, profit = by)),
        _ => (Says::Open, say!(sales::earns_same_a_week).to_string()),
    }
}

/// With how many of 100 buyers as much is earned as today. Returns `None` where that cannot be, or is the same.
fn even(now: Week, then: Week) -> Option<Exact> {
    let share = now.profit.ratio_to(then.profit).ok().filter(|_| then.profit.is_positive())?;
    let buyers = share.times(Exact::new(100, 0)).ok()?.ceiling();
    (buyers.is_positive() && now.profit != then.profit).then_some(buyers)
}
