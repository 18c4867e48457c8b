//! What is said of containers, recipes and fills.

use brimwright::book::{DrinkId, Field, Key, Problem, Refusal};
use brimwright::fill::{FillError, FillTarget, ScaleError};
use brimwright::ledger::Trouble;
use brimwright::measure::{Exact, Money, ReadError, Volume};
use brimwright::packaged::{PackagedError, PackagedFill};
use brimwright::statistics::Spread;
use brimwright::words;

use crate::{BOTTLE, book, ounces};

#[test]
fn a_length_that_was_not_taken() {
    assert_eq!(
        words::read_error(&ReadError::NotALength { unit: "oz".into() }, "3 1/2 in"),
        "“oz” is not a unit of length known here. Use mm, cm or in, such as 3 1/2 in."
    );
}

#[test]
fn what_was_refused() {
    let book = book();
    let key = Key::Container(BOTTLE);
    let at = |field, problem| words::refusal(&Refusal::Field { key, field, problem }, &book);
    assert_eq!(
        at(Field::Headspace, Problem::NoHeights),
        "The headspace by height needs heights. Give the measures of the cup or readings of the bottle first."
    );
    assert_eq!(
        at(Field::Readings, Problem::TooFew),
        "A reading alone is not enough: a bottle needs at least two, the last one at the rim."
    );
    assert_eq!(
        at(Field::Readings, Problem::Falls(3)),
        "A reading must be higher and hold more than the one before: number 3 does not. Measure it again."
    );
    assert_eq!(at(Field::Rim, Problem::NotPositive), "The diameter at the rim must be more than zero.");
    assert_eq!(
        at(Field::TierFrom, Problem::NotAboveOne),
        "The number a lower price begins at must be more than 1; the price of a single pack stands above."
    );
    assert_eq!(at(Field::AtATime, Problem::LessThanOne), "The number bought at a time must be at least 1.");
    assert_eq!(
        at(Field::Step, Problem::AnotherKind),
        "The step must be measured as the amount is: a weight for a weight, pieces for pieces."
    );
    assert_eq!(
        at(Field::TopUp, Problem::MoreThanOne),
        "The top-up: only one ingredient can take what is left. Let the other follow in proportion first."
    );
    assert_eq!(
        at(Field::Packing, Problem::NotAPacking),
        "The share of a scoop that is ice must be more than 0 % and at most 100 %. Cubes as they fall fill 54 to 67 %: type 60."
    );
    assert_eq!(
        at(Field::Net, Problem::NeitherWeightNorVolume),
        "The net contents must be a weight or a volume, such as 355 mL or 12.4 oz."
    );
    assert_eq!(
        at(Field::Ph, Problem::NotAPh),
        "The pH lies between 0 and 14. Type what your meter shows, such as 3.8."
    );
    assert_eq!(at(Field::KeepsDays, Problem::NotWhole), "The days it keeps must be a whole number, such as 12.");
    assert_eq!(
        at(Field::KeepsDays, Problem::TooManyDays),
        "The days it keeps can be 730 at most. Check for a digit too many."
    );
}

#[test]
fn why_a_container_has_no_fill() {
    let book = book();
    let said = |error| words::fill_error(&error, &book);
    assert_eq!(
        said(FillError::NoHeights(BOTTLE)),
        "The headspace of Bottle is a height, but no heights of it are known. Give its measures, or readings by pouring."
    );
    assert_eq!(
        said(FillError::OverTheRim { container: BOTTLE, over: ounces(50) }),
        "That is 0.50\u{a0}fl oz more than Bottle holds to the rim. Check the volume."
    );
}

#[test]
fn why_a_recipe_does_not_make_a_size() {
    let book = book();
    let drink = DrinkId::from_random(2);
    let said = |error| words::trouble(&Trouble::Scale(error), &book);
    assert_eq!(
        said(ScaleError::TopUpNegative { drink, over: ounces(120) }),
        "Rounded to whole steps, the rest is 1.2\u{a0}fl oz more than fits here, and nothing is left for the top-up. Make the steps smaller, or another ingredient the top-up."
    );
    assert_eq!(
        said(ScaleError::BetweenSteps { drink, short: ounces(110), over: ounces(290) }),
        "No whole number of steps fills this size: 1.1\u{a0}fl oz would stay empty, and with one step more 2.9\u{a0}fl oz would be too much. Let one ingredient be the top-up."
    );
    assert_eq!(
        said(ScaleError::NothingToFloatIn(drink)),
        "Ice floats, but the recipe has nothing for it to float in. Add what is poured."
    );
}

#[test]
fn why_there_is_no_fill_target() {
    let book = book();
    let said = |error| words::packaged_error(&error, &book);
    assert_eq!(said(PackagedError::NotPackaged), "This size is not packaged ahead of sale.");
    assert_eq!(
        said(PackagedError::NothingDeclared),
        "The container has no declared size. Enter what its label says it holds."
    );
    assert_eq!(
        said(PackagedError::NoTolerance),
        "The directive has no tolerance for a declared size under 5 mL or over 10 L. Choose another rule."
    );
    assert_eq!(
        said(PackagedError::NoAllowance),
        "Enter what a single package may be short by: the maximum allowable variation for this size in NIST Handbook 133. No number is given here from memory."
    );
    assert_eq!(
        said(PackagedError::TooFewWeighings(0)),
        "Weigh or measure what is in some packages, and enter each. Two give a spread; twenty give a good one (common practice)."
    );
    assert_eq!(
        said(PackagedError::TooFewWeighings(1)),
        "One package has no spread. Weigh or measure at least one more; twenty give a good one (common practice)."
    );
}

#[test]
fn what_to_know_of_a_fill_target() {
    let book = book();
    let nothing = Volume::ZERO;
    let target = FillTarget {
        target: ounces(1200),
        giveaway: nothing,
        highest: ounces(1250),
        over: None,
        spreads_to_double: Some(Exact::new(3, 0)),
    };
    let even = PackagedFill {
        nominal: ounces(1200),
        tolerance: None,
        spread: Spread { count: 2, mean: ounces(1200).millilitres(), deviation: Exact::ONE },
        room: ounces(1300),
        target,
        poured: ounces(1200),
        giveaway_cost: Money::ZERO,
        giveaway_in_a_year: nothing,
        giveaway_cost_in_a_year: Money::ZERO,
    };
    assert_eq!(words::packaged_cautions(&even, &book), Vec::<String>::new());
    let spreads_to_double = Some(Exact::new(299, 2));
    let low = PackagedFill {
        spread: Spread { mean: ounces(1150).millilitres(), ..even.spread },
        target: FillTarget { over: Some(ounces(25)), spreads_to_double, ..target },
        ..even
    };
    assert_eq!(
        words::packaged_cautions(&low, &book),
        [
            "The container is too small for its declared size: the fullest packages would need 0.250\u{a0}fl oz more than there is room for. Fill more evenly, declare less, or take a larger container.",
            "No package may be short by twice what is tolerated, and at this spread some would be. Fill more evenly.",
            "The packages weighed hold 0.500\u{a0}fl oz less than declared on average. Fill more.",
        ]
    );
}
