//! Counter: recipe cards per drink and size, to be read from a metre away; batches, and what is
//! here. No prices.

mod batch;
mod batches;
mod best;
mod card;
mod choose;
mod on_hand;
mod tabs;

pub use batch::BatchPage;
pub use batches::Batches;
pub use card::Card;
pub use choose::Choose;
pub use on_hand::OnHand;
