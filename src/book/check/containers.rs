//! Checks of containers and the packaging of their sets.

use super::values::{Checked, a_share, distinct, hold, id, name, not_negative, positive, volume};
use crate::book::{Brimful, Container, Field, Headspace, PackagingSet, PackagingUse, Problem, Reading};
use crate::foundation::measure::{TypedLength, Volume};

pub(super) fn container(record: &Container) -> Checked {
    name(&record.name)?;
    let brimful = brimful(&record.brimful)?;
    if let Some(declared) = record.declared {
        let declared = volume(declared, Field::Declared)?;
        hold(declared <= brimful, Field::Declared, Problem::MoreThanBrimful)?;
    }
    match record.headspace {
        Headspace::Share(share) => a_share(share, Field::Headspace)?,
        Headspace::Volume(amount) => {
            not_negative(amount.number, Field::Headspace)?;
            let empty = amount.volume().map_err(|_| (Field::Headspace, Problem::TooLarge))?;
            let empty = empty.ok_or((Field::Headspace, Problem::NotAVolume))?;
            hold(empty < brimful, Field::Headspace, Problem::NothingFits)?;
        }
        Headspace::Height(empty) => {
            not_negative(empty.number, Field::Headspace)?;
            let too_large = (Field::Headspace, Problem::TooLarge);
            let height = record.brimful.height().map_err(|_| too_large)?;
            let height = height.ok_or((Field::Headspace, Problem::NoHeights))?;
            let empty = empty.length().map_err(|_| too_large)?;
            hold(empty < height, Field::Headspace, Problem::NothingFits)?;
        }
    }
    not_negative(record.deposit.major(), Field::Deposit)?;
    if let Some(brought) = record.starting {
        volume(brought, Field::StartingFigure)?;
    }
    uses(&record.set)?;
    distinct(record.shared.iter().map(|set| id(set.number())), Field::SetCount)
}

fn brimful(brimful: &Brimful) -> Result<Volume, (Field, Problem)> {
    match brimful {
        Brimful::Weighed(amount) => return volume(*amount, Field::Brimful),
        Brimful::Tapered(tapered) => {
            length(tapered.base, Field::Base)?;
            length(tapered.rim, Field::Rim)?;
            length(tapered.height, Field::Height)?;
        }
        Brimful::Poured(readings) => self::readings(readings)?,
    }
    let volume = brimful.volume().map_err(|_| (Field::Brimful, Problem::TooLarge))?;
    volume.ok_or((Field::Brimful, Problem::NotAVolume))
}

fn length(length: TypedLength, field: Field) -> Checked {
    positive(length.number, field)
}

/// Readings rise both in height and in volume.
fn readings(readings: &[Reading]) -> Checked {
    hold(readings.len() >= 2, Field::Readings, Problem::TooFew)?;
    let mut below = None;
    for (place, reading) in (1..).zip(readings) {
        length(reading.height, Field::Readings)?;
        let volume = volume(reading.volume, Field::Readings)?;
        let height = reading.height.length().map_err(|_| (Field::Readings, Problem::TooLarge))?;
        let rises = below.is_none_or(|(low, less)| height > low && volume > less);
        hold(rises, Field::Readings, Problem::Falls(place))?;
        below = Some((height, volume));
    }
    Ok(())
}

fn uses(uses: &[PackagingUse]) -> Checked {
    for used in uses {
        positive(used.count, Field::SetCount)?;
    }
    distinct(uses.iter().map(|used| id(used.packaging.number())), Field::SetCount)
}

pub(super) fn packaging_set(record: &PackagingSet) -> Checked {
    name(&record.name)?;
    uses(&record.uses)
}
