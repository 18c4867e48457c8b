//! Each drink in each size against a price: yes or no, what it has to spare or lacks, and what to change.

use leptos::prelude::*;

use super::Answer;
use crate::app::route::Route;
use crate::book::{Key, OfferId};
use crate::foundation::measure::Money;
use crate::say;
use crate::sizes::decision::UnderRow;
use crate::sizes::price_point::at_point;
use crate::ui::live::live;
use crate::ui::parts::{Says, says_shape};
use crate::ui::state::AppState;
use crate::words::{self, price_points};
use crate::working::{AtPrice, OfOffer, OfPrice, Shown};

/// Each drink in each size.
#[component]
pub fn Drinks(answer: RwSignal<Option<Answer>>) -> impl IntoView {
    let state = AppState::here();
    let list = live(move || {
        answer.with(|answer| {
            let Some(Answer { menu, below, .. }) = answer else { return ().into_any() };
            let rows = below.rows.iter().map(|row| drink(state, *menu, row)).collect_view();
            let never = below.never.iter().map(|offer| {
                let name = state.book.with(|book| book.name(Key::Offer(*offer)));
                view! { <li class="trouble">{say!(decide::no_price_is_enough, drink = name)}</li> }
            });
            let unknown = below.unknown.iter().map(|(offer, why)| {
                let (name, reason) =
                    state.book.with(|book| (book.name(Key::Offer(*offer)), words::offer_error(why, book)));
                view! { <li class="trouble">{say!(decide::named_reason, name = name, reason = reason)}</li> }
            });
            view! { <ul class="under-price">{rows} {never.collect_view()} {unknown.collect_view()}</ul> }.into_any()
        })
    });
    view! { {list} }
}

/// One drink in one size; what it would have to change stands behind its fold.
fn drink(state: AppState, menu: Money, row: &UnderRow) -> AnyView {
    let id = row.offer;
    let (name, spare) = state.book.with(|book| {
        let speaker = &state.speaker.get();
        (book.name(Key::Drink(id.drink)), price_points::spare(row, speaker))
    });
    let size = state.book.with(|book| book.name(Key::Container(id.container)));
    let open = RwSignal::new(false);
    let says = if row.can { Says::Yes } else { Says::No };
    let detail = live(move || if open.get() { details(state, id, menu) } else { ().into_any() });
    view! {
        <li>
            <details class="under" on:toggle=move |_| open.set(true)>
                <summary>
                    {says_shape(says)}
                    <span class="under-name"><span>{name}</span> <span class="row-about">{size}</span></span>
                    <span class="under-spare">{spare}</span>
                </summary>
                {detail}
            </details>
        </li>
    }
    .into_any()
}

/// What the ingredients may cost, and what to give up where they cost more.
fn details(state: AppState, id: OfferId, menu: Money) -> AnyView {
    let sold = state.book.with(|book| book.offer(id).is_some());
    let at = match state.book.with(|book| at_point(book, id, menu)) {
        Ok(at) => at,
        Err(error) => {
            return view! { <p class="trouble">{state.book.with(|book| words::offer_error(&error, book))}</p> }
                .into_any();
        }
    };
    let said = state.book.with(|book| price_points::give_up(&at, book, &state.speaker.get()));
    let said = said.into_iter().map(|sentence| view! { <p>{sentence}</p> }).collect_view();
    let speaker = state.speaker.get();
    let working = |of| sold.then_some(Shown::Offer(id, of));
    let may = working(OfOffer::At(AtPrice::Point(menu), OfPrice::IngredientsMayCost));
    let now = working(OfOffer::Part(crate::book::Part::Ingredients));
    let (limit, cost) =
        (price_points::down_to_cent(at.ceiling.ingredients, &speaker), price_points::up(at.ingredients, &speaker));
    let list = move || {
        vec![
            (say!(decide::ingredient_limit).to_string(), limit.clone(), may),
            (say!(decide::ingredients_now).to_string(), cost.clone(), now),
        ]
    };
    let link = sold.then(|| {
        view! {
            <p>
                <a href=Route::Offer(id).address()>{say!(decide::open_drink)}</a>
            </p>
        }
    });
    view! {
        <dl class="figures">{crate::ui::parts::figures(list)}</dl>
        {said}
        {link}
    }
    .into_any()
}
