//! The choice of books: the first thing that a new person sees.

use leptos::prelude::*;

use super::library::{Library, Way};
use super::live::{live, press, trouble, when};
use super::today::moment;
use super::update::UpdateNotice;
use crate::store::Listed;
use crate::words;

/// Said when the browser has thrown the books away.
const EMPTIED: &str = "There were books on this device before, and the browser has cleared them. If you saved a book as a file, start an empty book and import the file in Book.";

/// The choice of books.
#[component]
pub fn Welcome() -> impl IntoView {
    let library = Library::here();
    view! {
        <div class="top">
            <UpdateNotice />
        </div>
        <main class="welcome">
            <h1>"Brimwright"</h1>
            <p class="welcome-line">"Size, cost and price your drinks. On this device, also without a network."</p>
            {trouble(move || library.emptied.get().then(|| EMPTIED.to_string()))}
            {when(
                move || !library.books.with(Vec::is_empty),
                || view! { <h2>"Your books"</h2> <Books /> }.into_any(),
            )}
            <div class="welcome-ways">
                <button class="welcome-way" on:click=press(move || library.start_empty())>
                    <strong>"Start an empty book"</strong>
                    <span>"What you buy, what you pour into, what you mix: three steps to a first price."</span>
                </button>
                <button class="welcome-way" on:click=press(move || library.open_demo())>
                    <strong>"Look around in Marrowgate Juice Hall"</strong>
                    <span>"A demo book with 14 drinks. Town, shop, suppliers and prices are invented."</span>
                </button>
            </div>
            {trouble(move || library.refused.get())}
            <p class="soft">
                "Nothing leaves this device: no sign-up, no tracking. Figures are only as right as what is entered, and are no legal, tax or food-safety advice."
            </p>
        </main>
    }
}

/// The books on this device.
#[component]
pub fn Books() -> impl IntoView {
    let library = Library::here();
    let one = move |book: Listed| match book {
        Listed::Book(entry) => view! {
            <li>
                <button class="button book" on:click=press(move || library.go(Way::Open(entry.id)))>
                    <span>{entry.name.clone()}</span>
                    {entry.invented.then(|| view! { <span class="tag">"invented data"</span> })}
                    <span class="soft">{words::keeping::told_apart(&entry, entry.changed.map(moment))}</span>
                </button>
            </li>
        }
        .into_any(),
        Listed::Damaged { id, .. } => {
            let open = press(move || {
                if let Some(id) = id {
                    library.go(Way::Open(id));
                }
            });
            view! {
                <li>
                    <button class="button book" on:click=open disabled=id.is_none()>
                        "A book that cannot be read"
                    </button>
                </li>
            }
            .into_any()
        }
    };
    let all = live(move || library.books.get().into_iter().map(one).collect_view().into_any());
    view! { <ul class="books">{all}</ul> }
}
