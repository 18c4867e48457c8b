//! The edit that makes a switch.

use super::{Question, Switch};
use crate::book::{Book, Edit, Filling, Key, Offer, Record};
use crate::foundation::measure::{Exact, Overflow, Share};

/// The one edit that sells every drink of the switch in the new size: at the price worked out
/// with, with the sales kept added to those it has there, and no longer in the old one. What was
/// sold stays written down. A drink that has no price in the new size stays as it is.
///
/// # Errors
/// [`Overflow`].
pub fn sell_in_the_new_size(book: &Book, question: Question, switch: &Switch, kept: Share) -> Result<Edit, Overflow> {
    let mut edits = Vec::new();
    for drink in &switch.drinks {
        let (Ok(then), Some(old)) = (drink.then, book.offer(question.now(drink.drink))) else { continue };
        let there = book.offer(question.then(drink.drink)).cloned();
        let there = there.unwrap_or(Offer::new(question.then(drink.drink)));
        let weekly = match old.weekly {
            Some(weekly) => Some(expected(weekly, kept)?.plus(there.weekly.unwrap_or_default())?),
            None => there.weekly,
        };
        let filling = there.filling.clone().or_else(|| old.filling.clone().map(in_another_container));
        edits.push(Edit::Remove(Key::Offer(old.id())));
        edits.push(Edit::Put(Record::Offer(Offer { price: Some(then.price), weekly, filling, ..there })));
    }
    Ok(Edit::Together(edits))
}

/// Whole drinks.
fn expected(weekly: Exact, kept: Share) -> Result<Exact, Overflow> {
    Ok(weekly.times(kept.fraction())?.rounded(0))
}

/// The rule and the batch stay; what was allowed, left empty and weighed belongs to the old
/// container.
fn in_another_container(filling: Filling) -> Filling {
    Filling { allowed: None, least_headspace: None, measured_at: None, nets: Vec::new(), ..filling }
}
