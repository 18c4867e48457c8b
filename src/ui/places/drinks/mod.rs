//! Drinks: every drink with its sizes, price, cost and margin against target.

mod back;
mod change;
mod drink;
mod list;
mod offer;
mod recipe;

pub use drink::DrinkPage;
pub use list::List;
pub use offer::OfferPage;
