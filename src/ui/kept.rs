//! What a person chose on a screen, kept for this visit of it: Back and loading the page anew bring it
//! again, and how far the screen was scrolled. Who goes to a screen anew finds it as at first.
//!
//! The start script keeps it, in the storage of the tab (`public/kept.js`).

use leptos::prelude::*;
use wasm_bindgen::prelude::wasm_bindgen;

#[wasm_bindgen(js_namespace = brimwrightVisit)]
extern "C" {
    /// The number of this visit.
    fn visit() -> f64;
    fn choice(name: &str) -> Option<String>;
    fn choose(visit: f64, name: &str, value: &str);
    /// The screen is drawn: it is scrolled to where it was, or to the top.
    pub fn settle();
    /// The address of the screen that the person came from, where there was one.
    pub fn from() -> Option<String>;
    /// Goes to an address: back, where the person came from there.
    pub fn back(address: &str);
}

/// A text that is kept under a name, which no other choice of its screen has; `first` before
/// anything is chosen.
pub fn text(name: &'static str, first: &str) -> RwSignal<String> {
    let kept = RwSignal::new(choice(name).unwrap_or_else(|| first.to_string()));
    keep(name, move || kept.get());
    kept
}

/// Whether something is chosen that is kept under a name.
pub fn flag(name: &'static str, first: bool) -> RwSignal<bool> {
    chosen(name, first, |is| is.to_string(), |text| text.parse().ok())
}

/// What is chosen and kept under a name, by the text that is written of it; `first` before anything
/// is chosen, and where the text does not read any more.
pub fn chosen<T: Copy + Send + Sync + 'static>(
    name: &'static str,
    first: T,
    write: fn(T) -> String,
    read: fn(&str) -> Option<T>,
) -> RwSignal<T> {
    let kept = RwSignal::new(choice(name).and_then(|text| read(&text)).unwrap_or(first));
    keep(name, move || write(kept.get()));
    kept
}

/// Keeps what the text becomes from here on.
fn keep(name: &'static str, text: impl Fn() -> String + 'static) {
    let visit = visit();
    let text: Box<dyn Fn() -> String> = Box::new(text);
    Effect::new(move |before: Option<String>| {
        let text = text();
        if before.is_some_and(|before| before != text) {
            choose(visit, name, &text);
        }
        text
    });
}
