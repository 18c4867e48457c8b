//! Shapes of cups and bottles: how much they hold up to a height, and how high a volume stands.

mod frustum;

pub use frustum::Frustum;
