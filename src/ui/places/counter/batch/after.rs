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
                state.apply("Taken off the shelf", used.edit).map(|()| taken.set(sentence))
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
    let off = flag(move || none_filled() || !taken.with(String::is_empty));
    let said = text(move || match none_filled() {
        true => "Tick what is filled first.".to_string(),
        false => taken.get(),
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
