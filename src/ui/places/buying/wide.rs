//! Whether there is room for two panes.

use leptos::prelude::window;

/// The width from which pages have two panes, in pixels; `shared.css` has the same in rem.
const PANES_FROM: f64 = 1100.0;

/// Whether there is room for two panes, as the window is now: what is folded on a phone stands open.
pub fn is_wide() -> bool {
    window().inner_width().ok().and_then(|width| width.as_f64()).is_some_and(|width| width >= PANES_FROM)
}
