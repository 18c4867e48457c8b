//! Questions to begin with, and what weeks hold.

use super::*;
use crate::book::{DrinkId, Labour};
use crate::drink::price::Hands;
use crate::sizes::decision::{Question, kinds_in_weeks};

#[test]
fn the_first_to_go_has_a_price_and_sales_and_is_not_the_only_one() {
    let first = |offers: &[Sold]| menu(&bar(offers), &Told::default()).first_to_go().unwrap();
    assert_eq!(first(&three_sizes()), Some(container_id(3)), "ten buy the large one, fewest of all");
    // The large one has no price, or nobody buys it: the middle one is the least bought then.
    let sold = [(1, 1, Some("3.6"), Some("40")), (1, 2, Some("5.4"), Some("30"))];
    assert_eq!(first(&[sold[0], sold[1], (1, 3, None, Some("5"))]), Some(container_id(2)));
    assert_eq!(first(&[sold[0], sold[1], (1, 3, Some("8.8"), None)]), Some(container_id(2)));
    assert_eq!(first(&sold[..1]), None);
    assert_eq!(first(&[]), None);
}

#[test]
fn the_first_switch_is_from_the_size_most_buy_to_its_neighbor() {
    let first = |offers: &[Sold]| menu(&bar(offers), &Told::default()).first_to_switch().unwrap();
    let ids = |from, to| Some((container_id(from), container_id(to)));
    // Most buy the small one, and none is smaller.
    assert_eq!(first(&three_sizes()), ids(1, 2));
    let large = [(1, 1, Some("3.6"), Some("4")), (1, 2, Some("5.4"), Some("30")), (1, 3, Some("8.8"), Some("50"))];
    assert_eq!(first(&large), ids(3, 2));
    assert_eq!(first(&large[..1]), ids(1, 2), "the middle one is sold nowhere, and is nearest");
    assert_eq!(first(&[]), None);
}

#[test]
fn the_first_to_come_is_sold_nowhere_and_is_no_double_of_a_size() {
    let mut book = bar(&three_sizes()[..2]);
    let first = |book: &Book| menu(book, &Told::default()).first_to_come().unwrap();
    assert_eq!(first(&book), Some(container_id(3)), "600 mL");
    // 310 mL is nearer to the 200 mL that most buy, but is as good as the 300 mL.
    book.apply(&Edit::Put(Record::Container(container(4, "310 mL")))).unwrap();
    assert_eq!(first(&book), Some(container_id(3)));
    book.apply(&Edit::Put(Record::Container(container(5, "400 mL")))).unwrap();
    assert_eq!(first(&book), Some(container_id(5)));
    // Where all that is left is a near double, it is better than none.
    let mut book = bar(&three_sizes());
    book.apply(&Edit::Put(Record::Container(container(4, "310 mL")))).unwrap();
    assert_eq!(first(&book), Some(container_id(4)));
    assert_eq!(first(&bar(&three_sizes())), None);
}

#[test]
fn the_first_to_come_is_packaged_like_what_is_sold() {
    let mut book = bar(&three_sizes()[..2]);
    let first = |book: &Book| menu(book, &Told::default()).first_to_come().unwrap();
    // 250 mL is nearest to the 200 mL that most buy; 400 mL comes with the vessel of a size sold, as a bottle does with
    // the cap of others.
    for (id, size) in [(4, "250 mL"), (5, "400 mL")] {
        book.apply(&Edit::Put(Record::Container(container(id, size)))).unwrap();
    }
    assert_eq!(first(&book), Some(container_id(4)));
    let set = book.container(container_id(1)).unwrap().set.clone();
    assert!(!set.is_empty());
    book.apply(&Edit::Put(Record::Container(crate::book::Container { set, ..container(5, "400 mL") }))).unwrap();
    assert_eq!(first(&book), Some(container_id(5)));
    // Juice 2 in the small one only: the middle one, in which juice 1 is sold, is nearer than a strange container.
    let mut book = bar(&[three_sizes()[0], three_sizes()[1], (2, 1, Some("3.6"), Some("5"))]);
    book.apply(&Edit::Put(Record::Container(container(4, "250 mL")))).unwrap();
    assert_eq!(first(&book), Some(container_id(2)));
}

#[test]
fn weeks_hold_the_kinds_that_were_sold_in_them() {
    let mut book = bar(&three_sizes());
    assert_eq!(kinds_in_weeks(&book, today()), Ok(Vec::new()));
    write(&mut book, "2026-11-16", &[(1, "30")]);
    assert_eq!(kinds_in_weeks(&book, today()), Ok(vec![DrinkKind::Blended]));
    let pressed =
        crate::book::Drink { kind: DrinkKind::Pressed, ..book.drink(DrinkId::from_random(1)).unwrap().clone() };
    book.apply(&Edit::Put(Record::Drink(pressed))).unwrap();
    assert_eq!(kinds_in_weeks(&book, today()), Ok(vec![DrinkKind::Pressed]));
}

#[test]
fn stock_is_that_of_the_whole_menu() {
    // Juice 2 is pressed and sold in the small bottle too. Without it for juice 1 the bottle is still bought.
    let mut book = bar(&[three_sizes()[0], three_sizes()[1], (2, 1, Some("4"), Some("10"))]);
    let labour = Labour::default();
    let pressed =
        crate::book::Drink { kind: DrinkKind::Pressed, labour, ..book.drink(DrinkId::from_random(2)).unwrap().clone() };
    book.apply(&Edit::Put(Record::Drink(pressed))).unwrap();
    let ledger = Ledger::of(&book);
    let blended = Scope::Kind(DrinkKind::Blended);
    let menu =
        MenuToday::of(&book, &ledger, blended, &Told { hands: Hands::Counted, ..Told::default() }, today()).unwrap();
    let decision = menu.answer(&Question::Drop { size: container_id(1) }).unwrap();
    let (now, then) = (menu.keeping_now(exact("4")), menu.keeping_then(&decision, share("1"), exact("4")));
    let (now, then) = (now.unwrap(), then.unwrap());
    assert_eq!((now.vessels, then.vessels), (2, 2), "pressed drinks go on in the small bottle");
    assert_eq!((now.cards, then.cards), (2, 1), "cards are those of the part of the menu");
    // Four weeks of 30 take three packs of 50 and last five; of 70 that all turn to it, six packs, 300 / 70 weeks.
    // The 10 of the other drink take one pack of the small bottle, which lasts five.
    assert_eq!((now.weeks, then.weeks), (Some(exact("4")), Some(exact("4.285714285714"))));
}
