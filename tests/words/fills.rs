//! What is said of containers, recipes and fills.

use brimwright::book::{Accepted, DrinkId, Field, FillRule, Key, Problem, Refusal};
use brimwright::drink::fill::{BatchRisk, FillError, FillTarget, ScaleError, Single};
use brimwright::drink::ledger::OfferError;
use brimwright::drink::packaged::{PackagedError, PackagedFill, Waters};
use brimwright::foundation::measure::{Density, Exact, Money, ReadError, Scale, Temperature, Volume};
use brimwright::foundation::statistics::Spread;
use brimwright::say;
use brimwright::words;

use crate::{BOTTLE, book, ounces};

#[test]
fn a_length_that_was_not_taken() {
    assert_eq!(
        words::read_error(&ReadError::NotALength { unit: "oz".into() }, "3 1/2 in"),
        "“oz” is not a unit of length. Use mm, cm or in, such as 3 1/2 in."
    );
}

#[test]
fn a_temperature_that_was_not_taken() {
    assert_eq!(
        words::read_error(&ReadError::NotATemperature { unit: "K".into() }, "68 °F"),
        "“K” is not a temperature scale. Use °F or °C, such as 68 °F."
    );
}

#[test]
fn what_was_refused() {
    let book = book();
    let key = Key::Container(BOTTLE);
    let at = |field, problem| words::refusal(&Refusal::Field { key, field, problem }, &book);
    assert_eq!(
        at(Field::Headspace, Problem::NoHeights),
        "Headspace: a height needs measures. First measure the cup, or enter readings of the bottle."
    );
    assert_eq!(
        at(Field::Readings, Problem::TooFew),
        "Reading: one is not enough. A bottle needs at least two, the last at the rim."
    );
    assert_eq!(
        at(Field::Readings, Problem::Falls(3)),
        "Reading 3: must be higher and hold more than the one before. Measure again."
    );
    assert_eq!(
        at(Field::Rim, Problem::NotPositive),
        "Inside rim width: must be more than zero. Type a number such as 12."
    );
    assert_eq!(
        at(Field::TierFrom, Problem::NotAboveOne),
        "Minimum packs: must be more than 1. Enter the price of one pack above."
    );
    assert_eq!(
        at(Field::AtATime, Problem::LessThanOne),
        "Packs per order: must be at least 1. Type a number such as 12."
    );
    assert_eq!(
        at(Field::Step, Problem::AnotherKind),
        "Piece size: measure like the amount: a weight for a weight, pieces for pieces."
    );
    assert_eq!(
        at(Field::TopUp, Problem::MoreThanOne),
        "Fill to the line: only one ingredient can do that. Change the other one first."
    );
    assert_eq!(
        at(Field::Packing, Problem::NotAPacking),
        "Solid ice per scoop: must be above 0% and at most 100%. Loose cubes fill 54% to 67%: type 60."
    );
    assert_eq!(
        at(Field::Net, Problem::NeitherWeightNorVolume),
        "Package net contents: must be a weight or a volume, such as 12 fl oz or 12.4 oz."
    );
    assert_eq!(
        at(Field::Ph, Problem::NotAPh),
        "Measured pH: must be between 1 and 14. Type what your meter shows, such as 3.8, or leave blank."
    );
    assert_eq!(
        at(Field::BatchSize, Problem::LessThanOne),
        "Packages per batch: must be at least 1. Type a number such as 12."
    );
    assert_eq!(at(Field::BatchSize, Problem::NotWhole), "Packages per batch: must be a whole number, such as 12.");
    assert_eq!(
        at(Field::MeasuredAt, Problem::NotMeasuredThere),
        "Drink temperature: must be 32 to 104 °F (0 to 40 °C), where water’s density is known."
    );
    assert_eq!(at(Field::KeepsDays, Problem::NotWhole), "Use within: must be a whole number, such as 12.");
    assert_eq!(at(Field::KeepsDays, Problem::TooManyDays), "Use within: 730 at most. Check for an extra digit.");
}

#[test]
fn why_a_container_has_no_fill() {
    let book = book();
    let said = |error| words::fill_error(&error, &book);
    assert_eq!(
        said(FillError::NoHeights(BOTTLE)),
        "Needs: heights of Bottle. Enter inside measures, or readings by pouring."
    );
    assert_eq!(
        said(FillError::OverTheRim { container: BOTTLE, over: ounces(50) }),
        "That is 0.50\u{a0}fl oz over the brimful capacity of Bottle. Check the volume."
    );
}

