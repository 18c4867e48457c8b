//! What the parts of a drink's cost are called, and what a margin is figured on.

use crate::book::{CostBasis, FlatCost, Part};
use crate::say;

/// A part of the cost.
pub fn part(part: Part) -> &'static str {
    match part {
        Part::Ingredients => say!(drinks::ingredients),
        Part::ContainerSet => say!(common::packaging),
        Part::Labour => say!(drinks::labor),
        Part::Flat(FlatCost::TreatmentFee) => say!(drinks::processing_fee),
        Part::Flat(FlatCost::Overhead) => say!(drinks::overhead),
        Part::Unsold => say!(drinks::waste),
    }
}

/// The field that a flat cost is entered in.
pub(super) fn flat_cost(cost: FlatCost) -> &'static str {
    match cost {
        FlatCost::TreatmentFee => say!(drinks::processing_fee),
        FlatCost::Overhead => say!(drinks::overhead_per_drink),
    }
}

/// What a margin is figured on.
pub fn cost_basis(basis: CostBasis) -> &'static str {
    match basis {
        CostBasis::Goods => say!(drinks::on_goods),
        CostBasis::GoodsAndLabour => say!(drinks::on_labor),
        CostBasis::Everything => say!(drinks::on_all_costs),
    }
}

/// What the target margin is, and what it is figured on by the basis that is chosen.
pub fn target_margin() -> &'static str {
    say!(drinks::target_margin_about)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_target_s_sentence_names_every_flat_cost() {
        let said = target_margin().to_lowercase();
        for cost in FlatCost::ALL {
            let name = part(Part::Flat(*cost)).to_lowercase();
            assert!(said.contains(&name), "what the target margin is does not say where {name} belongs");
        }
    }
}
