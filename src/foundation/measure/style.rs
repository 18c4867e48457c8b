//! How numbers are written where the person lives. The app passes it in; the engine has no locale.

/// The signs of a locale, and where its currency sign goes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NumberStyle {
    /// The decimal sign: '.' or ','.
    pub decimal: char,
    /// The sign between groups of thousands.
    pub group: char,
    /// What stands before an amount of money, such as "$".
    pub money_before: String,
    /// What stands after an amount of money, such as "\u{a0}€".
    pub money_after: String,
}

impl NumberStyle {
    /// 1,234.5 and $9.50.
    pub fn english(money_before: &str) -> NumberStyle {
        NumberStyle { decimal: '.', group: ',', money_before: money_before.into(), money_after: String::new() }
    }

    /// 1.234,5 and 9,50 €.
    pub fn continental(money_after: &str) -> NumberStyle {
        NumberStyle { decimal: ',', group: '.', money_before: String::new(), money_after: money_after.into() }
    }
}
