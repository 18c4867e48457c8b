//! What is to be bought: proposed from what is to be made, worked off at the supplier's, and carried back
//! into the book.
//!
//! What is to be made is what is planned on the days chosen and not filled yet, and a chosen number of
//! usual weeks ([`makes`]). For each of the goods that it takes ([`crate::drink::make`]), in each of their packs,
//!
//! ```text
//! missing   = needed as bought - here
//! packs     = missing / contents, rounded up, at least those bought at a time; 0 if nothing is missing
//! left over = packs * contents - missing
//! cost      = packs * (price for so many + surcharge)
//! ```
//!
//! The list is made in the pack that is bought now, the one in which enough of the goods costs least, or
//! another that is chosen. What nobody counted is assumed to be out of stock.
//!
//! By hand: ten drinks with 250 g at a trim yield of 0.5 need 5000 g as bought: of packs of 2 kg at 4.00 three,
//! 12.00, with 1000 g left over. `src/buying/buying_list/tests.rs` has this case.

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
        Goods::Ingredient(id) => match book.ingredient_now(id) {
            Some(ingredient) => Ok(bought_for(&ingredient, Stage::AsBought, amount, dimension)?.amount()?.as_part()),
            None => Ok(amount.base()),
        },
    }
}
