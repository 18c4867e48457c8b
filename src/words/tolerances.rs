//! What the standards of measuring call their rules, and where they stand.

use crate::drink::fill::Rule;
use crate::drink::label::Law;
use crate::say;

/// The rules that speak of what drinks are sold in, under a law: two are of European directives, the
/// others of the International Organization of Legal Metrology. A measure to pour from is no
/// container here.
pub const fn tolerance_rules(law: Law) -> &'static [Rule] {
    match law {
        Law::UnitedStates => &[Rule::DrinkingMeasureToLine, Rule::DrinkingMeasureToBrim],
        Law::European => &[Rule::Package, Rule::Bottle, Rule::DrinkingMeasureToLine, Rule::DrinkingMeasureToBrim],
    }
}

/// What a rule is about.
pub fn tolerance_rule(rule: Rule) -> &'static str {
    match rule {
        Rule::Package => say!(labels::single_package),
        Rule::Bottle => say!(labels::measuring_bottle),
        Rule::TransferMeasureToLine => say!(labels::pouring_measure_to_line),
        Rule::TransferMeasureToBrim => say!(labels::pouring_measure_to_brim),
        Rule::DrinkingMeasureToLine => say!(labels::drinking_glass_to_line),
        Rule::DrinkingMeasureToBrim => say!(labels::drinking_glass_to_brim),
    }
}

/// Where a rule stands.
pub fn tolerance_source(rule: Rule) -> &'static str {
    match rule {
        Rule::Package => say!(labels::source_package),
        Rule::Bottle => say!(labels::source_bottle),
        Rule::TransferMeasureToLine
        | Rule::TransferMeasureToBrim
        | Rule::DrinkingMeasureToLine
        | Rule::DrinkingMeasureToBrim => say!(labels::source_measures),
    }
}
