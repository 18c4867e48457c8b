//! Choosing what is compared: a part of the menu, and its sizes.

use std::sync::Arc;

use leptos::prelude::*;

use super::asked;
use super::trying::Trying;
use crate::app::route::{Route, scope_from_text, scope_text};
use crate::book::{Key, Scope};
use crate::say;
use crate::ui::address::go;
use crate::ui::fields::Choice;
use crate::ui::live::{flag, live, press, rows, text, when};
use crate::ui::parts::Fold;
use crate::ui::state::AppState;
use crate::words;

/// How many drinks left out are listed.
const LISTED: usize = 40;

/// The fold of what is compared: which part of the menu, and which of its sizes.
#[component]
pub fn Compared(
    /// What is compared.
    trying: Trying,
) -> impl IntoView {
    let state = AppState::here();
    let here = scope_text(trying.scope);
    let options = Memo::new(move |_| state.book.with(asked::all_scope_options));
    let choose = Arc::new(|chosen: &str| {
        if let Some(scope) = scope_from_text(chosen) {
            go(Route::SideBySide(scope));
        }
        Ok(())
    });
    let keys = Memo::new(move |_| trying.all.get().into_iter().map(Key::Container).collect::<Vec<Key>>());
    let chip = move |key| {
        let Key::Container(id) = key else { return ().into_any() };
        let pressed = text(move || trying.chosen.with(|chosen| chosen.contains(&id)).to_string());
        let name = text(move || state.book.with(|book| book.name(key)));
        view! {
            <button class="chip" aria-pressed=pressed on:click=press(move || trying.toggle(id))>
                {name}
            </button>
        }
        .into_any()
    };
    let several = flag(move || trying.all.with(|all| all.len() > 1));
    let figure = text(move || words::sizes(trying.chosen.with(Vec::len)));
    let sizes = move || {
        view! {
            <div class="chips" role="group" aria-label=say!(decide::sizes_to_compare)>
                {rows(keys, chip)}
            </div>
            <DrinksCompared trying />
        }
        .into_any()
    };
    let drink = match trying.scope {
        Scope::Drink(id) => view! {
            <p class="actions">
                <a class="button" href=Route::Drink(id).address()>
                    {say!(sales::open_drink)}
                </a>
            </p>
        }
        .into_any(),
        Scope::Menu | Scope::Kind(_) => ().into_any(),
    };
    view! {
        <Fold name=say!(decide::drinks_and_sizes) figure late=true>
            <Choice label=say!(decide::which_drinks) options value=Signal::stored(here) choose />
            {when(move || several.get(), sizes)}
            {drink}
        </Fold>
    }
}

/// Which drinks are compared, and which are not.
#[component]
fn DrinksCompared(trying: Trying) -> impl IntoView {
    let state = AppState::here();
    let alone = matches!(trying.scope, Scope::Drink(_));
    let any = move || !alone && trying.chosen.with(|chosen| !chosen.is_empty());
    let said = text(move || {
        let found = trying.with_today(words::compared).unwrap_or_default();
        if any() { found } else { String::new() }
    });
    let left_out = move || {
        let side = trying.now.get().unwrap_or_default();
        state.book.with(|book| {
            let said = |(drink, why)| words::left_out(drink, why, book);
            side.left_out.into_iter().map(said).collect::<Vec<String>>()
        })
    };
    let some = flag(move || any() && !left_out().is_empty());
    let list = move || {
        let count = text(move || say!(decide::drinks_left_out, drinks = left_out().len()));
        let items = live(move || {
            let all = left_out();
            let more = all.len().saturating_sub(LISTED);
            let more = (more > 0).then(|| say!(decide::and_more, more = more));
            let listed = all.into_iter().take(LISTED).chain(more);
            listed.map(|said| view! { <li>{said}</li> }).collect_view().into_any()
        });
        view! {
            <details class="more">
                <summary>{count}</summary>
                <ul class="soft">{items}</ul>
            </details>
        }
        .into_any()
    };
    view! {
        <p class="hollow" role="status">{said}</p>
        {when(move || some.get(), list)}
    }
}
