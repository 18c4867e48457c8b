//! Ingredients.

use serde::{Deserialize, Serialize};

use super::{Allergen, IngredientId, OnHand, Pack, Season, Starting, Weighing};
use crate::foundation::measure::{Density, Mass, Share, stored_by_name};

/// An ingredient: what it costs, and what is left of it on the way into a drink.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Ingredient {
    /// Its id.
    pub id: IngredientId,
    /// Its name.
    pub name: String,
    /// Trimmed mass over bought mass, in (0, 1]; 1 if nothing is cut away.
    pub trim_yield: Share,
    /// Juice mass over trimmed mass, in (0, 1], or `None` if it is not pressed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub press_yield: Option<Share>,
    /// Soaked, cooked or brewed mass over trimmed mass, above 0 and often above 1, or `None` if it is none of
    /// these.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub soak_yield: Option<Share>,
    /// Density in the drink, in grams per millilitre: as poured or puréed, and not as a heap.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub density: Option<Density>,
    /// Density of its juice, in grams per millilitre.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub juice_density: Option<Density>,
    /// Grams of one piece as bought.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub piece_weight: Option<Mass>,
    /// The allergens in it, in the order of [`Allergen::ALL`]. An empty list says that it has none, `None`
    /// that nobody has checked yet.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub allergens: Option<Vec<Allergen>>,
    /// The tree nuts in it, in the owner's words, such as "almonds"; empty if nobody said.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub nuts: String,
    /// The parts of a mixture, such as granola, in the owner's words; empty if nobody knows them yet. `None` if
    /// it is a single food.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub parts: Option<String>,
    /// Its name in the list of ingredients on a label, such as "apple", of which the pressed juice is "apple
    /// juice". Empty if that is [`Ingredient::name`].
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub sold_as: String,
    /// Whether it is fruit or vegetable, or juice or purée of these, or `None` if nobody said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub produce: Option<Produce>,
    /// The packs in which it is quoted. The first is the one that is bought now.
    #[serde(default)]
    pub packs: Vec<Pack>,
    /// Its last count, as bought, or `None` if nobody counted it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub on_hand: Option<OnHand>,
    /// The yield log: its weighings, the earliest first.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub weighings: Vec<Weighing>,
    /// The yields in another part of the year, or `None` if they are the same all year.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub season: Option<Season>,
    /// The starting figures it was made from, or `None` if all of it was typed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub starting: Option<Starting>,
}

impl Ingredient {
    /// An ingredient of which only the name is known. Nothing of it is cut away or pressed.
    pub fn named(id: IngredientId, name: &str) -> Ingredient {
        Ingredient {
            id,
            name: name.to_string(),
            trim_yield: Share::WHOLE,
            press_yield: None,
            soak_yield: None,
            density: None,
            juice_density: None,
            piece_weight: None,
            allergens: None,
            nuts: String::new(),
            parts: None,
            sold_as: String::new(),
            produce: None,
            packs: Vec::new(),
            on_hand: None,
            weighings: Vec::new(),
            season: None,
            starting: None,
        }
    }
}

/// Whether an ingredient is fruit or vegetable, or juice or purée of these, and whether it was treated.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Produce {
    /// Fruit or vegetable, or juice or purée of these, without treatment against germs. Frozen counts as raw.
    Raw,
    /// The same, treated so that of 100,000 germs at most one is left (5 log), such as pasteurized juice.
    Treated,
    /// Neither fruit nor vegetable, such as milk, nuts, honey or water.
    Neither,
}

stored_by_name! {
    Produce {
        Raw = "raw",
        Treated = "treated",
        Neither = "neither",
    }
}

/// The stage of an ingredient at which an amount in a recipe is meant.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Stage {
    /// As it comes from the supplier.
    AsBought,
    /// After peeling and coring.
    Trimmed,
    /// As juice.
    Pressed,
    /// After soaking, cooking or brewing.
    SoakedOrBrewed,
}

stored_by_name! {
    Stage {
        AsBought = "as-bought",
        Trimmed = "trimmed",
        Pressed = "pressed",
        SoakedOrBrewed = "soaked-or-brewed",
    }
}
