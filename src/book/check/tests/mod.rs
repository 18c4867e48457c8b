mod containers;
mod days;
mod drinks;
mod goods;
mod settings;

use super::values::all_different;
use crate::book::{
    Accepted, Allergen, Brimful, Container, CostBasis, Drink, Field, FillRule, Filling, FlatCost, Goods, Headspace,
    Ice, IcePlace, Ingredient, Labour, Line, Offer, Pack, PackagingSet, PackagingSetId, PaymentFee, Problem, Reading,
    Record, Refusal, Scaling, Scenario, SeenPrice, Settings, Tapered, Tax, TaxPlace, Tier, TillColumns, Trial, Week,
};
use crate::foundation::measure::{Amount, Currency, Exact, Money, Scale, Share, Temperature, Unit};
use crate::support::{
    amount, container as a_container, density, drink as a_drink, exact, grams, ingredient as an_ingredient, length,
    line, money, offer as an_offer, pack, seconds, settings as some_settings, share, use_of, vessel,
};
use crate::support::{day, scenario as a_scenario, seen_price as a_seen_price, trial as a_trial, week as a_week};

/// What is wrong with a record.
fn wrong(record: Record) -> Option<(Field, Problem)> {
    match super::record(&record) {
        Ok(()) => None,
        Err(Refusal::Field { key, field, problem }) if key == record.key() => Some((field, problem)),
        Err(other) => panic!("{other:?}"),
    }
}

fn ingredient_with(change: impl FnOnce(&mut Ingredient)) -> Option<(Field, Problem)> {
    let mut record = an_ingredient(1, [pack(1, "1 kg", "1")]);
    change(&mut record);
    wrong(Record::Ingredient(record))
}

fn container_with(change: impl FnOnce(&mut Container)) -> Option<(Field, Problem)> {
    let mut record = a_container(1, "500 mL");
    change(&mut record);
    wrong(Record::Container(record))
}

fn drink_with(change: impl FnOnce(&mut Drink)) -> Option<(Field, Problem)> {
    let mut record = a_drink(1, "500 mL", [line(1, 1, "1 mL"), line(2, 1, "1 mL")]);
    change(&mut record);
    wrong(Record::Drink(record))
}

fn settings_with(change: impl FnOnce(&mut Settings)) -> Option<(Field, Problem)> {
    let mut record = some_settings();
    change(&mut record);
    wrong(Record::Settings(Box::new(record)))
}

fn is(field: Field, problem: Problem) -> Option<(Field, Problem)> {
    Some((field, problem))
}

#[test]
fn plain_records_hold() {
    assert_eq!(ingredient_with(|_| ()), None);
    assert_eq!(container_with(|_| ()), None);
    assert_eq!(drink_with(|_| ()), None);
    assert_eq!(settings_with(|_| ()), None);
}

#[test]
fn names() {
    assert_eq!(ingredient_with(|record| record.name = "  ".into()), is(Field::Name, Problem::Empty));
    // Zero-width, bidi mark, soft hyphen, Hangul filler, Braille blank, no-break space, control.
    for unseen in ["\u{200b}", "\u{202e}", "\u{ad}", "\u{3164}", "\u{2800}", "\u{a0}\u{2060} ", "\u{7}"] {
        let empty = is(Field::Name, Problem::Empty);
        assert_eq!(drink_with(|record| record.name = unseen.into()), empty, "{unseen:?}");
        assert_eq!(ingredient_with(|record| record.name = unseen.repeat(3)), empty, "{unseen:?}");
        assert_eq!(settings_with(|record| record.name = unseen.into()), empty, "{unseen:?}");
    }
    assert_eq!(container_with(|record| record.name = "é".repeat(81)), is(Field::Name, Problem::TooLong));
    assert_eq!(drink_with(|record| record.name = "é".repeat(80)), None);
    assert_eq!(settings_with(|record| record.name = String::new()), is(Field::Name, Problem::Empty));
}

#[test]
fn numbers_that_a_book_cannot_keep() {
    let endless = Exact::ONE.over(exact("3")).unwrap();
    let long = Exact::new(1_000_000_000, 0);
    let price = ingredient_with(|record| record.packs[0].price = Money::from_major(endless));
    assert_eq!(price, is(Field::PackPrice, Problem::TooLarge));
    let contents = ingredient_with(|record| record.packs[0].contents.number = long);
    assert_eq!(contents, is(Field::Contents, Problem::TooLarge));
    let trim = ingredient_with(|record| record.trim_yield = Share::from_fraction(endless));
    assert_eq!(trim, is(Field::TrimYield, Problem::TooLarge));
    let brimful = container_with(|record| record.brimful = Brimful::Weighed(Amount::new(endless, Unit::Millilitre)));
    assert_eq!(brimful, is(Field::Brimful, Problem::TooLarge));
    let loss = drink_with(|record| record.process_loss = Share::from_fraction(endless));
    assert_eq!(loss, is(Field::ProcessLoss, Problem::TooLarge));
    assert_eq!(drink_with(|record| record.labour.batch = long), is(Field::Batch, Problem::TooLarge));
}

/// Counts how often it is compared.
#[derive(PartialEq, Eq)]
struct Counted<'a>(u64, &'a std::cell::Cell<usize>);

impl PartialOrd for Counted<'_> {
    fn partial_cmp(&self, other: &Self) -> Option<std::cmp::Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for Counted<'_> {
    fn cmp(&self, other: &Self) -> std::cmp::Ordering {
        self.1.set(self.1.get() + 1);
        self.0.cmp(&other.0)
    }
}

#[test]
fn ten_times_as_long_a_list_is_little_more_than_ten_times_the_work() {
    let compared = |length: u64| {
        let count = std::cell::Cell::new(0);
        let mut scattered = (0..length).map(|number| Counted(number.wrapping_mul(0x9e37_79b9_7f4a_7c15), &count));
        assert!(all_different(&mut scattered));
        count.get()
    };
    let (short, long) = (compared(3_000), compared(30_000));
    assert!(long < 20 * short, "{short} and {long} comparisons");
    let count = std::cell::Cell::new(0);
    assert!(!all_different(&mut [1, 2, 3, 2].into_iter().map(|number| Counted(number, &count))));
}
