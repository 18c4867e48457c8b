//! What a drink costs per volume.

use crate::measure::{Amount, Exact, Money, Overflow, System, Unit, Volume};
use crate::price::Terms;

/// The price of a drink per volume, of its net contents.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct UnitPrice {
    /// What is divided.
    pub price: Money,
    /// Per 100 mL or fluid ounce.
    pub small: PricePer,
    /// Per litre or quart.
    pub large: PricePer,
}

/// A price of so much of something.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PricePer {
    /// How much of it.
    pub amount: Amount,
    /// The price of that.
    pub price: Money,
}

impl UnitPrice {
    /// The unit price of a menu price. In metric and imperial books what the customer pays, per
    /// 100 mL and litre: Directive 98/6/EC Art. 2(b) has the final price with VAT and all other
    /// taxes for one litre (read in German). In US customary books the menu price, per fluid
    /// ounce and quart (NIST Handbook 130, Uniform Unit Pricing Regulation, second-hand).
    ///
    /// # Errors
    /// [`Overflow`], also for no volume.
    pub(super) fn of(menu: Money, terms: &Terms, units: System, net: Volume) -> Result<UnitPrice, Overflow> {
        let price = match units {
            System::UsCustomary => menu,
            System::Metric | System::Imperial => terms.customer_pays(menu)?,
        };
        let large = match units {
            System::UsCustomary => Unit::UsQuart,
            System::Metric | System::Imperial => Unit::Litre,
        };
        let per = |amount: Amount| -> Result<PricePer, Overflow> {
            let of_it = price.times(amount.number.times(amount.unit.size())?)?.over(net.millilitres())?;
            Ok(PricePer { amount, price: of_it.as_part() })
        };
        let (small, large) = (UnitPrice::small_amount(units), Amount::new(Exact::ONE, large));
        Ok(UnitPrice { price: price.as_part(), small: per(small)?, large: per(large)? })
    }

    /// What the price of a small amount is for: 100 mL or a fluid ounce.
    pub const fn small_amount(units: System) -> Amount {
        match units {
            System::UsCustomary => Amount::new(Exact::ONE, Unit::UsFluidOunce),
            System::Metric | System::Imperial => Amount::new(Exact::new(100, 0), Unit::Millilitre),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Settings, Tax, TaxPlace};
    use crate::support::{amount, drink, millilitres, money, settings, share};

    /// Price divided, per small and per large amount, of a menu price of 6.00.
    fn of(units: System, place: TaxPlace, net: Volume) -> (Money, (Amount, Money), (Amount, Money)) {
        let settings = Settings { units, tax: Tax { rate: share("0.2"), place }, ..settings() };
        let terms = Terms::of(&settings, &drink(1, "1 L", []));
        let unit_price = UnitPrice::of(money("6"), &terms, units, net).unwrap();
        let pair = |per: PricePer| (per.amount, per.price);
        (unit_price.price, pair(unit_price.small), pair(unit_price.large))
    }

    #[test]
    fn metric_prices_have_all_taxes_in_them() {
        // 6.00 for 0.4 L is 15.00 a litre; with 20 % on top 7.20 and 18.00.
        let (small, large) = (amount("100 mL"), amount("1 L"));
        let inside = of(System::Metric, TaxPlace::InThePrice, millilitres("400"));
        assert_eq!(inside, (money("6"), (small, money("1.5")), (large, money("15"))));
        let added = of(System::Imperial, TaxPlace::AddedAtTheTill, millilitres("400"));
        assert_eq!(added, (money("7.2"), (small, money("1.8")), (large, money("18"))));
    }

    #[test]
    fn us_prices_are_the_menus() {
        // 6.00 for 16 fl oz: 0.375 an ounce, 12.00 a quart.
        let pint = amount("1 pt").volume().unwrap().unwrap();
        let menu = of(System::UsCustomary, TaxPlace::AddedAtTheTill, pint);
        assert_eq!(menu, (money("6"), (amount("1 fl oz"), money("0.375")), (amount("1 qt"), money("12"))));
    }

    #[test]
    fn nothing_has_no_unit_price() {
        let terms = Terms::of(&settings(), &drink(1, "1 L", []));
        let none = UnitPrice::of(money("6"), &terms, System::Metric, Volume::ZERO);
        assert_eq!(none, Err(Overflow::DivisionByZero));
    }
}
