//! What was typed and may not be meant is asked about beside its field once the visit to it ends,
//! stands marked until it is answered, and is never blocked.

use fantoccini::key::Key;

use brimwright::say;

use crate::entering;
use crate::harness::{By, Journey};

const ASKED: &str = ".entry-asked > span:nth-of-type(2)";

/// What is asked about a number.
fn was_now(was: &str, now: &str) -> String {
    say!(market::was_now, was = was, now = now)
}

/// The same of a number that is rare for its kind.
fn unusual(was: &str, now: &str, why: &str) -> String {
    [&was_now(was, now), why].join(" ")
}

#[tokio::test]
async fn a_jump_is_asked_about_until_it_is_answered() {
    let journey = Journey::start("jumped").await;
    journey.open().await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text("Orchard Green").await;
    journey.go("#/buying").await;
    let name = say!(market::price_of, name = "Apples");
    let quick = By::Label(&name);
    let unread = say!(book::not_a_number, text = "3x", example = "38.50");
    let doubtful = say!(market::check_one, name = &name);

    // 3,800.00 is in force at once; it is asked about when the visit ends, not at each key.
    journey.click(quick).await;
    journey.type_on("3800").await;
    journey.expect_value(quick, "3800").await;
    journey.expect_count(ASKED, 0).await;
    journey.type_on_key(Key::Enter).await;
    journey.expect_each(ASKED, &[&was_now("$38.00", "$3,800.00")]).await;
    journey.expect_each(".mark-asked", &[say!(book::check_this)]).await;
    journey.screenshot("asked").await;

    // It stays marked: on another screen with the same field, and after a load.
    journey.go("#/buying/ingredient/1").await;
    journey.expect_each(ASKED, &[&was_now("$38.00", "$3,800.00")]).await;
    journey.wait_until_saved().await;
    journey.open().await;
    // Where its margins are read, it is named, until an Undo takes it back.
    journey.wait_for_text(&doubtful).await;
    journey.screenshot("asked_elsewhere").await;
    journey.wait_until_undo_is(&say!(first::undo_change, change = &name)).await;
    journey.click(By::Text(say!(first::undo))).await;
    journey.wait_for_text_gone(&doubtful).await;
    journey.click(By::Text(say!(first::redo))).await;
    journey.click(By::Text(say!(market::check_now))).await;
    journey.wait_for_text_gone(&doubtful).await;
    journey.expect_each(ASKED, &[&was_now("$38.00", "$3,800.00")]).await;
    journey.go("#/buying").await;
    journey.expect_each(ASKED, &[&was_now("$38.00", "$3,800.00")]).await;
    assert!(journey.faults_of_layout(&[""]).await.is_empty());
    journey.resize(320, 640).await;
    assert_eq!(journey.faults_of_layout(&[""]).await, Vec::<String>::new());
    journey.screenshot("asked_320").await;
    journey.resize(360, 740).await;

    // What cannot be read is mended first: its sentence stands alone, also after a load.
    journey.click(quick).await;
    journey.type_on("3x").await;
    journey.type_on_key(Key::Tab).await;
    journey.expect_each(".entry-wrong .entry-error", &[&unread]).await;
    journey.expect_count(ASKED, 0).await;
    journey.open().await;
    journey.go("#/buying").await;
    journey.expect_each(".entry-wrong .entry-error", &[&unread]).await;
    journey.expect_count(ASKED, 0).await;

    // Typing on does not make the wrong price what it was before.
    journey.click(quick).await;
    journey.type_on("380").await;
    journey.type_on_key(Key::Tab).await;
    journey.expect_each(ASKED, &[&was_now("$38.00", "$380.00")]).await;
    journey.click(quick).await;
    journey.type_on("39").await;
    journey.type_on_key(Key::Tab).await;
    journey.expect_count(ASKED, 0).await;

    // Back puts back what was before the visit, as a step that Undo takes back.
    journey.click(quick).await;
    journey.type_on("390").await;
    journey.type_on_key(Key::Enter).await;
    journey.click(By::Label(&say!(book::back_to_value, value = "$39.00"))).await;
    journey.expect_value(quick, "39.00").await;
    journey.expect_count(ASKED, 0).await;
    journey.click(By::Text(say!(first::undo))).await;
    journey.expect_value(quick, "390.00").await;

    // Keep takes only the question away, for good.
    journey.click(quick).await;
    journey.type_on("4").await;
    journey.type_on_key(Key::Enter).await;
    journey.click(By::Label(&say!(book::keep_value, value = "$4.00"))).await;
    journey.expect_count(ASKED, 0).await;
    journey.expect_value(quick, "4.00").await;
    journey.wait_until_saved().await;
    journey.open().await;
    journey.go("#/buying").await;
    journey.expect_value(quick, "4.00").await;
    journey.expect_count(ASKED, 0).await;
}

