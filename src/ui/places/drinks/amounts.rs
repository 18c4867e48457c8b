//! What one drink takes, as a table: at a size it is sold in, or at any size typed.

use leptos::prelude::*;

use crate::book::{Book, DrinkId, Key, LineId};
use crate::drink::fill::{Scaled, scale};
use crate::foundation::measure::{Dimension, Volume, Wanted, read_amount};
use crate::say;
use crate::ui::fields::{Ask, units};
use crate::ui::glass::{Layer, layer_of};
use crate::ui::how::opens;
use crate::ui::live::{live, text};
use crate::ui::state::AppState;
use crate::words;
use crate::working::Shown;

/// The amounts of a recipe at a size.
pub fn amounts(state: AppState, scaled: &Scaled, how: &dyn Fn(LineId) -> Option<Shown>) -> AnyView {
    let mut rows = Vec::new();
    for (place, line) in scaled.lines.iter().enumerate() {
        let name = state.book.with(|book| book.name(Key::Ingredient(line.ingredient)));
        let same = line.to_use == line.in_drink;
        let to_use = Signal::stored(if same { say!(drinks::same_amount).into() } else { state.measure(line.to_use) });
        let to_use = match how(line.line) {
            Some(shown) => opens(shown, to_use),
            None => to_use.into_any(),
        };
        let stage = line.ice.map_or(words::stage(line.stage), |ice| words::ice_place(ice.place));
        rows.push(row(layer_of(scaled, place), name, stage, state.measure(line.in_drink), to_use));
    }
    if scaled.air.is_positive() {
        rows.push(row(
            Layer::Air,
            say!(drinks::air_row).into(),
            say!(drinks::air_row_about),
            state.volume(scaled.air),
            ().into_any(),
        ));
    }
    let takes_up = state.book.with(|book| words::counter::takes_up(scaled, book));
    let takes_up = (!takes_up.is_empty()).then(|| view! { <p class="soft">{takes_up}</p> });
    view! {
        <table class="table">
            <thead>
                <tr>
                    <th scope="col">{say!(drinks::ingredient)}</th>
                    <th scope="col">{say!(drinks::in_the_drink)}</th>
                    <th scope="col">{say!(drinks::amount_needed)}</th>
                </tr>
            </thead>
            <tbody>{rows}</tbody>
        </table>
        {takes_up}
    }
    .into_any()
}

fn row(layer: Layer, name: String, stage: &'static str, in_drink: String, to_use: AnyView) -> AnyView {
    let swatch = format!("swatch {}", layer.class());
    view! {
        <tr>
            <th scope="row"><span class=swatch aria-hidden="true"></span>{name} " " <span class="soft">{stage}</span></th>
            <td>{in_drink}</td>
            <td>{to_use}</td>
        </tr>
    }
    .into_any()
}

fn drink_size(book: &Book) -> Wanted {
    Wanted { dimensions: &[Dimension::Volume], unit: book.settings().units.drink_unit() }
}

/// What a drink of any size takes. Changes nothing.
#[component]
pub fn AnySize(
    /// The drink.
    id: DrinkId,
) -> impl IntoView {
    let state = AppState::here();
    let typed = RwSignal::new(String::new());
    let size = move || -> Option<Result<Volume, String>> {
        let typed = typed.get();
        if typed.trim().is_empty() {
            return None;
        }
        let units = state.units();
        let wanted = state.book.with(drink_size);
        let read = read_amount(&typed, wanted, units, state.speaker.get().style());
        let example = words::example(wanted.unit, units);
        let amount = read.map_err(|error| words::read_error(&error, &example));
        Some(amount.and_then(|amount| match amount.volume() {
            Ok(Some(volume)) if volume.is_positive() => Ok(volume),
            _ => Err(say!(drinks::size_too_small, example = example)),
        }))
    };
    let answer = move || -> Option<Result<Scaled, String>> {
        let volume = size()?;
        state.book.with(|book| {
            let drink = book.drink(id)?;
            Some(volume.and_then(|volume| scale(book, drink, volume).map_err(|error| words::scale_error(&error, book))))
        })
    };
    let error = text(move || answer().and_then(Result::err).unwrap_or_default());
    view! {
        <Ask label=say!(drinks::try_a_size) units=units(drink_size) text=typed error=error />
        {live(move || match answer() {
            Some(Ok(scaled)) => amounts(state, &scaled, &|_| None),
            _ => ().into_any(),
        })}
    }
}
