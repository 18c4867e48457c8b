//! What is in a usual case, as the trade writes it.

use super::Row;
use crate::foundation::measure::{Amount, Exact, System, TYPED_PLACES, Unit};

impl Row {
    /// The contents of a usual case of the United States: a suggestion for a book in US units. Returns `None` where
    /// the trade names no one amount, as in "6 to 8 ct", and for books in other units.
    pub fn contents(&self, system: System) -> Option<Amount> {
        if system == System::UsCustomary { contents(&self.case) } else { None }
    }
}

/// "40 lb" is that; "4 x 1 gal" is 4 gal; "25 lb, 48 ct" is 25 lb; "5 gal keg" is 5 gal.
fn contents(case: &str) -> Option<Amount> {
    let case = case.split(',').next()?.trim();
    let (times, each) = case.split_once(" x ").unwrap_or(("1", case));
    let (number, unit) = each.split_once(' ')?;
    let number = number_of(times)?.times(number_of(number)?).ok()?;
    let unit = ["fl oz", "oz", "lb", "gal", "kg", "g", "L", "ct"].into_iter().find(|name| {
        // What it is packed in may follow: "3 gal tub".
        unit.strip_prefix(name).is_some_and(|rest| rest.is_empty() || KINDS_OF_PACK.contains(&rest))
    })?;
    Some(Amount::new(number, unit_of(unit)?))
}

/// What a case may be packed in, behind its unit.
const KINDS_OF_PACK: [&str; 3] = [" tub", " keg", " mix"];

fn number_of(text: &str) -> Option<Exact> {
    Exact::from_plain(text, TYPED_PLACES).filter(|number| number.is_positive())
}

fn unit_of(name: &str) -> Option<Unit> {
    let symbol = if name == "ct" { "ea" } else { name };
    Unit::ALL.iter().copied().find(|unit| unit.symbol() == symbol)
}
