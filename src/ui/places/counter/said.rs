//! What is said of batches.

use leptos::prelude::*;

use crate::ui::state::AppState;
use crate::words;

/// Sentences about batches in the open book.
pub fn said<T>(state: AppState, say: impl Fn(&words::Batches) -> T) -> T {
    state.book.with(|book| say(&words::Batches { book, speaker: &state.speaker.get() }))
}
