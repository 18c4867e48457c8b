//! The recipe of a drink: what goes in, at the size it is written for.

use std::sync::Arc;

use leptos::prelude::*;

use super::change::changed;
use crate::book::{Book, DrinkId, Edit, Ingredient, IngredientId, Key, Line, LineId, Record, Scaling, Stage};
use crate::fill::written_volume;
use crate::measure::{Amount, Dimension, Exact, Share, Unit, Wanted};
use crate::ui::fields::{self, Choice, Entry};
use crate::ui::live::{parts, text};
use crate::ui::order;
use crate::ui::parts::{Section, TakeOut};
use crate::ui::random::random;
use crate::ui::route::{Route, go};
use crate::ui::state::AppState;
use crate::words;

const LIQUID_FIRST: &[Dimension] = &[Dimension::Volume, Dimension::Mass, Dimension::Count];

/// The recipe of a drink.
#[component]
pub fn Recipe(
    /// The drink.
    id: DrinkId,
) -> impl IntoView {
    let state = AppState::here();
    let lines = Memo::new(move |_| {
        let numbers = |book: &Book| book.drink(id).map(|it| it.lines.iter().map(|line| line.id.number()).collect());
        state.book.with(|book| numbers(book).unwrap_or_else(Vec::<u64>::new))
    });
    let reference = text(move || {
        let reference = state.book.with(|book| book.drink(id).map(|drink| drink.reference));
        reference.map(|amount| state.amount(amount)).unwrap_or_default()
    });
    let drink_size =
        |book: &Book| Wanted { dimensions: &[Dimension::Volume], unit: book.settings().units.drink_unit() };
    let written = Signal::derive(move || {
        let sum = state.book.with(|book| {
            let drink = book.drink(id)?;
            Some(written_volume(book, drink).map_err(|error| words::scale_error(&error, book)))
        });
        match sum? {
            Ok(volume) if volume.is_positive() => Some(format!("The lines below make {}.", state.volume(volume))),
            Ok(_) => None,
            Err(sentence) => Some(sentence),
        }
    });
    let ingredients = Memo::new(move |_| {
        let mut options = state.book.with(|book| order::options(book, order::ingredients(book)));
        options.insert(0, (String::new(), "Choose an ingredient".to_string()));
        options.push(("new".to_string(), "Something new".to_string()));
        options
    });
    let add = Arc::new(move |chosen: &str| match chosen {
        "" => Ok(()),
        "new" => add_new_ingredient(state, id),
        chosen => match Key::from_text(chosen) {
            Some(Key::Ingredient(ingredient)) => add_line(state, id, ingredient),
            _ => Ok(()),
        },
    });
    view! {
        <Section
            heading="Recipe"
            about="Written once, for one size. Other sizes take each amount in proportion, or fixed: the same in every size. Amounts may be volumes, weights or pieces."
        >
            <Entry
                label="Written for"
                value=reference
                note=written
                commit=fields::amount("Size of the recipe", drink_size, move |book, amount| {
                    changed(book, id, |it| it.reference = amount)
                })
            />
            <ol class="lines">
                {parts(lines, move |line| view! { <LineRow drink=id line=LineId::from_random(line) /> }.into_any())}
            </ol>
            <Choice label="Add to the recipe" options=ingredients value=Signal::stored(String::new()) choose=add />
        </Section>
    }
}

/// The stage that an ingredient is most likely meant at.
fn likely_stage(ingredient: &Ingredient) -> Stage {
    if ingredient.press_yield.is_some() {
        Stage::Pressed
    } else if ingredient.soak_yield.is_some() {
        Stage::SoakedOrBrewed
    } else if ingredient.trim_yield < Share::WHOLE {
        Stage::Trimmed
    } else {
        Stage::AsBought
    }
}

fn add_line(state: AppState, drink: DrinkId, ingredient: IngredientId) -> Result<(), String> {
    let edit = state.book.with_untracked(|book| {
        let stage = likely_stage(book.ingredient(ingredient)?);
        let line = new_line(book, ingredient, stage);
        changed(book, drink, |it| it.lines.push(line))
    });
    edit.map_or(Ok(()), |edit| state.apply("Add to a recipe", edit))
}

fn new_line(book: &Book, ingredient: IngredientId, stage: Stage) -> Line {
    let unit = book.settings().units.drink_unit();
    let number = if unit == Unit::Millilitre { 100 } else { 4 };
    Line {
        id: LineId::from_random(random()),
        ingredient,
        stage,
        amount: Amount::new(Exact::from(number), unit),
        scaling: Scaling::InProportion,
        ice: None,
    }
}

