//! What goods are found by, and in which order they are listed.

use crate::book::{Book, Key, Pack};
use crate::buying::quotes::{Found, find};
use crate::foundation::in_order;
use crate::ui::order;

/// What goods are found by: their name, and who sells the pack whose price is typed.
#[derive(Clone, PartialEq, Eq)]
pub(super) struct Names {
    pub(super) goods: Key,
    name: String,
    supplier: String,
}

/// The names of all that is bought and of who sells it, ingredients first.
pub(super) fn names_as_written(book: &Book) -> Vec<Names> {
    let names = |goods, name: &String, packs: &[Pack]| {
        let supplier = packs.first().map(|pack| pack.supplier.clone()).unwrap_or_default();
        Names { goods, name: name.clone(), supplier }
    };
    let ingredients = book.ingredients().map(|it| names(Key::Ingredient(it.id), &it.name, &it.packs));
    let packagings = book.packagings().map(|it| names(Key::Packaging(it.id), &it.name, &it.packs));
    ingredients.chain(packagings).collect()
}

/// In lower case, ingredients before packaging, each by name.
pub(super) fn in_order(names: &[Names]) -> Vec<Names> {
    let mut ordered: Vec<Names> = Vec::new();
    let of = |names: &Names| (matches!(names.goods, Key::Packaging(_)), in_order::name_with_numbers(&names.name));
    for names in names {
        let (name, supplier) = (order::lower_case(&names.name), order::lower_case(&names.supplier));
        let names = Names { goods: names.goods, name, supplier };
        in_order::insert(&mut ordered, names, |other, names| of(other) <= of(names));
    }
    ordered
}

/// What is found by these letters: what begins with them first, each kind in its order.
pub(super) fn found(names: &[Names], letters: &str, shown: &dyn Fn(Key) -> bool) -> Vec<(Found, Key)> {
    let mut all: Vec<(Found, Key)> = Vec::new();
    for names in names.iter().filter(|names| shown(names.goods)) {
        if let Some(how) = find(&names.name, &names.supplier, letters) {
            in_order::insert(&mut all, (how, names.goods), |(other, _), (how, _)| other <= how);
        }
    }
    all
}
