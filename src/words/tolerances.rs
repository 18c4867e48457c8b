//! What the standards of measuring call their rules, and where they stand.

use crate::drink::fill::Rule;

/// What a rule is about.
pub const fn tolerance_rule(rule: Rule) -> &'static str {
    match rule {
        Rule::Package => "A single package",
        Rule::Bottle => "A measuring container bottle, as made",
        Rule::TransferMeasureToLine => "A measure to pour from, to its line",
        Rule::TransferMeasureToBrim => "A measure to pour from, to its brim",
        Rule::DrinkingMeasureToLine => "A glass or cup to drink from, to its line",
        Rule::DrinkingMeasureToBrim => "A glass or cup to drink from, to its brim",
    }
}

/// Where a rule stands.
pub const fn tolerance_source(rule: Rule) -> &'static str {
    match rule {
        Rule::Package => "Directive 76/211/EEC, Annex I, 2.4; on average packages may not be short",
        Rule::Bottle => "Directive 75/107/EEC, Annex I",
        Rule::TransferMeasureToLine
        | Rule::TransferMeasureToBrim
        | Rule::DrinkingMeasureToLine
        | Rule::DrinkingMeasureToBrim => "OIML R 138, 5.1.1",
    }
}
