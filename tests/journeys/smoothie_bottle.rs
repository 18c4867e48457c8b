//! A smoothie that is packaged ahead, from its recipe to its label: the warning in its box, who is
//! at risk, how it is kept, and what selling it on asks for. Everything is invented.

use brimwright::say;

use crate::entering;
use crate::harness::{By, Journey};

/// 21 CFR 101.17(g)(2), word by word: the same as `tests/reference/labels.rs` has.
const STATEMENT: &str = "WARNING: This product has not been pasteurized and, therefore, may contain harmful bacteria \
                         that can cause serious illness in children, the elderly, and persons with weakened immune \
                         systems.";

fn how_sold() -> By<'static> {
    By::Label(say!(labels::how_sold))
}

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
        ("Strawberries", say!(labels::none_of_these), say!(drinks::produce_raw)),
        ("Whole milk", say!(labels::milk), say!(drinks::produce_neither)),
    ] {
        entering::ingredient(journey, name, "10 L", "20").await;
        journey.enter(By::Label(say!(goods::drink_density)), "1").await;
        let kind = By::Label(say!(goods::kind_of_ingredient));
        journey.expect_value(kind, say!(drinks::not_answered)).await;
        journey.choose(kind, produce).await;
        journey.expect_value(kind, produce).await;
        if name == "Strawberries" {
            journey.enter(By::Label(say!(goods::name_on_labels)), "strawberries").await;
        }
        journey.click(By::Text(allergen)).await;
    }
    entering::container(journey, "Swing bottle", "350", "20").await;
    journey.enter(By::Label(say!(labels::labeled_size)), "330").await;
    entering::drink(journey, "Rosy Field", say!(first::type_blended), "330").await;
    entering::line(journey, "Strawberries", "130").await;
    entering::line(journey, "Whole milk", "200").await;
}

async fn how_it_is_kept(journey: &Journey) {
    entering::unfold(journey, say!(labels::safety_and_storage)).await;
    let (ph, days) = (By::Label(say!(labels::measured_ph)), By::Label(say!(labels::use_within)));
    journey.expect_value(days, "").await;
    journey.enter(ph, "14.5").await;
    journey.expect_error(ph, &say!(refusals::not_a_ph, field = say!(labels::measured_ph), example = "3.8")).await;
    journey.enter(ph, "4.2").await;
    journey.expect_value(ph, "4.2").await;
    journey.enter(days, "2.5").await;
    journey.expect_error(days, &say!(refusals::not_whole, field = say!(labels::use_within))).await;
    journey.enter(days, "3").await;
    journey.choose(By::Label(say!(labels::keep_refrigerated)), say!(labels::keep_refrigerated)).await;
    journey.screenshot("keeping").await;
    entering::sold_in(journey, "Swing bottle").await;
    journey.enter(By::Label(say!(drinks::menu_price)), "5").await;
}

async fn a_label(journey: &Journey) {
    entering::label_and_fill(journey).await;
    journey.expect_value(how_sold(), say!(drinks::not_answered)).await;
    journey.expect_each(".warning-box", &[STATEMENT]).await;
    journey.choose(how_sold(), say!(drinks::packaged_ahead)).await;
    journey.expect_each(".warning-box", &[STATEMENT]).await;
    journey.expect_each(".warning-box strong", &["WARNING"]).await;
    // Set off by hairlines on all sides, WARNING bold.
    let drawn = "const box = getComputedStyle(document.querySelector('.warning-box')); \
                 const bold = getComputedStyle(document.querySelector('.warning-box strong')).fontWeight; \
                 return [box.borderTopWidth, box.borderRightWidth, box.borderBottomWidth, box.borderLeftWidth, bold]";
    assert_eq!(journey.run(drawn).await, serde_json::json!(["1px", "1px", "1px", "1px", "700"]));
    let cautions: [&str; 5] = [
        say!(labels::untreated_packaged),
        &[say!(labels::at_risk), say!(labels::at_risk_places)].join(" "),
        say!(labels::sold_to_a_business),
        say!(labels::allergens_as_entered),
        say!(labels::no_legal_advice),
    ];
    journey.expect_each(".cautions > p", &cautions).await;
    // 130 of 330 mL are 39.4%, rounded down; 5 over 0.33 L.
    let net = say!(labels::net_contents_in_metric, metric = "330 mL", ounces = "11.15 fl oz");
    let kept = [say!(labels::keep_refrigerated_sentence), &say!(labels::use_within_days, days = 3_usize)].join(" ");
    let unit_price = say!(labels::unit_price_per, price = "$15.15", unit = "L");
    let facts: [&[&str]; 6] = [
        &[say!(labels::net_contents), &say!(labels::net_from_labeled_size, net = net), say!(labels::thick)],
        &[say!(labels::ingredients_heaviest_first), "Whole milk, strawberries"],
        &[say!(labels::allergens_nine), &say!(labels::contains_on_label, allergens = say!(labels::nine_milk))],
        &[say!(labels::juice), &say!(labels::percent_juice, percent = "39"), say!(labels::name_with_juice)],
        &[say!(labels::storage), &kept],
        &[say!(labels::unit_price), &unit_price],
    ];
    journey.expect_facts(say!(labels::label_facts), &facts).await;
    journey.screenshot("label").await;
    // The federal label rule is for packages: no box by the glass.
    journey.choose(how_sold(), say!(drinks::by_the_glass)).await;
    // A blend that is handed over as it is made has no juice in it but that of the whole fruit.
    journey.expect_count(".warning-box", 0).await;
    journey.wait_for_text_gone(say!(labels::untreated_packaged)).await;
    journey.wait_for_text_gone(say!(labels::untreated_by_the_glass)).await;
    // By the glass there is no label.
    journey.wait_for_text(say!(labels::by_the_glass)).await;
    let by_the_glass: [&[&str]; 2] =
        [&[say!(labels::allergens_nine), say!(labels::nine_milk)], &[say!(labels::unit_price), &unit_price]];
    journey.expect_facts(say!(labels::label_facts), &by_the_glass).await;
    journey.choose(how_sold(), say!(drinks::packaged_ahead)).await;
    journey.expect_count(".warning-box", 1).await;
}

