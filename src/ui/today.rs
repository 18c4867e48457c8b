//! The clock on the wall: the engine never asks for it.

use crate::foundation::measure::{Date, Month};
use crate::words;

/// Today, where the person is. The first day that can be written where the clock is beyond all
/// days.
pub fn today() -> Date {
    day_of(&js_sys::Date::new_0())
}

/// The month that it is where the person is.
pub fn this_month() -> Option<Month> {
    Month::from_number(today().parts().1)
}

fn day_of(date: &js_sys::Date) -> Date {
    let part = |number: u32| u8::try_from(number).ok();
    let year = i32::try_from(date.get_full_year()).ok();
    let month = part(date.get_month().saturating_add(1));
    let found = year.zip(month).zip(part(date.get_date())).and_then(|((year, month), day)| Date::new(year, month, day));
    found.unwrap_or(Date::FIRST)
}

/// Now, in milliseconds since 1970.
pub fn now() -> u64 {
    js_sys::Date::now().max(0.0) as u64
}

/// When today began where the person is, in milliseconds since 1970.
pub fn midnight() -> u64 {
    let now = js_sys::Date::new_0();
    let (year, month) = (now.get_full_year(), i32::try_from(now.get_month()).unwrap_or_default());
    let day = i32::try_from(now.get_date()).unwrap_or(1);
    js_sys::Date::new_with_year_month_day(year, month, day).get_time().max(0.0) as u64
}

/// A day and time, from milliseconds since 1970, in words that hold on other days too.
pub fn day_and_time(at: u64) -> String {
    let then = js_sys::Date::new(&(at as f64).into());
    words::steps::day_and_time(day_of(&then), then.get_hours(), then.get_minutes())
}

/// When something was done, from milliseconds since 1970, in words as of today.
pub fn moment(at: u64) -> String {
    let then = js_sys::Date::new(&(at as f64).into());
    words::steps::moment(day_of(&then), then.get_hours(), then.get_minutes(), today())
}
