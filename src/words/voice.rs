//! The voice in force: the texts of one language, and how its readers write numbers.
//!
//! One person reads one language at a time, so the voice is kept here for each thread instead of
//! going through every function that says something. The app sets it before it draws; natively it
//! is American English unless a test sets another.

use std::cell::Cell;

use super::dates::When;
use super::texts::Table;
use crate::foundation::measure::NumberStyle;

/// The texts of one language, and how its readers write numbers.
#[derive(Clone, Debug)]
pub struct Voice {
    /// The texts.
    pub texts: Table,
    /// The signs of numbers; those of money are each book's own.
    pub numbers: NumberStyle,
    /// Writes days and times.
    pub when: fn(When) -> String,
    /// The rule of plural forms.
    pub plural: Plural,
}

thread_local! {
    static HERE: Cell<Option<&'static Voice>> = const { Cell::new(None) };
    static MIRRORED: Cell<bool> = const { Cell::new(false) };
}

/// The voice in force.
pub fn here() -> &'static Voice {
    HERE.get().unwrap_or_else(|| {
        let voice = Box::leak(Box::new(at_first()));
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

/// Says whether the letters of what is read run from right to left.
pub fn mirror(mirrored: bool) {
    MIRRORED.set(mirrored);
}

/// Whether they do: what is put into a sentence then keeps its own direction.
pub fn is_mirrored() -> bool {
    MIRRORED.get()
}

/// The plural form of a number in plain digits ("1", "1.0", "1200"), by its name in the Unicode CLDR.
pub type Plural = fn(&str) -> &'static str;

#[cfg(not(target_arch = "wasm32"))]
fn at_first() -> Voice {
    Voice {
        texts: Table::built_in("en-US"),
        numbers: NumberStyle::english(""),
        when: super::dates::in_english,
        plural: one_or_other,
    }
}

/// Without a text, until the app has fetched a table.
#[cfg(target_arch = "wasm32")]
fn at_first() -> Voice {
    Voice { texts: Table::empty(), numbers: NumberStyle::english(""), when: |_| String::new(), plural: one_or_other }
}

/// The rule of English, Spanish and German for whole numbers (Unicode CLDR).
pub fn one_or_other(number: &str) -> &'static str {
    if number == "1" { "one" } else { "other" }
}
