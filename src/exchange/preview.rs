//! What an import would do to an open book, before it does it.

use crate::book::{Book, Edit, Key};

/// What replacing the open book by an incoming one would do.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Preview {
    /// The incoming book's name.
    pub name: String,
    /// Whether the incoming book's data is invented.
    pub invented: bool,
    /// Whether the settings differ.
    pub settings_change: bool,
    /// Ingredients.
    pub ingredients: Counts,
    /// Packagings.
    pub packagings: Counts,
    /// Sets of packaging that containers share.
    pub packaging_sets: Counts,
    /// Containers.
    pub containers: Counts,
    /// Drinks.
    pub drinks: Counts,
    /// Offers.
    pub offers: Counts,
    /// Weeks of sales.
    pub weeks: Counts,
    /// Prices seen elsewhere.
    pub seen_prices: Counts,
    /// Trials.
    pub trials: Counts,
    /// Scenarios.
    pub scenarios: Counts,
    /// Batches.
    pub batches: Counts,
    /// Whether the buying list differs.
    pub buying_list_changes: bool,
    /// The one edit that does it; its inverse takes it back.
    pub edit: Edit,
}

/// How many records of a kind an import would move.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Counts {
    /// Only in the incoming book.
    pub added: usize,
    /// In both, but not the same.
    pub changed: usize,
    /// Only in the open book.
    pub removed: usize,
}

impl Preview {
    /// Whether the incoming book is the open one.
    pub fn changes_nothing(&self) -> bool {
        let kinds = [
            self.ingredients,
            self.packagings,
            self.packaging_sets,
            self.containers,
            self.drinks,
            self.offers,
            self.weeks,
            self.seen_prices,
            self.trials,
            self.scenarios,
            self.batches,
        ];
        !self.settings_change && !self.buying_list_changes && kinds.iter().all(|counts| *counts == Counts::default())
    }
}

/// What replacing `open` by `incoming` would do.
pub fn preview(open: &Book, incoming: &Book) -> Preview {
    let counts = |kind: fn(&Key) -> bool| {
        let of_kind = |book: &Book| -> Vec<Key> { book.records().map(|record| record.key()).filter(kind).collect() };
        let (before, after) = (of_kind(open), of_kind(incoming));
        Counts {
            added: after.iter().filter(|key| !open.contains(**key)).count(),
            changed: before.iter().filter(|key| incoming.contains(**key) && differs(open, incoming, **key)).count(),
            removed: before.iter().filter(|key| !incoming.contains(**key)).count(),
        }
    };
    Preview {
        name: incoming.settings().name.clone(),
        invented: incoming.settings().invented,
        settings_change: differs(open, incoming, Key::Settings),
        ingredients: counts(|key| matches!(key, Key::Ingredient(_))),
        packagings: counts(|key| matches!(key, Key::Packaging(_))),
        packaging_sets: counts(|key| matches!(key, Key::PackagingSet(_))),
        containers: counts(|key| matches!(key, Key::Container(_))),
        drinks: counts(|key| matches!(key, Key::Drink(_))),
        offers: counts(|key| matches!(key, Key::Offer(_))),
        weeks: counts(|key| matches!(key, Key::Week(_))),
        seen_prices: counts(|key| matches!(key, Key::SeenPrice(_))),
        trials: counts(|key| matches!(key, Key::Trial(_))),
        scenarios: counts(|key| matches!(key, Key::Scenario(_))),
        batches: counts(|key| matches!(key, Key::Batch(_))),
        buying_list_changes: differs(open, incoming, Key::BuyingList),
        edit: Edit::replace(open, incoming),
    }
}

fn differs(one: &Book, other: &Book, key: Key) -> bool {
    one.record(key) != other.record(key)
}
