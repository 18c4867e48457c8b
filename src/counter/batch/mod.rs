//! What is made on a day: the plan, what of it is done, and the sheet to work from
//! (calculations, 8).

mod plan;
mod sheet;

pub use plan::{
    again, begun, deleted, filled, made, on_shelf, planned, ready, taken_off, takes_up, to_take_off, usual_day, without,
};
pub use sheet::{Portion, Sheet, Station, Weighed, sheet};

#[cfg(test)]
mod tests;
