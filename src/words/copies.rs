//! Copies of a book outside the browser.

use super::restore_points::on_day;
use super::steps::inside;
use crate::backup::copies::{CopyStatus, Due};
use crate::foundation::measure::Date;

/// Said of a file that is to be kept up to date and needs the person's word again.
pub const ASK_AGAIN: &str = "The browser needs your permission again to write to the file.";

/// When the last copy was saved, and how much has changed since.
pub fn last_copy(standing: &CopyStatus, today: Date) -> String {
    let changes = match standing.changes {
        0 => "no changes".to_string(),
        1 => "1 change".to_string(),
        more => format!("{more} changes"),
    };
    match standing.last {
        Some(last) => format!("Last copy saved {}, {changes} since.", on_day(last.day, today)),
        None => format!("No copy saved yet, {changes} so far."),
    }
}

/// Why a copy is offered.
pub fn copy_due(due: Due) -> String {
    match due {
        Due::Days(days) => format!("No copy of this book saved for {days} days."),
        Due::Changes(changes) => format!("{changes} changes and no copy of this book saved."),
    }
}

/// Whether the browser keeps the books; `promised` is `None` if it does not say.
pub fn persisted(promised: Option<bool>) -> &'static str {
    match promised {
        Some(true) => "This browser has agreed to keep your books until you delete them.",
        Some(false) => "This browser may remove your books when the device runs low on room. Save copies.",
        None => "This browser does not say how long it keeps your books. Save copies.",
    }
}

/// That the file on the device was written: `when` is a day or a time.
pub fn file_written(name: &str, when: &str) -> String {
    format!("Copies go to {name}. Last written {}.", inside(when))
}

/// That copies will go to a file on the device, which was not written yet.
pub fn file_chosen(name: &str) -> String {
    format!("Copies go to {name}.")
}

/// Why the file on the device was not written, by the browser's name for it.
pub fn file_not_written(name: &str, kind: &str) -> String {
    let why = match kind {
        "NotFoundError" => "the file or its folder is gone. Choose a file again",
        "NotAllowedError" => "the browser was not allowed to. Allow it again",
        "QuotaExceededError" => "the disk is full. Make room; the next change tries again",
        "NoModificationAllowedError" => "another program holds the file. Close it there; the next change tries again",
        _ => "the browser could not write it. Choose a file again",
    };
    format!("The copy was not written to {name}: {why}.")
}