fn add_new_ingredient(state: AppState, drink: DrinkId) -> Result<(), String> {
    let id = IngredientId::from_random(random());
    let ingredient = Ingredient::named(id, "New ingredient");
    let edits = state.book.with_untracked(|book| {
        let line = new_line(book, id, Stage::AsBought);
        Some(Edit::Together(vec![
            Edit::Put(Record::Ingredient(ingredient)),
            changed(book, drink, |it| it.lines.push(line))?,
        ]))
    });
    if let Some(edit) = edits {
        state.apply("Add something new to a recipe", edit)?;
        go(Route::Ingredient(id));
    }
    Ok(())
}

fn line_changed(book: &Book, drink: DrinkId, line: LineId, change: impl FnOnce(&mut Line)) -> Option<Edit> {
    changed(book, drink, |it| {
        if let Some(line) = it.lines.iter_mut().find(|it| it.id == line) {
            change(line);
        }
    })
}

#[component]
fn LineRow(drink: DrinkId, line: LineId) -> impl IntoView {
    let state = AppState::here();
    let this = move || state.book.with(|book| book.drink(drink)?.lines.iter().find(|it| it.id == line).copied());
    let name = text(move || {
        let ingredient = this().map(|line| Key::Ingredient(line.ingredient));
        ingredient.map(|key| state.book.with(|book| book.name(key))).unwrap_or_default()
    });
    let called = move |what: &str| format!("{what} {}", name.get_untracked());
    let address = text(move || this().map(|line| Route::Ingredient(line.ingredient).address()).unwrap_or_default());
    let amount = text(move || this().map(|line| state.amount(line.amount)).unwrap_or_default());
    let wanted = move |book: &Book| {
        let units = book.settings().units;
        let current =
            book.drink(drink).and_then(|it| it.lines.iter().find(|it| it.id == line)).map(|it| it.amount.unit);
        let unit = match current.map(Unit::dimension) {
            Some(Dimension::Count) => Unit::Piece,
            Some(Dimension::Mass) => current.unwrap_or(units.weight_unit()),
            Some(Dimension::Volume) | None => units.drink_unit(),
        };
        Wanted { dimensions: LIQUID_FIRST, unit }
    };
    let stages: Vec<(String, String)> =
        Stage::ALL.iter().map(|stage| (format!("{stage:?}"), words::stage(*stage).to_string())).collect();
    let stage = text(move || this().map(|line| format!("{:?}", line.stage)).unwrap_or_default());
    let choose_stage = Arc::new(move |chosen: &str| {
        let stage = Stage::ALL.iter().copied().find(|stage| format!("{stage:?}") == chosen);
        let edit = state
            .book
            .with_untracked(|book| line_changed(book, drink, line, |it| it.stage = stage.unwrap_or(it.stage)));
        edit.map_or(Ok(()), |edit| state.apply("Stage of an ingredient", edit))
    });
    let scalings: Vec<(String, String)> = [Scaling::InProportion, Scaling::Fixed]
        .iter()
        .map(|scaling| (format!("{scaling:?}"), words::scaling(*scaling).to_string()))
        .collect();
    let scaling = text(move || this().map(|line| format!("{:?}", line.scaling)).unwrap_or_default());
    let choose_scaling = Arc::new(move |chosen: &str| {
        let scaling = if chosen == "Fixed" { Scaling::Fixed } else { Scaling::InProportion };
        let edit = state.book.with_untracked(|book| line_changed(book, drink, line, |it| it.scaling = scaling));
        edit.map_or(Ok(()), |edit| state.apply("How an ingredient follows the size", edit))
    });
    let remove = move || {
        let edit = state.book.with_untracked(|book| changed(book, drink, |it| it.lines.retain(|it| it.id != line)));
        // Taking a line out of a recipe is never refused.
        let _ = edit.map(|edit| state.apply("Take out of a recipe", edit));
    };
    view! {
        <li class="line">
            <a class="line-name" href=address>{name}</a>
            <Entry
                label=called("Amount of")
                label_hidden=true
                value=amount
                commit=fields::amount("Amount in a recipe", wanted, move |book, amount| {
                    line_changed(book, drink, line, |it| it.amount = amount)
                })
            />
            <Choice label=called("Stage of") label_hidden=true options=stages value=stage choose=choose_stage />
            <Choice label=called("In other sizes:") label_hidden=true options=scalings value=scaling choose=choose_scaling />
            <TakeOut name on_click=remove />
        </li>
    }
}
