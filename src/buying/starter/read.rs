//! Reads the starter list, which may be cut off, spoilt, or something else.
//!
//! The first line names the format and says how many lines follow. Each of these has its values between tabs; a
//! figure has its basis behind it ("0.89 sr28"), an allergen that depends on the product a question mark.

use super::{Has, LANGUAGES, List, Offered, Row};
use crate::book::{Allergen, Basis, Produce, Stage};
use crate::foundation::measure::{Density, Exact, Mass, Share, TYPED_PLACES};

/// What the first line begins with.
const FORMAT: &str = "brimwright starter 1 ";
/// The longest list that is read, in bytes: some five times what it has.
const LONGEST: usize = 200_000;
/// The longest text in it, in letters.
const LONGEST_TEXT: usize = 60;
/// How many values a line has.
const VALUES: usize = 16;

/// Why a list is not read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Spoilt {
    /// It is something else, or longer than any list.
    OtherFile,
    /// It does not have as many lines as it says.
    Cut,
    /// A line that cannot be, counted from 1 behind the first.
    Line(usize),
}

impl List {
    /// Reads the whole list, or nothing of it.
    ///
    /// # Errors
    /// [`Spoilt`] says why it is none.
    pub fn read(text: &str) -> Result<List, Spoilt> {
        let (first, rest) = text.split_once('\n').filter(|_| text.len() <= LONGEST).ok_or(Spoilt::OtherFile)?;
        let count = first.strip_prefix(FORMAT).ok_or(Spoilt::OtherFile)?;
        let rest = rest.strip_suffix('\n').ok_or(Spoilt::Cut)?;
        if count != rest.split('\n').count().to_string() {
            return Err(Spoilt::Cut);
        }
        let mut rows: Vec<Row> = Vec::new();
        for (number, line) in (1..).zip(rest.split('\n')) {
            let new = row(line).filter(|new| rows.iter().all(|other| are_apart(other, new)));
            rows.push(new.ok_or(Spoilt::Line(number))?);
        }
        Ok(List { rows })
    }
}

/// Two rows have not the same key, and no name in common in any one language.
fn are_apart(one: &Row, other: &Row) -> bool {
    one.key != other.key && one.names.iter().zip(&other.names).all(|(one, other)| one != other)
}

fn row(line: &str) -> Option<Row> {
    let values: Vec<&str> = line.split('\t').collect();
    let values: [&str; VALUES] = values.try_into().ok()?;
    let [key, english, spanish, german, french, label, produce, ndb_no, ..] = values;
    let [.., trim, piece, density, juice, press, case, allergens, stage] = values;
    let names = [english, spanish, german, french];
    let is_key = |sign: u8| sign.is_ascii_lowercase() || sign.is_ascii_digit() || sign == b'_';
    let is_number = ndb_no.is_empty() || (ndb_no.len() == 5 && ndb_no.bytes().all(|digit| digit.is_ascii_digit()));
    let texts = [key, label, case].into_iter().chain(names);
    if key.is_empty() || !key.bytes().all(is_key) || !is_number || !texts.clone().all(is_text) {
        return None;
    }
    if names.iter().any(|name| name.is_empty()) {
        return None;
    }
    let row = Row {
        key: key.to_string(),
        names: names.map(str::to_string),
        label: label.to_string(),
        produce: optional(produce, |text| named(Produce::ALL, Produce::stored_name, text))?,
        ndb_no: ndb_no.to_string(),
        trim_yield: optional(trim, |text| figure(text).and_then(|(number, basis)| Some((share(number)?, basis))))?,
        piece_weight: optional(piece, |text| {
            let (number, basis) = figure(text)?;
            number.is_positive().then_some((Mass::from_grams(number), basis))
        })?,
        density: optional(density, |text| {
            let (rest, has) = text.rsplit_once(' ')?;
            let (number, basis) = figure(rest)?;
            Some((dense(number)?, basis, what_has(has)?))
        })?,
        juice_density: optional(juice, |text| figure(text).and_then(|(number, basis)| Some((dense(number)?, basis))))?,
        press_yield: optional(press, range)?,
        case: case.to_string(),
        allergens: offered(allergens)?,
        stage: named(Stage::ALL, Stage::stored_name, stage)?,
    };
    is_whole(&row).then_some(row)
}

