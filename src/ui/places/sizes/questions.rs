//! The front page of Sizes: the questions that an owner comes with.

use leptos::prelude::*;

use crate::app::route::Route;
use crate::book::Scope;
use crate::say;
use crate::ui::live::when;
use crate::ui::state::AppState;

/// A question, the words that stand under it, and the screen that answers it.
type Question = (&'static str, &'static str, Route);

/// Which sizes to sell.
fn choosing() -> [Question; 4] {
    [
        (say!(decide::side_by_side), say!(decide::side_by_side_about), Route::SideBySide(Scope::Menu)),
        (say!(decide::switch_sizes), say!(decide::switch_sizes_about), Route::Switching),
        (say!(decide::how_many_sizes), say!(decide::how_many_sizes_about), Route::HowMany),
        (say!(decide::price_limit), say!(decide::price_limit_about), Route::PricePoint),
    ]
}

/// What the owner knows and tries.
fn knowing() -> [Question; 4] {
    [
        (say!(sales::sales), say!(decide::sales_about), Route::Sales),
        (say!(decide::local_prices), say!(decide::local_prices_about), Route::SeenPrices),
        (say!(sales::trials), say!(decide::trials_about), Route::Trials),
        (say!(sales::scenarios), say!(decide::scenarios_about), Route::Scenarios),
    ]
}

/// The questions about sizes.
#[component]
pub fn Questions() -> impl IntoView {
    let row = |(name, about, to): Question| {
        view! {
            <li>
                <a class="row" href=to.address()>
                    <span class="row-name">{name} <span class="row-about">{about}</span></span>
                </a>
            </li>
        }
    };
    let state = AppState::here();
    let none = move || state.book.with(|book| book.offers().next().is_none());
    let teach = || {
        view! {
            <div class="teach">
                <h2>{say!(decide::nothing_sold_yet)}</h2>
                <p>{say!(decide::nothing_sold_yet_about)}</p>
                <p class="actions">
                    <a class="button" href=Route::Drinks.address()>
                        {say!(decide::open_drinks)}
                    </a>
                </p>
            </div>
        }
        .into_any()
    };
    view! {
        <h1>{say!(first::sizes)}</h1>
        <p class="about">{say!(decide::sizes_question)}</p>
        {when(none, teach)}
        <section class="section">
            <h2>{say!(decide::choose_sizes)}</h2>
            <ul class="rows">{choosing().into_iter().map(row).collect_view()}</ul>
        </section>
        <section class="section">
            <h2>{say!(decide::your_data)}</h2>
            <ul class="rows">{knowing().into_iter().map(row).collect_view()}</ul>
        </section>
    }
}
