//! Says numbers, money, percentages and measures for one book. No other place forms a number that
//! a person reads.

use std::sync::Arc;

use super::texts::Number;
use super::{length_unit, overflow, unit, voice};
use crate::book::Book;
use crate::drink::label::{Law, UnitPrice};
use crate::foundation::measure::{
    Amount, Count, Currency, Density, Exact, Length, LengthUnit, Mass, Measure, Money, NumberStyle, Overflow, Share,
    System, Temperature, Time, TypedLength, Unit, Volume, show_amount, show_count, show_fill, show_fine_volume,
    show_inches, show_length, show_mass, show_money, show_number, show_percent, show_percentage, show_pieces,
    show_short_percent, show_temperature, show_time, show_typed_length, show_volume,
};
use crate::say;

/// The unit of a density outside the United States.
const GRAMS_PER_MILLILITRE: &str = "g/mL";

/// The most decimals of a percent that tell two shares apart.
const MOST_PERCENT_PLACES: u32 = 6;

/// The currency and the units of a book, and how numbers are written where the person lives.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Speaker {
    currency: Currency,
    units: System,
    style: Arc<NumberStyle>,
}

impl Speaker {
    /// Speaks of money in `currency` and of measures in `units`, in the signs of `style`.
    pub fn new(currency: Currency, units: System, style: NumberStyle) -> Speaker {
        Speaker { currency, units, style: Arc::new(style) }
    }

    /// Speaks of `book`, in the signs of `style`.
    pub fn of(book: &Book, style: NumberStyle) -> Speaker {
        Speaker::new(book.settings().currency, book.settings().units, style)
    }

    /// Speaks of `book` in the signs of the voice in force, for sentences that get no speaker from outside.
    /// They have no money in them: its sign is not known.
    pub(super) fn plain_of(book: &Book) -> Speaker {
        Speaker::of(book, voice::here().numbers.clone())
    }

    /// Speaks in the signs of the voice in force of numbers that depend on no book.
    pub(super) fn plain() -> Speaker {
        Speaker::plain_in(System::Metric)
    }

    /// The same of measures in `units`.
    pub(super) fn plain_in(units: System) -> Speaker {
        Speaker::new(Currency::USD, units, voice::here().numbers.clone())
    }

    /// A number with all its digits, for a text that chooses a plural form by it.
    pub fn counted(&self, number: Exact) -> Number {
        Number { shown: self.number(number), form: (voice::here().plural)(&number.to_string()) }
    }

    /// The currency of the book.
    pub const fn currency(&self) -> Currency {
        self.currency
    }

    /// The law of the book.
    pub fn law(&self) -> Law {
        Law::by(self.currency, self.units)
    }

    /// The units of the book.
    pub const fn units(&self) -> System {
        self.units
    }

    /// The signs of the person's locale: what is typed is read by them.
    pub fn style(&self) -> &NumberStyle {
        &self.style
    }

    /// A number with all its digits: "1,234.5".
    pub fn number(&self, number: Exact) -> String {
        self.digits(number, 0)
    }

    /// A number rounded to `places` decimals, all of which are written: "0.50".
    pub fn rounded(&self, number: Exact, places: u32) -> String {
        self.digits(number.rounded(places), places)
    }

    /// A number with all its digits, and at least `places` decimals.
    pub fn digits(&self, number: Exact, places: u32) -> String {
        show_number(number, places, &self.style)
    }

    /// A number with all its digits, at least `places` decimals, and a unit: "7.50 oz".
    pub fn with_unit(&self, number: Exact, places: u32, unit: &str) -> String {
        [&*self.digits(number, places), "\u{a0}", unit].concat()
    }

    /// Money in the digits of the currency, half away from zero: "$9.50".
    pub fn money(&self, money: Money) -> String {
        show_money(money, self.currency, &self.style)
    }

    /// Money to one digit more than the currency has, for costs of small amounts: "$0.425".
    pub fn fine_money(&self, money: Money) -> String {
        let digits = self.currency.digits().saturating_add(1);
        self.money_of(money.major().rounded(digits), digits)
    }

    /// Money in the digits of the currency, and in one more where there is something in it.
    pub fn exact_money(&self, money: Money) -> String {
        self.money_of(self.shown_exactly(money).major(), self.currency.digits())
    }

