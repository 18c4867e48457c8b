//! Finding rows of a list by letters of their names.

use leptos::prelude::*;

use crate::book::{Book, Key};
use crate::say;
use crate::ui::live::text;
use crate::ui::order;
use crate::ui::state::AppState;

/// Rows shown at once: more fields would keep a phone waiting.
const SHOWN: usize = 40;

/// Those whose name has the letters, and how many of them are not shown.
pub fn found(state: AppState, search: RwSignal<String>, all: Memo<Vec<Key>>) -> (Memo<Vec<Key>>, Signal<String>) {
    let matching = Memo::new(move |_| -> Vec<Key> {
        let wanted = order::lower_case(&search.get());
        let fits = |book: &Book, key: &Key| order::lower_case(&book.name(*key)).contains(&wanted);
        state.book.with(|book| all.get().into_iter().filter(|key| fits(book, key)).collect())
    });
    let shown = Memo::new(move |_| matching.with(|keys| keys.iter().take(SHOWN).copied().collect()));
    let rest = text(move || match matching.with(Vec::len).saturating_sub(SHOWN) {
        0 if matching.with(Vec::is_empty) && !search.with(String::is_empty) => say!(counter::no_matches).to_string(),
        0 => String::new(),
        more => say!(counter::more_not_shown, more = more),
    });
    (shown, rest)
}
