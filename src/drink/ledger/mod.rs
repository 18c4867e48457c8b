//! The ledger of computed offers. An edit re-prices only what it touches.

mod offer;
mod offer_change;
mod takes;

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

pub use offer::{OfferError, OfferStatus, Priced, price_offer};
pub use offer_change::{OfferChange, Snapshot};

use offer::Pricing;
use takes::Takes;

use crate::book::{Book, Edit, Key, Offer, OfferId, PackagingUse, Refusal};
use crate::foundation::measure::{Money, Overflow};

/// An offer's result, or the reason why there is none.
pub type Computed = Result<Priced, OfferError>;

/// Hears of an offer that moved, with its result before and after.
pub type Moved<'a> = &'a mut dyn FnMut(OfferId, Option<&Computed>, Option<&Computed>);

/// Every offer of a book, computed: a result, or the reason why there is none.
#[derive(Clone, Debug, Default)]
pub struct Ledger {
    /// Each shared with the ledgers of what is tried beside the book.
    offers: BTreeMap<OfferId, Arc<Computed>>,
    /// What each of them bears of overhead: one weekly number moves it for all.
    overhead: Option<Result<Money, Overflow>>,
    /// Kept from the first re-pricing on.
    takes: Option<Takes>,
}

impl PartialEq for Ledger {
    fn eq(&self, other: &Ledger) -> bool {
        self.offers == other.offers
    }
}

impl Eq for Ledger {}

impl Ledger {
    /// Computes every offer of `book`.
    pub fn of(book: &Book) -> Ledger {
        Ledger::of_offers(book, &mut book.offers())
    }

    /// Computes these offers as if they were those of `book`.
    pub fn of_offers(book: &Book, these: &mut dyn Iterator<Item = &Offer>) -> Ledger {
        let mut pricing = Pricing::of(book);
        // One by one: collecting into a map sorts, and the code for that is much to load.
        let mut offers = BTreeMap::new();
        for offer in these {
            offers.insert(offer.id(), Arc::new(pricing.price(offer)));
        }
        Ledger { offers, overhead: Some(pricing.overhead()), takes: None }
    }

    /// The results of a part of its book ([`Book::cut`]), none of them computed anew.
    pub fn of_part(&self, part: &Book) -> Ledger {
        let mut offers = BTreeMap::new();
        for id in part.offers().map(Offer::id) {
            if let Some(result) = self.offers.get(&id) {
                offers.insert(id, result.clone());
            }
        }
        Ledger { offers, overhead: self.overhead, takes: None }
    }

    /// One offer's result.
    pub fn get(&self, offer: OfferId) -> Option<&Result<Priced, OfferError>> {
        self.offers.get(&offer).map(Arc::as_ref)
    }

    /// Every offer's result, by drink and container.
    pub fn offers(&self) -> impl Iterator<Item = (OfferId, &Result<Priced, OfferError>)> {
        self.offers.iter().map(|(id, result)| (*id, result.as_ref()))
    }

    /// Computes anew what an edit touched; says which offers moved, those now under target
    /// first.
    pub fn refresh(&mut self, book: &Book, touched: &BTreeSet<Key>) -> Vec<OfferChange> {
        let mut moves = Vec::new();
        self.follow(book, touched, &mut |id, before, after| moves.push(OfferChange::new(id, before, after)));
        OfferChange::worst_first(moves)
    }

    /// Computes anew what an edit touched; hands over each offer that moved, before and after.
    pub fn follow(&mut self, book: &Book, touched: &BTreeSet<Key>, moved: Moved) {
        let mut pricing = Pricing::of(book);
        let is_offer = |key: &&Key| matches!(key, Key::Offer(_));
        let mut others = BTreeSet::new();
        others.extend(touched.iter().filter(|key| !is_offer(key)));
        let mut affected = self.affected(book, &others);
        if self.overhead != Some(pricing.overhead()) {
            affected.extend(book.offers().map(|offer| Key::Offer(offer.id())));
            self.overhead = Some(pricing.overhead());
        }
        // Where an offer alone was touched, only its price may have changed: what it costs stays.
        let alone = touched.iter().filter(|key| is_offer(key) && !affected.contains(key));
        for (key, alone) in affected.iter().map(|key| (key, false)).chain(alone.map(|key| (key, true))) {
            let Key::Offer(id) = *key else { continue };
            let before = self.offers.get(&id).map(Arc::as_ref);
            let after = book.offer(id).map(|offer| match before {
                Some(Ok(priced)) if alone => priced.at(offer.price),
                _ => pricing.price(offer),
            });
            if before == after.as_ref() {
                continue;
            }
            moved(id, before, after.as_ref());
            match after {
                Some(result) => self.offers.insert(id, Arc::new(result)),
                None => self.offers.remove(&id),
            };
        }
    }

