//! A recipe solved for a fill: V_fixed + k * V_in_proportion + V_stepped(k) + V_top_up = F.
//!
//! Volumes are those in the glass: what is mixed counts with the air beaten into it, ice in the
//! glass without.

use super::ice;
use crate::book::{Book, Drink, DrinkId, Ice, IcePlace, IngredientId, Key, Line, LineId, Scaling, Stage};
use crate::measure::{Exact, Measure, Overflow, Volume};
use crate::yields::{self, YieldError};

/// A recipe at one size.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Scaled {
    /// Lines in proportion are this many times what the recipe says.
    pub factor: Exact,
    /// Space that the fixed lines take, with their air.
    pub fixed: Volume,
    /// Air beaten into what is mixed.
    pub air: Volume,
    /// The lines, in the order of adding. Their volumes and the air fill the size.
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
    /// How it stands in the glass, where it is ice.
    pub ice: Option<Ice>,
    /// What is in the drink, in the dimension of the recipe.
    pub in_drink: Measure,
    /// What must be used, process loss included.
    pub to_use: Measure,
    /// The volume that it takes in the drink, without air.
    pub volume: Volume,
}

impl ScaledLine {
    /// What is used as it is bought for: the mass of a scoop of ice, else what is used.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn bought_as(&self) -> Result<Measure, Overflow> {
        match (self.ice, self.to_use) {
            (Some(ice), Measure::Volume(scoop)) => ice::mass_of_scoop(scoop, ice.packing).map(Measure::Mass),
            _ => Ok(self.to_use),
        }
    }
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
    /// Rounding to steps leaves less than nothing for the top-up.
    TopUpNegative {
        /// The drink.
        drink: DrinkId,
        /// By how much.
        over: Volume,
    },
    /// No number of steps meets the size, and no line takes what is left.
    BetweenSteps {
        /// The drink.
        drink: DrinkId,
        /// How much is missing before the next step.
        short: Volume,
        /// How much is too many after it.
        over: Volume,
    },
    /// Ice floats, but there is nothing for it to float in.
    NothingToFloatIn(DrinkId),
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
    let written = written(book, drink)?;
    let space = |scaling: fn(&Scaling) -> bool| {
        let lines = written.iter().filter(|line| scaling(&line.line.scaling));
        lines.map(|line| line.space).try_fold(Volume::ZERO, Volume::plus)
    };
    let fixed = space(|scaling| *scaling == Scaling::Fixed)?;
    let scales = space(|scaling| *scaling != Scaling::Fixed)?;
    let left = volume.minus(fixed)?;
    if left.is_negative() {
        return Err(ScaleError::FixedLinesOverflow { drink: drink.id, over: fixed.minus(volume)? });
    }
    let even = if scales.is_positive() {
        left.ratio_to(scales)?
    } else if left.is_positive() {
        return Err(ScaleError::NothingScales { drink: drink.id, short: left });
    } else {
        Exact::ZERO
    };
    let steps = written.iter().any(|line| line.step.is_some());
    let tops_up = written.iter().any(|line| line.line.scaling == Scaling::TopUp);
    let factor = if steps && !tops_up { between_steps(drink.id, &written, left, even)? } else { even };
    let top_up = if steps && tops_up { top_up(drink.id, &written, left, factor)? } else { factor };

    let kept = drink.process_loss.rest()?.fraction();
    let mut air = Volume::ZERO;
    let mut lines = Vec::with_capacity(written.len());
    for line in &written {
        let by = match line.line.scaling {
            Scaling::Fixed => Exact::ONE,
            Scaling::InProportion => factor,
            Scaling::TopUp => top_up,
            Scaling::Stepped(_) => line.steps(factor)?,
        };
        let unit = line.step.unwrap_or(line.whole);
        let in_drink = unit.amount.times(by)?;
        let to_use = if kept == Exact::ONE { in_drink } else { in_drink.over(kept)? };
        let volume = unit.volume.times(by)?;
        if line.is_mixed() {
            air = air.plus(volume.times(drink.air.fraction())?)?;
        }
        let Line { id, ingredient, stage, scaling, ice, .. } = *line.line;
        lines.push(ScaledLine { line: id, ingredient, stage, scaling, ice, in_drink, to_use, volume });
    }
    Ok(Scaled { factor, fixed, air, lines })
}

