//! Choosing a drink to see side by side.

use leptos::prelude::*;

use crate::book::{Key, Scope};
use crate::ui::live::{rows, text, when};
use crate::ui::order;
use crate::ui::route::Route;
use crate::ui::state::AppState;

/// Every drink that is sold in a size.
#[component]
pub fn Choose() -> impl IntoView {
    let state = AppState::here();
    let drinks = Memo::new(move |_| state.book.with(order::sold_drinks));
    let row = move |key: Key| {
        let Key::Drink(id) = key else { return ().into_any() };
        let name = text(move || state.book.with(|book| book.name(key)));
        let sizes = text(move || match state.book.with(|book| book.offers_of(id).count()) {
            1 => "1 size".to_string(),
            count => format!("{count} sizes"),
        });
        view! {
            <li>
                <a class="row" href=Route::SideBySide(Scope::Drink(id)).address()>
                    <span class="row-name">{name}</span>
                    <span class="row-price">{sizes}</span>
                </a>
            </li>
        }
        .into_any()
    };
    let any = move || !drinks.with(Vec::is_empty);
    let teach = move || {
        view! {
            <div class="teach">
                <h2>"Which sizes are worth selling?"</h2>
                <p>
                    "Give a drink two or more sizes in Drinks; here they stand side by side: what each costs, earns and asks per ounce."
                </p>
            </div>
        }
        .into_any()
    };
    let list = move || {
        view! {
            <p class="about">"Choose a drink to see its sizes side by side."</p>
            <ul class="rows section">{rows(drinks, row)}</ul>
        }
        .into_any()
    };
    view! {
        <h1>"Sizes"</h1>
        {when(any, list)}
        {when(move || !any(), teach)}
    }
}
