//! The money ladder of a price adds up, whatever the margin covers and wherever the tax stands.

use brimwright::book::{CommissionBase, CostBasis, Part, TaxPlace};
use brimwright::drink::price::{Leaves, Rung, Takes, asked, ladder};
use brimwright::foundation::measure::{Exact, Money};
use proptest::prelude::*;

use crate::books::money;
use crate::menus::menu;
use crate::near;

proptest! {
    /// The price less the rows above is what is left, to the last digit; the last is the profit, and
    /// the margin is what is left where it stands over the revenue.
    #[test]
    fn the_rows_of_a_ladder_add_up(menu in menu(), price in money(60), every in 0..3_usize) {
        let mut priced = menu.priced();
        priced.terms.cost_basis = CostBasis::ALL[every];
        let price = price.plus(Money::from_major(crate::support::exact("0.05"))).unwrap();
        let brings = asked(&priced.cost, &priced.terms, price).unwrap();
        let ladder = ladder(&priced.cost, &priced.terms, price).unwrap();
        let mut left = ladder.menu;
        let mut margin = None;
        let mut last = None;
        for rung in &ladder.rungs {
            match *rung {
                Rung::Takes(_, money) => {
                    prop_assert!(money.is_positive(), "{:?}", ladder);
                    left = left.minus(money).unwrap();
                }
                Rung::Leaves(what, money) => {
                    prop_assert_eq!(money, left, "{:?}", ladder);
                    let covers_all = priced.terms.cost_basis == CostBasis::Everything;
                    if what == if covers_all { Leaves::Profit } else { Leaves::Margin } {
                        margin = Some(money);
                    }
                    last = Some((what, money));
                }
            }
        }
        prop_assert_eq!(last, Some((Leaves::Profit, brings.contribution)));
        prop_assert_eq!((ladder.margin, ladder.menu, ladder.customer_pays), (brings.margin, price, brings.customer_pays));
        let share = margin.unwrap().ratio_to(brings.revenue).unwrap();
        // A share of a price of cents carries the last digit of the price many times over.
        let digits = share.abs().max(Exact::ONE);
        let off = share.minus(brings.margin.fraction()).unwrap().over(digits).unwrap();
        prop_assert!(near(off, Exact::ZERO, "0.000000001"), "{:?}", ladder);
        let covered = brings.revenue.minus(ladder.covered().unwrap()).unwrap();
        prop_assert!(near(covered.major(), margin.unwrap().major(), "0.000000000002"), "{:?}", ladder);
    }

    /// Nothing is left out and nothing stands twice: the rows of the cost are the full cost, those of
    /// the fees the fees, and tax stands in the ladder only where it is inside the price.
    #[test]
    fn every_cost_stands_in_a_ladder_once(menu in menu(), price in money(60)) {
        let priced = menu.priced();
        let price = price.plus(Money::from_major(crate::support::exact("0.05"))).unwrap();
        let brings = asked(&priced.cost, &priced.terms, price).unwrap();
        let ladder = ladder(&priced.cost, &priced.terms, price).unwrap();
        let sum = |counts: &dyn Fn(Takes) -> bool| {
            let taken = ladder.rungs.iter().filter_map(|rung| match *rung {
                Rung::Takes(takes, money) if counts(takes) => Some(money),
                _ => None,
            });
            taken.fold(Money::ZERO, |sum, money| sum.plus(money).unwrap())
        };
        let total = priced.cost.total();
        prop_assert_eq!(sum(&|takes| matches!(takes, Takes::Part(_) | Takes::Waste(..) | Takes::Free(..))), total);
        prop_assert_eq!(sum(&|takes| matches!(takes, Takes::Waste(..))), priced.cost.part(Part::Unsold).unwrap());
        prop_assert_eq!(sum(&|takes| matches!(takes, Takes::Free(..))), priced.cost.part(Part::Free).unwrap());
        prop_assert_eq!(sum(&|takes| matches!(takes, Takes::CardFee | Takes::Commission)), brings.fees);
        let rate = priced.terms.tax.rate.fraction();
        let base = match priced.terms.commission_on {
            CommissionBase::WithoutTax => brings.revenue,
            CommissionBase::WithTax => brings.revenue.plus(brings.revenue.times(rate).unwrap()).unwrap(),
        };
        let commission = base.times(priced.terms.commission.fraction()).unwrap();
        let found = sum(&|takes| takes == Takes::Commission);
        prop_assert!(near(found.major(), commission.major(), "0.000000000002"), "{:?}", ladder);
        // Tax follows what is paid on average; so do discounts, with the tax inside them.
        let paid = priced.terms.reductions.paid().unwrap().fraction();
        let tax = match priced.terms.tax.place {
            TaxPlace::InThePrice => price.minus(brings.without_tax).unwrap().times(paid).unwrap(),
            TaxPlace::AddedAtTheTill => Money::ZERO,
        };
        let found = sum(&|takes| takes == Takes::SalesTax);
        prop_assert!(near(found.major(), tax.major(), "0.000000000002"), "{:?}", ladder);
        let discounts = price.minus(price.times(paid).unwrap()).unwrap();
        let found = sum(&|takes| takes == Takes::Discounts);
        prop_assert!(near(found.major(), discounts.major(), "0.000000000002"), "{:?}", ladder);
    }
}
