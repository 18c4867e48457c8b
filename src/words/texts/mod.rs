//! Every text that a person reads, by its key.
//!
//! The tables stand in `public/texts`, a folder for each language, in the Fluent syntax. The build
//! writes an item for each key, so that [`say!`](crate::say) takes only keys that there are, with
//! exactly their placeholders. The app fetches the tables of one language; natively English is
//! built in.

mod compiled;
mod filling;
mod table;

pub use compiled::keys;
#[cfg(not(target_arch = "wasm32"))]
pub use compiled::{KEYS, TABLES};
pub use table::{Part, Table, TableError};

use super::Speaker;
use crate::foundation::measure::Exact;

/// A number as it is shown, and the plural form that it asks for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Number {
    pub(super) shown: String,
    pub(super) form: &'static str,
}

impl From<usize> for Number {
    fn from(count: usize) -> Number {
        Speaker::plain().counted(Exact::new(i64::try_from(count).unwrap_or(i64::MAX), 0))
    }
}

impl From<&usize> for Number {
    fn from(count: &usize) -> Number {
        Number::from(*count)
    }
}

impl From<&Number> for Number {
    fn from(number: &Number) -> Number {
        number.clone()
    }
}

/// What is filled into a text as it is.
#[derive(Clone, Copy, Debug)]
pub struct Text<'a>(pub(super) &'a str);

impl<'a, T: AsRef<str> + ?Sized> From<&'a T> for Text<'a> {
    fn from(text: &'a T) -> Text<'a> {
        Text(text.as_ref())
    }
}

/// Stands in for what is drawn within a sentence; see [`around`].
pub const HOLE: &str = "\u{fffc}";

/// What stands before and after the [`HOLE`] of a text.
pub fn around(said: &str) -> (String, String) {
    let (before, after) = said.split_once('\u{fffc}').unwrap_or((said, ""));
    (before.to_string(), after.to_string())
}

/// Says a text of the table: `say!(drinks::recipe_card)` is a `&'static str`, and
/// `say!(drinks::set_price, price = speaker.money(price))` a `String`.
///
/// A placeholder takes text. One that a plural form is chosen by takes a
/// [`Number`]: `speaker.counted(exact)` or a `usize`.
#[macro_export]
macro_rules! say {
    ($file:ident :: $key:ident $(,)?) => { $crate::words::texts::keys::$file::$key.say() };
    ($file:ident :: $key:ident, $($place:ident = $value:expr),+ $(,)?) => {
        $crate::words::texts::keys::$file::$key { $($place: ::std::convert::From::from(&$value)),+ }.say()
    };
}
