//! The answer to a question: what it brings today, what must be true for it to pay, and what buyers face.

use super::line::{Line, Verdict};
use super::menu::{Earns, times};
use super::plans::Guess;
use super::tipping::{self, Answered, Tipping, brought_by, turns};
use super::weekly::WeeklySales;
use crate::book::{ContainerId, OfferId, Scope};
use crate::drink::sales::Unknown;
use crate::foundation::measure::{Exact, Money, Overflow, Share, Volume};

/// What is asked of a part of the menu.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Question {
    /// One size goes.
    Drop {
        /// The size.
        size: ContainerId,
    },
    /// One size goes and another takes its place.
    Switch {
        /// The one that goes.
        from: ContainerId,
        /// The other.
        to: ContainerId,
    },
    /// A size comes, for the drinks of which sales in it are expected.
    Add {
        /// The size.
        size: ContainerId,
        /// The size that some of its buyers would have bought. Without one, for each drink the nearest.
        taken_from: Option<ContainerId>,
    },
    /// Only these sizes stay.
    Keep {
        /// The sizes.
        sizes: Vec<ContainerId>,
    },
}

/// The answer to a question. A share is that of the buyers who stay; for a size that comes, that of the buyers
/// expected who would have bought the other size anyway.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Decision {
    /// What was asked.
    pub question: Question,
    /// The part of the menu.
    pub scope: Scope,
    /// The buyers in a week whom it concerns: those of the sizes that go, or those expected.
    pub buyers: Exact,
    /// Those of them who can turn to another size, or would have bought one.
    pub movers: Exact,
    /// What they bring in a week today: the profit that changes.
    pub now: Money,
    /// What they bring then, by the share.
    pub line: Line,
    /// What must be true for it to pay.
    pub verdict: Verdict,
    /// Drink by drink.
    pub rows: Vec<Row>,
    /// The offers concerned that are not counted, and why.
    pub unknown: Vec<(OfferId, Unknown)>,
    /// What keeping one size costs in a week.
    pub(super) keeping: Money,
    /// What the buyers of sizes that stay bring more in a week at the prices typed for these, all of them staying.
    pub others: Money,
}

/// The buyers of one drink in one size.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Row {
    /// How many there are in a week; of a size that comes, how many are expected.
    pub weekly: WeeklySales,
    /// What they buy today, or would have bought. It is `None` for a drink that is sold in no other size.
    pub now: Option<Earns>,
    /// What they buy then. It is `None` if they leave.
    pub then: Option<Earns>,
    /// Whether the owner chose where they turn.
    pub chosen: bool,
    /// The share at which this drink alone earns the same, with what those bring more who already buy it in the other
    /// size, and without the cost of keeping a size.
    pub break_even: Option<Share>,
    /// What those bring more in a week who already buy it there, at a price typed for it.
    pub more: Money,
    /// What they face.
    pub customer: Option<Customer>,
}

/// What a buyer faces who turns from one size to another.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Customer {
    /// The price today.
    pub now: Money,
    /// The price then.
    pub then: Money,
    /// How much more is asked, as a share of today's.
    pub change: Share,
    /// How much more is paid; below zero where it is less.
    pub more: Money,
    /// How much more there is to drink, by the sizes on the menu.
    pub more_volume: Volume,
    /// What is asked per price volume (1 fl oz or 100 mL) today.
    pub per_volume_now: Money,
    /// What is asked per price volume then.
    pub per_volume_then: Money,
    /// How much more that is, as a share of today's.
    pub per_volume_change: Share,
}

impl Customer {
    pub(super) fn between(now: &Earns, then: &Earns, per: Volume) -> Result<Customer, Overflow> {
        let per_volume = |earns: &Earns| Ok(earns.price.times(per.ratio_to(earns.size)?)?.as_part());
        let (before, after) = (per_volume(now)?, per_volume(then)?);
        Ok(Customer {
            now: now.price,
            then: then.price,
            change: change(now.price, then.price)?,
            more: then.price.minus(now.price)?,
            more_volume: then.size.minus(now.size)?,
            per_volume_now: before,
            per_volume_then: after,
            per_volume_change: change(before, after)?,
        })
    }
}

/// How much more it is then, as a share of what it is now.
fn change(now: Money, then: Money) -> Result<Share, Overflow> {
    Ok(Share::from_fraction(then.minus(now)?.ratio_to(now)?.as_part()))
}

impl Row {
    /// What these buyers bring in a week then if all stay.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn brings(&self) -> Result<Money, Overflow> {
        self.then.map_or(Ok(Money::ZERO), |then| times(then.profit, self.weekly.count()))
    }

    /// What this drink brings in a week then if all stay: these buyers, and what others bring more.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn brings_with_others(&self) -> Result<Money, Overflow> {
        self.brings()?.plus(self.more)
    }

    /// What they bring in a week today.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn brought(&self) -> Result<Money, Overflow> {
        self.now.map_or(Ok(Money::ZERO), |now| times(now.profit, self.weekly.count()))
    }
}

/// When a change has paid back what it costs once.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Payback {
    /// After so many weeks.
    Weeks(Exact),
    /// At once: it costs nothing and brings more.
    AtOnce,
    /// It brings no more than today.
    Never,
}

