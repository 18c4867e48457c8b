//! What an unclear text could mean, to be answered by a press beside the field.

use std::sync::Arc;

use leptos::prelude::*;

use crate::say;
use crate::ui::live::{live, press};

/// Types a text into a field in a person's place.
pub type TypeIn = Arc<dyn Fn(String) + Send + Sync>;

/// The two meanings of a text, while it has two.
pub fn readings(both: Signal<Option<[String; 2]>>, type_in: TypeIn) -> AnyView {
    live(move || {
        let Some(both) = both.get() else { return ().into_any() };
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
