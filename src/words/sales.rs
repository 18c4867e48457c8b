//! What was sold: days, weeks, and why something does not count.

use super::dates::day;
use super::offer_errors::offer_error;
use super::reading::read_error;
use super::{Speaker, number};
use crate::book::{Book, Key, OfferId, Week};
use crate::drink::ledger::Ledger;
use crate::drink::sales::{Average, Unknown, Weekly, contribution_now};
use crate::exchange::{BadRow, TillError, Why};
use crate::foundation::measure::{Date, Exact, Money, ReadError};
use crate::say;

/// The week that begins on a Monday.
pub fn week(monday: Date) -> String {
    say!(sales::week_of, day = day(monday))
}

/// What is made on a day.
pub fn batch(on: Date) -> String {
    say!(sales::batch_of, day = day(on))
}

/// Why it is not known what an offer brings, and how to mend it.
pub fn unknown_sales(unknown: Unknown, book: &Book) -> String {
    match unknown {
        Unknown::NotOffered => say!(sales::not_on_menu).to_string(),
        Unknown::NoPrice => say!(sales::no_price_yet).to_string(),
        Unknown::NoWeekly => say!(sales::no_weekly_sales).to_string(),
        Unknown::Stuck(why) => [say!(sales::profit_not_known), &*offer_error(&why, book)].join(" "),
    }
}

/// How the usual week's contribution came about: the first sizes with their numbers.
pub fn weekly_working(book: &Book, ledger: &Ledger, weekly: &Weekly, speaker: &Speaker) -> String {
    let counted = book.offers().filter_map(|offer| Some((offer.weekly?, contribution_now(ledger, offer.id()).ok()?)));
    match added_up(counted.collect(), weekly.contribution, speaker) {
        Some(sum) => say!(sales::week_in_math, sum = sum),
        None => say!(sales::nothing_counted).to_string(),
    }
}

/// How the contribution of a week that was written down came about.
pub fn week_working(week: &Week, contribution: Money, speaker: &Speaker) -> String {
    let counted = week.sold.iter().map(|sold| (sold.units, sold.contribution));
    match added_up(counted.collect(), contribution, speaker) {
        Some(sum) => say!(sales::entered_week_in_math, sum = sum),
        None => say!(sales::nothing_entered).to_string(),
    }
}

/// The first two products and their sum with the rest. Returns `None` if there is nothing to add.
fn added_up(terms: Vec<(Exact, Money)>, sum: Money, speaker: &Speaker) -> Option<String> {
    let money = |money| speaker.money(money);
    let term = |(units, one): &(Exact, Money)| format!("{} × {}", speaker.number(*units), money(*one));
    let mut written: Vec<String> = terms.iter().take(2).map(term).collect();
    let more = terms.len().saturating_sub(written.len());
    if more > 0 {
        written.push(say!(sales::more_terms, count = number(more)));
    }
    (!written.is_empty()).then(|| format!("{} = {}", written.join(" + "), money(sum)))
}

/// The offers that are not counted. Returns an empty text if all are.
pub fn not_counted(weekly: &Weekly, book: &Book) -> String {
    let named = |(offer, unknown): &(OfferId, Unknown)| {
        let size = book.name(Key::Offer(*offer));
        match unknown {
            Unknown::NotOffered => say!(sales::size_not_on_menu, size = size),
            Unknown::NoPrice => say!(sales::size_without_price, size = size),
            Unknown::NoWeekly => say!(sales::size_without_sales, size = size),
            Unknown::Stuck(_) => say!(sales::size_stuck, size = size),
        }
    };
    let first: Vec<String> = weekly.unknown.iter().take(3).map(named).collect();
    match weekly.unknown.len().saturating_sub(first.len()) {
        0 if first.is_empty() => String::new(),
        0 => say!(sales::not_counted, sizes = first.join("; ")),
        more => say!(sales::not_counted_and_more, sizes = first.join("; "), more = number(more)),
    }
}

