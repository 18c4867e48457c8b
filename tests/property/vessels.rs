//! Generated containers: weighed, by their measures or by pourings, with packaging of their own
//! and packaging that they share.

use brimwright::book::{
    Brimful, Container, Headspace, Packaging, PackagingPart, PackagingSet, PackagingSetId, PackagingUse, Reading,
    Tapered,
};
use brimwright::foundation::measure::{Amount, Exact, LengthUnit, Money, Share, TypedLength, Unit};
use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::sample::{select, subsequence};

use crate::books::{any_money, name, on_hand, pack, share, units_of};
use crate::number;
use crate::support::{container_id, packaging_id};

pub const PACKAGINGS: u64 = 2;
pub const PACKAGING_SETS: u64 = 2;

const VESSEL_UNITS: &[Unit] = &[Unit::Millilitre, Unit::Centilitre, Unit::UsFluidOunce, Unit::ImperialFluidOunce];

pub fn packaging(id: u64) -> impl Strategy<Value = Packaging> {
    let units = prop_oneof![20 => Just(&[Unit::Piece][..]), 1 => Just(&[Unit::Gram][..])];
    let packs = units.prop_flat_map(|units| vec(pack(units, any_money()), 0..3));
    (name(), select(PackagingPart::ALL), packs, on_hand(&[Unit::Piece]))
        .prop_map(move |(name, part, packs, on_hand)| Packaging { id: packaging_id(id), name, part, packs, on_hand })
        .boxed()
}

fn uses() -> impl Strategy<Value = Vec<PackagingUse>> {
    let ids = prop_oneof![30 => subsequence(vec![1, 2], 0..=2), 1 => Just(vec![1, 1])];
    let counts = || prop_oneof![30 => 1..6_u32, 1 => Just(0)];
    (ids, counts(), counts()).prop_map(|(ids, first, second)| {
        let used = |(id, count)| PackagingUse { packaging: packaging_id(id), count: Exact::from(count) };
        ids.into_iter().zip([first, second]).map(used).collect()
    })
}

pub fn packaging_set_id(number: u64) -> PackagingSetId {
    PackagingSetId::from_random(number)
}

pub fn packaging_set(id: u64) -> impl Strategy<Value = PackagingSet> {
    (name(), uses()).prop_map(move |(name, uses)| PackagingSet { id: packaging_set_id(id), name, uses })
}

/// A length from `low` up to, and not at, `high` millimetres, in any unit; inches and
/// centimetres are the longer for it.
fn length(low: i64, high: i64) -> impl Strategy<Value = TypedLength> {
    let unit = prop_oneof![8 => Just(LengthUnit::Millimetre), 1 => select(LengthUnit::ALL)];
    (low * 100..high * 100, unit).prop_map(|(steps, unit)| TypedLength::new(Exact::new(steps, 2), unit))
}

/// A cup between a shot's and a jug's, now and then with a base wider than its rim.
pub fn tapered() -> impl Strategy<Value = Tapered> {
    (length(40, 90), length(60, 110), length(60, 180)).prop_map(|(base, rim, height)| Tapered { base, rim, height })
}

/// Readings that rise; now and then there is one only, or one that does not rise.
fn readings() -> impl Strategy<Value = Vec<Reading>> {
    let rise = prop_oneof![40 => (1..60_u32, 1..200_u32), 1 => (0..2_u32, 0..2_u32)];
    (vec(rise, 1..7), select(&[LengthUnit::Millimetre, LengthUnit::Centimetre][..])).prop_map(|(rises, unit)| {
        let (mut height, mut volume) = (0, 0);
        let reading = |(higher, more)| {
            height += higher;
            volume += more;
            Reading {
                height: TypedLength::new(Exact::from(height), unit),
                volume: Amount::new(Exact::from(volume), Unit::Millilitre),
            }
        };
        rises.into_iter().map(reading).collect()
    })
}

fn brimful() -> impl Strategy<Value = Brimful> {
    prop_oneof![
        2 => units_of(VESSEL_UNITS).prop_map(Brimful::Weighed),
        1 => tapered().prop_map(Brimful::Tapered),
        1 => readings().prop_map(Brimful::Poured),
    ]
}

/// Headspace by volume, share or height.
fn headspace() -> impl Strategy<Value = Headspace> {
    let volume = number(30, 2).prop_map(|number| Headspace::Volume(Amount::new(number, Unit::Millilitre)));
    prop_oneof![2 => share(20).prop_map(Headspace::Share), 1 => volume, 1 => length(0, 20).prop_map(Headspace::Height)]
}

pub fn container(id: u64) -> impl Strategy<Value = Container> {
    let declared = option::weighted(0.15, units_of(VESSEL_UNITS));
    let shared = prop_oneof![30 => subsequence(vec![1, 2], 0..=2), 1 => Just(vec![2, 2])];
    let mends = prop::bool::weighted(0.9);
    let deposit = prop_oneof![3 => Just(Money::ZERO), 2 => any_money()];
    let starting = option::weighted(0.3, option::weighted(0.5, units_of(VESSEL_UNITS)));
    (name(), brimful(), declared, headspace(), mends, uses(), shared, (deposit, starting))
        .prop_map(move |(name, brimful, declared, headspace, mends, set, shared, (deposit, starting))| {
            // Headspace by height is refused where there are no heights: that stays rare.
            let headspace = match (&brimful, headspace) {
                (Brimful::Weighed(_), Headspace::Height(_)) if mends => Headspace::Share(Share::ZERO),
                _ => headspace,
            };
            let shared = shared.into_iter().map(packaging_set_id).collect();
            // What was brought, or what was weighed since.
            let starting = starting.and_then(|weighed| match (weighed, &brimful) {
                (None, Brimful::Weighed(brought)) => Some(*brought),
                (other, _) => other,
            });
            let new = Container::new(container_id(id), name, brimful);
            Container { headspace, declared, set, shared, deposit, starting, ..new }
        })
        .boxed()
}

/// A brimful volume with a headspace that fits it: for a drink that fills `volume` to the rim, or
/// a cup between a shot's and a jug's.
pub fn filled(volume: Amount) -> impl Strategy<Value = (Brimful, Headspace)> {
    let cup = (tapered(), length(0, 2)).prop_map(|(cup, height)| (Brimful::Tapered(cup), Headspace::Height(height)));
    let share = share(20).prop_map(move |share| (Brimful::Weighed(volume), Headspace::Share(share)));
    prop_oneof![3 => share, 1 => cup]
}
