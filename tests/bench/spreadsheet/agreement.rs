//! Whether the sheets say what the engine says: the times of a wrong sheet would say nothing.

use brimwright::drink::ledger::Ledger;
use brimwright::foundation::measure::Exact;

use super::Said;

/// How near two numbers are that agree to six decimals.
const NEAR: f64 = 0.5e-6;

/// How many offers agree.
#[derive(Clone, Copy, Default)]
pub struct Agreement {
    offers: usize,
    costs: usize,
    margins: usize,
    suggestions: usize,
}

impl Agreement {
    /// Compares a computed book with what the sheet of offers says, in the same order.
    pub fn of(ledger: &Ledger, said: &[Said]) -> Agreement {
        assert_eq!(ledger.offers().count(), said.len(), "a row for each offer");
        let mut agreement = Agreement::default();
        for ((_, priced), said) in ledger.offers().zip(said) {
            let priced = priced.as_ref().expect("every generated offer is computed");
            let cost = priced.cost.total().major();
            let margin = priced.margin().expect("a price is asked").fraction();
            let menu = priced.suggestion.as_ref().expect("a price reaches it").menu.major();
            let near = |ours: Exact, theirs: Option<f64>| {
                usize::from(theirs.is_some_and(|theirs| (ours.to_estimate() - theirs).abs() <= NEAR))
            };
            agreement.offers += 1;
            agreement.costs += near(cost, said.0);
            agreement.margins += near(margin, said.1);
            agreement.suggestions += near(menu, said.2);
        }
        agreement
    }

    /// Whether every full cost agrees.
    pub fn holds(self) -> bool {
        self.costs == self.offers
    }

    /// How many agree, as a sentence.
    pub fn sentence(self, when: &str) -> String {
        let Agreement { offers, costs, margins, suggestions } = self;
        format!(
            "{when}, the sheet agrees with the engine to six decimals in {costs} full costs, {margins} margins and \
             {suggestions} suggested prices of {offers}"
        )
    }
}
