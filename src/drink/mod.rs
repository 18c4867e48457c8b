//! A drink at a size: what goes in, what fits, what it costs, its price, its label, what making and
//! selling it takes.

pub mod cost;
pub mod fill;
pub mod gap;
pub mod label;
pub mod ledger;
pub mod make;
pub mod packaged;
pub mod price;
pub mod sales;
pub mod yields;
