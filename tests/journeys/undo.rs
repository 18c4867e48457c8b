//! Undo reaches across reload, closing and switching books; single steps go back by themselves;
//! another tab's work stays; and at the Counter what is done there can be undone there.

use fantoccini::key::Key;

use brimwright::{say, words};

use crate::entering;
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

/// Waits until the fold of today's changes says this of them.
async fn changes_say(journey: &Journey, said: &str) {
    journey.expect_each(".changes .fold-figure", &[said]).await;
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

/// The steps in the open list: what was done, and what to.
async fn expect_steps(journey: &Journey, expected: &[(&str, &str)]) {
    let said: Vec<&str> = expected.iter().flat_map(|(did, of)| [*did, *of]).collect();
    journey.expect_each("dialog[open] .step-done p > span:nth-child(-n + 2)", &said).await;
}

/// A step from one case price to another.
fn case_price(was: &str, now: &str) -> String {
    say!(refusals::step_values, field = say!(goods::case_price), was = was, now = now)
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
    // A step of one field is named by its values.
    let (dearer, dear, apples_dearer) =
        (case_price("$35.00", "$36.00"), case_price("$34.00", "$35.00"), case_price("$38.00", "$44.25"));
    let entered = [(&*dearer, "Carrots"), (&*dear, "Carrots"), (&*apples_dearer, "Apples")];
    expect_steps(&journey, &entered).await;
    let first = say!(refusals::step_and_time, step = price_of("Carrots"), when = "12:0");
    journey.wait_for_text(say!(refusals::undo_first, steps = first).trim_end_matches('.')).await;
    journey.resize(320, 640).await;
    assert_eq!(journey.faults_of_layout(&[""]).await, Vec::<String>::new());
    journey.screenshot("steps").await;
    let undo_apples = format!(
        "const button = [...document.querySelectorAll('dialog[open] button')]
             .find((it) => it.getAttribute('aria-label')?.startsWith('{}'));
         button?.click(); return button !== undefined",
        say!(book::undo_change_at, change = &apples_dearer, when = "")
    );
    journey.wait_until("the Undo of the apples", &undo_apples).await;
    // No row slides under the finger: the step that this is comes into the list when it opens next.
    journey.expect_each("dialog[open] .step-done:last-child .soft:last-of-type", &[say!(book::undone)]).await;
    expect_steps(&journey, &entered).await;
    journey.wait_until("the caret at the head of the list", "return document.activeElement.id === 'steps-title'").await;
    journey.click(By::Text(say!(first::close))).await;
    journey.click(By::Text(say!(first::changes))).await;
    let taken_back = case_price("$44.25", "$38.00");
    expect_steps(&journey, &[&[(&*taken_back, "Apples")], &entered[..]].concat()).await;
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
    changes_say(&journey, say!(common::none_yet)).await;
    entering::unfold(&journey, say!(market::todays_changes)).await;
    journey.enter(apples(), "44.25").await;
    journey.enter(carrots(), "35").await;
    // 44.25 / 38 and 35 / 34.
    let changed =
        |was: &str, now: &str, change: &str| say!(market::price_changed, was = was, now = now, change = change);
    journey.wait_for_text(&changed("$38.00", "$44.25", "+16.4%")).await;
    journey.wait_for_text(&changed("$34.00", "$35.00", "+2.9%")).await;
    // A week costs, as price watch has it, some 105 of carrots, 1 / 34 more.
    let sum = say!(market::changes_cost_more, prices = 2, money = words::texts::HOLE);
    let (before, after) = words::texts::around(&sum);
    let summed = format!(
        "const said = document.querySelector('.changes .fold-figure').innerText;
         return said.startsWith('{before}') && said.endsWith('{after}')"
    );
    journey.wait_until("the sum of both", &summed).await;
    journey.wait_for_text(&say!(market::costs_more, money = "$3.09")).await;
    // Of the sizes that dropped the lowest stands first, and opens to its page.
    journey.wait_for_text(say!(market::see_them)).await;
    journey.click(By::Text(say!(market::see_them))).await;
    let dropped = journey.lines_of_each(".changes-below li a").await.len();
    let said = say!(market::dropped_today, sizes = dropped);
    journey.expect_each(".changes > summary .mark", &[&said]).await;
    journey.screenshot("today").await;
    // No sum stands beside a price that cannot be read.
    journey.type_into(carrots(), "35q").await;
    changes_say(&journey, "2").await;
    journey.wait_for_text(&say!(book::fix_field_to_see, field = price_of("Carrots"))).await;
    journey.type_into(carrots(), "35").await;
    journey.press(carrots(), Key::Tab).await;
    journey.wait_until("the sum of both", &summed).await;
    // There again after a load: the book itself knows what a price was.
    journey.wait_until_saved().await;
    journey.open().await;
    journey.click(By::Text(say!(first::buying))).await;
    journey.wait_until("the sum of both", &summed).await;
    entering::unfold(&journey, say!(market::todays_changes)).await;
    journey.click(By::Label(&undo_alone("Apples"))).await;
    journey.expect_value(apples(), "38.00").await;
    journey.expect_value(carrots(), "35.00").await;
    // Its row stays where it was, and says so: a second press meets no other row.
    journey.expect_each(".change-line strong", &["Apples, 40 lb", "Carrots, 50 lb"]).await;
    journey.expect_count(".change-line .button", 1).await;
    journey.wait_for_text(say!(book::undone)).await;
    journey.wait_for_text(&say!(market::price_back, was = "$38.00")).await;
    journey.wait_for_text_gone(&changed("$38.00", "$44.25", "+16.4%")).await;
    changes_say(&journey, &say!(market::changes_cost_more, prices = 1, money = "$3.09")).await;
    // Typed anew, it is a change as any other.
    journey.enter(apples(), "44").await;
    journey.wait_until("the sum of both", &summed).await;
    journey.expect_count(".changes li .button", 2).await;
    journey.click(By::Label(&undo_alone("Apples"))).await;
    journey.expect_value(apples(), "38.00").await;
    // A price without a day is known by its step.
    journey.enter(By::Label(&price_of("Pineapples")), "18").await;
    journey.wait_for_text(&changed("$17.40", "$18.00", "+3.4%")).await;
    // What the changes cost comes last, and moves the button.
    journey.wait_until("the sum of both", &summed).await;
    journey.click(By::Label(&undo_alone("Pineapples"))).await;
    journey.expect_value(By::Label(&price_of("Pineapples")), "17.40").await;
    journey.expect_count(".changes li .button", 1).await;
}

/// Whether no price is in the page, shown or hidden; the text of a script is none.
const NO_PRICE: &str = "
    const page = document.body.cloneNode(true);
    page.querySelectorAll('script').forEach((script) => script.remove());
    return !page.textContent.includes('$')";

#[tokio::test]
async fn what_is_done_at_the_counter_is_undone_at_the_counter() {
    let journey = start(Engine::Chromium, "undo_locked").await;
    journey.enter(apples(), "44.25").await;
    journey.go("#/counter").await;
    entering::unfold(&journey, say!(counter::lock_this_device)).await;
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
    expect_steps(&journey, &[(say!(counter::delete_batch), &words::batch(support::day("2026-11-26")))]).await;
    journey.wait_until("no price on the page, also where it is hidden", NO_PRICE).await;
}
