//! One price seen elsewhere; a tap opens its fields.

use std::sync::Arc;

use leptos::prelude::*;

use super::seen_entry::{changed, day_seen, kind_of, kinds, size};
use crate::book::{Edit, Key, SeenPrice, SeenPriceId};
use crate::foundation::jump::Kind;
use crate::foundation::measure::Date;
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
        let old = if is_old(seen.day, today) { format!(", {}", words::OLD_PRICE) } else { String::new() };
        format!("{}, {}{old}", seen.place, words::day(seen.day))
    });
    let per_volume = text(move || {
        let per = state.book.with(|book| {
            let seen = book.seen_price(id)?;
            let units = book.settings().units;
            let price = seen.price.times(units.price_volume().ratio_to(seen.size.volume().ok()??).ok()?).ok()?;
            Some((price, units.price_volume_name()))
        });
        per.map(|(price, name)| format!("{} per {name}", state.fine_money(price))).unwrap_or_default()
    });
    let is_open = move || open.get() == Some(id);
    let toggle = move || open.update(|open| *open = if *open == Some(id) { None } else { Some(id) });
    let fields = move || view! { <SeenFields id open /> }.into_any();
    view! {
        <li>
            <button class="row seen-row" aria-expanded=text(move || is_open().to_string()) on:click=press(toggle)>
                <span class="row-name">{of(|seen, state| state.amount(seen.size))}</span>
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
        edit.map_or(Ok(()), |edit| state.apply("Kind of a price seen", edit))
    });
    let choose_day: Choose = Arc::new(move |chosen| {
        let day = day_seen(chosen)?;
        let edit = state.book.with_untracked(|book| changed(book, id, |it| it.day = day));
        edit.map_or(Ok(()), |edit| state.apply("Day of a price seen", edit))
    });
    let remove = move || {
        open.set(None);
        // Nothing uses a price seen, so it is never refused.
        let _ = state.apply("Remove a price seen", Edit::Remove(Key::SeenPrice(id)));
    };
    view! {
        <div class="seen-open">
            <div class="fields">
                <Entry
                    label="Where it was seen"
                    letters=true
                    value=of(|seen, _| seen.place.clone())
                    commit=fields::text("Place of a price seen", move |book, place| {
                        changed(book, id, |it| it.place = place)
                    })
                />
                <Entry
                    label="Its size"
                    asks=asks(Kind::Size, Key::SeenPrice(id), "size")
                    value=of(|seen, state| state.amount(seen.size))
                    units=fields::units(size)
                    commit=fields::amount("Size of a price seen", size, move |book, size| {
                        changed(book, id, |it| it.size = size)
                    })
                />
                <Entry
                    label="Its price"
                    asks=asks(Kind::Price, Key::SeenPrice(id), "price")
                    value=of(|seen, state| state.plain_money(seen.price))
                    commit=fields::money("Price seen", move |book, price| changed(book, id, |it| it.price = price))
                />
                <Choice
                    label="Its kind"
                    options=Signal::stored(kinds())
                    value=of(|seen, _| format!("{:?}", seen.kind))
                    choose=choose_kind
                />
                <Day label="Day" past=true value=of(|seen, _| seen.day.to_string()) choose=choose_day />
            </div>
            <p class="actions">
                <button class="button" on:click=press(move || open.set(None))>
                    "Done"
                </button>
                <button class="quiet" on:click=press(remove)>
                    "Remove this price"
                </button>
            </p>
        </div>
    }
}
