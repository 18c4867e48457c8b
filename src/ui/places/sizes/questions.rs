//! The front page of Sizes: the questions that an owner comes with.

use leptos::prelude::*;

use crate::app::route::Route;
use crate::book::Scope;
use crate::ui::live::when;
use crate::ui::state::AppState;

/// A question, the words that stand under it, and the screen that answers it.
type Question = (&'static str, &'static str, Route);

const CHOOSING: [Question; 4] = [
    ("Side by side", "What each size costs, earns and asks.", Route::SideBySide(Scope::Menu)),
    ("One size in place of another", "How many must be sold to earn the same.", Route::Switching),
    ("How many sizes", "What one, two or three earn, and what they take to keep.", Route::HowMany),
    ("Back from a price point", "What fits when the price is given.", Route::PricePoint),
];

const KNOWING: [Question; 4] = [
    ("Sales", "What you sell of each size in a week.", Route::Sales),
    ("Prices seen elsewhere", "What others ask, and where you stand.", Route::SeenPrices),
    ("Trials", "Whether a change worked.", Route::Trials),
    ("Scenarios", "Another menu, beside today's.", Route::Scenarios),
];

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
                <h2>"No drink is sold in a size yet"</h2>
                <p>"Give a drink two or more sizes with prices in Drinks; these questions then have answers."</p>
                <p class="actions">
                    <a class="button" href=Route::Drinks.address()>
                        "To Drinks"
                    </a>
                </p>
            </div>
        }
        .into_any()
    };
    view! {
        <h1>"Sizes"</h1>
        <p class="about">"Which bottles and cups are worth selling?"</p>
        {when(none, teach)}
        <section class="section">
            <h2>"Choosing"</h2>
            <ul class="rows">{CHOOSING.into_iter().map(row).collect_view()}</ul>
        </section>
        <section class="section">
            <h2>"Knowing"</h2>
            <ul class="rows">{KNOWING.into_iter().map(row).collect_view()}</ul>
        </section>
    }
}
