use proptest::collection::vec;
use proptest::prelude::*;

use super::*;

fn unread(field: &str, text: &str) -> Unread {
    Unread { field: field.into(), text: text.into(), error: format!("“{text}” is not a number.") }
}

#[test]
fn a_text_that_cannot_be_read_is_kept_until_it_can() {
    let mut all = Unfinished::default();
    assert!(all.note("price", Some(unread("price", "3x"))));
    assert!(!all.note("price", Some(unread("price", "3x"))), "nothing new");
    assert!(all.note("price", Some(unread("price", "3xy"))));
    assert_eq!(all.unread("price"), Some(&unread("price", "3xy")));
    assert_eq!(all.unread("yield"), None);
    assert!(all.note("price", None));
    assert_eq!(all, Unfinished::default());
}

#[test]
fn a_screen_that_begins_anew_forgets_what_could_not_be_read_on_it() {
    let mut all = Unfinished::default();
    for field in ["#/sizes/menu Price", "#/sizes/menu Target margin", "#/sizes/menu/else Price"] {
        all.note(field, Some(unread(field, "x")));
    }
    all.forget_unread("#/sizes/menu");
    assert_eq!(all.unread("#/sizes/menu Price"), None);
    assert_eq!(all.unread("#/sizes/menu Target margin"), None);
    assert!(all.unread("#/sizes/menu/else Price").is_some());
}

#[test]
fn what_cannot_be_read_is_found_by_the_label_of_its_field() {
    let mut all = Unfinished::default();
    for field in ["#/batches/1 0 Number of Kale", "#/batches/1 2a Kale", "#/batches/12 0 Number of Kale"] {
        all.note(field, Some(unread(field, "12 oz")));
    }
    let pair = |label: &str| (label.to_string(), "12 oz".to_string());
    assert_eq!(all.unread_on("#/batches/1"), [pair("Number of Kale"), pair("Kale")]);
    all.forget_unread_of("#/batches/1", "Number of Kale");
    assert_eq!(all.unread_on("#/batches/1"), [pair("Kale")]);
    assert_eq!(all.unread_on("#/batches/12"), [pair("Number of Kale")]);
}

#[test]
fn a_thing_waits_from_its_first_letter_until_it_is_put() {
    let mut all = Unfinished::default();
    all.begin("pack 1", "#/buying");
    all.begin("pack 1", "#/elsewhere");
    assert_eq!(all.all_begun().len(), 1);
    assert!(!all.begun("pack 1").unwrap().waits(), "nothing is typed");
    let pack = all.begun_mut("pack 1").unwrap();
    pack.set("@shelf", "2");
    assert!(!pack.waits(), "nothing is typed");
    pack.set("its price", "3");
    pack.set("its price", "38");
    assert_eq!((pack.text("its price"), pack.text("what it holds")), ("38", ""));
    assert!(pack.waits());
    pack.is_put = true;
    assert!(!pack.waits());
    pack.is_put = false;
    pack.set("its price", " ");
    assert!(!pack.waits(), "a field that was emptied");
    all.drop_begun("pack 1");
    assert_eq!(all, Unfinished::default());
}

#[test]
fn what_is_in_the_book_is_not_kept_beside_it() {
    let mut all = Unfinished::default();
    all.begin("pack 1", "#/buying");
    let pack = all.begun_mut("pack 1").unwrap();
    pack.set("its price", "38");
    assert_eq!(all.to_texts().len(), 8);
    all.begun_mut("pack 1").unwrap().is_put = true;
    assert!(all.to_texts().is_empty());
}

proptest! {
    #[test]
    fn what_is_kept_comes_back(
        fields in vec(("[a-z]{1,4}", ".{0,9}", ".{0,9}"), 0..4),
        things in vec(("[a-z]{1,4}", ".{0,9}", vec(("[a-z]{1,2}", ".{0,9}[a-z]"), 1..4)), 0..4),
    ) {
        let mut all = Unfinished::default();
        for (field, text, error) in fields {
            all.note(&field, Some(Unread { field: field.clone(), text, error }));
        }
        for (thing, needs, texts) in things {
            all.begin(&thing, "#/drinks");
            let begun = all.begun_mut(&thing).unwrap();
            begun.needs = needs;
            texts.iter().for_each(|(field, text)| begun.set(field, text));
        }
        prop_assert_eq!(Unfinished::from_texts(&all.to_texts()), all);
    }

    #[test]
    fn any_texts_are_read(texts in vec("(unread|begun|text|.{0,5})", 0..20)) {
        let read = Unfinished::from_texts(&texts);
        prop_assert_eq!(Unfinished::from_texts(&read.to_texts()).to_texts(), read.to_texts());
    }
}
