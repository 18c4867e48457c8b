//! What the demo book shows of shapes, shared packaging, tiers, ice, air, steps, allergens and
//! fillings.

use std::collections::{BTreeMap, BTreeSet};

use brimwright::book::{Allergen, Brimful, Headspace, Ice, IcePlace, Key, Record, Scaling};
use brimwright::drink::fill::fill;
use brimwright::drink::packaged::packaged_fill;
use brimwright::foundation::measure::{Dimension, Exact};

use super::demo;
use crate::support::{amount, container_id, exact, offer_id, share};

fn near(one: Exact, other: &str, allowed: &str) -> bool {
    one.minus(exact(other)).unwrap().abs() <= exact(allowed)
}

#[test]
fn containers_are_known_in_every_way() {
    let book = demo();
    let ways: Vec<&str> = book
        .containers()
        .map(|container| match container.brimful {
            Brimful::Weighed(_) => "weighed",
            Brimful::Tapered(_) => "tapered",
            Brimful::Poured(_) => "poured",
        })
        .collect();
    let expected = ["weighed", "weighed", "weighed", "poured", "weighed", "weighed", "tapered", "tapered", "tapered"];
    assert_eq!(ways, expected);
    let by_height = book.containers().filter(|container| matches!(container.headspace, Headspace::Height(_)));
    assert_eq!(by_height.map(|container| container.id).collect::<Vec<_>>(), [container_id(9)]);
    for container in book.containers() {
        let filled = fill(container).unwrap();
        assert_eq!(filled.short_of_declared, None, "{}", container.name);
        let declared = container.declared.unwrap().volume().unwrap().unwrap();
        let more = filled.brimful.ratio_to(declared).unwrap();
        assert!(more < exact("1.11"), "{}: {more} times what it is declared as", container.name);
    }
}

/// The cups by pi/12 * h * (d^2 + d*e + e^2), in inches of 25.4 mm, computed apart in binary
/// fractions to six digits.
#[test]
fn cups_hold_what_their_measures_say() {
    let book = demo();
    for (id, millilitres) in [(7, "381.014"), (8, "510.465"), (9, "764.161")] {
        let brimful = fill(book.container(container_id(id)).unwrap()).unwrap().brimful;
        assert!(near(brimful.millilitres(), millilitres, "0.001"), "{id}: {brimful:?}");
    }
}

#[test]
fn recipes_follow_the_size_in_every_way() {
    let book = demo();
    let lines: Vec<_> = book.drinks().flat_map(|drink| &drink.lines).collect();
    let count = |which: fn(&Scaling) -> bool| lines.iter().filter(|line| which(&line.scaling)).count();
    assert_eq!(count(|scaling| matches!(scaling, Scaling::Stepped(_))), 2);
    assert_eq!(count(|scaling| *scaling == Scaling::TopUp), 2);
    assert_eq!(count(|scaling| *scaling == Scaling::Fixed), 3);
    let ices: Vec<Ice> = lines.iter().filter_map(|line| line.ice).collect();
    let at = |place| ices.iter().filter(|ice| ice.place == place).count();
    assert_eq!([IcePlace::BlendedIn, IcePlace::HeldUnder, IcePlace::Floating].map(at), [5, 2, 1]);
    let scoops = lines.iter().filter(|line| line.ice.is_some() && line.amount.unit.dimension() == Dimension::Volume);
    assert_eq!(scoops.count(), 1);
    let airs: BTreeSet<_> = book.drinks().map(|drink| drink.air).filter(|air| air.is_positive()).collect();
    assert_eq!(airs, BTreeSet::from(["0.1", "0.12", "0.15"].map(share)));
}

/// Labels are bought by four thousand; for less money five thousand could be had: 4 * 58 against 5 * 44.
#[test]
fn three_packagings_are_cheaper_by_the_number() {
    let book = demo();
    let packs = book.packagings().flat_map(|packaging| packaging.packs.iter().map(|pack| (&packaging.name, pack)));
    let tiered: BTreeMap<_, _> =
        packs.filter(|(_, pack)| !pack.tiers.is_empty()).collect::<Vec<_>>().into_iter().collect();
    let now: Vec<_> = tiered.values().map(|pack| (pack.at_a_time, pack.price, pack.price_now())).collect();
    let money = crate::support::money;
    let bottle = (exact("4"), money("37.5"), money("37.5"));
    let label = (exact("4"), money("58"), money("58"));
    assert_eq!(now, [bottle, (exact("3"), money("99"), money("94.5")), label]);
    let (_, label) = tiered.last_key_value().unwrap();
    let paid = |packs: &str| label.price_at(exact(packs)).times(exact(packs)).unwrap();
    assert_eq!([paid("4"), paid("5")], [money("232"), money("220")]);
}

