use super::*;
use crate::book::{Key, Tree};
use crate::store::{ConflictReason, Drawer, Durability, Fault, Slip};
use crate::support::dice::Dice;
use crate::support::runs::Runs;

fn key(id: u64) -> Key {
    Key::Ingredient(IngredientId::from_random(id))
}

/// The tab writes its journal, and ends before anything else is done.
fn ends(storage: &InMemory, tab: Tab) {
    tab.sync.write_journal();
    drop(tab);
    storage.end_all_tabs();
}

/// Opens the book, and saves what was left of it.
fn opened(storage: &InMemory) -> Tab {
    let tab = Tab::open(storage);
    tab.sync.retry();
    storage.run();
    tab
}

#[test]
fn t02_what_waits_when_a_tab_goes_is_there_when_the_book_opens() {
    let storage = storage();
    let tab = Tab::open(&storage);
    tab.put(ingredient(1, "Pear"));
    tab.put(ingredient(3, "Kale"));
    tab.edit(&Edit::Remove(key(2)));
    let screen = tab.book();
    ends(&storage, tab);
    assert_eq!(stored(&storage), screen, "it is shown at once");
    let tab = opened(&storage);
    assert_eq!(tab.book(), screen);
    assert_eq!(tab.sync.saving(), Saving::Saved { revision: 2 });
    assert_eq!(storage.journals(), [[""; 0]; 0]);
    assert_eq!(stored(&storage), screen);
}

#[test]
fn t02_what_was_saved_after_all_is_not_done_again() {
    let storage = storage();
    let tab = Tab::open(&storage);
    storage.lose_next_answer(Fault::Closed);
    tab.put(ingredient(1, "Pear"));
    storage.run();
    tab.put(ingredient(3, "Kale"));
    let screen = tab.book();
    ends(&storage, tab);
    // Another tab went on with what was saved.
    let other = opened(&storage);
    assert_eq!((other.book(), other.sync.saving()), (screen, Saving::Saved { revision: 3 }));
}

#[test]
fn t02_a_note_is_its_tabs_own_while_the_tab_is_there() {
    let storage = storage();
    let tab = Tab::open(&storage);
    tab.put(ingredient(1, "Pear"));
    tab.sync.write_journal();
    assert_eq!(storage.journals().len(), 1);
    let other = run(&storage, |shelf| async move { shelf.backing().orphaned_journals(ID).await });
    assert_eq!(other, []);
    storage.run();
    assert_eq!(storage.journals(), [[""; 0]; 0], "it goes once everything is saved");
    assert_eq!(tab.sync.saving(), Saving::Saved { revision: 2 });
    tab.sync.write_journal();
    assert_eq!(storage.journals(), [[""; 0]; 0], "there is nothing to write down");
}

#[test]
fn t02_what_does_not_hold_any_more_is_in_conflict() {
    for keep in [true, false] {
        let storage = storage();
        let (tab, other) = (Tab::open(&storage), Tab::open(&storage));
        storage.fail_next(Fault::Full);
        tab.step("Rename", &Edit::Put(ingredient(1, "Quince")));
        tab.put(ingredient(9, "Beet"));
        storage.run();
        other.put(ingredient(1, "Pear"));
        storage.run();
        ends(&storage, tab);

        let tab = opened(&storage);
        let Saving::InConflict { conflicts } = tab.sync.saving() else { panic!("{:?}", tab.sync.saving()) };
        assert_eq!((conflicts.len(), conflicts[0].name(), conflicts[0].can_be_kept), (1, "Rename", true));
        assert!(matches!(&conflicts[0].why, ConflictReason::Changed(clashes) if clashes[0].field() == Some("name")));
        assert_eq!(tab.book().name(key(1)), "Quince", "the person sees it");
        assert_eq!(tab.book().name(key(9)), "Beet", "the others are saved");
        assert_eq!(storage.journals().len(), 1, "the journal stays until the person decides");
        if keep {
            tab.sync.keep_mine(0);
        } else {
            tab.sync.take_theirs(0);
        }
        storage.run();
        assert!(matches!(tab.sync.saving(), Saving::Saved { .. }));
        assert_eq!(storage.journals(), [[""; 0]; 0]);
        assert_eq!(stored(&storage).name(key(1)), if keep { "Quince" } else { "Pear" });
    }
}

