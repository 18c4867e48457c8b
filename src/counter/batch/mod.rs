//! What is made on a day: the plan, what of it is done, and the sheet to work from.
//!
//! The sheet goes back from the drinks to what is weighed out, for each ingredient and stage:
//!
//! ```text
//! in the drinks = sum of (number * amount to use)
//! as bought     = by the yields, see crate::drink::yields
//! trimmed       = as bought * trim yield
//! ```
//!
//! Each amount is rounded up to the step of the scale or of the jugs, so that there is never too little; what
//! that would raise by more than a quarter is rounded up to a finer step. Pieces are whole. A usual day
//! ([`usual_day`]) is a seventh of what is sold in a usual week, rounded up, of the drinks that are made ahead
//! ([`is_made_ahead`]).
//!
//! By hand: 7 drinks of 300 mL of juice at 1.05 g/mL are 2100 mL, 2205 g; at a press yield of 0.5 of 4410 g
//! trimmed, at a trim yield of 0.8 of 5512.5 g bought, 5515 g in steps of 5 g. `src/counter/batch/tests.rs` has
//! this case.

mod plan;
mod sheet;

pub use plan::{
    again, begun, deleted, filled, is_made_ahead, made, on_shelf, planned, ready, taken_off, takes_up, to_take_off,
    usual_day, without,
};
pub use sheet::{Portion, Sheet, Station, Weighed, least_step, sheet};

#[cfg(test)]
mod tests;
