//! What a trial of a change shows.

use super::Speaker;
use super::dates::day;
use super::market::signed_money;
use crate::foundation::measure::{Date, Exact, Money};
use crate::foundation::statistics::{Interval, MOST_MORE, Spread};
use crate::sizes::trial::{Judged, More, Verdict};

/// Mondays that are named one by one.
const NAMED: usize = 4;

/// What a trial does not prove.
pub const TRIAL_CAUTION: &str = "A trial is no proof. Weather, season, holidays, a new neighbour or a price elsewhere change sales too, and the change under trial gets the credit or the blame for all of it. Compare like weeks with like, and change one thing at a time.";

/// A verdict in a word or two.
pub const fn verdict(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Better => "Better",
        Verdict::Worse => "Worse",
        Verdict::NotYetClear(_) => "Not yet clear",
        Verdict::NotEnough { .. } => "Not enough weeks",
    }
}

/// What a verdict means, and how many weeks it still needs.
pub fn verdict_means(judged: &Judged) -> String {
    let nothing_sold = judged.before.nothing_sold() && judged.after.nothing_sold();
    match judged.verdict {
        Verdict::NotYetClear(More::NoDifference) if nothing_sold => {
            "Nothing of it was sold in any of these weeks, so there is nothing to compare.".to_string()
        }
        Verdict::Better => format!("The weeks since the change brought more than those before.{}", scatter(judged)),
        Verdict::Worse => format!("The weeks since the change brought less than those before.{}", scatter(judged)),
        Verdict::NotYetClear(More::NoDifference) => {
            "The weeks before and since brought the same on average: there is no difference to become clear."
                .to_string()
        }
        Verdict::NotYetClear(More::Weeks(more)) => {
            let weeks = if more == 1 { "1 week more".to_string() } else { format!("{more} weeks more") };
            format!(
                "The difference may still be chance. If the weeks go on as they did, it would likely take {weeks} until it is clear."
            )
        }
        Verdict::NotYetClear(More::TooMany) => format!(
            "The difference may be chance: beside how weeks scatter, and how few there are before the change, it is so small that even {MOST_MORE} weeks more, two years, would likely not make it clear. Weeks from longer before, if you have them, may."
        ),
        Verdict::NotEnough { before, after } => {
            let still = |count: usize, side: &str| match count {
                0 => None,
                1 => Some(format!("1 week more {side}")),
                count => Some(format!("{count} weeks more {side}")),
            };
            let needed: Vec<String> =
                [still(before, "before the change"), still(after, "with it")].into_iter().flatten().collect();
            format!("A comparison needs two weeks on each side, to see how weeks scatter: {}.", needed.join(" and "))
        }
    }
}

/// That the weeks do not scatter at all, where they do not.
fn scatter(judged: &Judged) -> &'static str {
    match judged.interval {
        Some(Interval::Point(_)) => {
            " But the weeks on each side are all alike, which real weeks never are: check what was written down."
        }
        _ => " Chance alone would rarely make such a difference.",
    }
}

/// The difference of a week with its sign: "+$47.77".
pub fn trial_difference(interval: &Interval, speaker: &Speaker) -> String {
    signed_money(Money::from_major(interval.difference()), speaker)
}

/// Its interval: "from −$1.20 to +$6.40".
pub fn trial_interval(interval: &Interval, speaker: &Speaker) -> String {
    let signed = |number| signed_money(Money::from_major(number), speaker);
    match interval {
        Interval::Point(_) => "no scatter to judge by".to_string(),
        Interval::Range { low, high, .. } => format!("from {} to {}", signed(*low), signed(*high)),
    }
}

/// How the difference and its interval came about, with their own numbers.
pub fn trial_how(judged: &Judged, speaker: &Speaker) -> String {
    let (Some(before), Some(after), Some(interval)) = (&judged.before.spread, &judged.after.spread, &judged.interval)
    else {
        return String::new();
    };
    let money = |number: Exact| speaker.money(Money::from_major(number));
    let weeks = |spread: &Spread| format!("{} over {} weeks", money(spread.mean), spread.count);
    let difference = interval.difference();
    let than = if difference.is_negative() { "less" } else { "more" };
    let means = format!(
        "Mean before {}, with the change {}: {} {than} a week.",
        weeks(before),
        weeks(after),
        money(difference.abs())
    );
    match interval {
        Interval::Point(_) => format!("{means} No week differs from the others on its side, so there is no interval."),
        Interval::Range { low, high, degrees, .. } => format!(
            "{means} Single weeks lie about {} from their mean before and {} with the change (standard deviation). From these, by Welch's t with {} degrees of freedom, the interval from {} to {}: 95 times of 100 such an interval holds the true difference.",
            money(before.deviation),
            money(after.deviation),
            speaker.rounded(*degrees, 1),
            money(*low),
            money(*high)
        ),
    }
}

/// Which weeks are not counted, and why. Returns an empty text if all are.
pub fn trial_left_out(judged: &Judged) -> String {
    let missing: Vec<&Date> = judged.before.missing.iter().chain(&judged.after.missing).collect();
    let mut said = Vec::new();
    if !missing.is_empty() {
        let named: Vec<String> = missing.iter().take(NAMED).map(|monday| day(**monday)).collect();
        let more = match missing.len().saturating_sub(named.len()) {
            0 => String::new(),
            count => format!(" and {count} more"),
        };
        said.push(format!(
            "Not written down, so left out: {} {}{more}.",
            if missing.len() == 1 { "the week of" } else { "the weeks of" },
            named.join(", ")
        ));
    }
    if let Some(running) = judged.running {
        said.push(format!("The week of {} is not over yet and not counted.", day(running)));
    }
    said.join(" ")
}
