//! The clock on the wall: the engine never asks for it.

use crate::measure::Date;

/// Today, where the person is. The first day that can be written where the clock is beyond all
/// days.
pub fn today() -> Date {
    let now = js_sys::Date::new_0();
    let part = |number: u32| u8::try_from(number).ok();
    let year = i32::try_from(now.get_full_year()).ok();
    let month = part(now.get_month().saturating_add(1));
    let found = year.zip(month).zip(part(now.get_date())).and_then(|((year, month), day)| Date::new(year, month, day));
    found.unwrap_or(Date::FIRST)
}

/// Now, in milliseconds since 1970.
pub fn now() -> u64 {
    js_sys::Date::now().max(0.0) as u64
}
