//! Shapes of cups and bottles: how much they hold up to a height, and how high a volume stands
//! (calculations, 3).

mod frustum;
mod level;
mod outline;
mod pourings;

pub use frustum::Frustum;
pub use level::{Inside, LevelError, level};
pub use outline::outline;
pub use pourings::{Pouring, PouringError, Pourings};
