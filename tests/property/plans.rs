//! Plans of sizes against the book itself: each plan's offers are put into a copy of the book,
//! the whole of it is computed anew, and the plan's figures are added up from there by other
//! means than the engine's. What must hold of every plan besides.

use std::collections::BTreeSet;

use brimwright::book::{
    Book, Container, ContainerId, DrinkId, Edit, Key, Offer, OfferId, Pack, PackagingId, PackagingPart, Record, Scope,
    Settings, Tier,
};
use brimwright::drink::ledger::Ledger;
use brimwright::foundation::measure::{Exact, Money, Share};
use brimwright::sizes::plan::{Candidates, Guess, Plan, plan, plans};
use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;

use crate::number;
use crate::support::{
    book, container, container_id, drink, drink_id, exact, ingredient, line, offer_id, pack, settings, use_of, vessel,
};

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

fn guess() -> impl Strategy<Value = Guess> {
    let share = || number(100, 1).prop_map(|percent| Share::from_fraction(percent.over(exact("100")).unwrap()));
    let shares = vec(option::of(share()), CONTAINERS as usize);
    let typed = |shares: Vec<Option<Share>>| -> Vec<(ContainerId, Share)> {
        (1..).zip(shares).filter_map(|(id, share)| Some((container_id(id), share?))).collect()
    };
    let shares = prop_oneof![1 => Just(Vec::new()), 2 => shares.prop_map(typed)];
    let kept = prop_oneof![1 => Just(None), 1 => share().prop_map(Some)];
    (number(9, 1), shares, option::of(number(60, 1)), kept, chosen()).prop_map(
        |(cover, shares, unknown, kept, sizes)| {
            let kept = kept.map(|kept| (sizes, kept)).into_iter().collect();
            Guess { cover, shares, unknown, kept }
        },
    )
}

/// Some of the containers, by rising fill.
fn chosen() -> impl Strategy<Value = Vec<ContainerId>> {
    (1..(1_u64 << CONTAINERS)).prop_map(of_bits)
}

fn of_bits(bits: u64) -> Vec<ContainerId> {
    (0..CONTAINERS).filter(|at| bits >> at & 1 == 1).map(|at| container_id(at + 1)).collect()
}

fn all() -> Vec<ContainerId> {
    of_bits((1 << CONTAINERS) - 1)
}

fn sum(numbers: impl Iterator<Item = Exact>) -> Exact {
    numbers.fold(Exact::ZERO, |sum, number| sum.plus(number).unwrap())
}

fn weekly_today(book: &Book, drink: DrinkId) -> Option<Exact> {
    let known: Vec<Exact> = book.offers_of(drink).filter_map(|offer| offer.weekly).collect();
    (!known.is_empty()).then(|| sum(known.into_iter()))
}

/// The book with the plan's offers and no others, and its ledger.
fn as_if(book: &Book, plan: &Plan) -> (Book, Ledger) {
    let mut book = book.clone();
    let today: Vec<OfferId> = book.offers().map(Offer::id).collect();
    for id in today {
        book.apply(&Edit::Remove(Key::Offer(id))).unwrap();
    }
    for offer in &plan.offers {
        book.apply(&Edit::Put(Record::Offer(offer.clone()))).unwrap();
    }
    let ledger = Ledger::of(&book);
    (book, ledger)
}

