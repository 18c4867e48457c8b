//! One line of a recipe: how much, at which stage, how it follows the size, and how ice stands
//! in the glass.

use std::sync::Arc;

use leptos::prelude::*;

use super::change::changed;
use crate::app::route::Route;
use crate::book::{Book, Drink, DrinkId, Edit, Ice, IcePlace, Key, Line, LineId, Scaling, Stage};
use crate::measure::{Amount, Dimension, Exact, Unit, Wanted};
use crate::ui::fields::{self, Choice, Entry};
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

/// Follows the size as chosen. Steps begin at half a piece, or one of the amount's unit; what
/// was the top-up before follows in proportion.
fn follow(drink: &mut Drink, line: LineId, chosen: &str) {
    for it in &mut drink.lines {
        if it.id != line {
            if chosen == "top-up" && it.scaling == Scaling::TopUp {
                it.scaling = Scaling::InProportion;
            }
            continue;
        }
        let unit = it.amount.unit;
        let step = if unit == Unit::Piece { Exact::new(5, 1) } else { Exact::ONE };
        it.scaling = match chosen {
            "fixed" => Scaling::Fixed,
            "steps" => Scaling::Stepped(Amount::new(step, unit)),
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

/// One line of a recipe.
#[component]
pub fn LineRow(
    /// The drink.
    drink: DrinkId,
    /// The line.
    line: LineId,
) -> impl IntoView {
    let state = AppState::here();
    let this = move || state.book.with(|book| line_of(book, drink, line).copied());
    let name = text(move || {
        let ingredient = this().map(|line| Key::Ingredient(line.ingredient));
        ingredient.map(|key| state.book.with(|book| book.name(key))).unwrap_or_default()
    });
    let called = move |what: &str| format!("{what} {}", name.get_untracked());
    let address = text(move || this().map(|line| Route::Ingredient(line.ingredient).address()).unwrap_or_default());
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
        edit.map_or(Ok(()), |edit| state.apply("Stage of an ingredient", edit))
    });
    let scalings: Vec<(String, String)> =
        SCALINGS.map(|(key, scaling)| (key.to_string(), words::scaling(scaling).to_string())).to_vec();
    let scaling = text(move || this().map(|line| scaling_key(line.scaling).to_string()).unwrap_or_default());
    let choose_scaling = Arc::new(move |chosen: &str| {
        let edit = state.book.with_untracked(|book| changed(book, drink, |it| follow(it, line, chosen)));
        edit.map_or(Ok(()), |edit| state.apply("How an ingredient follows the size", edit))
    });
    let remove = move || {
        let edit = state.book.with_untracked(|book| changed(book, drink, |it| it.lines.retain(|it| it.id != line)));
        // Taking a line out of a recipe is never refused.
        let _ = edit.map(|edit| state.apply("Take out of a recipe", edit));
    };
    let in_steps = move || this().is_some_and(|line| matches!(line.scaling, Scaling::Stepped(_)));
    let in_scoops =
        move || this().is_some_and(|line| line.ice.is_some() && line.amount.unit.dimension() == Dimension::Volume);
    view! {
           <li class="line">
               <a class="line-name" href=address>{name}</a>
               <Entry
                   label=called("Amount of")
                   label_hidden=true
                   value=amount
                   units=fields::units(wanted)
    commit=fields::amount("Amount in a recipe", wanted, move |book, amount| {
                       line_changed(book, drink, line, |it| it.amount = amount)
                   })
               />
               <Choice label=called("Stage of") label_hidden=true options=stages value=stage choose=choose_stage />
               <Choice label=called("In other sizes:") label_hidden=true options=scalings value=scaling choose=choose_scaling />
               <TakeOut name on_click=remove />
               <div class="line-more">
                   {when(in_steps, move || view! { <Step drink line name=name.get_untracked() /> }.into_any())}
                   {when(in_scoops, move || view! { <Packing drink line name=name.get_untracked() /> }.into_any())}
               </div>
           </li>
       }
}

#[component]
fn Step(drink: DrinkId, line: LineId, name: String) -> impl IntoView {
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
    view! {
           <Entry
               label=format!("In steps of, {name}")
               value=step
               units=fields::units(wanted)
    commit=fields::amount("Step of an ingredient", wanted, move |book, step| {
                   line_changed(book, drink, line, |it| it.scaling = Scaling::Stepped(step))
               })
           />
       }
}

#[component]
fn Packing(drink: DrinkId, line: LineId, name: String) -> impl IntoView {
    let state = AppState::here();
    let packing = text(move || {
        let ice = state.book.with(|book| line_of(book, drink, line).and_then(|line| line.ice));
        ice.map(|ice| state.plain_percent(ice.packing)).unwrap_or_default()
    });
    view! {
        <Entry
            label=format!("Of a scoop of {name}, solid")
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
