//! What to charge: the suggested price, one press to take it, and what the profit does not count yet.

use leptos::prelude::*;

use super::next::next;
use crate::app::first_price::size as size_of;
use crate::app::route::{FirstPrice, Route, Step};
use crate::book::{Book, Drink, Edit, Goods, IngredientId, Key, LineId, OfferId, Record};
use crate::drink::label::Law;
use crate::drink::price::{NotCounted, Suggestion, not_counted};
use crate::foundation::jump::Kind;
use crate::say;
use crate::ui::fields::{self, Entry, Example, Hangs, asks};
use crate::ui::live::{live, parts, press, text, trouble, when};
use crate::ui::places::buying::first_case;
use crate::ui::places::drinks::{Lacks, answer, lacks};
use crate::ui::section;
use crate::ui::state::AppState;
use crate::words;

/// The step in which the drink gets its price.
pub fn price(first: FirstPrice) -> AnyView {
    let state = AppState::here();
    let offer = Memo::new(move |_| state.book.with(|book| size_of(book, first.drink)));
    let to_size = move || {
        view! {
            <p>
                <a class="main" href=Route::FirstPrice(first.at(Step::Size)).address()>
                    {say!(setup::choose_size_first)}
                </a>
            </p>
        }
        .into_any()
    };
    live(move || match offer.get() {
        Some(id) => untrack(|| of_offer(first, id)),
        None => to_size(),
    })
}

fn of_offer(first: FirstPrice, id: OfferId) -> AnyView {
    let state = AppState::here();
    let hangs = Hangs::new();
    let asked = move || state.book.with(|book| book.offer(id)?.price);
    let value = text(move || asked().map(|price| state.plain_money(price)).unwrap_or_default());
    let commit = fields::optional_money(say!(drinks::menu_price), Example::MenuPrice, move |_, price| {
        Some(Edit::SetPrice { offer: id, price })
    });
    let has_price = move || asked().is_some();
    view! {
        {trouble(move || state.stuck(id))}
        {lacking(state, id, hangs)}
        {suggested(state, id)}
        {when(move || !has_price(), move || not_in_it(state, id))}
        <div class="first-menu-price">
            <Entry
                label=say!(drinks::menu_price)
                asks=asks(Kind::Price, Key::Offer(id), "price")
                large=true
                hangs
                example=say!(common::none_yet)
                value
                commit
            />
        </div>
        {hangs
            .answer(move || {
                when(
                    has_price,
                    move || {
                        view! {
                            <section class="section first-answer">{answer(state, id)} {live(move || lacks(state, id))}</section>
                        }
                            .into_any()
                    },
                )
            })}
        {when(has_price, move || next(first, id))}
        {menu_name(state, id)}
    }
    .into_any()
}

/// What the suggested price does not count yet, in one line. A wage was asked for before, and no time: there is a way
/// to it.
fn not_in_it(state: AppState, id: OfferId) -> AnyView {
    let lacks = Memo::new(move |_| {
        let lacks = state.book.with(|book| {
            let offer = book.offer(id)?;
            state.priced(id, |priced| Some(not_counted(book, offer, priced)))
        });
        lacks.unwrap_or_default()
    });
    let said = text(move || match lacks.get() {
        none if none.is_empty() => String::new(),
        some => words::not_in_price(&some, state.book.with(|book| Law::of(book.settings()))),
    });
    let time = move || {
        let address = Route::Drink(id.drink).address();
        let wants = section::wants(address.clone(), say!(drinks::making));
        view! { <p class="soft"><a href=address on:click=wants>{say!(drinks::no_time_yet)}</a></p> }.into_any()
    };
    view! {
        <p class="soft">{said}</p>
        {when(move || lacks.with(|lacks| lacks.contains(&NotCounted::Time)), time)}
    }
    .into_any()
}

