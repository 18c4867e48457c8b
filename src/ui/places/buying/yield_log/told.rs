//! What the weighings say together.

use leptos::prelude::*;

use super::Told;
use crate::buying::yield_log::Summary;
use crate::say;
use crate::ui::live::live;
use crate::ui::parts::figures;
use crate::ui::state::AppState;
use crate::words::{self, Speaker};

/// Mean, interval and outlier of each step.
pub fn told(state: AppState, told: Told) -> AnyView {
    let step = move |summary: &Summary| {
        let said = |say: fn(&Summary, &Speaker) -> String| say(summary, &state.speaker.get());
        let list = vec![
            (say!(goods::average).to_string(), said(words::yield_log::mean), None),
            (say!(goods::likely_range).to_string(), said(words::yield_log::interval), None),
        ];
        let outlier = said(words::yield_log::outlier);
        let outlier = (!outlier.is_empty()).then(|| view! { <p class="trouble">{outlier}</p> });
        view! {
            <h3>{words::yield_log::step(summary.step)}</h3>
            <dl class="figures">{figures(move || list.clone())}</dl>
            {outlier}
            <details class="more">
                <summary>{say!(common::show_the_math)}</summary>
                <p class="about">{said(words::yield_log::how)}</p>
            </details>
        }
    };
    let steps = live(move || told.with(|told| told.iter().map(step).collect_view().into_any()));
    let none = live(move || {
        if told.with(Vec::is_empty) {
            view! { <p class="hollow">{say!(goods::no_yield_yet)}</p> }.into_any()
        } else {
            ().into_any()
        }
    });
    view! {
        <section class="section">
            <h2>{say!(goods::measured_yields)}</h2>
            {none}
            {steps}
        </section>
    }
    .into_any()
}
