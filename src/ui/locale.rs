//! How numbers, days and times are written where this person lives, asked of the browser. The start
//! script asks `Intl` (ECMA-402).

use leptos::prelude::window;
use wasm_bindgen::prelude::wasm_bindgen;

use super::language::language;
use super::today::today;
use crate::foundation::measure::{Currency, NumberStyle, Parts};
use crate::store::first_paint;
use crate::words::When;

#[wasm_bindgen(js_namespace = brimwrightIntl)]
extern "C" {
    /// Kind and text of each part of a number in a style: "decimal", "percent" or "currency".
    fn parts(region: Option<String>, number: f64, style: &str, currency: &str) -> Vec<String>;
    /// A day with its year (form 0), without it (1), a time (2), or a month alone (3); months from 1 on.
    fn when(region: Option<String>, form: u32, year: i32, month: u8, day: u8, hour: u32, minute: u32) -> String;
    /// The name of a "language" or "currency" by its code, if the browser has one.
    fn name(language: &str, of: &str, code: &str) -> Option<String>;
    /// The two letters of the country of a region's tag, or of the browser's own.
    fn country(region: Option<String>) -> String;
}

/// The browser's signs, with the book's currency.
pub fn number_style(currency: Currency) -> NumberStyle {
    let sample = |number: f64, style: &str| -> Parts {
        let parts = parts(first_paint::region(), number, style, currency.code());
        let pair = |part: &[String]| part.first().cloned().zip(part.last().cloned());
        parts.chunks_exact(2).filter_map(pair).collect()
    };
    NumberStyle::from_samples(&sample(1_234_567.8, "currency"), &sample(0.5, "percent"), &sample(1234.0, "decimal"))
}

/// A day or time as the browser writes it, for the owner.
pub fn said(at: When) -> String {
    written(at, &language())
}

/// The same for the crew, who may read another language.
pub fn said_to_crew(at: When) -> String {
    written(at, &first_paint::crew_language().unwrap_or_else(language))
}

/// As the chosen region writes it, else as the browser does; a language that is not the browser's names its own months.
fn written(at: When, read: &str) -> String {
    let base = |tag: &str| tag.split('-').next().unwrap_or_default().to_string();
    let browsers = window().navigator().language().unwrap_or_default();
    let other = || Some(read.to_string()).filter(|read| base(read) != base(&browsers));
    let region = first_paint::region().or_else(other);
    let (form, date, hour, minute) = match at {
        When::Day(date) => (0, date, 12, 0),
        When::ShortDay(date) => (1, date, 12, 0),
        When::Time(hour, minute) => (2, today(), hour, minute),
        // It stands in sentences, so it is of their language.
        When::Month(month) => return when(Some(read.to_string()), 3, 2000, month.number(), 1, 12, 0),
    };
    let (year, month, day) = date.parts();
    when(region, form, year, month, day, hour, minute)
}

/// The name of a language, or of a language and country, in that language itself: "Español (Estados
/// Unidos)". The tag where the browser knows none.
pub fn language_name(tag: &str) -> String {
    name(tag, "language", tag).unwrap_or_else(|| tag.to_string())
}

/// A currency as its code and its full name in a language: "USD, US Dollar". Its code alone where
/// the browser knows no name.
pub fn currency_name(language: &str, currency: Currency) -> String {
    let code = currency.code();
    match name(language, "currency", code) {
        Some(name) => format!("{code}, {name}"),
        None => code.to_string(),
    }
}

/// The name of a country in a language; its two letters where the browser knows none.
pub fn country_name(language: &str, letters: &str) -> String {
    name(language, "region", letters).unwrap_or_else(|| letters.to_string())
}

/// The two letters of the country whose numbers and days are shown: that of a tag without one is
/// the likeliest. "US" where the browser does not say.
pub fn country_here() -> String {
    country(first_paint::region())
}
