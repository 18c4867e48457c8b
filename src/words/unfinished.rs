//! What is typed and not in the book.

use crate::book::Key;
use crate::say;

/// Something new that is typed before it is in the book.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NewThing {
    /// An ingredient.
    Ingredient,
    /// A kind of packaging.
    Packaging,
    /// A set of packaging that containers share.
    PackagingKit,
    /// A container.
    Container,
    /// A drink.
    Drink,
    /// A trial.
    Trial,
    /// A price that others charge.
    LocalPrice,
    /// A scenario.
    Scenario,
    /// A pack of goods.
    Pack,
    /// A lower price for more of a pack.
    VolumePrice,
    /// What a container leaves empty.
    Headspace,
    /// What a container holds to the rim, by its weight full of water.
    Weighing,
    /// The same by its measures.
    Measures,
    /// The same by pouring.
    Readings,
    /// Packaging of a container or a set.
    KitItem,
    /// A line of a recipe.
    RecipeLine,
    /// The amount that an ingredient is added by.
    PieceSize,
    /// What has no fields of its own.
    Record,
}

impl NewThing {
    /// What a new record is.
    pub const fn of(key: Key) -> NewThing {
        match key {
            Key::Ingredient(_) => NewThing::Ingredient,
            Key::Packaging(_) => NewThing::Packaging,
            Key::PackagingSet(_) => NewThing::PackagingKit,
            Key::Container(_) => NewThing::Container,
            Key::Drink(_) => NewThing::Drink,
            Key::Trial(_) => NewThing::Trial,
            Key::SeenPrice(_) => NewThing::LocalPrice,
            Key::Scenario(_) => NewThing::Scenario,
            Key::Settings | Key::Offer(_) | Key::Week(_) | Key::Batch(_) | Key::BuyingList => NewThing::Record,
        }
    }

    /// That it is not in the book, as a sentence.
    fn unsaved(self, of: &str) -> String {
        match self {
            NewThing::Ingredient => say!(book::new_ingredient_unsaved).to_string(),
            NewThing::Packaging => say!(book::new_packaging_unsaved).to_string(),
            NewThing::PackagingKit => say!(book::new_kit_unsaved).to_string(),
            NewThing::Container => say!(book::new_container_unsaved).to_string(),
            NewThing::Drink => say!(book::new_drink_unsaved).to_string(),
            NewThing::Trial => say!(book::new_trial_unsaved).to_string(),
            NewThing::LocalPrice => say!(book::new_local_price_unsaved).to_string(),
            NewThing::Scenario => say!(book::new_scenario_unsaved).to_string(),
            NewThing::Pack => say!(book::new_pack_unsaved, of = of),
            NewThing::VolumePrice => say!(book::new_volume_price_unsaved, of = of),
            NewThing::Headspace => say!(book::new_headspace_unsaved, of = of),
            NewThing::Weighing | NewThing::Measures | NewThing::Readings => say!(book::new_capacity_unsaved, of = of),
            NewThing::KitItem => say!(book::new_kit_item_unsaved, of = of),
            NewThing::RecipeLine => say!(book::new_recipe_line_unsaved, of = of),
            NewThing::PieceSize => say!(book::new_piece_size_unsaved, of = of),
            NewThing::Record => String::new(),
        }
    }
}

