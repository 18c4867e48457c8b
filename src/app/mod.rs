//! What the app knows without a browser: no screen, no clock, no storage, so that native tests
//! reach it.

pub mod copies;
pub mod history;
pub mod last_change;
pub mod library;
pub mod noted_books;
pub mod restore_points;
pub mod route;
pub mod unfinished;
