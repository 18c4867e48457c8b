use std::collections::BTreeSet;

use proptest::prelude::*;

use super::*;
use crate::support::{container_id, day, drink_id, ingredient_id};

/// One of each screen, for ids and a Monday.
fn screens(number: u64, kind: DrinkKind) -> Vec<Route> {
    let monday = day("2026-11-23");
    let offer = OfferId { drink: drink_id(number), container: container_id(number) };
    let scopes = [Scope::Menu, Scope::Kind(kind), Scope::Drink(drink_id(number))];
    let sheets = [Sheet::Prices, Sheet::Cards, Sheet::Batch(monday), Sheet::BuyingList, Sheet::Warning];
    let mut screens = vec![
        Route::Drinks,
        Route::Drink(drink_id(number)),
        Route::Offer(offer),
        Route::Packaged(offer),
        Route::Working(offer),
        Route::Buying,
        Route::Ingredient(ingredient_id(number)),
        Route::Packaging(PackagingId::from_random(number)),
        Route::PackagingSet(PackagingSetId::from_random(number)),
        Route::PriceWatch,
        Route::BuyingList,
        Route::YieldLog(ingredient_id(number)),
        Route::Containers,
        Route::Container(container_id(number)),
        Route::Sizes,
        Route::Switching,
        Route::HowMany,
        Route::PricePoint,
        Route::SeenPrices,
        Route::Sales,
        Route::SalesWeek(monday),
        Route::Trials,
        Route::Trial(TrialId::from_random(number)),
        Route::Scenarios,
        Route::Scenario(ScenarioId::from_random(number)),
        Route::Counter,
        Route::Card(offer),
        Route::Batches,
        Route::Batch(monday),
        Route::OnHand,
        Route::Book,
    ];
    screens.extend(scopes.map(Route::SideBySide));
    screens.extend(sheets.map(Route::Sheet));
    screens
}

proptest! {
    #[test]
    fn every_screen_goes_to_its_address_and_back(number: u64, kind in 0..DrinkKind::ALL.len()) {
        let screens = screens(number, DrinkKind::ALL[kind]);
        let addresses: BTreeSet<String> = screens.iter().map(|screen| screen.address()).collect();
        prop_assert_eq!(addresses.len(), screens.len(), "no two screens share an address");
        for screen in screens {
            prop_assert_eq!(Route::from_address(&screen.address()), screen);
        }
    }

    #[test]
    fn what_is_no_address_opens_the_list_of_drinks(text in "[a-z0-9]{0,12}(/[a-z0-9-]{0,12}){0,4}") {
        let screen = Route::from_address(&format!("#/nowhere/{text}"));
        prop_assert_eq!(screen, Route::Drinks);
    }

    #[test]
    fn any_text_opens_a_screen_that_says_where_it_is(text in ".{0,60}") {
        let screen = Route::from_address(&text);
        prop_assert_eq!(Route::from_address(&screen.address()), screen);
    }
}

#[test]
fn each_place_opens_a_screen_of_its_own() {
    for place in Place::ALL {
        assert_eq!(Route::of(place).place(), place, "{}", place.name());
    }
}

#[test]
fn a_week_begins_on_a_monday() {
    assert_eq!(Route::from_address("#/sizes/sales/2026-11-23"), Route::SalesWeek(day("2026-11-23")));
    assert_eq!(Route::from_address("#/sizes/sales/2026-11-24"), Route::Drinks);
}
