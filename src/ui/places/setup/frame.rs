//! The frame of the way to the first price: which step it is, the step, and beside it the drink so far.

use leptos::prelude::*;

use super::{amounts, ingredients, price, size};
use crate::app::first_price::{amount_of, size as size_of};
use crate::app::route::{FirstPrice, Route, Step};
use crate::book::{Book, IngredientId, Key};
use crate::foundation::measure::Exact;
use crate::say;
use crate::ui::live::{live, text};
use crate::ui::order;
use crate::ui::parts::Back;
use crate::ui::state::AppState;
use crate::words;

/// The steps that lead to the price.
const TO_THE_PRICE: [Step; 4] = [Step::Ingredients, Step::Size, Step::Amounts, Step::Price];

/// One step on the way to the first price of a drink.
pub fn first_price(first: FirstPrice) -> AnyView {
    let (before, name) = before(first);
    let (heading, step) = match first.step {
        Step::Ingredients => (say!(setup::what_goes_in), ingredients::ingredients(first)),
        Step::Size => (say!(setup::which_size), size::size(first)),
        Step::Amounts => (say!(setup::how_much), amounts::amounts(first)),
        Step::Price => (say!(setup::what_to_charge), price::price(first)),
        Step::AnotherSize => (say!(setup::another_size), size::another(first)),
    };
    view! {
        <Back to=before name />
        <p class="soft step-of">{step_of(first.step)}</p>
        <h1>{heading}</h1>
        <div class="panes-two first-price">
            <div class="pane">{step}</div>
            <aside class="pane so-far">{so_far(first)}</aside>
        </div>
    }
    .into_any()
}

/// Where Back leads, and what is there.
fn before(first: FirstPrice) -> (Route, &'static str) {
    let at = |step| Route::FirstPrice(first.at(step));
    match first.step {
        Step::Ingredients => (Route::Drinks, say!(first::drinks)),
        Step::Size => (at(Step::Ingredients), say!(setup::what_goes_in)),
        Step::Amounts => (at(Step::Size), say!(setup::which_size)),
        Step::Price => (at(Step::Amounts), say!(setup::how_much)),
        Step::AnotherSize => (at(Step::Price), say!(setup::what_to_charge)),
    }
}

/// "Step 1 of 4", beside the name of the way.
fn step_of(step: Step) -> Signal<String> {
    let state = AppState::here();
    text(move || {
        let number = |place: usize| state.number(Exact::new(i64::try_from(place).unwrap_or(0), 0));
        let name = say!(first::first_price_steps);
        match TO_THE_PRICE.iter().position(|it| *it == step) {
            Some(place) => {
                let (step, steps) = (number(place.saturating_add(1)), number(TO_THE_PRICE.len()));
                [name, &say!(setup::step_of, step = step, steps = steps)].join(" · ")
            }
            None => name.to_string(),
        }
    })
}

/// The ingredients that may go in: all of the book, by name.
pub fn ingredients_of(book: &Book) -> Vec<IngredientId> {
    let id = |key| if let Key::Ingredient(id) = key { Some(id) } else { None };
    order::ingredients(book).into_iter().filter_map(id).collect()
}

/// What was said on the way: the size, each ingredient with its case and its amount, and the suggested price.
fn so_far(first: FirstPrice) -> AnyView {
    let state = AppState::here();
    let drink = first.drink;
    let size = text(move || {
        let container = |book: &Book| Some(book.name(Key::Container(size_of(book, drink)?.container)));
        state.book.with(container).unwrap_or_default()
    });
    let listed = live(move || {
        let row = |id: IngredientId| {
            let (name, case, amount) = state.book.with(|book| {
                let case = book.ingredient(id).and_then(|it| it.packs.first().cloned());
                (book.name(Key::Ingredient(id)), case, amount_of(book, drink, id))
            });
            let case = case.map(|pack| {
                let contents = words::quotes::pack(&pack, &state.speaker.get());
                say!(goods::pack_bought_now, pack = contents, price = state.money(pack.price_now()))
            });
            let amount = amount.map(|amount| state.amount(amount)).unwrap_or_default();
            view! {
                <li>
                    <strong>{name}</strong>
                    <span>{amount}</span>
                    <span class="soft">{case}</span>
                </li>
            }
        };
        let ids = state.book.with(ingredients_of);
        if ids.is_empty() {
            return view! { <li class="hollow">{say!(setup::no_ingredient_yet)}</li> }.into_any();
        }
        ids.into_iter().map(row).collect_view().into_any()
    });
    let suggested = text(move || {
        let suggestion = state
            .book
            .with(|book| size_of(book, drink))
            .and_then(|id| state.priced(id, |priced| priced.suggestion.ok()));
        suggestion.map(|it| state.money(it.menu)).unwrap_or_default()
    });
    view! {
        <section class="section">
            <h2>{say!(setup::drink_so_far)}</h2>
            <ul class="so-far-list">{listed}</ul>
            <dl class="answer-figures">
                <div>
                    <dt>{say!(common::size)}</dt>
                    <dd>{size}</dd>
                </div>
                <div>
                    <dt>{say!(common::suggested_price)}</dt>
                    <dd>{suggested}</dd>
                </div>
            </dl>
        </section>
    }
    .into_any()
}

/// The way on from a step, and the way out: all that was typed is in the book.
pub fn onward(to: Route, name: &'static str) -> AnyView {
    view! {
        <p class="actions">
            <a class="main" href=to.address()>
                {name}
            </a>
            <a class="quiet" href=Route::Drinks.address()>
                {say!(setup::finish_later)}
            </a>
        </p>
    }
    .into_any()
}
