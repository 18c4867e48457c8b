//! Which sizes to sell: side by side, one in place of another, how many, below a price, beside the
//! local market, and whether a change paid.

pub mod market;
pub mod plan;
pub mod price_point;
pub mod side_by_side;
pub mod switching;
pub mod trial;