/// The day on which the price was heard, and the prices before it, on the page of the ingredient.
const HEARD: &str = "
    const heard = document.querySelector('.goods-cost p span')?.innerText ?? '';
    window.heard ??= heard;
    return heard !== '' && window.heard === heard;";

#[tokio::test]
async fn back_is_no_price_heard_today() {
    let journey = Journey::start("jumped_back").await;
    journey.open().await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text("Orchard Green").await;
    journey.go("#/buying/ingredient/1").await;
    journey.wait_until("when the price was heard", HEARD).await;
    let price = By::Nth(0, &By::Label(say!(goods::case_price)));
    for typed in ["3800", "380"] {
        journey.click(price).await;
        journey.type_on(typed).await;
        journey.type_on_key(Key::Tab).await;
        journey.expect_count(ASKED, 1).await;
    }
    // Something else is typed before the question is answered.
    journey.enter(By::Nth(0, &By::Label(say!(goods::supplier))), "Dale Farm").await;
    journey.click(By::Text(say!(book::back))).await;
    journey.expect_value(price, "38.00").await;
    journey.expect_count(ASKED, 0).await;
    journey.expect_value(By::Nth(0, &By::Label(say!(goods::supplier))), "Dale Farm").await;
    journey.wait_until("the price heard when it was before", HEARD).await;
}

#[tokio::test]
async fn what_is_only_tried_is_asked_about_too() {
    let journey = Journey::start("jumped_tried").await;
    journey.open().await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text("Orchard Green").await;
    journey.go("#/sizes/drink/1").await;
    let size = "12 oz bottle";
    journey.click(By::Text(size)).await;
    for (label, typed, sentence, before) in [
        (say!(sales::price_of, size = size), "69.5", was_now("$6.95", "$69.50"), "6.95"),
        (say!(sales::fill_of, size = size), "1", was_now("12.1 fl oz", "1 fl oz"), "12.1 fl oz"),
    ] {
        let field = By::Label(&label);
        journey.click(field).await;
        journey.type_on(typed).await;
        journey.type_on_key(Key::Tab).await;
        journey.expect_each(ASKED, &[&sentence]).await;
        journey.click(By::Text(say!(book::back))).await;
        journey.expect_count(ASKED, 0).await;
        journey.expect_value(field, before).await;
    }
    journey.go("#/sizes/scenarios/1").await;
    crate::entering::unfold(&journey, say!(sales::drinks_as_today)).await;
    journey.click(By::Label(&say!(sales::change_drink, drink = "Orchard Green"))).await;
    let price = say!(sales::menu_price_of, size = "Orchard Green, 12 oz bottle");
    let price = By::Label(&price);
    journey.click(price).await;
    journey.type_on("69.5").await;
    journey.type_on_key(Key::Tab).await;
    journey.expect_each(ASKED, &[&was_now("$6.95", "$69.50")]).await;
    journey.click(By::Text(say!(book::back))).await;
    journey.expect_value(price, "6.95").await;
}

