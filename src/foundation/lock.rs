//! The PIN that locks a device to the Counter.
//!
//! It keeps curious hands off, and is no security boundary: whoever reaches the browser's tools,
//! another browser or the device's storage gets past it. It is stored as it was typed, since a hash
//! of four digits would protect nothing. If it is forgotten, a sentence opens the device, so that
//! nobody loses a book by it.

/// The fewest digits of a PIN.
pub const FEWEST_DIGITS: usize = 4;
/// The most digits of a PIN.
pub const MOST_DIGITS: usize = 8;

/// Why a PIN is not taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PinError {
    /// Nothing was typed.
    Empty,
    /// It has a character other than the digits 0 to 9.
    NotDigits,
    /// It has this many digits, fewer than [`FEWEST_DIGITS`].
    TooShort(usize),
    /// It has this many digits, more than [`MOST_DIGITS`].
    TooLong(usize),
    /// Something else was typed the second time.
    NotTheSame,
}

/// Reads a PIN: what was typed, without blanks around it.
///
/// # Errors
/// A [`PinError`] if it is empty, has other characters than digits, or has too few or too many.
pub fn read_pin(typed: &str) -> Result<&str, PinError> {
    let pin = typed.trim();
    if pin.is_empty() {
        return Err(PinError::Empty);
    }
    if !pin.bytes().all(|byte| byte.is_ascii_digit()) {
        return Err(PinError::NotDigits);
    }
    match pin.len() {
        digits if digits < FEWEST_DIGITS => Err(PinError::TooShort(digits)),
        digits if digits > MOST_DIGITS => Err(PinError::TooLong(digits)),
        _ => Ok(pin),
    }
}

/// Reads a PIN that was typed twice.
///
/// # Errors
/// Those of [`read_pin`], and [`PinError::NotTheSame`].
pub fn choose_pin<'a>(typed: &'a str, again: &str) -> Result<&'a str, PinError> {
    let pin = read_pin(typed)?;
    if again.trim() == pin { Ok(pin) } else { Err(PinError::NotTheSame) }
}

/// Whether what was typed is the PIN.
pub fn is_pin(typed: &str, pin: &str) -> bool {
    typed.trim() == pin
}

/// Whether what was typed is the sentence that opens a device without its PIN. The case of its
/// letters, the number of blanks between its words, and a full stop or quotation marks around it
/// do not matter.
pub fn is_without_pin(typed: &str, sentence: &str) -> bool {
    let bare = typed.trim().trim_matches(|sign| matches!(sign, '“' | '”' | '"' | '.'));
    let mut words = bare.split_whitespace();
    sentence.split_whitespace().all(|wanted| words.next().is_some_and(|word| word.eq_ignore_ascii_case(wanted)))
        && words.next().is_none()
}

#[cfg(test)]
mod tests {
    use super::*;

    const WITHOUT_PIN: &str = "open without the PIN";

    #[test]
    fn a_pin_is_four_to_eight_digits() {
        assert_eq!(read_pin("0420"), Ok("0420"));
        assert_eq!(read_pin(" 12345678 "), Ok("12345678"));
        assert_eq!(read_pin("  "), Err(PinError::Empty));
        assert_eq!(read_pin("123"), Err(PinError::TooShort(3)));
        assert_eq!(read_pin("123456789"), Err(PinError::TooLong(9)));
        for typed in ["12a4", "12 34", "12.34", "-1234", "١٢٣٤", "１２３４"] {
            assert_eq!(read_pin(typed), Err(PinError::NotDigits), "{typed:?}");
        }
    }

    #[test]
    fn a_pin_is_typed_twice() {
        assert_eq!(choose_pin("0420", "0420 "), Ok("0420"));
        assert_eq!(choose_pin("0420", "0402"), Err(PinError::NotTheSame));
        assert_eq!(choose_pin("0420", ""), Err(PinError::NotTheSame));
        assert_eq!(choose_pin("042", "042"), Err(PinError::TooShort(3)));
    }

    #[test]
    fn only_the_pin_opens() {
        assert!(is_pin(" 0420", "0420"));
        for typed in ["", "420", "04200", "0421", WITHOUT_PIN] {
            assert!(!is_pin(typed, "0420"), "{typed:?}");
        }
    }

    #[test]
    fn the_sentence_opens_too() {
        for typed in [WITHOUT_PIN, " Open  without the pin ", "“open without the PIN”.", "OPEN WITHOUT THE PIN"] {
            assert!(is_without_pin(typed, WITHOUT_PIN), "{typed:?}");
        }
        for typed in ["", "open", "open without the", "open without the PIN now", "0420", "openwithoutthePIN"] {
            assert!(!is_without_pin(typed, WITHOUT_PIN), "{typed:?}");
        }
    }
}
