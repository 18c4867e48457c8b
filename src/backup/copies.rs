//! Copies of a book outside the browser: how old the last one is, and when to offer another.

use super::restore_points::Moment;
use crate::book::BookId;
use crate::foundation::measure::Date;
use crate::store::{Drawer, Slip};

/// A copy is offered after this many days with changes and without a copy.
pub const DAYS: i32 = 14;

/// A copy is offered after this many changes without a copy.
pub const CHANGES: usize = 200;

/// The id of the note of the last copy.
const LAST: &str = "last-copy";

/// The id of the note of the file on the device.
pub const DEVICE_FILE: &str = "device-file";

/// How current the copies of one book are.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct CopyStatus {
    /// When the last copy was saved, or `None` if there is none.
    pub last: Option<Moment>,
    /// How many changes were made since then. Without a copy, all that are known.
    pub changes: usize,
    /// Without a copy: the earliest day from which something is known of the book.
    pub known_since: Option<Date>,
}

/// The copies of the open book outside the browser, as far as they were looked up.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Copies {
    /// When the last copy was saved, or `None` if there is none.
    pub last: Option<Moment>,
    /// Without a copy: the earliest day from which something is known of the book.
    pub known_since: Option<Date>,
    /// Whether the person postponed the offer of a copy.
    pub put_off: bool,
    /// The file on the device that is kept up to date.
    pub file: DeviceFile,
}

/// A file on the device that is kept up to date after saves.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub enum DeviceFile {
    /// This browser cannot do that, or it was not looked up yet.
    #[default]
    None,
    /// No file was chosen.
    Off,
    /// The person must allow the browser again to write to the file of this name.
    AskAgain(String),
    /// It is written to the file of this name.
    On {
        /// The name of the file.
        name: String,
        /// When it was last written, in milliseconds since 1970, or `None` if it was not written since the
        /// book was opened.
        written: Option<u64>,
    },
    /// It could not be written.
    Failed {
        /// The name of the file.
        name: String,
        /// The browser's name for the reason.
        kind: String,
    },
}

/// Why a copy is offered.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Due {
    /// This many days have passed since the last copy, or since something is known of the book.
    Days(i32),
    /// This many changes were made.
    Changes(usize),
}

impl CopyStatus {
    /// Why a copy is due on the day `today`. Returns `None` if it is not.
    pub fn due(&self, today: Date) -> Option<Due> {
        let since = self.last.map(|last| last.day).or(self.known_since);
        let days = since.map_or(0, |since| today.days_since(since));
        match self.changes {
            0 => None,
            _ if days >= DAYS => Some(Due::Days(days)),
            changes if changes >= CHANGES => Some(Due::Changes(changes)),
            _ => None,
        }
    }
}

/// The note that a copy was saved at `at`.
pub fn note(book: BookId, at: Moment) -> Slip {
    let text = Some(format!("{} {}", at.millis, at.day));
    Slip { drawer: Drawer::Notes, book, id: LAST.to_string(), text }
}

/// The note that no file on the device is kept up to date.
pub fn no_device_file(book: BookId) -> Slip {
    Slip { drawer: Drawer::Notes, book, id: DEVICE_FILE.to_string(), text: None }
}

/// When the last copy was saved, read from the notes of a book. Returns `None` if there was none.
pub fn last(notes: &[Slip]) -> Option<Moment> {
    let text = notes.iter().find(|slip| slip.id == LAST)?.text.as_deref()?;
    let (millis, day) = text.split_once(' ')?;
    Some(Moment { millis: millis.parse().ok()?, day: Date::from_text(day)? })
}

#[cfg(test)]
mod tests {
    use super::*;

    const ID: BookId = BookId::from_random(0xb1);

    fn day(text: &str) -> Date {
        Date::from_text(text).unwrap()
    }

    #[test]
    fn the_note_of_a_copy_reads_back() {
        let at = Moment { millis: 1_763_600_000_000, day: day("2026-11-20") };
        assert_eq!(note(ID, at).text.as_deref(), Some("1763600000000 2026-11-20"));
        assert_eq!(last(&[note(ID, at)]), Some(at));
        assert_eq!(last(&[no_device_file(ID)]), None);
        for other in ["", "1763600000000", "x 2026-11-20", "1 2026-13-20"] {
            assert_eq!(last(&[Slip { text: Some(other.into()), ..note(ID, at) }]), None, "{other:?}");
        }
    }

    #[test]
    fn a_copy_is_due_after_fourteen_days_or_two_hundred_changes() {
        let last = Some(Moment { millis: 0, day: day("2026-11-01") });
        let standing = |changes| CopyStatus { last, changes, known_since: None };
        assert_eq!(standing(1).due(day("2026-11-14")), None);
        assert_eq!(standing(1).due(day("2026-11-15")), Some(Due::Days(14)));
        assert_eq!(standing(0).due(day("2026-12-31")), None, "nothing new to copy");
        assert_eq!(standing(199).due(day("2026-11-02")), None);
        assert_eq!(standing(200).due(day("2026-11-02")), Some(Due::Changes(200)));
        let never = CopyStatus { last: None, changes: 3, known_since: Some(day("2026-11-01")) };
        assert_eq!(never.due(day("2026-11-15")), Some(Due::Days(14)));
        assert_eq!(CopyStatus { known_since: None, ..never }.due(day("2026-11-15")), None);
    }
}
