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

// The builders of the tests, for the engine's own too.
#[cfg(test)]
extern crate self as brimwright;
#[cfg(test)]
#[path = "../tests/support/mod.rs"]
mod support;

pub mod app;
pub mod backup;
pub mod book;
pub mod buying;
pub mod counter;
pub mod drink;
pub mod exchange;
pub mod foundation;
pub mod sizes;
pub mod store;
pub mod words;
pub mod working;

#[cfg(target_arch = "wasm32")]
pub mod ui;
