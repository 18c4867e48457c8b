//! Checks that several records share. Each takes the field that it names if a value does not hold.

use std::collections::BTreeSet;

use crate::book::{Field, OfferId, Problem};
use crate::foundation::measure::{Amount, Exact, Measure, Share, Volume, is_seen};

/// The longest name, in characters.
pub(super) const NAME_LENGTH: usize = 80;

/// Decimals of a stored number.
const STORED_PLACES: u32 = 8;

/// Nothing if a value holds, else its field and what is wrong with it.
pub(super) type Checked = Result<(), (Field, Problem)>;

/// An id of any kind as numbers: with one type for all, the set of ids is one piece of code to load.
pub(super) type Id = [u64; 3];

/// A condition on a field holds.
pub(super) fn hold(holds: bool, field: Field, problem: Problem) -> Checked {
    if holds { Ok(()) } else { Err((field, problem)) }
}

/// A name has something to see, and at most [`NAME_LENGTH`] characters.
pub(super) fn name(name: &str) -> Checked {
    hold(is_seen(name), Field::Name, Problem::Empty)?;
    hold(name.chars().count() <= NAME_LENGTH, Field::Name, Problem::TooLong)
}

/// A number is not too long to be written and read again as it is.
pub(super) fn keeps(number: Exact, field: Field) -> Checked {
    hold(number.keeps(), field, Problem::TooLarge)
}

/// A number is 0 or more, and not too long.
pub(super) fn not_negative(number: Exact, field: Field) -> Checked {
    hold(!number.is_negative(), field, Problem::Negative)?;
    keeps(number, field)
}

/// A number is above 0, and not too long.
pub(super) fn positive(number: Exact, field: Field) -> Checked {
    hold(number.is_positive(), field, Problem::NotPositive)?;
    keeps(number, field)
}

/// A yield is in (0, 1], and not too long.
pub(super) fn a_yield(share: Share, field: Field) -> Checked {
    hold(share.is_positive() && share <= Share::WHOLE, field, Problem::NotAYield)?;
    keeps(share.fraction(), field)
}

/// A share is in [0, 1), and not too long.
pub(super) fn a_share(share: Share, field: Field) -> Checked {
    hold(!share.is_negative() && share < Share::WHOLE, field, Problem::NotAShare)?;
    keeps(share.fraction(), field)
}

/// An amount is a volume above 0, and not too long. Returns the volume.
pub(super) fn volume(amount: Amount, field: Field) -> Result<Volume, (Field, Problem)> {
    let volume = amount.volume().map_err(|_| (field, Problem::TooLarge))?;
    let volume = volume.ok_or((field, Problem::NotAVolume))?;
    positive(amount.number, field)?;
    Ok(volume)
}

/// An amount is a mass above 0, and not too long. Returns its grams.
pub(super) fn mass(amount: Amount, field: Field) -> Result<Exact, (Field, Problem)> {
    positive(amount.number, field)?;
    match amount.measure() {
        Ok(Measure::Mass(mass)) => Ok(mass.grams()),
        Ok(_) => Err((field, Problem::NotAWeight)),
        Err(_) => Err((field, Problem::TooLarge)),
    }
}

/// No two ids are the same.
pub(super) fn distinct(mut ids: impl Iterator<Item = Id>, field: Field) -> Checked {
    hold(all_different(&mut ids), field, Problem::Twice)
}

/// Whether no two are the same. It is fast enough for the hundreds of thousands of a file.
pub(super) fn all_different<T: Ord>(all: &mut dyn Iterator<Item = T>) -> bool {
    let mut met = BTreeSet::new();
    for one in all {
        if !met.insert(one) {
            return false;
        }
    }
    true
}

pub(super) const fn id(number: u64) -> Id {
    [number, 0, 0]
}

pub(super) const fn id_of_offer(id: OfferId) -> Id {
    [id.drink.number(), id.container.number(), 0]
}

/// A number as an id: in units of the last decimal of a stored number.
pub(super) fn id_of_number(number: Exact) -> Id {
    let parts = number.whole_parts(STORED_PLACES).and_then(|parts| u64::try_from(parts).ok());
    id(parts.unwrap_or_default())
}
