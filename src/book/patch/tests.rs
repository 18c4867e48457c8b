use super::*;
use crate::support::{amount, day, drink, drink_id, exact, ingredient, ingredient_id, line, money, pack, settings};

fn book() -> Book {
    let mut book = Book::new(settings());
    for id in 1..=3 {
        let packs = [pack(1, "40 lb", "30"), pack(2, "25 lb", "20")];
        book.apply(&Edit::Put(Record::Ingredient(ingredient(id, packs)))).unwrap();
    }
    book.apply(&Edit::Put(Record::Drink(drink(1, "16 fl oz", [line(1, 1, "3 fl oz"), line(2, 2, "4 fl oz")]))))
        .unwrap();
    book
}

const CARROT: u64 = 1;

/// Changes an ingredient by hand; gives what that did.
fn change(book: &mut Book, id: u64, change: impl FnOnce(&mut crate::book::Ingredient)) -> Patch {
    let mut record = book.ingredient(ingredient_id(id)).unwrap().clone();
    change(&mut record);
    step(book, &Edit::Put(Record::Ingredient(record)))
}

fn step(book: &mut Book, edit: &Edit) -> Patch {
    let was = book.at(&edit.keys());
    book.apply(edit).unwrap();
    Patch::between(&was, book)
}

fn apply(book: &mut Book, patch: &Patch) {
    let edit = patch.edit(book).unwrap();
    book.apply(&edit).unwrap();
}

#[test]
fn taking_back_leaves_what_others_changed_in_the_same_record() {
    let mut book = book();
    let mine = change(&mut book, CARROT, |it| it.packs[0].price = money("31"));
    let _theirs = change(&mut book, CARROT, |it| {
        it.name = "Carrots".into();
        it.packs[1].price = money("19");
        it.packs.push(pack(3, "5 lb", "6"));
    });
    apply(&mut book, &mine.inverse());
    let carrot = book.ingredient(ingredient_id(CARROT)).unwrap();
    assert_eq!(carrot.name, "Carrots");
    assert_eq!(carrot.packs.iter().map(|pack| pack.price).collect::<Vec<_>>(), ["30", "19", "6"].map(money));
    apply(&mut book, &mine);
    assert_eq!(book.ingredient(ingredient_id(CARROT)).unwrap().packs[0].price, money("31"));
}

#[test]
fn the_same_value_changed_since_is_a_clash_that_names_it() {
    let mut book = book();
    let mine = change(&mut book, CARROT, |it| it.packs[0].price = money("31"));
    change(&mut book, CARROT, |it| it.packs[0].price = money("32"));
    let clashes = mine.inverse().edit(&book).unwrap_err();
    assert_eq!(clashes.len(), 1);
    assert_eq!((clashes[0].key, clashes[0].field()), (Key::Ingredient(ingredient_id(CARROT)), Some("price")));
    assert_eq!(clashes[0].stands, Some(Tree::Text("32".into())));
    assert_eq!(clashes[0].wanted, Some(Tree::Text("30".into())));
    // What somebody else put back already is as wanted.
    change(&mut book, CARROT, |it| it.packs[0].price = money("30"));
    assert_eq!(mine.inverse().edit(&book).map(|edit| book.apply(&edit).is_ok()), Ok(true));
}

#[test]
fn elements_come_and_go_at_their_places() {
    let mut book = book();
    let order = |book: &Book| -> Vec<u64> {
        book.ingredient(ingredient_id(CARROT)).unwrap().packs.iter().map(|pack| pack.id.number()).collect()
    };
    let gone = change(&mut book, CARROT, |it| drop(it.packs.remove(0)));
    change(&mut book, CARROT, |it| it.packs.push(pack(3, "5 lb", "6")));
    apply(&mut book, &gone.inverse());
    assert_eq!(order(&book), [1, 2, 3]);
    let turned = change(&mut book, CARROT, |it| it.packs.swap(0, 1));
    assert_eq!(order(&book), [2, 1, 3]);
    change(&mut book, CARROT, |it| drop(it.packs.remove(2)));
    apply(&mut book, &turned.inverse());
    assert_eq!(order(&book), [1, 2]);
    // The last element goes, and comes back into a list that is not written any more.
    let mut priced = book.clone();
    let tiers = change(&mut priced, CARROT, |it| {
        it.packs[0].tiers = vec![crate::book::Tier { from: exact("5"), price: money("28") }];
    });
    apply(&mut priced, &tiers.inverse());
    apply(&mut priced, &tiers);
    assert_eq!(priced.ingredient(ingredient_id(CARROT)).unwrap().packs[0].tiers.len(), 1);
}