impl Decision {
    /// What it brings in a week more than today, at a share.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn gain(&self, share: Share) -> Result<Money, Overflow> {
        self.line.at(share)?.minus(self.now)
    }

    /// The share at which it brings what today brings, whatever the verdict. Returns `None` if the share
    /// changes nothing.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn break_even(&self) -> Result<Option<Share>, Overflow> {
        self.line.share_for(self.now)
    }

    /// How many must buy in a week then for the same profit; of a size that comes, how many of those expected
    /// may have bought the other.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn break_even_buyers(&self) -> Result<Option<Exact>, Overflow> {
        self.break_even()?.map(|at| Ok(self.movers.times(at.fraction())?.as_part())).transpose()
    }

    /// The change of the number of buyers at which it earns the same, as a share of today's.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn change_at_break_even(&self) -> Result<Option<Share>, Overflow> {
        self.break_even()?.map(|at| at.minus(Share::WHOLE)).transpose()
    }

    /// Whole buyers a week who may leave. Returns `None` if none may.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn may_lose(&self) -> Result<Option<Exact>, Overflow> {
        match self.verdict {
            Verdict::EvenIfAllLeave => Ok(Some(self.movers)),
            Verdict::AtLeast { at } => {
                let leave = self.movers.times(at.rest()?.fraction())?;
                Ok(Some(leave.as_part().floor()))
            }
            _ => Ok(None),
        }
    }

    /// Whole buyers a week who must come beside all of today's. Returns `None` if none need to.
    pub const fn needs_new(&self) -> Option<Exact> {
        match self.verdict {
            Verdict::NeedsNew { buyers, .. } => Some(buyers),
            _ => None,
        }
    }

    /// What the buyers of the row with the most of them face.
    pub fn customer(&self) -> Option<Customer> {
        let mut most: Option<(Exact, Customer)> = None;
        for row in &self.rows {
            let Some(customer) = row.customer else { continue };
            let count = row.weekly.count();
            if most.is_none_or(|(before, _)| count > before) {
                most = Some((count, customer));
            }
        }
        most.map(|(_, customer)| customer)
    }

    /// Whether any of its buyers would turn to a size or a price that is far from theirs.
    ///
    /// # Errors
    /// [`Overflow`].
    pub(super) fn turns_far(&self) -> Result<bool, Overflow> {
        for (now, then) in self.rows.iter().filter_map(|row| row.now.zip(row.then)) {
            if now.is_far_from(&then)? {
                return Ok(true);
            }
        }
        Ok(false)
    }

    /// How many buyers in a week would turn to a size or a price that is far from theirs.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn far_buyers(&self) -> Result<Exact, Overflow> {
        let mut far = Exact::ZERO;
        for row in &self.rows {
            if let Some((now, then)) = row.now.zip(row.then).filter(|_| !matches!(self.question, Question::Add { .. }))
                && now.is_far_from(&then)?
            {
                far = far.plus(row.weekly.count())?;
            }
        }
        Ok(far)
    }

    /// The least and the largest of what its buyers face, by something that is read of it.
    pub fn faced(&self, of: fn(&Customer) -> Share) -> Option<(Share, Share)> {
        let all = || self.rows.iter().filter(|row| row.weekly.count().is_positive()).filter_map(|row| row.customer);
        let of = |customer: Customer| of(&customer);
        all().map(of).min().zip(all().map(of).max())
    }

    /// Whether all who turn to another size face the same.
    pub fn customers_alike(&self) -> bool {
        let mut all = self.rows.iter().filter_map(|row| row.customer);
        let first = all.next();
        all.all(|customer| Some(customer) == first)
    }

    /// Of a size that comes: how many new buyers a week it needs if `movers` of its buyers would have bought
    /// the other size, each by the mean of those expected:
    /// `(movers * (p_a - p_b) + K) / p_b`. Returns `None` for another question, or if nothing is left of a
    /// drink.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn new_buyers_needed(&self, movers: Exact) -> Result<Option<Exact>, Overflow> {
        if !matches!(self.question, Question::Add { .. }) || !self.movers.is_positive() {
            return Ok(None);
        }
        let all = |read: fn(&Row) -> Result<Money, Overflow>| {
            self.rows.iter().try_fold(Money::ZERO, |sum, row| sum.plus(read(row)?))
        };
        let before = all(Row::brought)?.over(self.movers)?;
        let after = all(Row::brings)?.over(self.buyers)?;
        if !after.is_positive() {
            return Ok(None);
        }
        let lost = before.minus(after)?.times(movers)?.plus(self.keeping)?;
        Ok(Some(lost.ratio_to(after)?.as_part().max(Exact::ZERO)))
    }

    /// When what is paid once is back, at a share.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn payback(&self, share: Share, once: Money) -> Result<Payback, Overflow> {
        let gain = self.gain(share)?;
        Ok(match (gain.is_positive(), once.is_positive()) {
            (false, _) => Payback::Never,
            (true, false) => Payback::AtOnce,
            (true, true) => Payback::Weeks(once.ratio_to(gain)?.as_part()),
        })
    }

    /// Where it stops paying, or begins to, by how much buyers mind a price; an estimate. Returns `None` for a
    /// size that comes, and where no answer of the buyers turns it.
    pub fn tipping(&self) -> Option<Tipping> {
        if matches!(self.question, Question::Add { .. }) {
            return None;
        }
        tipping::tipping(&turns(&self.rows), self.now.minus(self.line.intercept).ok()?)
    }

    /// What it brings in a week by an owner's answer; an estimate on an assumption. Returns `None` for a size
    /// that comes, and where it is no finite number.
    pub fn by_owner(&self, answered: &Answered) -> Option<Money> {
        if matches!(self.question, Question::Add { .. }) {
            return None;
        }
        self.line.intercept.plus(brought_by(&turns(&self.rows), answered)?).ok()
    }

    /// It against today by an owner's answer; an estimate on an assumption. Returns `None` where [`Decision::by_owner`]
    /// does.
    pub fn guess(&self, answered: &Answered) -> Option<Guess> {
        Guess::of(self.by_owner(answered)?, self.now, &self.line, &turns(&self.rows), answered)
    }
}
