use super::*;

#[test]
fn a_deleted_book_comes_back_whole_byte_for_byte() {
    let storage = storage();
    let before = exchange::write(&book("Apple"));
    assert!(deleted(&storage, 0).is_empty());
    delete_it(&storage, 0).unwrap();
    assert_eq!(run(&storage, |shelf| async move { shelf.open(ID).await.map(|_| ()) }), Err(Fault::Gone));
    let list = deleted(&storage, 30);
    assert_eq!(
        list.iter().map(|it| (it.book, it.name.as_str(), it.ingredients)).collect::<Vec<_>>(),
        [(ID, "Corner bar", 1)]
    );
    assert!(deleted(&storage, 31).is_empty(), "only for 30 days");
    assert_eq!(run(&storage, |shelf| async move { was_deleted(shelf.backing(), ID).await }), Ok(true));
    let text = list[0].clone();
    assert_eq!(run(&storage, |shelf| async move { copy_of(shelf.backing(), &text).await }), Ok(before.clone()));

    let back = list[0].clone();
    run(&storage, |shelf| async move { bring_back(&shelf, &back, 0).await }).unwrap();
    let (book, _) = run(&storage, |shelf| async move { shelf.open(ID).await }).unwrap();
    assert_eq!(exchange::write(&book), before);
    assert!(deleted(&storage, 0).is_empty(), "what is there is not deleted");
    assert_eq!(held(&storage, ID), [], "and its earlier points age as those of any book on the shelf");
}

#[test]
fn a_deleted_book_comes_back_with_its_steps_and_they_go_with_its_time() {
    let storage = storage();
    let step = Slip { drawer: Drawer::Steps, book: ID, id: "1-1".into(), text: Some("a step".into()) };
    let kept = step.clone();
    run(&storage, |shelf| async move { shelf.backing().file(&[kept]).await }).unwrap();
    let steps = || run(&storage, |shelf| async move { shelf.backing().slips(Drawer::Steps, None).await }).unwrap();
    delete_it(&storage, 0).unwrap();
    let back = deleted(&storage, 0)[0].clone();
    run(&storage, |shelf| async move { bring_back(&shelf, &back, 0).await }).unwrap();
    assert_eq!(steps(), [step]);
    delete_it(&storage, 0).unwrap();
    // Another point is made when the book can be brought back no more.
    let other = BookId::from_random(0xb2);
    run(&storage, |shelf| async move {
        shelf.create(other, &book("Pear"), 0).await?;
        delete(&shelf, other, at(31), 7).await
    })
    .unwrap();
    assert_eq!(steps(), []);
    run(&storage, |shelf| async move { shelf.create(ID, &book("Apple"), 0).await }).unwrap();
    let kept = Slip { drawer: Drawer::Steps, book: ID, id: "1-1".into(), text: Some("a step".into()) };
    run(&storage, |shelf| async move {
        shelf.backing().file(&[kept]).await?;
        delete_for_good(&shelf, ID).await
    })
    .unwrap();
    assert_eq!(steps(), []);
}

#[test]
fn without_room_for_its_copy_a_book_stays_until_it_is_deleted_for_good() {
    let storage = storage();
    storage.fail_next(Fault::Full);
    assert_eq!(delete_it(&storage, 0), Err(Fault::Full));
    assert!(run(&storage, |shelf| async move { shelf.open(ID).await.is_ok() }));
    run(&storage, |shelf| async move { delete_for_good(&shelf, ID).await }).unwrap();
    assert!(deleted(&storage, 0).is_empty());
    assert_eq!(held(&storage, ID), []);
    assert_eq!(delete_it(&storage, 0), Err(Fault::Gone));
}

#[test]
fn a_deleted_book_that_did_not_read_is_kept_as_it_was_stored() {
    let storage = storage();
    storage.set_row(ID, "ingredient:1", "{\"cut");
    delete_it(&storage, 0).unwrap();
    let list = deleted(&storage, 0);
    assert_eq!(list[0].name, "");
    let point = list[0].clone();
    let text = run(&storage, |shelf| async move { copy_of(shelf.backing(), &point).await }).unwrap();
    assert!(text.lines().any(|line| line == "{\"cut"), "{text}");
    let back = list[0].clone();
    let refused = run(&storage, |shelf| async move { bring_back(&shelf, &back, 0).await });
    assert!(matches!(refused, Err(BringBackError::NotWhole(_))), "{refused:?}");
    assert_eq!(deleted(&storage, 0).len(), 1, "it stays in the list");
}

#[test]
fn two_books_deleted_are_two_in_the_list_the_last_first() {
    let storage = storage();
    run(&storage, |shelf| async move { shelf.create(OTHER, &book("Mint"), 0).await }).unwrap();
    delete_it(&storage, 0).unwrap();
    run(&storage, |shelf| async move { delete(&shelf, OTHER, at(1), 4).await }).unwrap();
    assert_eq!(deleted(&storage, 1).iter().map(|point| point.book).collect::<Vec<_>>(), [OTHER, ID]);
}

#[test]
fn a_book_the_browser_removed_was_not_deleted() {
    let storage = storage();
    assert_eq!(run(&storage, |shelf| async move { was_deleted(shelf.backing(), OTHER).await }), Ok(false));
    delete_it(&storage, 0).unwrap();
    let back = deleted(&storage, 0)[0].clone();
    run(&storage, |shelf| async move { bring_back(&shelf, &back, 0).await }).unwrap();
    Tab::open(&storage).edit(1, &put("Pear"));
    storage.run();
    assert_eq!(run(&storage, |shelf| async move { was_deleted(shelf.backing(), ID).await }), Ok(false));
}
