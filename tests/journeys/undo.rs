//! Undo reaches across reload, closing and switching books; single steps go back by themselves;
//! another tab's work stays; and at the Counter what is done there can be undone there.

use fantoccini::key::Key;

use crate::harness::{By, Engine, Journey, in_each_engine};

in_each_engine!(undo_reaches_across_reload_and_closing_the_book);
in_each_engine!(another_tabs_price_stays_and_a_sentence_says_so);

const APPLES: By<'_> = By::Label("Price of Apples");
const CARROTS: By<'_> = By::Label("Price of Carrots");
const DEMO: By<'_> = By::Text("Look around in Marrowgate Juice Hall");

async fn start(engine: Engine, name: &'static str) -> Journey {
    let journey = Journey::start_in(engine, name).await;
    journey.open().await;
    journey.click(DEMO).await;
    journey.click(By::Text("Buying")).await;
    journey.expect_value(APPLES, "38.00").await;
    journey
}

/// The steps in the open list: what was done, what to, and what is said of it.
async fn expect_steps(journey: &Journey, expected: &[&str]) {
    journey.expect_each("dialog[open] .step-done p > span:first-child", expected).await;
}

async fn undo_reaches_across_reload_and_closing_the_book(engine: Engine) {
    let journey = start(engine, "undo_across").await;
    journey.enter(APPLES, "44.25").await;
    journey.enter(CARROTS, "35").await;
    journey.wait_until_saved().await;

    // Loaded again.
    journey.open().await;
    journey.click(By::Text("Buying")).await;
    journey.expect_value(CARROTS, "35.00").await;
    journey.wait_until_undo_is("Undo: Price of Carrots").await;
    journey.click(By::Text("Undo")).await;
    journey.expect_value(CARROTS, "34.00").await;
    journey.expect_value(APPLES, "44.25").await;
    journey.wait_until_saved().await;

    // Closed, another book opened, and back.
    journey.click(By::Text("Book")).await;
    journey.click(By::Text("Start an empty book")).await;
    journey.wait_for_text("My book").await;
    // Each book has its own steps.
    journey.wait_until_undo_is("Undo: ").await;
    journey.click(By::Text("Book")).await;
    journey.click(By::Text("Marrowgate Juice Hall")).await;
    journey.click(By::Text("Buying")).await;
    journey.expect_value(APPLES, "44.25").await;
    journey.wait_until_undo_is("Undo: Price of Apples").await;
    journey.click(By::Text("Undo")).await;
    journey.expect_value(APPLES, "38.00").await;
    // What was taken back before all that comes again, too.
    journey.click(By::Text("Redo")).await;
    journey.expect_value(APPLES, "44.25").await;
    journey.click(By::Text("Redo")).await;
    journey.expect_value(CARROTS, "35.00").await;
}

#[tokio::test]
async fn one_step_goes_back_by_itself_and_one_that_others_hang_on_says_so() {
    let journey = start(Engine::Chromium, "undo_list").await;
    journey.enter(APPLES, "44.25").await;
    journey.enter(CARROTS, "35").await;
    journey.enter(CARROTS, "36").await;
    journey.click(By::Text("Steps")).await;
    expect_steps(&journey, &["Price of Carrots", "Price of Carrots", "Price of Apples"]).await;
    journey.wait_for_text("Take back first: Price of Carrots, 12:0").await;
    journey.resize(320, 640).await;
    assert_eq!(journey.faults_of_layout(&[""]).await, Vec::<String>::new());
    journey.screenshot("steps").await;
    let undo_apples = "const button = [...document.querySelectorAll('dialog[open] button')]
        .find((it) => it.getAttribute('aria-label')?.startsWith('Undo Price of Apples'));
        button?.click(); return button !== undefined";
    journey.wait_until("the Undo of the apples", undo_apples).await;
    // No row slides under the finger: the step that this is comes into the list when it opens next.
    journey.expect_each("dialog[open] .step-done:last-child .soft:last-of-type", &["Undone"]).await;
    expect_steps(&journey, &["Price of Carrots", "Price of Carrots", "Price of Apples"]).await;
    journey.wait_until("the caret at the head of the list", "return document.activeElement.id === 'steps-title'").await;
    journey.click(By::Text("Close")).await;
    journey.click(By::Text("Steps")).await;
    expect_steps(&journey, &["Undo Price of Apples", "Price of Carrots", "Price of Carrots", "Price of Apples"]).await;
    journey.click(By::Text("Close")).await;
    journey.expect_value(APPLES, "38.00").await;
    journey.expect_value(CARROTS, "36.00").await;
    // That is a step itself.
    assert_eq!(journey.title_of_undo().await, "Undo: Undo Price of Apples");
    journey.click(By::Text("Undo")).await;
    journey.expect_value(APPLES, "44.25").await;
}

