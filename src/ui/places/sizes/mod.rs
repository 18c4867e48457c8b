//! Sizes: which are worth selling, and whether a change of them worked.

pub(super) mod asked;
mod by_drink;
mod chart;
mod choose;
mod decision;
mod home;
mod how_many;
mod market;
mod over_time;
mod price_point;
mod remembered;
mod retention;
mod sales;
mod sales_week;
mod scenarios;
mod seen_entry;
mod seen_prices;
mod seen_row;
mod side_by_side;
mod tables;
mod till;
mod trial_shown;
mod trials;
mod tried_out;
mod trying;
mod what_if;

pub use decision::{Asking, DecisionPage, facts as decision_facts};
pub use home::Home;
pub use how_many::HowMany;
pub use price_point::PricePoint;
pub use sales::Sales;
pub use sales_week::SalesWeek;
pub use scenarios::{ScenarioPage, Scenarios};
pub use seen_prices::SeenPrices;
pub use side_by_side::SideBySide;
pub use trials::{TrialPage, Trials};
