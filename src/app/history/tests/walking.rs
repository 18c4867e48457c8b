use super::*;
use crate::book::{Clash, DrinkId, Found, Step as Way};

#[test]
fn steps_go_back_one_by_one_and_come_again() {
    let storage = storage();
    let tab = Tab::open(&storage, 1);
    tab.price("31");
    tab.price("32");
    assert_eq!((done(&tab.undo()), tab.costs().as_str()), ("Price of Carrots", "31"));
    assert_eq!((done(&tab.undo()), tab.costs().as_str()), ("Price of Carrots", "30"));
    assert_eq!(tab.undo(), Walk::Nothing);
    done(&tab.redo());
    assert_eq!(tab.costs(), "31");
    done(&tab.redo());
    assert_eq!(tab.costs(), "32");
    assert_eq!(tab.redo(), Walk::Nothing);
    // After something new nothing is done again.
    tab.undo();
    tab.price("33");
    assert_eq!(tab.redo(), Walk::Nothing);
    assert_eq!(tab.history.borrow().undo_name(Reach::Everything), Some("Price of Carrots"));
}

#[test]
fn an_undo_leaves_what_another_tab_changed_in_the_same_record() {
    let storage = storage();
    let (mine, theirs) = (Tab::open(&storage, 1), Tab::open(&storage, 2));
    mine.price("31");
    storage.run();
    theirs.hear(&storage);
    let edit = carrot(&theirs.book.borrow(), |it| it.name = "Big carrots".into());
    theirs.apply("Name", &edit);
    storage.run();
    mine.hear(&storage);
    done(&mine.undo());
    assert_eq!((mine.costs().as_str(), mine.carrot().name.as_str()), ("30", "Big carrots"));
    storage.run();
    theirs.hear(&storage);
    assert_eq!(*mine.book.borrow(), *theirs.book.borrow());
}

#[test]
fn a_field_that_another_tab_changed_since_stays_and_a_sentence_says_so() {
    let storage = storage();
    let (mine, theirs) = (Tab::open(&storage, 1), Tab::open(&storage, 2));
    mine.apply("Price of Mint", &price_of(MINT, "9"));
    mine.price("31");
    storage.run();
    theirs.hear(&storage);
    theirs.price("35");
    storage.run();
    mine.hear(&storage);
    assert_eq!(
        refused(&mine.undo(), &mine.book.borrow()),
        "Not undone: “Price of Carrots”. Carrots, Case price: now $35.00, changed by a later change or in another tab. Make this change by hand."
    );
    assert_eq!(mine.costs(), "35", "the other tab's stays");
    assert_eq!(done(&mine.undo()), "Price of Mint", "the next Undo goes on");
    assert_eq!(mine.undo(), Walk::Nothing);
    let list = mine.list();
    assert!(matches!(&list[0], (name, Stands::Hindered(Hindrance::Changed(_))) if name == "Price of Carrots"));
    // The other tab takes its own back: now it can be taken back by itself.
    storage.run();
    theirs.hear(&storage);
    done(&theirs.undo());
    storage.run();
    mine.hear(&storage);
    assert_eq!(mine.costs(), "31");
    done(&mine.take_back_alone("Price of Carrots"));
    assert_eq!(mine.costs(), "30");
}

#[test]
fn what_undo_went_past_is_not_tried_again_when_the_book_opens() {
    let storage = storage();
    let (mine, theirs) = (Tab::open(&storage, 1), Tab::open(&storage, 2));
    mine.apply("Price of Mint", &price_of(MINT, "9"));
    mine.price("31");
    storage.run();
    theirs.hear(&storage);
    theirs.price("35");
    storage.run();
    mine.hear(&storage);
    let changed = storage.row(ID, "ingredient:1");
    assert!(matches!(mine.undo(), Walk::Refused { .. }));
    storage.run();
    assert_eq!(storage.row(ID, "ingredient:1"), changed, "the book is as it was");
    assert!(matches!(mine.sync.saving(), Saving::Saved { .. }));
    drop(mine);
    let mine = Tab::open(&storage, 3);
    // The other tab's own step can be taken back; then the next is that of Mint.
    assert_eq!(done(&mine.undo()), "Price of Carrots");
    assert_eq!(done(&mine.undo()), "Price of Mint");
}

