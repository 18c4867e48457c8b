//! Undo reaches across reload, closing and switching books; single steps go back by themselves;
//! another tab's work stays; and at the Counter what is done there can be undone there.

use fantoccini::key::Key;

use brimwright::{say, words};

use crate::harness::{By, Engine, Journey, in_each_engine};
use crate::support;

in_each_engine!(undo_reaches_across_reload_and_closing_the_book);
in_each_engine!(another_tabs_price_stays_and_a_sentence_says_so);

/// The price of this name, in Buying.
fn price_of(name: &str) -> String {
    say!(market::price_of, name = name)
}

fn apples() -> By<'static> {
    By::label(price_of("Apples"))
}

fn carrots() -> By<'static> {
    By::label(price_of("Carrots"))
}

/// What undoes this.
fn undo_of(change: &str) -> String {
    say!(first::undo_change, change = change)
}

/// The heading of the changes of today, with how many there are.
fn todays_changes(count: &str) -> String {
    [say!(market::todays_changes), count].join(" ")
}

/// The step that undoes a price out of its turn.
fn undo_alone(name: &str) -> String {
    say!(refusals::undo_step, step = price_of(name))
}

async fn start(engine: Engine, name: &'static str) -> Journey {
    let journey = Journey::start_in(engine, name).await;
    journey.open().await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.click(By::Text(say!(first::buying))).await;
    journey.expect_value(apples(), "38.00").await;
    journey
}

/// The steps in the open list: what was done, what to, and what is said of it.
async fn expect_steps(journey: &Journey, expected: &[&str]) {
    journey.expect_each("dialog[open] .step-done p > span:first-child", expected).await;
}

async fn undo_reaches_across_reload_and_closing_the_book(engine: Engine) {
    let journey = start(engine, "undo_across").await;
    journey.enter(apples(), "44.25").await;
    journey.enter(carrots(), "35").await;
    journey.wait_until_saved().await;

    // Loaded again.
    journey.open().await;
    journey.click(By::Text(say!(first::buying))).await;
    journey.expect_value(carrots(), "35.00").await;
    journey.wait_until_undo_is(&undo_of(&price_of("Carrots"))).await;
    journey.click(By::Text(say!(first::undo))).await;
    journey.expect_value(carrots(), "34.00").await;
    journey.expect_value(apples(), "44.25").await;
    journey.wait_until_saved().await;

    // Closed, another book opened, and back.
    journey.click(By::Text(say!(first::book))).await;
    journey.click(By::Text(say!(first::start_book))).await;
    journey.wait_for_text(say!(first::new_book_name)).await;
    // Each book has its own steps.
    journey.wait_until_undo_is(&undo_of("")).await;
    journey.click(By::Text(say!(first::book))).await;
    journey.click(By::Text("Marrowgate Juice Hall")).await;
    journey.click(By::Text(say!(first::buying))).await;
    journey.expect_value(apples(), "44.25").await;
    journey.wait_until_undo_is(&undo_of(&price_of("Apples"))).await;
    journey.click(By::Text(say!(first::undo))).await;
    journey.expect_value(apples(), "38.00").await;
    // What was taken back before all that comes again, too.
    journey.click(By::Text(say!(first::redo))).await;
    journey.expect_value(apples(), "44.25").await;
    journey.click(By::Text(say!(first::redo))).await;
    journey.expect_value(carrots(), "35.00").await;
}

