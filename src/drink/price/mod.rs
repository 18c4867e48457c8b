//! From a margin to a price, and back (calculations, 6).

mod back;
mod ending;
mod terms;

pub use back::{Ceiling, ceiling, largest_fill, our_price, shelf_price};
pub use ending::round_up;
pub use terms::{Asked, PriceError, Suggestion, Terms, asked, suggest};
