//! What became of a text that was shared.

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
pub const fn sharing(outcome: Sharing) -> &'static str {
    match outcome {
        Sharing::PassedOn => "Handed to where you chose.",
        Sharing::Closed => "Not shared: you closed the choice of where to.",
        Sharing::Copied => "Copied. Paste it into a message.",
        Sharing::ToCopy => {
            "This browser neither shares nor copies by itself. The text stands below: select it and copy it."
        }
    }
}
