//! Prices seen elsewhere, a curve through them, and where our own sizes stand.
//!
//! The curve is a straight line through the logarithms of size and price by least squares:
//!
//! ```text
//! price    = a * V^b
//! doubling = 2^b - 1
//! above    = our price / price of the curve at our size - 1
//! ```
//!
//! `V` is the size in millilitres. `doubling` is how much more twice the size costs, as a share. There is a
//! curve from three prices on, if the largest size is at least [`APART`] times the smallest. It is read up to
//! [`READABLE`] times beyond the sizes seen. It is an estimate in binary fractions. What others ask is not
//! what they sell: nothing here says what to ask.
//!
//! ```
//! use brimwright::foundation::measure::{Date, Exact};
//! # let book = brimwright::exchange::read(r#"{"format": "brimwright-book", "version": 3,
//! #   "settings": {"name": "Invented", "currency": "EUR", "units": "metric", "wage": "0", "target": "0.6",
//! #     "tax": {"rate": "0", "place": "in-the-price"}, "payment-fee": {}, "covers": "goods", "endings": []},
//! #   "ingredients": [], "packagings": [], "containers": [], "drinks": [], "offers": [],
//! #   "seen-prices": [
//! #     {"id": "1", "place": "A", "kind": "blended", "size": "200 mL", "price": "4", "day": "2026-11-02"},
//! #     {"id": "2", "place": "B", "kind": "blended", "size": "400 mL", "price": "6", "day": "2026-11-02"},
//! #     {"id": "3", "place": "C", "kind": "blended", "size": "800 mL", "price": "9", "day": "2026-11-02"}
//! #   ]}"#).unwrap();
//!
//! // 200, 400 and 800 mL were seen at 4.00, 6.00 and 9.00. By hand: half as much again for twice the
//! // size, so that b is log2(1.5) = 0.58496.
//! let today = Date::new(2026, 11, 27).unwrap();
//! let curve = brimwright::sizes::market::market(&book, None, today).unwrap().curve.unwrap();
//! assert_eq!(curve.doubling.fraction().rounded(9), Exact::new(5, 1));
//! assert_eq!(curve.exponent.rounded(5), Exact::new(58_496, 5));
//! ```

use crate::book::{Book, Container, DrinkKind, OfferId, SeenPriceId};
use crate::drink::fill::fill;
use crate::foundation::in_order;
use crate::foundation::measure::{Date, Exact, Money, Overflow, Share, Volume};
use crate::foundation::statistics::{LEAST_POINTS, Line, NoLine, exponential, line, natural_logarithm};

#[cfg(test)]
mod tests;

/// Sizes that are less than this many times one another count as one size: a curve through them
/// would follow their chance differences. A judgement of ours, no source.
pub const APART: Exact = Exact::new(105, 2);

/// So many times beyond the sizes seen the curve is still read, and marked. A judgement of ours,
/// no source.
pub const READABLE: Exact = Exact::new(15, 1);

/// Prices seen, the curve through them, and our sizes.
#[derive(Clone, Debug, PartialEq)]
pub struct Market {
    /// Every price seen, smallest size first.
    pub seen: Vec<Seen>,
    /// The curve, or why there is none.
    pub curve: Result<Curve, NoCurve>,
    /// Every size of ours that has a price, smallest first.
    pub ours: Vec<Ours>,
}

/// A price seen elsewhere.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Seen {
    /// Its record.
    pub id: SeenPriceId,
    /// Its size.
    pub size: Volume,
    /// What was asked.
    pub price: Money,
    /// What was asked per price volume (1 fl oz or 100 mL).
    pub per_volume: Money,
    /// Whether it was seen more than twelve months ago.
    pub old: bool,
}

/// A size of ours among the prices seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Ours {
    /// The offer.
    pub offer: OfferId,
    /// What the menu says that it holds, or else what is poured.
    pub size: Volume,
    /// What we ask.
    pub price: Money,
    /// What we ask per price volume.
    pub per_volume: Money,
    /// What the curve says. It is `None` if there is no curve.
    pub against: Option<Against>,
}

/// What the curve says of a size.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Against {
    /// The size lies between the smallest and the largest seen.
    Within(OnCurve),
    /// It lies beyond them, by less than [`READABLE`] times: to be taken with care.
    Beyond(OnCurve),
    /// It lies so far beyond them that the curve says nothing.
    FarBeyond,
}

/// A price beside the curve.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct OnCurve {
    /// The curve's price at this size.
    pub price: Money,
    /// How far ours lies above it, as a share of it; below zero where it lies under it.
    pub above: Share,
}

/// The curve price = a * volume^b through the prices seen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Curve {
    /// The smallest size seen.
    pub smallest: Volume,
    /// The largest size seen.
    pub largest: Volume,
    /// b: by so many percent the price grows while the size grows by one.
    pub exponent: Exact,
    /// R² of the logarithms. It is `None` if every price is the same.
    pub explained: Option<Share>,
    /// How much more the curve asks for twice the size, as a share.
    pub doubling: Share,
    line: Line,
}

/// Why there is no curve.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoCurve {
    /// So few prices, fewer than three.
    TooFew(usize),
    /// All of one size.
    OneSize,
    /// The numbers leave the range that can be computed.
    OutOfRange,
}

impl Against {
    /// The price beside the curve, where the curve says one.
    pub const fn on_curve(&self) -> Option<OnCurve> {
        match self {
            Against::Within(on) | Against::Beyond(on) => Some(*on),
            Against::FarBeyond => None,
        }
    }
}

