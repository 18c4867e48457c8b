//! What each step from size to size brings.

use leptos::prelude::*;

use super::tables::range;
use super::trying::Columns;
use crate::book::{DrinkId, Key, OfferId};
use crate::foundation::measure::{Money, Share};
use crate::say;
use crate::sizes::side_by_side::{SizeRow, Step};
use crate::ui::how::opens;
use crate::ui::live::{live, text, when};
use crate::ui::parts::Fold;
use crate::ui::state::AppState;
use crate::words;
use crate::words::texts::{HOLE, around};
use crate::working::{OfSize, Shown};

/// A sentence with a figure drawn in it.
fn with_figure(said: &str, figure: AnyView) -> AnyView {
    let (before, after) = around(said);
    view! {
        {before}
        {figure}
        {after}
    }
    .into_any()
}

/// What each step from size to size brings.
#[component]
pub fn Steps(
    /// The sizes.
    columns: Memo<Columns>,
) -> impl IntoView {
    let state = AppState::here();
    let name = move |row: &SizeRow| state.book.with(|book| book.name(Key::Container(row.container)));
    let step = move |from: &SizeRow, to: &SizeRow, step: Step, drink: Option<DrinkId>| {
        let how = |of, figure: String| match drink {
            Some(drink) => opens(Shown::Size(OfferId { drink, container: to.container }, of), Signal::stored(figure)),
            None => figure.into_any(),
        };
        let size = |money: Money| state.money(Money::from_major(money.major().abs()));
        let price = how(OfSize::ExtraPrice, size(step.extra_price));
        let cost = how(OfSize::ExtraCost, size(step.extra_cost));
        let price = if step.extra_price.is_negative() {
            with_figure(&say!(sales::price_down, by = HOLE), price)
        } else {
            with_figure(&say!(sales::price_up, by = HOLE), price)
        };
        let cost = if step.extra_cost.is_negative() {
            with_figure(&say!(sales::cost_down, by = HOLE), cost)
        } else {
            with_figure(&say!(sales::cost_up, by = HOLE), cost)
        };
        let fees = words::extra_fees(&step, &state.speaker.get()).into_iter().map(|said| format!(" {said}"));
        let fees = fees.collect::<String>();
        let kept = step.kept.map(|share| {
            let share = how(OfSize::Kept, state.percent(share));
            view! {
                " "
                {with_figure(&say!(sales::you_keep, kept = state.money(step.extra_left), share = HOLE), share)}
            }
        });
        view! {
            <li>
                <strong>{say!(sales::from_to, small = name(from), large = name(to))}</strong>
                " "
                {price}
                " "
                {cost}
                {fees}
                {kept}
            </li>
        }
    };
    let steps = move || {
        columns.with(|columns| {
            let mut before: Option<&SizeRow> = None;
            let mut steps = Vec::new();
            for row in columns.last().iter().filter(|row| row.sold.is_some()) {
                if let (Some(before), Some(taken)) = (before, row.step) {
                    steps.push(step(before, row, taken, columns.opens));
                }
                before = Some(row);
            }
            steps.collect_view().into_any()
        })
    };
    let any = move || columns.with(|columns| columns.last().iter().any(|row| row.step.is_some()));
    let kept = text(move || {
        let kept =
            columns.with(|columns| columns.last().iter().filter_map(|row| row.step?.kept).collect::<Vec<Share>>());
        range(kept.into_iter().map(|share| state.percent(share)))
    });
    let section = move || {
        view! {
            <Fold name=say!(sales::next_size_up) figure=kept late=true>
                <ul class="steps">{live(steps)}</ul>
            </Fold>
        }
        .into_any()
    };
    when(any, section)
}
