//! Tests: browser.
fn main() {}
