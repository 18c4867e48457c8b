//! What is chosen for this device and no book: languages, and how numbers and days are written.

use std::sync::Arc;

use leptos::prelude::*;

use crate::foundation::measure::{Exact, Money, Share};
use crate::say;
use crate::store::first_paint;
use crate::ui::fields::Choice;
use crate::ui::locale::language_name;
use crate::ui::parts::Section;
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words;
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
        <Section heading=say!(device::this_device) about=say!(device::about)>
            <div class="fields">
                {choice(
                    say!(device::language),
                    say!(device::as_in_browser),
                    LANGUAGES,
                    first_paint::language(),
                    first_paint::note_language,
                )}
                {choice(
                    say!(device::counter_language),
                    say!(device::same_language),
                    LANGUAGES,
                    first_paint::crew_language(),
                    first_paint::note_crew_language,
                )}
                {choice(
                    say!(device::numbers_and_dates),
                    say!(device::as_in_browser),
                    &REGIONS,
                    first_paint::region(),
                    first_paint::note_region,
                )}
            </div>
            <p class="about">{say!(device::written_like, sample = sample())}</p>
        </Section>
    }
}

/// A choice of a tag, or of none. It counts at once: the page is loaded again, with all that was
/// typed.
fn choice(
    label: &'static str,
    none: &'static str,
    tags: &[&'static str],
    chosen: Option<String>,
    note: fn(Option<&str>),
) -> AnyView {
    let mut options = vec![(String::new(), none.to_string())];
    options.extend(tags.iter().map(|tag| ((*tag).to_string(), language_name(tag))));
    let choose = Arc::new(move |tag: &str| {
        note(Some(tag).filter(|tag| !tag.is_empty()));
        // A page that cannot be loaded again goes on as it is.
        let _ = window().location().reload();
        Ok(())
    });
    view! { <Choice label options value=chosen.unwrap_or_default() choose /> }.into_any()
}