#[test]
fn what_another_tab_did_as_well_is_no_step_when_the_book_opens() {
    let storage = storage();
    Tab::open(&storage, 1).price("31");
    storage.run();
    let (left, right) = (Tab::open(&storage, 2), Tab::open(&storage, 3));
    done(&left.undo());
    storage.run();
    right.hear(&storage);
    assert_eq!(right.undo(), Walk::Already { name: "Price of Carrots".into() });
    storage.run();
    assert_eq!(Tab::open(&storage, 4).undo(), Walk::Nothing);
}

#[test]
fn a_field_changed_since_is_not_done_again() {
    let storage = storage();
    let (mine, theirs) = (Tab::open(&storage, 1), Tab::open(&storage, 2));
    mine.price("31");
    mine.undo();
    storage.run();
    theirs.hear(&storage);
    theirs.price("35");
    storage.run();
    mine.hear(&storage);
    assert!(matches!(mine.redo(), Walk::Refused { .. }));
    assert_eq!((mine.costs().as_str(), mine.redo()), ("35", Walk::Nothing));
}

#[test]
fn what_another_tab_uses_is_not_taken_out_by_undo() {
    let storage = storage();
    let (mine, theirs) = (Tab::open(&storage, 1), Tab::open(&storage, 2));
    mine.apply("Add an ingredient", &Edit::Put(Record::Ingredient(named(9, "Beets"))));
    storage.run();
    theirs.hear(&storage);
    let lines = [line(1, CARROT, "3 fl oz"), line(2, 9, "1 fl oz")];
    theirs.apply("Add to a recipe", &Edit::Put(Record::Drink(drink(1, "16 fl oz", lines))));
    storage.run();
    mine.hear(&storage);
    let name = mine.book.borrow().name(Key::Drink(crate::support::drink_id(1)));
    assert_eq!(
        refused(&mine.undo(), &mine.book.borrow()),
        format!("Not undone: “Add an ingredient”. Beets is used in {name}. Replace or remove Beets there first.")
    );
    assert!(mine.book.borrow().contains(Key::Ingredient(ingredient_id(9))));
}

#[test]
fn what_both_tabs_took_back_is_no_step_any_more() {
    let storage = storage();
    Tab::open(&storage, 1).price("31");
    storage.run();
    let (left, right) = (Tab::open(&storage, 2), Tab::open(&storage, 3));
    done(&left.undo());
    storage.run();
    right.hear(&storage);
    assert_eq!(right.undo(), Walk::Already { name: "Price of Carrots".into() });
    assert_eq!((right.costs().as_str(), right.undo()), ("30", Walk::Nothing));
}

#[test]
fn one_visit_to_a_field_is_one_step() {
    let storage = storage();
    let tab = Tab::open(&storage, 1);
    for price in ["3", "34", "34.5"] {
        tab.apply_in("Price of Carrots", &price_of(CARROT, price), Some(7));
    }
    assert_eq!(tab.list().len(), 1);
    storage.run();
    assert_eq!(slips(&storage).len(), 1, "written anew, not again");
    done(&tab.undo());
    assert_eq!(tab.costs(), "30");
    // Typed to what stood there before: no step is left.
    tab.apply_in("Price of Carrots", &price_of(CARROT, "3"), Some(8));
    tab.apply_in("Price of Carrots", &price_of(CARROT, "30"), Some(8));
    storage.run();
    assert_eq!((tab.list(), slips(&storage)), (vec![], vec![]));
}

