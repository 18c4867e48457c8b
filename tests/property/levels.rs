//! Fill lines of random cups and bottles.

use brimwright::foundation::measure::{Exact, Length, Volume};
use brimwright::foundation::shape::{Frustum, Inside, Pouring, Pourings, level};
use proptest::collection::vec;
use proptest::prelude::*;

use crate::cases::cases;
use crate::number;
use crate::support::{exact, millimetres};

/// A length of at least `from` and under `below` millimetres, to a hundredth.
fn length(from: u32, below: i64) -> impl Strategy<Value = Length> {
    number(below, 2).prop_map(move |more| Length::from_millimetres(more.plus(Exact::from(from)).unwrap()))
}

fn cup() -> impl Strategy<Value = Frustum> {
    (length(20, 200), length(20, 200), length(5, 400)).prop_map(|(base, rim, height)| Frustum { base, rim, height })
}

/// Two to eight pourings, each a little or a lot higher and fuller than the one before.
fn bottle() -> impl Strategy<Value = Pourings> {
    let rise = (1..8000_i64, 1..20_000_i64);
    vec(rise, 2..=8).prop_map(|rises| {
        let (mut height, mut volume) = (Length::ZERO, Volume::ZERO);
        let pour = |(higher, fuller)| {
            height = height.plus(Length::from_millimetres(Exact::new(higher, 2))).unwrap();
            volume = volume.plus(Volume::from_millilitres(Exact::new(fuller, 2))).unwrap();
            Pouring { height, volume }
        };
        Pourings::new(&rises.into_iter().map(pour).collect::<Vec<_>>()).unwrap()
    })
}

/// The volume is that of the line found for it, within what a millionth of a millimetre holds:
/// it lies between those a millionth under the line and a millionth over it.
fn line_holds(inside: &dyn Inside, share: Exact) -> Result<(), TestCaseError> {
    let volume = inside.volume_at(inside.height()).unwrap().times(share).unwrap();
    let line = level(inside, volume).unwrap();
    let millionth = millimetres("0.000001");
    let under = inside.volume_at(line.minus(millionth).unwrap()).unwrap();
    let over = inside.volume_at(line.plus(millionth).unwrap()).unwrap();
    prop_assert!(under <= volume && volume <= over, "{:?} at {:?}", volume, line);
    let off = inside.volume_at(line).unwrap().minus(volume).unwrap().millilitres().abs();
    let room = over.minus(under).unwrap().millilitres();
    prop_assert!(off <= room, "{} off at {:?}", off, line);
    Ok(())
}

/// A higher line holds more; between the lines is a thousandth of the height at least, and what
/// the arithmetic drops is far less than that holds.
fn rises(inside: &dyn Inside, share: Exact) -> Result<(), TestCaseError> {
    let thousandth = inside.height().times(exact("0.001")).unwrap();
    let lower = inside.height().minus(thousandth).unwrap().times(share).unwrap();
    let higher = lower.plus(thousandth).unwrap();
    let (less, more) = (inside.volume_at(lower).unwrap(), inside.volume_at(higher).unwrap());
    prop_assert!(less < more, "{:?} at {:?}, {:?} at {:?}", less, lower, more, higher);
    Ok(())
}

proptest! {
    #![proptest_config(cases(10_000))]

    #[test]
    fn cups(cup in cup(), share in number(1, 6)) {
        line_holds(&cup, share)?;
        rises(&cup, share)?;
    }

    #[test]
    fn bottles(bottle in bottle(), share in number(1, 6)) {
        line_holds(&bottle, share)?;
        rises(&bottle, share)?;
    }
}
