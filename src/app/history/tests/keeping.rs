use super::*;
use crate::app::history::{LARGEST, LONGEST};
use crate::store::Fault;

#[test]
fn steps_are_there_again_when_the_book_is() {
    let storage = storage();
    let tab = Tab::open(&storage, 1);
    tab.price("31");
    tab.apply("Price of Mint", &price_of(MINT, "9"));
    tab.price("32");
    done(&tab.undo());
    storage.run();
    drop(tab);

    let tab = Tab::open(&storage, 2);
    assert_eq!(done(&tab.redo()), "Price of Carrots");
    assert_eq!(tab.costs(), "32");
    assert_eq!(done(&tab.undo()), "Price of Carrots");
    assert_eq!(done(&tab.undo()), "Price of Mint");
    storage.run();
    drop(tab);

    let tab = Tab::open(&storage, 3);
    assert_eq!((done(&tab.undo()), tab.undo()), ("Price of Carrots", Walk::Nothing));
    assert_eq!(*tab.book.borrow(), book());
    let again: Vec<String> = (0..3).map(|_| done(&tab.redo()).to_string()).collect();
    assert_eq!(again, ["Price of Carrots", "Price of Mint", "Price of Carrots"]);
    assert_eq!(tab.costs(), "32");
}

#[test]
fn an_edit_and_its_step_are_written_together_or_not_at_all() {
    let storage = storage();
    let tab = Tab::open(&storage, 1);
    tab.price("31");
    storage.run();
    // Killed on the way: neither is there.
    storage.fail_next(Fault::Closed);
    tab.price("32");
    storage.run();
    let killed = Tab::open(&storage, 2);
    assert_eq!((killed.costs().as_str(), killed.list().len()), ("31", 1));
    // Killed before the answer came: both are there.
    storage.lose_next_answer(Fault::Closed);
    tab.price("33");
    storage.run();
    let killed = Tab::open(&storage, 3);
    assert_eq!((killed.costs().as_str(), killed.list().len()), ("32", 2));
    done(&killed.undo());
    assert_eq!(killed.costs(), "31");
}

#[test]
fn t02_letters_that_a_tab_left_are_one_step_with_those_that_were_saved() {
    for saved in 0..=4 {
        let storage = storage();
        let tab = Tab::open(&storage, 1);
        tab.price("29");
        storage.run();
        for (place, price) in ["3", "31", "31.5", "31.52"].into_iter().enumerate() {
            tab.apply_in("Price of Carrots", &price_of(CARROT, price), Some(1));
            if place + 1 == saved {
                // Written, and the tab does not hear of it any more.
                storage.lose_next_answer(Fault::Closed);
                storage.run();
            }
        }
        tab.apply("Price of Mint", &price_of(MINT, "9"));
        tab.sync.write_journal();
        drop(tab);
        storage.end_all_tabs();

        let tab = Tab::open(&storage, 2);
        assert_eq!((tab.costs().as_str(), tab.list().len()), ("31.52", 3), "{saved}");
        tab.sync.retry();
        storage.run();
        assert_eq!((slips(&storage).len(), storage.journals().len()), (3, 0), "{saved}");
        assert_eq!(done(&tab.undo()), "Price of Mint");
        assert_eq!(done(&tab.undo()), "Price of Carrots");
        assert_eq!(tab.costs(), "29", "{saved}");
        storage.run();
        drop(tab);
        assert_eq!(Tab::open(&storage, 3).costs(), "29", "{saved}");
    }
}

#[test]
fn t02_what_was_taken_back_before_a_tab_went_stays_taken_back() {
    for saved in [false, true] {
        let storage = storage();
        let tab = Tab::open(&storage, 1);
        tab.price("31");
        storage.run();
        done(&tab.undo());
        if saved {
            storage.lose_next_answer(Fault::Closed);
            storage.run();
        }
        tab.sync.write_journal();
        drop(tab);
        storage.end_all_tabs();
        let tab = Tab::open(&storage, 2);
        assert_eq!(tab.costs(), "30", "{saved}");
        assert_eq!(done(&tab.redo()), "Price of Carrots");
        assert_eq!(tab.costs(), "31", "{saved}");
    }
}

#[test]
fn the_last_two_hundred_steps_are_kept() {
    let storage = storage();
    let tab = Tab::open(&storage, 1);
    for price in 0..LONGEST + 10 {
        tab.price(&(100 + price).to_string());
    }
    storage.run();
    drop(tab);
    assert_eq!(slips(&storage).len(), LONGEST);
    let tab = Tab::open(&storage, 2);
    let mut taken_back = 0;
    while tab.undo() != Walk::Nothing {
        taken_back += 1;
    }
    assert_eq!((taken_back, tab.costs().as_str()), (LONGEST, "109"));
}

