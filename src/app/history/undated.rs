//! Prices that only a step still knows.

use super::History;
use crate::book::{Change, Goods, PackId, Step, Tree};
use crate::foundation::measure::{Exact, MOST_PLACES, Money};

impl History {
    /// What a pack cost before the first step since a moment (in milliseconds since 1970) that
    /// changed it, where nobody had dated its price until then: of such a price the book keeps no
    /// history.
    pub fn undated_price(&self, goods: Goods, pack: PackId, since: u64) -> Option<Money> {
        let done = |step: &&super::Step| step.at >= since && step.undone.is_none() && !self.is_taken_back(&step.id);
        let of_pack = |change: &&Change| {
            matches!(change.path.as_slice(),
                [_, Step::Field(packs), Step::Element(id), Step::Field(_), ..] if packs == "packs" && *id == called(pack))
        };
        let field = |change: &Change| change.path.last().cloned();
        for step in self.steps.iter().filter(done) {
            let changes: Vec<&Change> = step.patch.changes_of(goods.into()).filter(of_pack).collect();
            let dated = changes.iter().find(|change| field(change) == Some(Step::Field("day".into())));
            let price = changes.iter().find(|change| field(change) == Some(Step::Field("price".into())));
            match (dated, price) {
                (Some(dated), _) if dated.before.is_some() => return None,
                (_, Some(price)) => return price.before.as_ref().and_then(money),
                _ => {}
            }
        }
        None
    }
}

/// What patches call the element of a pack.
fn called(pack: PackId) -> String {
    format!("\"{pack}\"")
}

fn money(tree: &Tree) -> Option<Money> {
    let Tree::Text(text) = tree else { return None };
    Exact::from_plain(text, MOST_PLACES).map(Money::from_major)
}
