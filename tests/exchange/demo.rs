//! The demo book: what it holds, and its values against the tables that they are taken from.

use std::collections::{BTreeMap, BTreeSet};

use brimwright::book::{Book, DrinkKind, Edit, Offer, OfferId, Scope, Sold, Stage};
use brimwright::drink::fill::written_volume;
use brimwright::drink::ledger::{Ledger, OfferStatus};
use brimwright::exchange::write;
use brimwright::foundation::measure::{Date, Exact, Money, Unit};

use super::{FILE, demo};

#[test]
fn its_file_is_as_we_would_write_it() {
    assert_eq!(write(&demo()), FILE);
}

#[test]
fn it_holds_what_it_should() {
    let book = demo();
    assert_eq!(book.settings().name, "Marrowgate Juice Hall");
    assert!(book.settings().invented);
    assert_eq!(book.drinks().count(), 14);
    assert_eq!(book.containers().count(), 9);
    assert_eq!(book.ingredients().count(), 45);
    assert_eq!(book.packagings().count(), 19);
    assert_eq!(book.packaging_sets().count(), 2);
    assert_eq!(book.offers().count(), 39);
    let sharing = book.containers().filter(|container| !container.shared.is_empty()).count();
    assert_eq!(sharing, 7, "four bottles and three cups");
    let kinds: BTreeSet<DrinkKind> = book.drinks().map(|drink| drink.kind).collect();
    assert_eq!(kinds.len(), DrinkKind::ALL.len());
    let of_ingredients = book.ingredients().flat_map(|ingredient| &ingredient.packs);
    let of_packaging = book.packagings().flat_map(|packaging| &packaging.packs);
    let suppliers: BTreeSet<&str> = of_ingredients.chain(of_packaging).map(|pack| pack.supplier.as_str()).collect();
    assert_eq!(suppliers, BTreeSet::from(["", "Quillhaven Supply", "Tansywold Produce"]));
    let with_two_packs = book.ingredients().filter(|ingredient| ingredient.packs.len() == 2).count();
    assert_eq!(with_two_packs, 11);
    let sales = (book.weeks().count(), book.seen_prices().count(), book.trials().count(), book.scenarios().count());
    assert_eq!(sales, (8, 10, 1, 1));
}

/// Each priced offer has its usual week: 939 drinks together, added up apart (Python).
#[test]
fn what_it_usually_sells_is_known_of_every_priced_offer() {
    let book = demo();
    assert!(book.offers().all(|offer| offer.weekly.is_some() == offer.price.is_some()));
    let weekly = book.offers().filter_map(|offer| offer.weekly);
    assert_eq!(weekly.fold(Exact::ZERO, |sum, weekly| sum.plus(weekly).unwrap()), Exact::from(939));
}

/// What one contributed: from the change on as it does now, before it as at 25 cents less.
#[test]
fn its_weeks_are_those_of_every_priced_size_before_and_since_a_change_of_blended_ones() {
    let now = demo();
    let mut before = demo();
    let blended = |book: &Book, drink| book.belongs(drink, Scope::Kind(DrinkKind::Blended));
    let quarter = Money::from_major(Exact::new(25, 2));
    for offer in now.offers().filter(|offer| blended(&now, offer.drink)) {
        let price = Some(offer.price.unwrap().minus(quarter).unwrap());
        before.apply(&Edit::SetPrice { offer: offer.id(), price }).unwrap();
    }
    let [trial] = now.trials().collect::<Vec<_>>()[..] else { panic!("one trial") };
    let mondays: Vec<Date> = now.weeks().map(|week| week.monday).collect();
    assert_eq!(mondays, (0..8).map(|week| trial.first.plus_weeks(week)).collect::<Vec<_>>());
    assert_eq!((trial.start, trial.last), (trial.first.plus_weeks(5), None));
    let ledgers = [Ledger::of(&before), Ledger::of(&now)];
    for week in now.weeks() {
        let offers: Vec<OfferId> = week.sold.iter().map(Sold::offer).collect();
        let priced = |offer: &&Offer| offer.price.is_some();
        assert_eq!(offers, now.offers().filter(priced).map(Offer::id).collect::<Vec<_>>());
        let ledger = &ledgers[usize::from(week.monday >= trial.start)];
        for sold in &week.sold {
            let priced = ledger.get(sold.offer()).unwrap().as_ref().unwrap();
            let contribution = priced.asked.unwrap().contribution.major().rounded(8);
            assert_eq!(sold.contribution.major(), contribution, "{} {}", week.monday, sold.offer());
        }
    }
}