#[test]
fn why_a_recipe_does_not_make_a_size() {
    let book = book();
    let drink = DrinkId::from_random(2);
    let said = |error| words::offer_error(&OfferError::Scale(error), &book);
    assert_eq!(
        said(ScaleError::BetweenSteps { drink, short: ounces(110), over: ounces(290) }),
        "No number of pieces fits this size: 1.1\u{a0}fl oz short, or 2.9\u{a0}fl oz over with one more. Let one ingredient fill to the line."
    );
    assert_eq!(said(ScaleError::NothingToFloatIn(drink)), "The ice has nothing to float in. Add a liquid.");
}

#[test]
fn why_there_is_no_fill_target() {
    let book = book();
    let said = |error| words::packaged_error(&error, &book);
    assert_eq!(said(PackagedError::NotPackaged), "This size is not packaged ahead.");
    assert_eq!(said(PackagedError::NothingDeclared), "The container has no labeled size. Enter the size on its label.");
    assert_eq!(
        said(PackagedError::NoTolerance),
        "The directive has no allowed variation under 5 mL or over 10 L. Choose another rule."
    );
    assert_eq!(
        said(PackagedError::NoAllowance),
        "Needs: allowed variation. Look up the maximum allowable variation for this size in NIST Handbook 133. No number is given here from memory."
    );
    assert_eq!(
        said(PackagedError::TooFewWeighings(0)),
        "Weigh or measure what is in some packages, and enter each. Two give a spread; twenty give a good one (rule of thumb, no published source)."
    );
    assert_eq!(
        said(PackagedError::TooFewWeighings(1)),
        "One package has no spread. Weigh or measure at least one more. Twenty give a good spread (rule of thumb, no published source)."
    );
}

/// Filled to the labeled size, all alike.
fn even() -> PackagedFill {
    let nothing = Volume::ZERO;
    let target = FillTarget {
        target: ounces(1200),
        for_batch: nothing,
        for_single: nothing,
        giveaway: nothing,
        highest: ounces(1250),
        over: None,
        spreads_to_double: Some(Exact::new(372, 2)),
    };
    PackagedFill {
        nominal: ounces(1200),
        counted_at: Temperature::new(Exact::new(40, 0), Scale::Fahrenheit),
        measured: None,
        batch: Some(BatchRisk { packages: Exact::new(99, 0), quantile: Exact::new(2, 0) }),
        single: None,
        too_short: 0,
        too_full: 0,
        spread: Spread { count: 20, mean: ounces(1200).millilitres(), deviation: Exact::ONE },
        room: ounces(1300),
        target,
        poured: ounces(1200),
        giveaway_cost: Money::ZERO,
        giveaway_in_a_year: nothing,
        giveaway_cost_in_a_year: Money::ZERO,
    }
}

#[test]
fn what_to_know_of_a_fill_target() {
    let (book, even) = (book(), even());
    let target = even.target;
    assert_eq!(words::packaged_cautions(&even, &book), Vec::<String>::new());
    let spreads_to_double = Some(Exact::new(371, 2));
    let low = PackagedFill {
        spread: Spread { mean: ounces(1150).millilitres(), ..even.spread },
        target: FillTarget { over: Some(ounces(25)), spreads_to_double, ..target },
        ..even
    };
    assert_eq!(
        words::packaged_cautions(&low, &book),
        [
            "The container is too small for its labeled size. The fullest packages need 0.250\u{a0}fl oz more room. Fill more evenly, label less, or use a larger container.",
            "No package may be short by twice the allowed variation. At this spread, more than 1 in 10,000 would be. Fill more evenly.",
            "The packages you weighed average 0.500\u{a0}fl oz below the labeled size. Fill more.",
        ]
    );
    let said = |fill: PackagedFill| words::packaged_cautions(&fill, &book);
    assert_eq!(
        said(PackagedFill { batch: None, ..even }),
        ["Enter the packages per batch. Filled to the labeled size, half of all batches average short."]
    );
    let few = Spread { count: 3, ..even.spread };
    assert_eq!(
        said(PackagedFill { spread: few, ..even }),
        ["3 weighings so far. Twenty give a good spread (rule of thumb, no published source)."]
    );
    let too_full = |too_full| said(PackagedFill { too_full, ..even });
    assert_eq!(too_full(1), ["1 weighing is more than the container holds. Correct that number: it moves the target."]);
    assert_eq!(
        too_full(2),
        ["2 weighings are more than the container holds. Correct those numbers: they move the target."]
    );
    let wide = Single { tolerance: ounces(1200), spreads: Exact::new(3, 0), none_twice: false };
    assert_eq!(
        said(PackagedFill { single: Some(wide), ..even }),
        ["The allowed variation, 12.00\u{a0}fl oz, is as large as the size itself. Correct that number."]
    );
    let raised = FillTarget { target: ounces(1210), ..target };
    assert_eq!(
        said(PackagedFill { batch: None, target: raised, ..even }),
        ["Enter the packages per batch. Without that number, nothing is added for the batch average."]
    );
    let single = |none_twice| Single { tolerance: ounces(30), spreads: Exact::new(3, 0), none_twice };
    let short = |too_short, none_twice| said(PackagedFill { too_short, single: Some(single(none_twice)), ..even });
    assert_eq!(short(1, true), ["1 package weighed is short by twice the allowed variation. No package may be."]);
    assert_eq!(short(12, true), ["12 packages weighed are short by twice the allowed variation. No package may be."]);
    assert_eq!(short(1, false), ["1 package weighed is short by more than the allowed variation. No package may be."]);
    assert_eq!(
        short(2, false),
        ["2 packages weighed are short by more than the allowed variation. No package may be."]
    );
}

