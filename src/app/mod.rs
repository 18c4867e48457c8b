//! What the app knows without a browser: no screen, no clock, no storage, so that native tests
//! reach it.

pub mod first_price;
pub mod history;
pub mod last_change;
pub mod library;
pub mod mend;
pub mod route;
pub mod shop;
pub mod unfinished;
