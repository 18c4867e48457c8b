//! Whole books kept to go back to: restore points and deleted books, how old the last copy is, and
//! which books there should be.

pub mod copies;
pub mod noted_books;
pub mod restore_points;
