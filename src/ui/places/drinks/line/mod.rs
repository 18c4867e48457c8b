//! One line of a recipe: how much, at which stage, how it follows the size, and how ice stands
//! in the glass.

mod case;
mod in_glass;
mod lacks;
mod meant;
mod peel;
mod scaling;

use std::sync::Arc;

use leptos::prelude::*;

use case::without_case;
pub use in_glass::in_glass;
pub use lacks::Lacks;
pub use meant::choose_stage;
use meant::{Melted, Packing};
use peel::peel;
use scaling::{Step, choose_scaling, new_step, scaling_of};

use super::change::changed;
use crate::app::route::Route;
use crate::book::{
    Book, DrinkId, DrinkKind, Edit, IcePlace, Ingredient, IngredientId, Key, Line, LineId, Record, Scaling, Stage,
};
use crate::buying::starter::Row;
use crate::foundation::measure::{Dimension, Share, Unit, Wanted};
use crate::say;
use crate::ui::fields::{self, Addition, Draft, Entry, Field, Hangs, NewThing};
use crate::ui::language::language;
use crate::ui::live::{text, when};
use crate::ui::parts::TakeOut;
use crate::ui::starter::Matches;
use crate::ui::state::AppState;
use crate::words;

pub const LIQUID_FIRST: &[Dimension] = &[Dimension::Volume, Dimension::Mass, Dimension::Count];

fn line_of(book: &Book, drink: DrinkId, line: LineId) -> Option<&Line> {
    book.drink(drink)?.lines.iter().find(|it| it.id == line)
}

fn line_changed(book: &Book, drink: DrinkId, line: LineId, change: impl FnOnce(&mut Line)) -> Option<Edit> {
    changed(book, drink, |it| {
        if let Some(line) = it.lines.iter_mut().find(|it| it.id == line) {
            change(line);
        }
    })
}

/// What a new line is called.
pub(super) const LINE: NewThing = NewThing::RecipeLine;
/// What was chosen for a new line: the key of an ingredient, or [`SOMETHING_NEW`].
pub(super) const CHOSEN: Field = Field::Ingredient;
/// What stands for an ingredient that is not in the book yet.
pub(super) const SOMETHING_NEW: &str = "new";
/// The fields of a new line, by what is missing while they are empty.
const NAME: Field = Field::IngredientName;
const AMOUNT: Field = Field::Amount;

/// A line that is not in the book yet.
pub(super) fn new_line(drink: DrinkId, line: LineId) -> Draft {
    Draft { what: LINE, of: Some(Key::Drink(drink)), id: line.number() }
}

/// The id of the ingredient that a new line brings with it: that of the line.
const fn new_ingredient(line: LineId) -> IngredientId {
    IngredientId::from_random(line.number())
}

/// What the controls of a line are called for those who cannot see them beside its name.
struct Labels {
    amount: String,
    prep: String,
    scaling: String,
}

impl Labels {
    /// For the ingredient of this name, or for a new one without a name.
    fn of(name: &str) -> Labels {
        if name.is_empty() {
            return Labels {
                amount: say!(drinks::amount_of_new).to_string(),
                prep: say!(drinks::prep_of_new).to_string(),
                scaling: say!(drinks::scaling_of_new).to_string(),
            };
        }
        Labels {
            amount: say!(drinks::amount_of, name = name),
            prep: say!(drinks::prep_of, name = name),
            scaling: say!(drinks::scaling_of, name = name),
        }
    }
}

/// One line of a recipe.
#[component]
pub fn LineRow(
    /// The drink.
    drink: DrinkId,
    /// The line.
    line: LineId,
    /// The answers that hang on it.
    hangs: Hangs,
) -> impl IntoView {
    let state = AppState::here();
    let this = move || state.book.with(|book| line_of(book, drink, line).copied());
    let draft = new_line(drink, line);
    let ingredient = Memo::new(move |_| {
        let chosen = || match Key::from_text(&draft.text(state, CHOSEN)) {
            Some(Key::Ingredient(id)) => Some(id),
            _ => None,
        };
        this().map(|line| line.ingredient).or_else(chosen)
    });
    let name = text(move || {
        ingredient.get().map(|id| state.book.with(|book| book.name(Key::Ingredient(id)))).unwrap_or_default()
    });
    let labels = Labels::of(&name.get_untracked());
    let address = text(move || ingredient.get().map(|id| Route::Ingredient(id).address()).unwrap_or_default());
    let amount = text(move || this().map(|line| state.amount(line.amount)).unwrap_or_default());
    let wanted = move |book: &Book| wanted(book, drink, line);
    let new = addition(drink, line);
    let is_new = !untrack(|| new.is_there());
    let is_unnamed = is_new && untrack(|| ingredient.get()).is_none();
    let link = move || view! { <a class="line-name" href=address>{name}</a> }.into_any();
    let name_or_link = if is_unnamed { naming(&new, draft, line, name, link) } else { link() };
    let step = new_step(drink, line);
    let scaling = scaling_of(state, drink, line);
    let remove = move || {
        step.discard(state);
        let edit = state.book.with_untracked(|book| changed(book, drink, |it| it.lines.retain(|it| it.id != line)));
        // Taking a line out of a recipe is never refused.
        let _ = edit.map(|edit| state.apply(say!(drinks::remove_from_recipe), edit));
    };
    let in_steps = move || scaling.with(|scaling| scaling == "steps");
    let in_scoops =
        move || this().is_some_and(|line| line.ice.is_some() && line.amount.unit.dimension() == Dimension::Volume);
    let blended_in = move || this().and_then(|line| line.ice).is_some_and(|ice| ice.place == IcePlace::BlendedIn);
    let set_amount =
        fields::amount(say!(drinks::recipe_amount), fields::Example::Amount, wanted, move |book, amount| {
            line_changed(book, drink, line, |it| it.amount = amount)
        });
    let example = state.book.with_untracked(|book| words::example(wanted(book).unit, book.settings().units));
    let Labels { amount: amount_label, prep, scaling: scaling_label } = labels;
    let choices = new.once_there(move || {
        view! {
            {choose_stage(state, drink, line, prep.clone())}
            {choose_scaling(state, drink, line, scaling, scaling_label.clone())}
        }
        .into_any()
    });
    view! {
        <li class="line">
            {name_or_link}
            <Entry
                label=amount_label
                label_hidden=true
                hangs
                of=line.number()
                caret=is_new && !is_unnamed
                example
                value=new.value(AMOUNT, amount)
                units=fields::units(wanted)
                commit=new.commit(AMOUNT, set_amount)
            />
            {choices}
            {new.needs()}
            <TakeOut name on_click=new.take_out(remove) />
            <div class="line-more">
                {peel(state, drink, line)}
                <Lacks drink line hangs />
                {without_case(state, drink, line, hangs)}
                {when(in_steps, move || view! { <Step drink line hangs name=name.get_untracked() /> }.into_any())}
                {when(in_scoops, move || view! { <Packing drink line hangs name=name.get_untracked() /> }.into_any())}
                {when(blended_in, move || view! { <Melted drink line hangs name=name.get_untracked() /> }.into_any())}
            </div>
        </li>
    }
}

