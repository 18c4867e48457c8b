//! Profit a week by a share of buyers, and what must be true for a change to pay.

use crate::foundation::measure::{Exact, Money, Overflow, Share};

/// Profit a week as a share of buyers goes from none to all: a straight line.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Line {
    /// The profit at none.
    pub intercept: Money,
    /// What it is more at all.
    pub slope: Money,
}

impl Line {
    /// The profit at a share, which may be over the whole.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn at(&self, share: Share) -> Result<Money, Overflow> {
        self.intercept.plus(self.slope.times(share.fraction())?.as_part())
    }

    /// The share at which the profit is `wanted`: exact but for the last digit of a quotient. Returns `None` if
    /// the profit does not change with the share.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn share_for(&self, wanted: Money) -> Result<Option<Share>, Overflow> {
        if self.slope.is_zero() {
            return Ok(None);
        }
        Ok(Some(Share::from_fraction(wanted.minus(self.intercept)?.ratio_to(self.slope)?)))
    }
}

/// What must be true for a change to pay.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// It pays if nobody stays.
    EvenIfAllLeave,
    /// It pays if at least this share stays, above zero and at most the whole.
    AtLeast {
        /// The share.
        at: Share,
    },
    /// One size in place of another needs more buyers than there are today.
    NeedsNew {
        /// The share of today's buyers that is needed, over the whole.
        at: Share,
        /// Whole buyers a week beside all of today's.
        buyers: Exact,
        /// What is lost in a week if all of today's buyers stay and none come.
        loss_if_all_stay: Money,
    },
    /// It loses even if all buyers stay.
    CannotPay {
        /// The share that would have to stay, over the whole. It is `None` if nobody can stay.
        at: Option<Share>,
        /// What is lost in a week.
        loss_if_all_stay: Money,
    },
    /// A further size pays if at most this share of those expected would have bought the other size.
    AtMost {
        /// The share, from zero and below the whole.
        at: Share,
    },
    /// A further size pays if all of those expected would have bought the other.
    EvenIfAllTaken,
    /// A further size loses even if each buyer is a new one.
    CannotPayNew {
        /// What is lost in a week.
        loss_if_none_taken: Money,
    },
}

impl Verdict {
    /// Whether it can pay with the buyers of today.
    pub const fn can_pay(&self) -> bool {
        match self {
            Verdict::EvenIfAllLeave | Verdict::AtLeast { .. } | Verdict::AtMost { .. } | Verdict::EvenIfAllTaken => {
                true
            }
            Verdict::NeedsNew { .. } | Verdict::CannotPay { .. } | Verdict::CannotPayNew { .. } => false,
        }
    }

    /// What must be true where buyers stay or leave: `now` is what they bring today, `line` what is brought
    /// then.
    ///
    /// # Errors
    /// [`Overflow`].
    pub(super) fn of_staying(now: Money, line: &Line) -> Result<Verdict, Overflow> {
        let lost = now.minus(line.intercept)?;
        let loss_if_all_stay = lost.minus(line.slope)?;
        let at = if line.slope.is_positive() { line.share_for(now)? } else { None };
        Ok(match at {
            at if loss_if_all_stay.is_positive() => Verdict::CannotPay { at, loss_if_all_stay },
            Some(at) if lost.is_positive() => Verdict::AtLeast { at },
            _ => Verdict::EvenIfAllLeave,
        })
    }

    /// What must be true where one size takes the place of another, for so many buyers.
    ///
    /// # Errors
    /// [`Overflow`].
    pub(super) fn of_switch(now: Money, line: &Line, buyers: Exact) -> Result<Verdict, Overflow> {
        Ok(match Verdict::of_staying(now, line)? {
            Verdict::CannotPay { at: Some(at), loss_if_all_stay } => {
                let more = at.fraction().minus(Exact::ONE)?;
                // The quotient may be off in its last digit: a whole number of buyers is not raised by it.
                let buyers = buyers.times(more)?.as_part().ceiling();
                Verdict::NeedsNew { at, buyers, loss_if_all_stay }
            }
            other => other,
        })
    }

    /// What must be true where a further size takes a share of those expected from another size: the line
    /// does not rise.
    ///
    /// # Errors
    /// [`Overflow`].
    pub(super) fn of_adding(now: Money, line: &Line) -> Result<Verdict, Overflow> {
        let gain_if_new = line.intercept.minus(now)?;
        if gain_if_new.is_negative() {
            return Ok(Verdict::CannotPayNew { loss_if_none_taken: now.minus(line.intercept)? });
        }
        if !gain_if_new.plus(line.slope)?.is_negative() {
            return Ok(Verdict::EvenIfAllTaken);
        }
        Ok(line.share_for(now)?.map_or(Verdict::EvenIfAllTaken, |at| Verdict::AtMost { at }))
    }
}
