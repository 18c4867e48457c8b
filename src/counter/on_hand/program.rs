//! The integer program behind the best use: which whole numbers, each within its bounds, bring the
//! most out of what is here.
//!
//! Branch and bound. The hints come from the same program with parts allowed, as estimates; no
//! decision rests on them. Every bound is computed anew in whole numbers: with any prices of 0 or
//! more for what is scarce, no choice within a box of bounds brings more than what is here is
//! worth at these prices, and what each drink brings above what it takes at them.
//!
//! Of choices that bring the same, the one with more of the first is taken; of those with as many
//! of the first, the one with more of the second, and so on.

use crate::foundation::in_order;
use crate::foundation::statistics::{Hints, Relaxed};

/// Prices of what is scarce are whole numbers of this part.
const PRICE_PARTS: i128 = 1_000_000_000_000;

/// A hint that lies further from the next whole number lies between two.
const BETWEEN: f64 = 1e-6;

/// What may be chosen, in whole numbers.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Program {
    /// What one of each brings, 0 or more.
    pub values: Vec<i128>,
    /// How many of each at most, 0 or more.
    pub most: Vec<i128>,
    /// What is scarce.
    pub rows: Vec<Scarce>,
}

/// Something scarce.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Scarce {
    /// What one of each takes, 0 or more, in the order of the values.
    pub takes: Vec<i128>,
    /// What is there, 0 or more.
    pub here: i128,
}

/// What was chosen.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Choice {
    /// How many of each.
    pub units: Vec<i128>,
    /// Whether everything else was ruled out. If not, this is the best that was found.
    pub proved: bool,
    /// Boxes that were looked into.
    pub looked: u32,
}

/// How many of each at least and at most.
#[derive(Clone)]
struct Bounds {
    least: Vec<i128>,
    most: Vec<i128>,
}

/// The best so far.
struct Best {
    value: i128,
    units: Vec<i128>,
}

impl Best {
    /// Whether a choice is to be taken instead.
    fn yields_to(&self, value: i128, units: &[i128]) -> bool {
        value > self.value || (value == self.value && units > self.units.as_slice())
    }
}

impl Program {
    /// The best choice, looking into at most so many boxes. None where the numbers are beyond
    /// computing.
    pub fn solve(&self, boxes: u32) -> Option<Choice> {
        let nothing = vec![0; self.values.len()];
        let mut best = Best { value: 0, units: nothing.clone() };
        let grain = self.values.iter().fold(0, |grain, value| divisor(grain, *value));
        let mut open = vec![Bounds { least: nothing, most: self.most.clone() }];
        let mut looked = 0_u32;
        while let Some(bounds) = open.pop() {
            if looked >= boxes {
                return Some(Choice { units: best.units, proved: false, looked });
            }
            looked = looked.saturating_add(1);
            open.extend(self.look(bounds, grain, &mut best)?);
        }
        Some(Choice { units: best.units, proved: true, looked })
    }

    /// Looks into a box: gives nothing more where it can hold nothing better, else smaller boxes to
    /// look into, the more hopeful one last.
    fn look(&self, mut bounds: Bounds, grain: i128, best: &mut Best) -> Option<Vec<Bounds>> {
        let Some(left) = self.left(&bounds.least)? else { return Some(Vec::new()) };
        self.reach(&mut bounds, &left)?;
        let hints = self.hints(&bounds, &left);
        let prices = hints.as_ref().map(|hints| prices(&hints.prices)).unwrap_or_default();
        let worth = self.worth(&bounds, &left, &prices)?;
        let bound = self.value(&bounds.least)?.checked_add(to_grain(worth.checked_div(PRICE_PARTS)?, grain)?)?;
        if !best.yields_to(bound, &bounds.most) {
            return Some(Vec::new());
        }
        let hinted = hints.map(|hints| absolute(&bounds.least, &hints.units)).unwrap_or_default();
        let found = self.rounded(&bounds, left, &hinted)?;
        let value = self.value(&found)?;
        if best.yields_to(value, &found) {
            *best = Best { value, units: found.clone() };
        }
        if found == bounds.most || !best.yields_to(bound, &bounds.most) {
            return Some(Vec::new());
        }
        let spare = worth.checked_sub(best.value.checked_sub(self.value(&bounds.least)?)?.checked_mul(PRICE_PARTS)?)?;
        self.tighten(&mut bounds, &prices, spare)?;
        halves(bounds, &hinted, &found)
    }

