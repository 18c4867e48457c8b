//! What the parts of a drink's cost are called, and what a margin covers of them.

use crate::book::{CostBasis, FlatCost, Part};

/// A part of the cost.
pub const fn part(part: Part) -> &'static str {
    match part {
        Part::Ingredients => "Ingredients",
        Part::ContainerSet => "Container",
        Part::Labour => "Labour",
        Part::Flat(FlatCost::TreatmentFee) => "Treatment toll",
        Part::Flat(FlatCost::Overhead) => "Overhead",
        Part::Unsold => "Made but not sold",
    }
}

/// The field that a flat cost is entered in, at the beginning of a sentence.
pub(super) const fn flat_cost(cost: FlatCost) -> &'static str {
    match cost {
        FlatCost::TreatmentFee => "The treatment toll",
        FlatCost::Overhead => "The overhead per drink",
    }
}

/// The same field in the list of steps, with its verb.
pub(super) const fn flat_cost_is(cost: FlatCost) -> &'static str {
    match cost {
        FlatCost::TreatmentFee => "the processing fee is",
        FlatCost::Overhead => "the overhead per drink is",
    }
}

/// What a target margin must cover.
pub const fn cost_basis(basis: CostBasis) -> &'static str {
    match basis {
        CostBasis::Goods => "Goods",
        CostBasis::GoodsAndLabour => "Goods and labour",
        CostBasis::Everything => "Everything",
    }
}

/// What the target margin is, and what it covers by the basis that is chosen.
pub const TARGET_MARGIN: &str = "The margin every drink should bring; a drink may have its own. Goods are ingredients, container and treatment toll. Everything adds labour, overhead, payment fee and commission.";

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_target_s_sentence_names_every_flat_cost() {
        for cost in FlatCost::ALL {
            let name = part(Part::Flat(*cost)).to_lowercase();
            assert!(TARGET_MARGIN.contains(&name), "TARGET_MARGIN does not say where {name} belongs");
        }
    }
}
