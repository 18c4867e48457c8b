//! Keeping what was decided or tried as a scenario.

use leptos::prelude::*;

use crate::app::route::Route;
use crate::book::{Edit, Record, Scenario, ScenarioId};
use crate::say;
use crate::ui::address::go;
use crate::ui::live::{press, trouble};
use crate::ui::random::random;
use crate::ui::state::AppState;

/// The button that keeps a scenario and opens it. `make` gives the scenario, or `None` where there is nothing
/// to keep.
pub fn keep_as_scenario(make: impl Fn(ScenarioId) -> Option<Scenario> + 'static) -> AnyView {
    let state = AppState::here();
    let refused = RwSignal::new(None::<String>);
    let keep = move || {
        let id = ScenarioId::from_random(random());
        let Some(scenario) = make(id) else { return };
        match state.apply(say!(decide::keep_as_scenario), Edit::Put(Record::Scenario(scenario))) {
            Ok(()) => go(Route::Scenario(id)),
            Err(sentence) => refused.set(Some(sentence)),
        }
    };
    view! {
        <p class="actions">
            <button class="button" on:click=press(keep)>
                {say!(decide::keep_as_scenario)}
            </button>
        </p>
        {trouble(move || refused.get())}
    }
    .into_any()
}
