//! The figures of a chart as a table.

use leptos::prelude::*;

use super::reading::{Stop, stops};
use super::{Chart, Series};
use crate::say;
use crate::ui::live::text;
use crate::ui::parts::Fold;

/// The figures in a fold: a row for each number across, a column for each series.
pub fn folded(chart: &Chart) -> AnyView {
    let stops = stops(chart.series);
    let count = stops.len();
    let named: Vec<(usize, &Series)> =
        chart.series.iter().enumerate().filter(|(_, series)| !series.name.is_empty()).collect();
    let head = |(_, series): &(usize, &Series)| view! { <th scope="col">{series.name.clone()}</th> };
    let heads = named.iter().map(head).collect_view();
    let row = |stop: &Stop| {
        let cell = |(place, _): &(usize, &Series)| view! { <td>{figures(chart, stop, *place)}</td> };
        view! {
            <tr>
                <th scope="row">{(chart.across.mark)(stop.at)}</th>
                {named.iter().map(cell).collect_view()}
            </tr>
        }
    };
    let rows = stops.iter().map(row).collect_view();
    let (called, across) = (chart.up.name.clone(), chart.across.name.clone());
    view! {
        <Fold name=say!(sales::chart_figures) figure=text(move || say!(sales::chart_values, values = count))>
            <div class="wide" tabindex="0" role="region" aria-label=called>
                <table class="table">
                    <thead>
                        <tr>
                            <th scope="col">{across}</th>
                            {heads}
                        </tr>
                    </thead>
                    <tbody>{rows}</tbody>
                </table>
            </div>
        </Fold>
    }
    .into_any()
}

/// What a series has at a number across: its own figures, and those of the series without a name
/// that belong to it.
fn figures(chart: &Chart, stop: &Stop, place: usize) -> String {
    let after = chart.series.iter().skip(place.saturating_add(1));
    let own = place..place.saturating_add(1).saturating_add(after.take_while(|series| series.name.is_empty()).count());
    let of = stop.figures.iter().filter(|(place, _)| own.contains(place));
    let said: Vec<String> = of.map(|(_, figure)| chart.figure(*figure)).collect();
    if said.is_empty() { say!(common::none).to_string() } else { said.join(", ") }
}
