//! A generated drink that can be made and costed: nothing that it needs is missing.

use brimwright::book::{
    Book, Container, Drink, Edit, IcePlace, Ingredient, Line, LineId, Offer, Pack, PackagingSet, Record, Scaling,
};
use brimwright::drink::cost::{Cost, cost, overhead};
use brimwright::drink::fill::{Scaled, scale};
use brimwright::drink::ledger::{Priced, price_offer};
use brimwright::foundation::measure::{Amount, Exact, Money, Unit, Volume};
use proptest::collection::vec;
use proptest::prelude::*;

use crate::books::{self, complete_ingredient, fill};
use crate::drinks::{self, line};
use crate::support::{container_id, drink_id, offer_id, use_of, vessel};
use crate::vessels::{filled, packaging_set_id};

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
        let offer = Offer::new(offer_id(1, 1));
        price_offer(&self.book, &offer).unwrap_or_else(|error| panic!("{error:?} in {:?}", self.book))
    }

    /// The recipe at a volume; none where steps do not meet it, or fixed lines are too much.
    pub fn scaled_to(&self, fill: Volume) -> Option<Scaled> {
        scale(&self.book, self.drink(), fill).ok()
    }

    /// What the drink costs when it is made to fill this volume, if it can be.
    pub fn cost_at(&self, fill: Volume) -> Option<Cost> {
        let scaled = self.scaled_to(fill)?;
        let overhead = overhead(&self.book).unwrap();
        Some(cost(&self.book, self.drink(), self.container(), &scaled, fill, overhead).unwrap())
    }

    /// Whether a line follows in steps.
    pub fn has_steps(&self) -> bool {
        self.drink().lines.iter().any(|line| matches!(line.scaling, Scaling::Stepped(_)))
    }

    /// Whether ice floats in the drink.
    pub fn has_floating_ice(&self) -> bool {
        self.drink().lines.iter().any(|line| line.ice.is_some_and(|ice| ice.place == IcePlace::Floating))
    }
}

fn packs() -> impl Strategy<Value = Vec<Pack>> {
    vec(books::pack(Unit::ALL, books::money(80)), 1..2)
}

/// The first line is in proportion and no ice; of several top-ups the first remains one.
fn lines() -> impl Strategy<Value = Vec<Line>> {
    (line(INGREDIENTS), vec(line(INGREDIENTS), 0..4)).prop_map(|(first, mut rest)| {
        let first = Line { scaling: Scaling::InProportion, ice: None, in_glass: false, ..first };
        for line in rest.iter_mut().filter(|line| line.scaling == Scaling::TopUp).skip(1) {
            line.scaling = Scaling::InProportion;
        }
        // Numbered, since ids that are made small may become the same.
        let lines = std::iter::once(first).chain(rest);
        (1..).zip(lines).map(|(id, line)| Line { id: LineId::from_random(id), ..line }).collect()
    })
}

/// A menu whose drink can be made in its container.
pub fn menu() -> impl Strategy<Value = Menu> {
    any_menu().prop_filter("steps meet the size, and fixed lines fit", |menu| {
        price_offer(&menu.book, &Offer::new(offer_id(1, 1))).is_ok()
    })
}

fn any_menu() -> impl Strategy<Value = Menu> {
    let ingredient =
        |id| (complete_ingredient(id), packs()).prop_map(|(ingredient, packs)| Ingredient { packs, ..ingredient });
    let ingredients: Vec<_> = (1..=INGREDIENTS).map(ingredient).collect();
    let piece = || books::pack(&[Unit::Piece], books::money(80));
    let filled = fill().prop_flat_map(|fill| filled(Amount::new(fill.millilitres(), Unit::Millilitre)));
    let drink = drinks::drink(1, INGREDIENTS);
    let deposit = prop_oneof![1 => Just(Money::ZERO), 1 => books::money(1)];
    (books::settings(), ingredients, (piece(), piece()), drink, lines(), filled, deposit).prop_map(
        |(settings, ingredients, (bottle, lid), drink, lines, (brimful, headspace), deposit)| {
            let shared = PackagingSet {
                id: packaging_set_id(1),
                name: "Generated set".into(),
                uses: vec![use_of(2, "1"), use_of(1, "0.5")],
            };
            let container = Container {
                id: container_id(1),
                set: vec![use_of(1, "1")],
                shared: vec![shared.id],
                brimful,
                headspace,
                deposit,
                ..crate::support::container(1, "1 L")
            };
            let drink = Drink { name: "Generated drink".into(), lines, ..drink };
            let packagings = [Record::Packaging(vessel(1, [bottle])), Record::Packaging(vessel(2, [lid]))];
            let records = ingredients.into_iter().map(Record::Ingredient).chain(packagings);
            let mut book = Book::new(settings);
            for record in
                records.chain([Record::PackagingSet(shared), Record::Container(container), Record::Drink(drink)])
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
