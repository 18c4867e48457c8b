//! A batch at the counter: what cannot be read is ticked, stepped and deducted by nobody; what was
//! deducted is deducted once, whatever is deleted and started again; an empty book says where drinks
//! come from.

use brimwright::say;
use fantoccini::key::Key;

use crate::entering;
use crate::harness::{By, Engine, Journey};

const DAY: &str = "#/counter/batches/2026-11-26";
const GREEN: &str = "Orchard Green, 12 oz bottle";
const OTHER: By<'_> = By::Label("Copper Morning, 12 oz bottle");

/// How many are to be made, and how many are filled.
fn stands(sizes: usize, planned: &str, made: &str) -> String {
    say!(counter::batch_totals, sizes = sizes, planned = planned, made = made)
}

/// The field for how many of the first row.
fn number() -> String {
    say!(counter::number_of, drink = GREEN)
}

/// The demo book's batch.
async fn demo(name: &str) -> Journey {
    let journey = Journey::start_in(Engine::Chromium, name).await;
    journey.open().await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text("Orchard Green").await;
    journey.go(DAY).await;
    journey.wait_for_text(&stands(9, "92", "0")).await;
    journey
}

/// Which of the tick, −, + and the deduction of the first row cannot be pressed.
fn waiting() -> String {
    let deduct = say!(counter::deduct_from_stock);
    format!(
        "
    const row = document.querySelector('.make');
    const button = (name) => [...document.querySelectorAll('main button')].find((it) => it.innerText === name);
    const all = [row.querySelector('[type=checkbox]'), ...row.querySelectorAll('button.button'), button('{deduct}')];
    const rows = [...document.querySelectorAll('.make')].slice(1);
    const others = rows.flatMap((it) => [...it.querySelectorAll('button, [type=checkbox]')]);
    return all.length === 4 && others.length > 8 && others.every((it) => !it.disabled)"
    )
}

/// −, the number and + side by side, 48 px high, and the sentence under them from edge to edge.
const IN_PLACE: &str = "
    const row = document.querySelector('.make');
    const box = (it) => it.getBoundingClientRect();
    const [fewer, more] = row.querySelectorAll('.button');
    const error = row.querySelector('.entry-error');
    const line = [row.querySelector('.tick'), fewer, row.querySelector('input[type=text]'), more].map(box);
    const middle = ({ top, height }) => Math.round(top + height / 2);
    return error.innerText !== '' && new Set(line.map(middle)).size === 1
        && line.slice(1).every(({ left }, index) => left >= line[index].right)
        && line.every(({ height }) => height >= 48) && line.slice(1).every(({ width }) => width >= 48)
        && box(error).top >= Math.max(...line.map(({ bottom }) => bottom))
        && Math.abs(box(error).left - line[0].left) < 1 && box(error).right >= line[3].right - 1";

