//! Sizes side by side: which are worth selling, and what if prices, fills or costs were others.
//!
//! Of one drink the figures of a size are its own. Of a kind or of the whole menu they are means over the
//! drinks that are sold, computed and priced in all the sizes, weighed by what is sold of each in a week:
//! `sum of (weight * x) / sum of weights`. All weights are one if no sales are known.
//!
//! ```text
//! per volume           = x * v / F
//! per minute           = contribution / (hands' time / 60)
//! margin               = sum of (weight * E * m) / sum of (weight * E)
//! against the smallest = price per volume / price per volume of the smallest size that has a price
//! share kept of a step = (contribution of the larger - of the smaller) / (R of the larger - of the smaller)
//! ```
//!
//! `F` is the fill, `v` 1 fl oz or 100 mL, `R` the price without tax, `E` what is paid of it on average, and
//! `m` the margin of a drink; the time is in seconds. Nothing is kept of a price without tax that does not rise.
//!
//! By hand: 250 mL at 4.00 that cost 1.80 and 500 mL at 6.00 that cost 2.80, without tax, leave 2.20 and
//! 3.20. The prices are 1.60 and 1.20 per 100 mL: the larger asks 0.75 of what the smaller does. Of 2.00
//! more, 1.00 is kept: a half. `src/sizes/side_by_side/rows/tests.rs` has this case.

mod rows;
mod what_if;

pub use rows::{LeftOut, SideBySide, SizeRow, SoldSize, Step, Weights, side_by_side, sold_in, sold_together};
pub use what_if::{
    Change, Draft, MixError, NotOurs, Rise, Tried, Uses, Week, WhatIf, WhatIfError, mixed, target_of, waste_of, week,
};
