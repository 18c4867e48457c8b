//! What a line lacks stands right there as a field: typed there, it is put on the ingredient.

use leptos::prelude::*;

use super::line_of;
use crate::book::{
    ASSUMED, Book, DrinkId, Edit, Figure, Ingredient, IngredientId, Key, LineId, Record, Stage, StartingFigure,
};
use crate::buying::starter::Row;
use crate::drink::make::lacking;
use crate::drink::yields::YieldError;
use crate::foundation::measure::{Amount, Density, Dimension, Wanted};
use crate::say;
use crate::ui::fields::{self, Commit, Entry, Hangs};
use crate::ui::live::{live, parts, press, text, when};
use crate::ui::places::buying::spoon_weight;
use crate::ui::starter;
use crate::ui::state::AppState;

/// A figure that a line lacks.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Lack {
    Figure(Figure),
    SoakYield,
}

const ALL: [Lack; 6] = [
    Lack::Figure(Figure::TrimYield),
    Lack::Figure(Figure::PressYield),
    Lack::Figure(Figure::Density),
    Lack::Figure(Figure::JuiceDensity),
    Lack::Figure(Figure::PieceWeight),
    Lack::SoakYield,
];

impl Lack {
    const fn of(lacks: YieldError) -> Option<Lack> {
        match lacks {
            YieldError::NoPressYield(_) => Some(Lack::Figure(Figure::PressYield)),
            YieldError::NoSoakYield(_) => Some(Lack::SoakYield),
            YieldError::NoDensity(_) => Some(Lack::Figure(Figure::Density)),
            YieldError::NoJuiceDensity(_) => Some(Lack::Figure(Figure::JuiceDensity)),
            YieldError::NoPieceWeight(_) => Some(Lack::Figure(Figure::PieceWeight)),
            YieldError::Arithmetic(_) => None,
        }
    }
}

/// A field for each thing that the line lacked since it is on the screen: one that is being typed stays.
#[component]
pub fn Lacks(
    /// The drink.
    drink: DrinkId,
    /// The line.
    line: LineId,
    /// The answers that hang on it.
    hangs: Hangs,
) -> impl IntoView {
    let state = AppState::here();
    let asked = Memo::new(move |before: Option<&Vec<Lack>>| {
        let lacks = state.book.with(|book| lacking(book, book.drink(drink)?, line_of(book, drink, line)?));
        let mut asked = before.cloned().unwrap_or_default();
        asked.extend(lacks.and_then(Lack::of).filter(|lack| !asked.contains(lack)));
        asked
    });
    let places = move || {
        let place = |lack| ALL.iter().zip(0_u64..).find(|(it, _)| **it == lack).map(|(_, place)| place);
        asked.get().into_iter().filter_map(place).collect::<Vec<u64>>()
    };
    let fields = parts(places, move |place| {
        let of = state.book.with_untracked(|book| line_of(book, drink, line).map(|line| line.ingredient));
        match (usize::try_from(place).ok().and_then(|place| ALL.get(place)), of) {
            (Some(lack), Some(ingredient)) => field(state, *lack, ingredient, (drink, line), hangs),
            _ => ().into_any(),
        }
    });
    view! {
        {fields}
        {counts_as_puree(state, drink, line)}
    }
}

fn field(state: AppState, lack: Lack, id: IngredientId, at: (DrinkId, LineId), hangs: Hangs) -> AnyView {
    let (drink, line) = at;
    let label = state.book.with_untracked(|book| label(lack, book, id));
    let value =
        text(move || state.book.with(|book| book.ingredient(id).map(|it| shown(state, lack, it))).unwrap_or_default());
    let density = matches!(lack, Lack::Figure(Figure::Density | Figure::JuiceDensity));
    let units = matches!(lack, Lack::Figure(Figure::PieceWeight)).then(|| fields::units(weight));
    let unit = match lack {
        Lack::Figure(Figure::PieceWeight) => "",
        _ if density => state.speaker.with_untracked(|speaker| speaker.density_unit()),
        _ => "%",
    };
    let letters = density && state.units().weighs_cups();
    let commit = commit(lack, id, label.clone());
    let entry = match units {
        Some(units) => view! { <Entry label=label hangs of=line.number() value commit units /> }.into_any(),
        None => view! { <Entry label=label hangs of=line.number() value commit unit letters /> }.into_any(),
    };
    view! {
        {entry}
        {matches!(lack, Lack::Figure(Figure::Density)).then(|| spoon_weight(id))}
        {shared(state, lack, id, move || puree(state, drink, line).is_some())}
    }
    .into_any()
}

