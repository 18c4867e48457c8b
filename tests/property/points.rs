//! Back from a price point.

use brimwright::drink::cost::{cost, overhead};
use brimwright::drink::ledger::price_offer;
use brimwright::drink::price::asked;
use brimwright::foundation::measure::{Exact, Money};
use brimwright::sizes::price_point::{Verdict, at_point};
use proptest::prelude::*;

use crate::books::money;
use crate::menus::menu;
use crate::near;
use crate::support::{exact, offer, offer_id};

proptest! {
    /// A recipe fits a price exactly where the margin there is not under its target; costs that
    /// differ by less than a thousand-millionth are the same.
    #[test]
    fn what_fits_keeps_the_target(menu in menu(), price in money(60)) {
        let price = price.plus(Money::from_major(Exact::ONE)).unwrap();
        let at = at_point(&menu.book, offer_id(1, 1), price).unwrap();
        let priced = price_offer(&menu.book, &offer(1, 1, None)).unwrap();
        let margin = asked(&priced.cost, &priced.terms, price).unwrap().margin;
        let spare = margin.minus(priced.terms.target).unwrap().fraction();
        if !near(spare, Exact::ZERO, "0.00000001") {
            prop_assert_eq!(matches!(at.verdict, Verdict::Fits(_)), spare.is_positive(), "{:?} and {:?}", at, margin);
        }
    }

    /// What is missing is what the margin at that price, computed forwards, is short of its target:
    /// as money of the revenue, and less the shares of what is saved that are thrown away or handed out free. The
    /// margin is rounded at the twelfth decimal, so that this is off by less than a billionth.
    #[test]
    fn what_is_given_up_is_what_is_missing(menu in menu(), price in money(60)) {
        let price = price.plus(Money::from_major(Exact::ONE)).unwrap();
        let at = at_point(&menu.book, offer_id(1, 1), price).unwrap();
        match at.verdict {
            Verdict::Fits(room) => {
                prop_assert!(!room.is_negative());
                prop_assert_eq!(at.largest_fill, Some(at.poured));
            }
            Verdict::Over(over) => {
                let priced = menu.priced();
                let margin = asked(&priced.cost, &priced.terms, price).unwrap().margin;
                let short = priced.terms.target.minus(margin).unwrap().fraction();
                let unsold = menu.drink().unsold.unwrap_or(menu.book.settings().unsold);
                let sold = unsold.rest().unwrap().fraction();
                let revenue = priced.terms.revenue(priced.terms.without_tax(price).unwrap()).unwrap();
                let paid = menu.book.settings().reductions.free.rest().unwrap().fraction();
                let missing = revenue.times(short).unwrap().times(sold).unwrap().times(paid).unwrap();
                prop_assert!(near(over.money.major(), missing.major(), "0.000000001"), "{:?} and {:?}", over, missing);
                prop_assert!(over.money.is_positive());
                prop_assert!(at.largest_fill.is_none_or(|fill| fill < at.poured));
            }
        }
    }

    /// Less of the dearest line, by what is said, costs what the price pays for.
    #[test]
    fn the_dearest_line_shrinks_to_the_target(menu in menu(), price in money(60)) {
        let price = price.plus(Money::from_major(Exact::ONE)).unwrap();
        let at = at_point(&menu.book, offer_id(1, 1), price).unwrap();
        let Verdict::Over(over) = at.verdict else { return Ok(()) };
        let Some((first, less)) = over.first.and_then(|first| Some((first, first.less?))) else { return Ok(()) };
        let mut drink = menu.drink().clone();
        let line = drink.lines.iter_mut().find(|line| line.id == first.line).unwrap();
        line.amount.number = line.amount.number.times(less.rest().unwrap().fraction()).unwrap();
        let fill = at.poured;
        let scaled = brimwright::drink::fill::scale(&menu.book, &drink, fill).unwrap();
        let overhead = overhead(&menu.book).unwrap();
        let cost = cost(&menu.book, &drink, menu.container(), &scaled, fill, overhead).unwrap();
        let priced = price_offer(&menu.book, &offer(1, 1, None)).unwrap();
        let covered = cost.covered(priced.terms.cost_basis);
        prop_assert!(covered.minus(at.ceiling.cost).unwrap().major() <= exact("0.000000001"));
        prop_assert!(priced.cost.lines.iter().all(|line| line.cost <= first.cost));
    }
}