#[tokio::test]
async fn a_number_that_cannot_be_read_is_mended_first() {
    let journey = demo("batch_unread").await;
    let (number, waiting) = (number(), waiting());
    let field = By::Label(&number);
    let not_a_number = |text: &str| say!(book::not_a_number, text = text, example = "12");
    journey.click(OTHER).await;
    journey.wait_for_text(&stands(9, "92", "18")).await;
    let too_many = say!(counter::too_many_drinks, drinks = "99,999,999", most = "999");
    for (text, sentence) in [
        ("99999999", too_many),
        ("12 oz", not_a_number("12 oz")),
        ("1/2", say!(refusals::not_whole, field = say!(counter::drinks_to_make))),
    ] {
        journey.type_into(field, text).await;
        journey.expect_error(field, &sentence).await;
        journey.wait_until("all of the row to wait", &format!("{waiting} && all.every((it) => it.disabled);")).await;
        journey.wait_for_text(&say!(book::fix_field_first, field = &number)).await;
        journey.wait_for_text_gone(&stands(9, "92", "18")).await;
        for (width, height) in [(1440, 900), (1024, 768), (768, 1024), (360, 740)] {
            journey.resize(width, height).await;
            journey.wait_until(&format!("all in its place at {width}"), IN_PLACE).await;
            journey.screenshot(&format!("row_{width}")).await;
        }
    }
    // On paper, too, it is said that it is not in the plan.
    journey.click(By::Text(say!(counter::print_sheet))).await;
    journey.wait_for_text(&say!(counter::not_in_plan, text = "1/2", field = &number)).await;
    journey.click(By::Text(say!(counter::batch))).await;
    journey.expect_value(field, "1/2").await;
    journey.type_into(field, "14").await;
    journey.wait_until("nothing to wait", &format!("{waiting} && all.every((it) => !it.disabled);")).await;
    journey.click(By::Label(&say!(counter::one_more, drink = GREEN))).await;
    journey.expect_value(field, "15").await;
    // Taken out and added again, the row begins anew.
    journey.type_into(field, "many").await;
    journey.expect_error(field, &not_a_number("many")).await;
    let take_out = "document.querySelector('.make .take-out').click(); return true";
    journey.wait_until("the row to be taken out", take_out).await;
    journey.wait_for_text(&stands(8, "80", "18")).await;
    journey.choose(By::Label(say!(counter::add_to_batch)), GREEN).await;
    journey.expect_value(field, "").await;
    journey.wait_for_text(&stands(9, "80", "18")).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

async fn bottles(journey: &Journey, left: &str) {
    journey.go("#/counter/on-hand").await;
    journey.type_into(By::Label(say!(counter::search_stock)), "12 oz b").await;
    journey.expect_value(By::Label("12 oz bottle"), left).await;
    journey.go(DAY).await;
}

/// 180 bottles were counted; 12 of them are filled.
#[tokio::test]
async fn what_was_deducted_is_deducted_once() {
    let journey = demo("batch_once").await;
    let undo = |change: &str| say!(first::undo_change, change = change);
    let (number, ticked) = (number(), undo(&say!(counter::check_off, item = GREEN)));
    let changed = say!(counter::change_number_of, drink = GREEN);
    let (field, typed) = (By::Label(&number), undo(&changed));
    let deduct = By::Text(say!(counter::deduct_from_stock));
    let deducted = undo(say!(counter::deduct_from_stock));
    journey.click(By::Label(GREEN)).await;
    journey.wait_until_undo_is(&ticked).await;
    journey.click(deduct).await;
    journey.wait_until_undo_is(&deducted).await;
    bottles(&journey, "168 ea").await;
    journey.wait_for_text(&say!(counter::deducted, drinks = 12_usize)).await;
    journey.wait_for_text_gone(&say!(book::remove_named, name = GREEN)).await;
    journey.screenshot("deducted").await;
    // Apart from the deduction, at the end of the page.
    let apart = format!(
        "
        const [deduct, remove] = ['{}', '{}']
            .map((name) => [...document.querySelectorAll('main button')].find((it) => it.innerText === name));
        return remove.getBoundingClientRect().top - deduct.getBoundingClientRect().bottom >= 48;",
        say!(counter::deduct_from_stock),
        say!(counter::delete_batch)
    );
    journey.wait_until("the deletion to stand apart", &apart).await;
    journey.click(By::Text(say!(counter::delete_batch))).await;
    journey.wait_for_text(&say!(counter::deducted_batch_deleted, day = "Nov 26, 2026")).await;
    journey.wait_for_text(say!(counter::first_batch)).await;
    journey.click(By::Text(say!(counter::start_empty_batch))).await;
    journey.wait_for_text(&say!(counter::deducted, drinks = 12_usize)).await;
    journey.enter(field, "12").await;
    journey.wait_until_undo_is(&typed).await;
    journey.click(By::Label(GREEN)).await;
    journey.wait_for_text(&stands(1, "12", "12")).await;
    journey.wait_for_text(say!(counter::all_deducted)).await;
    bottles(&journey, "168 ea").await;
    // Three more are three more; the twelve stay filled.
    journey.enter(field, "15").await;
    journey.wait_for_text(&stands(1, "15", "12")).await;
    journey.click(By::Label(GREEN)).await;
    journey.click(deduct).await;
    journey.wait_until_undo_is(&deducted).await;
    bottles(&journey, "165 ea").await;
    // Undo goes all the way back, past the deletion and the first deduction.
    for step in [&deducted, &ticked, &typed, &ticked, &typed, &undo(say!(counter::delete_batch)), &deducted] {
        journey.wait_until_undo_is(step).await;
        journey.click(By::Text(say!(first::undo))).await;
    }
    journey.wait_for_text(&stands(9, "92", "12")).await;
    bottles(&journey, "180 ea").await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

#[tokio::test]
async fn an_emptied_count_keeps_its_unit() {
    let journey = demo("batch_count").await;
    journey.go("#/counter/on-hand").await;
    let unit_of = say!(book::unit_of_field, field = "Carrots");
    let (count, unit) = (By::Label("Carrots"), By::Label(&unit_of));
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
    journey.wait_for_text(say!(counter::first_batch)).await;
    journey.wait_for_text_gone(say!(counter::usual_day_about)).await;
    journey.click(By::Text(say!(counter::start_empty_batch))).await;
    journey.wait_for_text(&say!(counter::menu_is_empty, drinks = say!(first::drinks))).await;
    journey.wait_for_text_gone(say!(counter::add_to_batch)).await;
    journey.screenshot("no_drinks").await;
    journey.click(By::Nth(0, &By::Text(say!(first::drinks)))).await;
    journey.expect_each("main h1", &[say!(first::drinks)]).await;
}
