//! What several journeys enter before their own part begins.

use brimwright::say;

use crate::harness::{By, Engine, Journey};

/// A journey in an empty book.
pub async fn empty_book(name: &'static str) -> Journey {
    empty_book_in(Engine::Chromium, name).await
}

/// The same, in an engine.
pub async fn empty_book_in(engine: Engine, name: &'static str) -> Journey {
    let journey = Journey::start_in(engine, name).await;
    journey.open().await;
    journey.click(By::Text(say!(first::start_book))).await;
    journey.wait_for_text(say!(first::first_price_steps)).await;
    journey
}

/// The same, in metric units.
pub async fn metric_book(name: &'static str) -> Journey {
    let journey = empty_book(name).await;
    book_part(&journey, say!(book::this_book)).await;
    journey.choose(By::Label(say!(book::units)), say!(drinks::metric)).await;
    journey.expect_value(By::Label(say!(book::units)), say!(drinks::metric)).await;
    journey
}

/// An ingredient in one pack; its page stays open.
pub async fn ingredient(journey: &Journey, name: &str, holds: &str, price: &str) {
    journey.click(By::Text(say!(first::buying))).await;
    journey.click(By::Text(say!(goods::add_ingredient))).await;
    journey.wait_for_text(say!(goods::new_ingredient)).await;
    journey.enter(By::Label(say!(common::name)), name).await;
    pack(journey, holds, price).await;
}

/// Packaging in one pack; its page stays open.
pub async fn packaging(journey: &Journey, name: &str, part: &str, holds: &str, price: &str) {
    journey.click(By::Text(say!(first::buying))).await;
    journey.click(By::Text(say!(goods::add_packaging))).await;
    journey.wait_for_text(say!(goods::new_packaging)).await;
    journey.enter(By::Label(say!(common::name)), name).await;
    journey.choose(By::Label(say!(goods::packaging_type)), part).await;
    pack(journey, holds, price).await;
}

async fn pack(journey: &Journey, holds: &str, price: &str) {
    // What has no pack yet begins with the fields of one.
    journey.expect_value(By::Label(say!(goods::pack_size)), "").await;
    journey.enter(By::Label(say!(goods::pack_size)), holds).await;
    journey.enter(By::Label(say!(goods::case_price)), price).await;
}

/// A new container by this name, weighed with water; its page stays open.
pub async fn container(journey: &Journey, name: &str, rim: &str, empty: &str) {
    journey.click(By::Text(say!(first::buying))).await;
    journey.click(By::Text(say!(first::containers))).await;
    journey.click(By::Text(say!(labels::add_container))).await;
    journey.wait_for_text(say!(labels::new_container)).await;
    journey.enter(By::Label(say!(labels::menu_name)), name).await;
    journey.enter(By::Label(say!(goods::brimful_capacity)), rim).await;
    journey.enter(By::Label(say!(labels::headspace)), empty).await;
}

/// Packaging that belongs to the container or the set that is open.
pub async fn belongs(journey: &Journey, packaging: &str, count: &str) {
    journey.choose(By::Label(say!(goods::add_packaging)), packaging).await;
    let how_many = say!(goods::per_drink, name = packaging);
    journey.expect_value(By::Label(&how_many), "").await;
    journey.enter(By::Label(&how_many), count).await;
    journey.expect_value(By::Label(&how_many), count).await;
}

/// A drink without ingredients, written for a size; its page stays open.
pub async fn drink(journey: &Journey, name: &str, kind: &str, written_for: &str) {
    journey.click(By::Text(say!(first::drinks))).await;
    journey.click(By::Text(say!(first::add_drink))).await;
    journey.wait_for_text(say!(drinks::new_drink)).await;
    journey.enter(By::Label(say!(common::name)), name).await;
    journey.enter(By::Label(say!(drinks::recipe_makes)), written_for).await;
    journey.choose(By::Label(say!(drinks::drink_type)), kind).await;
}

/// A line of the recipe that is open.
pub async fn line(journey: &Journey, name: &str, amount: &str) {
    journey.choose(By::Label(say!(drinks::add_ingredient)), name).await;
    journey.enter(By::Label(&say!(drinks::amount_of, name = name)), amount).await;
}

/// Sells the drink that is open in a container, and opens that size.
pub async fn sold_in(journey: &Journey, container: &str) {
    journey.choose(By::Label(say!(drinks::add_size)), container).await;
    journey.click(By::Text(container)).await;
    journey.wait_for_text(say!(drinks::menu_price)).await;
}

/// Opens the fold of this name, where it is closed.
pub async fn unfold(journey: &Journey, name: &str) {
    let script = format!(
        "const named = (fold) => fold.querySelector('h2').textContent === '{name}';
         const fold = [...document.querySelectorAll('.fold')].find(named);
         if (fold && !fold.open) fold.querySelector('summary').click();
         return fold?.open === true"
    );
    journey.wait_until(&format!("the fold {name:?}"), &script).await;
}

/// Opens a part of the settings, on the screen of the book.
pub async fn book_part(journey: &Journey, name: &str) {
    journey.click(By::Text(say!(first::book))).await;
    unfold(journey, name).await;
}

/// Opens label and fill target of the size that is open.
pub async fn label_and_fill(journey: &Journey) {
    unfold(journey, say!(drinks::label)).await;
    journey.click(By::Text(say!(drinks::label_and_fill))).await;
}

/// Price, margin and profit of the size that is open, as they stay in view.
pub async fn expect_answer(journey: &Journey, price: &str, margin_on: &str, margin: &str, profit: &str) {
    let figures = [[say!(common::price), price], [margin_on, margin], [say!(common::profit_per_drink), profit]];
    let figures = figures.map(|figure| figure.join(" "));
    journey.expect_each(".offer-answer .answer-figures > div", &figures.each_ref().map(String::as_str)).await;
}

/// The rows of the money ladder of the size that is open, each with its figure.
pub async fn expect_ladder(journey: &Journey, rows: &[(&str, &str)]) {
    let rows: Vec<String> = rows.iter().map(|(name, figure)| [*name, *figure].join(" ")).collect();
    journey.expect_each(".ladder tr", &rows.iter().map(String::as_str).collect::<Vec<_>>()).await;
}
