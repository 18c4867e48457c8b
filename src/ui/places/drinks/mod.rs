//! Drinks: every drink with its sizes, price, cost and margin against target.

mod amounts;
mod back;
mod change;
mod drink;
mod filling;
mod gap;
mod keeping;
mod label;
mod labor;
mod line;
mod list;
mod making;
mod menu;
mod offer;
mod packaged;
mod recipe;
mod weekly;
mod working;

pub use drink::DrinkPage;
pub use line::{LIQUID_FIRST, Lacks, choose_stage, likely_stage};
pub use list::List;
pub use offer::{OfferPage, answer, lacks};
pub use packaged::PackagedPage;
pub use working::WorkingPage;
