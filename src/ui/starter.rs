//! The starter list, fetched when a name is first typed and kept for as long as the page lives. Without it the
//! typing goes on.

use std::sync::Arc;

use leptos::prelude::*;
use leptos::task::spawn_local;
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::JsFuture;

use super::language::language;
use super::live::{live, press};
use super::state::AppState;
use crate::book::Ingredient;
use crate::buying::starter::{List, Row};
use crate::say;
use crate::words;

/// Where the list lies, beside the app.
const ADDRESS: &str = "./starter/ingredients.txt";

/// How many rows are offered at once.
const OFFERED: usize = 5;

/// What is known of the list.
#[derive(Clone, Copy)]
enum Found {
    NotAsked,
    Coming,
    Here(&'static List),
    Missing,
}

thread_local! {
    static FOUND: ArcRwSignal<Found> = ArcRwSignal::new(Found::NotAsked);
}

fn found() -> ArcRwSignal<Found> {
    FOUND.with(ArcRwSignal::clone)
}

/// Begins to fetch the list, unless it is here or on its way. One that could not be had is asked for again.
pub fn ask() {
    if matches!(found().get_untracked(), Found::Here(_) | Found::Coming) {
        return;
    }
    found().set(Found::Coming);
    spawn_local(async {
        let list = fetch().await.and_then(|text| List::read(&text).ok());
        // The page keeps it as long as it lives.
        found().set(list.map_or(Found::Missing, |list| Found::Here(Box::leak(Box::new(list)))));
    });
}

async fn fetch() -> Option<String> {
    let response = JsFuture::from(window().fetch_with_str(ADDRESS)).await.ok()?;
    let text = response.unchecked_into::<web_sys::Response>().text().ok()?;
    JsFuture::from(text).await.ok()?.as_string()
}

/// The list, once it is here; follows it.
pub fn list() -> Option<&'static List> {
    match found().get() {
        Found::Here(list) => Some(list),
        Found::NotAsked | Found::Coming | Found::Missing => None,
    }
}

/// Whether the list was asked for and could not be had, or was spoilt; follows it.
pub fn is_missing() -> bool {
    matches!(found().get(), Found::Missing)
}

/// The row that an ingredient was made from, once the list is here.
pub fn row_of(ingredient: &Ingredient) -> Option<&'static Row> {
    list()?.row(&ingredient.starting.as_ref()?.key)
}

/// What a press on a row does.
pub type Pick = Arc<dyn Fn(&'static Row) + Send + Sync>;

/// The rows that the letters of a field may mean, as buttons that say what each brings. Nothing stands there before
/// something is typed.
#[component]
pub fn Matches(
    /// What is typed.
    letters: Signal<String>,
    /// What a press on a row does.
    pick: Pick,
) -> impl IntoView {
    let state = AppState::here();
    let typed = Memo::new(move |_| letters.with(|letters| letters.trim().to_string()));
    // With the first letter, and not with each.
    let begun = Memo::new(move |_| !typed.with(String::is_empty));
    Effect::new(move |_| {
        if begun.get() {
            ask();
        }
    });
    live(move || {
        let typed = typed.get();
        if typed.is_empty() {
            return ().into_any();
        }
        if is_missing() {
            return view! { <p class="hollow" role="status">{say!(starter::missing)}</p> }.into_any();
        }
        let rows = list().map(|list| list.search(&typed, &language())).unwrap_or_default();
        if rows.is_empty() {
            return ().into_any();
        }
        let offer = |row: &'static Row| offer(state, row, pick.clone());
        let found = say!(starter::suggestions_found, rows = rows.len().min(OFFERED));
        let offers = rows.into_iter().take(OFFERED).map(offer).collect_view();
        view! {
            <p class="unseen" role="status">
                {found}
            </p>
            <ul class="matches" aria-label=say!(starter::suggestions)>
                {offers}
            </ul>
        }
        .into_any()
    })
}

/// One row: its name, and what it brings.
fn offer(state: AppState, row: &'static Row, pick: Pick) -> AnyView {
    let brings = untrack(|| words::brings(row, state.units(), &state.speaker.get()));
    view! {
        <li>
            <button class="match" type="button" on:click=press(move || pick(row))>
                <strong>{row.name(&language()).to_string()}</strong>
                <span class="soft">{brings}</span>
            </button>
        </li>
    }
    .into_any()
}
