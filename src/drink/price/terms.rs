//! The terms that a price must bear, the price for a margin, and the margin of a price.
//!
//! R is the price without tax, t the tax rate, f and k the payment fee, c the commission.

use super::round_up;
use crate::book::{CostBasis, Drink, PaymentFee, Settings, Tax, TaxPlace};
use crate::drink::cost::Cost;
use crate::foundation::measure::{Exact, Money, Overflow, PART_PLACES, Share};

/// What a price must bear.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Terms {
    /// Tax.
    pub tax: Tax,
    /// Payment fee.
    pub fee: PaymentFee,
    /// Commission on the price without tax.
    pub commission: Share,
    /// What the target margin must cover.
    pub cost_basis: CostBasis,
    /// Target margin.
    pub target: Share,
}

/// Why there is no price.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PriceError {
    /// Fees and commission leave less than the target, whatever the price.
    NoPriceReaches {
        /// The target margin.
        target: Share,
        /// The margin that one could approach, never reach.
        highest: Share,
    },
    /// The numbers leave the range that can be computed.
    Arithmetic(Overflow),
}

impl From<Overflow> for PriceError {
    fn from(overflow: Overflow) -> PriceError {
        PriceError::Arithmetic(overflow)
    }
}

/// A price for a target margin.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Suggestion {
    /// Price without tax that gives the target margin.
    pub without_tax: Money,
    /// Menu price that gives the target margin, before its ending.
    pub exact: Money,
    /// Menu price with one of the owner's endings: suggested.
    pub menu: Money,
    /// Margin at the suggested price.
    pub margin: Share,
}

/// What a menu price brings.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Asked {
    /// The menu price.
    pub menu: Money,
    /// The price without tax.
    pub without_tax: Money,
    /// What the customer pays, tax included.
    pub customer_pays: Money,
    /// Payment fee and commission.
    pub fees: Money,
    /// What is left after the covered terms, over the price without tax.
    pub margin: Share,
    /// What is left after everything.
    pub contribution: Money,
}

/// Whether hands' time counts in what changes with the number of drinks.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Hands {
    /// It does: fewer drinks take fewer hours that are paid.
    #[default]
    Counted,
    /// It does not: the same hours are paid, however many drinks are sold.
    LeftOut,
}

impl Asked {
    /// What one drink more or less changes: the contribution without overhead, with what is thrown away of it,
    /// and without hands' time where that is left out. `cost` is that of the drink.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn profit_that_changes(&self, cost: &Cost, hands: Hands) -> Result<Money, Overflow> {
        let changes = match hands {
            Hands::Counted => CostBasis::GoodsAndLabour,
            Hands::LeftOut => CostBasis::Goods,
        };
        self.contribution.plus(cost.total()?)?.minus(cost.covered(changes)?)
    }
}

impl Terms {
    /// Whether a margin, rounded as every computed part is, reaches the target. Whoever compares
    /// the two asks this.
    pub fn reached_by(&self, margin: Share) -> bool {
        margin >= self.target
    }

    /// The terms of a drink in a book.
    pub fn of(settings: &Settings, drink: &Drink) -> Terms {
        Terms {
            tax: settings.tax,
            fee: settings.payment_fee,
            commission: settings.commission,
            cost_basis: settings.cost_basis,
            target: drink.target.unwrap_or(settings.target),
        }
    }

    /// 1 + t.
    pub(super) fn with_tax(&self) -> Result<Exact, Overflow> {
        Exact::ONE.plus(self.tax.rate.fraction())
    }

    /// The share of R that fee and commission take: c + f * (1 + t), if the margin covers them.
    pub(super) fn covered_fee_share(&self) -> Result<Exact, Overflow> {
        if self.cost_basis.has_fees() { self.fee_share() } else { Ok(Exact::ZERO) }
    }

    fn fee_share(&self) -> Result<Exact, Overflow> {
        self.commission.fraction().plus(self.fee.share.fraction().times(self.with_tax()?)?)
    }

