//! What cannot be read is explained beside the field and loses nothing: what was typed stays,
//! the last good value stays in force, Escape brings it back.

use brimwright::say;
use fantoccini::key::Key;

use crate::entering;
use crate::harness::{By, Engine, Journey, in_each_engine};

in_each_engine!(what_cannot_be_read_is_explained_and_loses_nothing);
in_each_engine!(a_drink_that_cannot_be_made_or_priced_says_why);

/// A field, a text that does not hold, and the sentence that says why.
pub type Case<'a> = (By<'a>, &'a str, &'a str);

/// What is said of a field that is left empty.
pub fn nothing(example: &str) -> String {
    say!(book::typed_nothing, example = example)
}

/// What is said of letters where a number belongs.
pub fn not_a_number(text: &str, example: &str) -> String {
    say!(book::not_a_number, text = text, example = example)
}

/// What is said of a number that must be more than zero.
pub fn not_positive(field: &str) -> String {
    say!(refusals::not_positive, field = field)
}

async fn what_cannot_be_read_is_explained_and_loses_nothing(engine: Engine) {
    let journey = open_demo(engine, "typing_buying").await;

    // An ingredient, by its pack of 40 lb at 38.00. By hand: 38 / (40 * 0.9) = 1.0556 a trimmed lb; a fl oz of juice
    // weighs 29.5735 * 1.048 = 30.993 g, for which 30.993 / (0.9 * 0.65) = 52.980 g = 0.11680 lb at 0.95 are bought:
    // 0.11096.
    journey.go("#/buying/ingredient/1").await;
    let in_force = async || {
        let (lb, fl_oz) = (say!(goods::per_trimmed, amount = "lb"), say!(goods::per_of_juice, amount = "fl oz"));
        journey.expect_figures(say!(common::cost), &[(&lb, "$1.056"), (&fl_oz, "$0.111")]).await;
    };
    for fold in [say!(goods::yields), say!(goods::weight_and_volume), say!(goods::name_and_label)] {
        entering::unfold(&journey, fold).await;
    }
    let (price, holds) = (By::Label(say!(goods::case_price)), By::Label(say!(goods::pack_size)));
    let (price, holds) = (By::Nth(0, &price), By::Nth(0, &holds));
    let (trimmed, pressed) = (By::Label(say!(goods::trim_yield)), By::Label(say!(goods::juice_yield)));
    let not_a_yield = |field: &str| say!(refusals::not_a_yield, field = field);
    let (trim_yield, juice_yield) = (say!(goods::trim_yield), say!(goods::juice_yield));
    let cases: [Case<'_>; 15] = [
        (price, "", &nothing("38.50")),
        (price, "abc", &not_a_number("abc", "38.50")),
        (price, "-3", &say!(book::no_minus, example = "38.50")),
        (price, "1234567890", say!(book::too_many_digits)),
        (price, "1.2345678", say!(book::too_many_decimals)),
        (holds, "", &nothing("12 lb")),
        (holds, "0", &not_positive(say!(goods::pack_size))),
        (holds, "-40 lb", &say!(book::no_minus, example = "12 lb")),
        (holds, "3 stone", &say!(book::unknown_unit, unit = "stone", example = "12 lb")),
        (trimmed, "0", &not_a_yield(trim_yield)),
        (trimmed, "140", &not_a_yield(trim_yield)),
        (pressed, "0", &not_a_yield(juice_yield)),
        (pressed, "140", &not_a_yield(juice_yield)),
        (By::Label(say!(goods::juice_cup_weight)), "0", &not_positive(say!(goods::juice_cup_weight))),
        (By::Nth(0, &By::Label(say!(common::name))), "", &say!(refusals::blank, field = say!(common::name))),
    ];
    explained(&journey, &cases, in_force).await;

    // Packaging is counted. 120 bottles at 54.00 are 0.45 each.
    journey.go("#/buying/packaging/1").await;
    journey.enter(holds, "120").await;
    journey.enter(price, "54").await;
    let in_force = async || journey.wait_for_text("$0.450").await;
    let sentence = [say!(book::unit_of_weight, unit = "lb"), say!(book::type_pieces, example = "12 ea")].join(" ");
    explained(&journey, &[(holds, "5 lb", &sentence)], in_force).await;

    // The bottle of 12.6 fl oz to the rim, 0.5 left empty, declared as 12: poured 12.1.
    journey.go("#/buying/container/3").await;
    let fill = say!(common::fill);
    let in_force = async || journey.expect_figures(fill, &[(fill, "12.1 fl oz")]).await;
    entering::unfold(&journey, say!(goods::capacity)).await;
    entering::unfold(&journey, say!(labels::headspace)).await;
    let (rim, empty) = (By::Label(say!(goods::brimful_capacity)), By::Label(say!(labels::headspace)));
    let a_volume = |is: String| [is, say!(book::type_a_volume, example = "12 fl oz")].join(" ");
    // The water in it can be weighed.
    let volume_or_weight = say!(book::type_volume_or_weight, example = "12 fl oz");
    let cases: [Case<'_>; 5] = [
        (rim, "2 ea", &[say!(book::unit_of_count, unit = "ea"), volume_or_weight].join(" ")),
        (rim, "0", &not_positive(say!(goods::brimful_capacity))),
        (rim, "11", &say!(refusals::more_than_brimful, field = say!(labels::labeled_size))),
        (empty, "13", &say!(refusals::nothing_fits, field = say!(labels::headspace))),
        (By::Label(say!(labels::labeled_size)), "3 ea", &a_volume(say!(book::unit_of_count, unit = "ea"))),
    ];
    explained(&journey, &cases, in_force).await;
}

