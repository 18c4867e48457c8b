//! What is asked on a screen and not kept in the book: a part of the menu, sizes.

use crate::book::{Book, ContainerId, DrinkId, DrinkKind, Key, Scope};
use crate::ui::order;
use crate::words;

/// Parts of the menu to choose from: the kinds of which any drink is sold, then the drinks that
/// are sold, by name.
pub fn scopes(book: &Book) -> Vec<(String, String)> {
    let sold: Vec<Key> = order::sold_drinks(book).into_iter().filter(|key| is_offered(book, *key)).collect();
    let any =
        |kind: DrinkKind| sold.iter().any(|key| matches!(key, Key::Drink(id) if book.belongs(*id, Scope::Kind(kind))));
    let kinds = DrinkKind::ALL.iter().filter(|kind| any(**kind));
    let mut options: Vec<(String, String)> =
        kinds.map(|kind| (value(Scope::Kind(*kind)), format!("{}: all drinks", words::drink_kind(*kind)))).collect();
    for key in &sold {
        if let Key::Drink(id) = key {
            options.push((value(Scope::Drink(*id)), book.name(*key)));
        }
    }
    options
}

/// The first of them.
pub fn first_scope(book: &Book) -> Option<Scope> {
    scopes(book).first().and_then(|(value, _)| scope(value))
}

fn is_offered(book: &Book, key: Key) -> bool {
    matches!(key, Key::Drink(id) if book.offers_of(id).next().is_some())
}

/// A part of the menu as the value of an option.
pub fn value(scope: Scope) -> String {
    match scope {
        Scope::Menu => String::new(),
        Scope::Kind(kind) => words::drink_kind(kind).to_string(),
        Scope::Drink(id) => id.to_string(),
    }
}

/// The part of the menu of an option.
pub fn scope(value: &str) -> Option<Scope> {
    let kind = DrinkKind::ALL.iter().find(|kind| words::drink_kind(**kind) == value);
    kind.map(|kind| Scope::Kind(*kind)).or_else(|| DrinkId::from_text(value).map(Scope::Drink))
}

/// Containers, smallest fill first.
pub fn containers(book: &Book) -> Vec<ContainerId> {
    let id = |key| if let Key::Container(id) = key { Some(id) } else { None };
    order::containers(book).into_iter().filter_map(id).collect()
}

/// The containers that a part of the menu is sold in, smallest fill first.
pub fn sold_in(book: &Book, scope: Scope) -> Vec<ContainerId> {
    let sold = |container: &ContainerId| {
        book.offers().any(|offer| offer.container == *container && book.belongs(offer.drink, scope))
    };
    containers(book).into_iter().filter(sold).collect()
}

/// Containers as options to choose from.
pub fn container_options(book: &Book, containers: Vec<ContainerId>) -> Vec<(String, String)> {
    let option = |id: ContainerId| (id.to_string(), book.name(Key::Container(id)));
    containers.into_iter().map(option).collect()
}
