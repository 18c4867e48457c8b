//! A book leaves as a file and comes back; what cannot come back changes nothing.

use std::fs;
use std::path::{Path, PathBuf};

use brimwright::{drink::ledger::Ledger, exchange, words};
use serde_json::{Value, json};

use crate::harness::{By, DEMO, Engine, Journey, in_each_engine};

in_each_engine!(a_book_leaves_whole_and_its_offers_are_those_of_the_engine);
in_each_engine!(a_file_that_cannot_be_read_is_explained_and_changes_nothing);
in_each_engine!(a_book_comes_back_and_undo_brings_back_the_old_one);
in_each_engine!(both_books_are_kept);

const BOOK_FILE: &str = "marrowgate-juice-hall.brimwright.json";
const IMPORT: By<'_> = By::Label("Import a book file");

async fn a_book_leaves_whole_and_its_offers_are_those_of_the_engine(engine: Engine) {
    let journey = open_demo(engine, "book_leaves").await;
    // A price of its own, so that this is more than the demo's file handed back.
    journey.click(By::Text("Buying")).await;
    journey.enter(By::Label("Price of Apples"), "61.80").await;
    journey.click(By::Text("Book")).await;

    let saved = save_book(&journey).await;
    let book: Value = serde_json::from_slice(&saved).expect("JSON");
    let mut expected = demo();
    let pack = &mut expected["ingredients"][0]["packs"][0];
    pack["price"] = json!("61.8");
    // Heard on the day of the machine, and what was asked before has gone into the history.
    pack["day"] = book["ingredients"][0]["packs"][0]["day"].clone();
    assert_ne!(pack["day"], json!("2026-11-23"));
    pack["earlier"].as_array_mut().expect("a list").push(json!({ "day": "2026-11-23", "price": "38" }));
    assert_eq!(book, expected, "the demo's file with one price changed");

    // The same bytes as `cargo dev price` prints for this file: the engine, run natively.
    journey.click(By::Text("Save the offers as CSV")).await;
    let csv = journey.take_download("marrowgate-juice-hall-offers.csv").await;
    let book = exchange::read(saved).expect("the app's own file");
    let native = words::offers_csv(&book, &Ledger::of(&book));
    assert_eq!(String::from_utf8(csv).expect("UTF-8"), native);
    assert_eq!(native.lines().count(), 1 + 39, "a head, and the demo's 39 offers");
}

async fn a_file_that_cannot_be_read_is_explained_and_changes_nothing(engine: Engine) {
    let journey = open_demo(engine, "bad_files").await;
    journey.click(By::Text("Book")).await;
    let before = save_book(&journey).await;

    let cut = before.get(..before.len() / 2).expect("half of it").to_vec();
    let line = cut.iter().filter(|byte| **byte == b'\n').count() + 1;
    let mut twice = demo();
    twice["drinks"][1]["id"] = twice["drinks"][0]["id"].clone();
    let mut bad_yield = demo();
    bad_yield["ingredients"][0]["trim-yield"] = json!("1.4");
    let files: [(&str, Vec<u8>, String); 9] = [
        ("empty.json", Vec::new(), "The file is empty. Choose another.".into()),
        (
            "corrupt.json",
            b"{\n  \"format\": \"brimwright-book\",\n  \"version\" 1\n}".to_vec(),
            // The figure stands where a colon should: line 3, column 13.
            "The file is not in order at line 3, column 13. It may have been changed by hand; choose another copy."
                .into(),
        ),
        (
            "cut.json",
            cut,
            format!("The file stops in the middle, at line {line}. It may be half a download; fetch it again."),
        ),
        (
            "foreign.json",
            b"{\"name\": \"A list of plants\"}".to_vec(),
            "The file is something else, not a Brimwright book. Choose a book file.".into(),
        ),
        (
            "pattern.json",
            b"{\"format\": \"knitting-pattern\", \"version\": 1}".to_vec(),
            "The file is a “knitting-pattern”, not a Brimwright book. Choose a book file.".into(),
        ),
        (
            "newer.json",
            b"{\"format\": \"brimwright-book\", \"version\": 4, \"surprise\": []}".to_vec(),
            "The file is of version 4, newer than this Brimwright knows. Update Brimwright first.".into(),
        ),
        (
            "picture.json",
            vec![0x89, b'P', b'N', b'G', 0xff, 0xfe],
            "The file is not text. Choose a book file saved by Brimwright.".into(),
        ),
        (
            "twice.json",
            twice.to_string().into_bytes(),
            "Line 1: the drink “Orchard Green” is in the file twice under one id. Keep one of them.".into(),
        ),
        (
            "yield.json",
            bad_yield.to_string().into_bytes(),
            "Line 1: the ingredient “Apples” cannot be taken in. The trim yield is what is left of what went in: more than 0 % and \
             at most 100 %. Type 90 for 90 %."
                .into(),
        ),
    ];
    for (name, bytes, sentence) in files {
        journey.attach(IMPORT, &file(&journey, name, &bytes)).await;
        journey.expect_error(IMPORT, &format!("{sentence} Your book is as it was.")).await;
        journey.wait_for_text_gone("in place of this book").await;
    }
    assert!(before == save_book(&journey).await, "the book is as it was, byte for byte");
    // Nothing was done, so there is nothing to undo.
    journey.wait_until("no step to undo", "return document.querySelector('.head-steps button').disabled").await;
}

