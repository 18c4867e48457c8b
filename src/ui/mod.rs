//! The screens.
#![allow(clippy::arithmetic_side_effects, reason = "positions in a drawing; figures come from the engine")]

mod fields;
mod history;
mod locale;
mod moved;
mod parts;
mod places;
mod random;
mod route;
mod saving;
mod shell;
mod state;

use leptos::prelude::*;

use crate::book::{Book, Settings};
use saving::{Saving, SavingSignal};
use state::AppState;

/// Mounts the app on the page's body.
pub fn mount() {
    mount_to_body(|| view! { <App /> });
}

#[component]
fn App() -> impl IntoView {
    let saving: SavingSignal = RwSignal::new(Saving::Saved);
    provide_context(saving);
    provide_context(AppState::new(Book::new(Settings::new("My book")), Box::new(|_, _| ())));
    view! { <shell::Shell /> }
}
