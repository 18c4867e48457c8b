//! What must hold whatever goes wrong: the faults that are tried natively and stand by themselves. Those that need a
//! browser are in `in_browsers`, walked with the journeys; those of the store, of files and of tills stand beside what
//! they try. Each has the number of its fault in its name, and `cargo dev faults` tries it as often as is asked for.

#[path = "../property/books.rs"]
#[allow(dead_code, reason = "shared with the property tests, which use the rest")]
mod books;
#[path = "../property/drinks.rs"]
#[allow(dead_code, reason = "shared with the property tests, which use the rest")]
mod drinks;
mod t18_numbers_of_the_world;
mod t19_the_same_book_again;
#[path = "../property/vessels.rs"]
#[allow(dead_code, reason = "shared with the property tests, which use the rest")]
mod vessels;

#[path = "../support/mod.rs"]
mod support;

use brimwright::foundation::measure::Exact;
use proptest::strategy::Strategy;

/// A number of at most `places` decimals from zero up to, and not at, `below`.
fn number(below: i64, places: u32) -> impl Strategy<Value = Exact> {
    let steps = 10_i64.pow(places);
    (0..below * steps).prop_map(move |mantissa| Exact::new(mantissa, places))
}
