//! Tests: browser.
fn main(){}
