//! What everything stands on: exact numbers and their reading and showing, estimates, shapes of
//! vessels, and small rules that know nothing of drinks.

pub mod bisection;
pub mod in_order;
pub mod jump;
pub mod lock;
pub mod measure;
pub mod plot;
pub mod shape;
pub mod statistics;
