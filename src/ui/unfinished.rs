//! New things that were begun on other screens and are not in the book yet: what each still needs,
//! and the way to it.

use leptos::prelude::*;

use super::live::{live, press};
use super::lock::Lock;
use super::state::AppState;
use crate::app::route::Route;
use crate::app::unfinished::Begun;
use crate::say;

/// What was begun on other screens than the one that is open; nothing at the locked Counter.
pub fn elsewhere(route: ReadSignal<Route>) -> AnyView {
    let (state, lock) = (AppState::here(), Lock::here());
    let waiting = Memo::new(move |_| {
        let here = route.get().address();
        let waits = |begun: &&Begun| begun.waits() && begun.address != here;
        state.unfinished.with(|all| all.all_begun().iter().filter(waits).cloned().collect::<Vec<Begun>>())
    });
    let one = move |begun: Begun| {
        let Begun { thing, address, needs, .. } = begun;
        let discard = move || state.unfinished.update(|all| all.drop_begun(&thing));
        view! {
            <div class="notice" role="status">
                <p>{needs}</p>
                <a class="button" href=address>
                    {say!(book::finish_now)}
                </a>
                <button class="quiet" on:click=press(discard)>
                    {say!(book::discard_draft)}
                </button>
            </div>
        }
    };
    live(
        move || if lock.is_on() { ().into_any() } else { waiting.get().into_iter().map(one).collect_view().into_any() },
    )
}