proptest! {
    #[test]
    fn a_plan_earns_what_the_book_would_with_its_offers(book in menu(), guess in guess(), sizes in chosen()) {
        let candidates = Candidates::of(&book, Scope::Menu, &all());
        let plan = plan(&book, &candidates, &guess, &sizes).unwrap();
        let (then, ledger) = as_if(&book, &plan);
        prop_assert_eq!(plan.totals.cards, DRINKS as usize * sizes.len(), "every drink in every size can be made");
        let mut earned = Exact::ZERO;
        for offer in then.offers() {
            let asked = ledger.get(offer.id()).unwrap().as_ref().unwrap().asked.unwrap();
            earned = earned.plus(asked.contribution.major().times(offer.weekly.unwrap_or_default()).unwrap()).unwrap();
            // The price of today, else the one suggested.
            let today = book.offer(offer.id()).and_then(|offer| offer.price);
            let suggested = ledger.get(offer.id()).unwrap().as_ref().unwrap().suggestion.unwrap().menu;
            prop_assert_eq!(asked.menu, today.unwrap_or(suggested));
        }
        prop_assert!(crate::near(plan.totals.contribution.major(), earned, "0.0000000001"));
    }

    #[test]
    fn what_is_sold_of_a_drink_is_what_stays_of_its_sales_today(book in menu(), guess in guess(), sizes in chosen()) {
        let candidates = Candidates::of(&book, Scope::Menu, &all());
        let plan = plan(&book, &candidates, &guess, &sizes).unwrap();
        let kept = guess.kept_by(&sizes).fraction();
        for id in (1..=DRINKS).map(drink_id) {
            let of_it: Vec<Option<Exact>> =
                plan.offers.iter().filter(|offer| offer.drink == id).map(|offer| offer.weekly).collect();
            match weekly_today(&book, id).or(guess.unknown) {
                Some(today) => {
                    prop_assert_eq!(sum(of_it.iter().map(|it| it.unwrap())), today.times(kept).unwrap());
                    prop_assert!(of_it.iter().all(|it| !it.unwrap().is_negative()));
                }
                None => prop_assert!(of_it.iter().all(Option::is_none)),
            }
        }
    }

    #[test]
    fn opening_stock_covers_the_weeks_and_no_pack_is_bought_for_nothing(
        book in menu(), guess in guess(), sizes in chosen(),
    ) {
        let candidates = Candidates::of(&book, Scope::Menu, &all());
        let plan = plan(&book, &candidates, &guess, &sizes).unwrap();
        let rest = Share::WHOLE.minus(book.settings().unsold).unwrap().fraction();
        let mut cash = Exact::ZERO;
        let mut kinds = BTreeSet::new();
        for stock in &plan.totals.stock {
            kinds.insert(stock.packaging);
            let used = |offer: &&Offer| {
                let container = book.container(offer.container).unwrap();
                let uses = book.set_of(container).filter(|used| used.packaging == stock.packaging);
                let count = sum(uses.map(|used| used.count));
                count.times(offer.weekly.unwrap_or_default()).unwrap()
            };
            let a_week = sum(plan.offers.iter().map(|offer| used(&offer))).over(rest).unwrap();
            prop_assert!(crate::near(stock.a_week, a_week, "0.00000001"));
            let pack = &book.packaging(stock.packaging).unwrap().packs[0];
            prop_assert!(stock.packs >= pack.at_a_time, "the least order");
            prop_assert!(stock.packs == stock.packs.ceiling(), "whole packs");
            prop_assert!(stock.pieces.plus(exact("0.000001")).unwrap() >= a_week.times(guess.cover).unwrap());
            let one_less = stock.packs.minus(Exact::ONE).unwrap();
            let enough = one_less.times(pack.contents.number).unwrap() >= a_week.times(guess.cover).unwrap();
            prop_assert!(!enough || one_less < pack.at_a_time, "one pack less would do");
            // By the tiers read one by one: there is one at most, from 4.
            let cheaper = pack.tiers.first().filter(|_| stock.packs >= exact("4"));
            let price = cheaper.map_or(pack.price, |tier| tier.price).plus(pack.surcharge).unwrap();
            prop_assert_eq!(stock.cash, price.times(stock.packs).unwrap());
            cash = cash.plus(stock.cash.major()).unwrap();
            if let Some(weeks) = stock.weeks {
                prop_assert!(plan.totals.weeks.unwrap() <= weeks);
            }
        }
        prop_assert_eq!(plan.totals.cash.major(), cash);
        let expected: BTreeSet<PackagingId> = sizes
            .iter()
            .flat_map(|size| book.set_of(book.container(*size).unwrap()).map(|used| used.packaging))
            .collect();
        prop_assert_eq!(kinds, expected);
        prop_assert_eq!(plan.totals.kinds(PackagingPart::Vessel), sizes.len() + 1, "and the lid, a vessel here");
    }

    #[test]
    fn every_set_of_one_to_three_sizes_is_ranked_once(book in menu(), guess in guess(), own in chosen()) {
        let candidates = Candidates::of(&book, Scope::Menu, &all());
        let ranked = plans(&book, &candidates, &guess, &[own.clone(), own.clone()]).unwrap();
        let brute = (1..(1_u64 << CONTAINERS)).map(of_bits).filter(|set| set.len() <= 3 || *set == own);
        let brute: BTreeSet<Vec<ContainerId>> = brute.collect();
        let found: Vec<Vec<ContainerId>> = ranked.iter().map(|plan| plan.sizes.clone()).collect();
        prop_assert_eq!(found.len(), brute.len());
        prop_assert_eq!(found.into_iter().collect::<BTreeSet<_>>(), brute);
        let best = ranked.iter().map(|plan| plan.totals.contribution).max().unwrap();
        prop_assert_eq!(ranked[0].totals.contribution, best);
        prop_assert!(ranked.is_sorted_by(|one, next| one.totals.contribution >= next.totals.contribution));
        for one in &ranked {
            prop_assert_eq!(one, &plan(&book, &candidates, &guess, &one.sizes).unwrap());
        }
    }
}
