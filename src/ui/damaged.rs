//! A book that is stored and does not read: what is stored of it, and the ways out.

use leptos::prelude::*;

use super::files::save_text;
use super::library::{Library, Way};
use super::live::{flag, press, trouble, when};
use super::lock::Lock;
use super::places;
use super::saving::{before_deleting, without_a_copy};
use crate::say;
use crate::store::Damage;

/// Saving what is stored of it, repairing it, another book, and deleting it.
pub fn ways_out(damage: &Damage) -> AnyView {
    let (library, lock) = (Library::here(), Lock::here());
    let (book, stored) = (damage.book, damage.text());
    let (wanted, armed) = (RwSignal::new(false), RwSignal::new(false));
    // What is stored has the prices that a locked device keeps to itself.
    let locked = flag(move || lock.is_on());
    let delete = move || library.go(Way::Delete(book));
    let for_repair = stored.clone();
    view! {
        <p class="actions">
            <button
                class="main"
                hidden=locked
                on:click=press(move || save_text("brimwright-stored-book.txt", "text/plain", &stored))
            >
                {say!(first::save_stored_data)}
            </button>
            <button class="button" on:click=press(move || wanted.set(true))>
                {say!(first::show_readable_parts)}
            </button>
            <button class="button" on:click=press(move || library.go(Way::Close))>
                {say!(first::open_other_book)}
            </button>
            <button class="quiet" hidden=locked on:click=press(move || armed.set(true))>
                {say!(first::delete_book)}
            </button>
        </p>
        {before_deleting(move || armed.get(), || None, delete, armed)}
        {trouble(move || library.refused.get())}
        {without_a_copy(library)}
        {when(move || wanted.get(), move || places::ways_back(Some(for_repair.clone())))}
    }
    .into_any()
}
