//! What the standards of measuring allow beside a labeled size.

use leptos::prelude::*;

use crate::book::ContainerId;
use crate::drink::fill::{Rule, tolerance};
use crate::drink::label::Law;
use crate::foundation::measure::{Amount, System, Unit, Volume};
use crate::say;
use crate::ui::live::{live, when};
use crate::ui::state::AppState;
use crate::words;

/// What the standards allow beside the declared size, where there is one.
#[component]
pub fn Allowed(
    /// The container.
    id: ContainerId,
) -> impl IntoView {
    let state = AppState::here();
    let declared = move || state.book.with(|book| book.container(id)?.declared?.volume().ok()?);
    let row = move |rule: Rule| {
        let allowed = tolerance(rule, declared()?).ok()??;
        let none = if rule == Rule::Package { say!(labels::no_limit) } else { say!(labels::nothing) };
        let said =
            move |volume: Volume, none: &str| if volume.is_zero() { none.to_string() } else { fine(state, volume) };
        Some(view! {
            <tr>
                <th scope="row">
                    {words::tolerance_rule(rule)}
                    <span class="table-source">{words::tolerance_source(rule)}</span>
                </th>
                <td>{said(allowed.below, say!(labels::nothing))}</td>
                <td>{said(allowed.above, none)}</td>
            </tr>
        })
    };
    when(
        move || declared().is_some(),
        move || {
            view! {
                <details class="more">
                    <summary>{say!(labels::standards_allow)}</summary>
                    <div class="wide">
                    <table class="table">
                        <thead>
                            <tr>
                                <td></td>
                                <th scope="col">{say!(labels::short_by)}</th>
                                <th scope="col">{say!(labels::over_by)}</th>
                            </tr>
                        </thead>
                        <tbody>{live(move || {
                            let law = state.book.with(|book| Law::of(book.settings()));
                            words::tolerance_rules(law).iter().copied().filter_map(row).collect_view().into_any()
                        })}</tbody>
                    </table>
                    </div>
                    <p class="about">
                        {say!(labels::standards_allow_about)}
                    </p>
                </details>
            }
            .into_any()
        },
    )
}

/// To 0.1 mL, as the standards are written, or in the book's ounces.
fn fine(state: AppState, volume: Volume) -> String {
    match state.units() {
        System::Metric => state.amount(Amount::new(volume.millilitres().rounded(1), Unit::Millilitre)),
        System::UsCustomary | System::Imperial => state.volume(volume),
    }
}
