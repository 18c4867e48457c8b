//! Profit a week by the buyers who stay, and from where on a change pays.

use leptos::prelude::*;

use crate::foundation::in_order;
use crate::foundation::measure::{Exact, Money, Share};
use crate::say;
use crate::ui::chart::{Axis, Chart, Look, Marked, Series};
use crate::ui::state::AppState;

/// Pieces that the line is read by.
const PIECES: u32 = 20;

/// Profit a week over the share of buyers who stay: a straight line.
pub struct Retention {
    /// What the share is of.
    pub across: &'static str,
    /// What the line is.
    pub line: String,
    /// Its ends, the smaller share first.
    pub ends: [(Share, Money); 2],
    /// Profit a week as it is.
    pub today: Money,
    /// The share at which both are the same, and how it is said.
    pub break_even: Option<(Share, String)>,
}

impl Retention {
    /// Points of the line, in percent across, the break-even among them. Returns `None` if they leave the range that
    /// can be computed.
    fn points(&self) -> Option<Vec<(Exact, Exact)>> {
        let [(from, low), (to, high)] = &self.ends;
        let (from, to) = (from.percent().ok()?, to.percent().ok()?);
        let (low, high) = (low.major(), high.major());
        let span = to.minus(from).ok()?;
        let even = self.break_even.as_ref().and_then(|(share, _)| share.percent().ok());
        let piece = |piece: u32| {
            let along = Exact::from(piece).over(Exact::from(PIECES)).ok()?;
            along.times(span).ok()?.plus(from).ok()
        };
        let mut across: Vec<Exact> = (0..=PIECES).map(piece).collect::<Option<_>>()?;
        if let Some(even) = even {
            in_order::insert_once(&mut across, even);
        }
        let at = |across: Exact| {
            let along = across.minus(from).ok()?.over(span).ok()?;
            Some((across, high.minus(low).ok()?.times(along).ok()?.plus(low).ok()?))
        };
        across.into_iter().map(at).collect()
    }
}

/// The line with today's profit, the break-even marked, and the figures as a table.
pub fn retention_chart(state: AppState, retention: &Retention) -> AnyView {
    let Some(points) = retention.points() else { return ().into_any() };
    let level = points.iter().map(|(across, _)| (*across, retention.today.major())).collect();
    let mark = |(share, name): &(Share, String)| Some(Marked { at: share.percent().ok()?, name: name.clone() });
    let marked: Vec<Marked> = retention.break_even.iter().filter_map(mark).collect();
    let across = Axis {
        name: retention.across.to_string(),
        from_zero: false,
        mark: Box::new(move |number| untrack(|| state.number(number.rounded(1)))),
    };
    let up = Axis {
        name: say!(common::profit_per_week).to_string(),
        from_zero: false,
        mark: Box::new(move |number| state.money_mark(number)),
    };
    let figure: Box<dyn Fn(Exact) -> String> =
        Box::new(move |number| untrack(|| state.money(Money::from_major(number))));
    let series = [
        Series { name: retention.line.clone(), look: Look::Line, points },
        Series { name: say!(common::today).to_string(), look: Look::Guide, points: level },
    ];
    Chart { across: &across, up: &up, series: &series, marked: &marked, figure: Some(figure) }.with_table()
}