    fn value(&self, units: &[i128]) -> Option<i128> {
        sum_of_products(&self.values, units)
    }

    /// What is left of each row; nothing where one does not reach.
    fn left(&self, units: &[i128]) -> Option<Option<Vec<i128>>> {
        let mut left = Vec::with_capacity(self.rows.len());
        for row in &self.rows {
            let rest = row.here.checked_sub(sum_of_products(&row.takes, units)?)?;
            if rest < 0 {
                return Some(None);
            }
            left.push(rest);
        }
        Some(Some(left))
    }

    /// No more of each than what is left reaches for.
    fn reach(&self, bounds: &mut Bounds, left: &[i128]) -> Option<()> {
        for (row, rest) in self.rows.iter().zip(left) {
            for ((most, least), takes) in bounds.most.iter_mut().zip(&bounds.least).zip(&row.takes) {
                if let Some(more) = rest.checked_div(*takes) {
                    *most = (*most).min(least.checked_add(more)?);
                }
            }
        }
        Some(())
    }

    /// What parts would come to, above what is chosen at least.
    fn hints(&self, bounds: &Bounds, left: &[i128]) -> Option<Hints> {
        let most: Vec<f64> =
            bounds.most.iter().zip(&bounds.least).map(|(most, least)| most.saturating_sub(*least) as f64).collect();
        let of = |(row, rest): (&Scarce, &i128)| (row.takes.iter().map(|takes| *takes as f64).collect(), *rest as f64);
        let rows = self.rows.iter().zip(left).map(of).collect();
        Relaxed { values: self.values.iter().map(|value| *value as f64).collect(), most, rows }.hints()
    }

    /// What one of a kind brings above what it takes at these prices, in parts of a price.
    fn above(&self, place: usize, prices: &[i128]) -> Option<i128> {
        let mut above = self.values.get(place)?.checked_mul(PRICE_PARTS)?;
        for (row, price) in self.rows.iter().zip(prices) {
            above = above.checked_sub(row.takes.get(place)?.checked_mul(*price)?)?;
        }
        Some(above)
    }

    /// No choice within the bounds brings more than this above the least of each, in parts of a
    /// price.
    fn worth(&self, bounds: &Bounds, left: &[i128], prices: &[i128]) -> Option<i128> {
        let mut worth = sum_of_products(left, prices)?;
        for (place, (least, most)) in bounds.least.iter().zip(&bounds.most).enumerate() {
            let above = self.above(place, prices)?.max(0);
            worth = worth.checked_add(above.checked_mul(most.checked_sub(*least)?)?)?;
        }
        Some(worth)
    }

    /// Takes off the bounds what would cost more than what is to spare.
    fn tighten(&self, bounds: &mut Bounds, prices: &[i128], spare: i128) -> Option<()> {
        for (place, (least, most)) in bounds.least.iter_mut().zip(bounds.most.iter_mut()).enumerate() {
            let above = self.above(place, prices)?;
            let Some(away) = spare.checked_div(above.checked_abs()?) else { continue };
            if above > 0 {
                *least = (*least).max(most.checked_sub(away)?);
            } else {
                *most = (*most).min(least.checked_add(away)?);
            }
        }
        Some(())
    }

