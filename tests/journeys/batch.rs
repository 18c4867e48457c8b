//! A batch at the counter: what cannot be read is ticked, stepped and deducted by nobody; what was
//! deducted is deducted once, whatever is deleted and started again; an empty book says where drinks
//! come from.

use fantoccini::key::Key;

use crate::entering;
use crate::harness::{By, Engine, Journey};

const DAY: &str = "#/counter/batches/2026-11-26";
const GREEN: &str = "Orchard Green, Bottle, 12 fl oz";
const NUMBER: By<'_> = By::Label("Number of Orchard Green, Bottle, 12 fl oz");
const OTHER: By<'_> = By::Label("Copper Morning, Bottle, 12 fl oz");
const STANDS: &str = "9 drinks and sizes, 92 to make, 18 filled.";

/// The demo book's batch.
async fn demo(name: &str) -> Journey {
    let journey = Journey::start_in(Engine::Chromium, name).await;
    journey.open().await;
    journey.click(By::Text("Look around in Marrowgate Juice Hall")).await;
    journey.wait_for_text("Orchard Green").await;
    journey.go(DAY).await;
    journey.wait_for_text("9 drinks and sizes, 92 to make, 0 filled.").await;
    journey
}

/// Which of the tick, −, + and the deduction of the first row cannot be pressed.
const WAITING: &str = "
    const row = document.querySelector('.make');
    const button = (name) => [...document.querySelectorAll('main button')].find((it) => it.innerText === name);
    const all = [row.querySelector('[type=checkbox]'), ...row.querySelectorAll('button.button'), button('Deduct from stock')];
    const others = [...document.querySelectorAll('.make:not(:first-child) :is(button, [type=checkbox])')];
    return all.length === 4 && others.length > 8 && others.every((it) => !it.disabled)";

/// −, the number, + and the card side by side, and the sentence under them from edge to edge.
const IN_PLACE: &str = "
    const row = document.querySelector('.make');
    const box = (it) => it.getBoundingClientRect();
    const [fewer, more, card] = row.querySelectorAll('.button');
    const error = row.querySelector('.entry-error');
    const line = [fewer, row.querySelector('input[type=text]'), more, card].map(box);
    const middle = ({ top, height }) => Math.round(top + height / 2);
    return error.innerText !== '' && new Set(line.map(middle)).size === 1
        && line.slice(1).every(({ left }, index) => left >= line[index].right)
        && line[0].width < 60 && line[2].width < 60 && line[1].width >= 56
        && box(error).top >= Math.max(...line.map(({ bottom }) => bottom))
        && Math.abs(box(error).left - line[0].left) < 1 && box(error).right >= line[3].right - 1";

