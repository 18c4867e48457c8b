//! Allergens: the lists of two laws in one enum.

use crate::foundation::measure::stored_by_name;

/// An allergen by one of two laws: the nine major allergens of the United States (21 U.S.C. 321(qq):
/// FALCPA 2004, FASTER Act 2021), and the fourteen substances of the European Union (Regulation (EU) No
/// 1169/2011, Annex II).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Allergen {
    /// Wheat. In the European Union it is one of the cereals containing gluten.
    Wheat,
    /// Cereals containing gluten other than wheat, such as rye, barley and oats.
    OtherGluten,
    /// Crustaceans.
    Crustaceans,
    /// Eggs.
    Eggs,
    /// Fish.
    Fish,
    /// Peanuts.
    Peanuts,
    /// Soybeans.
    Soybeans,
    /// Milk, with lactose.
    Milk,
    /// Tree nuts, such as almonds, hazelnuts, walnuts, cashews.
    TreeNuts,
    /// Celery, stalk and root.
    Celery,
    /// Mustard.
    Mustard,
    /// Sesame.
    Sesame,
    /// Sulphur dioxide and sulphites above 10 mg/kg or 10 mg/L.
    Sulphites,
    /// Lupin.
    Lupin,
    /// Molluscs.
    Molluscs,
}

stored_by_name! {
    Allergen {
        Wheat = "wheat",
        OtherGluten = "other-gluten",
        Crustaceans = "crustaceans",
        Eggs = "eggs",
        Fish = "fish",
        Peanuts = "peanuts",
        Soybeans = "soybeans",
        Milk = "milk",
        TreeNuts = "tree-nuts",
        Celery = "celery",
        Mustard = "mustard",
        Sesame = "sesame",
        Sulphites = "sulphites",
        Lupin = "lupin",
        Molluscs = "molluscs",
    }
}

impl Allergen {
    /// Whether it is one of the nine of the United States.
    pub const fn in_united_states(self) -> bool {
        match self {
            Allergen::Wheat
            | Allergen::Crustaceans
            | Allergen::Eggs
            | Allergen::Fish
            | Allergen::Peanuts
            | Allergen::Soybeans
            | Allergen::Milk
            | Allergen::TreeNuts
            | Allergen::Sesame => true,
            Allergen::OtherGluten
            | Allergen::Celery
            | Allergen::Mustard
            | Allergen::Sulphites
            | Allergen::Lupin
            | Allergen::Molluscs => false,
        }
    }
}
