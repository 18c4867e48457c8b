//! The yields over their days.

use leptos::prelude::*;

use crate::buying::yield_log::{Single, Step, Summary};
use crate::foundation::measure::{Date, Exact};
use crate::say;
use crate::ui::chart::{Axis, Look, Series, chart};
use crate::ui::state::AppState;
use crate::words;

/// Each yield at its day, a line at the mean of each step, and what stands apart. Draws nothing if
/// only one weighing tells: one point shows no more than its figure.
pub fn drawn(state: AppState, told: &[Summary]) -> AnyView {
    let first = told.iter().filter_map(|summary| summary.singles.first()).map(|single| single.day).min();
    let Some(first) = first.filter(|_| told.iter().any(|summary| summary.singles.len() > 1)) else {
        return ().into_any();
    };
    let across = |day: Date| Exact::new(i64::from(day.days_since(first)), 0);
    let point = |single: &Single| Some((across(single.day), single.share.percent().ok()?));
    let mut series = Vec::new();
    let mut apart = Vec::new();
    for summary in told {
        let outlier = summary.outlier();
        let (there, off): (Vec<&Single>, Vec<&Single>) =
            summary.singles.iter().partition(|single| outlier.is_none_or(|outlier| outlier.place != single.place));
        apart.extend(off.into_iter().filter_map(point));
        let look = if summary.step == Step::Trim { Look::Points } else { Look::Squares };
        let points = there.into_iter().filter_map(point).collect();
        series.push(Series { name: words::yield_log::step(summary.step).to_string(), look, points });
        let ends = [summary.singles.first(), summary.singles.last()].into_iter().flatten();
        let mean = ends.filter_map(|single| Some((across(single.day), summary.mean.percent().ok()?))).collect();
        let name = if series.len() == 1 { say!(goods::average).to_string() } else { String::new() };
        series.push(Series { name, look: Look::Guide, points: mean });
    }
    if !apart.is_empty() {
        series.push(Series { name: say!(goods::unusual_ones).to_string(), look: Look::Third, points: apart });
    }
    let days = Axis {
        name: say!(goods::days_since, day = words::day(first)),
        from_zero: true,
        mark: Box::new(move |number| state.number(number)),
    };
    let share = Axis {
        name: say!(goods::percent).to_string(),
        from_zero: false,
        mark: Box::new(move |number| state.number(number)),
    };
    view! {
        <p>{say!(goods::yields_drawn)}</p>
        {chart(&days, &share, &series)}
    }
    .into_any()
}