/// What the average of the last weeks is taken over.
pub fn weeks_averaged(average: &Average) -> String {
    let named = |weeks: &[Date]| weeks.iter().map(|monday| day(*monday)).collect::<Vec<_>>().join(", ");
    let (weeks, missing) = (&average.weeks, &average.missing);
    let mut said = vec![
        say!(sales::average_over, count = weeks.len(), weeks = named(weeks)),
        say!(sales::average_changes, sizes = average.offers),
        say!(sales::average_of_none_sold).to_string(),
    ];
    if !missing.is_empty() {
        said.push(say!(sales::average_skips, count = missing.len(), weeks = named(missing)));
    }
    said.join(" ")
}

/// The sentence for a file that is not a register's list.
pub fn till_error(error: TillError) -> String {
    match error {
        TillError::TooLarge => say!(sales::file_too_large),
        TillError::Empty => say!(sales::file_empty),
        TillError::NotText => say!(sales::file_not_text),
        TillError::NoColumns => say!(sales::file_without_columns),
        TillError::TooManyColumns => say!(sales::file_too_many_columns),
        TillError::OnlyHeads => say!(sales::file_without_rows),
        TillError::OpenQuote { line } => return say!(sales::file_open_quote, line = number(line)),
    }
    .to_string()
}

/// A row that is left out, with its line and why.
pub fn bad_row(row: &BadRow, book: &Book) -> String {
    say!(sales::row_skipped, line = number(row.line), row = shortened(&row.text), why = why(&row.why, book))
}

/// Most letters of a cell that a sentence repeats.
const QUOTED: usize = 60;

/// What a cell says, cut where it is long.
fn shortened(text: &str) -> String {
    match text.char_indices().nth(QUOTED) {
        Some((end, _)) => format!("{}…", text.get(..end).unwrap_or_default()),
        None => text.to_string(),
    }
}

fn why(why: &Why, book: &Book) -> String {
    match why {
        Why::TooShort => say!(sales::row_too_short).to_string(),
        Why::UnknownItem(item) if item.is_empty() => say!(sales::row_without_drink).to_string(),
        Why::UnknownItem(item) => say!(sales::row_of_unknown_drink, drink = shortened(item)),
        Why::UnknownSize { drink, size } if size.is_empty() => say!(sales::row_without_size, drink = drink),
        Why::UnknownSize { drink, size } => say!(sales::row_of_unknown_size, drink = drink, size = shortened(size)),
        Why::SeveralItems(item) => say!(sales::row_of_several, name = shortened(item)),
        Why::Units(ReadError::Negative) => say!(sales::row_below_zero).to_string(),
        Why::Units(ReadError::NotANumber { text }) if text.chars().count() > QUOTED => {
            say!(sales::row_not_a_number, text = shortened(text))
        }
        Why::Units(error) => read_error(error, "12"),
        Why::Day(text) if text.is_empty() => say!(sales::row_without_date).to_string(),
        Why::Day(text) => say!(sales::row_not_a_date, text = shortened(text)),
        Why::DayOpen(text) => say!(sales::row_of_two_dates, text = shortened(text)),
        Why::Unknown(unknown) => unknown_sales(*unknown, book),
        Why::TooLarge => say!(sales::row_too_large).to_string(),
    }
}

/// How many rows can be taken in and how many cannot.
pub fn to_take_in(good: usize, bad: usize) -> String {
    let skipped = (bad > 0).then(|| say!(sales::rows_to_skip, rows = bad));
    [Some(say!(sales::rows_ready, rows = good)), skipped].into_iter().flatten().collect::<Vec<_>>().join(" ")
}

/// What was taken in.
pub fn taken_in(good: usize, bad: usize) -> String {
    let skipped = (bad > 0).then(|| say!(sales::rows_skipped, rows = bad));
    let said = [Some(say!(sales::rows_imported, rows = good)), skipped, Some(say!(sales::undo_import).to_string())];
    said.into_iter().flatten().collect::<Vec<_>>().join(" ")
}