/// The row of the starter list that an ingredient was made from, once the list is here; follows both.
fn row(state: AppState, id: IngredientId) -> Option<&'static Row> {
    state.book.with(|book| book.ingredient(id).and_then(starter::row_of))
}

/// Whether the figure that all share may be a powder's: puree it is not. While the list is on its way, it may.
fn may_be_powder(state: AppState, id: IngredientId) -> bool {
    match row(state, id) {
        Some(row) => row.is_powder(),
        None => is_listed(state, id) && starter::list().is_none() && !starter::is_missing(),
    }
}

/// Whether an ingredient was made from a row of the starter list; follows it.
fn is_listed(state: AppState, id: IngredientId) -> bool {
    let is_listed = |it: &Ingredient| it.starting.as_ref().is_some_and(|it| it.key != ASSUMED);
    state.book.with(|book| book.ingredient(id).is_some_and(is_listed))
}

/// The density by which a volume in a line counts as puree: the figure that all share, while it stands. Follows it.
fn puree(state: AppState, drink: DrinkId, line: LineId) -> Option<Density> {
    let brought = state.book.with(|book| {
        let line = line_of(book, drink, line)?;
        let is_volume = line.amount.unit.dimension() == Dimension::Volume;
        let is_puree = is_volume && line.ice.is_none() && line.stage != Stage::Pressed;
        let assumed = |it: &StartingFigure| it.figure == Figure::Density && Some(it.value) == it.figure.shared();
        book.ingredient(line.ingredient).filter(|_| is_puree)?.starting_figures().find(assumed)
    })?;
    Some(Density::from_grams_per_millilitre(brought.value))
}

/// Says that the volume in a line counts as puree, where it does.
fn counts_as_puree(state: AppState, drink: DrinkId, line: LineId) -> AnyView {
    let said = move || {
        let figure = state.speaker.get().density(puree(state, drink, line)?);
        Some(say!(drinks::counts_as_puree, figure = figure))
    };
    live(move || said().map(|said| view! { <p class="soft">{said}</p> }).into_any())
}

/// Takes the shared starting figure over, while none stands; says so as long as it stands.
fn shared(
    state: AppState,
    lack: Lack,
    id: IngredientId,
    said_at_line: impl Fn() -> bool + Send + Sync + 'static,
) -> AnyView {
    let Lack::Figure(figure) = lack else { return ().into_any() };
    let Some(value) = figure.shared() else { return ().into_any() };
    if figure == Figure::Density && untrack(|| is_listed(state, id)) {
        // Whether it is a powder stands in the list.
        starter::ask();
    }
    let said = move || state.speaker.get().density(Density::from_grams_per_millilitre(value));
    let is_missing = move || state.book.with(|book| book.ingredient(id).is_some_and(|it| it.figure(figure).is_none()));
    let is_assumed = move || {
        let stands = |it: &Ingredient| it.starting_figures().any(|it| it.figure == figure);
        state.book.with(|book| book.ingredient(id).is_some_and(stands))
    };
    // What everything poured is taken for at first is water.
    let offer = move || match figure {
        Figure::Density => say!(drinks::use_as_water, figure = said()),
        _ => say!(drinks::use_starting_figure, figure = said()),
    };
    let take = move || {
        let edit = state.book.with_untracked(|book| changed(book, id, |it| it.take_shared(figure)));
        // A shared figure is never refused.
        let _ = edit.map(|edit| state.apply(&untrack(offer), edit));
    };
    view! {
        {when(
            move || is_missing() && !(figure == Figure::Density && may_be_powder(state, id)),
            move || {
                view! { <button class="button" on:click=press(take)>{text(offer)}</button> }.into_any()
            },
        )}
        {when(
            move || is_assumed() && !said_at_line(),
            move || {
                let note = text(move || say!(drinks::starting_figure_assumed, figure = said()));
                view! { <p class="soft">{note}</p> }.into_any()
            },
        )}
    }
    .into_any()
}