#[tokio::test]
async fn one_step_goes_back_by_itself_and_one_that_others_hang_on_says_so() {
    let journey = start(Engine::Chromium, "undo_list").await;
    journey.enter(apples(), "44.25").await;
    journey.enter(carrots(), "35").await;
    journey.enter(carrots(), "36").await;
    journey.click(By::Text(say!(first::changes))).await;
    let (of_apples, of_carrots) = (price_of("Apples"), price_of("Carrots"));
    expect_steps(&journey, &[&of_carrots, &of_carrots, &of_apples]).await;
    let first = say!(refusals::step_and_time, step = &of_carrots, when = "12:0");
    journey.wait_for_text(say!(refusals::undo_first, steps = first).trim_end_matches('.')).await;
    journey.resize(320, 640).await;
    assert_eq!(journey.faults_of_layout(&[""]).await, Vec::<String>::new());
    journey.screenshot("steps").await;
    let undo_apples = format!(
        "const button = [...document.querySelectorAll('dialog[open] button')]
             .find((it) => it.getAttribute('aria-label')?.startsWith('{}'));
         button?.click(); return button !== undefined",
        say!(book::undo_change_at, change = &of_apples, when = "")
    );
    journey.wait_until("the Undo of the apples", &undo_apples).await;
    // No row slides under the finger: the step that this is comes into the list when it opens next.
    journey.expect_each("dialog[open] .step-done:last-child .soft:last-of-type", &[say!(book::undone)]).await;
    expect_steps(&journey, &[&of_carrots, &of_carrots, &of_apples]).await;
    journey.wait_until("the caret at the head of the list", "return document.activeElement.id === 'steps-title'").await;
    journey.click(By::Text(say!(first::close))).await;
    journey.click(By::Text(say!(first::changes))).await;
    expect_steps(&journey, &[&undo_alone("Apples"), &of_carrots, &of_carrots, &of_apples]).await;
    journey.click(By::Text(say!(first::close))).await;
    journey.expect_value(apples(), "38.00").await;
    journey.expect_value(carrots(), "36.00").await;
    // That is a step itself.
    assert_eq!(journey.title_of_undo().await, undo_of(&undo_alone("Apples")));
    journey.click(By::Text(say!(first::undo))).await;
    journey.expect_value(apples(), "44.25").await;
}

async fn another_tabs_price_stays_and_a_sentence_says_so(engine: Engine) {
    let journey = start(engine, "undo_tabs").await;
    journey.open_another_tab().await;
    journey.click(By::Text(say!(first::buying))).await;
    journey.expect_value(apples(), "38.00").await;
    journey.use_tab(0).await;
    journey.enter(carrots(), "35").await;
    journey.enter(apples(), "44.25").await;
    journey.wait_until_saved().await;
    journey.use_tab(1).await;
    journey.expect_value(apples(), "44.25").await;
    journey.enter(apples(), "45").await;
    journey.wait_until_saved().await;
    journey.use_tab(0).await;
    journey.expect_value(apples(), "45.00").await;
    journey.click(By::Nth(0, &By::Text(say!(first::undo)))).await;
    let field = say!(goods::case_price);
    let now = say!(refusals::changed_since_to, name = "Apples", field = field, value = "$45.00");
    let why = [&*now, say!(refusals::change_by_hand)].join(" ");
    let not_undone = say!(refusals::not_undone, step = price_of("Apples"), why = why);
    journey.wait_for_text(&not_undone).await;
    journey.expect_value(apples(), "45.00").await;
    // The next Undo goes on.
    journey.click(By::Nth(0, &By::Text(say!(first::undo)))).await;
    journey.expect_value(carrots(), "34.00").await;
    journey.wait_for_text_gone(&not_undone).await;
    journey.expect_value(apples(), "45.00").await;
}