/// What the price lacks is asked for right there: cases without a price, and what a line needs. A field that is being
/// typed into stays.
fn lacking(state: AppState, id: OfferId, hangs: Hangs) -> AnyView {
    let lines = move |book: &Book| book.drink(id.drink).map(|drink| drink.lines.clone()).unwrap_or_default();
    let unpriced = Memo::new(move |before: Option<&Vec<IngredientId>>| {
        let mut asked = before.cloned().unwrap_or_default();
        state.book.with(|book| {
            for line in lines(book) {
                if book.packs(Goods::Ingredient(line.ingredient)).is_empty() && !asked.contains(&line.ingredient) {
                    asked.push(line.ingredient);
                }
            }
        });
        asked
    });
    let unpriced = move || unpriced.get().into_iter().map(IngredientId::number).collect();
    let case = move |number| {
        let ingredient = IngredientId::from_random(number);
        let name = text(move || state.book.with(|book| book.name(Key::Ingredient(ingredient))));
        view! {
            <li class="first-ingredient">
                <h2>{name}</h2>
                {first_case(Goods::Ingredient(ingredient), hangs, false)}
            </li>
        }
        .into_any()
    };
    let all = move || state.book.with(|book| lines(book).into_iter().map(|line| line.id.number()).collect());
    let line = move |number| view! { <Lacks drink=id.drink line=LineId::from_random(number) hangs /> }.into_any();
    view! {
        <ul class="first-ingredients">{parts(unpriced, case)}</ul>
        {parts(all, line)}
    }
    .into_any()
}

/// The suggested price in large figures, and the press that takes it.
fn suggested(state: AppState, id: OfferId) -> AnyView {
    let suggestion = move || state.priced(id, |it| it.suggestion.ok().map(|suggestion| (suggestion, it.terms.target)));
    let refused = move || state.priced(id, |it| it.suggestion.err()).map(|error| words::price_error(&error));
    let menu = text(move || suggestion().map(|(it, _)| state.money(it.menu)).unwrap_or_default());
    let reaches = text(move || {
        let said = |(it, target): (Suggestion, _)| {
            say!(setup::suggested_for_target, margin = state.percent(it.margin), target = state.percent(target))
        };
        suggestion().map(said).unwrap_or_default()
    });
    let set = text(move || say!(drinks::set_price, price = menu.get()));
    let take = move || {
        if let Some((suggestion, _)) = untrack(suggestion) {
            // A suggested price is above zero, so it is not refused.
            let step = untrack(|| say!(drinks::set_price, price = state.money(suggestion.menu)));
            let _ = state.apply(&step, Edit::SetPrice { offer: id, price: Some(suggestion.menu) });
        }
    };
    let is_asked = move || {
        let asked = state.book.with(|book| book.offer(id)?.price);
        asked.is_some() && asked == suggestion().map(|(it, _)| it.menu)
    };
    let offered = move || {
        let button = move || {
            view! {
                <p>
                    <button class="main" on:click=press(take)>
                        {set}
                    </button>
                </p>
            }
            .into_any()
        };
        view! {
            <dl class="suggested-large">
                <dt>{say!(common::suggested_price)}</dt>
                <dd>{menu}</dd>
            </dl>
            {when(
                move || !is_asked(),
                move || view! { <p class="soft">{reaches}</p> {button()} }.into_any(),
            )}
        }
        .into_any()
    };
    view! { {trouble(refused)} {when(move || suggestion().is_some(), offered)} }.into_any()
}

/// What customers read on the menu: the names of what goes in, until somebody names it.
fn menu_name(state: AppState, id: OfferId) -> AnyView {
    let value = text(move || state.book.with(|book| book.name(Key::Drink(id.drink))));
    let commit = fields::text(say!(drinks::drink_name), move |book, name| {
        let drink = book.drink(id.drink)?.clone();
        Some(Edit::Put(Record::Drink(Drink { name, ..drink })))
    });
    view! {
        <Entry label=say!(drinks::drink_name) letters=true note=say!(setup::for_customers) value commit />
    }
    .into_any()
}
