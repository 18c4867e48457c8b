//! A book leaves as a file and comes back; what cannot come back changes nothing.

use std::fs;
use std::path::{Path, PathBuf};

use brimwright::{drink::ledger::Ledger, exchange, say, words};
use serde_json::{Value, json};

use crate::harness::{By, DEMO, Engine, Journey, in_each_engine};

in_each_engine!(a_book_leaves_whole_and_its_offers_are_those_of_the_engine);
in_each_engine!(a_file_that_cannot_be_read_is_explained_and_changes_nothing);
in_each_engine!(a_book_comes_back_and_undo_brings_back_the_old_one);
in_each_engine!(both_books_are_kept);

const BOOK_FILE: &str = "marrowgate-juice-hall.brimwright.json";

fn import() -> By<'static> {
    By::Label(say!(book::import_book_file))
}

async fn a_book_leaves_whole_and_its_offers_are_those_of_the_engine(engine: Engine) {
    let journey = open_demo(engine, "book_leaves").await;
    // A price of its own, so that this is more than the demo's file handed back.
    journey.click(By::Text(say!(first::buying))).await;
    journey.enter(By::Label(&say!(market::price_of, name = "Apples")), "61.80").await;
    journey.click(By::Text(say!(first::book))).await;

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
    journey.click(By::Text(say!(book::save_sizes_csv))).await;
    let csv = journey.take_download("marrowgate-juice-hall-offers.csv").await;
    let book = exchange::read(saved).expect("the app's own file");
    let native = words::offers_csv(&book, &Ledger::of(&book));
    assert_eq!(String::from_utf8(csv).expect("UTF-8"), native);
    assert_eq!(native.lines().count(), 1 + 39, "a head, and the demo's 39 offers");
}

async fn a_file_that_cannot_be_read_is_explained_and_changes_nothing(engine: Engine) {
    let journey = open_demo(engine, "bad_files").await;
    journey.click(By::Text(say!(first::book))).await;
    let before = save_book(&journey).await;

    let cut = before.get(..before.len() / 2).expect("half of it").to_vec();
    let line = cut.iter().filter(|byte| **byte == b'\n').count() + 1;
    let mut twice = demo();
    twice["drinks"][1]["id"] = twice["drinks"][0]["id"].clone();
    let mut bad_yield = demo();
    bad_yield["ingredients"][0]["trim-yield"] = json!("1.4");
    let files: [(&str, Vec<u8>, String); 9] = [
        ("empty.json", Vec::new(), say!(book::file_empty).into()),
        (
            "corrupt.json",
            b"{\n  \"format\": \"brimwright-book\",\n  \"version\" 1\n}".to_vec(),
            // The figure stands where a colon should: line 3, column 13.
            say!(book::file_damaged, line = "3"),
        ),
        ("cut.json", cut, say!(book::file_cut_short, line = line.to_string())),
        ("foreign.json", b"{\"name\": \"A list of plants\"}".to_vec(), say!(book::file_foreign).into()),
        (
            "pattern.json",
            b"{\"format\": \"knitting-pattern\", \"version\": 1}".to_vec(),
            say!(book::file_foreign_named, format = "knitting-pattern"),
        ),
        (
            "newer.json",
            b"{\"format\": \"brimwright-book\", \"version\": 5, \"surprise\": []}".to_vec(),
            say!(book::file_newer, version = "5"),
        ),
        ("picture.json", vec![0x89, b'P', b'N', b'G', 0xff, 0xfe], say!(book::file_not_text).into()),
        (
            "twice.json",
            twice.to_string().into_bytes(),
            at_line_1(say!(book::kind_drink), "Orchard Green", say!(book::in_file_twice)),
        ),
        (
            "yield.json",
            bad_yield.to_string().into_bytes(),
            at_line_1(
                say!(book::kind_ingredient),
                "Apples",
                &[say!(book::not_imported), &say!(refusals::not_a_yield, field = say!(goods::trim_yield))].join(" "),
            ),
        ),
    ];
    for (name, bytes, sentence) in files {
        journey.attach(import(), &file(&journey, name, &bytes)).await;
        journey.expect_error(import(), &[&sentence, say!(book::book_unchanged)].join(" ")).await;
        journey.wait_for_text_gone(say!(book::replace_book)).await;
    }
    assert!(before == save_book(&journey).await, "the book is as it was, byte for byte");
    // Nothing was done, so there is nothing to undo.
    journey.wait_until("no step to undo", "return document.querySelector('.head-steps button').disabled").await;
}

