//! The app beside a spreadsheet engine, in one page of Chromium and with the same slowed-down
//! processor.
//!
//! Of the app it is timed how long it handles a text that is typed: until the text is read, checked and
//! in the book, and every offer that it moves is computed and noted to be painted and saved. So there is
//! more in it than the engine. The spreadsheet engine is timed without any screen.

use std::env;
use std::fs;
use std::path::Path;

use brimwright::say;
use serde_json::json;

use crate::figure::beside;
use crate::generated;
use crate::harness::{By, Journey};
use crate::spreadsheet::{FOLDER, Measured, Runs};

/// Few enough for a script to end in the time that a browser's driver gives it.
const RUNS: Runs = Runs { builds: 2, rounds: 20, prices: 12, wages: 12 };
/// The engine in one file, for a page.
const ENGINE: &str = "node_modules/hyperformula/dist/hyperformula.full.min.js";
const MEASURE: &str = include_str!("spreadsheet/measure.js");

/// Types texts into the field with this label, each at once; gives how long each was handled.
const TYPE: &str = "
const labelled = (it) => [...it.labels].some((label) => label.textContent.trim() === wanted);
const field = [...document.querySelectorAll('input')].find(labelled);
field.focus();
const took = [];
for (const text of texts) {
    field.value = text;
    const begun = performance.now();
    field.dispatchEvent(new InputEvent('input', { bubbles: true }));
    took.push(performance.now() - begun);
    await new Promise((painted) => requestAnimationFrame(() => setTimeout(painted)));
}
return took;";

/// Prints how long both take for the same book, or why that is not known. The generated book is open, at
/// what is bought.
pub async fn beside_a_spreadsheet(journey: &Journey) {
    let Some(folder) = env::var_os(FOLDER) else {
        return println!("no spreadsheet engine to compare with: {FOLDER} is not set; `cargo dev bench` fetches it");
    };
    let engine = fs::read_to_string(Path::new(&folder).join(ENGINE)).expect("npm put the engine there");
    let book = generated::book();
    let script = format!(
        "const [exports, module] = [{{}}, {{ exports: {{}} }}];
         {engine};
         const {{ HyperFormula }} = module.exports;
         {MEASURE}
         return measure(HyperFormula, {});",
        RUNS.job(&book)
    );
    let measured = serde_json::from_value::<Measured>(journey.run(&script).await).expect("what the script gives");
    RUNS.check(&book, &measured.said);

    let mut prices = Vec::new();
    for id in 1..=RUNS.prices {
        let name = format!("Ingredient {id}");
        journey.type_into(By::Label(say!(market::find_item)), &name).await;
        let texts: Vec<String> = (0..RUNS.rounds).map(|round| format!("{}.50", 40 + round % 2)).collect();
        prices.extend(handled(journey, &say!(market::price_of, name = &name), &texts).await);
    }
    beside("one price in the page, ours with all that typing it does", prices, measured.times.price);
    journey.go("#/book").await;
    let wages: Vec<String> = RUNS.wages().map(|wage| wage.major().to_string()).collect();
    let wages = handled(journey, say!(book::hourly_wage), &wages).await;
    beside("the wage in the page, the same, every offer moved", wages, measured.times.wage);
    let built = measured.times.build.into_iter().fold(f64::MAX, f64::min);
    println!("whole book in the page: spreadsheet engine {built:.0} ms at the shortest");
}

/// Milliseconds that the app handles each text typed into the field with this label.
async fn handled(journey: &Journey, label: &str, texts: &[String]) -> Vec<f64> {
    let script = format!("const [wanted, texts] = {}; {TYPE}", json!([label, texts]));
    serde_json::from_value(journey.run(&script).await).expect("a time for each")
}