/// What the lines of a recipe fill as written, in millilitres, air and ice with them.
///
/// # Errors
/// As [`scale`].
pub fn written_volume(book: &Book, drink: &Drink) -> Result<Volume, ScaleError> {
    let spaces = written(book, drink)?.into_iter().map(|line| line.space);
    Ok(spaces.into_iter().try_fold(Volume::ZERO, Volume::plus)?)
}

/// An amount of a line, and the volume that it takes without air.
#[derive(Clone, Copy)]
struct Part {
    amount: Measure,
    volume: Volume,
}

/// A line as the recipe says.
struct Written<'a> {
    line: &'a Line,
    whole: Part,
    /// Space in the glass, with the air beaten in.
    space: Volume,
    /// One step, where it follows in steps.
    step: Option<Part>,
}

impl Written<'_> {
    /// Whether air is beaten into it.
    fn is_mixed(&self) -> bool {
        self.line.ice.is_none_or(|ice| ice.place == IcePlace::BlendedIn)
    }

    /// How many steps it takes at `factor` times the recipe: the nearest whole number, half a
    /// step upwards. A factor ends at its 28th digit, so half a step is what is half a step to
    /// twenty decimals.
    fn steps(&self, factor: Exact) -> Result<Exact, Overflow> {
        let Some(step) = self.step else { return Ok(Exact::ZERO) };
        Ok(factor.times(self.whole.amount.base())?.over(step.amount.base())?.rounded(20).rounded(0))
    }

    /// The space of one step, air with it.
    fn step_space(&self) -> Result<Volume, Overflow> {
        let Some(step) = self.step else { return Ok(Volume::ZERO) };
        self.space.times(step.amount.base())?.over(self.whole.amount.base())
    }
}

fn written<'a>(book: &Book, drink: &'a Drink) -> Result<Vec<Written<'a>>, ScaleError> {
    let liquid = ice::liquid_density(book, drink)?;
    let with_air = Exact::ONE.plus(drink.air.fraction())?;
    let mut lines = Vec::with_capacity(drink.lines.len());
    for line in &drink.lines {
        let ingredient = book.ingredient(line.ingredient);
        let ingredient = ingredient.ok_or(ScaleError::Missing(Key::Ingredient(line.ingredient)))?;
        let part = |amount: Measure| -> Result<Part, ScaleError> {
            let volume = match line.ice {
                Some(ice) => ice::volume_taken(ice, ice::mass(ingredient, ice, amount)?, liquid)?,
                None => yields::volume_in_drink(ingredient, line.stage, amount)?,
            };
            Ok(Part { amount, volume })
        };
        let whole = part(line.amount.measure()?)?;
        let step = match line.scaling {
            Scaling::Stepped(step) => Some(part(step.measure()?)?),
            Scaling::InProportion | Scaling::Fixed | Scaling::TopUp => None,
        };
        let mut written = Written { line, whole, space: whole.volume, step };
        if written.is_mixed() && with_air != Exact::ONE {
            written.space = whole.volume.times(with_air)?;
        }
        lines.push(written);
    }
    Ok(lines)
}

/// How many times the written top-up takes what the other lines leave of `left`.
fn top_up(drink: DrinkId, written: &[Written], left: Volume, factor: Exact) -> Result<Exact, ScaleError> {
    let mut rest = left;
    let mut whole = Volume::ZERO;
    for line in written {
        match line.line.scaling {
            Scaling::Fixed => {}
            Scaling::InProportion => rest = rest.minus(line.space.times(factor)?)?,
            Scaling::Stepped(_) => rest = rest.minus(line.step_space()?.times(line.steps(factor)?)?)?,
            Scaling::TopUp => whole = line.space,
        }
    }
    let over = Volume::ZERO.minus(rest)?;
    if over >= NOTHING {
        return Err(ScaleError::TopUpNegative { drink, over });
    }
    Ok(rest.max(Volume::ZERO).ratio_to(whole)?)
}

