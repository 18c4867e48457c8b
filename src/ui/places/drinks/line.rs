//! One line of a recipe: how much, at which stage, how it follows the size, and how ice stands
//! in the glass.

use std::sync::Arc;

use leptos::prelude::*;

use super::change::changed;
use crate::app::route::Route;
use crate::book::{
    Book, Drink, DrinkId, Edit, Ice, IcePlace, Ingredient, IngredientId, Key, Line, LineId, Record, Scaling, Stage,
};
use crate::foundation::measure::{Amount, Dimension, Exact, Share, Unit, Wanted};
use crate::ui::fields::{self, Addition, Choice, Draft, Entry, Hangs};
use crate::ui::live::{text, when};
use crate::ui::parts::TakeOut;
use crate::ui::state::AppState;
use crate::words;

const LIQUID_FIRST: &[Dimension] = &[Dimension::Volume, Dimension::Mass, Dimension::Count];

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

/// The ways to follow the size, by the key of a choice.
const SCALINGS: [(&str, Scaling); 4] = [
    ("proportion", Scaling::InProportion),
    ("fixed", Scaling::Fixed),
    ("steps", Scaling::Stepped(Amount::new(Exact::ONE, Unit::Piece))),
    ("top-up", Scaling::TopUp),
];

const fn scaling_key(scaling: Scaling) -> &'static str {
    match scaling {
        Scaling::InProportion => "proportion",
        Scaling::Fixed => "fixed",
        Scaling::Stepped(_) => "steps",
        Scaling::TopUp => "top-up",
    }
}

/// Follows the size as chosen; steps are typed first. What was the top-up before follows in
/// proportion.
fn follow(drink: &mut Drink, line: LineId, chosen: &str) {
    for it in &mut drink.lines {
        if it.id != line {
            if chosen == "top-up" && it.scaling == Scaling::TopUp {
                it.scaling = Scaling::InProportion;
            }
            continue;
        }
        it.scaling = match chosen {
            "fixed" => Scaling::Fixed,
            "top-up" => Scaling::TopUp,
            _ => Scaling::InProportion,
        };
    }
}

/// What the amount of a line means: an ingredient at a stage, or ice at its place.
#[derive(Clone, Copy)]
enum Meant {
    At(Stage),
    Ice(IcePlace),
}

impl Meant {
    fn all() -> impl Iterator<Item = Meant> {
        let stages = Stage::ALL.iter().map(|stage| Meant::At(*stage));
        stages.chain(IcePlace::ALL.iter().map(|place| Meant::Ice(*place)))
    }

    fn of(line: &Line) -> Meant {
        line.ice.map_or(Meant::At(line.stage), |ice| Meant::Ice(ice.place))
    }

    fn key(self) -> String {
        match self {
            Meant::At(stage) => format!("{stage:?}"),
            Meant::Ice(place) => format!("{place:?}"),
        }
    }

    fn words(self) -> String {
        match self {
            Meant::At(stage) => words::stage(stage).to_string(),
            Meant::Ice(place) => format!("ice, {}", words::ice_place(place)),
        }
    }

    fn put(self, line: &mut Line) {
        match self {
            Meant::At(stage) => (line.stage, line.ice) = (stage, None),
            Meant::Ice(place) => {
                let packing = line.ice.map_or(Ice::usual_packing(), |ice| ice.packing);
                (line.stage, line.ice) = (Stage::AsBought, Some(Ice { place, packing }));
            }
        }
    }
}

/// What a new line is called.
pub(super) const LINE: &str = "recipe line";
/// What was chosen for a new line: the key of an ingredient, or [`SOMETHING_NEW`].
pub(super) const CHOSEN: &str = "an ingredient";
/// What stands for an ingredient that is not in the book yet.
pub(super) const SOMETHING_NEW: &str = "new";
/// The fields of a new line, by what is missing while they are empty.
const NAME: &str = "the name of the ingredient";
const AMOUNT: &str = "an amount";

/// A line that is not in the book yet.
pub(super) fn new_line(drink: DrinkId, line: LineId) -> Draft {
    Draft { what: LINE, of: Some(Key::Drink(drink)), id: line.number() }
}

