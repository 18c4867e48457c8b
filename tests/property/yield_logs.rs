//! What weighings say of yields.

use brimwright::book::{Edit, Ingredient, Record, Weighing};
use brimwright::buying::yield_log::{Step, adopt, summary, take_out, write_down, yield_now};
use brimwright::foundation::measure::{Amount, Exact, Share, Unit};
use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;

use crate::books::{a_day, complete_ingredient};
use crate::number;
use crate::support::{book, ingredient_id, settings};

/// Up to 50 lb in, some left each time.
fn weighing() -> impl Strategy<Value = Weighing> {
    let part = || number(1, 3).prop_map(|share| share.plus(Exact::new(1, 3)).unwrap());
    (a_day(), number(50, 2), option::weighted(0.9, part()), option::weighted(0.8, part())).prop_map(
        |(day, pounds, trimmed, pressed)| {
            let bought = pounds.plus(Exact::ONE).unwrap();
            let left = |of: Exact, share: Exact| of.times(share).unwrap();
            let after = trimmed.map(|share| left(bought, share));
            let juice = pressed.map(|share| left(after.unwrap_or(bought), share));
            let weight = |pounds| Amount::new(pounds, Unit::Pound);
            Weighing { day, bought: weight(bought), trimmed: after.map(weight), pressed: juice.map(weight) }
        },
    )
}

/// An ingredient with its log in order.
fn logged() -> impl Strategy<Value = Ingredient> {
    (complete_ingredient(1), any::<bool>(), vec(weighing(), 0..9)).prop_map(|(ingredient, whole, mut weighings)| {
        weighings.sort_by_key(|weighing| weighing.day);
        let trim_yield = if whole { Share::WHOLE } else { ingredient.trim_yield };
        Ingredient { trim_yield, packs: Vec::new(), on_hand: None, weighings, ..ingredient }
    })
}

proptest! {
    #[test]
    fn a_mean_lies_among_its_yields(log in logged()) {
        for step in Step::ALL {
            let Some(found) = summary(&log, step).unwrap() else { continue };
            let shares: Vec<Share> = found.singles.iter().map(|single| single.share).collect();
            let (least, most) = (*shares.iter().min().unwrap(), *shares.iter().max().unwrap());
            let last = Share::from_fraction(Exact::new(1, 12));
            let within = |share: Share| share >= least.minus(last).unwrap() && share <= most.plus(last).unwrap();
            prop_assert!(within(found.mean) && within(found.together) && most <= Share::WHOLE, "{:?}", found);
            prop_assert_eq!(found.interval.is_some(), shares.len() > 1);
            if let Some((low, high)) = found.interval {
                prop_assert!(low <= found.mean && found.mean <= high);
            }
            if let Some(outlier) = found.outlier() {
                let off = |share: Share| share.minus(found.mean).unwrap().fraction().abs();
                prop_assert!(shares.iter().all(|share| off(*share) <= off(outlier.share)));
                prop_assert_eq!(log.weighings[outlier.place].day, outlier.day);
            }
        }
    }

    #[test]
    fn what_is_adopted_is_in_force_and_taken_back(log in logged(), trim in any::<bool>(), press in any::<bool>()) {
        let id = ingredient_id(1);
        let before = book(settings(), [Record::Ingredient(log.clone())]);
        let steps: Vec<Step> = [(trim, Step::Trim), (press, Step::Press)].iter().filter(|it| it.0).map(|it| it.1).collect();
        let Some(edit) = adopt(&before, id, &steps).unwrap() else { return Ok(()) };
        let mut after = before.clone();
        let applied = after.apply(&edit).unwrap();
        for step in Step::ALL {
            let proposed = summary(&log, step).unwrap().and_then(|found| found.adopted()).filter(|_| steps.contains(&step));
            let expected = proposed.or(yield_now(&log, step));
            prop_assert_eq!(yield_now(after.ingredient(id).unwrap(), step), expected);
        }
        after.apply(&applied.inverse).unwrap();
        prop_assert_eq!(after, before);
    }

    #[test]
    fn a_weighing_taken_out_and_written_down_again_is_where_it_was(log in logged(), place in any::<prop::sample::Index>()) {
        prop_assume!(!log.weighings.is_empty());
        let (id, place) = (ingredient_id(1), place.index(log.weighings.len()));
        let mut book = book(settings(), [Record::Ingredient(log.clone())]);
        let again = write_down(&book, id, Some(place), log.weighings[place]).unwrap();
        prop_assert_eq!(again, Edit::Put(Record::Ingredient(log.clone())));
        book.apply(&take_out(&book, id, place).unwrap()).unwrap();
        prop_assert_eq!(book.ingredient(id).unwrap().weighings.len() + 1, log.weighings.len());
        book.apply(&write_down(&book, id, None, log.weighings[place]).unwrap()).unwrap();
        let days = |log: &Ingredient| log.weighings.iter().map(|it| it.day).collect::<Vec<_>>();
        prop_assert_eq!(days(book.ingredient(id).unwrap()), days(&log));
        let mean = |log: &Ingredient| summary(log, Step::Trim).unwrap().map(|it| it.mean.as_part());
        prop_assert_eq!(mean(book.ingredient(id).unwrap()), mean(&log));
    }
}
