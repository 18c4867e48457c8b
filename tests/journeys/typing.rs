//! What cannot be read is explained beside the field and loses nothing: what was typed stays,
//! the last good value stays in force, Escape brings it back.

use fantoccini::key::Key;

use crate::harness::{By, Engine, Journey, in_each_engine};

in_each_engine!(what_cannot_be_read_is_explained_and_loses_nothing);
in_each_engine!(a_drink_that_cannot_be_made_or_priced_says_why);

/// A field, a text that does not hold, and the sentence that says why.
pub type Case<'a> = (By<'a>, &'a str, &'a str);

const YIELD: &str = "is what is left of what went in: more than 0 % and at most 100 %. Type 90 for 90 %.";

async fn what_cannot_be_read_is_explained_and_loses_nothing(engine: Engine) {
    let journey = open_demo(engine, "typing_buying").await;

    // An ingredient, by its two packs of 40 lb at 38.00, and at 41.50 with 1.50 for delivery. By
    // hand: 38 / (40 * 0.9) = 1.0556 a trimmed lb; a fl oz of juice weighs 29.5735 * 1.048 = 30.993 g, for which 30.993 /
    // (0.9 * 0.65) = 52.980 g = 0.11680 lb at 0.95 are bought: 0.11096. The other, 43 / 38 of it.
    journey.go("#/buying/ingredient/1").await;
    let in_force = async || {
        let costs = [
            ("Per lb trimmed", "$1.056"),
            ("Per fl oz pressed", "$0.111"),
            ("Per lb trimmed", "$1.194"),
            ("Per fl oz pressed", "$0.126"),
        ];
        journey.expect_figures("Packs", &costs).await;
    };
    let price = By::Nth(0, &By::Label("Price of the pack"));
    let holds = By::Nth(0, &By::Label("Holds"));
    let trimmed = By::Label("Left after trimming");
    let pressed = By::Label("Juice from what is trimmed");
    let too_large = "That is more than nine digits. Check for a digit too many.";
    let cases: [Case<'_>; 15] = [
        (price, "", "This is empty. Type a number, such as 38.50."),
        (price, "abc", "“abc” is not a number. Type digits, such as 38.50."),
        (price, "-3", "This cannot be below zero. Type it without the minus sign: 38.50."),
        (price, "1234567890", too_large),
        (price, "1.2345678", "That is finer than six digits after the decimal sign. Round it to six."),
        (holds, "", "This is empty. Type a number, such as 12 lb."),
        (holds, "0", "What the pack holds must be more than zero."),
        (holds, "-40 lb", "This cannot be below zero. Type it without the minus sign: 12 lb."),
        (holds, "3 stone", "“stone” is not a unit known here. Use one such as fl oz, mL, cup, lb, oz, g or ea: 12 lb."),
        (trimmed, "0", &format!("The trim yield {YIELD}")),
        (trimmed, "140", &format!("The trim yield {YIELD}")),
        (pressed, "0", &format!("The press yield {YIELD}")),
        (pressed, "140", &format!("The press yield {YIELD}")),
        (By::Label("Density of the juice"), "0", "The juice density must be more than zero."),
        (By::Nth(0, &By::Label("Name")), "", "The name is empty. Type at least one letter."),
    ];
    explained(&journey, &cases, in_force).await;

    // Packaging is counted. 120 bottles at 54.00 are 0.45 each.
    journey.go("#/buying/packaging/1").await;
    journey.enter(By::Nth(0, &By::Label("Holds")), "120").await;
    journey.enter(By::Nth(0, &By::Label("Price of the pack")), "54").await;
    let in_force = async || journey.wait_for_text("$0.450").await;
    let sentence = "“lb” measures a weight; here a number of pieces is needed, such as 12 ea.";
    explained(&journey, &[(By::Nth(0, &By::Label("Holds")), "5 lb", sentence)], in_force).await;

    // The bottle of 12.6 fl oz to the rim, 0.5 left empty, declared as 12: poured 12.1.
    journey.go("#/buying/container/3").await;
    let in_force = async || journey.expect_figures("How full it is poured", &[("Poured", "12.1 fl oz")]).await;
    let (rim, empty) = (By::Label("Volume to the rim"), By::Label("Volume left empty"));
    let cases: [Case<'_>; 5] = [
        (rim, "2 lb", "“lb” measures a weight; here a volume is needed, such as 12 fl oz."),
        (rim, "0", "The brimful volume must be more than zero."),
        (
            rim,
            "11",
            "The declared size is more than the container holds to the rim. Check it against the brimful volume.",
        ),
        (empty, "13", "The headspace leaves no room for a drink. Make it smaller."),
        (
            By::Label("Size it is declared as"),
            "3 ea",
            "“ea” measures a number of pieces; here a volume is needed, such as 12 fl oz.",
        ),
    ];
    explained(&journey, &cases, in_force).await;
}

