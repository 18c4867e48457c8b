//! Measures: exact numbers, distinct kinds of quantity, units, and how all of them are read and shown.
//!
//! This is the lowest module: it depends on no other.

mod amount;
mod currency;
mod date;
mod exact;
mod length;
mod named;
mod quantity;
mod read;
mod show;
mod step;
mod style;
mod temperature;
mod unit;
mod unseen;
mod water;

pub use amount::Amount;
pub use currency::Currency;
pub use date::Date;
pub use exact::{Exact, INTEGER_DIGITS, MOST_PLACES, Overflow, PART_PLACES, TYPED_PLACES};
pub use length::{LengthUnit, TypedLength};
pub(crate) use named::{read_by_name, stored_by_name};
pub use quantity::{Count, Density, Length, Mass, Money, Share, Time, Volume};
pub use read::{
    ReadError, Wanted, both_readings, read_amount, read_change, read_endings, read_length, read_number,
    read_temperature,
};
pub use show::{
    show_amount, show_count, show_fill, show_fine_volume, show_length, show_mass, show_measure, show_money,
    show_number, show_percent, show_temperature, show_volume,
};
pub use step::{nearest_step, next_step, whole_steps};
pub use style::NumberStyle;
pub use temperature::{Scale, Temperature};
pub use unit::{Dimension, Measure, System, Unit};
pub use unseen::{is_seen, is_unseen};
pub use water::{WARMEST, water_density};
