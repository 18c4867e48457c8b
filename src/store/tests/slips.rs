use super::*;
use crate::store::{Drawer, Fault, Slip};

const OTHER: BookId = BookId::from_random(0xb2);

fn slip(drawer: Drawer, book: BookId, id: &str, text: Option<&str>) -> Slip {
    Slip { drawer, book, id: id.into(), text: text.map(str::to_string) }
}

fn ids(storage: &InMemory, drawer: Drawer, book: Option<BookId>) -> Vec<String> {
    let slips = run(storage, move |shelf| async move { shelf.backing().slips(drawer, book).await });
    slips.unwrap().into_iter().map(|slip| slip.id).collect()
}

fn file(storage: &InMemory, slips: Vec<Slip>) -> Result<(), Fault> {
    run(storage, |shelf| async move { shelf.backing().file(&slips).await })
}

#[test]
fn slips_are_listed_by_drawer_and_book_and_thrown_away_one_by_one() {
    let storage = storage();
    let some =
        [(Drawer::Steps, ID, "2"), (Drawer::Steps, ID, "1"), (Drawer::Steps, OTHER, "3"), (Drawer::Points, ID, "4")];
    file(&storage, some.map(|(drawer, book, id)| slip(drawer, book, id, Some("text"))).to_vec()).unwrap();
    assert_eq!(ids(&storage, Drawer::Steps, Some(ID)), ["1", "2"]);
    assert_eq!(ids(&storage, Drawer::Steps, None), ["1", "2", "3"]);
    file(&storage, vec![slip(Drawer::Steps, ID, "1", None), slip(Drawer::Steps, ID, "2", Some("new"))]).unwrap();
    assert_eq!(ids(&storage, Drawer::Steps, Some(ID)), ["2"]);
    let text =
        |id: &'static str| run(&storage, move |shelf| async move { shelf.backing().slip(Drawer::Steps, ID, id).await });
    assert_eq!((text("2"), text("1")), (Ok(Some("new".into())), Ok(None)));
}

#[test]
fn a_deleted_book_takes_what_is_noted_of_it_along_and_leaves_its_points() {
    let storage = storage();
    file(&storage, vec![slip(Drawer::Notes, ID, "1", Some("a")), slip(Drawer::Points, ID, "1", Some("b"))]).unwrap();
    let kept = slip(Drawer::Points, ID, "2", Some("c"));
    storage.fail_next(Fault::Full);
    let delete = |kept: Slip| run(&storage, |shelf| async move { shelf.backing().delete(ID, &[kept]).await });
    assert_eq!(delete(kept.clone()), Err(Fault::Full));
    assert_eq!((ids(&storage, Drawer::Notes, None).len(), ids(&storage, Drawer::Points, None).len()), (1, 1));
    assert_eq!(stored(&storage), book());
    assert_eq!(delete(kept), Ok(()));
    assert_eq!(ids(&storage, Drawer::Notes, None), [""; 0]);
    assert_eq!(ids(&storage, Drawer::Points, None), ["1", "2"]);
    assert!(run(&storage, |shelf| async move { shelf.open(ID).await }).is_err());
}
