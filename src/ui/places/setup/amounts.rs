//! How much of each goes in: as an amount or as a share of the glass, and what is left to be filled.

use std::sync::Arc;

use leptos::prelude::*;

use super::frame::{ingredients_of, onward};
use crate::app::first_price::{amount_of, filled, poured, put_amount, rest_of, share_of, size as size_of};
use crate::app::route::{FirstPrice, Route, Step};
use crate::book::{Book, Edit, IngredientId, Key, LineId, Stage};
use crate::foundation::measure::{Amount, Exact, Share, Unit, Wanted, read_amount, read_number};
use crate::say;
use crate::ui::fields::{Commit, Entry, Example, Hangs, units};
use crate::ui::live::{live, parts, press, text, when};
use crate::ui::places::drinks::{LIQUID_FIRST, Lacks, choose_stage, likely_stage};
use crate::ui::random::random;
use crate::ui::state::AppState;
use crate::words;

/// The step in which the amounts are typed.
pub fn amounts(first: FirstPrice) -> AnyView {
    let state = AppState::here();
    let drink = first.drink;
    let has_size = move || state.book.with(|book| size_of(book, drink)).is_some();
    let to_size = move || {
        view! {
            <p>
                <a class="main" href=Route::FirstPrice(first.at(Step::Size)).address()>
                    {say!(setup::choose_size_first)}
                </a>
            </p>
        }
        .into_any()
    };
    view! { {when(move || !has_size(), to_size)} {when(has_size, move || of_sized(first))} }.into_any()
}

fn of_sized(first: FirstPrice) -> AnyView {
    let state = AppState::here();
    let drink = first.drink;
    let hangs = Hangs::new();
    let about = text(move || {
        let size = state.book.with(|book| size_of(book, drink).map(|id| book.name(Key::Container(id.container))));
        let share = state.percentage(Exact::new(25, 0));
        say!(setup::how_much_about, size = size.unwrap_or_default(), share = share)
    });
    let is_juice = move |book: &Book| {
        let kind = book.drink(drink).map(|it| it.kind);
        book.ingredients().any(|it| likely_stage(it, kind) == Stage::Pressed)
    };
    let juice =
        text(
            move || {
                if state.book.with(is_juice) { [" ", say!(setup::how_much_juice)].concat() } else { String::new() }
            },
        );
    let listed = move || state.book.with(ingredients_of).into_iter().map(IngredientId::number).collect();
    let row = move |id| row(first, IngredientId::from_random(id), hangs);
    view! {
        <p class="soft">{about} {juice}</p>
        <ul class="first-amounts">{parts(listed, row)}</ul>
        <p class="filled" role="status">
            {text(move || how_full(state, drink))}
        </p>
        {when(
            move || is_short(state, drink),
            || view! { <p class="soft">{say!(setup::left_scales_up)}</p> }.into_any(),
        )}
        {onward(Route::FirstPrice(first.at(Step::Price)), say!(setup::next_price))}
    }
    .into_any()
}

/// What is in the glass, and what is left or over.
fn how_full(state: AppState, drink: crate::book::DrinkId) -> String {
    let Some(found) = state.book.with(|book| filled(book, drink)) else { return String::new() };
    let (so_far, size) = (state.volume(found.so_far), state.volume(found.whole));
    let rest = match (found.left().is_positive(), found.over().is_positive()) {
        (true, _) => say!(setup::left_to_fill, left = state.volume(found.left())),
        (_, true) => say!(setup::over_filled, over = state.volume(found.over())),
        _ => say!(setup::all_filled).to_string(),
    };
    [say!(setup::filled_of, filled = so_far, size = &size), rest].join(". ")
}

/// Whether something is in the glass, and it is not full.
fn is_short(state: AppState, drink: crate::book::DrinkId) -> bool {
    let found = state.book.with(|book| filled(book, drink));
    found.is_some_and(|found| found.so_far.is_positive() && found.left().is_positive())
}

/// What an amount is read as: of drinks, liquid first; of what is in the recipe, as it is written there.
fn wanted(book: &Book, first: FirstPrice, id: IngredientId) -> Wanted {
    let unit = amount_of(book, first.drink, id).map_or(book.settings().units.drink_unit(), |amount| amount.unit);
    Wanted { dimensions: LIQUID_FIRST, unit }
}

/// The unit in which shares and what is left are written.
fn poured_in(book: &Book) -> Unit {
    book.settings().units.drink_unit()
}