    /// The offers whose results may change when these records do.
    fn affected(&mut self, book: &Book, touched: &BTreeSet<Key>) -> BTreeSet<Key> {
        if touched.is_empty() {
            return BTreeSet::new();
        }
        if touched.len() > FEW {
            self.takes = None;
            return swept(book, touched);
        }
        let takes = match &mut self.takes {
            Some(takes) => {
                touched.iter().for_each(|key| takes.follow(book, *key));
                takes
            }
            takes => takes.insert(Takes::of(book)),
        };
        followed(book, touched, takes)
    }
}

/// A book and its ledger with an edit tried on them, and what it moved.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Tried {
    /// The book with the edit.
    pub book: Book,
    /// Its ledger.
    pub ledger: Ledger,
    /// The offers that moved, those now under target first.
    pub moves: Vec<OfferChange>,
}

impl Tried {
    /// Tries `edit` beside `book`, whose ledger is `ledger`.
    ///
    /// # Errors
    /// The refusal of the edit.
    pub fn of(book: &Book, ledger: &Ledger, edit: &Edit) -> Result<Tried, Refusal> {
        let (mut book, mut ledger) = (book.clone(), ledger.clone());
        let applied = book.apply(edit)?;
        let moves = ledger.refresh(&book, &applied.touched);
        Ok(Tried { book, ledger, moves })
    }
}

/// Up to so many touched records are followed one by one.
const FEW: usize = 8;

/// The offers whose results may change when these records do, found by following one record after another.
fn followed(book: &Book, touched: &BTreeSet<Key>, takes: &Takes) -> BTreeSet<Key> {
    let mut affected = BTreeSet::new();
    if touched.contains(&Key::Settings) {
        affected.extend(book.offers().map(|offer| Key::Offer(offer.id())));
    }
    let mut waiting: Vec<Key> = touched.iter().copied().filter(|key| *key != Key::Settings).collect();
    while let Some(key) = waiting.pop() {
        match key {
            Key::Offer(_) => {
                affected.insert(key);
            }
            Key::Ingredient(id) => waiting.extend(takes.drinks_of(id)),
            key => waiting.extend(book.repriced_by(key)),
        }
    }
    affected
}

