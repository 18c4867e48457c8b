use super::*;
use crate::book::{
    Accepted, Field, FillRule, Filling, Offer, PackagingSet, PackagingSetId, Problem, Quoted, Scope, Settings, Tier,
};
use crate::foundation::measure::{Currency, Exact};
use crate::support::{
    batch, book_of_one_drink, buying_list, container_id, day, drink_id, ingredient_id, line, money, offer, offer_id,
    pack, pack_id, scenario, seen_price, settings, trial, use_of, vessel, week,
};

#[test]
fn a_price_can_be_put_back_in_another_currency() {
    let mut book = book_of_one_drink(settings(), "1", Some("0.25"));
    let yen = Settings { currency: Currency::from_code("JPY").unwrap(), ..settings() };
    book.apply(&Edit::Put(Record::Settings(Box::new(yen)))).unwrap();
    let before = book.clone();
    let applied = book.apply(&Edit::SetPrice { offer: offer_id(1, 1), price: Some(money("500")) }).unwrap();
    assert_eq!(book.apply(&applied.inverse).map(|_| ()), Ok(()));
    assert_eq!(book, before);
}

#[test]
fn a_suppliers_price_is_that_of_the_tier_bought() {
    let mut book = book_of_one_drink(settings(), "1", None);
    let mut ingredient = book.ingredient(ingredient_id(1)).unwrap().clone();
    ingredient.packs[0].tiers = vec![Tier { from: Exact::from(3), price: money("0.9") }];
    ingredient.packs[0].at_a_time = Exact::from(4);
    book.apply(&Edit::Put(Record::Ingredient(ingredient))).unwrap();
    let before = book.clone();
    let goods = Goods::Ingredient(ingredient_id(1));
    let applied = book.apply(&Edit::SetPackPrice { goods, pack: pack_id(1), price: money("0.8"), day: None }).unwrap();
    let pack = &book.packs(goods)[0];
    assert_eq!((pack.price, pack.price_now()), (money("1"), money("0.8")));
    book.apply(&applied.inverse).unwrap();
    assert_eq!(book, before);
}

#[test]
fn a_price_that_was_heard_leaves_the_one_before_in_the_history() {
    let mut book = book_of_one_drink(settings(), "1", None);
    let goods = Goods::Ingredient(ingredient_id(1));
    let heard =
        |price: &str, on: &str| Edit::SetPackPrice { goods, pack: pack_id(1), price: money(price), day: Some(day(on)) };
    book.apply(&heard("1.10", "2026-11-02")).unwrap();
    let before = book.clone();
    let applied = book.apply(&heard("1.20", "2026-11-23")).unwrap();
    let heard_before = Quoted { day: day("2026-11-02"), price: money("1.1") };
    assert_eq!((book.packs(goods)[0].price, &book.packs(goods)[0].earlier), (money("1.2"), &vec![heard_before]));
    // Said again on the same day it is no change.
    let again = book.apply(&heard("1.20", "2026-11-23")).unwrap();
    assert_eq!(again.inverse, heard("1.20", "2026-11-23"));
    book.apply(&applied.inverse).unwrap();
    assert_eq!(book, before);
    // Only tried, it leaves no trace.
    book.apply(&Edit::SetPackPrice { goods, pack: pack_id(1), price: money("2"), day: None }).unwrap();
    assert_eq!((book.packs(goods)[0].day, book.packs(goods)[0].earlier.len()), (Some(day("2026-11-02")), 0));
}

#[test]
fn what_is_to_be_bought_stays_while_it_is_listed() {
    let mut book = book_of_one_drink(settings(), "1", None);
    book.apply(&Edit::Put(Record::Ingredient(crate::support::ingredient(2, [])))).unwrap();
    book.apply(&Edit::Put(Record::BuyingList(buying_list(&[(2, 1, "3")])))).unwrap();
    let key = Key::Ingredient(ingredient_id(2));
    assert_eq!(book.needed_by(key), [Key::BuyingList]);
    assert_eq!(book.apply(&Edit::Remove(key)), Err(Refusal::InUse { key, by: vec![Key::BuyingList] }));
    book.apply(&Edit::Remove(Key::BuyingList)).unwrap();
    assert_eq!(book.apply(&Edit::Remove(key)).map(|_| ()), Ok(()));
}

