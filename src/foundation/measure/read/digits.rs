//! Reading digits and signs, as typed, to an exact number.

use super::{ReadError, not_a_number};
use crate::foundation::measure::{Exact, INTEGER_DIGITS, NumberStyle, TYPED_PLACES};

/// What is wrong with a number within a text.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(in super::super) enum Problem {
    NotANumber,
    Negative,
    TooLarge,
    TooFine,
    Ambiguous { as_thousands: String, as_decimals: String },
}

impl Problem {
    /// The error of the whole text: `text` as it was typed, `tidy` after [`tidy`], in which `number` is the
    /// part with the problem.
    pub(in super::super) fn said_of(self, text: &str, tidy: &str, number: &str) -> ReadError {
        let with = |reading: &str| tidy.replacen(number, reading, 1);
        match self {
            Problem::NotANumber => not_a_number(text),
            Problem::Negative => ReadError::Negative,
            Problem::TooLarge => ReadError::TooLarge,
            Problem::TooFine => ReadError::TooFine,
            Problem::Ambiguous { as_thousands, as_decimals } => ReadError::Ambiguous {
                text: text.trim().to_string(),
                as_thousands: with(&as_thousands),
                as_decimals: with(&as_decimals),
            },
        }
    }
}

/// The text with Arabic, Persian and full-width digits as 0-9, blanks as plain ones, vulgar fractions
/// written out, and any minus as '-'. A hard blank between digits groups them, and is removed.
pub(in super::super) fn tidy(text: &str) -> String {
    let mut tidy = String::with_capacity(text.len());
    for sign in text.trim().chars() {
        match sign {
            '\u{660}'..='\u{669}' | '\u{6f0}'..='\u{6f9}' | '\u{ff10}'..='\u{ff19}' => {
                let zero = match sign {
                    '\u{660}'..='\u{669}' => 0x660,
                    '\u{6f0}'..='\u{6f9}' => 0x6f0,
                    _ => 0xff10,
                };
                let digit = u32::from(sign).saturating_sub(zero);
                tidy.extend(char::from_digit(digit, 10));
            }
            '\u{66b}' => tidy.push('.'),
            '\u{66c}' | '\u{2019}' | '\'' | '\u{a0}' | '\u{202f}' | '\u{2009}' => {
                if !tidy.ends_with(|before: char| before.is_ascii_digit()) {
                    tidy.push(' ');
                } else {
                    tidy.push('\u{a0}');
                }
            }
            '\u{2212}' | '\u{2013}' => tidy.push('-'),
            '½' => tidy.push_str(" 1/2"),
            '¼' => tidy.push_str(" 1/4"),
            '¾' => tidy.push_str(" 3/4"),
            '⅓' => tidy.push_str(" 1/3"),
            '⅔' => tidy.push_str(" 2/3"),
            '⅛' => tidy.push_str(" 1/8"),
            '⅜' => tidy.push_str(" 3/8"),
            '⅝' => tidy.push_str(" 5/8"),
            '⅞' => tidy.push_str(" 7/8"),
            '\u{2044}' => tidy.push('/'),
            sign if sign.is_whitespace() => tidy.push(' '),
            sign => tidy.push(sign),
        }
    }
    without_hard_blanks(&tidy)
}

/// A hard blank before exactly three digits groups thousands and goes; any other is a blank.
fn without_hard_blanks(text: &str) -> String {
    let mut pieces = text.split('\u{a0}');
    let mut joined = pieces.next().unwrap_or_default().to_string();
    for piece in pieces {
        let digits = piece.chars().take_while(char::is_ascii_digit).count();
        if digits != 3 {
            joined.push(' ');
        }
        joined.push_str(piece);
    }
    joined.trim().to_string()
}

/// The text without a currency or percent sign around it.
pub(super) fn without_signs<'a>(text: &'a str, style: &NumberStyle) -> &'a str {
    let text = text.trim_matches(['%', '٪']).trim();
    let text = text.strip_prefix(style.money_before.trim()).unwrap_or(text);
    let text = text.strip_suffix(style.money_after.trim()).unwrap_or(text);
    text.trim_start_matches(['$', '€', '£', '¥']).trim_end_matches(['$', '€', '£', '¥']).trim()
}