#[test]
fn what_a_fill_target_means() {
    let even = even();
    // SI 2006/659, Schedule 2, 4.7 (text): of fewer than 100 packages the average of all counts.
    let means = |packages: i64, rule| {
        let batch = Some(BatchRisk { packages: Exact::new(packages, 0), quantile: Exact::new(2, 0) });
        words::fill_target_means(&PackagedFill { batch, ..even }, rule)
    };
    let european = "The average must reach the labeled size. Few packages may be short by the allowed variation, and none by twice that (76/211/EEC, Annex I).";
    let all =
        "In batches under 100, all packages together must average the labeled size (UK, SI 2006/659, Schedule 2, 4.7).";
    for small in [1, 12, 99] {
        assert_eq!(means(small, FillRule::EuropeanOrBritish), [european, all]);
    }
    assert_eq!(means(100, FillRule::EuropeanOrBritish), [european]);
    assert_eq!(means(1000, FillRule::EuropeanOrBritish), [european]);
    assert_eq!(
        means(12, FillRule::Average),
        ["The average must reach the labeled size. We know of no law that asks only this."]
    );
    // The shares: scipy.stats.binom, in tests/reference/data/samples.csv.
    assert_eq!(
        means(12, FillRule::UnitedStates),
        [
            "The average must reach the labeled size. No package may be short by more than the allowed variation (NIST Handbook 133). The target stays at least 3 spreads above that.",
            "Say 2.5% of packages were short by more. A sample of 12 would fail 26.2% of the time. A sample of 24: 45.5%.",
            "At 3 spreads, a sample of 12 fails at most 1.6% of the time. A sample of 24: at most 3.2%.",
        ]
    );
}

#[test]
fn whose_share_of_short_packages_it_is() {
    // FPackV section 9 (text); 2.5% is UK practice (second-hand).
    let said = Accepted::ALL.iter().map(|it| words::accepted_share(*it, it.share().percent().unwrap().to_string()));
    assert_eq!(said.collect::<Vec<_>>(), ["0.1", "1", "2 (Germany, FPackV section 9)", "2.5 (UK practice)", "5"]);
}

#[test]
fn where_contents_count_and_where_they_were_measured() {
    let forty = Temperature::new(Exact::new(40, 0), Scale::Fahrenheit);
    let warm = Temperature::new(Exact::new(68, 0), Scale::Fahrenheit);
    assert_eq!(
        words::measured_at(forty, None),
        "Contents count at 40\u{a0}°F. Leave blank if you measured at that temperature."
    );
    let water = |millionths: i64| Density::from_grams_per_millilitre(Exact::new(millionths, 6));
    let waters = Waters { by_law: water(999_973), measured: water(998_207) };
    let same = Waters { measured: waters.by_law, ..waters };
    assert_eq!(
        words::measured_at(forty, Some((forty, same))),
        "Contents count at 40\u{a0}°F, the temperature you measured at."
    );
    assert_eq!(
        words::measured_at(forty, Some((warm, waters))),
        "Contents count at 40\u{a0}°F. Water is 1.0000 g/mL at that temperature, and 0.9982 at 68\u{a0}°F (Metrologia 38, 2001). Juice swells a little more."
    );
}

#[test]
fn the_variation_is_looked_up_and_a_sample_says_that_it_is_one() {
    assert_eq!(
        say!(labels::look_up_variation),
        "Look up the maximum allowable variation for this size in NIST Handbook 133. We do not have that table."
    );
    assert_eq!(say!(labels::sample_variation), "Sample number, not from the handbook.");
}
