//! How numbers are written where the person lives. The app passes it in; the engine has no locale.

/// The signs of a locale, how it groups digits, and where the signs of money and percent go.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NumberStyle {
    /// The decimal sign: '.' or ','.
    pub decimal: char,
    /// The sign between groups of digits.
    pub group: char,
    /// How many digits the groups before the last three have: 3, or 2 where hundreds of thousands
    /// are counted.
    pub further_group: usize,
    /// From how many digits on there are groups: 4, or 5 where 1234 is written without a sign.
    pub grouped_from: usize,
    /// What stands before an amount of money, such as "$".
    pub money_before: String,
    /// What stands after an amount of money, such as "\u{a0}€".
    pub money_after: String,
    /// What stands before a percentage; nothing nearly everywhere.
    pub percent_before: String,
    /// What stands after a percentage, such as "%".
    pub percent_after: String,
}

/// The parts of a formatted number, as `Intl.NumberFormat.formatToParts` of ECMA-402 names them:
/// kind ("integer", "group", "decimal" …) and text.
pub type Parts = Vec<(String, String)>;

impl NumberStyle {
    /// 1,234.5 and $9.50 and 73.0%.
    pub fn english(money_before: &str) -> NumberStyle {
        NumberStyle {
            decimal: '.',
            group: ',',
            further_group: 3,
            grouped_from: 4,
            money_before: money_before.into(),
            money_after: String::new(),
            percent_before: String::new(),
            percent_after: "%".into(),
        }
    }

    /// 1.234,5 and 9,50 € and 73,0 %.
    pub fn continental(money_after: &str) -> NumberStyle {
        NumberStyle {
            decimal: ',',
            group: '.',
            money_before: String::new(),
            money_after: money_after.into(),
            percent_after: "\u{a0}%".into(),
            ..NumberStyle::english("")
        }
    }

    /// The style that shows in three samples: 1234567.8 of a currency, 0.5 as a percentage, and
    /// 1234 as a plain number. Whatever a sample does not show is as in English.
    pub fn from_samples(money: &Parts, percent: &Parts, thousand: &Parts) -> NumberStyle {
        let first = |kind: &str| money.iter().find(|(it, _)| it == kind).and_then(|(_, text)| text.chars().next());
        let groups = |parts: &Parts| -> Vec<usize> {
            parts.iter().filter(|(kind, _)| kind == "integer").map(|(_, text)| text.chars().count()).collect()
        };
        let (money_before, money_after) = around_digits(money);
        let (percent_before, percent_after) = around_digits(percent);
        let english = NumberStyle::english("");
        NumberStyle {
            decimal: first("decimal").unwrap_or(english.decimal),
            group: first("group").unwrap_or(english.group),
            further_group: groups(money).iter().rev().nth(1).copied().unwrap_or(english.further_group),
            grouped_from: if groups(thousand).len() == 1 { 5 } else { english.grouped_from },
            money_before,
            money_after,
            percent_before,
            percent_after,
        }
    }
}

/// What stands before and after the digits of a formatted number. A mark of direction or the minus
/// sign is no part of it.
fn around_digits(parts: &Parts) -> (String, String) {
    let of_number = |kind: &str| matches!(kind, "integer" | "group" | "decimal" | "fraction");
    let joined = |parts: &[(String, String)]| parts.iter().map(|(_, text)| text.as_str()).collect::<String>();
    let begin = parts.iter().position(|(kind, _)| of_number(kind)).unwrap_or(parts.len());
    let end = parts.iter().rposition(|(kind, _)| of_number(kind)).map_or(parts.len(), |last| last.saturating_add(1));
    (joined(parts.get(..begin).unwrap_or_default()), joined(parts.get(end..).unwrap_or_default()))
}
