//! Writing down a local price: place, kind, size, price, Enter, and on to the next size.

use std::sync::Arc;

use leptos::ev;
use leptos::html;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::HtmlElement;

use crate::book::{Book, DrinkKind, Edit, Field, Key, Problem, Record, Refusal, SeenPrice, SeenPriceId};
use crate::foundation::in_order;
use crate::foundation::measure::{Amount, Date, Dimension, Money, Wanted, read_amount, read_number};
use crate::say;
use crate::ui::fields::{Ask, Choice, Choose, Day, units};
use crate::ui::live::{live, press, text, trouble};
use crate::ui::random::random;
use crate::ui::state::AppState;
use crate::words;

/// Places that one tap enters.
const PLACES: usize = 4;

/// A size is a volume; a bare number is in the unit that drinks are.
pub(super) fn size(book: &Book) -> Wanted {
    Wanted { dimensions: &[Dimension::Volume], unit: book.settings().units.drink_unit() }
}

/// The kinds of drinks as options.
pub(super) fn kinds() -> Vec<(String, String)> {
    DrinkKind::ALL.iter().map(|kind| (format!("{kind:?}"), words::drink_kind(*kind).to_string())).collect()
}

/// The kind of an option.
pub(super) fn kind_of(chosen: &str) -> Option<DrinkKind> {
    DrinkKind::ALL.iter().copied().find(|kind| format!("{kind:?}") == chosen)
}

/// Reads the day on which a price was seen.
pub(super) fn day_seen(chosen: &str) -> Result<Date, String> {
    Date::from_text(chosen).ok_or_else(|| say!(decide::choose_date_seen).to_string())
}

/// The fields for a local price.
#[component]
pub fn SeenEntry(
    /// The kind, kept from one to the next.
    kind: RwSignal<DrinkKind>,
    /// The kind that is shown below.
    shown: RwSignal<Option<DrinkKind>>,
    /// The day that it is.
    today: Date,
) -> impl IntoView {
    let state = AppState::here();
    let (place, size_text, price_text) = (new_text(), new_text(), new_text());
    let day = RwSignal::new(today);
    // Errors stand at the fields once adding was tried.
    let tried = RwSignal::new(false);
    let refused = RwSignal::new(None::<String>);
    let size_field = NodeRef::<html::Div>::new();
    let read_place = move || place.with(|text| read_place(state, text));
    let read_size = move || size_text.with(|text| read_size(state, text));
    let read_price = move || price_text.with(|text| read_price(state, text));
    let add = move || {
        tried.set(true);
        let (Ok(place), Ok(size), Ok(price)) = (read_place(), read_size(), read_price()) else { return };
        let (kind, day) = (kind.get(), day.get());
        let seen = SeenPrice { id: SeenPriceId::from_random(random()), place, kind, size, price, day };
        let outcome = state.apply(say!(decide::add_local_price), Edit::Put(Record::SeenPrice(seen)));
        if outcome.is_ok() {
            tried.set(false);
            size_text.set(String::new());
            price_text.set(String::new());
            if shown.get().is_some() {
                shown.set(Some(kind));
            }
            take_caret(size_field);
        }
        refused.set(outcome.err());
    };
    let submit = move |event: ev::SubmitEvent| {
        event.prevent_default();
        untrack(add);
    };
    let choose_kind: Choose = Arc::new(move |chosen| {
        if let Some(chosen) = kind_of(chosen) {
            kind.set(chosen);
        }
        Ok(())
    });
    let choose_day: Choose = Arc::new(move |chosen| {
        day.set(day_seen(chosen)?);
        Ok(())
    });
    let if_tried = move |error: Option<String>| if tried.get() { error.unwrap_or_default() } else { String::new() };
    view! {
        <form class="seen-entry" on:submit=submit>
            <div>
                <Ask label=say!(decide::place) letters=true text=place error=text(move || if_tried(read_place().err())) />
                <div class="chips" role="group" aria-label=say!(decide::recent_places)>
                    {places_seen(state, place)}
                </div>
            </div>
            <div class="fields">
                <div node_ref=size_field>
                    <Ask label=say!(common::size) units=units(size) text=size_text error=text(move || if_tried(read_size().err())) />
                </div>
                <Ask label=say!(decide::their_price) text=price_text error=text(move || if_tried(read_price().err())) />
                <Choice
                    label=say!(decide::drink_type)
                    options=Signal::stored(kinds())
                    value=text(move || format!("{:?}", kind.get()))
                    choose=choose_kind
                />
                <Day label=say!(decide::date_seen) past=true value=text(move || day.get().to_string()) choose=choose_day />
            </div>
            {trouble(move || refused.get())}
            <button class="main" type="submit">
                {say!(decide::add_price)}
            </button>
        </form>
    }
}

