//! What became of a text that was shared.

use crate::say;

/// What became of a text that was shared.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sharing {
    /// The device took it and passed it on.
    PassedOn,
    /// The person closed the device's choice of where to.
    Closed,
    /// It is on the clipboard.
    Copied,
    /// Neither could be had: it stands below, to be copied by hand.
    ToCopy,
}

/// The same as a sentence.
pub fn sharing(outcome: Sharing) -> &'static str {
    match outcome {
        Sharing::PassedOn => say!(book::share_sent),
        Sharing::Closed => say!(book::share_closed),
        Sharing::Copied => say!(book::share_copied),
        Sharing::ToCopy => say!(book::share_by_hand),
    }
}