async fn another_tabs_price_stays_and_a_sentence_says_so(engine: Engine) {
    let journey = start(engine, "undo_tabs").await;
    journey.open_another_tab().await;
    journey.click(By::Text("Buying")).await;
    journey.expect_value(APPLES, "38.00").await;
    journey.use_tab(0).await;
    journey.enter(CARROTS, "35").await;
    journey.enter(APPLES, "44.25").await;
    journey.wait_until_saved().await;
    journey.use_tab(1).await;
    journey.expect_value(APPLES, "44.25").await;
    journey.enter(APPLES, "45").await;
    journey.wait_until_saved().await;
    journey.use_tab(0).await;
    journey.expect_value(APPLES, "45.00").await;
    journey.click(By::Nth(0, &By::Text("Undo"))).await;
    journey
        .wait_for_text(
            "Not undone: Price of Apples. Apples: the case price is now $45.00, changed by a later step or in another tab. Change it by hand.",
        )
        .await;
    journey.expect_value(APPLES, "45.00").await;
    // The next Undo goes on.
    journey.click(By::Nth(0, &By::Text("Undo"))).await;
    journey.expect_value(CARROTS, "34.00").await;
    journey.wait_for_text_gone("Not undone").await;
    journey.expect_value(APPLES, "45.00").await;
}

#[tokio::test]
async fn todays_changes_stand_under_the_search_each_with_its_undo() {
    let journey = start(Engine::Chromium, "undo_today").await;
    journey.wait_for_text("Today's changes none yet").await;
    journey.click(By::Text("Today's changes none yet")).await;
    journey.enter(APPLES, "44.25").await;
    journey.enter(CARROTS, "35").await;
    // 44.25 / 38 and 35 / 34.
    journey.wait_for_text("40 lb: was $38.00, now $44.25, +16.4 %").await;
    journey.wait_for_text("was $34.00, now $35.00, +2.9 %").await;
    journey.wait_for_text("more a week, all changes together.").await;
    journey.screenshot("today").await;
    // No sum stands beside a price that cannot be read.
    journey.type_into(CARROTS, "35q").await;
    journey.wait_for_text_gone("all changes together.").await;
    journey.wait_for_text("Fix “Price of Carrots” to see this.").await;
    journey.type_into(CARROTS, "35").await;
    journey.press(CARROTS, Key::Tab).await;
    journey.wait_for_text("more a week, all changes together.").await;
    // There again after a load: the book itself knows what a price was.
    journey.wait_until_saved().await;
    journey.open().await;
    journey.click(By::Text("Buying")).await;
    journey.wait_for_text("Today's changes 2").await;
    journey.click(By::Text("Today's changes 2")).await;
    journey.wait_for_text("more a week, all changes together.").await;
    journey.click(By::Label("Undo Price of Apples")).await;
    journey.expect_value(APPLES, "38.00").await;
    journey.expect_value(CARROTS, "35.00").await;
    // Its row stays where it was, and says so: a second press meets no other row.
    journey.expect_each(".changes li a", &["Apples", "Carrots"]).await;
    journey.expect_count(".changes li .button", 1).await;
    journey.wait_for_text("Undone").await;
    journey.wait_for_text("Today's changes 1").await;
    // Typed anew, it is a change as any other.
    journey.enter(APPLES, "44").await;
    journey.wait_for_text("Today's changes 2").await;
    journey.expect_count(".changes li .button", 2).await;
    journey.click(By::Label("Undo Price of Apples")).await;
    journey.expect_value(APPLES, "38.00").await;
    // A price without a day is known by its step.
    journey.enter(By::Label("Price of Pineapples"), "18").await;
    journey.wait_for_text("was $17.40, now $18.00, +3.4 %").await;
    journey.click(By::Label("Undo Price of Pineapples")).await;
    journey.expect_value(By::Label("Price of Pineapples"), "17.40").await;
    journey.expect_count(".changes li .button", 1).await;
}

#[tokio::test]
async fn what_is_done_at_the_counter_is_undone_at_the_counter() {
    let journey = start(Engine::Chromium, "undo_locked").await;
    journey.enter(APPLES, "44.25").await;
    journey.go("#/counter").await;
    journey.type_into(By::Label("PIN of 4 to 8 digits"), "4207").await;
    journey.type_into(By::Label("The same PIN again"), "4207").await;
    journey.click(By::Text("Lock to the Counter")).await;
    journey.wait_for_text("Unlock").await;
    assert_eq!(journey.title_of_undo().await, "Undo: ", "the owner's price is out of reach");
    journey.go("#/counter/batches/2026-11-26").await;
    journey.click(By::Text("Delete batch")).await;
    journey.click(By::Text("Undo")).await;
    journey.go("#/counter/batches/2026-11-26").await;
    journey.wait_for_text("Batch of 26 Nov 2026").await;
    journey.click(By::Text("Steps")).await;
    journey.wait_until("no price in the list", "return !document.body.textContent.includes('$')").await;
    expect_steps(&journey, &["Delete batch"]).await;
}
