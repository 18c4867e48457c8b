//! Packs: a supplier's price for an amount of goods.

use serde::{Deserialize, Serialize};

use super::{IngredientId, PackId, PackagingId};
use crate::foundation::in_order;
use crate::foundation::measure::{Amount, Date, Exact, Money};

/// Something that is bought in packs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Goods {
    /// An ingredient.
    Ingredient(IngredientId),
    /// Packaging, by the piece.
    Packaging(PackagingId),
}

/// A supplier's quote for a pack. Price and contents are stored as a pair, since a unit price could not be
/// exact.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Pack {
    /// Its id.
    pub id: PackId,
    /// Who sells it, in the owner's words; may be empty.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub supplier: String,
    /// Its contents, as bought.
    pub contents: Amount,
    /// The price of one pack.
    pub price: Money,
    /// The day on which the price was last heard, or `None` if nobody noted it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub day: Option<Date>,
    /// Its earlier prices, the earliest first, each with the last day on which it was heard.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub earlier: Vec<Quoted>,
    /// Delivery, or a deposit that is not refunded, per pack.
    #[serde(default, skip_serializing_if = "Money::is_zero")]
    pub surcharge: Money,
    /// How many are bought at a time.
    #[serde(default = "Exact::one", skip_serializing_if = "Exact::is_one")]
    pub at_a_time: Exact,
    /// Lower prices for more at a time.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub tiers: Vec<Tier>,
}

impl Pack {
    /// A pack bought one at a time, without surcharge, from nobody named and on no day noted.
    pub fn new(id: PackId, contents: Amount, price: Money) -> Pack {
        Pack {
            id,
            supplier: String::new(),
            contents,
            price,
            day: None,
            earlier: Vec::new(),
            surcharge: Money::ZERO,
            at_a_time: Exact::ONE,
            tiers: Vec::new(),
        }
    }
}

/// A price of a pack, and the last day on which it was heard.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Quoted {
    /// The day.
    pub day: Date,
    /// The price of one pack as it was bought then.
    pub price: Money,
}

/// A lower price of a pack if more are bought at a time.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Tier {
    /// From how many packs at a time, above 1.
    pub from: Exact,
    /// The price of one pack.
    pub price: Money,
}

/// Why a price that was heard cannot get another day.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DayError {
    /// Another price was heard on this day.
    Taken(Date),
    /// It is the price paid now, and the one before it was heard on this day.
    NotAfter(Date),
    /// The price paid now was heard on this day.
    NotBefore(Date),
}

impl Pack {
    /// The price of one pack when `packs` are bought at a time.
    pub fn price_at(&self, packs: Exact) -> Money {
        self.reached_by(packs).map_or(self.price, |tier| tier.price)
    }

    /// The tier that holds for as many packs as are bought at a time. Returns `None` if that is the pack's own
    /// price.
    pub fn reached(&self) -> Option<&Tier> {
        self.reached_by(self.at_a_time)
    }

    fn reached_by(&self, packs: Exact) -> Option<&Tier> {
        self.tiers.iter().filter(|tier| tier.from <= packs).max_by_key(|tier| tier.from)
    }

    /// The price of one pack when it is bought as usual: [`Pack::at_a_time`] at a time.
    pub fn price_now(&self) -> Money {
        self.price_at(self.at_a_time)
    }

    /// The field that holds that price, to set a new one.
    pub fn price_now_mut(&mut self) -> &mut Money {
        let at_a_time = self.at_a_time;
        let reached = self.tiers.iter_mut().filter(|tier| tier.from <= at_a_time);
        reached.max_by_key(|tier| tier.from).map_or(&mut self.price, |tier| &mut tier.price)
    }

    /// Sets the price as it was heard on a day. The price before moves into the history. If the price is the
    /// same, the first and the last day on which it was heard are kept.
    pub fn quote(&mut self, price: Money, day: Date) {
        let was = Quoted { day: self.day.unwrap_or(day), price: self.price_now() };
        if was.day < day {
            self.earlier.push(was);
        }
        if let [.., first, last] = self.earlier.as_slice()
            && first.price == price
            && last.price == price
        {
            self.earlier.pop();
        }
        *self.price_now_mut() = price;
        self.day = Some(day.max(was.day));
    }

    /// Every price that was heard, the earliest first. The one paid now is the last, if it has a day.
    pub fn heard(&self) -> impl Iterator<Item = Quoted> {
        let now = self.day.map(|day| Quoted { day, price: self.price_now() });
        self.earlier.iter().copied().chain(now)
    }

    /// The pack with another day, `to`, for the price that was heard on `from`. The history stays in order. If
    /// no price was heard on `from`, the pack is unchanged.
    ///
    /// # Errors
    /// A [`DayError`] if another price has that day.
    pub fn redated(&self, from: Date, to: Date) -> Result<Pack, DayError> {
        if from != to && self.heard().any(|quoted| quoted.day == to) {
            return Err(DayError::Taken(to));
        }
        let mut pack = self.clone();
        if self.day == Some(from) {
            match self.earlier.last() {
                Some(before) if before.day > to => return Err(DayError::NotAfter(before.day)),
                _ => pack.day = Some(to),
            }
            return Ok(pack);
        }
        let Some(place) = pack.earlier.iter().position(|quoted| quoted.day == from) else { return Ok(pack) };
        if let Some(now) = self.day.filter(|now| to > *now) {
            return Err(DayError::NotBefore(now));
        }
        let moved = Quoted { day: to, ..pack.earlier.remove(place) };
        in_order::insert(&mut pack.earlier, moved, |other, moved| other.day < moved.day);
        Ok(pack)
    }

