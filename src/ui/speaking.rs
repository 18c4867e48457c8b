//! All texts of the owner's language and of the crew's, and what the browser knows of the language.

use std::pin::Pin;

use js_sys::Promise;
use wasm_bindgen::prelude::wasm_bindgen;
use wasm_bindgen_futures::JsFuture;

use super::language::{Reader, keep, kept, language, speak_to, table};
use super::locale::{number_style, said, said_to_crew};
use crate::foundation::measure::Currency;
use crate::store::first_paint;
use crate::words::texts::keys::LANGUAGES;
use crate::words::texts::{Part, Table};
use crate::words::voice::{self, Plural, Voice};

/// Adds the texts of the other screens. Gives whether those of the owner's language could be had;
/// without those of the crew's, the crew reads the owner's.
pub fn add_rest() -> Pin<Box<dyn Future<Output = bool>>> {
    Box::pin(async {
        let crew = first_paint::crew_language().filter(|tag| *tag != language() && LANGUAGES.contains(&tag.as_str()));
        // All are on their way before the first is waited for.
        let crew = crew.map(|tag| (table(&tag, Part::First.name()), table(&tag, Part::Rest.name()), tag));
        let rest = table(&language(), Part::Rest.name());
        let Some(texts) = with(voice::here().texts.clone(), &language(), Part::Rest, rest).await else {
            return false;
        };
        speaks(Reader::Owner, &language(), texts, plural);
        if let Some((first, rest, tag)) = crew
            && let Some(texts) = with(Table::empty(), &tag, Part::First, first).await
            && let Some(texts) = with(texts, &tag, Part::Rest, rest).await
        {
            speaks(Reader::Crew, &tag, texts, voice::one_or_other);
        }
        speak_to(Reader::Owner);
        true
    })
}

fn speaks(reader: Reader, tag: &str, texts: Table, plural: Plural) {
    let when = match reader {
        Reader::Owner => said,
        Reader::Crew => said_to_crew,
    };
    keep(reader, tag, Voice { texts, numbers: number_style(Currency::USD), when, plural });
}

async fn with(to: Table, language: &str, part: Part, fetched: Promise) -> Option<Table> {
    let file = JsFuture::from(fetched).await.ok()?.as_string()?;
    to.with(language, part, kept(file)).ok()
}

#[wasm_bindgen(js_namespace = brimwrightIntl)]
extern "C" {
    /// The plural form of a number in a language.
    #[wasm_bindgen(js_name = plural)]
    fn form(language: &str, number: &str) -> String;
}

fn plural(number: &str) -> &'static str {
    match form(&language(), number).as_str() {
        "zero" => "zero",
        "one" => "one",
        "two" => "two",
        "few" => "few",
        "many" => "many",
        _ => "other",
    }
}
