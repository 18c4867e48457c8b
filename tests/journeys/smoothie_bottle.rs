//! A smoothie that is packaged ahead, from its recipe to its label: the warning in its box, who is
//! at risk, how it is kept, and what selling it on asks for. Everything is invented.

use crate::entering;
use crate::harness::{By, Journey};

/// 21 CFR 101.17(g)(2), word by word: the same as `tests/reference/labels.rs` has.
const STATEMENT: &str = "WARNING: This product has not been pasteurized and, therefore, may contain harmful bacteria \
                         that can cause serious illness in children, the elderly, and persons with weakened immune \
                         systems.";

const AT_RISK: &str = "Untreated juice can make these people seriously ill: children, older people, pregnant people, \
                       and people with weak immune systems.";

const SOLD_ON: &str = "In the United States, selling juice to another business makes you a processor: a HACCP plan and a 5-log treatment \
                       for all of your juice (21 CFR 120.3(l), 120.24). The warning on the label does not replace \
                       them. Some states ask for both at any amount.";

const HOW_SOLD: By<'_> = By::Label("How it is sold");

#[tokio::test]
async fn a_bottled_smoothie_goes_out_with_its_warning() {
    let journey = entering::metric_book("smoothie_bottle").await;
    a_recipe(&journey).await;
    how_it_is_kept(&journey).await;
    a_label(&journey).await;
    a_european_label(&journey).await;
    treated(&journey).await;
    sold_on(&journey).await;
    a_card(&journey).await;
    none_beside_a_shared_blender(&journey).await;
    a_mixture(&journey).await;
    to_cut_out(&journey).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

async fn a_recipe(journey: &Journey) {
    for (name, allergen, produce) in [
        ("Strawberries", "None of these", "Raw fruit, vegetable, juice or purée"),
        ("Whole milk", "Milk", "Neither fruit nor vegetable"),
    ] {
        entering::ingredient(journey, name, "10 L", "20").await;
        journey.enter(By::Label("Density in the drink"), "1").await;
        journey.expect_value(By::Label("What it is"), "Not said yet").await;
        journey.choose(By::Label("What it is"), produce).await;
        journey.expect_value(By::Label("What it is"), produce).await;
        if name == "Strawberries" {
            journey.enter(By::Label("Name on labels"), "strawberries").await;
        }
        journey.click(By::Text(allergen)).await;
    }
    entering::container(journey, "Swing bottle", "350", "20").await;
    journey.enter(By::Label("Size it is declared as"), "330").await;
    entering::drink(journey, "Rosy Field", "Blended", "330").await;
    entering::line(journey, "Strawberries", "130").await;
    entering::line(journey, "Whole milk", "200").await;
}

async fn how_it_is_kept(journey: &Journey) {
    let (ph, days) = (By::Label("pH, measured"), By::Label("Use within"));
    journey.expect_value(days, "").await;
    journey.enter(ph, "14.5").await;
    journey
        .expect_error(
            ph,
            "The pH of a drink lies between 1 and 14. Type what your meter shows, such as 3.8, or leave it blank.",
        )
        .await;
    journey.enter(ph, "4.2").await;
    journey.expect_value(ph, "4.2").await;
    journey.enter(days, "2.5").await;
    journey.expect_error(days, "The days it keeps must be a whole number, such as 12.").await;
    journey.enter(days, "3").await;
    journey.choose(By::Label("Keep refrigerated"), "Keep refrigerated").await;
    journey.screenshot("keeping").await;
    entering::sold_in(journey, "Swing bottle").await;
    journey.enter(By::Label("Menu price"), "5").await;
}

async fn a_label(journey: &Journey) {
    journey.click(By::Text("Label and fill")).await;
    journey.expect_value(HOW_SOLD, "Not said yet").await;
    journey.expect_each(".warning-box", &[STATEMENT]).await;
    journey.choose(HOW_SOLD, "Packaged ahead").await;
    journey.expect_each(".warning-box", &[STATEMENT]).await;
    journey.expect_each(".warning-box strong", &["WARNING"]).await;
    // Set off by hairlines on all sides, WARNING bold.
    let drawn = "const box = getComputedStyle(document.querySelector('.warning-box')); \
                 const bold = getComputedStyle(document.querySelector('.warning-box strong')).fontWeight; \
                 return [box.borderTopWidth, box.borderRightWidth, box.borderBottomWidth, box.borderLeftWidth, bold]";
    assert_eq!(journey.run(drawn).await, serde_json::json!(["1px", "1px", "1px", "1px", "700"]));
    let cautions = [
        "Untreated juice, packaged ahead: in the United States its label must carry the warning in the box (21 CFR \
         101.17(g)). Purées and raw fruit and vegetables blended in count as juice. The box stands on the information \
         panel or the principal display panel. WARNING stays in bold capitals, with hairlines around the statement. \
         Several states ask the same of juice packaged in a shop.",
        &format!(
            "{AT_RISK} Packaged untreated juice is not for places that serve them, such as schools, hospitals and \
             care homes."
        ),
        SOLD_ON,
        "Allergens are only as right as what was entered for each ingredient. Check every label, and what shares the \
         blender or press.",
        "These numbers are no legal advice: local codes and licensed practice decide.",
    ];
    journey.expect_each(".cautions > p", &cautions).await;
    // 130 of 330 mL are 39.4 %, rounded down; 5 over 0.33 L.
    let facts: [&[&str]; 6] = [
        &[
            "Net contents",
            "330 mL (11.15 fl oz) (declared size)",
            "Thick, or eaten with a spoon: in the United States, state the weight, not the volume (21 CFR 101.7(a)).",
        ],
        &["Ingredients, most by weight first", "Whole milk, strawberries"],
        &["Allergens, United States (nine)", "Contains: Milk"],
        &[
            "Juice",
            "Contains 39% juice.",
            "Under 100%, a name that says “juice” needs “drink” or “beverage” too (21 CFR 102.33).",
        ],
        &["Keeping", "Keep refrigerated. Use within 3 days of making."],
        &["Unit price", "$15.15 per L"],
    ];
    journey.expect_facts("Label facts", &facts).await;
    journey.screenshot("label").await;
    // The federal label rule is for packages: no box by the glass.
    journey.choose(HOW_SOLD, "By the glass").await;
    journey.wait_for_text("ask your local inspector").await;
    journey.expect_count(".warning-box", 0).await;
    // By the glass there is no label.
    journey.wait_for_text("Sold by the glass, so it has no label.").await;
    let by_the_glass: [&[&str]; 2] = [&["Allergens, United States (nine)", "Milk"], &["Unit price", "$15.15 per L"]];
    journey.expect_facts("Label facts", &by_the_glass).await;
    journey.choose(HOW_SOLD, "Packaged ahead").await;
    journey.expect_count(".warning-box", 1).await;
}

/// In a book in euros the allergens stand out in the list, and are not repeated by "Contains".
async fn a_european_label(journey: &Journey) {
    journey.click(By::Text("Book")).await;
    journey.choose(By::Label("Currency"), "EUR").await;
    journey.expect_value(By::Label("Currency"), "EUR").await;
    // Whoever lets a shop sell it is told what that asks for.
    journey.wait_for_text_gone(SOLD_ON).await;
    journey.enter(By::Label("Commission"), "20").await;
    journey.wait_for_text(SOLD_ON).await;
    journey.enter(By::Label("Commission"), "0").await;
    journey.wait_for_text_gone(SOLD_ON).await;
    journey.click(By::Text("Drinks")).await;
    journey.click(By::Text("Rosy Field")).await;
    journey.enter(By::Label("Name"), "Strawberry Field").await;
    journey.click(By::Text("Swing bottle")).await;
    journey.click(By::Text("Label and fill")).await;
    journey.wait_for_text("Whole MILK, strawberries 39.4 %").await;
    journey.expect_each(".ingredients strong", &["MILK"]).await;
    let bold = "return getComputedStyle(document.querySelector('.ingredients strong')).fontWeight";
    assert_eq!(journey.run(bold).await, serde_json::json!("800"));
    journey.wait_for_text("In capitals in the ingredients. The label does not repeat them as “Contains”").await;
    journey.screenshot("european").await;
    journey.click(By::Text("Undo")).await;
    journey.wait_for_text("Rosy Field").await;
    journey.wait_for_text("Whole MILK, strawberries\n").await;
    journey.click(By::Text("Book")).await;
    journey.choose(By::Label("Currency"), "USD").await;
    journey.expect_value(By::Label("Currency"), "USD").await;
    journey.click(By::Text("Drinks")).await;
    journey.click(By::Text("Rosy Field")).await;
    journey.click(By::Text("Swing bottle")).await;
    journey.click(By::Text("Label and fill")).await;
    journey.wait_for_text("Whole milk, strawberries\n").await;
}

/// What has a fill for packages is packaged ahead; what is treated carries no warning.
async fn treated(journey: &Journey) {
    journey.click(By::Text("Work out a fill target")).await;
    journey.choose(HOW_SOLD, "By the glass").await;
    let filled = "It has a fill target for packages, so it is packaged ahead. Take the fill target away first.";
    journey.wait_for_text(filled).await;
    journey.expect_value(HOW_SOLD, "Packaged ahead").await;
    journey.click(By::Text("Take the fill target away")).await;
    journey.click(By::Text("This size")).await;
    journey.click(By::Text("The drink")).await;
    journey.choose(By::Label("Treatment"), "Treated (5-log, such as HPP)").await;
    journey.click(By::Text("Swing bottle")).await;
    journey.click(By::Text("Label and fill")).await;
    journey.wait_for_text("In the United States, selling juice to another business").await;
    journey.expect_count(".warning-box", 0).await;
    journey.click(By::Text("Undo")).await;
    journey.expect_count(".warning-box", 1).await;
}

async fn sold_on(journey: &Journey) {
    journey.click(By::Text("This size")).await;
    journey.wait_for_text("Menu price").await;
    journey.wait_for_text_gone(SOLD_ON).await;
    journey.enter(By::Label("It must not cost more than"), "5").await;
    journey.enter(By::Label("Sold on by a shop that keeps (%)"), "30").await;
    journey.wait_for_text(SOLD_ON).await;
    journey.screenshot("sold_on").await;
}

async fn a_card(journey: &Journey) {
    journey.click(By::Text("Recipe card")).await;
    // A journey's day is 26 November 2026.
    journey.expect_each(".kept", &["Made today: Keep refrigerated. Use by 29 Nov 2026."]).await;
    let cautions = [
        "Untreated juice: each package must carry the warning label (United States).",
        AT_RISK,
        "Allergens are only as right as what was entered. Check every label, and what shares the blender or press.",
    ];
    journey.expect_each(".cautions > p", &cautions).await;
    journey.screenshot("card").await;
}

/// Strawberries hold none, and milk goes through the same blender.
async fn none_beside_a_shared_blender(journey: &Journey) {
    let none = "None of the allergens that must be named, as far as the book states. Made where milk is used.";
    entering::drink(journey, "Plain Field", "Blended", "330").await;
    journey.wait_for_text("Nothing is in the recipe yet.").await;
    entering::line(journey, "Strawberries", "330").await;
    journey.wait_for_text(none).await;
    entering::sold_in(journey, "Swing bottle").await;
    journey.click(By::Text("Label and fill")).await;
    let rows = [
        ("Allergens, United States (nine)", "none. Made where milk is used."),
        ("Allergens, EU and UK (fourteen)", "none. Made where milk is used."),
    ];
    journey.click(By::Text("In the EU and the UK")).await;
    for (name, said) in rows {
        journey.wait_for_text(&format!("{name}\n{said}")).await;
    }
    journey.click(By::Text("This size")).await;
    journey.click(By::Text("Recipe card")).await;
    journey.expect_each(".allergens", &[none]).await;
    journey.screenshot("none").await;
    journey.printed("#/print/cards", "A4").await.has(&[none]);
}

/// A mixture that nobody opened cannot say none; opened, its nuts are named.
async fn a_mixture(journey: &Journey) {
    entering::ingredient(journey, "Granola", "10 lb", "40").await;
    journey.enter(By::Label("Density in the drink"), "1").await;
    journey.click(By::Text("None of these")).await;
    journey.click(By::Text("A mixture, such as granola")).await;
    journey.expect_value(By::Label("Its parts"), "").await;
    entering::drink(journey, "Crunchy Field", "Blended", "330").await;
    entering::line(journey, "Granola", "330").await;
    let unknown = "Parts not known, so more may be in it: Granola. Read its label, and enter its parts.";
    journey.wait_for_text(unknown).await;
    journey.click(By::Text("Buying")).await;
    journey.click(By::Text("Granola")).await;
    journey.enter(By::Label("Its parts"), "oats, almonds, honey").await;
    journey.click(By::Text("Tree nuts")).await;
    // What counts, by law and year.
    journey.wait_for_text("Coconut, chestnut and shea no longer count.").await;
    journey.wait_for_text("Pine nuts do not count there.").await;
    journey.enter(By::Label("Which nuts"), "almonds").await;
    journey.screenshot("mixture").await;
    journey.click(By::Text("Drinks")).await;
    journey.click(By::Text("Crunchy Field")).await;
    journey.wait_for_text("Contains Tree nuts: almonds (Granola).").await;
    journey.wait_for_text_gone(unknown).await;
}

async fn to_cut_out(journey: &Journey) {
    for paper in ["A4", "Letter"] {
        let sheet = journey.printed("#/print/warning", paper).await;
        assert_eq!(sheet.pages.len(), 1);
        sheet.has(&[STATEMENT]);
    }
    journey.expect_count(".warning-box", 12).await;
    journey.screenshot("to_cut_out").await;
}
