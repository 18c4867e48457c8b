//! Beside the fields of an ingredient and a container: which figures are starting ones, where they are from, and what
//! else the starter list knows.

use std::sync::Arc;

use leptos::prelude::*;

use super::change::{changed, ingredient_changed};
use crate::book::{
    Allergen, Book, ContainerId, Edit, Figure, Goods, Ingredient, IngredientId, PackId, Record, StartingFigure,
};
use crate::buying::starter::{Row, confirmed};
use crate::foundation::measure::{Amount, System};
use crate::say;
use crate::ui::language::language;
use crate::ui::live::{live, press, text, trouble, when};
use crate::ui::starter::{self, Matches};
use crate::ui::state::AppState;
use crate::words::{self, Speaker, starting};

/// A word and a shape for a figure that nobody confirmed, where it is from, and a button that confirms it.
fn mark(figure: String, basis: Signal<String>, confirm: impl Fn() + 'static) -> AnyView {
    let named = say!(starter::confirm_named, figure = figure);
    view! {
        <div class="starting">
            <span class="mark mark-starting">
                <svg viewBox="0 0 16 16" aria-hidden="true">
                    <path d="M8 1.5a6.5 6.5 0 1 0 0 13a6.5 6.5 0 0 0 0-13ZM8 4.5V8l2.5 2" />
                </svg>
                {say!(goods::starting_figure)}
            </span>
            <span class="soft">{basis}</span>
            <button class="button" type="button" aria-label=named on:click=press(confirm)>
                {say!(starter::confirm)}
            </button>
        </div>
    }
    .into_any()
}

fn standing(book: &Book, id: IngredientId, figure: Figure) -> Option<StartingFigure> {
    book.ingredient(id)?.starting_figures().find(|it| it.figure == figure)
}

/// The row that an ingredient was made from, once the list is here; follows both.
fn row(state: AppState, id: IngredientId) -> Option<&'static Row> {
    state.book.with(|book| book.ingredient(id).and_then(starter::row_of))
}

/// Where a figure is from, in a sentence.
pub(super) fn basis_of(state: AppState, id: IngredientId, figure: StartingFigure) -> Signal<String> {
    text(move || starting::basis(figure.basis, row(state, id).map(|row| row.ndb_no.as_str())))
}

/// Ends the mark of a figure.
pub(super) fn confirm_figure(state: AppState, id: IngredientId, figure: Figure) {
    let edit =
        state.book.with_untracked(|book| Some(Edit::Put(Record::Ingredient(confirmed(book.ingredient(id)?, figure)))));
    // A figure that stands is never refused.
    let _ = edit.map(|edit| state.apply(say!(starter::confirm_step), edit));
}

/// Ends the mark of what a container holds.
pub(super) fn confirm_capacity(state: AppState, id: ContainerId) {
    let edit = state.book.with_untracked(|book| changed(book, id, |it| it.starting = None));
    // A capacity that stands is never refused.
    let _ = edit.map(|edit| state.apply(say!(starter::confirm_step), edit));
}

/// Takes back that a figure was confirmed: it stands as it was brought.
pub(super) fn unconfirm_figure(state: AppState, id: IngredientId, figure: StartingFigure) {
    let edit = state.book.with_untracked(|book| {
        ingredient_changed(book, id, |it| {
            if let Some(starting) = &mut it.starting {
                starting.figures.retain(|brought| brought.figure != figure.figure);
                starting.figures.push(figure);
                starting.figures.sort_by_key(|brought| brought.figure);
            }
        })
    });
    // A figure that stood is never refused.
    let _ = edit.map(|edit| state.apply(say!(starter::unconfirm_step), edit));
}

/// Takes back that what a container holds was confirmed.
pub(super) fn unconfirm_capacity(state: AppState, id: ContainerId, brimful: Amount) {
    let edit = state.book.with_untracked(|book| changed(book, id, |it| it.starting = Some(brimful)));
    // A capacity that stood is never refused.
    let _ = edit.map(|edit| state.apply(say!(starter::unconfirm_step), edit));
}

