//! Weeks over time: the axis that they stand on, and profit week by week with each change marked.

use leptos::prelude::*;

use crate::drink::sales;
use crate::foundation::measure::{Date, Exact, Money};
use crate::say;
use crate::ui::chart::{Axis, Chart, Look, Marked, Series};
use crate::ui::live::live;
use crate::ui::parts::Section;
use crate::ui::state::AppState;
use crate::words;

/// Weeks that are drawn at once: two years.
const DRAWN: usize = 104;

/// The axis of weeks from this Monday on; a number on it is weeks since then.
pub fn axis(first: Date) -> Axis {
    let mark = move |number: Exact| {
        let weeks = number.whole_parts(0).filter(|_| number == number.rounded(0));
        let weeks = weeks.and_then(|weeks| i32::try_from(weeks).ok());
        weeks.map(|weeks| words::short_day(first.plus_weeks(weeks))).unwrap_or_default()
    };
    Axis { name: say!(sales::week_beginning).to_string(), from_zero: false, mark: Box::new(mark) }
}

/// Where a Monday stands on it.
pub fn at(first: Date, monday: Date) -> Exact {
    Exact::new(i64::from(monday.days_since(first)), 0).over(Exact::new(7, 0)).unwrap_or_default()
}

/// The axis of profit, and how a profit is written.
pub fn profit(state: AppState) -> (Axis, Box<dyn Fn(Exact) -> String>) {
    let axis = Axis {
        name: say!(sales::profit).to_string(),
        from_zero: false,
        mark: Box::new(move |number| state.money_mark(number)),
    };
    (axis, Box::new(move |number| untrack(|| state.money(Money::from_major(number)))))
}

/// Profit of each week that was written down, and the trials that began among them. Draws nothing before there
/// are two weeks.
#[component]
pub fn OverTime() -> impl IntoView {
    let state = AppState::here();
    live(move || {
        let (weeks, starts) = state.book.with(|book| {
            let weeks = book.weeks().rev().take(DRAWN);
            let week = |week: &crate::book::Week| Some((week.monday, sales::sold_in(week).ok()?.1));
            let weeks: Vec<(Date, Money)> = weeks.filter_map(week).collect();
            let starts: Vec<(Date, String)> = book.trials().map(|trial| (trial.start, trial.name.clone())).collect();
            (weeks.into_iter().rev().collect::<Vec<_>>(), starts)
        });
        let (Some((first, _)), Some((last, _))) =
            (weeks.first().copied(), weeks.get(1..).and_then(<[_]>::last).copied())
        else {
            return ().into_any();
        };
        let points = weeks.iter().map(|(monday, profit)| (at(first, *monday), profit.major())).collect();
        let series = [Series { name: say!(sales::profit).to_string(), look: Look::First, points }];
        let begun = starts.into_iter().filter(|(start, _)| first < *start && *start <= last);
        let mark = |(start, name): (Date, String)| Marked {
            name: say!(sales::change_at, change = name),
            at: at(first, start),
        };
        let marked: Vec<Marked> = begun.map(mark).collect();
        let (up, figure) = profit(state);
        let across = axis(first);
        let drawn =
            Chart { across: &across, up: &up, series: &series, marked: &marked, figure: Some(figure) }.with_table();
        view! { <Section heading=say!(sales::over_time)>{drawn}</Section> }.into_any()
    })
}
