//! What a yield log says.

use super::dates::day;
use super::{Speaker, overflow, watch};
use crate::book::{Ingredient, Weighing};
use crate::buying::yield_log::{Step, Summary, YieldLogError, yield_of};
use crate::drink::ledger::OfferChange;
use crate::foundation::measure::{Amount, Exact, Share, System};
use crate::say;

/// Yields that are named one by one.
const NAMED: usize = 3;

/// What a step leaves, as the ingredient's own page names it.
pub fn step(step: Step) -> &'static str {
    match step {
        Step::Trim => say!(goods::trim_yield),
        Step::Press => say!(goods::juice_yield),
    }
}

/// What a log cannot do, and how to mend it.
pub fn error(error: YieldLogError, units: System) -> String {
    match error {
        YieldLogError::Missing(_) => say!(book::gone_from_book).to_string(),
        YieldLogError::NoJuiceDensity(_) if units.weighs_cups() => say!(goods::juice_cup_weight_needed).to_string(),
        YieldLogError::NoJuiceDensity(_) => say!(goods::juice_density_needed).to_string(),
        YieldLogError::Pieces => say!(goods::juice_is_no_piece).to_string(),
        YieldLogError::Arithmetic(why) => overflow(why),
    }
}

/// The mean and of how many it is: "89.1 % from 6 weighings".
pub fn mean(summary: &Summary, speaker: &Speaker) -> String {
    say!(goods::average_of, average = speaker.percent(summary.mean), weighings = summary.singles.len())
}

/// The interval for the mean, or why there is none.
pub fn interval(summary: &Summary, speaker: &Speaker) -> String {
    match summary.interval {
        None => say!(goods::range_unknown).to_string(),
        Some((low, high)) if low == high => say!(goods::range_none).to_string(),
        Some((low, high)) => {
            let (low, high) = (speaker.percent(low.max(Share::ZERO)), speaker.percent(high.min(Share::WHOLE)));
            say!(goods::range, low = low, high = high)
        }
    }
}

/// How the mean and its interval came about, with their own numbers.
pub fn how(summary: &Summary, speaker: &Speaker) -> String {
    let Some((spread, (low, high))) = summary.spread.zip(summary.interval) else {
        return say!(goods::single_weighing).to_string();
    };
    let count = summary.singles.len();
    let shares: Vec<String> = summary.singles.iter().take(NAMED).map(|single| speaker.percent(single.share)).collect();
    let (shares, average) = (shares.join(" + "), speaker.percent(summary.mean));
    let root_of = number(count, speaker);
    let average = match count.saturating_sub(NAMED) {
        0 => say!(goods::average_math, shares = shares, count = &root_of, average = average),
        more => {
            let more = number(more, speaker);
            say!(goods::average_math_and, shares = shares, more = more, count = &root_of, average = average)
        }
    };
    let mut said = vec![average, say!(goods::as_one_batch, together = speaker.percent(summary.together))];
    if low != high {
        let spread_share = Share::from_fraction(spread.deviation);
        let reach = speaker.percent(Share::from_fraction(high.minus(summary.mean).unwrap_or_default().fraction()));
        said.push(say!(goods::spread_math, spread = speaker.percent(spread_share)));
        let degrees = speaker.counted(Exact::from(spread.count.saturating_sub(1)));
        said.push(say!(goods::range_math, degrees = degrees, count = root_of, reach = reach));
        said.push(say!(goods::range_means).to_string());
    }
    if high > Share::WHOLE || low.is_negative() {
        let [none, whole] = [Share::ZERO, Share::WHOLE].map(|share| speaker.short_percent(share, 0));
        said.push(say!(goods::range_ends, none = none, whole = whole));
    }
    said.join(" ")
}

fn number(count: usize, speaker: &Speaker) -> String {
    speaker.number(Exact::new(i64::try_from(count).unwrap_or(i64::MAX), 0))
}

/// Which weighing stands apart, and what that means. Returns an empty text if none does.
pub fn outlier(summary: &Summary, speaker: &Speaker) -> String {
    let Some((outlier, farthest)) = summary.outlier().zip(summary.farthest) else { return String::new() };
    let [distance, limit] = [farthest.statistic, farthest.critical].map(|number| speaker.rounded(number, 2));
    let (day, share) = (day(outlier.day), speaker.percent(outlier.share));
    [
        say!(goods::unusual_weighing, day = day, share = share, distance = distance),
        say!(goods::unusual_limit, count = number(summary.singles.len(), speaker), limit = limit),
        say!(goods::unusual_advice).to_string(),
    ]
    .join(" ")
}

/// What was weighed: "50 lb as purchased, 44.5 lb trimmed, 24.4 lb of juice".
pub fn weights(weighing: &Weighing, speaker: &Speaker) -> String {
    let shown = |amount| speaker.amount(amount);
    let bought = shown(weighing.bought);
    match (weighing.trimmed.map(shown), weighing.pressed.map(shown)) {
        (None, None) => say!(goods::weighed_bought, bought = bought),
        (Some(trimmed), None) => say!(goods::weighed_trimmed, bought = bought, trimmed = trimmed),
        (None, Some(juice)) => say!(goods::weighed_juice, bought = bought, juice = juice),
        (Some(trimmed), Some(juice)) => say!(goods::weighed_all, bought = bought, trimmed = trimmed, juice = juice),
    }
}

/// What a weighing does not tell, and why. Returns an empty text if it tells all that was weighed.
pub fn not_told(ingredient: &Ingredient, weighing: &Weighing) -> &'static str {
    let tells = |step| matches!(yield_of(ingredient, weighing, step), Ok(Some(_)));
    match (weighing.trimmed, weighing.pressed) {
        (None, None) => say!(goods::only_purchased),
        (None, Some(_)) if !tells(Step::Press) => say!(goods::trimmed_not_weighed),
        _ => "",
    }
}

/// The weight that a volume of juice was taken for: "Counts as 8.7627 lb of juice, by density."
pub fn taken_as(juice: Amount, speaker: &Speaker) -> String {
    say!(goods::counts_as_weight, weight = speaker.amount(juice))
}

/// A yield that can be adopted beside the one in force.
pub fn proposal(step: Step, adopted: Share, now: Option<Share>, speaker: &Speaker) -> String {
    let new = speaker.percent(adopted);
    match (step, now.map(|now| speaker.percent(now))) {
        (Step::Trim, Some(old)) => say!(goods::use_trim_yield, new = new, old = old),
        (Step::Trim, None) => say!(goods::use_first_trim_yield, new = new),
        (Step::Press, Some(old)) => say!(goods::use_juice_yield, new = new, old = old),
        (Step::Press, None) => say!(goods::use_first_juice_yield, new = new),
    }
}

/// What adopting would move.
pub fn would_move(moves: &[OfferChange]) -> String {
    watch::moves(moves, false)
}
