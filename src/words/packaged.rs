//! What is said of the fill target of a packaged drink.

use super::{Speaker, label_error, offer_error, overflow, percent};
use crate::book::{Accepted, Book, FillRule};
use crate::drink::fill::{SPREADS_TO_DOUBLE, UNDER_THREE_SPREADS, sample_risk};
use crate::drink::packaged::{PackagedError, PackagedFill, Waters};
use crate::foundation::measure::{Density, Exact, Share, Temperature, Volume};

/// Under so many packages the average of all of them counts: SI 2006/659, Schedule 2, 4.7 (text).
const SMALL_BATCH: Exact = Exact::new(100, 0);

/// So many weighings give a good spread: a rule of thumb, no published source.
const GOOD_SPREAD: u32 = 20;

/// At the field for the variation that the United States allow.
pub const ALLOWED_VARIATION: &str =
    "Look up the maximum allowable variation for this size in NIST Handbook 133. We did not find its table.";

/// At the same field of a book whose numbers are invented.
pub const INVENTED_VARIATION: &str = "Sample number, invented: not from the handbook.";

/// Why there is no fill target, and what would mend it.
pub fn packaged_error(error: &PackagedError, book: &Book) -> String {
    match error {
        PackagedError::NotPackaged => "This size is not packaged ahead of sale.".to_string(),
        PackagedError::NothingDeclared => {
            "The container has no declared size. Enter what its label says it holds.".to_string()
        }
        PackagedError::NoTolerance => {
            "The directive has no tolerance for a declared size under 5 mL or over 10 L. Choose another rule.".to_string()
        }
        PackagedError::NoAllowance => {
            "Enter what a single package may be short by. Look up the maximum allowable variation for this size in NIST Handbook 133. No number is given here from memory.".to_string()
        }
        PackagedError::TooFewWeighings(0) => {
            "Weigh or measure what is in some packages, and enter each. Two give a spread; twenty give a good one (common practice).".to_string()
        }
        PackagedError::TooFewWeighings(_) => {
            "One package has no spread. Weigh or measure at least one more; twenty give a good one (common practice).".to_string()
        }
        PackagedError::Offer(reason) => offer_error(reason, book),
        PackagedError::Density(reason) => label_error(reason, book),
        PackagedError::Arithmetic(error) => overflow(*error),
    }
}

/// What to know of a fill target: what does not fit, falls too low, or was not asked yet.
pub fn packaged_cautions(fill: &PackagedFill, book: &Book) -> Vec<String> {
    let mut said = Vec::new();
    let target = &fill.target;
    if fill.too_full > 0 {
        said.push(match fill.too_full {
            1 => "1 weighing is more than the container holds. Correct it: it moves the target.".to_string(),
            more => format!(
                "{} weighings are more than the container holds. Correct them: they move the target.",
                super::number(more)
            ),
        });
    }
    if let Some(single) = fill.single.filter(|single| single.tolerance >= fill.nominal) {
        said.push(format!(
            "The allowed variation, {}, is as large as the size itself. Correct it.",
            fine(single.tolerance, book)
        ));
    }
    if let Some(over) = target.over {
        said.push(format!(
            "The container is too small for its declared size: the fullest packages need {} more room. Fill more evenly, declare less, or take a larger container.",
            fine(over, book)
        ));
    }
    if target.spreads_to_double.is_some_and(|spreads| spreads < SPREADS_TO_DOUBLE) {
        said.push(
            "No package may be short by twice the tolerance. At this spread more than 1 in 10,000 would be. Fill more evenly."
                .to_string(),
        );
    }
    if let Some(single) = fill.single.filter(|_| fill.too_short > 0) {
        let (are, by) = match (fill.too_short, single.none_twice) {
            (1, true) => ("package weighed is", "twice the tolerance"),
            (_, true) => ("packages weighed are", "twice the tolerance"),
            (1, false) => ("package weighed is", "more than the allowed variation"),
            (_, false) => ("packages weighed are", "more than the allowed variation"),
        };
        said.push(format!("{} {are} short by {by}. No package may be.", super::number(fill.too_short)));
    }
    let mean = Volume::from_millilitres(fill.spread.mean);
    if mean < fill.nominal {
        let short = fill.nominal.minus(mean).unwrap_or(fill.nominal);
        said.push(format!("The packages weighed hold {} less than declared on average. Fill more.", fine(short, book)));
    }
    if fill.spread.count < GOOD_SPREAD {
        said.push(format!(
            "{} weighings so far. Twenty give a good spread (rule of thumb, no published source).",
            fill.spread.count
        ));
    }
    if fill.batch.is_none() {
        said.push(
            if target.target == fill.nominal {
                "Enter the packages per batch. Filled to the declared size, half of all batches are short on average."
            } else {
                "Enter the packages per batch. Without it, nothing is added for the average of a batch."
            }
            .to_string(),
        );
    }
    said
}