#[test]
fn t02_what_the_person_was_asked_about_is_asked_again_however_often_the_page_is_loaded() {
    let storage = storage();
    let (tab, other) = (Tab::open(&storage), Tab::open(&storage));
    other.put(ingredient(1, "Pear"));
    storage.run();
    tab.put(ingredient(1, "Q"));
    storage.run();
    // What is typed on is shown over theirs.
    tab.put(ingredient(1, "Quince"));
    storage.run();
    drop(other);
    let mut tab = tab;
    for _ in 0..3 {
        assert_eq!(tab.book().name(key(1)), "Quince", "the person sees it");
        ends(&storage, tab);
        tab = opened(&storage);
        let Saving::InConflict { conflicts } = tab.sync.saving() else { panic!("{:?}", tab.sync.saving()) };
        assert!(matches!(&conflicts[..], [change] if change.can_be_kept), "{conflicts:?}");
        let ConflictReason::Changed(clashes) = &conflicts[0].why else { panic!("{conflicts:?}") };
        assert_eq!((clashes[0].field(), &clashes[0].stands), (Some("name"), &Some(Tree::Text("Pear".into()))));
        let written = storage.row(ID, &key(1).to_string()).unwrap();
        assert!(written.contains("Pear"), "theirs stays until then: {written}");
    }
    tab.sync.take_theirs(0);
    storage.run();
    assert_eq!((tab.book().name(key(1)), storage.journals().len()), ("Pear".to_string(), 0));
    assert_eq!(stored(&storage), tab.book());
}

#[test]
fn t02_a_change_that_cannot_be_put_over_theirs_says_so_again() {
    let storage = storage();
    let (tab, other) = (Tab::open(&storage), Tab::open(&storage));
    tab.edit(&Edit::Remove(key(2)));
    tab.sync.write_journal();
    drop(tab);
    storage.end_all_tabs();
    // It opened the book before the journal was there, and goes on.
    other.put(drink(2, &[2]));
    storage.run();
    let tab = opened(&storage);
    let Saving::InConflict { conflicts } = tab.sync.saving() else { panic!("{:?}", tab.sync.saving()) };
    assert!(matches!(&conflicts[0].why, ConflictReason::Refused(_)) && !conflicts[0].can_be_kept);
    tab.sync.write_journal();
    storage.end_all_tabs();
    assert!(matches!(opened(&storage).sync.saving(), Saving::InConflict { .. }), "nothing is dropped unseen");
}

#[test]
fn t02_who_takes_it_up_may_go_as_well() {
    let storage = storage();
    let tab = Tab::open(&storage);
    tab.put(ingredient(1, "Pear"));
    ends(&storage, tab);
    let tab = Tab::open(&storage);
    tab.put(ingredient(3, "Kale"));
    let screen = tab.book();
    storage.end_all_tabs();
    assert_eq!(stored(&storage).name(key(1)), "Pear", "it wrote no journal, and deleted none");
    ends(&storage, tab);
    assert_eq!(storage.journals().len(), 1, "one has it all");
    assert_eq!(stored(&storage), screen);
}

#[test]
fn t02_two_tabs_that_went_leave_two_notes() {
    let storage = storage();
    let (left, right) = (Tab::open(&storage), Tab::open(&storage));
    left.put(ingredient(1, "Pear"));
    right.put(ingredient(2, "Basil"));
    left.sync.write_journal();
    ends(&storage, right);
    let tab = opened(&storage);
    assert_eq!([tab.book().name(key(1)), tab.book().name(key(2))], ["Pear", "Basil"]);
    assert_eq!((storage.journals().len(), stored(&storage)), (0, tab.book()));
}

