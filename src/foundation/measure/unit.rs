//! Units that people type, with their exact sizes.
//!
//! Sizes: NIST Handbook 44 Appendix C; UK Weights and Measures Act 1985 Schedule 1. Metric cup
//! and spoons are the 250, 15 and 5 mL of NIST SP 1038.

use std::fmt;

use super::{Count, Exact, Mass, Overflow, Volume};

/// The kind of quantity that a unit measures.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Dimension {
    /// Volume; the base unit is the millilitre.
    Volume,
    /// Mass; the base unit is the gram.
    Mass,
    /// Count; the base unit is the piece.
    Count,
}

/// An amount in its base unit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Measure {
    /// A volume.
    Volume(Volume),
    /// A mass.
    Mass(Mass),
    /// A number of pieces.
    Count(Count),
}

impl Dimension {
    /// The measure of this number of its base unit: millilitres, grams or pieces.
    pub const fn measure(self, base: Exact) -> Measure {
        match self {
            Dimension::Volume => Measure::Volume(Volume::from_millilitres(base)),
            Dimension::Mass => Measure::Mass(Mass::from_grams(base)),
            Dimension::Count => Measure::Count(Count::from_pieces(base)),
        }
    }
}

impl Measure {
    /// The product with a plain number.
    ///
    /// # Errors
    /// [`Overflow`] if it leaves the range of [`Exact`].
    pub fn times(self, factor: Exact) -> Result<Measure, Overflow> {
        Ok(self.dimension().measure(self.base().times(factor)?))
    }

    /// The quotient by a plain number.
    ///
    /// # Errors
    /// [`Overflow`] if it leaves the range of [`Exact`], or if the divisor is zero.
    pub fn over(self, divisor: Exact) -> Result<Measure, Overflow> {
        Ok(self.dimension().measure(self.base().over(divisor)?))
    }

    /// The sum of two measures. Returns `None` if their dimensions differ.
    ///
    /// # Errors
    /// [`Overflow`] if it leaves the range of [`Exact`].
    pub fn plus(self, other: Measure) -> Result<Option<Measure>, Overflow> {
        if self.dimension() != other.dimension() {
            return Ok(None);
        }
        Ok(Some(self.dimension().measure(self.base().plus(other.base())?)))
    }

    /// The number in the dimension's base unit.
    pub fn base(self) -> Exact {
        match self {
            Measure::Volume(volume) => volume.millilitres(),
            Measure::Mass(mass) => mass.grams(),
            Measure::Count(count) => count.pieces(),
        }
    }

    /// Its dimension.
    pub fn dimension(self) -> Dimension {
        match self {
            Measure::Volume(_) => Dimension::Volume,
            Measure::Mass(_) => Dimension::Mass,
            Measure::Count(_) => Dimension::Count,
        }
    }
}

/// The system of units in which a book is shown and typed. It never changes what is stored.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum System {
    /// US customary units: pounds, US fluid ounces.
    #[default]
    UsCustomary,
    /// Grams and millilitres.
    Metric,
    /// Pounds, imperial fluid ounces and pints.
    Imperial,
}

super::stored_by_name! {
    System {
        UsCustomary = "us-customary",
        Metric = "metric",
        Imperial = "imperial",
    }
}

