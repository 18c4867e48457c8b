//! Checks of what happened or is planned on days: weeks, prices seen elsewhere, trials and batches.

use super::values::{Checked, NAME_LENGTH, distinct, hold, id_of_offer, keeps, name, not_negative, positive, volume};
use crate::book::{Batch, Field, Problem, SeenPrice, Trial, Week};
use crate::foundation::measure::is_seen;

pub(super) fn week(record: &Week) -> Checked {
    hold(record.monday.is_monday(), Field::Monday, Problem::NotAMonday)?;
    for sold in &record.sold {
        not_negative(sold.units, Field::Units)?;
        keeps(sold.contribution.major(), Field::Contribution)?;
        sold.overhead.map_or(Ok(()), |overhead| keeps(overhead.major(), Field::Contribution))?;
    }
    distinct(record.sold.iter().map(|sold| id_of_offer(sold.offer())), Field::Units)
}

pub(super) fn seen_price(record: &SeenPrice) -> Checked {
    hold(is_seen(&record.place), Field::Place, Problem::Empty)?;
    hold(record.place.chars().count() <= NAME_LENGTH, Field::Place, Problem::TooLong)?;
    volume(record.size, Field::Size)?;
    positive(record.price.major(), Field::Price)
}

pub(super) fn trial(record: &Trial) -> Checked {
    name(&record.name)?;
    for monday in [Some(record.first), Some(record.start), record.last].into_iter().flatten() {
        hold(monday.is_monday(), Field::Monday, Problem::NotAMonday)?;
    }
    hold(record.first < record.start, Field::Start, Problem::NotAfter)?;
    hold(record.last.is_none_or(|last| record.start <= last), Field::Last, Problem::NotAfter)
}

pub(super) fn batch(record: &Batch) -> Checked {
    for make in &record.makes {
        not_negative(make.units, Field::Makes)?;
        hold(make.units.ceiling() == make.units, Field::Makes, Problem::NotWhole)?;
        not_negative(make.off_shelf, Field::OffShelf)?;
        hold(make.off_shelf.ceiling() == make.off_shelf, Field::OffShelf, Problem::NotWhole)?;
    }
    distinct(record.makes.iter().map(|make| id_of_offer(make.offer())), Field::Makes)?;
    distinct(record.ready.iter().map(|ready| [ready.ingredient.number(), ready.stage as u64, 0]), Field::Ready)
}
