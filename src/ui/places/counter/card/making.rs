//! What a card says: what to take, where to fill to, what to be careful of.

use leptos::prelude::*;

use crate::book::{Key, OfferId};
use crate::drink::make::{Card, Taken};
use crate::foundation::measure::Exact;
use crate::say;
use crate::ui::glass::{glass, layer_of, layers};
use crate::ui::state::AppState;
use crate::words::counter;

/// What to take, and where to fill to; `allergens` stand beside it.
pub fn making(state: AppState, id: OfferId, card: Card, drinks: Exact, allergens: Signal<String>) -> AnyView {
    let speaker = &state.speaker.get();
    let step = |(place, taken): (usize, &Taken)| {
        let (name, how) = state.book.with(|book| {
            let name = book.name(Key::Ingredient(taken.line.ingredient));
            (name, counter::how_added(&taken.line, book))
        });
        let nothing = || (say!(common::none).to_string(), "");
        let (number, unit) = if taken.amount.number.is_zero() { nothing() } else { speaker.on_card(taken.amount) };
        let swatch = format!("recipe-layer {}", layer_of(&card.scaled, place).class());
        view! {
            <li>
                <span class=swatch aria-hidden="true"></span>
                <span class="recipe-amount">{number} " " <small>{unit}</small></span>
                <span class="recipe-ingredient">
                    {name} " " <span class="recipe-how">{how}</span> " "
                    <span class="recipe-how">{counter::of_the_amount(taken)}</span>
                </span>
            </li>
        }
    };
    let container = state.book.with(|book| book.container(id.container).cloned());
    let picture = container.map(|container| glass(&container, &card.fill, layers(&card.scaled)));
    let several =
        (drinks != Exact::ONE).then(|| view! { <p class="recipe-for">{counter::for_drinks(drinks, speaker)}</p> });
    let volume = state.volume(card.fill.volume);
    let volume = if drinks == Exact::ONE { volume } else { say!(counter::volume_each, volume = volume) };
    view! {
        <div class="recipe-sides across">
            <div>
                {several}
                <ol class="recipe">{card.take.iter().enumerate().map(step).collect_view()}</ol>
            </div>
            <div class="recipe-fill">
                {picture}
                <p class="recipe-line">
                    <span class="recipe-amount">{volume}</span>
                    <span>{counter::fill_to(&card, speaker)}</span>
                </p>
                <p class="allergens">{allergens}</p>
            </div>
        </div>
    }
    .into_any()
}

/// What to be careful of, and what the amounts are rounded to.
pub fn cautions(state: AppState, card: &Card) -> AnyView {
    let said = |caution: &_| state.book.with(|book| counter::counter_caution(caution, book));
    let said = card.cautions.iter().filter_map(said).map(|sentence| view! { <p>{sentence}</p> });
    let rounded = state.book.with(|book| counter::rounded(card, book.settings(), &state.speaker.get()));
    view! {
        <div class="cautions">{said.collect_view()}</div>
        <p class="hollow">{rounded}</p>
    }
    .into_any()
}