/// A usual week of a drink whose price did not change is what its eight weeks were on average; they differ.
#[test]
fn its_usual_weeks_of_all_but_blended_drinks_are_the_average_of_those_written_down() {
    let book = demo();
    let blended = |offer: &Offer| book.belongs(offer.drink, Scope::Kind(DrinkKind::Blended));
    for offer in book.offers().filter(|offer| offer.price.is_some() && !blended(offer)) {
        let sold = book.weeks().flat_map(|week| &week.sold).filter(|sold| sold.offer() == offer.id());
        let units: Vec<Exact> = sold.map(|sold| sold.units).collect();
        let sum = units.iter().fold(Exact::ZERO, |sum, units| sum.plus(*units).unwrap());
        assert_eq!(Some(sum.over(Exact::from(8)).unwrap()), offer.weekly, "{:?}", offer.id());
        assert!(units.iter().collect::<BTreeSet<_>>().len() >= 3, "{units:?}");
    }
}

#[test]
fn shops_that_are_made_up_say_so_and_the_owner_speaks_plainly() {
    let book = demo();
    for seen in book.seen_prices() {
        assert!(seen.place.ends_with(" (sample)"), "{}", seen.place);
    }
    let names = book.trials().map(|trial| trial.name.clone()).chain(book.scenarios().map(|kept| kept.name.clone()));
    assert_eq!(names.collect::<Vec<String>>(), ["Blended drinks up 25 cents", "Without the 24 oz cup"]);
}

#[test]
fn nothing_in_it_is_idle() {
    let book = demo();
    let idle = |key| book.needed_by(key).is_empty();
    let keys = book.records().map(|record| record.key());
    let unused: Vec<_> = keys.filter(|key| idle(*key)).map(|key| key.to_string()).collect();
    let nothing_needs = ["settings", "offer:", "week:", "seen-price:", "trial:", "scenario:", "batch:"];
    let idle = unused.iter().filter(|key| !nothing_needs.iter().any(|kind| key.starts_with(kind)));
    assert_eq!(idle.count(), 0, "{unused:?}");
}

#[test]
fn its_offers_stand_where_they_should() {
    let ledger = Ledger::of(&demo());
    let mut status: BTreeMap<OfferStatus, usize> = BTreeMap::new();
    for (_, result) in ledger.offers() {
        *status.entry(OfferStatus::from(result)).or_default() += 1;
    }
    let expected = [(OfferStatus::UnderTarget, 6), (OfferStatus::WithoutPrice, 1), (OfferStatus::OnTarget, 32)];
    assert_eq!(status, BTreeMap::from(expected));
}

#[test]
fn its_menu_prices_end_as_its_owner_likes_and_rise_with_the_size() {
    let book = demo();
    let ledger = Ledger::of(&book);
    for drink in book.drinks() {
        let mut sizes: Vec<_> = book
            .offers_of(drink.id)
            .filter_map(|offer| Some((ledger.get(offer.id())?.as_ref().ok()?.fill.volume, offer.price?)))
            .collect();
        sizes.sort();
        assert!(sizes.is_sorted_by(|small, large| small.1 < large.1), "{}", drink.name);
        for (_, price) in sizes {
            let cents = price.major().minus(price.major().floor()).unwrap();
            assert!(book.settings().endings.iter().any(|ending| ending.major() == cents), "{} {price:?}", drink.name);
        }
    }
}

