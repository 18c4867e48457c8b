//! How many are sold in a week today.

use std::collections::{BTreeMap, BTreeSet};

use crate::book::{Book, DrinkKind, OfferId, Scope, Trial, Week};
use crate::foundation::measure::{Date, Exact, Overflow};

/// So many written weeks, the last ones, make the weekly number.
pub const COUNTED_WEEKS: usize = 8;

/// How many of an offer are sold in a week.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct WeeklySales {
    /// How many. It is `None` if nobody knows.
    pub number: Option<Exact>,
    /// Where the number comes from.
    pub basis: Basis,
}

/// Where a weekly number comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Basis {
    /// It was typed for the question.
    Told,
    /// It is the mean of so many written weeks.
    Weeks(u32),
    /// It was typed at the offer.
    Typed,
    /// Nobody bought it yet, or nobody wrote it down.
    Unknown,
}

impl WeeklySales {
    /// A number typed for the question.
    pub const fn told(number: Exact) -> WeeklySales {
        WeeklySales { number: Some(number), basis: Basis::Told }
    }

    /// The number, or none sold.
    pub fn count(&self) -> Exact {
        self.number.unwrap_or(Exact::ZERO)
    }
}

/// How many of an offer are sold in a week, as of `day`: the mean of the last [`COUNTED_WEEKS`] weeks that are
/// written down and over, from the first written week in which the offer stands. A week since then without it
/// counts as none sold, unless nothing of its kind was written down in it: that says nothing of it. If it stands in none of them, the number typed at the offer. Weeks before
/// [`Offer::weekly_from`](crate::book::Offer::weekly_from) do not count, since the menu was another one; nor do those
/// of a trial with an end that still runs, since nobody knows yet whether its change stays.
///
/// # Errors
/// [`Overflow`].
pub fn weekly(book: &Book, offer: OfferId, day: Date) -> Result<WeeklySales, Overflow> {
    Written::of(book, day, &|sold| sold == offer)?.weekly(book, offer)
}

/// The Monday from which written weeks tell what a menu sells that was changed on `day`: of the next week, unless
/// `day` is a Monday itself.
pub fn tells_from(day: Date) -> Date {
    let monday = day.monday();
    if monday == day { monday } else { monday.plus_weeks(1) }
}

/// The Monday before which weeks count: of the week of `day`, or of the first with a change that is still tried on
/// any of the wanted offers.
fn counted_until(book: &Book, day: Date, wanted: &dyn Fn(OfferId) -> bool) -> Date {
    let monday = day.monday();
    let runs = |trial: &&Trial| trial.start <= monday && trial.last.is_some_and(|last| monday <= last);
    let concerns =
        |trial: &&Trial| book.offers().any(|offer| wanted(offer.id()) && book.belongs(offer.drink, trial.scope));
    book.trials().filter(runs).filter(concerns).map(|trial| trial.start).min().unwrap_or(monday)
}

/// The kinds of drinks of which the weeks that count hold sales, as of `day`.
///
/// # Errors
/// [`Overflow`].
pub fn kinds_in_weeks(book: &Book, day: Date) -> Result<Vec<DrinkKind>, Overflow> {
    let written = Written::of(book, day, &|_| true)?;
    let of = |kind: &DrinkKind| written.sold.keys().any(|offer| book.belongs(offer.drink, Scope::Kind(*kind)));
    Ok(DrinkKind::ALL.iter().copied().filter(of).collect())
}

/// The last written weeks, and what was sold in them of each offer.
pub(super) struct Written<'a> {
    /// Those that count, in order.
    pub weeks: Vec<&'a Week>,
    /// The kinds of drinks of each of them.
    kinds: Vec<Vec<DrinkKind>>,
    /// Of each offer in them: the place of the first in which it counts, and how many were sold.
    sold: BTreeMap<OfferId, (usize, Exact)>,
}

impl<'a> Written<'a> {
    pub fn of(book: &'a Book, day: Date, wanted: &dyn Fn(OfferId) -> bool) -> Result<Written<'a>, Overflow> {
        let until = counted_until(book, day, wanted);
        let over: Vec<&Week> = book.weeks().filter(|week| week.monday < until).collect();
        let (earlier, weeks) = over.split_at(over.len().saturating_sub(COUNTED_WEEKS));
        let from = |offer: OfferId| book.offer(offer).and_then(|offer| offer.weekly_from);
        let mut sold: BTreeMap<OfferId, (usize, Exact)> = BTreeMap::new();
        for (place, week) in weeks.iter().enumerate() {
            for line in week.sold.iter().filter(|line| wanted(line.offer())) {
                if from(line.offer()).is_some_and(|from| week.monday < from) {
                    continue;
                }
                let (_, sum) = sold.entry(line.offer()).or_insert((place, Exact::ZERO));
                *sum = sum.plus(line.units)?;
            }
        }
        // What stands in an earlier week too counts in all of them.
        let since = |id: &OfferId, first: usize| first > 0 && from(*id).is_none();
        let mut new: BTreeSet<OfferId> =
            sold.iter().filter(|(id, (first, _))| since(id, *first)).map(|(id, _)| *id).collect();
        for week in earlier.iter().rev() {
            if new.is_empty() {
                break;
            }
            for line in week.sold.iter().filter(|line| new.remove(&line.offer())) {
                if let Some((first, _)) = sold.get_mut(&line.offer()) {
                    *first = 0;
                }
            }
        }
        let mut kinds = Vec::with_capacity(weeks.len());
        for week in weeks {
            let mut here = Vec::new();
            for drink in week.sold.iter().filter_map(|line| book.drink(line.drink)) {
                if !here.contains(&drink.kind) {
                    here.push(drink.kind);
                }
            }
            kinds.push(here);
        }
        Ok(Written { weeks: weeks.to_vec(), kinds, sold })
    }

    pub fn weekly(&self, book: &Book, offer: OfferId) -> Result<WeeklySales, Overflow> {
        if let Some((first, sum)) = self.sold.get(&offer) {
            let kind = book.drink(offer.drink).map(|drink| drink.kind);
            let tells = |kinds: &&Vec<DrinkKind>| kind.is_none_or(|kind| kinds.contains(&kind));
            let count = self.kinds.iter().skip(*first).filter(tells).count();
            let count = u32::try_from(count).map_err(|_| Overflow::TooLarge)?;
            let mean = sum.over(Exact::from(count))?.as_part();
            return Ok(WeeklySales { number: Some(mean), basis: Basis::Weeks(count) });
        }
        let typed = book.offer(offer).and_then(|offer| offer.weekly);
        let basis = if typed.is_some() { Basis::Typed } else { Basis::Unknown };
        Ok(WeeklySales { number: typed, basis })
    }
}
