//! How high a volume stands in a container, and how much there is up to a height.

use leptos::prelude::*;

use super::change::size;
use crate::book::ContainerId;
use crate::drink::fill::{height_of, volume_to};
use crate::foundation::measure::{Amount, TypedLength};
use crate::ui::fields::{self, Entry};
use crate::ui::live::{text, when};
use crate::ui::parts::Section;
use crate::ui::state::AppState;
use crate::words;

/// A volume and its height, both ways, where heights are known. Nothing of it is kept.
#[component]
pub fn Stands(
    /// The container.
    id: ContainerId,
) -> impl IntoView {
    let state = AppState::here();
    let known = move || state.book.with(|book| book.container(id)?.brimful.height().ok()?).is_some();
    when(known, move || heights(state, id))
}

fn heights(state: AppState, id: ContainerId) -> AnyView {
    let volume = RwSignal::new(None::<Amount>);
    let height = RwSignal::new(None::<TypedLength>);
    let stands = move || {
        let volume = volume.get()?.volume().ok()??;
        let found = state.book.with(|book| {
            height_of(book.container(id)?, volume).map_err(|error| words::fill_error(&error, book)).transpose()
        })?;
        Some(
            found.map_or_else(|sentence| sentence, |height| format!("Stands {} above the base.", state.length(height))),
        )
    };
    let holds = move || {
        let length = height.get()?.length().ok()?;
        let found = state.book.with(|book| {
            let container = book.container(id)?;
            let rim = container.brimful.height().ok()??;
            let volume = volume_to(container, length).map_err(|error| words::fill_error(&error, book)).transpose()?;
            Some(volume.map(|volume| (volume, length > rim)))
        })?;
        Some(match found {
            Ok((volume, true)) => format!("That is over the rim: up to the rim there is {}.", state.volume(volume)),
            Ok((volume, false)) => format!("Up to there it is {}.", state.volume(volume)),
            Err(sentence) => sentence,
        })
    };
    view! {
        <Section heading="How high does this stand?" about="To try out: nothing here changes the container.">
            <div class="fields">
                <Entry
                    label="Volume in it"
                    value=text(move || volume.get().map(|amount| state.amount(amount)).unwrap_or_default())
                    note=text(move || stands().unwrap_or_default())
                    units=fields::units(size)
                    commit=fields::loose_amount(volume, size)
                />
                <Entry
                    label="Height above the base"
                    value=text(move || height.get().map(|length| state.typed_length(length)).unwrap_or_default())
                    note=text(move || holds().unwrap_or_default())
                    units=fields::length_units()
                    commit=fields::loose_length(height)
                />
            </div>
        </Section>
    }
    .into_any()
}
