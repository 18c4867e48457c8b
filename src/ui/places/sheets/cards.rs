//! Recipe cards on paper: amounts in the order of adding and how full to pour. No prices.

use std::sync::Arc;

use leptos::prelude::*;

use super::frame::{Frame, Leaf};
use crate::app::route::{Place, Route, scope_from_text, scope_text};
use crate::book::{Book, Key, OfferId, Scope};
use crate::drink::label::{Caution, Juice, allergens_of};
use crate::drink::make::{Card, Taken, card};
use crate::foundation::measure::Exact;
use crate::say;
use crate::ui::fields::Choice;
use crate::ui::live::{live, text};
use crate::ui::order;
use crate::ui::places::sizes::asked;
use crate::ui::state::AppState;
use crate::words::{self, counter};

/// Cards on a page, and the class that lays so many out.
const ON_A_PAGE: [(usize, &str); 2] = [(4, "paper-cards paper-cards-4"), (1, "paper-cards")];

/// Recipe cards on paper.
#[component]
pub fn Cards() -> impl IntoView {
    let state = AppState::here();
    let scope = RwSignal::new(Scope::Menu);
    let on_a_page = RwSignal::new(ON_A_PAGE[0].0);
    let scopes = Memo::new(move |_| state.book.with(asked::all_scope_options));
    let choose_scope = Arc::new(move |chosen: &str| {
        if let Some(chosen) = scope_from_text(chosen) {
            scope.set(chosen);
        }
        Ok(())
    });
    let choose_layout = Arc::new(move |chosen: &str| {
        if let Ok(chosen) = chosen.parse() {
            on_a_page.set(chosen);
        }
        Ok(())
    });
    let layouts = ON_A_PAGE.map(|(count, _)| (count.to_string(), count.to_string())).to_vec();
    let choices = view! {
        <Choice
            label=say!(counter::cards_for)
            options=scopes
            value=text(move || scope_text(scope.get()))
            choose=choose_scope
        />
        <Choice
            label=say!(counter::cards_per_page)
            options=Signal::stored(layouts)
            value=text(move || on_a_page.get().to_string())
            choose=choose_layout
        />
    };
    let papers = live(move || papers(state, scope.get(), on_a_page.get()));
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

fn papers(state: AppState, scope: Scope, on_a_page: usize) -> AnyView {
    let offers = state.book.with(|book| offers(book, scope));
    if offers.is_empty() {
        return view! {
            <p class="hollow">{say!(counter::no_cards_to_print)}</p>
        }
        .into_any();
    }
    let class = ON_A_PAGE.iter().find(|(count, _)| *count == on_a_page).map_or("", |(_, class)| class);
    let paper = |some: &[OfferId]| {
        let foot = state.book.with(|book| foot(book, some));
        let cards = some.iter().map(|id| one_card(state, *id)).collect_view();
        view! {
            <Leaf title=say!(common::recipe_cards) foot=vec![foot]>
                <div class=class>{cards}</div>
            </Leaf>
        }
    };
    offers.chunks(on_a_page.max(1)).map(paper).collect_view().into_any()
}

/// What is said once on a paper of its cards: who is at risk where untreated juice is among them,
/// and how far to trust the allergens.
fn foot(book: &Book, some: &[OfferId]) -> String {
    let untreated = |id: &OfferId| book.drink(id.drink).is_some_and(|it| !Juice::of(book, it).untreated.is_empty());
    let at_risk = some.iter().any(untreated).then_some(Caution::AtRisk(None));
    let said = at_risk.into_iter().chain([Caution::AllergensAsInTheBook]);
    said.map(|caution| words::caution(&caution, book)).collect::<Vec<_>>().join(" ")
}

/// The sizes of a part of the menu, in the order of the cards at the counter.
fn offers(book: &Book, scope: Scope) -> Vec<OfferId> {
    order::offers_on_cards(book).filter(|id| book.belongs(id.drink, scope)).collect()
}

fn one_card(state: AppState, id: OfferId) -> AnyView {
    let (drink, container, contains, kept, made) = state.book.with(|book| {
        let contains = book.drink(id.drink).map(|drink| words::allergens(&allergens_of(book, drink), book));
        let kept = book.drink(id.drink).map(|drink| words::keeping(drink, None));
        let made = card(book, id, Exact::ONE).map_err(|error| words::offer_error(&error, book));
        (book.name(Key::Drink(id.drink)), book.name(Key::Container(id.container)), contains, kept, made)
    });
    // What is said of allergens, and who is at risk, stand at the foot of the page, once.
    let at_foot = |caution: &Caution| matches!(caution, Caution::AllergensAsInTheBook | Caution::AtRisk(_));
    let cautions: Vec<String> = made.as_ref().map_or_else(
        |_| Vec::new(),
        |card| {
            let said = card.cautions.iter().filter(|caution| !at_foot(caution));
            said.filter_map(|caution| state.book.with(|book| counter::counter_caution(caution, book))).collect()
        },
    );
    let recipe = match made {
        Ok(card) => recipe(state, &card),
        Err(sentence) => view! { <p>{sentence}</p> }.into_any(),
    };
    // In one paragraph: four cards go on a paper.
    let careful: Vec<String> = cautions.into_iter().chain(contains).chain(kept).filter(|it| !it.is_empty()).collect();
    view! {
        <section class="paper-card paper-whole">
            <h2>{drink} " " <span class="soft">{container}</span></h2>
            {recipe}
            <p class="paper-caution">{careful.join(" ")}</p>
        </section>
    }
    .into_any()
}

fn recipe(state: AppState, card: &Card) -> AnyView {
    let speaker = &state.speaker.get();
    let line = |(step, taken): (usize, &Taken)| {
        let name = state.book.with(|book| book.name(Key::Ingredient(taken.line.ingredient)));
        let how = counter::how_added(&taken.line, speaker);
        let besides = match counter::of_the_amount(taken, speaker) {
            said if said.is_empty() => how,
            said => say!(counter::prep_and_note, prep = how, note = said),
        };
        view! {
            <li>
                {format!("{step}. ")} <strong>{speaker.on_card(taken.amount)}</strong>
                <span>{name} " " <span class="soft">{besides}</span></span>
            </li>
        }
    };
    let missed = card.missed.map(|missed| counter::missed_fill(missed, speaker));
    view! {
        <ol>{(1..).zip(&card.take).map(line).collect_view()}</ol>
        <p class="paper-fill">{counter::fill_on_paper(card, speaker)} " " {missed}</p>
    }
    .into_any()
}
