//! Reading a temperature.

use super::{ReadError, digits};
use crate::foundation::measure::{NumberStyle, Scale, System, Temperature};

/// Reads a temperature: "40 F", "40 °F", "4.5 C", "-2". A bare number takes the system's scale.
///
/// # Errors
/// A [`ReadError`] if the text is anything else, if the number has too many digits, or if its sign has two
/// readings.
pub fn read_temperature(text: &str, system: System, style: &NumberStyle) -> Result<Temperature, ReadError> {
    let tidy = digits::tidy(text);
    let (below, rest) = match tidy.strip_prefix(['-', '\u{2212}']) {
        Some(rest) => (true, rest),
        None => (false, tidy.as_str()),
    };
    if rest.is_empty() {
        return Err(ReadError::Empty);
    }
    let named = |sign: char| sign.is_ascii_alphabetic() || !sign.is_ascii();
    let (number, name) = rest.split_at(rest.find(named).unwrap_or(rest.len()));
    let number = number.trim();
    let number = digits::number(number, style).map_err(|problem| problem.said_of(text, &tidy, number))?;
    let name = name.trim().trim_start_matches(['°', 'º']).trim();
    let scale = match name.to_ascii_lowercase().as_str() {
        "" => Scale::of(system),
        "f" | "fahrenheit" | "deg f" => Scale::Fahrenheit,
        "c" | "celsius" | "deg c" => Scale::Celsius,
        _ => return Err(ReadError::NotATemperature { unit: name.to_string() }),
    };
    Ok(Temperature::new(if below { number.negated() } else { number }, scale))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn temperatures() {
        let read = |text: &str, system| read_temperature(text, system, &NumberStyle::english("$"));
        let us = |text: &str| read(text, System::UsCustomary).unwrap().to_string();
        assert_eq!(
            ["40", "40 F", "40°F", "68 °f", "4.4 C", "20 º C", "-2", "\u{2212}2 C", "40 deg F"].map(us),
            ["40 F", "40 F", "40 F", "68 F", "4.4 C", "20 C", "-2 F", "-2 C", "40 F"]
        );
        assert_eq!(read("20", System::Metric).unwrap().to_string(), "20 C");
        assert_eq!(read("20", System::Imperial).unwrap().to_string(), "20 C");
        for empty in [" ", "-"] {
            assert_eq!(read(empty, System::Metric), Err(ReadError::Empty), "{empty:?}");
        }
        assert_eq!(read("40 K", System::Metric), Err(ReadError::NotATemperature { unit: "K".into() }));
        assert_eq!(read("cold", System::Metric), Err(ReadError::NotANumber { text: "cold".into() }));
    }
}
