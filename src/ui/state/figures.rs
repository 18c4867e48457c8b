//! The figures of the open book as its speaker says them, following its currency and its units.

use leptos::prelude::*;

use super::AppState;
use crate::drink::label::UnitPrice;
use crate::foundation::measure::{
    Amount, Exact, Length, LengthUnit, Measure, Money, Share, System, Temperature, Time, TypedLength, Unit, Volume,
};

impl AppState {
    /// The units of the book.
    pub fn units(self) -> System {
        self.speaker.get().units()
    }

    /// Money in the book's currency.
    pub fn money(self, money: Money) -> String {
        self.speaker.get().money(money)
    }

    /// Money in as many digits as it has, without the currency's sign: what a field shows.
    pub fn plain_money(self, money: Money) -> String {
        self.speaker.get().plain_money(money)
    }

    /// Money as a field shows it. Returns an empty text if it is zero.
    pub fn money_if_any(self, money: Money) -> String {
        if money.is_zero() { String::new() } else { self.plain_money(money) }
    }

    /// Money with one digit more than its currency has, for costs of small amounts.
    pub fn fine_money(self, money: Money) -> String {
        self.speaker.get().fine_money(money)
    }

    /// The price of a unit, in the digits of unit prices.
    pub fn unit_price(self, unit_price: &UnitPrice) -> String {
        self.speaker.get().unit_price(unit_price)
    }

    /// Money at a mark of an axis, in as few digits as it takes; follows nothing.
    pub fn money_mark(self, number: Exact) -> String {
        self.speaker.get_untracked().money_of(number, 0)
    }

    /// A share to 0.1 %.
    pub fn percent(self, share: Share) -> String {
        self.speaker.get().percent(share)
    }

    /// A margin beside its target: to 0.1 %, or finer where that would hide that it falls short.
    pub fn margin(self, margin: Share, target: Share) -> String {
        self.speaker.get().percent_beside(margin, Some(target))
    }

    /// A number of percent, all digits: "12.5%".
    pub fn percentage(self, number: Exact) -> String {
        self.speaker.get().percentage(number, 0)
    }

    /// A share as a percentage without its sign, all digits: what a field shows.
    pub fn plain_percent(self, share: Share) -> String {
        self.speaker.get().plain_percent(share)
    }

    /// A percentage as a field shows it. Returns an empty text if it is zero.
    pub fn percent_if_any(self, share: Share) -> String {
        if share.is_zero() { String::new() } else { self.plain_percent(share) }
    }

    /// A number as a field shows it. Returns an empty text if it is zero.
    pub fn number_if_any(self, number: Exact) -> String {
        if number.is_zero() { String::new() } else { self.number(number) }
    }

    /// An exact number, all digits.
    pub fn number(self, number: Exact) -> String {
        self.speaker.get().number(number)
    }

    /// A number as it stands in a field beside the unit of this symbol: inches and pieces in fractions.
    pub fn number_of(self, number: Exact, unit: &str) -> String {
        let speaker = self.speaker.get();
        match unit {
            _ if unit == LengthUnit::Inch.symbol() => speaker.inches(number),
            _ if unit == Unit::Piece.symbol() => speaker.pieces(number),
            _ => speaker.number(number),
        }
    }

    /// A time as a field shows it. Returns an empty text if there is none.
    pub fn time_if_any(self, time: Time) -> String {
        if time.is_zero() { String::new() } else { self.speaker.get().typed_time(time) }
    }

    /// A time per liter as a field shows it, per gallon or liter. Returns an empty text if there is none.
    pub fn labor_if_any(self, per_litre: Time) -> String {
        if per_litre.is_zero() { String::new() } else { self.speaker.get().typed_labor(per_litre) }
    }

    /// A volume in the book's units.
    pub fn volume(self, volume: Volume) -> String {
        self.speaker.get().volume(volume)
    }

    /// A volume to one decimal more than others: what fills are judged by.
    pub fn fine_volume(self, volume: Volume) -> String {
        self.speaker.get().fine_volume(volume)
    }

    /// A volume to fill up to: as finely, and never less than it is.
    pub fn fill(self, volume: Volume) -> String {
        self.speaker.get().fill(volume)
    }

    /// A temperature as it was typed.
    pub fn temperature(self, temperature: Temperature) -> String {
        self.speaker.get().temperature(temperature)
    }

    /// A length in the book's units.
    pub fn length(self, length: Length) -> String {
        self.speaker.get().length(length)
    }

    /// A length as it was typed.
    pub fn typed_length(self, length: TypedLength) -> String {
        self.speaker.get().typed_length(length)
    }

    /// An amount of any kind in the book's units.
    pub fn measure(self, measure: Measure) -> String {
        self.speaker.get().measure(measure)
    }

    /// An amount as it was typed.
    pub fn amount(self, amount: Amount) -> String {
        self.speaker.get().amount(amount)
    }
}
