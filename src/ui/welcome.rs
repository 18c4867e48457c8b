//! The choice of books: the first thing that a new person sees.

use leptos::prelude::*;

use super::later::{Later, waiting};
use super::library::{DEMO, Library, Phase, SECOND_DEMO, Way};
use super::live::{live, press, text, trouble, when};
use super::state::AppState;
use super::update::UpdateNotice;
use crate::say;
use crate::store::{BookEntry, Listed};
use crate::words;

/// The choice of books.
#[component]
pub fn Welcome() -> impl IntoView {
    let (library, later) = (Library::here(), Later::here());
    let removed = move || library.kept.with(|kept| !kept.removed.is_empty());
    let wanted = RwSignal::new(false);
    Effect::new(move |_| {
        if removed() {
            wanted.set(true);
        }
        if wanted.get() {
            later.ask();
        }
    });
    view! {
        <div class="top">
            <UpdateNotice />
        </div>
        <main class="welcome">
            <h1>{say!(first::app_name)}</h1>
            <p class="welcome-line">{say!(first::tagline)}</p>
            {trouble(move || removed().then(|| library.kept.with(|kept| words::restore_points::removed(&kept.removed))))}
            {when(
                move || !library.books.with(Vec::is_empty),
                || view! { <h2>{say!(first::your_books)}</h2> <Books /> }.into_any(),
            )}
            <div class="welcome-ways">
                <button class="welcome-way" on:click=press(move || library.start_empty())>
                    <strong>{say!(first::start_book)}</strong>
                    <span>{say!(first::start_book_about)}</span>
                </button>
                {demo(library, DEMO, say!(first::look_around), say!(first::look_around_about))}
                {demo(library, SECOND_DEMO, say!(first::second_demo), say!(first::second_demo_about))}
            </div>
            {when(move || library.leaving.with(Option::is_some) && later.parts().is_none(), waiting)}
            {trouble(move || library.refused.get())}
            {when(
                move || !wanted.get(),
                move || {
                    view! {
                        <button class="quiet" on:click=press(move || wanted.set(true))>
                            {say!(first::find_other_books)}
                        </button>
                    }
                    .into_any()
                },
            )}
            {live(move || match (wanted.get(), later.parts()) {
                (true, Some(parts)) => (parts.ways_back)(),
                (true, None) => waiting(),
                (false, _) => ().into_any(),
            })}
            <p class="soft">{[say!(first::data_stays_here), say!(first::no_advice)].join(" ")}</p>
        </main>
    }
}

/// A demo book to look around in.
fn demo(library: Library, file: &'static str, name: &'static str, about: &'static str) -> AnyView {
    view! {
        <button class="welcome-way" on:click=press(move || library.open_demo(file))>
            <strong>{name}</strong>
            <span>{about}</span>
        </button>
    }
    .into_any()
}

/// The name of a book; of the open one as it is now.
fn name(library: Library, open: Option<AppState>, entry: &BookEntry) -> AnyView {
    let is_open = library.phase.get() == Phase::Open(entry.id);
    match open.filter(|_| is_open) {
        Some(state) => {
            let name = text(move || state.book.with(|book| book.settings().name.clone()));
            view! { <span>{name}</span> <span class="tag open-now">{say!(first::open_now)}</span> }.into_any()
        }
        None => view! { <span>{entry.name.clone()}</span> }.into_any(),
    }
}

/// The books on this device.
#[component]
pub fn Books() -> impl IntoView {
    let (library, later) = (Library::here(), Later::here());
    let open = use_context::<AppState>();
    let one = move |book: Listed| match book {
        Listed::Book(entry) => {
            let id = entry.id;
            let open_it = press(move || library.go(Way::Open(id)));
            let (name, invented) = (name(library, open, &entry), entry.invented);
            let about = text(move || later.parts().map(|parts| (parts.told_apart)(&entry)).unwrap_or_default());
            view! {
                <li>
                    <button class="button book" on:click=open_it>
                        {name}
                        {invented.then(|| view! { <span class="tag">{say!(first::sample_data)}</span> })}
                        <span class="soft">{about}</span>
                    </button>
                </li>
            }
            .into_any()
        }
        Listed::Damaged { id, .. } => {
            let open = press(move || {
                if let Some(id) = id {
                    library.go(Way::Open(id));
                }
            });
            view! {
                <li>
                    <button class="button book" on:click=open disabled=id.is_none()>
                        {say!(first::damaged_book)}
                    </button>
                </li>
            }
            .into_any()
        }
    };
    let all = live(move || library.books.get().into_iter().map(one).collect_view().into_any());
    view! { <ul class="books">{all}</ul> }
}
