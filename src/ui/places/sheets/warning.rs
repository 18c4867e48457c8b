//! The warning statement of untreated juice, to cut out: nothing but the statement in its box.

use leptos::prelude::*;

use crate::ui::parts::warning_box;

/// Boxes on a paper.
const BOXES: usize = 12;

/// Boxes with the statement.
#[component]
pub fn Warnings() -> impl IntoView {
    let boxes = (0..BOXES).map(|_| view! { <div class="paper-whole">{warning_box()}</div> }).collect_view();
    view! { <div class="paper-warnings">{boxes}</div> }
}
