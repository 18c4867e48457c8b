//! What is asked on a screen and not kept in the book: a part of the menu, sizes.

use leptos::prelude::*;

use crate::app::route::scope_text;
use crate::book::{Book, ContainerId, DrinkKind, Key, Scope};
use crate::foundation::measure::Exact;
use crate::say;
use crate::ui::order;
use crate::ui::state::AppState;
use crate::words::{self, Example};

/// Most of a drink that is expected in a week: more is a slip of the finger.
const MOST_A_WEEK: Exact = Exact::new(100_000, 0);

/// How many are sold in a week, as typed.
///
/// # Errors
/// A sentence where it is more than anyone sells.
pub fn a_week(state: AppState, number: Option<Exact>) -> Result<Option<Exact>, String> {
    if number.is_none_or(|number| number <= MOST_A_WEEK) {
        return Ok(number);
    }
    let speaker = &untrack(|| state.speaker.get());
    let (most, example) = (speaker.number(MOST_A_WEEK), Example::WeeklySales.said(speaker));
    Err(say!(decide::most_to_type, most = most, example = example))
}

/// Parts of the menu that are sold in any size: the kinds, then the drinks by name.
pub fn scopes(book: &Book) -> Vec<Scope> {
    let sold = order::sold_drinks(book);
    let drinks = sold.into_iter().filter_map(|key| if let Key::Drink(id) = key { Some(id) } else { None });
    let drinks: Vec<_> = drinks.collect();
    let any = |kind: &DrinkKind| drinks.iter().any(|id| book.belongs(*id, Scope::Kind(*kind)));
    let kinds = DrinkKind::ALL.iter().copied().filter(any).map(Scope::Kind);
    kinds.chain(drinks.iter().copied().map(Scope::Drink)).collect()
}

/// Parts of the menu to choose from.
pub fn scope_options(book: &Book, scopes: impl IntoIterator<Item = Scope>) -> Vec<(String, String)> {
    scopes.into_iter().map(|scope| (scope_text(scope), words::scope(scope, book))).collect()
}

/// The whole menu and its parts to choose from.
pub fn all_scope_options(book: &Book) -> Vec<(String, String)> {
    scope_options(book, [Scope::Menu].into_iter().chain(scopes(book)))
}

/// Containers, smallest fill first.
pub fn containers(book: &Book) -> Vec<ContainerId> {
    let id = |key| if let Key::Container(id) = key { Some(id) } else { None };
    order::containers(book).into_iter().filter_map(id).collect()
}

/// Containers as options to choose from.
pub fn container_options(book: &Book, containers: Vec<ContainerId>) -> Vec<(String, String)> {
    let option = |id: ContainerId| (id.to_string(), book.name(Key::Container(id)));
    containers.into_iter().map(option).collect()
}
