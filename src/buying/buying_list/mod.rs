//! What is to be bought: proposed from what is to be made, worked off at the supplier's, and
//! carried back into the book (calculations, 8).

mod carry;
mod list;
mod propose;
#[cfg(test)]
mod tests;

pub use carry::{Carried, Finished, PricePaid, carry, finish};
pub use list::{Group, Listed, Totals, addable, group};
pub use propose::{Here, Proposal, Proposed, Quote, makes, propose};

use crate::book::{Book, Goods, Stage};
use crate::drink::yields::{YieldError, bought_for};
use crate::foundation::measure::{Dimension, Exact, Measure};

/// An amount of goods as bought, in the base unit of a dimension. Packaging is counted in pieces
/// whatever is asked.
///
/// # Errors
/// What the ingredient lacks.
fn in_dimension(book: &Book, goods: Goods, amount: Measure, dimension: Dimension) -> Result<Exact, YieldError> {
    match goods {
        Goods::Packaging(_) => Ok(amount.base()),
        Goods::Ingredient(id) => match book.ingredient(id) {
            Some(ingredient) => Ok(bought_for(ingredient, Stage::AsBought, amount, dimension)?.amount()?.as_part()),
            None => Ok(amount.base()),
        },
    }
}