fn label(lack: Lack, book: &Book, id: IngredientId) -> String {
    let name = book.name(Key::Ingredient(id));
    let cups = book.settings().units.weighs_cups();
    match lack {
        Lack::Figure(Figure::TrimYield) => say!(drinks::trim_yield_of, name = name),
        Lack::Figure(Figure::PressYield) => say!(drinks::juice_yield_of, name = name),
        Lack::Figure(Figure::Density) if cups => say!(drinks::cup_weight_of, name = name),
        Lack::Figure(Figure::JuiceDensity) if cups => say!(drinks::juice_cup_weight_of, name = name),
        Lack::Figure(Figure::Density) => say!(drinks::density_of, name = name),
        Lack::Figure(Figure::JuiceDensity) => say!(drinks::juice_density_of, name = name),
        Lack::Figure(Figure::PieceWeight) => say!(drinks::piece_weight_of, name = name),
        Lack::SoakYield => say!(drinks::soaked_or_brewed_weight_of, name = name),
    }
}

/// The figure as its field shows it. Returns an empty text if there is none.
fn shown(state: AppState, lack: Lack, it: &Ingredient) -> String {
    let density = |density: Density| state.speaker.get().typed_density(density);
    match lack {
        Lack::Figure(Figure::TrimYield) => Some(state.plain_percent(it.trim_yield)),
        Lack::Figure(Figure::PressYield) => it.press_yield.map(|share| state.plain_percent(share)),
        Lack::Figure(Figure::Density) => it.density.map(density),
        Lack::Figure(Figure::JuiceDensity) => it.juice_density.map(density),
        Lack::Figure(Figure::PieceWeight) => {
            it.piece_weight.map(|mass| state.amount(Amount::of_kept_mass(mass, state.units())))
        }
        Lack::SoakYield => it.soak_yield.map(|share| state.plain_percent(share)),
    }
    .unwrap_or_default()
}

fn weight(book: &Book) -> Wanted {
    Wanted { dimensions: &[Dimension::Mass], unit: book.settings().units.weight_unit() }
}

fn commit(lack: Lack, id: IngredientId, label: String) -> Commit {
    match lack {
        Lack::Figure(Figure::TrimYield) => fields::percent(label, fields::Example::TrimYield, move |book, share| {
            changed(book, id, |it| it.trim_yield = share)
        }),
        Lack::Figure(Figure::PressYield) => {
            fields::optional_percent(label, fields::Example::JuiceYield, move |book, share| {
                changed(book, id, |it| it.press_yield = share)
            })
        }
        Lack::SoakYield => fields::optional_percent(label, fields::Example::SoakedWeight, move |book, share| {
            changed(book, id, |it| it.soak_yield = share)
        }),
        Lack::Figure(Figure::Density) => {
            fields::optional_density(label, move |book, density| changed(book, id, |it| it.density = density))
        }
        Lack::Figure(Figure::JuiceDensity) => {
            fields::optional_density(label, move |book, density| changed(book, id, |it| it.juice_density = density))
        }
        Lack::Figure(Figure::PieceWeight) => fields::optional_amount(
            label,
            |_| fields::Example::PieceWeight,
            weight,
            move |book, amount| changed(book, id, |it| it.piece_weight = amount.and_then(Amount::kept_mass)),
        ),
    }
}

fn changed(book: &Book, id: IngredientId, change: impl FnOnce(&mut Ingredient)) -> Option<Edit> {
    let mut ingredient = book.ingredient(id)?.clone();
    change(&mut ingredient);
    Some(Edit::Put(Record::Ingredient(ingredient)))
}