/// What the target is of: "On average, with the drink at 40 °F."
pub fn fill_to_means(fill: &PackagedFill) -> String {
    let at = fill.measured.map_or(fill.counted_at, |(measured, _)| measured);
    format!("On average, with the drink at {}.", degrees(at))
}

/// What a rule asks, where it stands.
pub fn fill_rule_means(rule: FillRule) -> &'static str {
    match rule {
        FillRule::Average => "The average must reach the declared size. No law is known to ask only this.",
        FillRule::EuropeanOrBritish => {
            "The average must reach the declared size. Few packages may be short by the tolerance, and none by twice that (76/211/EEC, Annex I)."
        }
        FillRule::UnitedStates => {
            "The average must reach the declared size. No package may be short by more than the allowed variation (NIST Handbook 133). The target stays at least 3 spreads above that."
        }
    }
}

/// A share of packages that may be short, and whose it is.
pub fn accepted_share(accepted: Accepted, percent: String) -> String {
    match accepted {
        Accepted::TwoPercent => format!("{percent} (Germany, FPackV section 9)"),
        Accepted::TwoAndAHalfPercent => format!("{percent} (UK practice)"),
        Accepted::OneInAThousand | Accepted::OnePercent | Accepted::FivePercent => percent,
    }
}

/// How a fill target came about, for those who ask: what the rule asks, of which batch, how samples
/// would turn out.
pub fn fill_target_means(fill: &PackagedFill, rule: FillRule) -> Vec<String> {
    let mut said = vec![fill_rule_means(rule).to_string()];
    let small = fill.batch.is_some_and(|batch| batch.packages < SMALL_BATCH);
    if small && rule == FillRule::EuropeanOrBritish {
        said.push(
            "Under 100 packages, the average of all must reach the declared size (SI 2006/659, Schedule 2, 4.7)."
                .to_string(),
        );
    }
    if rule == FillRule::UnitedStates {
        let over = Share::from_fraction(Exact::new(25, 3));
        let [few, many] = [12, 24].map(|sample| risk(over, sample));
        said.push(format!(
            "If 2.5\u{a0}% of packages were short by more, a sample of 12 would fail at {few}. A sample of 24 would at {many}."
        ));
        let [few, many] = [12, 24].map(|sample| risk(UNDER_THREE_SPREADS, sample));
        said.push(format!("At 3 spreads it is {few} and {many} at most."));
    }
    said
}

fn risk(share: Share, sample: u32) -> String {
    sample_risk(share, sample).map_or_else(overflow, percent)
}

/// At the field for the temperature of measuring: where contents count, and how much water differs.
pub fn measured_at(counted: Temperature, measured: Option<(Temperature, Waters)>) -> String {
    let Some((measured, waters)) = measured else {
        return format!("Contents count at {}. Blank means they were measured there.", degrees(counted));
    };
    if waters.by_law == waters.measured {
        return format!("Contents count at {}, where they were measured.", degrees(counted));
    }
    format!(
        "Contents count at {}. Water is {} g/mL there, and {} at {} (Metrologia 38, 2001). Juice swells a little more.",
        degrees(counted),
        density(waters.by_law),
        density(waters.measured),
        degrees(measured)
    )
}

fn density(density: Density) -> String {
    Speaker::plain().rounded(density.grams_per_millilitre(), 4)
}

fn degrees(temperature: Temperature) -> String {
    Speaker::plain().temperature(temperature)
}

fn fine(volume: Volume, book: &Book) -> String {
    Speaker::plain_of(book).fine_volume(volume)
}
