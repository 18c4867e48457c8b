//! Shapes of cups and bottles: the volume up to a height, and the height of a volume.
//!
//! Heights and diameters are inside measures in millimetres, volumes are in millilitres. A height is
//! counted from the inner base, 0 to `H` at the rim; beyond these it counts as 0 or `H`.
//!
//! # Cups
//!
//! A tapered cup, the frustum of a cone ([`Frustum`]), is `d0` across at the base and `d1` at the rim:
//!
//! ```text
//! d(h) = d0 + (d1 - d0) * h / H
//! V(h) = pi * h / 12 * (d0^2 + d0 * d(h) + d(h)^2) / 1000
//! ```
//!
//! # Bottles
//!
//! A bottle ([`Pourings`]) is known by two or more readings of height and volume. Between two of them, and
//! between the empty base and the first, the volume is a cubic of the height (Fritsch and Butland, 1984).
//! Where two stretches of heights `h1`, `h2` and slopes `s1`, `s2` (mL per mm) meet, and at the outer end of
//! the stretch `h1`, the slope of the curve is
//!
//! ```text
//! inner: 3 * (h1 + h2) / ((h1 + 2 * h2) / s1 + (2 * h1 + h2) / s2)
//! outer: ((2 * h1 + h2) * s1 - h1 * s2) / (h1 + h2), at least 0
//! ```
//!
//! # The height of a volume
//!
//! [`level`] finds the height at which `V(h)` is a given volume by bisection, within a millionth of a
//! millimetre.
//!
//! ```
//! use brimwright::foundation::measure::{Exact, Length};
//! use brimwright::foundation::shape::{Frustum, Inside, level};
//!
//! let millimetres = |number: u32| Length::from_millimetres(Exact::from(number));
//! let cup = Frustum { base: millimetres(60), rim: millimetres(90), height: millimetres(120) };
//! // By hand: halfway up it is 75 mm across. 60 / 12 * (60^2 + 60 * 75 + 75^2) * pi
//! // = 68,625 * pi = 215,592 cubic millimetres.
//! let half = cup.volume_at(millimetres(60))?;
//! assert_eq!(half.millilitres().rounded(2), Exact::new(21_559, 2));
//! assert_eq!(level(&cup, half), Ok(millimetres(60)));
//! # Ok::<(), brimwright::foundation::measure::Overflow>(())
//! ```

mod frustum;
mod level;
mod outline;
mod pourings;

pub use frustum::Frustum;
pub use level::{Inside, LevelError, level};
pub use outline::outline;
pub use pourings::{Pouring, PouringError, Pourings};
