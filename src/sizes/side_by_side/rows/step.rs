//! What a step from size to size asks, costs and leaves.

use super::SizeRow;
use crate::foundation::measure::{Money, Overflow, Share};

/// From one size to a larger one.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Step {
    /// What the customer pays more on the menu.
    pub extra_price: Money,
    /// What tax within the price takes more.
    pub extra_tax: Money,
    /// What it costs more.
    pub extra_cost: Money,
    /// What fees take more.
    pub extra_fees: Money,
    /// What discounts and marked down drinks take more.
    pub extra_reductions: Money,
    /// What is left more: the extra price without tax, less all of these.
    pub extra_left: Money,
    /// Share of the extra price, without tax, that is kept: extra contribution over extra price
    /// without tax. It is `None` if the price does not rise.
    pub kept: Option<Share>,
}

impl Step {
    /// The step between two sizes. Returns `None` if one of them has no price.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn between(smaller: &SizeRow, larger: &SizeRow) -> Result<Option<Step>, Overflow> {
        let (Some(small), Some(large)) = (&smaller.sold, &larger.sold) else { return Ok(None) };
        let extra_price = large.price.minus(small.price)?;
        let more_without_tax = large.without_tax.minus(small.without_tax)?;
        let extra_left = large.contribution.minus(small.contribution)?;
        let kept = if more_without_tax.is_positive() {
            Some(Share::from_fraction(extra_left.ratio_to(more_without_tax)?.as_part()))
        } else {
            None
        };
        Ok(Some(Step {
            extra_price,
            extra_tax: extra_price.minus(more_without_tax)?,
            extra_cost: larger.cost.minus(smaller.cost)?,
            extra_fees: large.fees.minus(small.fees)?,
            extra_reductions: large.reductions.minus(small.reductions)?,
            extra_left,
            kept,
        }))
    }
}