/// The field of a new step, by what is missing while it is empty.
const STEP: &str = "its size";

/// The step of a line that is not in the book yet.
const fn new_step(drink: DrinkId, line: LineId) -> Draft {
    Draft { what: "step", of: Some(Key::Drink(drink)), id: line.number() }
}

/// The id of the ingredient that a new line brings with it: that of the line.
const fn new_ingredient(line: LineId) -> IngredientId {
    IngredientId::from_random(line.number())
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
    let called = {
        let name = name.get_untracked();
        let name = if name.is_empty() { "the new ingredient".to_string() } else { name };
        move |what: &str| format!("{what} {name}")
    };
    let address = text(move || ingredient.get().map(|id| Route::Ingredient(id).address()).unwrap_or_default());
    let amount = text(move || this().map(|line| state.amount(line.amount)).unwrap_or_default());
    let wanted = move |book: &Book| {
        let units = book.settings().units;
        let current = line_of(book, drink, line).map(|it| it.amount.unit);
        let unit = match current.map(Unit::dimension) {
            Some(Dimension::Count) => Unit::Piece,
            Some(Dimension::Mass) => current.unwrap_or(units.weight_unit()),
            Some(Dimension::Volume) | None => units.drink_unit(),
        };
        Wanted { dimensions: LIQUID_FIRST, unit }
    };
    let there = move |book: &Book| line_of(book, drink, line).is_some();
    let new = Addition::of(draft, there, "Add to a recipe", move |typed, book| {
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
        let (amount, ingredient) = (typed.amount(AMOUNT, wanted(book))?, ingredient?);
        let stage = likely_stage(&ingredient);
        let scaling = Scaling::InProportion;
        let line = Line { id: line, ingredient: ingredient.id, stage, amount, scaling, ice: None };
        edits.extend(changed(book, drink, |it| it.lines.push(line)));
        Some(Edit::Together(edits))
    });
    let is_new = !untrack(|| new.is_there());
    let is_unnamed = is_new && untrack(|| ingredient.get()).is_none();
    let name_or_link = if is_unnamed {
        let rename = fields::text("Name of an ingredient", move |book, name| {
            let known = book.ingredient(new_ingredient(line))?.clone();
            Some(Edit::Put(Record::Ingredient(Ingredient { name, ..known })))
        });
        let (value, commit) = (new.value(NAME, name), new.commit(NAME, rename));
        let of = line.number();
        view! { <Entry label="Name of the new ingredient" letters=true caret=true of example="Kale" value commit /> }
            .into_any()
    } else {
        view! { <a class="line-name" href=address>{name}</a> }.into_any()
    };
    let stages: Vec<(String, String)> = Meant::all().map(|meant| (meant.key(), meant.words())).collect();
    let stage = text(move || this().map(|line| Meant::of(&line).key()).unwrap_or_default());
    let choose_stage = Arc::new(move |chosen: &str| {
        let meant = Meant::all().find(|meant| meant.key() == chosen);
        let edit = state.book.with_untracked(|book| {
            line_changed(book, drink, line, |it| {
                if let Some(meant) = meant {
                    meant.put(it);
                }
            })
        });
        edit.map_or(Ok(()), |edit| state.apply("Ingredient as used", edit))
    });
    let scalings: Vec<(String, String)> =
        SCALINGS.map(|(key, scaling)| (key.to_string(), words::scaling(scaling).to_string())).to_vec();
    let step = new_step(drink, line);
    let in_book = move || this().map(|line| scaling_key(line.scaling));
    let scaling = text(move || {
        let typed = step.is_open(state).then_some("steps");
        typed.or_else(in_book).unwrap_or_default().to_string()
    });
    let choose_scaling = Arc::new(move |chosen: &str| {
        step.discard(state);
        let now = untrack(in_book);
        if now == Some(chosen) {
            return Ok(());
        }
        if chosen == "steps" {
            step.begin(state);
            return Ok(());
        }
        let edit = state.book.with_untracked(|book| changed(book, drink, |it| follow(it, line, chosen)));
        edit.map_or(Ok(()), |edit| state.apply("Recipe scaling", edit))
    });
    let remove = move || {
        step.discard(state);
        let edit = state.book.with_untracked(|book| changed(book, drink, |it| it.lines.retain(|it| it.id != line)));
        // Taking a line out of a recipe is never refused.
        let _ = edit.map(|edit| state.apply("Remove from recipe", edit));
    };
    let in_steps = move || scaling.with(|scaling| scaling == "steps");
    let in_scoops =
        move || this().is_some_and(|line| line.ice.is_some() && line.amount.unit.dimension() == Dimension::Volume);
    let set_amount = fields::amount("Amount in a recipe", wanted, move |book, amount| {
        line_changed(book, drink, line, |it| it.amount = amount)
    });
    let example = state.book.with_untracked(|book| words::example(wanted(book).unit, book.settings().units));
    let (stage_label, scaling_label) = (called("Stage of"), called("In other sizes:"));
    let choices = new.once_there(move || {
        let (stages, scalings) = (stages.clone(), scalings.clone());
        let (stage_label, scaling_label) = (stage_label.clone(), scaling_label.clone());
        view! {
            <Choice
                label=stage_label
                label_hidden=true
                options=stages
                value=stage
                choose=choose_stage.clone()
            />
            <Choice
                label=scaling_label
                label_hidden=true
                options=scalings
                value=scaling
                choose=choose_scaling.clone()
            />
        }
        .into_any()
    });
    view! {
        <li class="line">
            {name_or_link}
            <Entry
                label=called("Amount of")
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
                {when(in_steps, move || view! { <Step drink line hangs name=name.get_untracked() /> }.into_any())}
                {when(in_scoops, move || view! { <Packing drink line hangs name=name.get_untracked() /> }.into_any())}
            </div>
        </li>
    }
}

