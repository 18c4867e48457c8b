//! A change under trial: the weeks before it against the weeks since.
//!
//! A week counts with the profit of the scope in it that changes with the number of drinks, as it was written down
//! then: the sum of number sold times contribution of one, without the overhead that it bears. A line that was
//! written down before its overhead was kept is taken to bear what a drink bears now. A trial is a comparison and no proof: the weather, the season and much
//! else change too.
//!
//! The two sides have `n1` and `n2` weeks, at least two each, with the means `m1`, `m2` and the standard
//! deviations `s1`, `s2` ([`crate::foundation::statistics::welch`]):
//!
//! ```text
//! standard error = sqrt(s1^2 / n1 + s2^2 / n2)
//! interval       = m2 - m1 -+ t * (standard error)
//! ```
//!
//! `t` is the 97.5 % quantile of Student's distribution, with the degrees of freedom by Welch and
//! Satterthwaite: the interval is one of 95 %. Above zero the change is better, below zero worse. If it
//! spans zero, nothing is clear yet; then it is estimated how many more weeks, of the same mean and deviation,
//! would make it clear, 104 at most.
//!
//! By hand: 100, 104, 96 and 100 before and 140, 142, 138 and 140 since are 40 more on average. The
//! variances are 32/3 and 8/3, the standard error is the root of 8/3 + 2/3, 1.83. With 4.41 degrees of freedom
//! `t` is below 2.78, that of 4: the change is better. `tests/reference/estimates.rs` compares intervals with
//! those of a statistics library.

use crate::book::{Book, Scope, Trial, Week};
use crate::drink::ledger::Ledger;
use crate::drink::sales::line_now;
use crate::foundation::measure::{Date, Exact, Money, Overflow};
use crate::foundation::statistics::{Interval, Spread, more_until_clear, welch};

#[cfg(test)]
mod tests;

/// Weeks on each side that a comparison needs at least.
pub const LEAST_WEEKS: usize = 2;

/// What a trial shows so far.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Judged {
    /// The weeks before the change.
    pub before: Weeks,
    /// The weeks since.
    pub after: Weeks,
    /// The week of today, where it is written down and would count: it is not over and left out.
    pub running: Option<Date>,
    /// The weeks since less the weeks before, per week. It is `None` if there are fewer than two weeks
    /// on a side.
    pub interval: Option<Interval>,
    /// What follows from it.
    pub verdict: Verdict,
}

/// The weeks on one side of a change.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Weeks {
    /// Each week that was written down, the earliest first.
    pub counted: Vec<WeekSum>,
    /// The Mondays of weeks between that were not: they are left out.
    pub missing: Vec<Date>,
    /// Their mean and scatter. It is `None` if there are fewer than two.
    pub spread: Option<Spread>,
}

/// What a week brought.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct WeekSum {
    /// The Monday that it begins on.
    pub monday: Date,
    /// How many were sold.
    pub units: Exact,
    /// The profit that changes with their number.
    pub profit: Money,
}

/// Whether a change worked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// The interval lies above zero.
    Better,
    /// It lies below.
    Worse,
    /// It spans zero.
    NotYetClear(More),
    /// There are fewer than two weeks on a side.
    NotEnough {
        /// Weeks that are still needed before the change.
        before: usize,
        /// And since.
        after: usize,
    },
}

/// How many weeks more it would likely take, if they go on as they did.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum More {
    /// So many.
    Weeks(u32),
    /// More than two years of them.
    TooMany,
    /// The means are the same: there is no difference to become clear.
    NoDifference,
}

/// The trial of a question about a part of the menu: the latest that is judged by the same part and has
/// the question's name. The book keeps no other tie between them, so that a trial which was renamed is
/// one of its own.
pub fn trial_for<'a>(book: &'a Book, scope: Scope, name: &str) -> Option<&'a Trial> {
    book.trials().filter(|trial| trial.scope == scope && trial.name == name).max_by_key(|trial| trial.start)
}

/// Judges a trial by the weeks that were over before `today`.
///
/// # Errors
/// [`Overflow`].
pub fn judge(book: &Book, ledger: &Ledger, trial: &Trial, today: Date) -> Result<Judged, Overflow> {
    let this_week = today.monday();
    let over = this_week.plus_weeks(-1);
    let last = trial.last.unwrap_or(Date::LAST);
    let before = Weeks::between(book, ledger, trial.scope, trial.first, trial.start.plus_weeks(-1).min(over))?;
    let after = Weeks::between(book, ledger, trial.scope, trial.start, last.min(over))?;
    let running = book.week(this_week).map(|week| week.monday).filter(|week| trial.first <= *week && *week <= last);
    let (interval, verdict) = if let (Some(first), Some(second)) = (&before.spread, &after.spread) {
        let interval = welch(first, second)?;
        (Some(interval), verdict(first, second, &interval)?)
    } else {
        let needed = |weeks: &Weeks| LEAST_WEEKS.saturating_sub(weeks.counted.len());
        (None, Verdict::NotEnough { before: needed(&before), after: needed(&after) })
    };
    Ok(Judged { before, after, running, interval, verdict })
}

fn verdict(before: &Spread, after: &Spread, interval: &Interval) -> Result<Verdict, Overflow> {
    let difference = interval.difference();
    Ok(if !interval.spans_zero() {
        if difference.is_positive() { Verdict::Better } else { Verdict::Worse }
    } else if difference.is_zero() {
        Verdict::NotYetClear(More::NoDifference)
    } else {
        Verdict::NotYetClear(more_until_clear(before, after)?.map_or(More::TooMany, More::Weeks))
    })
}

impl Weeks {
    /// The weeks from one Monday to another. There are no weeks if the second comes first.
    fn between(book: &Book, ledger: &Ledger, scope: Scope, first: Date, last: Date) -> Result<Weeks, Overflow> {
        let mut weeks = Weeks::default();
        let mut next = first;
        for week in book.weeks().filter(|week| first <= week.monday && week.monday <= last) {
            weeks.leave_out(next, week.monday);
            weeks.counted.push(sum(book, ledger, scope, week)?);
            next = week.monday.plus_weeks(1);
        }
        if next <= last {
            weeks.leave_out(next, last.plus_weeks(1));
        }
        let profits: Vec<Exact> = weeks.counted.iter().map(|week| week.profit.major()).collect();
        weeks.spread = Spread::of(&profits)?;
        Ok(weeks)
    }

    /// Notes the Mondays from `next` to before `until` as missing.
    fn leave_out(&mut self, mut next: Date, until: Date) {
        while next < until {
            self.missing.push(next);
            next = next.plus_weeks(1);
        }
    }

    /// Whether nothing was sold in any of them.
    pub fn nothing_sold(&self) -> bool {
        self.counted.iter().all(|week| week.units.is_zero())
    }
}

/// What a part of the menu brought in a week; zero if none of it was sold.
fn sum(book: &Book, ledger: &Ledger, scope: Scope, week: &Week) -> Result<WeekSum, Overflow> {
    let mut sum = WeekSum { monday: week.monday, units: Exact::ZERO, profit: Money::ZERO };
    for sold in week.sold.iter().filter(|sold| book.belongs(sold.drink, scope)) {
        let overhead_now = || line_now(ledger, sold.offer()).ok().and_then(|line| line.overhead);
        let overhead = sold.overhead.or_else(overhead_now).unwrap_or_default();
        sum.units = sum.units.plus(sold.units)?;
        sum.profit = sum.profit.plus(sold.contribution.plus(overhead)?.times(sold.units)?.as_part())?;
    }
    Ok(sum)
}
