//! A recipe solved for a fill: V_fixed + k * V_in_proportion = F.

use crate::book::{Book, Drink, DrinkId, IngredientId, Key, LineId, Scaling, Stage};
use crate::measure::{Exact, Measure, Overflow, Volume};
use crate::yields::{self, YieldError};

/// A recipe at one size.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Scaled {
    /// Lines in proportion are this many times what the recipe says.
    pub factor: Exact,
    /// Volume of the lines in proportion at this size.
    pub in_proportion: Volume,
    /// Volume of the fixed lines.
    pub fixed: Volume,
    /// The lines, in the order of adding.
    pub lines: Vec<ScaledLine>,
}

/// A line at one size.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ScaledLine {
    /// The line.
    pub line: LineId,
    /// Of what.
    pub ingredient: IngredientId,
    /// At which stage the amounts are meant.
    pub stage: Stage,
    /// How it follows the size.
    pub scaling: Scaling,
    /// What is in the drink, in the dimension of the recipe.
    pub in_drink: Measure,
    /// What must be used, process loss included.
    pub to_use: Measure,
    /// The volume that it takes in the drink.
    pub volume: Volume,
}

/// Why a recipe does not make a size.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ScaleError {
    /// The recipe has no lines.
    NoLines(DrinkId),
    /// The fixed lines alone are more than fits.
    FixedLinesOverflow {
        /// The drink.
        drink: DrinkId,
        /// By how much.
        over: Volume,
    },
    /// All lines are fixed and do not fill the size.
    NothingScales {
        /// The drink.
        drink: DrinkId,
        /// How much is missing.
        short: Volume,
    },
    /// A line needs an ingredient that the book does not have.
    Missing(Key),
    /// An ingredient lacks something.
    Yield(YieldError),
    /// The numbers leave the range that can be computed.
    Arithmetic(Overflow),
}

impl From<Overflow> for ScaleError {
    fn from(overflow: Overflow) -> ScaleError {
        ScaleError::Arithmetic(overflow)
    }
}

impl From<YieldError> for ScaleError {
    fn from(error: YieldError) -> ScaleError {
        ScaleError::Yield(error)
    }
}

/// The recipe of `drink` solved so that its lines fill `volume`.
///
/// # Errors
/// A [`ScaleError`], with the volume by which the recipe misses the size.
pub fn scale(book: &Book, drink: &Drink, volume: Volume) -> Result<Scaled, ScaleError> {
    if drink.lines.is_empty() {
        return Err(ScaleError::NoLines(drink.id));
    }
    let mut fixed = Volume::ZERO;
    let mut at_reference = Volume::ZERO;
    let mut written = Vec::with_capacity(drink.lines.len());
    for line in &drink.lines {
        let missing = ScaleError::Missing(Key::Ingredient(line.ingredient));
        let ingredient = book.ingredient(line.ingredient).ok_or(missing)?;
        let amount = line.amount.measure()?;
        let takes = yields::volume_in_drink(ingredient, line.stage, amount)?;
        match line.scaling {
            Scaling::Fixed => fixed = fixed.plus(takes)?,
            Scaling::InProportion => at_reference = at_reference.plus(takes)?,
        }
        written.push((line, amount, takes));
    }
    let in_proportion = volume.minus(fixed)?;
    if in_proportion.is_negative() {
        return Err(ScaleError::FixedLinesOverflow { drink: drink.id, over: fixed.minus(volume)? });
    }
    let factor = if at_reference.is_positive() {
        in_proportion.ratio_to(at_reference)?
    } else if in_proportion.is_positive() {
        return Err(ScaleError::NothingScales { drink: drink.id, short: in_proportion });
    } else {
        Exact::ZERO
    };
    let kept = drink.process_loss.rest()?.fraction();
    let mut lines = Vec::with_capacity(written.len());
    for (line, amount, takes) in written {
        let by = match line.scaling {
            Scaling::Fixed => Exact::ONE,
            Scaling::InProportion => factor,
        };
        let in_drink = amount.times(by)?;
        let to_use = if kept == Exact::ONE { in_drink } else { in_drink.over(kept)? };
        lines.push(ScaledLine {
            line: line.id,
            ingredient: line.ingredient,
            stage: line.stage,
            scaling: line.scaling,
            in_drink,
            to_use,
            volume: takes.times(by)?,
        });
    }
    Ok(Scaled { factor, in_proportion, fixed, lines })
}

