//! What is said of the fill target of a packaged drink.

use super::{Speaker, label_error, offer_error, overflow, percent};
use crate::book::{Accepted, Book, FillRule};
use crate::drink::fill::{SPREADS_TO_DOUBLE, UNDER_THREE_SPREADS, sample_risk};
use crate::drink::packaged::{PackagedError, PackagedFill, Waters};
use crate::foundation::measure::{Density, Exact, Share, Temperature, Volume};
use crate::say;

/// Under so many packages the average of all of them counts: SI 2006/659, Schedule 2, 4.7 (text).
const SMALL_BATCH: Exact = Exact::new(100, 0);

/// So many weighings give a good spread: a rule of thumb, no published source.
const GOOD_SPREAD: u32 = 20;

/// Why there is no fill target, and what would mend it.
pub fn packaged_error(error: &PackagedError, book: &Book) -> String {
    match error {
        PackagedError::NotPackaged => say!(labels::not_packaged_ahead).to_string(),
        PackagedError::NothingDeclared => say!(labels::no_labeled_size).to_string(),
        PackagedError::NoTolerance => say!(labels::no_tolerance).to_string(),
        PackagedError::NoAllowance => say!(labels::no_allowed_variation).to_string(),
        PackagedError::TooFewWeighings(0) => say!(labels::no_weighings).to_string(),
        PackagedError::TooFewWeighings(_) => say!(labels::one_weighing).to_string(),
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
        said.push(say!(labels::weighings_over_the_brim, weighings = fill.too_full));
    }
    if let Some(single) = fill.single.filter(|single| single.tolerance >= fill.nominal) {
        said.push(say!(labels::variation_too_large, variation = fine(single.tolerance, book)));
    }
    if let Some(over) = target.over {
        said.push(say!(labels::container_too_small, room = fine(over, book)));
    }
    if target.spreads_to_double.is_some_and(|spreads| spreads < SPREADS_TO_DOUBLE) {
        said.push(say!(labels::spread_too_wide, packages = super::number(10_000)));
    }
    if let Some(single) = fill.single.filter(|_| fill.too_short > 0) {
        said.push(if single.none_twice {
            say!(labels::short_by_twice_the_tolerance, packages = fill.too_short)
        } else {
            say!(labels::short_by_more_than_allowed, packages = fill.too_short)
        });
    }
    let mean = Volume::from_millilitres(fill.spread.mean);
    if mean < fill.nominal {
        let short = fill.nominal.minus(mean).unwrap_or(fill.nominal);
        said.push(say!(labels::average_below_labeled_size, short = fine(short, book)));
    }
    if fill.spread.count < GOOD_SPREAD {
        let weighings = Speaker::plain().counted(Exact::from(fill.spread.count));
        said.push(say!(labels::few_weighings, weighings = weighings));
    }
    if fill.batch.is_none() {
        said.push(
            if target.target == fill.nominal {
                say!(labels::half_of_batches_short)
            } else {
                say!(labels::nothing_added_for_batch)
            }
            .to_string(),
        );
    }
    said
}

/// What the target is of: "On average, with the drink at 40 °F."
pub fn fill_to_means(fill: &PackagedFill) -> String {
    let at = fill.measured.map_or(fill.counted_at, |(measured, _)| measured);
    say!(labels::fill_to_means, temperature = degrees(at))
}

/// What a rule asks, where it stands.
pub fn fill_rule_means(rule: FillRule) -> &'static str {
    match rule {
        FillRule::Average => say!(labels::rule_average),
        FillRule::EuropeanOrBritish => say!(labels::rule_european),
        FillRule::UnitedStates => say!(labels::rule_united_states),
    }
}

/// A share of packages that may be short, and whose it is.
pub fn accepted_share(accepted: Accepted, percent: String) -> String {
    match accepted {
        Accepted::TwoPercent => say!(labels::short_fills_in_germany, share = percent),
        Accepted::TwoAndAHalfPercent => say!(labels::short_fills_in_uk, share = percent),
        Accepted::OneInAThousand | Accepted::OnePercent | Accepted::FivePercent => percent,
    }
}

/// How a fill target came about, for those who ask: what the rule asks, of which batch, how samples
/// would turn out.
pub fn fill_target_means(fill: &PackagedFill, rule: FillRule) -> Vec<String> {
    let mut said = vec![fill_rule_means(rule).to_string()];
    let small = fill.batch.is_some_and(|batch| batch.packages < SMALL_BATCH);
    if small && rule == FillRule::EuropeanOrBritish {
        said.push(say!(labels::small_batch).to_string());
    }
    if rule == FillRule::UnitedStates {
        let over = Share::from_fraction(Exact::new(25, 3));
        let [few, many] = [12, 24].map(|sample| risk(over, sample));
        said.push(say!(labels::samples_at_share, share = percent(over), few = few, many = many));
        let [few, many] = [12, 24].map(|sample| risk(UNDER_THREE_SPREADS, sample));
        said.push(say!(labels::samples_at_three_spreads, few = few, many = many));
    }
    said
}

fn risk(share: Share, sample: u32) -> String {
    sample_risk(share, sample).map_or_else(overflow, percent)
}

/// At the field for the temperature of measuring: where contents count, and how much water differs.
pub fn measured_at(counted: Temperature, measured: Option<(Temperature, Waters)>) -> String {
    let counted = degrees(counted);
    let Some((measured, waters)) = measured else {
        return say!(labels::counted_at, counted = counted);
    };
    if waters.by_law == waters.measured {
        return say!(labels::counted_where_measured, counted = counted);
    }
    say!(
        labels::counted_and_measured,
        counted = counted,
        density = density(waters.by_law),
        measured = degrees(measured),
        other = density(waters.measured)
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
