//! Restore points: whole books as they once stood, kept beside the books to go back to.
//!
//! Day and time come in as values. What a point is and what it holds are slips of their own, so
//! that a list of points reads no books.

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

/// A time, and the day that it falls on where the person is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Moment {
    /// Milliseconds since 1970, in UTC.
    pub millis: u64,
    /// The day there.
    pub day: Date,
}

/// What a restore point was made before.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Why {
    /// The first change of its day.
    FirstChange,
    /// Another book put in place of it, from a file.
    Import,
    /// What waits here put on top of what another tab saved.
    Merge,
    /// A scenario made the menu.
    Adoption,
    /// Yields that were weighed adopted.
    Yields,
    /// An earlier restore point put in place of it.
    Restore,
    /// Its deletion.
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

/// What a restore point is, without the book that it holds.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Point {
    /// The book that it is of.
    pub book: BookId,
    /// Its name among the points of the book: a later point has a later one.
    pub id: String,
    /// What it was made before.
    pub why: Why,
    /// When.
    pub at: Moment,
    /// The name of the book.
    pub name: String,
    /// How many drinks it holds.
    pub drinks: usize,
    /// How many ingredients it holds.
    pub ingredients: usize,
    /// How large it is, as a book file in bytes.
    pub bytes: u64,
    /// How many earlier points had to go for it, since all together would have been too large.
    pub made_room: usize,
}

impl Point {
    /// The point of a book as it stands, held as a text of so many bytes. `salt` is a random
    /// number: two tabs may make points at one time.
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

    /// Reads what [`Point::text`] writes; none where it is something else.
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

    /// What it is, as a line of figures and the name of the book under it.
    pub fn text(&self) -> String {
        let Point { why, at, name, drinks, ingredients, bytes, made_room, .. } = self;
        format!("{} {} {} {drinks} {ingredients} {bytes} {made_room}\n{name}", why.name(), at.millis, at.day)
    }

    fn slip(&self, drawer: Drawer, text: Option<String>) -> Slip {
        Slip { drawer, book: self.book, id: self.id.clone(), text }
    }

    /// The slips that throw it away with what it holds.
    fn thrown_away(&self) -> [Slip; 2] {
        [Drawer::Points, Drawer::Copies].map(|drawer| self.slip(drawer, None))
    }
}