#[test]
fn steps_that_two_tabs_wrote_are_cut_to_two_hundred_at_the_next_opening() {
    let storage = storage();
    let (left, right) = (Tab::open(&storage, 1), Tab::open(&storage, 2));
    for price in 0..150 {
        left.price(&(100 + price).to_string());
        storage.run();
        right.hear(&storage);
        right.apply("Price of Mint", &price_of(MINT, &(100 + price).to_string()));
        storage.run();
        left.hear(&storage);
    }
    assert_eq!(slips(&storage).len(), 300, "each tab keeps its own");
    let tab = Tab::open(&storage, 3);
    assert_eq!(tab.list().len(), LONGEST);
    tab.price("99");
    storage.run();
    assert_eq!(slips(&storage).len(), LONGEST);
    assert_eq!(tab.history.borrow().steps().last().unwrap().name, "Price of Carrots");
}

#[test]
fn steps_take_no_more_than_their_share_of_the_device() {
    let storage = storage();
    let tab = Tab::open(&storage, 1);
    // Some 80 bytes a weighing, twice in a step that changes one into the other.
    let weighed = |weight: u32| {
        let amount = crate::support::amount(&format!("{weight} lb"));
        let day = crate::support::day("2026-11-26");
        let one = crate::book::Weighing { day, bought: amount, trimmed: None, pressed: None };
        carrot(&tab.book.borrow(), |it| it.weighings = vec![one; 3_000])
    };
    for weight in 1..=12 {
        tab.apply("Weighings", &weighed(weight));
    }
    storage.run();
    let bytes: usize = slips(&storage).iter().filter_map(|slip| slip.text.as_ref().map(String::len)).sum();
    assert!(bytes <= LARGEST, "{bytes}");
    assert!(bytes > LARGEST / 2, "{bytes}: as many as fit are kept");
    let again = Tab::open(&storage, 2);
    assert_eq!(again.list().len(), slips(&storage).len());
    done(&again.undo());
    assert_eq!(again.carrot().weighings[0].bought, crate::support::amount("11 lb"));
}

#[test]
fn a_step_too_large_to_keep_stays_on_the_page_and_drives_no_other_out() {
    let storage = storage();
    let tab = Tab::open(&storage, 1);
    tab.price("31");
    // Some 120 bytes a weighing.
    let weighed = |weight: u32, count| {
        let amount = crate::support::amount(&format!("{weight}00000000.123456 lb"));
        let one = crate::book::Weighing {
            day: crate::support::day("2026-11-26"),
            bought: amount,
            trimmed: Some(amount),
            pressed: Some(amount),
        };
        carrot(&tab.book.borrow(), |it| it.weighings = vec![one; count])
    };
    tab.apply("Weighings", &weighed(1, 40_000));
    tab.price("32");
    let list = || tab.history.borrow().list(&tab.book.borrow(), Reach::Everything);
    let told: Vec<(String, bool)> = list().into_iter().map(|listed| (listed.name, listed.too_large)).collect();
    let [one, other] = ["Price of Carrots", "Weighings"].map(str::to_string);
    assert_eq!(told, [(one.clone(), false), (other.clone(), true), (one.clone(), false)]);
    storage.run();
    assert_eq!(slips(&storage).len(), 2, "it is not written");
    // Of two of them the newer stays.
    tab.apply("Fewer weighings", &weighed(2, 38_000));
    assert_eq!(list().iter().map(|listed| listed.name.as_str()).collect::<Vec<_>>(), ["Fewer weighings", &one, &one]);
    assert_eq!(done(&tab.undo()), "Fewer weighings");
    assert_eq!(tab.carrot().weighings.len(), 40_000);
    done(&tab.undo());
    done(&tab.undo());
    assert_eq!(tab.costs(), "30");
}

#[test]
fn a_step_that_does_not_read_stands_in_the_way_of_nothing() {
    let storage = storage();
    let tab = Tab::open(&storage, 1);
    tab.price("31");
    tab.price("32");
    storage.run();
    let mut spoilt = slips(&storage).remove(0);
    spoilt.text = spoilt.text.map(|text| text.replace("\"patch\"", "\"batch\""));
    run(&storage, |shelf| async move { shelf.backing().file(&[spoilt]).await }).unwrap();
    let tab = Tab::open(&storage, 2);
    assert_eq!(tab.list().len(), 1);
    done(&tab.undo());
    assert_eq!(tab.costs(), "31");
    storage.run();
    assert_eq!(slips(&storage).len(), 1, "thrown away with the next edit");
}

