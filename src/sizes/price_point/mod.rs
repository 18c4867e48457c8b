//! Back from a price point: drinks that must sell for no more than a given price, what may be in them, and
//! what they would have to give up.
//!
//! What the price leaves to spend is [`ceiling`]; [`crate::drink::price`] has its formula.
//!
//! ```text
//! may cost per volume = (may be spent on ingredients) * v / F
//! too much            = (ingredients cost) - (may be spent on ingredients)
//! share too much      = (too much) / (ingredients cost)
//! ```
//!
//! `F` is the fill, and `v` 1 fl oz or 100 mL. By how much the dearest line alone would have to shrink, while
//! the others fill the size in its place, is found by bisection to a millionth; at least a thousandth of the
//! line stays. A recipe fits if the largest fill that the price pays for is the fill itself.
//!
//! By hand: 100 mL of mango at 10.00 a litre and 300 mL of a base at 2.00 cost 1.60, in a cup at 0.20. At
//! 3.00, of which half is to be left, 1.50 may be spent, and 1.30 of it on ingredients: 0.30 or 18.75 % too
//! much. 1.30 pay for 325 of the 400 mL. With `x` mL of mango to 300 of base,
//! `400 * (0.01 * x + 0.6) / (x + 300) = 1.30`, so that `x` is 55.56: 44.4 % less. This case is in
//! `src/sizes/price_point/tests.rs`.

#[cfg(test)]
mod tests;

use crate::book::{Book, Container, ContainerId, Drink, FlatCost, IngredientId, LineId, Offer, OfferId, Part, Scope};
use crate::drink::cost::{Cost, cost};
use crate::drink::fill::scale;
use crate::drink::ledger::{OfferError, Priced, price_offer};
use crate::drink::price::{Ceiling, ceiling, largest_fill};
use crate::foundation::bisection::{Next, Until, bisect};
use crate::foundation::in_order;
use crate::foundation::measure::{Amount, Exact, Money, Overflow, Share, Volume};

/// A drink in a size at a menu price that is given.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct AtPoint {
    /// The drink and the size.
    pub offer: OfferId,
    /// What the price leaves to spend.
    pub ceiling: Ceiling,
    /// What the ingredients may cost per price volume (1 fl oz or 100 mL) of what is poured.
    pub may_cost_per_volume: Money,
    /// What the ingredients cost as the recipe is.
    pub ingredients: Money,
    /// What is poured.
    pub poured: Volume,
    /// The largest fill that the price pays for, at most what is poured. It is `None` if it pays
    /// for none.
    pub largest_fill: Option<Volume>,
    /// Whether the recipe fits, and what it would have to give up.
    pub verdict: Verdict,
}

/// Whether a recipe fits a price.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// It does, and so much more could be spent on ingredients.
    Fits(Money),
    /// It costs too much.
    Over(Over),
}

/// What a recipe would have to give up.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Over {
    /// What its ingredients cost over what they may.
    pub money: Money,
    /// That as a share of what they cost. It is `None` if they cost nothing.
    pub share: Option<Share>,
    /// The line to look at first. It is `None` if no line costs anything.
    pub first: Option<FirstLine>,
}

/// The dearest line of a recipe.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct FirstLine {
    /// The line.
    pub line: LineId,
    /// Its ingredient.
    pub ingredient: IngredientId,
    /// What it costs in a drink.
    pub cost: Money,
    /// By how much of its amount it would have to shrink alone, the others filling the size in its
    /// place. It is `None` if it cannot do it alone.
    pub less: Option<Share>,
}

/// A drink in a size at `menu`, above zero, whether it is sold in it or not.
///
/// # Errors
/// The [`OfferError`] of a drink that cannot be computed in this size.
pub fn at_point(book: &Book, offer: OfferId, menu: Money) -> Result<AtPoint, OfferError> {
    let priced = price_offer(book, &Offer::new(offer))?;
    let drink = book.drink(offer.drink).ok_or(OfferError::Missing(crate::book::Key::Drink(offer.drink)))?;
    let container = book.container(offer.container);
    let container = container.ok_or(OfferError::Missing(crate::book::Key::Container(offer.container)))?;
    let poured = priced.fill.volume;
    let ceiling = ceiling(book, drink, &priced.cost, &priced.terms, menu)?;
    let largest = largest_fill(book, drink, container, priced.terms.cost_basis, poured, &ceiling)?;
    let ingredients = priced.cost.part(Part::Ingredients)?;
    let left = ceiling.ingredients.minus(ingredients)?;
    let verdict = if largest == Some(poured) {
        Verdict::Fits(left.max(Money::ZERO))
    } else {
        let money = Money::ZERO.minus(left)?;
        let share = if ingredients.is_positive() {
            Some(Share::from_fraction(money.ratio_to(ingredients)?.as_part()))
        } else {
            None
        };
        let first = First { book, drink, container, priced: &priced, ceiling: &ceiling }.line()?;
        Verdict::Over(Over { money, share, first })
    };
    let per = book.settings().units.price_volume().ratio_to(poured)?;
    Ok(AtPoint {
        offer,
        ceiling,
        may_cost_per_volume: ceiling.ingredients.times(per)?.as_part(),
        ingredients,
        poured,
        largest_fill: largest,
        verdict,
    })
}

