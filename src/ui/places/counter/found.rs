//! Finding rows of a list by letters of their names.

use leptos::prelude::*;

use crate::book::{Book, Key};
use crate::say;
use crate::ui::live::{press, text, when};
use crate::ui::order;
use crate::ui::state::AppState;

/// Rows shown at once: more fields would keep a phone waiting.
const SHOWN: usize = 40;

/// Those whose name has the letters, and a way to those that are not shown.
pub fn found(state: AppState, search: RwSignal<String>, all: Memo<Vec<Key>>) -> (Memo<Vec<Key>>, AnyView) {
    let every = RwSignal::new(false);
    let matching = Memo::new(move |_| -> Vec<Key> {
        let wanted = order::lower_case(&search.get());
        let fits = |book: &Book, key: &Key| order::lower_case(&book.name(*key)).contains(&wanted);
        state.book.with(|book| all.get().into_iter().filter(|key| fits(book, key)).collect())
    });
    let shown = Memo::new(move |_| {
        let few = if every.get() { usize::MAX } else { SHOWN };
        matching.with(|keys| keys.iter().take(few).copied().collect::<Vec<Key>>())
    });
    let none = move || matching.with(Vec::is_empty) && !search.with(String::is_empty);
    let hidden = Memo::new(move |_| matching.with(Vec::len).saturating_sub(shown.with(Vec::len)));
    let rest = move || {
        let words = text(move || say!(market::show_more, count = hidden.get()));
        view! {
            <p class="actions">
                <button class="button" on:click=press(move || every.set(true))>
                    {words}
                </button>
            </p>
        }
        .into_any()
    };
    let rest = view! {
        {when(none, || view! { <p class="soft">{say!(counter::no_matches)}</p> }.into_any())}
        {when(move || hidden.get() > 0, rest)}
    };
    (shown, rest.into_any())
}