#[test]
fn two_orders_of_one_list_are_a_clash() {
    let mut book = book();
    change(&mut book, CARROT, |it| it.packs.push(pack(3, "5 lb", "6")));
    let turned = change(&mut book, CARROT, |it| it.packs.rotate_left(1));
    change(&mut book, CARROT, |it| it.packs.reverse());
    let clashes = turned.inverse().edit(&book).unwrap_err();
    assert_eq!(clashes[0].path.last(), Some(&Step::Order));
    assert_eq!(clashes[0].field(), Some("packs"));
}

#[test]
fn a_record_that_came_goes_only_as_it_was() {
    let mut book = book();
    let added = step(&mut book, &Edit::Put(Record::Ingredient(ingredient(9, []))));
    let mut other = book.clone();
    apply(&mut book, &added.inverse());
    assert!(!book.contains(Key::Ingredient(ingredient_id(9))));
    change(&mut other, 9, |it| it.name = "Red beet".into());
    let clashes = added.inverse().edit(&other).unwrap_err();
    assert_eq!((clashes[0].path.len(), clashes[0].field()), (0, None));
    // What uses it forbids it as ever.
    let mut used = book.clone();
    apply(&mut used, &added);
    used.apply(&Edit::Put(Record::Drink(drink(1, "16 fl oz", [line(1, 9, "3 fl oz")])))).unwrap();
    let edit = added.inverse().edit(&used).unwrap();
    assert!(matches!(used.apply(&edit), Err(crate::book::Refusal::InUse { .. })));
}

#[test]
fn parts_that_hold_only_together_are_a_clash() {
    let mut book = book();
    let stepped = |book: &Book, scaling| {
        let mut it = book.drink(drink_id(1)).unwrap().clone();
        it.lines[0].scaling = scaling;
        Edit::Put(Record::Drink(it))
    };
    let edit = stepped(&book, crate::book::Scaling::Stepped(amount("1 fl oz")));
    let to_steps = step(&mut book, &edit);
    let edit = stepped(&book, crate::book::Scaling::Fixed);
    step(&mut book, &edit);
    let clashes = to_steps.inverse().edit(&book).unwrap_err();
    assert_eq!(clashes[0].field(), Some("scaling"));
}

#[test]
fn what_is_gone_or_of_another_form_is_no_blank_value() {
    let mut book = book();
    let found = |patch: &Patch, book: &Book| patch.inverse().edit(book).unwrap_err().remove(0).found;
    let priced = change(&mut book, CARROT, |it| it.packs[0].price = money("31"));
    change(&mut book, CARROT, |it| drop(it.packs.remove(0)));
    assert_eq!(found(&priced, &book), Found::Removed);
    // An amount of a step, where the line does not go by steps any more.
    let scaled = |book: &Book, scaling| {
        let mut it = book.drink(drink_id(1)).unwrap().clone();
        it.lines[0].scaling = scaling;
        Edit::Put(Record::Drink(it))
    };
    let stepped = |step| crate::book::Scaling::Stepped(amount(step));
    let edit = scaled(&book, stepped("1 fl oz"));
    step(&mut book, &edit);
    let edit = scaled(&book, stepped("2 fl oz"));
    let longer = step(&mut book, &edit);
    let edit = scaled(&book, crate::book::Scaling::Fixed);
    step(&mut book, &edit);
    assert_eq!(found(&longer, &book), Found::OtherForm);
    // A field that may be blank, and is.
    let weighed = change(&mut book, CARROT, |it| it.piece_weight = Some(crate::support::grams("80")));
    change(&mut book, CARROT, |it| it.piece_weight = Some(crate::support::grams("90")));
    let again = change(&mut book, CARROT, |it| it.piece_weight = Some(crate::support::grams("80")));
    change(&mut book, CARROT, |it| it.piece_weight = None);
    assert_eq!(found(&again, &book), Found::Value);
    assert!(weighed.inverse().edit(&book).is_ok(), "as it was before");
}

#[test]
fn a_patch_is_written_and_read_back() {
    let mut book = book();
    let mut patch = change(&mut book, CARROT, |it| {
        it.packs[0].quote(money("31"), day("2026-11-23"));
        it.packs.swap(0, 1);
        it.packs.push(pack(3, "5 lb", "6"));
        it.allergens = Some(vec![]);
    });
    let text = serde_json::to_string(&patch).unwrap();
    assert_eq!(serde_json::from_str::<Patch>(&text).unwrap(), patch);
    let added = step(&mut book, &Edit::Put(Record::Ingredient(ingredient(9, []))));
    assert!(!patch.meets(&added));
    assert_eq!(patch.keys().collect::<Vec<_>>(), [Key::Ingredient(ingredient_id(CARROT))]);
    patch = change(&mut book, 9, |it| it.name = "Red beet".into());
    assert!(patch.meets(&added), "a name is a part of its record");
    let other = change(&mut book, 9, |it| it.packs.push(pack(1, "25 lb", "20")));
    assert!(!patch.meets(&other));
}

