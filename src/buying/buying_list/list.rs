//! The list at the supplier's: by supplier, with what it costs.

use crate::book::{Book, BuyingList, Goods, Key, Pack, ToBuy};
use crate::drink::cost;
use crate::foundation::in_order;
use crate::foundation::measure::{Exact, Money, Overflow};

/// What is to be bought of one supplier.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Group {
    /// The supplier; empty where the pack names none or is not quoted any more.
    pub supplier: String,
    /// Its lines, by the names of the goods.
    pub lines: Vec<Listed>,
    /// What they cost.
    pub totals: Totals,
}

/// A line of the list with the pack that it speaks of.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Listed {
    /// The line.
    pub line: ToBuy,
    /// The pack. It is `None` if it is not quoted any more.
    pub pack: Option<Pack>,
    /// What one pack is or was paid with, without its surcharge. It is `None` if nobody knows.
    pub each: Option<Money>,
    /// What the packs cost together, with surcharges.
    pub cost: Option<Money>,
}

/// What lines cost together.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Totals {
    /// All of them.
    pub all: Money,
    /// Those that are ticked.
    pub bought: Money,
    /// How many lines there are.
    pub lines: usize,
    /// How many of them are ticked.
    pub ticked: usize,
    /// How many have no price.
    pub unpriced: usize,
}

impl Listed {
    /// A line of the list, in the book as it is now.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn of(book: &Book, line: ToBuy) -> Result<Listed, Overflow> {
        let pack = book.packs(line.goods).iter().find(|pack| pack.id == line.pack).cloned();
        let asked = pack.as_ref().map(|pack| pack.price_at(line.packs));
        let each = line.paid.or(asked);
        let surcharge = pack.as_ref().map(|pack| pack.surcharge).unwrap_or_default();
        let cost = each.map(|each| cost::paid_each(each, surcharge, line.packs)).transpose()?;
        Ok(Listed { line, pack, each, cost })
    }
}

impl Totals {
    /// What is not ticked yet.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn left(&self) -> Result<Money, Overflow> {
        self.all.minus(self.bought)
    }

    fn add(&mut self, listed: &Listed) -> Result<(), Overflow> {
        let cost = listed.cost.unwrap_or_default();
        self.all = self.all.plus(cost)?;
        self.lines = self.lines.saturating_add(1);
        self.unpriced = self.unpriced.saturating_add(usize::from(listed.cost.is_none()));
        if listed.line.bought {
            self.bought = self.bought.plus(cost)?;
            self.ticked = self.ticked.saturating_add(1);
        }
        Ok(())
    }

    fn join(&mut self, other: &Totals) -> Result<(), Overflow> {
        self.all = self.all.plus(other.all)?;
        self.bought = self.bought.plus(other.bought)?;
        self.lines = self.lines.saturating_add(other.lines);
        self.ticked = self.ticked.saturating_add(other.ticked);
        self.unpriced = self.unpriced.saturating_add(other.unpriced);
        Ok(())
    }
}

/// The list by supplier, in the order of their names, those without one last; and what all of it
/// costs.
///
/// # Errors
/// [`Overflow`].
pub fn group(book: &Book, list: &BuyingList) -> Result<(Vec<Group>, Totals), Overflow> {
    let mut groups: Vec<Group> = Vec::new();
    for line in &list.lines {
        let listed = Listed::of(book, *line)?;
        let supplier = listed.pack.as_ref().map(|pack| pack.supplier.trim().to_string()).unwrap_or_default();
        let order = |name: &str| (name.is_empty(), name.to_ascii_lowercase(), name.to_string());
        let place = groups.partition_point(|group| order(&group.supplier) < order(&supplier));
        if groups.get(place).is_none_or(|group| group.supplier != supplier) {
            groups.insert(place, Group { supplier, lines: Vec::new(), totals: Totals::default() });
        }
        if let Some(group) = groups.get_mut(place) {
            group.totals.add(&listed)?;
            let name = |line: &Listed| {
                let name = book.name(Key::from(line.line.goods)).to_ascii_lowercase();
                (in_order::name_with_numbers(&name), line.line.goods)
            };
            in_order::insert(&mut group.lines, listed, |other, listed| name(other) <= name(listed));
        }
    }
    let mut totals = Totals::default();
    for group in &groups {
        totals.join(&group.totals)?;
    }
    Ok((groups, totals))
}

/// Every pack that may be put on a list by hand: those quoted and not on it yet, as lines with as
/// many packs as are bought at a time.
pub fn addable<'a>(book: &'a Book, list: Option<&'a BuyingList>) -> impl Iterator<Item = ToBuy> + 'a {
    let ingredients = book.ingredients().map(|ingredient| Goods::Ingredient(ingredient.id));
    let packagings = book.packagings().map(|packaging| Goods::Packaging(packaging.id));
    let lines = ingredients.chain(packagings).flat_map(|goods| {
        book.packs(goods).iter().map(move |pack| ToBuy {
            goods,
            pack: pack.id,
            packs: pack.at_a_time.ceiling().max(Exact::ONE),
            bought: false,
            paid: None,
        })
    });
    let on_it = move |line: &ToBuy| {
        list.is_some_and(|list| list.lines.iter().any(|it| (it.goods, it.pack) == (line.goods, line.pack)))
    };
    lines.filter(move |line| !on_it(line))
}
