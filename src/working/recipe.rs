//! A recipe at a size: how many times it is taken, and what goes in of each line.

use super::shown::Offered;
use super::{Fact, Figure, Name, OfGoods, OfOffer, Rule, Shown, Step};
use crate::book::{Goods, Ice, Ingredient, Key, Line, LineId, Scaling, Season, Stage};
use crate::drink::fill::{ICE_DENSITY, MELTED_DENSITY, ScaledLine, mass_of_scoop, own_volume};
use crate::drink::ledger::OfferError;
use crate::drink::yields;
use crate::foundation::measure::{Exact, Mass, Measure, Month, Overflow, Share, Volume};
use std::borrow::Cow;

/// A line with its ingredient, as it is in the month in force, and what became of it at this size.
pub(super) struct Used<'a> {
    pub line: &'a Line,
    pub ingredient: Cow<'a, Ingredient>,
    pub month: Option<Month>,
    pub scaled: &'a ScaledLine,
}

impl<'a> Offered<'a> {
    /// Every line, in the order of adding.
    pub fn lines(&self) -> impl Iterator<Item = Used<'a>> {
        let (book, lines) = (self.book, &self.drink.lines);
        self.priced.scaled.lines.iter().filter_map(|scaled| {
            let line = lines.iter().find(|line| line.id == scaled.line)?;
            Some(Used { line, ingredient: book.ingredient_now(line.ingredient)?, month: book.month(), scaled })
        })
    }

    pub fn line(&self, id: LineId) -> Option<Used<'a>> {
        self.lines().find(|used| used.line.id == id)
    }

    fn given(&self, name: Name, figure: Figure) -> Step {
        Step::given(name, figure, Key::Drink(self.drink.id))
    }

    pub fn poured(&self) -> Step {
        let volume = Figure::Volume(self.priced.fill.volume);
        Step::opens(Name::Poured, volume, Shown::Poured(self.container.id))
    }
}

impl Used<'_> {
    pub fn name(&self, of: OfGoods) -> Name {
        Name::Of(Goods::Ingredient(self.ingredient.id), of)
    }

    fn written(&self, offered: &Offered) -> Result<(Step, Measure), Overflow> {
        let name = self.name(OfGoods::Written(self.line.stage));
        Ok((offered.given(name, Figure::Amount(self.line.amount)), self.line.amount.measure()?))
    }
}

/// What is used for one drink: what is in it, and what stays in the press or jug.
pub fn to_use(offered: &Offered, id: LineId) -> Result<Option<Step>, OfferError> {
    let Some(used) = offered.line(id) else { return Ok(None) };
    let name = used.name(OfGoods::ToUse(used.line.stage));
    if offered.drink.process_loss.is_zero() || !used.line.is_mixed() {
        return Ok(in_drink(offered, id)?.map(|step| Step { name, ..step }));
    }
    let from = vec![opens_in_drink(offered, &used), kept(offered)?];
    Ok(Some(Step::new(name, Figure::from(used.scaled.to_use), Rule::Quotient, from)))
}

fn kept(offered: &Offered) -> Result<Step, Overflow> {
    let loss = offered.drink.process_loss;
    let from = vec![Step::fact(Fact::Whole), offered.given(Name::Loss, Figure::Share(loss))];
    Ok(Step::new(Name::Kept, Figure::Share(loss.rest()?), Rule::Difference, from))
}

fn opens_in_drink(offered: &Offered, used: &Used) -> Step {
    let name = used.name(OfGoods::InDrink(used.line.stage));
    let shown = offered.shown(OfOffer::InDrink(used.line.id));
    Step::opens(name, Figure::from(used.scaled.in_drink), shown)
}