fn at(state: AppState, field: Field, problem: Problem) -> String {
    let refusal = Refusal::Field { key: Key::SeenPrice(SeenPriceId::FIRST), field, problem };
    state.book.with(|book| words::refusal(&refusal, book))
}

fn read_place(state: AppState, text: &str) -> Result<String, String> {
    match text.trim() {
        "" => Err(at(state, Field::Place, Problem::Empty)),
        place => Ok(place.to_string()),
    }
}

fn read_size(state: AppState, text: &str) -> Result<Amount, String> {
    let wanted = state.book.with(size);
    let units = state.units();
    match read_amount(text, wanted, units, state.speaker.get().style()) {
        Ok(amount) if !amount.number.is_positive() => Err(at(state, Field::Size, Problem::NotPositive)),
        read => read.map_err(|error| words::read_error(&error, &words::example(wanted.unit, units))),
    }
}

fn read_price(state: AppState, text: &str) -> Result<Money, String> {
    match read_number(text, state.speaker.get().style()) {
        Ok(price) if !price.is_positive() => Err(at(state, Field::Price, Problem::NotPositive)),
        read => read
            .map(Money::from_major)
            .map_err(|error| words::read_error(&error, &words::Example::MenuPrice.said(&state.speaker.get()))),
    }
}

/// The field there takes the caret.
fn take_caret(within: NodeRef<html::Div>) {
    let field = within.get().and_then(|div| div.query_selector("input").ok().flatten());
    if let Some(field) = field.and_then(|field| field.dyn_into::<HtmlElement>().ok()) {
        // A field that cannot take the caret is tapped by hand.
        let _ = field.focus();
    }
}

/// The places seen last, each a press that types it.
fn places_seen(state: AppState, place: RwSignal<String>) -> AnyView {
    let known = Memo::new(move |_| state.book.with(last_places));
    let button = move |name: String| {
        let words = name.clone();
        view! {
            <button class="chip" type="button" on:click=press(move || place.set(name.clone()))>
                {words}
            </button>
        }
    };
    live(move || known.get().into_iter().map(button).collect_view().into_any())
}

fn new_text() -> RwSignal<String> {
    RwSignal::new(String::new())
}

/// The places of the prices seen last, the latest first.
fn last_places(book: &Book) -> Vec<String> {
    let mut places: Vec<(Date, &str)> = Vec::new();
    for seen in book.seen_prices() {
        match places.iter_mut().find(|(_, place)| *place == seen.place) {
            Some(known) => known.0 = known.0.max(seen.day),
            None => places.push((seen.day, &seen.place)),
        }
    }
    let mut last: Vec<(Date, &str)> = Vec::new();
    for place in places {
        in_order::insert(&mut last, place, |known, place| known.0 >= place.0);
    }
    last.into_iter().take(PLACES).map(|(_, place)| place.to_string()).collect()
}

/// The edit that changes a price seen.
pub(super) fn changed(book: &Book, id: SeenPriceId, change: impl FnOnce(&mut SeenPrice)) -> Option<Edit> {
    let mut seen = book.seen_price(id)?.clone();
    change(&mut seen);
    Some(Edit::Put(Record::SeenPrice(seen)))
}
