//! Which sizes to sell: what would have to be true for a change to pay, side by side, below a price,
//! beside the local market, other menus, and whether a change paid.

pub mod decision;
pub mod market;
pub mod opening_stock;
pub mod price_point;
pub mod said;
pub mod scenario;
pub mod side_by_side;
pub mod trial;
