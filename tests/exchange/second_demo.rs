//! The second demo book, Kastanje Saftbar: in euros and millilitres, with tax inside its prices and deposits. Place,
//! suppliers, prices and both tax rates are invented.

use std::collections::BTreeSet;

use brimwright::book::{Book, DrinkKind, Edit, Key, Offer, Record, Scope, TaxPlace};
use brimwright::drink::fill::fill;
use brimwright::drink::label::Law;
use brimwright::drink::ledger::Ledger;
use brimwright::exchange::read;
use brimwright::foundation::measure::{Amount, Currency, System, Unit};
use brimwright::sizes::side_by_side::{side_by_side, sold_in};

use super::believable::SECOND;
use crate::support::{container_id, drink_id, exact, money, offer_id, share};

fn book() -> Book {
    read(SECOND).unwrap()
}

#[test]
fn it_holds_what_it_should() {
    let book = book();
    let settings = book.settings();
    assert_eq!((settings.name.as_str(), settings.currency), ("Kastanje Saftbar", Currency::from_code("EUR").unwrap()));
    assert_eq!((settings.units, Law::of(settings)), (System::Metric, Law::European));
    assert_eq!((book.drinks().count(), book.containers().count(), book.offers().count()), (8, 5, 18));
    assert_eq!((book.ingredients().count(), book.packagings().count(), book.packaging_sets().count()), (27, 9, 2));
    assert_eq!((book.weeks().count(), book.seen_prices().count(), book.batches().count()), (8, 5, 1));
    let kinds: BTreeSet<DrinkKind> = book.drinks().map(|drink| drink.kind).collect();
    assert_eq!(kinds.len(), DrinkKind::ALL.len());
    assert!(book.ingredients().any(|it| it.season.is_some()));
    assert!(book.ingredients().any(|it| it.starting_figures().count() > 0));
    assert!(book.containers().any(|container| container.is_starting()));
    assert!(book.seen_prices().all(|seen| seen.place.ends_with(" (Beispiel)")));
}

/// A name in German, and in English behind it; what is the same in both stands once.
#[test]
fn names_are_german_and_english() {
    let book = book();
    let keys = book.records().map(|record| record.key());
    let named = keys.filter(|key| matches!(key, Key::Ingredient(_) | Key::Packaging(_) | Key::Drink(_)));
    let mut count = 0;
    for name in named.map(|key| book.name(key)) {
        let (german, english) = name.strip_suffix(')').and_then(|name| name.split_once(" (")).unwrap();
        assert!(!german.is_empty() && !english.is_empty() && english.is_ascii(), "{name}");
        count += 1;
    }
    assert_eq!(count, 27 + 9 + 8);
}

#[test]
fn every_amount_is_metric() {
    let book = book();
    let ounces = ["fl oz", " oz\"", " lb\"", "cup\"", " in\"", " gal\""];
    assert_eq!(ounces.iter().find(|unit| SECOND.contains(**unit)), None);
    let declared: Vec<_> = book.containers().map(|container| container.declared.unwrap()).collect();
    assert_eq!(declared, ["60", "250", "500", "300", "400"].map(|it| Amount::new(exact(it), Unit::Millilitre)));
}

/// By hand: 4.50 at 7 % is 4.2056 without tax, 5.90 at 19 % is 4.9580. A shot has a rate of its own.
#[test]
fn tax_is_inside_the_prices_at_two_rates() {
    let book = book();
    assert_eq!(book.settings().tax.place, TaxPlace::InThePrice);
    let ledger = Ledger::of(&book);
    let without_tax = |drink, container| {
        let priced = ledger.get(offer_id(drink, container)).unwrap().as_ref().unwrap();
        (priced.terms.tax.rate, priced.asked.unwrap().without_tax.major().rounded(4))
    };
    assert_eq!(without_tax(1, 2), (share("0.07"), exact("4.2056")));
    assert_eq!(without_tax(5, 4), (share("0.19"), exact("4.9580")));
    assert_eq!(without_tax(8, 1).0, share("0.07"));
    assert_eq!(book.drink(drink_id(8)).unwrap().tax_rate, Some(share("0.07")));
    let rates: BTreeSet<_> = ledger.offers().map(|(_, priced)| priced.as_ref().unwrap().terms.tax.rate).collect();
    assert_eq!(rates.len(), 2);
}

/// The deposit stands beside the price: of it only the card takes its share, 1.4 %.
#[test]
fn bottles_and_cups_carry_a_deposit() {
    let book = book();
    let deposits: Vec<_> = book.containers().map(|container| container.deposit).collect();
    assert_eq!(deposits, ["0", "0.15", "0.25", "1", "1"].map(money));
    let contribution = |book: &Book| {
        let ledger = Ledger::of(book);
        ledger.get(offer_id(5, 4)).unwrap().as_ref().unwrap().asked.unwrap().contribution
    };
    let mut without = book.clone();
    let mut cup = book.container(container_id(4)).unwrap().clone();
    cup.deposit = money("0");
    without.apply(&Edit::Put(Record::Container(cup))).unwrap();
    assert_eq!(contribution(&without).minus(contribution(&book)), Ok(money("0.014")));
}

#[test]
fn nothing_in_it_is_idle_and_every_size_holds_what_it_declares() {
    let book = book();
    let things = book.records().map(|record| record.key()).filter(|key| {
        matches!(key, Key::Ingredient(_) | Key::Packaging(_) | Key::PackagingSet(_) | Key::Container(_) | Key::Drink(_))
    });
    let idle: Vec<String> = things.filter(|key| book.needed_by(*key).is_empty()).map(|key| key.to_string()).collect();
    assert_eq!(idle, Vec::<String>::new());
    for container in book.containers() {
        let filled = fill(container).unwrap();
        assert_eq!(filled.short_of_declared, None, "{}", container.name);
        let more = filled.brimful.ratio_to(container.declared.unwrap().volume().unwrap().unwrap()).unwrap();
        assert!(more < exact("1.11"), "{}: {more}", container.name);
    }
}

/// Common practice, no source: the smaller the size, the lower its price and the higher its price per volume.
#[test]
fn a_smaller_size_asks_less_and_more_per_volume() {
    let book = book();
    let ledger = Ledger::of(&book);
    for drink in book.drinks() {
        let scope = Scope::Drink(drink.id);
        let side = side_by_side(&book, &ledger, scope, &sold_in(&book, scope)).unwrap();
        for pair in side.sizes.windows(2) {
            let [small, large] = pair else { unreachable!("two at a time") };
            let (small, large) = (small.sold.unwrap(), large.sold.unwrap());
            assert!(small.price < large.price && small.price_per_volume > large.price_per_volume, "{}", drink.name);
        }
        let cents = |offer: &Offer| offer.price.unwrap().major().minus(offer.price.unwrap().major().floor()).unwrap();
        let endings = &book.settings().endings;
        assert!(book.offers_of(drink.id).all(|offer| endings.iter().any(|it| it.major() == cents(offer))));
    }
}