/// What the lines of a recipe add up to as written, in millilitres.
///
/// # Errors
/// As [`scale`].
pub fn written_volume(book: &Book, drink: &Drink) -> Result<Volume, ScaleError> {
    drink.lines.iter().try_fold(Volume::ZERO, |sum, line| {
        let missing = ScaleError::Missing(Key::Ingredient(line.ingredient));
        let ingredient = book.ingredient(line.ingredient).ok_or(missing)?;
        Ok(sum.plus(yields::volume_in_drink(ingredient, line.stage, line.amount.measure()?)?)?)
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Ingredient, Line, Record};
    use crate::support::{
        book, density, drink, drink_id, exact, grams, ingredient, ingredient_id, line, measure, millilitres, settings,
        share,
    };

    /// The recipe scaled to a volume; its ingredients are 1 (as water) and 2 (0.8 g/mL).
    fn scaled(drink: Drink, volume: &str) -> Result<Scaled, ScaleError> {
        let light = Ingredient { density: Some(density("0.8")), ..ingredient(2, []) };
        let records = [Record::Ingredient(ingredient(1, [])), Record::Ingredient(light), Record::Drink(drink.clone())];
        scale(&book(settings(), records), &drink, millilitres(volume))
    }

    fn fixed(id: u64, ingredient: u64, takes: &str) -> Line {
        Line { scaling: Scaling::Fixed, ..line(id, ingredient, takes) }
    }

    #[test]
    fn lines_in_proportion_take_what_fixed_ones_leave() {
        // 40 g at 0.8 g/mL take 50 mL; of 450 mL the other 400 are twice the 200 written.
        let scaled = scaled(drink(1, "1 L", [line(1, 1, "200 mL"), fixed(2, 2, "40 g")]), "450").unwrap();
        assert_eq!((scaled.factor, scaled.fixed), (exact("2"), millilitres("50")));
        assert_eq!(scaled.in_proportion, millilitres("400"));
        let amounts: Vec<_> = scaled.lines.iter().map(|line| (line.in_drink, line.to_use, line.volume)).collect();
        let (base, dressing) = (measure("400 mL"), measure("40 g"));
        assert_eq!(amounts, [(base, base, millilitres("400")), (dressing, dressing, millilitres("50"))]);
    }

    #[test]
    fn what_stays_behind_is_used_too() {
        // 20 % stay in the press: 400 mL need 500, and the fixed 40 g need 50.
        let lossy =
            Drink { process_loss: share("0.2"), ..drink(1, "1 L", [line(1, 1, "200 mL"), fixed(2, 2, "40 g")]) };
        let scaled = scaled(lossy, "450").unwrap();
        let used: Vec<_> = scaled.lines.iter().map(|line| line.to_use).collect();
        assert_eq!(used, [measure("500 mL"), measure("50 g")]);
        assert_eq!(scaled.lines[1].in_drink, Measure::Mass(grams("40")));
    }

    #[test]
    fn fixed_lines_that_do_not_fit_say_by_how_much() {
        let jam = drink(1, "1 L", [line(1, 1, "200 mL"), fixed(2, 2, "40 g")]);
        let over = millilitres("0.5");
        assert_eq!(scaled(jam.clone(), "49.5"), Err(ScaleError::FixedLinesOverflow { drink: drink_id(1), over }));
        // Where they fit exactly, nothing of the rest goes in.
        assert_eq!(scaled(jam, "50").map(|scaled| scaled.factor), Ok(Exact::ZERO));
    }

    #[test]
    fn fixed_lines_alone_must_fill_the_size() {
        let shot = drink(1, "50 mL", [fixed(1, 2, "40 g")]);
        let short = millilitres("10");
        assert_eq!(scaled(shot.clone(), "60"), Err(ScaleError::NothingScales { drink: drink_id(1), short }));
        assert_eq!(scaled(shot, "50").map(|scaled| scaled.fixed), Ok(millilitres("50")));
    }

    #[test]
    fn a_recipe_needs_lines_and_what_they_need() {
        assert_eq!(scaled(drink(1, "1 L", []), "50"), Err(ScaleError::NoLines(drink_id(1))));
        let by_the_piece = scaled(drink(1, "1 L", [line(1, 1, "1 ea")]), "50");
        assert_eq!(by_the_piece, Err(ScaleError::Yield(YieldError::NoPieceWeight(ingredient_id(1)))));
        let gone = Drink { lines: vec![line(1, 9, "1 mL")], ..drink(1, "1 L", []) };
        let book = book(settings(), []);
        let missing = Err(ScaleError::Missing(Key::Ingredient(ingredient_id(9))));
        assert_eq!(scale(&book, &gone, millilitres("50")), missing);
        assert_eq!(written_volume(&book, &gone).map(|_| ()), missing.map(|_: Scaled| ()));
    }

    #[test]
    fn the_written_volume_is_that_of_all_lines() {
        let written = drink(1, "1 L", [line(1, 1, "200 mL"), fixed(2, 2, "40 g")]);
        let light = Ingredient { density: Some(density("0.8")), ..ingredient(2, []) };
        let book = book(settings(), [Record::Ingredient(ingredient(1, [])), Record::Ingredient(light)]);
        assert_eq!(written_volume(&book, &written), Ok(millilitres("250")));
    }
}
