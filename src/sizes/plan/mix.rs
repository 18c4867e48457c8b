//! The owner's guess of what is sold, and of which size how much.

use super::candidates::{Candidates, Sold};
use crate::book::{ContainerId, Offer};
use crate::foundation::measure::{Exact, Overflow, Share, TYPED_PLACES};

/// What an owner guesses about plans.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Guess {
    /// Weeks that opening stock should last, 0 or more.
    pub cover: Exact,
    /// Which share of what is sold goes to a size, for every drink alike. If no share is given,
    /// each drink keeps its own shares of today. If some are, a size without one has today's share
    /// over all drinks. The shares of the sizes in a plan are scaled to make a whole.
    pub shares: Vec<(ContainerId, Share)>,
    /// What is sold in a week of a drink of which no number is known, in all sizes together.
    pub unknown: Option<Exact>,
    /// The share of today's sales that stays with a plan, by its sizes in the order of their fills.
    /// A plan without one keeps all of them.
    pub kept: Vec<(Vec<ContainerId>, Share)>,
}

impl Guess {
    /// The share of today's sales that stays with the plan of these sizes.
    pub fn kept_by(&self, sizes: &[ContainerId]) -> Share {
        self.kept.iter().find(|(of, _)| of == sizes).map_or(Share::WHOLE, |(_, kept)| *kept)
    }

    /// The share given for a size.
    pub fn share_of(&self, size: ContainerId) -> Option<Share> {
        self.shares.iter().find(|(of, _)| *of == size).map(|(_, share)| *share)
    }

    /// What is sold of a drink in a week, shared out among its sizes in hundredths of a drink.
    /// The offers have no number if nothing is known of the drink.
    ///
    /// # Errors
    /// [`Overflow`].
    pub(super) fn share_out(
        &self,
        candidates: &Candidates,
        drink: &Sold,
        kept: Share,
        offers: &mut [Offer],
    ) -> Result<(), Overflow> {
        let known = drink.weekly.iter().map(|(_, weekly)| *weekly).try_fold(Exact::ZERO, Exact::plus)?;
        let today = if drink.weekly.is_empty() { self.unknown } else { Some(known) };
        let Some(today) = today else {
            for offer in offers {
                offer.weekly = None;
            }
            return Ok(());
        };
        let total = today.times(kept.fraction())?.rounded(TYPED_PLACES as u32);
        let mut weights = Vec::with_capacity(offers.len());
        for offer in offers.iter() {
            weights.push(self.weight(candidates, drink, offer.container)?);
        }
        for (offer, weekly) in offers.iter_mut().zip(shared(total, &weights)?) {
            offer.weekly = Some(weekly);
        }
        Ok(())
    }

    /// How much a size weighs among those of a plan.
    fn weight(&self, candidates: &Candidates, drink: &Sold, size: ContainerId) -> Result<Exact, Overflow> {
        if self.shares.is_empty() {
            let own = drink.weekly.iter().find(|(container, _)| *container == size);
            return Ok(own.map_or(Exact::ZERO, |(_, weekly)| *weekly));
        }
        match self.share_of(size) {
            Some(share) => Ok(share.fraction()),
            None => candidates.share_today(size).map(Share::fraction),
        }
    }
}

impl Candidates {
    /// The share that a size has of today's weekly sales in all the sizes thought of; zero if
    /// nothing is sold.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn share_today(&self, size: ContainerId) -> Result<Share, Overflow> {
        let mut all = Exact::ZERO;
        for size in self.sizes() {
            all = all.plus(self.weekly_in(*size)?)?;
        }
        if all.is_zero() {
            return Ok(Share::ZERO);
        }
        Ok(Share::from_fraction(self.weekly_in(size)?.over(all)?.as_part()))
    }
}

/// A number shared out by weights to the hundredth, so that the parts sum to it exactly and none is
/// below zero. If all weights are zero the parts are equal.
fn shared(total: Exact, weights: &[Exact]) -> Result<Vec<Exact>, Overflow> {
    let sum = weights.iter().copied().try_fold(Exact::ZERO, Exact::plus)?;
    let equal = vec![Exact::ONE; weights.len()];
    let weights = if sum.is_positive() { weights } else { &equal };
    let whole = weights.iter().copied().try_fold(Exact::ZERO, Exact::plus)?;
    let (mut weighed, mut given) = (Exact::ZERO, Exact::ZERO);
    let mut parts = Vec::with_capacity(weights.len());
    for weight in weights {
        weighed = weighed.plus(*weight)?;
        // The boundaries between parts are rounded, not the parts: boundaries rise, and the last
        // one is the total itself.
        let up_to = if weighed == whole { total } else { total.times(weighed)?.over(whole)?.rounded(2).min(total) };
        parts.push(up_to.minus(given)?);
        given = up_to;
    }
    Ok(parts)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::exact;

    fn parts(total: &str, weights: &[&str]) -> Vec<String> {
        let weights: Vec<Exact> = weights.iter().map(|weight| exact(weight)).collect();
        shared(exact(total), &weights).unwrap().iter().map(ToString::to_string).collect()
    }

    #[test]
    fn parts_sum_to_what_is_shared() {
        assert_eq!(parts("50", &["30", "20"]), ["30", "20"], "what weighs as it is stays as it is");
        assert_eq!(parts("100", &["1", "1", "1"]), ["33.33", "33.34", "33.33"]);
        assert_eq!(parts("100", &["0.25", "0", "0.25"]), ["50", "0", "50"], "no weight, no part");
        assert_eq!(parts("40", &["0", "0"]), ["20", "20"], "no weight at all: equal parts");
        assert_eq!(parts("0", &["1", "2"]), ["0", "0"]);
        assert_eq!(parts("7", &[]), Vec::<String>::new());
    }

    #[test]
    fn no_part_is_below_zero() {
        assert_eq!(parts("0.09", &["1"; 6]), ["0.02", "0.01", "0.02", "0.01", "0.02", "0.01"]);
        assert_eq!(parts("0.006", &["99", "1"]), ["0.006", "0"]);
    }
}
