//! What was typed and may not be meant is asked about beside its field once the visit to it ends,
//! stands marked until it is answered, and is never blocked.

use fantoccini::key::Key;

use crate::harness::{By, Journey};

const QUICK: By<'_> = By::Label("Price of Apples");
const UNREAD: &str = "“3x” is not a number. Type digits, such as 38.50.";
const ASKED: &str = ".entry-asked > span:nth-of-type(2)";

#[tokio::test]
async fn a_jump_is_asked_about_until_it_is_answered() {
    let journey = Journey::start("jumped").await;
    journey.open().await;
    journey.click(By::Text("Look around in Marrowgate Juice Hall")).await;
    journey.wait_for_text("Orchard Green").await;
    journey.go("#/buying").await;

    // 3,800.00 is in force at once; it is asked about when the visit ends, not at each key.
    journey.click(QUICK).await;
    journey.type_on("3800").await;
    journey.expect_value(QUICK, "3800").await;
    journey.expect_count(ASKED, 0).await;
    journey.type_on_key(Key::Enter).await;
    journey.expect_each(ASKED, &["Was $38.00, now $3,800.00."]).await;
    journey.expect_each(".mark-asked", &["Check this"]).await;
    journey.screenshot("asked").await;

    // It stays marked: on another screen with the same field, and after a load.
    journey.go("#/buying/ingredient/1").await;
    journey.expect_each(ASKED, &["Was $38.00, now $3,800.00."]).await;
    journey.wait_until_saved().await;
    journey.open().await;
    // Where its margins are read, it is named, until an Undo takes it back.
    journey.wait_for_text("Check “Price of Apples”. It may not be what you meant.").await;
    journey.screenshot("asked_elsewhere").await;
    journey.wait_until_undo_is("Undo: Price of Apples").await;
    journey.click(By::Text("Undo")).await;
    journey.wait_for_text_gone("It may not be what you meant.").await;
    journey.click(By::Text("Redo")).await;
    journey.click(By::Text("Check now")).await;
    journey.wait_for_text_gone("It may not be what you meant.").await;
    journey.expect_each(ASKED, &["Was $38.00, now $3,800.00."]).await;
    journey.go("#/buying").await;
    journey.expect_each(ASKED, &["Was $38.00, now $3,800.00."]).await;
    assert!(journey.faults_of_layout(&[""]).await.is_empty());
    journey.resize(320, 640).await;
    assert_eq!(journey.faults_of_layout(&[""]).await, Vec::<String>::new());
    journey.screenshot("asked_320").await;
    journey.resize(360, 740).await;

    // What cannot be read is mended first: its sentence stands alone, also after a load.
    journey.click(QUICK).await;
    journey.type_on("3x").await;
    journey.type_on_key(Key::Tab).await;
    journey.expect_each(".entry-wrong .entry-error", &[UNREAD]).await;
    journey.expect_count(ASKED, 0).await;
    journey.open().await;
    journey.go("#/buying").await;
    journey.expect_each(".entry-wrong .entry-error", &[UNREAD]).await;
    journey.expect_count(ASKED, 0).await;

    // Typing on does not make the wrong price what it was before.
    journey.click(QUICK).await;
    journey.type_on("380").await;
    journey.type_on_key(Key::Tab).await;
    journey.expect_each(ASKED, &["Was $38.00, now $380.00."]).await;
    journey.click(QUICK).await;
    journey.type_on("39").await;
    journey.type_on_key(Key::Tab).await;
    journey.expect_count(ASKED, 0).await;

    // Back puts back what was before the visit, as a step that Undo takes back.
    journey.click(QUICK).await;
    journey.type_on("390").await;
    journey.type_on_key(Key::Enter).await;
    journey.click(By::Label("Back to $39.00")).await;
    journey.expect_value(QUICK, "39.00").await;
    journey.expect_count(ASKED, 0).await;
    journey.click(By::Text("Undo")).await;
    journey.expect_value(QUICK, "390.00").await;

    // Keep takes only the question away, for good.
    journey.click(QUICK).await;
    journey.type_on("4").await;
    journey.type_on_key(Key::Enter).await;
    journey.click(By::Label("Keep $4.00")).await;
    journey.expect_count(ASKED, 0).await;
    journey.expect_value(QUICK, "4.00").await;
    journey.wait_until_saved().await;
    journey.open().await;
    journey.go("#/buying").await;
    journey.expect_value(QUICK, "4.00").await;
    journey.expect_count(ASKED, 0).await;
}

/// The day on which the price was heard, and the prices before it, on the page of the ingredient.
const HEARD: &str = "
    const heard = [...document.querySelectorAll('.pack-now .actions, .pack-now table')].map((it) => it.innerText).join();
    window.heard ??= heard;
    return heard !== '' && window.heard === heard;";

