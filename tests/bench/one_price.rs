//! One price: the edit and the re-pricing of all that it moves.

use std::time::Duration;

use brimwright::book::{Book, Edit, Goods};
use brimwright::drink::ledger::Ledger;
use brimwright::foundation::measure::{Exact, Money};

use crate::figure::timed;

/// A book with its ledger, in which prices are changed.
pub struct Priced {
    /// The book.
    pub book: Book,
    /// Its ledger.
    pub ledger: Ledger,
    goods: Vec<Goods>,
}

/// What one price took.
#[derive(Clone, Copy)]
pub struct Repriced {
    /// How long.
    pub time: Duration,
    /// How many offers moved.
    pub moved: usize,
}

impl Priced {
    /// A book computed, in which the price of each ingredient is changed.
    pub fn of(book: Book) -> Priced {
        Priced::with_first(book, usize::MAX)
    }

    /// A book computed, in which the prices of so many ingredients are changed.
    pub fn with_first(book: Book, ingredients: usize) -> Priced {
        let goods = book.ingredients().take(ingredients).map(|ingredient| Goods::Ingredient(ingredient.id)).collect();
        Priced { ledger: Ledger::of(&book), book, goods }
    }

    /// The price of their first pack in turn, a unit of the currency up in even rounds and
    /// down in odd ones.
    pub fn round(&mut self, round: usize) -> Vec<Repriced> {
        let change = Money::from_major(Exact::new(if round.is_multiple_of(2) { 1 } else { -1 }, 0));
        let Priced { book, ledger, goods } = self;
        let reprice = |goods: &Goods| {
            let pack = &book.packs(*goods)[0];
            let price = pack.price.plus(change).expect("small");
            let edit = Edit::SetPackPrice { goods: *goods, pack: pack.id, price, day: None };
            let mut moved = 0;
            let time = timed(|| {
                let applied = book.apply(&edit).expect("a price above zero");
                moved = ledger.refresh(book, &applied.touched).len();
            });
            Repriced { time, moved }
        };
        goods.iter().map(reprice).collect()
    }
}