    /// Money as [`Speaker::exact_money`] shows it: rounded to one digit more than the currency has.
    pub fn shown_exactly(&self, money: Money) -> Money {
        Money::from_major(money.major().rounded(self.currency.digits().saturating_add(1)))
    }

    /// Money in as many digits as it has, without the currency's sign: what a field shows.
    pub fn plain_money(&self, money: Money) -> String {
        self.digits(money.major(), self.currency.digits())
    }

    /// So much of the currency's major unit, with at least so many decimals.
    pub fn money_of(&self, number: Exact, places: u32) -> String {
        let sign = if number.is_negative() { "\u{2212}" } else { "" };
        [sign, &self.style.money_before, &self.digits(number.abs(), places), &self.style.money_after].concat()
    }

    /// The price of a unit, in the digits of unit prices.
    pub fn unit_price(&self, unit_price: &UnitPrice) -> String {
        let (number, digits) = unit_price.shown(self.currency);
        self.money_of(number, digits)
    }

    /// A share to 0.1 %: "64.5%".
    pub fn percent(&self, share: Share) -> String {
        said(show_percent(share, &self.style))
    }

    /// A share as [`Speaker::percent`] shows it, and with more decimals where it is under `target` and would be
    /// shown as the same: "67.96%" beside 68.0%.
    pub fn percent_beside(&self, share: Share, target: Option<Share>) -> String {
        let shown = self.percent(share);
        let Some(target) = target.filter(|target| share < *target && shown == self.percent(*target)) else {
            return shown;
        };
        let apart = |places: &u32| self.short_percent(share, *places) != self.short_percent(target, *places);
        (2..=MOST_PERCENT_PLACES).find(apart).map_or(shown, |places| self.short_percent(share, places))
    }

    /// A share to at most so many decimals of a percent, without zeros at their end: "90%".
    pub fn short_percent(&self, share: Share, places: u32) -> String {
        said(show_short_percent(share, places, &self.style))
    }

    /// A number of percent with all its digits, and at least so many decimals: "12.5%".
    pub fn percentage(&self, number: Exact, places: u32) -> String {
        show_percentage(number, places, &self.style)
    }

    /// A share as a percentage without its sign, with all its digits: what a field shows.
    pub fn plain_percent(&self, share: Share) -> String {
        said(share.percent().map(|percent| self.number(percent)))
    }

    /// A volume to 1 mL or 0.1 fl oz (0.01 under 1 fl oz): "16.0 fl oz".
    pub fn volume(&self, volume: Volume) -> String {
        said(show_volume(volume, self.units, &self.style))
    }

    /// A volume to one decimal more than others: what fills are judged by.
    pub fn fine_volume(&self, volume: Volume) -> String {
        said(show_fine_volume(volume, self.units, &self.style))
    }

    /// A volume to fill up to: as finely, and never less than it is.
    pub fn fill(&self, volume: Volume) -> String {
        said(show_fill(volume, self.units, &self.style))
    }

    /// A mass to 1 g or 0.1 oz; from a pound or kilogram up to 0.01 of it.
    pub fn mass(&self, mass: Mass) -> String {
        said(show_mass(mass, self.units, &self.style))
    }

    /// Pieces: "1 1/2 ea", or to 0.01.
    pub fn count(&self, count: Count) -> String {
        show_count(count, unit(Unit::Piece, self.units), &self.style)
    }

    /// An amount of any kind in the book's units.
    pub fn measure(&self, measure: Measure) -> String {
        match measure {
            Measure::Volume(volume) => self.volume(volume),
            Measure::Mass(mass) => self.mass(mass),
            Measure::Count(count) => self.count(count),
        }
    }

    /// An amount as it was typed: "12.5 fl oz".
    pub fn amount(&self, amount: Amount) -> String {
        show_amount(amount, unit(amount.unit, self.units), &self.style)
    }

    /// The size of a drink where no weight can be meant, such as a heading: "12 oz" in a US book.
    pub fn size(&self, size: Amount) -> String {
        match size.unit {
            Unit::UsFluidOunce if self.units == System::UsCustomary => {
                [&*self.number(size.number), " ", Unit::Ounce.symbol()].concat()
            }
            _ => self.amount(size),
        }
    }

