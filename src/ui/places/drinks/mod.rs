//! Drinks: every drink with its sizes, price, cost and margin against target.

mod amounts;
mod back;
mod change;
mod drink;
mod filling;
mod gap;
mod keeping;
mod label;
mod line;
mod list;
mod menu;
mod offer;
mod packaged;
mod recipe;
mod weekly;
mod working;

pub use drink::DrinkPage;
pub use list::List;
pub use offer::OfferPage;
pub use packaged::PackagedPage;
pub use working::WorkingPage;
