//! The screens.
#![allow(clippy::arithmetic_side_effects, reason = "positions in a drawing; figures come from the engine")]

mod address;
mod awake;
mod beside;
mod call;
mod chart;
mod damaged;
mod density;
mod device_file;
mod doubtful;
mod fields;
mod files;
mod glass;
mod how;
mod keeping;
mod kept;
mod language;
mod later;
mod library;
mod live;
mod locale;
mod lock;
mod mend;
mod moved;
mod notices;
mod nowhere;
mod order;
mod parts;
mod places;
mod present;
mod random;
mod saving;
mod section;
mod share;
mod shell;
mod speaking;
mod starter;
mod state;
mod steps;
mod today;
mod unfinished;
mod update;
mod welcome;

use leptos::prelude::*;

use library::{Library, Phase};

pub use later::{Load, PARTS, Parts};

/// Mounts the app on the page's body; `load` fetches what is not in the first load.
pub fn mount(load: Load) {
    language::begin();
    // In a task of its own: the browser can paint and answer between the two.
    set_timeout(move || mount_to_body(move || view! { <App load /> }), std::time::Duration::ZERO);
}

#[component]
fn App(load: Load) -> impl IntoView {
    let library = Library::start();
    provide_context(library);
    provide_context(update::Update::start());
    provide_context(later::Later::start(load));
    provide_context(lock::Lock::start());
    view! {
        {live::live(move || {
            let phase = library.phase.get();
            // The page's own first words give way when there is something in their place.
            if phase != Phase::Opening && let Some(start) = document().get_element_by_id("start") {
                start.remove();
            }
            match phase {
                Phase::Opening => ().into_any(),
                Phase::Choosing => view! { <welcome::Welcome /> }.into_any(),
                Phase::Open(_) => open_book(library),
                Phase::Stuck(fault) => view! { <saving::Stuck fault /> }.into_any(),
            }
        })}
    }
}

fn open_book(library: Library) -> AnyView {
    match library.opened() {
        Some(state) => {
            provide_context(state);
            later::Later::here().keep(state);
            provide_context(notices::Notices::default());
            view! { <shell::Shell /> }.into_any()
        }
        None => ().into_any(),
    }
}
