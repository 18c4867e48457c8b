//! Which drinks take which ingredient, so that one price need not search every drink.

use crate::book::{Book, DrinkId, IngredientId, Key};
use crate::foundation::in_order;

/// Each ingredient with each drink that has a line of it, in order, once. It follows from the book.
#[derive(Clone, Debug)]
pub(super) struct Takes(Vec<(IngredientId, DrinkId)>);

impl Takes {
    /// Those of a book.
    pub(super) fn of(book: &Book) -> Takes {
        let mut takes = Vec::new();
        for drink in book.drinks() {
            takes.extend(drink.lines.iter().map(|line| (line.ingredient, drink.id)));
        }
        takes.sort_unstable();
        takes.dedup();
        Takes(takes)
    }

    /// Follows a change of the record at `key` in `book`.
    pub(super) fn follow(&mut self, book: &Book, key: Key) {
        let Key::Drink(id) = key else { return };
        self.0.retain(|(_, drink)| *drink != id);
        for line in book.drink(id).into_iter().flat_map(|drink| &drink.lines) {
            in_order::insert_once(&mut self.0, (line.ingredient, id));
        }
    }

    /// The drinks that take an ingredient.
    pub(super) fn drinks_of(&self, ingredient: IngredientId) -> impl Iterator<Item = Key> {
        let first = self.0.partition_point(|(other, _)| *other < ingredient);
        let from = self.0.get(first..).unwrap_or_default().iter();
        from.take_while(move |(other, _)| *other == ingredient).map(|(_, drink)| Key::Drink(*drink))
    }
}
