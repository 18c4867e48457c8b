//! How much buyers would have to mind a price for a change to stop paying, or to begin. An estimate.

use super::answer::Row;
use crate::foundation::measure::{Exact, Money, Share};
use crate::foundation::statistics::{exponential, natural_logarithm};

/// How much less buyers mind a size than a price: about a fourth (Çakır and Balagtas, Journal of Retailing
/// 2014, on packages of ice cream). A guide only.
pub const SIZE_OVER_PRICE: f64 = 0.25;

/// The strongest answer to a price that is looked for: with it, a price 10 % higher loses 98 of 100 buyers.
const STRONGEST: f64 = -40.0;

/// Halvings of the span in which the tipping point lies: to the last digits of a binary fraction.
const HALVINGS: u32 = 64;

/// Where a change stops paying, or begins to. It is an estimate.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Tipping {
    /// The elasticity, below zero: by so many percent the number of buyers grows while the price grows by one.
    pub elasticity: Exact,
    /// The share of buyers that a price 10 % higher loses there: 1 - 1.1^elasticity.
    pub loses: Share,
    /// The new buyers, as a share of today's, that a price 10 % lower draws there: 0.9^elasticity - 1.
    pub draws: Share,
    /// On which side the change pays.
    pub pays: Pays,
}

/// On which side of its tipping point a change pays.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Pays {
    /// Where a price 10 % higher loses fewer buyers.
    IfFewerLeave,
    /// Where it loses more.
    IfMoreLeave,
}

/// An owner's own answer: of ten buyers, how many stay when a price rises by 10 %. It is an assumption.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Answered {
    elasticity: f64,
}

impl Answered {
    /// The answer that so many of ten stay. Returns `None` if that is not above zero and at most ten.
    pub fn of_ten(stay: Exact) -> Option<Answered> {
        if stay > Exact::new(10, 0) {
            return None;
        }
        let elasticity = natural_logarithm(stay.to_estimate() / 10.0)? / natural_logarithm(1.1)?;
        Some(Answered { elasticity })
    }

    /// The share of buyers that a price 10 % higher loses.
    pub fn loses(&self) -> Option<Share> {
        loses(self.elasticity)
    }
}

/// Buyers who turn to another size: what they bring if all do, and how far the price and the size move for
/// them, as the logarithm that an elasticity is multiplied with.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Turn {
    buyers: f64,
    brings: f64,
    moves: f64,
}

/// ln(P_b / P_a) - ln(V_b / V_a) / 4: how far a change goes for a buyer.
fn moves(prices: (Money, Money), sizes: (f64, f64)) -> Option<f64> {
    let price = natural_logarithm(prices.1.major().to_estimate() / prices.0.major().to_estimate())?;
    let size = natural_logarithm(sizes.1 / sizes.0)?;
    Some(price - size * SIZE_OVER_PRICE)
}

impl Turn {
    /// The turn of the buyers of a row. Returns `None` if they have nowhere to turn.
    pub fn of(row: &Row) -> Option<Turn> {
        let (now, then) = row.now.zip(row.then)?;
        Turn::between(&now, &then, row.weekly.count())
    }

    pub fn between(now: &super::Earns, then: &super::Earns, buyers: Exact) -> Option<Turn> {
        let volume = |earns: &super::Earns| earns.size.millilitres().to_estimate();
        let moves = moves((now.price, then.price), (volume(now), volume(then)))?;
        let buyers = buyers.to_estimate();
        Some(Turn { buyers, brings: then.profit.major().to_estimate() * buyers, moves })
    }
}

/// How many buyers these turns are of today.
pub(super) fn today(turns: &[Turn]) -> Option<Exact> {
    Exact::from_estimate(turns.iter().map(|turn| turn.buyers).sum())
}

/// How many buyers there are after the turns by an owner's answer.
pub(super) fn buyers_by(turns: &[Turn], answered: &Answered) -> Option<Exact> {
    Exact::from_estimate(turns.iter().map(|turn| turn.buyers * (answered.elasticity * turn.moves).exp()).sum())
}

/// What buyers who turn bring at an elasticity.
fn brought(turns: &[Turn], elasticity: f64) -> f64 {
    turns.iter().map(|turn| turn.brings * (elasticity * turn.moves).exp()).sum()
}

/// What they bring by an owner's answer.
pub(super) fn brought_by(turns: &[Turn], answered: &Answered) -> Option<Money> {
    Exact::from_estimate(brought(turns, answered.elasticity)).map(Money::from_major)
}

/// Where those who turn bring just `needed`. Returns `None` if they always bring more, or never as much.
pub(super) fn tipping(turns: &[Turn], needed: Money) -> Option<Tipping> {
    let over = |elasticity: f64| brought(turns, elasticity) - needed.major().to_estimate();
    let start = over(0.0);
    let pays = if start > 0.0 { Pays::IfFewerLeave } else { Pays::IfMoreLeave };
    // A sum of exponentials with weights above zero is convex: where it pays at first, it can stop paying only
    // up to its lowest point.
    let far = if start > 0.0 { lowest(turns) } else { STRONGEST };
    if start == 0.0 || (start > 0.0) == (over(far) > 0.0) {
        return None;
    }
    let (mut near, mut far) = (0.0, far);
    for _ in 0..HALVINGS {
        let middle = f64::midpoint(near, far);
        if (over(middle) > 0.0) == (start > 0.0) {
            near = middle;
        } else {
            far = middle;
        }
    }
    let elasticity = f64::midpoint(near, far);
    let (loses, draws) = (loses(elasticity)?, draws(elasticity)?);
    Some(Tipping { elasticity: Exact::from_estimate(elasticity)?, loses, draws, pays })
}

/// The elasticity, from zero to the strongest, at which those who turn bring least.
fn lowest(turns: &[Turn]) -> f64 {
    let rises = |elasticity: f64| {
        turns.iter().map(|turn| turn.brings * turn.moves * (elasticity * turn.moves).exp()).sum::<f64>() > 0.0
    };
    let (mut near, mut far) = (0.0, STRONGEST);
    if rises(far) {
        return far;
    }
    for _ in 0..HALVINGS {
        let middle = f64::midpoint(near, far);
        if rises(middle) {
            near = middle;
        } else {
            far = middle;
        }
    }
    far
}

/// 1 - 1.1^elasticity.
fn loses(elasticity: f64) -> Option<Share> {
    let stay = exponential(elasticity * natural_logarithm(1.1)?)?;
    Exact::from_estimate(1.0 - stay).map(Share::from_fraction)
}

/// 0.9^elasticity - 1.
fn draws(elasticity: f64) -> Option<Share> {
    let come = exponential(elasticity * natural_logarithm(0.9)?)?;
    Exact::from_estimate(come - 1.0).map(Share::from_fraction)
}

/// Which turns the buyers of these rows make.
pub(super) fn turns(rows: &[Row]) -> Vec<Turn> {
    rows.iter().filter_map(Turn::of).collect()
}
