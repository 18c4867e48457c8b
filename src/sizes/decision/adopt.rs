//! The menu as a decision would have it: what is offered then, as one edit, as a scenario, on trial.

use super::answer::{Decision, Question};
use super::menu::{Earns, MenuToday};
use super::weekly::{Written, tells_from};
use crate::book::{
    Book, Edit, Filling, KeptConditions, Key, Offer, OfferId, Record, Scenario, ScenarioId, Scope, Trial, TrialId,
};
use crate::foundation::measure::{Date, Exact, Overflow, Share};

/// Weeks before a change that a trial compares with, if none are written down.
const WEEKS_BEFORE: i32 = 8;

/// An offer of the menu then.
pub(super) struct OfferThen {
    /// The offer, with its number a week where buyers turn to it or leave it.
    pub offer: Offer,
    /// How many more are sold of it in a week, or fewer. It is `None` if nobody turns to it or leaves it.
    more: Option<Exact>,
}

impl OfferThen {
    /// Whether buyers turn to it or leave it.
    pub const fn has_moved(&self) -> bool {
        self.more.is_some()
    }
}

impl MenuToday<'_> {
    /// What this part of the menu offers then, if a share stays: with the prices of the decision, and with whole
    /// drinks a week where buyers turn to it or leave it. All else is as the book has it.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn offers_then(&self, decision: &Decision, share: Share) -> Result<Vec<Offer>, Overflow> {
        Ok(self.menu_then(decision, share)?.into_iter().map(|then| then.offer).collect())
    }

    pub(super) fn menu_then(&self, decision: &Decision, share: Share) -> Result<Vec<OfferThen>, Overflow> {
        let mine = self.book.offers().filter(|offer| self.book.belongs(offer.drink, self.scope));
        let stays = mine.filter(|offer| self.stays(decision, offer.id())).map(|offer| {
            let price = self.told.price(offer.id()).or(offer.price);
            OfferThen { offer: Offer { price, ..offer.clone() }, more: None }
        });
        let mut then: Vec<OfferThen> = stays.collect();
        for row in &decision.rows {
            let count = row.weekly.count();
            let share = count.times(share.fraction())?;
            match (&decision.question, row.now, row.then) {
                (Question::Add { .. }, now, Some(new)) => {
                    self.sell(&mut then, &new, count, now.as_ref())?;
                    if let Some(now) = now {
                        self.sell(&mut then, &now, share.negated(), None)?;
                    }
                }
                (_, now, Some(to)) => self.sell(&mut then, &to, share, now.as_ref())?,
                _ => {}
            }
        }
        if let Question::Keep { sizes } = &decision.question {
            for new in self.arrivals().iter().filter(|new| sizes.contains(&new.earns.offer.container)) {
                let from = new.from.and_then(|from| self.sold_as(from)).map(|from| from.earns);
                self.sell(&mut then, &new.earns, new.expected, from.as_ref())?;
                if let Some(from) = from.filter(|from| sizes.contains(&from.offer.container)) {
                    self.sell(&mut then, &from, new.taken.negated(), None)?;
                }
            }
        }
        for then in &mut then {
            let Some(more) = then.more else { continue };
            let known = self.sold_as(then.offer.id()).and_then(|sold| sold.weekly.number);
            let today = known.or(then.offer.weekly).unwrap_or_default();
            then.offer.weekly = Some(today.plus(more)?.max(Exact::ZERO).rounded(0));
        }
        Ok(then)
    }

    /// Sells more of an offer in a week, or fewer; one that is not there yet comes as `like` is served and
    /// packaged.
    fn sell(&self, then: &mut Vec<OfferThen>, what: &Earns, more: Exact, like: Option<&Earns>) -> Result<(), Overflow> {
        if let Some(there) = then.iter_mut().find(|then| then.offer.id() == what.offer) {
            there.more = Some(there.more.unwrap_or_default().plus(more)?);
            there.offer.price = there.offer.price.or(Some(what.price));
            return Ok(());
        }
        let old = like.and_then(|like| self.book.offer(like.offer));
        let offer = Offer {
            price: Some(what.price),
            filling: old.and_then(|old| old.filling.clone()).map(in_another_container),
            service: old.and_then(|old| old.service),
            ..Offer::new(what.offer)
        };
        then.push(OfferThen { offer, more: Some(more) });
        Ok(())
    }

    /// Whether an offer stays on the menu.
    fn stays(&self, decision: &Decision, offer: OfferId) -> bool {
        match &decision.question {
            Question::Add { .. } => true,
            Question::Drop { size } => offer.container != *size,
            Question::Keep { sizes } => sizes.contains(&offer.container),
            // A drink that cannot be had in the other size stays where it is.
            Question::Switch { .. } => !decision.rows.iter().any(|row| row.now.is_some_and(|now| now.offer == offer)),
        }
    }

    /// The one edit that makes a decision, with a share staying. What was sold stays written down.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn edit(&self, decision: &Decision, share: Share) -> Result<Edit, Overflow> {
        let then = self.offers_then(decision, share)?;
        let mine = self.book.offers().filter(|offer| self.book.belongs(offer.drink, self.scope)).map(Offer::id);
        let gone = mine.filter(|id| !then.iter().any(|offer| offer.id() == *id));
        let mut edits: Vec<Edit> = gone.map(|id| Edit::Remove(Key::Offer(id))).collect();
        let changed = then.into_iter().filter(|offer| self.book.offer(offer.id()) != Some(offer));
        let from = tells_from(self.day);
        let put = |offer: Offer| Edit::Put(Record::Offer(offer.expected_from(self.book.offer(offer.id()), from)));
        edits.extend(changed.map(put));
        Ok(Edit::Together(edits))
    }

    /// The whole menu as a decision would have it, as a scenario.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn scenario(
        &self,
        decision: &Decision,
        share: Share,
        id: ScenarioId,
        name: &str,
    ) -> Result<Scenario, Overflow> {
        let rest = self.book.offers().filter(|offer| !self.book.belongs(offer.drink, self.scope)).cloned();
        let offers = self.offers_then(decision, share)?.into_iter().chain(rest).collect();
        Ok(Scenario { id, name: name.to_string(), offers, conditions: KeptConditions::default() })
    }
}

/// A trial of a change that begins next Monday and lasts so many weeks, one at least; against the last written
/// weeks that are over, or as many before it where none are written down.
///
/// # Errors
/// [`Overflow`].
pub fn trial_of(book: &Book, scope: Scope, id: TrialId, name: &str, weeks: u32, day: Date) -> Result<Trial, Overflow> {
    let start = day.monday().plus_weeks(1);
    let written = Written::of(book, day, &|_| false)?;
    let first = written.weeks.first().map_or(start.plus_weeks(WEEKS_BEFORE.saturating_neg()), |week| week.monday);
    let further = i32::try_from(weeks.saturating_sub(1)).map_err(|_| Overflow::TooLarge)?;
    Ok(Trial { id, name: name.to_string(), scope, first, start, last: Some(start.plus_weeks(further)) })
}

/// The rule and the batch stay; what was allowed, left empty and weighed belongs to the old container.
fn in_another_container(filling: Filling) -> Filling {
    Filling { allowed: None, least_headspace: None, measured_at: None, nets: Vec::new(), ..filling }
}
