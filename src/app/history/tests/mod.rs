//! Tests of steps on a storage that fails as told, with several tabs on it.

mod keeping;
mod listing;
mod undated;
mod walking;

use std::cell::{Cell, RefCell};
use std::rc::Rc;

use super::{Deed, Hindrance, History, Reach, Session, Stands, Walk};
use crate::book::{Applied, Book, Edit, Goods, Ingredient, Key, Record};
use crate::foundation::measure::NumberStyle;
use crate::store::{Backing, BookSync, Change, Drawer, Durability, Hooks, InMemory, Saving, Slip};
use crate::support::shelf::{self, ID, open, run};
use crate::support::{batch, container, drink, ingredient, ingredient_id, line, money, offer, pack, pack_id, settings};
use crate::words::{self, Speaker};

const CARROT: u64 = 1;
const MINT: u64 = 2;
/// When the first step is done: 26 November 2026, noon in Greenwich.
const NOON: u64 = 1_795_694_400_000;

fn book() -> Book {
    let records = [
        Record::Ingredient(named(CARROT, "Carrots")),
        Record::Ingredient(named(MINT, "Mint")),
        Record::Container(container(1, "16 fl oz")),
        Record::Drink(drink(1, "16 fl oz", [line(1, CARROT, "3 fl oz")])),
        Record::Offer(offer(1, 1, Some("8"))),
    ];
    crate::support::book(settings(), records)
}

fn named(id: u64, name: &str) -> Ingredient {
    Ingredient { name: name.into(), ..ingredient(id, [pack(1, "40 lb", "30"), pack(2, "25 lb", "20")]) }
}

/// A storage with that book on it.
fn storage() -> InMemory {
    shelf::storage(book(), NOON)
}

/// The steps as they are stored.
fn slips(storage: &InMemory) -> Vec<Slip> {
    run(storage, |shelf| async move { shelf.backing().slips(Drawer::Steps, Some(ID)).await }).unwrap()
}

/// An open tab: the book, its steps, and its sync.
struct Tab {
    book: Rc<RefCell<Book>>,
    history: Rc<RefCell<History>>,
    sync: BookSync<InMemory>,
    now: Cell<u64>,
}

impl Tab {
    /// Opens the book where no other tab is; `number` tells the tab from others.
    fn open(storage: &InMemory, number: u64) -> Tab {
        Tab::open_beside(storage, number, &[])
    }

    /// Opens the book while others are there.
    fn open_beside(storage: &InMemory, number: u64, others: &[u64]) -> Tab {
        let (book, opened) = open(storage);
        let mut history = History::open(ID, number, opened.steps());
        history.among(number, others.to_vec());
        let history = Rc::new(RefCell::new(history));
        let book = Rc::new(RefCell::new(book));
        let (taking, following, keeping) = (Rc::clone(&book), Rc::clone(&history), Rc::clone(&history));
        let hooks = Hooks {
            apply_remote: Box::new(move |edit| {
                following.borrow_mut().follow();
                taking.borrow_mut().apply(edit).map(|_| ())
            }),
            give_up: Box::new(|_, _| Ok(())),
            kept: Box::new(move |name, patch| {
                let deed = Deed { name: &format!("Keep mine: {name}"), now: NOON, session: None };
                keeping.borrow_mut().note(&deed, patch);
            }),
            ..shelf::hooks(&book)
        };
        Tab { book, history, sync: opened.keep(hooks), now: Cell::new(NOON) }
    }

    fn walk(&self, walk: impl FnOnce(&mut History, &mut Book) -> Walk) -> Walk {
        let walked = walk(&mut self.history.borrow_mut(), &mut self.book.borrow_mut());
        let (name, applied) = match &walked {
            Walk::Done { name, applied } | Walk::Partly { name, applied, .. } => (name.as_str(), applied.clone()),
            _ => ("", Applied::nothing()),
        };
        let change = Change::new(name, self.now.get(), &self.book.borrow(), &applied);
        let slips = self.history.borrow_mut().take_slips();
        self.sync.save(change.beside(slips, Durability::Relaxed));
        walked
    }

    fn apply_in(&self, name: &str, edit: &Edit, session: Option<Session>) {
        self.now.set(self.now.get() + 60_000);
        let deed = Deed { name, now: self.now.get(), session };
        let walked = self.walk(|history, book| match history.apply(book, &deed, edit).unwrap() {
            Some(applied) => Walk::Done { name: name.into(), applied },
            None => Walk::Nothing,
        });
        assert!(walked != Walk::Nothing || session.is_some(), "{name} changes something");
    }

    fn apply(&self, name: &str, edit: &Edit) {
        self.apply_in(name, edit, None);
    }

    fn price(&self, price: &str) {
        self.apply("Price of Carrots", &price_of(CARROT, price));
    }

    fn undo(&self) -> Walk {
        self.walk(|history, book| history.undo(book, Reach::Everything))
    }

    fn redo(&self) -> Walk {
        self.walk(|history, book| history.redo(book, Reach::Everything))
    }

    /// Takes the step of this name back by itself.
    fn take_back_alone(&self, name: &str) -> Walk {
        let id = self.history.borrow().steps().iter().find(|step| step.name == name).unwrap().id.clone();
        let name = format!("Undo {name}");
        let deed = Deed { name: &name, now: self.now.get(), session: None };
        self.walk(|history, book| history.take_back_alone(book, &id, &deed))
    }

    fn carrot(&self) -> Ingredient {
        self.book.borrow().ingredient(ingredient_id(CARROT)).unwrap().clone()
    }

    /// What the first pack of carrots costs.
    fn costs(&self) -> String {
        self.carrot().packs[0].price.major().to_string()
    }

    /// The names of the steps with where each stands, the latest first.
    fn list(&self) -> Vec<(String, Stands)> {
        let listed = self.history.borrow().list(&self.book.borrow(), Reach::Everything);
        listed.into_iter().map(|listed| (listed.name, listed.stands)).collect()
    }

    /// Takes in what other tabs saved.
    fn hear(&self, storage: &InMemory) {
        self.sync.remote_saved(u64::MAX);
        storage.run();
    }
}

fn price_of(id: u64, price: &str) -> Edit {
    Edit::SetPackPrice { goods: Goods::Ingredient(ingredient_id(id)), pack: pack_id(1), price: money(price), day: None }
}

/// The edit that changes the carrots by hand.
fn carrot(book: &Book, change: impl FnOnce(&mut Ingredient)) -> Edit {
    let mut carrot = book.ingredient(ingredient_id(CARROT)).unwrap().clone();
    change(&mut carrot);
    Edit::Put(Record::Ingredient(carrot))
}

/// The name of the step that was walked over.
fn done(walk: &Walk) -> &str {
    let Walk::Done { name, .. } = walk else { panic!("{walk:?}") };
    name
}

/// Why a walk was refused, as a sentence.
fn refused(walk: &Walk, book: &Book) -> String {
    let Walk::Refused { name, hindrance } = walk else { panic!("{walk:?}") };
    words::steps::not_undone(name, &said(hindrance, book))
}

fn said(hindrance: &Hindrance, book: &Book) -> String {
    hindrance.sentence(book, &Speaker::of(book, NumberStyle::english("$")))
}
