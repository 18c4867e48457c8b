//! The language of the screens: its texts, which the start script fetches, and its plural forms.

use std::cell::OnceCell;

use js_sys::{Array, Intl, Promise};
use wasm_bindgen::prelude::wasm_bindgen;
use wasm_bindgen::throw_str;
use wasm_bindgen_futures::JsFuture;

use super::locale::{date_style, number_style};
use crate::foundation::measure::Currency;
use crate::words::texts::{Part, Table};
use crate::words::voice::{self, Voice};

#[wasm_bindgen(js_namespace = brimwrightTexts)]
extern "C" {
    /// The tag of the language.
    fn language() -> String;
    /// Its texts for the first screen.
    fn first() -> String;
    /// Its other texts; asked for once.
    fn rest() -> Promise;
}

thread_local! {
    static PLURAL: Intl::PluralRules =
        Intl::PluralRules::new(&Array::of1(&language().into()), &js_sys::Object::new());
}

/// Puts the language that the start script chose in force. Throws where its table is not one of
/// this build: the start script says so.
pub fn begin() {
    match Table::empty().with(&language(), Part::First, kept(first())) {
        Ok(texts) => put(texts),
        Err(error) => throw_str(&format!("The texts of the first screen: {error:?}.")),
    }
}

/// Fetches the texts of the other screens.
pub fn fetch_rest() -> JsFuture {
    rest().into()
}

/// Adds the texts of the other screens. Returns whether they could be had.
pub async fn add_rest(fetched: JsFuture) -> bool {
    let file = fetched.await.ok().and_then(|file| file.as_string());
    let texts = file.and_then(|file| voice::here().texts.with(&language(), Part::Rest, kept(file)).ok());
    let here = texts.is_some();
    texts.map(put);
    here
}

fn put(texts: Table) {
    voice::set(Voice {
        texts,
        numbers: number_style(Currency::USD),
        dates: OnceCell::new(),
        ask_dates: date_style,
        plural,
    });
}

/// The page keeps its texts as long as it lives.
fn kept(file: String) -> &'static str {
    Box::leak(file.into_boxed_str())
}

fn plural(number: &str) -> &'static str {
    let form = PLURAL.with(|rules| rules.select(js_sys::parse_float(number)));
    match String::from(form).as_str() {
        "zero" => "zero",
        "one" => "one",
        "two" => "two",
        "few" => "few",
        "many" => "many",
        _ => "other",
    }
}
