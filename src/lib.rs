//! Brimwright: size, cost and price the drinks of a juice and smoothie bar.

#[cfg(target_arch = "wasm32")]
pub mod ui;