#[test]
fn its_recipes_fill_the_size_that_they_are_written_at() {
    let book = demo();
    for drink in book.drinks() {
        let written = written_volume(&book, drink).unwrap();
        let reference = drink.reference.volume().unwrap().unwrap();
        let off = written.minus(reference).unwrap().millilitres();
        let off = off.over(Unit::UsFluidOunce.size()).unwrap();
        assert!(off <= Exact::new(5, 2) && off >= Exact::new(-5, 2), "{} {off}", drink.name);
    }
}

fn of_ingredient(book: &Book, name: &str, value: impl Fn(&brimwright::book::Ingredient) -> Option<Exact>) -> Exact {
    let ingredient = book.ingredients().find(|ingredient| ingredient.name == name).unwrap();
    value(ingredient).unwrap()
}

/// Source: USDA National Nutrient Database for Standard Reference 28 (2015), file WEIGHT: grams
/// of one US cup (236.5882365 mL): of the juice, or poured, mashed or puréed.
#[test]
fn densities_are_those_of_the_table() {
    let book = demo();
    let juices = [
        ("Apples", 248),
        ("Oranges", 248),
        ("Lemons", 244),
        ("Grapefruit", 247),
        ("Pineapples", 250),
        ("Carrots", 236),
    ];
    let in_drink = [
        ("Bananas", 225),
        ("Avocados", 230),
        ("Strawberries, frozen", 232),
        ("Almond milk", 240),
        ("Coconut water", 240),
        ("Whole milk", 244),
        ("Yogurt, plain", 245),
        ("Honey", 339),
        ("Maple syrup", 315),
        ("Peanut butter", 258),
        ("Almond butter", 250),
    ];
    let of_cup = |grams: u32| Exact::from(grams).over(Exact::new(2_365_882_365, 7)).unwrap().rounded(3);
    for (name, grams) in juices {
        let density = of_ingredient(&book, name, |it| it.juice_density.map(|density| density.grams_per_millilitre()));
        assert_eq!(density, of_cup(grams), "{name}");
    }
    for (name, grams) in in_drink {
        let density = of_ingredient(&book, name, |it| it.density.map(|density| density.grams_per_millilitre()));
        assert_eq!(density, of_cup(grams), "{name}");
    }
    // Source: IAPWS R10-06(2009), ice at 0 C, 916.72 kg/m3; IAPWS-95, water at 20 C, 998.207.
    let density = |name| of_ingredient(&book, name, |it| it.density.map(|density| density.grams_per_millilitre()));
    assert_eq!(density("Ice"), Exact::new(9167, 4));
    assert_eq!(density("Water"), Exact::new(998, 3));
}

/// Source: the same database, file FOOD_DES: refuse in percent of the weight as purchased.
#[test]
fn trim_yields_are_those_of_the_table() {
    let book = demo();
    let refuse = [
        ("Apples", 10),
        ("Pineapples", 49),
        ("Carrots", 11),
        ("Celery", 11),
        ("Cucumbers", 3),
        ("Beets", 33),
        ("Kale", 28),
        ("Romaine", 6),
        ("Parsley", 5),
        ("Ginger root", 7),
        ("Bananas", 36),
        ("Avocados", 26),
        ("Watermelons", 48),
        ("Mint", 59),
    ];
    for (name, percent) in refuse {
        let trim = of_ingredient(&book, name, |it| Some(it.trim_yield.fraction()));
        assert_eq!(trim, Exact::new(100 - percent, 2), "{name}");
    }
}

#[test]
fn every_stage_is_shown() {
    let book = demo();
    let stages: BTreeSet<Stage> = book.drinks().flat_map(|drink| &drink.lines).map(|line| line.stage).collect();
    assert_eq!(stages.len(), Stage::ALL.len());
}