/// What an amount of the line is read as, drinks being liquid first.
fn wanted(book: &Book, drink: DrinkId, line: LineId) -> Wanted {
    let units = book.settings().units;
    let current = line_of(book, drink, line).map(|it| it.amount.unit);
    let unit = match current.map(Unit::dimension) {
        Some(Dimension::Count) => Unit::Piece,
        Some(Dimension::Mass) => current.unwrap_or(units.weight_unit()),
        Some(Dimension::Volume) | None => units.drink_unit(),
    };
    Wanted { dimensions: LIQUID_FIRST, unit }
}

/// How a line gets into the book, and its ingredient where that is new as well.
fn addition(drink: DrinkId, line: LineId) -> Addition {
    let there = move |book: &Book| line_of(book, drink, line).is_some();
    Addition::of(new_line(drink, line), there, say!(drinks::add_to_recipe), move |typed, book| {
        let known = match Key::from_text(&typed.letters(CHOSEN)) {
            Some(Key::Ingredient(id)) => book.ingredient(id).cloned(),
            _ => None,
        };
        let mut edits = Vec::new();
        let ingredient = match known {
            Some(known) => Some(known),
            None => typed.name(NAME).map(|name| {
                let ingredient = Ingredient::named(new_ingredient(line), &name);
                edits.push(Edit::Put(Record::Ingredient(ingredient.clone())));
                ingredient
            }),
        };
        let (amount, ingredient) = (typed.amount(AMOUNT, wanted(book, drink, line))?, ingredient?);
        let stage = likely_stage(&ingredient, book.drink(drink).map(|it| it.kind));
        let scaling = Scaling::InProportion;
        let line = Line { id: line, ingredient: ingredient.id, stage, amount, scaling, ice: None, in_glass: false };
        edits.extend(changed(book, drink, |it| it.lines.push(line)));
        Some(Edit::Together(edits))
    })
}

/// The stage that an ingredient is most likely meant at in a drink of this kind: whole fruit goes into a blender.
pub fn likely_stage(ingredient: &Ingredient, kind: Option<DrinkKind>) -> Stage {
    if ingredient.press_yield.is_some() && kind != Some(DrinkKind::Blended) {
        Stage::Pressed
    } else if ingredient.soak_yield.is_some() {
        Stage::SoakedOrBrewed
    } else if ingredient.trim_yield < Share::WHOLE {
        Stage::Trimmed
    } else {
        Stage::AsBought
    }
}

/// The field for the name of an ingredient that the line brings with it, until one of the starter list is picked: then
/// its `link`.
fn naming(
    new: &Addition,
    draft: Draft,
    line: LineId,
    name: Signal<String>,
    link: impl Fn() -> AnyView + Send + Sync + 'static,
) -> AnyView {
    let state = AppState::here();
    let is_picked = RwSignal::new(false);
    let rename = fields::text(say!(drinks::ingredient_name), move |book, name| {
        let known = book.ingredient(new_ingredient(line))?.clone();
        Some(Edit::Put(Record::Ingredient(Ingredient { name, ..known })))
    });
    let letters = new.value(NAME, name);
    let pick = Arc::new(move |row: &'static Row| {
        let id = new_ingredient(line);
        let tag = language();
        let edit = state.book.with_untracked(|book| {
            let typed = book.ingredient(id).cloned().unwrap_or_else(|| row.ingredient(id, &tag));
            let filled = row.filled(&typed, &tag).unwrap_or(typed);
            Edit::Put(Record::Ingredient(Ingredient { name: row.name(&tag).to_string(), ..filled }))
        });
        // Figures of the list are never refused.
        let _ = state.apply(say!(goods::add_ingredient), edit);
        draft.set(state, CHOSEN, &Key::Ingredient(id).to_string());
        is_picked.set(true);
    });
    let (new, rename) = (new.clone(), rename);
    let field = move || {
        view! {
            <div class="line-naming">
                <Entry
                    label=say!(drinks::name_of_new)
                    letters=true
                    caret=true
                    of=line.number()
                    example=say!(drinks::example_ingredient)
                    value=letters
                    commit=new.commit(NAME, rename.clone())
                />
                <Matches letters pick=pick.clone() />
            </div>
        }
        .into_any()
    };
    view! { {when(move || !is_picked.get(), field)} {when(move || is_picked.get(), link)} }.into_any()
}
