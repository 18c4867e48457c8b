//! From a margin to a price, and back.

use brimwright::book::{CommissionBase, Settings, TaxPlace};
use brimwright::drink::price::{PriceError, asked, ceiling, largest_fill, our_price, round_up, shelf_price};
use brimwright::foundation::measure::{Exact, Money, Share, Volume};
use proptest::prelude::*;

use crate::books::{fill, money, settings, share};
use crate::menus::menu;
use crate::near;
use crate::support::exact;

/// The highest menu price below `price` that ends as the owner wants; none where there is none
/// above zero.
fn next_lower(price: Money, settings: &Settings) -> Option<Money> {
    let smallest = settings.currency.minor_unit();
    if settings.endings.is_empty() {
        return price.minus(smallest).ok().filter(|lower| lower.is_positive());
    }
    let period = settings.ending_period();
    let periods = price.ratio_to(period).unwrap().floor();
    let bases = [periods, periods.minus(Exact::ONE).unwrap()].map(|periods| period.times(periods).unwrap());
    let all = bases.into_iter().flat_map(|base| settings.endings.iter().map(move |ending| base.plus(*ending).unwrap()));
    all.filter(|lower| *lower < price && lower.is_positive()).max()
}

fn ends_well(price: Money, settings: &Settings) -> bool {
    if settings.endings.is_empty() {
        return settings.currency.rounded(price) == price;
    }
    let period = settings.ending_period();
    let whole = period.times(price.ratio_to(period).unwrap().floor()).unwrap();
    settings.endings.contains(&price.minus(whole).unwrap())
}

