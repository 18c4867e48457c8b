//! What a chart draws, as text of a drawing at shares of its size.

use std::fmt::Write;

use super::{Chart, Look, Series};
use crate::foundation::measure::Exact;
use crate::foundation::plot::Scale;

/// Parts of the whole length of an axis: hundredths of a percent.
pub const WHOLE: u32 = 10_000;
/// Letters that have room side by side under the narrowest drawing.
const ROOM: usize = 28;
/// The least distance of two labels at the ends of series, in parts of the drawing's height.
const APART: u32 = 900;
/// Series that have their label at their end; more would stand too close.
const LABELED: usize = 6;

/// A chart laid out.
pub struct Plan {
    /// The widest mark of the axis up, which makes room for all of them.
    pub widest: String,
    /// The drawing.
    pub svg: String,
    /// The labels at the ends of series: how far down, and what stands there.
    pub ends: Vec<(u32, String)>,
    x: Scale,
    y: Scale,
}

impl Look {
    /// The class of its lines and points.
    pub const fn class(self) -> &'static str {
        match self {
            Look::First | Look::Line => "series-first",
            Look::Second => "series-second",
            Look::Third => "series-third",
            Look::Guide => "series-guide",
            Look::Limit => "series-guide series-limit",
            Look::Points => "series-points",
            Look::Squares => "series-squares",
        }
    }
}

impl Plan {
    /// Lays a chart out. Returns `None` if the numbers leave the range that can be computed.
    pub fn of(chart: &Chart) -> Option<Plan> {
        let all = || chart.series.iter().flat_map(|series| &series.points);
        let marked = chart.marked.iter().map(|marked| marked.at);
        let x = Scale::of(all().map(|(x, _)| *x).chain(marked), chart.across.from_zero).ok()?;
        let y = Scale::of(all().map(|(_, y)| *y), chart.up.from_zero).ok()?;
        let mut plan = Plan { widest: String::new(), svg: String::new(), ends: Vec::new(), x, y };
        plan.widest = plan.draw_up(chart)?;
        plan.draw_across(chart);
        plan.draw_marked(chart);
        for series in chart.series {
            let places: Vec<(u32, u32)> = series.points.iter().map(|point| plan.place(*point)).collect();
            let points: String = places.iter().map(|place| point(series.look, *place)).collect();
            let class = series.look.class();
            plan.write(format_args!("<g class=\"{class}\">{}{points}</g>", line(series.look, &places)));
        }
        plan.ends = plan.ends_of(chart.series);
        Some(plan)
    }

    /// Where a point lies: across, and down from the top.
    pub fn place(&self, (across, up): (Exact, Exact)) -> (u32, u32) {
        (self.x.position(across, WHOLE), WHOLE - self.y.position(up, WHOLE))
    }

    fn write(&mut self, piece: std::fmt::Arguments) {
        // Writing to a text cannot fail.
        let _ = self.svg.write_fmt(piece);
    }

    /// The axis up with its marks. Gives the widest of them.
    fn draw_up(&mut self, chart: &Chart) -> Option<String> {
        let marks: Vec<(Exact, String)> =
            self.y.marks.iter().map(|mark| (*mark, escaped(&(chart.up.mark)(*mark)))).collect();
        for (mark, name) in &marks {
            let at = percent(WHOLE - self.y.position(*mark, WHOLE));
            let class = if mark.is_zero() { "chart-zero" } else { "chart-grid" };
            self.write(format_args!("<line class=\"{class}\" x2=\"100%\" y1=\"{at}\" y2=\"{at}\"/>"));
            self.write(format_args!("<text class=\"chart-up\" x=\"-8\" y=\"{at}\" dy=\".35em\">{name}</text>"));
        }
        marks.into_iter().map(|(_, name)| name).max_by_key(|name| name.chars().count())
    }

    /// The axis across with as many of its marks as have room.
    fn draw_across(&mut self, chart: &Chart) {
        let names: Vec<(Exact, String)> = self.x.marks.iter().map(|mark| (*mark, (chart.across.mark)(*mark))).collect();
        let letters: usize = names.iter().map(|(_, name)| name.chars().count() + 1).sum();
        for (mark, name) in names.into_iter().step_by(1 + letters / ROOM) {
            let (at, name) = (percent(self.x.position(mark, WHOLE)), escaped(&name));
            self.write(format_args!("<text class=\"chart-across\" x=\"{at}\" y=\"100%\" dy=\"1.5em\">{name}</text>"));
        }
        self.write(format_args!("<line class=\"chart-axis\" x2=\"100%\" y1=\"100%\" y2=\"100%\"/>"));
    }

    /// Upright lines with their names at the top, on the side that has more room.
    fn draw_marked(&mut self, chart: &Chart) {
        for marked in chart.marked {
            let place = self.x.position(marked.at, WHOLE);
            let (at, name) = (percent(place), escaped(&marked.name));
            let (anchor, beside) = if place > WHOLE / 2 { ("end", -6) } else { ("start", 6) };
            self.write(format_args!("<line class=\"chart-marked\" x1=\"{at}\" x2=\"{at}\" y2=\"100%\"/>"));
            self.write(format_args!(
                "<text class=\"chart-mark\" x=\"{at}\" dx=\"{beside}\" dy=\"-.35em\" text-anchor=\"{anchor}\">{name}</text>"
            ));
        }
    }

    /// The labels at the ends of series, none closer to the next than they are high.
    fn ends_of(&self, series: &[Series]) -> Vec<(u32, String)> {
        let end = |series: &Series| {
            let last = series.points.iter().max_by_key(|(x, _)| *x)?;
            let name = escaped(&series.name);
            let label = format!("<span class=\"chart-sample\">{}</span>{name}", sample(series.look));
            (!name.is_empty()).then(|| (self.place(*last).1, label))
        };
        let mut ends: Vec<(u32, String)> = series.iter().filter_map(end).collect();
        if ends.len() > LABELED {
            return Vec::new();
        }
        ends.sort_by_key(|(down, _)| *down);
        let mut least = 0;
        for (down, _) in &mut ends {
            *down = (*down).max(least);
            least = *down + APART;
        }
        let mut most = WHOLE;
        for (down, _) in ends.iter_mut().rev() {
            *down = (*down).min(most);
            most = most.saturating_sub(APART);
        }
        ends
    }
}

/// A piece of a series' line with its point, for the key.
pub fn sample(look: Look) -> String {
    let (line, point) = (line(look, &[(0, WHOLE / 2), (WHOLE, WHOLE / 2)]), point(look, (WHOLE / 2, WHOLE / 2)));
    format!("<svg class=\"{}\">{line}{point}</svg>", look.class())
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
pub fn point(look: Look, (x, y): (u32, u32)) -> String {
    let (x, y) = (percent(x), percent(y));
    let shape = match look {
        Look::First => "M-5 0a5 5 0 1 0 10 0a5 5 0 1 0-10 0Z",
        Look::Points => "M-6 0a6 6 0 1 0 12 0a6 6 0 1 0-12 0Z",
        Look::Second | Look::Squares => "M-4.5-4.5H4.5V4.5H-4.5Z",
        Look::Third => "M0-6.5 6 5H-6Z",
        Look::Line | Look::Guide | Look::Limit => return String::new(),
    };
    format!("<svg class=\"chart-point\" x=\"{x}\" y=\"{y}\"><path d=\"{shape}\"/></svg>")
}

/// A length in hundredths of a percent, as a drawing has it.
pub fn percent(hundredths: u32) -> String {
    format!("{}.{:02}%", hundredths / 100, hundredths % 100)
}

/// A person's own words in a drawing.
fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;")
}
