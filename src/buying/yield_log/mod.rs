//! The yield log: what weighings say of an ingredient's yields.
//!
//! ```text
//! yield    = mass out / mass in, of one weighing
//! mean     = sum of yields / n
//! together = sum of masses out / sum of masses in
//! interval = mean -+ t * s / sqrt(n)
//! ```
//!
//! `s` is the sample standard deviation of the `n` yields, and `t` the 97.5 % quantile of Student's
//! distribution with `n - 1` degrees of freedom: the interval is one of 95 %. What is adopted is the mean, to
//! 0.1 %. From three weighings on, the yield farthest from the mean is tested by Grubbs' test at 5 %
//! ([`grubbs`]); an outlier is named, and counts all the same.
//!
//! ```
//! use brimwright::book::Ingredient;
//! use brimwright::buying::yield_log::{Step, summary};
//! use brimwright::foundation::measure::Exact;
//!
//! let pineapple: Ingredient = serde_json::from_str(
//!     r#"{"id": "1", "name": "Pineapple", "trim-yield": "1", "weighings": [
//!         {"day": "2026-11-24", "bought": "1 kg", "trimmed": "600 g"},
//!         {"day": "2026-11-25", "bought": "1 kg", "trimmed": "650 g"},
//!         {"day": "2026-11-26", "bought": "2 kg", "trimmed": "1400 g"}]}"#,
//! )
//! .unwrap();
//! let trimmed = summary(&pineapple, Step::Trim)?.unwrap();
//! // By hand: 0.60, 0.65 and 0.70, s = 0.05; together 2650 of 4000 g. With t = 4.303 for two degrees of
//! // freedom (printed tables), the interval reaches 4.303 * 0.05 / sqrt(3) = 0.124 to either side.
//! assert_eq!(trimmed.mean.fraction(), Exact::new(65, 2));
//! assert_eq!(trimmed.together.fraction(), Exact::new(6625, 4));
//! let (low, high) = trimmed.interval.unwrap();
//! assert_eq!(low.fraction().rounded(3), Exact::new(526, 3));
//! assert_eq!(high.fraction().rounded(3), Exact::new(774, 3));
//! # Ok::<(), brimwright::foundation::measure::Overflow>(())
//! ```

#[cfg(test)]
mod tests;

use crate::book::{Book, Edit, Ingredient, IngredientId, Record, Weighing};
use crate::foundation::measure::{Amount, Date, Exact, Measure, Overflow, Share, Unit};
use crate::foundation::statistics::{Farthest, Spread, grubbs, mean_interval};

/// Decimals that a yield is adopted with: tenths of a percent.
const ADOPTED_PLACES: u32 = 3;
/// Decimals that the weight of juice is kept with, where it was typed as a volume.
const WEIGHT_PLACES: u32 = 4;

/// A step on the way to the drink, of which something is left.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Step {
    /// Trimmed out of what was bought.
    Trim,
    /// Juice out of what was trimmed.
    Press,
}

impl Step {
    /// Both, in their order.
    pub const ALL: [Step; 2] = [Step::Trim, Step::Press];
}

/// What a log cannot do.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum YieldLogError {
    /// The ingredient is not in the book any more.
    Missing(IngredientId),
    /// Juice was measured as a volume, and its density is not known.
    NoJuiceDensity(IngredientId),
    /// Neither a weight nor a volume was given.
    Pieces,
    /// The numbers leave the range that can be computed.
    Arithmetic(Overflow),
}

impl From<Overflow> for YieldLogError {
    fn from(overflow: Overflow) -> YieldLogError {
        YieldLogError::Arithmetic(overflow)
    }
}

/// What one weighing says of a step.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Single {
    /// The place of the weighing in the log.
    pub place: usize,
    /// Its day.
    pub day: Date,
    /// What was left, as a share of what went in.
    pub share: Share,
}

/// What all weighings say of a step.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Summary {
    /// The step.
    pub step: Step,
    /// The weighings that tell it, the earliest first; one at least.
    pub singles: Vec<Single>,
    /// The mean of the single yields: each weighing counts alike, however large it was.
    pub mean: Share,
    /// All that came out, as a share of all that went in: large weighings count for more.
    pub together: Share,
    /// How the single yields scatter. It is `None` if there is only one.
    pub spread: Option<Spread>,
    /// The interval of 95 % for the mean, by Student's t. It is `None` if there is only one yield. Its upper end
    /// may lie above the whole.
    pub interval: Option<(Share, Share)>,
    /// The yield farthest from the mean, tested; its place is that in `singles`. It is `None` if
    /// there are fewer than three, or if all are alike.
    pub farthest: Option<Farthest>,
}

impl Summary {
    /// The weighing that the test calls an outlier. It counts all the same.
    pub fn outlier(&self) -> Option<Single> {
        let farthest = self.farthest.filter(Farthest::is_outlier)?;
        self.singles.get(farthest.place).copied()
    }

    /// The yield to adopt: the mean, to a tenth of a percent. Returns `None` if that is nothing.
    pub fn adopted(&self) -> Option<Share> {
        let share = Share::from_fraction(self.mean.fraction().rounded(ADOPTED_PLACES));
        share.is_positive().then_some(share)
    }
}

