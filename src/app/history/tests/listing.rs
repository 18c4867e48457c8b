use super::*;

/// The names of the steps, the latest first.
fn names(tab: &Tab) -> Vec<String> {
    tab.list().into_iter().map(|(name, _)| name).collect()
}

fn stands(tab: &Tab, wanted: &str) -> Stands {
    tab.list().into_iter().find(|(name, _)| name == wanted).unwrap().1
}

#[test]
fn one_step_is_taken_back_by_itself_and_that_is_a_step() {
    let storage = storage();
    let tab = Tab::open(&storage, 1);
    tab.price("31");
    tab.apply("Price of Mint", &price_of(MINT, "9"));
    done(&tab.take_back_alone("Price of Carrots"));
    assert_eq!(tab.costs(), "30");
    assert_eq!(names(&tab), ["Undo Price of Carrots", "Price of Mint", "Price of Carrots"]);
    assert_eq!(stands(&tab, "Price of Carrots"), Stands::TakenBack);
    assert_eq!(tab.take_back_alone("Price of Carrots"), Walk::Nothing, "not twice");
    // It is undone like any other, and so is the step that it took back.
    assert_eq!((done(&tab.undo()), tab.costs().as_str()), ("Undo Price of Carrots", "31"));
    assert_eq!(stands(&tab, "Price of Carrots"), Stands::Free);
    done(&tab.redo());
    assert_eq!(tab.costs(), "30");
    assert_eq!(stands(&tab, "Price of Carrots"), Stands::TakenBack);
    done(&tab.undo());
    assert_eq!(done(&tab.undo()), "Price of Mint");
    assert_eq!((done(&tab.undo()), tab.costs().as_str()), ("Price of Carrots", "30"));
}

#[test]
fn undo_passes_over_a_step_that_was_taken_back_by_itself() {
    let storage = storage();
    let (tab, theirs) = (Tab::open(&storage, 1), Tab::open(&storage, 2));
    tab.apply("Price of Mint", &price_of(MINT, "9"));
    tab.price("31");
    done(&tab.take_back_alone("Price of Carrots"));
    storage.run();
    theirs.hear(&storage);
    theirs.price("35");
    storage.run();
    tab.hear(&storage);
    assert!(matches!(tab.undo(), Walk::Refused { name, .. } if name == "Undo Price of Carrots"));
    assert_eq!(done(&tab.undo()), "Price of Mint");
}

#[test]
fn a_step_that_later_ones_hang_on_says_which() {
    let storage = storage();
    let tab = Tab::open(&storage, 1);
    tab.apply("Add an ingredient", &Edit::Put(Record::Ingredient(named(9, "Beets"))));
    tab.apply("Price of Beets", &price_of(9, "12"));
    let lines = [line(1, CARROT, "3 fl oz"), line(2, 9, "1 fl oz")];
    tab.apply("Add to a recipe", &Edit::Put(Record::Drink(drink(1, "16 fl oz", lines))));
    let minute = |minute: u64| NOON + minute * 60_000;
    assert_eq!(stands(&tab, "Add an ingredient"), Stands::Under(vec![("Price of Beets".into(), minute(2))]));
    assert_eq!(stands(&tab, "Price of Beets"), Stands::Free);
    assert_eq!(tab.take_back_alone("Add an ingredient"), Walk::Nothing);
    done(&tab.take_back_alone("Price of Beets"));
    // What uses it hangs on it too.
    assert_eq!(stands(&tab, "Add an ingredient"), Stands::Under(vec![("Add to a recipe".into(), minute(3))]));
    done(&tab.take_back_alone("Add to a recipe"));
    done(&tab.take_back_alone("Add an ingredient"));
    assert_eq!(*tab.book.borrow(), book());
}

#[test]
fn a_field_that_went_there_and_back_still_hangs() {
    let storage = storage();
    let tab = Tab::open(&storage, 1);
    tab.apply("First price", &price_of(CARROT, "31"));
    tab.apply("Second price", &price_of(CARROT, "32"));
    tab.apply("Third price", &price_of(CARROT, "31"));
    let Stands::Under(later) = stands(&tab, "First price") else { panic!("{:?}", tab.list()) };
    assert_eq!(later.iter().map(|(name, _)| name.as_str()).collect::<Vec<_>>(), ["Third price", "Second price"]);
}

#[test]
fn a_list_of_two_hundred_steps_leaves_the_book_as_it_is() {
    let storage = storage();
    let tab = Tab::open(&storage, 1);
    for price in 0..200 {
        tab.price(&format!("{}", 100 + price));
    }
    let before = tab.book.borrow().clone();
    assert_eq!(tab.list().len(), 200);
    assert_eq!(*tab.book.borrow(), before);
}
