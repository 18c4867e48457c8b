//! From one way of knowing what a container holds to another: a start to type over.

use super::{FillError, fill};
use crate::book::{Brimful, Container, Headspace, Reading, Tapered};
use crate::measure::{Amount, Exact, LengthUnit, Overflow, System, TypedLength, Volume};
use crate::shape::Frustum;

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

    /// The container known in this way: about as much to the rim, never less than is declared,
    /// with what is left empty as a volume where heights are no longer known. Measures that
    /// nobody took are those of a common cup of that size.
    ///
    /// # Errors
    /// A [`FillError`] where the container has no fill now.
    pub fn start(self, container: &Container, units: System) -> Result<Container, FillError> {
        if Known::of(&container.brimful) == self {
            return Ok(container.clone());
        }
        let now = fill(container)?;
        let declared = container.declared.map_or(Ok(None), Amount::volume)?.unwrap_or_default();
        let brimful = match self {
            Known::Weighed => Brimful::Weighed(amount_of(now.brimful, declared, units)?),
            Known::Measured => Brimful::Tapered(cup_of(now.brimful, units)?),
            Known::Poured => Brimful::Poured(half_and_full(&container.brimful, now.brimful, declared, units)?),
        };
        let rim = brimful.height()?.unwrap_or_default();
        let headspace = match container.headspace {
            Headspace::Height(empty) if empty.length()? >= rim => {
                Headspace::Volume(amount_of(now.headspace, Volume::ZERO, units)?)
            }
            headspace => headspace,
        };
        Ok(Container { brimful, headspace, ..container.clone() })
    }
}

/// The volume to 0.01 of the unit that drinks are poured in, but no less than `least`.
fn amount_of(volume: Volume, least: Volume, units: System) -> Result<Amount, Overflow> {
    let unit = units.drink_unit();
    let number = volume.millilitres().over(unit.size())?.rounded(2);
    let enough = number.times(unit.size())? >= least.millilitres();
    Ok(Amount::new(if enough { number } else { number.plus(Exact::new(1, 2))? }, unit))
}

/// A cup that holds `volume`, or the little more that its height's last digit makes: two thirds
/// as wide at the base as at the rim, about four thirds as high as wide. These proportions are
/// common practice, no source.
fn cup_of(volume: Volume, units: System) -> Result<Tapered, Overflow> {
    let unit = LengthUnit::of(units);
    let (step, places) = if unit == LengthUnit::Inch { (Exact::new(125, 3), 2) } else { (Exact::ONE, 1) };
    let length = |number| TypedLength::new(number, unit);
    let mut rim = step;
    loop {
        let base = rim.times(Exact::new(2, 0))?.over(Exact::new(3, 0))?.rounded(places);
        let height = rim.times(Exact::new(4, 0))?.over(Exact::new(3, 0))?;
        let cup = Tapered { base: length(base), rim: length(rim), height: length(height) };
        let holds = cup.frustum()?.volume()?;
        if holds >= volume {
            let height = up(height.times(volume.ratio_to(holds)?)?, places)?;
            return Ok(Tapered { height: length(height), ..cup });
        }
        rim = rim.plus(step)?;
    }
}

/// Rounded up at so many places.
fn up(number: Exact, places: u32) -> Result<Exact, Overflow> {
    let rounded = number.rounded(places);
    if rounded >= number { Ok(rounded) } else { rounded.plus(Exact::new(1, places)) }
}

/// Two readings: half way up, and at the rim.
fn half_and_full(was: &Brimful, brimful: Volume, declared: Volume, units: System) -> Result<Vec<Reading>, Overflow> {
    let two = Exact::new(2, 0);
    let cup = match was {
        Brimful::Tapered(cup) => *cup,
        Brimful::Weighed(_) | Brimful::Poured(_) => cup_of(brimful, units)?,
    };
    let inside = cup.frustum()?;
    let middle = inside.base.plus(inside.rim)?.over(two)?;
    let half = Frustum { rim: middle, height: inside.height.over(two)?, ..inside }.volume()?;
    let half_height = TypedLength::new(cup.height.number.over(two)?.rounded(6), cup.height.unit);
    let full = match was {
        Brimful::Weighed(amount) => *amount,
        Brimful::Tapered(_) | Brimful::Poured(_) => amount_of(brimful, declared, units)?,
    };
    Ok(vec![
        Reading { height: half_height, volume: amount_of(half, Volume::ZERO, units)? },
        Reading { height: cup.height, volume: full },
    ])
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Book, Edit, Record};
    use crate::support::{amount, container, settings};

    /// What a screen does: the container in another way is put in a book.
    fn held(container: &Container, way: Known, units: System) -> Container {
        let there = way.start(container, units).unwrap();
        let put = Edit::Put(Record::Container(there.clone()));
        assert_eq!(Book::new(settings()).apply(&put).map(|_| ()), Ok(()), "{there:?}");
        there
    }

    #[test]
    fn each_way_holds_about_as_much_and_what_is_declared() {
        for size in ["0.5 fl oz", "2 fl oz", "60 mL", "12.63 fl oz", "16 fl oz", "473.176473 mL", "1 L", "64 fl oz"] {
            for units in [System::UsCustomary, System::Metric, System::Imperial] {
                for way in Known::ALL {
                    for other in Known::ALL {
                        let plain = Container { declared: Some(amount(size)), ..container(1, size) };
                        let there = held(&held(&plain, *way, units), *other, units);
                        assert_eq!(Known::of(&there.brimful), *other);
                        let was = plain.brimful.volume().unwrap().unwrap();
                        let is = there.brimful.volume().unwrap().unwrap();
                        let off = is.ratio_to(was).unwrap().minus(Exact::ONE).unwrap().abs();
                        assert!(off < Exact::new(2, 2), "{size} {units:?} {way:?} {other:?}: {is:?}");
                    }
                }
            }
        }
    }

    #[test]
    fn what_was_weighed_stays_to_the_letter() {
        let bottle = container(1, "12.3456 fl oz");
        assert_eq!(held(&bottle, Known::Weighed, System::Metric), bottle);
        let Brimful::Poured(readings) = held(&bottle, Known::Poured, System::Metric).brimful else { panic!() };
        assert_eq!(readings.last().map(|last| last.volume), Some(amount("12.3456 fl oz")));
    }

    #[test]
    fn without_heights_what_is_left_empty_is_a_volume() {
        let height = Headspace::Height(TypedLength::new(Exact::new(10, 0), LengthUnit::Millimetre));
        let cup = Container { headspace: height, ..held(&container(1, "16 fl oz"), Known::Measured, System::Metric) };
        let weighed = held(&cup, Known::Weighed, System::Metric);
        let now = fill(&cup).unwrap();
        let Headspace::Volume(empty) = weighed.headspace else { panic!() };
        let off = empty.volume().unwrap().unwrap().minus(now.headspace).unwrap();
        assert!(off.millilitres().abs() <= Exact::new(5, 3));
        assert_eq!(held(&cup, Known::Poured, System::Metric).headspace, height);
    }
}