/// The mark of a figure of an ingredient, as long as it stands as it was brought.
pub(super) fn figure_mark(id: IngredientId, figure: Figure) -> AnyView {
    let state = AppState::here();
    let stands = Memo::new(move |_| state.book.with(|book| standing(book, id, figure)));
    live(move || {
        let Some(found) = stands.get() else { return ().into_any() };
        // The number of its food is in the list.
        starter::ask();
        let name = starting::figure(figure, untrack(|| state.units())).to_string();
        mark(name, basis_of(state, id, found), move || confirm_figure(state, id, figure))
    })
}

/// The mark of what a container holds to the rim, as long as it stands as it was brought.
pub(super) fn capacity_mark(id: ContainerId) -> AnyView {
    let state = AppState::here();
    let stands = move || state.book.with(|book| book.container(id).is_some_and(|it| it.is_starting()));
    when(stands, move || {
        let basis = Signal::stored(say!(starter::usual_capacity).to_string());
        mark(say!(goods::brimful_capacity).to_string(), basis, move || confirm_capacity(state, id))
    })
}

/// A sentence about an ingredient and the row it was made from, where there is one.
fn about(
    id: IngredientId,
    say: fn(&'static Row, &Ingredient, System, &Speaker) -> Option<String>,
) -> impl Fn() -> Option<String> + Send + Sync + 'static {
    let state = AppState::here();
    move || {
        let row = row(state, id)?;
        state.book.with(|book| say(row, book.ingredient(id)?, state.units(), &state.speaker.get()))
    }
}

/// Says where the weight of a piece and the trim yield do not go together.
pub(super) fn at_odds(id: IngredientId) -> AnyView {
    trouble(about(id, |row, it, units, speaker| Some(starting::at_odds(row.at_odds(it)?, units, speaker))))
}

/// What a spoon of a powder weighs, and a button that takes it for its density in drinks; only while that is empty.
pub fn spoon_weight(id: IngredientId) -> AnyView {
    let state = AppState::here();
    let said = about(id, |row, it, _, speaker| {
        let (density, _) = row.spoon_density().filter(|_| it.density.is_none())?;
        Some(say!(starter::spoon_weight, density = speaker.density(density)))
    });
    let take = move || {
        let Some(row) = untrack(|| row(state, id)) else { return };
        let edit = state
            .book
            .with_untracked(|book| Some(Edit::Put(Record::Ingredient(row.measured_by_spoon(book.ingredient(id)?)?))));
        // A density of the list is never refused.
        let _ = edit.map(|edit| state.apply(say!(starter::use_spoon_weight), edit));
    };
    live(move || {
        let Some(said) = said() else { return ().into_any() };
        view! {
            <div class="offered">
                <p class="soft">{said}</p>
                <button class="button" type="button" on:click=press(take)>
                    {say!(starter::use_spoon_weight)}
                </button>
            </div>
        }
        .into_any()
    })
}

/// The allergens that an ingredient usually contains, as long as nobody has said any, and a button that says them.
pub(super) fn offered_allergens(id: IngredientId) -> AnyView {
    let state = AppState::here();
    let is_open = move || state.book.with(|book| book.ingredient(id).is_some_and(|it| it.allergens.is_none()));
    live(move || {
        let Some(row) = row(state, id).filter(|_| is_open()) else { return ().into_any() };
        let sentences = starting::offered_allergens(row);
        let certain = row.certain_allergens();
        let names: Vec<&str> = certain.iter().map(|allergen| words::allergen(*allergen)).collect();
        let button = (!certain.is_empty()).then(|| {
            let contains = say!(starter::contains_it, allergens = names.join(", "));
            view! {
                <button class="button" type="button" on:click=press(move || set_allergens(state, id, row))>
                    {contains}
                </button>
            }
        });
        let sentences = sentences.into_iter().map(|sentence| view! { <p>{sentence}</p> }).collect_view();
        view! { <div class="offered">{sentences} {button}</div> }.into_any()
    })
}

/// Says that an ingredient contains what it always does, and which nuts these are.
fn set_allergens(state: AppState, id: IngredientId, row: &'static Row) {
    let certain = row.certain_allergens();
    let which =
        |allergen: Allergen| row.allergens.iter().find(|it| it.allergen == allergen).map(|it| it.which.as_str());
    let nuts = which(Allergen::TreeNuts).unwrap_or_default();
    let edit = state.book.with_untracked(|book| {
        ingredient_changed(book, id, |it| {
            it.allergens = Some(certain);
            if it.nuts.is_empty() {
                it.nuts = nuts.to_string();
            }
        })
    });
    // Each of the lists once: never refused.
    let _ = edit.map(|edit| state.apply(say!(labels::allergens), edit));
}