    /// The hints rounded down where that reaches, filled up with what still fits: what brings most
    /// first.
    fn rounded(&self, bounds: &Bounds, left: Vec<i128>, hinted: &[f64]) -> Option<Vec<i128>> {
        let down =
            |((least, most), hint): ((&i128, &i128), &f64)| ((hint + BETWEEN).floor() as i128).clamp(*least, *most);
        let hinted: Vec<i128> = bounds.least.iter().zip(&bounds.most).zip(hinted).map(down).collect();
        let reaches = hinted.len() == bounds.least.len();
        let (mut units, mut left) = match if reaches { self.left(&hinted)? } else { None } {
            Some(left) => (hinted, left),
            None => (bounds.least.clone(), left),
        };
        let mut order: Vec<usize> = Vec::with_capacity(units.len());
        for place in 0..self.values.len() {
            in_order::insert(&mut order, place, |other, place| self.values.get(*other) >= self.values.get(*place));
        }
        for place in order {
            let (Some(units), Some(most)) = (units.get_mut(place), bounds.most.get(place)) else { continue };
            let mut more = most.checked_sub(*units)?;
            for (row, rest) in self.rows.iter().zip(&left) {
                if let Some(reaches) = rest.checked_div(*row.takes.get(place)?) {
                    more = more.min(reaches);
                }
            }
            *units = units.checked_add(more)?;
            for (row, rest) in self.rows.iter().zip(left.iter_mut()) {
                *rest = rest.checked_sub(row.takes.get(place)?.checked_mul(more)?)?;
            }
        }
        Some(units)
    }
}

/// The box in two, at the hint that lies most between two whole numbers, else at the first number
/// that is open; a box of one choice as it is.
fn halves(bounds: Bounds, hinted: &[f64], found: &[i128]) -> Option<Vec<Bounds>> {
    let mut cut: Option<(usize, i128)> = None;
    let mut widest = BETWEEN;
    for (place, ((least, most), hint)) in bounds.least.iter().zip(&bounds.most).zip(hinted).enumerate() {
        let (below, between) = (hint.floor() as i128, (hint - hint.floor()).min(hint.ceil() - hint));
        if between > widest && *least <= below && below < *most {
            cut = Some((place, below));
            widest = between;
        }
    }
    let mut open = bounds.least.iter().zip(&bounds.most).zip(found).enumerate();
    let first = || {
        open.find_map(|(place, ((least, most), found))| {
            (least < most).then(|| (place, (*found).clamp(*least, most.saturating_sub(1))))
        })
    };
    let Some((place, below)) = cut.or_else(first) else { return Some(vec![bounds]) };
    let (mut lower, mut upper) = (bounds.clone(), bounds);
    *lower.most.get_mut(place)? = below;
    *upper.least.get_mut(place)? = below.checked_add(1)?;
    let up = hinted.get(place).is_some_and(|hint| hint - hint.floor() >= 0.5);
    Some(if up { vec![lower, upper] } else { vec![upper, lower] })
}

/// The hints counted from nothing.
fn absolute(least: &[i128], hints: &[f64]) -> Vec<f64> {
    least.iter().zip(hints).map(|(least, hint)| *least as f64 + hint).collect()
}

/// Prices in whole parts; one that is beyond computing counts as none.
fn prices(hinted: &[f64]) -> Vec<i128> {
    hinted.iter().map(|price| (price * PRICE_PARTS as f64) as i128).collect()
}

fn sum_of_products(one: &[i128], other: &[i128]) -> Option<i128> {
    one.iter().zip(other).try_fold(0_i128, |sum, (one, other)| sum.checked_add(one.checked_mul(*other)?))
}

/// The greatest common divisor; of zero and a number, the number.
fn divisor(one: i128, other: i128) -> i128 {
    match one.checked_rem(other) {
        None => one,
        Some(rest) => divisor(other, rest),
    }
}

/// The next number below that is a multiple of `grain`.
fn to_grain(number: i128, grain: i128) -> Option<i128> {
    match number.checked_rem(grain) {
        None => Some(number),
        Some(rest) => number.checked_sub(rest),
    }
}
