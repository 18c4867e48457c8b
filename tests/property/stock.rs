//! Opening stock against sums of another make: enough for the weeks, and no pack for nothing.

use std::collections::BTreeSet;

use brimwright::book::{Book, Container, Offer, Pack, PackagingId, Record, Settings, Tier};
use brimwright::foundation::measure::{Exact, Money, Share};
use brimwright::sizes::opening_stock::opening_stock;
use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;

use crate::number;
use crate::support::{book, container, drink, exact, ingredient, line, offer_id, pack, settings, use_of, vessel};

const DRINKS: u64 = 3;
const CONTAINERS: u64 = 4;

/// Drinks 1 to 3 of one ingredient each, in containers 1 to 4 with a bottle of their own and a
/// lid that all share; some offers, with or without price and weekly number.
fn menu() -> impl Strategy<Value = Book> {
    let price = || number(30, 2).prop_map(|price| Money::from_major(price.plus(Exact::ONE).unwrap()));
    let tier = |price| Tier { from: exact("4"), price };
    let packs = (1..300_i64, price(), price(), 1..6_i64, option::of(price())).prop_map(
        move |(holds, price, surcharge, at_a_time, cheaper)| Pack {
            at_a_time: Exact::new(at_a_time, 0),
            tiers: cheaper.map(tier).into_iter().collect(),
            price,
            surcharge,
            ..pack(1, &format!("{holds} ea"), "1")
        },
    );
    let costs = vec(1..30_i64, DRINKS as usize);
    let offers = vec((option::of(price()), option::of(number(90, 1)), any::<bool>()), (DRINKS * CONTAINERS) as usize);
    let unsold = (0..50_i64).prop_map(|percent| Share::from_fraction(Exact::new(percent, 2)));
    (costs, vec(packs, CONTAINERS as usize + 1), offers, unsold).prop_map(|(costs, packs, offers, unsold)| {
        let mut records = Vec::new();
        for (id, packs) in (1..).zip(packs) {
            records.push(Record::Packaging(vessel(id, [packs])));
        }
        for id in 1..=CONTAINERS {
            let set = vec![use_of(id, "1"), use_of(CONTAINERS + 1, "2")];
            records.push(Record::Container(Container { set, ..container(id, &format!("{} mL", 150 * id)) }));
        }
        for (id, cost) in (1..).zip(costs) {
            records.push(Record::Ingredient(ingredient(id, [pack(1, "1 L", &cost.to_string())])));
            records.push(Record::Drink(drink(id, "300 mL", [line(1, id, "300 mL")])));
        }
        let pairs = (1..=DRINKS).flat_map(|drink| (1..=CONTAINERS).map(move |container| offer_id(drink, container)));
        for (id, (price, weekly, there)) in pairs.zip(offers) {
            if there {
                records.push(Record::Offer(Offer { price, weekly, ..Offer::new(id) }));
            }
        }
        book(Settings { unsold, ..settings() }, records)
    })
}

fn sum(numbers: impl Iterator<Item = Exact>) -> Exact {
    numbers.fold(Exact::ZERO, |sum, number| sum.plus(number).unwrap())
}

proptest! {
    #[test]
    fn opening_stock_covers_the_weeks_and_no_pack_is_bought_for_nothing(book in menu(), cover in number(9, 1)) {
        let stock = opening_stock(&book, &mut book.offers(), cover).unwrap();
        let rest = Share::WHOLE.minus(book.settings().unsold).unwrap().fraction();
        let mut kinds = BTreeSet::new();
        for stock in &stock {
            kinds.insert(stock.packaging);
            let used = |offer: &Offer| {
                let container = book.container(offer.container).unwrap();
                let uses = book.set_of(container).filter(|used| used.packaging == stock.packaging);
                let count = sum(uses.map(|used| used.count));
                count.times(offer.weekly.unwrap_or_default()).unwrap()
            };
            let a_week = sum(book.offers().map(used)).over(rest).unwrap();
            prop_assert!(crate::near(stock.a_week, a_week, "0.00000001"));
            let pack = &book.packaging(stock.packaging).unwrap().packs[0];
            prop_assert!(stock.packs >= pack.at_a_time, "the least order");
            prop_assert!(stock.packs == stock.packs.ceiling(), "whole packs");
            prop_assert!(stock.pieces.plus(exact("0.000001")).unwrap() >= a_week.times(cover).unwrap());
            let one_less = stock.packs.minus(Exact::ONE).unwrap();
            let enough = one_less.times(pack.contents.number).unwrap() >= a_week.times(cover).unwrap();
            prop_assert!(!enough || one_less < pack.at_a_time, "one pack less would do");
            // By the tiers read one by one: there is one at most, from 4.
            let cheaper = pack.tiers.first().filter(|_| stock.packs >= exact("4"));
            let price = cheaper.map_or(pack.price, |tier| tier.price).plus(pack.surcharge).unwrap();
            prop_assert_eq!(stock.cash, price.times(stock.packs).unwrap());
            let weeks = a_week.is_positive().then(|| stock.pieces.over(a_week).unwrap());
            prop_assert_eq!(stock.weeks.is_some(), weeks.is_some());
            if let Some((one, other)) = stock.weeks.zip(weeks) {
                prop_assert!(crate::near(one, other, "0.000001"));
            }
        }
        let used = book.offers().flat_map(|offer| book.set_of(book.container(offer.container).unwrap()));
        let expected: BTreeSet<PackagingId> = used.map(|used| used.packaging).collect();
        prop_assert_eq!(kinds, expected);
    }
}
