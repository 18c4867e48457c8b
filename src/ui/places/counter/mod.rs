//! Counter: recipe cards per drink and size, to be read from a metre away. No prices here.

mod card;
mod choose;

pub use card::Card;
pub use choose::Choose;