/// In a book in euros the allergens stand out in the list, and are not repeated by "Contains".
async fn a_european_label(journey: &Journey) {
    entering::book_part(journey, say!(book::this_book)).await;
    journey.choose(By::Label(say!(book::currency)), "EUR, Euro").await;
    journey.expect_value(By::Label(say!(book::currency)), "EUR, Euro").await;
    entering::unfold(journey, say!(drinks::fees)).await;
    // Whoever lets a shop sell it is told what that asks for.
    let sold = say!(labels::sold_to_a_business_european);
    journey.wait_for_text_gone(sold).await;
    journey.enter(By::Label(say!(book::app_commission)), "20").await;
    journey.wait_for_text(sold).await;
    journey.wait_for_text_gone(say!(labels::sold_to_a_business)).await;
    journey.enter(By::Label(say!(book::app_commission)), "0").await;
    journey.wait_for_text_gone(sold).await;
    journey.click(By::Text(say!(first::drinks))).await;
    journey.click(By::Text("Rosy Field")).await;
    entering::unfold(journey, say!(drinks::name_and_type)).await;
    journey.enter(By::Label(say!(common::name)), "Strawberry Field").await;
    journey.click(By::Text("Swing bottle")).await;
    entering::label_and_fill(journey).await;
    journey.wait_for_text("Whole MILK, strawberries 39.4%").await;
    journey.expect_each(".ingredients strong", &["MILK"]).await;
    let bold = "return getComputedStyle(document.querySelector('.ingredients strong')).fontWeight";
    assert_eq!(journey.run(bold).await, serde_json::json!("800"));
    journey.wait_for_text(say!(labels::not_repeated)).await;
    // The law of the United States, with its warning, is one tap away and nowhere else.
    let cautions: [&str; 5] = [
        say!(labels::untreated_european),
        &[say!(labels::at_risk), say!(labels::at_risk_places_european)].join(" "),
        say!(labels::sold_to_a_business_european),
        say!(labels::allergens_as_entered),
        say!(labels::no_legal_advice),
    ];
    journey.expect_each(".cautions > p", &cautions).await;
    journey.expect_count(".warning-box", 1).await;
    journey.expect_count("details:not([open]) .warning-box", 1).await;
    journey.screenshot("european").await;
    journey.click(By::Text(say!(first::undo))).await;
    journey.wait_for_text("Rosy Field").await;
    journey.wait_for_text("Whole MILK, strawberries\n").await;
    entering::book_part(journey, say!(book::this_book)).await;
    journey.choose(By::Label(say!(book::currency)), "USD, US Dollar").await;
    journey.expect_value(By::Label(say!(book::currency)), "USD, US Dollar").await;
    journey.click(By::Text(say!(first::drinks))).await;
    journey.click(By::Text("Rosy Field")).await;
    journey.click(By::Text("Swing bottle")).await;
    entering::label_and_fill(journey).await;
    journey.wait_for_text("Whole milk, strawberries\n").await;
}

/// What has a fill for packages is packaged ahead; what is treated carries no warning.
async fn treated(journey: &Journey) {
    journey.click(By::Text(say!(labels::add_fill_target))).await;
    journey.choose(how_sold(), say!(drinks::by_the_glass)).await;
    journey.wait_for_text(say!(labels::has_a_fill_target)).await;
    journey.expect_value(how_sold(), say!(drinks::packaged_ahead)).await;
    journey.click(By::Text(say!(labels::remove_fill_target))).await;
    journey.click(By::Text(say!(labels::this_size))).await;
    journey.click(By::Text(say!(drinks::back_to_drink))).await;
    entering::unfold(journey, say!(labels::safety_and_storage)).await;
    journey.choose(By::Label(say!(labels::treatment)), say!(drinks::treated)).await;
    journey.click(By::Text("Swing bottle")).await;
    entering::label_and_fill(journey).await;
    journey.wait_for_text(say!(labels::sold_to_a_business)).await;
    journey.expect_count(".warning-box", 0).await;
    journey.click(By::Text(say!(first::undo))).await;
    journey.expect_count(".warning-box", 1).await;
}

