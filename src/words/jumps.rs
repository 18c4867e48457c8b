//! What is said beside a value that may not be meant.

use crate::foundation::jump::{Doubt, Kind};

/// What a value was and is now, and what is unusual about it.
pub fn jump(kind: Kind, doubt: Doubt, was: Option<&str>, now: &str) -> String {
    let moved = match was {
        Some(was) => format!("Was {was}, now {now}."),
        None => format!("Now {now}."),
    };
    match (doubt, usual(kind)) {
        (Doubt::Unusual, Some(usual)) => format!("{moved} {usual}"),
        _ => moved,
    }
}

/// That numbers may not be what was meant, on other screens than the open one.
pub fn left_doubtful(names: &[&str]) -> String {
    match names {
        [] => String::new(),
        [one] => format!("Check “{one}”. It may not be what you meant."),
        [first, others @ ..] => {
            format!("Check “{first}” and {} more. They may not be what you meant.", others.len())
        }
    }
}

const fn usual(kind: Kind) -> Option<&'static str> {
    match kind {
        Kind::Tax => Some("A tax over 50 % is rare."),
        Kind::Density => Some("Most foods and drinks are between 0.2 and 3 g/mL."),
        Kind::TrimYield => Some("A trim yield under 5 % is rare."),
        Kind::Price | Kind::Pack | Kind::Size | Kind::Yield => None,
    }
}
