//! What a yield log says.

use super::dates::day;
use super::{Speaker, overflow, watch};
use crate::book::{Ingredient, Weighing};
use crate::buying::yield_log::{Step, Summary, YieldLogError, yield_of};
use crate::drink::ledger::OfferChange;
use crate::foundation::measure::{Amount, Exact, Share};

/// Yields that are named one by one.
const NAMED: usize = 3;

/// What a step leaves, as the ingredient's own page names it.
pub const fn step(step: Step) -> &'static str {
    match step {
        Step::Trim => "Left after trimming",
        Step::Press => "Juice from what is trimmed",
    }
}

/// What a log cannot do, and how to mend it.
pub fn error(error: YieldLogError) -> String {
    match error {
        YieldLogError::Missing(_) => "This is not in the book any more. Undo its removal, or go back.".to_string(),
        YieldLogError::NoJuiceDensity(_) => {
            "A volume of juice has a weight once its density is known. Type the weight, or first the density of the juice on the ingredient's page.".to_string()
        }
        YieldLogError::Pieces => "Juice is weighed, or measured as a volume. Type it such as 5 lb or 2 L.".to_string(),
        YieldLogError::Arithmetic(why) => overflow(why),
    }
}

fn weighings(count: usize) -> String {
    if count == 1 { "1 weighing".to_string() } else { format!("{count} weighings") }
}

/// The mean and of how many it is: "89.1 % from 6 weighings".
pub fn mean(summary: &Summary, speaker: &Speaker) -> String {
    format!("{} from {}", speaker.percent(summary.mean), weighings(summary.singles.len()))
}

/// The interval for the mean, or why there is none.
pub fn interval(summary: &Summary, speaker: &Speaker) -> String {
    match summary.interval {
        None => "unknown: weigh a second time".to_string(),
        Some((low, high)) if low == high => "no scatter to judge by: all are alike".to_string(),
        Some((low, high)) => {
            let low = speaker.percent(low.max(Share::ZERO));
            format!("{low} to {}", speaker.percent(high.min(Share::WHOLE)))
        }
    }
}

/// How the mean and its interval came about, with their own numbers.
pub fn how(summary: &Summary, speaker: &Speaker) -> String {
    let count = summary.singles.len();
    let first: Vec<String> = summary.singles.iter().take(NAMED).map(|single| speaker.percent(single.share)).collect();
    let more = match count.saturating_sub(first.len()) {
        0 => String::new(),
        more => format!(" and {more} more"),
    };
    let together = speaker.percent(summary.together);
    let Some((spread, (low, high))) = summary.spread.zip(summary.interval) else {
        return "One weighing shows no scatter, so nobody knows how far the next will lie from it. Weigh again."
            .to_string();
    };
    let mean = format!(
        "Each weighing counts alike: {}{more}, divided by {count}, is {}. All weighed together it is {together}; there, large batches count for more.",
        first.join(" + "),
        speaker.percent(summary.mean)
    );
    if low == high {
        return mean;
    }
    let free = spread.count.saturating_sub(1);
    let degrees = if free == 1 { "1 degree".to_string() } else { format!("{free} degrees") };
    let reach = Share::from_fraction(high.minus(summary.mean).unwrap_or_default().fraction());
    let beyond = if high > Share::WHOLE || low.is_negative() {
        " No yield lies beyond 0 and 100 %, so the interval ends there: weigh more often."
    } else {
        ""
    };
    format!(
        "{mean} Single weighings lie about {} from the mean (standard deviation). Student's t with {degrees} of freedom, times that over the root of {count}, is {}: so far the interval reaches to either side. 95 times of 100 such an interval holds the true mean.{beyond}",
        speaker.percent(Share::from_fraction(spread.deviation)),
        speaker.percent(reach)
    )
}

/// Which weighing stands apart, and what that means. Returns an empty text if none does.
pub fn outlier(summary: &Summary, speaker: &Speaker) -> String {
    let Some((outlier, farthest)) = summary.outlier().zip(summary.farthest) else { return String::new() };
    let number = |number: Exact| speaker.rounded(number, 2);
    format!(
        "The weighing of {} stands apart: {} is {} standard deviations from the mean. Of {} alike, the farthest lies within {} in 95 cases of 100 (Grubbs' test). A slip of the scale or the pen, another press, other fruit? Weigh again and correct it, or leave it in: it counts.",
        day(outlier.day),
        speaker.percent(outlier.share),
        number(farthest.statistic),
        weighings(summary.singles.len()),
        number(farthest.critical)
    )
}

/// What was weighed: "50 lb in, 44.5 lb trimmed, 24.4 lb of juice".
pub fn weights(weighing: &Weighing, speaker: &Speaker) -> String {
    let shown = |amount: Amount| speaker.amount(amount);
    let mut said = format!("{} in", shown(weighing.bought));
    if let Some(trimmed) = weighing.trimmed {
        said.push_str(&format!(", {} trimmed", shown(trimmed)));
    }
    if let Some(pressed) = weighing.pressed {
        said.push_str(&format!(", {} of juice", shown(pressed)));
    }
    said
}

/// What a weighing does not tell, and why. Returns an empty text if it tells all that was weighed.
pub fn not_told(ingredient: &Ingredient, weighing: &Weighing) -> &'static str {
    let tells = |step| matches!(yield_of(ingredient, weighing, step), Ok(Some(_)));
    match (weighing.trimmed, weighing.pressed) {
        (None, None) => "only weighed in",
        (None, Some(_)) if !tells(Step::Press) => "what went into the press was not weighed",
        _ => "",
    }
}

/// The weight that a volume of juice was taken for: "Taken as 8.7627 lb of juice."
pub fn taken_as(juice: Amount, speaker: &Speaker) -> String {
    format!("Taken as {} of juice, by its density.", speaker.amount(juice))
}

/// A yield that can be adopted beside the one in force.
pub fn proposal(adopted: Share, now: Option<Share>, speaker: &Speaker) -> String {
    let adopted = speaker.percent(adopted);
    match now {
        Some(now) => format!("{adopted} instead of {}", speaker.percent(now)),
        None => format!("{adopted}, where the book has none"),
    }
}

/// What adopting would move.
pub fn would_move(moves: &[OfferChange]) -> String {
    watch::moves(moves, false)
}
