//! The first minutes of a new book: questions about the shop, then one way to the first price.

mod amounts;
mod frame;
mod ingredients;
mod next;
mod price;
mod shop;
mod size;

pub use frame::first_price;
pub use shop::Shop;
