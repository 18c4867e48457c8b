//! Restore points, deleted books and lost ones.

use super::{day, short_day};
use crate::backup::restore_points::{BringBackError, DAYS, DELETED_DAYS, MOST_BYTES, POINTS, Point, Why};
use crate::book::Book;
use crate::foundation::measure::Date;
use crate::store::Fault;

/// Said where there are no points yet.
pub const NONE_YET: &str = "None yet. The first change of a day makes one.";

/// Said where a point is asked for that had to go in the meantime.
pub const WENT: &str = "This restore point is not kept any more. Choose another.";

/// Said before a book is deleted.
pub fn before_deleting(name: Option<&str>) -> String {
    let book = name.map_or("It".to_string(), |name| format!("“{name}”"));
    format!("{book} is kept under Deleted books for 30 days. Save it as a file to keep it longer.")
}

/// Said of a book that was to be opened and is gone.
pub const DELETED_ELSEWHERE: &str = "That book was deleted in another tab. Look for it under Deleted books.";

/// What there is to do about books that the browser removed.
const WAYS_BACK: &str = "Open your last saved file, or start again.";

/// What a point was made before.
pub fn made_before(why: Why) -> &'static str {
    match why {
        Why::FirstChange => "Before the first change that day",
        Why::Import => "Before an import",
        Why::Merge => "Before changes from two tabs were joined",
        Why::Adoption => "Before a scenario became the menu",
        Why::Yields => "Before weighed yields were adopted",
        Why::Restore => "Before going back to a restore point",
        Why::Deletion => "Before the book was deleted",
    }
}

/// How long points are kept.
pub fn kept() -> String {
    let megabytes = MOST_BYTES / 1_000_000;
    format!(
        "Points of the last {DAYS} days stay, and the last {POINTS}. All books share {megabytes} MB: the oldest points go first."
    )
}

/// What a point holds: "14 drinks, 45 ingredients, 102 kB".
pub fn holds(point: &Point) -> String {
    let kilobytes = point.bytes.div_ceil(1000);
    format!("{}, {}, {kilobytes} kB", several(point.drinks, "drink"), several(point.ingredients, "ingredient"))
}

/// That older points had to go for this one. Returns `None` if none had to.
pub fn made_room(point: &Point) -> Option<String> {
    match point.made_room {
        0 => None,
        1 => Some("1 older point went to make room.".to_string()),
        more => Some(format!("{more} older points went to make room.")),
    }
}

/// That there is no point where one should have been made.
pub fn not_made(why: Why, fault: &Fault) -> String {
    let before = match why {
        Why::FirstChange => "before today's first change",
        Why::Import => "before the import",
        Why::Merge => "before changes from two tabs were joined",
        Why::Adoption => "before the scenario became the menu",
        Why::Yields => "before weighed yields were adopted",
        Why::Restore => "before you went back",
        Why::Deletion => "before the deletion",
    };
    match fault {
        Fault::Full => format!(
            "No restore point was made {before}: this device has no room left. Your change is saved. Make room; your next change tries again."
        ),
        _ => format!(
            "No restore point was made {before}: the browser could not store it. Your change is saved; your next change tries again."
        ),
    }
}

/// When a book was deleted, and until when it is kept.
pub fn deleted(point: &Point) -> String {
    let (on, until) = (point.at.day, point.at.day.plus_days(DELETED_DAYS));
    format!("Deleted {}, kept until {}.", short_day(on), day(until))
}

/// The name of a deleted book.
pub fn deleted_name(point: &Point) -> &str {
    if point.name.is_empty() { "A book that cannot be read" } else { &point.name }
}

/// Why a deleted book was not brought back.
pub fn bring_back_error(error: &BringBackError) -> &'static str {
    match error {
        BringBackError::Stored(Fault::Gone) => "This book is not kept any more.",
        BringBackError::Stored(Fault::Behind) => "This book is back already. Open it from your books.",
        BringBackError::Stored(Fault::Full) => {
            "The book was not brought back: this device has no room left. Make room and try again, or save it as a file."
        }
        BringBackError::Stored(_) => {
            "The book was not brought back: the browser could not store it. Try again, or save it as a file."
        }
        BringBackError::NotWhole(_) => "Parts of this book cannot be read. See what is whole.",
    }
}

/// That the browser removed books: names them as far as they are known.
pub fn removed(names: &[String]) -> String {
    let named: Vec<&str> = names.iter().filter(|name| !name.is_empty()).map(String::as_str).collect();
    if named.is_empty() {
        format!("The browser has removed your books. {WAYS_BACK}")
    } else {
        format!("The browser has removed your books: {}. {WAYS_BACK}", named.join(", "))
    }
}

/// What of a book could be read.
pub fn whole(book: &Book) -> String {
    let (drinks, ingredients) = (book.drinks().count(), book.ingredients().count());
    format!("It holds {}, {}.", several(drinks, "drink"), several(ingredients, "ingredient"))
}

/// A number of things: "1 drink", "14 drinks".
fn several(count: usize, one: &str) -> String {
    if count == 1 { format!("1 {one}") } else { format!("{count} {one}s") }
}

/// A day as it stands beside a point: with its year where that is another one.
pub fn on_day(on: Date, today: Date) -> String {
    if on.parts().0 == today.parts().0 { short_day(on) } else { day(on) }
}
