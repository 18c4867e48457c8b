//! Recipe cards on paper: amounts in the order of adding and how full to pour. No prices.

use std::sync::Arc;

use leptos::prelude::*;

use super::frame::{Frame, Leaf};
use crate::book::{Book, Container, Drink, DrinkId, Key, OfferId, Scope};
use crate::fill::{Fill, Scaled, ScaledLine, fill, fill_line, scale};
use crate::label::{Allergens, Caution, allergens_of};
use crate::ledger::Trouble;
use crate::ui::fields::Choice;
use crate::ui::live::{live, text};
use crate::ui::order;
use crate::ui::places::sizes::asked;
use crate::ui::route::{Route, scope_from_text, scope_text};
use crate::ui::state::AppState;
use crate::words;

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
            label="Cards of"
            options=scopes
            value=text(move || scope_text(scope.get()))
            choose=choose_scope
        />
        <Choice
            label="Cards on a page"
            options=Signal::stored(layouts)
            value=text(move || on_a_page.get().to_string())
            choose=choose_layout
        />
    };
    let papers = live(move || papers(state, scope.get(), on_a_page.get()));
    view! {
        <Frame heading="Recipe cards" back=Route::Counter name="Counter" choices=choices.into_any()>
            {papers}
        </Frame>
    }
}

fn papers(state: AppState, scope: Scope, on_a_page: usize) -> AnyView {
    let offers = state.book.with(|book| offers(book, scope));
    if offers.is_empty() {
        return view! {
            <p class="hollow">"No cards: no drink here is sold in any size yet. Add sizes to a drink in Drinks."</p>
        }
        .into_any();
    }
    let class = ON_A_PAGE.iter().find(|(count, _)| *count == on_a_page).map_or("", |(_, class)| class);
    let caution = state.book.with(|book| words::caution(Caution::AllergensAsInTheBook, book));
    let paper = |some: &[OfferId]| {
        let cards = some.iter().map(|id| card(state, *id)).collect_view();
        view! {
            <Leaf title="Recipe cards" foot=vec![caution.clone()]>
                <div class=class>{cards}</div>
            </Leaf>
        }
    };
    offers.chunks(on_a_page.max(1)).map(paper).collect_view().into_any()
}

/// The drinks of a part of the menu by name, each in its sizes, smallest first.
fn offers(book: &Book, scope: Scope) -> Vec<OfferId> {
    let drink = |key| if let Key::Drink(id) = key { Some(id) } else { None };
    let offer = |key| if let Key::Offer(id) = key { Some(id) } else { None };
    let drinks = order::sold_drinks(book).into_iter().filter_map(drink);
    let drinks = drinks.filter(|id: &DrinkId| book.belongs(*id, scope));
    drinks.flat_map(|id| order::offers(book, id)).filter_map(offer).collect()
}

fn card(state: AppState, id: OfferId) -> AnyView {
    let found = state.book.with(|book| {
        let drink = book.drink(id.drink)?.clone();
        let container = book.container(id.container)?.clone();
        let made = recipe(book, &drink, &container).map_err(|trouble| words::trouble(&trouble, book));
        let allergens = allergens_of(book, &drink);
        Some((drink, container, made, words::allergens(&allergens, book), allergens))
    });
    let Some((drink, container, made, contains, allergens)) = found else { return ().into_any() };
    let recipe = match made {
        Ok((fill, scaled)) => made_of(state, &drink, &container, &fill, &scaled, &allergens),
        Err(sentence) => view! { <p>{sentence}</p> }.into_any(),
    };
    view! {
        <section class="paper-card paper-whole">
            <h2>{drink.name} " " <span class="soft">{container.name}</span></h2>
            {recipe}
            <p class="paper-caution">{contains}</p>
        </section>
    }
    .into_any()
}

/// How a drink is made in a container, which takes no price of anything.
fn recipe(book: &Book, drink: &Drink, container: &Container) -> Result<(Fill, Scaled), Trouble> {
    let fill = fill(container)?;
    Ok((fill, scale(book, drink, fill.volume)?))
}

fn made_of(
    state: AppState,
    drink: &Drink,
    container: &Container,
    fill: &Fill,
    scaled: &Scaled,
    allergens: &Allergens,
) -> AnyView {
    let line = |(step, line): (usize, &ScaledLine)| {
        let name = state.book.with(|book| book.name(Key::Ingredient(line.ingredient)));
        let written = drink.lines.iter().find(|it| it.id == line.line).map(|it| it.amount.unit);
        let stage = line.ice.map_or(words::stage(line.stage), |ice| words::ice_place(ice.place));
        view! {
            <li>
                {format!("{step}. ")} <strong>{state.counter_amount(line.to_use, written)}</strong>
                <span>{name} " " <span class="soft">{stage}</span></span>
            </li>
        }
    };
    let below_rim = fill_line(container).ok().flatten().map(|line| state.length(line.below_rim));
    let fill_to = words::fill_to(&state.volume(fill.volume), below_rim.as_deref(), &state.volume(fill.headspace));
    let untreated = Caution::of(drink, fill, allergens).contains(&Caution::UntreatedJuice);
    view! {
        <ol>{(1..).zip(&scaled.lines).map(line).collect_view()}</ol>
        <p class="paper-fill">{fill_to}</p>
        {untreated.then(|| view! { <p class="paper-caution">{words::UNTREATED_AT_THE_COUNTER}</p> })}
    }
    .into_any()
}