#[test]
fn a_tab_that_loads_again_walks_over_no_step_of_a_tab_that_is_there() {
    let storage = storage();
    let (mine, theirs) = (Tab::open(&storage, 1), Tab::open_beside(&storage, 2, &[1]));
    mine.price("31");
    storage.run();
    theirs.hear(&storage);
    theirs.apply("Price of Mint", &price_of(MINT, "9"));
    storage.run();
    drop(mine);

    let mine = Tab::open_beside(&storage, 1, &[2]);
    assert_eq!(mine.list().len(), 2, "the list has all steps");
    assert_eq!(done(&mine.undo()), "Price of Carrots", "its own, though the other tab's came later");
    assert_eq!(mine.undo(), Walk::Nothing);
    assert_eq!(done(&mine.redo()), "Price of Carrots");
    // One of theirs goes back where the person asks for it by name.
    assert_eq!(done(&mine.take_back_alone("Price of Mint")), "Price of Mint");
    storage.run();
    drop((mine, theirs));

    // Both are gone: whoever comes goes on with all steps.
    let later = Tab::open(&storage, 3);
    assert_eq!((done(&later.undo()), done(&later.undo())), ("Undo Price of Mint", "Price of Mint"));
}

#[test]
fn until_it_knows_which_tabs_are_there_undo_keeps_to_this_page() {
    let storage = storage();
    let tab = Tab::open(&storage, 1);
    tab.price("31");
    storage.run();
    let mut history = History::open(ID, 2, &slips(&storage));
    assert_eq!(history.undo_name(Reach::Everything), None);
    history.among(2, vec![1]);
    assert_eq!(history.undo_name(Reach::Everything), None);
    history.among(2, Vec::new());
    assert_eq!(history.undo_name(Reach::Everything), Some("Price of Carrots"));
}

#[test]
fn every_truncated_step_is_dropped_quietly() {
    let storage = storage();
    let tab = Tab::open(&storage, 1);
    tab.price("31");
    storage.run();
    let whole = slips(&storage).remove(0);
    let text = whole.text.clone().unwrap();
    for length in 0..text.len() {
        let cut = Slip { text: Some(text[..length].to_string()), ..whole.clone() };
        let mut history = History::open(ID, 2, &[cut]);
        assert_eq!((history.steps().len(), history.take_slips().len()), (0, 1), "{length}");
    }
}

#[test]
fn tabs_at_one_instant_write_steps_of_different_ids() {
    let storage = storage();
    let (left, right) = (Tab::open(&storage, 1), Tab::open(&storage, 2));
    left.price("31");
    storage.run();
    right.apply("Price of Mint", &price_of(MINT, "9"));
    storage.run();
    let ids: Vec<String> = slips(&storage).into_iter().map(|slip| slip.id).collect();
    assert_eq!(ids.len(), 2);
    assert_ne!(ids[0], ids[1]);
    // A clock that was put back does not turn the order round.
    left.now.set(NOON - 3_600_000);
    left.price("32");
    let names: Vec<u64> = left.history.borrow().steps().iter().map(|step| step.at).collect();
    assert_eq!(names, [NOON + 60_000, NOON - 3_540_000]);
    assert_eq!((done(&left.undo()), left.costs().as_str()), ("Price of Carrots", "31"));
}

#[test]
fn a_tab_takes_back_what_it_found_at_opening_and_not_what_another_did_since() {
    let storage = storage();
    let first = Tab::open(&storage, 1);
    first.price("31");
    storage.run();
    let second = Tab::open(&storage, 2);
    first.apply("Price of Mint", &price_of(MINT, "9"));
    storage.run();
    second.hear(&storage);
    assert_eq!(done(&second.undo()), "Price of Carrots");
    assert_eq!(second.undo(), Walk::Nothing);
    storage.run();
    let third = Tab::open(&storage, 3);
    let names: Vec<String> = third.list().into_iter().map(|(name, _)| name).collect();
    assert_eq!(names, ["Price of Mint", "Price of Carrots"], "all of them at the next opening");
    assert_eq!(done(&third.undo()), "Price of Mint");
}

#[test]
fn what_could_not_be_saved_is_saved_later_with_its_steps() {
    let storage = storage();
    let tab = Tab::open(&storage, 1);
    storage.fail_next(Fault::Full);
    tab.price("31");
    storage.run();
    assert_eq!(slips(&storage), []);
    tab.price("32");
    storage.run();
    assert!(matches!(tab.sync.saving(), Saving::Saved { .. }));
    assert_eq!(slips(&storage).len(), 2);
}