#[test]
fn a_new_price_leaves_the_filling() {
    let mut book = book_of_one_drink(settings(), "1", None);
    let filling = Filling::new(FillRule::Average, Accepted::TwoPercent);
    let packaged = Offer { filling: Some(filling.clone()), ..Offer::new(offer_id(1, 1)) };
    book.apply(&Edit::Put(Record::Offer(packaged))).unwrap();
    book.apply(&Edit::SetPrice { offer: offer_id(1, 1), price: Some(money("4")) }).unwrap();
    let offer = book.offer(offer_id(1, 1)).unwrap();
    assert_eq!((offer.price, &offer.filling), (Some(money("4")), &Some(filling)));
}

#[test]
fn a_shared_set_stays_while_a_container_shares_it() {
    let mut book = book_of_one_drink(settings(), "1", None);
    let straw = vessel(7, [pack(1, "100 ea", "2")]);
    let uses = vec![use_of(7, "1")];
    let set = PackagingSet { id: PackagingSetId::from_random(1), name: "Invented set".into(), uses };
    let key = Key::PackagingSet(set.id);
    let mut container = book.container(container_id(1)).unwrap().clone();
    container.shared = vec![set.id];
    let shared = Edit::Put(Record::Container(container));
    let missing = Refusal::Missing { key, needed_by: Some(Key::Container(container_id(1))) };
    assert_eq!(book.apply(&shared), Err(missing));
    let of_straw = Key::Packaging(straw.id);
    book.apply(&Edit::Put(Record::Packaging(straw))).unwrap();
    book.apply(&Edit::Put(Record::PackagingSet(set))).unwrap();
    let in_use = Refusal::InUse { key: of_straw, by: vec![key] };
    assert_eq!(book.apply(&Edit::Remove(of_straw)), Err(in_use));
    book.apply(&shared).unwrap();
    let in_use = Refusal::InUse { key, by: vec![Key::Container(container_id(1))] };
    assert_eq!(book.apply(&Edit::Remove(key)), Err(in_use));
}

#[test]
fn a_price_with_endless_digits_is_refused() {
    let mut book = book_of_one_drink(settings(), "1", None);
    let before = book.clone();
    let goods = Goods::Ingredient(ingredient_id(1));
    let third = Money::from_major(Exact::ONE.over(Exact::from(3)).unwrap());
    let refused = book.apply(&Edit::SetPackPrice { goods, pack: pack_id(1), price: third, day: None });
    let key = Key::Ingredient(ingredient_id(1));
    assert_eq!(refused, Err(Refusal::Field { key, field: Field::PackPrice, problem: Problem::TooLarge }));
    assert_eq!(book, before);
}

#[test]
fn what_is_used_stays_and_its_users_are_named() {
    let mut book = book_of_one_drink(settings(), "1", Some("3"));
    let before = book.clone();
    let ingredient = Key::Ingredient(ingredient_id(1));
    let (container, drink) = (Key::Container(container_id(1)), Key::Drink(drink_id(1)));
    let offer = Key::Offer(offer_id(1, 1));
    for (key, by) in [(ingredient, drink), (container, offer), (drink, offer)] {
        assert_eq!(book.apply(&Edit::Remove(key)), Err(Refusal::InUse { key, by: vec![by] }));
    }
    assert_eq!(book, before);

    let edit = Edit::remove_with_offers(&book, drink);
    let applied = book.apply(&edit).unwrap();
    assert_eq!(applied.touched, BTreeSet::from([drink, offer]));
    assert!(!book.contains(drink) && !book.contains(offer) && book.contains(ingredient));
    book.apply(&applied.inverse).unwrap();
    assert_eq!(book, before);
}

/// One drink in two containers, sold, planned and under trial.
fn sold_and_planned() -> Book {
    let mut book = book_of_one_drink(settings(), "1", Some("3"));
    let records = [
        Record::Container(crate::support::container(2, "500 mL")),
        Record::Offer(offer(1, 2, Some("5"))),
        Record::Week(week("2026-11-16", &[(1, "10", "2"), (2, "4", "3")])),
        Record::Week(week("2026-11-23", &[(2, "5", "3")])),
        Record::Trial(trial(1, Scope::Menu)),
        Record::Trial(trial(2, Scope::Drink(drink_id(1)))),
        Record::Scenario(scenario(1, [offer(1, 1, Some("3.25")), offer(1, 2, None)])),
        Record::Batch(batch("2026-11-26", &[(1, 1, "6"), (1, 2, "4")])),
        Record::SeenPrice(seen_price(1, "16 fl oz", "7")),
    ];
    for record in records {
        book.apply(&Edit::Put(record)).unwrap();
    }
    book
}

