//! What the rules of workings make of figures, worked out beside the engine.

use std::f64::consts::PI;

use brimwright::foundation::measure::{Exact, Overflow};
use brimwright::working::{Name, Rule, Step};

use crate::support::exact;

/// What a rule of arithmetic makes of figures; none for other rules.
fn reckoned(rule: Rule, from: &[Exact]) -> Option<Exact> {
    let mut rest = from.iter().skip(1);
    let first = *from.first().unwrap_or(&Exact::ZERO);
    match rule {
        Rule::Sum => rest.try_fold(first, |sum, next| sum.plus(*next)).ok(),
        Rule::Difference => rest.try_fold(first, |left, next| left.minus(*next)).ok(),
        Rule::Product => rest.try_fold(first, |product, next| product.times(*next)).ok(),
        Rule::Quotient => rest.try_fold(first, |quotient, next| quotient.over(*next)).ok(),
        Rule::Proportion => first.times(from[1]).and_then(|product| product.over(from[2])).ok(),
        Rule::Root => first.square_root().ok(),
        Rule::Larger => from.iter().copied().max(),
        Rule::Mean => rest.try_fold(first, |sum, next| sum.plus(*next)).and_then(|sum| sum.over(count(from))).ok(),
        Rule::Deviation => deviation(from).ok(),
        _ => None,
    }
}

fn count(from: &[Exact]) -> Exact {
    exact(&from.len().to_string())
}

/// The standard deviation as a sample without a mean: every pair's distance squared, over n times
/// n - 1 (elementary algebra of the definition, by hand).
fn deviation(from: &[Exact]) -> Result<Exact, Overflow> {
    let mut squares = Exact::ZERO;
    for (place, one) in from.iter().enumerate() {
        for other in &from[place + 1..] {
            let off = one.minus(*other)?;
            squares = squares.plus(off.times(off)?)?;
        }
    }
    squares.over(count(from).times(count(&from[1..]))?)?.square_root()
}

/// Within a billionth, and what rounding of every figure to twelve decimals can do.
pub fn follows(figure: Exact, rule: Rule, from: &[Exact]) -> bool {
    let Some(value) = reckoned(rule, from) else { return false };
    let twelfth = Exact::new(1, 12);
    let mut allowed = value.abs().times(exact("0.000000001")).unwrap().plus(twelfth).unwrap();
    for place in 0..from.len() {
        let mut moved = from.to_vec();
        moved[place] = moved[place].plus(twelfth).unwrap();
        let Some(other) = reckoned(rule, &moved) else { return false };
        allowed = allowed.plus(other.minus(value).unwrap().abs()).unwrap();
    }
    figure.minus(value).unwrap().abs() <= allowed
}

fn float(number: Exact) -> f64 {
    number.to_string().parse().unwrap()
}

/// A frustum from one height to another, in millilitres, by its radii.
fn frustum(cup: &[Exact], from: f64, to: f64) -> f64 {
    let [base, rim, height] = [0, 1, 2].map(|place| float(cup[place]));
    let radius = |at: f64| (base + (rim - base) * at / height) / 2.0;
    let (low, high) = (radius(from), radius(to));
    PI * (to - from) / 3.0 * (low * low + low * high + high * high) / 1000.0
}

/// What a cup or bottle holds to the rim, or between its rim and a height under it.
pub fn shaped(step: &Step, from: &[Exact]) {
    let figure = float(step.figure.base().unwrap());
    let (below, measures) = match step.name {
        Name::Headspace => (Some(float(from[0])), &from[1..]),
        _ => (None, from),
    };
    if step.from.iter().any(|it| it.name == Name::Base) {
        let height = float(measures[2]);
        let held = frustum(measures, below.map_or(0.0, |below| (height - below).max(0.0)), height);
        assert!((figure - held).abs() <= 1e-9 * held + 1e-9, "{figure} and {held}");
        return;
    }
    let readings: Vec<(f64, f64)> = measures.chunks(2).map(|pair| (float(pair[0]), float(pair[1]))).collect();
    let (height, brimful) = *readings.last().unwrap();
    let Some(below) = below else {
        assert!((figure - brimful).abs() < 1e-9);
        return;
    };
    // Volume rises with height, so what is under the line lies between the readings around it.
    let line = height - below;
    let under = readings.iter().filter(|(at, _)| *at <= line).map(|(_, volume)| *volume).fold(0.0, f64::max);
    let over = readings.iter().filter(|(at, _)| *at >= line).map(|(_, volume)| *volume).fold(brimful, f64::min);
    assert!(figure <= brimful - under + 1e-9 && figure >= brimful - over - 1e-9, "{figure} under {readings:?}");
}