    /// k, if the margin covers it.
    pub(super) fn covered_fixed_fee(&self) -> Money {
        if self.cost_basis.has_fees() { self.fee.fixed } else { Money::ZERO }
    }

    /// The price without tax of a menu price.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn without_tax(&self, menu: Money) -> Result<Money, Overflow> {
        match self.tax.place {
            TaxPlace::InThePrice => menu.over(self.with_tax()?),
            TaxPlace::AddedAtTheTill => Ok(menu),
        }
    }

    /// What the customer pays of a menu price, tax included.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn customer_pays(&self, menu: Money) -> Result<Money, Overflow> {
        match self.tax.place {
            TaxPlace::InThePrice => Ok(menu),
            TaxPlace::AddedAtTheTill => menu.times(self.with_tax()?),
        }
    }

    /// The menu price of a price without tax.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn menu(&self, without_tax: Money) -> Result<Money, Overflow> {
        match self.tax.place {
            TaxPlace::InThePrice => without_tax.times(self.with_tax()?),
            TaxPlace::AddedAtTheTill => Ok(without_tax),
        }
    }
}

/// The price for the target margin: R = (cost + k) / (1 - m - c - f * (1 + t)), then rounded up
/// to the owner's endings: the lowest of them whose margin is on target by [`Terms::reached_by`].
///
/// # Errors
/// [`PriceError::NoPriceReaches`] where the denominator is zero or less.
pub fn suggest(cost: &Cost, terms: &Terms, settings: &Settings) -> Result<Suggestion, PriceError> {
    let highest = Exact::ONE.minus(terms.covered_fee_share()?)?;
    let denominator = highest.minus(terms.target.fraction())?;
    if !denominator.is_positive() {
        let highest = Share::from_fraction(highest);
        return Err(PriceError::NoPriceReaches { target: terms.target, highest });
    }
    let must_bear = cost.covered(terms.cost_basis)?.plus(terms.covered_fixed_fee())?;
    // Multiplied before it is divided, and rounded up before it is rounded: a price that comes
    // out even stays even, and no digit is dropped that would put the margin under the target.
    let exact = terms.menu(must_bear)?.over(denominator)?;
    let margin_at = |menu| margin(cost, terms, terms.without_tax(menu)?);
    let mut menu = round_up(exact, settings)?;
    // The parts of the cost are rounded, and so is the margin: an ending just below may reach the
    // target too. One further below cannot: it would move the margin by more than its last decimal.
    let off = exact.times(Exact::new(1, PART_PLACES))?.over(denominator)?;
    let nearly = round_up(exact.minus(off)?, settings)?;
    if nearly < menu && terms.reached_by(margin_at(nearly)?) {
        menu = nearly;
    }
    let margin = margin_at(menu)?;
    Ok(Suggestion { without_tax: must_bear.over(denominator)?.as_part(), exact: exact.as_part(), menu, margin })
}

/// What a menu price brings: contribution R - f * R * (1 + t) - k - c * R - full cost, and the
/// margin on the covered terms.
///
/// # Errors
/// [`Overflow`], also for a price of zero.
pub fn asked(cost: &Cost, terms: &Terms, menu: Money) -> Result<Asked, Overflow> {
    let without_tax = terms.without_tax(menu)?;
    let fees = without_tax.times(terms.fee_share()?)?.plus(terms.fee.fixed)?;
    let contribution = without_tax.minus(fees)?.minus(cost.total()?)?;
    Ok(Asked {
        menu,
        without_tax: without_tax.as_part(),
        customer_pays: terms.customer_pays(menu)?.as_part(),
        fees: fees.as_part(),
        margin: margin(cost, terms, without_tax)?,
        contribution: contribution.as_part(),
    })
}