#[test]
fn undo_of_what_was_kept_over_another_tabs_goes_back_to_theirs() {
    let storage = storage();
    let (mine, theirs) = (Tab::open_beside(&storage, 1, &[2]), Tab::open_beside(&storage, 2, &[1]));
    theirs.price("35");
    mine.price("31");
    storage.run();
    mine.sync.keep_mine(0);
    storage.run();
    assert_eq!((mine.costs().as_str(), done(&mine.undo())), ("31", "Keep mine: Price of Carrots"));
    assert_eq!(mine.costs(), "35", "theirs");
    storage.run();
    theirs.hear(&storage);
    assert_eq!(
        (theirs.costs().as_str(), done(&theirs.undo())),
        ("35", "Price of Carrots"),
        "theirs can be undone there"
    );
    assert_eq!(theirs.costs(), "30");
}

#[test]
fn a_text_that_does_not_hold_takes_its_visit_back() {
    let storage = storage();
    let tab = Tab::open(&storage, 1);
    tab.price("31");
    tab.apply_in("Price of Carrots", &price_of(CARROT, "3"), Some(7));
    done(&tab.walk(|history, book| history.take_back(book, 7)));
    assert_eq!((tab.costs().as_str(), tab.list().len()), ("31", 1));
    assert_eq!(tab.walk(|history, book| history.take_back(book, 7)), Walk::Nothing);
    tab.apply_in("Price of Carrots", &price_of(CARROT, "38"), Some(7));
    storage.run();
    assert_eq!(slips(&storage).len(), 2);
    done(&tab.undo());
    assert_eq!(tab.costs(), "31");
}

#[test]
fn news_in_the_middle_of_a_visit_begin_a_new_step() {
    let storage = storage();
    let (mine, theirs) = (Tab::open(&storage, 1), Tab::open(&storage, 2));
    mine.apply_in("Price of Carrots", &price_of(CARROT, "3"), Some(7));
    storage.run();
    theirs.hear(&storage);
    let edit = carrot(&theirs.book.borrow(), |it| it.name = "Big carrots".into());
    theirs.apply("Name", &edit);
    storage.run();
    mine.hear(&storage);
    mine.apply_in("Price of Carrots", &price_of(CARROT, "35"), Some(7));
    assert_eq!(mine.list().len(), 2);
    done(&mine.undo());
    assert_eq!((mine.costs().as_str(), mine.carrot().name.as_str()), ("3", "Big carrots"));
    // All of the visit goes where its text does not hold.
    mine.redo();
    done(&mine.walk(|history, book| history.take_back(book, 7)));
    assert_eq!((mine.costs().as_str(), mine.carrot().name.as_str()), ("30", "Big carrots"));
    assert_eq!(mine.list(), []);
}

#[test]
fn a_text_that_does_not_hold_leaves_what_another_tab_wrote_since() {
    let storage = storage();
    let (mine, theirs) = (Tab::open(&storage, 1), Tab::open(&storage, 2));
    mine.apply_in("Price of Carrots", &price_of(CARROT, "3"), Some(7));
    storage.run();
    theirs.hear(&storage);
    theirs.price("35");
    storage.run();
    mine.hear(&storage);
    let walk = mine.walk(|history, book| history.take_back(book, 7));
    assert_eq!(
        refused(&walk, &mine.book.borrow()),
        "Not undone: “Price of Carrots”. Carrots, Case price: now $35.00, changed by a later change or in another tab. Make this change by hand."
    );
    assert_eq!(mine.costs(), "35");
}

#[test]
fn of_a_visit_that_goes_back_in_part_the_rest_is_told() {
    let storage = storage();
    let (mine, theirs) = (Tab::open(&storage, 1), Tab::open(&storage, 2));
    mine.apply_in("Price of Carrots", &price_of(CARROT, "3"), Some(7));
    storage.run();
    theirs.hear(&storage);
    theirs.price("35");
    storage.run();
    mine.hear(&storage);
    mine.apply_in("Price of Mint", &price_of(MINT, "9"), Some(7));
    let walk = mine.walk(|history, book| history.take_back(book, 7));
    let Walk::Partly { name, hindrance, .. } = &walk else { panic!("{walk:?}") };
    let why = said(hindrance, &mine.book.borrow());
    assert_eq!(
        (name.as_str(), why.as_str()),
        (
            "Price of Carrots",
            "Carrots, Case price: now $35.00, changed by a later change or in another tab. Make this change by hand."
        )
    );
    assert_eq!(mine.costs(), "35");
    let mint = mine.book.borrow().ingredient(ingredient_id(MINT)).unwrap().packs[0].price;
    assert_eq!(mint, money("30"), "this part went back");
}

