//! Restore points, deleted books and lost ones.

use super::{day, number, short_day};
use crate::backup::restore_points::{BringBackError, DAYS, DELETED_DAYS, MOST_BYTES, POINTS, Point, Why};
use crate::book::Book;
use crate::foundation::measure::Date;
use crate::say;
use crate::store::Fault;

/// Said where there are no points yet.
pub fn none_yet() -> &'static str {
    say!(book::no_points_yet)
}

/// Said where a point is asked for that had to go in the meantime.
pub fn went() -> &'static str {
    say!(book::point_gone)
}

/// Said before a book is deleted.
pub fn before_deleting(name: Option<&str>) -> String {
    let days = days(DELETED_DAYS);
    match name {
        Some(name) => say!(first::book_kept_days, book = name, days = days),
        None => say!(first::damaged_book_kept_days, days = days),
    }
}

/// Said of a book that was to be opened and is gone.
pub fn deleted_elsewhere() -> &'static str {
    say!(first::deleted_in_other_tab)
}

/// What a point was made before.
pub fn made_before(why: Why) -> &'static str {
    match why {
        Why::FirstChange => say!(book::before_first_change),
        Why::Import => say!(book::before_import),
        Why::Merge => say!(book::before_merge),
        Why::Adoption => say!(book::before_scenario),
        Why::Yields => say!(book::before_yields),
        Why::Restore => say!(book::before_restore),
        Why::Deletion => say!(book::before_deletion),
    }
}

/// How long points are kept.
pub fn kept() -> String {
    let megabytes = usize::try_from(MOST_BYTES / 1_000_000).unwrap_or_default();
    say!(book::points_kept, days = days(DAYS), points = number(POINTS), megabytes = number(megabytes))
}

/// What a point holds: "14 drinks, 45 ingredients, 102 kB".
pub fn holds(point: &Point) -> String {
    let kilobytes = usize::try_from(point.bytes.div_ceil(1000)).unwrap_or(usize::MAX);
    [counts(point.drinks, point.ingredients), say!(book::point_size, kilobytes = number(kilobytes))].join(", ")
}

/// "14 drinks, 45 ingredients".
fn counts(drinks: usize, ingredients: usize) -> String {
    [say!(common::book_holds_drinks, drinks = drinks), say!(book::point_ingredients, ingredients = ingredients)]
        .join(", ")
}

/// That older points had to go for this one. Returns `None` if none had to.
pub fn made_room(point: &Point) -> Option<String> {
    (point.made_room > 0).then(|| say!(book::point_made_room, points = point.made_room))
}

/// That there is no point where one should have been made.
pub fn not_made(why: Why, fault: &Fault) -> String {
    let not_made = match why {
        Why::FirstChange => say!(book::no_point_first_change),
        Why::Import => say!(book::no_point_import),
        Why::Merge => say!(book::no_point_merge),
        Why::Adoption => say!(book::no_point_scenario),
        Why::Yields => say!(book::no_point_yields),
        Why::Restore => say!(book::no_point_restore),
        Why::Deletion => say!(book::no_point_deletion),
    };
    let then = match fault {
        Fault::Full => say!(book::no_point_no_room),
        _ => say!(book::no_point_browser),
    };
    [not_made, then].join(" ")
}

/// When a book was deleted, and until when it is kept.
pub fn deleted(point: &Point) -> String {
    let (on, until) = (point.at.day, point.at.day.plus_days(DELETED_DAYS));
    say!(book::deleted_until, deleted = short_day(on), until = day(until))
}

/// The name of a deleted book.
pub fn deleted_name(point: &Point) -> &str {
    if point.name.is_empty() { say!(first::damaged_book) } else { &point.name }
}

/// Why a deleted book was not brought back.
pub fn bring_back_error(error: &BringBackError) -> &'static str {
    match error {
        BringBackError::Stored(Fault::Gone) => say!(book::deleted_gone),
        BringBackError::Stored(Fault::Behind) => say!(book::deleted_back),
        BringBackError::Stored(Fault::Full) => say!(book::not_back_no_room),
        BringBackError::Stored(_) => say!(book::not_back_browser),
        BringBackError::NotWhole(_) => say!(book::deleted_not_whole),
    }
}

/// That the browser removed books: names them as far as they are known.
pub fn removed(names: &[String]) -> String {
    let named: Vec<&str> = names.iter().filter(|name| !name.is_empty()).map(String::as_str).collect();
    if named.is_empty() {
        say!(first::books_removed).to_string()
    } else {
        say!(first::named_books_removed, books = named.join(", "))
    }
}

/// What of a book could be read.
pub fn whole(book: &Book) -> String {
    say!(book::book_contents, contents = counts(book.drinks().count(), book.ingredients().count()))
}

fn days(days: i32) -> String {
    number(usize::try_from(days).unwrap_or_default())
}

/// A day as it stands beside a point: with its year where that is another one.
pub fn on_day(on: Date, today: Date) -> String {
    if on.parts().0 == today.parts().0 { short_day(on) } else { day(on) }
}
