//! Something to tick off.

use leptos::prelude::*;

/// Something to tick off: a large box, its name beside it.
#[component]
pub fn Tick(
    /// Whether it is ticked.
    done: Signal<bool>,
    /// Ticks it, or takes the tick back.
    set: impl Fn(bool) + 'static,
    /// Whether it waits for something else.
    #[prop(optional, into)]
    waits: Signal<bool>,
    /// What it is.
    children: Children,
) -> impl IntoView {
    view! {
        <label class="tick">
            <input
                type="checkbox"
                prop:checked=done
                disabled=waits
                on:change=move |event| set(event_target_checked(&event))
            />
            <span class="tick-name">{children()}</span>
        </label>
    }
}
