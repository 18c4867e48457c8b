//! The starter list: what is known of an ingredient before its owner has weighed anything.
//!
//! It lies in `public/starter/ingredients.txt`, a line for each ingredient, and is fetched when a name is first
//! typed. Whatever comes is held to be spoilt until every line has been read ([`List::read`]); without a list the
//! typing goes on. Each figure stands beside its [`Basis`]; `tests/reference/starter.rs` compares all of them
//! with the table that they were taken from, and that table with USDA SR28.
//!
//! # What picking a row brings
//!
//! - The trim yield, the weight of a piece, the density of what is poured or puréed. Fruit and vegetables of which
//!   no density is known puréed are assumed to have 1.00 g/mL.
//! - For what is usually pressed: the middle of the range of its juice yield, and 1.04 g/mL as assumed for its
//!   juice. What a recipe usually takes trimmed, such as strawberries, brings no juice yield: with one, its lines
//!   would be read as juice.
//! - What a level cup of a powder weighs is not its density in the drink, where its grains take less room. It is
//!   [`Row::spoon_density`], and is brought only if the owner says so.
//! - Allergens are offered and never set; the contents of a usual case are a suggestion.
//!
//! Nothing that was typed is overwritten: of an ingredient that is there, only what is empty is filled. A trim
//! yield of 1 is what an ingredient has that nobody weighed: it counts as empty, as long as the yield log is.
//! A row whose trim yield is 1 brings none, and there is nothing to check.

mod bring;
mod case;
mod own_supply;
mod read;
mod search;
#[cfg(test)]
mod tests;
pub mod vessels;

pub use bring::{AtOdds, confirmed, put};
pub use own_supply::{OwnSupply, free_pack, own_supply};
pub use read::Spoilt;

use crate::book::{Allergen, Basis, Produce, Stage};
use crate::foundation::measure::{Density, Exact, Mass, Share};

/// The languages in which every row has a name, in the order of [`Row::names`].
pub const LANGUAGES: [&str; 4] = ["en", "es", "de", "fr"];

/// The whole list, in the order of use: what a juice and smoothie bar buys most comes first in its group.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct List {
    rows: Vec<Row>,
}

impl List {
    /// Every row.
    pub fn rows(&self) -> &[Row] {
        &self.rows
    }

    /// The row of this key.
    pub fn row(&self, key: &str) -> Option<&Row> {
        self.rows.iter().find(|row| row.key == key)
    }
}

/// What is known of one ingredient.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Row {
    /// What tells it from all others.
    pub key: String,
    /// What the trade calls it, by [`LANGUAGES`].
    pub names: [String; 4],
    /// What a label calls it in English; empty if that is its name.
    pub label: String,
    /// Whether it is fruit or vegetable, and treated; `None` if that depends on the product.
    pub produce: Option<Produce>,
    /// Its number in the National Nutrient Database of the USDA, Release 28; empty if it is not from there.
    pub ndb_no: String,
    /// Trimmed mass over bought mass.
    pub trim_yield: Option<(Share, Basis)>,
    /// Grams of one piece as bought.
    pub piece_weight: Option<(Mass, Basis)>,
    /// Its density, and what of it has that.
    pub density: Option<(Density, Basis, Has)>,
    /// The density of its juice.
    pub juice_density: Option<(Density, Basis)>,
    /// The range of juice mass over trimmed mass in a slow press.
    pub press_yield: Option<(Share, Share, Basis)>,
    /// A usual case in the United States, as the trade writes it. From memory of the trade.
    pub case: String,
    /// What it usually or sometimes contains, in the order of [`Allergen::ALL`].
    pub allergens: Vec<Offered>,
    /// The stage at which a recipe usually means it.
    pub stage: Stage,
}

/// What of an ingredient has a density.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Has {
    /// What is poured: it takes this room in the drink.
    Liquid,
    /// What is puréed or stirred: it takes this room in the drink.
    Puree,
    /// What lies loose in a level spoon or cup: in the drink it takes less room.
    Bulk,
}

/// An allergen that is offered.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Offered {
    /// The allergen.
    pub allergen: Allergen,
    /// Whether it is always in it; otherwise it depends on the product.
    pub is_certain: bool,
    /// Which nuts or grains they are; empty if there is only one kind.
    pub which: String,
}

impl Row {
    /// What the trade calls it in the language of this tag; in English if it has no name in that.
    pub fn name(&self, language: &str) -> &str {
        let [english, ..] = &self.names;
        let (_, name) =
            LANGUAGES.iter().zip(&self.names).find(|(tag, _)| **tag == base(language)).unwrap_or((&"", english));
        name
    }

    /// What a level spoon or cup of a powder weighs: not its density in the drink.
    pub fn spoon_density(&self) -> Option<(Density, Basis)> {
        self.density.filter(|(_, _, has)| *has == Has::Bulk).map(|(density, basis, _)| (density, basis))
    }

    /// Whether it is a powder: a spoon of it weighs far less than the same volume of purée.
    pub fn is_powder(&self) -> bool {
        self.spoon_density().is_some() || self.name("en").to_lowercase().contains("powder")
    }

    /// The middle of the range of its juice yield.
    pub fn usual_press_yield(&self) -> Option<(Share, Basis)> {
        let (low, high, basis) = self.press_yield?;
        let middle = low.plus(high).and_then(|both| both.over(Exact::new(2, 0))).ok()?;
        Some((middle, basis))
    }
}

/// The language of a tag, without its region.
fn base(tag: &str) -> &str {
    tag.split('-').next().unwrap_or(tag)
}