/// Halvings of the range of factors: down to far less than lies between two steps, and still far
/// more than division leaves, so that lines which take a step at the same factor take it together.
const HALVINGS: u32 = 48;

/// Volumes that differ by less are the same: what division leaves at its 28th digit.
const NOTHING: Volume = Volume::from_millilitres(Exact::new(1, 9));

/// The factor at which lines in proportion and lines in steps fill `left` together; `even` is
/// what it would be without steps. Space grows with the factor, and jumps where a step more is
/// taken: the factor is enclosed, then solved exactly for the steps on either side.
fn between_steps(drink: DrinkId, written: &[Written], left: Volume, even: Exact) -> Result<Exact, ScaleError> {
    let mut flexible = Volume::ZERO;
    let mut half_steps = Volume::ZERO;
    let mut in_proportion = Volume::ZERO;
    for line in written.iter().filter(|line| line.line.scaling != Scaling::Fixed) {
        flexible = flexible.plus(line.space)?;
        half_steps = half_steps.plus(line.step_space()?.over(Exact::new(2, 0))?)?;
        if line.step.is_none() {
            in_proportion = in_proportion.plus(line.space)?;
        }
    }
    let in_steps = |factor: Exact| -> Result<Volume, Overflow> {
        written.iter().try_fold(Volume::ZERO, |sum, line| sum.plus(line.step_space()?.times(line.steps(factor)?)?))
    };
    let filled = |factor: Exact| in_steps(factor)?.plus(in_proportion.times(factor)?);

    let off = half_steps.ratio_to(flexible)?;
    let (mut low, mut high) = (even.minus(off)?.max(Exact::ZERO), even.plus(off)?);
    for _ in 0..HALVINGS {
        let middle = low.plus(high)?.over(Exact::new(2, 0))?;
        if filled(middle)? <= left { low = middle } else { high = middle }
    }
    for side in [low, high] {
        let steps = in_steps(side)?;
        let rest = left.minus(steps)?;
        if in_proportion.is_positive() {
            let factor = rest.ratio_to(in_proportion)?;
            if !factor.is_negative() && in_steps(factor)? == steps {
                return Ok(factor);
            }
        } else if Volume::from_millilitres(rest.millilitres().abs()) < NOTHING {
            return Ok(side);
        }
    }
    Err(ScaleError::BetweenSteps {
        drink,
        short: left.minus(filled(low)?)?.as_part(),
        over: filled(high)?.minus(left)?.as_part(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Ingredient, Line, Record};
    use crate::support::{
        amount, book, density, drink, drink_id, exact, grams, ingredient, ingredient_id, line, measure, millilitres,
        settings, share,
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
        let amounts: Vec<_> = scaled.lines.iter().map(|line| (line.in_drink, line.to_use, line.volume)).collect();
        let (base, dressing) = (measure("400 mL"), measure("40 g"));
        assert_eq!(amounts, [(base, base, millilitres("400")), (dressing, dressing, millilitres("50"))]);
    }

    fn stepped(id: u64, ingredient: u64, takes: &str, step: &str) -> Line {
        Line { scaling: Scaling::Stepped(amount(step)), ..line(id, ingredient, takes) }
    }

    fn in_drink(scaled: &Scaled) -> Vec<Measure> {
        scaled.lines.iter().map(|line| line.in_drink).collect()
    }

    #[test]
    fn steps_are_whole_and_the_rest_follows() {
        // At 1.5 times the recipe, 60 mL would be 90: the nearest step of 40 is 80. The other
        // line then takes 450 - 80 = 370, 1.5416.. times its 240, at which 60 mL would be 92.5.
        let recipe = drink(1, "300 mL", [line(1, 1, "240 mL"), stepped(2, 1, "60 mL", "40 mL")]);
        let scaled = scaled(recipe, "450").unwrap();
        assert_eq!(in_drink(&scaled)[1], measure("80 mL"));
        assert_eq!(scaled.lines[0].volume.as_part(), millilitres("370"));
    }

    #[test]
    fn half_a_step_is_taken_upwards() {
        // 50 mL at 1.2 times are 60, half way between one step of 40 and two.
        let recipe = drink(1, "1 L", [line(1, 1, "100 mL"), stepped(2, 1, "50 mL", "40 mL")]);
        let two = scaled(recipe.clone(), "200").unwrap();
        assert_eq!((two.factor, in_drink(&two)[1]), (exact("1.2"), measure("80 mL")));
        // Just under it one step is taken: 119.999 + 40. Between the two there is nothing.
        let one = scaled(recipe.clone(), "159.999").unwrap();
        assert_eq!(in_drink(&one)[1], measure("40 mL"));
        let between =
            ScaleError::BetweenSteps { drink: drink_id(1), short: millilitres("20"), over: millilitres("20") };
        assert_eq!(scaled(recipe, "180"), Err(between));
    }

    #[test]
    fn half_a_step_is_half_a_step_whatever_the_factor() {
        // 36 mL are 6/13 of the written 78: of 26 mL 12, a step and a half of 8, so two. The
        // other line takes 60/13 mL. In decimals 6/13 has no end.
        let top_up = Line { scaling: Scaling::TopUp, ..line(1, 1, "42 mL") };
        let recipe = drink(1, "78 mL", [top_up, line(2, 1, "10 mL"), stepped(3, 1, "26 mL", "8 mL")]);
        assert_eq!(in_drink(&scaled(recipe, "36").unwrap())[2], measure("16 mL"));
        // Without a top-up: 15 mL are a step of 10 and 1/14 of 70, and 1/14 of the other 70 is half
        // a step.
        let recipe = drink(1, "77 mL", [line(1, 1, "70 mL"), stepped(2, 1, "70 mL", "10 mL")]);
        assert_eq!(in_drink(&scaled(recipe, "15").unwrap())[1], measure("10 mL"));
    }

    #[test]
    fn a_top_up_takes_what_steps_leave() {
        // 180 mL are 1.2 times the written 150: 60 mL are a step and a half, so two; the top-up
        // has 100 mL left where it would have had 120.
        let top_up = Line { scaling: Scaling::TopUp, ..line(1, 1, "100 mL") };
        let recipe = drink(1, "1 L", [top_up, stepped(2, 1, "50 mL", "40 mL")]);
        let scaled = scaled(recipe, "180").unwrap();
        assert_eq!(in_drink(&scaled), [measure("100 mL"), measure("80 mL")]);
        assert_eq!(scaled.lines[0].volume, millilitres("100"));
    }

    #[test]
    fn without_steps_a_top_up_follows_in_proportion() {
        let top_up = Line { scaling: Scaling::TopUp, ..line(1, 1, "100 mL") };
        let scaled = scaled(drink(1, "1 L", [top_up, line(2, 1, "50 mL")]), "300").unwrap();
        assert_eq!(in_drink(&scaled), [measure("200 mL"), measure("100 mL")]);
    }

    #[test]
    fn a_top_up_cannot_be_less_than_nothing() {
        // 66 mL are 0.6 times 110: 60 mL of 100 round to one step of 100, 34 more than fits.
        let top_up = Line { scaling: Scaling::TopUp, ..line(1, 1, "10 mL") };
        let recipe = drink(1, "1 L", [top_up, stepped(2, 1, "100 mL", "100 mL")]);
        let over = millilitres("34");
        assert_eq!(scaled(recipe, "66"), Err(ScaleError::TopUpNegative { drink: drink_id(1), over }));
    }

    #[test]
    fn steps_alone_fill_some_sizes_only() {
        let recipe = drink(1, "1 L", [fixed(1, 1, "20 mL"), stepped(2, 1, "50 mL", "25 mL")]);
        assert_eq!(scaled(recipe.clone(), "95").map(|scaled| in_drink(&scaled)[1]), Ok(measure("75 mL")));
        let between =
            ScaleError::BetweenSteps { drink: drink_id(1), short: millilitres("10"), over: millilitres("15") };
        assert_eq!(scaled(recipe, "105"), Err(between));
    }

    #[test]
    fn lines_take_a_step_together() {
        // At the recipe as written each line stands half way: 14, 0 and 2 mL before, 16, 22 and 4
        // from there on.
        let lines = [stepped(1, 1, "15 mL", "2 mL"), stepped(2, 1, "11 mL", "22 mL"), stepped(3, 1, "3 mL", "2 mL")];
        let between = ScaleError::BetweenSteps { drink: drink_id(1), short: millilitres("1"), over: millilitres("25") };
        assert_eq!(scaled(drink(1, "1 L", lines), "17"), Err(between));
    }

    #[test]
    fn air_is_beaten_into_what_is_mixed() {
        // 25 % of air: of 500 mL, 100 are air; the rest is twice the 200 written.
        let smoothie = Drink { air: share("0.25"), ..drink(1, "1 L", [line(1, 1, "150 mL"), line(2, 2, "40 g")]) };
        let scaled = scaled(smoothie, "500").unwrap();
        assert_eq!((scaled.factor, scaled.air), (exact("2"), millilitres("100")));
        assert_eq!(in_drink(&scaled), [measure("300 mL"), measure("80 g")]);
    }

    fn ice(id: u64, takes: &str, place: IcePlace) -> Line {
        let ice = Ice { place, packing: share("0.6") };
        Line { ice: Some(ice), scaling: Scaling::Fixed, ..line(id, 1, takes) }
    }

    #[test]
    fn ice_under_the_line_takes_its_own_volume() {
        // 183.4 g at 0.917 g/mL take 200 of 500 mL; air is beaten into the liquid alone.
        let cooler = Drink {
            air: share("0.25"),
            ..drink(1, "1 L", [line(1, 1, "120 mL"), ice(2, "183.4 g", IcePlace::HeldUnder)])
        };
        let scaled = scaled(cooler, "500").unwrap();
        assert_eq!((scaled.air, scaled.lines[1].volume), (millilitres("60"), millilitres("200")));
        assert_eq!(in_drink(&scaled)[0], measure("240 mL"));
    }

    #[test]
    fn blended_ice_takes_air_as_well() {
        let slush = Drink {
            air: share("0.25"),
            ..drink(1, "1 L", [line(1, 1, "100 mL"), ice(2, "183.4 g", IcePlace::BlendedIn)])
        };
        let scaled = scaled(slush, "500").unwrap();
        assert_eq!((scaled.air, in_drink(&scaled)[0]), (millilitres("100"), measure("200 mL")));
    }

    #[test]
    fn floating_ice_takes_the_volume_of_its_mass_in_liquid() {
        // A liquid of 80 g in 100 mL carries 160 g of ice by 200 mL.
        let cooler = drink(1, "1 L", [line(1, 2, "100 mL"), ice(2, "160 g", IcePlace::Floating)]);
        let scaled = scaled(cooler, "500").unwrap();
        assert_eq!(scaled.lines[1].volume, millilitres("200"));
        assert_eq!(in_drink(&scaled)[0], measure("300 mL"));
        let alone = drink(1, "1 L", [ice(2, "160 g", IcePlace::Floating)]);
        assert_eq!(super::tests::scaled(alone, "500"), Err(ScaleError::NothingToFloatIn(drink_id(1))));
    }

    #[test]
    fn a_scoop_of_cubes_is_bought_by_its_mass() {
        // 100 mL of cubes, 60 % of it ice: 60 mL, 55.02 g.
        let cooler = drink(1, "1 L", [line(1, 1, "100 mL"), ice(2, "100 mL", IcePlace::HeldUnder)]);
        let scaled = scaled(cooler, "160").unwrap();
        assert_eq!(scaled.lines[1].volume, millilitres("60"));
        assert_eq!(in_drink(&scaled), [measure("100 mL"), measure("100 mL")]);
        assert_eq!(scaled.lines[1].bought_as(), Ok(measure("55.02 g")));
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
