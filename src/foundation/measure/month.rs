//! The months of the year.

use super::stored_by_name;

/// A month of the calendar.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[allow(missing_docs, reason = "each is the month of that name")]
pub enum Month {
    January,
    February,
    March,
    April,
    May,
    June,
    July,
    August,
    September,
    October,
    November,
    December,
}

stored_by_name! {
    Month {
        January = "january",
        February = "february",
        March = "march",
        April = "april",
        May = "may",
        June = "june",
        July = "july",
        August = "august",
        September = "september",
        October = "october",
        November = "november",
        December = "december",
    }
}

impl Month {
    /// The month with this number, from 1 to 12.
    pub fn from_number(number: u8) -> Option<Month> {
        let place = usize::from(number).checked_sub(1)?;
        Month::ALL.get(place).copied()
    }

    /// Its number, from 1 to 12.
    pub fn number(self) -> u8 {
        (1..=12).find(|number| Month::from_number(*number) == Some(self)).unwrap_or(12)
    }
}