fn row(first: FirstPrice, id: IngredientId, hangs: Hangs) -> AnyView {
    let state = AppState::here();
    let drink = first.drink;
    let name = state.book.with_untracked(|book| book.name(Key::Ingredient(id)));
    let amount = move || state.book.with(|book| amount_of(book, drink, id));
    let value = text(move || amount().map(|amount| state.amount(amount)).unwrap_or_default());
    let label = say!(drinks::amount_of, name = &name);
    let wanted_now = move |book: &Book| wanted(book, first, id);
    let example = text_of_example(state, first, id);
    let rest = move || {
        let rest = |book: &Book| {
            let found = filled(book, drink).filter(|found| found.so_far.is_positive())?;
            rest_of(found, poured_in(book))
        };
        if amount().is_some() { None } else { state.book.with(rest) }
    };
    let use_rest = live(move || {
        let Some(rest) = rest() else { return ().into_any() };
        let said = say!(setup::use_rest, left = state.amount(rest));
        let label = [name.as_str(), &said].join(": ");
        let put = move || {
            let edit = state.book.with_untracked(|book| put(book, first, id, Some(rest)));
            // What is left is above zero and a volume.
            let _ = edit.map(|edit| state.apply(say!(drinks::recipe_amount), edit));
        };
        view! {
            <button class="button" aria-label=label on:click=press(put)>
                {said}
            </button>
        }
        .into_any()
    });
    let line = Memo::new(move |_| state.book.with(|book| line_of(book, first, id)));
    view! {
        <li class="first-amount">
            <Entry label hangs of=id.number() example value units=units(wanted_now) commit=commit(state, first, id) />
            {use_rest}
            {live(move || line.get().map(|line| untrack(|| of_line(state, first, id, line, hangs))).into_any())}
        </li>
    }
    .into_any()
}

/// The line of an ingredient in the recipe.
fn line_of(book: &Book, first: FirstPrice, id: IngredientId) -> Option<LineId> {
    book.drink(first.drink)?.lines.iter().find(|line| line.ingredient == id).map(|line| line.id)
}

/// What its amount means, where no list said so; and a field for each thing that is lacking to compute it.
fn of_line(state: AppState, first: FirstPrice, id: IngredientId, line: LineId, hangs: Hangs) -> AnyView {
    let drink = first.drink;
    let typed = state.book.with(|book| book.ingredient(id).is_some_and(|it| it.starting.is_none()));
    let prep = typed.then(|| {
        let name = state.book.with(|book| book.name(Key::Ingredient(id)));
        choose_stage(state, drink, line, say!(drinks::prep_of, name = name))
    });
    view! {
        {prep}
        <Lacks drink line hangs />
    }
    .into_any()
}

fn text_of_example(state: AppState, first: FirstPrice, id: IngredientId) -> String {
    let wanted = state.book.with_untracked(|book| wanted(book, first, id));
    Example::Amount(wanted.unit).said(&state.speaker.get_untracked())
}

fn put(book: &Book, first: FirstPrice, id: IngredientId, amount: Option<Amount>) -> Option<Edit> {
    let ingredient = book.ingredient(id)?;
    let stage = likely_stage(ingredient, book.drink(first.drink).map(|it| it.kind));
    put_amount(book, first.drink, ingredient, amount, LineId::from_random(random()), stage)
}

/// Reads an amount, a share of the full glass, or nothing.
fn commit(state: AppState, first: FirstPrice, id: IngredientId) -> Commit {
    Arc::new(move |text, session| {
        let amount = if text.trim().is_empty() {
            None
        } else {
            Some(state.book.with_untracked(|book| read(state, book, first, id, text))?)
        };
        let edit = state.book.with_untracked(|book| put(book, first, id, amount));
        let gone = || say!(book::gone_from_book).to_string();
        state.apply_in(say!(drinks::recipe_amount), edit.ok_or_else(gone)?, Some(session))
    })
}

fn read(state: AppState, book: &Book, first: FirstPrice, id: IngredientId, text: &str) -> Result<Amount, String> {
    let speaker = state.speaker.get_untracked();
    let wanted = wanted(book, first, id);
    let example = || Example::Amount(wanted.unit).said(&speaker);
    // The field may have put its unit behind a share.
    let Some(end) = text.rfind(['%', '٪']) else {
        let amount = read_amount(text, wanted, speaker.units(), speaker.style());
        return amount.map_err(|error| words::read_error(&error, &example()));
    };
    let before = text.get(..end).unwrap_or_default();
    let percent = read_number(before, speaker.style()).map_err(|error| words::read_error(&error, &example()))?;
    let whole = Exact::new(100, 0);
    if percent > whole {
        let (whole, example) = (speaker.percentage(whole, 0), speaker.percentage(Exact::new(25, 0), 0));
        return Err(say!(setup::share_too_large, whole = whole, example = example));
    }
    let share = percent.over(whole).map(Share::from_fraction).map_err(words::overflow)?;
    let full = poured(book, first.drink);
    let amount = full.and_then(|full| share_of(full, share, poured_in(book)));
    amount.ok_or_else(|| say!(setup::share_needs_size).to_string())
}
