//! Going into a filled field by a tap, by Tab or by Enter selects what it holds, so that what is
//! typed takes its place; a second tap places the caret. With real taps and keys: WebDriver's own
//! clearing would hide that typing appends.

use brimwright::say;
use fantoccini::key::Key;

use crate::harness::{By, Engine, Journey, in_each_engine};

in_each_engine!(what_is_typed_takes_the_place_of_what_stood_there);
in_each_engine!(letters_to_find_by_are_typed_over_and_cleared);

fn price_of(name: &str) -> String {
    say!(market::price_of, name = name)
}

async fn what_is_typed_takes_the_place_of_what_stood_there(engine: Engine) {
    let journey = Journey::start_in(engine, "typed_over").await;
    journey.open().await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text("Orchard Green").await;

    // A price on the list: tapped and typed. Appending would make it 38.0039.
    let (apples, avocados) = (price_of("Apples"), price_of("Avocados"));
    let quick = By::Label(&apples);
    journey.go("#/buying").await;
    journey.expect_value(quick, "38.00").await;
    journey.click(quick).await;
    journey.type_on("39").await;
    journey.expect_value(quick, "39").await;
    // Enter goes on to the next price, which is typed over too, and back up by hand.
    journey.type_on_key(Key::Enter).await;
    caret_in(&journey, &avocados).await;
    journey.expect_value(quick, "39.00").await;
    journey.type_on("61").await;
    journey.expect_value(By::Label(&avocados), "61").await;

    // A second tap places the caret: what is typed goes in where it stands.
    journey.click(quick).await;
    selected(&journey, "39.00").await;
    journey.tap_left(quick).await;
    selected(&journey, "").await;
    journey.type_on_key(Key::End).await;
    journey.type_on("5").await;
    journey.expect_value(quick, "39.005").await;
    journey.type_on_key(Key::Tab).await;

    // By Tab, on the page of an ingredient: amounts as well.
    journey.go("#/buying/ingredient/1").await;
    let holds = By::Nth(0, &By::Label(say!(goods::pack_size)));
    journey.click(holds).await;
    journey.type_on("34 lb").await;
    journey.expect_value(holds, "34 lb").await;
    journey.type_on_key(Key::Enter).await;
    selected(&journey, "39.005").await;
    journey.type_on("40").await;
    let price = By::Nth(0, &By::Label(say!(goods::case_price)));
    journey.expect_value(price, "40").await;
    // What cannot be read is mended before Enter goes on.
    journey.type_on("x").await;
    journey.type_on_key(Key::Enter).await;
    journey.expect_value(price, "40x").await;
    caret_in(&journey, say!(goods::case_price)).await;

    // A question's field.
    journey.go("#/buying/list").await;
    let weeks = By::Label(say!(market::weeks_of_sales));
    journey.click(weeks).await;
    journey.type_on("1").await;
    journey.click(By::Text(say!(first::book))).await;
    journey.go("#/drinks/1/3").await;
    let price = By::Label(say!(drinks::menu_price));
    journey.click(price).await;
    journey.type_on("7.25").await;
    journey.expect_value(price, "7.25").await;
}

async fn letters_to_find_by_are_typed_over_and_cleared(engine: Engine) {
    let journey = Journey::start_in(engine, "searched_over").await;
    journey.open().await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text("Orchard Green").await;
    let find = By::Label(say!(market::find_item));
    journey.go("#/buying").await;
    journey.click(find).await;
    journey.type_on("appl").await;
    journey.type_on_key(Key::Enter).await;
    caret_in(&journey, &price_of("Apples")).await;
    journey.click(find).await;
    journey.type_on("oran").await;
    journey.expect_value(find, "oran").await;
    journey.click(By::Label(say!(first::clear_search))).await;
    journey.expect_value(find, "").await;
    caret_in(&journey, say!(market::find_item)).await;
    journey.expect_count(".search-clear:not([hidden])", 0).await;
    for (address, label) in [
        ("#/drinks", say!(first::find_drink)),
        ("#/counter", say!(first::find_drink)),
        ("#/counter/on-hand", say!(counter::search_stock)),
    ] {
        journey.go(address).await;
        journey.click(By::Label(label)).await;
        journey.type_on("a").await;
        journey.expect_value(By::Label(label), "a").await;
        journey.click(By::Label(say!(first::clear_search))).await;
        journey.expect_value(By::Label(label), "").await;
    }
}

/// Waits until exactly this text is selected in the field that has the caret.
async fn selected(journey: &Journey, text: &str) {
    let script = format!(
        "const field = document.activeElement;
         return field.value.slice(field.selectionStart, field.selectionEnd) === '{text}'"
    );
    journey.wait_until(&format!("the selection {text:?}"), &script).await;
}

/// Waits until the caret is in the field with this label.
async fn caret_in(journey: &Journey, label: &str) {
    let script = format!(
        "const field = document.activeElement;
         return (field.getAttribute('aria-label') ?? field.labels?.[0]?.innerText) === '{label}'"
    );
    journey.wait_until(&format!("the caret in {label:?}"), &script).await;
}
