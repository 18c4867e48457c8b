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
pub mod batch;
pub mod book;
pub mod buying_list;
pub mod cost;
pub mod exchange;
pub mod fill;
pub mod gap;
pub mod jump;
pub mod label;
pub mod ledger;
pub mod lock;
pub mod make;
pub mod market;
pub mod measure;
pub mod on_hand;
pub mod packaged;
pub mod plan;
pub mod plot;
pub mod price;
pub mod price_point;
pub mod price_watch;
pub mod quotes;
pub mod sales;
pub mod shape;
pub mod sizes;
pub mod statistics;
pub mod store;
pub mod switching;
pub mod trial;
pub mod words;
pub mod working;
pub mod yield_log;
pub mod yields;

#[cfg(target_arch = "wasm32")]
pub mod ui;
