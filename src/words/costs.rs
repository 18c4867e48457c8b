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
        Part::Free => say!(book::free_drinks),
    }
}

/// The field that a flat cost is entered in.
pub(super) fn flat_cost(cost: FlatCost) -> &'static str {
    match cost {
        FlatCost::TreatmentFee => say!(drinks::processing_fee),
        FlatCost::Overhead => say!(drinks::overhead),
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
        Takes::Discounts => say!(book::discounts),
        Takes::SalesTax => sales_tax(law),
        Takes::CardFee => say!(drinks::card_fee),
        Takes::Commission => say!(drinks::app_commission),
        Takes::Part(it) => part(it),
        Takes::Waste(CostBasis::Goods, _) => say!(drinks::waste),
        Takes::Waste(CostBasis::GoodsAndLabour, _) => say!(drinks::labor_waste),
        Takes::Waste(CostBasis::Everything, _) => say!(drinks::overhead_waste),
        Takes::Free(CostBasis::Goods, _) => say!(book::free_drinks),
        Takes::Free(CostBasis::GoodsAndLabour, _) => say!(drinks::labor_given_away),
        Takes::Free(CostBasis::Everything, _) => say!(drinks::overhead_given_away),
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
        NotCounted::NoOverhead => say!(drinks::no_overhead_yet),
        NotCounted::Overhead => say!(drinks::no_weekly_yet),
        NotCounted::CardFee => say!(drinks::no_card_fee_yet),
        NotCounted::Tax => say!(drinks::no_tax_yet),
    }
}

/// What a suggested price does not count yet: "Not in this price yet: Labor, Packaging."
pub fn not_in_price(lacks: &[NotCounted], law: Law) -> String {
    let name = |lacks: &NotCounted| match lacks {
        NotCounted::Wage | NotCounted::Time => part(Part::Labour),
        NotCounted::Packaging => part(Part::ContainerSet),
        NotCounted::Waste => part(Part::Unsold),
        NotCounted::NoOverhead | NotCounted::Overhead => part(Part::Flat(FlatCost::Overhead)),
        NotCounted::CardFee => say!(drinks::card_fee),
        NotCounted::Tax => sales_tax(law),
    };
    let costs: Vec<&str> = lacks.iter().map(name).collect();
    say!(setup::not_in_price, costs = costs.join(", "))
}

/// What the target margin is, and what it is figured on by the basis that is chosen.
pub fn target_margin() -> &'static str {
    say!(drinks::target_margin_about)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_new_price_says_what_is_not_in_it() {
        let lacks = [NotCounted::Time, NotCounted::Packaging, NotCounted::Waste, NotCounted::NoOverhead];
        let said = not_in_price(&lacks, Law::UnitedStates);
        assert_eq!(said, "Not in this price yet: Labor, Packaging, Waste, Overhead.");
    }

    #[test]
    fn the_target_s_sentence_names_every_flat_cost() {
        let said = target_margin().to_lowercase();
        for cost in FlatCost::ALL {
            let name = part(Part::Flat(*cost)).to_lowercase();
            assert!(said.contains(&name), "what the target margin is does not say where {name} belongs");
        }
    }
}
