//! Starting figures: what was brought with an ingredient from the starter list, until its owner confirms
//! or weighs it.

use std::borrow::Cow;
use std::fmt;

use serde::{Deserialize, Deserializer, Serialize, Serializer, de};

use super::Ingredient;
use crate::foundation::measure::{Density, Exact, STORED_PLACES, Share, stored_by_name};

/// What an ingredient was made from. It is stored as one text, since nothing but its own marks reads it:
/// `carrot; trim-yield 0.89 sr28; juice-density 1.04 assumed`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Starting {
    /// Its key in the starter list, without a semicolon.
    pub key: String,
    /// The figures that were brought and not confirmed yet, each kind at most once.
    pub figures: Vec<StartingFigure>,
}

/// A figure that was brought.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct StartingFigure {
    /// Which figure.
    pub figure: Figure,
    /// Its value as it was brought: a fraction, grams per millilitre or grams, above 0.
    pub value: Exact,
    /// Where it comes from.
    pub basis: Basis,
}

/// A figure of an ingredient that the starter list has.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Figure {
    /// [`Ingredient::trim_yield`].
    TrimYield,
    /// [`Ingredient::press_yield`].
    PressYield,
    /// [`Ingredient::density`].
    Density,
    /// [`Ingredient::juice_density`].
    JuiceDensity,
    /// [`Ingredient::piece_weight`].
    PieceWeight,
}

stored_by_name! {
    Figure {
        TrimYield = "trim-yield",
        PressYield = "press-yield",
        Density = "density",
        JuiceDensity = "juice-density",
        PieceWeight = "piece-weight",
    }
}

/// Where a starting figure comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Basis {
    /// USDA National Nutrient Database for Standard Reference, Release 28 (2015), or computed from it.
    Sr28,
    /// Assumed: a usual value of goods like it.
    Assumed,
    /// From memory of the trade, without a source.
    Memory,
}

stored_by_name! {
    Basis {
        Sr28 = "sr28",
        Assumed = "assumed",
        Memory = "from-memory",
    }
}

/// Stands before each figure.
const BEFORE_A_FIGURE: &str = "; ";

impl fmt::Display for Starting {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.key)?;
        for StartingFigure { figure, value, basis } in &self.figures {
            write!(f, "{BEFORE_A_FIGURE}{} {value} {}", figure.stored_name(), basis.stored_name())?;
        }
        Ok(())
    }
}

impl Starting {
    fn from_text(text: &str) -> Option<Starting> {
        let mut parts = text.split(BEFORE_A_FIGURE);
        let key = parts.next()?.to_string();
        let mut figures = Vec::new();
        for part in parts {
            let (figure, rest) = part.split_once(' ')?;
            let (value, basis) = rest.split_once(' ')?;
            figures.push(StartingFigure {
                figure: *Figure::ALL.iter().find(|known| known.stored_name() == figure)?,
                value: Exact::from_plain(value, STORED_PLACES)?,
                basis: *Basis::ALL.iter().find(|known| known.stored_name() == basis)?,
            });
        }
        Some(Starting { key, figures })
    }
}

impl Serialize for Starting {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for Starting {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Starting, D::Error> {
        let text = Cow::<'de, str>::deserialize(deserializer)?;
        Starting::from_text(&text).ok_or_else(|| de::Error::custom("not a key with its starting figures"))
    }
}

/// The key of a mark that no row of the starter list stands behind: shared figures were taken over one by one.
pub const ASSUMED: &str = "assumed";

impl Figure {
    /// The starting figure that all ingredients share, in grams per millilitre: 1.00 for what is puréed, 1.04 for
    /// juice. Both are assumed. Returns `None` for figures that each ingredient has of its own.
    pub const fn shared(self) -> Option<Exact> {
        match self {
            Figure::Density => Some(Exact::new(100, 2)),
            Figure::JuiceDensity => Some(Exact::new(104, 2)),
            Figure::TrimYield | Figure::PressYield | Figure::PieceWeight => None,
        }
    }
}

impl Ingredient {
    /// Takes the starting figure that all ingredients share over, and marks it so. Nothing else changes, and
    /// nothing at all where a figure stands already.
    pub fn take_shared(&mut self, figure: Figure) {
        let Some(value) = figure.shared().filter(|_| self.figure(figure).is_none()) else { return };
        let density = Some(Density::from_grams_per_millilitre(value));
        match figure {
            Figure::Density => self.density = density,
            Figure::JuiceDensity => self.juice_density = density,
            Figure::TrimYield | Figure::PressYield | Figure::PieceWeight => return,
        }
        let starting = self.starting.get_or_insert_with(|| Starting { key: ASSUMED.to_string(), figures: Vec::new() });
        starting.figures.retain(|brought| brought.figure != figure);
        starting.figures.push(StartingFigure { figure, value, basis: Basis::Assumed });
    }

    /// A figure as it stands now: a fraction, grams per millilitre or grams.
    pub fn figure(&self, figure: Figure) -> Option<Exact> {
        match figure {
            Figure::TrimYield => Some(self.trim_yield.fraction()),
            Figure::PressYield => self.press_yield.map(Share::fraction),
            Figure::Density => self.density.map(|density| density.grams_per_millilitre()),
            Figure::JuiceDensity => self.juice_density.map(|density| density.grams_per_millilitre()),
            Figure::PieceWeight => self.piece_weight.map(|weight| weight.grams()),
        }
    }

    /// The figures that still stand as they were brought, in the order of [`Figure`]. One that was typed anew,
    /// weighed or confirmed is none of them.
    pub fn starting_figures(&self) -> impl Iterator<Item = StartingFigure> + '_ {
        let brought = self.starting.iter().flat_map(|starting| &starting.figures);
        brought.copied().filter(|brought| self.figure(brought.figure) == Some(brought.value))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::{density, ingredient};

    #[test]
    fn a_shared_figure_is_taken_where_none_stands() {
        let mut bare = Ingredient { density: None, ..ingredient(1, []) };
        bare.take_shared(Figure::Density);
        bare.take_shared(Figure::PieceWeight);
        assert_eq!(bare.density, Some(density("1")));
        let marked: Vec<_> = bare.starting_figures().map(|it| (it.figure, it.basis)).collect();
        assert_eq!(marked, [(Figure::Density, Basis::Assumed)]);
        assert_eq!(bare.starting.as_ref().map(|it| it.key.as_str()), Some(ASSUMED));
        bare.take_shared(Figure::JuiceDensity);
        assert_eq!((bare.juice_density, bare.starting_figures().count()), (Some(density("1.04")), 2));
        // What was weighed stays, and is no starting figure.
        bare.density = Some(density("0.95"));
        bare.take_shared(Figure::Density);
        assert_eq!((bare.density, bare.starting_figures().count()), (Some(density("0.95")), 1));
    }
}