impl Curve {
    /// The curve's price at a size. Returns `None` if it leaves the range that can be computed.
    pub fn price_at(&self, size: Volume) -> Option<Money> {
        let logarithm = natural_logarithm(size.millilitres().to_estimate())?;
        let price = exponential(self.line.at(logarithm)?)?;
        Exact::from_estimate(price).map(Money::from_major)
    }

    /// Sizes from the smallest to the largest seen, evenly apart, with the curve's price at each:
    /// what it is drawn by.
    pub fn drawn(&self, count: u32) -> Vec<(Volume, Money)> {
        let step = self.largest.minus(self.smallest).and_then(|span| span.over(Exact::from(count.saturating_sub(1))));
        let at = |place| {
            let size = self.smallest.plus(step.ok()?.times(Exact::from(place)).ok()?).ok()?;
            Some((size, self.price_at(size)?))
        };
        (0..count).filter_map(at).collect()
    }

    fn through(seen: &[Seen]) -> Result<Curve, NoCurve> {
        if seen.len() < LEAST_POINTS {
            return Err(NoCurve::TooFew(seen.len()));
        }
        let (first, last) = seen.first().zip(seen.last()).ok_or(NoCurve::TooFew(0))?;
        let (smallest, largest) = (first.size, last.size);
        if smallest.times(APART).map_err(|_| NoCurve::OutOfRange)? > largest {
            return Err(NoCurve::OneSize);
        }
        let logarithm = |number: Exact| natural_logarithm(number.to_estimate());
        let point = |seen: &Seen| Some((logarithm(seen.size.millilitres())?, logarithm(seen.price.major())?));
        let points: Option<Vec<(f64, f64)>> = seen.iter().map(point).collect();
        let line = line(&points.ok_or(NoCurve::OutOfRange)?).map_err(|error| match error {
            NoLine::TooFew(count) => NoCurve::TooFew(count),
            NoLine::AllAtOne => NoCurve::OneSize,
            NoLine::OutOfRange => NoCurve::OutOfRange,
        })?;
        let estimate = |number: f64| Exact::from_estimate(number).ok_or(NoCurve::OutOfRange);
        let share = |number: f64| estimate(number).map(Share::from_fraction);
        let explained = line.explained.map(share).transpose()?;
        let doubling = share(line.slope.exp2() - 1.0)?;
        Ok(Curve { smallest, largest, exponent: estimate(line.slope)?, explained, doubling, line })
    }

    /// What the curve says of a price at a size.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn against(&self, size: Volume, price: Money) -> Result<Against, Overflow> {
        if size.times(READABLE)? < self.smallest || size > self.largest.times(READABLE)? {
            return Ok(Against::FarBeyond);
        }
        let Some(curve) = self.price_at(size).filter(|price| price.is_positive()) else {
            return Ok(Against::FarBeyond);
        };
        let above = Share::from_fraction(price.minus(curve)?.ratio_to(curve)?.as_part());
        let on = OnCurve { price: curve, above };
        let within = size >= self.smallest && size <= self.largest;
        Ok(if within { Against::Within(on) } else { Against::Beyond(on) })
    }
}

/// The prices seen of a kind of drink, or of every kind, as they stand `today`.
///
/// # Errors
/// [`Overflow`].
pub fn market(book: &Book, kind: Option<DrinkKind>, today: Date) -> Result<Market, Overflow> {
    let wanted = |of: DrinkKind| kind.is_none_or(|kind| kind == of);
    let per = book.settings().units.price_volume();
    let per_volume = |price: Money, size: Volume| Ok(price.times(per.ratio_to(size)?)?.as_part());
    let mut seen: Vec<Seen> = Vec::new();
    for record in book.seen_prices().filter(|record| wanted(record.kind)) {
        let Some(size) = record.size.volume()? else { continue };
        let (id, price) = (record.id, record.price);
        let old = is_old(record.day, today);
        let this = Seen { id, size, price, per_volume: per_volume(price, size)?, old };
        in_order::insert(&mut seen, this, |other, this| (other.size, other.price) <= (this.size, this.price));
    }
    let curve = Curve::through(&seen);
    let mut ours: Vec<Ours> = Vec::new();
    for offer in book.offers() {
        let of_kind = book.drink(offer.drink).is_some_and(|drink| wanted(drink.kind));
        let size = book.container(offer.container).map(menu_size).transpose()?.flatten();
        let Some((price, size)) = offer.price.filter(|_| of_kind).zip(size) else { continue };
        let against = curve.as_ref().ok().map(|curve| curve.against(size, price)).transpose()?;
        let this = Ours { offer: offer.id(), size, price, per_volume: per_volume(price, size)?, against };
        in_order::insert(&mut ours, this, |other, this| (other.size, other.price) <= (this.size, this.price));
    }
    Ok(Market { seen, curve, ours })
}

/// Whether a price was seen more than twelve months before `today`.
pub fn is_old(day: Date, today: Date) -> bool {
    let (year, month, of_month) = today.parts();
    let before = year.saturating_sub(1);
    // The 29th of February has the 28th a year before.
    let limit = Date::new(before, month, of_month).or_else(|| Date::new(before, month, of_month.saturating_sub(1)));
    limit.is_some_and(|limit| day < limit)
}

/// What the menu says that a size holds, or else what is poured. Returns `None` if it has no fill.
///
/// # Errors
/// [`Overflow`].
pub fn menu_size(container: &Container) -> Result<Option<Volume>, Overflow> {
    let declared = container.declared.map(|declared| declared.volume()).transpose()?.flatten();
    let size = declared.or_else(|| fill(container).ok().map(|fill| fill.volume));
    Ok(size.filter(|size| size.is_positive()))
}
