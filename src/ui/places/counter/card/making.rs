//! What a card says: what to take, where to fill to, what to be careful of.

use leptos::prelude::*;

use crate::book::OfferId;
use crate::drink::label::Caution;
use crate::drink::make::{Card, Taken};
use crate::foundation::measure::Exact;
use crate::say;
use crate::ui::glass::{Layer, glass, layer_of, layers};
use crate::ui::state::AppState;
use crate::words::counter;

/// What to take, and where to fill to; `allergens` stand beside it.
pub fn making(state: AppState, id: OfferId, card: Card, drinks: Exact, allergens: Signal<String>) -> AnyView {
    let speaker = &state.speaker.get();
    let several =
        (drinks != Exact::ONE).then(|| view! { <p class="recipe-for">{counter::for_drinks(drinks, speaker)}</p> });
    let loss = counter::stays_behind(&card, speaker);
    let takes_up = state.book.with(|book| counter::takes_up(&card.scaled, book));
    let takes_up = (!takes_up.is_empty()).then(|| view! { <p class="soft">{takes_up}</p> });
    let steps = card.take.iter().enumerate().map(|(place, taken)| step(state, &card, place, taken, drinks));
    view! {
        <div class="recipe-sides across">
            <div class="recipe-takes">
                {several}
                <ol class="recipe">{steps.collect_view()}</ol>
                <p class="soft">{loss}</p>
                {takes_up}
            </div>
            <div class="recipe-aside">
                <div class="recipe-fill">{filling(state, id, &card, drinks)}</div>
                <p class="allergens">{allergens}</p>
            </div>
            <div class="cautions">{cautions(state, &card)}</div>
        </div>
    }
    .into_any()
}

/// One thing to take.
fn step(state: AppState, card: &Card, place: usize, taken: &Taken, drinks: Exact) -> AnyView {
    let speaker = &state.speaker.get();
    let beaten = card.scaled.air.is_positive();
    let (name, how) =
        state.book.with(|book| (counter::taken(&taken.line, book), counter::how_added(&taken.line, beaten, book)));
    let nothing = || (say!(common::none).to_string(), "");
    let (number, unit) = if taken.amount.number.is_zero() { nothing() } else { speaker.on_card(taken.amount) };
    let swatch = format!("recipe-layer {}", layer_of(&card.scaled, place).class());
    view! {
        <li>
            <span class=swatch aria-hidden="true"></span>
            <span class="recipe-amount">{number} " " <small>{unit}</small></span>
            <span class="recipe-ingredient">
                {name} " " <span class="recipe-how">{how}</span> " "
                <span class="recipe-how">{counter::scoop(&taken.line, drinks, speaker)}</span> " "
                <span class="recipe-how">{counter::of_the_amount(taken)}</span>
            </span>
        </li>
    }
    .into_any()
}

/// The picture of a full one, and where its line is.
fn filling(state: AppState, id: OfferId, card: &Card, drinks: Exact) -> AnyView {
    let speaker = &state.speaker.get();
    let container = state.book.with(|book| book.container(id.container).cloned());
    let picture = container.map(|container| glass(&container, &card.fill, layers(&card.scaled)));
    let volume = state.volume(card.fill.volume);
    let volume = if drinks == Exact::ONE { volume } else { say!(counter::volume_each, volume = volume) };
    let air = counter::air(card, speaker);
    let air = (!air.is_empty()).then(|| {
        let swatch = format!("recipe-layer {}", Layer::Air.class());
        view! { <span class="recipe-air"><span class=swatch aria-hidden="true"></span> {air}</span> }
    });
    view! {
        {picture}
        <p class="recipe-line">
            <span class="recipe-amount">{volume}</span>
            <span>{counter::fill_to(card, speaker)}</span>
            {air}
        </p>
    }
    .into_any()
}

/// What to be careful of.
fn cautions(state: AppState, card: &Card) -> AnyView {
    let dangers = card.cautions.iter().filter(|caution| **caution != Caution::AllergensAsInTheBook);
    let said = |caution: &_| state.book.with(|book| counter::counter_caution(caution, book));
    let sentence = |sentence: String| {
        view! {
            <p>
                <svg viewBox="0 0 16 16" aria-hidden="true">
                    <path d="M8 1.5 15 14.5H1ZM8 6v4M8 12v.8" />
                </svg>
                <span>{sentence}</span>
            </p>
        }
    };
    dangers.filter_map(said).map(sentence).collect_view().into_any()
}

/// What the amounts are rounded to, and that allergens are as they were entered.
pub fn notes(state: AppState, card: &Card) -> AnyView {
    let entered = card.cautions.iter().filter(|caution| **caution == Caution::AllergensAsInTheBook);
    let said = |caution: &_| state.book.with(|book| counter::counter_caution(caution, book));
    let entered = entered.filter_map(said).map(|sentence| view! { <p class="soft">{sentence}</p> });
    let rounded = state.book.with(|book| counter::rounded(card, book.settings(), &state.speaker.get()));
    view! {
        {entered.collect_view()}
        <p class="soft">{rounded}</p>
    }
    .into_any()
}
