//! Values that are typed but may not be meant: far from what they were, or outside the usual range of
//! their kind. The person is asked about them beside the field, and never blocked. Where a text could mean two
//! things, what was before stays in force until one of them is chosen.
//!
//! The limits (three times, a third, and what is usual) are rules of thumb without a published
//! source. A density of 0.2 g/mL is below any loosely poured powder, and 3 g/mL above any food.

mod figure;
mod meanings;
mod questions;

pub use figure::Figure;
pub use questions::{Question, Questions};

use crate::foundation::measure::Exact;

/// The least and the most usual density of foods and drinks, in g/mL.
pub const USUAL_DENSITY: [Exact; 2] = [Exact::new(2, 1), Exact::new(3, 0)];

/// The most of one thing that a shop usually has on its shelf, in whichever unit.
pub const USUAL_STOCK: u32 = 100_000;

/// The most that an hour of work costs, in whichever currency: only what is beyond all of them is asked about.
const USUAL_WAGE: u32 = 100_000;

/// The longest time that a drink or a batch takes, in seconds: a shift of eight hours.
pub const USUAL_LABOR: u32 = 28_800;

/// The most that one size sells in a week.
pub const USUAL_SOLD: u32 = 10_000;

/// What kind of value a field holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// A price.
    Price,
    /// How much a pack holds.
    Pack,
    /// What a container or a drink holds, and its lengths.
    Size,
    /// What is left after trimming, in percent.
    TrimYield,
    /// Any other yield, in percent.
    Yield,
    /// A density in g/mL.
    Density,
    /// A rate of tax, in percent.
    Tax,
    /// A target margin, in percent.
    Margin,
    /// A share that is often a few percent: waste, a loss, a fee.
    SmallShare,
    /// A time that work takes, in seconds.
    Labor,
    /// What an hour of work costs.
    Wage,
    /// How many of a size are sold in a usual week: an average.
    Sold,
    /// How many were sold in one week.
    SoldInWeek,
    /// What is on the shelf: it changes by several times with every delivery.
    Stock,
}

/// Why a value is asked about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Doubt {
    /// It is more than three times what it was, or less than a third.
    Far,
    /// It is outside the usual range of its kind.
    Unusual,
}

impl Kind {
    /// Why the person is asked about `now`, where the field held `was` before, if anything. Returns
    /// `None` if there is nothing to ask. A change from zero or from an empty field is not far.
    pub fn doubt(self, was: Option<Figure>, now: Figure) -> Option<Doubt> {
        if was == Some(now) {
            return None;
        }
        match was {
            _ if self.is_unusual(now) => Some(Doubt::Unusual),
            Some(was) if !self.changes_freely() && far(was, now) => Some(Doubt::Far),
            _ => None,
        }
    }

    /// Whether it changes by several times without harm.
    const fn changes_freely(self) -> bool {
        matches!(self, Kind::SmallShare | Kind::Stock | Kind::Labor | Kind::Sold | Kind::SoldInWeek)
    }

    fn is_unusual(self, now: Figure) -> bool {
        if let (Kind::Stock, Figure::Amount(amount)) = (self, now) {
            return amount.number > Exact::from(USUAL_STOCK);
        }
        let Figure::Number(number) = now else { return false };
        match self {
            Kind::Stock => number > Exact::from(USUAL_STOCK),
            Kind::TrimYield => number < Exact::new(5, 0),
            Kind::Tax => number > Exact::new(50, 0),
            Kind::Density => number < USUAL_DENSITY[0] || number > USUAL_DENSITY[1],
            Kind::Wage => number > Exact::from(USUAL_WAGE),
            Kind::Labor => number > Exact::from(USUAL_LABOR),
            Kind::Sold => number > Exact::from(USUAL_SOLD),
            Kind::SoldInWeek => number > Exact::from(USUAL_SOLD) || number.floor() != number,
            Kind::Price | Kind::Pack | Kind::Size | Kind::Yield | Kind::Margin | Kind::SmallShare => false,
        }
    }
}

