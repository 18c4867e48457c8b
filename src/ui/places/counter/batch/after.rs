//! When a batch is made: what it used comes off the shelf.

use leptos::prelude::*;

use crate::book::Edit;
use crate::counter::batch::{taken_off, to_take_off};
use crate::counter::on_hand::used;
use crate::drink::make::needs;
use crate::foundation::measure::Date;
use crate::say;
use crate::ui::fields::Hangs;
use crate::ui::live::{flag, press, text, trouble};
use crate::ui::parts::Section;
use crate::ui::places::counter::said::said;
use crate::ui::state::AppState;
use crate::words;

/// When a batch is made.
#[component]
pub fn After(
    /// The day.
    day: Date,
    /// The numbers that it waits for.
    hangs: Hangs,
) -> impl IntoView {
    let state = AppState::here();
    let refused = RwSignal::new(None::<String>);
    let taken = RwSignal::new(String::new());
    let take_off = move || {
        let used = state.book.with_untracked(|book| {
            let filled = to_take_off(book.batch(day)?);
            let takes =
                |filled: Vec<_>| state.ledger.with_untracked(|ledger| needs(book, ledger, &mut filled.into_iter()));
            let used = filled.and_then(takes).and_then(|takes| used(book, &takes));
            Some((used, taken_off(book, day)?))
        });
        let put = match used {
            None => return,
            Some((Err(error), _)) => Err(words::overflow(error)),
            Some((Ok(used), noted)) => {
                let sentence = said(state, |words| words.taken(&used));
                state
                    .apply(say!(counter::deduct_from_stock), Edit::Together(vec![used.edit, noted]))
                    .map(|()| taken.set(sentence))
            }
        };
        refused.set(put.err());
    };
    let filled =
        move || state.book.with(|book| book.batch(day).is_some_and(|batch| batch.makes.iter().any(|make| make.filled)));
    let all_off = move || {
        state.book.with(|book| book.batch(day).is_none_or(|batch| to_take_off(batch).is_ok_and(|left| left.is_empty())))
    };
    let off = flag(move || all_off() || hangs.is_unread());
    let said = text(move || match (filled(), all_off()) {
        _ if hangs.is_unread() => hangs.waits_for(),
        (false, _) => say!(counter::check_off_first).to_string(),
        (true, true) if taken.with(String::is_empty) => say!(counter::all_deducted).to_string(),
        (true, true) => taken.get(),
        (true, false) => String::new(),
    });
    view! {
        <Section heading=say!(counter::after_filling) about=say!(counter::deduct_about)>
            <p class="actions">
                <button class="button" disabled=off on:click=press(take_off)>
                    {say!(counter::deduct_from_stock)}
                </button>
            </p>
            <p class="soft" role="status">{said}</p>
            {trouble(move || refused.get())}
        </Section>
    }
}
