//! What goes into drinks.

use serde::{Deserialize, Serialize};

use super::{Allergen, IngredientId, OnHand, Pack, Weighing};
use crate::foundation::measure::{Density, Mass, Share, stored_by_name};

/// Something that goes into drinks, and what becomes of it on the way there.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Ingredient {
    /// Its id.
    pub id: IngredientId,
    /// Its name.
    pub name: String,
    /// Trimmed mass over bought mass, in (0, 1]; 1 where nothing is cut away.
    pub trim_yield: Share,
    /// Juice mass over trimmed mass, in (0, 1]; none where it is not pressed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub press_yield: Option<Share>,
    /// Soaked, cooked or brewed mass over trimmed mass, above 0 and often above 1; none where it
    /// is neither.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub soak_yield: Option<Share>,
    /// Density in the drink, in grams per millilitre: as poured or puréed, not as a heap.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub density: Option<Density>,
    /// Density of its juice, in grams per millilitre.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub juice_density: Option<Density>,
    /// Grams of one piece as bought.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub piece_weight: Option<Mass>,
    /// What it holds that must be named, in the order of the lists; an empty list says that it
    /// holds none, nothing at all that nobody has looked yet.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub allergens: Option<Vec<Allergen>>,
    /// Which tree nuts are in it, in the owner's words, such as "almonds"; empty where nobody said.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub nuts: String,
    /// What it is mixed of, in the owner's words, where it is a mixture, such as granola: empty
    /// while nobody knows; none where it is one food.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub parts: Option<String>,
    /// What the list of ingredients of a label calls it, such as "apple"; empty where that is its
    /// name. Juice pressed from it is then "apple juice".
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub sold_as: String,
    /// Whether it is fruit or vegetable, or juice or purée of it; none where nobody said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub produce: Option<Produce>,
    /// The packs it is quoted in; the first is the one bought now.
    #[serde(default)]
    pub packs: Vec<Pack>,
    /// What is here of it as bought, when it was last counted; none where nobody counted.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub on_hand: Option<OnHand>,
    /// The yield log: what was weighed of it, the earliest first.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub weighings: Vec<Weighing>,
}

impl Ingredient {
    /// An ingredient of which only the name is known: nothing is cut away, nothing pressed.
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
        }
    }
}

/// Whether something is fruit or vegetable, or juice or purée of it, and whether it was treated.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Produce {
    /// Fruit or vegetable, or juice or purée of it, that nothing was done to against germs;
    /// frozen is raw too.
    Raw,
    /// The same, treated so that of 100,000 germs at most one is left (5 log), such as
    /// pasteurized juice.
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

/// What an amount in a recipe means.
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
