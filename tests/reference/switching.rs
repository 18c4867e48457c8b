//! Break-even quantities against worked examples; the source of each is named in
//! `data/worked_examples.csv` and beside the check. A textbook's fixed costs are here what the old
//! size brings in a week: so much must the new one bring again.

use brimwright::book::{Offer, Record, Scope};
use brimwright::foundation::measure::{Exact, Money};
use brimwright::sizes::switching::{BreakEven, Earnings, Question, switch};

use crate::example;
use crate::support::{book_of_one_drink, container, container_id, drink_id, exact, money, offer, offer_id, settings};

/// Sold so often at this price in a size that costs `cost` to fill; and in another of the same
/// fill that costs as much.
fn answer(cost: &str, weekly: &str, now: &str, then: &str) -> (BreakEven, Money, Exact) {
    let mut book = book_of_one_drink(settings(), cost, None);
    let sold = Offer { weekly: Some(exact(weekly)), ..offer(1, 1, Some(now)) };
    for record in [Record::Container(container(2, "250 mL")), Record::Offer(sold)] {
        book.apply(&brimwright::book::Edit::Put(record)).unwrap();
    }
    let question = Question { scope: Scope::Drink(drink_id(1)), from: container_id(1), to: container_id(2) };
    let found = switch(&book, question, &[(drink_id(1), money(then))]).unwrap();
    assert!(book.offer(offer_id(1, 2)).is_none(), "asking changes nothing");
    let together = found.together.unwrap();
    (together.answer.unwrap(), together.now.contribution, together.units)
}

#[test]
fn the_units_that_bring_a_sum_again() {
    // PSU Pressbooks ACCTG 211, 7.2: 150 left of 400 (W17), and 20,000 to bring (W18); here
    // 80 a week that leave 250 each at 500.
    assert_eq!(example("W17").1, "150");
    assert_eq!(example("W18").1, "133.3333 -> 134 units");
    let (answer, brings, units) = answer("250", "80", "500", "400");
    assert_eq!(brings, money("20000"));
    assert_eq!(answer.units(units).unwrap().rounded(4), exact("133.3333"));
    assert_eq!(answer.whole_units(units), Ok(exact("134")));
}

#[test]
fn units_that_come_out_even_are_not_rounded_up() {
    // OpenStax, Principles of Accounting 2, 3.2 (W19, from memory): 18,000 to bring, 80 left of
    // 100; here 150 a week that leave 120 each at 140.
    assert_eq!(example("W19").1, "225");
    let (answer, brings, units) = answer("20", "150", "140", "100");
    assert_eq!(brings, money("18000"));
    assert_eq!((answer.units(units), answer.whole_units(units)), (Ok(exact("225")), Ok(exact("225"))));
}

#[test]
fn the_elasticity_of_a_price_cut() {
    // Python 3, math.log(1.25) / math.log(0.7) and math.log(0.8) / math.log(1.1), to six decimals:
    // natural logarithms of another implementation.
    let of = |price: [&str; 2], left: [&str; 2]| {
        let earnings = |at: usize| Earnings { price: money(price[at]), contribution: money(left[at]) };
        BreakEven::of(earnings(0), earnings(1)).unwrap().unwrap().elasticity.unwrap().rounded(6)
    };
    assert_eq!(of(["6", "4.2"], ["4", "3.2"]), exact("-0.625622"));
    assert_eq!(of(["5", "5.5"], ["2", "2.5"]), exact("-2.341235"));
}
