//! A new owner on a phone: from "start a book" to the first priced drink, with the taps and the fields counted; what
//! a person does without the starter list; and what cannot be.
//!
//! Everything typed is invented. What is expected of a price was worked out by hand from what is typed and from the
//! starting figures that the screen brings, which stand beside the sums.

use brimwright::say;
use fantoccini::key::Key;

use crate::harness::{By, Journey, Publisher};

/// What an owner may need at most for carrot, apple and ginger in a 16 oz bottle.
const MOST_TAPS: u32 = 30;
const MOST_FIELDS: u32 = 12;

/// A journey that counts its taps and the fields it types into. Going into a field by Enter, or where the screen puts
/// the caret, is no tap.
struct Tapping<'a> {
    journey: &'a Journey,
    taps: u32,
    fields: u32,
}

impl Tapping<'_> {
    async fn tap(&mut self, by: By<'_>) {
        self.taps += 1;
        self.journey.click(by).await;
    }

    /// Taps a field, which must be empty or right, and types over what is selected in it.
    async fn type_in(&mut self, by: By<'_>, text: &str) {
        self.tap(by).await;
        self.type_here(text).await;
    }

    /// Types where the caret is.
    async fn type_here(&mut self, text: &str) {
        self.fields += 1;
        self.journey.type_on(text).await;
    }

    /// Picks the first suggestion for a few letters, and types the price of its case.
    async fn ingredient(&mut self, letters: &str, name: &str, price: &str) {
        self.type_here(letters).await;
        self.tap(By::Text(name)).await;
        self.journey.wait_until("the caret in the case price", &caret_in(say!(goods::case_price))).await;
        self.type_here(price).await;
        self.journey.type_on_key(Key::Enter).await;
        self.journey.wait_until("the caret in the search", "return document.activeElement.type === 'search'").await;
    }
}

fn caret_in(label: &str) -> String {
    format!("return document.activeElement.labels?.[0]?.innerText === '{label}'")
}

async fn on_a_phone(name: &'static str) -> Journey {
    let journey = Journey::start(name).await;
    journey.open().await;
    journey.resize(360, 740).await;
    journey
}

fn amount_of(name: &str) -> By<'static> {
    By::label(say!(drinks::amount_of, name = name))
}

