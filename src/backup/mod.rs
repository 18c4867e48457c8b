//! Backups: restore points and deleted books, the age of the last copy, and the books that should be here.

pub mod copies;
pub mod noted_books;
pub mod restore_points;