#[tokio::test]
async fn a_number_that_cannot_be_read_is_mended_first() {
    let journey = demo("batch_unread").await;
    journey.click(OTHER).await;
    journey.wait_for_text(STANDS).await;
    for (text, sentence) in [
        ("12 oz", "“12 oz” is not a number. Type digits, such as 1."),
        ("1/2", "The number to make must be a whole number, such as 12."),
    ] {
        journey.type_into(NUMBER, text).await;
        journey.expect_error(NUMBER, sentence).await;
        journey.wait_until("all of the row to wait", &format!("{WAITING} && all.every((it) => it.disabled);")).await;
        journey.wait_for_text(&format!("Fix “Number of {GREEN}” first.")).await;
        journey.wait_for_text_gone(STANDS).await;
        for (width, height) in [(1440, 900), (1024, 768), (768, 1024), (360, 740)] {
            journey.resize(width, height).await;
            journey.wait_until(&format!("all in its place at {width}"), IN_PLACE).await;
            journey.screenshot(&format!("row_{width}")).await;
        }
    }
    // On paper, too, it is said that it is not in the plan.
    journey.click(By::Text("Sheet to print")).await;
    journey.wait_for_text(&format!("Not in this plan yet: “1/2” as Number of {GREEN}. Fix it in the batch.")).await;
    journey.click(By::Text("Batch")).await;
    journey.expect_value(NUMBER, "1/2").await;
    journey.type_into(NUMBER, "14").await;
    journey.wait_until("nothing to wait", &format!("{WAITING} && all.every((it) => !it.disabled);")).await;
    journey.click(By::Label(&format!("One more {GREEN}"))).await;
    journey.expect_value(NUMBER, "15").await;
    // Taken out and added again, the row begins anew.
    journey.type_into(NUMBER, "many").await;
    journey.expect_error(NUMBER, "“many” is not a number. Type digits, such as 1.").await;
    let take_out = "document.querySelector('.make .take-out').click(); return true";
    journey.wait_until("the row to be taken out", take_out).await;
    journey.wait_for_text("8 drinks and sizes, 80 to make, 18 filled.").await;
    journey.choose(By::Label("Add to the batch"), GREEN).await;
    journey.expect_value(NUMBER, "").await;
    journey.wait_for_text("9 drinks and sizes, 80 to make, 18 filled.").await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

async fn bottles(journey: &Journey, left: &str) {
    journey.go("#/counter/on-hand").await;
    journey.type_into(By::Label("Search what is on the shelf"), "Bottle, 12").await;
    journey.expect_value(By::Label("Bottle, 12 fl oz"), left).await;
    journey.go(DAY).await;
}

/// 180 bottles were counted; 12 of them are filled.
#[tokio::test]
async fn what_was_deducted_is_deducted_once() {
    let journey = demo("batch_once").await;
    journey.click(By::Label(GREEN)).await;
    journey.wait_until_undo_is(&format!("Undo: Tick {GREEN}")).await;
    journey.click(By::Text("Deduct from stock")).await;
    journey.wait_until_undo_is("Undo: Deduct from stock").await;
    bottles(&journey, "168 ea").await;
    journey.wait_for_text("Deducted from stock: 12 drinks. Each counts once, so this row stays.").await;
    journey.wait_for_text_gone(&format!("Take out {GREEN}")).await;
    journey.screenshot("deducted").await;
    // Apart from the deduction, at the end of the page.
    let apart = "
        const [deduct, remove] = ['Deduct from stock', 'Delete batch']
            .map((name) => [...document.querySelectorAll('main button')].find((it) => it.innerText === name));
        return remove.getBoundingClientRect().top - deduct.getBoundingClientRect().bottom >= 48;";
    journey.wait_until("Delete batch to stand apart", apart).await;
    journey.click(By::Text("Delete batch")).await;
    let deleted = "Deleted: Batch of 26 Nov 2026. What it used stays deducted from stock. Undo brings it back.";
    journey.wait_for_text(deleted).await;
    journey.wait_for_text("What do you make on a day?").await;
    journey.click(By::Text("Start empty")).await;
    journey.wait_for_text("Deducted from stock: 12 drinks. Each counts once, so this row stays.").await;
    journey.enter(NUMBER, "12").await;
    journey.wait_until_undo_is(&format!("Undo: Number of {GREEN}")).await;
    journey.click(By::Label(GREEN)).await;
    journey.wait_for_text("1 drink and size, 12 to make, 12 filled.").await;
    journey.wait_for_text("What the filled drinks took is off the shelf.").await;
    bottles(&journey, "168 ea").await;
    // Three more are three more.
    journey.enter(NUMBER, "15").await;
    journey.click(By::Label(GREEN)).await;
    journey.click(By::Text("Deduct from stock")).await;
    journey.wait_until_undo_is("Undo: Deduct from stock").await;
    bottles(&journey, "165 ea").await;
    // Undo goes all the way back, past the deletion and the first deduction.
    for step in [
        "Undo: Deduct from stock".to_string(),
        format!("Undo: Tick {GREEN}"),
        format!("Undo: Number of {GREEN}"),
        format!("Undo: Tick {GREEN}"),
        format!("Undo: Number of {GREEN}"),
        "Undo: Delete batch".to_string(),
        "Undo: Deduct from stock".to_string(),
    ] {
        journey.wait_until_undo_is(&step).await;
        journey.click(By::Text("Undo")).await;
    }
    journey.wait_for_text("9 drinks and sizes, 92 to make, 12 filled.").await;
    bottles(&journey, "180 ea").await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

#[tokio::test]
async fn an_emptied_count_keeps_its_unit() {
    let journey = demo("batch_count").await;
    journey.go("#/counter/on-hand").await;
    let (count, unit) = (By::Label("Carrots"), By::Label("Unit of Carrots"));
    for (typed, stands, symbol, next) in [("12 oz", "12 oz", "oz", "8 oz"), ("2 cup", "2 cup", "cup", "8 cup")] {
        journey.type_into(count, typed).await;
        journey.expect_value(count, stands).await;
        journey.type_into(count, "").await;
        journey.expect_value(unit, symbol).await;
        journey.type_on("8").await;
        journey.expect_value(count, next).await;
    }
    // Emptied and left, the unit waits too; one that is picked takes its place.
    journey.enter(count, "").await;
    journey.expect_value(unit, "cup").await;
    journey.choose(unit, "kg").await;
    journey.type_into(count, "8").await;
    journey.expect_value(count, "8 kg").await;
    journey.press(count, Key::Tab).await;
    journey.expect_value(count, "8 kg").await;
}

#[tokio::test]
async fn an_empty_book_says_where_drinks_come_from() {
    let journey = entering::empty_book("batch_empty").await;
    journey.go("#/counter/batches").await;
    journey.wait_for_text("What do you make on a day?").await;
    journey.wait_for_text_gone("A usual day is").await;
    journey.click(By::Text("Start empty")).await;
    journey.wait_for_text("Nothing is on the menu yet. Add a drink and its sizes in Drinks first.").await;
    journey.wait_for_text_gone("Add to the batch").await;
    journey.screenshot("no_drinks").await;
    journey.click(By::Nth(0, &By::Text("Drinks"))).await;
    journey.expect_each("main h1", &["Drinks"]).await;
}