#[component]
fn Step(drink: DrinkId, line: LineId, hangs: Hangs, name: String) -> impl IntoView {
    let state = AppState::here();
    let step = text(move || {
        let scaling = state.book.with(|book| line_of(book, drink, line).map(|it| it.scaling));
        match scaling {
            Some(Scaling::Stepped(step)) => state.amount(step),
            _ => String::new(),
        }
    });
    let wanted = move |book: &Book| Wanted {
        dimensions: LIQUID_FIRST,
        unit: line_of(book, drink, line).map_or(Unit::Piece, |it| it.amount.unit),
    };
    let set = move |book: &Book, step| line_changed(book, drink, line, |it| it.scaling = Scaling::Stepped(step));
    let there =
        move |book: &Book| line_of(book, drink, line).is_some_and(|line| matches!(line.scaling, Scaling::Stepped(_)));
    let new = Addition::of(new_step(drink, line), there, "Recipe scaling", move |typed, book| {
        typed.amount(STEP, wanted(book)).and_then(|step| set(book, step))
    });
    let pieces = state.book.with_untracked(|book| wanted(book).unit == Unit::Piece);
    view! {
        <div class="entry">
            <Entry
                label=format!("In steps of, {name}")
                hangs
                units=fields::units(wanted)
                example=if pieces { "0.5" } else { "1" }
                value=new.value(STEP, step)
                commit=new.commit(STEP, fields::amount("Step of an ingredient", wanted, set))
            />
            {new.needs()}
        </div>
    }
}

#[component]
fn Packing(drink: DrinkId, line: LineId, hangs: Hangs, name: String) -> impl IntoView {
    let state = AppState::here();
    let packing = text(move || {
        let ice = state.book.with(|book| line_of(book, drink, line).and_then(|line| line.ice));
        ice.map(|ice| state.plain_percent(ice.packing)).unwrap_or_default()
    });
    view! {
        <Entry
            label=format!("Of a scoop of {name}, solid")
            hangs
            unit="%"
            note="Cubes as they fall leave air between them: 54 to 67 % is solid (Baker and Kudrolli 2010; plastic cubes, a guide only)."
            value=packing
            commit=fields::percent("Packing of ice", move |book, packing| {
                line_changed(book, drink, line, |it| {
                    it.ice = it.ice.map(|ice| Ice { packing, ..ice });
                })
            })
        />
    }
}