/// Halvings of the share of a line that stays: to less than a millionth of it.
const HALVINGS: u32 = 20;

/// Least share of a line that stays: leaving it out is another recipe.
const LEAST: Exact = Exact::new(1, 3);

/// The search for what the dearest line can do.
struct First<'a> {
    book: &'a Book,
    drink: &'a Drink,
    container: &'a Container,
    priced: &'a Priced,
    ceiling: &'a Ceiling,
}

impl First<'_> {
    fn line(&self) -> Result<Option<FirstLine>, Overflow> {
        let lines = self.priced.cost.lines.iter().filter(|line| line.cost.is_positive());
        let Some(dearest) = lines.max_by_key(|line| line.cost) else { return Ok(None) };
        let less = self.less_of(dearest.line)?;
        Ok(Some(FirstLine { line: dearest.line, ingredient: dearest.ingredient, cost: dearest.cost, less }))
    }

    fn less_of(&self, line: LineId) -> Result<Option<Share>, Overflow> {
        if !self.is_paid_for(line, LEAST)? {
            return Ok(None);
        }
        let (pays, _) = bisect(LEAST, Exact::ONE, Until::Halved(HALVINGS), &mut |_, middle| {
            Ok(if self.is_paid_for(line, middle)? { Next::Near(middle) } else { Next::Far(middle) })
        })?;
        Ok(Some(Share::from_fraction(Exact::ONE.minus(pays)?)))
    }

    /// Whether the price pays for the recipe with so much of a line. What cannot be made is not
    /// paid for.
    fn is_paid_for(&self, line: LineId, kept: Exact) -> Result<bool, Overflow> {
        let most = self.ceiling.most()?;
        let covered = self.with(line, kept)?.map(|cost| cost.covered(self.priced.terms.cost_basis));
        Ok(covered.is_some_and(|covered| covered <= most))
    }

    fn with(&self, line: LineId, kept: Exact) -> Result<Option<Cost>, Overflow> {
        let mut drink = self.drink.clone();
        for changed in drink.lines.iter_mut().filter(|other| other.id == line) {
            changed.amount = Amount::new(changed.amount.number.times(kept)?, changed.amount.unit);
        }
        let poured = self.priced.fill.volume;
        let scaled = scale(self.book, &drink, poured).ok();
        let overhead = self.priced.cost.part(Part::Flat(FlatCost::Overhead))?;
        Ok(scaled.and_then(|scaled| cost(self.book, &drink, self.container, &scaled, poured, overhead).ok()))
    }
}

/// The drinks of a part of the menu in these containers: one drink in each of them, more drinks
/// where they are sold in them at a price. What has no price is not sold yet.
pub fn sizes_of(book: &Book, scope: Scope, containers: &[ContainerId]) -> Vec<OfferId> {
    if let Scope::Drink(drink) = scope {
        return containers.iter().map(|container| OfferId { drink, container: *container }).collect();
    }
    let offers = book.offers().filter(|offer| offer.price.is_some()).map(Offer::id);
    offers.filter(|id| book.belongs(id.drink, scope) && containers.contains(&id.container)).collect()
}

/// A drink in a size at a menu price, or why it cannot be computed.
pub type Row = (OfferId, Result<AtPoint, OfferError>);

/// Sizes at `menu`, the one that would have to give up the largest share of its ingredients
/// first, then those that fit with the least room first, and at the end those that cannot be
/// computed.
pub fn worst_first(book: &Book, offers: &[OfferId], menu: Money) -> Vec<Row> {
    let mut rows: Vec<Row> = Vec::new();
    for offer in offers {
        let row = (*offer, at_point(book, *offer, menu));
        in_order::insert(&mut rows, row, |other, row| order(other) <= order(row));
    }
    rows
}

/// The place of a row: over, by the share that is over, before what fits, by its room.
fn order((_, at): &Row) -> (u8, Exact) {
    match at.as_ref().map(|at| at.verdict) {
        Ok(Verdict::Over(over)) => (0, over.share.map_or(Exact::ZERO, |share| share.fraction().negated())),
        Ok(Verdict::Fits(room)) => (1, room.major()),
        Err(_) => (2, Exact::ZERO),
    }
}
