//! What is here: whether it is enough, how many drinks it makes, and its best use when drinks share it.
//!
//! Only goods that were counted can run out; of all others it is assumed that there is enough. Amounts are
//! compared to the millionth of a gram, millilitre or piece. Without that, a third that was rounded
//! on the way could cost a drink.
//!
//! Of each of the goods `b` is here, and `a`, above 0, is needed for one drink, as bought and in the same unit.
//! The stock makes so many drinks ([`makes()`]):
//!
//! ```text
//! drinks = the least of b / a over the goods, rounded down
//! ```
//!
//! The best use ([`best_use()`]) of drinks that share goods is the whole numbers `x_i`, each from the
//! least to the most that is wished for, that bring the most:
//!
//! ```text
//! maximize    sum over drinks of c_i * x_i
//! subject to  sum over drinks of a_ij * x_i <= b_j, for each of the goods j
//! ```
//!
//! `c_i` is the contribution of a drink, or 0 if that is below zero or if the drink has no price. If none of
//! the drinks has a price, the most drinks are sought. [`integer_program`] tells how it is solved.
//!
//! By hand: 1.8 kg make six drinks that take 300 g each. Of two drinks that leave 3.00 and 1.90 and take
//! 300 and 200 g of 1 kg, three of the first alone bring 9.00 and five of the second alone 9.50; two of each
//! bring 9.80, the most. `tests/property/best_uses.rs` compares with trying every choice.

mod best_use;
pub mod integer_program;
mod makes;
mod reach;
mod takers;
mod used;

pub use best_use::{BestUse, Scarce, Stopped, Wish, best_use};
pub use makes::{Makes, NotMade, makes};
pub use reach::{Reach, Reached, reach};
pub use takers::takers;
pub use used::{Used, put, used};

use crate::book::{Book, Goods};
use crate::drink::make::Needs;
use crate::drink::yields::YieldError;
use crate::foundation::measure::{Dimension, Exact};

/// Decimals to which amounts are compared.
const COMPARED: u32 = 6;

/// Something that was counted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Counted {
    /// What it is.
    pub goods: Goods,
    /// In which dimension it was counted.
    pub dimension: Dimension,
    /// How much there is, in the base unit of the dimension.
    pub here: Exact,
}

/// What was counted of goods. Returns `None` if nobody counted them, or if the amount is out of
/// range.
pub fn counted(book: &Book, goods: Goods) -> Option<Counted> {
    let here = book.on_hand(goods)?.amount.measure().ok()?;
    Some(Counted { goods, dimension: here.dimension(), here: here.base() })
}

/// The goods that are needed, ingredients first, each by id.
fn goods_of(needs: &Needs) -> impl Iterator<Item = Goods> {
    let ingredients = needs.ingredients.iter().map(|needed| Goods::Ingredient(needed.ingredient));
    ingredients.chain(needs.packaging.iter().map(|(id, _)| Goods::Packaging(*id)))
}

/// How much of goods is needed as bought, in the base unit of a dimension; zero if none is needed.
///
/// # Errors
/// A [`YieldError`] if the ingredient lacks what it takes to convert to that dimension, or on
/// overflow.
pub fn needed(book: &Book, needs: &Needs, goods: Goods, dimension: Dimension) -> Result<Exact, YieldError> {
    match goods {
        Goods::Ingredient(id) => {
            let needed = needs.ingredients.iter().find(|needed| needed.ingredient == id);
            match (needed, book.ingredient_now(id)) {
                (Some(needed), Some(ingredient)) => needed.bought(&ingredient, dimension),
                _ => Ok(Exact::ZERO),
            }
        }
        Goods::Packaging(id) => {
            let pieces = needs.packaging.iter().find(|(of, _)| *of == id);
            Ok(pieces.map_or(Exact::ZERO, |(_, pieces)| *pieces))
        }
    }
}

/// Whether what is here is enough, compared to the millionth.
fn reaches(needed: Exact, here: Exact) -> bool {
    needed.rounded(COMPARED) <= here.rounded(COMPARED)
}

#[cfg(test)]
mod tests;