/// Source: Regulation (EU) No 1169/2011, Annex II (celery, milk, soybeans, peanuts, nuts, cereals
/// containing gluten), and 21 U.S.C. 321(qq); that a milk powder may hold soybeans is invented.
#[test]
fn allergens_are_stated_for_all_but_two() {
    let book = demo();
    let open: Vec<&str> = book.ingredients().filter(|it| it.allergens.is_none()).map(|it| it.name.as_str()).collect();
    assert_eq!(open, ["Cocoa powder", "Cayenne, ground"]);
    let holding: BTreeMap<&str, &[Allergen]> = book
        .ingredients()
        .filter_map(|it| Some((it.name.as_str(), it.allergens.as_deref().filter(|list| !list.is_empty())?)))
        .collect();
    let expected: [(&str, &[Allergen]); 9] = [
        ("Celery", &[Allergen::Celery]),
        ("Almond milk", &[Allergen::TreeNuts]),
        ("Oat milk", &[Allergen::OtherGluten]),
        ("Whole milk", &[Allergen::Milk]),
        ("Yogurt, plain", &[Allergen::Milk]),
        ("Peanut butter", &[Allergen::Peanuts]),
        ("Almond butter", &[Allergen::TreeNuts]),
        ("Rolled oats", &[Allergen::OtherGluten]),
        ("Whey protein powder", &[Allergen::Soybeans, Allergen::Milk]),
    ];
    assert_eq!(holding, BTreeMap::from(expected));
}

/// Standard deviations by Python's `statistics.stdev`; the targets by hand: 12 - 0.27 + 3 *
/// 0.1267197 = 12.1101592 fl oz, the fullest three deviations more; 1.959964 * 1.2585914 mL, divided
/// by the root of 36, over 16 fl oz. The variations that are allowed are invented.
#[test]
fn one_bottle_is_filled_evenly_and_one_is_not() {
    let book = demo();
    let packaged: Vec<_> = book.offers().filter(|offer| offer.filling.is_some()).collect();
    assert_eq!(packaged.iter().map(|offer| offer.id()).collect::<Vec<_>>(), [offer_id(1, 4), offer_id(2, 3)]);
    assert!(packaged.iter().all(|offer| offer.filling.as_ref().is_some_and(|filling| filling.nets.len() == 20)));
    let [even, uneven] = [packaged[0], packaged[1]].map(|offer| packaged_fill(&book, offer).unwrap());
    assert!(near(even.target.giveaway.millilitres(), "0.411132", "0.000001"), "{:?}", even.target);
    assert_eq!(
        (even.nominal, even.target.over, even.too_short),
        (amount("16 fl oz").volume().unwrap().unwrap(), None, 0)
    );
    // 487.025 g and 1.2895838 g, of 6 parts of 1.048 g/mL, 4.5 of 1.005, 3 of 1.01, 1.5 of 1.015
    // and 1 of 1.031: 16.394 / 16 = 1.024625 g/mL.
    assert!(near(even.spread.mean, "475.320239", "0.000001"), "{:?}", even.spread);
    assert!(near(even.spread.deviation, "1.258591", "0.000001"), "{:?}", even.spread);
    let ounces = |volume: Exact| volume.over(exact("29.5735295625")).unwrap();
    assert!(near(ounces(uneven.spread.deviation), "0.1267197488", "0.0000000001"));
    assert!(near(ounces(uneven.target.target.millilitres()), "12.1101592464", "0.0000000001"));
    assert!(near(ounces(uneven.target.highest.millilitres()), "12.4903184928", "0.0000000001"));
    assert_eq!((uneven.target.over, uneven.too_short), (None, 0));
    let cold = packaged.iter().map(|offer| book.drink(offer.drink).unwrap().keep_refrigerated);
    assert!(cold.eq([true, true]) && [even, uneven].iter().all(|fill| fill.measured.is_some()));
}

/// Packaging in a set that containers share costs as that of their own.
#[test]
fn a_cup_takes_its_lid_and_what_every_cup_takes() {
    let book = demo();
    let cup = book.container(container_id(8)).unwrap();
    let name = |packaging| book.name(Key::Packaging(packaging));
    let names: Vec<String> = book.set_of(cup).map(|used| name(used.packaging)).collect();
    assert_eq!(names, ["16 oz cold cup", "Cup lid, large", "Paper straw", "Paper sleeve"]);
    let sets: Vec<String> =
        book.packaging_sets().map(|set| Record::PackagingSet(set.clone()).name().to_string()).collect();
    assert_eq!(sets, ["With every bottle", "With every cup"]);
}
