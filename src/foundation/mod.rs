//! What everything else builds on: exact numbers, how they are read and shown, estimates, shapes of
//! containers, and small rules that know nothing of drinks.

pub mod bisection;
pub mod in_order;
pub mod jump;
pub mod lock;
pub mod measure;
pub mod plot;
pub mod shape;
pub mod statistics;
