//! What the parts of a drink's cost are called, and what a margin is figured on.

use super::sales_tax;
use crate::book::{CostBasis, FlatCost, Part};
use crate::drink::label::Law;
use crate::drink::price::{Leaves, NotCounted, Takes};
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

/// A margin by what it is figured on.
pub fn margin_on(basis: CostBasis) -> &'static str {
    match basis {
        CostBasis::Goods => say!(first::margin_on_goods),
        CostBasis::GoodsAndLabour => say!(first::margin_on_labor),
        CostBasis::Everything => say!(first::margin_on_all),
    }
}

/// What takes something of a price.
pub fn takes(takes: Takes, law: Law) -> &'static str {
    match takes {
        Takes::SalesTax => sales_tax(law),
        Takes::CardFee => say!(drinks::card_fee),
        Takes::Commission => say!(drinks::app_commission),
        Takes::Part(it) => part(it),
        Takes::Waste(CostBasis::Goods, _) => say!(drinks::waste),
        Takes::Waste(CostBasis::GoodsAndLabour, _) => say!(drinks::labor_waste),
        Takes::Waste(CostBasis::Everything, _) => say!(drinks::overhead_waste),
    }
}

/// What is left of a price whose margin is figured on `basis`.
pub fn leaves(leaves: Leaves, basis: CostBasis) -> &'static str {
    match leaves {
        Leaves::Margin => margin_on(basis),
        Leaves::ProfitThatChanges => say!(drinks::profit_that_changes),
        Leaves::Profit => say!(common::profit_per_drink),
    }
}

/// What a profit does not count yet.
pub fn not_counted_yet(lacks: NotCounted) -> &'static str {
    match lacks {
        NotCounted::Wage => say!(drinks::no_wage_yet),
        NotCounted::Time => say!(drinks::no_time_yet),
        NotCounted::Packaging => say!(drinks::no_packaging_yet),
        NotCounted::Waste => say!(drinks::no_waste_yet),
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
