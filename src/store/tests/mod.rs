//! Tests of everything above the storage, on a storage that fails as told.

mod damage;
mod failing;
mod journals;
mod slips;
mod tabs;

use std::cell::RefCell;
use std::rc::Rc;

use super::{Backing, BookSync, Change, Hooks, InMemory, Row, Saving};
use crate::book::{
    Book, BookId, Drink, DrinkId, DrinkKind, Edit, Ingredient, IngredientId, Line, LineId, Record, Scaling, Settings,
    Stage,
};
use crate::foundation::measure::{Amount, Exact, Unit};
use crate::support::shelf::{self, ID, open, run};

/// When the book was put on the shelf; each change comes a minute later.
pub(super) const NOON: u64 = 1_795_780_800_000;

pub(super) fn ingredient(id: u64, name: &str) -> Record {
    Record::Ingredient(Ingredient::named(IngredientId::from_random(id), name))
}

pub(super) fn drink(id: u64, ingredients: &[u64]) -> Record {
    let amount = Amount::new(Exact::new(250, 0), Unit::Millilitre);
    let line = |id: &u64| Line {
        id: LineId::from_random(*id),
        ingredient: IngredientId::from_random(*id),
        stage: Stage::Trimmed,
        amount,
        scaling: Scaling::InProportion,
        ice: None,
        in_glass: false,
    };
    Record::Drink(Drink {
        lines: ingredients.iter().map(line).collect(),
        ..Drink::new(DrinkId::from_random(id), "Green".into(), DrinkKind::Pressed, amount)
    })
}

/// A book with the ingredients 1 and 2, and a drink of the first.
pub(super) fn book() -> Book {
    let settings = Record::Settings(Box::new(Settings::new("Corner bar")));
    let records = [settings, ingredient(1, "Apple"), ingredient(2, "Mint"), drink(1, &[1])];
    Book::from_records(records).unwrap()
}

/// A storage with that book on it.
pub(super) fn storage() -> InMemory {
    shelf::storage(book(), NOON)
}

/// The book as it is stored.
pub(super) fn stored(storage: &InMemory) -> Book {
    open(storage).0
}

/// An open tab.
pub(super) struct Tab {
    pub(super) book: Rc<RefCell<Book>>,
    pub(super) sync: BookSync<InMemory>,
    pub(super) told: Rc<RefCell<Vec<Saving>>>,
}

impl Tab {
    pub(super) fn open(storage: &InMemory) -> Tab {
        Tab::telling(storage, || {})
    }

    /// Tells each time when something was saved or could not be.
    pub(super) fn telling(storage: &InMemory, tell: impl Fn() + 'static) -> Tab {
        let (book, opened) = open(storage);
        let (book, told) = (Rc::new(RefCell::new(book)), Rc::new(RefCell::new(Vec::new())));
        let telling = Rc::clone(&told);
        let hooks = Hooks {
            saving: Box::new(move |saving| {
                telling.borrow_mut().push(saving.clone());
                tell();
            }),
            ..shelf::hooks(&book)
        };
        Tab { book, sync: opened.keep(hooks), told }
    }

    pub(super) fn edit(&self, edit: &Edit) {
        self.step("An edit", edit);
    }

    pub(super) fn step(&self, name: &str, edit: &Edit) {
        let mut book = self.book.borrow_mut();
        let applied = book.apply(edit).unwrap();
        let change = Change::new(name, NOON + 60_000, &book, &applied);
        drop(book);
        self.sync.save(change);
    }

    pub(super) fn put(&self, record: Record) {
        self.edit(&Edit::Put(record));
    }

    pub(super) fn told(&self) -> Vec<Saving> {
        self.told.take()
    }

    pub(super) fn book(&self) -> Book {
        self.book.borrow().clone()
    }
}
