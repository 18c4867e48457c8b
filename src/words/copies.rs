//! Copies of a book outside the browser.

use super::number;
use super::restore_points::on_day;
use crate::backup::copies::{CopyStatus, Due};
use crate::foundation::measure::Date;
use crate::say;

/// Said of a file that is to be kept up to date and needs the person's word again.
pub fn ask_again() -> &'static str {
    say!(book::allow_again)
}

/// When the last copy was saved, and how much has changed since.
pub fn last_copy(standing: &CopyStatus, today: Date) -> String {
    match standing.last {
        Some(last) => [
            say!(book::last_copy, day = on_day(last.day, today)),
            say!(book::changes_since_copy, changes = standing.changes),
        ],
        None => [say!(book::no_copy_yet).to_string(), say!(book::changes_so_far, changes = standing.changes)],
    }
    .join(" ")
}

/// Why a copy is offered.
pub fn copy_due(due: Due) -> String {
    match due {
        Due::Days(days) => say!(book::no_copy_for_days, days = number(usize::try_from(days).unwrap_or_default())),
        Due::Changes(changes) => say!(book::no_copy_for_changes, changes = number(changes)),
    }
}

/// Whether the browser keeps the books; `promised` is `None` if it does not say.
pub fn persisted(promised: Option<bool>) -> &'static str {
    match promised {
        Some(true) => say!(book::browser_keeps),
        Some(false) => say!(book::browser_may_remove),
        None => say!(book::browser_silent),
    }
}

/// That the file on the device was written: `when` is a day or a time.
pub fn file_written(name: &str, when: &str) -> String {
    say!(book::copies_go_to_saved, file = name, when = when)
}

/// That copies will go to a file on the device, which was not written yet.
pub fn file_chosen(name: &str) -> String {
    say!(book::copies_go_to, file = name)
}

/// Why the file on the device was not written, by the browser's name for it.
pub fn file_not_written(name: &str, kind: &str) -> String {
    let why = match kind {
        "NotFoundError" => say!(book::copy_file_gone),
        "NotAllowedError" => say!(book::copy_not_allowed),
        "QuotaExceededError" => say!(book::copy_disk_full),
        "NoModificationAllowedError" => say!(book::copy_file_held),
        _ => say!(book::copy_failed),
    };
    [&*say!(book::copy_not_saved, file = name), why].join(" ")
}
