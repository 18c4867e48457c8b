//! Whatever two tabs do to one book, an undo never changes what the other tab wrote since, and a
//! redo brings back what the undo before it took.

use std::collections::BTreeSet;

use brimwright::app::history::{Deed, History, Reach, Walk};
use brimwright::book::{Applied, Book, BookId, Edit, Ingredient, Key, Record};
use brimwright::foundation::measure::{Exact, Money};
use brimwright::store::Slip;
use proptest::collection::vec;
use proptest::prelude::*;

use crate::support::{book, drink, drink_id, ingredient, ingredient_id, line, money, pack, pack_id, settings};

const BOOK: BookId = BookId::from_random(0xb1);
const INGREDIENTS: u64 = 2;

/// What one tab does.
#[derive(Clone, Copy, Debug)]
enum Doing {
    /// Writes a number nobody wrote before into a field of an ingredient.
    Write {
        ingredient: u64,
        field: u8,
    },
    /// Adds a pack with a price nobody wrote before, or takes the last one of several out.
    Pack {
        ingredient: u64,
        add: bool,
    },
    /// Uses an ingredient in the drink.
    Use {
        ingredient: u64,
    },
    Undo,
    Redo,
    /// Takes back by itself the step that many before the last.
    Alone(usize),
    /// Closes the book and opens it again, while the other tab is there.
    Reopen,
}

fn doing() -> impl Strategy<Value = Doing> {
    let ingredient = 1..=INGREDIENTS;
    prop_oneof![
        6 => (ingredient.clone(), 0..4_u8).prop_map(|(ingredient, field)| Doing::Write { ingredient, field }),
        2 => (ingredient.clone(), any::<bool>()).prop_map(|(ingredient, add)| Doing::Pack { ingredient, add }),
        1 => ingredient.prop_map(|ingredient| Doing::Use { ingredient }),
        4 => Just(Doing::Undo),
        2 => Just(Doing::Redo),
        2 => (0..5_usize).prop_map(Doing::Alone),
        1 => Just(Doing::Reopen),
    ]
}

struct Tab {
    book: Book,
    history: History,
    /// The numbers that it may take back: its own, and those of the start.
    knows: BTreeSet<Exact>,
}

struct Bar {
    tabs: [Tab; 2],
    slips: Vec<Slip>,
    written: BTreeSet<Exact>,
    now: u64,
}

impl Bar {
    fn new() -> Bar {
        let records = (1..=INGREDIENTS).map(|id| Record::Ingredient(ingredient(id, [pack(1, "40 lb", "30")])));
        let start = book(settings(), records.chain([Record::Drink(drink(1, "16 fl oz", [line(1, 1, "3 fl oz")]))]));
        let tab = |number| Tab { book: start.clone(), history: opened(number, &[]), knows: numbers_of_start() };
        Bar { tabs: [tab(0), tab(1)], slips: Vec::new(), written: numbers_of_start(), now: 1 }
    }

    /// Stores what a tab did, and lets the other one hear of it.
    fn spread(&mut self, tab: usize, applied: &Applied) {
        for slip in self.tabs[tab].history.take_slips() {
            self.slips.retain(|kept| kept.id != slip.id);
            self.slips.extend(slip.text.is_some().then_some(slip));
        }
        self.slips.sort_by(|one, other| one.id.cmp(&other.id));
        let records = self.tabs[tab].book.at(&applied.touched);
        let other = &mut self.tabs[1 - tab];
        let edit = Edit::records(&other.book, &records);
        other.history.follow();
        other.book.apply(&edit).expect("what was saved holds");
    }

    fn apply(&mut self, tab: usize, edit: &Edit) {
        self.now += 1;
        let deed = Deed { name: "Step", now: self.now, session: None };
        let Tab { book, history, .. } = &mut self.tabs[tab];
        if let Ok(Some(applied)) = history.apply(book, &deed, edit) {
            self.spread(tab, &applied);
        }
    }

    /// A number that nobody wrote before.
    fn fresh(&mut self, tab: usize) -> Exact {
        self.now += 1;
        let number = Exact::new(i64::try_from(self.now).unwrap() + 100, 0);
        self.written.insert(number);
        self.tabs[tab].knows.insert(number);
        number
    }

    fn changed(&mut self, tab: usize, id: u64, change: impl FnOnce(&mut Ingredient)) {
        let mut record = self.tabs[tab].book.ingredient(ingredient_id(id)).unwrap().clone();
        change(&mut record);
        self.apply(tab, &Edit::Put(Record::Ingredient(record)));
    }

