//! Generated drinks: lines that follow the size in every way, ice in every place, and air.

use brimwright::book::{Drink, DrinkKind, Ice, IcePlace, Labour, Line, LineId, Scaling, Stage};
use brimwright::foundation::measure::{Amount, Exact, Share, Time, Unit};
use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::sample::select;

use crate::books::{money, name, share, units_of};
use crate::number;
use crate::support::{drink_id, ingredient_id};

/// An amount as in a recipe; now and then one of any unit, in gallons or pounds.
fn usual() -> impl Strategy<Value = Amount> {
    const USUAL: &[Unit] =
        &[Unit::Millilitre, Unit::Centilitre, Unit::UsFluidOunce, Unit::UsTablespoon, Unit::Gram, Unit::Ounce];
    prop_oneof![5 => units_of(USUAL), 1 => units_of(Unit::ALL)]
}

/// An amount with the way it follows the size: mostly in proportion; a fixed one is small; a step
/// is mostly a part of the amount.
fn scaled_amount() -> impl Strategy<Value = (Amount, Scaling)> {
    let small = (1..2_000_i64).prop_map(|steps| Amount::new(Exact::new(steps, 2), Unit::Millilitre));
    let fixed = small.prop_map(|amount| (amount, Scaling::Fixed));
    let parts =
        select(vec![Exact::new(1, 1), Exact::new(125, 3), Exact::new(5, 1), Exact::new(1, 0), Exact::new(2, 0)]);
    let part_steps = (usual(), parts).prop_map(|(amount, part)| {
        let step = Amount::new(amount.number.times(part).unwrap(), amount.unit);
        (amount, Scaling::Stepped(step))
    });
    let any_steps = (usual(), number(50, 2)).prop_map(|(amount, more)| {
        let step = Amount::new(more.plus(Exact::new(1, 2)).unwrap(), amount.unit);
        (amount, Scaling::Stepped(step))
    });
    prop_oneof![
        6 => usual().prop_map(|amount| (amount, Scaling::InProportion)),
        2 => fixed,
        3 => part_steps,
        1 => any_steps,
        1 => usual().prop_map(|amount| (amount, Scaling::TopUp)),
    ]
    .boxed()
}

fn ice() -> impl Strategy<Value = Ice> {
    let packing = (40..=100_i64).prop_map(|hundredths| Share::from_fraction(Exact::new(hundredths, 2)));
    let melted = (0..=100_i64).prop_map(|hundredths| Share::from_fraction(Exact::new(hundredths, 2)));
    let melted = prop_oneof![1 => Just(Share::ZERO), 1 => melted];
    (select(IcePlace::ALL), packing, melted).prop_map(|(place, packing, melted)| Ice { place, packing, melted })
}

/// A line of one of the first `ingredients` that holds.
pub fn line(ingredients: u64) -> impl Strategy<Value = Line> {
    let ice = option::weighted(0.2, ice());
    let in_glass = prop::bool::weighted(0.2);
    (any::<u64>(), 1..=ingredients, select(Stage::ALL), scaled_amount(), ice, in_glass)
        .prop_map(|(id, ingredient, stage, (amount, scaling), ice, in_glass)| {
            let ingredient = ingredient_id(ingredient);
            Line { id: LineId::from_random(id), ingredient, stage, amount, scaling, ice, in_glass }
        })
        .boxed()
}

/// A line; now and then with a step of another kind, or a packing of nothing.
fn any_line(ingredients: u64) -> impl Strategy<Value = Line> {
    let odd = prop_oneof![20 => Just(0), 1 => Just(1), 1 => Just(2)];
    (line(ingredients), odd, units_of(Unit::ALL)).prop_map(|(line, odd, step)| match odd {
        1 => Line { scaling: Scaling::Stepped(step), ..line },
        2 => Line { ice: Some(Ice { place: IcePlace::Floating, packing: Share::ZERO, melted: Share::ZERO }), ..line },
        _ => line,
    })
}

fn labour() -> impl Strategy<Value = Labour> {
    let time = || number(300, 1).prop_map(Time::from_seconds);
    let litres = (1..600_i64).prop_map(|tenths| Amount::new(Exact::new(tenths, 1), Unit::Litre));
    let gallons = (1..150_i64).prop_map(|tenths| Amount::new(Exact::new(tenths, 1), Unit::UsGallon));
    let volume = option::of(prop_oneof![litres, gallons]);
    let some = (time(), time(), time(), 0..20_i64, volume).prop_map(
        |(per_drink, per_litre, per_batch, batch, batch_volume)| Labour {
            per_drink,
            per_litre,
            per_batch,
            batch: Exact::new(batch + 1, 0),
            batch_volume,
        },
    );
    prop_oneof![1 => Just(Labour::default()), 3 => some]
}

/// Whether it is treated, its pH, how it is kept and for how long.
fn kept() -> impl Strategy<Value = (bool, Option<Exact>, bool, Option<Exact>)> {
    let ph = (100..1401_i64).prop_map(|hundredths| Exact::new(hundredths, 2));
    let days = (0..731_i64).prop_map(|days| Exact::new(days, 0));
    (any::<bool>(), option::of(ph), any::<bool>(), option::of(days))
}

/// A drink of lines of the first `ingredients`; two top-ups among them are refused.
pub fn drink(id: u64, ingredients: u64) -> impl Strategy<Value = Drink> {
    let lines = vec(any_line(ingredients), 0..4);
    let kind = select(DrinkKind::ALL);
    let own = (option::of(share(30)), option::of(share(90)), option::weighted(0.3, share(30)), kept());
    let air = prop_oneof![3 => Just(Share::ZERO), 2 => share(30)];
    (name(), kind, lines, air, share(40), labour(), money(2), own)
        .prop_map(
            move |(
                name,
                kind,
                lines,
                air,
                process_loss,
                labour,
                treatment_fee,
                (unsold, target, tax_rate, (treated, ph, keep_refrigerated, keeps_days)),
            )| Drink {
                id: drink_id(id),
                name,
                kind,
                reference: Amount::new(Exact::from(16), Unit::UsFluidOunce),
                lines,
                air,
                process_loss,
                labour,
                treatment_fee,
                unsold,
                target,
                tax_rate,
                treated,
                ph,
                keep_refrigerated,
                keeps_days,
            },
        )
        .boxed()
}
