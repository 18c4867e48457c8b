//! What an unclear text could mean, to be answered by a press beside the field.

use std::sync::Arc;

use leptos::prelude::*;

use crate::foundation::measure::both_readings;
use crate::say;
use crate::ui::live::{live, press};
use crate::ui::state::AppState;

/// Types a text into a field in a person's place.
pub type TypeIn = Arc<dyn Fn(String) + Send + Sync>;

/// Both readings of a text that could mean two numbers, while it could.
pub fn readings(state: AppState, unclear: Signal<Option<String>>, type_in: TypeIn) -> AnyView {
    live(move || {
        let both = unclear.with(|text| both_readings(text.as_deref()?, state.speaker.get().style()));
        let Some(both) = both else { return ().into_any() };
        let button = |reading: String| {
            let (type_in, words) = (type_in.clone(), say!(book::use_reading, reading = &reading));
            view! {
                <button class="button" type="button" on:click=press(move || type_in(reading.clone()))>
                    {words}
                </button>
            }
        };
        view! { <p class="entry-answers">{both.map(button).into_iter().collect_view()}</p> }.into_any()
    })
}
