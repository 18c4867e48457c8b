//! Buying: ingredients, packaging and containers, with packs and prices.

mod allergens;
mod buying_list;
mod change;
mod compared;
mod container;
mod containers;
mod headspace;
mod heard;
mod holds;
mod ingredient;
mod packaging;
mod packaging_set;
mod packs;
mod price_watch;
mod prices_heard;
mod produce;
mod quick;
mod readings;
mod shared;
mod stands;
mod tabs;
mod tiers;
mod todays_changes;
mod tolerances;
mod usable;
mod uses;
mod yield_log;

pub use buying_list::BuyingListPage;
pub use container::ContainerPage;
pub use containers::Containers;
pub use ingredient::IngredientPage;
pub use packaging::PackagingPage;
pub use packaging_set::PackagingSetPage;
pub use price_watch::PriceWatch;
pub use quick::QuickPrice;
pub use yield_log::YieldLog;
