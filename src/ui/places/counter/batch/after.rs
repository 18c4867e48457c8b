//! When a batch is made: what it used comes off the shelf.

use leptos::prelude::*;

use super::said;
use crate::batch::made;
use crate::book::{Edit, Key};
use crate::make::needs;
use crate::measure::Date;
use crate::on_hand::used;
use crate::ui::live::{flag, press, text, trouble};
use crate::ui::parts::Section;
use crate::ui::route::{Route, go};
use crate::ui::state::AppState;
use crate::words;

/// The step to undo.
const TAKEN: &str = "Taken off the shelf";

/// When a batch is made.
#[component]
pub fn After(
    /// The day.
    day: Date,
) -> impl IntoView {
    let state = AppState::here();
    let refused = RwSignal::new(None::<String>);
    let taken = RwSignal::new(String::new());
    let take_off = move || {
        let used = state.book.with_untracked(|book| {
            let batch = book.batch(day)?;
            let takes = state.ledger.with_untracked(|ledger| needs(book, ledger, &mut made(batch)));
            Some(takes.and_then(|takes| used(book, &takes)))
        });
        let put = match used {
            None => return,
            Some(Err(error)) => Err(words::overflow(error)),
            Some(Ok(used)) => {
                let sentence = said(state, |words| words.taken(&used));
                state.apply(TAKEN, used.edit).map(|()| taken.set(sentence))
            }
        };
        refused.set(put.err());
    };
    let remove = move || {
        let removed = state.apply("A batch taken out", Edit::Remove(Key::Batch(day)));
        if removed.is_ok() {
            go(Route::Batches);
        }
        refused.set(removed.err());
    };
    let none_filled = move || state.book.with(|book| book.batch(day).is_none_or(|batch| made(batch).next().is_none()));
    // Pressed twice by a wet finger it is still taken off once.
    let just_taken = move || {
        state.last_change.with(|change| change.as_ref().is_some_and(|change| change.name == TAKEN))
            && !taken.with(String::is_empty)
    };
    let off = flag(move || none_filled() || just_taken());
    let said = text(move || match (none_filled(), just_taken()) {
        (true, _) => "Tick what is filled first.".to_string(),
        (false, true) => taken.get(),
        (false, false) => String::new(),
    });
    view! {
        <Section heading="When it is made" about=words::TAKE_OFF>
            <p class="actions">
                <button class="button" disabled=off on:click=press(take_off)>
                    "Take what it used off the shelf"
                </button>
                <button class="quiet" on:click=press(remove)>
                    "Take this batch out"
                </button>
            </p>
            <p class="soft" role="status">{said}</p>
            {trouble(move || refused.get())}
        </Section>
    }
}
