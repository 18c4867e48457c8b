//! Yields, packs and portions against textbook examples; the source of each is named in
//! `data/worked_examples.csv` and beside the check.

use brimwright::book::{Ingredient, Record, Stage, Weighing};
use brimwright::buying::yield_log::{Step, adopt};
use brimwright::drink::cost::{piece_cost, usable_cost};
use brimwright::drink::yields::{bought_for, yield_to};
use brimwright::foundation::measure::{Dimension, Exact, Unit};

use crate::example;
use crate::support::{
    amount, book, day, exact, ingredient, ingredient_id, measure, money, pack, settings, share, vessel,
};

/// Of the bought mass, this share is left.
fn trimmed_to(left: &str) -> Ingredient {
    Ingredient { trim_yield: share(left), ..ingredient(1, [pack(1, "1 lb", "1")]) }
}

/// The pounds to buy for a trimmed pound.
fn pounds_bought(ingredient: &Ingredient) -> Exact {
    let bought = bought_for(ingredient, Stage::Trimmed, measure("1 lb"), Dimension::Mass).unwrap();
    bought.dividend.over(bought.divisor).unwrap().over(Unit::Pound.size()).unwrap()
}

#[test]
fn a_yield_is_usable_over_bought() {
    // BC Cook Articulation Committee, Basic Kitchen and Food Service Management, Yield Testing:
    // of 1 kg of carrots 800 g are usable. Weighed so, and the yield adopted.
    let (bought, trimmed) = (amount("1 kg"), Some(amount("800 g")));
    let weighing = Weighing { day: day("2026-11-23"), bought, trimmed, pressed: None };
    let weighed = Ingredient { weighings: vec![weighing], ..ingredient(1, [pack(1, "1 kg", "3")]) };
    let mut book = book(settings(), [Record::Ingredient(weighed)]);
    let adopted = adopt(&book, ingredient_id(1), &[Step::Trim]).unwrap().expect("another yield than before");
    book.apply(&adopted).unwrap();
    let carrots = book.ingredient(ingredient_id(1)).unwrap();
    assert_eq!(example("W1"), ("80 % (implied)".into(), "0.8".into()));
    assert_eq!(yield_to(carrots, Stage::Trimmed), Ok(share("0.8")));
    // So the 800 g take the whole kilogram, and cost all of it.
    let bought = bought_for(carrots, Stage::Trimmed, measure("800 g"), Dimension::Mass);
    assert_eq!(bought.map(|bought| bought.dividend.over(bought.divisor)), Ok(Ok(exact("1000"))));
    assert_eq!(usable_cost(carrots, &carrots.packs[0], Stage::Trimmed, measure("800 g")), Ok(money("3")));
}

#[test]
fn the_yield_factor_is_one_over_the_yield() {
    // VCC Learning Centre, Culinary Math: Recipe Costing: a yield of 75 % has factor 1.333.
    assert_eq!(example("W2").0, "1.333");
    assert_eq!(pounds_bought(&trimmed_to("0.75")).rounded(3), exact("1.333"));
}

#[test]
fn bought_cost_times_the_factor_is_usable_cost() {
    // The same: 10 lb of apples at 5.60, factor 1.333. The source rounds the factor to three
    // decimals before it multiplies, we round nothing; so 7.4667 beside its 7.465.
    let (printed, computed) = example("W3");
    assert_eq!((printed.as_str(), computed.as_str()), ("$7.465", "7.4648 (7.4667 unrounded factor)"));
    let ten_pounds = pack(1, "10 lb", "5.60");
    let apples = Ingredient { trim_yield: share("0.75"), ..ingredient(1, [ten_pounds.clone()]) };
    let cost = usable_cost(&apples, &ten_pounds, Stage::Trimmed, measure("10 lb")).unwrap();
    assert_eq!(cost.major().rounded(4), exact("7.4667"));
}

#[test]
fn bought_is_usable_over_yield() {
    // AP/EP pictorial guide: 1 lb of green pepper at 82 %.
    assert_eq!(example("W16").1, "1.219512 lb");
    assert_eq!(pounds_bought(&trimmed_to("0.82")).rounded(6), exact("1.219512"));
}

#[test]
fn a_pack_gives_the_cost_of_its_unit() {
    // VCC Recipe Costing: 20 lb of flour at 10.50.
    assert_eq!(example("W4"), ("$0.525/lb".into(), "0.525".into()));
    let flour = pack(1, "20 lb", "10.50");
    let a_pound = usable_cost(&ingredient(1, [flour.clone()]), &flour, Stage::AsBought, measure("1 lb"));
    assert_eq!(a_pound, Ok(money("0.525")));

    // MTH 81 lecture notes ch. 11: 173.89 for 200 portions.
    assert_eq!(example("W5"), ("$0.86945".into(), "0.86945".into()));
    assert_eq!(piece_cost(&vessel(1, [pack(1, "200 ea", "173.89")]), Exact::ONE), Ok(money("0.86945")));
}

#[test]
fn six_cans_by_the_ounce_and_by_the_can() {
    // Culinary Math ch. 6: six 12-fl-oz cans at 1.99.
    assert_eq!(example("W14").1, "0.0276389 per fl oz; 0.3316667 per can");
    let cans = pack(1, "72 fl oz", "1.99");
    let an_ounce = usable_cost(&ingredient(1, [cans.clone()]), &cans, Stage::AsBought, measure("1 fl oz")).unwrap();
    assert_eq!(an_ounce.major().rounded(7), exact("0.0276389"));
    let a_can = piece_cost(&vessel(1, [pack(1, "6 ea", "1.99")]), Exact::ONE).unwrap();
    assert_eq!(a_can.major().rounded(7), exact("0.3316667"));
}