    /// The unit of such sizes.
    pub const fn size_unit(&self) -> &'static str {
        match self.units {
            System::UsCustomary => Unit::Ounce.symbol(),
            units => units.drink_unit().name_in(units),
        }
    }

    /// An amount as a card says it beside its ingredient, its number and its unit: pieces without their unit,
    /// "1 1/2"; spoons in fractions, "1 3/4 tsp".
    pub fn on_card(&self, amount: Amount) -> (String, &'static str) {
        match amount.unit {
            Unit::Piece => (self.pieces(amount.number), ""),
            unit if unit.is_a_spoon() => (self.inches(amount.number), unit.name_in(self.units)),
            unit => (self.number(amount.number), unit.name_in(self.units)),
        }
    }

    /// A length to 0.1 mm or 1/16 in.
    pub fn length(&self, length: Length) -> String {
        let unit = length_unit(LengthUnit::of(self.units));
        said(show_length(length, self.units, unit, &self.style))
    }

    /// A length as it was typed: "90 mm", "3 1/2 in".
    pub fn typed_length(&self, length: TypedLength) -> String {
        show_typed_length(length, length_unit(length.unit), &self.style)
    }

    /// A time to 0.1 s: "1:30", "0:07.5".
    pub fn time(&self, time: Time) -> String {
        show_time(Time::from_seconds(time.seconds().rounded(1)), &self.style)
    }

    /// A time with all its digits: what a field shows.
    pub fn typed_time(&self, time: Time) -> String {
        show_time(time, &self.style)
    }

    /// The time per gallon or liter of what is stored per liter: as it was typed.
    pub fn typed_labor(&self, per_litre: Time) -> String {
        said(per_litre.of_labor_volume(self.units).map(|time| self.typed_time(time)))
    }

    /// The same, to 0.1 s.
    pub fn labor(&self, per_litre: Time) -> String {
        said(per_litre.of_labor_volume(self.units).map(|time| self.time(time)))
    }

    /// A density: in a US book the weight of one cup to 0.01 oz ("8.75 oz per cup"), else "1.048 g/mL" to four
    /// decimals.
    pub fn density(&self, density: Density) -> String {
        if self.units.weighs_cups() {
            let weight = [&*self.cup_weight(density, 2), "\u{a0}", Unit::Ounce.symbol()].concat();
            say!(goods::weight_per_cup, weight = weight)
        } else {
            self.grams_per_millilitre(density)
        }
    }

    /// A density in the unit of science, to four decimals: "0.917 g/mL".
    pub fn grams_per_millilitre(&self, density: Density) -> String {
        self.with_unit(density.grams_per_millilitre().rounded(4), 0, GRAMS_PER_MILLILITRE)
    }

    /// The ounces of one cup, rounded to so many decimals.
    pub fn cup_weight(&self, density: Density, places: u32) -> String {
        said(density.ounces_per_cup().map(|ounces| self.number(ounces.rounded(places))))
    }

    /// A density as it was typed, without its unit: what a field shows.
    pub fn typed_density(&self, density: Density) -> String {
        if self.units.weighs_cups() {
            said(density.ounces_per_cup().map(|ounces| self.number(ounces)))
        } else {
            self.number(density.grams_per_millilitre())
        }
    }

    /// The unit of a density that a field takes.
    pub const fn density_unit(&self) -> &'static str {
        if self.units.weighs_cups() { Unit::Ounce.symbol() } else { GRAMS_PER_MILLILITRE }
    }

    /// Pieces, as their number stands in a field: "1 1/2".
    pub fn pieces(&self, pieces: Exact) -> String {
        show_pieces(pieces, &self.style)
    }

    /// Inches as their number stands in a field, and spoons: "3 1/2", "1 3/8".
    pub fn inches(&self, inches: Exact) -> String {
        show_inches(inches, &self.style)
    }

    /// A temperature as it was typed: "40 °F".
    pub fn temperature(&self, temperature: Temperature) -> String {
        show_temperature(temperature, &self.style)
    }
}

fn said(shown: Result<String, Overflow>) -> String {
    shown.unwrap_or_else(overflow)
}
