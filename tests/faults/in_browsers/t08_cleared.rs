//! T8: the browser has cleared what was stored: that is told apart from a first start, and the saved copy brings
//! everything back to the byte.

use std::fs;
use std::path::Path;

use super::demo;
use brimwright::say;

use crate::harness::{By, Engine, in_each_engine};
use crate::support::runs::Runs;

in_each_engine!(t08_a_cleared_store_is_no_first_start_and_the_copy_brings_it_back);

const CLEAR: &str = "
    await new Promise((done, fail) => {
        const deleting = indexedDB.deleteDatabase('brimwright');
        deleting.onsuccess = done;
        deleting.onerror = () => fail(deleting.error);
    });
    return true;";

const FILE: &str = "marrowgate-juice-hall.brimwright.json";

async fn t08_a_cleared_store_is_no_first_start_and_the_copy_brings_it_back(engine: Engine) {
    let mut runs = Runs::of("T8");
    runs.begin();
    let journey = demo(engine, "cleared").await;
    journey.go("#/buying").await;
    journey.enter(By::Label(&say!(market::price_of, name = "Apples")), "39.50").await;
    journey.wait_until_saved().await;
    journey.go("#/book").await;
    journey.click(By::Text(say!(book::save_book_file))).await;
    let copy = journey.take_download(FILE).await;

    journey.run(CLEAR).await;
    journey.open().await;
    journey.wait_for_text(&say!(first::named_books_removed, books = "Marrowgate Juice Hall")).await;
    journey.screenshot("cleared").await;
    journey.click(By::Text(say!(first::start_book))).await;
    journey.click(By::Text(say!(first::book))).await;
    let path = Path::new(env!("CARGO_TARGET_TMPDIR")).join(format!("{}.json", journey.name()));
    fs::write(&path, &copy).expect("the file is written");
    journey.attach(By::Label(say!(book::import_book_file)), &path).await;
    journey.click(By::Text(say!(book::replace_book))).await;
    journey.wait_until_saved().await;
    journey.click(By::Text(say!(book::save_book_file))).await;
    assert!(journey.take_download(FILE).await == copy, "byte for byte");
    runs.held();
}