async fn a_drink_that_cannot_be_made_or_priced_says_why(engine: Engine) {
    let journey = open_demo(engine, "typing_drinks").await;

    // A menu price of nothing. Orchard Green in the 12 fl oz bottle is asked 6.95.
    journey.go("#/drinks/1/3").await;
    let price = By::Label("Menu price");
    journey.expect_value(price, "6.95").await;
    let in_force = async || journey.wait_for_text("Customer pays\n$7.40").await;
    let cases: [Case<'_>; 2] = [
        (price, "0", "The menu price must be more than zero."),
        (price, "free", "“free” is not a number. Type digits, such as 9.50."),
    ];
    // With 6.5 % tax added at the till: 6.95 * 1.065 = 7.40175.
    explained(&journey, &cases, in_force).await;

    journey.go("#/drinks/1").await;
    let amount = By::Nth(0, &By::Label("Amount of Apples"));
    let sums = async || journey.expect_sentence(By::Label("Written for"), "The lines below make 16.0 fl oz.").await;
    let cases: [Case<'_>; 2] = [
        (amount, "0", "The amount must be more than zero."),
        (amount, "some", "“some” is not a number. Type digits, such as 12 fl oz."),
    ];
    explained(&journey, &cases, sums).await;

    // A cup smaller than the fixed lines. Early Shift takes 0.8 oz of protein powder at 1.3 g/mL
    // and 0.1 oz of chia at 1.15: 22.680 / 1.3 + 2.835 / 1.15 = 19.911 mL = 0.6733 fl oz. Of 0.5
    // to the rim 6 % stay empty: 0.47. That is 0.2033 too much.
    journey.go("#/buying/container/7").await;
    journey.enter(By::Label("Size it is declared as"), "").await;
    journey.choose(By::Label("How you know what it holds"), "weighed with water").await;
    journey.enter(By::Label("Volume to the rim"), "0.5").await;
    journey.go("#/drinks/9/7").await;
    journey.expect_lines(By::Text("cannot be computed"), &["cannot be computed"]).await;
    journey
        .wait_for_text(
            "The fixed amounts alone are 0.20 fl oz more than fits here. Make the fixed amounts less, or let them \
             follow in proportion.",
        )
        .await;
    journey.expect_value(price, "5.95").await;
    journey.screenshot("too_small").await;
    journey.click(By::Text("Undo")).await;
    journey.wait_for_text_gone("The fixed amounts alone").await;

    // A target that no price reaches: with everything covered, 2.9 % of what is paid, 1.065 of the
    // price, goes: 1 - 0.029 * 1.065 = 0.969115 is the most that could be left.
    journey.go("#/book").await;
    let target = By::Label("Target margin");
    let cases: [Case<'_>; 3] = [
        (target, "100", "The target margin must be at least 0 % and under 100 %. Type 65 for 65 %."),
        (
            By::Label("Prices may end in"),
            "x",
            "“x” is not an ending. Type endings with blanks between them, such as .00 .50 .95.",
        ),
        (
            By::Label("Prices may end in"),
            ".50 1.50",
            "Price endings must each be less than one, such as .50 or .95 (under 100 where there are no cents).",
        ),
    ];
    explained(&journey, &cases, async || journey.expect_value(By::Label("It must cover"), "Goods").await).await;
    journey.choose(By::Label("It must cover"), "Everything").await;
    journey.enter(target, "98").await;
    journey.go("#/drinks/1/3").await;
    journey
        .wait_for_text(
            "No price reaches a margin of 98.0 %: fees and commission alone leave less than 96.9 % of any price. \
             Lower the target or the fees.",
        )
        .await;
    journey.wait_for_text_gone("Suggested: ").await;
    journey.expect_value(price, "6.95").await;

    // A price point that cannot be read.
    let point = By::Label("It must not cost more than");
    journey.type_into(point, "abc").await;
    journey.expect_sentence(point, "“abc” is not a number. Type digits, such as 9.50.").await;
    journey.expect_value(point, "abc").await;
    journey.wait_for_text_gone("It may cost").await;
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
    journey.click(By::Text("Look around in Marrowgate Juice Hall")).await;
    journey.wait_for_text("Orchard Green").await;
    journey
}
