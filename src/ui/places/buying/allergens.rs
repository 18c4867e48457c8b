//! What an ingredient holds that must be named: not yet looked, none, or some.

use leptos::prelude::*;

use super::change::ingredient_changed;
use crate::book::{Allergen, IngredientId};
use crate::ui::live::{flag, press, text};
use crate::ui::parts::Section;
use crate::ui::state::AppState;
use crate::words;

/// What an ingredient holds that must be named.
#[component]
pub fn Allergens(
    /// The ingredient.
    id: IngredientId,
) -> impl IntoView {
    let state = AppState::here();
    let stated = move || state.book.with(|book| book.ingredient(id).and_then(|it| it.allergens.clone()));
    let set = move |allergens: Option<Vec<Allergen>>| {
        let edit = state.book.with_untracked(|book| ingredient_changed(book, id, |it| it.allergens = allergens));
        // Each of the lists once or not at all: never refused.
        let _ = edit.map(|edit| state.apply("Allergens of an ingredient", edit));
    };
    let toggle = move |allergen: Allergen| {
        let now = state.book.with_untracked(|book| book.ingredient(id)?.allergens.clone()).unwrap_or_default();
        let turned = Allergen::ALL.iter().copied().filter(|it| now.contains(it) != (*it == allergen));
        let turned: Vec<Allergen> = turned.collect();
        // The last one taken back does not say that somebody looked at the others.
        set(if turned.is_empty() { None } else { Some(turned) });
    };
    let chip = move |words: &'static str, pressed: Signal<bool>, act: Box<dyn Fn()>| {
        let pressed = text(move || pressed.get().to_string());
        view! {
            <button class="chip" aria-pressed=pressed on:click=press(act)>
                {words}
            </button>
        }
    };
    let each = move |allergen: Allergen| {
        let pressed = flag(move || stated().is_some_and(|it| it.contains(&allergen)));
        chip(words::allergen(allergen), pressed, Box::new(move || toggle(allergen)))
    };
    let said = text(move || match stated() {
        None => "Not yet looked at. A drink with it cannot say what it holds.".to_string(),
        Some(none) if none.is_empty() => "It holds none of these.".to_string(),
        Some(some) => {
            let names: Vec<&str> = some.iter().map(|it| words::allergen(*it)).collect();
            format!("It holds: {}.", names.join(", "))
        }
    });
    view! {
        <Section
            heading="Allergens"
            about="Read the label, or ask the supplier. The book is only as right as the label that was read: check each delivery."
        >
            <p>
                <strong>{said}</strong>
            </p>
            <div class="chips" role="group" aria-label="What it holds">
                {Allergen::ALL.iter().copied().map(each).collect_view()}
            </div>
            <div class="chips" role="group" aria-label="Or">
                {chip("None of these", flag(move || stated().is_some_and(|it| it.is_empty())), Box::new(move || set(Some(Vec::new()))))}
                {chip("Not yet looked", flag(move || stated().is_none()), Box::new(move || set(None)))}
            </div>
        </Section>
    }
}
