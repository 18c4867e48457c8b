//! Sizes: which are worth selling, and whether a change of them worked.

pub(super) mod asked;
mod by_drink;
mod chart;
mod choose;
mod how_many;
mod market;
mod price_point;
mod questions;
mod sales;
mod sales_week;
mod scenarios;
mod seen_entry;
mod seen_prices;
mod seen_row;
mod side_by_side;
mod switching;
mod tables;
mod till;
mod trial_shown;
mod trials;
mod trying;
mod what_if;

pub use how_many::HowMany;
pub use price_point::PricePoint;
pub use questions::Questions;
pub use sales::Sales;
pub use sales_week::SalesWeek;
pub use scenarios::{ScenarioPage, Scenarios};
pub use seen_prices::SeenPrices;
pub use side_by_side::SideBySide;
pub use switching::Switching;
pub use trials::{TrialPage, Trials};