    /// The price that was last heard on a day or before it. Returns `None` if none is known.
    pub fn price_on(&self, day: Date) -> Option<Money> {
        self.heard().take_while(|quoted| quoted.day <= day).last().map(|quoted| quoted.price)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::{day, exact, money, pack};

    #[test]
    fn the_price_is_that_of_the_highest_tier_reached() {
        let tier = |from: &str, price: &str| Tier { from: exact(from), price: money(price) };
        let mut case = Pack { tiers: vec![tier("10", "33"), tier("5", "36")], ..pack(1, "250 ea", "40") };
        let at = |packs: &str| case.price_at(exact(packs));
        assert_eq!(["1", "4.99", "5", "9", "10", "100"].map(at), ["40", "40", "36", "36", "33", "33"].map(money));
        assert_eq!(case.reached(), None);
        case.at_a_time = exact("5");
        assert_eq!(case.reached(), Some(&tier("5", "36")));
        assert_eq!(case.price_now(), money("36"));
        *case.price_now_mut() = money("35");
        assert_eq!((case.price, case.tiers[1].price), (money("40"), money("35")));
    }

    /// Days and prices heard.
    fn heard(case: &Pack) -> Vec<(String, Money)> {
        case.heard().map(|quoted| (quoted.day.to_string(), quoted.price)).collect()
    }

    fn days(pairs: &[(&str, &str)]) -> Vec<(String, Money)> {
        pairs.iter().map(|(day, price)| (day.to_string(), money(price))).collect()
    }

    #[test]
    fn what_was_paid_before_stays_in_the_history() {
        let mut case = pack(1, "40 lb", "30");
        assert_eq!(case.price_on(day("2026-11-30")), None, "nobody noted when");
        case.quote(money("32"), day("2026-11-02"));
        assert_eq!(heard(&case), days(&[("2026-11-02", "32")]), "of what was not dated nothing is known");
        case.quote(money("3"), day("2026-11-09"));
        case.quote(money("34"), day("2026-11-09"));
        assert_eq!(heard(&case), days(&[("2026-11-02", "32"), ("2026-11-09", "34")]), "typed digit by digit");
        let on = |text: &str| case.price_on(day(text));
        let expected = [None, Some(money("32")), Some(money("32")), Some(money("34")), Some(money("34"))];
        assert_eq!(["2026-11-01", "2026-11-02", "2026-11-08", "2026-11-09", "2027-01-01"].map(on), expected);
    }

    #[test]
    fn a_price_that_holds_on_has_a_first_and_a_last_day() {
        let mut case = pack(1, "40 lb", "30");
        for text in ["2026-11-02", "2026-11-09", "2026-11-16", "2026-11-23"] {
            case.quote(money("30"), day(text));
        }
        assert_eq!(heard(&case), days(&[("2026-11-02", "30"), ("2026-11-23", "30")]));
        case.quote(money("31"), day("2026-11-30"));
        assert_eq!(heard(&case), days(&[("2026-11-02", "30"), ("2026-11-23", "30"), ("2026-11-30", "31")]));
        // Mistyped and put right on one day.
        case.quote(money("30"), day("2026-11-30"));
        assert_eq!(heard(&case), days(&[("2026-11-02", "30"), ("2026-11-30", "30")]));
    }

    /// A pack whose price moved on three days.
    fn moved() -> Pack {
        let mut case = pack(1, "40 lb", "30");
        for (text, price) in [("2026-11-02", "30"), ("2026-11-09", "33"), ("2026-11-16", "31")] {
            case.quote(money(price), day(text));
        }
        case
    }

    #[test]
    fn the_day_of_any_price_can_be_mended() {
        let redated = |from: &str, to: &str| heard(&moved().redated(day(from), day(to)).unwrap());
        assert_eq!(
            redated("2026-11-09", "2026-11-11"),
            days(&[("2026-11-02", "30"), ("2026-11-11", "33"), ("2026-11-16", "31")])
        );
        assert_eq!(
            redated("2026-11-09", "2026-10-09"),
            days(&[("2026-10-09", "33"), ("2026-11-02", "30"), ("2026-11-16", "31")]),
            "in order again"
        );
        assert_eq!(
            redated("2026-11-16", "2026-11-10"),
            days(&[("2026-11-02", "30"), ("2026-11-09", "33"), ("2026-11-10", "31")]),
            "the price paid now"
        );
        assert_eq!(redated("2026-11-02", "2026-11-02"), heard(&moved()));
        assert_eq!(redated("2026-11-03", "2026-11-04"), heard(&moved()), "no price was heard then");
    }

    #[test]
    fn the_price_paid_now_stays_the_last() {
        let refused = |from: &str, to: &str| moved().redated(day(from), day(to)).unwrap_err();
        assert_eq!(refused("2026-11-02", "2026-11-09"), DayError::Taken(day("2026-11-09")));
        assert_eq!(refused("2026-11-16", "2026-11-09"), DayError::Taken(day("2026-11-09")));
        assert_eq!(refused("2026-11-16", "2026-11-08"), DayError::NotAfter(day("2026-11-09")));
        assert_eq!(refused("2026-11-09", "2026-11-17"), DayError::NotBefore(day("2026-11-16")));
    }

    #[test]
    fn a_clock_that_was_put_back_does_not_turn_the_history_round() {
        let mut case = pack(1, "40 lb", "30");
        case.quote(money("30"), day("2026-11-09"));
        case.quote(money("31"), day("2026-11-08"));
        assert_eq!(heard(&case), days(&[("2026-11-09", "31")]));
    }
}
