//! The readings of a bottle: how high known amounts stand in it.

use leptos::prelude::*;

use super::change::{changed, size};
use crate::book::{Book, Brimful, Container, ContainerId, Edit, Key, Reading};
use crate::foundation::jump::Kind;
use crate::foundation::measure::Exact;
use crate::say;
use crate::ui::fields::{self, Addition, Entry, Example, Field, Hangs, Typed, asks};
use crate::ui::live::{parts, press, text, trouble};
use crate::ui::parts::TakeOut;
use crate::ui::state::AppState;

/// The fields of the first readings, by what is missing while they are empty; the second is the
/// rim until there are more.
pub(super) const FIRST: [(Field, Field); 2] =
    [(Field::FirstHeight, Field::FirstVolume), (Field::SecondHeight, Field::SecondVolume)];

/// The first readings as they are typed.
pub(super) fn poured(typed: &mut Typed<'_>, book: &Book) -> Option<Brimful> {
    let read = FIRST
        .map(|(height, volume)| (typed.length(height, Example::LevelBelowTheRim), typed.amount(volume, size(book))));
    let reading = |(height, volume): (Option<_>, Option<_>)| Some(Reading { height: height?, volume: volume? });
    Some(Brimful::Poured(read.map(reading).into_iter().collect::<Option<_>>()?))
}

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
    /// How the first of them get into the book.
    new: Addition,
    /// Whether that is with a new container, under which what it needs is said.
    is_new: bool,
    /// The answers that hang on it.
    hangs: Hangs,
) -> impl IntoView {
    let state = AppState::here();
    let refused = RwSignal::new(None::<String>);
    let first = new.clone();
    let places = move || {
        let count = || state.book.with(|book| book.container(id).map_or(0, |it| readings(it).len()));
        let count = if first.is_there() { count() } else { FIRST.len() };
        (0..count as u64).collect::<Vec<u64>>()
    };
    let height = RwSignal::new(None);
    let volume = RwSignal::new(None);
    let add = move || {
        let (Some(height_now), Some(volume_now)) = (height.get_untracked(), volume.get_untracked()) else {
            refused.set(Some(say!(goods::reading_incomplete).to_string()));
            return;
        };
        let reading = Reading { height: height_now, volume: volume_now };
        let edit = state.book.with_untracked(|book| readings_changed(book, id, |it| put_in_order(it, reading)));
        let outcome = edit.map_or(Ok(()), |edit| state.apply(say!(goods::add_reading), edit));
        if outcome.is_ok() {
            height.set(None);
            volume.set(None);
        }
        refused.set(outcome.err());
    };
    let another = move || {
        view! {
            <div class="fields">
                <Entry
                    label=say!(goods::new_height)
                    value=text(move || height.get().map(|length| state.typed_length(length)).unwrap_or_default())
                    units=fields::length_units()
                    commit=fields::loose_length(height)
                />
                <Entry
                    label=say!(goods::new_volume)
                    value=text(move || volume.get().map(|amount| state.amount(amount)).unwrap_or_default())
                    units=fields::units(size)
                    commit=fields::loose_amount(volume, size)
                />
            </div>
            {trouble(move || refused.get())}
            <p class="actions">
                <button class="button" on:click=press(add)>
                    {say!(goods::add_reading)}
                </button>
            </p>
        }
        .into_any()
    };
    let row = new.clone();
    view! {
        <p class="soft">{say!(goods::readings_about)}</p>
        <ol class="lines">
            {parts(places, move |place| reading_row(state, id, &row, place as usize, refused, hangs))}
        </ol>
        {(!is_new).then(|| view! { {new.needs()} {new.discard()} })}
        {new.once_there(another)}
    }
}

/// By height; of the same height, the new one comes after.
fn put_in_order(readings: &mut Vec<Reading>, new: Reading) {
    let above = |reading: &Reading| reading.height.length().ok() > new.height.length().ok();
    let place = readings.iter().position(above).unwrap_or(readings.len());
    readings.insert(place, new);
}

fn reading_row(
    state: AppState,
    id: ContainerId,
    new: &Addition,
    place: usize,
    refused: RwSignal<Option<String>>,
    hangs: Hangs,
) -> AnyView {
    let number = place.saturating_add(1);
    let shown = untrack(|| state.number(Exact::new(i64::try_from(number).unwrap_or(i64::MAX), 0)));
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
        refused.set(edit.and_then(|edit| state.apply(say!(goods::remove_reading), edit).err()));
    };
    let set_height = fields::length(say!(goods::reading_height), Example::LevelBelowTheRim, move |book, height| {
        set(book, &|reading| reading.height = height)
    });
    let set_volume = fields::amount(say!(goods::reading_volume), Example::Amount, size, move |book, volume| {
        set(book, &|reading| reading.volume = volume)
    });
    let (heights, volumes) =
        (of(|reading, state| state.typed_length(reading.height)), of(|reading, state| state.amount(reading.volume)));
    let (heights, set_height, volumes, set_volume) = match FIRST.get(place).copied() {
        Some((height, volume)) => (
            new.value(height, heights),
            new.commit(height, set_height),
            new.value(volume, volumes),
            new.commit(volume, set_volume),
        ),
        None => (heights, set_height, volumes, set_volume),
    };
    let examples = match place {
        0 => [Example::LevelBelowTheRim, Example::VolumeBelowTheRim],
        _ => [Example::InsideHeight, Example::Amount(state.book.with_untracked(|book| size(book).unit))],
    };
    let [height, volume] = examples.map(|it| state.speaker.with_untracked(|speaker| it.said(speaker)));
    let named = say!(goods::reading, number = &shown);
    let take_out =
        new.once_there(move || view! { <TakeOut name=Signal::stored(named.clone()) on_click=remove /> }.into_any());
    view! {
        <li class="reading">
            <Entry
                label=say!(goods::height_of_reading, number = &shown)
                asks=asks(Kind::Size, Key::Container(id), format!("height/{number}"))
                hangs
                units=fields::length_units()
                example=height
                value=heights
                commit=set_height
            />
            <Entry
                label=say!(goods::volume_of_reading, number = shown)
                asks=asks(Kind::Size, Key::Container(id), format!("volume/{number}"))
                hangs
                units=fields::units(size)
                example=volume
                value=volumes
                commit=set_volume
            />
            {take_out}
        </li>
    }
    .into_any()
}