/// What is in one drink.
pub fn in_drink(offered: &Offered, id: LineId) -> Result<Option<Step>, OfferError> {
    let Some(used) = offered.line(id) else { return Ok(None) };
    let (written, amount) = used.written(offered)?;
    let stage = used.line.stage;
    let factor = || {
        let figure = Figure::Number(offered.priced.scaled.factor);
        Step::opens(Name::Factor, figure, offered.shown(OfOffer::Factor))
    };
    let (rule, from) = match used.line.scaling {
        Scaling::Fixed => return Ok(Some(Step { name: used.name(OfGoods::InDrink(stage)), ..written })),
        Scaling::InProportion => (Rule::Product, vec![written, factor()]),
        Scaling::Stepped(step) => {
            let size = offered.given(used.name(OfGoods::StepSize(stage)), Figure::Amount(step));
            let step = step.measure()?.base();
            let taken = used.scaled.in_drink.base().over(step)?.rounded(0);
            let before = |factor: Exact| amount.times(factor)?.base().over(step);
            let rounds = |factor: Exact| Ok::<bool, Overflow>(before(factor)?.rounded(12).rounded(0) == taken);
            let name = used.name(OfGoods::StepsBeforeRounding);
            let scaled = &offered.priced.scaled;
            let (times, by) = if rounds(scaled.factor)? {
                (factor(), scaled.factor)
            } else if rounds(scaled.unrounded)? {
                (unrounded_factor(offered)?, scaled.unrounded)
            } else {
                // As many as fit: no factor by itself leads to so many.
                let name = used.name(OfGoods::InDrink(stage));
                return Ok(Some(Step::new(name, Figure::from(used.scaled.in_drink), Rule::Solved, Vec::new())));
            };
            let from = vec![written, times, size.clone()];
            let from = vec![Step::new(name, Figure::Number(before(by)?), Rule::Proportion, from)];
            let steps = Step::new(used.name(OfGoods::Steps), Figure::Number(taken), Rule::ToWhole, from);
            (Rule::Product, vec![size, steps])
        }
        Scaling::TopUp => {
            let mut left = offered.priced.fill.volume;
            let mut from = vec![offered.poured()];
            for other in offered.lines().filter(|other| other.line.id != id) {
                let (space, volume) = space_at_size(offered, &other, opens_in_drink(offered, &other))?;
                left = left.minus(volume)?;
                from.push(space);
            }
            let left = Step::new(Name::LeftToFill, Figure::Volume(left), Rule::Difference, from);
            let (space, _) = opens_written(offered, &used)?;
            (Rule::Proportion, vec![written, left, space])
        }
    };
    let figure = Figure::from(used.scaled.in_drink);
    Ok(Some(Step::new(used.name(OfGoods::InDrink(stage)), figure, rule, from)))
}

/// How many times the recipe is taken.
pub fn factor(offered: &Offered) -> Result<Step, OfferError> {
    let has = |wanted: fn(&Scaling) -> bool| offered.drink.lines.iter().any(|line| wanted(&line.scaling));
    let steps = has(|scaling| matches!(scaling, Scaling::Stepped(_))) && !has(|scaling| *scaling == Scaling::TopUp);
    let (mut to_fill, mut written) = (vec![offered.poured()], Vec::new());
    let (mut left, mut all_written) = (offered.priced.fill.volume, Volume::ZERO);
    for used in offered.lines() {
        match used.line.scaling {
            Scaling::Fixed => {
                let (_, volume) = space_at_size(offered, &used, opens_in_drink(offered, &used))?;
                left = left.minus(volume)?;
            }
            Scaling::Stepped(_) if steps => {
                // Steps and factor are found together; a reference would lead back here.
                let name = used.name(OfGoods::InDrink(used.line.stage));
                let found = Step::new(name, Figure::from(used.scaled.in_drink), Rule::Solved, Vec::new());
                let (space, volume) = space_at_size(offered, &used, found)?;
                left = left.minus(volume)?;
                to_fill.push(space);
            }
            Scaling::InProportion | Scaling::Stepped(_) | Scaling::TopUp => {
                let (space, volume) = opens_written(offered, &used)?;
                all_written = all_written.plus(volume)?;
                written.push(space);
            }
        }
    }
    if let Some(fixed) = fixed(offered)? {
        to_fill.insert(1, fixed);
    }
    let figure = Figure::Number(offered.priced.scaled.factor);
    if written.is_empty() {
        return Ok(Step::new(Name::Factor, figure, Rule::Solved, to_fill));
    }
    let from = vec![
        Step::new(Name::LeftToFill, Figure::Volume(left), Rule::Difference, to_fill),
        Step::new(Name::Written, Figure::Volume(all_written), Rule::Sum, written),
    ];
    Ok(Step::new(Name::Factor, figure, Rule::Quotient, from))
}

