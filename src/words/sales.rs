//! What was sold: days, weeks, and why something does not count.

use super::Speaker;
use super::dates::day;
use super::offer_errors::offer_error;
use super::reading::read_error;
use crate::book::{Book, Key, OfferId, Week};
use crate::drink::ledger::Ledger;
use crate::drink::sales::{Average, Unknown, Weekly, contribution_now};
use crate::exchange::{BadRow, TillError, Why};
use crate::foundation::measure::{Date, Exact, Money, ReadError};

/// The week that begins on a Monday.
pub fn week(monday: Date) -> String {
    format!("Week of {}", day(monday))
}

/// What is made on a day.
pub fn batch(on: Date) -> String {
    format!("Batch of {}", day(on))
}

/// Why it is not known what an offer brings, and how to mend it.
pub fn unknown_sales(unknown: Unknown, book: &Book) -> String {
    match unknown {
        Unknown::NotOffered => "This size is not on the menu. Add it to the drink first.".to_string(),
        Unknown::NoPrice => {
            "This size has no price yet, so nobody knows what one brings. Give it a menu price first.".to_string()
        }
        Unknown::NoWeekly => "How many are usually sold is not known. Type it.".to_string(),
        Unknown::Stuck(why) => format!("What one brings cannot be computed. {}", offer_error(&why, book)),
    }
}

/// How the usual week's contribution came about: the first sizes with their numbers.
pub fn weekly_working(book: &Book, ledger: &Ledger, weekly: &Weekly, speaker: &Speaker) -> String {
    let counted = book.offers().filter_map(|offer| Some((offer.weekly?, contribution_now(ledger, offer.id()).ok()?)));
    match added_up(counted.collect(), weekly.contribution, speaker) {
        Some(sum) => format!("The number sold times what one contributes, added up: {sum}."),
        None => "Nothing is counted yet.".to_string(),
    }
}

/// How the contribution of a week that was written down came about.
pub fn week_working(week: &Week, contribution: Money, speaker: &Speaker) -> String {
    let counted = week.sold.iter().map(|sold| (sold.units, sold.contribution));
    match added_up(counted.collect(), contribution, speaker) {
        Some(sum) => format!("The number sold times what one contributed when it was written down: {sum}."),
        None => "Nothing is written down yet.".to_string(),
    }
}

/// The first two products and their sum with the rest. Returns `None` if there is nothing to add.
fn added_up(terms: Vec<(Exact, Money)>, sum: Money, speaker: &Speaker) -> Option<String> {
    let money = |money| speaker.money(money);
    let term = |(units, one): &(Exact, Money)| format!("{} × {}", speaker.number(*units), money(*one));
    let first: Vec<String> = terms.iter().take(2).map(term).collect();
    let more = match terms.len().saturating_sub(first.len()) {
        0 => String::new(),
        count => format!(" + {count} more"),
    };
    (!first.is_empty()).then(|| format!("{}{more} = {}", first.join(" + "), money(sum)))
}

/// The offers that are not counted. Returns an empty text if all are.
pub fn not_counted(weekly: &Weekly, book: &Book) -> String {
    let because = |unknown: &Unknown| match unknown {
        Unknown::NotOffered => "not on the menu",
        Unknown::NoPrice => "no price yet",
        Unknown::NoWeekly => "number not known",
        Unknown::Stuck(_) => "cannot be computed",
    };
    let named =
        |(offer, unknown): &(OfferId, Unknown)| format!("{} ({})", book.name(Key::Offer(*offer)), because(unknown));
    let first: Vec<String> = weekly.unknown.iter().take(3).map(named).collect();
    match weekly.unknown.len().saturating_sub(first.len()) {
        0 if first.is_empty() => String::new(),
        0 => format!("Not counted: {}.", first.join("; ")),
        more => format!("Not counted: {}; and {more} more.", first.join("; ")),
    }
}

/// What the average of the last weeks is taken over.
pub fn weeks_averaged(average: &Average) -> String {
    let of = |weeks: &[Date]| weeks.iter().map(|monday| day(*monday)).collect::<Vec<_>>().join(", ");
    let weeks = match average.weeks.len() {
        1 => "the week".to_string(),
        count => format!("the {count} weeks"),
    };
    let missing = match average.missing.as_slice() {
        [] => String::new(),
        [one] => format!(" Nobody wrote down the week of {}: it does not count.", day(*one)),
        several => format!(" Nobody wrote down the weeks of {}: they do not count.", of(several)),
    };
    format!(
        "The average of {weeks} of {} sets {}. One that is missing in a week counts as none sold there; one that is in none of them stays as it is.{missing}",
        of(&average.weeks),
        sizes(average.offers)
    )
}

