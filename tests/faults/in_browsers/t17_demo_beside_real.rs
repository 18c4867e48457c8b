//! T17: the demo opened, changed and deleted beside a real book: the demo has a book of its own, the real one stays as
//! it is to the byte.

use super::{open_demo, stored};
use crate::entering;
use crate::harness::{By, Engine, Journey, in_each_engine};
use crate::support::runs::Runs;

in_each_engine!(t17_the_real_book_is_untouched);

async fn t17_the_real_book_is_untouched(engine: Engine) {
    let mut runs = Runs::of("T17");
    runs.begin();
    let journey = Journey::start_in(engine, "demo_beside_real").await;
    journey.open().await;
    journey.click(By::Text("Start an empty book")).await;
    journey.wait_for_text("Three steps to a first price").await;
    entering::ingredient(&journey, "Plums", "10 lb", "20").await;
    journey.wait_until_saved().await;
    let real = stored(&journey).await;

    journey.click(By::Text("Book")).await;
    journey.click(By::Text("Close this book")).await;
    open_demo(&journey).await;
    journey.go("#/buying").await;
    journey.enter(By::Label("Price of Apples"), "39.50").await;
    journey.wait_until_saved().await;
    journey.go("#/book").await;
    journey.expect_books(&["Marrowgate Juice Hall invented data", "My book"]).await;
    journey.click(By::Text("Delete this book")).await;
    journey.click(By::Text("Delete it from this device")).await;
    journey.expect_books(&["My book"]).await;
    assert_eq!(books_and_rows(&stored(&journey).await), books_and_rows(&real), "to the byte");
    runs.held();
}

/// What is stored of books: restore points are not of them.
fn books_and_rows(stored: &str) -> Vec<serde_json::Value> {
    let stores: Vec<serde_json::Value> = serde_json::from_str(stored).expect("JSON");
    stores.into_iter().filter(|store| store[0] == "books" || store[0] == "rows").collect()
}
