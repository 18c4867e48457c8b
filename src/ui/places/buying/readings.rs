//! The readings of a bottle: how high known amounts stand in it.

use leptos::prelude::*;

use super::change::{changed, size};
use crate::book::{Book, Brimful, Container, ContainerId, Edit, Key, Reading};
use crate::jump::Kind;
use crate::ui::fields::{self, Entry, asks};
use crate::ui::live::{parts, press, text, trouble};
use crate::ui::parts::TakeOut;
use crate::ui::state::AppState;

fn readings(container: &Container) -> &[Reading] {
    match &container.brimful {
        Brimful::Poured(readings) => readings,
        Brimful::Weighed(_) | Brimful::Tapered(_) => &[],
    }
}

fn readings_changed(book: &Book, id: ContainerId, change: impl FnOnce(&mut Vec<Reading>)) -> Option<Edit> {
    changed(book, id, |it| {
        if let Brimful::Poured(readings) = &mut it.brimful {
            change(readings);
        }
    })
}

/// The readings of a bottle, from the base up.
#[component]
pub fn Readings(
    /// The container.
    id: ContainerId,
) -> impl IntoView {
    let state = AppState::here();
    let refused = RwSignal::new(None::<String>);
    let places = move || {
        let count = state.book.with(|book| book.container(id).map_or(0, |it| readings(it).len()));
        (0..count as u64).collect::<Vec<u64>>()
    };
    let height = RwSignal::new(None);
    let volume = RwSignal::new(None);
    let add = move || {
        let (Some(height_now), Some(volume_now)) = (height.get_untracked(), volume.get_untracked()) else {
            refused.set(Some("A reading is a pair: type how high it stands and how much is in it.".to_string()));
            return;
        };
        let reading = Reading { height: height_now, volume: volume_now };
        let edit = state.book.with_untracked(|book| readings_changed(book, id, |it| put_in_order(it, reading)));
        let outcome = edit.map_or(Ok(()), |edit| state.apply("Add a reading", edit));
        if outcome.is_ok() {
            height.set(None);
            volume.set(None);
        }
        refused.set(outcome.err());
    };
    view! {
           <div class="reading soft" aria-hidden="true">
               <span>"Height above the base"</span>
               <span>"Volume up to there"</span>
           </div>
           <ol class="lines">
               {parts(places, move |place| reading_row(state, id, place as usize, refused))}
           </ol>
           <div class="fields">
               <Entry
                   label="New reading: height"
                   value=text(move || height.get().map(|length| state.typed_length(length)).unwrap_or_default())
                   units=fields::length_units()
    commit=fields::loose_length(height)
               />
               <Entry
                   label="New reading: volume"
                   value=text(move || volume.get().map(|amount| state.amount(amount)).unwrap_or_default())
                   units=fields::units(size)
    commit=fields::loose_amount(volume, size)
               />
           </div>
           {trouble(move || refused.get())}
           <p class="actions">
               <button class="button" on:click=press(add)>
                   "Add this reading"
               </button>
           </p>
       }
}

/// By height; of the same height, the new one comes after.
fn put_in_order(readings: &mut Vec<Reading>, new: Reading) {
    let above = |reading: &Reading| reading.height.length().ok() > new.height.length().ok();
    let place = readings.iter().position(above).unwrap_or(readings.len());
    readings.insert(place, new);
}

fn reading_row(state: AppState, id: ContainerId, place: usize, refused: RwSignal<Option<String>>) -> AnyView {
    let number = place.saturating_add(1);
    let of = move |show: fn(Reading, AppState) -> String| {
        text(move || {
            let reading = state.book.with(|book| readings(book.container(id)?).get(place).copied());
            reading.map(|reading| show(reading, state)).unwrap_or_default()
        })
    };
    let set = move |book: &Book, change: &dyn Fn(&mut Reading)| {
        refused.set(None);
        readings_changed(book, id, |readings| {
            if let Some(reading) = readings.get_mut(place) {
                change(reading);
            }
        })
    };
    let remove = move || {
        let edit = state.book.with_untracked(|book| {
            readings_changed(book, id, |readings| {
                if place < readings.len() {
                    readings.remove(place);
                }
            })
        });
        refused.set(edit.and_then(|edit| state.apply("Take out a reading", edit).err()));
    };
    view! {
           <li class="reading">
               <Entry
                   label=format!("Height of reading {number}")
                   asks=asks(Kind::Size, Key::Container(id), format!("height/{number}"))
                   label_hidden=true
                   value=of(|reading, state| state.typed_length(reading.height))
                   units=fields::length_units()
    commit=fields::length("Height of a reading", move |book, height| {
                       set(book, &|reading| reading.height = height)
                   })
               />
               <Entry
                   label=format!("Volume of reading {number}")
                   asks=asks(Kind::Size, Key::Container(id), format!("volume/{number}"))
                   label_hidden=true
                   value=of(|reading, state| state.amount(reading.volume))
                   units=fields::units(size)
    commit=fields::amount("Volume of a reading", size, move |book, volume| {
                       set(book, &|reading| reading.volume = volume)
                   })
               />
               <TakeOut name=Signal::stored(format!("reading {number}")) on_click=remove />
           </li>
       }
    .into_any()
}
