//! Rounded amounts that together still fill a drink to its line.
//!
//! Each line is rounded to its nearest step. Where their sum misses the fill line by more than half a
//! measuring step, or would pass the brim, single lines take a step more or less: each time the one whose share
//! of the drink changes least by it, until the sum is near enough. A line of so few steps that one more or less would
//! be tasted is measured finer instead.

use super::steps::moved_by;
use crate::foundation::measure::{Amount, Exact, Measure, Overflow, Volume};

/// The most steps that are taken; a recipe needs about one for two of its lines.
const MOST_MOVES: usize = 200;
/// What divisions leave: half a step is half a step all the same.
const LEFT: Volume = Volume::from_millilitres(Exact::new(1, 9));
/// A quarter of an amount: the most that a line is moved from its recipe. Our own choice, no source.
const TASTED_FROM: Exact = Exact::new(25, 2);

/// A line while it is rounded.
pub struct Rounding {
    /// What the recipe asks for.
    pub exact: Measure,
    /// What is taken.
    pub taken: Amount,
    /// The step by which that may be moved, if it may be.
    pub step: Option<Amount>,
    /// What would be taken in a finer step, and that step.
    pub finer: Option<(Amount, Amount)>,
    /// What the exact amount takes in the glass.
    pub space: Volume,
}

impl Rounding {
    fn is_there(&self) -> bool {
        self.exact.base().is_positive()
    }

    /// By how much what is taken takes more than its place in the glass; below zero it is less.
    pub fn more(&self) -> Result<Volume, Overflow> {
        if !self.is_there() {
            return Ok(Volume::ZERO);
        }
        let by = self.taken.measure()?.base().over(self.exact.base())?.minus(Exact::ONE)?;
        self.space.times(by)
    }

    /// What a step takes in the glass, of a line that can be moved.
    fn step_space(&self) -> Result<Option<Volume>, Overflow> {
        let Some(step) = self.step.filter(|_| self.is_there()) else { return Ok(None) };
        Ok(Some(self.space.times(step.measure()?.base().over(self.exact.base())?)?))
    }

    /// A step more or less. Returns `None` if nothing would be left.
    fn moved(&self, way: Exact) -> Result<Option<Amount>, Overflow> {
        let Some(step) = self.step else { return Ok(None) };
        let number = self.taken.number.plus(step.number.times(way)?)?;
        Ok(Some(Amount::new(number, step.unit)).filter(|it| it.number.is_positive()))
    }
}

/// Moves single lines until all together miss the fill line by no more than half of the largest
/// step, and stay below the brim, which is `room` above that line. Returns by how much they still miss it; above
/// zero it is too much.
///
/// # Errors
/// [`Overflow`].
pub fn balance(lines: &mut [Rounding], room: Volume) -> Result<Volume, Overflow> {
    let mut off = Volume::ZERO;
    let mut largest = Volume::ZERO;
    for line in lines.iter() {
        off = off.plus(line.more()?)?;
        largest = largest.max(line.step_space()?.unwrap_or_default());
    }
    let half = largest.over(Exact::from(2_u32))?.plus(LEFT)?;
    let room = room.plus(LEFT)?;
    for _ in 0..MOST_MOVES {
        let down = off > half || off > room;
        if !down && off >= Volume::ZERO.minus(half)? {
            break;
        }
        if let Some((by, line, amount)) = least_felt(lines, off, room, down)? {
            line.taken = amount;
            off = off.plus(by)?;
        } else if let Some(line) = most_off(lines, down)? {
            off = off.minus(line.more()?)?;
            let Some((step, amount)) = line.finer.take() else { break };
            (line.step, line.taken) = (Some(step), amount);
            off = off.plus(line.more()?)?;
        } else {
            break;
        }
    }
    Ok(off)
}

/// The line that misses its place most in one direction and can be measured finer.
fn most_off(lines: &mut [Rounding], down: bool) -> Result<Option<&mut Rounding>, Overflow> {
    let mut found: Option<(Volume, &mut Rounding)> = None;
    for line in lines.iter_mut().filter(|line| line.finer.is_some()) {
        let more = line.more()?;
        let off = if down { more } else { Volume::ZERO.minus(more)? };
        if off.is_positive() && found.as_ref().is_none_or(|(most, _)| off > *most) {
            found = Some((off, line));
        }
    }
    Ok(found.map(|(_, line)| line))
}

/// The move that brings the sum nearer and is felt least in the drink: what it adds, its line, and what is
/// then taken of it.
fn least_felt(
    lines: &mut [Rounding],
    off: Volume,
    room: Volume,
    down: bool,
) -> Result<Option<(Volume, &mut Rounding, Amount)>, Overflow> {
    let way = if down { Exact::ONE.negated() } else { Exact::ONE };
    let mut found: Option<(Exact, Volume, &mut Rounding, Amount)> = None;
    for line in lines.iter_mut() {
        let Some((space, amount)) = line.step_space()?.zip(line.moved(way)?) else { continue };
        let by = space.times(way)?;
        let then = off.plus(by)?;
        let nearer = then.millilitres().abs() < off.millilitres().abs();
        let allowed = if down { nearer || off > room } else { nearer && then <= room };
        if allowed {
            let felt = moved_by(line.exact, amount)?;
            if felt <= TASTED_FROM && found.as_ref().is_none_or(|(least, ..)| felt < *least) {
                found = Some((felt, by, line, amount));
            }
        }
    }
    Ok(found.map(|(_, by, line, amount)| (by, line, amount)))
}
