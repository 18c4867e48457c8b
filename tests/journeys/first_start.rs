//! The first start: two ways in, and the books that come of them.

use crate::harness::{By, Journey};

const DEMO_WAY: &str = "Look around in Marrowgate Juice Hall";
/// The demo among the books of this device, with its mark.
const DEMO_LISTED: &str = "Marrowgate Juice Hall invented data";

#[tokio::test]
async fn a_new_person_finds_two_ways() {
    let journey = Journey::start("two_ways").await;
    journey.open().await;
    journey.wait_for_text("Size, cost and price your drinks. On this device, also without a network.").await;
    journey.wait_for_text("What you buy, what you pour into, what you mix: three steps to a first price.").await;
    journey.wait_for_text("A demo book with 14 drinks. Town, shop, suppliers and prices are invented.").await;
    journey.wait_for_text_gone("Your books").await;

    journey.click(By::Text(DEMO_WAY)).await;
    journey.wait_for_text("Orchard Green").await;
    // The head says on every screen that the data is invented, and the book says so at length.
    journey.expect_lines(By::Text("invented data"), &["invented data"]).await;
    journey.click(By::Text("Book")).await;
    journey
        .wait_for_text("This is a demo: town, shop, suppliers, drinks and prices are invented. Change what you like.")
        .await;
    journey.expect_books(&[DEMO_LISTED]).await;

    journey.click(By::Text("Close this book")).await;
    journey.wait_for_text("Your books").await;
    journey.click(By::Text(DEMO_WAY)).await;
    journey.wait_for_text("This is a demo").await;
    // Opened again, not doubled.
    journey.expect_books(&[DEMO_LISTED]).await;

    journey.click(By::Text("Start an empty book")).await;
    journey.wait_for_text("Three steps to a first price").await;
    journey.wait_for_text_gone("invented data").await;
    journey.click(By::Text("Book")).await;
    journey.wait_for_text("Books on this device").await;
    journey.expect_books(&[DEMO_LISTED, "My book"]).await;
    journey.expect_each(".books li:has(.open-now) button > span:first-child", &["My book"]).await;
    journey.screenshot("books").await;
}

#[tokio::test]
async fn a_book_is_deleted_in_two_steps() {
    let journey = Journey::start("deleting").await;
    journey.open().await;
    journey.click(By::Text(DEMO_WAY)).await;
    journey.click(By::Text("Book")).await;

    let warning =
        "“Marrowgate Juice Hall” is kept under Deleted books for 30 days. Save it as a file to keep it longer.";
    journey.click(By::Text("Delete this book")).await;
    journey.wait_for_text(warning).await;
    journey.click(By::Text("Keep it")).await;
    journey.wait_for_text_gone(warning).await;
    journey.expect_books(&[DEMO_LISTED]).await;

    journey.click(By::Text("Delete this book")).await;
    journey.click(By::Text("Delete it from this device")).await;
    journey.wait_for_text(DEMO_WAY).await;
    journey.wait_for_text_gone("Your books").await;
    // After a load too, and a book that was deleted is not called cleared by the browser.
    journey.open().await;
    journey.wait_for_text(DEMO_WAY).await;
    journey.wait_for_text_gone("Your books").await;
    journey.wait_for_text_gone("The browser has removed your books").await;
}
