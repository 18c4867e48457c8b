//! What is useful next, once the drink has a price.

use leptos::prelude::*;

use crate::app::route::{FirstPrice, Route, Step};
use crate::book::{DrinkId, OfferId};
use crate::buying::figures_to_check::unchecked;
use crate::say;
use crate::ui::live::live;
use crate::ui::random::random;
use crate::ui::state::AppState;

/// The next two useful things, and the drink itself.
pub fn next(first: FirstPrice, id: OfferId) -> AnyView {
    let state = AppState::here();
    let new = Route::FirstPrice(FirstPrice::of(DrinkId::from_random(random())));
    let second = live(move || {
        match state.book.with(|book| unchecked(book).count()) {
        0 => view! { <a class="button" href=new.address()>{say!(setup::add_next_drink)}</a> }.into_any(),
        figures => {
            view! { <a class="button" href=Route::FiguresToCheck.address()>{say!(setup::check_figures, figures = figures)}</a> }
                .into_any()
        }
    }
    });
    view! {
        <section class="section what-next">
            <h2>{say!(setup::what_next)}</h2>
            <p class="actions">
                <a class="main" href=Route::FirstPrice(first.at(Step::AnotherSize)).address()>
                    {say!(setup::add_second_size)}
                </a>
                {second}
                <a class="quiet" href=Route::Offer(id).address()>
                    {say!(setup::open_drink)}
                </a>
            </p>
        </section>
    }
    .into_any()
}
