//! The day that it is here, from the browser.

use crate::measure::Date;

/// Today, where the person is.
pub fn today() -> Date {
    let now = js_sys::Date::new_0();
    let parts = || Some((i32::try_from(now.get_full_year()).ok()?, u8::try_from(now.get_month() + 1).ok()?));
    let day = parts().and_then(|(year, month)| Date::new(year, month, u8::try_from(now.get_date()).ok()?));
    day.unwrap_or(Date::FIRST)
}
