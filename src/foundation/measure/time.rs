//! Times as people read them off a watch: "1:30" is a minute and a half.

use super::read::digits;
use super::{Exact, NumberStyle, ReadError, Time, read_number, show_number};

/// Seconds in a minute.
const MINUTE: Exact = Exact::new(60, 0);

/// A time with all its digits, as minutes and seconds: "1:30", "0:07.5", "75:00".
pub fn show_time(time: Time, style: &NumberStyle) -> String {
    let seconds = time.seconds().abs();
    let split = || {
        let minutes = seconds.over(MINUTE)?.floor();
        Ok::<_, super::Overflow>((minutes, seconds.minus(minutes.times(MINUTE)?)?))
    };
    let Ok((minutes, rest)) = split() else { return show_number(time.seconds(), 0, style) };
    let sign = if time.seconds().is_negative() { "\u{2212}" } else { "" };
    let zero = if rest < Exact::new(10, 0) { "0" } else { "" };
    format!("{sign}{minutes}:{zero}{}", show_number(rest, 0, style))
}

/// Reads a time: minutes and seconds ("1:30", "0:07.5", ":45"), or one of them by its name ("90 s", "2
/// min"). A bare number is seconds.
///
/// # Errors
/// A [`ReadError`] if the text is anything else: seconds after a colon have two digits and are less than 60.
pub fn read_time(text: &str, style: &NumberStyle) -> Result<Time, ReadError> {
    let tidy = digits::tidy(text).replace('\u{ff1a}', ":");
    let not_a_time = || ReadError::NotATime { text: text.trim().to_string() };
    let minutes_of = |number: Exact| number.times(MINUTE).map_err(|_| ReadError::TooLarge);
    let seconds = if let Some((minutes, seconds)) = tidy.split_once(':') {
        let whole: String = seconds.chars().take_while(char::is_ascii_digit).collect();
        let digits_only = |text: &str| text.bytes().all(|digit| digit.is_ascii_digit());
        if minutes.starts_with('-') {
            return Err(ReadError::Negative);
        }
        if !digits_only(minutes) || whole.len() != 2 || seconds.contains([' ', '/', ':']) {
            return Err(not_a_time());
        }
        let minutes = if minutes.is_empty() { Exact::ZERO } else { read_number(minutes, style)? };
        let seconds = read_number(seconds, style).map_err(|error| match error {
            ReadError::TooFine => ReadError::TooFine,
            _ => not_a_time(),
        })?;
        if seconds >= MINUTE {
            return Err(not_a_time());
        }
        minutes_of(minutes)?.plus(seconds).map_err(|_| ReadError::TooLarge)?
    } else {
        let name_begins = tidy.find(|sign: char| sign.is_alphabetic()).unwrap_or(tidy.len());
        let (number, name) = tidy.split_at(name_begins);
        if number.trim().is_empty() && !name.is_empty() {
            return Err(not_a_time());
        }
        // The sign of a number with two readings is asked about with its unit.
        let number = if name.is_empty() { read_number(text, style)? } else { read_named(number, text, &tidy, style)? };
        match name.trim().trim_end_matches('.').to_lowercase().as_str() {
            "" | "s" | "sec" | "secs" | "second" | "seconds" | "seg" | "segundo" | "segundos" => number,
            "min" | "mins" | "minute" | "minutes" | "minuto" | "minutos" => minutes_of(number)?,
            _ => return Err(not_a_time()),
        }
    };
    if seconds.keeps() { Ok(Time::from_seconds(seconds)) } else { Err(ReadError::TooLarge) }
}

fn read_named(number: &str, text: &str, tidy: &str, style: &NumberStyle) -> Result<Exact, ReadError> {
    let number = number.trim();
    digits::number(number, style).map_err(|problem| problem.said_of(text, tidy, number))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(text: &str) -> Result<String, ReadError> {
        read_time(text, &NumberStyle::english("$")).map(|time| time.seconds().to_string())
    }

    #[test]
    fn times_are_minutes_and_seconds() {
        for (text, seconds) in [
            ("1:30", "90"),
            ("0:45", "45"),
            (":45", "45"),
            ("12:05", "725"),
            ("75:00", "4500"),
            ("0:07.5", "7.5"),
            ("90", "90"),
            ("7.5", "7.5"),
            ("1/2", "0.5"),
            ("90 s", "90"),
            ("90 sec.", "90"),
            ("2 min", "120"),
            ("1 1/2 minutes", "90"),
            ("\u{ff11}\u{ff1a}\u{ff13}\u{ff10}", "90"),
        ] {
            assert_eq!(read(text).as_deref(), Ok(seconds), "{text:?}");
        }
        let german = read_time("0:07,5", &NumberStyle::continental(""));
        assert_eq!(german, Ok(Time::from_seconds(Exact::new(75, 1))));
    }

    #[test]
    fn nothing_of_a_time_is_guessed() {
        for text in
            ["1:5", "1:60", "1:300", "1:", ":", "1:2:30", "1.5:30", "1:30 s", "m", "3 m", "1:1/2", "-:30", "1:30:00"]
        {
            let refused = matches!(read(text), Err(ReadError::NotATime { .. } | ReadError::Negative));
            assert!(refused, "{text:?}: {:?}", read(text));
        }
        assert_eq!(read(""), Err(ReadError::Empty));
        assert_eq!(read("-1:30"), Err(ReadError::Negative));
        assert_eq!(read("-90"), Err(ReadError::Negative));
        assert_eq!(read("0:00.1234567"), Err(ReadError::TooFine));
        assert_eq!(read("999999999:00"), Err(ReadError::TooLarge));
    }

    #[test]
    fn what_is_shown_is_read_back() {
        let style = NumberStyle::english("$");
        for (seconds, shown) in [
            ("0", "0:00"),
            ("5", "0:05"),
            ("45", "0:45"),
            ("90", "1:30"),
            ("7.5", "0:07.5"),
            ("59.999", "0:59.999"),
            ("600", "10:00"),
            ("4500", "75:00"),
        ] {
            let time = Time::from_seconds(Exact::from_plain(seconds, 6).unwrap());
            assert_eq!(show_time(time, &style), shown);
            assert_eq!(read_time(shown, &style), Ok(time));
        }
        assert_eq!(show_time(Time::from_seconds(Exact::new(-5, 0)), &style), "\u{2212}0:05");
    }
}
