//! Reading a chart: a line at one number across, and the figures there.

use std::fmt::Write;

use leptos::ev;
use leptos::html;
use leptos::prelude::*;

use super::drawing::{Plan, WHOLE, percent};
use super::{Chart, Look, Series};
use crate::foundation::measure::Exact;
use crate::say;
use crate::ui::live::text;

/// A number across that has figures.
pub struct Stop {
    /// The number.
    pub at: Exact,
    /// The figures there, by series.
    pub figures: Vec<(usize, Exact)>,
}

/// The numbers across at which there are figures, in rising order. A thin line gives its height at
/// the numbers of the others; alone, it has its own.
pub fn stops(series: &[Series]) -> Vec<Stop> {
    let is_guide = |series: &Series| matches!(series.look, Look::Guide | Look::Limit);
    let only_guides = series.iter().all(is_guide);
    let told = |series: &&Series| only_guides || !is_guide(series);
    let mut across: Vec<Exact> = series.iter().filter(told).flat_map(|it| &it.points).map(|(x, _)| *x).collect();
    across.sort();
    across.dedup();
    let stop = |at: Exact| {
        let of = |(place, series): (usize, &Series)| {
            let figures = if is_guide(series) { height(&series.points, at) } else { there(series, at) };
            figures.into_iter().map(move |figure| (place, figure)).collect::<Vec<_>>()
        };
        Stop { at, figures: series.iter().enumerate().flat_map(of).collect() }
    };
    across.into_iter().map(stop).collect()
}

/// The figures of a series at a number.
fn there(series: &Series, at: Exact) -> Vec<Exact> {
    series.points.iter().filter(|(x, _)| *x == at).map(|(_, y)| *y).collect()
}

/// The height of a line at a number between its ends.
fn height(points: &[(Exact, Exact)], at: Exact) -> Vec<Exact> {
    let between = |ends: &[(Exact, Exact)]| match ends {
        [(x1, y1), (x2, y2)] if *x1 <= at && at <= *x2 => {
            let along = at.minus(*x1).ok()?.over(x2.minus(*x1).ok()?).ok()?;
            y2.minus(*y1).ok()?.times(along).ok()?.plus(*y1).ok()
        }
        _ => None,
    };
    let own = points.iter().find(|(x, _)| *x == at).map(|(_, y)| *y);
    own.or_else(|| points.windows(2).find_map(between)).into_iter().collect()
}

/// A stop as it is shown.
#[derive(Clone)]
struct Shown {
    across: u32,
    /// The line, and a ring around each figure.
    cross: String,
    said: String,
}

fn shown(chart: &Chart, plan: &Plan, stop: &Stop) -> Shown {
    let across = plan.place((stop.at, Exact::ZERO)).0;
    let at = percent(across);
    let mut cross = format!("<svg><line x1=\"{at}\" x2=\"{at}\" y2=\"100%\"/>");
    let named = |name: &str, figure: String| say!(sales::named_figure, name = name, figure = figure);
    let mut said = vec![named(&chart.across.name, (chart.across.mark)(stop.at))];
    let mut name = "";
    for (place, figure) in &stop.figures {
        let down = percent(plan.place((stop.at, *figure)).1);
        // Writing to a text cannot fail.
        let _ = write!(cross, "<circle cx=\"{at}\" cy=\"{down}\" r=\"9\"/>");
        // A series without a name belongs to the one before.
        name =
            chart.series.get(*place).map(|series| series.name.as_str()).filter(|own| !own.is_empty()).unwrap_or(name);
        said.push(named(name, chart.figure(*figure)));
    }
    let happens = chart.marked.iter().filter(|marked| marked.at == stop.at).map(|marked| marked.name.clone());
    said.extend(happens);
    cross.push_str("</svg>");
    Shown { across, cross, said: said.join(" · ") }
}

/// The drawing, which is read by finger, pointer and arrow keys, with what is read under it.
pub fn readable(chart: &Chart, plan: Plan) -> AnyView {
    let all: Vec<Shown> = stops(chart.series).iter().map(|stop| shown(chart, &plan, stop)).collect();
    let last = all.len().saturating_sub(1);
    let all = StoredValue::new(all);
    let at = RwSignal::new(None::<usize>);
    let read = move |part: fn(&Shown) -> &String| {
        text(move || {
            let at = at.get();
            all.with_value(|all| at.and_then(|at| all.get(at)).map(|stop| part(stop).clone())).unwrap_or_default()
        })
    };
    let plot = NodeRef::<html::Div>::new();
    let point_at = move |event: ev::PointerEvent| {
        let Some(plot) = plot.get_untracked() else { return };
        let (wide, along) = (plot.offset_width().max(1), event.offset_x().max(0));
        let across = u32::try_from(i64::from(along) * i64::from(WHOLE) / i64::from(wide)).unwrap_or(WHOLE);
        let nearest =
            all.with_value(|all| (0..all.len()).min_by_key(|at| all.get(*at).map(|it| it.across.abs_diff(across))));
        at.set(nearest);
    };
    let step = move |event: ev::KeyboardEvent| {
        let now = at.get_untracked();
        let to = match event.key().as_str() {
            "ArrowRight" | "ArrowUp" => Some(now.map_or(0, |now| now.saturating_add(1).min(last))),
            "ArrowLeft" | "ArrowDown" => Some(now.map_or(last, |now| now.saturating_sub(1))),
            "Home" => Some(0),
            "End" => Some(last),
            "Escape" if now.is_some() => None,
            _ => return,
        };
        event.prevent_default();
        at.set(to);
    };
    let called = say!(sales::chart_of, what = &chart.up.name);
    let end = |(down, label): (u32, String)| {
        view! { <span style=("top", percent(down)) inner_html=label></span> }
    };
    let Plan { widest, svg, ends, .. } = plan;
    // The widest mark and the widest label once more, unseen, make room for all of them.
    let room = ends.iter().map(|(_, label)| label.clone()).map(|label| view! { <span inner_html=label></span> });
    let room = room.collect_view();
    view! {
        <div class="chart-drawing" role="application" tabindex="0" aria-label=called on:keydown=step>
            <p class="chart-name" aria-hidden="true">{chart.up.name.clone()}</p>
            <span class="chart-room" aria-hidden="true">{widest}</span>
            <div class="chart-plot" aria-hidden="true" inner_html=format!("<svg>{svg}</svg>")></div>
            <div
                class="chart-cross"
                aria-hidden="true"
                node_ref=plot
                inner_html=read(|stop| &stop.cross)
                on:pointerdown=point_at
                on:pointermove=point_at
            ></div>
            <div class="chart-ends" aria-hidden="true">
                <div class="chart-ends-room">{room}</div>
                {ends.into_iter().map(end).collect_view()}
            </div>
            <p class="chart-name chart-name-across" aria-hidden="true">{chart.across.name.clone()}</p>
        </div>
        <p class="chart-reading" role="status">{read(|stop| &stop.said)}</p>
    }
    .into_any()
}
