//! What is said beside a value that may not be meant.

use super::Speaker;
use crate::foundation::jump::{Doubt, Kind, USUAL_DENSITY, USUAL_LABOR, USUAL_SOLD, USUAL_STOCK};
use crate::foundation::measure::{Density, Exact, Time};
use crate::say;

/// What a value was and is now, and what is unusual about it.
pub fn jump(kind: Kind, doubt: Doubt, was: Option<&str>, now: &str, speaker: &Speaker) -> String {
    let moved = match was {
        Some(was) => say!(market::was_now, was = was, now = now),
        None => say!(market::now_only, now = now),
    };
    match (doubt, usual(kind, speaker)) {
        (Doubt::Unusual, Some(usual)) => [moved, usual].join(" "),
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

fn usual(kind: Kind, speaker: &Speaker) -> Option<String> {
    match kind {
        Kind::Tax => Some(say!(market::rare_tax).to_string()),
        Kind::Density if speaker.units().weighs_cups() => {
            let [low, high] =
                USUAL_DENSITY.map(|density| speaker.cup_weight(Density::from_grams_per_millilitre(density), 1));
            Some(say!(market::rare_cup_weight, low = low, high = high))
        }
        Kind::Density => {
            let [low, high] = USUAL_DENSITY.map(|density| speaker.number(density));
            Some(say!(market::rare_density, low = low, high = high))
        }
        Kind::Stock => Some(say!(market::rare_stock, most = speaker.number(Exact::from(USUAL_STOCK)))),
        Kind::TrimYield => Some(say!(market::rare_trim_yield).to_string()),
        Kind::Wage => Some(say!(market::rare_wage).to_string()),
        Kind::Labor => {
            let most = Time::from_seconds(Exact::from(USUAL_LABOR));
            Some(say!(market::rare_labor, most = speaker.typed_time(most)))
        }
        Kind::Sold => Some(say!(market::rare_sold, most = speaker.number(Exact::from(USUAL_SOLD)))),
        Kind::SoldInWeek => Some(say!(market::rare_sold_in_week, most = speaker.number(Exact::from(USUAL_SOLD)))),
        Kind::Price | Kind::Pack | Kind::Size | Kind::Yield | Kind::Margin | Kind::SmallShare => None,
    }
}