async fn a_book_comes_back_and_undo_brings_back_the_old_one(engine: Engine) {
    let journey = open_demo(engine, "book_comes_back").await;
    journey.click(By::Text(say!(first::book))).await;
    let before = save_book(&journey).await;
    let incoming = changed_demo();
    let path = file(&journey, "other.json", incoming.to_string().as_bytes());

    journey.attach(import(), &path).await;
    journey.wait_for_text(&say!(book::replace_with_book, book = "Marrowgate, east side")).await;
    // What `changed_demo` does, counted by hand.
    let counts = [
        counts(say!(first::drinks), 0, 0, 1),
        counts(say!(first::sizes), 0, 1, 4),
        counts(say!(drinks::ingredients), 1, 1, 0),
        counts(say!(market::weeks_of_sales), 0, 8, 0),
        counts(say!(sales::scenarios), 0, 1, 0),
        counts(say!(counter::batches), 0, 1, 0),
        say!(book::settings_changed).to_owned(),
    ];
    journey.expect_each(".teach li", &counts.each_ref().map(String::as_str)).await;
    journey.wait_for_text(say!(book::import_about)).await;
    journey.screenshot("preview").await;
    journey.click(By::Text(say!(first::cancel))).await;
    journey.wait_for_text_gone(say!(book::replace_book)).await;
    assert!(before == save_book(&journey).await, "left as it was");

    journey.attach(import(), &path).await;
    journey.click(By::Text(say!(book::replace_book))).await;
    journey.wait_for_text_gone(say!(book::replace_book)).await;
    journey.wait_until_saved().await;
    let there = save_book_as(&journey, "marrowgate--east-side.brimwright.json").await;
    let there: Value = serde_json::from_slice(&there).expect("JSON");
    assert_eq!(there, incoming);

    journey.click(By::Text(say!(first::undo))).await;
    journey.expect_each("main h1", &["Marrowgate Juice Hall"]).await;
    journey.wait_until_saved().await;
    assert!(before == save_book(&journey).await, "Undo brings the old book back, byte for byte");
    // And so does the store: a load away.
    journey.open().await;
    journey.click(By::Text(say!(first::book))).await;
    assert!(before == save_book(&journey).await, "the old book is what is stored");
}

async fn both_books_are_kept(engine: Engine) {
    let journey = open_demo(engine, "keep_both").await;
    journey.click(By::Text(say!(first::book))).await;
    let before = save_book(&journey).await;
    let path = file(&journey, "other.json", changed_demo().to_string().as_bytes());
    journey.attach(import(), &path).await;
    journey.click(By::Text(say!(book::add_as_new_book))).await;
    journey.wait_for_text(say!(first::add_drink)).await;
    journey.click(By::Text(say!(first::book))).await;
    journey.expect_each("main h1", &["Marrowgate, east side"]).await;
    let sample = |name: &str| [name, say!(first::sample_data)].join(" ");
    journey.expect_books(&[&sample("Marrowgate Juice Hall"), &sample("Marrowgate, east side")]).await;
    journey.click(By::Item("Marrowgate Juice Hall")).await;
    journey.expect_each("main h1", &["Marrowgate Juice Hall"]).await;
    assert!(before == save_book(&journey).await, "the first book is untouched");
}

/// What an import would do to one kind of record.
fn counts(kind: &str, added: usize, changed: usize, removed: usize) -> String {
    let said = |count: usize| count.to_string();
    say!(book::import_counts, kind = kind, added = said(added), changed = said(changed), removed = said(removed))
}

/// What is wrong with a record of a file that is all one line.
fn at_line_1(kind: &str, name: &str, problem: &str) -> String {
    let place = say!(book::kind_named, kind = kind, name = name);
    say!(book::at_place, line = "1", place = place, problem = problem)
}

async fn open_demo(engine: Engine, name: &str) -> Journey {
    let journey = Journey::start_in(engine, name).await;
    journey.open().await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text("Orchard Green").await;
    journey
}

async fn save_book(journey: &Journey) -> Vec<u8> {
    save_book_as(journey, BOOK_FILE).await
}

async fn save_book_as(journey: &Journey, name: &str) -> Vec<u8> {
    journey.click(By::Text(say!(book::save_book_file))).await;
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
    for week in book["weeks"].as_array_mut().expect("a list") {
        week["sold"].as_array_mut().expect("a list").retain(|sold| sold["drink"] != "1");
    }
    let made = book["batches"][0]["makes"].as_array_mut().expect("a list");
    made.retain(|make| make["drink"] != "1");
    book
}
