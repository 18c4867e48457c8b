//! A plan kept as a scenario, and a scenario computed.

use super::Plan;
use crate::book::{Book, Scenario, ScenarioId, Scope};
use crate::drink::ledger::Ledger;

/// A scenario with a plan's offers for its part of the menu, and today's for the rest.
pub fn keep(book: &Book, scope: Scope, plan: &Plan, id: ScenarioId, name: &str) -> Scenario {
    let rest = book.offers().filter(|offer| !book.belongs(offer.drink, scope)).cloned();
    Scenario { id, name: name.to_string(), offers: plan.offers.iter().cloned().chain(rest).collect() }
}

/// What the ledger would be if a scenario were adopted.
pub fn scenario_ledger(book: &Book, scenario: &Scenario) -> Ledger {
    Ledger::of_offers(book, &mut scenario.offers.iter())
}
