//! The fields in which flat costs are entered.

use brimwright::book::{Entered, FlatCost};

#[test]
fn each_flat_cost_has_its_field_on_a_screen() {
    let drink = include_str!("../../src/ui/places/drinks/making.rs");
    let settings = include_str!("../../src/ui/places/book/settings/shop_costs.rs");
    for cost in FlatCost::ALL {
        let name = cost.stored_name();
        match cost.entered() {
            Entered::AtDrink(_) => assert!(drink.contains(&format!("\"{name}\"")), "{name} has no field at a drink"),
            Entered::InSettings(_) => {
                assert!(settings.contains(&format!("it.{name}")), "{name} has no field in the settings");
            }
        }
    }
}
