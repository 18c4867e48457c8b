//! Which sizes are worth selling (calculations, 7).

mod rows;
mod what_if;

pub use rows::{LeftOut, SideBySide, SizeRow, SoldSize, Step, Weights, side_by_side, sold_in, sold_together};
pub use what_if::{Draft, WhatIf, WhatIfError, target_of};
