//! What things cost: a usable amount of an ingredient, and a drink at a size.
//!
//! # A usable amount
//!
//! ```text
//! cost = (price + surcharge) * bought / contents
//! ```
//!
//! `price` is that of one pack, for as many packs as are bought at a time. `bought` is what the amount
//! takes as bought ([`crate::drink::yields`]), and `contents` what the pack holds, in the same unit. Of
//! several packs the first is the one that is bought now. [`usable_cost`] has an example.
//!
//! # A drink
//!
//! ```text
//! labour = wage / 3600 * (per drink + per litre * L / 1000 + per batch * L / batch volume)
//! goods  = ingredients + container set + treatment fee
//! cost   = (goods + labour) / (1 - unsold) / (1 - free) + overhead
//! ```
//!
//! `wage` is for an hour, the times are in seconds, and `L` is the fill in millilitres without ice that is put
//! into the glass. A batch without a volume counts drinks: `per batch / drinks in a batch`. `unsold` is the
//! share of what is made that is thrown away, `free` that of what is handed out that nobody pays for, both 0 or
//! more and below 1. Overhead is so much per drink sold, or that of a week over the drinks sold in one
//! ([`overhead()`]); overhead per drink made is raised by both shares with the rest. Each part is rounded once,
//! to twelve decimals, and [`Cost::total`] is exactly their sum.
//!
//! What of it a margin must cover is the book's [`CostBasis`](crate::book::CostBasis): the goods, the goods
//! and labour, or everything; each with what is thrown away or handed out free of its own parts
//! ([`Cost::covered`]).
//!
//! ```
//! use brimwright::drink::cost::not_paid;
//! use brimwright::foundation::measure::{Exact, Money, Share};
//!
//! // By hand: with a fifth thrown away, 4.00 grows to 4.00 / 0.8 = 5.00.
//! let (made, unsold) = (Money::from_major(Exact::from(4)), Share::from_fraction(Exact::new(2, 1)));
//! assert_eq!(not_paid(made, unsold), Ok(Money::from_major(Exact::ONE)));
//! ```

mod drink;
mod purchase;

pub use drink::{
    Cost, LineCost, PackagingCost, batch_time, cost, is_made, liquid, not_paid, overhead, overhead_for, unsold_share,
};
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
