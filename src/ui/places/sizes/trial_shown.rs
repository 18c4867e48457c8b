//! What a trial shows: its verdict, the difference, and the weeks.

use leptos::prelude::*;

use crate::app::route::Route;
use crate::book::TrialId;
use crate::foundation::measure::{Date, Exact};
use crate::foundation::statistics::Spread;
use crate::say;
use crate::sizes::trial::{Judged, Verdict, WeekSum, judge};
use crate::ui::chart::{Axis, Look, Series, chart};
use crate::ui::live::{live, text, trouble, when};
use crate::ui::parts::{Section, figures, wide_table};
use crate::ui::state::AppState;
use crate::words::{self, Speaker};

/// The verdict of a trial and what it rests on.
#[component]
pub fn TrialShown(
    /// The trial.
    id: TrialId,
    /// The day that it is.
    today: Date,
) -> impl IntoView {
    let state = AppState::here();
    let found = Memo::new(move |_| state.book.with(|book| book.trial(id).map(|trial| judge(book, trial, today))));
    let judged = move || found.get().and_then(Result::ok);
    let overflow = move || found.get().and_then(Result::err).map(words::overflow);
    let said = move |say: fn(&Judged, &Speaker) -> String| {
        text(move || judged().map(|judged| say(&judged, &state.speaker.get())).unwrap_or_default())
    };
    let verdict = said(|judged, _| words::verdict(judged.verdict).to_string());
    let class = text(move || {
        match judged().map(|judged| judged.verdict) {
            Some(Verdict::Better) => "verdict verdict-better",
            Some(Verdict::Worse) => "verdict verdict-worse",
            _ => "verdict",
        }
        .to_string()
    });
    let shape = text(move || {
        match judged().map(|judged| judged.verdict) {
            Some(Verdict::Better) => "M8 14V2.5M3 7.5l5-5 5 5",
            Some(Verdict::Worse) => "M8 2v11.5M3 8.5l5 5 5-5",
            _ => "M2 6c2-2 4-2 6 0s4 2 6 0M2 11c2-2 4-2 6 0s4 2 6 0",
        }
        .to_string()
    });
    let means = said(|judged, _| words::verdict_means(judged));
    let left_out = said(|judged, _| words::trial_left_out(judged));
    let how = said(words::trial_how);
    let shown = move || {
        let Some(interval) = judged().and_then(|judged| judged.interval) else { return Vec::new() };
        let of = |say: fn(&_, &Speaker) -> String| say(&interval, &state.speaker.get());
        vec![
            (say!(sales::weekly_difference).to_string(), of(words::trial_difference), None),
            (say!(sales::likely_range).to_string(), of(words::trial_interval), None),
        ]
    };
    let compared = move || judged().is_some_and(|judged| judged.interval.is_some());
    let any =
        move || judged().is_some_and(|judged| !judged.before.counted.is_empty() || !judged.after.counted.is_empty());
    let weeks = move || {
        view! {
            <Section
                heading=say!(sales::week_by_week)
                about=say!(sales::about_week_by_week)
            >
                {live(move || judged().map_or_else(|| ().into_any(), |judged| drawn(&judged, state)))}
                {live(move || judged().map_or_else(|| ().into_any(), |judged| table(&judged, state)))}
            </Section>
        }
        .into_any()
    };
    view! {
        {trouble(overflow)}
        <p class=class>
            <svg viewBox="0 0 16 16" aria-hidden="true">
                <path d=shape />
            </svg>
            {verdict}
        </p>
        {when(compared, move || view! { <dl class="figures trial-figures">{figures(shown)}</dl> }.into_any())}
        <p>{means}</p>
        <p class="about">{how}</p>
        <p class="hollow">{left_out}</p>
        {when(any, weeks)}
        <p class="hollow">{words::trial_caution()}</p>
        <p class="actions">
            <a class="button" href=Route::Sales.address()>
                {say!(sales::open_sales)}
            </a>
        </p>
    }
}

/// The weeks on both sides, and a line at the mean of each.
fn drawn(judged: &Judged, state: AppState) -> AnyView {
    let sides = [&judged.before.counted, &judged.after.counted];
    let Some(first) = sides.into_iter().flatten().next().map(|week| week.monday) else { return ().into_any() };
    let across = |monday: Date| {
        let days = u32::try_from(monday.days_since(first)).unwrap_or_default();
        Exact::from(days).over(Exact::new(7, 0)).unwrap_or_default().plus(Exact::ONE).unwrap_or_default()
    };
    let points = |weeks: &[WeekSum]| -> Vec<(Exact, Exact)> {
        weeks.iter().map(|week| (across(week.monday), week.contribution.major())).collect()
    };
    let mean = |weeks: &[WeekSum], spread: &Option<Spread>| -> Vec<(Exact, Exact)> {
        let mean = spread.map(|spread| spread.mean);
        let ends = [weeks.first(), weeks.last()].into_iter().flatten();
        ends.filter_map(|week| Some((across(week.monday), mean?))).collect()
    };
    let series = [
        (say!(sales::before), Look::Points, points(&judged.before.counted)),
        (say!(sales::with_change), Look::Squares, points(&judged.after.counted)),
        (say!(sales::side_averages), Look::Guide, mean(&judged.before.counted, &judged.before.spread)),
        ("", Look::Guide, mean(&judged.after.counted, &judged.after.spread)),
    ];
    let named = |(name, look, points): (&str, Look, Vec<(Exact, Exact)>)| Series { name: name.into(), look, points };
    let series: Vec<Series> = series.into_iter().filter(|it| !it.2.is_empty()).map(named).collect();
    let week = Axis {
        name: say!(sales::axis_weeks, day = words::day(first)),
        from_zero: false,
        mark: Box::new(move |number| state.number(number)),
    };
    let left = Axis {
        name: say!(sales::profit).into(),
        from_zero: false,
        mark: Box::new(move |number| state.money_mark(number)),
    };
    chart(&week, &left, &series)
}

fn table(judged: &Judged, state: AppState) -> AnyView {
    let row = move |side: &'static str| {
        move |week: &WeekSum| {
            view! {
                <tr>
                    <th scope="row">
                        <a href=Route::SalesWeek(week.monday).address()>{words::day(week.monday)}</a>
                    </th>
                    <td>{side}</td>
                    <td>{state.number(week.units)}</td>
                    <td>{state.money(week.contribution)}</td>
                </tr>
            }
        }
    };
    let before: Vec<_> = judged.before.counted.iter().map(row(say!(sales::before))).collect();
    let after = judged.after.counted.iter().map(row(say!(sales::with_change)));
    let rows = before.into_iter().chain(after).collect_view().into_any();
    let heads = [say!(sales::side), say!(sales::drinks_sold), say!(sales::profit)];
    wide_table(say!(sales::trial_weeks), "table", &heads, rows)
}
