//! Days of the calendar.

use std::borrow::Cow;
use std::fmt;

use serde::{Deserialize, Deserializer, Serialize, Serializer, de};

/// Days in a week.
const WEEK: i32 = 7;

/// A day of the calendar, from the year 0 to 9999. It is written as in ISO 8601: `2026-11-23`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Date(time::Date);

const fn first() -> time::Date {
    match time::Date::from_ordinal_date(0, 1) {
        Ok(date) => date,
        Err(_) => time::Date::MIN,
    }
}

impl Date {
    /// The first day that can be written.
    pub const FIRST: Date = Date(first());
    /// The last day that can be written.
    pub const LAST: Date = Date(time::Date::MAX);

    /// The day of a year, a month from 1 to 12, and a day of the month from 1. Returns `None` if the
    /// calendar has no such day.
    pub fn new(year: i32, month: u8, day: u8) -> Option<Date> {
        let month = time::Month::try_from(month).ok()?;
        time::Date::from_calendar_date(year, month, day).ok().filter(|date| date.year() >= 0).map(Date)
    }

    /// Reads four digits, two and two, with hyphens between them: `2026-11-23`. Returns `None` for anything
    /// else, or if the calendar has no such day.
    pub fn from_text(text: &str) -> Option<Date> {
        let (year, rest) = text.split_once('-')?;
        let (month, day) = rest.split_once('-')?;
        let digits = |part: &str, count| part.len() == count && part.bytes().all(|byte| byte.is_ascii_digit());
        if !digits(year, 4) || !digits(month, 2) || !digits(day, 2) {
            return None;
        }
        Date::new(year.parse().ok()?, month.parse().ok()?, day.parse().ok()?)
    }

    /// Year, month from 1 to 12, and day of the month.
    pub fn parts(self) -> (i32, u8, u8) {
        (self.0.year(), u8::from(self.0.month()), self.0.day())
    }

    /// The Monday of its week; weeks begin on Monday (ISO 8601).
    pub fn monday(self) -> Date {
        self.plus_days(i32::from(self.0.weekday().number_days_from_monday()).saturating_neg())
    }

    /// Whether it is a Monday.
    pub fn is_monday(self) -> bool {
        self == self.monday()
    }

    /// The day this many days later, or [`Date::FIRST`] or [`Date::LAST`] if that is beyond them.
    pub fn plus_days(self, days: i32) -> Date {
        let day = self.0.to_julian_day().saturating_add(days);
        let end = if days < 0 { Date::FIRST } else { Date::LAST };
        time::Date::from_julian_day(day).ok().map(Date).filter(|date| date.0.year() >= 0).unwrap_or(end)
    }

    /// The day this many weeks later, or [`Date::FIRST`] or [`Date::LAST`] if that is beyond them.
    pub fn plus_weeks(self, weeks: i32) -> Date {
        self.plus_days(weeks.saturating_mul(WEEK))
    }

    /// The days from `earlier` to this one; below zero if this one is before it.
    pub fn days_since(self, earlier: Date) -> i32 {
        self.0.to_julian_day().saturating_sub(earlier.0.to_julian_day())
    }
}

impl fmt::Display for Date {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (year, month, day) = self.parts();
        write!(f, "{year:04}-{month:02}-{day:02}")
    }
}

impl Serialize for Date {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for Date {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Date, D::Error> {
        let text = Cow::<'de, str>::deserialize(deserializer)?;
        Date::from_text(&text)
            .ok_or_else(|| de::Error::custom(format_args!("{text:?} is not a day, such as 2026-11-23")))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn date(text: &str) -> Date {
        Date::from_text(text).unwrap_or_else(|| panic!("{text}"))
    }

    #[test]
    fn days_are_read_and_written_in_one_way() {
        for text in ["2026-11-23", "2024-02-29", "0000-01-01", "9999-12-31"] {
            assert_eq!(date(text).to_string(), text);
        }
        for text in ["", "2026-11", "26-11-23", "2026-1-23", "2026-02-29", "2026-13-01", "2026-11-31", "+026-11-23"] {
            assert_eq!(Date::from_text(text), None, "{text}");
        }
    }

    #[test]
    fn weeks_begin_on_monday() {
        // ISO 8601: 2026-W48 begins on Monday 2026-11-23; 2024-12-30 begins 2025-W01.
        for day in ["2026-11-23", "2026-11-26", "2026-11-29"] {
            assert_eq!(date(day).monday(), date("2026-11-23"));
        }
        assert_eq!(date("2025-01-05").monday(), date("2024-12-30"));
        assert!(date("2026-11-23").is_monday() && !date("2026-11-24").is_monday());
    }

    #[test]
    fn days_between() {
        assert_eq!(date("2026-11-26").plus_days(7), date("2026-12-03"));
        assert_eq!(date("2024-02-26").plus_weeks(1), date("2024-03-04"), "a leap year");
        assert_eq!(date("2026-01-01").days_since(date("2025-01-01")), 365);
        assert_eq!(date("2025-12-31").days_since(date("2026-01-01")), -1);
        assert_eq!(Date::LAST.plus_days(1), Date::LAST);
        assert_eq!(date("0000-01-01").plus_days(-1), Date::FIRST);
    }
}