async fn a_book_comes_back_and_undo_brings_back_the_old_one(engine: Engine) {
    let journey = open_demo(engine, "book_comes_back").await;
    journey.click(By::Text("Book")).await;
    let before = save_book(&journey).await;
    let incoming = changed_demo();
    let path = file(&journey, "other.json", incoming.to_string().as_bytes());

    journey.attach(IMPORT, &path).await;
    journey.wait_for_text("“Marrowgate, east side” in place of this book").await;
    // What `changed_demo` does, counted by hand.
    let counts = [
        "Drinks: 0 new, 0 changed, 1 taken out",
        "Sizes sold: 0 new, 1 changed, 4 taken out",
        "Ingredients: 1 new, 1 changed, 0 taken out",
        "Scenarios: 0 new, 1 changed, 0 taken out",
        "Batches: 0 new, 1 changed, 0 taken out",
        "Settings: changed",
    ];
    journey.expect_each(".teach li", &counts).await;
    journey.wait_for_text("Undo takes a replacement back, and today's book becomes a restore point.").await;
    journey.screenshot("preview").await;
    journey.click(By::Text("Leave it")).await;
    journey.wait_for_text_gone("in place of this book").await;
    assert!(before == save_book(&journey).await, "left as it was");

    journey.attach(IMPORT, &path).await;
    journey.click(By::Text("Replace this book")).await;
    journey.wait_for_text_gone("in place of this book").await;
    journey.wait_until_saved().await;
    let there = save_book_as(&journey, "marrowgate--east-side.brimwright.json").await;
    let there: Value = serde_json::from_slice(&there).expect("JSON");
    assert_eq!(there, incoming);

    journey.click(By::Text("Undo")).await;
    journey.expect_value(By::Nth(0, &By::Label("Name")), "Marrowgate Juice Hall").await;
    journey.wait_until_saved().await;
    assert!(before == save_book(&journey).await, "Undo brings the old book back, byte for byte");
    // And so does the store: a load away.
    journey.open().await;
    journey.click(By::Text("Book")).await;
    assert!(before == save_book(&journey).await, "the old book is what is stored");
}

async fn both_books_are_kept(engine: Engine) {
    let journey = open_demo(engine, "keep_both").await;
    journey.click(By::Text("Book")).await;
    let before = save_book(&journey).await;
    let path = file(&journey, "other.json", changed_demo().to_string().as_bytes());
    journey.attach(IMPORT, &path).await;
    journey.click(By::Text("Keep both: add as a new book")).await;
    journey.wait_for_text("Add a drink").await;
    journey.click(By::Text("Book")).await;
    journey.expect_value(By::Nth(0, &By::Label("Name")), "Marrowgate, east side").await;
    journey.expect_books(&["Marrowgate Juice Hall invented data", "Marrowgate, east side invented data"]).await;
    journey.click(By::Item("Marrowgate Juice Hall")).await;
    journey.expect_value(By::Nth(0, &By::Label("Name")), "Marrowgate Juice Hall").await;
    assert!(before == save_book(&journey).await, "the first book is untouched");
}

async fn open_demo(engine: Engine, name: &str) -> Journey {
    let journey = Journey::start_in(engine, name).await;
    journey.open().await;
    journey.click(By::Text("Look around in Marrowgate Juice Hall")).await;
    journey.wait_for_text("Orchard Green").await;
    journey
}

async fn save_book(journey: &Journey) -> Vec<u8> {
    save_book_as(journey, BOOK_FILE).await
}

async fn save_book_as(journey: &Journey, name: &str) -> Vec<u8> {
    journey.click(By::Text("Save the book as a file")).await;
    journey.take_download(name).await
}

/// A file to be attached.
fn file(journey: &Journey, name: &str, bytes: &[u8]) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("attached").join(journey.name());
    fs::create_dir_all(&folder).expect("a folder");
    let path = folder.join(name);
    fs::write(&path, bytes).expect("the file is written");
    path
}

fn demo() -> Value {
    serde_json::from_slice(&fs::read(DEMO).expect("the demo's file")).expect("JSON")
}

/// The demo under another name, with apples dearer, one more ingredient, one price asked changed,
/// and without its first drink, Orchard Green, sold, planned and made in some sizes.
fn changed_demo() -> Value {
    let mut book = demo();
    book["settings"]["name"] = json!("Marrowgate, east side");
    book["ingredients"][0]["packs"][0]["price"] = json!("40");
    let pears = json!({ "id": "ffff", "name": "Pears", "trim-yield": "0.9", "packs": [] });
    book["ingredients"].as_array_mut().expect("a list").push(pears);
    book["drinks"].as_array_mut().expect("a list").remove(0);
    let offers = book["offers"].as_array_mut().expect("a list");
    offers.retain(|offer| offer["drink"] != "1");
    offers[0]["price"] = json!("99");
    let planned = book["scenarios"][0]["offers"].as_array_mut().expect("a list");
    planned.retain(|offer| offer["drink"] != "1");
    let made = book["batches"][0]["makes"].as_array_mut().expect("a list");
    made.retain(|make| make["drink"] != "1");
    book
}
