//! Keys and ids are written and read without loss.

use brimwright::book::{
    ContainerId, DrinkId, IngredientId, Key, OfferId, PackagingId, PackagingSetId, ScenarioId, SeenPriceId, TrialId,
};
use brimwright::foundation::measure::Date;
use proptest::prelude::*;

fn key() -> impl Strategy<Value = Key> {
    prop_oneof![
        Just(Key::Settings),
        Just(Key::BuyingList),
        any::<u64>().prop_map(|number| Key::Ingredient(IngredientId::from_random(number))),
        any::<u64>().prop_map(|number| Key::Packaging(PackagingId::from_random(number))),
        any::<u64>().prop_map(|number| Key::Container(ContainerId::from_random(number))),
        any::<u64>().prop_map(|number| Key::PackagingSet(PackagingSetId::from_random(number))),
        any::<u64>().prop_map(|number| Key::Container(ContainerId::from_random(number))),
        any::<u64>().prop_map(|number| Key::Drink(DrinkId::from_random(number))),
        any::<(u64, u64)>().prop_map(|(drink, container)| {
            Key::Offer(OfferId { drink: DrinkId::from_random(drink), container: ContainerId::from_random(container) })
        }),
        any::<u64>().prop_map(|number| Key::SeenPrice(SeenPriceId::from_random(number))),
        any::<u64>().prop_map(|number| Key::Trial(TrialId::from_random(number))),
        any::<u64>().prop_map(|number| Key::Scenario(ScenarioId::from_random(number))),
        (0..3_652_424).prop_map(|days| Key::Week(Date::FIRST.plus_days(days))),
        (0..3_652_424).prop_map(|days| Key::Batch(Date::FIRST.plus_days(days))),
    ]
}

proptest! {
    #[test]
    fn a_written_key_is_read_again(key in key()) {
        prop_assert_eq!(Key::from_text(&key.to_string()), Some(key));
    }

    #[test]
    fn a_key_has_one_way_of_writing(text in "(settings|buying-list|batch:|ingredient:|packaging:|packaging-set:|container:|drink:|offer:|week:|seen-price:|trial:|scenario:|x:|)[-0-9a-fA-F:+ ]{0,18}") {
        if let Some(key) = Key::from_text(&text) {
            prop_assert_eq!(key.to_string(), text);
        }
    }
}
