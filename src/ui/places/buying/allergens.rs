//! What an ingredient holds that must be named: not yet looked, none, or some.

use leptos::prelude::*;

use super::change::ingredient_changed;
use super::starting::offered_allergens;
use crate::book::{Allergen, Ingredient, IngredientId};
use crate::drink::label::Law;
use crate::say;
use crate::ui::fields::{self, Entry};
use crate::ui::live::{flag, press, text, when};
use crate::ui::parts::Fold;
use crate::ui::state::AppState;
use crate::words;

/// Cereals with gluten.
const GLUTEN: [Allergen; 2] = [Allergen::Wheat, Allergen::OtherGluten];

/// What an ingredient holds that must be named.
#[component]
pub fn Allergens(
    /// The ingredient.
    id: IngredientId,
    /// Whether it stands open at first.
    open: bool,
) -> impl IntoView {
    let state = AppState::here();
    let stated = move || state.book.with(|book| book.ingredient(id).and_then(|it| it.allergens.clone()));
    let set = move |allergens: Option<Vec<Allergen>>| {
        let edit = state.book.with_untracked(|book| ingredient_changed(book, id, |it| it.allergens = allergens));
        // Each of the lists once or not at all: never refused.
        let _ = edit.map(|edit| state.apply(say!(labels::allergens), edit));
    };
    let toggle = move |allergen: Allergen| {
        let now = state.book.with_untracked(|book| book.ingredient(id)?.allergens.clone()).unwrap_or_default();
        let turned = Allergen::ALL.iter().copied().filter(|it| now.contains(it) != (*it == allergen));
        let turned: Vec<Allergen> = turned.collect();
        // The last one taken back does not say that somebody looked at the others.
        set(if turned.is_empty() { None } else { Some(turned) });
    };
    let law = state.book.with_untracked(|book| Law::of(book.settings()));
    let each = move |allergen: Allergen| {
        let pressed = flag(move || stated().is_some_and(|it| it.contains(&allergen)));
        chip(words::allergen_to_mark(allergen, law), pressed, Box::new(move || toggle(allergen)))
    };
    let has_gluten = move || stated().is_some_and(|it| GLUTEN.iter().any(|grain| it.contains(grain)));
    let turn_gluten = move || {
        let on = !untrack(has_gluten);
        let now = state.book.with_untracked(|book| book.ingredient(id)?.allergens.clone()).unwrap_or_default();
        let holds = |it: &Allergen| if GLUTEN.contains(it) { on } else { now.contains(it) };
        let turned: Vec<Allergen> = Allergen::ALL.iter().copied().filter(holds).collect();
        set(if turned.is_empty() { None } else { Some(turned) });
    };
    // European law names the grains under one heading; which ones they are stands below.
    let one_heading = law == Law::European;
    let chip_of = move |allergen: Allergen| match allergen {
        Allergen::Wheat if one_heading => {
            Some(chip(say!(labels::gluten_grains), flag(has_gluten), Box::new(turn_gluten)))
        }
        Allergen::OtherGluten if one_heading => None,
        other => Some(each(other)),
    };
    let grains = when(
        move || one_heading && has_gluten(),
        move || {
            view! {
                <p class="hollow">{say!(labels::which_grains)}</p>
                <div class="chips" role="group" aria-label=say!(labels::which_grains)>
                    {GLUTEN.map(each).into_iter().collect_view()}
                </div>
            }
            .into_any()
        },
    );
    // Those that the law does not name stand apart, and in sight: "None of these" speaks of them too.
    let chips = move |of_law: bool| {
        let some = Allergen::ALL.iter().copied().filter(|it| words::of_law(*it, law) == of_law);
        some.filter_map(chip_of).collect_view()
    };
    let besides = Allergen::ALL.iter().any(|it| !words::of_law(*it, law)).then(|| {
        view! {
            <p class="hollow">{say!(labels::other_allergens)}</p>
            <div class="chips" role="group" aria-label=say!(labels::other_allergens)>
                {chips(false)}
            </div>
        }
    });
    let said = text(move || match stated() {
        None => say!(labels::ingredient_not_checked).to_string(),
        Some(none) if none.is_empty() => say!(labels::ingredient_contains_none).to_string(),
        Some(some) => {
            let names: Vec<&str> = some.iter().map(|it| words::allergen(*it)).collect();
            say!(labels::ingredient_contains, allergens = names.join(", "))
        }
    });
    let nuts = when(move || stated().is_some_and(|it| it.contains(&Allergen::TreeNuts)), move || nuts(state, id, law));
    let figure = text(move || match stated() {
        None => say!(labels::not_checked).to_string(),
        Some(none) if none.is_empty() => say!(labels::none_of_these).to_string(),
        Some(some) => some.iter().map(|it| words::allergen(*it)).collect::<Vec<&str>>().join(", "),
    });
    view! {
        <Fold name=say!(labels::allergens) figure open>
            <p class="about">{say!(labels::allergens_about)}</p>
            <p>
                <strong>{said}</strong>
            </p>
            {offered_allergens(id)}
            <div class="chips" role="group" aria-label=say!(labels::allergens_it_contains)>
                {chips(true)}
            </div>
            {grains}
            {besides}
            {nuts}
            <div class="chips" role="group" aria-label=say!(labels::other_answers)>
                {chip(say!(labels::none_of_these), flag(move || stated().is_some_and(|it| it.is_empty())), Box::new(move || set(Some(Vec::new()))))}
                {chip(say!(labels::not_checked), flag(move || stated().is_none()), Box::new(move || set(None)))}
            </div>
            {mixture(state, id)}
        </Fold>
    }
}