#[tokio::test]
async fn a_new_owner_has_a_price_in_thirty_taps_and_twelve_fields() {
    let journey = on_a_phone("first_price").await;
    let mut tapping = Tapping { journey: &journey, taps: 0, fields: 0 };
    tapping.tap(By::Text(say!(first::start_book))).await;
    journey.wait_for_text(say!(setup::your_shop)).await;
    // The browser is American.
    journey.expect_value(By::Label(say!(setup::country)), "United States").await;
    journey.expect_value(By::Label(say!(book::currency)), "USD, US Dollar").await;
    journey.expect_value(By::Label(say!(common::sales_tax)), say!(drinks::tax_added)).await;
    journey.expect_value(By::Label(say!(common::target_margin)), "65").await;
    journey.screenshot("shop").await;
    tapping.type_in(By::Label(say!(book::sales_tax_rate)), "8.25").await;
    tapping.tap(By::Label(&say!(setup::not_sure_of, field = say!(book::card_fee)))).await;
    journey.expect_value(By::Label(say!(book::card_fee)), "2.9").await;
    journey.expect_sentence(By::Label(say!(book::card_fee)), say!(setup::common_figure)).await;
    tapping.tap(By::Text(say!(first::price_first_drink))).await;

    journey.wait_for_text(say!(setup::what_goes_in)).await;
    journey.wait_until("the caret in the search", "return document.activeElement.type === 'search'").await;
    tapping.ingredient("car", "Carrots", "24").await;
    journey.screenshot("first_ingredient").await;
    tapping.ingredient("app", "Apples", "38").await;
    tapping.ingredient("gin", "Ginger root", "60").await;
    journey.screenshot("ingredients").await;
    tapping.tap(By::Text(say!(setup::next_size))).await;

    tapping.tap(By::Text("16 oz bottle")).await;
    journey.wait_for_text(say!(setup::chosen)).await;
    journey.screenshot("size").await;
    tapping.tap(By::Text(say!(setup::next_amounts))).await;

    // A share, an amount, and the rest in one press: 16 less 50 % less 1 is 7.
    tapping.type_in(amount_of("Carrots"), "50%").await;
    tapping.type_in(amount_of("Ginger root"), "1 oz").await;
    journey.wait_for_text(&say!(setup::left_to_fill, left = "7.0 fl oz")).await;
    journey.wait_for_text(say!(setup::left_scales_up)).await;
    journey.wait_for_text(say!(setup::how_much_juice)).await;
    journey.screenshot("amounts").await;
    tapping.tap(By::Text(&say!(setup::use_rest, left = "7 fl oz"))).await;
    journey.wait_for_text(say!(setup::all_filled)).await;
    journey.expect_value(amount_of("Carrots"), "8 fl oz").await;
    tapping.tap(By::Text(say!(setup::next_price))).await;

    journey.wait_for_text(say!(common::suggested_price)).await;
    // What is not in it is said before it is taken.
    let costs = [say!(drinks::labor), say!(common::packaging), say!(drinks::waste), say!(drinks::overhead)];
    journey.wait_for_text(&say!(setup::not_in_price, costs = costs.join(", "))).await;
    journey.screenshot("suggested").await;
    tapping.tap(By::Text(&say!(drinks::set_price, price = PRICE))).await;
    let Tapping { taps, fields, .. } = tapping;
    println!("first price: {taps} taps, {fields} fields");
    assert!(taps <= MOST_TAPS, "{taps} taps");
    assert!(fields <= MOST_FIELDS, "{fields} fields");

    an_honest_price(&journey).await;
    what_is_next(&journey).await;
    all_of_it_is_in_its_place(&journey).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

/// A fl oz of juice weighs 29.57353 * 1.04 = 30.75647 g. Carrots: 24.00 / 50 lb, 0.89 trimmed, 0.525 pressed:
/// 30.75647 / 0.46725 = 65.8244 g at 0.48 a lb of 453.59237 g are 0.069657; 8 of them 0.557254. Ginger: 60.00 / 30 lb,
/// 0.93 and 0.55: 0.265128. Apples: 38.00 / 40 lb, 0.9 and 0.7: 0.102248; 7 of them 0.715734. All of it is 1.538116,
/// over 0.35 is 4.3946, up to 4.50.
const PRICE: &str = "$4.50";

/// 1 - 1.538116 / 4.50 = 0.65820; 4.50 - 1.538116 - 0.029 * 4.50 * 1.0825 = 2.82062. What that does not count is said
/// beside it, with the way to each field.
async fn an_honest_price(journey: &Journey) {
    let figures = [
        [say!(common::price), "$4.50"],
        [say!(first::margin_on_goods), "65.8%"],
        [say!(common::profit_per_drink), "$2.82"],
    ];
    let figures = figures.map(|figure| figure.join(" "));
    journey.expect_each(".first-answer .answer-figures > div", &figures.each_ref().map(String::as_str)).await;
    let lacks = [say!(drinks::no_wage_yet), say!(drinks::no_packaging_yet), say!(drinks::no_waste_yet)];
    for lack in lacks {
        journey.wait_for_text(lack).await;
    }
    journey.screenshot("price").await;
    // 1.50 is less than what the goods cost.
    let price = By::Label(say!(drinks::menu_price));
    journey.enter(price, "1.50").await;
    journey.wait_for_text(say!(drinks::loses_money)).await;
    journey.enter(price, "4.50").await;
    journey.wait_for_text_gone(say!(drinks::loses_money)).await;
}

async fn what_is_next(journey: &Journey) {
    journey.wait_for_text(say!(setup::what_next)).await;
    journey.click(By::Text(say!(setup::add_second_size))).await;
    journey.expect_each("main h1", &[say!(setup::another_size)]).await;
    journey.click(By::Text("12 oz bottle")).await;
    // The drink in its new size, with a price suggested there.
    journey.wait_for_text(say!(drinks::price_goes)).await;
    journey.screenshot("second_size").await;
}

/// All that was typed is an ordinary part of the book, and each thing is a step.
async fn all_of_it_is_in_its_place(journey: &Journey) {
    journey.click(By::Text(say!(first::drinks))).await;
    journey.wait_for_text("Carrots, Ginger root, Apples").await;
    journey.wait_for_text_gone(say!(first::price_first_drink_about)).await;
    journey.click(By::Text(say!(first::buying))).await;
    journey.wait_for_text("Carrots").await;
    journey.click(By::Text(say!(first::undo))).await;
    journey.go("#/drinks").await;
    journey.wait_for_text_gone("12 oz bottle").await;
}

/// Ice from the shop's own machine costs nothing: no case has to be made up for it.
#[tokio::test]
async fn ice_of_the_shop_costs_nothing() {
    let journey = on_a_phone("first_price_ice").await;
    journey.click(By::Text(say!(first::start_book))).await;
    journey.click(By::Text(say!(first::price_first_drink))).await;
    journey.wait_for_text(say!(setup::what_goes_in)).await;
    journey.type_on("ice cu").await;
    journey.click(By::Text("Ice cubes")).await;
    journey.wait_for_text(say!(setup::case_price_missing)).await;
    journey.screenshot("ice").await;
    journey.click(By::Text(say!(goods::own_ice))).await;
    journey.wait_for_text(say!(goods::counts_as_free)).await;
    journey.wait_for_text_gone(say!(setup::case_price_missing)).await;
    journey.expect_value(By::Label(say!(goods::case_price)), "0.00").await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

/// One can leave at any time: what was typed is in the book, and the empty list leads back.
#[tokio::test]
async fn the_way_can_be_left_and_taken_up_again() {
    let journey = on_a_phone("first_price_left").await;
    journey.click(By::Text(say!(first::start_book))).await;
    journey.click(By::Text(say!(setup::skip_questions))).await;
    journey.expect_each("main h1", &[say!(first::drinks)]).await;
    journey.click(By::Text(say!(first::price_first_drink))).await;
    journey.wait_for_text(say!(setup::what_goes_in)).await;
    journey.type_on("car").await;
    journey.click(By::Text("Carrots")).await;
    journey.enter(By::Label(say!(goods::case_price)), "24").await;
    // Another size than the suggested 50 lb is asked about only once the owner typed one: 60 lb after 5 lb.
    let holds = By::Label(say!(goods::pack_size));
    journey.enter(holds, "5").await;
    journey.expect_count(".mark-asked", 0).await;
    journey.enter(holds, "60").await;
    journey.expect_count(".mark-asked", 1).await;
    journey.enter(holds, "50").await;
    journey.expect_count(".mark-asked", 0).await;
    journey.click(By::Text(say!(setup::finish_later))).await;
    journey.click(By::Text(say!(first::price_first_drink))).await;
    // Its case is told, and can be changed on its own screen.
    journey.wait_for_text("50 lb").await;
    journey.click(By::Text(say!(setup::next_size))).await;
    journey.click(By::Text("12 oz bottle")).await;
    journey.wait_for_text(say!(setup::chosen)).await;
    journey.load_again().await;
    journey.wait_for_text(say!(setup::chosen)).await;
    // Another choice takes the place of the first.
    journey.click(By::Text("16 oz bottle")).await;
    journey.enter(By::Label(say!(setup::packaging_cost)), "0.55").await;
    journey.go("#/buying/containers").await;
    journey.wait_for_text("16 oz bottle").await;
    journey.wait_for_text_gone("12 oz bottle").await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

/// Without the list the way works by typing, and what a line lacks is asked for right there.
#[tokio::test]
async fn without_the_starter_list_the_typing_goes_on() {
    let publisher = Publisher::new("first_price_typed");
    publisher.publish("one");
    publisher.spoil("starter/ingredients.txt", "no list");
    let journey = Journey::start_on("first_price_typed", publisher.address()).await;
    journey.open().await;
    journey.resize(360, 740).await;
    journey.click(By::Text(say!(first::start_book))).await;
    journey.click(By::Text(say!(first::price_first_drink))).await;
    journey.wait_for_text(say!(setup::what_goes_in)).await;
    journey.type_on("Pear juice").await;
    journey.wait_for_text(say!(starter::missing)).await;
    journey.click(By::Text(&say!(setup::add_as_typed, name = "Pear juice"))).await;
    journey.wait_until("the caret in the pack size", &caret_in(say!(goods::pack_size))).await;
    journey.type_on("1 gal").await;
    journey.type_on_key(Key::Enter).await;
    journey.type_on("12.80").await;
    journey.click(By::Text(say!(setup::next_size))).await;
    journey.enter(By::Label(say!(setup::other_size)), "10").await;
    journey.click(By::Text(say!(drinks::add_size))).await;
    journey.expect_count(".size-choice[aria-pressed=true]", 1).await;
    journey.wait_for_text("10 fl oz").await;
    journey.click(By::Text(say!(setup::next_amounts))).await;
    journey.enter(amount_of("Pear juice"), "100%").await;
    journey.expect_value(amount_of("Pear juice"), "10 fl oz").await;
    journey.click(By::Text(say!(setup::next_price))).await;
    // 12.80 a gallon of 128 fl oz: 10 of them cost 1.00. 1.00 / 0.35 = 2.857, up to 3.00.
    journey.wait_for_text(&say!(drinks::set_price, price = "$3.00")).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

/// Each figure that cannot be is explained at its field.
#[tokio::test]
async fn what_cannot_be_is_explained_at_its_field() {
    let journey = on_a_phone("first_price_wrong").await;
    journey.click(By::Text(say!(first::start_book))).await;
    let tax = By::Label(say!(book::sales_tax_rate));
    journey.type_into(tax, "825").await;
    journey.expect_error(tax, &say!(book::did_you_mean, typed = "825%", other = "8.25%")).await;
    journey.click(By::Text(&say!(book::use_reading, reading = "8.25%"))).await;
    journey.expect_value(tax, "8.25").await;
    let wage = By::Label(say!(book::hourly_wage));
    journey.type_into(wage, "-18").await;
    journey.expect_error(wage, &say!(book::no_minus, example = "18.00")).await;
    journey.wait_for_text(&say!(setup::field_skipped, fields = say!(book::hourly_wage))).await;
    journey.press(wage, Key::Escape).await;
    // Not known, and no common figure where one lives: it counts as zero, and is said.
    journey.choose(By::Label(say!(setup::country)), "Japan").await;
    journey.expect_value(By::Label(say!(book::currency)), "JPY, Japanese Yen").await;
    journey.click(By::Label(&say!(setup::not_sure_of, field = say!(book::hourly_wage)))).await;
    journey.expect_sentence(wage, say!(setup::counts_as_zero)).await;
    journey.choose(By::Label(say!(setup::country)), "United States").await;
    journey.click(By::Text(say!(first::price_first_drink))).await;
    journey.wait_for_text(say!(setup::what_goes_in)).await;

    // Before a size there is nothing to fill.
    journey.type_on("Milk").await;
    journey.type_on_key(Key::Enter).await;
    let address = journey.run("return location.hash.replace('ingredients', 'amounts')").await;
    journey.go(address.as_str().expect("an address")).await;
    journey.click(By::Text(say!(setup::choose_size_first))).await;
    journey.enter(By::Label(say!(setup::other_size)), "10 lb").await;
    journey.wait_for_text_gone(say!(drinks::add_size)).await;
    journey.click(By::Text("16 oz cup")).await;
    journey.click(By::Text(say!(setup::next_amounts))).await;
    journey.expect_count(".first-amount", 1).await;
    let milk = amount_of("Whole milk");
    journey.type_into(milk, "120%").await;
    journey.expect_error(milk, &say!(setup::share_too_large, whole = "100%", example = "25%")).await;
    journey.type_into(milk, "lots").await;
    journey.expect_error(milk, &crate::typing::not_a_number("lots", "12 fl oz")).await;
    journey.type_into(milk, "20").await;
    journey.wait_for_text(&say!(setup::over_filled, over = "4.0 fl oz")).await;
}
