//! What the app knows without a browser: no screen, no clock, no storage, so that native tests
//! reach it.

pub mod history;
pub mod last_change;
pub mod library;
pub mod route;
pub mod unfinished;