#[tokio::test]
async fn what_is_unusual_for_its_kind_is_asked_about() {
    let journey = Journey::start("unusual").await;
    journey.open().await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text("Orchard Green").await;
    let (yields, weight) = (say!(goods::yields), say!(goods::weight_and_volume));
    for (address, fold, label, typed, sentence) in [
        (
            "#/book",
            say!(common::sales_tax),
            say!(book::sales_tax_rate),
            "65",
            unusual("6.5%", "65%", say!(market::rare_tax)),
        ),
        (
            "#/buying/ingredient/1",
            weight,
            say!(goods::juice_cup_weight),
            // A cup of 1.048 g/mL is 8.74598 oz; 0.2 and 3 g/mL are 1.66908 and 25.0362 oz.
            "87.46",
            unusual("8.75 oz per cup", "87.46 oz per cup", &say!(market::rare_cup_weight, low = "1.7", high = "25")),
        ),
        (
            "#/buying/ingredient/1",
            yields,
            say!(goods::trim_yield),
            "4",
            unusual("90%", "4%", say!(market::rare_trim_yield)),
        ),
        ("#/buying/ingredient/1", yields, say!(goods::juice_yield), "6.5", was_now("65%", "6.5%")),
        ("#/buying/ingredient/1", "", say!(goods::pack_size), "4", was_now("40 lb", "4 lb")),
        (
            "#/buying/container/3",
            say!(goods::capacity),
            say!(goods::brimful_capacity),
            "126",
            was_now("12.6 fl oz", "126 fl oz"),
        ),
        ("#/drinks/1/3", "", say!(drinks::menu_price), "69.50", was_now("$6.95", "$69.50")),
    ] {
        journey.go(address).await;
        if !fold.is_empty() {
            entering::unfold(&journey, fold).await;
        }
        let field = By::Nth(0, &By::Label(label));
        journey.click(field).await;
        journey.type_on(typed).await;
        journey.type_on_key(Key::Tab).await;
        journey.expect_each(ASKED, &[&sentence]).await;
        journey.click(By::Text(say!(book::back))).await;
        journey.expect_count(ASKED, 0).await;
    }
    // A change within three times, and one that cannot be read, ask nothing.
    journey.go("#/buying/ingredient/1").await;
    let holds = By::Nth(0, &By::Label(say!(goods::pack_size)));
    for typed in ["30", "x"] {
        journey.click(holds).await;
        journey.type_on(typed).await;
        journey.type_on_key(Key::Tab).await;
        journey.expect_count(ASKED, 0).await;
    }
}

/// A field in which `typed` could mean two things: it is asked which, what was before is in force until one is
/// pressed, and `shown` is what the second one puts there.
async fn asked_which(journey: &Journey, label: &str, typed: &str, meanings: [&str; 2], shown: [&str; 2]) {
    let field = By::Nth(0, &By::Label(label));
    let [one, other] = meanings;
    let question = say!(book::two_numbers, text = typed, one = one, other = other);
    journey.expect_value(field, shown[0]).await;
    journey.type_into(field, typed).await;
    journey.expect_error(field, &question).await;
    // Leaving the field does not answer.
    journey.press(field, Key::Tab).await;
    journey.expect_error(field, &question).await;
    journey.press(field, Key::Escape).await;
    journey.expect_value(field, shown[0]).await;
    journey.type_into(field, typed).await;
    journey.click(By::Text(&say!(book::use_reading, reading = other))).await;
    journey.expect_value(field, shown[1]).await;
    journey.expect_error(field, "").await;
}

#[tokio::test]
async fn what_could_mean_two_things_waits_for_an_answer() {
    let journey = Journey::start("two_meanings").await;
    journey.open().await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text("Orchard Green").await;
    journey.go("#/book").await;
    for part in [say!(common::target_margin), say!(drinks::fees), say!(book::this_book)] {
        entering::unfold(&journey, part).await;
    }
    asked_which(&journey, say!(common::target_margin), "0.7", ["0.7%", "70%"], ["68", "70"]).await;
    asked_which(&journey, say!(book::card_fee), "0.029", ["0.029%", "2.9%"], ["2.9", "2.9"]).await;
    // The first meaning is taken, too.
    let margin = By::Nth(0, &By::Label(say!(common::target_margin)));
    journey.type_into(margin, ".68").await;
    journey.screenshot("asked_which").await;
    journey.click(By::Text(&say!(book::use_reading, reading = "0.68%"))).await;
    journey.expect_value(margin, "0.68").await;
    journey.enter(margin, "68").await;

    // Where a point groups thousands, "1.043" is no density of juice: the drink is computed with what was before.
    journey.choose(By::Label(say!(book::units)), say!(drinks::metric)).await;
    journey.wait_until("German numbers", "localStorage['brimwright.region'] = '\"de-DE\"'; return true").await;
    journey.wait_until_saved().await;
    journey.open().await;
    journey.go("#/buying/ingredient/1").await;
    let density = say!(goods::juice_density);
    let open = "const folds = [...document.querySelectorAll('main details')];
        folds.forEach((fold) => (fold.open = true));
        return folds.length > 0";
    journey.wait_until("the folds to be open", open).await;
    asked_which(&journey, density, "1.043", ["1043", "1,043"], ["1,048", "1,043"]).await;
}