proptest! {
    #[test]
    fn a_rounded_price_is_the_lowest_with_an_ending(settings in settings(), number in crate::number(5000, 4)) {
        let price = Money::from_major(number);
        let menu = round_up(price, &settings).unwrap();
        prop_assert!(menu >= price && menu.is_positive());
        prop_assert!(ends_well(menu, &settings), "{}", menu.major());
        if let Some(lower) = next_lower(menu, &settings) {
            prop_assert!(lower < price, "{} would do", lower.major());
        }
        prop_assert_eq!(round_up(menu, &settings), Ok(menu), "a price with an ending stays");
    }

    /// The exact price is rounded at the twelfth decimal, so it is off by at most 5e-13. A margin
    /// moves by cost / R^2 per unit of price, less than 1 / R; with R of at least 0.01 the margin
    /// is off by less than 5e-11, under the 1e-10 allowed.
    #[test]
    fn the_price_for_a_margin_has_that_margin(menu in menu()) {
        let priced = menu.priced();
        let Ok(suggestion) = priced.suggestion else { return Ok(()) };
        prop_assume!(suggestion.without_tax.major() >= exact("0.01"));
        let back = asked(&priced.cost, &priced.terms, suggestion.exact).unwrap();
        prop_assert!(near(back.margin.fraction(), priced.terms.target.fraction(), "0.0000000001"), "{:?}", back);
    }

    #[test]
    fn a_suggested_price_keeps_the_target(menu in menu()) {
        let priced = menu.priced();
        let Ok(suggestion) = priced.suggestion else { return Ok(()) };
        let settings = menu.book.settings();
        prop_assert!(suggestion.menu >= suggestion.exact);
        prop_assert!(suggestion.margin >= priced.terms.target, "{:?}", suggestion);
        prop_assert!(ends_well(suggestion.menu, settings));
        prop_assert_eq!(asked(&priced.cost, &priced.terms, suggestion.menu).unwrap().margin, suggestion.margin);
        if let Some(lower) = next_lower(suggestion.menu, settings) {
            prop_assert!(lower <= suggestion.exact, "{} would do", lower.major());
        }
    }

    #[test]
    fn where_no_price_reaches_the_target_none_does(menu in menu(), price in money(100_000)) {
        let priced = menu.priced();
        let Err(error) = priced.suggestion else { return Ok(()) };
        let PriceError::NoPriceReaches { target, highest } = error else { panic!("{error:?}") };
        prop_assert!(highest <= target);
        let price = price.plus(money_of_one()).unwrap();
        let margin = asked(&priced.cost, &priced.terms, price).unwrap().margin;
        prop_assert!(margin <= highest);
    }

    /// By hand, from what customers pay on average: the tax in it, the payment fee on all of it and on the
    /// deposit, the commission on what is not tax or on all of it, and the cost of the drink. What is left is the
    /// contribution; the deposit itself is none of it.
    #[test]
    fn what_the_customer_pays_goes_to_tax_fees_cost_and_contribution(menu in menu(), price in money(100)) {
        let priced = menu.priced();
        let price = price.plus(money_of_one()).unwrap();
        let asked = asked(&priced.cost, &priced.terms, price).unwrap();
        let settings = menu.book.settings();
        let of_kind = settings.tax_by_kind.iter().find(|it| it.kind == menu.drink().kind).map(|it| it.rate);
        let rate = menu.drink().tax_rate.or(of_kind).unwrap_or(settings.tax.rate).fraction();
        let fee = settings.payment_fee;
        let pays = match settings.tax.place {
            TaxPlace::InThePrice => price,
            TaxPlace::AddedAtTheTill => price.plus(price.times(rate).unwrap()).unwrap(),
        };
        prop_assert!(near(asked.customer_pays.major(), pays.major(), "0.000000000002"));
        let rest = |share: Share| Exact::ONE.minus(share.fraction()).unwrap();
        let less = settings.reductions;
        let marked = less.marked_down.fraction().times(rest(less.marked_down_to)).unwrap();
        let pays = pays.times(rest(less.discounts)).unwrap().times(rest(Share::from_fraction(marked))).unwrap();
        let tax = pays.times(rate).unwrap().over(rate.plus(Exact::ONE).unwrap()).unwrap();
        let deposit = menu.container().deposit;
        let on_deposit = if settings.deposit_taxed { deposit.times(rate).unwrap() } else { Money::ZERO };
        let payment = pays.plus(deposit).unwrap().plus(on_deposit).unwrap();
        let each = fee.fixed.over(fee.drinks).unwrap();
        let processor = payment.times(fee.share.fraction()).unwrap().plus(each).unwrap();
        let base = match settings.commission_on {
            CommissionBase::WithoutTax => pays.minus(tax).unwrap(),
            CommissionBase::WithTax => pays,
        };
        let platform = base.times(settings.commission.fraction()).unwrap();
        let gone = [tax, processor, platform, priced.cost.total()];
        let left = gone.into_iter().try_fold(pays, Money::minus).unwrap();
        prop_assert!(near(asked.contribution.major(), left.major(), "0.000000000002"), "{:?} and {:?}", asked, left);
    }

    /// The ceiling is rounded at the twelfth decimal, and so is every part of a cost; costs that
    /// differ by less than a billionth are the same, and so is the cost of the fill's own rounding.
    #[test]
    fn the_largest_fill_is_paid_for_and_a_little_more_is_not(menu in menu(), price in money(60), other in fill()) {
        let priced = menu.priced();
        let price = price.plus(money_of_one()).unwrap();
        let (terms, full) = (priced.terms, priced.fill.volume);
        let ceiling = ceiling(&menu.book, menu.drink(), &priced.cost, &terms, price).unwrap();
        let largest =
            largest_fill(&menu.book, menu.drink(), menu.container(), terms.cost_basis, full, &ceiling).unwrap();
        let too_much = |fill: Volume| {
            let cost = menu.cost_at(fill).map(|cost| cost.covered(terms.cost_basis));
            cost.is_none_or(|cost| cost.minus(ceiling.cost).unwrap().major() > exact("0.000000001"))
        };
        match largest {
            None => prop_assert!(too_much(priced.scaled.fixed) && too_much(full)),
            Some(fill) => {
                prop_assert!(fill <= full && fill >= priced.scaled.fixed.min(full));
                let cost = menu.cost_at(fill).expect("it can be made").covered(terms.cost_basis);
                prop_assert!(cost.minus(ceiling.cost).unwrap().major() <= exact("0.000000002"));
                let little_more = fill.plus(Volume::from_millilitres(exact("0.000001"))).unwrap();
                prop_assert!(fill == full || too_much(little_more.min(full)), "{:?} is paid for", little_more);
                // Nothing beyond is paid for either, but where whole steps or floating ice make room for what is cheaper.
                if !menu.has_steps() && !menu.has_floating_ice() && other > little_more && other <= full {
                    prop_assert!(too_much(other), "{:?} is paid for", other);
                }
            }
        }
    }

    #[test]
    fn a_shops_price_and_ours(ours in money(200), margin in share(90)) {
        let shelf = shelf_price(ours, margin).unwrap();
        prop_assert!(near(our_price(shelf, margin).unwrap().major(), ours.major(), "0.000000000002"));
        if shelf.is_positive() {
            let kept = Share::from_fraction(shelf.minus(ours).unwrap().ratio_to(shelf).unwrap());
            prop_assert!(near(kept.fraction(), margin.fraction(), "0.000000001"));
        }
    }
}

fn money_of_one() -> Money {
    Money::from_major(Exact::ONE)
}
