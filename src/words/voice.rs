//! The voice in force: the texts of one language, and how its readers write numbers.
//!
//! One person reads one language at a time, so the voice is kept here for each thread instead of
//! going through every function that says something. The app sets it before it draws; natively it
//! is American English unless a test sets another.

use std::cell::{Cell, OnceCell};

use super::dates::DateStyle;
use super::texts::Table;
use crate::foundation::measure::NumberStyle;

/// The texts of one language, and how its readers write numbers.
#[derive(Clone, Debug)]
pub struct Voice {
    /// The texts.
    pub texts: Table,
    /// The signs of numbers; those of money are each book's own.
    pub numbers: NumberStyle,
    /// How days and times are written, once it was asked for.
    pub dates: OnceCell<DateStyle>,
    /// Says how days and times are written.
    pub ask_dates: fn() -> DateStyle,
    /// The rule of plural forms.
    pub plural: Plural,
}

thread_local! {
    static HERE: Cell<Option<&'static Voice>> = const { Cell::new(None) };
}

/// The voice in force.
pub fn here() -> &'static Voice {
    HERE.get().unwrap_or_else(|| {
        let voice = Box::leak(Box::new(Voice::built_in()));
        HERE.set(Some(voice));
        voice
    })
}

/// Puts a voice in force. It is kept for good, since its texts are kept by what was said.
pub fn set(voice: Voice) {
    put(Box::leak(Box::new(voice)));
}

/// Puts a voice in force that is kept already.
pub fn put(voice: &'static Voice) {
    HERE.set(Some(voice));
}

/// The plural form of a number in plain digits ("1", "1.0", "1200"), by its name in the Unicode CLDR.
pub type Plural = fn(&str) -> &'static str;

impl Voice {
    /// How days and times are written.
    pub fn dates(&self) -> &DateStyle {
        self.dates.get_or_init(self.ask_dates)
    }

    /// American English natively; in the app without a text, until its table is fetched.
    fn built_in() -> Voice {
        #[cfg(not(target_arch = "wasm32"))]
        let texts = Table::built_in("en-US");
        #[cfg(target_arch = "wasm32")]
        let texts = Table::empty();
        Voice {
            texts,
            numbers: NumberStyle::english(""),
            dates: OnceCell::new(),
            ask_dates: DateStyle::english,
            plural: one_or_other,
        }
    }
}

/// The rule of English, Spanish and German for whole numbers (Unicode CLDR).
pub fn one_or_other(number: &str) -> &'static str {
    if number == "1" { "one" } else { "other" }
}
