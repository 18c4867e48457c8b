//! What makes the invented books believable: hands' time and overhead within what the trade knows, from memory
//! and without a source; prices, fees and waste as a shop has them; and every figure as plain arithmetic has it.

use brimwright::book::{Book, DrinkKind, FlatCost, Key, OfferId, OverheadPer, Part, Scope};
use brimwright::drink::ledger::{Ledger, OfferStatus, Priced};
use brimwright::drink::price::Hands;
use brimwright::exchange::{read, write};
use brimwright::foundation::measure::{Exact, Money};

use super::{FILE, demo, schema};
use crate::support::exact;

/// The second invented book.
pub const SECOND: &str = include_str!("../../public/books/kastanje-saftbar.json");

/// By `tests/reference/data/demo_books.py`: of each offer with a price its full cost, its margin on goods, the
/// profit that changes with one more or less, and the contribution, to nine decimals.
const FIGURES: &str = include_str!("../reference/data/demo_books.csv");

fn books() -> [(&'static str, Book); 2] {
    [("kastanje-saftbar", read(SECOND).unwrap()), ("marrowgate-juice-hall", demo())]
}

/// Offers with their results.
fn priced(book: &Book) -> Vec<(OfferId, Priced)> {
    let ledger = Ledger::of(book);
    ledger.offers().map(|(id, result)| (id, result.clone().unwrap_or_else(|error| panic!("{id}: {error:?}")))).collect()
}

fn sum(money: impl Iterator<Item = Money>) -> Exact {
    money.fold(Exact::ZERO, |sum, money| sum.plus(money.major()).unwrap())
}

#[test]
fn plain_arithmetic_has_the_same_figures() {
    let books = books().map(|(name, book)| (name, book.clone(), Ledger::of(&book)));
    let mut compared = 0;
    for row in FIGURES.lines().skip(1) {
        let [name, drink, container, figures @ ..] = &row.split(';').collect::<Vec<_>>()[..] else { panic!("{row}") };
        let (_, book, ledger) = books.iter().find(|(known, ..)| known == name).unwrap();
        let Some(Key::Offer(id)) = Key::from_text(&format!("offer:{drink}-{container}")) else { panic!("{row}") };
        let priced = ledger.get(id).unwrap().as_ref().unwrap();
        let asked = priced.asked.unwrap();
        let overhead = priced.cost.part(Part::Flat(FlatCost::Overhead)).unwrap();
        let changes = priced.profit_that_changes(Hands::Counted).unwrap().unwrap();
        assert_eq!(changes.minus(asked.contribution), Ok(overhead), "{row}");
        let goods = asked.margin.fraction();
        let own = [priced.cost.total().major(), goods, changes.major(), asked.contribution.major()];
        assert_eq!(figures.len(), own.len());
        for (own, expected) in own.iter().zip(figures) {
            let off = own.minus(exact(expected)).unwrap().abs();
            assert!(off < exact("0.0000001"), "{} {row}: {own}", book.name(Key::Drink(id.drink)));
        }
        compared += 1;
    }
    let asked =
        books.iter().flat_map(|(_, book, _)| book.offers().filter(|offer| offer.price.is_some()).collect::<Vec<_>>());
    assert_eq!(compared, asked.count());
}

#[test]
fn both_are_invented_small_and_as_we_would_write_them() {
    for file in [FILE, SECOND] {
        let book = read(file).unwrap();
        assert!(book.settings().invented);
        assert_eq!(write(&book), file);
        assert!(schema::takes(file));
        assert!(file.len() < 64_000, "{}", file.len());
        assert!(book.offers().all(|offer| offer.weekly.is_some() == offer.price.is_some()));
    }
}

/// From memory of the trade: a pressed bottle of a pint takes 200 to 350 seconds of hands, with washing and
/// cleaning; overhead is 15 to 25 % of sales.
#[test]
fn hands_and_overhead_are_as_the_trade_knows_them() {
    for (name, book) in books() {
        assert_eq!(book.settings().overhead_per, OverheadPer::Week);
        let about_a_pint = |id: &OfferId, priced: &Priced| {
            let millilitres = priced.fill.volume.millilitres();
            book.belongs(id.drink, Scope::Kind(DrinkKind::Pressed))
                && millilitres > exact("440")
                && millilitres < exact("510")
        };
        let all = priced(&book);
        let pints: Vec<&Priced> = all.iter().filter(|(id, it)| about_a_pint(id, it)).map(|(_, it)| it).collect();
        assert!(pints.len() >= 2, "{name}");
        for pint in pints {
            let seconds = pint.cost.time.seconds();
            assert!(seconds >= exact("200") && seconds <= exact("350"), "{name}: {seconds}");
        }
        let weekly = |id: &OfferId| book.offer(*id).unwrap().weekly.unwrap_or_default();
        let sales =
            sum(all.iter().filter_map(|(id, it)| it.asked.map(|asked| asked.revenue.times(weekly(id)).unwrap())));
        let share = book.settings().overhead.major().over(sales).unwrap();
        assert!(share >= exact("0.15") && share <= exact("0.25"), "{name}: {share}");
    }
}

/// Each drink leaves something after everything, and a shop does not keep half of what it sells for.
#[test]
fn nothing_loses_money_and_nothing_earns_too_much() {
    for (name, book) in books() {
        let weekly = |id: &OfferId| book.offer(*id).unwrap().weekly.unwrap_or_default();
        let (mut sales, mut left) = (Exact::ZERO, Exact::ZERO);
        for (id, priced) in priced(&book) {
            let Some(asked) = priced.asked else { continue };
            assert!(asked.contribution.is_positive(), "{name} {id}: {:?}", asked.contribution);
            sales = sales.plus(asked.revenue.times(weekly(&id)).unwrap().major()).unwrap();
            left = left.plus(asked.contribution.times(weekly(&id)).unwrap().major()).unwrap();
        }
        let share = left.over(sales).unwrap();
        assert!(share > exact("0.1") && share < exact("0.35"), "{name}: {share}");
    }
}

#[test]
fn some_are_under_target_on_purpose() {
    let count = |book: &Book, status| priced(book).iter().filter(|(_, it)| it.status() == status).count();
    let [(_, second), (_, first)] = books();
    let all = [OfferStatus::UnderTarget, OfferStatus::WithoutPrice, OfferStatus::OnTarget];
    assert_eq!(all.map(|status| count(&first, status)), [6, 1, 32]);
    assert_eq!(all.map(|status| count(&second, status)), [4, 0, 14]);
}