#[tokio::test]
async fn back_is_no_price_heard_today() {
    let journey = Journey::start("jumped_back").await;
    journey.open().await;
    journey.click(By::Text("Look around in Marrowgate Juice Hall")).await;
    journey.wait_for_text("Orchard Green").await;
    journey.go("#/buying/ingredient/1").await;
    journey.wait_until("when the price was heard", HEARD).await;
    let price = By::Nth(0, &By::Label("Price of the pack"));
    for typed in ["3800", "380"] {
        journey.click(price).await;
        journey.type_on(typed).await;
        journey.type_on_key(Key::Tab).await;
        journey.expect_count(ASKED, 1).await;
    }
    // Something else is typed before the question is answered.
    journey.enter(By::Nth(0, &By::Label("Supplier")), "Dale Farm").await;
    journey.click(By::Text("Back")).await;
    journey.expect_value(price, "38.00").await;
    journey.expect_count(ASKED, 0).await;
    journey.expect_value(By::Nth(0, &By::Label("Supplier")), "Dale Farm").await;
    journey.wait_until("the price heard when it was before", HEARD).await;
}

#[tokio::test]
async fn what_is_only_tried_is_asked_about_too() {
    let journey = Journey::start("jumped_tried").await;
    journey.open().await;
    journey.click(By::Text("Look around in Marrowgate Juice Hall")).await;
    journey.wait_for_text("Orchard Green").await;
    journey.go("#/sizes/drink/1").await;
    journey.click(By::Text("What if")).await;
    for (label, typed, sentence, before) in [
        ("Bottle, 12 fl oz: price", "69.5", "Was $6.95, now $69.50.", "6.95"),
        ("Bottle, 12 fl oz: poured", "1", "Was 12.1 fl oz, now 1 fl oz.", "12.1 fl oz"),
    ] {
        let field = By::Label(label);
        journey.click(field).await;
        journey.type_on(typed).await;
        journey.type_on_key(Key::Tab).await;
        journey.expect_each(ASKED, &[sentence]).await;
        journey.click(By::Text("Back")).await;
        journey.expect_count(ASKED, 0).await;
        journey.expect_value(field, before).await;
    }
    journey.go("#/sizes/scenarios/1").await;
    journey.click(By::Text("Change Orchard Green")).await;
    let price = By::Label("Menu price of Orchard Green, Bottle, 12 fl oz");
    journey.click(price).await;
    journey.type_on("69.5").await;
    journey.type_on_key(Key::Tab).await;
    journey.expect_each(ASKED, &["Was $6.95, now $69.50."]).await;
    journey.click(By::Text("Back")).await;
    journey.expect_value(price, "6.95").await;
}

#[tokio::test]
async fn what_is_unusual_for_its_kind_is_asked_about() {
    let journey = Journey::start("unusual").await;
    journey.open().await;
    journey.click(By::Text("Look around in Marrowgate Juice Hall")).await;
    journey.wait_for_text("Orchard Green").await;
    for (address, label, typed, sentence) in [
        ("#/book", "Tax rate", "65", "Was 6.5 %, now 65 %. A tax over 50 % is rare."),
        (
            "#/buying/ingredient/1",
            "Density of the juice",
            "10.48",
            "Was 1.048 g/mL, now 10.48 g/mL. Most foods and drinks are between 0.2 and 3 g/mL.",
        ),
        ("#/buying/ingredient/1", "Left after trimming", "4", "Was 90 %, now 4 %. A trim yield under 5 % is rare."),
        ("#/buying/ingredient/1", "Juice from what is trimmed", "6.5", "Was 65 %, now 6.5 %."),
        ("#/buying/ingredient/1", "Holds", "4", "Was 40 lb, now 4 lb."),
        ("#/buying/container/3", "Volume to the rim", "126", "Was 12.6 fl oz, now 126 fl oz."),
        ("#/drinks/1/3", "Menu price", "69.50", "Was $6.95, now $69.50."),
    ] {
        journey.go(address).await;
        let field = By::Nth(0, &By::Label(label));
        journey.click(field).await;
        journey.type_on(typed).await;
        journey.type_on_key(Key::Tab).await;
        journey.expect_each(ASKED, &[sentence]).await;
        journey.click(By::Text("Back")).await;
        journey.expect_count(ASKED, 0).await;
    }
    // A change within three times, and one that cannot be read, ask nothing.
    journey.go("#/buying/ingredient/1").await;
    let holds = By::Nth(0, &By::Label("Holds"));
    for typed in ["30", "x"] {
        journey.click(holds).await;
        journey.type_on(typed).await;
        journey.type_on_key(Key::Tab).await;
        journey.expect_count(ASKED, 0).await;
    }
}
