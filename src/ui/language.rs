//! The language of the screens: the owner's, or the crew's where it is another one. The start script
//! fetches the texts; what comes after the first screen is in `speaking`.

use std::cell::Cell;

use js_sys::Promise;
use wasm_bindgen::prelude::wasm_bindgen;
use wasm_bindgen::throw_str;

use super::locale::number_style;
use crate::foundation::measure::Currency;
use crate::words::texts::{Part, Table};
use crate::words::voice::{self, Voice};

#[wasm_bindgen]
extern "C" {
    /// Says in which language the page is read from here on; whether its letters run from right to left.
    #[wasm_bindgen(js_name = brimwrightReadIn)]
    fn read_in(language: &str) -> bool;
}

#[wasm_bindgen(js_namespace = brimwrightTexts)]
extern "C" {
    /// The tag of the owner's language.
    pub fn language() -> String;
    /// Its texts for the first screen.
    fn first() -> String;
    /// One of the two tables of a language; fetched once.
    pub fn table(language: &str, part: &str) -> Promise;
}

thread_local! {
    static OWNER: Kept = const { Cell::new(None) };
    static CREW: Kept = const { Cell::new(None) };
}

/// The tag of a language and its voice, once its texts are here.
type Kept = Cell<Option<(&'static str, &'static Voice)>>;

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
    let Ok(texts) = Table::empty().with(&language(), Part::First, kept(first())) else {
        throw_str("The texts of the first screen are not of this build.")
    };
    // The first screen says no day and no time.
    let first =
        Voice { texts, numbers: number_style(Currency::USD), when: |_| String::new(), plural: voice::one_or_other };
    keep(Reader::Owner, &language(), first);
    speak_to(Reader::Owner);
}

/// Keeps the voice that speaks to a reader, with the tag of its language.
pub fn keep(reader: Reader, tag: &str, voice: Voice) {
    let kept: (&'static str, &'static Voice) = (kept(tag.to_string()), Box::leak(Box::new(voice)));
    match reader {
        Reader::Owner => OWNER.set(Some(kept)),
        Reader::Crew => CREW.set(Some(kept)),
    }
}

/// Puts the language of a reader in force. What was drawn before keeps its own.
pub fn speak_to(reader: Reader) {
    let crew = CREW.get().filter(|_| reader == Reader::Crew);
    if let Some((tag, voice)) = crew.or(OWNER.get()) {
        voice::put(voice);
        voice::mirror(read_in(tag));
    }
}

/// Whether the crew reads another language than the owner.
pub fn crew_has_its_own() -> bool {
    CREW.get().is_some()
}

/// The page keeps its texts as long as it lives.
pub fn kept(file: String) -> &'static str {
    Box::leak(file.into_boxed_str())
}
