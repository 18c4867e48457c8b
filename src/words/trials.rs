//! What a trial of a change shows.

use super::dates::day;
use super::market::signed_money;
use super::{Speaker, number};
use crate::foundation::measure::{Date, Exact, Money};
use crate::foundation::statistics::{Interval, MOST_MORE, Spread};
use crate::say;
use crate::sizes::trial::{Judged, More, Verdict};

/// Mondays that are named one by one.
const NAMED: usize = 4;

fn count(weeks: u32) -> usize {
    usize::try_from(weeks).unwrap_or(usize::MAX)
}

/// What a trial does not prove.
pub fn trial_caution() -> &'static str {
    say!(sales::trial_caution)
}

/// A verdict in a word or two.
pub fn verdict(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Better => say!(sales::better),
        Verdict::Worse => say!(sales::worse),
        Verdict::NotYetClear(More::Weeks(_)) => say!(sales::not_clear_yet),
        Verdict::NotYetClear(More::TooMany | More::NoDifference) => say!(sales::too_close),
        Verdict::NotEnough { .. } => say!(sales::needs_more_weeks),
    }
}

/// What a verdict means, and how many weeks it still needs.
pub fn verdict_means(judged: &Judged) -> String {
    let nothing_sold = judged.before.nothing_sold() && judged.after.nothing_sold();
    match judged.verdict {
        Verdict::NotYetClear(More::NoDifference) if nothing_sold => say!(sales::nothing_sold).to_string(),
        Verdict::Better => [say!(sales::weeks_earned_more), scatter(judged)].join(" "),
        Verdict::Worse => [say!(sales::weeks_earned_less), scatter(judged)].join(" "),
        Verdict::NotYetClear(More::NoDifference) => say!(sales::no_difference).to_string(),
        Verdict::NotYetClear(More::Weeks(more)) => say!(sales::may_be_chance, weeks = count(more)),
        Verdict::NotYetClear(More::TooMany) => say!(sales::too_small_to_tell, weeks = number(count(MOST_MORE))),
        Verdict::NotEnough { before, after } => {
            let needed = [
                Some(say!(sales::two_weeks_each_side).to_string()),
                (before > 0).then(|| say!(sales::weeks_needed_before, weeks = before)),
                (after > 0).then(|| say!(sales::weeks_needed_since, weeks = after)),
            ];
            needed.into_iter().flatten().collect::<Vec<_>>().join(" ")
        }
    }
}

/// Whether the weeks scatter at all, and what that says of the difference.
fn scatter(judged: &Judged) -> &'static str {
    match judged.interval {
        Some(Interval::Point(_)) => say!(sales::weeks_all_alike),
        _ => say!(sales::chance_is_unlikely),
    }
}

/// The difference of a week with its sign: "+$47.77".
pub fn trial_difference(interval: &Interval, speaker: &Speaker) -> String {
    signed_money(Money::from_major(interval.difference()), speaker)
}

/// Its interval: "−$1.20 to +$6.40".
pub fn trial_interval(interval: &Interval, speaker: &Speaker) -> String {
    let signed = |number| signed_money(Money::from_major(number), speaker);
    match interval {
        Interval::Point(_) => say!(sales::no_range).to_string(),
        Interval::Range { low, high, .. } => {
            say!(sales::likely_between, low = signed(*low), high = signed(*high))
        }
    }
}

/// How the difference and its interval came about, with their own numbers.
pub fn trial_how(judged: &Judged, speaker: &Speaker) -> String {
    let (Some(before), Some(after), Some(interval)) = (&judged.before.spread, &judged.after.spread, &judged.interval)
    else {
        return String::new();
    };
    let money = |number: Exact| speaker.money(Money::from_major(number));
    let weeks = |spread: &Spread| number(count(spread.count));
    let difference = interval.difference();
    let gap = money(difference.abs());
    let range = match interval {
        Interval::Point(_) => say!(sales::no_range_in_math).to_string(),
        Interval::Range { low, high, degrees, .. } => say!(
            sales::range_in_math,
            before = money(before.deviation),
            since = money(after.deviation),
            degrees = speaker.rounded(*degrees, 1),
            low = money(*low),
            high = money(*high)
        ),
    };
    [
        say!(sales::average_before, money = money(before.mean), weeks = weeks(before)),
        say!(sales::average_since, money = money(after.mean), weeks = weeks(after)),
        if difference.is_negative() {
            say!(sales::less_per_week, money = gap)
        } else {
            say!(sales::more_per_week, money = gap)
        },
        range,
    ]
    .join(" ")
}

/// Which weeks are not counted, and why. Returns an empty text if all are.
pub fn trial_left_out(judged: &Judged) -> String {
    let missing: Vec<&Date> = judged.before.missing.iter().chain(&judged.after.missing).collect();
    let mut said = Vec::new();
    if !missing.is_empty() {
        let named: Vec<String> = missing.iter().take(NAMED).map(|monday| day(**monday)).collect();
        let weeks = named.join(", ");
        said.push(match missing.len().saturating_sub(named.len()) {
            0 => say!(sales::weeks_missing, count = missing.len(), weeks = weeks),
            more => say!(sales::weeks_missing_and_more, weeks = weeks, more = number(more)),
        });
    }
    if let Some(running) = judged.running {
        said.push(say!(sales::running_week, day = day(running)));
    }
    said.join(" ")
}
