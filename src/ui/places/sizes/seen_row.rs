//! One local price; a tap opens its fields.

use std::sync::Arc;

use leptos::prelude::*;

use super::seen_entry::{changed, day_seen, kind_of, kinds, size};
use crate::book::{Edit, Key, SeenPrice, SeenPriceId};
use crate::foundation::jump::Kind;
use crate::foundation::measure::Date;
use crate::say;
use crate::sizes::market::is_old;
use crate::ui::fields::{self, Choice, Choose, Day, Entry, asks};
use crate::ui::live::{press, text, when};
use crate::ui::state::AppState;
use crate::words;

/// The row of a price seen.
pub fn seen_row(state: AppState, id: SeenPriceId, open: RwSignal<Option<SeenPriceId>>, today: Date) -> AnyView {
    let of = move |show: fn(&SeenPrice, AppState) -> String| {
        text(move || {
            state.book.with(|book| book.seen_price(id).cloned()).map(|it| show(&it, state)).unwrap_or_default()
        })
    };
    let about = text(move || {
        let Some(seen) = state.book.with(|book| book.seen_price(id).cloned()) else { return String::new() };
        let (place, date) = (seen.place, words::day(seen.day));
        if is_old(seen.day, today) {
            say!(decide::seen_at_long_ago, place = place, date = date)
        } else {
            say!(decide::seen_at, place = place, date = date)
        }
    });
    let per_volume = text(move || {
        let per = state.book.with(|book| {
            let seen = book.seen_price(id)?;
            let units = book.settings().units;
            let price = seen.price.times(units.price_volume().ratio_to(seen.size.volume().ok()??).ok()?).ok()?;
            Some((price, units.price_volume_name()))
        });
        per.map(|(price, unit)| say!(decide::price_per, price = state.fine_money(price), unit = unit))
            .unwrap_or_default()
    });
    let is_open = move || open.get() == Some(id);
    let toggle = move || open.update(|open| *open = if *open == Some(id) { None } else { Some(id) });
    let fields = move || view! { <SeenFields id open /> }.into_any();
    view! {
        <li>
            <button class="row seen-row" aria-expanded=text(move || is_open().to_string()) on:click=press(toggle)>
                <span class="row-name">{of(|seen, state| state.speaker.get().size(seen.size))}</span>
                <span class="row-price">{of(|seen, state| state.money(seen.price))}</span>
                <span class="row-small">{about}</span>
                <span class="row-margin">{per_volume}</span>
            </button>
            {when(is_open, fields)}
        </li>
    }
    .into_any()
}

#[component]
fn SeenFields(id: SeenPriceId, open: RwSignal<Option<SeenPriceId>>) -> impl IntoView {
    let state = AppState::here();
    let of = move |show: fn(&SeenPrice, AppState) -> String| {
        text(move || {
            state.book.with(|book| book.seen_price(id).cloned()).map(|it| show(&it, state)).unwrap_or_default()
        })
    };
    let choose_kind: Choose = Arc::new(move |chosen| {
        let Some(kind) = kind_of(chosen) else { return Ok(()) };
        let edit = state.book.with_untracked(|book| changed(book, id, |it| it.kind = kind));
        edit.map_or(Ok(()), |edit| state.apply(say!(decide::change_type), edit))
    });
    let choose_day: Choose = Arc::new(move |chosen| {
        let day = day_seen(chosen)?;
        let edit = state.book.with_untracked(|book| changed(book, id, |it| it.day = day));
        edit.map_or(Ok(()), |edit| state.apply(say!(decide::change_date), edit))
    });
    let remove = move || {
        open.set(None);
        // Nothing uses a price seen, so it is never refused.
        let _ = state.apply(say!(decide::remove_local_price), Edit::Remove(Key::SeenPrice(id)));
    };
    view! {
        <div class="seen-open">
            <div class="fields">
                <Entry
                    label=say!(decide::edit_place)
                    letters=true
                    value=of(|seen, _| seen.place.clone())
                    commit=fields::text(say!(decide::change_place), move |book, place| {
                        changed(book, id, |it| it.place = place)
                    })
                />
                <Entry
                    label=say!(decide::edit_size)
                    asks=asks(Kind::Size, Key::SeenPrice(id), "size")
                    value=of(|seen, state| state.amount(seen.size))
                    units=fields::units(size)
                    commit=fields::amount(say!(decide::change_size), fields::Example::Amount, size, move |book, size| {
                        changed(book, id, |it| it.size = size)
                    })
                />
                <Entry
                    label=say!(decide::edit_price)
                    asks=asks(Kind::Price, Key::SeenPrice(id), "price")
                    value=of(|seen, state| state.plain_money(seen.price))
                    commit=fields::money(say!(decide::change_price), fields::Example::MenuPrice, move |book, price| changed(book, id, |it| it.price = price))
                />
                <Choice
                    label=say!(decide::edit_type)
                    options=Signal::stored(kinds())
                    value=of(|seen, _| format!("{:?}", seen.kind))
                    choose=choose_kind
                />
                <Day label=say!(decide::edit_date) past=true value=of(|seen, _| seen.day.to_string()) choose=choose_day />
            </div>
            <p class="actions">
                <button class="button" on:click=press(move || open.set(None))>
                    {say!(common::done)}
                </button>
                <button class="quiet" on:click=press(remove)>
                    {say!(decide::remove_price)}
                </button>
            </p>
        </div>
    }
}
