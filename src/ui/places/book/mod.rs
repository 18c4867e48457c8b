//! Book: the open book and its settings, files in and out, the other books.

mod choose_file;
mod copies;
mod deleted;
mod files;
mod incoming;
mod points;
mod settings;
mod this_device;

use leptos::prelude::*;

use super::counter::LockDevice;
use crate::exchange;
use crate::ui::library::{Library, Phase, Way};
use crate::ui::live::{press, text, trouble, when};
use crate::ui::parts::Section;
use crate::ui::saving::{before_deleting, without_a_copy};
use crate::ui::state::AppState;
use crate::ui::welcome::Books;
use crate::words;

/// The open book.
#[component]
pub fn BookPage() -> impl IntoView {
    let (library, state) = (Library::here(), AppState::here());
    let armed = RwSignal::new(false);
    library.look_again();
    let delete = move || {
        if let Phase::Open(id) = library.phase.get_untracked() {
            armed.set(false);
            library.go(Way::Delete(id));
        }
    };
    let name = text(move || state.book.with(|book| book.settings().name.clone()));
    let invented = when(
        move || state.book.with(|book| book.settings().invented),
        || {
            view! {
                <p class="teach">
                    "This is a demo: town, shop, suppliers, drinks and prices are invented. Change what you like."
                </p>
            }
            .into_any()
        },
    );
    let warning = before_deleting(move || armed.get(), move || Some(name.get_untracked()), delete, armed);
    view! {
        <h1>{name}</h1>
        {invented}
        <settings::Settings />
        <files::Files />
        <copies::CopiesSection />
        <points::RestorePoints />
        <Section heading="Books on this device">
            <Books />
            {trouble(move || library.refused.get())}
            <p class="actions">
                <button class="button" on:click=press(move || library.start_empty())>
                    "Start an empty book"
                </button>
                <button class="button" on:click=press(move || library.open_demo())>
                    "Open the demo book"
                </button>
                <button class="quiet" on:click=press(move || library.go(Way::Close))>
                    "Close this book"
                </button>
                <button class="quiet" on:click=press(move || armed.update(|armed| *armed = !*armed))>
                    "Delete this book"
                </button>
            </p>
            {warning}
            {without_a_copy(library)}
            <deleted::DeletedBooks />
        </Section>
        <this_device::ThisDevice />
        <LockDevice />
        <Section heading="Cautions">
            <p>
                "Untreated juice that is packaged ahead must carry a warning on its label, in the United States. Sold to another business, it must be treated under a HACCP plan. Low-acid juice must be kept refrigerated. Allergens are only as right as what was entered. Nothing here is legal, tax or food-safety advice: local codes and licensed practice decide."
            </p>
        </Section>
    }
}

/// The ways back to a book where none is open; `stored` is what is left of a damaged one.
pub fn ways_back(stored: Option<String>) -> AnyView {
    let taken = stored.map(exchange::take_in);
    let refused = taken.as_ref().and_then(|taken| taken.as_ref().err()).map(words::book_file_error);
    let taken = RwSignal::new(taken.and_then(Result::ok));
    view! {
        {refused.map(|sentence| view! { <p class="trouble" role="status">{sentence}</p> })}
        <incoming::Incoming taken />
        <incoming::OpenFile />
        <deleted::DeletedBooks />
    }
    .into_any()
}
