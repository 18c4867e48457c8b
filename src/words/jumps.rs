//! What is said beside a value that may not be meant.

use crate::foundation::jump::{Doubt, Kind};
use crate::say;

/// What a value was and is now, and what is unusual about it.
pub fn jump(kind: Kind, doubt: Doubt, was: Option<&str>, now: &str) -> String {
    let moved = match was {
        Some(was) => say!(market::was_now, was = was, now = now),
        None => say!(market::now_only, now = now),
    };
    match (doubt, usual(kind)) {
        (Doubt::Unusual, Some(usual)) => [&moved, usual].join(" "),
        _ => moved,
    }
}

/// That numbers may not be what was meant, on other screens than the open one.
pub fn left_doubtful(names: &[&str]) -> String {
    match names {
        [] => String::new(),
        [one] => say!(market::check_one, name = *one),
        [first, others @ ..] => say!(market::check_several, name = *first, more = others.len()),
    }
}

fn usual(kind: Kind) -> Option<&'static str> {
    match kind {
        Kind::Tax => Some(say!(market::rare_tax)),
        Kind::Density => Some(say!(market::rare_density)),
        Kind::TrimYield => Some(say!(market::rare_trim_yield)),
        Kind::Price | Kind::Pack | Kind::Size | Kind::Yield => None,
    }
}
