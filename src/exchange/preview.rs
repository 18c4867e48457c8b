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
    let mut preview = Preview {
        name: incoming.settings().name.clone(),
        invented: incoming.settings().invented,
        settings_change: !open.agrees(incoming, Key::Settings),
        ingredients: Counts::default(),
        packagings: Counts::default(),
        packaging_sets: Counts::default(),
        containers: Counts::default(),
        drinks: Counts::default(),
        offers: Counts::default(),
        weeks: Counts::default(),
        seen_prices: Counts::default(),
        trials: Counts::default(),
        scenarios: Counts::default(),
        batches: Counts::default(),
        buying_list_changes: !open.agrees(incoming, Key::BuyingList),
        edit: Edit::replace(open, incoming),
    };
    for key in open.keys() {
        if let Some(counts) = preview.counts(key) {
            if incoming.contains(key) {
                add(&mut counts.changed, !open.agrees(incoming, key));
            } else {
                add(&mut counts.removed, true);
            }
        }
    }
    for key in incoming.keys() {
        if let Some(counts) = preview.counts(key) {
            add(&mut counts.added, !open.contains(key));
        }
    }
    preview
}

fn add(count: &mut usize, one: bool) {
    *count = count.saturating_add(usize::from(one));
}

impl Preview {
    /// The counts of a record's kind. Returns `None` if there is one of it at most.
    fn counts(&mut self, key: Key) -> Option<&mut Counts> {
        match key {
            Key::Settings | Key::BuyingList => None,
            Key::Ingredient(_) => Some(&mut self.ingredients),
            Key::Packaging(_) => Some(&mut self.packagings),
            Key::PackagingSet(_) => Some(&mut self.packaging_sets),
            Key::Container(_) => Some(&mut self.containers),
            Key::Drink(_) => Some(&mut self.drinks),
            Key::Offer(_) => Some(&mut self.offers),
            Key::Week(_) => Some(&mut self.weeks),
            Key::SeenPrice(_) => Some(&mut self.seen_prices),
            Key::Trial(_) => Some(&mut self.trials),
            Key::Scenario(_) => Some(&mut self.scenarios),
            Key::Batch(_) => Some(&mut self.batches),
        }
    }
}
