//! Reading the endings of prices, as people type them: ".49 .99", "0.49, 0.99", "95".

use super::{ReadError, digits, read_number};
use crate::foundation::measure::{Exact, Money, NumberStyle};

/// Reads endings with blanks, commas or semicolons between them. The list is empty if nothing is typed.
/// Bare digits, as many as the currency has decimals, are the decimals: "95" is 0.95 of a dollar, "950" is
/// 0.95 of a dinar.
///
/// # Errors
/// [`ReadError::NotAnEnding`] with the first that does not read. Whether an ending suits the currency is
/// checked by the book.
pub fn read_endings(text: &str, currency_digits: u32, style: &NumberStyle) -> Result<Vec<Money>, ReadError> {
    let mut endings = Vec::new();
    let blank = |sign: char| sign.is_whitespace() || sign == ';';
    for piece in text.split(blank).map(|piece| piece.trim_end_matches(',')).filter(|piece| !piece.is_empty()) {
        let read = |piece| ending(piece, currency_digits, style);
        let not_an_ending = || ReadError::NotAnEnding { text: piece.to_string() };
        let comma_between = style.decimal != ',' && piece.contains(',');
        // "00,50" is two endings, as "49,99" is, and not a number.
        let listed = comma_between && piece.split(',').all(|piece| is_bare(&digits::tidy(piece), currency_digits));
        match read(piece) {
            Some(number) if !listed && (number < Exact::ONE || !comma_between) => endings.push(number),
            _ if comma_between => {
                let pieces: Option<Vec<Exact>> = piece.split(',').map(read).collect();
                endings.extend(pieces.ok_or_else(not_an_ending)?);
            }
            _ => return Err(not_an_ending()),
        }
    }
    Ok(endings.into_iter().map(Money::from_major).collect())
}

fn ending(piece: &str, currency_digits: u32, style: &NumberStyle) -> Option<Exact> {
    let tidy = digits::tidy(piece);
    let written_out = if is_bare(&tidy, currency_digits) { format!("0{}{tidy}", style.decimal) } else { tidy };
    read_number(&written_out, style).ok()
}

/// Whether the text is digits only, as many as the currency has decimals.
fn is_bare(tidy: &str, currency_digits: u32) -> bool {
    currency_digits > 0 && tidy.len() == currency_digits as usize && tidy.bytes().all(|byte| byte.is_ascii_digit())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn english(text: &str, digits: u32) -> Result<String, ReadError> {
        read_endings(text, digits, &NumberStyle::english("$")).map(said)
    }

    fn said(endings: Vec<Money>) -> String {
        endings.iter().map(|ending| ending.major().to_string()).collect::<Vec<_>>().join(" ")
    }

    #[test]
    fn endings_are_read_as_people_type_them() {
        for (text, endings) in [
            (".49 .99", "0.49 0.99"),
            ("0.49, 0.99", "0.49 0.99"),
            ("0.49,0.99", "0.49 0.99"),
            (".49,.99", "0.49 0.99"),
            ("49, 99", "0.49 0.99"),
            ("49,99", "0.49 0.99"),
            (".49; .99", "0.49 0.99"),
            ("$0.95", "0.95"),
            ("95", "0.95"),
            ("00 50", "0 0.5"),
            ("00,50", "0 0.5"),
            ("00,95", "0 0.95"),
            ("00,25,50", "0 0.25 0.5"),
            ("0", "0"),
            (",50", "0.5"),
            ("  ", ""),
            ("", ""),
            // For the book to refuse: endings are less than one.
            ("1.50", "1.5"),
            ("5", "5"),
        ] {
            assert_eq!(english(text, 2).as_deref(), Ok(endings), "{text:?}");
        }
        let german = |text| read_endings(text, 2, &NumberStyle::continental("\u{a0}€")).map(said);
        for (text, endings) in
            [("0,49 0,99", "0.49 0.99"), ("0,49; 0,99", "0.49 0.99"), ("0,49, 0,99", "0.49 0.99"), ("95", "0.95")]
        {
            assert_eq!(german(text).as_deref(), Ok(endings), "{text:?}");
        }
    }

    #[test]
    fn bare_digits_follow_the_currency() {
        assert_eq!(english("95", 0).as_deref(), Ok("95"));
        assert_eq!(english("950", 3).as_deref(), Ok("0.95"));
        assert_eq!(english("000,950", 3).as_deref(), Ok("0 0.95"));
        assert_eq!(english("95", 3).as_deref(), Ok("95"));
    }

    #[test]
    fn what_is_no_ending_is_named() {
        for (text, piece) in [("x", "x"), (".50 x", "x"), (".50,x", ".50,x"), ("-.50", "-.50"), (".5.0", ".5.0")] {
            assert_eq!(english(text, 2), Err(ReadError::NotAnEnding { text: piece.into() }), "{text:?}");
        }
        let german = read_endings("0,49,0,99", 2, &NumberStyle::continental("\u{a0}€"));
        assert_eq!(german, Err(ReadError::NotAnEnding { text: "0,49,0,99".into() }));
    }
}
