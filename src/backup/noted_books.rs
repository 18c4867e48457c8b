//! The note of the books that should be here, kept outside the database. By it, books that the browser removed
//! are told apart from a first start.

use crate::book::BookId;
use crate::store::Listed;

/// A book that was on the shelf when the note was written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NotedBook {
    /// The book.
    pub id: BookId,
    /// Its name then, or an empty text if its entry did not read.
    pub name: String,
}

/// The note of the books on the shelf.
pub fn noted(books: &[Listed]) -> Vec<NotedBook> {
    let noted = |book: &Listed| {
        let name = if let Listed::Book(entry) = book { entry.name.replace('\n', " ") } else { String::new() };
        Some(NotedBook { id: book.id()?, name })
    };
    books.iter().filter_map(noted).collect()
}

/// The note as a text, with one line for each book.
pub fn to_text(books: &[NotedBook]) -> String {
    books.iter().map(|book| format!("{} {}\n", book.id, book.name)).collect()
}

/// Reads what [`to_text`] writes. A line that does not read is left out.
pub fn from_text(text: &str) -> Vec<NotedBook> {
    let book = |line: &str| {
        let (id, name) = line.split_once(' ')?;
        Some(NotedBook { id: BookId::from_text(id)?, name: name.to_string() })
    };
    text.lines().filter_map(book).collect()
}

/// The books in the note that are not on the shelf although nobody deleted them.
pub fn lost(noted: &[NotedBook], there: &[Listed], deleted: impl Fn(BookId) -> bool) -> Vec<NotedBook> {
    let gone = |book: &&NotedBook| !there.iter().any(|listed| listed.id() == Some(book.id)) && !deleted(book.id);
    noted.iter().filter(gone).cloned().collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::store::BookEntry;

    const ONE: BookId = BookId::from_random(0xb1);
    const TWO: BookId = BookId::from_random(0xb2);

    fn listed(id: BookId, name: &str) -> Listed {
        Listed::Book(BookEntry::new(id, &crate::book::Book::new(crate::book::Settings::new(name)), 1))
    }

    #[test]
    fn the_note_reads_back_and_what_does_not_read_is_left_out() {
        let books =
            [listed(ONE, "Corner bar"), listed(TWO, "Two\nlines"), Listed::Damaged { id: None, text: "{".into() }];
        let text = to_text(&noted(&books));
        assert_eq!(text, "b1 Corner bar\nb2 Two lines\n");
        assert_eq!(from_text(&text), noted(&books));
        let unnamed = [Listed::Damaged { id: Some(ONE), text: "{".into() }];
        assert_eq!(from_text(&to_text(&noted(&unnamed))), [NotedBook { id: ONE, name: String::new() }]);
        assert_eq!(from_text("\nb1\n0 zero\nXYZ name\nb2 Mint\n"), [NotedBook { id: TWO, name: "Mint".into() }]);
    }

    #[test]
    fn lost_is_what_was_noted_and_is_not_there_though_nobody_deleted_it() {
        let both = noted(&[listed(ONE, "Corner bar"), listed(TWO, "Bridge bar")]);
        assert_eq!(lost(&both, &[], |_| false), both);
        assert_eq!(lost(&both, &[], |id| id == TWO), both[..1]);
        assert_eq!(lost(&both, &[listed(TWO, "Bridge bar")], |_| false), both[..1]);
        assert_eq!(lost(&both, &[listed(ONE, "Other"), listed(TWO, "Names")], |_| false), []);
        assert_eq!(lost(&[], &[], |_| false), [], "a first start");
    }
}
