//! The engine against values that nobody here wrote. Each data file begins with its source.

mod allergens;
mod batches;
mod best_use;
mod buying;
mod costs;
mod csv;
mod currencies;
mod decisions;
mod ers_prices;
mod estimates;
mod fills;
mod from_price_tag_to_conclusion;
mod labels;
mod locales;
mod measures;
mod prices;
mod quotes;
mod shapes;
mod spreads;
mod sr28;
mod starter;
mod tolerances;
mod units;
mod water;
mod yield_log;

#[path = "../support/mod.rs"]
mod support;

/// A worked example out of `worked_examples.csv`, where its source is named: the answer printed
/// there, and the answer computed exactly from the inputs printed there.
fn example(id: &str) -> (String, String) {
    let rows = csv::rows(include_str!("data/worked_examples.csv"));
    let row = rows.into_iter().find(|row| row["id"] == id).unwrap_or_else(|| panic!("no example {id}"));
    (row["printed_answer"].clone(), row["exact"].clone())
}
