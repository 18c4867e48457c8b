//! A batch is deleted: at the end of its page, apart from what is pressed every day.

use leptos::prelude::*;

use crate::app::route::Route;
use crate::counter::batch::deleted;
use crate::foundation::measure::Date;
use crate::say;
use crate::ui::address::go;
use crate::ui::live::{press, trouble};
use crate::ui::state::AppState;
use crate::words;

/// Deletes a batch.
#[component]
pub fn Delete(
    /// The day.
    day: Date,
) -> impl IntoView {
    let state = AppState::here();
    let refused = RwSignal::new(None::<String>);
    let delete = move || {
        let edit =
            state.book.with_untracked(|book| Some((deleted(book, day)?, words::batch_deleted(book.batch(day)?))));
        let Some((edit, sentence)) = edit else { return };
        let put = state.apply(say!(counter::delete_batch), edit);
        if put.is_ok() {
            state.unfinished.update(|all| all.forget_unread(&Route::Batch(day).address()));
            state.say_done(sentence);
            go(Route::Batches);
        }
        refused.set(put.err());
    };
    view! {
        <p class="actions batch-end">
            <button class="quiet" on:click=press(delete)>
                {say!(counter::delete_batch)}
            </button>
        </p>
        {trouble(move || refused.get())}
    }
}
