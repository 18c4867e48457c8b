use super::*;
use crate::book::Goods;
use crate::foundation::measure::NumberStyle;
use crate::words;

/// Two tabs with one book, in which carrots are.
fn two_tabs(shop: &Shop) -> (Tab, Tab) {
    let left = shop.tab();
    left.start_empty();
    left.put(ingredient(1, "Carrots"));
    let right = shop.tab();
    assert_eq!(right.book(), left.book());
    (left, right)
}

/// What the notice says, and whether it offers to keep mine.
fn notice(tab: &Tab) -> Option<String> {
    match tab.library.saving() {
        Saving::InConflict { conflicts } => Some(words::keeping::conflicts(
            &conflicts,
            &tab.book(),
            Some(&words::Speaker::of(&tab.book(), NumberStyle::english("$"))),
        )),
        _ => None,
    }
}

fn rename(tab: &Tab, name: &str) {
    tab.does("Name of Carrots", &Edit::Put(ingredient(1, name)));
    tab.run();
}

#[test]
fn keep_mine_and_take_theirs() {
    for keeps in [true, false] {
        let shop = Shop::new();
        let (left, right) = two_tabs(&shop);
        rename(&left, "Red carrots");
        rename(&right, "Baby carrots");
        assert!(notice(&right).is_some());
        assert!(right.library.at_risk(), "leaving is asked about");
        if keeps {
            right.library.keep_mine(0);
        } else {
            right.library.take_theirs(0);
        }
        right.run();
        let name = if keeps { "Baby carrots" } else { "Red carrots" };
        assert!(right.is_saved());
        assert_eq!(right.book().name(ingredient_key(1)), name);
        assert_eq!(shop.tab().book().name(ingredient_key(1)), name);
    }
}

#[test]
fn the_notice_says_what_another_tab_deleted_by_the_name_known_here() {
    let shop = Shop::new();
    let (left, right) = two_tabs(&shop);
    left.does("Delete Carrots", &Edit::Remove(ingredient_key(1)));
    left.run();
    rename(&right, "Baby carrots");
    assert_eq!(
        notice(&right).as_deref(),
        Some(
            "“Name of Carrots” is not saved. Deleted in another tab: ingredient “Baby carrots”. Keep yours to bring it back, or take theirs."
        )
    );
    right.library.keep_mine(0);
    right.run();
    assert_eq!(shop.tab().book().name(ingredient_key(1)), "Baby carrots");
}

#[test]
fn what_cannot_be_kept_says_why_and_what_to_do() {
    let shop = Shop::new();
    let (left, right) = two_tabs(&shop);
    left.put(Record::Drink(support::drink(1, "16 fl oz", [support::line(1, 1, "8 fl oz")])));
    right.does("Delete Carrots", &Edit::Remove(ingredient_key(1)));
    right.run();
    let drink = left.book().name(Key::Drink(support::drink_id(1)));
    let said = format!(
        "“Delete Carrots” is not saved. Another tab uses Carrots in {drink}. Yours does not fit with that change. Fix that first, then keep yours. Or take theirs."
    );
    assert_eq!(notice(&right), Some(said.clone()));
    right.library.keep_mine(0);
    right.run();
    assert_eq!(notice(&right), Some(said), "nothing is dropped unseen");
}

/// Two tabs with one book, in which carrots are quoted at 30.00.
fn two_tabs_with_a_price(shop: &Shop) -> (Tab, Tab) {
    let (left, right) = two_tabs(shop);
    let mut carrots = support::ingredient(1, [support::pack(1, "40 lb", "30")]);
    carrots.name = "Carrots".into();
    left.put(Record::Ingredient(carrots));
    right.hears(Notice::Saved { book: left.open().unwrap(), revision: 3 });
    assert_eq!(right.book(), left.book());
    (left, right)
}

fn price(tab: &Tab, price: &str) {
    let goods = Goods::Ingredient(support::ingredient_id(1));
    let edit = Edit::SetPackPrice { goods, pack: support::pack_id(1), price: support::money(price), day: None };
    tab.does("Price of Carrots", &edit);
    tab.run();
}

#[test]
fn the_notice_says_which_field_what_stands_and_what_mine_is() {
    let shop = Shop::new();
    let (left, right) = two_tabs_with_a_price(&shop);
    price(&left, "31");
    price(&right, "3");
    price(&right, "32.5");
    let said = "“Price of Carrots” is not saved. Another tab changed Carrots, Case price: now $31.00. Yours is $32.50. Keep yours, or take theirs.";
    assert_eq!(notice(&right).as_deref(), Some(said));
    // Who is kept from prices reads none.
    let Saving::InConflict { conflicts } = right.library.saving() else { panic!() };
    assert_eq!(
        words::keeping::conflicts(&conflicts, &right.book(), None),
        "“Price of Carrots” is not saved. Another tab changed Carrots too: Case price. Keep yours, or take theirs."
    );
}

#[test]
fn what_another_tab_changed_and_i_deleted_is_said_so() {
    let shop = Shop::new();
    let (left, right) = two_tabs_with_a_price(&shop);
    price(&left, "31");
    right.does("Delete Carrots", &Edit::Remove(ingredient_key(1)));
    right.run();
    assert_eq!(
        notice(&right).as_deref(),
        Some(
            "“Delete Carrots” is not saved. Another tab changed Carrots, which you deleted. Keep yours, or take theirs."
        )
    );
    right.library.take_theirs(0);
    right.run();
    assert_eq!(right.book(), left.book());
}

#[test]
fn several_in_conflict_are_told_one_by_one() {
    let shop = Shop::new();
    let (left, right) = two_tabs_with_a_price(&shop);
    price(&left, "31");
    left.put(ingredient(2, "Mint"));
    left.does("An edit", &Edit::Put(ingredient(2, "Spearmint")));
    left.run();
    // The other tab was cut off meanwhile.
    fill(&shop.storage);
    price(&right, "32");
    right.does("Name", &Edit::Put(ingredient(2, "Basil")));
    right.run();
    let said = notice(&right).unwrap();
    assert!(said.starts_with("1 of 2: “Price of Carrots” is not saved."), "{said}");
    right.library.keep_mine(0);
    right.run();
    let said = notice(&right).unwrap();
    assert!(said.starts_with("“Name” is not saved."), "{said}");
}

#[test]
fn what_i_made_of_something_that_another_tab_deleted_is_not_said_to_be_deleted() {
    let shop = Shop::new();
    let (left, right) = two_tabs(&shop);
    left.does("Delete Carrots", &Edit::Remove(ingredient_key(1)));
    left.run();
    let drink = support::drink(1, "16 fl oz", [support::line(1, 1, "8 fl oz")]);
    right.does("Add a drink", &Edit::Put(Record::Drink(drink)));
    right.run();
    assert_eq!(
        notice(&right).as_deref(),
        Some(
            "“Add a drink” is not saved. Deleted in another tab: ingredient “Carrots”. Keep yours to bring it back, or take theirs."
        )
    );
    right.library.keep_mine(0);
    right.run();
    assert_eq!(shop.tab().book(), right.book());
    assert!(right.book().contains(ingredient_key(1)));
}