macro_rules! units {
    ($($(#[$about:meta])* $name:ident = $symbol:literal, $dimension:ident, $mantissa:literal, $places:literal;)*) => {
        /// A unit of volume, mass or count.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum Unit { $($(#[$about])* $name,)* }

        impl Unit {
            /// Every unit.
            pub const ALL: &[Unit] = &[$(Unit::$name,)*];

            /// How it is written in a book and on the screen.
            pub const fn symbol(self) -> &'static str {
                match self { $(Unit::$name => $symbol,)* }
            }

            /// What it measures.
            pub const fn dimension(self) -> Dimension {
                match self { $(Unit::$name => Dimension::$dimension,)* }
            }

            /// Its exact size in millilitres, grams or pieces.
            pub const fn size(self) -> Exact {
                match self { $(Unit::$name => Exact::new($mantissa, $places),)* }
            }
        }
    };
}

units! {
    /// 1 mL.
    Millilitre = "mL", Volume, 1, 0;
    /// 10 mL.
    Centilitre = "cL", Volume, 10, 0;
    /// 1000 mL.
    Litre = "L", Volume, 1000, 0;
    /// 29.5735295625 mL.
    UsFluidOunce = "fl oz", Volume, 295735295625, 10;
    /// A sixth of a US fluid ounce.
    UsTeaspoon = "tsp", Volume, 492892159375, 11;
    /// Half a US fluid ounce.
    UsTablespoon = "tbsp", Volume, 1478676478125, 11;
    /// 8 US fluid ounces.
    UsCup = "cup", Volume, 2365882365, 7;
    /// 16 US fluid ounces.
    UsPint = "pt", Volume, 473176473, 6;
    /// 32 US fluid ounces.
    UsQuart = "qt", Volume, 946352946, 6;
    /// 128 US fluid ounces.
    UsGallon = "gal", Volume, 3785411784, 6;
    /// 28.4130625 mL.
    ImperialFluidOunce = "imp fl oz", Volume, 284130625, 7;
    /// 20 imperial fluid ounces.
    ImperialPint = "imp pt", Volume, 56826125, 5;
    /// 160 imperial fluid ounces.
    ImperialGallon = "imp gal", Volume, 454609, 2;
    /// 250 mL.
    MetricCup = "metric cup", Volume, 250, 0;
    /// 15 mL.
    MetricTablespoon = "metric tbsp", Volume, 15, 0;
    /// 5 mL.
    MetricTeaspoon = "metric tsp", Volume, 5, 0;
    /// 1 g.
    Gram = "g", Mass, 1, 0;
    /// 1000 g.
    Kilogram = "kg", Mass, 1000, 0;
    /// 28.349523125 g.
    Ounce = "oz", Mass, 28349523125, 9;
    /// 453.59237 g.
    Pound = "lb", Mass, 45359237, 5;
    /// One piece.
    Piece = "ea", Count, 1, 0;
}

impl Unit {
    /// The unit written with exactly this symbol in a book.
    pub fn from_symbol(symbol: &str) -> Option<Unit> {
        Unit::ALL.iter().copied().find(|unit| unit.symbol() == symbol)
    }

    /// How it is written for people who use `system`: its symbol, with "US" before it if the symbol alone
    /// would mean another unit to them ("US pt" in an imperial book).
    pub const fn name_in(self, system: System) -> &'static str {
        match (self, system) {
            (Unit::UsTeaspoon, System::Metric | System::Imperial) => "US tsp",
            (Unit::UsTablespoon, System::Metric | System::Imperial) => "US tbsp",
            (Unit::UsCup, System::Metric | System::Imperial) => "US cup",
            (Unit::UsFluidOunce, System::Imperial) => "US fl oz",
            (Unit::UsPint, System::Imperial) => "US pt",
            (Unit::UsQuart, System::Imperial) => "US qt",
            (Unit::UsGallon, System::Imperial) => "US gal",
            (unit, _) => unit.symbol(),
        }
    }

    /// How people who use `system` type it so that every field reads it. A plain "oz" could be a fluid
    /// ounce, so that the one by weight is "oz wt".
    pub const fn typed_in(self, system: System) -> &'static str {
        match self {
            Unit::Ounce => "oz wt",
            unit => unit.name_in(system),
        }
    }

    /// Whether people who use `system` measure in this unit. Pieces belong to every system.
    pub const fn belongs_to(self, system: System) -> bool {
        match self {
            Unit::Piece => true,
            Unit::Ounce | Unit::Pound => matches!(system, System::UsCustomary | System::Imperial),
            Unit::UsFluidOunce
            | Unit::UsTeaspoon
            | Unit::UsTablespoon
            | Unit::UsCup
            | Unit::UsPint
            | Unit::UsQuart
            | Unit::UsGallon => matches!(system, System::UsCustomary),
            Unit::ImperialFluidOunce | Unit::ImperialPint | Unit::ImperialGallon => matches!(system, System::Imperial),
            Unit::MetricCup | Unit::MetricTablespoon | Unit::MetricTeaspoon => {
                matches!(system, System::Metric | System::Imperial)
            }
            Unit::Millilitre | Unit::Centilitre | Unit::Litre | Unit::Gram | Unit::Kilogram => {
                matches!(system, System::Metric)
            }
        }
    }

    /// Whether it is a spoon.
    pub const fn is_a_spoon(self) -> bool {
        matches!(self, Unit::UsTeaspoon | Unit::UsTablespoon | Unit::MetricTeaspoon | Unit::MetricTablespoon)
    }

    /// This number of the unit, in the base unit.
    ///
    /// # Errors
    /// [`Overflow`] if it leaves the range of [`Exact`].
    pub fn measure(self, number: Exact) -> Result<Measure, Overflow> {
        Ok(self.dimension().measure(number.times(self.size())?))
    }
}

impl fmt::Display for Unit {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.symbol())
    }
}

impl System {
    /// The unit for sizes of drinks and containers.
    pub const fn drink_unit(self) -> Unit {
        match self {
            System::UsCustomary => Unit::UsFluidOunce,
            System::Metric => Unit::Millilitre,
            System::Imperial => Unit::ImperialFluidOunce,
        }
    }

    /// The unit for small weights, as in a recipe.
    pub const fn weight_unit(self) -> Unit {
        match self {
            System::UsCustomary | System::Imperial => Unit::Ounce,
            System::Metric => Unit::Gram,
        }
    }

    /// The unit for weights as they are bought.
    pub const fn buying_weight_unit(self) -> Unit {
        match self {
            System::UsCustomary | System::Imperial => Unit::Pound,
            System::Metric => Unit::Kilogram,
        }
    }

    /// The name of [`System::price_volume`].
    pub const fn price_volume_name(self) -> &'static str {
        match self {
            System::UsCustomary | System::Imperial => "fl oz",
            System::Metric => "100 mL",
        }
    }

    /// The volume for which prices of drinks are compared: 1 fl oz, or 100 mL.
    pub const fn price_volume(self) -> Volume {
        match self {
            System::UsCustomary => Volume::from_millilitres(Unit::UsFluidOunce.size()),
            System::Metric => Volume::from_millilitres(Exact::new(100, 0)),
            System::Imperial => Volume::from_millilitres(Unit::ImperialFluidOunce.size()),
        }
    }
}
