//! Days as tills write them.

use crate::foundation::measure::Date;

/// Which comes first where a day is written with strokes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DayOrder {
    /// 23/11/2026.
    DayFirst,
    /// 11/23/2026.
    MonthFirst,
}

/// What the days of a whole list say of their order.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Days {
    /// No day is written with strokes, or all can be read in this order only.
    Clear(DayOrder),
    /// They can be read in either order, or some in one and some in the other: the person knows.
    Open,
}

/// The three numbers of a day written with `stroke` between them, the year last.
fn parts(text: &str, stroke: char) -> Option<(u8, u8, i32)> {
    let mut parts = text.split(stroke);
    let (Some(one), Some(two), Some(year), None) = (parts.next(), parts.next(), parts.next(), parts.next()) else {
        return None;
    };
    let digits = |part: &str, most| (1..=most).contains(&part.len()) && part.bytes().all(|byte| byte.is_ascii_digit());
    if !digits(one, 2) || !digits(two, 2) || !digits(year, 4) || year.len() != 4 {
        return None;
    }
    Some((one.parse().ok()?, two.parse().ok()?, year.parse().ok()?))
}

/// The day without the time that may follow it.
fn without_time(text: &str) -> &str {
    text.trim().split([' ', 'T']).next().unwrap_or_default()
}

/// Reads a day: 2026-11-23, 23.11.2026, or with strokes in the given order; a time of day may
/// follow it.
pub(super) fn read_day(text: &str, order: DayOrder) -> Option<Date> {
    let text = without_time(text);
    if let Some((day, month, year)) = parts(text, '.') {
        return Date::new(year, month, day);
    }
    match (parts(text, '/'), order) {
        (Some((day, month, year)), DayOrder::DayFirst) | (Some((month, day, year)), DayOrder::MonthFirst) => {
            Date::new(year, month, day)
        }
        (None, _) => Date::from_text(text),
    }
}

impl Days {
    /// What these days say together. Those that are no day in either order say nothing.
    pub fn of<'a>(days: impl Iterator<Item = &'a str>) -> Days {
        let (mut day_first, mut month_first, mut stroked) = (true, true, false);
        for day in days.filter(|day| parts(without_time(day), '/').is_some()) {
            let reads = |order| read_day(day, order).is_some();
            let (one, other) = (reads(DayOrder::DayFirst), reads(DayOrder::MonthFirst));
            if one || other {
                stroked = true;
                day_first &= one;
                month_first &= other;
            }
        }
        match (stroked, day_first, month_first) {
            (false, _, _) | (true, true, false) => Days::Clear(DayOrder::DayFirst),
            (true, false, true) => Days::Clear(DayOrder::MonthFirst),
            (true, _, _) => Days::Open,
        }
    }
}
