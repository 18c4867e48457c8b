//! How fast the app is in a browser, on the generated book and a processor slowed down four
//! times: from a key to what came of it, painted. Needs the built site: `cargo dev bench` builds
//! it and starts this.

mod generated;
#[path = "../journeys/harness/mod.rs"]
#[allow(dead_code, unused_imports, unused_macros, reason = "shared with the journeys, which use the rest")]
mod harness;
#[path = "../../src/bin/dev/site.rs"]
#[allow(unused_imports, reason = "its own tests are left out here")]
mod site;

use brimwright::exchange;
use harness::{By, Journey};

/// How many times slower than this machine.
const SLOWER: u32 = 4;
/// From a supplier's price to the repainted list, in milliseconds.
const PRICE_BAR: f64 = 100.0;
/// From a letter of the search to the list it narrows, in milliseconds.
const SEARCH_BAR: f64 = 50.0;
/// Ingredients whose price is typed.
const PRICED: u64 = 12;

#[tokio::main]
async fn main() {
    let journey = Journey::start("bench").await;
    journey.open().await;
    open_generated_book(&journey).await;
    journey.go("#/buying").await;
    journey.wait_for_text("Ingredient 1").await;
    journey.slow_down(SLOWER).await;

    let mut ingredients = Vec::new();
    for id in 1..=PRICED {
        // All digits of each price: "3", "37", "37.", "37.5", "37.50".
        let price = format!("{}.50", 36 + id);
        ingredients.extend(typed(&journey, &format!("Ingredient {id}"), &price).await);
    }
    figure("a supplier's price to the repainted list, an ingredient", ingredients, PRICE_BAR);
    // The bottle of one size: a third of all offers moves.
    let bottle =
        [typed(&journey, "Packaging 1", "61.25").await, typed(&journey, "Packaging 3", "48.75").await].concat();
    figure("the same, a bottle of 500 drinks", bottle, PRICE_BAR);
    let letters = journey.painted(By::Label("Find what you buy"), "ingredient 27").await;
    figure("a letter of the search to the narrowed list", letters, SEARCH_BAR);
}

/// Imports the generated book as a person does.
async fn open_generated_book(journey: &Journey) {
    let file = std::path::Path::new(env!("CARGO_TARGET_TMPDIR")).join("generated.brimwright.json");
    std::fs::write(&file, exchange::write(&generated::book())).expect("the book's file is written");
    journey.click(By::Text("Start an empty book")).await;
    journey.click(By::Text("Book")).await;
    journey.attach(By::Label("Import a book file"), &file).await;
    journey.click(By::Text("Replace this book")).await;
    journey.wait_until_saved().await;
}

/// Finds goods by their name and types their price; how long each key of the price took.
async fn typed(journey: &Journey, name: &str, price: &str) -> Vec<f64> {
    journey.type_into(By::Label("Find what you buy"), name).await;
    let field = format!("Price of {name}");
    journey.painted(By::Label(&field), price).await
}

/// The middle is held against the bar; the longest tells what a person may meet.
fn figure(name: &str, mut times: Vec<f64>, bar: f64) {
    times.sort_by(f64::total_cmp);
    let (shortest, middle, longest) = (times[0], times[times.len() / 2], times[times.len() - 1]);
    let verdict = if middle <= bar { "met" } else { "missed" };
    println!(
        "{name}: {middle:.0} ms (shortest {shortest:.0}, longest {longest:.0}, {} keys), bar {bar:.0} ms, {verdict}",
        times.len()
    );
}
