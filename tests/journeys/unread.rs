//! While a field cannot be read, no answer that hangs on it stands beside the error: a sentence
//! takes its place, and what cannot be read waits in its field, also where the screen is left.

use fantoccini::key::Key;

use crate::harness::{By, Journey};

#[tokio::test]
async fn an_error_takes_the_place_of_the_answer() {
    let journey = Journey::start("unread").await;
    journey.open().await;
    journey.click(By::Text("Look around in Marrowgate Juice Hall")).await;
    journey.wait_for_text("Orchard Green").await;
    offer(&journey).await;
    quick_price(&journey).await;
    ingredient(&journey).await;
    questions(&journey).await;
    card(&journey).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

/// Types what cannot be read, sees `answer` replaced, and brings it back by Escape.
async fn replaced(journey: &Journey, field: By<'_>, label: &str, text: &str, answer: &str) {
    journey.wait_for_text(answer).await;
    journey.type_into(field, text).await;
    journey.wait_for_text(&format!("Fix “{label}” to see this.")).await;
    journey.wait_for_text_gone(answer).await;
    journey.press(field, Key::Escape).await;
    journey.wait_for_text(answer).await;
    journey.wait_for_text_gone("to see this.").await;
}

async fn offer(journey: &Journey) {
    journey.go("#/drinks/1/3").await;
    let price = By::Label("Menu price");
    replaced(journey, price, "Menu price", "free", "Customer pays").await;
    replaced(journey, price, "Menu price", "0", "Suggested: ").await;
    journey.type_into(price, "6.95x").await;
    journey.wait_for_text_gone("Closing the gap").await;
    journey.screenshot("offer").await;
    // It waits in its field, with its sentence, where the screen is left.
    journey.go("#/drinks").await;
    journey.go("#/drinks/1/3").await;
    journey.expect_value(price, "6.95x").await;
    journey.expect_sentence(price, "“6.95x” is not a number. Type digits, such as 9.50.").await;
    journey.wait_for_text("Fix “Menu price” to see this.").await;
    journey.press(price, Key::Escape).await;
    journey.expect_value(price, "6.95").await;
}

async fn quick_price(journey: &Journey) {
    journey.go("#/buying").await;
    let price = By::Label("Price of Apples");
    journey.type_into(price, "45").await;
    journey.wait_for_text("sizes moved").await;
    journey.type_into(price, "45q").await;
    journey.wait_for_text("Fix “Price of Apples” to see this.").await;
    journey.wait_for_text_gone("sizes moved").await;
    journey.screenshot("quick_price").await;
    journey.press(price, Key::Escape).await;
    journey.wait_for_text_gone("to see this.").await;
}

async fn ingredient(journey: &Journey) {
    journey.go("#/buying/ingredient/1").await;
    let holds = By::Nth(0, &By::Label("Holds"));
    replaced(journey, holds, "Holds", "40 stone", "Compared ").await;
    replaced(journey, By::Label("Left after trimming"), "Left after trimming", "0", "Per lb trimmed").await;
}

/// No amounts stand beside a number of drinks that is none; a chip takes its place.
async fn card(journey: &Journey) {
    journey.go("#/counter/1/4").await;
    let number = By::Label("How many");
    journey.expect_count(".recipe > li", 5).await;
    for text in ["12 oz", "1/2", "0", "2.5", "1000000"] {
        journey.type_into(number, text).await;
        journey.wait_for_text("Fix “How many” to see this.").await;
        journey.expect_count(".recipe > li", 0).await;
    }
    journey.expect_count(".how-many [aria-pressed=true]", 0).await;
    journey.screenshot("card").await;
    journey.click(By::Text("2 for 2 drinks")).await;
    journey.expect_each(".recipe-for", &["for 2 drinks"]).await;
    journey.expect_count(".recipe > li", 5).await;
    journey.expect_value(number, "2").await;
    journey.expect_error(number, "").await;
    journey.type_into(number, "2x").await;
    journey.wait_for_text("Fix “How many” to see this.").await;
    journey.type_into(number, "12").await;
    journey.expect_each(".recipe-for", &["for 12 drinks"]).await;
    journey.expect_count(".recipe > li", 5).await;
}

async fn questions(journey: &Journey) {
    journey.go("#/sizes/price-point").await;
    let point = By::Label("It must not cost more than");
    journey.type_into(point, "7").await;
    replaced_by_hand(journey, point, "It must not cost more than", "seven", "7", "At $7.00").await;
    journey.go("#/drinks/1/3").await;
    journey.type_into(point, "7").await;
    let shop = By::Label("Sold on by a shop that keeps (%)");
    replaced_by_hand(journey, shop, "Sold on by a shop that keeps (%)", "100", "30", "It may cost").await;
    journey.go("#/sizes/drink/1").await;
    journey.click(By::Text("What if")).await;
    let target = By::Label("Target margin");
    journey.type_into(target, "many").await;
    journey.wait_for_text("Fix “Target margin” to see this.").await;
    journey.press(target, Key::Escape).await;
    journey.wait_for_text_gone("to see this.").await;
}

/// The same for a question, which Escape does not answer: what can be read is typed again.
async fn replaced_by_hand(journey: &Journey, field: By<'_>, label: &str, text: &str, good: &str, answer: &str) {
    journey.wait_for_text(answer).await;
    journey.type_into(field, text).await;
    journey.wait_for_text(&format!("Fix “{label}” to see this.")).await;
    journey.wait_for_text_gone(answer).await;
    journey.type_into(field, good).await;
    journey.wait_for_text(answer).await;
}
