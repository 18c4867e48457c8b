//! What must hold for every book, recipe, price and typed text, tried on generated ones.

mod batches;
mod best_uses;
mod books;
mod buying;
mod cards;
mod cases;
mod counter;
mod decisions;
mod drinks;
mod edits;
mod estimates;
mod histories;
mod keys;
mod ladders;
mod large_book;
mod levels;
mod levers;
mod menus;
mod points;
mod prices;
mod quotes;
mod recipes;
mod rules;
mod seasons;
mod sizes;
mod steps;
mod stock;
mod tills;
mod typed;
mod vessels;
mod watches;
mod workings;
mod yield_logs;

#[path = "../support/mod.rs"]
mod support;

use brimwright::foundation::measure::Exact;
use proptest::strategy::Strategy;

/// A number of at most `places` decimals from zero up to, and not at, `below`.
fn number(below: i64, places: u32) -> impl Strategy<Value = Exact> {
    let steps = 10_i64.pow(places);
    (0..below * steps).prop_map(move |mantissa| Exact::new(mantissa, places))
}

/// Whether two numbers lie within `allowed` of each other.
fn near(one: Exact, other: Exact, allowed: &str) -> bool {
    let off = one.minus(other).unwrap();
    let allowed = support::exact(allowed);
    off <= allowed && off >= allowed.negated()
}