#[test]
fn t02_a_deleted_book_takes_notes_along() {
    let storage = storage();
    let (tab, other) = (Tab::open(&storage), Tab::open(&storage));
    tab.put(ingredient(1, "Pear"));
    tab.sync.write_journal();
    storage.end_all_tabs();
    run(&storage, |shelf| async move { shelf.backing().delete(ID, &[]).await }).unwrap();
    assert_eq!(storage.journals(), [[""; 0]; 0]);
    // A tab that has it open leaves none.
    other.sync.remote_deleted();
    other.put(ingredient(2, "Basil"));
    other.sync.write_journal();
    assert_eq!(storage.journals(), [[""; 0]; 0]);
}

#[test]
fn t02_without_room_for_a_note_there_is_none() {
    let storage = storage();
    storage.leave_no_room_for_journals();
    let tab = Tab::open(&storage);
    tab.put(ingredient(1, "Pear"));
    tab.sync.write_journal();
    storage.run();
    assert_eq!(tab.sync.saving(), Saving::Saved { revision: 2 });
    tab.put(ingredient(1, "Quince"));
    ends(&storage, tab);
    assert_eq!(stored(&storage).name(key(1)), "Pear");
}

#[test]
fn t02_a_note_that_does_not_read_stays_for_a_version_that_reads_it() {
    let storage = storage();
    let tab = Tab::open(&storage);
    tab.put(ingredient(1, "Pear"));
    tab.sync.write_journal();
    let whole = storage.journals().remove(0);
    storage.run();
    let mut broken: Vec<Vec<String>> = (1..whole.len()).map(|length| whole[..length].to_vec()).collect();
    for place in 1..whole.len() {
        let mut other = whole.clone();
        other[place] = "ingredient:77".into();
        // How hard to press may be any text, and what it was before holds nothing up.
        if place != 2 {
            broken.push(other);
        }
    }
    tab.put(ingredient(1, "Apple"));
    storage.run();
    for texts in broken {
        storage.set_journal(ID, texts.clone());
        let tab = opened(&storage);
        assert_eq!(tab.book().name(key(1)), "Apple", "{texts:?}");
        assert_eq!(storage.journals(), [texts]);
    }
}

#[test]
fn t02_given_up_it_is_not_found() {
    let storage = storage();
    let tab = Tab::open(&storage);
    storage.fail_next(Fault::Full);
    tab.put(ingredient(1, "Pear"));
    storage.run();
    tab.sync.write_journal();
    tab.sync.delete_journals();
    storage.end_all_tabs();
    assert_eq!(stored(&storage), book());
}

/// An edit with its step, as the app does it; a step that has the id of one before takes its place.
fn does(tab: &Tab, id: u64, text: &str, edit: &Edit) {
    let mut book = tab.book.borrow_mut();
    let applied = book.apply(edit).unwrap();
    let change = Change::new("An edit", NOON, &book, &applied);
    drop(book);
    let step = Slip { drawer: Drawer::Steps, book: ID, id: format!("{id:04}"), text: Some(text.into()) };
    tab.sync.save(change.beside(vec![step], Durability::Relaxed));
}

/// A tab types, is stopped anywhere in its transactions, writes its journal and goes: each time the
/// book opens as it was on the screen.
#[test]
fn t02_wherever_a_tab_stops_nothing_is_lost() {
    let mut runs = Runs::of("T2");
    for seed in 0..u64::from(Runs::asked_for(200)) {
        runs.begin();
        let (storage, mut dice) = (storage(), Dice::new(seed));
        for opening in 0..4 {
            let tab = Tab::open(&storage);
            tab.sync.retry();
            for letter in 0..dice.below(8) {
                let (id, text) = (10 * opening + dice.below(8), format!("{opening} {letter}"));
                match dice.below(8) {
                    0 => storage.fail_next(Fault::Full),
                    1 => storage.lose_next_answer(Fault::Closed),
                    2 => tab.sync.write_journal(),
                    _ => {}
                }
                let edit = match dice.below(5) {
                    0 if tab.book().contains(key(3)) => Edit::Remove(key(3)),
                    _ => Edit::Put(ingredient(1 + dice.below(3), &text)),
                };
                does(&tab, id, &text, &edit);
                storage.run_turns(dice.below(4));
            }
            let screen = tab.book();
            ends(&storage, tab);
            assert_eq!(stored(&storage), screen, "{seed}");
        }
        runs.held();
    }
}
