//! What goods are found by, and in which order they are listed.

use crate::book::{Book, Goods, Key, Pack, PackId};
use crate::buying::quotes::{Found, find};
use crate::foundation::in_order;
use crate::ui::order;

/// A row of the list: a pack of goods, or goods that have none yet.
pub(super) type Row = (Goods, Option<PackId>);

/// What a row is found by: the name of the goods, and who sells the pack.
#[derive(Clone, PartialEq, Eq)]
pub(super) struct Names {
    pub(super) row: Row,
    /// Whether it is the pack that is bought now.
    pub(super) is_current: bool,
    pub(super) supplier: String,
    name: String,
    supplier_in_lower_case: String,
}

/// The names of all that is bought and of who sells it, each pack in a row of its own.
pub(super) fn names_as_written(book: &Book) -> Vec<Names> {
    let ingredients = book.ingredients().map(|it| (Goods::Ingredient(it.id), &it.name, &it.packs));
    let packagings = book.packagings().map(|it| (Goods::Packaging(it.id), &it.name, &it.packs));
    ingredients.chain(packagings).flat_map(|(goods, name, packs)| rows_of(goods, name, packs)).collect()
}

fn rows_of(goods: Goods, name: &str, packs: &[Pack]) -> Vec<Names> {
    let of = |pack: Option<&Pack>, is_current| Names {
        row: (goods, pack.map(|pack| pack.id)),
        is_current,
        supplier: pack.map(|pack| pack.supplier.clone()).unwrap_or_default(),
        name: name.to_string(),
        supplier_in_lower_case: String::new(),
    };
    if packs.is_empty() {
        return vec![of(None, true)];
    }
    packs.iter().enumerate().map(|(place, pack)| of(Some(pack), place == 0)).collect()
}

/// With letters in lower case, ingredients before packaging, each by name, the current pack first.
pub(super) fn in_order(names: &[Names]) -> Vec<Names> {
    let mut ordered: Vec<Names> = Vec::new();
    let is_packaging = |names: &Names| matches!(names.row.0, Goods::Packaging(_));
    let of = |names: &Names| (is_packaging(names), in_order::name_with_numbers(&names.name));
    for names in names {
        let names = Names {
            name: order::lower_case(&names.name),
            supplier_in_lower_case: order::lower_case(&names.supplier),
            ..names.clone()
        };
        in_order::insert(&mut ordered, names, |other, names| of(other) <= of(names));
    }
    ordered
}

/// What is found by these letters: what begins with them first, each kind in its order, the packs that
/// are bought now before others.
pub(super) fn found(names: &[Names], letters: &str) -> Vec<(Found, Row)> {
    let mut all: Vec<((Found, bool), Row)> = Vec::new();
    for names in names {
        if let Some(how) = find(&names.name, &names.supplier_in_lower_case, letters) {
            let rank = (how, !names.is_current);
            in_order::insert(&mut all, (rank, names.row), |(other, _), (rank, _)| other <= rank);
        }
    }
    all.into_iter().map(|((how, _), row)| (how, row)).collect()
}

/// The pack of a row.
pub(super) fn pack_of(book: &Book, (goods, pack): Row) -> Option<Pack> {
    book.packs(goods).iter().find(|it| Some(it.id) == pack).cloned()
}

/// The record of a row.
pub(super) fn key_of((goods, _): Row) -> Key {
    Key::from(goods)
}
