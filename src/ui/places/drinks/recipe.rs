//! The recipe of a drink: what goes in, at the size it is written for.

use std::sync::Arc;

use leptos::prelude::*;

use super::amounts::AnySize;
use super::change::changed;
use super::line::LineRow;
use crate::app::route::Route;
use crate::book::{Book, DrinkId, Edit, Ingredient, IngredientId, Key, Line, LineId, Record, Scaling, Stage};
use crate::fill::written_volume;
use crate::jump::Kind;
use crate::measure::{Amount, Dimension, Exact, Share, Unit, Wanted};
use crate::ui::address::go;
use crate::ui::fields::{self, Choice, Entry, asks};
use crate::ui::live::{parts, text};
use crate::ui::order;
use crate::ui::parts::Section;
use crate::ui::random::random;
use crate::ui::state::AppState;
use crate::words;

/// The recipe of a drink.
#[component]
pub fn Recipe(
    /// The drink.
    id: DrinkId,
) -> impl IntoView {
    let state = AppState::here();
    let lines = move || {
        let numbers = |book: &Book| book.drink(id).map(|it| it.lines.iter().map(|line| line.id.number()).collect());
        state.book.with(|book| numbers(book).unwrap_or_else(Vec::<u64>::new))
    };
    let reference = text(move || {
        let reference = state.book.with(|book| book.drink(id).map(|drink| drink.reference));
        reference.map(|amount| state.amount(amount)).unwrap_or_default()
    });
    let drink_size =
        |book: &Book| Wanted { dimensions: &[Dimension::Volume], unit: book.settings().units.drink_unit() };
    let written = text(move || {
        let sum = state.book.with(|book| {
            let drink = book.drink(id)?;
            Some(written_volume(book, drink).map_err(|error| words::scale_error(&error, book)))
        });
        match sum {
            Some(Ok(volume)) if volume.is_positive() => format!("The lines below make {}.", state.volume(volume)),
            Some(Err(sentence)) => sentence,
            _ => String::new(),
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
               about="Written once, for one size. Other sizes take each amount in proportion; fixed, the same in every size; in steps, such as half a banana; or as the top-up, which takes what steps leave. Amounts may be volumes, weights or pieces."
           >
               <Entry
                   label="Written for"
                   asks=asks(Kind::Size, Key::Drink(id), "size")
                   value=reference
                   note=written
                   units=fields::units(drink_size)
    commit=fields::amount("Size of the recipe", drink_size, move |book, amount| {
                       changed(book, id, |it| it.reference = amount)
                   })
               />
               <ol class="lines">
                   {parts(lines, move |line| view! { <LineRow drink=id line=LineId::from_random(line) /> }.into_any())}
               </ol>
               <Choice label="Add to the recipe" options=ingredients value=Signal::stored(String::new()) choose=add />
               <AnySize id />
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
