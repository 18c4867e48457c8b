//! What several journeys enter before their own part begins.

use crate::harness::{By, Engine, Journey};

/// A journey in an empty book.
pub async fn empty_book(name: &'static str) -> Journey {
    empty_book_in(Engine::Chromium, name).await
}

/// The same, in an engine.
pub async fn empty_book_in(engine: Engine, name: &'static str) -> Journey {
    let journey = Journey::start_in(engine, name).await;
    journey.open().await;
    journey.click(By::Text("Start an empty book")).await;
    journey.wait_for_text("Three steps to a first price").await;
    journey
}

/// The same, in metric units.
pub async fn metric_book(name: &'static str) -> Journey {
    let journey = empty_book(name).await;
    journey.click(By::Text("Book")).await;
    journey.choose(By::Label("Units"), "Metric").await;
    journey.expect_value(By::Label("Units"), "Metric").await;
    journey
}

/// An ingredient in one pack; its page stays open.
pub async fn ingredient(journey: &Journey, name: &str, holds: &str, price: &str) {
    journey.click(By::Text("Buying")).await;
    journey.click(By::Text("Add an ingredient")).await;
    journey.wait_for_text("New ingredient").await;
    journey.enter(By::Label("Name"), name).await;
    pack(journey, holds, price).await;
}

/// Packaging in one pack; its page stays open.
pub async fn packaging(journey: &Journey, name: &str, part: &str, holds: &str, price: &str) {
    journey.click(By::Text("Buying")).await;
    journey.click(By::Text("Add packaging")).await;
    journey.wait_for_text("New packaging").await;
    journey.enter(By::Label("Name"), name).await;
    journey.choose(By::Label("What it is"), part).await;
    pack(journey, holds, price).await;
}

async fn pack(journey: &Journey, holds: &str, price: &str) {
    // What has no pack yet begins with the fields of one.
    journey.expect_value(By::Label("Holds"), "").await;
    journey.enter(By::Label("Holds"), holds).await;
    journey.enter(By::Label("Price of the pack"), price).await;
}

/// A new container by this name, weighed with water; its page stays open.
pub async fn container(journey: &Journey, name: &str, rim: &str, empty: &str) {
    journey.click(By::Text("Buying")).await;
    journey.click(By::Text("Containers")).await;
    journey.click(By::Text("Add a container")).await;
    journey.wait_for_text("New container").await;
    journey.enter(By::Label("Name on the menu"), name).await;
    journey.enter(By::Label("Volume to the rim"), rim).await;
    journey.enter(By::Label("Volume left empty"), empty).await;
}

/// Packaging that belongs to the container or the set that is open.
pub async fn belongs(journey: &Journey, packaging: &str, count: &str) {
    journey.choose(By::Label("Add to it"), packaging).await;
    let how_many = format!("How many of {packaging}");
    journey.expect_value(By::Label(&how_many), "").await;
    journey.enter(By::Label(&how_many), count).await;
    journey.expect_value(By::Label(&how_many), count).await;
}

/// A drink without ingredients, written for a size; its page stays open.
pub async fn drink(journey: &Journey, name: &str, kind: &str, written_for: &str) {
    journey.click(By::Text("Drinks")).await;
    journey.click(By::Text("Add a drink")).await;
    journey.wait_for_text("New drink").await;
    journey.enter(By::Label("Name"), name).await;
    journey.enter(By::Label("Written for"), written_for).await;
    journey.choose(By::Label("How it is made"), kind).await;
}

/// A line of the recipe that is open.
pub async fn line(journey: &Journey, name: &str, amount: &str) {
    journey.choose(By::Label("Add to the recipe"), name).await;
    journey.enter(By::Label(&format!("Amount of {name}")), amount).await;
}

/// Sells the drink that is open in a container, and opens that size.
pub async fn sold_in(journey: &Journey, container: &str) {
    journey.choose(By::Label("Add a size"), container).await;
    journey.click(By::Text(container)).await;
    journey.wait_for_text("Menu price").await;
}
