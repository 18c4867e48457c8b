//! Sizes: the sizes of one drink side by side, per drink and per volume.

mod chart;
mod choose;
mod table;

pub use choose::Choose;
pub use table::SideBySide;