    fn act(&mut self, tab: usize, doing: Doing) {
        match doing {
            Doing::Write { ingredient, field } => {
                let number = self.fresh(tab);
                self.changed(tab, ingredient, |it| match field {
                    0 => it.name = number.to_string(),
                    1 => it.packs.first_mut().unwrap().price = Money::from_major(number),
                    2 => it.packs.first_mut().unwrap().surcharge = Money::from_major(number),
                    _ => {
                        let weight = brimwright::foundation::measure::Mass::from_grams(number);
                        it.piece_weight = Some(weight);
                    }
                });
            }
            Doing::Pack { ingredient, add: true } => {
                let number = self.fresh(tab);
                let id = pack_id(number.to_string().parse().unwrap());
                self.changed(tab, ingredient, |it| {
                    let new = pack(1, "25 lb", "1");
                    it.packs.push(brimwright::book::Pack { id, price: Money::from_major(number), ..new });
                });
            }
            Doing::Pack { ingredient, add: false } => self.changed(tab, ingredient, |it| {
                if it.packs.len() > 1 {
                    it.packs.pop();
                }
            }),
            Doing::Use { ingredient } => {
                let number = self.fresh(tab);
                let mut it = self.tabs[tab].book.drink(drink_id(1)).unwrap().clone();
                let id = number.to_string().parse().unwrap();
                let amount =
                    brimwright::foundation::measure::Amount::new(number, brimwright::foundation::measure::Unit::Gram);
                it.lines.push(brimwright::book::Line { amount, ..line(id, ingredient, "1 g") });
                self.apply(tab, &Edit::Put(Record::Drink(it)));
            }
            Doing::Undo => {
                let before = self.tabs[tab].book.clone();
                let walked = self.walk(tab, &|book, history| history.undo(book, Reach::Everything));
                if walked {
                    self.nothing_of_the_other_is_gone(tab, &before);
                    let after = self.tabs[tab].book.clone();
                    assert!(self.walk(tab, &|book, history| history.redo(book, Reach::Everything)));
                    assert_eq!(stored(&self.tabs[tab].book), stored(&before), "redo brings back what undo took");
                    assert!(self.walk(tab, &|book, history| history.undo(book, Reach::Everything)));
                    assert_eq!(stored(&self.tabs[tab].book), stored(&after));
                }
            }
            Doing::Redo => {
                self.walk(tab, &|book, history| history.redo(book, Reach::Everything));
            }
            Doing::Alone(before_last) => {
                let before = self.tabs[tab].book.clone();
                let steps = self.tabs[tab].history.steps();
                let Some(id) = steps.iter().rev().nth(before_last).map(|step| step.id.clone()) else { return };
                let of_this_tab = id.ends_with(&format!("-{tab}"));
                self.now += 1;
                let now = self.now;
                let deed = Deed { name: "Alone", now, session: None };
                self.walk(tab, &|book, history| history.take_back_alone(book, &id, &deed));
                if of_this_tab {
                    self.nothing_of_the_other_is_gone(tab, &before);
                }
                // What it put back there, it may take away again: that is an undo of this step.
                let (before, after) = (numbers(&before), numbers(&self.tabs[tab].book));
                self.tabs[tab].knows.extend(after.into_iter().filter(|number| !before.contains(number)));
            }
            Doing::Reopen => {
                self.tabs[tab].history = opened(tab, &self.slips);
            }
        }
    }

    /// Whether something was walked over.
    fn walk(&mut self, tab: usize, walk: &dyn Fn(&mut Book, &mut History) -> Walk) -> bool {
        let Tab { book, history, .. } = &mut self.tabs[tab];
        let before = book.clone();
        match walk(book, history) {
            Walk::Done { applied, .. } | Walk::Partly { applied, .. } => {
                self.spread(tab, &applied);
                true
            }
            Walk::Nothing | Walk::Already { .. } | Walk::Refused { .. } => {
                assert_eq!(*book, before, "what is refused changes nothing");
                false
            }
        }
    }

    /// What stood in the book before and does not now is nothing that only the other tab wrote.
    fn nothing_of_the_other_is_gone(&self, tab: usize, before: &Book) {
        let after: BTreeSet<Exact> = numbers(&self.tabs[tab].book).into_iter().collect();
        for number in numbers(before) {
            let stays = after.contains(&number) || self.tabs[tab].knows.contains(&number);
            assert!(stays, "{number} of the other tab is gone");
        }
    }
}

/// The steps of the book as one of the two tabs opens it, while the other is there.
fn opened(tab: usize, slips: &[Slip]) -> History {
    let mut history = History::open(BOOK, tab as u64, slips);
    history.among(tab as u64, vec![1 - tab as u64]);
    history
}

/// The numbers that the tabs write, as they stand in a book.
fn numbers(book: &Book) -> Vec<Exact> {
    let mut numbers = Vec::new();
    for it in book.ingredients() {
        numbers.extend(Exact::from_plain(&it.name, 0));
        numbers.extend(it.piece_weight.map(|weight| weight.grams()));
        numbers.extend(it.packs.iter().flat_map(|pack| [pack.price.major(), pack.surcharge.major()]));
    }
    numbers.extend(book.drinks().flat_map(|drink| drink.lines.iter().map(|line| line.amount.number)));
    numbers
}

/// Those that stand there from the start.
fn numbers_of_start() -> BTreeSet<Exact> {
    let weights = ingredient(1, []).piece_weight.map(|weight| weight.grams());
    let start = [money("30").major(), Exact::ZERO, Exact::new(3, 0)];
    weights.into_iter().chain(start).collect()
}

/// Every record as it is stored. Packs that both tabs added stand in either order behind the one
/// that is bought now, and so do the lines of a recipe.
fn stored(book: &Book) -> String {
    let mut records: Vec<Record> = book.records().collect();
    for record in &mut records {
        if let Some([_, others @ ..]) = record.packs_mut().map(|packs| packs.as_mut_slice()) {
            others.sort_by_key(|pack| pack.id);
        }
        if let Record::Drink(drink) = record {
            drink.lines.sort_by_key(|line| line.id);
        }
    }
    serde_json::to_string(&records).unwrap()
}

proptest! {
    #[test]
    fn an_undo_never_takes_back_what_the_other_tab_wrote(doings in vec((0..2_usize, doing()), 1..60)) {
        let mut bar = Bar::new();
        for (tab, doing) in doings {
            bar.act(tab, doing);
            prop_assert_eq!(&bar.tabs[0].book, &bar.tabs[1].book);
            prop_assert!(bar.tabs[0].book.contains(Key::Drink(drink_id(1))));
        }
    }
}
