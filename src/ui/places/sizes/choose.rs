//! Choosing a drink to see side by side.

use leptos::prelude::*;

use crate::book::{DrinkId, Key};
use crate::ui::route::Route;
use crate::ui::state::AppState;

/// Every drink that is sold in a size.
#[component]
pub fn Choose() -> impl IntoView {
    let state = AppState::here();
    let drinks = Memo::new(move |_| {
        state.book.with(|book| {
            let mut drinks: Vec<(String, DrinkId, usize)> = book
                .drinks()
                .map(|it| (it.name.to_lowercase(), it.id, book.offers_of(it.id).count()))
                .filter(|(_, _, sizes)| *sizes > 0)
                .collect();
            drinks.sort();
            drinks.into_iter().map(|(_, id, sizes)| (id, sizes)).collect::<Vec<_>>()
        })
    });
    let row = move |(id, sizes): (DrinkId, usize)| {
        let name = state.book.with(|book| book.name(Key::Drink(id)));
        let sizes = if sizes == 1 { "1 size".to_string() } else { format!("{sizes} sizes") };
        view! {
            <li>
                <a class="row" href=Route::SizesOf(id).address()>
                    <span class="row-name">{name}</span>
                    <span class="row-price">{sizes}</span>
                </a>
            </li>
        }
    };
    view! {
        <h1>"Sizes"</h1>
        <Show
            when=move || !drinks.with(Vec::is_empty)
            fallback=|| {
                view! {
                    <div class="teach">
                        <h2>"Which sizes are worth selling?"</h2>
                        <p>
                            "Give a drink two or more sizes in Drinks; here they stand side by side: what each costs, earns and asks per ounce."
                        </p>
                    </div>
                }
            }
        >
            <p class="about">"Choose a drink to see its sizes side by side."</p>
            <ul class="rows section">{move || drinks.get().into_iter().map(row).collect_view()}</ul>
        </Show>
    }
}
