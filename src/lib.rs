//! Brimwright: size, cost and price the drinks of a juice and smoothie bar.
#![cfg_attr(
    not(test),
    deny(
        clippy::unwrap_used,
        clippy::expect_used,
        clippy::panic,
        clippy::indexing_slicing,
        clippy::arithmetic_side_effects
    )
)]

pub mod book;
pub mod cost;
pub mod fill;
pub mod ledger;
pub mod measure;
pub mod price;
pub mod sizes;
pub mod store;
pub mod words;
pub mod yields;

#[cfg(target_arch = "wasm32")]
pub mod ui;