/// Whether two figures with the same base unit differ by a factor of more than three. From zero nothing
/// is far.
fn far(was: Figure, now: Figure) -> bool {
    let (Some((was, of_was)), Some((now, of_now))) = (was.base(), now.base()) else { return false };
    let threefold = |number: Exact| number.times(Exact::new(3, 0));
    let beyond = |most: Exact, number: Exact| threefold(most).is_ok_and(|most| number > most);
    of_was == of_now && !was.is_zero() && (beyond(was, now) || beyond(now, was))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn doubt(kind: Kind, was: &str, now: &str) -> Option<Doubt> {
        kind.doubt(Figure::from_text(was), Figure::from_text(now).unwrap())
    }

    #[test]
    fn more_than_three_times_or_less_than_a_third_is_far() {
        for (was, now, far) in [
            ("87", "8917", true),
            ("10", "30", false),
            ("10", "30.01", true),
            ("30", "10", false),
            ("30", "9.99", true),
            ("38", "0", true),
            ("38", "38", false),
            // From zero or from nothing.
            ("0", "34", false),
            ("", "34", false),
        ] {
            assert_eq!(doubt(Kind::Price, was, now), far.then_some(Doubt::Far), "from {was} to {now}");
        }
    }

    #[test]
    fn what_changes_freely_is_never_far() {
        for kind in [Kind::SmallShare, Kind::Stock, Kind::Labor, Kind::Sold, Kind::SoldInWeek] {
            assert_eq!(doubt(kind, "10", "90"), None, "{kind:?}");
        }
        assert_eq!(doubt(Kind::Wage, "18", "1800"), Some(Doubt::Far));
    }

    #[test]
    fn amounts_are_compared_in_one_unit() {
        for (was, now, far) in [
            ("10 lb", "160 oz", false),
            ("10 lb", "10 oz", true),
            ("10 lb", "60 lb", true),
            ("3.5 in", "89 mm", false),
            ("3.5 in", "3.5 mm", true),
            // A weight and a volume are not comparable.
            ("10 lb", "1 gal", false),
        ] {
            assert_eq!(doubt(Kind::Pack, was, now), far.then_some(Doubt::Far), "from {was} to {now}");
            assert_eq!(doubt(Kind::Size, was, now), far.then_some(Doubt::Far), "from {was} to {now}");
        }
    }

    #[test]
    fn what_is_outside_the_range_of_its_kind_is_unusual() {
        for (kind, was, now, unusual) in [
            (Kind::Tax, "6.5", "65", true),
            (Kind::Tax, "", "50.01", true),
            (Kind::Stock, "", "9999999 ea", true),
            (Kind::Stock, "12 ea", "100000 ea", false),
            (Kind::Stock, "2 lb", "80 lb", false),
            (Kind::Tax, "25", "50", false),
            (Kind::Density, "1.04", "0.199", true),
            (Kind::Density, "1.04", "0.2", false),
            (Kind::Density, "1.04", "3", false),
            (Kind::Density, "", "3.01", true),
            (Kind::TrimYield, "", "4.99", true),
            (Kind::Wage, "", "99999999", true),
            // Yen and pesos have wages of thousands.
            (Kind::Wage, "", "12000", false),
            // 16666 minutes and 39 seconds.
            (Kind::Labor, "", "999999", true),
            (Kind::Labor, "", "28800", false),
            (Kind::Sold, "", "99999999", true),
            // An average has fractions.
            (Kind::Sold, "", "1.5", false),
            (Kind::SoldInWeek, "", "1.5", true),
            (Kind::SoldInWeek, "", "10001", true),
            (Kind::SoldInWeek, "40", "9", false),
            (Kind::TrimYield, "10", "5", false),
            (Kind::Yield, "10", "4.99", false),
            // What was unusual before and is the same is not asked about.
            (Kind::Tax, "65", "65", false),
        ] {
            let expected = if unusual { Some(Doubt::Unusual) } else { None };
            let found = doubt(kind, was, now).filter(|doubt| *doubt == Doubt::Unusual);
            assert_eq!(found, expected, "{kind:?} from {was} to {now}");
        }
    }
}
