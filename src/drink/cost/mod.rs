//! What things cost: a usable amount of an ingredient, and a drink at a size
//! (calculations, 2 and 5).

mod drink;
mod purchase;

pub use drink::{Cost, LineCost, PackagingCost, cost, thrown_away, unsold_share};
pub use purchase::{bought_cost, paid, paid_each, paid_for, piece_cost, usable_cost};

use crate::book::{Goods, Key};
use crate::drink::yields::YieldError;
use crate::foundation::measure::Overflow;

/// Why something has no cost.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CostError {
    /// No pack is known that these goods are bought in.
    NoPack(Goods),
    /// A record is missing.
    Missing(Key),
    /// An ingredient lacks something.
    Yield(YieldError),
    /// The numbers leave the range that can be computed.
    Arithmetic(Overflow),
}

impl From<Overflow> for CostError {
    fn from(overflow: Overflow) -> CostError {
        CostError::Arithmetic(overflow)
    }
}

impl From<YieldError> for CostError {
    fn from(error: YieldError) -> CostError {
        CostError::Yield(error)
    }
}
