//! Shapes of cups and bottles: the volume up to a height, and the height of a volume (calculations, 3).

mod frustum;
mod level;
mod outline;
mod pourings;

pub use frustum::Frustum;
pub use level::{Inside, LevelError, level};
pub use outline::outline;
pub use pourings::{Pouring, PouringError, Pourings};
