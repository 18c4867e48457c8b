//! Restore points: copies of whole books as they were at a moment, to go back to.
//!
//! Day and time come in as values. The facts of a point and its contents are separate slips, so that a list
//! of points reads no books.

mod keeping;
mod policy;
#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests;

use crate::book::{Book, BookId};
use crate::foundation::measure::Date;
use crate::store::{Drawer, Slip};

pub use keeping::{
    BringBackError, Points, bring_back, copy_of, delete, delete_for_good, deleted_books, of_book, was_deleted,
};
pub use policy::{DAYS, DELETED_DAYS, MOST_BYTES, POINTS, to_go};

/// A moment, and the day on which it is where the person is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Moment {
    /// Milliseconds since 1970, in UTC.
    pub millis: u64,
    /// The person's local day.
    pub day: Date,
}

/// The event before which a restore point was made.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Why {
    /// The first change of its day.
    FirstChange,
    /// The book was replaced by one from a file.
    Import,
    /// A conflict with another tab was resolved.
    Merge,
    /// A scenario was adopted.
    Adoption,
    /// Weighed yields were adopted.
    Yields,
    /// The book was replaced by an earlier restore point.
    Restore,
    /// The book was deleted.
    Deletion,
}

impl Why {
    const ALL: [(Why, &str); 7] = [
        (Why::FirstChange, "first-change"),
        (Why::Import, "import"),
        (Why::Merge, "merge"),
        (Why::Adoption, "adoption"),
        (Why::Yields, "yields"),
        (Why::Restore, "restore"),
        (Why::Deletion, "deletion"),
    ];

    fn name(self) -> &'static str {
        Why::ALL.into_iter().find(|(why, _)| *why == self).map_or("", |(_, name)| name)
    }

    fn of_name(name: &str) -> Option<Why> {
        Why::ALL.into_iter().find(|(_, its)| *its == name).map(|(why, _)| why)
    }
}

/// The facts of a restore point, without its contents.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Point {
    /// The book of which it is a copy.
    pub book: BookId,
    /// Its id among the points of the book. Ids are in the order of time.
    pub id: String,
    /// The event before which it was made.
    pub why: Why,
    /// When it was made.
    pub at: Moment,
    /// The name of the book.
    pub name: String,
    /// How many drinks it holds.
    pub drinks: usize,
    /// How many ingredients it holds.
    pub ingredients: usize,
    /// Its size as a book file, in bytes.
    pub bytes: u64,
    /// How many earlier points were deleted to make room for it.
    pub made_room: usize,
}

impl Point {
    /// The point of the book `held`, whose text has this many bytes. `salt` is a random number, since two tabs
    /// may make points at the same moment.
    fn new(book: BookId, held: &Book, why: Why, at: Moment, salt: u64, bytes: usize) -> Point {
        Point {
            book,
            id: format!("{:014}-{salt:x}", at.millis),
            why,
            at,
            name: held.settings().name.clone(),
            drinks: held.drinks().count(),
            ingredients: held.ingredients().count(),
            bytes: u64::try_from(bytes).unwrap_or(u64::MAX),
            made_room: 0,
        }
    }

    /// Reads what [`Point::text`] writes. Returns `None` for anything else.
    pub fn from_slip(slip: &Slip) -> Option<Point> {
        let (head, name) = slip.text.as_deref()?.split_once('\n')?;
        let mut words = head.split(' ');
        let mut word = || words.next();
        let point = Point {
            book: slip.book,
            id: slip.id.clone(),
            why: Why::of_name(word()?)?,
            at: Moment { millis: word()?.parse().ok()?, day: Date::from_text(word()?)? },
            name: name.to_string(),
            drinks: word()?.parse().ok()?,
            ingredients: word()?.parse().ok()?,
            bytes: word()?.parse().ok()?,
            made_room: word()?.parse().ok()?,
        };
        words.next().is_none().then_some(point)
    }

    /// The facts as a line of figures, and a line with the name of the book.
    pub fn text(&self) -> String {
        let Point { why, at, name, drinks, ingredients, bytes, made_room, .. } = self;
        format!("{} {} {} {drinks} {ingredients} {bytes} {made_room}\n{name}", why.name(), at.millis, at.day)
    }

    fn slip(&self, drawer: Drawer, text: Option<String>) -> Slip {
        Slip { drawer, book: self.book, id: self.id.clone(), text }
    }

    /// The slips that delete it with its contents.
    fn thrown_away(&self) -> [Slip; 2] {
        [Drawer::Points, Drawer::Copies].map(|drawer| self.slip(drawer, None))
    }
}
