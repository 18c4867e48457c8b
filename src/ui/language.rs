//! The languages of the screens: the owner's, and the crew's, which may be another one. Their texts
//! are fetched by the start script.

use std::cell::{Cell, OnceCell};

use js_sys::{Array, Intl, Promise};
use wasm_bindgen::prelude::wasm_bindgen;
use wasm_bindgen::throw_str;
use wasm_bindgen_futures::JsFuture;

use super::locale::{date_style, number_style};
use crate::foundation::measure::Currency;
use crate::store::first_paint;
use crate::words::texts::keys::LANGUAGES;
use crate::words::texts::{Part, Table};
use crate::words::voice::{self, Voice};

#[wasm_bindgen(js_namespace = brimwrightTexts)]
extern "C" {
    /// The tag of the owner's language.
    fn language() -> String;
    /// Its texts for the first screen.
    fn first() -> String;
    /// One of the two tables of a language; fetched once.
    fn table(language: &str, part: &str) -> Promise;
}

thread_local! {
    static OWNER: Cell<Option<&'static Voice>> = const { Cell::new(None) };
    static CREW: Cell<Option<&'static Voice>> = const { Cell::new(None) };
    static PLURAL: OnceCell<Intl::PluralRules> = const { OnceCell::new() };
}

/// Who reads a screen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Reader {
    /// Whoever keeps the book.
    Owner,
    /// Whoever works at the counter.
    Crew,
}

/// Puts the language that the start script chose in force. Throws where its table is not one of
/// this build: the start script says so.
pub fn begin() {
    match Table::empty().with(&language(), Part::First, kept(first())) {
        Ok(texts) => keep(&OWNER, texts, plural),
        Err(error) => throw_str(&format!("The texts of the first screen: {error:?}.")),
    }
    speak_to(Reader::Owner);
}

/// The texts of the other screens on their way, and those of the crew's language.
pub struct Rest {
    owner: JsFuture,
    crew: Option<(String, JsFuture, JsFuture)>,
}

/// Fetches the texts of the other screens.
pub fn fetch_rest() -> Rest {
    let fetched = |language: &str, part: Part| JsFuture::from(table(language, part.name()));
    let crew = first_paint::crew_language().filter(|tag| *tag != language() && LANGUAGES.contains(&tag.as_str()));
    let crew = crew.map(|tag| {
        let (first, rest) = (fetched(&tag, Part::First), fetched(&tag, Part::Rest));
        (tag, first, rest)
    });
    Rest { owner: fetched(&language(), Part::Rest), crew }
}

/// Adds the texts of the other screens. Returns whether those of the owner's language could be had;
/// without those of the crew's, the crew reads the owner's.
pub async fn add_rest(fetched: Rest) -> bool {
    let Some(texts) = with(voice::here().texts.clone(), &language(), Part::Rest, fetched.owner).await else {
        return false;
    };
    keep(&OWNER, texts, plural);
    speak_to(Reader::Owner);
    if let Some((tag, first, rest)) = fetched.crew
        && let Some(texts) = with(Table::empty(), &tag, Part::First, first).await
        && let Some(texts) = with(texts, &tag, Part::Rest, rest).await
    {
        keep(&CREW, texts, voice::one_or_other);
    }
    true
}

/// Puts the language of a reader in force. What was drawn before keeps its own.
pub fn speak_to(reader: Reader) {
    let crew = CREW.get().filter(|_| reader == Reader::Crew);
    if let Some(voice) = crew.or(OWNER.get()) {
        voice::put(voice);
    }
}

/// Whether the crew reads another language than the owner.
pub fn crew_has_its_own() -> bool {
    CREW.get().is_some()
}

async fn with(table: Table, language: &str, part: Part, fetched: JsFuture) -> Option<Table> {
    let file = fetched.await.ok()?.as_string()?;
    table.with(language, part, kept(file)).ok()
}

fn keep(of: &'static std::thread::LocalKey<Cell<Option<&'static Voice>>>, texts: Table, plural: voice::Plural) {
    let voice =
        Voice { texts, numbers: number_style(Currency::USD), dates: OnceCell::new(), ask_dates: date_style, plural };
    of.set(Some(Box::leak(Box::new(voice))));
}

/// The page keeps its texts as long as it lives.
fn kept(file: String) -> &'static str {
    Box::leak(file.into_boxed_str())
}

fn plural(number: &str) -> &'static str {
    let rules = || Intl::PluralRules::new(&Array::of1(&language().into()), &js_sys::Object::new());
    let form = PLURAL.with(|kept| kept.get_or_init(rules).select(js_sys::parse_float(number)));
    match String::from(form).as_str() {
        "zero" => "zero",
        "one" => "one",
        "two" => "two",
        "few" => "few",
        "many" => "many",
        _ => "other",
    }
}
