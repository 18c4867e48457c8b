//! Which records need which.

use super::{Book, Container, Drink, Key, OverheadPer, PackagingUse, Record, ScenarioId, Scope};
use crate::foundation::measure::Date;

impl Book {
    /// A book with the same settings, the record at `key`, and the records that this needs: small enough to
    /// try things out on.
    pub fn only(&self, key: Key) -> Book {
        self.cut(std::iter::once(key))
    }

    /// The same for several records.
    pub fn cut(&self, keys: impl Iterator<Item = Key>) -> Book {
        let mut book = Book { month: self.month, ..Book::new(self.settings.clone()) };
        if self.settings.overhead_per == OverheadPer::Week {
            book.whole_sells = Some(self.sold_weekly());
        }
        let mut waiting: Vec<Key> = keys.collect();
        while let Some(key) = waiting.pop() {
            if book.records.contains_key(&key) {
                continue;
            }
            if let Some(record) = self.records.get(&key) {
                waiting.extend(record.needs());
                book.records.insert(key, record.clone());
            }
        }
        book
    }

    /// The weeks, scenarios and batches that need a drink or a container.
    fn planned_or_sold(&self, key: Key) -> impl Iterator<Item = Key> {
        let needs = move |user: &&Record| user.needs().contains(&key);
        let weeks = self.between(Key::Week(Date::FIRST), Key::Week(Date::LAST));
        let scenarios = self.between(Key::Scenario(ScenarioId::FIRST), Key::Scenario(ScenarioId::LAST));
        let batches = self.between(Key::Batch(Date::FIRST), Key::Batch(Date::LAST));
        weeks.chain(scenarios).chain(batches).filter(needs).map(Record::key)
    }

    /// The key of the buying list, if the goods at `key` are on it.
    fn listed(&self, key: Key) -> Option<Key> {
        let list = self.buying_list()?;
        list.lines.iter().any(|line| Key::from(line.goods) == key).then_some(Key::BuyingList)
    }

    /// The records whose cost depends directly on the one at `key`: the drinks of an ingredient, the sets and
    /// containers of packaging, the containers of a set, the offers of a container or a drink. Weeks,
    /// scenarios and batches are not among them.
    pub fn repriced_by(&self, key: Key) -> Vec<Key> {
        match key {
            Key::Ingredient(id) => {
                let uses = |drink: &&Drink| drink.lines.iter().any(|line| line.ingredient == id);
                self.drinks().filter(uses).map(|drink| Key::Drink(drink.id)).collect()
            }
            Key::Packaging(id) => {
                let has = |uses: &[PackagingUse]| uses.iter().any(|used| used.packaging == id);
                let sets = self.packaging_sets().filter(|set| has(&set.uses)).map(|set| Key::PackagingSet(set.id));
                let containers = self.containers().filter(|container| has(&container.set));
                sets.chain(containers.map(|container| Key::Container(container.id))).collect()
            }
            Key::PackagingSet(id) => {
                let uses = |container: &&Container| container.shared.contains(&id);
                self.containers().filter(uses).map(|container| Key::Container(container.id)).collect()
            }
            Key::Container(id) => {
                let offers = self.offers().filter(|offer| offer.container == id);
                offers.map(|offer| Key::Offer(offer.id())).collect()
            }
            Key::Drink(id) => self.offers_of(id).map(|offer| Key::Offer(offer.id())).collect(),
            Key::Settings
            | Key::Offer(_)
            | Key::Week(_)
            | Key::SeenPrice(_)
            | Key::Trial(_)
            | Key::Scenario(_)
            | Key::Batch(_)
            | Key::BuyingList => Vec::new(),
        }
    }

    /// The records that need the one at `key`, so that it cannot be removed before them. Those of
    /// [`Book::repriced_by`] come first.
    pub fn needed_by(&self, key: Key) -> Vec<Key> {
        let mut by = self.repriced_by(key);
        match key {
            Key::Ingredient(_) | Key::Packaging(_) => by.extend(self.listed(key)),
            Key::Container(_) => by.extend(self.planned_or_sold(key)),
            Key::Drink(id) => {
                by.extend(self.planned_or_sold(key));
                let trials = self.trials().filter(|trial| trial.scope == Scope::Drink(id));
                by.extend(trials.map(|trial| Key::Trial(trial.id)));
            }
            Key::Settings
            | Key::PackagingSet(_)
            | Key::Offer(_)
            | Key::Week(_)
            | Key::SeenPrice(_)
            | Key::Trial(_)
            | Key::Scenario(_)
            | Key::Batch(_)
            | Key::BuyingList => {}
        }
        by
    }
}
