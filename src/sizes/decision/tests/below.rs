//! Drinks below a price.

use super::*;
use crate::book::{Settings, Tax, TaxPlace};
use crate::drink::ledger::OfferError;
use crate::sizes::decision::below_price;
use crate::sizes::price_point::{Verdict, at_point};

#[test]
fn the_tightest_first_with_what_it_spares_or_lacks_before_and_after_tax() {
    // At a target of 60 %, 1.60 need 4.00 and 2.40 need 6.00. Of 4.25 on the menu, 0.25 are to spare and 1.75 lacking;
    // with 10 % tax on each, 0.275 and 1.925.
    let mut book = bar(&three_sizes());
    let tax = Tax { rate: share("0.1"), place: TaxPlace::AddedAtTheTill };
    let taxed = Settings { tax, target: share("0.6"), ..book.settings().clone() };
    book.apply(&Edit::Put(Record::Settings(Box::new(taxed)))).unwrap();
    let ledger = Ledger::of(&book);
    let offers = [offer_id(1, 1), offer_id(1, 2), offer_id(2, 2), offer_id(9, 1)];
    let below = below_price(&book, &ledger, &offers, money("4.25")).unwrap();
    assert_eq!((below.can(), below.cannot(), below.unknown.len()), (1, 2, 1));
    assert!(matches!(below.unknown[0], (_, OfferError::Missing(_))));
    let tightest = below.tightest().unwrap();
    assert_eq!((tightest.offer, tightest.can, tightest.needs), (offer_id(1, 2), false, money("6")));
    assert_eq!((tightest.before_tax, tightest.after_tax), (money("-1.75"), money("-1.925")));
    let fits = below.rows.last().unwrap();
    assert_eq!((fits.can, fits.before_tax, fits.after_tax), (true, money("0.25"), money("0.275")));
    assert_eq!(below.drinks_that_cannot(), [crate::support::drink_id(2)]);
}

#[test]
fn it_says_what_a_price_point_says() {
    let book = bar(&three_sizes());
    let ledger = Ledger::of(&book);
    for cents in (400..1400).step_by(7) {
        let price = crate::foundation::measure::Money::from_major(crate::foundation::measure::Exact::new(cents, 2));
        for id in [offer_id(1, 1), offer_id(1, 2), offer_id(1, 3)] {
            let fits = matches!(at_point(&book, id, price).unwrap().verdict, Verdict::Fits(_));
            assert_eq!(below_price(&book, &ledger, &[id], price).unwrap().rows[0].can, fits, "{id:?} {cents}");
        }
    }
}

#[test]
fn a_target_that_no_price_reaches_is_never() {
    let mut book = bar(&three_sizes());
    let dear = Settings {
        commission: share("0.5"),
        cost_basis: crate::book::CostBasis::Everything,
        ..book.settings().clone()
    };
    book.apply(&Edit::Put(Record::Settings(Box::new(dear)))).unwrap();
    let below = below_price(&book, &Ledger::of(&book), &[offer_id(1, 1)], money("9")).unwrap();
    assert_eq!((below.never.as_slice(), below.cannot(), below.tightest()), ([offer_id(1, 1)].as_slice(), 1, None));
    assert_eq!(below.drinks_that_cannot(), [crate::support::drink_id(1)]);
}
