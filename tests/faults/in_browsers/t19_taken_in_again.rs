//! T19: a book taken in from its own file: counted beforehand, and nothing changes.

use std::fs;
use std::path::Path;

use super::{demo, stored};
use brimwright::say;

use crate::harness::{By, Engine, in_each_engine};
use crate::support::runs::Runs;

in_each_engine!(t19_the_same_file_again_changes_nothing);

async fn t19_the_same_file_again_changes_nothing(engine: Engine) {
    let mut runs = Runs::of("T19");
    let journey = demo(engine, "taken_in_again").await;
    journey.go("#/book").await;
    journey.click(By::Text(say!(book::save_book_file))).await;
    let copy = journey.take_download("marrowgate-juice-hall.brimwright.json").await;
    let path = Path::new(env!("CARGO_TARGET_TMPDIR")).join(format!("{}.json", journey.name()));
    fs::write(&path, &copy).expect("the file is written");
    let before = stored(&journey).await;
    for _ in 0..2 {
        runs.begin();
        journey.attach(By::Label(say!(book::import_book_file)), &path).await;
        journey.wait_for_text(say!(book::same_as_open)).await;
        journey.click(By::Text(say!(book::replace_book))).await;
        journey.wait_until_saved().await;
        assert_eq!(stored(&journey).await, before, "to the byte");
        runs.held();
    }
}