#[test]
fn no_list_of_allergens_is_not_an_empty_one() {
    let mut book = book();
    let none_in_it = change(&mut book, CARROT, |it| it.allergens = Some(vec![]));
    apply(&mut book, &none_in_it.inverse());
    assert_eq!(book.ingredient(ingredient_id(CARROT)).unwrap().allergens, None);
    apply(&mut book, &none_in_it);
    assert_eq!(book.ingredient(ingredient_id(CARROT)).unwrap().allergens, Some(vec![]));
}

#[test]
fn put_over_what_others_changed_it_wins_and_the_rest_is_theirs() {
    let mut mine = book();
    let patch = change(&mut mine, CARROT, |it| it.packs[0].price = money("31"));
    let key = Key::Ingredient(ingredient_id(CARROT));
    let as_mine = mine.at(&std::iter::once(key).collect());
    let over = |theirs: &mut Book| {
        let edit = patch.over(theirs, &as_mine).unwrap();
        theirs.apply(&edit).unwrap();
        let carrot = theirs.ingredient(ingredient_id(CARROT)).unwrap().clone();
        let prices: Vec<_> = carrot.packs.iter().map(|pack| pack.price).collect();
        (carrot.name, prices)
    };
    let mut theirs = book();
    change(&mut theirs, CARROT, |it| {
        it.name = "Carrots".into();
        it.packs[0].price = money("32");
    });
    assert_eq!(over(&mut theirs), ("Carrots".into(), vec![money("31"), money("20")]));
    // The pack is gone, then the ingredient: each comes back as it was here.
    let mut theirs = book();
    change(&mut theirs, CARROT, |it| {
        it.name = "Carrots".into();
        it.packs.remove(0);
    });
    assert_eq!(over(&mut theirs), ("Carrots".into(), vec![money("31"), money("20")]));
    let mut theirs = book();
    theirs.apply(&Edit::Remove(Key::Drink(drink_id(1)))).unwrap();
    theirs.apply(&Edit::Remove(key)).unwrap();
    let name = book().name(key);
    assert_eq!(over(&mut theirs), (name, vec![money("31"), money("20")]));
}

#[test]
fn put_over_another_way_to_say_the_same_the_whole_way_is_mine() {
    let mut mine = book();
    let scaled = |book: &Book, scaling| {
        let mut it = book.drink(drink_id(1)).unwrap().clone();
        it.lines[0].scaling = scaling;
        Edit::Put(Record::Drink(it))
    };
    let stepped = |amount_of| crate::book::Scaling::Stepped(amount(amount_of));
    mine.apply(&scaled(&mine, stepped("1 fl oz"))).unwrap();
    let mut theirs = mine.clone();
    let edit = scaled(&mine, stepped("2 fl oz"));
    let patch = step(&mut mine, &edit);
    let edit = scaled(&theirs, crate::book::Scaling::Fixed);
    step(&mut theirs, &edit);
    let edit = patch.over(&theirs, &mine.at(&edit.keys())).unwrap();
    theirs.apply(&edit).unwrap();
    assert_eq!(theirs.drink(drink_id(1)).unwrap().lines[0].scaling, stepped("2 fl oz"));
}

/// Twenty packs out of the middle go and come back: where each was, without the names of all that
/// stood before it.
#[test]
fn a_patch_of_many_elements_is_no_larger_than_they_are() {
    let mut book = book();
    let packs = |count: u64| (1..=count).map(|id| pack(id, "40 lb", "30")).collect::<Vec<_>>();
    change(&mut book, CARROT, |it| it.packs = packs(40));
    let order = |book: &Book| -> Vec<u64> {
        book.ingredient(ingredient_id(CARROT)).unwrap().packs.iter().map(|pack| pack.id.number()).collect()
    };
    let gone = change(&mut book, CARROT, |it| drop(it.packs.drain(10..30)));
    apply(&mut book, &gone.inverse());
    assert_eq!(order(&book), (1..=40).collect::<Vec<_>>());
    apply(&mut book, &gone);
    apply(&mut book, &gone.inverse());
    assert_eq!(order(&book), (1..=40).collect::<Vec<_>>());

    let added = change(&mut book, CARROT, |it| it.packs = packs(1_600));
    let behind: usize =
        added.changes_of(Key::Ingredient(ingredient_id(CARROT))).map(|change| change.behind.len()).sum();
    assert!(behind <= 1_600 * 8, "{behind}");
    apply(&mut book, &added.inverse());
    assert_eq!(order(&book), (1..=40).collect::<Vec<_>>());
    apply(&mut book, &added);
    assert_eq!(order(&book), (1..=1_600).collect::<Vec<_>>());
}