#[test]
fn at_the_counter_undo_goes_over_batches_and_counts_only() {
    let storage = storage();
    let tab = Tab::open(&storage, 1);
    tab.apply("Batch of Nov 26, 2026", &Edit::Put(Record::Batch(batch("2026-11-26", &[(1, 1, "12")]))));
    tab.price("31");
    let edit = carrot(&tab.book.borrow(), |it| {
        let (amount, day) = (crate::support::amount("12 lb"), crate::support::day("2026-11-26"));
        it.on_hand = Some(crate::book::OnHand { amount, day });
    });
    tab.apply("Count of Carrots", &edit);
    tab.price("32");
    let counter = |undo: bool| {
        tab.walk(
            |history, book| if undo { history.undo(book, Reach::Counter) } else { history.redo(book, Reach::Counter) },
        )
    };
    assert_eq!(tab.history.borrow().undo_name(Reach::Counter), Some("Count of Carrots"));
    assert_eq!(done(&counter(true)), "Count of Carrots");
    assert_eq!(done(&counter(true)), "Batch of Nov 26, 2026");
    assert_eq!(counter(true), Walk::Nothing);
    assert_eq!((tab.costs().as_str(), tab.carrot().on_hand), ("32", None));
    assert_eq!(done(&counter(false)), "Batch of Nov 26, 2026");
    assert_eq!(tab.history.borrow().redo_name(Reach::Counter), Some("Count of Carrots"));
    assert_eq!(tab.history.borrow().list(&tab.book.borrow(), Reach::Counter).len(), 2);
    // What the owner took back is not done again there.
    assert_eq!(done(&counter(false)), "Count of Carrots");
    done(&tab.undo());
    assert_eq!((counter(false), tab.costs().as_str()), (Walk::Nothing, "31"));
}

#[test]
fn the_step_of_a_typing_session_is_known_while_it_stands() {
    let tab = Tab::open(&storage(), 1);
    let step_of = |session| tab.history.borrow().step_of(session).map(|step| step.name.clone());
    tab.apply_in("Price of Carrots", &price_of(CARROT, "31"), Some(7));
    tab.apply("Price of Mint", &price_of(MINT, "9"));
    assert_eq!(step_of(7).as_deref(), Some("Price of Carrots"), "not the last one");
    assert_eq!(step_of(8), None);
    tab.apply_in("Price of Carrots", &price_of(CARROT, "31"), Some(8));
    assert_eq!(step_of(8), None, "it changed nothing");
    tab.undo();
    tab.undo();
    assert_eq!(step_of(7), None, "it was taken back");
}

#[test]
fn at_the_counter_no_price_is_decided_on() {
    let clash = |key, path: &[&str]| Clash {
        key,
        path: path.iter().map(|name| Way::Field((*name).into())).collect(),
        found: Found::Value,
        stands: None,
        wanted: None,
    };
    let carrot = Key::Ingredient(ingredient_id(CARROT));
    let price = clash(carrot, &["ingredient", "packs", "price"]);
    let count = clash(carrot, &["ingredient", "on-hand"]);
    let drink = clash(Key::Drink(DrinkId::from_random(1)), &["drink", "name"]);
    let decided = |reach: Reach| [&price, &count, &drink].map(|clash| reach.decides(clash));
    assert_eq!(decided(Reach::Everything), [true, true, true]);
    assert_eq!(decided(Reach::Counter), [false, true, false]);
}