/// Defines [`Field`] from a row for each: what it is, its name in what is kept, and the key of what is
/// said while it is empty.
macro_rules! fields {
    ($($(#[$about:meta])* $field:ident $id:literal $says:ident;)*) => {
        /// A field of something new.
        #[derive(Clone, Copy, Debug, PartialEq, Eq)]
        pub enum Field {
            $($(#[$about])* $field,)*
            /// The container that a new set is for. It is given, and never missing.
            SharedBy,
            /// The drink that a new container is for. It is given, and never missing.
            SoldFor,
        }

        impl Field {
            /// Its name in what is kept while the page is loaded anew.
            pub const fn id(self) -> &'static str {
                match self {
                    $(Field::$field => $id,)*
                    Field::SharedBy => "@container",
                    Field::SoldFor => "@drink",
                }
            }

            /// What is missing while it is empty.
            fn needed(self) -> &'static str {
                match self {
                    $(Field::$field => say!(book::$says),)*
                    Field::SharedBy | Field::SoldFor => "",
                }
            }
        }
    };
}

fields! {
    /// What it is called.
    Name "name" needs_name;
    /// What a pack holds.
    PackSize "pack-size" needs_pack_size;
    /// What a pack costs.
    CasePrice "case-price" needs_case_price;
    /// What is paid beside the price of a pack.
    Surcharge "surcharge" needs_surcharge;
    /// Who sells a pack.
    Supplier "supplier" needs_supplier;
    /// What is left empty.
    Headspace "headspace" needs_headspace;
    /// How many one drink takes.
    NumberPerDrink "number-per-drink" needs_number_per_drink;
    /// How wide a cup is at its base.
    BaseWidth "base-width" needs_base_width;
    /// How wide a cup is at its rim.
    RimWidth "rim-width" needs_rim_width;
    /// How high a cup is inside.
    InsideHeight "inside-height" needs_inside_height;
    /// What a container holds to the rim.
    BrimfulCapacity "brimful-capacity" needs_brimful_capacity;
    /// How high the first pour stands.
    FirstHeight "height-1" needs_height_1;
    /// How much the first pour is.
    FirstVolume "volume-1" needs_volume_1;
    /// How high the second pour stands.
    SecondHeight "height-2" needs_height_2;
    /// How much the second pour is.
    SecondVolume "volume-2" needs_volume_2;
    /// From how many packs on a lower price holds.
    NumberOfPacks "number-of-packs" needs_number_of_packs;
    /// What a pack costs where more are bought.
    Price "price" needs_case_price;
    /// The size that a recipe makes.
    RecipeMakes "recipe-makes" needs_recipe_makes;
    /// The amount that an ingredient is added by.
    PieceSize "piece-size" needs_piece_size;
    /// The ingredient that was chosen.
    Ingredient "ingredient" needs_ingredient;
    /// What a new ingredient is called.
    IngredientName "ingredient-name" needs_ingredient_name;
    /// An amount in a recipe.
    Amount "amount" needs_amount;
}

/// Stands in place of an answer while the field that it hangs on cannot be read.
pub fn fix_first(field: &str) -> String {
    say!(book::fix_field_to_see, field = field)
}

/// Says which field waits to be mended before something can be done.
pub fn fix_before(field: &str) -> String {
    say!(book::fix_field_first, field = field)
}

/// What something new still needs before it is in the book; `of` is the name of what it belongs to.
pub fn still_needs(what: NewThing, of: Option<&str>, needs: &[Field]) -> String {
    let unsaved = what.unsaved(of.unwrap_or_default());
    if needs.is_empty() {
        return unsaved;
    }
    let fields = needs.len();
    let needs: Vec<&str> = needs.iter().map(|field| field.needed()).collect();
    [unsaved, say!(book::still_needs, fields = fields, needs = needs.join(", "))].join(" ")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_a_new_thing_needs_is_named() {
        let pack = |needs: &[Field]| still_needs(NewThing::Pack, Some("Kale"), needs);
        assert_eq!(pack(&[]), "The new pack of Kale is not in your book yet.");
        assert_eq!(pack(&[Field::CasePrice]), "The new pack of Kale is not in your book yet. Needs: case price.");
        assert_eq!(
            pack(&[Field::PackSize, Field::CasePrice]),
            "The new pack of Kale is not in your book yet. Needs: pack size, case price."
        );
        assert_eq!(
            still_needs(NewThing::Container, None, &[Field::Name, Field::BrimfulCapacity, Field::Headspace]),
            "The new container is not in your book yet. Needs: name, brimful capacity, headspace."
        );
    }

    #[test]
    fn an_answer_names_the_field_that_it_waits_for() {
        assert_eq!(fix_first("Menu price"), "Fix “Menu price” to see this.");
        assert_eq!(fix_before("Number of Kale"), "Fix “Number of Kale” first.");
    }
}
