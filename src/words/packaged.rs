//! Why there is no fill target for a packaged drink.

use super::{label_error, overflow, trouble};
use crate::book::Book;
use crate::packaged::PackagedError;

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
