//! Charts: lines and points over two axes. Each has a table beside it with its figures, and a
//! sentence that says what it shows; the drawing itself is not read aloud.

use std::fmt::Write;

use leptos::prelude::*;

use crate::measure::Exact;
use crate::plot::Scale;

/// Width of a drawing in its own parts.
const WIDTH: u32 = 400;
/// Height of a drawing.
const HEIGHT: u32 = 250;
/// Where the axes meet, from the left and from the top.
const LEFT: u32 = 52;
const BOTTOM: u32 = 214;
/// Where the axes end.
const RIGHT: u32 = 388;
const TOP: u32 = 14;

/// How a series is drawn; each differs by its shape as well as by its colour.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Look {
    /// A full line with round points.
    First,
    /// A dashed line with square points.
    Second,
    /// A dotted line with pointed points.
    Third,
    /// A thin line without points, such as a limit or a fitted curve.
    Guide,
    /// Hollow round points without a line.
    Points,
    /// Full square points without a line.
    Squares,
}

impl Look {
    const fn class(self) -> &'static str {
        match self {
            Look::First => "series-first",
            Look::Second => "series-second",
            Look::Third => "series-third",
            Look::Guide => "series-guide",
            Look::Points => "series-points",
            Look::Squares => "series-squares",
        }
    }
}

/// Numbers that belong together, in the order of their line.
pub struct Series {
    /// What they are, for the key beside the drawing; empty where they belong to the series before.
    pub name: String,
    /// How they are drawn.
    pub look: Look,
    /// Across and up.
    pub points: Vec<(Exact, Exact)>,
}

/// An axis and how its marks are written.
pub struct Axis {
    /// What it measures, with the unit.
    pub name: String,
    /// Whether it begins at zero.
    pub from_zero: bool,
    /// Writes the number at a mark.
    pub mark: Box<dyn Fn(Exact) -> String>,
}

/// Draws series over two axes, with a key. Nothing where the numbers leave the range that can be
/// computed.
pub fn chart(across: &Axis, up: &Axis, series: &[Series]) -> AnyView {
    let Some(drawing) = drawing(across, up, series) else { return ().into_any() };
    let key = |series: &Series| {
        let (line, point) = (line(series.look, "1,7 27,7"), point(series.look, 14, 7));
        let sample = format!("<svg viewBox=\"0 0 28 14\"><g class=\"{}\">{line}{point}</g></svg>", series.look.class());
        view! {
            <li>
                <span class="chart-sample" aria-hidden="true" inner_html=sample></span>
                {series.name.clone()}
            </li>
        }
    };
    view! {
        <figure class="chart">
            <div class="chart-drawing" aria-hidden="true" inner_html=drawing></div>
            <ul class="chart-key">{series.iter().filter(|series| !series.name.is_empty()).map(key).collect_view()}</ul>
        </figure>
    }
    .into_any()
}

fn drawing(across: &Axis, up: &Axis, series: &[Series]) -> Option<String> {
    let all = || series.iter().flat_map(|series| &series.points);
    let x = Scale::of(all().map(|(x, _)| *x), across.from_zero).ok()?;
    let y = Scale::of(all().map(|(_, y)| *y), up.from_zero).ok()?;
    let right = |number: Exact| LEFT.saturating_add(x.position(number, RIGHT.saturating_sub(LEFT)));
    let down = |number: Exact| BOTTOM.saturating_sub(y.position(number, BOTTOM.saturating_sub(TOP)));
    let mut svg = format!("<svg viewBox=\"0 0 {WIDTH} {HEIGHT}\">");
    for mark in &y.marks {
        let (at, name) = (down(*mark), escaped(&(up.mark)(*mark)));
        let class = if mark.is_zero() { "chart-zero" } else { "chart-grid" };
        let (text, base) = (LEFT.saturating_sub(6), at.saturating_add(5));
        // Writing to a text cannot fail, here and below.
        let _ = write!(svg, "<path class=\"{class}\" d=\"M{LEFT} {at}H{RIGHT}\"/>");
        let _ = write!(svg, "<text class=\"chart-up\" x=\"{text}\" y=\"{base}\">{name}</text>");
    }
    for mark in &x.marks {
        let (at, name) = (right(*mark), escaped(&(across.mark)(*mark)));
        let base = BOTTOM.saturating_add(18);
        let _ = write!(svg, "<text class=\"chart-across\" x=\"{at}\" y=\"{base}\">{name}</text>");
    }
    let _ = write!(svg, "<path class=\"chart-axis\" d=\"M{LEFT} {BOTTOM}H{RIGHT}\"/>");
    let _ = write!(svg, "<text class=\"chart-name\" x=\"{RIGHT}\" y=\"{HEIGHT}\">{}</text>", escaped(&across.name));
    for series in series {
        let places: Vec<(u32, u32)> = series.points.iter().map(|(x, y)| (right(*x), down(*y))).collect();
        let path = places.iter().map(|(x, y)| format!("{x},{y}")).collect::<Vec<_>>().join(" ");
        let points: String = places.iter().map(|(x, y)| point(series.look, *x, *y)).collect();
        let _ = write!(svg, "<g class=\"{}\">{}{points}</g>", series.look.class(), line(series.look, &path));
    }
    svg.push_str("</svg>");
    Some(svg)
}

fn line(look: Look, path: &str) -> String {
    if matches!(look, Look::Points | Look::Squares) { String::new() } else { format!("<polyline points=\"{path}\"/>") }
}

/// The point of a series: a shape for each.
fn point(look: Look, x: u32, y: u32) -> String {
    match look {
        Look::First => format!("<circle cx=\"{x}\" cy=\"{y}\" r=\"4.5\"/>"),
        Look::Points => format!("<circle cx=\"{x}\" cy=\"{y}\" r=\"5\"/>"),
        Look::Second | Look::Squares => format!("<path transform=\"translate({x} {y})\" d=\"M-4-4H4V4H-4Z\"/>"),
        Look::Third => format!("<path transform=\"translate({x} {y})\" d=\"M0-5.5 5.5 4.5H-5.5Z\"/>"),
        Look::Guide => String::new(),
    }
}

/// A person's own words in a drawing.
fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;")
}
