use super::*;
use crate::drink::ledger::Ledger;
use crate::support::{
    amount, book, density, drink_id, ingredient, ingredient_id, millilitres, money, pack, settings, share,
};

const DRINK: u64 = 0x51;

fn bought() -> Book {
    let pressed = |id: u64, name: &str, price: &str| {
        let mut pressed = ingredient(id, [pack(1, "50 lb", price)]);
        (pressed.name, pressed.press_yield) = (name.to_string(), Some(share("0.5")));
        pressed.juice_density = Some(density("1.04"));
        Record::Ingredient(pressed)
    };
    book(settings(), [pressed(1, "Carrots", "24"), pressed(2, "Apples", "40")])
}

fn apply(book: &mut Book, edit: Option<Edit>) -> Edit {
    book.apply(&edit.expect("an edit")).expect("it is taken").inverse
}

fn bottle(name: &str, size: &str) -> Container {
    filled_to_its_label(own_container(drink_id(DRINK)), name.to_string(), amount(size))
}

fn put(book: &mut Book, id: u64, typed: Option<&str>) {
    let (drink, line) = (drink_id(DRINK), LineId::from_random(id));
    let ingredient = book.ingredient(ingredient_id(id)).unwrap().clone();
    let edit = put_amount(book, drink, &ingredient, typed.map(amount), line, Stage::Pressed);
    apply(book, edit);
}

#[test]
fn a_drink_is_made_with_its_size_and_called_by_what_goes_in() {
    let mut book = bought();
    let (empty, drink) = (book.clone(), drink_id(DRINK));
    let edit = sell_in(&book, drink, bottle("16 oz bottle", "16 fl oz"), "Carrots, Apples");
    let back = apply(&mut book, edit);
    assert_eq!(size(&book, drink), Some(OfferId { drink, container: own_container(drink) }));
    assert_eq!(book.drink(drink).unwrap().kind, DrinkKind::Pressed);
    assert_eq!(book.drink(drink).unwrap().reference, amount("16 fl oz"));

    put(&mut book, 2, Some("6 fl oz"));
    assert_eq!(book.drink(drink).unwrap().name, "Apples");
    put(&mut book, 1, Some("8 fl oz"));
    assert_eq!(book.drink(drink).unwrap().name, "Apples, Carrots");
    let found = filled(&book, drink).unwrap();
    // By hand: 16 - 6 - 8.
    assert_eq!(rest_of(found, Unit::UsFluidOunce), Some(amount("2 fl oz")));
    assert!(found.over().is_zero());
    put(&mut book, 1, Some("12 fl oz"));
    let found = filled(&book, drink).unwrap();
    assert_eq!((rest_of(found, Unit::UsFluidOunce), found.left()), (None, Volume::ZERO));
    assert_eq!(found.over(), amount("2 fl oz").volume().unwrap().unwrap());

    // A name of one's own stays.
    let mut named = book.drink(drink).unwrap().clone();
    named.name = "Hedge Gold".to_string();
    book.apply(&Edit::Put(Record::Drink(named))).unwrap();
    put(&mut book, 2, None);
    assert_eq!(book.drink(drink).unwrap().name, "Hedge Gold");
    assert_eq!(amount_of(&book, drink, ingredient_id(2)), None);
    assert!(Ledger::of(&book).get(size(&book, drink).unwrap()).unwrap().is_ok(), "it has a price to ask");

    // Of the first step alone, Undo leaves nothing.
    let mut made = empty.clone();
    let edit = sell_in(&made, drink, bottle("16 oz bottle", "16 fl oz"), "Carrots, Apples");
    apply(&mut made, edit);
    made.apply(&back).unwrap();
    assert_eq!(made, empty);
}

#[test]
fn another_choice_takes_the_place_of_the_first() {
    let (mut book, drink) = (bought(), drink_id(DRINK));
    let edit = sell_in(&book, drink, bottle("16 oz bottle", "16 fl oz"), "Carrots");
    apply(&mut book, edit);
    let edit = put_packaging_cost(&book, own_container(drink), Some(money("0.55")));
    apply(&mut book, edit);
    let edit = sell_in(&book, drink, bottle("12 oz bottle", "12 fl oz"), "Carrots");
    apply(&mut book, edit);
    assert_eq!((book.containers().count(), book.offers_of(drink).count()), (1, 1));
    assert_eq!(packaging_cost(&book, own_container(drink)), Some(money("0.55")), "what was typed of it stays");
    assert_eq!(book.packagings().map(|it| it.name.as_str()).collect::<Vec<_>>(), ["12 oz bottle"]);
    assert_eq!(book.drink(drink).unwrap().reference, amount("12 fl oz"));
    // One that was there before, such as of another drink: what was made for this one goes.
    let jar = filled_to_its_label(ContainerId::from_random(7), "Jar".to_string(), amount("300 mL"));
    let edit = sell_in(&book, drink, jar, "Carrots");
    apply(&mut book, edit);
    let left: Vec<&str> = book.containers().map(|container| container.name.as_str()).collect();
    assert_eq!((left, book.offers_of(drink).count()), (vec!["Jar"], 1));
    assert_eq!(book.packagings().count(), 0);
    // Of a size that has a price nothing is lost.
    let jar = book.offers_of(drink).next().unwrap().id();
    book.apply(&Edit::SetPrice { offer: jar, price: Some(money("6")) }).unwrap();
    let edit = sell_in(&book, drink, bottle("16 oz bottle", "16 fl oz"), "Carrots");
    apply(&mut book, edit);
    assert_eq!(book.offers_of(drink).count(), 2);
}

#[test]
fn packaging_is_typed_as_one_sum() {
    let (mut book, drink) = (bought(), drink_id(DRINK));
    let edit = sell_in(&book, drink, bottle("16 oz bottle", "16 fl oz"), "Carrots");
    apply(&mut book, edit);
    let (container, before) = (own_container(drink), book.clone());
    let edit = put_packaging_cost(&book, container, Some(money("0.55")));
    apply(&mut book, edit);
    assert_eq!(packaging_cost(&book, container), Some(money("0.55")));
    put(&mut book, 1, Some("16 fl oz"));
    let ledger = Ledger::of(&book);
    let priced = ledger.get(size(&book, drink).unwrap()).unwrap().as_ref().unwrap();
    assert_eq!(priced.cost.packaging.iter().map(|part| part.cost).collect::<Vec<_>>(), [money("0.55")]);
    put(&mut book, 1, None);
    let edit = put_packaging_cost(&book, container, None);
    apply(&mut book, edit);
    assert_eq!((packaging_cost(&book, container), book.packagings().count()), (None, 0));
    assert_eq!(book.container(container), before.container(container));
}

#[test]
fn a_share_is_of_a_full_glass() {
    let whole = amount("16 fl oz").volume().unwrap().unwrap();
    assert_eq!(share_of(whole, share("0.5"), Unit::UsFluidOunce), Some(amount("8 fl oz")));
    assert_eq!(share_of(millilitres("330"), share("0.1"), Unit::Millilitre), Some(amount("33 mL")));
    assert_eq!(share_of(whole, share("0.5"), Unit::Gram), None);
}

#[test]
fn a_name_of_many_ends_where_a_menu_has_no_room() {
    assert_eq!(name_of([].into_iter()), None);
    assert_eq!(name_of(["Kale", "Pear"].into_iter()).as_deref(), Some("Kale, Pear"));
    let long = "Strawberries from the hill".to_string();
    assert_eq!(name_of([long.as_str(); 9].into_iter()).unwrap(), [long.as_str(); 2].join(", "));
}
