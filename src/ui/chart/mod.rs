//! Charts: lines and points over two axes, and bars.
//!
//! A value is read by finger, by pointer and by the arrow keys: a line stands at it, its figures
//! are written under the drawing and said aloud. The drawing itself is not read aloud. Each chart
//! has its figures as a table, beside it or in a fold under it, and a sentence that says what it
//! shows.

mod bars;
mod drawing;
mod reading;
mod table;

use leptos::prelude::*;

use crate::foundation::measure::Exact;

pub use bars::{Bar, Pile, bars, piles};
use drawing::{Plan, sample};
use reading::readable;

/// How a series is drawn; each differs by its shape as well as by its color.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Look {
    /// A full line with round points.
    First,
    /// A dashed line with square points.
    Second,
    /// A dotted line with pointed points.
    Third,
    /// A full line without points, read at each of its numbers.
    Line,
    /// A thin line without points, such as a limit or a fitted curve.
    Guide,
    /// A thin dashed line without points, such as an end of a range.
    Limit,
    /// Hollow round points without a line.
    Points,
    /// Full square points without a line.
    Squares,
}

/// Numbers that belong together, in the order of their line.
pub struct Series {
    /// What they are, for the label at their end. It is empty if they belong to the series before.
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

/// A number of the axis across that something happens at: an upright line stands there.
pub struct Marked {
    /// What happens there.
    pub name: String,
    /// Where it is.
    pub at: Exact,
}

/// A chart over two axes.
pub struct Chart<'a> {
    /// The axis across.
    pub across: &'a Axis,
    /// The axis up.
    pub up: &'a Axis,
    /// What is drawn.
    pub series: &'a [Series],
    /// What happens at numbers across.
    pub marked: &'a [Marked],
    /// Writes a figure that is read, where the marks of the axis up say less.
    pub figure: Option<Box<dyn Fn(Exact) -> String>>,
}

/// Draws series over two axes; their figures stand in a table beside it. Draws nothing if the
/// numbers leave the range that can be computed.
pub fn chart(across: &Axis, up: &Axis, series: &[Series]) -> AnyView {
    Chart { across, up, series, marked: &[], figure: None }.drawn()
}

impl Chart<'_> {
    /// A figure as it is read.
    fn figure(&self, number: Exact) -> String {
        self.figure.as_ref().unwrap_or(&self.up.mark)(number)
    }

    /// The chart with its figures as a table in a fold.
    pub fn with_table(&self) -> AnyView {
        [self.drawn(), table::folded(self)].into_any()
    }

    /// The chart; its figures stand in a table beside it.
    ///
    /// What is drawn lies at shares of the drawing's size, so that letters, lines and points keep
    /// their own size on a narrow screen and on a wide one.
    pub fn drawn(&self) -> AnyView {
        let Some(plan) = Plan::of(self) else { return ().into_any() };
        let key = |series: &Series| {
            view! {
                <li>
                    <span class="chart-sample" aria-hidden="true" inner_html=sample(series.look)></span>
                    {series.name.clone()}
                </li>
            }
        };
        let key = self.series.iter().filter(|series| !series.name.is_empty()).map(key).collect_view();
        let class = if plan.ends.is_empty() { "chart" } else { "chart chart-labeled" };
        view! {
            <figure class=class>
                {readable(self, plan)}
                <ul class="chart-key">{key}</ul>
            </figure>
        }
        .into_any()
    }
}
