//! Days and times as they are written where the person lives.

use super::voice;
use crate::foundation::measure::{Date, Month};

/// What is written of the calendar or the clock.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum When {
    /// A day with its year: "Nov 23, 2026".
    Day(Date),
    /// A day of this year: "Nov 23".
    ShortDay(Date),
    /// A time of day, by its hour from 0 to 23 and its minute: "5:05 PM".
    Time(u32, u32),
    /// A month of any year: "November".
    Month(Month),
}

/// A day with its year: "Nov 23, 2026".
pub fn day(date: Date) -> String {
    (voice::here().when)(When::Day(date))
}

/// A day without its year: "Nov 23".
pub fn short_day(date: Date) -> String {
    (voice::here().when)(When::ShortDay(date))
}

/// A time of day: "5:05 PM".
pub fn time_of_day(hour: u32, minute: u32) -> String {
    (voice::here().when)(When::Time(hour, minute))
}

/// A month of any year: "November".
pub fn month(month: Month) -> String {
    (voice::here().when)(When::Month(month))
}

/// As in American English, for where there is no browser to ask.
#[cfg(not(target_arch = "wasm32"))]
pub(super) fn in_english(when: When) -> String {
    const MONTHS: [&str; 12] = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
    let short = |date: Date| {
        let (_, month, day) = date.parts();
        let month = MONTHS.get(usize::from(month).saturating_sub(1)).copied().unwrap_or_default();
        format!("{month} {day}")
    };
    match when {
        When::Day(date) => format!("{}, {}", short(date), date.parts().0),
        When::ShortDay(date) => short(date),
        When::Time(hour, minute) => {
            let half = if hour < 12 { "AM" } else { "PM" };
            let hour = if hour % 12 == 0 { 12 } else { hour % 12 };
            format!("{hour}:{minute:02} {half}")
        }
        When::Month(month) => {
            let name = month.stored_name();
            let (first, rest) = name.split_at(name.len().min(1));
            format!("{}{rest}", first.to_uppercase())
        }
    }
}
