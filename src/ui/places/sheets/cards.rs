//! Recipe cards on paper, to be read from a metre away: a page for each drink, its sizes side by side, amounts
//! in the order of adding and how full to pour. No prices.

use std::sync::Arc;

use leptos::prelude::*;

use super::frame::{Frame, Leaf, bodies};
use crate::app::route::{Place, Route, scope_from_text, scope_text};
use crate::book::{Book, DrinkId, Key, OfferId, Scope};
use crate::drink::label::{Caution, allergens_of};
use crate::drink::make::{Card, Taken, card};
use crate::foundation::measure::Exact;
use crate::say;
use crate::ui::fields::Choice;
use crate::ui::live::{live, text};
use crate::ui::order;
use crate::ui::places::sizes::asked;
use crate::ui::state::AppState;
use crate::words::{self, counter};

/// Sizes that stand side by side on a paper, in letters large enough.
const SIDE_BY_SIDE: usize = 4;

/// Recipe cards on paper.
#[component]
pub fn Cards() -> impl IntoView {
    let state = AppState::here();
    let scope = RwSignal::new(Scope::Menu);
    let scopes = Memo::new(move |_| state.book.with(asked::all_scope_options));
    let choose_scope = Arc::new(move |chosen: &str| {
        if let Some(chosen) = scope_from_text(chosen) {
            scope.set(chosen);
        }
        Ok(())
    });
    let choices = view! {
        <Choice
            label=say!(counter::cards_for)
            options=scopes
            value=text(move || scope_text(scope.get()))
            choose=choose_scope
        />
    };
    let papers = live(move || papers(state, scope.get()));
    view! {
        <Frame
            heading=say!(common::recipe_cards)
            back=Route::Counter
            name=Place::Counter.name()
            choices=choices.into_any()
        >
            {papers}
        </Frame>
    }
}

fn papers(state: AppState, scope: Scope) -> AnyView {
    let drinks = state.book.with(|book| {
        let id = |key| if let Key::Drink(id) = key { Some(id) } else { None };
        let sold = order::sold_drinks(book).into_iter().filter_map(id);
        sold.filter(|id| book.belongs(*id, scope)).collect::<Vec<DrinkId>>()
    });
    if drinks.is_empty() {
        return view! {
            <p class="hollow">{say!(counter::no_cards_to_print)}</p>
        }
        .into_any();
    }
    drinks.into_iter().map(|drink| paper(state, drink)).collect_view().into_any()
}

/// A size of a drink, and what its card says.
struct Size {
    name: String,
    made: Result<Card, String>,
}

/// The paper of a drink.
fn paper(state: AppState, id: DrinkId) -> AnyView {
    let size = |book: &Book, key: Key| {
        let Key::Offer(offer) = key else { return None };
        let name = book.name(Key::Container(offer.container));
        Some(Size { name, made: made(book, offer) })
    };
    let (name, sizes, careful) = state.book.with(|book| {
        let sizes: Vec<Size> = order::offers(book, id).into_iter().filter_map(|key| size(book, key)).collect();
        let careful = careful(state, book, id, &sizes);
        (book.name(Key::Drink(id)), sizes, careful)
    });
    let foot = state.book.with(|book| words::caution(&Caution::AllergensAsInTheBook, book));
    let tables = sizes.chunks(SIDE_BY_SIDE).map(|some| table(state, some)).collect_view();
    let careful = careful.into_iter().map(|sentence| view! { <p class="paper-caution">{sentence}</p> });
    view! {
        <Leaf title=say!(common::recipe_cards) foot=vec![foot]>
            <section class="paper-card">
                <h2>{name}</h2>
                {tables}
                {careful.collect_view()}
            </section>
        </Leaf>
    }
    .into_any()
}

fn made(book: &Book, offer: OfferId) -> Result<Card, String> {
    card(book, offer, Exact::ONE).map_err(|error| words::offer_error(&error, book))
}