fn keys(texts: &[&str]) -> Vec<Key> {
    texts.iter().map(|text| Key::from_text(text).unwrap()).collect()
}

#[test]
fn sales_plans_and_trials_use_what_they_name() {
    let mut book = sold_and_planned();
    let users =
        ["offer:1-1", "offer:1-2", "week:2026-11-16", "week:2026-11-23", "scenario:1", "batch:2026-11-26", "trial:2"];
    assert_eq!(book.needed_by(Key::Drink(drink_id(1))), keys(&users));
    assert_eq!(
        book.needed_by(Key::Container(container_id(1))),
        keys(&["offer:1-1", "week:2026-11-16", "scenario:1", "batch:2026-11-26"])
    );
    let container = Key::Container(container_id(2));
    let by = keys(&["offer:1-2", "week:2026-11-16", "week:2026-11-23", "scenario:1", "batch:2026-11-26"]);
    assert_eq!(book.needed_by(container), by);
    assert_eq!(book.apply(&Edit::Remove(container)), Err(Refusal::InUse { key: container, by }));
    for key in keys(&[
        "batch:2026-11-26",
        "buying-list",
        "week:2026-11-16",
        "trial:1",
        "scenario:1",
        "seen-price:1",
        "settings",
        "offer:1-1",
    ]) {
        assert_eq!(book.needed_by(key), [], "{key}");
    }
    // Only the menu is re-priced.
    assert_eq!(book.repriced_by(Key::Drink(drink_id(1))), keys(&["offer:1-1", "offer:1-2"]));
    assert_eq!(book.repriced_by(container), keys(&["offer:1-2"]));
    // What was sold stays when the size goes from the menu.
    book.apply(&Edit::Remove(Key::Offer(offer_id(1, 1)))).unwrap();
    assert_eq!(book.week(day("2026-11-16")).unwrap().sold.len(), 2);
}

#[test]
fn a_container_goes_with_what_was_sold_and_planned_in_it() {
    let mut book = sold_and_planned();
    let before = book.clone();
    let edit = Edit::remove_with_offers(&book, Key::Container(container_id(2)));
    let applied = book.apply(&edit).unwrap();
    let touched = ["container:2", "offer:1-2", "week:2026-11-16", "week:2026-11-23", "scenario:1", "batch:2026-11-26"];
    assert_eq!(applied.touched, keys(&touched).into_iter().collect());
    assert_eq!(book.week(day("2026-11-16")), Some(&week("2026-11-16", &[(1, "10", "2")])));
    assert_eq!(book.week(day("2026-11-23")), Some(&week("2026-11-23", &[])));
    assert_eq!(book.scenarios().next().unwrap().offers, [offer(1, 1, Some("3.25"))]);
    assert_eq!(book.batch(day("2026-11-26")), Some(&batch("2026-11-26", &[(1, 1, "6")])));
    assert_eq!((book.trials().count(), book.seen_prices().count()), (2, 1));
    book.apply(&applied.inverse).unwrap();
    assert_eq!(book, before);
}

#[test]
fn a_drink_goes_with_its_own_trials_only() {
    let mut book = sold_and_planned();
    let before = book.clone();
    let edit = Edit::remove_with_offers(&book, Key::Drink(drink_id(1)));
    let applied = book.apply(&edit).unwrap();
    assert_eq!(book.trials().map(|trial| trial.scope).collect::<Vec<_>>(), [Scope::Menu]);
    assert!(book.weeks().all(|week| week.sold.is_empty()) && book.weeks().count() == 2);
    assert!(book.scenarios().all(|scenario| scenario.offers.is_empty()));
    book.apply(&applied.inverse).unwrap();
    assert_eq!(book, before);
}

#[test]
fn a_scenario_is_adopted_in_one_step_and_taken_back_in_one() {
    let mut book = sold_and_planned();
    let mut planned = book.scenarios().next().unwrap().clone();
    planned.offers = vec![Offer { weekly: Some(Exact::from(9)), ..offer(1, 2, Some("5.5")) }];
    book.apply(&Edit::Put(Record::Scenario(planned.clone()))).unwrap();
    let before = book.clone();

    let monday = day("2026-11-30");
    let applied = book.apply(&planned.adopted(&before, monday)).unwrap();
    let expected = Offer { weekly_from: Some(monday), ..planned.offers[0].clone() };
    assert_eq!(book.offers().cloned().collect::<Vec<_>>(), [expected]);
    assert_eq!(book.scenario(planned.id), Some(&planned), "it is kept");
    assert_eq!(book.weeks().collect::<Vec<_>>(), before.weeks().collect::<Vec<_>>());
    assert_eq!(applied.touched, keys(&["offer:1-1", "offer:1-2"]).into_iter().collect());
    book.apply(&applied.inverse).unwrap();
    assert_eq!(book, before);
}

