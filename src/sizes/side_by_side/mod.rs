//! Which sizes are worth selling (calculations, 7).

mod side_by_side;
mod what_if;

pub use side_by_side::{LeftOut, SideBySide, SizeRow, SoldSize, Step, Weights, side_by_side, sold_in, sold_together};
pub use what_if::{Draft, WhatIf, WhatIfError, target_of};
