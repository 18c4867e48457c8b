//! What is missing for what is to be made, in whole packs.

use std::collections::BTreeMap;

use super::in_dimension;
use crate::book::{Book, BuyingList, Goods, Key, OfferId, Pack, PackId, ToBuy};
use crate::drink::cost;
use crate::drink::ledger::Ledger;
use crate::drink::make::{Needed, Unmade, made_a_week, needs, whole_packs};
use crate::drink::yields::YieldError;
use crate::foundation::in_order;
use crate::foundation::measure::{Date, Dimension, Exact, Measure, Money, Overflow};

/// What is to be bought for so many drinks, before a list is made of it.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Proposal {
    /// Goods that are needed and have a pack to buy them in, by name.
    pub lines: Vec<Proposed>,
    /// Goods of which no pack can be counted, with what the ingredient lacks; `None` if no pack is
    /// quoted.
    pub without_pack: Vec<(Goods, Option<YieldError>)>,
    /// Goods that are needed and cost nothing, such as water from the tap: they are not bought.
    pub free: Vec<Goods>,
    /// Drinks that are not counted, and why.
    pub left_out: Vec<(OfferId, Unmade)>,
}

/// Goods that are needed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Proposed {
    /// What is needed.
    pub goods: Goods,
    /// In each of its packs, in their order: the first is the one bought now. At least one.
    pub quotes: Vec<Quote>,
}

/// What is needed, in one of the packs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Quote {
    /// The pack.
    pub pack: PackId,
    /// How much is needed as bought, in the dimension of the pack.
    pub needed: Measure,
    /// How much of it is here.
    pub here: Here,
    /// Whole packs to buy: zero if what is here is enough, else no fewer than are bought at a time.
    pub packs: Exact,
    /// What is there of it then and not needed.
    pub left_over: Measure,
    /// What the packs cost together, at the price for so many and with surcharges.
    pub cost: Money,
}

/// What is here of goods.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Here {
    /// Nobody counted it: as if nothing were here.
    NotCounted,
    /// So much, in the dimension of the pack.
    Counted {
        /// How much.
        amount: Measure,
        /// The day of the count.
        day: Date,
    },
    /// It was counted in units that cannot be turned into those of the pack, so it counts as if
    /// nothing were here.
    Unusable {
        /// What the ingredient lacks.
        lacks: YieldError,
        /// The day of the count.
        day: Date,
    },
}

/// What is to be made: what is planned on these days and not filled yet, and so many usual weeks
/// of what is sold and thrown away. Each drink and size once.
///
/// # Errors
/// [`Overflow`].
pub fn makes(book: &Book, days: &[Date], weeks: Exact) -> Result<Vec<(OfferId, Exact)>, Overflow> {
    let mut units: BTreeMap<OfferId, Exact> = BTreeMap::new();
    let mut add = |offer, more: Exact| {
        let sum = units.entry(offer).or_default();
        *sum = sum.plus(more)?;
        Ok::<(), Overflow>(())
    };
    for day in days {
        let makes = book.batch(*day).map(|batch| batch.makes.as_slice()).unwrap_or_default();
        for make in makes.iter().filter(|make| !make.filled) {
            add(make.offer(), make.on_shelf()?)?;
        }
    }
    if weeks.is_positive() {
        for offer in book.offers() {
            if let Some(a_week) = made_a_week(book, offer)? {
                add(offer.id(), a_week.times(weeks)?.as_part())?;
            }
        }
    }
    Ok(units.into_iter().collect())
}

/// What is to be bought for so many of each drink in a size.
///
/// Packs are counted to a billionth of one before they are rounded up, as in
/// [`whole_packs`].
///
/// # Errors
/// [`Overflow`].
pub fn propose(book: &Book, ledger: &Ledger, makes: &[(OfferId, Exact)]) -> Result<Proposal, Overflow> {
    let needs = needs(book, ledger, &mut makes.iter().copied())?;
    let mut proposal = Proposal { left_out: needs.left_out, ..Proposal::default() };
    for needed in &needs.ingredients {
        let Some(ingredient) = book.ingredient_now(needed.ingredient) else { continue };
        let bought = |pack: &Pack| Needed::bought(needed, &ingredient, pack.contents.unit.dimension());
        proposal.add(book, Goods::Ingredient(needed.ingredient), &bought)?;
    }
    for (packaging, pieces) in &needs.packaging {
        proposal.add(book, Goods::Packaging(*packaging), &|_| Ok(*pieces))?;
    }
    Ok(proposal)
}

