//! How long a drink takes, what of a batch's time is its own, and what that comes to in each size.

use std::sync::Arc;

use leptos::prelude::*;

use super::change::changed;
use super::recipe::drink_size;
use crate::book::{Drink, DrinkId, Key, Part};
use crate::foundation::jump::Kind;
use crate::foundation::measure::{Amount, System};
use crate::say;
use crate::ui::fields::{self, Choice, Entry, Hangs, asks};
use crate::ui::live::{live, text};
use crate::ui::order;
use crate::ui::state::AppState;
use crate::words;

/// How long a drink takes, a volume of it, and a batch.
pub(super) fn labor(state: AppState, id: DrinkId, hangs: Hangs, units: System) -> AnyView {
    let of = move |show: fn(&Drink, AppState) -> String| {
        text(move || state.book.with(|book| book.drink(id).map(|it| show(it, state)).unwrap_or_default()))
    };
    view! {
        <Entry
            hangs
            label=say!(drinks::labor_per_drink)
            asks=asks(Kind::Labor, Key::Drink(id), "labor/drink")
            letters=true
            unit=say!(drinks::minutes_and_seconds)
            example=say!(drinks::time_example, time = fields::Example::Time.said(&state.speaker.get_untracked()))
            value=of(|it, state| state.time_if_any(it.labour.per_drink))
            commit=fields::optional_time(say!(drinks::labor_per_drink), move |book, time| {
                changed(book, id, |it| it.labour.per_drink = time)
            })
        />
        <Entry
            hangs
            label=words::labor_per_volume(units)
            asks=asks(Kind::Labor, Key::Drink(id), "labor/volume")
            letters=true
            unit=say!(drinks::minutes_and_seconds)
            example=say!(drinks::time_example, time = fields::Example::Time.said(&state.speaker.get_untracked()))
            value=of(|it, state| state.labor_if_any(it.labour.per_litre))
            commit=fields::optional_labor_per_volume(words::labor_per_volume(units), move |book, time| {
                changed(book, id, |it| it.labour.per_litre = time)
            })
        />
        <Entry
            hangs
            label=say!(drinks::labor_per_batch)
            asks=asks(Kind::Labor, Key::Drink(id), "labor/batch")
            letters=true
            unit=say!(drinks::minutes_and_seconds)
            example=say!(drinks::time_example, time = fields::Example::Time.said(&state.speaker.get_untracked()))
            value=of(|it, state| state.time_if_any(it.labour.per_batch))
            commit=fields::optional_time(say!(drinks::labor_per_batch), move |book, time| {
                changed(book, id, |it| it.labour.per_batch = time)
            })
        />
        {batch(state, id, hangs)}
    }
    .into_any()
}

/// What a batch's time is divided by, a volume or a number of drinks, and how much or many that is.
fn batch(state: AppState, id: DrinkId, hangs: Hangs) -> AnyView {
    let volume = move || state.book.with(|book| book.drink(id)?.labour.batch_volume);
    let is_by_volume = Memo::new(move |_| volume().is_some());
    let options = [(BY_VOLUME, say!(drinks::by_volume)), (BY_DRINKS, say!(drinks::by_drinks))];
    let options = options.map(|(value, words)| (value.to_string(), words.to_string())).to_vec();
    let value = text(move || if is_by_volume.get() { BY_VOLUME } else { BY_DRINKS }.to_string());
    let choose = Arc::new(move |chosen: &str| {
        let by_volume = chosen == BY_VOLUME;
        if by_volume == is_by_volume.get_untracked() {
            return Ok(());
        }
        let edit = state.book.with_untracked(|book| changed(book, id, |it| split(it, by_volume)));
        edit.map_or(Ok(()), |edit| state.apply(say!(drinks::split_batch), edit))
    });
    let field = live(move || {
        if is_by_volume.get() {
            let value = text(move || volume().map(|volume| state.amount(volume)).unwrap_or_default());
            let label = say!(drinks::batch_volume);
            let commit = fields::amount(label, fields::Example::Amount, drink_size, move |book, volume| {
                changed(book, id, |it| it.labour.batch_volume = Some(volume))
            });
            let note = say!(drinks::batch_volume_about);
            view! { <Entry hangs label note value units=fields::units(drink_size) commit /> }.into_any()
        } else {
            let drinks = move || state.book.with(|book| book.drink(id).map(|it| state.number(it.labour.batch)));
            let (label, value) = (say!(drinks::drinks_per_batch), text(move || drinks().unwrap_or_default()));
            let commit = fields::count(label, fields::Example::DrinksPerBatch, move |book, count| {
                changed(book, id, |it| it.labour.batch = count)
            });
            view! { <Entry hangs label note=say!(drinks::drinks_per_batch_about) value commit /> }.into_any()
        }
    });
    view! {
        <Choice label=say!(drinks::split_batch) options value choose />
        {field}
    }
    .into_any()
}

const BY_VOLUME: &str = "volume";
const BY_DRINKS: &str = "drinks";

/// Splits a batch the other way: its volume is that of its drinks as the recipe makes them, so that a drink of
/// that size takes as long as before.
fn split(drink: &mut Drink, by_volume: bool) {
    let all = || Some(Amount::new(drink.reference.number.times(drink.labour.batch).ok()?, drink.reference.unit));
    drink.labour.batch_volume = if by_volume { all().or(Some(drink.reference)) } else { None };
}

/// What labor comes to in each size: its time, and its cost where there is a wage.
pub(super) fn labor_by_size(state: AppState, id: DrinkId, hangs: Hangs) -> AnyView {
    let sizes = move || {
        let offers = state.book.with(|book| order::offers(book, id));
        let said = |key: Key| {
            let Key::Offer(offer) = key else { return None };
            let size = state.book.with(|book| book.name(Key::Container(offer.container)));
            let (time, cost) = state.priced(offer, |it| Some((it.cost.time, it.cost.part(Part::Labour).ok()?)))?;
            let time = state.speaker.get().time(time);
            Some(if cost.is_zero() {
                say!(drinks::labor_without_wage, size = size, time = time)
            } else {
                say!(drinks::labor_of_size, size = size, time = time, money = state.money(cost))
            })
        };
        offers.into_iter().filter_map(said).collect::<Vec<_>>()
    };
    hangs.while_read(move || {
        live(move || {
            let sizes = sizes();
            if sizes.is_empty() {
                return ().into_any();
            }
            let row = |said: String| view! { <li>{said}</li> };
            view! {
                <h3>{say!(drinks::labor_by_size)}</h3>
                <ul class="labor-by-size">{sizes.into_iter().map(row).collect_view()}</ul>
            }
            .into_any()
        })
    })
}