#[test]
fn what_is_missing_is_named_with_who_needs_it() {
    let mut book = book_of_one_drink(settings(), "1", None);
    let missing = |key, needed_by| Err(Refusal::Missing { key, needed_by });
    let (gone, drink) = (Key::Ingredient(ingredient_id(9)), Key::Drink(drink_id(2)));
    let thirsty = crate::support::drink(2, "1 L", [line(1, 9, "1 mL")]);
    assert_eq!(book.apply(&Edit::Put(Record::Drink(thirsty))), missing(gone, Some(drink)));
    assert_eq!(book.apply(&Edit::Remove(gone)), missing(gone, None));
    assert_eq!(book.apply(&Edit::Remove(Key::Settings)), missing(Key::Settings, None));
    let offer = offer_id(1, 2);
    assert_eq!(book.apply(&Edit::SetPrice { offer, price: None }), missing(Key::Offer(offer), None));
    let goods = Goods::Ingredient(ingredient_id(1));
    let no_pack = Edit::SetPackPrice { goods, pack: pack_id(9), price: money("1"), day: None };
    assert_eq!(book.apply(&no_pack), missing(goods.into(), None));
}

#[test]
fn of_several_edits_one_refused_undoes_all() {
    let mut book = book_of_one_drink(settings(), "1", Some("3"));
    let before = book.clone();
    let price = |price| Edit::SetPrice { offer: offer_id(1, 1), price: Some(money(price)) };
    let refused = book.apply(&Edit::Together(vec![price("4"), price("5"), price("-1")]));
    let key = Key::Offer(offer_id(1, 1));
    assert_eq!(refused, Err(Refusal::Field { key, field: Field::Price, problem: Problem::NotPositive }));
    assert_eq!(book, before);

    let applied = book.apply(&Edit::Together(vec![price("4"), price("5")])).unwrap();
    assert_eq!(applied.inverse, Edit::Together(vec![price("4"), price("3")]));
    assert_eq!(applied.touched, BTreeSet::from([key]));
}

#[test]
fn a_book_is_made_of_records_in_any_order() {
    let book = book_of_one_drink(settings(), "1", Some("3"));
    let mut records: Vec<Record> = book.records().collect();
    records.reverse();
    assert_eq!(Book::from_records(records.clone()), Ok(book));
    records.pop();
    let no_settings = Err(Refusal::Missing { key: Key::Settings, needed_by: None });
    assert_eq!(Book::from_records(records), no_settings);
}

/// Twenty ingredients with a drink of each.
fn menu() -> Book {
    let records = (1..=20).flat_map(|id| {
        let lines = [crate::support::line(1, id, "1 L")];
        [Record::Ingredient(crate::support::ingredient(id, [])), Record::Drink(crate::support::drink(id, "1 L", lines))]
    });
    crate::support::book(settings(), records)
}

#[test]
fn many_are_removed_in_a_row_as_they_are_one_by_one() {
    let (mut book, empty) = (menu(), crate::support::book(settings(), []));
    let applied = book.apply(&Edit::replace(&menu(), &empty)).unwrap();
    assert_eq!((&book, applied.touched.len()), (&empty, 40));
    book.apply(&applied.inverse).unwrap();
    assert_eq!(book, menu());

    // What goes before those that need it is refused, and so is what stays in use.
    let remove = |keys: &mut dyn Iterator<Item = Key>| Edit::Together(keys.map(Edit::Remove).collect());
    let ingredient = |id| Key::Ingredient(ingredient_id(id));
    let refused = Err(Refusal::InUse { key: ingredient(1), by: vec![Key::Drink(drink_id(1))] });
    let wrong_order = (1..=20).flat_map(|id| [ingredient(id), Key::Drink(drink_id(id))]);
    assert_eq!(book.apply(&remove(&mut { wrong_order })), refused);
    assert_eq!(book.apply(&remove(&mut (1..=20).map(ingredient))), refused);
    let twice = (1..=20).chain(3..=3).map(|id| Key::Drink(drink_id(id)));
    let missing = Err(Refusal::Missing { key: Key::Drink(drink_id(3)), needed_by: None });
    assert_eq!(book.apply(&remove(&mut { twice })), missing);
    assert_eq!(book, menu(), "what is refused changes nothing");
}
