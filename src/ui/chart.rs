//! Charts: lines and points over two axes. Each has a table beside it with its figures, and a
//! sentence that says what it shows; the drawing itself is not read aloud.

use std::fmt::Write;

use leptos::prelude::*;

use crate::foundation::measure::Exact;
use crate::foundation::plot::Scale;

/// Parts of the whole length of an axis: hundredths of a percent.
const WHOLE: u32 = 10_000;
/// Letters that have room side by side under the narrowest drawing.
const ROOM: usize = 28;

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
    /// What they are, for the key beside the drawing. It is empty if they belong to the series
    /// before.
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

/// Draws series over two axes, with a key. Draws nothing if the numbers leave the range that can be
/// computed.
///
/// What is drawn lies at shares of the drawing's size, so that letters, lines and points keep
/// their own size on a narrow screen and on a wide one.
pub fn chart(across: &Axis, up: &Axis, series: &[Series]) -> AnyView {
    let Some(drawing) = drawing(across, up, series) else { return ().into_any() };
    let key = |series: &Series| {
        let (line, point) = (line(series.look, &[(0, 5000), (WHOLE, 5000)]), point(series.look, (5000, 5000)));
        let sample = format!("<svg class=\"{}\">{line}{point}</svg>", series.look.class());
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

/// A bar made of parts, one after the other.
pub struct Pile {
    /// What it is of.
    pub name: String,
    /// Its whole length, as it is written.
    pub figure: String,
    /// Its parts, none below zero.
    pub parts: Vec<Exact>,
}

/// The least share of a drawing's length that has room for a number, in hundredths of a percent.
const NUMBERED: u32 = 600;

/// Draws bars of parts, with a key: each part has a number beside its colour. Parts that no bar
/// has are left out.
pub fn piles(piles: &[Pile], names: &[&str]) -> AnyView {
    let whole = |pile: &Pile| pile.parts.iter().try_fold(Exact::ZERO, |sum, part| sum.plus(*part)).unwrap_or_default();
    let longest = piles.iter().map(whole).max().unwrap_or_default();
    let there = |place: usize| piles.iter().any(|pile| pile.parts.get(place).is_some_and(|part| part.is_positive()));
    let shown: Vec<usize> = (0..names.len()).filter(|place| there(*place)).collect();
    let bar = |pile: &Pile| {
        let mut drawing = "<svg>".to_string();
        let mut from = Exact::ZERO;
        let at = |sum: Exact| sum.over(longest).ok().and_then(|share| share.in_parts(WHOLE)).unwrap_or(0);
        for (number, place) in (1..).zip(&shown) {
            let to = from.plus(pile.parts.get(*place).copied().unwrap_or_default()).unwrap_or(from);
            let (left, right) = (at(from), at(to));
            from = to;
            let (x, width) = (percent(left), percent(right - left));
            let _ = write!(drawing, "<rect class=\"part part-{place}\" x=\"{x}\" width=\"{width}\" height=\"100%\"/>");
            if right - left >= NUMBERED {
                let middle = percent((left + right) / 2);
                let _ = write!(drawing, "<circle cx=\"{middle}\" cy=\"50%\" r=\"0.625em\"/>");
                let _ = write!(drawing, "<text x=\"{middle}\" y=\"50%\" dy=\".35em\">{number}</text>");
            }
        }
        drawing.push_str("</svg>");
        view! {
            <li>
                <span>{pile.name.clone()}</span>
                <strong>{pile.figure.clone()}</strong>
                <div class="pile" aria-hidden="true" inner_html=drawing></div>
            </li>
        }
    };
    let key = |(number, place): (usize, &usize)| {
        let name = names.get(*place).copied().unwrap_or_default();
        view! {
            <li>
                <span class=format!("swatch part-{place}") aria-hidden="true"></span>
                {format!("{number} {name}")}
            </li>
        }
    };
    view! {
        <figure class="chart">
            <ul class="piles">{piles.iter().map(bar).collect_view()}</ul>
            <ul class="chart-key">{(1..).zip(&shown).map(key).collect_view()}</ul>
        </figure>
    }
    .into_any()
}

/// A bar of one length.
pub struct Bar {
    /// What it is of.
    pub name: String,
    /// Its length, as it is written.
    pub figure: String,
    /// Its length, not below zero.
    pub length: Exact,
}

/// Draws bars, each under its name and figure; the longest is as wide as there is room.
pub fn bars(bars: &[Bar]) -> AnyView {
    let longest = bars.iter().map(|bar| bar.length).max().unwrap_or_default();
    let bar = |bar: &Bar| {
        let width = bar.length.over(longest).ok().and_then(|share| share.in_parts(WHOLE)).unwrap_or(0);
        let width = percent(width);
        let drawing = format!("<svg><rect class=\"part part-0\" width=\"{width}\" height=\"100%\"/></svg>");
        view! {
            <li>
                <span>{bar.name.clone()}</span>
                <strong>{bar.figure.clone()}</strong>
                <div class="pile pile-thin" aria-hidden="true" inner_html=drawing></div>
            </li>
        }
    };
    view! { <ul class="piles">{bars.iter().map(bar).collect_view()}</ul> }.into_any()
}

fn drawing(across: &Axis, up: &Axis, series: &[Series]) -> Option<String> {
    let all = || series.iter().flat_map(|series| &series.points);
    let x = Scale::of(all().map(|(x, _)| *x), across.from_zero).ok()?;
    let y = Scale::of(all().map(|(_, y)| *y), up.from_zero).ok()?;
    let down = |number: Exact| WHOLE - y.position(number, WHOLE);
    let marks: Vec<String> = y.marks.iter().map(|mark| escaped(&(up.mark)(*mark))).collect();
    let widest = marks.iter().max_by_key(|mark| mark.chars().count())?;
    // The widest mark once more, unseen, makes room for all of them.
    let mut svg =
        format!("<p class=\"chart-name\">{}</p><span class=\"chart-room\">{widest}</span><svg>", escaped(&up.name));
    for (mark, name) in y.marks.iter().zip(&marks) {
        let at = percent(down(*mark));
        let class = if mark.is_zero() { "chart-zero" } else { "chart-grid" };
        // Writing to a text cannot fail, here and below.
        let _ = write!(svg, "<line class=\"{class}\" x2=\"100%\" y1=\"{at}\" y2=\"{at}\"/>");
        let _ = write!(svg, "<text class=\"chart-up\" x=\"-8\" y=\"{at}\" dy=\".35em\">{name}</text>");
    }
    let names: Vec<String> = x.marks.iter().map(|mark| (across.mark)(*mark)).collect();
    let letters: usize = names.iter().map(|name| name.chars().count() + 1).sum();
    for (mark, name) in x.marks.iter().zip(names).step_by(1 + letters / ROOM) {
        let (at, name) = (percent(x.position(*mark, WHOLE)), escaped(&name));
        let _ = write!(svg, "<text class=\"chart-across\" x=\"{at}\" y=\"100%\" dy=\"1.5em\">{name}</text>");
    }
    svg.push_str("<line class=\"chart-axis\" x2=\"100%\" y1=\"100%\" y2=\"100%\"/>");
    for series in series {
        let place = |(across, up): &(Exact, Exact)| (x.position(*across, WHOLE), down(*up));
        let places: Vec<(u32, u32)> = series.points.iter().map(place).collect();
        let points: String = places.iter().map(|place| point(series.look, *place)).collect();
        let _ = write!(svg, "<g class=\"{}\">{}{points}</g>", series.look.class(), line(series.look, &places));
    }
    let _ = write!(svg, "</svg><p class=\"chart-name chart-name-across\">{}</p>", escaped(&across.name));
    Some(svg)
}

/// The line of a series, from place to place.
fn line(look: Look, places: &[(u32, u32)]) -> String {
    let piece = |ends: &[(u32, u32)]| match (look, ends) {
        (Look::Points | Look::Squares, _) => String::new(),
        (_, [(x1, y1), (x2, y2)]) => {
            let [x1, y1, x2, y2] = [x1, y1, x2, y2].map(|at| percent(*at));
            format!("<line x1=\"{x1}\" y1=\"{y1}\" x2=\"{x2}\" y2=\"{y2}\"/>")
        }
        _ => String::new(),
    };
    places.windows(2).map(piece).collect()
}

/// The point of a series: a shape for each.
fn point(look: Look, (x, y): (u32, u32)) -> String {
    let (x, y) = (percent(x), percent(y));
    let shape = match look {
        Look::First => "M-5 0a5 5 0 1 0 10 0a5 5 0 1 0-10 0Z",
        Look::Points => "M-6 0a6 6 0 1 0 12 0a6 6 0 1 0-12 0Z",
        Look::Second | Look::Squares => "M-4.5-4.5H4.5V4.5H-4.5Z",
        Look::Third => "M0-6.5 6 5H-6Z",
        Look::Guide => return String::new(),
    };
    format!("<svg class=\"chart-point\" x=\"{x}\" y=\"{y}\"><path d=\"{shape}\"/></svg>")
}

fn percent(hundredths: u32) -> String {
    format!("{}.{:02}%", hundredths / 100, hundredths % 100)
}

/// A person's own words in a drawing.
fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;")
}