impl Proposal {
    /// Adds goods, of which so much is needed in the dimension of a pack.
    fn add(
        &mut self,
        book: &Book,
        goods: Goods,
        needed: &dyn Fn(&Pack) -> Result<Exact, YieldError>,
    ) -> Result<(), Overflow> {
        let (mut quotes, mut lacks, mut costs) = (Vec::new(), None, false);
        for pack in book.packs(goods) {
            costs |= cost::paid(pack)?.is_positive();
            match needed(pack) {
                Ok(needed) => quotes.push(Quote::of(book, goods, pack, needed.as_part())?),
                Err(YieldError::Arithmetic(overflow)) => return Err(overflow),
                Err(error) => lacks = lacks.or(Some(error)),
            }
        }
        if quotes.is_empty() {
            self.without_pack.push((goods, lacks));
        } else if !costs {
            self.free.push(goods);
        } else {
            let name = |line: &Proposed| {
                let name = book.name(Key::from(line.goods)).to_ascii_lowercase();
                (in_order::name_with_numbers(&name), line.goods)
            };
            let line = Proposed { goods, quotes };
            in_order::insert(&mut self.lines, line, |other, line| name(other) < name(line));
        }
        Ok(())
    }

    /// What all of it costs, in the pack chosen for each of the goods.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn cost(&self, choose: &dyn Fn(&Proposed) -> Option<Quote>) -> Result<Money, Overflow> {
        self.lines.iter().filter_map(choose).try_fold(Money::ZERO, |sum, quote| sum.plus(quote.cost))
    }

    /// The list that is made of it, with the pack chosen for each of the goods.
    pub fn list(&self, day: Date, choose: &dyn Fn(&Proposed) -> Option<Quote>) -> BuyingList {
        let line = |proposed: &Proposed| {
            let Quote { pack, packs, .. } = choose(proposed).filter(|quote| quote.packs.is_positive())?;
            Some(ToBuy { goods: proposed.goods, pack, packs, bought: false, paid: None })
        };
        BuyingList { day, lines: self.lines.iter().filter_map(line).collect() }
    }
}

impl Proposed {
    /// In the pack bought now, or the first in which it can be counted.
    pub fn now(&self) -> Option<Quote> {
        self.quotes.first().copied()
    }

    /// The pack in which enough of it costs least; the first one of equals.
    pub fn cheapest(&self) -> Option<Quote> {
        self.quotes.iter().copied().min_by_key(|quote| quote.cost)
    }

    /// In this pack.
    pub fn in_pack(&self, pack: PackId) -> Option<Quote> {
        self.quotes.iter().copied().find(|quote| quote.pack == pack)
    }
}

impl Quote {
    /// More of the same packs that cost less in all, since their price falls from so many on: the number that costs
    /// least, and of equals the smaller. Returns `None` if there is none.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn more_for_less(&self, book: &Book, goods: Goods) -> Result<Option<Quote>, Overflow> {
        let Some(pack) = book.packs(goods).iter().find(|pack| pack.id == self.pack) else { return Ok(None) };
        let mut found: Option<Quote> = None;
        for tier in pack.tiers.iter().filter(|_| self.packs.is_positive()) {
            let packs = tier.from.ceiling();
            if packs <= self.packs {
                continue;
            }
            let cost = cost::paid_for(pack, packs)?;
            let least = found.as_ref().map_or((self.cost, packs), |found| (found.cost, found.packs));
            if cost < least.0 || (found.is_some() && cost == least.0 && packs < least.1) {
                let more = pack.contents.measure()?.base().times(packs.minus(self.packs)?)?;
                let left_over = self.left_over.dimension().measure(self.left_over.base().plus(more)?);
                found = Some(Quote { packs, cost, left_over, ..*self });
            }
        }
        Ok(found)
    }

    /// `needed` is in the base unit of the pack's dimension.
    fn of(book: &Book, goods: Goods, pack: &Pack, needed: Exact) -> Result<Quote, Overflow> {
        let contents = pack.contents.measure()?;
        let dimension = contents.dimension();
        let here = Here::of(book, goods, dimension)?;
        let here_now = if let Here::Counted { amount, .. } = here { amount.base() } else { Exact::ZERO };
        let missing = needed.minus(here_now)?;
        let packs = if missing.is_positive() { whole_packs(pack, missing)? } else { Exact::ZERO };
        // A least order is one only where something is ordered.
        let packs = if packs.is_positive() { packs.max(pack.at_a_time.ceiling()) } else { packs };
        let left_over = packs.times(contents.base())?.minus(missing)?;
        let cost = cost::paid_for(pack, packs)?;
        let (needed, left_over) = (dimension.measure(needed), dimension.measure(left_over));
        Ok(Quote { pack: pack.id, needed, here, packs, left_over, cost })
    }
}

impl Here {
    fn of(book: &Book, goods: Goods, dimension: Dimension) -> Result<Here, Overflow> {
        let Some(on_hand) = book.on_hand(goods) else { return Ok(Here::NotCounted) };
        let day = on_hand.day;
        match in_dimension(book, goods, on_hand.amount.measure()?, dimension) {
            Ok(base) => Ok(Here::Counted { amount: dimension.measure(base), day }),
            Err(YieldError::Arithmetic(overflow)) => Err(overflow),
            Err(lacks) => Ok(Here::Unusable { lacks, day }),
        }
    }
}
