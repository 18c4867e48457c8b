//! The first start: the ways in, and the books that come of them.

use brimwright::say;

use crate::harness::{By, Journey};

/// The demo among the books of this device, with its mark.
pub fn demo_listed() -> String {
    ["Marrowgate Juice Hall", say!(first::sample_data)].join(" ")
}

#[tokio::test]
async fn a_new_person_finds_the_ways_in() {
    let journey = Journey::start("ways_in").await;
    journey.open().await;
    journey.wait_for_text(say!(first::tagline)).await;
    journey.wait_for_text(say!(first::start_book_about)).await;
    journey.wait_for_text(say!(first::look_around_about)).await;
    journey.wait_for_text(say!(first::second_demo_about)).await;
    journey.wait_for_text_gone(say!(first::your_books)).await;

    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text("Orchard Green").await;
    // The head says on every screen that the data is invented, and the book says so at length.
    journey.expect_lines(By::Text(say!(first::sample_data)), &[say!(first::sample_data)]).await;
    journey.click(By::Text(say!(first::book))).await;
    journey.wait_for_text(say!(book::sample_book_about)).await;
    journey.expect_books(&[&demo_listed()]).await;

    journey.click(By::Text(say!(book::close_book))).await;
    journey.wait_for_text(say!(first::your_books)).await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text(say!(book::sample_book_about)).await;
    // Opened again, not doubled.
    journey.expect_books(&[&demo_listed()]).await;

    // A bar in euros, beside the first.
    journey.click(By::Text(say!(book::close_book))).await;
    journey.click(By::Text(say!(first::second_demo))).await;
    journey.wait_for_text("€").await;
    journey.click(By::Text(say!(first::book))).await;
    let second = ["Kastanje Saftbar", say!(first::sample_data)].join(" ");
    journey.expect_books(&[&second, &demo_listed()]).await;

    // A book of one's own begins with questions about the shop, and they can be skipped.
    journey.click(By::Text(say!(first::start_book))).await;
    journey.wait_for_text(say!(setup::your_shop)).await;
    journey.wait_for_text_gone(say!(first::sample_data)).await;
    journey.click(By::Text(say!(setup::skip_questions))).await;
    journey.wait_for_text(say!(first::price_first_drink_about)).await;
    journey.click(By::Text(say!(first::book))).await;
    journey.wait_for_text(say!(book::all_books)).await;
    journey.expect_books(&[&second, &demo_listed(), say!(first::new_book_name)]).await;
    journey.expect_each(".books li:has(.open-now) button > span:first-child", &[say!(first::new_book_name)]).await;
    journey.screenshot("books").await;
}

#[tokio::test]
async fn a_book_is_deleted_in_two_steps() {
    let journey = Journey::start("deleting").await;
    journey.open().await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.click(By::Text(say!(first::book))).await;

    let warning = &say!(first::book_kept_days, book = "Marrowgate Juice Hall", days = "30");
    journey.click(By::Text(say!(first::delete_book))).await;
    journey.wait_for_text(warning).await;
    journey.click(By::Text(say!(first::cancel))).await;
    journey.wait_for_text_gone(warning).await;
    journey.expect_books(&[&demo_listed()]).await;

    journey.click(By::Text(say!(first::delete_book))).await;
    journey.click(By::Text(say!(first::delete_from_device))).await;
    journey.wait_for_text(say!(first::look_around)).await;
    journey.wait_for_text_gone(say!(first::your_books)).await;
    // After a load too, and a book that was deleted is not called cleared by the browser.
    journey.open().await;
    journey.wait_for_text(say!(first::look_around)).await;
    journey.wait_for_text_gone(say!(first::your_books)).await;
    journey.wait_for_text_gone(say!(first::books_removed)).await;
    journey.wait_for_text_gone(&say!(first::named_books_removed, books = "Marrowgate Juice Hall")).await;
}
