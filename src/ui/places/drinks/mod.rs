//! Drinks: every drink with its sizes, price, cost and margin against target.

mod amounts;
mod back;
mod change;
mod drink;
mod line;
mod list;
mod offer;
mod recipe;

pub use drink::DrinkPage;
pub use list::List;
pub use offer::OfferPage;