/// An answer to be chosen.
fn chip(words: &'static str, pressed: Signal<bool>, act: Box<dyn Fn()>) -> AnyView {
    let pressed = text(move || pressed.get().to_string());
    view! {
        <button class="chip" aria-pressed=pressed on:click=press(act)>
            {words}
        </button>
    }
    .into_any()
}

/// Whether it is made of several foods, and of which.
fn mixture(state: AppState, id: IngredientId) -> AnyView {
    let of = move |show: fn(&Ingredient) -> String| {
        text(move || state.book.with(|book| book.ingredient(id).map(show).unwrap_or_default()))
    };
    let is_mixture = move || state.book.with(|book| book.ingredient(id).is_some_and(|it| it.parts.is_some()));
    let mix = move |mixed: bool| {
        let change = |it: &mut Ingredient| it.parts = mixed.then(String::new);
        let edit = state.book.with_untracked(|book| ingredient_changed(book, id, change));
        // No parts, or none that are known: never refused.
        let _ = edit.map(|edit| state.apply(say!(labels::mixture), edit));
    };
    let parts = when(is_mixture, move || {
        view! {
            <Entry
                label=say!(labels::parts)
                letters=true
                example=say!(labels::parts_example)
                note=say!(labels::parts_about)
                value=of(|it| it.parts.clone().unwrap_or_default())
                commit=fields::text(say!(labels::parts), move |book, parts| ingredient_changed(book, id, |it| it.parts = Some(parts)))
            />
        }
        .into_any()
    });
    view! {
        <div class="chips" role="group" aria-label=say!(labels::one_food_or_several)>
            {chip(say!(labels::mixture_such_as_granola), flag(is_mixture), Box::new(move || mix(!untrack(is_mixture))))}
        </div>
        {parts}
    }
    .into_any()
}

/// Which tree nuts they are, and what the law counts as one.
fn nuts(state: AppState, id: IngredientId, law: Law) -> AnyView {
    let value = text(move || state.book.with(|book| book.ingredient(id).map(|it| it.nuts.clone()).unwrap_or_default()));
    view! {
        <Entry
            label=say!(labels::which_nuts)
            letters=true
            example=say!(labels::example_nuts)
            value
            commit=fields::text(say!(labels::which_nuts), move |book, nuts| ingredient_changed(book, id, |it| it.nuts = nuts))
        />
        <p class="hollow">{words::tree_nuts(law)}</p>
    }
    .into_any()
}
