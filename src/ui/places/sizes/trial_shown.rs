//! What a trial shows: its verdict, the difference, and the weeks.

use leptos::prelude::*;

use super::over_time::{at, axis, profit};
use super::tried_out::span;
use crate::app::route::Route;
use crate::book::TrialId;
use crate::foundation::measure::{Date, Exact};
use crate::foundation::statistics::{Interval, Spread};
use crate::say;
use crate::sizes::trial::{Judged, Verdict, WeekSum, judge};
use crate::ui::chart::{Chart, Look, Marked, Series};
use crate::ui::live::{live, text, trouble, when};
use crate::ui::parts::{Fold, Says, Section, answer_figures, verdict, wide_table};
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
    let found = Memo::new(move |_| {
        state
            .book
            .with(|book| state.ledger.with(|ledger| book.trial(id).map(|trial| judge(book, ledger, trial, today))))
    });
    let judged = move || found.get().and_then(Result::ok);
    let overflow = move || found.get().and_then(Result::err).map(words::overflow);
    let said = move |say: fn(&Judged, &Speaker) -> String| {
        text(move || judged().map(|judged| say(&judged, &state.speaker.get())).unwrap_or_default())
    };
    let planned = move || state.book.with(|book| book.trial(id).is_some_and(|trial| trial.start > today));
    let says = move || {
        if planned() {
            return (Says::Open, say!(sales::trial_planned).to_string());
        }
        let found = judged().map(|judged| judged.verdict);
        let says = match found {
            Some(Verdict::Better) => Says::Yes,
            Some(Verdict::Worse) => Says::No,
            _ => Says::Open,
        };
        (says, found.map(|found| words::verdict(found).to_string()).unwrap_or_default())
    };
    let verdict_means = said(|judged, _| words::verdict_means(judged));
    let means = text(move || {
        if planned() {
            let span = state.book.with(|book| book.trial(id).map(|trial| span(trial, today)).unwrap_or_default());
            return [span.as_str(), say!(sales::trial_not_begun)].join(". ");
        }
        verdict_means.get()
    });
    let left_out = said(|judged, _| words::trial_left_out(judged));
    let how = said(words::trial_how);
    let shown = move || {
        let Some(interval) = judged().and_then(|judged| judged.interval) else { return Vec::new() };
        let of = |say: fn(&_, &Speaker) -> String| say(&interval, &state.speaker.get());
        vec![
            (say!(sales::weekly_difference).to_string(), of(words::trial_difference)),
            (say!(sales::likely_range).to_string(), of(words::trial_interval)),
        ]
    };
    let compared = move || judged().is_some_and(|judged| judged.interval.is_some());
    let any =
        move || judged().is_some_and(|judged| !judged.before.counted.is_empty() || !judged.after.counted.is_empty());
    let count = text(move || {
        let count = judged().map_or(0, |judged| judged.before.counted.len() + judged.after.counted.len());
        say!(sales::count_weeks, weeks = count)
    });
    let weeks = move || {
        view! {
            <Section heading=say!(sales::week_by_week) about=say!(sales::about_week_by_week)>
                {live(move || judged().map_or_else(|| ().into_any(), |judged| drawn(&judged, state)))}
                <Fold name=say!(sales::trial_weeks) figure=count>
                    {live(move || judged().map_or_else(|| ().into_any(), |judged| table(&judged, state)))}
                </Fold>
            </Section>
        }
        .into_any()
    };
    view! {
        {trouble(overflow)}
        <section class="section trial-answer">
            {verdict(says)}
            {when(compared, move || answer_figures(shown))}
            <p>{means}</p>
            <p class="soft">{words::trial_caution()}</p>
        </section>
        {when(any, weeks)}
        <p class="hollow">{left_out}</p>
        {when(compared, move || view! {
            <Fold name=say!(common::show_the_math) figure=Signal::stored(String::new())>
                <p class="about">{how}</p>
            </Fold>
        }.into_any())}
        <p class="actions">
            <a class="button" href=Route::Sales.address()>
                {say!(sales::open_sales)}
            </a>
        </p>
    }
}

/// The weeks on both sides, a line at the mean of each, the change, and the range in which the weeks since
/// likely lie on average.
fn drawn(judged: &Judged, state: AppState) -> AnyView {
    let sides = [&judged.before.counted, &judged.after.counted];
    let Some(first) = sides.into_iter().flatten().next().map(|week| week.monday) else { return ().into_any() };
    let points = |weeks: &[WeekSum]| -> Vec<(Exact, Exact)> {
        weeks.iter().map(|week| (at(first, week.monday), week.profit.major())).collect()
    };
    let level = |weeks: &[WeekSum], height: Option<Exact>| -> Vec<(Exact, Exact)> {
        let ends = [weeks.first(), weeks.last()].into_iter().flatten();
        ends.filter_map(|week| Some((at(first, week.monday), height?))).collect()
    };
    let mean = |spread: &Option<Spread>| spread.map(|spread| spread.mean);
    let (before, after) = (&judged.before, &judged.after);
    let end = |read: fn(&Interval) -> Exact| mean(&before.spread)?.plus(read(judged.interval.as_ref()?)).ok();
    let series = [
        (say!(sales::before), Look::Points, points(&before.counted)),
        (say!(sales::with_change), Look::Squares, points(&after.counted)),
        (say!(sales::side_averages), Look::Guide, level(&before.counted, mean(&before.spread))),
        ("", Look::Guide, level(&after.counted, mean(&after.spread))),
        (say!(sales::likely_range_line), Look::Limit, level(&after.counted, end(|interval| interval.ends().0))),
        ("", Look::Limit, level(&after.counted, end(|interval| interval.ends().1))),
    ];
    let named = |(name, look, points): (&str, Look, Vec<(Exact, Exact)>)| Series { name: name.into(), look, points };
    let series: Vec<Series> = series.into_iter().filter(|it| !it.2.is_empty()).map(named).collect();
    let start = after.counted.first().filter(|_| !before.counted.is_empty()).map(|week| at(first, week.monday));
    let marked: Vec<Marked> =
        start.map(|at| Marked { name: say!(sales::change_starts).to_string(), at }).into_iter().collect();
    let (up, figure) = profit(state);
    Chart { across: &axis(first), up: &up, series: &series, marked: &marked, figure: Some(figure) }.drawn()
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
                    <td>{state.money(week.profit)}</td>
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
