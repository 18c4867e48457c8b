//! How high a volume stands in a container, and how much there is up to a height.

use leptos::prelude::*;

use super::change::size;
use crate::book::ContainerId;
use crate::drink::fill::{height_of, volume_to};
use crate::foundation::measure::{Amount, TypedLength};
use crate::say;
use crate::ui::fields::{self, Entry};
use crate::ui::live::{text, when};
use crate::ui::parts::Fold;
use crate::ui::state::AppState;
use crate::words;

/// A volume and its height, both ways, where heights are known. Nothing of it is kept.
#[component]
pub fn Stands(
    /// The container.
    id: ContainerId,
    /// Whether it stands open at first.
    open: bool,
) -> impl IntoView {
    let state = AppState::here();
    let known = move || state.book.with(|book| book.container(id)?.brimful.height().ok()?).is_some();
    when(known, move || heights(state, id, open))
}

fn heights(state: AppState, id: ContainerId, open: bool) -> AnyView {
    let volume = RwSignal::new(None::<Amount>);
    let height = RwSignal::new(None::<TypedLength>);
    let stands = move || {
        let volume = volume.get()?.volume().ok()??;
        let found = state.book.with(|book| {
            height_of(book.container(id)?, volume).map_err(|error| words::fill_error(&error, book)).transpose()
        })?;
        Some(match found {
            Ok(height) => say!(goods::height_of_volume, height = state.length(height)),
            Err(sentence) => sentence,
        })
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
            Ok((volume, true)) => say!(goods::above_rim, volume = state.volume(volume)),
            Ok((volume, false)) => say!(goods::volume_of_height, volume = state.volume(volume)),
            Err(sentence) => sentence,
        })
    };
    view! {
        <Fold name=say!(goods::height_and_volume) figure=Signal::stored(String::new()) open>
            <p class="about">{say!(goods::height_and_volume_about)}</p>
            <div class="fields">
                <Entry
                    label=say!(goods::volume)
                    value=text(move || volume.get().map(|amount| state.amount(amount)).unwrap_or_default())
                    note=text(move || stands().unwrap_or_default())
                    units=fields::units(size)
                    commit=fields::loose_amount(volume, size)
                />
                <Entry
                    label=say!(goods::height)
                    value=text(move || height.get().map(|length| state.typed_length(length)).unwrap_or_default())
                    note=text(move || holds().unwrap_or_default())
                    units=fields::length_units()
                    commit=fields::loose_length(height)
                />
            </div>
        </Fold>
    }
    .into_any()
}
