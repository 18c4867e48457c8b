//! What a card says: what to take, where to fill to, what to be careful of.

use leptos::prelude::*;

use crate::book::{Key, OfferId};
use crate::drink::make::{Card, Taken};
use crate::foundation::measure::Exact;
use crate::say;
use crate::ui::glass::{glass, layer_of, layers};
use crate::ui::state::AppState;
use crate::words::counter;

/// What to take, and where to fill to.
pub fn making(state: AppState, id: OfferId, card: Card, drinks: Exact) -> AnyView {
    let speaker = &state.speaker.get();
    let step = |(place, taken): (usize, &Taken)| {
        let name = state.book.with(|book| book.name(Key::Ingredient(taken.line.ingredient)));
        let how = counter::how_added(&taken.line, speaker);
        let amount =
            if taken.amount.number.is_zero() { say!(common::none).to_string() } else { speaker.on_card(taken.amount) };
        let swatch = format!("recipe-layer {}", layer_of(&card.scaled, place).class());
        view! {
            <li>
                <span class=swatch aria-hidden="true"></span>
                <span class="recipe-amount">{amount}</span>
                <span class="recipe-ingredient">
                    {name} " " <span class="soft">{how}</span>
                    <span class="recipe-note">{counter::of_the_amount(taken, speaker)}</span>
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
    let rounded = state.book.with(|book| counter::rounded_to(book.settings(), speaker));
    let missed = card.missed.map(|missed| counter::missed_fill(missed, speaker)).unwrap_or_default();
    view! {
        {several}
        <div class="recipe-sides">
            <div>
                <ol class="recipe">{card.take.iter().enumerate().map(step).collect_view()}</ol>
                <p class="hollow">{rounded} " " {missed}</p>
            </div>
            <div class="recipe-fill">
                {picture}
                <p>
                    <span class="recipe-amount">{volume}</span>
                    <span class="recipe-ingredient">{counter::fill_to(&card, speaker)}</span>
                </p>
            </div>
        </div>
    }
    .into_any()
}

/// What to be careful of.
pub fn cautions(state: AppState, card: &Card) -> AnyView {
    let said = |caution: &_| state.book.with(|book| counter::counter_caution(caution, book));
    let said = card.cautions.iter().filter_map(said).map(|sentence| view! { <p>{sentence}</p> });
    view! { <div class="cautions">{said.collect_view()}</div> }.into_any()
}
