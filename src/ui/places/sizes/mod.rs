//! Sizes: which are worth selling, and whether a change of them worked.

mod chart;
mod choose;
mod how_many;
mod price_point;
mod questions;
mod sales;
mod scenarios;
mod seen_prices;
mod side_by_side;
mod switching;
mod tables;
mod trials;
mod trying;
mod what_if;

pub use how_many::HowMany;
pub use price_point::PricePoint;
pub use questions::Questions;
pub use sales::{Sales, SalesWeek};
pub use scenarios::{ScenarioPage, Scenarios};
pub use seen_prices::SeenPrices;
pub use side_by_side::SideBySide;
pub use switching::Switching;
pub use trials::{TrialPage, Trials};
