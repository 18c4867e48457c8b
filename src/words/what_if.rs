//! What using a what-if changes in the book, and what it leaves as it is.

use super::Speaker;
use super::quotes::pack;
use crate::book::{Book, Goods, Key, PackId};
use crate::foundation::measure::Money;
use crate::say;
use crate::sizes::side_by_side::{Change, NotOurs, Rise};

/// A book's names and numbers, for what is tried beside it.
pub struct Trials<'a> {
    /// The book, for names.
    pub book: &'a Book,
    /// Says its numbers.
    pub speaker: &'a Speaker,
}

impl Trials<'_> {
    fn goods(&self, goods: Goods) -> String {
        self.book.name(Key::from(goods))
    }

    fn pack(&self, goods: Goods, id: Option<PackId>) -> String {
        let found = self.book.packs(goods).iter().find(|pack| Some(pack.id) == id);
        found.map_or(say!(common::none).to_string(), |found| pack(found, self.speaker))
    }

    /// One change of the book: "Orchard Green, 16 oz bottle: price $8.75 instead of $8.50."
    pub fn change(&self, change: &Change) -> String {
        let speaker = self.speaker;
        let percent = |share| speaker.percent(share);
        match change {
            Change::Price { offer, from, to } => {
                let (offer, to) = (self.book.name(Key::Offer(*offer)), speaker.money(*to));
                match from {
                    Some(from) => say!(sales::use_price, offer = offer, from = speaker.money(*from), to = to),
                    None => say!(sales::use_first_price, offer = offer, to = to),
                }
            }
            Change::Fill { container, from, to, drinks } => {
                let size = self.book.name(Key::Container(*container));
                let from = from.map_or(say!(common::none).to_string(), |from| speaker.volume(from));
                say!(sales::use_fill, size = size, from = from, to = speaker.volume(*to), drinks = *drinks)
            }
            Change::Pack { goods, from, to } => {
                let (from, to) = (self.pack(*goods, *from), self.pack(*goods, Some(*to)));
                say!(sales::use_pack, goods = self.goods(*goods), from = from, to = to)
            }
            Change::Target(from, to, drinks) => {
                say!(sales::use_target, from = percent(*from), to = percent(*to), drinks = *drinks)
            }
            Change::Waste(from, to, drinks) => {
                say!(sales::use_waste, from = percent(*from), to = percent(*to), drinks = *drinks)
            }
            Change::Wage(from, to) => say!(sales::use_wage, from = speaker.money(*from), to = speaker.money(*to)),
            Change::CardFee(from, to) => say!(sales::use_card_fee, from = percent(*from), to = percent(*to)),
            Change::Commission(from, to) => say!(sales::use_commission, from = percent(*from), to = percent(*to)),
        }
    }

    /// Prices that change alike: "16 oz bottle: 12 prices, each $0.50 more."
    pub fn rise(&self, rise: &Rise) -> String {
        let (size, drinks) = (self.book.name(Key::Container(rise.container)), super::count(rise.drinks));
        let by = self.speaker.money(Money::from_major(rise.by.major().abs()));
        if rise.by.is_negative() {
            say!(sales::prices_fall, size = size, drinks = drinks, by = by)
        } else {
            say!(sales::prices_rise, size = size, drinks = drinks, by = by)
        }
    }

    /// What the owner does not set, and why.
    pub fn not_ours(&self, left: &NotOurs) -> String {
        match left {
            NotOurs::Ingredients(change) => {
                let sign = if change.fraction().is_positive() { "+" } else { "" };
                let change = format!("{sign}{}", self.speaker.percent(*change));
                say!(sales::leave_ingredients, change = change)
            }
            NotOurs::PackPrice { goods, to, .. } => {
                say!(sales::leave_pack_price, goods = self.goods(*goods), price = self.speaker.money(*to))
            }
            NotOurs::Mix(container, share) => {
                let size = self.book.name(Key::Container(*container));
                say!(sales::leave_share, share = self.speaker.percent(*share), size = size)
            }
        }
    }
}
