//! A generated drink that can be made and costed: nothing that it needs is missing.

use brimwright::book::{Book, Container, Drink, Edit, Ingredient, Line, Offer, Pack, Record, Scaling};
use brimwright::cost::{Cost, cost};
use brimwright::fill::{Scaled, scale};
use brimwright::ledger::{Priced, price_offer};
use brimwright::measure::{Amount, Exact, Unit, Volume};
use proptest::collection::vec;
use proptest::prelude::*;

use crate::books::{self, complete_ingredient, fill, line};
use crate::support::{container_id, drink_id, pack, packaging_id, use_of, vessel};

const INGREDIENTS: u64 = 3;

/// A book with one drink in one container.
#[derive(Clone, Debug)]
pub struct Menu {
    pub book: Book,
}

impl Menu {
    pub fn drink(&self) -> &Drink {
        self.book.drink(drink_id(1)).unwrap()
    }

    pub fn container(&self) -> &Container {
        self.book.container(container_id(1)).unwrap()
    }

    /// The drink computed; generated recipes are such that this works.
    pub fn priced(&self) -> Priced {
        let offer = Offer { drink: drink_id(1), container: container_id(1), price: None };
        price_offer(&self.book, &offer).unwrap_or_else(|trouble| panic!("{trouble:?} in {:?}", self.book))
    }

    pub fn scaled_to(&self, fill: Volume) -> Scaled {
        scale(&self.book, self.drink(), fill).unwrap()
    }

    /// What the drink costs when it is made to fill this volume.
    pub fn cost_at(&self, fill: Volume) -> Cost {
        cost(&self.book, self.drink(), self.container(), &self.scaled_to(fill), fill).unwrap()
    }
}

fn packs() -> impl Strategy<Value = Vec<Pack>> {
    vec(books::pack(Unit::ALL, books::money(80)), 1..2)
}

/// At least one line is in proportion, and the fixed ones fit every generated size.
fn lines() -> impl Strategy<Value = Vec<Line>> {
    (line(INGREDIENTS), vec(line(INGREDIENTS), 0..4)).prop_map(|(first, rest)| {
        let first = Line { scaling: Scaling::InProportion, ..first };
        std::iter::once(first).chain(rest).collect()
    })
}

pub fn menu() -> impl Strategy<Value = Menu> {
    let ingredient =
        |id| (complete_ingredient(id), packs()).prop_map(|(ingredient, packs)| Ingredient { packs, ..ingredient });
    let ingredients: Vec<_> = (1..=INGREDIENTS).map(ingredient).collect();
    let bottle_price = books::money(80);
    (books::settings(), ingredients, bottle_price, books::drink(1, INGREDIENTS), lines(), fill()).prop_map(
        |(settings, ingredients, price, drink, lines, fill)| {
            let bottle = vessel(1, [Pack { price, ..pack(1, "120 ea", "1") }]);
            let container = Container {
                id: container_id(1),
                set: vec![use_of(1, "1")],
                brimful: Amount::new(fill.millilitres(), Unit::Millilitre),
                ..crate::support::container(1, "1 L")
            };
            assert_eq!(bottle.id, packaging_id(1));
            let drink = Drink { name: "Generated drink".into(), lines, ..drink };
            let records = ingredients.into_iter().map(Record::Ingredient);
            let mut book = Book::new(settings);
            for record in records.chain([Record::Packaging(bottle), Record::Container(container), Record::Drink(drink)])
            {
                book.apply(&Edit::Put(record)).expect("a complete record");
            }
            Menu { book }
        },
    )
}

/// Nothing up to ten times as much.
pub fn times() -> impl Strategy<Value = Exact> {
    (0..10_000_i64).prop_map(|steps| Exact::new(steps, 3))
}