fn sizes(count: usize) -> String {
    match count {
        1 => "1 size".to_string(),
        count => format!("{count} sizes"),
    }
}

/// The sentence for a file that is not a till's list.
pub fn till_error(error: TillError) -> String {
    match error {
        TillError::TooLarge => "The file is larger than 10 MB. Save fewer weeks at a time.".to_string(),
        TillError::Empty => "The file is empty. Choose another.".to_string(),
        TillError::NotText => {
            "The file is not text in UTF-8. Save it from the till or a spreadsheet as CSV in UTF-8.".to_string()
        }
        TillError::NoColumns => {
            "The file has no columns: no comma, semicolon or tab stands in its first line. Save the list as CSV."
                .to_string()
        }
        TillError::TooManyColumns => {
            "The file has more than 200 columns. Save only those for drink, size, number and day.".to_string()
        }
        TillError::OnlyHeads => "The file has the heads of columns and nothing under them. Choose another.".to_string(),
        TillError::OpenQuote { line } => {
            format!(
                "A quotation mark in the row that begins on line {line} is never closed. Save the list as CSV anew."
            )
        }
    }
}

/// A row that is left out, with its line and why.
pub fn bad_row(row: &BadRow, book: &Book) -> String {
    format!("Line {}: {}. {}", row.line, quoted(&row.text), why(&row.why, book))
}

/// Most letters of a cell that a sentence repeats.
const QUOTED: usize = 60;

/// What a cell says, in quotation marks.
fn quoted(text: &str) -> String {
    match text.char_indices().nth(QUOTED) {
        Some((end, _)) => format!("“{}…”", text.get(..end).unwrap_or_default()),
        None => format!("“{text}”"),
    }
}

fn why(why: &Why, book: &Book) -> String {
    match why {
        Why::TooShort => "It has fewer cells than there are columns.".to_string(),
        Why::UnknownItem(item) if item.is_empty() => "It names no drink.".to_string(),
        Why::UnknownItem(item) => format!("No drink on the menu is called {}.", quoted(item)),
        Why::UnknownSize { drink, size } if size.is_empty() => format!("It does not say which size of {drink}."),
        Why::UnknownSize { drink, size } => format!("{drink} is not sold in {}.", quoted(size)),
        Why::SeveralItems(item) => {
            format!("More than one drink and size is called {}. Give one another name.", quoted(item))
        }
        Why::Units(ReadError::Negative) => {
            "The number is below zero, as for returns. Take returns off what was sold, in the list.".to_string()
        }
        Why::Units(ReadError::NotANumber { text }) if text.chars().count() > QUOTED => {
            format!("{} is not a number. Type digits, such as 12.", quoted(text))
        }
        Why::Units(error) => read_error(error, "12"),
        Why::Day(text) if text.is_empty() => "It has no day.".to_string(),
        Why::Day(text) => {
            format!("{} is no day of the calendar, such as 2026-11-23.", quoted(text))
        }
        Why::DayOpen(text) => format!("{} could be two days. Choose which number is the day.", quoted(text)),
        Why::Unknown(unknown) => unknown_sales(*unknown, book),
        Why::TooLarge => "The week's number has more than nine digits. Check for a digit too many.".to_string(),
    }
}

fn rows(count: usize) -> String {
    match count {
        1 => "1 row".to_string(),
        count => format!("{count} rows"),
    }
}

/// How many rows can be taken in and how many cannot.
pub fn to_take_in(good: usize, bad: usize) -> String {
    match (good, bad) {
        (0, bad) => format!("No row can be taken in; {} cannot:", rows(bad)),
        (good, 0) => format!("{} can be taken in", rows(good)),
        (good, bad) => format!("{} can be taken in; {} will be left out:", rows(good), rows(bad)),
    }
}

/// What was taken in.
pub fn taken_in(good: usize, bad: usize) -> String {
    let left = match bad {
        0 => String::new(),
        bad => format!(" {} left out.", rows(bad)),
    };
    format!("{} taken in.{left} Undo takes them out again.", rows(good))
}
