//! Back from a price point: what a drink may cost, and how much of it that buys.

use super::Terms;
use crate::book::{Book, Covers, Drink, Scaling};
use crate::cost::{Cost, Part};
use crate::fill::Scaled;
use crate::measure::{Exact, Money, Overflow, Share, Volume};

/// What a menu price leaves to spend.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Ceiling {
    /// The price without tax.
    pub without_tax: Money,
    /// What the covered cost may be: R * (1 - m - c - f * (1 + t)) - k. Below zero where fees
    /// and target take more than the price.
    pub cost: Money,
    /// What may be spent on ingredients per drink, the rest of the covered cost as it is. Below
    /// zero where the rest alone is too much.
    pub ingredients: Money,
}

/// What a menu price leaves to spend on a drink of this cost.
///
/// # Errors
/// [`Overflow`].
pub fn ceiling(book: &Book, drink: &Drink, cost: &Cost, terms: &Terms, menu: Money) -> Result<Ceiling, Overflow> {
    let without_tax = terms.without_tax(menu)?;
    let share = Exact::ONE.minus(terms.target.fraction())?.minus(terms.covered_fee_share()?)?;
    let may_cost = without_tax.times(share)?.minus(terms.covered_fixed_fee())?;
    let sold = drink.unsold.unwrap_or(book.settings().unsold).rest()?.fraction();
    let rest = covered_besides_ingredients(cost, terms.covers)?;
    Ok(Ceiling {
        without_tax: without_tax.as_part(),
        cost: may_cost.as_part(),
        ingredients: may_cost.times(sold)?.minus(rest)?.as_part(),
    })
}

/// The largest fill whose covered cost stays within `ceiling`; none where even the fixed lines
/// and the container are too much. It may be more than the container holds.
///
/// # Errors
/// [`Overflow`].
pub fn largest_fill(
    book: &Book,
    drink: &Drink,
    cost: &Cost,
    scaled: &Scaled,
    covers: Covers,
    ceiling: &Ceiling,
) -> Result<Option<Volume>, Overflow> {
    let mut fixed_lines = Money::ZERO;
    let mut in_proportion = Money::ZERO;
    for (line, priced) in scaled.lines.iter().zip(&cost.lines) {
        match line.scaling {
            Scaling::Fixed => fixed_lines = fixed_lines.plus(priced.cost)?,
            Scaling::InProportion => in_proportion = in_proportion.plus(priced.cost)?,
        }
    }
    if !scaled.in_proportion.is_positive() {
        return Ok((ceiling.ingredients >= fixed_lines).then_some(scaled.fixed));
    }
    let wage_per_litre = match covers {
        Covers::Goods => Money::ZERO,
        Covers::GoodsAndLabour | Covers::Everything => drink.labour.per_litre.paid_at(book.settings().wage)?,
    };
    let wage_per_millilitre = wage_per_litre.over(Exact::new(1000, 0))?;
    let per_millilitre = in_proportion.over(scaled.in_proportion.millilitres())?.plus(wage_per_millilitre)?;
    let fill = scaled.in_proportion.plus(scaled.fixed)?;
    let wage_in_fill = wage_per_millilitre.times(fill.millilitres())?;
    let wage_of_fixed = wage_per_millilitre.times(scaled.fixed.millilitres())?;
    let budget = ceiling.ingredients.minus(fixed_lines)?.plus(wage_in_fill)?.minus(wage_of_fixed)?;
    if budget.is_negative() {
        return Ok(None);
    }
    if !per_millilitre.is_positive() {
        return Ok(Some(fill));
    }
    let more = Volume::from_millilitres(budget.ratio_to(per_millilitre)?);
    scaled.fixed.plus(more).map(|volume| Some(volume.as_part()))
}

/// Covered cost before what is thrown away, without ingredients.
fn covered_besides_ingredients(cost: &Cost, covers: Covers) -> Result<Money, Overflow> {
    let goods = cost.part(Part::ContainerSet)?.plus(cost.part(Part::Toll)?)?;
    match covers {
        Covers::Goods => Ok(goods),
        Covers::GoodsAndLabour => goods.plus(cost.part(Part::Labour)?),
        Covers::Everything => goods.plus(cost.part(Part::Labour)?)?.plus(cost.part(Part::Overhead)?),
    }
}

/// What a shop asks on its shelf for what it buys at `ours`, for a margin (not a mark-up).
///
/// # Errors
/// [`Overflow`] for a margin of 100 %.
pub fn shelf_price(ours: Money, margin: Share) -> Result<Money, Overflow> {
    Ok(ours.over(margin.rest()?.fraction())?.as_part())
}

/// What we may ask of a shop that sells at `shelf` and keeps a margin (not a mark-up).
///
/// # Errors
/// [`Overflow`].
pub fn our_price(shelf: Money, margin: Share) -> Result<Money, Overflow> {
    Ok(shelf.times(margin.rest()?.fraction())?.as_part())
}