/// What to be careful of with a drink: allergens first. What holds of some sizes only is said with their names.
fn careful(state: AppState, book: &Book, id: DrinkId, sizes: &[Size]) -> Vec<String> {
    let mut sentences: Vec<String> = Vec::new();
    if let Some(drink) = book.drink(id) {
        sentences.push(words::allergens(&allergens_of(book, drink), book));
        sentences.push(words::keeping(drink, None));
    }
    let speaker = &state.speaker.get();
    for size in sizes {
        let Ok(card) = &size.made else { continue };
        let at_foot = |caution: &Caution| *caution == Caution::AllergensAsInTheBook;
        for caution in card.cautions.iter().filter(|caution| !at_foot(caution)) {
            let Some(said) = counter::counter_caution(caution, book) else { continue };
            sentences.push(match caution {
                Caution::FillShortOfDeclared(_) => say!(counter::size_says, size = size.name.clone(), said = said),
                _ => said,
            });
        }
        let loss = counter::stays_behind(card, speaker);
        if !loss.is_empty() {
            sentences.push(say!(counter::size_says, size = size.name.clone(), said = loss));
        }
        sentences.push(counter::takes_up(&card.scaled, book));
        let missed = card.missed().map(|missed| counter::missed_fill(missed, speaker));
        sentences.extend(missed.map(|said| say!(counter::size_says, size = size.name.clone(), said = said)));
    }
    let mut once: Vec<String> = Vec::new();
    for sentence in sentences {
        if !sentence.is_empty() && !once.contains(&sentence) {
            once.push(sentence);
        }
    }
    once
}

/// Sizes side by side: a row for each ingredient in the order of adding, and where to fill to.
fn table(state: AppState, sizes: &[Size]) -> AnyView {
    let speaker = &state.speaker.get();
    let lines = sizes.iter().find_map(|size| size.made.as_ref().ok()).map(|card| card.take.clone());
    let head = |size: &Size| view! { <th class="paper-figure" scope="col">{size.name.clone()}</th> };
    let amount = |taken: Option<&Taken>| {
        let (number, unit) = taken.map(|taken| speaker.on_card(taken.amount)).unwrap_or_default();
        view! { <td class="paper-figure"><strong>{number}</strong> " " <small>{unit}</small></td> }
    };
    let beaten = sizes.iter().any(|size| size.made.as_ref().is_ok_and(|card| card.scaled.air.is_positive()));
    let row = |(place, taken): (usize, &Taken)| {
        let (name, how) =
            state.book.with(|book| (counter::taken(&taken.line, book), counter::how_added(&taken.line, beaten, book)));
        let cells = sizes.iter().map(|size| amount(size.made.as_ref().ok().and_then(|card| card.take.get(place))));
        view! {
            <tr class="paper-whole">
                <th scope="row">{format!("{}. ", place.saturating_add(1))} {name} " " <span class="soft">{how}</span></th>
                {cells.collect_view()}
            </tr>
        }
        .into_any()
    };
    let mut rows: Vec<AnyView> = lines.iter().flatten().enumerate().map(row).collect();
    let fill = |size: &Size| match &size.made {
        Ok(card) => {
            let below = card.fill_line.map(|line| say!(counter::below_rim, below = speaker.length(line.below_rim)));
            view! {
                <td class="paper-figure">
                    <b>{speaker.volume(card.fill.volume)}</b>
                    <span class="soft paper-below">{below}</span>
                </td>
            }
            .into_any()
        }
        Err(sentence) => view! { <td>{sentence.clone()}</td> }.into_any(),
    };
    let fill = view! {
        <tr class="paper-whole paper-fill">
            <th scope="row">{say!(counter::fill)}</th>
            {sizes.iter().map(fill).collect_view()}
        </tr>
    };
    rows.push(fill.into_any());
    view! {
        <table class="paper-table paper-recipe">
            <thead>
                <tr>
                    <th scope="col">{say!(counter::ingredient)}</th>
                    {sizes.iter().map(head).collect_view()}
                </tr>
            </thead>
            {bodies(rows)}
        </table>
    }
    .into_any()
}