/// How many times the recipe is taken before steps are whole.
fn unrounded_factor(offered: &Offered) -> Result<Step, OfferError> {
    let scaled = &offered.priced.scaled;
    let (mut written, mut all_written) = (Vec::new(), Volume::ZERO);
    for used in offered.lines().filter(|used| used.line.scaling != Scaling::Fixed) {
        let (space, volume) = opens_written(offered, &used)?;
        all_written = all_written.plus(volume)?;
        written.push(space);
    }
    let left = offered.priced.fill.volume.minus(scaled.fixed)?;
    let to_fill = std::iter::once(offered.poured()).chain(fixed(offered)?).collect();
    let from = vec![
        Step::new(Name::LeftToFill, Figure::Volume(left), Rule::Difference, to_fill),
        Step::new(Name::Written, Figure::Volume(all_written), Rule::Sum, written),
    ];
    Ok(Step::new(Name::FactorBeforeWhole, Figure::Number(scaled.unrounded), Rule::Quotient, from))
}

/// What the fixed lines take. Returns `None` if there are none.
fn fixed(offered: &Offered) -> Result<Option<Step>, OfferError> {
    let mut fixed = Vec::new();
    for used in offered.lines().filter(|used| used.line.scaling == Scaling::Fixed) {
        fixed.push(space_at_size(offered, &used, opens_in_drink(offered, &used))?.0);
    }
    let sum = Figure::Volume(offered.priced.scaled.fixed);
    Ok((!fixed.is_empty()).then(|| Step::new(Name::Fixed, sum, Rule::Sum, fixed)))
}

/// What a line takes in the glass at this size.
fn space_at_size(offered: &Offered, used: &Used, amount: Step) -> Result<(Step, Volume), OfferError> {
    let volume = volume_in_glass(offered, used, amount, used.scaled.in_drink, Some(used.scaled.volume))?;
    with_air(offered, used, volume)
}

/// What a line takes in the glass at this size, from its amount in the drink.
pub(super) fn opens_space(offered: &Offered, used: &Used) -> Result<Step, OfferError> {
    Ok(space_at_size(offered, used, opens_in_drink(offered, used))?.0)
}

/// What a line takes in the glass as the recipe says.
pub fn written(offered: &Offered, id: LineId) -> Result<Option<Step>, OfferError> {
    let Some(used) = offered.line(id) else { return Ok(None) };
    Ok(Some(space_as_written(offered, &used)?.0))
}

/// The same, as a reference to open if it is more than an amount that was typed.
fn opens_written(offered: &Offered, used: &Used) -> Result<(Step, Volume), OfferError> {
    let (step, volume) = space_as_written(offered, used)?;
    if let Rule::Given(_) = step.rule {
        return Ok((step, volume));
    }
    let shown = offered.shown(OfOffer::Written(used.line.id));
    Ok((Step::opens(step.name, step.figure, shown), volume))
}

fn space_as_written(offered: &Offered, used: &Used) -> Result<(Step, Volume), OfferError> {
    let (amount, measure) = used.written(offered)?;
    let volume = volume_in_glass(offered, used, amount, measure, None)?;
    with_air(offered, used, volume)
}

fn with_air(offered: &Offered, used: &Used, (step, volume): (Step, Volume)) -> Result<(Step, Volume), OfferError> {
    let air = offered.drink.air;
    if air.is_zero() || !used.line.is_mixed() {
        return Ok((step, volume));
    }
    let (with, by) = one_and_air(offered)?;
    let space = volume.times(by)?;
    let name = used.name(OfGoods::Space(used.line.stage));
    Ok((Step::new(name, Figure::Volume(space), Rule::Product, vec![step, with]), space))
}

fn one_and_air(offered: &Offered) -> Result<(Step, Exact), Overflow> {
    let air = offered.drink.air;
    let from = vec![Step::fact(Fact::Whole), offered.given(Name::Air, Figure::Share(air))];
    let with = Share::WHOLE.plus(air)?;
    Ok((Step::new(Name::WithAir, Figure::Share(with), Rule::Sum, from), with.fraction()))
}

