//! Book: the open book and its settings, files in and out, the other books.

mod choose_file;
mod copies;
mod deleted;
mod files;
mod incoming;
mod points;
mod settings;
mod this_device;

pub use this_device::counter_language;

use leptos::prelude::*;

use super::counter::LockDevice;
use crate::drink::label::Law;
use crate::exchange;
use crate::say;
use crate::ui::library::{DEMO, Library, Phase, SECOND_DEMO, Way};
use crate::ui::live::{press, text, trouble, when};
use crate::ui::parts::{Fold, Section, is_wide};
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
                    {say!(book::sample_book_about)}
                </p>
            }
            .into_any()
        },
    );
    let cautions = text(move || words::book_cautions(state.book.with(|book| Law::of(book.settings()))));
    let warning = before_deleting(move || armed.get(), move || Some(name.get_untracked()), delete, armed);
    view! {
        <h1>{name}</h1>
        {invented}
        <settings::Settings />
        <files::Files />
        <copies::CopiesSection />
        <points::RestorePoints />
        <Section heading=say!(book::all_books)>
            <Books />
            {trouble(move || library.refused.get())}
            <p class="actions">
                <button class="button" on:click=press(move || library.start_empty())>
                    {say!(first::start_book)}
                </button>
                <button class="button" on:click=press(move || library.open_demo(DEMO))>
                    {say!(book::open_sample_book)}
                </button>
                <button class="button" on:click=press(move || library.open_demo(SECOND_DEMO))>
                    {say!(first::second_demo)}
                </button>
                <button class="quiet" on:click=press(move || library.go(Way::Close))>
                    {say!(book::close_book)}
                </button>
                <button class="quiet" on:click=press(move || armed.update(|armed| *armed = !*armed))>
                    {say!(first::delete_book)}
                </button>
            </p>
            {warning}
            {without_a_copy(library)}
            <deleted::DeletedBooks />
        </Section>
        <div class="folds">
            <this_device::ThisDevice />
            <LockDevice />
            <Fold name=say!(book::cautions) figure=Signal::stored(String::new()) open=is_wide()>
                <p>{cautions}</p>
            </Fold>
        </div>
    }
}

/// The ways back to a book where none is open; `stored` is what is left of a damaged one.
pub fn ways_back(stored: Option<String>) -> AnyView {
    let taken = stored.map(|stored| exchange::take_in(stored).map(|taken| taken.or_named(say!(book::repaired_book))));
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
