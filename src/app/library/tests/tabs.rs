use super::*;
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
        Saving::AtOdds { changes } => Some(words::keeping::all_at_odds(&changes, &tab.book())),
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
        match keeps {
            true => right.library.keep_mine(0),
            false => right.library.take_theirs(0),
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
            "“Name of Carrots” is not saved. Another tab deleted the ingredient Baby carrots. Keep yours to bring it back, or take theirs."
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
        "“Delete Carrots” is not saved. Another tab uses Carrots in {drink}. Yours cannot be kept beside that. Mend that first, then keep yours; or take theirs."
    );
    assert_eq!(notice(&right), Some(said.clone()));
    right.library.keep_mine(0);
    right.run();
    assert_eq!(notice(&right), Some(said), "nothing is dropped unseen");
}
