//! New things that were begun on other screens and are not in the book yet: what each still needs,
//! and the way to it.

use leptos::prelude::*;

use super::live::{live, press};
use super::lock::Lock;
use super::state::AppState;
use crate::app::route::{Route, Step};
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
    // On the way to a first price, cases wait for the step that needs them: one notice there names what is missing.
    let shown = Memo::new(move |_| match route.get() {
        Route::FirstPrice(first) => {
            let mut waiting = waiting.get();
            waiting.retain(|begun| !on_the_way(begun) || first.step == Step::Price);
            let more = waiting.iter().filter(|begun| on_the_way(begun)).count().saturating_sub(1);
            let mut is_first = true;
            waiting.retain(|begun| !on_the_way(begun) || std::mem::take(&mut is_first));
            waiting.into_iter().map(|begun| (more, begun)).collect()
        }
        _ => waiting.get().into_iter().map(|begun| (0, begun)).collect::<Vec<(usize, Begun)>>(),
    });
    let one = move |(more, begun): (usize, Begun)| {
        let is_of_the_way = on_the_way(&begun);
        let Begun { thing, address, needs, .. } = begun;
        let needs = match more {
            more if more > 0 && is_of_the_way => [needs, say!(book::more_cases_wait, cases = more)].join(" "),
            _ => needs,
        };
        let to = if is_of_the_way { say!(setup::what_goes_in) } else { say!(book::finish_now) };
        let discard = move || state.unfinished.update(|all| all.drop_begun(&thing));
        view! {
            <div class="notice" role="status">
                <p>{needs}</p>
                <a class="button" href=address>
                    {to}
                </a>
                <button class="quiet" on:click=press(discard)>
                    {say!(book::discard_draft)}
                </button>
            </div>
        }
    };
    live(move || if lock.is_on() { ().into_any() } else { shown.get().into_iter().map(one).collect_view().into_any() })
}

/// Whether something was begun on the way to a first price.
fn on_the_way(begun: &Begun) -> bool {
    matches!(Route::from_address(&begun.address), Route::FirstPrice(_))
}
