//! Days and times as they are written where the person lives.

use super::voice;
use crate::foundation::measure::{Date, Parts};

/// How days and times are written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct DateStyle {
    /// A day with its year: "Nov 23, 2026".
    pub with_year: DayPattern,
    /// A day of this year: "Nov 23".
    pub without_year: DayPattern,
    /// A time of day: "5:05 PM".
    pub time: TimePattern,
}

/// A piece of a day or a time.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Piece {
    /// The year in four digits.
    Year,
    /// The name of the month.
    Month,
    /// The day of the month.
    Day,
    /// The hour.
    Hour,
    /// The minute in two digits.
    Minute,
    /// Before or after noon.
    Half,
    /// What stands between.
    Text(String),
}

/// How a day is written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct DayPattern {
    /// The names of the months, from January on.
    pub months: Vec<String>,
    /// What is written, in order.
    pub pieces: Vec<Piece>,
}

/// How a time of day is written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TimePattern {
    /// What is written, in order.
    pub pieces: Vec<Piece>,
    /// The names of the halves of a day, where hours go to 12.
    pub halves: Option<(String, String)>,
    /// Whether an hour has two digits.
    pub two_digits: bool,
}

impl DateStyle {
    /// Nov 23, 2026, 5:05 PM.
    pub fn english() -> DateStyle {
        let months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
        let months: Vec<String> = months.iter().map(ToString::to_string).collect();
        let text = |text: &str| Piece::Text(text.into());
        let without_year = vec![Piece::Month, text(" "), Piece::Day];
        let with_year = [without_year.as_slice(), &[text(", "), Piece::Year]].concat();
        DateStyle {
            with_year: DayPattern { months: months.clone(), pieces: with_year },
            without_year: DayPattern { months, pieces: without_year },
            time: TimePattern {
                pieces: vec![Piece::Hour, text(":"), Piece::Minute, text("\u{202f}"), Piece::Half],
                halves: Some(("AM".into(), "PM".into())),
                two_digits: false,
            },
        }
    }
}

impl DayPattern {
    /// The pattern that shows in the parts of one day of each month, as
    /// `Intl.DateTimeFormat.formatToParts` of ECMA-402 gives them.
    pub fn from_samples(months: &[Parts]) -> DayPattern {
        let name = |parts: &Parts| {
            let month = parts.iter().find(|(kind, _)| kind == "month");
            month.map(|(_, text)| text.clone()).unwrap_or_default()
        };
        let pieces = months.first().map(|parts| pieces(parts)).unwrap_or_default();
        DayPattern { months: months.iter().map(name).collect(), pieces }
    }

    fn say(&self, date: Date) -> String {
        let (year, month, day) = date.parts();
        let month = self.months.get(usize::from(month).saturating_sub(1)).map(String::as_str).unwrap_or_default();
        say(&self.pieces, |piece| match piece {
            Piece::Year => year.to_string(),
            Piece::Month => month.to_string(),
            Piece::Day => day.to_string(),
            _ => String::new(),
        })
    }
}

impl TimePattern {
    /// The pattern that shows in the parts of 9:05 in the morning and 9:05 in the evening.
    pub fn from_samples(morning: &Parts, evening: &Parts) -> TimePattern {
        let part = |parts: &Parts, kind: &str| parts.iter().find(|(it, _)| it == kind).map(|(_, text)| text.clone());
        let halves = part(morning, "dayPeriod").zip(part(evening, "dayPeriod"));
        let two_digits = part(morning, "hour").is_some_and(|hour| hour.starts_with('0'));
        TimePattern { pieces: pieces(morning), halves, two_digits }
    }

    fn say(&self, hour: u32, minute: u32) -> String {
        let shown = match (&self.halves, hour % 12) {
            (None, _) => hour,
            (Some(_), 0) => 12,
            (Some(_), hour) => hour,
        };
        let half = self.halves.as_ref().map(|(before, after)| if hour < 12 { before } else { after });
        say(&self.pieces, |piece| match piece {
            Piece::Hour if self.two_digits => format!("{shown:02}"),
            Piece::Hour => shown.to_string(),
            Piece::Minute => format!("{minute:02}"),
            Piece::Half => half.cloned().unwrap_or_default(),
            _ => String::new(),
        })
    }
}

fn pieces(parts: &Parts) -> Vec<Piece> {
    let piece = |(kind, text): &(String, String)| match kind.as_str() {
        "year" => Piece::Year,
        "month" => Piece::Month,
        "day" => Piece::Day,
        "hour" => Piece::Hour,
        "minute" => Piece::Minute,
        "dayPeriod" => Piece::Half,
        _ => Piece::Text(text.clone()),
    };
    parts.iter().map(piece).collect()
}

fn say(pieces: &[Piece], value: impl Fn(&Piece) -> String) -> String {
    let one = |piece: &Piece| match piece {
        Piece::Text(text) => text.clone(),
        piece => value(piece),
    };
    pieces.iter().map(one).collect()
}

/// A day with its year: "Nov 23, 2026".
pub fn day(date: Date) -> String {
    voice::here().dates().with_year.say(date)
}

/// A day without its year: "Nov 23".
pub fn short_day(date: Date) -> String {
    voice::here().dates().without_year.say(date)
}

/// A time of day: "5:05 PM".
pub fn time_of_day(hour: u32, minute: u32) -> String {
    voice::here().dates().time.say(hour, minute)
}