/// What is left of a price without tax after the covered terms, over that price.
fn margin(cost: &Cost, terms: &Terms, without_tax: Money) -> Result<Share, Overflow> {
    let fees = without_tax.times(terms.covered_fee_share()?)?.plus(terms.covered_fixed_fee())?;
    let left = without_tax.minus(fees)?.minus(cost.covered(terms.cost_basis)?)?;
    Ok(Share::from_fraction(left.ratio_to(without_tax)?.as_part()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::Record;
    use crate::drink::ledger::price_offer;
    use crate::support::{
        book, book_of_one_drink, container, drink, ingredient, line, money, offer, pack, settings, share,
    };

    fn suggested(settings: &Settings, cost: &str) -> Result<Suggestion, PriceError> {
        price_offer(&book_of_one_drink(settings.clone(), cost, None), &offer(1, 1, None)).unwrap().suggestion
    }

    #[test]
    fn an_even_price_with_tax_inside_stays_even() {
        // 0.875 / 0.65 * 1.3 = 1.75 to the last digit, though 0.875 / 0.65 has endless digits
        // whose 28th rounds up: not 2.00.
        let tax = Tax { rate: share("0.3"), place: TaxPlace::InThePrice };
        let quarters = ["0", "0.25", "0.50", "0.75"].map(money).to_vec();
        let bar = Settings { tax, target: share("0.35"), endings: quarters, ..settings() };
        let suggestion = suggested(&bar, "0.875").unwrap();
        let even = (money("1.75"), money("1.75"), share("0.35"));
        assert_eq!((suggestion.exact, suggestion.menu, suggestion.margin), even);
        assert_eq!(suggestion.without_tax, money("1.346153846154"));
    }

    /// 400 menu prices with an ending, each with the cost that the formula allows at it, by hand
    /// from right to left: cost = R * (1 - m - c - f * (1 + t)) - k. The cost is that of three
    /// lines, each a third of a pack, so that its parts have endless digits and their sum is up to
    /// a twelfth decimal more or less than what the formula allows.
    #[test]
    fn a_price_that_hits_its_ending_is_suggested_and_on_target() {
        for number in 0..400_i64 {
            let menu = Money::from_major(Exact::new(400 + number * 25, 2));
            let bar = Settings {
                tax: Tax { rate: share("0.25"), place: TaxPlace::AddedAtTheTill },
                payment_fee: PaymentFee { share: share("0.02"), fixed: money("0.1") },
                commission: share("0.05"),
                cost_basis: CostBasis::Everything,
                target: Share::from_fraction(Exact::new(30 + number % 30, 2)),
                endings: ["0", "0.25", "0.50", "0.75"].map(money).to_vec(),
                ..settings()
            };
            let kept = Exact::new(100 - 5, 2).minus(Exact::new(25, 3)).unwrap();
            let kept = kept.minus(bar.target.fraction()).unwrap();
            let cost = menu.times(kept).unwrap().minus(money("0.1")).unwrap();
            let pack_of = crate::book::Pack { price: cost, ..pack(1, "3 L", "1") };
            let lines = (1..=3).map(|id| line(id, 1, "1 L"));
            let priced = book(
                bar,
                [
                    Record::Ingredient(ingredient(1, [pack_of])),
                    Record::Container(container(1, "3 L")),
                    Record::Drink(drink(1, "3 L", lines)),
                    Record::Offer(crate::book::Offer { price: Some(menu), ..offer(1, 1, None) }),
                ],
            );
            let priced = price_offer(&priced, priced.offers().next().unwrap()).unwrap();
            assert_eq!(priced.suggestion.map(|it| it.menu), Ok(menu), "{number}: {:?}", priced.cost.total());
            assert_eq!(priced.status(), crate::drink::ledger::OfferStatus::OnTarget, "{number}");
        }
    }

    #[test]
    fn a_digit_too_small_to_show_still_rounds_the_price_up() {
        // By hand: fees take 0.00000001 * 1.0123 of the price, so 0.01 may cost
        // 0.01 * 0.999999989877 = 0.00999999989877. It costs 0.009999999899, so 0.01 is too
        // little, in the 13th decimal.
        let book = book(
            Settings {
                tax: Tax { rate: share("0.0123"), place: TaxPlace::AddedAtTheTill },
                payment_fee: PaymentFee { share: share("0.00000001"), fixed: Money::ZERO },
                cost_basis: CostBasis::Everything,
                target: Share::ZERO,
                ..settings()
            },
            [
                Record::Ingredient(ingredient(1, [pack(1, "2500000 mL", "99.99999899")])),
                Record::Container(container(1, "250 mL")),
                Record::Drink(drink(1, "250 mL", [line(1, 1, "250 mL")])),
                Record::Offer(offer(1, 1, None)),
            ],
        );
        let priced = price_offer(&book, &offer(1, 1, None)).unwrap();
        assert_eq!(priced.cost.total(), Ok(money("0.009999999899")));
        let suggestion = priced.suggestion.unwrap();
        assert_eq!((suggestion.exact, suggestion.menu), (money("0.01"), money("0.02")));
        assert!(asked(&priced.cost, &priced.terms, money("0.01")).unwrap().margin < Share::ZERO);
    }

    #[test]
    fn where_fees_leave_less_than_the_target_the_highest_margin_is_said() {
        // By hand: 1 - 0.20 - 0.029 * 1.10 = 0.7681.
        let bar = Settings {
            tax: Tax { rate: share("0.1"), place: TaxPlace::InThePrice },
            payment_fee: PaymentFee { share: share("0.029"), fixed: money("0.30") },
            commission: share("0.2"),
            cost_basis: CostBasis::Everything,
            target: share("0.8"),
            ..settings()
        };
        let highest = share("0.7681");
        assert_eq!(suggested(&bar, "1"), Err(PriceError::NoPriceReaches { target: share("0.8"), highest }));
        let at_the_limit = Settings { target: highest, ..bar.clone() };
        assert_eq!(suggested(&at_the_limit, "1"), Err(PriceError::NoPriceReaches { target: highest, highest }));
        // Fees that the margin need not cover stand in no price's way: 1 / 0.2 * 1.1.
        let goods = Settings { cost_basis: CostBasis::Goods, ..bar };
        assert_eq!(suggested(&goods, "1").unwrap().menu, money("5.50"));
    }

    #[test]
    fn tax_inside_or_at_the_till() {
        // By hand: of 11.00 with 10 % tax 10.00 are ours; fees 0.029 * 11 + 0.30 + 0.05 * 10 =
        // 1.119; 10 - 1.119 - 4 = 4.881.
        let bar = |place, basis| Settings {
            tax: Tax { rate: share("0.1"), place },
            payment_fee: PaymentFee { share: share("0.029"), fixed: money("0.30") },
            commission: share("0.05"),
            cost_basis: basis,
            ..settings()
        };
        let asked = |place, basis, menu| {
            let offer = offer(1, 1, Some(menu));
            price_offer(&book_of_one_drink(bar(place, basis), "4", Some(menu)), &offer).unwrap().asked.unwrap()
        };
        let inside = asked(TaxPlace::InThePrice, CostBasis::Everything, "11");
        let expected = Asked {
            menu: money("11"),
            without_tax: money("10"),
            customer_pays: money("11"),
            fees: money("1.119"),
            margin: share("0.4881"),
            contribution: money("4.881"),
        };
        assert_eq!(inside, expected);
        let at_the_till = asked(TaxPlace::AddedAtTheTill, CostBasis::Everything, "10");
        assert_eq!(at_the_till, Asked { menu: money("10"), ..expected });
        let goods = asked(TaxPlace::AddedAtTheTill, CostBasis::Goods, "10");
        assert_eq!(goods, Asked { menu: money("10"), margin: share("0.6"), ..expected });
    }

    #[test]
    fn a_drinks_own_target_goes_first() {
        let settings = settings();
        let own = Drink { target: Some(share("0.8")), ..drink(1, "1 L", []) };
        assert_eq!(Terms::of(&settings, &own).target, share("0.8"));
        assert_eq!(Terms::of(&settings, &drink(1, "1 L", [])).target, settings.target);
    }
}
