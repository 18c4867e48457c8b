//! From one way of knowing what a container holds to another.

use super::fill;
use crate::book::{Brimful, Container, Headspace};
use crate::foundation::measure::{Amount, System, TypedLength};

/// How an owner knows what a container holds to the rim.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Known {
    /// Filled with water and weighed.
    Weighed,
    /// By the inner measures of a cup.
    Measured,
    /// By pouring known amounts into it.
    Poured,
}

impl Known {
    /// Every way.
    pub const ALL: &[Known] = &[Known::Weighed, Known::Measured, Known::Poured];

    /// The way that a brimful volume is known by.
    pub const fn of(brimful: &Brimful) -> Known {
        match brimful {
            Brimful::Weighed(_) => Known::Weighed,
            Brimful::Tapered(_) => Known::Measured,
            Brimful::Poured(_) => Known::Poured,
        }
    }
}

/// The container with `brimful` as what is known of its capacity. If the headspace is a height that
/// is no longer known, it becomes a volume, to 0.01 of the unit that drinks are poured in. If that
/// volume has too many digits, the headspace stays as it is, and the book refuses the container
/// with the reason.
pub fn with_brimful(container: &Container, brimful: Brimful, units: System) -> Container {
    let headspace = match container.headspace {
        Headspace::Height(empty) if !is_under(empty, &brimful) => as_volume(container, units),
        _ => None,
    };
    let headspace = headspace.unwrap_or(container.headspace);
    Container { brimful, headspace, ..container.clone() }
}

fn is_under(empty: TypedLength, brimful: &Brimful) -> bool {
    matches!((empty.length(), brimful.height()), (Ok(empty), Ok(Some(rim))) if empty < rim)
}

/// What is left empty now.
fn as_volume(container: &Container, units: System) -> Option<Headspace> {
    let unit = units.drink_unit();
    let number = fill(container).ok()?.headspace.millilitres().over(unit.size()).ok()?;
    Some(Headspace::Volume(Amount::new(number.rounded(2), unit)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Book, Edit, Reading, Record, Tapered};
    use crate::foundation::measure::{Exact, LengthUnit};
    use crate::support::{amount, container, settings};

    /// A cup 60 mm across the base, 90 across the rim, 120 high, with 10 mm left empty.
    fn cup() -> Container {
        let length = |number: u32| TypedLength::new(Exact::from(number), LengthUnit::Millimetre);
        let inside = Tapered { base: length(60), rim: length(90), height: length(120) };
        Container {
            brimful: Brimful::Tapered(inside),
            headspace: Headspace::Height(length(10)),
            ..container(1, "16 fl oz")
        }
    }

    fn poured(readings: [(u32, &str); 2]) -> Brimful {
        let reading = |(height, volume)| {
            let height = TypedLength::new(Exact::from(height), LengthUnit::Millimetre);
            Reading { height, volume: amount(volume) }
        };
        Brimful::Poured(readings.map(reading).to_vec())
    }

    /// What a screen does: the container is put in a book.
    fn held(container: &Container, brimful: Brimful) -> Container {
        let there = with_brimful(container, brimful, System::Metric);
        let put = Edit::Put(Record::Container(there.clone()));
        assert_eq!(Book::new(settings()).apply(&put).map(|_| ()), Ok(()), "{there:?}");
        there
    }

    #[test]
    fn without_heights_what_is_left_empty_is_a_volume() {
        let weighed = held(&cup(), Brimful::Weighed(amount("530 mL")));
        // At 110 mm it is 87.5 across: pi 10 / 12 (87.5^2 + 87.5 * 90 + 90^2) = 61,866 cubic mm.
        assert_eq!(weighed.headspace, Headspace::Volume(amount("61.87 mL")));
        assert_eq!(weighed.brimful, Brimful::Weighed(amount("530 mL")));
    }

    #[test]
    fn a_height_that_still_is_under_the_rim_stays() {
        let high = held(&cup(), poured([(60, "200 mL"), (120, "530 mL")]));
        assert_eq!(high.headspace, cup().headspace);
        let low = held(&cup(), poured([(4, "200 mL"), (9, "530 mL")]));
        assert_eq!(low.headspace, Headspace::Volume(amount("61.87 mL")));
    }

    #[test]
    fn what_is_left_empty_otherwise_stays_to_the_letter() {
        let bottle = Container { headspace: Headspace::Volume(amount("0.5 fl oz")), ..cup() };
        assert_eq!(held(&bottle, Brimful::Weighed(amount("12.3456 fl oz"))).headspace, bottle.headspace);
    }
}
