//! The distinct kinds of quantity. Adding a mass to a volume does not compile.

use serde::{Deserialize, Serialize};

use super::{Exact, Overflow, PART_PLACES};

macro_rules! quantity {
    ($(#[$about:meta])* $name:ident, $from:ident, $get:ident) => {
        $(#[$about])*
        #[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
        #[serde(transparent)]
        pub struct $name(Exact);

        impl $name {
            /// Zero.
            pub const ZERO: $name = $name(Exact::ZERO);

            /// The quantity of this number of its base unit.
            pub const fn $from(number: Exact) -> $name {
                $name(number)
            }

            /// The number in its base unit.
            pub const fn $get(self) -> Exact {
                self.0
            }

            /// The sum.
            ///
            /// # Errors
            /// [`Overflow`] if it leaves the range of [`Exact`].
            pub fn plus(self, other: $name) -> Result<$name, Overflow> {
                self.0.plus(other.0).map($name)
            }

            /// The difference.
            ///
            /// # Errors
            /// [`Overflow`] if it leaves the range of [`Exact`].
            pub fn minus(self, other: $name) -> Result<$name, Overflow> {
                self.0.minus(other.0).map($name)
            }

            /// The product with a plain number.
            ///
            /// # Errors
            /// [`Overflow`] if it leaves the range of [`Exact`].
            pub fn times(self, factor: Exact) -> Result<$name, Overflow> {
                self.0.times(factor).map($name)
            }

            /// The quotient by a plain number.
            ///
            /// # Errors
            /// [`Overflow`] if it leaves the range of [`Exact`], or if the divisor is zero.
            pub fn over(self, divisor: Exact) -> Result<$name, Overflow> {
                self.0.over(divisor).map($name)
            }

            /// How many times `other` it is.
            ///
            /// # Errors
            /// [`Overflow`] if that leaves the range of [`Exact`], or if `other` is zero.
            pub fn ratio_to(self, other: $name) -> Result<Exact, Overflow> {
                self.0.over(other.0)
            }

            /// Whether it is above zero.
            pub fn is_positive(self) -> bool {
                self.0.is_positive()
            }

            /// Whether it is below zero.
            pub fn is_negative(self) -> bool {
                self.0.is_negative()
            }

            /// Whether it is zero.
            pub fn is_zero(&self) -> bool {
                self.0.is_zero()
            }

            /// Rounded to [`PART_PLACES`] decimals, as every computed part is.
            pub fn as_part(self) -> $name {
                $name(self.0.as_part())
            }
        }
    };
}

quantity! {
    /// A volume in millilitres.
    Volume, from_millilitres, millilitres
}
quantity! {
    /// A length in millimetres.
    Length, from_millimetres, millimetres
}
quantity! {
    /// A mass in grams.
    Mass, from_grams, grams
}
quantity! {
    /// A number of pieces.
    Count, from_pieces, pieces
}
quantity! {
    /// An amount of money in the major unit of the book's currency.
    Money, from_major, major
}
quantity! {
    /// A time in seconds.
    Time, from_seconds, seconds
}
quantity! {
    /// A share of a whole, as a fraction: 0.65 is 65 %.
    Share, from_fraction, fraction
}
quantity! {
    /// A density in grams per millilitre.
    Density, from_grams_per_millilitre, grams_per_millilitre
}

impl Volume {
    /// Rounded up to [`PART_PLACES`] decimals.
    ///
    /// # Errors
    /// [`Overflow`] if that leaves the range of [`Exact`].
    pub fn rounded_up(self) -> Result<Volume, Overflow> {
        self.0.rounded_up(PART_PLACES).map(Volume)
    }
}

impl Share {
    /// The whole: 100 %.
    pub const WHOLE: Share = Share(Exact::ONE);

    /// All of it, where a stored record leaves it out.
    pub const fn whole() -> Share {
        Share::WHOLE
    }

    /// What is left of the whole: 1 less the share.
    ///
    /// # Errors
    /// [`Overflow`] if it leaves the range of [`Exact`].
    pub fn rest(self) -> Result<Share, Overflow> {
        Share::WHOLE.minus(self)
    }

    /// The share in percent.
    ///
    /// # Errors
    /// [`Overflow`] if it leaves the range of [`Exact`].
    pub fn percent(self) -> Result<Exact, Overflow> {
        self.0.times(Exact::new(100, 0))
    }
}

impl Density {
    /// The mass of a volume.
    ///
    /// # Errors
    /// [`Overflow`] if it leaves the range of [`Exact`].
    pub fn mass_of(self, volume: Volume) -> Result<Mass, Overflow> {
        volume.0.times(self.0).map(Mass)
    }

    /// The volume of a mass.
    ///
    /// # Errors
    /// [`Overflow`] if it leaves the range of [`Exact`], or if the density is zero.
    pub fn volume_of(self, mass: Mass) -> Result<Volume, Overflow> {
        mass.0.over(self.0).map(Volume)
    }
}

impl Time {
    /// The pay for this time at an hourly wage.
    ///
    /// # Errors
    /// [`Overflow`] if it leaves the range of [`Exact`].
    pub fn paid_at(self, hourly: Money) -> Result<Money, Overflow> {
        hourly.0.times(self.0)?.over(Exact::new(3600, 0)).map(Money)
    }
}
