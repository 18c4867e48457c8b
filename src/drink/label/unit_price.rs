//! What a drink costs per volume.

use crate::drink::price::Terms;
use crate::foundation::measure::{Currency, Exact, Money, Overflow, System, Unit, Volume};

/// The price of a drink per volume, of its net contents.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct UnitPrice {
    /// What is divided.
    pub price: Money,
    /// What of it is for one unit: [`UnitPrice::unit`] of the book.
    pub per_unit: Money,
}

impl UnitPrice {
    /// The unit price of a menu price. In metric and imperial books of what the customer pays:
    /// Directive 98/6/EC Art. 2(b) has the final price with VAT and all other taxes for one litre
    /// (read in German). In US customary books of the menu price (NIST Handbook 130, Uniform Unit
    /// Pricing Regulation, second-hand).
    ///
    /// # Errors
    /// [`Overflow`], also for no volume.
    pub(super) fn of(menu: Money, terms: &Terms, units: System, net: Volume) -> Result<UnitPrice, Overflow> {
        let price = match units {
            System::UsCustomary => menu,
            System::Metric | System::Imperial => terms.customer_pays(menu)?,
        };
        let per_unit = price.times(UnitPrice::unit(units).size())?.over(net.millilitres())?;
        Ok(UnitPrice { price: price.as_part(), per_unit: per_unit.as_part() })
    }

    /// The one unit for all sizes: a fluid ounce, or a litre (Directive 98/6/EC Art. 2(b)).
    pub const fn unit(units: System) -> Unit {
        match units {
            System::UsCustomary => Unit::UsFluidOunce,
            System::Metric | System::Imperial => Unit::Litre,
        }
    }

    /// The price of a unit as it is shown, with its digits: those of the currency, and one more
    /// below one major unit. "Where the unit price of a product falls below £1 it shall be
    /// expressed to the nearest 0.1p", half upwards (Price Marking Order (Northern Ireland) 2004,
    /// article 13, text); to the tenth of a cent below one dollar (NIST Handbook 130, Uniform Unit
    /// Pricing Regulation, from memory).
    pub fn shown(&self, currency: Currency) -> (Exact, u32) {
        let finer = currency.digits().saturating_add(1);
        let fine = self.per_unit.major().rounded(finer);
        if fine < Exact::ONE { (fine, finer) } else { (currency.rounded(self.per_unit).major(), currency.digits()) }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Settings, Tax, TaxPlace};
    use crate::support::{amount, container, drink, millilitres, money, settings, share};

    /// Price divided, and per unit, of a menu price of 6.00.
    fn of(units: System, place: TaxPlace, net: Volume) -> (Money, Money) {
        let settings = Settings { units, tax: Tax { rate: share("0.2"), place }, ..settings() };
        let terms = Terms::of(&settings, &drink(1, "1 L", []), &container(1, "1 L")).unwrap();
        let unit_price = UnitPrice::of(money("6"), &terms, units, net).unwrap();
        (unit_price.price, unit_price.per_unit)
    }

    #[test]
    fn metric_prices_have_all_taxes_in_them() {
        // 6.00 for 0.4 L is 15.00 a litre; with 20 % on top 7.20 and 18.00.
        let inside = of(System::Metric, TaxPlace::InThePrice, millilitres("400"));
        assert_eq!(inside, (money("6"), money("15")));
        let added = of(System::Imperial, TaxPlace::AddedAtTheTill, millilitres("400"));
        assert_eq!(added, (money("7.2"), money("18")));
    }

    #[test]
    fn us_prices_are_the_menus() {
        // 6.00 for 16 fl oz: 0.375 an ounce.
        let pint = amount("1 pt").volume().unwrap().unwrap();
        let menu = of(System::UsCustomary, TaxPlace::AddedAtTheTill, pint);
        assert_eq!(menu, (money("6"), money("0.375")));
    }

    #[test]
    fn all_sizes_have_one_unit() {
        let units = [System::UsCustomary, System::Metric, System::Imperial].map(UnitPrice::unit);
        assert_eq!(units, [Unit::UsFluidOunce, Unit::Litre, Unit::Litre]);
    }

    #[test]
    fn below_one_there_is_a_digit_more() {
        let shown = |per_unit, code| {
            let unit_price = UnitPrice { price: money("1"), per_unit: money(per_unit) };
            let (number, digits) = unit_price.shown(Currency::from_code(code).unwrap());
            (number.to_string(), digits)
        };
        let is = |number: &str, digits| (number.to_string(), digits);
        assert_eq!(shown("0.5264", "USD"), is("0.526", 3));
        assert_eq!(shown("0.5265", "GBP"), is("0.527", 3));
        assert_eq!(shown("0.9994", "USD"), is("0.999", 3));
        assert_eq!(shown("0.9996", "USD"), is("1", 2));
        assert_eq!(shown("12.345", "EUR"), is("12.35", 2));
        assert_eq!(shown("1250.4", "JPY"), is("1250", 0));
        assert_eq!(shown("1.23456", "KWD"), is("1.235", 3));
        assert_eq!(shown("0.12345", "KWD"), is("0.1235", 4));
    }

    #[test]
    fn nothing_has_no_unit_price() {
        let terms = Terms::of(&settings(), &drink(1, "1 L", []), &container(1, "1 L")).unwrap();
        let none = UnitPrice::of(money("6"), &terms, System::Metric, Volume::ZERO);
        assert_eq!(none, Err(Overflow::DivisionByZero));
    }
}