/// The same by going through the whole book once, in the order of need: what an import touches
/// is too much to be followed one by one.
fn swept(book: &Book, touched: &BTreeSet<Key>) -> BTreeSet<Key> {
    let mut moved = touched.clone();
    let all = touched.contains(&Key::Settings);
    let packs = |moved: &BTreeSet<Key>, uses: &[PackagingUse]| {
        uses.iter().any(|used| moved.contains(&Key::Packaging(used.packaging)))
    };
    for set in book.packaging_sets() {
        if packs(&moved, &set.uses) {
            moved.insert(Key::PackagingSet(set.id));
        }
    }
    for container in book.containers() {
        if packs(&moved, &container.set) || container.shared.iter().any(|id| moved.contains(&Key::PackagingSet(*id))) {
            moved.insert(Key::Container(container.id));
        }
    }
    for drink in book.drinks() {
        if drink.lines.iter().any(|line| moved.contains(&Key::Ingredient(line.ingredient))) {
            moved.insert(Key::Drink(drink.id));
        }
    }
    for offer in book.offers() {
        if all || moved.contains(&Key::Drink(offer.drink)) || moved.contains(&Key::Container(offer.container)) {
            moved.insert(Key::Offer(offer.id()));
        }
    }
    moved
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_price_moves_the_drinks_that_took_the_ingredient_up_since_the_price_before() {
        use crate::book::{Drink, Goods, Record};
        use crate::support::{
            book_of_one_drink, drink, drink_id, ingredient, ingredient_id, line, money, pack, pack_id, settings,
        };

        let mut book = book_of_one_drink(settings(), "1", Some("8"));
        let mut ledger = Ledger::of(&book);
        let mut does = |edit: Edit| {
            let applied = book.apply(&edit).unwrap();
            let moved = ledger.refresh(&book, &applied.touched).len();
            assert_eq!(ledger, Ledger::of(&book));
            moved
        };
        let price = |ingredient, pack, price| Edit::SetPackPrice {
            goods: Goods::Ingredient(ingredient_id(ingredient)),
            pack: pack_id(pack),
            price: money(price),
            day: None,
        };
        let of = |lines| Drink { lines, ..drink(1, "250 mL", []) };
        does(Edit::Put(Record::Ingredient(ingredient(2, [pack(2, "1 L", "4")]))));
        assert_eq!(does(price(1, 1, "2")), 1);
        assert_eq!(does(price(2, 2, "5")), 0);
        does(Edit::Put(Record::Drink(of(vec![line(1, 1, "150 mL"), line(2, 2, "100 mL")]))));
        assert_eq!(does(price(2, 2, "6")), 1);
        does(Edit::Put(Record::Drink(of(vec![line(2, 2, "250 mL")]))));
        assert_eq!((does(price(1, 1, "3")), does(price(2, 2, "7"))), (0, 1));
        assert_eq!(book.repriced_by(Key::Ingredient(ingredient_id(2))), [Key::Drink(drink_id(1))]);
    }

    #[test]
    fn a_weekly_number_moves_every_offer_where_overhead_goes_by_the_week() {
        use crate::book::{OverheadPer, Record, Settings};
        use crate::support::{book_of_one_drink, container, exact, money, offer, settings};

        let moved = |overhead_per| {
            let settings = Settings { overhead: money("120"), overhead_per, ..settings() };
            let mut book = book_of_one_drink(settings, "1", Some("8"));
            book.apply(&Edit::Put(Record::Container(container(2, "1 L")))).unwrap();
            let mut ledger = Ledger::of(&book);
            [("30", "20"), ("40", "20"), ("40", "21")].map(|(number, price)| {
                let second = Offer { weekly: Some(exact(number)), ..offer(1, 2, Some(price)) };
                let applied = book.apply(&Edit::Put(Record::Offer(second))).unwrap();
                let moves = ledger.refresh(&book, &applied.touched).len();
                assert_eq!(ledger, Ledger::of(&book));
                moves
            })
        };
        // The first comes in, its number changes, its price changes.
        assert_eq!(moved(OverheadPer::Week), [2, 2, 1]);
        assert_eq!(moved(OverheadPer::DrinkSold), [1, 0, 1]);
    }

    #[test]
    fn what_an_import_touches_is_swept_as_it_would_be_followed() {
        let book = crate::exchange::read(include_str!("../../../public/books/marrowgate-juice-hall.json")).unwrap();
        let takes = Takes::of(&book);
        let keys: Vec<Key> = book.keys().filter(|key| *key != Key::Settings).collect();
        let offers = |keys: BTreeSet<Key>| keys.into_iter().filter(|key| matches!(key, Key::Offer(_)));
        for (skip, step) in [(0, 1), (1, 3), (2, 7), (5, 11)] {
            let touched: BTreeSet<Key> = keys.iter().copied().skip(skip).step_by(step).collect();
            assert!(touched.len() > FEW);
            let one_by_one = touched.iter().flat_map(|key| offers(followed(&book, &BTreeSet::from([*key]), &takes)));
            assert_eq!(
                offers(swept(&book, &touched)).collect::<Vec<_>>(),
                one_by_one.collect::<BTreeSet<_>>().into_iter().collect::<Vec<_>>()
            );
        }
    }
}