/// What a usual case of an ingredient holds, as long as its pack is not in the book.
pub(super) fn usual_case(goods: Goods, pack: PackId) -> Signal<String> {
    let state = AppState::here();
    text(move || {
        let Goods::Ingredient(id) = goods else { return String::new() };
        if state.book.with(|book| book.packs(goods).iter().any(|it| it.id == pack)) {
            return String::new();
        }
        let contents = row(state, id).and_then(|row| row.contents(state.units()));
        contents.map(|size| say!(starter::usual_case, size = state.amount(size))).unwrap_or_default()
    })
}

/// The rows that the name of a new ingredient may mean; a press fills what is empty, and gives it the name of the row.
pub(super) fn matches(id: IngredientId, typed: Signal<String>) -> AnyView {
    let state = AppState::here();
    let is_made = move || state.book.with(|book| book.ingredient(id).is_some_and(|it| it.starting.is_some()));
    let letters = text(move || if is_made() { String::new() } else { typed.get() });
    let pick = Arc::new(move |row: &'static Row| {
        let tag = language();
        let edit = state.book.with_untracked(|book| {
            let typed = book.ingredient(id).cloned().unwrap_or_else(|| row.ingredient(id, &tag));
            let filled = row.filled(&typed, &tag).unwrap_or(typed);
            Edit::Put(Record::Ingredient(Ingredient { name: row.name(&tag).to_string(), ..filled }))
        });
        // Figures of the list are never refused.
        let _ = state.apply(say!(goods::add_ingredient), edit);
    });
    view! { <Matches letters pick /> }.into_any()
}

/// Offers to fill what is empty in an ingredient that was typed: on a press the list is asked, and the row of its name
/// says what it would bring.
pub(super) fn fill_empty(id: IngredientId) -> AnyView {
    let state = AppState::here();
    let asked = RwSignal::new(false);
    let is_made = move || state.book.with(|book| book.ingredient(id).is_some_and(|it| it.starting.is_some()));
    let ask = move || {
        asked.set(true);
        starter::ask();
    };
    let button = when(
        move || !asked.get() && !is_made(),
        move || {
            view! {
                <button class="quiet" type="button" on:click=press(ask)>
                    {say!(starter::suggestions)}
                </button>
            }
            .into_any()
        },
    );
    let offered = live(move || {
        if !asked.get() || is_made() {
            return ().into_any();
        }
        if starter::is_missing() {
            return view! { <p class="hollow" role="status">{say!(starter::missing)}</p> }.into_any();
        }
        let Some(list) = starter::list() else { return ().into_any() };
        let found = state.book.with(|book| {
            let ingredient = book.ingredient(id)?;
            let row = *list.search(&ingredient.name, &language()).first()?;
            Some((row, row.filled(ingredient, &language())?))
        });
        match found {
            Some((row, filled)) => offer(state, row, filled),
            None => view! { <p class="hollow" role="status">{say!(market::no_matches)}</p> }.into_any(),
        }
    });
    view! { {button} {offered} }.into_any()
}

/// What a row would fill, and the button that does.
fn offer(state: AppState, row: &'static Row, filled: Ingredient) -> AnyView {
    let figures: Vec<StartingFigure> = filled.starting_figures().collect();
    let said = starting::said(&figures, state.units(), &state.speaker.get());
    let fill = move || {
        // Figures of the list are never refused.
        let _ = state.apply(say!(starter::use_figures), Edit::Put(Record::Ingredient(filled.clone())));
    };
    view! {
        <div class="offered">
            <p>
                <strong>{say!(starter::fill_from, name = row.name(&language()))}</strong>
            </p>
            <p class="soft">{say!(starter::fill_about, figures = said)}</p>
            <button class="button" type="button" on:click=press(fill)>
                {say!(starter::use_figures)}
            </button>
        </div>
    }
    .into_any()
}