/// What is from SR28 has a number there; a piece as bought was computed by the trim yield; what has a juice yield
/// has a density of its juice.
fn is_whole(row: &Row) -> bool {
    let is_from = |basis: Option<Basis>| basis == Some(Basis::Sr28);
    let sr28 = is_from(row.trim_yield.map(|(_, basis)| basis))
        || is_from(row.piece_weight.map(|(_, basis)| basis))
        || is_from(row.density.map(|(_, basis, _)| basis));
    (!sr28 || !row.ndb_no.is_empty())
        && (row.piece_weight.is_none() || row.trim_yield.is_some())
        && row.press_yield.is_some() == row.juice_density.is_some()
}

/// Letters of a name: not many, and no signs that steer a screen.
fn is_text(text: &str) -> bool {
    text.chars().count() <= LONGEST_TEXT && text.trim() == text && !text.chars().any(char::is_control)
}

/// A value that may be left out; the outer `None` says that it cannot be.
fn optional<T>(text: &str, read: impl FnOnce(&str) -> Option<T>) -> Option<Option<T>> {
    if text.is_empty() { Some(None) } else { read(text).map(Some) }
}

/// The value that is stored by this name.
fn named<T: Copy>(all: &[T], stored_name: impl Fn(T) -> &'static str, text: &str) -> Option<T> {
    all.iter().copied().find(|value| stored_name(*value) == text)
}

/// A number with its basis.
fn figure(text: &str) -> Option<(Exact, Basis)> {
    let (number, basis) = text.split_once(' ')?;
    let number = Exact::from_plain(number, TYPED_PLACES)?;
    Some((number, named(Basis::ALL, Basis::stored_name, basis)?))
}

/// A share above 0 and up to 1.
fn share(number: Exact) -> Option<Share> {
    (number.is_positive() && number <= Exact::ONE).then(|| Share::from_fraction(number))
}

/// The density of food: from a fifth of that of water, as of loose leaves, to twice that.
fn dense(number: Exact) -> Option<Density> {
    let (low, high) = (Exact::new(2, 1), Exact::new(2, 0));
    (low <= number && number <= high).then(|| Density::from_grams_per_millilitre(number))
}

fn what_has(text: &str) -> Option<Has> {
    match text {
        "liquid" => Some(Has::Liquid),
        "puree" => Some(Has::Puree),
        "bulk" => Some(Has::Bulk),
        _ => None,
    }
}

/// A lower and a higher share, with their basis.
fn range(text: &str) -> Option<(Share, Share, Basis)> {
    let (low, rest) = text.split_once(' ')?;
    let low = share(Exact::from_plain(low, TYPED_PLACES)?)?;
    let (high, basis) = figure(rest)?;
    let high = share(high)?;
    (low < high).then_some((low, high, basis))
}

/// The allergens between semicolons, each at most once and in their order.
fn offered(text: &str) -> Option<Vec<Offered>> {
    if text.is_empty() {
        return Some(Vec::new());
    }
    let all: Vec<Offered> = text.split(';').map(one_offered).collect::<Option<_>>()?;
    let rising = all.iter().zip(all.iter().skip(1)).all(|(one, next)| one.allergen < next.allergen);
    rising.then_some(all)
}

fn one_offered(text: &str) -> Option<Offered> {
    let (name, which) = match text.split_once(" (") {
        Some((name, which)) => (name, which.strip_suffix(')').filter(|which| !which.is_empty() && is_text(which))?),
        None => (text, ""),
    };
    let allergen = named(Allergen::ALL, Allergen::stored_name, name.trim_end_matches('?'))?;
    Some(Offered { allergen, is_certain: !name.ends_with('?'), which: which.to_string() })
}

/// Every language has its place among the names of a line.
const _: () = assert!(LANGUAGES.len() == 4);
