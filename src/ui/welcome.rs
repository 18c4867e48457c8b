//! The choice of books: the first thing that a new person sees.

use leptos::prelude::*;

use super::library::Library;
use crate::store::Listed;

/// The choice of books.
#[component]
pub fn Welcome() -> impl IntoView {
    let library = Library::here();
    view! {
        <main class="welcome">
            <h1>"Brimwright"</h1>
            <p class="welcome-line">"Size, cost and price your drinks. On this device, also without a network."</p>
            <Show when=move || library.emptied.get()>
                <p class="trouble" role="alert">
                    "There were books on this device before, and the browser has cleared them. If you saved a book as a file, start an empty book and import the file in Book."
                </p>
            </Show>
            <Show when=move || !library.books.with(Vec::is_empty)>
                <h2>"Your books"</h2>
                <Books />
            </Show>
            <div class="welcome-ways">
                <button class="welcome-way" on:click=move |_| library.start_empty()>
                    <strong>"Start an empty book"</strong>
                    <span>"What you buy, what you pour into, what you mix: three steps to a first price."</span>
                </button>
                <button class="welcome-way" on:click=move |_| library.open_demo()>
                    <strong>"Look around in Marrowgate Juice Hall"</strong>
                    <span>"A demo book with 14 drinks. Town, shop, suppliers and prices are invented."</span>
                </button>
            </div>
            <p class="trouble" role="alert" hidden=move || library.refused.with(Option::is_none)>
                {move || library.refused.get()}
            </p>
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
                <button class="button book" on:click=move |_| library.open(entry.id)>
                    {entry.name.clone()}
                    {entry.invented.then(|| view! { <span class="tag">"invented data"</span> })}
                </button>
            </li>
        }
        .into_any(),
        Listed::Damaged { id, .. } => {
            let open = move |_| {
                if let Some(id) = id {
                    library.open(id);
                }
            };
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
    view! { <ul class="books">{move || library.books.get().into_iter().map(one).collect_view()}</ul> }
}
