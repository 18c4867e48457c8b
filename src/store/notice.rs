//! The messages between tabs.

use crate::book::BookId;

/// Something that happened to the stored books outside this tab.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Notice {
    /// Another tab saved a book.
    Saved {
        /// The book.
        book: BookId,
        /// Its revision now.
        revision: u64,
    },
    /// Another tab deleted a book.
    Deleted {
        /// The book.
        book: BookId,
    },
    /// A newer version of the app opened the database: this tab can no longer save.
    NewerVersionOpen,
}

impl Notice {
    /// The message to other tabs. Returns `None` for what they learn from the browser itself.
    pub fn message(self) -> Option<String> {
        match self {
            Notice::Saved { book, revision } => Some(format!("saved {book} {revision}")),
            Notice::Deleted { book } => Some(format!("deleted {book}")),
            Notice::NewerVersionOpen => None,
        }
    }

    /// Reads a message of another tab. Returns `None` if it is not one of this version's.
    pub fn from_message(text: &str) -> Option<Notice> {
        let mut words = text.split(' ');
        let notice = match (words.next()?, words.next().and_then(BookId::from_text)?, words.next()) {
            ("saved", book, Some(revision)) => Notice::Saved { book, revision: revision.parse().ok()? },
            ("deleted", book, None) => Notice::Deleted { book },
            _ => return None,
        };
        words.next().is_none().then_some(notice)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn messages_read_back_and_others_are_ignored() {
        let book = BookId::from_random(0xb1);
        for notice in [Notice::Saved { book, revision: 12 }, Notice::Deleted { book }] {
            let message = notice.message().unwrap();
            assert_eq!(Notice::from_message(&message), Some(notice));
        }
        assert_eq!(Notice::NewerVersionOpen.message(), None);
        for other in ["", "saved", "saved b1", "saved b1 -1", "saved b1 1 2", "deleted b1 1", "deleted 0", "moved b1"] {
            assert_eq!(Notice::from_message(other), None, "{other:?}");
        }
    }
}
