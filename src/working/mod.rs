//! How each computed number came about: a small tree of steps, for the screen, the printed
//! report and the tests alike.
//!
//! Figures are the engine's own; the tree says how they hang together. A step that is itself a
//! number that can be opened stands in it as a reference ([`Rule::Opens`]), so that trees stay
//! small and nothing is worked out twice.

mod container;
mod cost;
mod name;
mod opened;
mod packages;
mod price;
mod purchase;
mod recipe;
mod shown;
mod sizes;
mod step;

pub use name::{Name, OfGoods};
pub use opened::{of, opened};
pub use shown::{AtPrice, OfOffer, OfPackaged, OfPrice, OfSize, Shown};
pub use step::{Fact, Figure, Rule, Step};