async fn a_drink_that_cannot_be_made_or_priced_says_why(engine: Engine) {
    let journey = open_demo(engine, "typing_drinks").await;

    // A menu price of nothing. Orchard Green in the 12 fl oz bottle is asked 6.95.
    journey.go("#/drinks/1/3").await;
    let price = By::Label(say!(drinks::menu_price));
    journey.expect_value(price, "6.95").await;
    let pays = say!(drinks::customer_pays_with_tax, price = "$7.40");
    let in_force = async || journey.wait_for_text(&pays).await;
    let cases: [Case<'_>; 2] =
        [(price, "0", &not_positive(say!(drinks::menu_price))), (price, "free", &not_a_number("free", "9.50"))];
    // With 6.5% tax added at the till: 6.95 * 1.065 = 7.40175.
    explained(&journey, &cases, in_force).await;

    journey.go("#/drinks/1").await;
    let amount = say!(drinks::amount_of, name = "Apples");
    let amount = By::Label(&amount);
    let amount = By::Nth(0, &amount);
    let sum = say!(drinks::ingredients_make, volume = "16.0 fl oz");
    let sums = async || journey.expect_sentence(By::Label(say!(drinks::recipe_makes)), &sum).await;
    let cases: [Case<'_>; 2] = [
        (amount, "0", &not_positive(say!(drinks::recipe_amount))),
        (amount, "some", &not_a_number("some", "12 fl oz")),
    ];
    explained(&journey, &cases, sums).await;

    // A cup smaller than the fixed lines. Early Shift takes 0.8 oz of protein powder at 1.3 g/mL
    // and 0.1 oz of chia at 1.15: 22.680 / 1.3 + 2.835 / 1.15 = 19.911 mL = 0.6733 fl oz. Of 0.5
    // to the rim 6% stay empty: 0.47. That is 0.2033 too much.
    journey.go("#/buying/container/7").await;
    entering::unfold(&journey, say!(labels::headspace)).await;
    entering::unfold(&journey, say!(goods::capacity)).await;
    journey.enter(By::Label(say!(labels::labeled_size)), "").await;
    journey.choose(By::Label(say!(goods::how_measured)), say!(drinks::by_water_weight)).await;
    journey.enter(By::Label(say!(goods::brimful_capacity)), "0.5").await;
    journey.go("#/drinks/9/7").await;
    let stuck = say!(first::needs_details);
    journey.expect_lines(By::Text(stuck), &[stuck]).await;
    let too_much = say!(drinks::fixed_too_much, over = "0.20 fl oz");
    journey.wait_for_text(&too_much).await;
    journey.expect_value(price, "6.25").await;
    journey.screenshot("too_small").await;
    journey.click(By::Text(say!(first::undo))).await;
    journey.wait_for_text_gone(&too_much).await;

    // A target that no price reaches: with everything covered, 2.9% of what is paid, 1.065 of the
    // price, goes: 1 - 0.029 * 1.065 = 0.969115 is the most that could be left.
    journey.go("#/book").await;
    entering::unfold(&journey, say!(common::target_margin)).await;
    let (target, endings) = (By::Label(say!(common::target_margin)), By::Label(say!(book::price_endings)));
    let cases: [Case<'_>; 3] = [
        (target, "100", &say!(refusals::not_a_share, field = say!(common::target_margin))),
        (endings, "x", &say!(book::not_an_ending, text = "x", example = "0.50 0.95")),
        (endings, ".50 1.50", &say!(refusals::not_an_ending, field = say!(book::price_endings), example = "0.50 0.95")),
    ];
    let basis = By::Label(say!(book::margin_figured_on));
    explained(&journey, &cases, async || journey.expect_value(basis, say!(drinks::on_goods)).await).await;
    journey.choose(basis, say!(drinks::on_all_costs)).await;
    journey.enter(target, "98").await;
    journey.go("#/drinks/1/3").await;
    journey.wait_for_text(&say!(drinks::no_price_reaches, target = "98.0%", highest = "96.9%")).await;
    journey.expect_count(".suggested", 0).await;
    journey.expect_value(price, "6.95").await;

    // A price point that cannot be read.
    entering::unfold(&journey, say!(drinks::work_back)).await;
    let point = By::Label(say!(drinks::sell_for_no_more_than));
    journey.type_into(point, "abc").await;
    journey.expect_sentence(point, &not_a_number("abc", "9.50")).await;
    journey.expect_value(point, "abc").await;
    journey.wait_for_text_gone(say!(drinks::highest_cost)).await;
}

/// Types each text and sees it explained; `in_force` sees that the last good value holds. Until
/// it is seen again no answer stands beside the error: see [`crate::unread`].
pub async fn explained(journey: &Journey, cases: &[Case<'_>], in_force: impl AsyncFn()) {
    for (field, text, sentence) in cases {
        let good = journey.value_of(*field).await;
        let quiet = journey.sentence_of(*field).await;
        let steps = journey.title_of_undo().await;
        journey.type_into(*field, text).await;
        journey.expect_sentence(*field, sentence).await;
        journey.expect_value(*field, text).await;
        // Leaving changes nothing of this; Escape brings back what is in force.
        journey.press(*field, Key::Tab).await;
        journey.expect_sentence(*field, sentence).await;
        journey.expect_value(*field, text).await;
        journey.press(*field, Key::Escape).await;
        journey.expect_value(*field, &good).await;
        journey.expect_sentence(*field, &quiet).await;
        in_force().await;
        // Nothing was done that could be undone.
        assert_eq!(journey.title_of_undo().await, steps, "after {text:?} at {field}");
    }
}

async fn open_demo(engine: Engine, name: &str) -> Journey {
    let journey = Journey::start_in(engine, name).await;
    journey.open().await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text("Orchard Green").await;
    journey
}
