//! Book: the open book and its settings, files in and out, the other books.

mod files;
mod settings;

use leptos::prelude::*;

use crate::ui::library::{Library, Phase};
use crate::ui::parts::Section;
use crate::ui::state::AppState;
use crate::ui::welcome::Books;

/// The open book.
#[component]
pub fn BookPage() -> impl IntoView {
    let (library, state) = (Library::here(), AppState::here());
    let armed = RwSignal::new(false);
    let delete = move |_| {
        if let Phase::Open(id) = library.phase.get_untracked() {
            library.leave();
            library.delete(id);
        }
    };
    view! {
        <h1>{move || state.book.with(|book| book.settings().name.clone())}</h1>
        {move || {
            state
                .book
                .with(|book| book.settings().invented)
                .then(|| {
                    view! {
                        <p class="teach">
                            "This is a demo: town, shop, suppliers, drinks and prices are invented. Change what you like."
                        </p>
                    }
                })
        }}
        <settings::Settings />
        <files::Files />
        <Section heading="Books on this device">
            <Books />
            <p class="trouble" role="alert" hidden=move || library.refused.with(Option::is_none)>
                {move || library.refused.get()}
            </p>
            <p class="actions">
                <button class="button" on:click=move |_| library.start_empty()>
                    "Start an empty book"
                </button>
                <button class="button" on:click=move |_| library.open_demo()>
                    "Open the demo book"
                </button>
                <button class="quiet" on:click=move |_| library.leave()>
                    "Close this book"
                </button>
                <button class="quiet" on:click=move |_| armed.update(|armed| *armed = !*armed)>
                    "Delete this book"
                </button>
            </p>
            <Show when=move || armed.get()>
                <div class="trouble" role="status">
                    <p>
                        "A deleted book cannot be brought back by Undo. Save it as a file first; the file brings it back whole."
                    </p>
                    <p class="actions">
                        <button class="button" on:click=delete>
                            "Delete it from this device"
                        </button>
                        <button class="main" on:click=move |_| armed.set(false)>
                            "Keep it"
                        </button>
                    </p>
                </div>
            </Show>
        </Section>
        <Section heading="Cautions">
            <p>
                "Untreated juice may need a warning statement and a treatment plan. Allergens are only as right as what was entered. Nothing here is legal, tax or food-safety advice: local codes and licensed practice decide."
            </p>
        </Section>
    }
}
