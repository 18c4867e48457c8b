//! What the numbers of the open book say.

use leptos::prelude::*;

use super::remembered::{answered, point};
use crate::sizes::decision::{Finding, Told, findings};
use crate::ui::state::AppState;
use crate::ui::today::today;

/// What the numbers say of each kind of drinks, by what the owner said on other screens.
pub fn found(state: AppState) -> Vec<Finding> {
    let (told, point, answered) = (Told::default(), point(state), answered(state));
    state.book.with(|book| {
        state.ledger.with(|ledger| findings(book, ledger, &told, point, answered, today()).unwrap_or_default())
    })
}
