//! The screens.

use leptos::prelude::*;

/// Mounts the app on the page's body.
pub fn mount() {
    mount_to_body(|| view! { <h1>"Brimwright"</h1> });
}
