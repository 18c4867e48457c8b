//! A till's list of sales, as CSV: read, matched with the menu, and taken in as weeks.

mod day;
mod rows;
mod take;
#[cfg(test)]
mod tests;

pub use day::{DayOrder, Days};
pub use rows::{Row, Table, TillError, read_table};
pub use take::{BadRow, Taken, TakenWeek, Till, Why, take};
