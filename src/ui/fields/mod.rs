//! Fields: where people type. Typing is never blocked; an error stands beside the field in
//! words, and the last good value stays in force.
//!
//! An [`Entry`] puts each readable text in force at once, and one visit to a field is one step to
//! undo. What may not be meant is asked about ([`asks`]). What a field with units hands on always
//! has its unit. A new thing is typed into a [`Draft`]: it starts empty and is in the book, as one
//! step, once it lacks nothing. No answer stands beside an error: a field is given the [`Hangs`] of
//! the answers that depend on it.

mod ask;
mod asked;
mod choice;
mod commit;
mod day;
mod draft;
mod entering;
mod entry;
mod hangs;
mod readings;
mod search;
mod slider;
mod tick;
mod units;

pub use ask::{Ask, asked_number, asked_price};
pub use asked::{Asks, asks};
pub use choice::{Choice, Choose};
pub use commit::{
    Commit, Take, amount, count, length, loose_amount, loose_length, money, optional_amount, optional_count,
    optional_density, optional_labor_per_volume, optional_money, optional_number, optional_percent, optional_ph,
    optional_temperature, optional_time, percent, text, tried_amount, tried_change, tried_number,
};
pub use day::Day;
pub use draft::{Addition, Draft, Typed, begun};
pub use entering::hear_entering;
pub use entry::Entry;
pub use hangs::Hangs;
pub use search::Search;
pub use slider::{Range, Slid, Slider, Try};
pub use tick::Tick;
pub use units::{length_units, units};

pub use crate::words::Example;
pub use crate::words::unfinished::{Field, NewThing};
