//! A bar of juices at 8.00 a litre in bottles of 200, 300 and 600 mL, worked by hand.

mod adding;
mod answers;
mod below;
mod firsts;
mod found;
mod made_so;
mod plans;
mod weeks;

use super::{MenuToday, Told};
use crate::book::{Book, Container, DrinkKind, Edit, Offer, Record, Scope, Week};
use crate::drink::ledger::Ledger;
use crate::foundation::measure::Date;
use crate::support::{
    book, container, container_id, day, drink, exact, ingredient, line, money, offer_id, pack, settings, share, sold,
    use_of, vessel,
};

/// Small, middle and large.
const SIZES: [(u64, &str); 3] = [(1, "200 mL"), (2, "300 mL"), (3, "600 mL")];

/// A drink in a size, its price and its weekly number.
type Sold = (u64, u64, Option<&'static str>, Option<&'static str>);

/// The day on which everything is asked: a Friday.
fn today() -> Date {
    day("2026-11-27")
}

/// Juices 1 and 2 at 8.00 a litre: 1.60 in the small bottle, 2.40 in the middle, 4.80 in the large one.
fn bar(offers: &[Sold]) -> Book {
    let mut records = vec![Record::Ingredient(ingredient(1, [pack(1, "1 L", "8")]))];
    for (id, size) in SIZES {
        records.push(Record::Packaging(vessel(id, [pack(1, "50 ea", "0")])));
        records.push(Record::Container(Container { set: vec![use_of(id, "1")], ..container(id, size) }));
    }
    for id in 1..=2 {
        records.push(Record::Drink(drink(id, "1 L", [line(1, 1, "1 L")])));
    }
    for (drink, container, price, weekly) in offers {
        let (price, weekly) = (price.map(money), weekly.map(exact));
        records.push(Record::Offer(Offer { price, weekly, ..Offer::new(offer_id(*drink, *container)) }));
    }
    book(settings(), records)
}

/// Juice 1 in all sizes: 40 small at 3.60, 30 middle at 5.40, 10 large at 8.80: each leaves 2.00, 3.00 and 4.00.
fn three_sizes() -> Vec<Sold> {
    vec![(1, 1, Some("3.6"), Some("40")), (1, 2, Some("5.4"), Some("30")), (1, 3, Some("8.8"), Some("10"))]
}

/// Puts a written week of juice 1 into a book: container and how many.
fn write(book: &mut Book, monday: &str, lines: &[(u64, &str)]) {
    let sold = lines.iter().map(|(container, units)| sold(1, *container, units, "1")).collect();
    book.apply(&Edit::Put(Record::Week(Week { monday: day(monday), sold }))).unwrap();
}

/// The whole menu, with what is said for a question.
fn menu<'a>(book: &'a Book, told: &Told) -> MenuToday<'a> {
    MenuToday::of(book, &Ledger::of(book), Scope::Menu, told, today()).unwrap()
}