/// Reads a decimal, a fraction, or a whole number and a fraction.
pub(in super::super) fn number(text: &str, style: &NumberStyle) -> Result<Exact, Problem> {
    if let Some(positive) = text.strip_prefix('-') {
        let size = positive.trim();
        let twice = size.starts_with('-');
        return if twice { Err(Problem::NotANumber) } else { number(size, style).and(Err(Problem::Negative)) };
    }
    let Some((before, divisor)) = text.split_once('/') else {
        return decimal(text, style);
    };
    let (whole, dividend) = before.trim().rsplit_once(' ').unwrap_or(("0", before.trim()));
    let whole_number = |digits: &str| {
        let all = !digits.is_empty() && digits.len() <= INTEGER_DIGITS && digits.bytes().all(|b| b.is_ascii_digit());
        all.then(|| Exact::from_plain(digits, 0)).flatten().ok_or(Problem::NotANumber)
    };
    let (whole, dividend, divisor) =
        (whole_number(whole.trim())?, whole_number(dividend)?, whole_number(divisor.trim())?);
    let part = dividend.over(divisor).map_err(|_| Problem::NotANumber)?;
    let number = whole.plus(part.rounded(TYPED_PLACES as u32)).map_err(|_| Problem::TooLarge)?;
    if number.keeps() { Ok(number) } else { Err(Problem::TooLarge) }
}

fn decimal(text: &str, style: &NumberStyle) -> Result<Exact, Problem> {
    if !text.bytes().any(|byte| byte.is_ascii_digit()) {
        return Err(Problem::NotANumber);
    }
    let text: String = if style.group.is_whitespace() { regroup_blanks(text) } else { text.to_string() };
    if !text.bytes().all(|byte| byte.is_ascii_digit() || matches!(byte, b'.' | b',')) {
        return Err(Problem::NotANumber);
    }
    let plain = match (text.rfind('.'), text.rfind(',')) {
        (None, None) => text.clone(),
        (Some(point), Some(comma)) => {
            let (decimal, group) = if point > comma { ('.', ',') } else { (',', '.') };
            let (whole, part) = text.split_once(decimal).ok_or(Problem::NotANumber)?;
            if !grouped(whole, group) || part.contains(['.', ',']) {
                return Err(Problem::NotANumber);
            }
            format!("{}.{part}", whole.replace(group, ""))
        }
        (Some(_), None) => one_sign(&text, '.', style)?,
        (None, Some(_)) => one_sign(&text, ',', style)?,
    };
    let plain = if plain.starts_with('.') { format!("0{plain}") } else { plain };
    let (whole, part) = plain.split_once('.').unwrap_or((&plain, ""));
    if whole.trim_start_matches('0').len() > INTEGER_DIGITS {
        return Err(Problem::TooLarge);
    }
    if part.trim_end_matches('0').len() > TYPED_PLACES {
        return Err(Problem::TooFine);
    }
    let trimmed = if part.is_empty() { whole.to_string() } else { format!("{whole}.{}", part.trim_end_matches('0')) };
    Exact::from_plain(trimmed.trim_end_matches('.'), TYPED_PLACES).ok_or(Problem::NotANumber)
}

/// Removes blanks that stand between groups of thousands.
fn regroup_blanks(text: &str) -> String {
    if grouped(text.split([',', '.']).next().unwrap_or_default(), ' ') { text.replace(' ', "") } else { text.into() }
}

/// Reads a text with one kind of sign, which may mean thousands or decimals. Returns plain digits with a
/// point.
fn one_sign(text: &str, sign: char, style: &NumberStyle) -> Result<String, Problem> {
    let decimal = || text.replace(sign, ".");
    if text.matches(sign).count() > 1 {
        return if grouped(text, sign) { Ok(text.replace(sign, "")) } else { Err(Problem::NotANumber) };
    }
    if sign == style.decimal || !grouped(text, sign) {
        return Ok(decimal());
    }
    if sign == style.group {
        return Ok(text.replace(sign, ""));
    }
    Err(Problem::Ambiguous {
        as_thousands: text.replace(sign, ""),
        as_decimals: text.replace(sign, &style.decimal.to_string()),
    })
}

/// Whether `sign` stands once in the digits, where it can group thousands.
pub(super) fn grouped_once(text: &str, sign: char) -> bool {
    text.matches(sign).count() == 1 && grouped(text, sign)
}

/// Whether `sign` groups thousands (1,000 or 1,00,000): there is no leading zero, the last group has three
/// digits, and those before it have two or three.
fn grouped(text: &str, sign: char) -> bool {
    let groups: Vec<&str> = text.split(sign).collect();
    let Some((first, rest)) = groups.split_first() else { return false };
    let digits = |group: &&str| group.bytes().all(|byte| byte.is_ascii_digit());
    let Some((last, middle)) = rest.split_last() else { return digits(first) };
    let first_fits = (1..=3).contains(&first.len()) && !first.starts_with('0');
    let middle_fits = middle.iter().all(|group| (2..=3).contains(&group.len()));
    first_fits && middle_fits && last.len() == 3 && groups.iter().all(digits)
}
