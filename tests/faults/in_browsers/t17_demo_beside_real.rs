//! T17: the demo opened, changed and deleted beside a real book: the demo has a book of its own, the real one stays as
//! it is to the byte.

use super::{open_demo, stored};
use brimwright::say;

use crate::entering;
use crate::harness::{By, Engine, Journey, in_each_engine};
use crate::support::runs::Runs;

in_each_engine!(t17_the_real_book_is_untouched);
in_each_engine!(t17_a_second_demo_is_a_book_of_its_own);

async fn t17_the_real_book_is_untouched(engine: Engine) {
    let mut runs = Runs::of("T17");
    runs.begin();
    let journey = Journey::start_in(engine, "demo_beside_real").await;
    journey.open().await;
    journey.click(By::Text(say!(first::start_book))).await;
    journey.wait_for_text(say!(first::first_price_steps)).await;
    entering::ingredient(&journey, "Plums", "10 lb", "20").await;
    journey.wait_until_saved().await;
    let real = stored(&journey).await;

    journey.click(By::Text(say!(first::book))).await;
    journey.click(By::Text(say!(book::close_book))).await;
    open_demo(&journey).await;
    journey.go("#/buying").await;
    journey.enter(By::Label(&say!(market::price_of, name = "Apples")), "39.50").await;
    journey.wait_until_saved().await;
    journey.go("#/book").await;
    journey.expect_books(&[&crate::first_start::demo_listed(), say!(first::new_book_name)]).await;
    journey.click(By::Text(say!(first::delete_book))).await;
    journey.click(By::Text(say!(first::delete_from_device))).await;
    journey.expect_books(&[say!(first::new_book_name)]).await;
    assert_eq!(books_and_rows(&stored(&journey).await), books_and_rows(&real), "to the byte");
    runs.held();
}

/// The second demo is in euros, with deposits; what is changed and deleted of it leaves the first one as it is.
async fn t17_a_second_demo_is_a_book_of_its_own(engine: Engine) {
    let mut runs = Runs::of("T17");
    runs.begin();
    let journey = Journey::start_in(engine, "second_demo").await;
    journey.open().await;
    open_demo(&journey).await;
    journey.wait_until_saved().await;
    let first = stored(&journey).await;

    journey.go("#/book").await;
    journey.click(By::Text(say!(book::close_book))).await;
    journey.wait_for_text(say!(first::your_books)).await;
    journey.click(By::Text(say!(first::second_demo))).await;
    journey.wait_for_text("Goldener Morgen (Golden Morning)").await;
    journey.screenshot("euros").await;
    journey.go("#/buying").await;
    journey.enter(By::Label(&say!(market::price_of, name = "Karotten (carrots)")), "9.50").await;
    journey.wait_until_saved().await;
    journey.go("#/book").await;
    let listed = ["Kastanje Saftbar", say!(first::sample_data)].join(" ");
    journey.expect_books(&[&listed, &crate::first_start::demo_listed()]).await;
    journey.click(By::Text(say!(first::delete_book))).await;
    journey.click(By::Text(say!(first::delete_from_device))).await;
    journey.expect_books(&[&crate::first_start::demo_listed()]).await;
    assert_eq!(books_and_rows(&stored(&journey).await), books_and_rows(&first), "to the byte");
    runs.held();
}

/// What is stored of books: restore points are not of them.
fn books_and_rows(stored: &str) -> Vec<serde_json::Value> {
    let stores: Vec<serde_json::Value> = serde_json::from_str(stored).expect("JSON");
    stores.into_iter().filter(|store| store[0] == "books" || store[0] == "rows").collect()
}
