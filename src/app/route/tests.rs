use std::collections::BTreeSet;

use proptest::prelude::*;

use super::*;
use crate::support::day;

proptest! {
    #[test]
    fn every_screen_goes_to_its_address_and_back(number: u64) {
        let screens = Route::one_of_each(number);
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

#[test]
fn what_no_screen_has_is_no_address() {
    for address in ["", "#", "#/", "#/drinks", "#/drinks/1", "#/book"] {
        assert!(Route::is_address(address), "{address}");
    }
    for address in ["#/drinks/zzz", "#/nowhere", "#/drinks/", "#/sizes/sales/2026-11-24"] {
        assert!(!Route::is_address(address), "{address}");
    }
}

#[test]
fn a_decision_says_its_sizes() {
    let id = |number| ContainerId::from_random(number);
    let size = |number| Some(id(number));
    let scope = Scope::Kind(DrinkKind::Pressed);
    for (address, goes, comes, stays) in [
        ("4-3", size(4), size(3), None),
        ("4-", size(4), None, None),
        ("-3", None, size(3), None),
        ("-", None, None, None),
        ("only-4", None, None, Stays::of(&[id(4)])),
        ("only-3.4.c", None, None, Stays::of(&[id(3), id(4), id(12)])),
    ] {
        let decision = Decision { scope, goes, comes, stays };
        let address = format!("#/sizes/decide/kind/pressed/{address}");
        assert_eq!(Route::from_address(&address), Route::Decision(decision));
        assert_eq!(Route::Decision(decision).address(), address);
    }
    let too_many = "#/sizes/decide/kind/pressed/only-1.2.3.4";
    for nowhere in
        [too_many, "#/sizes/decide/kind/pressed/only-", "#/sizes/decide/kind/pressed/4", "#/sizes/decide/kind/4-3"]
    {
        assert_eq!(Route::from_address(nowhere), Route::Drinks);
    }
}