#[tokio::test]
async fn todays_changes_stand_under_the_search_each_with_its_undo() {
    let journey = start(Engine::Chromium, "undo_today").await;
    journey.wait_for_text(&todays_changes(say!(common::none_yet))).await;
    journey.click(By::Text(&todays_changes(say!(common::none_yet)))).await;
    journey.enter(apples(), "44.25").await;
    journey.enter(carrots(), "35").await;
    // What stands before the sum, which the engine's own tests count.
    let all_together = words::texts::around(&say!(market::all_cost_more, money = words::texts::HOLE)).0;
    let all_together = all_together.trim_end();
    // 44.25 / 38 and 35 / 34.
    let of_apples = say!(market::pack_price_changed, pack = "40 lb", was = "$38.00", now = "$44.25", change = "+16.4%");
    journey.wait_for_text(&of_apples).await;
    let pack = words::texts::HOLE;
    let changed = |was: &str, now: &str, change: &str| {
        let said = say!(market::pack_price_changed, pack = pack, was = was, now = now, change = change);
        words::texts::around(&said).1
    };
    journey.wait_for_text(&changed("$34.00", "$35.00", "+2.9%")).await;
    journey.wait_for_text(all_together).await;
    journey.screenshot("today").await;
    // No sum stands beside a price that cannot be read.
    journey.type_into(carrots(), "35q").await;
    journey.wait_for_text_gone(all_together).await;
    journey.wait_for_text(&say!(book::fix_field_to_see, field = price_of("Carrots"))).await;
    journey.type_into(carrots(), "35").await;
    journey.press(carrots(), Key::Tab).await;
    journey.wait_for_text(all_together).await;
    // There again after a load: the book itself knows what a price was.
    journey.wait_until_saved().await;
    journey.open().await;
    journey.click(By::Text(say!(first::buying))).await;
    journey.wait_for_text(&todays_changes("2")).await;
    journey.click(By::Text(&todays_changes("2"))).await;
    journey.wait_for_text(all_together).await;
    journey.click(By::Label(&undo_alone("Apples"))).await;
    journey.expect_value(apples(), "38.00").await;
    journey.expect_value(carrots(), "35.00").await;
    // Its row stays where it was, and says so: a second press meets no other row.
    journey.expect_each(".changes li a", &["Apples", "Carrots"]).await;
    journey.expect_count(".changes li .button", 1).await;
    journey.wait_for_text(say!(book::undone)).await;
    journey.wait_for_text(&todays_changes("1")).await;
    // Typed anew, it is a change as any other.
    journey.enter(apples(), "44").await;
    journey.wait_for_text(&todays_changes("2")).await;
    journey.expect_count(".changes li .button", 2).await;
    journey.click(By::Label(&undo_alone("Apples"))).await;
    journey.expect_value(apples(), "38.00").await;
    // A price without a day is known by its step.
    journey.enter(By::Label(&price_of("Pineapples")), "18").await;
    journey.wait_for_text(&changed("$17.40", "$18.00", "+3.4%")).await;
    journey.click(By::Label(&undo_alone("Pineapples"))).await;
    journey.expect_value(By::Label(&price_of("Pineapples")), "17.40").await;
    journey.expect_count(".changes li .button", 1).await;
}

#[tokio::test]
async fn what_is_done_at_the_counter_is_undone_at_the_counter() {
    let journey = start(Engine::Chromium, "undo_locked").await;
    journey.enter(apples(), "44.25").await;
    journey.go("#/counter").await;
    journey.type_into(By::Label(say!(counter::new_pin)), "4207").await;
    journey.type_into(By::Label(say!(counter::repeat_pin)), "4207").await;
    journey.click(By::Text(say!(counter::lock_to_counter))).await;
    journey.wait_for_text(say!(counter::unlock)).await;
    assert_eq!(journey.title_of_undo().await, undo_of(""), "the owner's price is out of reach");
    journey.go("#/counter/batches/2026-11-26").await;
    journey.click(By::Text(say!(counter::delete_batch))).await;
    journey.click(By::Text(say!(first::undo))).await;
    journey.go("#/counter/batches/2026-11-26").await;
    journey.wait_for_text(&words::batch(support::day("2026-11-26"))).await;
    journey.click(By::Text(say!(first::changes))).await;
    journey.wait_until("no price in the list", "return !document.body.textContent.includes('$')").await;
    expect_steps(&journey, &[say!(counter::delete_batch)]).await;
}
