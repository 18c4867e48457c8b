//! A way from what is missing to the field that mends it.

use leptos::prelude::*;

use super::live::{live, trouble};
use super::lock::Lock;
use super::state::AppState;
use crate::app::mend::mended_at;
use crate::app::route::Route;
use crate::book::OfferId;
use crate::say;

/// Why an offer cannot be computed, with the way to mend it.
pub fn stuck(state: AppState, id: OfferId) -> AnyView {
    let way = Memo::new(move |_| {
        let error = state.ledger.with(|ledger| ledger.get(id)?.as_ref().err().copied())?;
        mended_at(&error, id.drink)
    });
    view! {
        {trouble(move || state.stuck(id))}
        {live(move || way.get().map(fill_in).into_any())}
    }
    .into_any()
}

/// The way to a page with a field to fill. None for who is kept to the Counter.
pub fn fill_in(to: Route) -> AnyView {
    let is_kept = Lock::here().is_on();
    (!is_kept)
        .then(|| view! { <p class="actions"><a class="button" href=to.address()>{say!(drinks::fill_in)}</a></p> })
        .into_any()
}
