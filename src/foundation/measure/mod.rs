//! Measures: exact numbers, distinct kinds of quantity, units, and how all of them are read and shown.
//!
//! This is the lowest module: it depends on no other.
//!
//! # Units
//!
//! Each unit has an exact size ([`Unit::size`]) in the base unit of its dimension: millilitres, grams or
//! pieces. Sources: NIST Handbook 44, Appendix C; UK Weights and Measures Act 1985, Schedule 1; NIST SP
//! 1038 for the metric cup and spoons.
//!
//! | unit | exact size |
//! |---|---|
//! | US fluid ounce | 29.5735295625 mL |
//! | US teaspoon, tablespoon, cup, pint, quart, gallon | 1/6, 1/2, 8, 16, 32, 128 US fluid ounces |
//! | imperial fluid ounce | 28.4130625 mL |
//! | imperial pint, gallon | 20, 160 imperial fluid ounces |
//! | metric teaspoon, tablespoon, cup | 5, 15, 250 mL |
//! | ounce, pound | 28.349523125 g, 453.59237 g |
//! | inch | 25.4 mm |
//!
//! A mass and a volume convert only by a [`Density`]; adding one to the other does not compile.
//!
//! # Rounding
//!
//! Sums, differences and products are exact while they fit in 28 digits; a quotient, or a product of
//! more digits, is rounded at the 28th, half to even. For all other rounding to the nearest there is one rule, half away from zero ([`Exact::rounded`]):
//!
//! - A computed part, such as what one line of a recipe costs, is rounded once, to 12 decimals
//!   ([`PART_PLACES`]). Its sums are then exact.
//! - A number is rounded when it is shown: money to the digits of its currency, shares to 0.1 %, volumes to
//!   1 mL or 0.1 fl oz (0.01 below one), masses to 1 g or 0.1 oz (0.01 lb or kg from one on), lengths to
//!   0.1 mm or 1/16 in, pieces to 0.01 unless they are halves, thirds or quarters. So the parts shown may differ from their sum shown; the parts
//!   themselves do not.
//!
//! ```
//! use brimwright::foundation::measure::{Currency, Exact, Money, NumberStyle, Unit, show_money};
//!
//! // A US gallon is 231 cubic inches (NIST Handbook 44, Appendix C); 2.54^3 = 16.387064.
//! let cubic_inch = Exact::new(16_387_064, 6);
//! assert_eq!(Unit::UsGallon.size(), cubic_inch.times(Exact::from(231))?);
//! assert_eq!(Unit::UsGallon.size(), Unit::UsFluidOunce.size().times(Exact::from(128))?);
//!
//! let money = |thousandths| Money::from_major(Exact::new(thousandths, 3));
//! let style = NumberStyle::english("$");
//! assert_eq!(show_money(money(12_345), Currency::USD, &style), "$12.35");
//! assert_eq!(show_money(money(-12_345), Currency::USD, &style), "−$12.35");
//! # Ok::<(), brimwright::foundation::measure::Overflow>(())
//! ```

mod amount;
mod currency;
mod date;
mod exact;
mod fraction;
mod length;
mod month;
mod named;
mod per;
mod quantity;
mod read;
mod show;
mod step;
mod style;
mod temperature;
mod time;
mod unit;
mod unseen;
mod water;

pub use amount::Amount;
pub use currency::Currency;
pub use date::Date;
pub(crate) use exact::STORED_PLACES;
pub use exact::{Exact, INTEGER_DIGITS, MOST_PLACES, Overflow, PART_PLACES, TYPED_PLACES};
pub use fraction::{show_inches, show_pieces};
pub use length::{LengthUnit, TypedLength};
pub use month::Month;
pub(crate) use named::{read_by_name, stored_by_name};
pub use per::read_density;
pub use quantity::{Count, Density, Length, Mass, Money, Share, Time, Volume};
pub use read::{
    ReadError, Wanted, both_readings, grouped_or_decimal, read_amount, read_change, read_endings, read_length,
    read_number, read_temperature,
};
pub use show::{
    show_amount, show_count, show_fill, show_fine_volume, show_length, show_mass, show_money, show_number,
    show_percent, show_percentage, show_short_percent, show_temperature, show_typed_length, show_volume,
};
pub use step::{nearest_step, next_step, whole_steps};
pub use style::{NumberStyle, Parts};
pub use temperature::{Scale, Temperature};
pub use time::{read_time, show_time};
pub use unit::{Dimension, Measure, System, Unit};
pub use unseen::{is_seen, is_unseen};
pub use water::{WARMEST, water_density};
