//! Price and cost per volume of each size, as bars. The table beside it has the figures.

use leptos::prelude::*;

use crate::book::Key;
use crate::measure::Money;
use crate::sizes::SizeRow;
use crate::ui::live::live;
use crate::ui::state::AppState;

/// The longest bar's length in its own drawing.
const BAR: u32 = 1000;

/// Bars of price per volume, the cost within each.
#[component]
pub fn PerVolume(
    /// The sizes, smallest first.
    rows: Signal<Vec<SizeRow>>,
) -> impl IntoView {
    let state = AppState::here();
    let bars = live(move || {
        rows.with(|rows| {
            let height = |row: &SizeRow| row.sold.map_or(row.cost_per_volume, |it| it.price_per_volume);
            let most = rows.iter().map(|row| height(row).max(row.cost_per_volume)).max().unwrap_or(Money::ZERO);
            let share = |money: Money| {
                let parts = money.ratio_to(most).ok().and_then(|share| share.in_parts(BAR));
                parts.unwrap_or(0).to_string()
            };
            let bar = |row: &SizeRow| {
                let name = state.book.with(|book| book.name(Key::Container(row.offer.container)));
                let price = row.sold.map(|it| state.fine_money(it.price_per_volume));
                view! {
                    <li>
                        <span class="bars-name">{name}</span>
                        <svg class="bars-bar" viewBox="0 0 1000 10" preserveAspectRatio="none" aria-hidden="true">
                            <rect class="bars-price" width=share(height(row)) height="10" />
                            <rect class="bars-cost" width=share(row.cost_per_volume) y="3" height="4" />
                        </svg>
                        <span class="bars-figure">{price}</span>
                    </li>
                }
            };
            rows.iter().map(bar).collect_view().into_any()
        })
    });
    view! {
        <figure class="bars">
            <ul>{bars}</ul>
            <figcaption class="soft">
                <span class="bars-key bars-key-price" aria-hidden="true"></span>
                "wide bar: price. "
                <span class="bars-key bars-key-cost" aria-hidden="true"></span>
                "narrow bar: full cost. Figures in the table below."
            </figcaption>
        </figure>
    }
}
