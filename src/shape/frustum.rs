//! stand-in until the geometry lands
use crate::measure::{Exact, Length, Overflow, Volume};
/// Tapered cup.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Frustum {
    /// Diameter of the base.
    pub base: Length,
    /// Diameter of the rim.
    pub rim: Length,
    /// Height.
    pub height: Length,
}
impl Frustum {
    /// Volume.
    pub fn volume(&self) -> Result<Volume, Overflow> {
        let (d, e) = (self.base.millimetres(), self.rim.millimetres());
        let sum = d.times(d)?.plus(d.times(e)?)?.plus(e.times(e)?)?;
        let pi = Exact::new(3_141_592_653_589_793, 15);
        Ok(Volume::from_millilitres(
            sum.times(pi)?.times(self.height.millimetres())?.over(Exact::new(12_000, 0))?.as_part(),
        ))
    }
}
