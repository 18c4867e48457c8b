//! What the sizes look like: price, cost and what is left by volume, and the parts of the cost.
//! The tables beside them have the figures.

use leptos::prelude::*;

use super::trying::Columns;
use crate::book::{Key, Part};
use crate::foundation::measure::{Exact, Money};
use crate::say;
use crate::sizes::side_by_side::{SideBySide, SizeRow};
use crate::ui::chart::{Axis, Look, Pile, Series, chart, piles};
use crate::ui::live::{live, text};
use crate::ui::state::AppState;
use crate::words;

/// What a series shows of a size.
type Of = fn(&SizeRow) -> Option<Money>;

/// Price, full cost and what is left, by what is poured.
#[component]
pub fn LinesBySize(
    /// The sizes.
    columns: Memo<Columns>,
) -> impl IntoView {
    let state = AppState::here();
    let said = text(move || {
        let sizes = columns.with(|columns| columns.last().to_vec());
        let step = SideBySide { sizes, ..SideBySide::default() }.whole_step().ok().flatten();
        let said =
            |(from, to, step)| state.book.with(|book| words::size_step(from, to, &step, book, &state.speaker.get()));
        step.map(said).unwrap_or_default()
    });
    let drawn = live(move || {
        let unit = state.units().drink_unit();
        let point = |row: &SizeRow, of: Of| Some((row.fill.millilitres().over(unit.size()).ok()?, of(row)?.major()));
        let series = |name: &str, look, rows: &[SizeRow], of: Of| {
            let points = rows.iter().filter_map(|row| point(row, of)).collect();
            Series { name: name.to_string(), look, points }
        };
        let price: Of = |row| row.sold.map(|sold| sold.price);
        let left: Of = |row| row.sold.map(|sold| sold.contribution);
        let mut all = columns.with(|columns| {
            let last = columns.last();
            let mut all = vec![
                series(say!(common::price), Look::First, last, price),
                series(say!(common::full_cost), Look::Second, last, |row| Some(row.cost)),
                series(say!(common::profit_per_drink), Look::Third, last, left),
            ];
            if columns.tried().is_some() {
                all.push(series(say!(sales::price_today), Look::Guide, columns.today(), price));
                all.push(series(say!(sales::profit_today), Look::Limit, columns.today(), left));
            }
            all
        });
        all.retain(|series| !series.points.is_empty());
        let money = move |number: Exact| state.money(Money::from_major(number));
        let across = Axis {
            name: say!(sales::axis_fill, unit = unit.symbol()),
            from_zero: false,
            mark: Box::new(move |number| state.number(number)),
        };
        let up = Axis { name: say!(sales::per_drink).to_string(), from_zero: true, mark: Box::new(money) };
        chart(&across, &up, &all)
    });
    view! {
        <p class="hollow">{said}</p>
        {drawn}
    }
}

/// The cost of each size, part on part.
#[component]
pub fn PartsBySize(
    /// The sizes.
    columns: Memo<Columns>,
) -> impl IntoView {
    let state = AppState::here();
    let said = text(move || {
        let said = |sizes: &[SizeRow]| state.book.with(|book| words::largest_part(sizes, book, &state.speaker.get()));
        columns.with(|columns| said(columns.last()))
    });
    let drawn = live(move || {
        let pile = |row: &SizeRow| Pile {
            name: state.book.with(|book| book.name(Key::Container(row.container))),
            figure: state.money(row.cost),
            parts: row.parts.iter().map(|part| part.major()).collect(),
        };
        let sizes: Vec<Pile> = columns.with(|columns| columns.last().iter().map(pile).collect());
        piles(&sizes, &Part::ALL.map(words::part))
    });
    view! {
        <p class="about">{said}</p>
        {drawn}
    }
}