async fn sold_on(journey: &Journey) {
    journey.click(By::Text(say!(labels::this_size))).await;
    journey.wait_for_text(say!(drinks::menu_price)).await;
    journey.wait_for_text_gone(say!(labels::sold_to_a_business)).await;
    entering::unfold(journey, say!(drinks::work_back)).await;
    journey.enter(By::Label(say!(drinks::sell_for_no_more_than)), "5").await;
    journey.enter(By::Label(say!(drinks::retailers_cut)), "30").await;
    journey.wait_for_text(say!(labels::sold_to_a_business)).await;
    journey.screenshot("sold_on").await;
}

async fn a_card(journey: &Journey) {
    journey.click(By::Text(say!(drinks::recipe_card))).await;
    // A journey's day is 26 November 2026.
    let kept = [say!(labels::keep_refrigerated_sentence), &say!(labels::use_by, day = "Nov 29, 2026")].join(" ");
    journey.expect_each(".card-kept", &[&*[say!(counter::made_today), &kept].join(" ")]).await;
    // What can hurt stands out; that allergens are as entered stands under it.
    let cautions = [say!(counter::untreated_packaged_ahead), say!(labels::at_risk)];
    journey.expect_each(".cautions > p", &cautions).await;
    journey.wait_for_text(say!(counter::allergens_as_entered)).await;
    journey.screenshot("card").await;
}

/// Strawberries hold none, and milk goes through the same blender.
async fn none_beside_a_shared_blender(journey: &Journey) {
    let shared = say!(labels::made_where_used, allergens = say!(labels::milk));
    let none = &*[say!(labels::no_allergens), &shared].join(" ");
    entering::drink(journey, "Plain Field", say!(first::type_blended), "330").await;
    entering::unfold(journey, say!(labels::allergens)).await;
    journey.wait_for_text(say!(labels::recipe_is_empty)).await;
    entering::line(journey, "Strawberries", "330").await;
    journey.wait_for_text(none).await;
    entering::sold_in(journey, "Swing bottle").await;
    entering::label_and_fill(journey).await;
    let said = say!(labels::allergens_and_shared, allergens = say!(labels::none), shared = shared);
    journey.click(By::Text(say!(labels::in_the_eu_and_uk))).await;
    for name in [say!(labels::allergens_nine), say!(labels::allergens_fourteen)] {
        journey.wait_for_text(&format!("{name}\n{said}")).await;
    }
    journey.click(By::Text(say!(labels::this_size))).await;
    journey.click(By::Text(say!(drinks::recipe_card))).await;
    journey.expect_each(".allergens", &[none]).await;
    journey.screenshot("none").await;
    journey.printed("#/print/cards", "A4").await.has(&[none]);
}

/// A mixture that nobody opened cannot say none; opened, its nuts are named.
async fn a_mixture(journey: &Journey) {
    entering::ingredient(journey, "Granola", "10 lb", "40").await;
    journey.enter(By::Label(say!(goods::drink_density)), "1").await;
    journey.click(By::Text(say!(labels::none_of_these))).await;
    journey.click(By::Text(say!(labels::mixture_such_as_granola))).await;
    journey.expect_value(By::Label(say!(labels::parts)), "").await;
    entering::drink(journey, "Crunchy Field", say!(first::type_blended), "330").await;
    entering::line(journey, "Granola", "330").await;
    entering::unfold(journey, say!(labels::allergens)).await;
    let unknown = &say!(labels::parts_not_known_sentence, names = "Granola");
    journey.wait_for_text(unknown).await;
    journey.click(By::Text(say!(first::buying))).await;
    journey.click(By::Text("Granola")).await;
    entering::unfold(journey, say!(labels::allergens)).await;
    journey.enter(By::Label(say!(labels::parts)), "oats, almonds, honey").await;
    journey.click(By::Text(say!(labels::tree_nuts))).await;
    // What counts, by the book's law and year.
    journey.wait_for_text(say!(labels::tree_nuts_united_states)).await;
    journey.wait_for_text_gone(say!(labels::tree_nuts_european)).await;
    journey.enter(By::Label(say!(labels::which_nuts)), "almonds").await;
    journey.screenshot("mixture").await;
    journey.click(By::Text(say!(first::drinks))).await;
    journey.click(By::Text("Crunchy Field")).await;
    entering::unfold(journey, say!(labels::allergens)).await;
    let nuts = say!(labels::allergen_with_nuts, allergen = say!(labels::tree_nuts), nuts = "almonds");
    let found = say!(labels::allergen_with_ingredients, allergen = nuts, names = "Granola");
    journey.wait_for_text(&say!(labels::contains, allergens = found)).await;
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
