//! What is chosen for this device and no book: languages, and how numbers and days are written.

use std::sync::Arc;

use leptos::prelude::*;
use leptos::task::spawn_local;
use wasm_bindgen_futures::JsFuture;

use crate::foundation::measure::{Exact, Money, Share};
use crate::say;
use crate::store::first_paint;
use crate::ui::density;
use crate::ui::fields::Choice;
use crate::ui::language::{crew_has_its_own, language, table};
use crate::ui::live::trouble;
use crate::ui::locale::language_name;
use crate::ui::parts::{Fold, is_wide};
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words;
use crate::words::texts::Part;
use crate::words::texts::keys::LANGUAGES;

/// Regions to choose from, by tags of language and country (BCP 47). The browser's own comes first,
/// whichever it is.
const REGIONS: [&str; 25] = [
    "en-US", "es-US", "en-CA", "fr-CA", "es-MX", "en-GB", "en-IE", "en-AU", "en-NZ", "de-DE", "de-AT", "de-CH",
    "fr-FR", "fr-BE", "it-IT", "es-ES", "pt-PT", "pt-BR", "nl-NL", "nl-BE", "sv-SE", "da-DK", "nb-NO", "fi-FI",
    "pl-PL",
];

/// What is chosen for this device and no book.
#[component]
pub fn ThisDevice() -> impl IntoView {
    let state = AppState::here();
    let not_here = RwSignal::new(chosen_and_not_here());
    let sample = move || {
        let price = Exact::new(123_450, 2);
        [
            state.money(Money::from_major(price)),
            state.percent(Share::from_fraction(Exact::new(73, 2))),
            words::day(today()),
        ]
        .join(" · ")
    };
    view! {
        <Fold name=say!(device::this_device) figure=Signal::stored(String::new()) open=is_wide()>
            <p class="about">{say!(device::about)}</p>
            <div class="fields">
                {choice(
                    say!(device::language),
                    say!(device::as_in_browser),
                    LANGUAGES,
                    first_paint::language(),
                    take_language(not_here, language_of_the_browser, first_paint::note_language),
                )}
                {crew_language(not_here, say!(device::same_language))}
                {choice(
                    say!(device::numbers_and_dates),
                    say!(device::as_in_browser),
                    &REGIONS,
                    first_paint::region(),
                    Box::new(|tag| note_and_load(tag, first_paint::note_region)),
                )}
                {density::choice()}
            </div>
            {trouble(move || Some(not_here.get()).filter(|sentence| !sentence.is_empty()))}
            <p class="about">{say!(device::written_like, sample = sample())}</p>
        </Fold>
    }
}

/// The language of the Counter, to be chosen there too: also by those who get no further.
pub fn counter_language() -> AnyView {
    let not_here = RwSignal::new(String::new());
    view! {
        <div class="fields">{crew_language(not_here, say!(device::owners_language))}</div>
        {trouble(move || Some(not_here.get()).filter(|sentence| !sentence.is_empty()))}
    }
    .into_any()
}

fn crew_language(not_here: RwSignal<String>, none: &'static str) -> AnyView {
    choice(
        say!(device::counter_language),
        none,
        LANGUAGES,
        first_paint::crew_language(),
        take_language(not_here, language, first_paint::note_crew_language),
    )
}

/// Puts a chosen tag in force; an empty one is none.
type Take = Box<dyn Fn(&str) + Send + Sync>;

/// A name as it begins an entry of a list: with a capital, where its letters have them.
fn capital(name: &str) -> String {
    let mut letters = name.chars();
    letters.next().map(|first| first.to_uppercase().chain(letters).collect()).unwrap_or_default()
}

/// A choice of a tag, or of none. It counts at once: the page is loaded again, with all that was
/// typed.
fn choice(
    label: &'static str,
    none: &'static str,
    tags: &[&'static str],
    chosen: Option<String>,
    take: Take,
) -> AnyView {
    let mut options = vec![(String::new(), none.to_string())];
    options.extend(tags.iter().map(|tag| ((*tag).to_string(), capital(&language_name(tag)))));
    let choose = Arc::new(move |tag: &str| {
        take(tag);
        Ok(())
    });
    view! { <Choice label options value=chosen.unwrap_or_default() choose /> }.into_any()
}

fn note_and_load(tag: &str, note: fn(Option<&str>)) {
    note(Some(tag).filter(|tag| !tag.is_empty()));
    // A page that cannot be loaded again goes on as it is.
    let _ = window().location().reload();
}

/// Takes a language once all its texts are here; until then the one before stays chosen, and `not_here` says
/// so. `none` is the language that is read where none is chosen.
fn take_language(not_here: RwSignal<String>, none: fn() -> String, note: fn(Option<&str>)) -> Take {
    Box::new(move |tag| {
        not_here.set(String::new());
        let wanted = if tag.is_empty() { none() } else { tag.to_string() };
        let parts = [Part::First, Part::Rest].map(|part| JsFuture::from(table(&wanted, part.name())));
        let tag = tag.to_string();
        spawn_local(async move {
            for part in parts {
                if part.await.is_err() {
                    let sentence = say!(device::language_not_here, language = language_name(&wanted));
                    // The screen may be left by now.
                    let _ = not_here.try_set(sentence);
                    return;
                }
            }
            note_and_load(&tag, note);
        });
    })
}

/// That a language is chosen whose texts are not here, such as after the browser cleared what it kept.
fn chosen_and_not_here() -> String {
    let owner = first_paint::language().filter(|tag| LANGUAGES.contains(&tag.as_str()) && *tag != language());
    let crew = first_paint::crew_language()
        .filter(|tag| LANGUAGES.contains(&tag.as_str()) && *tag != language() && !crew_has_its_own());
    let sentence = |tag: String| say!(device::language_not_here, language = language_name(&tag));
    owner.or(crew).map(sentence).unwrap_or_default()
}

/// The first of the browser's languages that there are texts of, by the rule of the start script.
fn language_of_the_browser() -> String {
    let base = |tag: &str| tag.split('-').next().unwrap_or_default().to_string();
    let wanted = window().navigator().languages();
    let nearest = wanted
        .iter()
        .filter_map(|wanted| wanted.as_string())
        .find_map(|wanted| LANGUAGES.iter().find(|tag| base(tag) == base(&wanted)));
    (*nearest.unwrap_or(&"en-US")).to_string()
}
