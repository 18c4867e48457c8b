//! What is said of the fill target of a packaged drink.

use super::{label_error, overflow, plain, trouble};
use crate::book::Book;
use crate::measure::{Exact, Volume, show_fine_volume};
use crate::packaged::{PackagedError, PackagedFill};

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
            "Enter what a single package may be short by: the maximum allowable variation for this size in NIST Handbook 133. No number is given here from memory.".to_string()
        }
        PackagedError::TooFewWeighings(0) => {
            "Weigh or measure what is in some packages, and enter each. Two give a spread; twenty give a good one (common practice).".to_string()
        }
        PackagedError::TooFewWeighings(_) => {
            "One package has no spread. Weigh or measure at least one more; twenty give a good one (common practice).".to_string()
        }
        PackagedError::Offer(reason) => trouble(reason, book),
        PackagedError::Density(reason) => label_error(reason, book),
        PackagedError::Arithmetic(error) => overflow(*error),
    }
}

/// What to know of a fill target: what does not fit, or falls too low.
pub fn packaged_cautions(fill: &PackagedFill, book: &Book) -> Vec<String> {
    let mut said = Vec::new();
    let target = &fill.target;
    if let Some(over) = target.over {
        said.push(format!(
            "The container is too small for its declared size: the fullest packages would need {} more than there is room for. Fill more evenly, declare less, or take a larger container.",
            fine(over, book)
        ));
    }
    if target.spreads_to_double.is_some_and(|spreads| spreads < Exact::new(3, 0)) {
        said.push(
            "No package may be short by twice what is tolerated, and at this spread some would be. Fill more evenly."
                .to_string(),
        );
    }
    let mean = Volume::from_millilitres(fill.spread.mean);
    if mean < fill.nominal {
        let short = fill.nominal.minus(mean).unwrap_or(fill.nominal);
        said.push(format!("The packages weighed hold {} less than declared on average. Fill more.", fine(short, book)));
    }
    said
}

fn fine(volume: Volume, book: &Book) -> String {
    show_fine_volume(volume, book.settings().units, &plain()).unwrap_or_else(overflow)
}