/// The volume of an amount of a line; `known` is the volume if the engine has it.
fn volume_in_glass(
    offered: &Offered,
    used: &Used,
    amount: Step,
    measure: Measure,
    known: Option<Volume>,
) -> Result<(Step, Volume), OfferError> {
    let stage = used.line.stage;
    let (mass, density, computed) = match (used.line.ice, measure) {
        (Some(ice), _) if !ice.melts().is_zero() => {
            return part_melted(offered, used, ice, mass_of_ice(offered, used, ice, amount, measure)?);
        }
        (Some(ice), _) => {
            let (mass, grams) = mass_of_ice(offered, used, ice, amount, measure)?;
            match offered.priced.scaled.liquid.filter(|_| ice.floats()) {
                Some(density) => {
                    let shown = offered.shown(OfOffer::Liquid);
                    (mass, Step::opens(Name::Liquid, Figure::Density(density), shown), density.volume_of(grams)?)
                }
                None => (mass, Step::fact(Fact::Ice), ICE_DENSITY.volume_of(grams)?),
            }
        }
        (None, Measure::Volume(volume)) => return Ok((amount, volume)),
        (None, Measure::Mass(_) | Measure::Count(_)) => {
            let (mass, _) = mass_at(&used.ingredient, used.month, stage, amount, measure)?;
            let volume = yields::volume_in_drink(&used.ingredient, stage, measure).map_err(cost_error)?;
            (mass, density_at(&used.ingredient, stage)?, volume)
        }
    };
    let volume = known.unwrap_or(computed);
    let name = used.name(OfGoods::Volume(stage));
    Ok((Step::new(name, Figure::Volume(volume), Rule::Quotient, vec![mass, density]), volume))
}

/// The volume of blended ice of which a share melts.
fn part_melted(
    offered: &Offered,
    used: &Used,
    ice: Ice,
    (mass, grams): (Step, Mass),
) -> Result<(Step, Volume), OfferError> {
    let volume = own_volume(ice, grams)?;
    let melted = ice.melts();
    let (wet, dry) = (grams.times(melted.fraction())?, grams.times(melted.rest()?.fraction())?);
    let given = offered.given(used.name(OfGoods::MeltedShare), Figure::Share(melted));
    let from = vec![Step::fact(Fact::Whole), given.clone()];
    let frozen = Step::new(used.name(OfGoods::FrozenShare), Figure::Share(melted.rest()?), Rule::Difference, from);
    let part = |of, volume, from| Step::new(used.name(of), Figure::Volume(volume), Rule::Proportion, from);
    let from = vec![
        part(OfGoods::FrozenVolume, ICE_DENSITY.volume_of(dry)?, vec![mass.clone(), frozen, Step::fact(Fact::Ice)]),
        part(OfGoods::MeltedVolume, MELTED_DENSITY.volume_of(wet)?, vec![mass, given, Step::fact(Fact::Melted)]),
    ];
    let name = used.name(OfGoods::Volume(used.line.stage));
    Ok((Step::new(name, Figure::Volume(volume), Rule::Sum, from), volume))
}

/// The mass of an amount of ice: weighed, in pieces, or in scoops.
pub(super) fn mass_of_ice(
    offered: &Offered,
    used: &Used,
    ice: Ice,
    amount: Step,
    measure: Measure,
) -> Result<(Step, Mass), OfferError> {
    let Measure::Volume(scoop) = measure else {
        return mass_at(&used.ingredient, used.month, Stage::AsBought, amount, measure);
    };
    let mass = mass_of_scoop(scoop, ice.packing)?;
    let packing = offered.given(used.name(OfGoods::Packing), Figure::Share(ice.packing));
    let from = vec![amount, packing, Step::fact(Fact::Ice)];
    let name = used.name(OfGoods::Mass(used.line.stage));
    Ok((Step::new(name, Figure::Mass(mass), Rule::Product, from), mass))
}

/// The mass of an amount of a line.
fn mass_of(offered: &Offered, used: &Used, amount: Step, measure: Measure) -> Result<(Step, Mass), OfferError> {
    match used.line.ice {
        Some(ice) => mass_of_ice(offered, used, ice, amount, measure),
        None => mass_at(&used.ingredient, used.month, used.line.stage, amount, measure),
    }
}

/// The mass of all that is in one drink.
pub(super) fn drink_mass(offered: &Offered) -> Result<Step, OfferError> {
    let (mut masses, mut mass) = (Vec::new(), Mass::ZERO);
    for used in offered.lines() {
        let (step, grams) = mass_of(offered, &used, opens_in_drink(offered, &used), used.scaled.in_drink)?;
        mass = mass.plus(grams)?;
        masses.push(step);
    }
    Ok(Step::new(Name::DrinkMass, Figure::Mass(mass), Rule::Sum, masses))
}