/// What went into a step in one weighing and what came out, in grams. Returns `None` if one of them
/// was not weighed. What goes into the press unweighed weighs what was bought, where nothing of the
/// ingredient is cut away.
fn weighed(ingredient: &Ingredient, weighing: &Weighing, step: Step) -> Result<Option<(Exact, Exact)>, Overflow> {
    let untrimmed = (ingredient.trim_yield == Share::WHOLE).then_some(weighing.bought);
    let (input, output) = match step {
        Step::Trim => (Some(weighing.bought), weighing.trimmed),
        Step::Press => (weighing.trimmed.or(untrimmed), weighing.pressed),
    };
    let Some((input, output)) = input.zip(output) else { return Ok(None) };
    Ok(Some((input.measure()?.base(), output.measure()?.base())))
}

/// What one weighing says of a step. Returns `None` if it does not tell.
///
/// # Errors
/// [`Overflow`].
pub fn yield_of(ingredient: &Ingredient, weighing: &Weighing, step: Step) -> Result<Option<Share>, Overflow> {
    let Some((input, output)) = weighed(ingredient, weighing, step)? else { return Ok(None) };
    Ok(Some(Share::from_fraction(output.over(input)?.as_part())))
}

/// What the log of an ingredient says of a step. Returns `None` if no weighing tells.
///
/// # Errors
/// [`Overflow`].
pub fn summary(ingredient: &Ingredient, step: Step) -> Result<Option<Summary>, Overflow> {
    let mut singles = Vec::new();
    let (mut all_input, mut all_output) = (Exact::ZERO, Exact::ZERO);
    for (place, weighing) in ingredient.weighings.iter().enumerate() {
        let Some((input, output)) = weighed(ingredient, weighing, step)? else { continue };
        (all_input, all_output) = (all_input.plus(input)?, all_output.plus(output)?);
        let share = Share::from_fraction(output.over(input)?.as_part());
        singles.push(Single { place, day: weighing.day, share });
    }
    let Some(first) = singles.first() else { return Ok(None) };
    let values: Vec<Exact> = singles.iter().map(|single| single.share.fraction()).collect();
    let spread = Spread::of(&values)?;
    let ends = spread.as_ref().map(mean_interval).transpose()?;
    Ok(Some(Summary {
        step,
        mean: spread.map_or(first.share, |spread| Share::from_fraction(spread.mean)),
        together: Share::from_fraction(all_output.over(all_input)?),
        spread,
        interval: ends.map(|(low, high)| (Share::from_fraction(low), Share::from_fraction(high))),
        farthest: grubbs(&values)?,
        singles,
    }))
}

/// The yield that the book has of a step. Returns `None` if it is not pressed.
pub fn yield_now(ingredient: &Ingredient, step: Step) -> Option<Share> {
    match step {
        Step::Trim => Some(ingredient.trim_yield),
        Step::Press => ingredient.press_yield,
    }
}

/// The edit that adopts the mean of these steps. Returns `None` if the book has these yields
/// already, or no weighing tells.
///
/// # Errors
/// A [`YieldLogError`].
pub fn adopt(book: &Book, id: IngredientId, steps: &[Step]) -> Result<Option<Edit>, YieldLogError> {
    let before = book.ingredient(id).ok_or(YieldLogError::Missing(id))?;
    let mut after = before.clone();
    for step in steps.iter().copied() {
        let Some(share) = summary(before, step)?.and_then(|summary| summary.adopted()) else { continue };
        match step {
            Step::Trim => after.set_trim_yield(book.month(), share),
            Step::Press => after.set_press_yield(book.month(), share),
        }
    }
    Ok((after != *before).then_some(Edit::Put(Record::Ingredient(after))))
}

/// The weight of juice that was measured by weight or by volume, in this unit of weight. A weight
/// stays as it is.
///
/// # Errors
/// A [`YieldLogError`] for a volume of juice whose density is not known, and for pieces.
pub fn juice_weight(ingredient: &Ingredient, juice: Amount, unit: Unit) -> Result<Amount, YieldLogError> {
    match juice.measure()? {
        Measure::Mass(_) => Ok(juice),
        Measure::Volume(volume) => {
            let density = ingredient.juice_density.ok_or(YieldLogError::NoJuiceDensity(ingredient.id))?;
            let grams = density.mass_of(volume)?.grams();
            Ok(Amount::new(grams.over(unit.size())?.rounded(WEIGHT_PLACES), unit))
        }
        Measure::Count(_) => Err(YieldLogError::Pieces),
    }
}

/// The edit that writes a weighing down, in place of the one at `place` where it corrects one. The
/// log stays in the order of its days.
///
/// # Errors
/// [`YieldLogError::Missing`].
pub fn write_down(
    book: &Book,
    id: IngredientId,
    place: Option<usize>,
    weighing: Weighing,
) -> Result<Edit, YieldLogError> {
    changed(book, id, place, Some(weighing))
}

/// The edit that takes a weighing out.
///
/// # Errors
/// [`YieldLogError::Missing`].
pub fn take_out(book: &Book, id: IngredientId, place: usize) -> Result<Edit, YieldLogError> {
    changed(book, id, Some(place), None)
}

fn changed(
    book: &Book,
    id: IngredientId,
    out: Option<usize>,
    weighing: Option<Weighing>,
) -> Result<Edit, YieldLogError> {
    let mut ingredient = book.ingredient(id).ok_or(YieldLogError::Missing(id))?.clone();
    let log = &mut ingredient.weighings;
    if let Some(place) = out.filter(|place| *place < log.len()) {
        log.remove(place);
    }
    if let Some(weighing) = weighing {
        let first = log.partition_point(|earlier| earlier.day < weighing.day);
        let last = log.partition_point(|earlier| earlier.day <= weighing.day);
        log.insert(out.unwrap_or(last).clamp(first, last), weighing);
    }
    Ok(Edit::Put(Record::Ingredient(ingredient)))
}
