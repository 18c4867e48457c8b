//! Edits that write sales down.

use super::{Unknown, line_now, with_weekly};
use crate::book::{Book, Edit, Key, OfferId, Record, Sold, Week};
use crate::drink::ledger::Ledger;
use crate::foundation::in_order;
use crate::foundation::measure::{Date, Exact, Overflow};

/// Weeks that the usual week is averaged over.
pub const AVERAGED: i32 = 4;

/// Decimals of an averaged number of drinks: finer would say more than is known.
const AVERAGE_PLACES: u32 = 1;

/// Writes a line of a week, or takes it out if `units` is `None`. A line that is there already
/// keeps what one contributed when it was first written; a new one has what one contributes now.
///
/// # Errors
/// Why it is [`Unknown`] what a new line contributes; the week is then as it was.
fn write_line(week: &mut Week, ledger: &Ledger, offer: OfferId, units: Option<Exact>) -> Result<(), Unknown> {
    match (units, week.sold.iter_mut().find(|sold| sold.offer() == offer)) {
        (Some(units), Some(sold)) => sold.units = units,
        (Some(units), None) => {
            let sold = Sold { units, ..line_now(ledger, offer)? };
            in_order::insert(&mut week.sold, sold, |other, sold| other.offer() < sold.offer());
        }
        (None, _) => week.sold.retain(|sold| sold.offer() != offer),
    }
    Ok(())
}

/// The week that begins on `monday`, as it is written down so far.
pub fn week_so_far(book: &Book, monday: Date) -> Week {
    book.week(monday).cloned().unwrap_or(Week { monday, sold: Vec::new() })
}

/// The edit that writes down how many of an offer were sold in the week that begins on `monday`. A
/// new line has what one contributes now; a week that is left without lines is taken out.
///
/// # Errors
/// Why it is [`Unknown`] what a new line contributes.
pub fn write_down(
    book: &Book,
    ledger: &Ledger,
    monday: Date,
    offer: OfferId,
    units: Option<Exact>,
) -> Result<Edit, Unknown> {
    let mut week = week_so_far(book, monday);
    write_line(&mut week, ledger, offer, units)?;
    Ok(match (week.sold.is_empty(), book.week(monday)) {
        (true, None) => Edit::Together(Vec::new()),
        (true, Some(_)) => Edit::Remove(Key::Week(monday)),
        (false, _) => Edit::Put(Record::Week(week)),
    })
}

/// The edit that sets how many of an offer are usually sold. Returns `None` if the offer is gone.
pub fn usual_week(book: &Book, offer: OfferId, weekly: Option<Exact>) -> Option<Edit> {
    Some(Edit::Put(Record::Offer(with_weekly(book.offer(offer)?, weekly))))
}

/// The average of the last weeks as the usual week.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Average {
    /// The Mondays of the weeks that count.
    pub weeks: Vec<Date>,
    /// Those among them that nobody wrote down; they do not count.
    pub missing: Vec<Date>,
    /// Offers whose usual week is set.
    pub offers: usize,
    /// The one edit that sets them.
    pub edit: Edit,
}

/// The average of the [`AVERAGED`] weeks up to the last one that was written down and is over by
/// `now`, the Monday of the running week. A size that is missing in some of these weeks counts as
/// none sold there; a size that is missing in all of them stays as it is. Returns `None` if there
/// is no such week.
///
/// # Errors
/// An [`Overflow`] where the numbers leave the range that can be computed.
pub fn average(book: &Book, now: Date) -> Result<Option<Average>, Overflow> {
    let Some(last) = book.weeks().map(|week| week.monday).rfind(|monday| *monday < now) else { return Ok(None) };
    let first_ever = book.weeks().map(|week| week.monday).next().unwrap_or(last);
    let back = AVERAGED.saturating_sub(1);
    let window = (0..AVERAGED).map(|week| last.plus_weeks(week.saturating_sub(back)));
    let (weeks, missing): (Vec<Date>, Vec<Date>) =
        window.filter(|monday| *monday >= first_ever).partition(|monday| book.week(*monday).is_some());
    let count = Exact::from(u32::try_from(weeks.len()).unwrap_or(u32::MAX));
    let mut edits = Vec::new();
    for offer in book.offers() {
        let sold = weeks.iter().filter_map(|monday| book.week(*monday)).flat_map(|week| &week.sold);
        let units: Vec<Exact> = sold.filter(|sold| sold.offer() == offer.id()).map(|sold| sold.units).collect();
        if !units.is_empty() {
            let sum = units.into_iter().try_fold(Exact::ZERO, Exact::plus)?;
            let weekly = sum.over(count)?.rounded(AVERAGE_PLACES);
            edits.push(Edit::Put(Record::Offer(with_weekly(offer, Some(weekly)))));
        }
    }
    Ok(Some(Average { weeks, missing, offers: edits.len(), edit: Edit::Together(edits) }))
}
