use super::*;

#[test]
fn what_a_point_is_reads_back_and_other_texts_are_left_out() {
    let mut whole = Point::new(ID, &book("Apple"), Why::Import, at(0), 0xff, 1234);
    whole.made_room = 3;
    whole.name = "Two\nlines 1 2".into();
    let slip = |text: Option<String>| Slip { drawer: Drawer::Points, book: ID, id: whole.id.clone(), text };
    assert_eq!(Point::from_slip(&slip(Some(whole.text()))), Some(whole.clone()));
    assert_eq!(whole.text(), "import 1763600000000 2026-11-20 0 1 1234 3\nTwo\nlines 1 2");
    for (why, _) in Why::ALL {
        let point = Point { why, ..whole.clone() };
        assert_eq!(Point::from_slip(&slip(Some(point.text()))).map(|point| point.why), Some(why));
    }
    for other in ["", "import", "other 1 2026-11-20 0 1 2 3\nName", "import 1 2026-11-20 0 1 2\nName"] {
        assert_eq!(Point::from_slip(&slip(Some(other.into()))), None, "{other:?}");
    }
    assert_eq!(Point::from_slip(&slip(Some("import 1 2026-11-20 0 1 2 3 4\nName".into()))), None);
    assert_eq!(Point::from_slip(&slip(None)), None);
}

#[test]
fn the_first_change_of_a_day_leaves_the_book_before_it() {
    let storage = storage();
    let tab = Tab::open(&storage);
    tab.edit(0, &put("Pear"));
    tab.edit(0, &put("Quince"));
    storage.run();
    assert_eq!(held(&storage, ID), [(Why::FirstChange, "Apple".into())]);
    tab.edit(0, &put("Plum"));
    storage.run();
    assert_eq!(held(&storage, ID).len(), 1, "once a day");
    tab.edit(1, &put("Beet"));
    storage.run();
    assert_eq!(held(&storage, ID), [(Why::FirstChange, "Plum".into()), (Why::FirstChange, "Apple".into())]);
    // Opened again, or in another tab, on the same day: the state before the day is kept already.
    let again = Tab::open(&storage);
    again.edit(1, &put("Kale"));
    storage.run();
    assert_eq!(held(&storage, ID).len(), 2);
}

#[test]
fn a_point_waits_until_the_edit_is_saved() {
    let storage = storage();
    let tab = Tab::open(&storage);
    storage.fail_next(Fault::Full);
    tab.edit(0, &put("Pear"));
    storage.run();
    assert_eq!(held(&storage, ID), []);
    tab.edit(0, &put("Quince"));
    storage.run();
    assert_eq!(held(&storage, ID), [(Why::FirstChange, "Apple".into())], "from before the edit that had to wait");
}

#[test]
fn without_room_for_a_point_the_edit_is_saved_and_it_is_told() {
    let storage = storage();
    let tab = Tab::open(&storage);
    storage.fail_after(1, Fault::Full);
    tab.edit(0, &put("Pear"));
    storage.run();
    assert!(matches!(tab.sync.saving(), Saving::Saved { revision: 2 }));
    assert_eq!(*tab.failed.borrow(), Some((Why::FirstChange, Fault::Full)));
    assert_eq!(held(&storage, ID), []);
    // No edit of the next ten seconds tries again: a point is a whole book.
    for (seconds, name) in [(0, "Quince"), (9, "Lime")] {
        tab.now.set(seconds * 1000);
        tab.edit(0, &put(name));
        storage.run();
        assert_eq!(*tab.failed.borrow(), Some((Why::FirstChange, Fault::Full)), "{seconds}");
    }
    // Then it is tried again after an edit, with the book that it is to hold.
    tab.now.set(10_000);
    tab.edit(0, &put("Mint"));
    storage.run();
    assert_eq!(*tab.failed.borrow(), None);
    assert_eq!(held(&storage, ID), [(Why::FirstChange, "Apple".into())]);
}

#[test]
fn an_import_leaves_the_book_before_it_also_later_on_the_day() {
    let storage = storage();
    let tab = Tab::open(&storage);
    tab.replace(0, Why::Import, &book("Lime"));
    storage.run();
    assert_eq!(held(&storage, ID), [(Why::Import, "Apple".into())], "which is that of the first change too");
    tab.replace(0, Why::Adoption, &book("Mint"));
    storage.run();
    assert_eq!(held(&storage, ID), [(Why::Adoption, "Lime".into()), (Why::Import, "Apple".into())]);
}

#[test]
fn what_was_refused_leaves_no_point() {
    let storage = storage();
    let tab = Tab::open(&storage);
    tab.points.before(Why::Import, at(0), 1, tab.book.borrow().clone());
    tab.points.refused();
    tab.edit(0, &put("Pear"));
    storage.run();
    assert_eq!(held(&storage, ID), [(Why::FirstChange, "Apple".into())]);
}

#[test]
fn older_points_go_with_the_one_that_needs_their_room_and_it_says_so() {
    let storage = storage();
    let large = [point(ID, -1, Why::Import, 15_000_000), point(OTHER, -2, Why::Import, 15_000_000)];
    let slips: Vec<Slip> = large
        .iter()
        .flat_map(|it| [it.slip(Drawer::Points, Some(it.text())), it.slip(Drawer::Copies, Some("x".into()))])
        .collect();
    run(&storage, |shelf| async move { shelf.backing().file(&slips).await }).unwrap();
    let tab = Tab::open(&storage);
    tab.edit(0, &put("Pear"));
    storage.run();
    let points = run(&storage, |shelf| async move { of_book(shelf.backing(), ID).await }).unwrap();
    assert_eq!(
        points.iter().map(|point| (point.why, point.made_room)).collect::<Vec<_>>(),
        [(Why::FirstChange, 1), (Why::Import, 0)]
    );
    let copies = run(&storage, |shelf| async move { shelf.backing().slips(Drawer::Copies, None).await }).unwrap();
    assert_eq!(copies.len(), 2, "what the gone one held is gone too");
}
