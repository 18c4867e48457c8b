//! How fast the app is in a browser, on the generated book and a processor slowed down four
//! times: from a key to what came of it, painted. Needs the built site: `cargo dev bench` builds
//! it and starts this.

#[allow(dead_code, reason = "shared with the engine's bench, which uses the rest")]
mod figure;
mod files;
mod generated;
#[path = "../journeys/harness/mod.rs"]
#[allow(dead_code, unused_imports, unused_macros, reason = "shared with the journeys, which use the rest")]
mod harness;
mod in_a_page;
#[allow(dead_code, reason = "shared with the engine's bench, which uses the rest")]
mod one_price;
#[allow(dead_code, reason = "shared with the engine's bench, which uses the rest")]
mod spreadsheet;

use brimwright::{exchange, say};
use fantoccini::key::Key;
use harness::{By, Journey};

/// How many times slower than this machine.
const SLOWER: u32 = 4;
/// From a supplier's price to the repainted list, in milliseconds.
const PRICE_BAR: f64 = 100.0;
/// From a letter of the search to the list it narrows, in milliseconds.
const SEARCH_BAR: f64 = 50.0;
/// From a step of a slider, or a digit that is tried, to the answer that it changes, in milliseconds.
const TRYING_BAR: f64 = 50.0;
/// From choosing a book file to what it would do, in milliseconds.
const FILE_BAR: f64 = 3000.0;
/// The longest between two frames while it is read.
const ANSWER_BAR: f64 = 200.0;

/// Watches from the choice of a file until a sentence or a preview stands there.
const WATCH: &str = "
    const field = document.querySelector('#import-file');
    if (!field) return false;
    delete localStorage.benched;
    field.addEventListener('change', () => {
        const begun = performance.now();
        let [before, longest] = [begun, 0];
        const look = () => {
            const now = performance.now();
            longest = Math.max(longest, now - before);
            before = now;
            const said = document.querySelector('#import-file-error').textContent || document.querySelector('.teach h3');
            if (said && now > begun + 50) localStorage.benched = `${now - begun} ${longest}`;
            else requestAnimationFrame(look);
        };
        requestAnimationFrame(look);
    }, { capture: true, once: true });
    return true;";

/// Steps of a slider.
const STEPS: usize = 12;
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
    let letters = journey.painted(By::Label(say!(market::find_item)), "ingredient 27").await;
    figure("a letter of the search to the narrowed list", letters, SEARCH_BAR);
    in_a_page::beside_a_spreadsheet(&journey).await;
    trying(&journey).await;
    journey.go("#/book").await;
    for (name, file) in [("refused for its long list", files::too_many()), ("read and checked", files::full())] {
        let (whole, longest) = taken_in(&journey, &file).await;
        figure(&format!("a file of 10 MB, {name}"), vec![whole], FILE_BAR);
        figure("the longest that the page did not answer meanwhile", vec![longest], ANSWER_BAR);
    }
}

/// What is tried over the whole menu: buyers who stay when a size goes, and a price of every drink in a size.
async fn trying(journey: &Journey) {
    journey.go("#/sizes/decide/menu/1-").await;
    let slider = say!(book::slider_of_field, field = say!(decide::buyers_who_stay));
    let steps = (0..STEPS).map(|_| Key::Left.to_string());
    let slid = journey.painted_by_keys(By::Label(&slider), steps).await;
    figure("a step of buyers who stay to the answer", slid, TRYING_BAR);
    journey.go("#/sizes/menu").await;
    let raised = say!(sales::raise_of, size = format!("{} fl oz", generated::SIZES[0]));
    let typed = journey.painted(By::Label(&raised), "0.75").await;
    figure("a price tried over the whole menu to the answer", typed, TRYING_BAR);
}

/// Chooses a book file to import: the milliseconds until the page says what of it, and the longest
/// between two frames meanwhile.
async fn taken_in(journey: &Journey, text: &str) -> (f64, f64) {
    let file = std::path::Path::new(env!("CARGO_TARGET_TMPDIR")).join("large.brimwright.json");
    std::fs::write(&file, text).expect("the file is written");
    journey.wait_until("the field of the import", WATCH).await;
    journey.attach(By::Label(say!(book::import_book_file)), &file).await;
    journey.wait_until("what comes of the file", "return localStorage.benched !== undefined").await;
    let benched = journey.local_storage("benched").await.expect("two figures");
    let (whole, longest) = benched.split_once(' ').expect("two figures");
    (whole.parse().expect("a figure"), longest.parse().expect("a figure"))
}

/// Imports the generated book as a person does.
async fn open_generated_book(journey: &Journey) {
    let file = std::path::Path::new(env!("CARGO_TARGET_TMPDIR")).join("generated.brimwright.json");
    std::fs::write(&file, exchange::write(&generated::with_a_usual_week(generated::book())))
        .expect("the book's file is written");
    journey.click(By::Text(say!(first::start_book))).await;
    journey.click(By::Text(say!(first::book))).await;
    journey.attach(By::Label(say!(book::import_book_file)), &file).await;
    journey.click(By::Text(say!(book::replace_book))).await;
    journey.wait_until_saved().await;
}

/// Finds goods by their name and types their price; how long each key of the price took.
async fn typed(journey: &Journey, name: &str, price: &str) -> Vec<f64> {
    journey.type_into(By::Label(say!(market::find_item)), name).await;
    let field = say!(market::price_of, name = name);
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