/// The density of what ice floats in, from what goes in at this size. Returns `None` if no ice floats.
pub fn liquid(offered: &Offered) -> Result<Option<Step>, OfferError> {
    let Some(density) = offered.priced.scaled.liquid else { return Ok(None) };
    let (mut masses, mut volumes) = (Vec::new(), Vec::new());
    let (mut mass, mut volume) = (Mass::ZERO, Volume::ZERO);
    for used in offered.lines().filter(|used| !used.line.is_ice_in_glass()) {
        // Amounts and density are found together; a reference would lead back here.
        let found = || {
            let name = used.name(OfGoods::InDrink(used.line.stage));
            Step::new(name, Figure::from(used.scaled.in_drink), Rule::Solved, Vec::new())
        };
        let (step, grams) = mass_of(offered, &used, found(), used.scaled.in_drink)?;
        mass = mass.plus(grams)?;
        masses.push(step);
        let (step, space) = space_at_size(offered, &used, found())?;
        volume = volume.plus(space)?;
        volumes.push(step);
    }
    let from = vec![
        Step::new(Name::LiquidMass, Figure::Mass(mass), Rule::Sum, masses),
        Step::new(Name::LiquidVolume, Figure::Volume(volume), Rule::Sum, volumes),
    ];
    Ok(Some(Step::new(Name::Liquid, Figure::Density(density), Rule::Quotient, from)))
}

/// The mass at a stage of an amount meant at it, of an ingredient as it is in a month.
pub(super) fn mass_at(
    ingredient: &Ingredient,
    month: Option<Month>,
    stage: Stage,
    amount: Step,
    measure: Measure,
) -> Result<(Step, Mass), OfferError> {
    let mass = yields::mass_at(ingredient, stage, measure).map_err(cost_error)?;
    let mut from = vec![amount];
    match measure {
        Measure::Mass(_) => return Ok((from.swap_remove(0), mass)),
        Measure::Volume(_) => from.push(density_at(ingredient, stage)?),
        Measure::Count(_) => {
            from.extend(piece_weight(ingredient));
            from.extend(yields_up_to(ingredient, month, stage));
        }
    }
    let name = Name::Of(Goods::Ingredient(ingredient.id), OfGoods::Mass(stage));
    Ok((Step::new(name, Figure::Mass(mass), Rule::Product, from), mass))
}

pub(super) fn density_at(ingredient: &Ingredient, stage: Stage) -> Result<Step, OfferError> {
    let density = yields::density_at(ingredient, stage).map_err(cost_error)?;
    let of = if stage == Stage::Pressed { OfGoods::JuiceDensity } else { OfGoods::Density };
    Ok(of_ingredient(ingredient, of, Figure::Density(density)))
}

pub(super) fn piece_weight(ingredient: &Ingredient) -> Option<Step> {
    ingredient.piece_weight.map(|weight| of_ingredient(ingredient, OfGoods::PieceWeight, Figure::Mass(weight)))
}

/// What is left of what is bought, from the last stage back. There are no steps if all is left.
pub(super) fn yields_up_to(ingredient: &Ingredient, month: Option<Month>, stage: Stage) -> Vec<Step> {
    let season = ingredient.season_in(month);
    let (trim, press) = match season {
        Some(Season { press_yield: Some(_), .. }) => (OfGoods::SeasonTrimYield, OfGoods::SeasonPressYield),
        Some(_) => (OfGoods::SeasonTrimYield, OfGoods::PressYield),
        None => (OfGoods::TrimYield, OfGoods::PressYield),
    };
    let second = match stage {
        Stage::AsBought => return Vec::new(),
        Stage::Trimmed => None,
        Stage::Pressed => ingredient.press_yield.map(|share| (press, share)),
        Stage::SoakedOrBrewed => ingredient.soak_yield.map(|share| (OfGoods::SoakYield, share)),
    };
    let trim = Some((trim, ingredient.trim_yield));
    let shares = [second, trim].into_iter().flatten().filter(|(_, share)| share.fraction() != Exact::ONE);
    shares.map(|(of, share)| of_ingredient(ingredient, of, Figure::Share(share))).collect()
}

fn of_ingredient(ingredient: &Ingredient, of: OfGoods, figure: Figure) -> Step {
    Step::given(Name::Of(Goods::Ingredient(ingredient.id), of), figure, Key::Ingredient(ingredient.id))
}

pub(super) fn cost_error(error: yields::YieldError) -> OfferError {
    OfferError::Cost(error.into())
}
