//! The recipe of a drink: what goes in, at the size it is written for.

use std::sync::Arc;

use leptos::prelude::*;

use super::change::changed;
use super::line::{CHOSEN, LINE, LineRow, SOMETHING_NEW, in_glass, new_line};
use crate::app::first_price::share_of;
use crate::book::{Book, DrinkId, Key, LineId};
use crate::drink::fill::written_volume;
use crate::foundation::jump::Kind;
use crate::foundation::measure::{Amount, Dimension, Share, Volume, Wanted};
use crate::say;
use crate::ui::fields::{self, Addition, Choice, Entry, Field, Hangs, asks, begun};
use crate::ui::live::{live, parts, press, text};
use crate::ui::order;
use crate::ui::parts::Section;
use crate::ui::random::random;
use crate::ui::state::AppState;
use crate::words;

/// The size of a new recipe, by what is missing while its field is empty.
pub(super) const MAKES: Field = Field::RecipeMakes;

/// As many decimals has the size that is offered for a recipe.
const PLACES: u32 = 1;

/// The recipe of a drink.
#[component]
pub fn Recipe(
    /// The drink.
    id: DrinkId,
    /// How it gets into the book.
    new: Addition,
    /// The answers that hang on it.
    hangs: Hangs,
) -> impl IntoView {
    let state = AppState::here();
    let lines = move || {
        let numbers = |book: &Book| book.drink(id).map(|it| it.lines.iter().map(|line| line.id.number()).collect());
        let mut lines = state.book.with(|book| numbers(book).unwrap_or_else(Vec::<u64>::new));
        lines.extend(begun(state, LINE, Some(Key::Drink(id))));
        lines
    };
    let reference = text(move || {
        let reference = state.book.with(|book| book.drink(id).map(|drink| drink.reference));
        reference.map(|amount| state.amount(amount)).unwrap_or_default()
    });
    let written = text(move || {
        if hangs.is_unread() {
            return hangs.sentence();
        }
        let sum = state.book.with(|book| {
            let drink = book.drink(id)?;
            Some(written_volume(book, drink).map_err(|error| words::scale_error(&error, book)))
        });
        match sum {
            Some(Ok(volume)) if volume.is_positive() => {
                say!(drinks::ingredients_make, volume = state.volume(volume))
            }
            Some(Err(sentence)) => sentence,
            _ => String::new(),
        }
    });
    // What the recipe makes is its name for a size; what fills a size is taken from the ingredients.
    let made = move || {
        if hangs.is_unread() {
            return None;
        }
        state.book.with(|book| {
            let drink = book.drink(id)?;
            let (makes, sum) = (drink.reference.volume().ok()??, written_volume(book, drink).ok()?);
            let differs = sum.is_positive() && state.volume(sum) != state.volume(makes);
            differs.then_some((makes, sum))
        })
    };
    let follows = live(move || made().map(|(makes, sum)| scaled_from(state, id, makes, sum)).into_any());
    let ingredients = Memo::new(move |_| {
        let mut options = state.book.with(|book| order::options(book, order::ingredients(book)));
        options.insert(0, (String::new(), say!(drinks::choose_ingredient).to_string()));
        options.push((SOMETHING_NEW.to_string(), say!(drinks::new_ingredient).to_string()));
        options
    });
    let add = Arc::new(move |chosen: &str| match chosen {
        "" => Ok(()),
        chosen => {
            begin_line(state, id, chosen);
            Ok(())
        }
    });
    let commit = fields::amount(say!(drinks::recipe_size), fields::Example::Amount, drink_size, move |book, amount| {
        changed(book, id, |it| it.reference = amount)
    });
    let is_new = !untrack(|| new.is_there());
    let (value, commit) = (new.value(MAKES, reference), new.commit(MAKES, commit));
    let example = state.book.with_untracked(|book| words::example(drink_size(book).unit, book.settings().units));
    let list = new.once_there(move || {
        view! {
            <ol class="lines">
                {parts(lines, move |line| view! { <LineRow drink=id line=LineId::from_random(line) hangs /> }.into_any())}
            </ol>
            <Choice
                label=say!(drinks::add_ingredient)
                options=ingredients
                value=Signal::stored(String::new())
                choose=add.clone()
            />
            {in_glass(state, id)}
        }
        .into_any()
    });
    view! {
        <Section heading=say!(drinks::recipe)>
            {is_new.then(|| view! { <p class="about">{say!(drinks::recipe_about)}</p> })}
            <Entry
                label=say!(drinks::recipe_makes)
                asks=asks(Kind::Size, Key::Drink(id), "size")
                hangs
                example
                note=written
                units=fields::units(drink_size)
                value
                commit
            />
            {follows}
            {list}
        </Section>
    }
}

/// How a size is scaled from what the ingredients make, and a press that writes the recipe for just that.
fn scaled_from(state: AppState, id: DrinkId, makes: Volume, sum: Volume) -> AnyView {
    let unit = state.book.with(|book| book.settings().units.drink_unit());
    let set = share_of(sum, Share::WHOLE, unit).map(|amount| {
        let reference = Amount::new(amount.number.rounded(PLACES), amount.unit);
        let name = say!(drinks::set_recipe_size, volume = state.amount(reference));
        let set = move || {
            let edit = state.book.with_untracked(|book| changed(book, id, |it| it.reference = reference));
            // What its ingredients make is above zero, and a volume.
            let _ = edit.map(|edit| state.apply(say!(drinks::recipe_size), edit));
        };
        view! { <button class="button" on:click=press(set)>{name}</button> }
    });
    let factor = makes.ratio_to(sum).map(|factor| state.number(factor.rounded(2))).unwrap_or_default();
    let (volume, makes) = (state.volume(sum), state.volume(makes));
    view! {
        <p class="soft">{say!(drinks::sizes_follow, volume = volume, makes = makes, factor = factor)}</p>
        <p class="actions">{set}</p>
    }
    .into_any()
}

/// The size that a recipe is written for.
pub(super) fn drink_size(book: &Book) -> Wanted {
    Wanted { dimensions: &[Dimension::Volume], unit: book.settings().units.drink_unit() }
}

/// Begins a line of what was chosen; it waits for its amount.
fn begin_line(state: AppState, drink: DrinkId, chosen: &str) {
    let line = new_line(drink, LineId::from_random(random()));
    line.begin(state);
    line.set(state, CHOSEN, chosen);
}
