//! At the counter: what is made on a day, and what is on hand.

pub mod batch;
pub mod on_hand;
