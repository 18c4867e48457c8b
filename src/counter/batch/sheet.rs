//! The sheet to work from: what is weighed out, what is left of it after trimming, what is pressed
//! of that.

use crate::book::{Batch, Book, Ingredient, IngredientId, OfferId, PackagingId, Stage};
use crate::drink::ledger::Ledger;
use crate::drink::make::{Needed, Unmade, Use, measured_up, needs, steps_of};
use crate::drink::yields::{YieldError, bought_for, mass_at};
use crate::foundation::measure::{
    Amount, Dimension, Exact, Mass, Measure, Overflow, Share, Unit, next_step, whole_steps,
};

/// What a batch takes.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Sheet {
    /// What is weighed out, by ingredient and stage.
    pub portions: Vec<Portion>,
    /// Packaging, in whole pieces.
    pub packaging: Vec<(PackagingId, Exact)>,
    /// Drinks that are not counted, and why.
    pub left_out: Vec<(OfferId, Unmade)>,
}

/// What is weighed out of an ingredient to be brought to one stage.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Portion {
    /// The ingredient.
    pub ingredient: IngredientId,
    /// The stage at which it goes into drinks.
    pub stage: Stage,
    /// What to weigh on the way, as bought first; or what the ingredient lacks.
    pub weighed: Result<Vec<Weighed>, YieldError>,
}

/// A station on the way of an ingredient.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Station {
    /// Weighed out as bought.
    Out,
    /// Left after trimming.
    Trimmed,
    /// Pressed.
    Juice,
    /// Soaked or brewed.
    Soaked,
}

/// What to weigh, measure or count at a station.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Weighed {
    /// Where.
    pub station: Station,
    /// How much it takes.
    pub exact: Measure,
    /// That rounded up to what can be weighed or measured: never less.
    pub amount: Amount,
}

/// What a batch takes, rounded up to the steps of the scale and of the jugs; pieces are whole.
///
/// # Errors
/// [`Overflow`].
pub fn sheet(book: &Book, ledger: &Ledger, batch: &Batch) -> Result<Sheet, Overflow> {
    let needs = needs(book, ledger, &mut super::planned(batch))?;
    let mut portions = Vec::new();
    for needed in &needs.ingredients {
        let Some(ingredient) = book.ingredient_now(needed.ingredient) else { continue };
        let mut stages: Vec<Stage> = needed.uses.iter().map(|used| used.stage).collect();
        stages.dedup();
        for stage in stages {
            let uses: Vec<Use> = needed.uses.iter().copied().filter(|used| used.stage == stage).collect();
            let of_stage = Needed { ingredient: ingredient.id, uses };
            let weighed = match way(&ingredient, stage, &of_stage) {
                Err(YieldError::Arithmetic(overflow)) => return Err(overflow),
                Err(lacks) => Err(lacks),
                Ok(way) => Ok(way
                    .into_iter()
                    .map(|(station, exact)| Ok(Weighed { station, exact, amount: up(book, exact)? }))
                    .collect::<Result<Vec<Weighed>, Overflow>>()?),
            };
            portions.push(Portion { ingredient: ingredient.id, stage, weighed });
        }
    }
    let pieces = |(id, pieces): &(PackagingId, Exact)| Ok((*id, whole_steps(*pieces, Exact::ONE)?));
    let packaging = needs.packaging.iter().map(pieces).collect::<Result<_, Overflow>>()?;
    Ok(Sheet { portions, packaging, left_out: needs.left_out })
}

/// The stations of an ingredient on its way to a stage, with what there must be at each.
fn way(ingredient: &Ingredient, stage: Stage, needed: &Needed) -> Result<Vec<(Station, Measure)>, YieldError> {
    let pack = ingredient.packs.first().map_or(Dimension::Mass, |pack| pack.contents.unit.dimension());
    let mut way = vec![(Station::Out, pack.measure(needed.bought(ingredient, pack)?))];
    if stage == Stage::AsBought {
        return Ok(way);
    }
    let cut = ingredient.trim_yield != Share::WHOLE;
    if cut && stage != Stage::Trimmed {
        let trimmed = needed.uses.iter().try_fold(Mass::ZERO, |sum, used| {
            let bought = bought_for(ingredient, stage, used.amount, Dimension::Mass)?.amount()?;
            let left = Mass::from_grams(bought).times(ingredient.trim_yield.fraction())?;
            Ok::<Mass, YieldError>(sum.plus(left)?)
        })?;
        way.push((Station::Trimmed, Measure::Mass(trimmed)));
    }
    let station = match stage {
        Stage::AsBought | Stage::Trimmed => Station::Trimmed,
        Stage::Pressed => Station::Juice,
        Stage::SoakedOrBrewed => Station::Soaked,
    };
    if cut || stage != Stage::Trimmed {
        way.push((station, used(ingredient, needed)?));
    }
    Ok(way)
}

/// What goes into the drinks: in the dimension of the recipes, or as a mass where they differ.
fn used(ingredient: &Ingredient, needed: &Needed) -> Result<Measure, YieldError> {
    if let [one] = needed.uses.as_slice() {
        return Ok(one.amount);
    }
    let mass = needed.uses.iter().try_fold(Mass::ZERO, |sum, used| {
        Ok::<Mass, YieldError>(sum.plus(mass_at(ingredient, used.stage, used.amount)?)?)
    })?;
    Ok(Measure::Mass(mass))
}

/// What a batch is rounded up to in a unit where the book says nothing: 0.1 oz or 0.1 fl oz, 1 g or 1 mL.
pub fn least_step(unit: Unit) -> Amount {
    let fine = matches!(unit, Unit::Gram | Unit::Millilitre);
    Amount::new(if fine { Exact::ONE } else { Exact::new(1, 1) }, unit)
}

/// Rounded up to what can be weighed or measured: the steps of the book, and finer ones for what those would
/// raise too far. Without steps in the book it is what its units are shown to: 0.1 oz or 1 g, 0.1 fl oz or 1 mL.
fn up(book: &Book, exact: Measure) -> Result<Amount, Overflow> {
    let settings = book.settings();
    let unit = match exact.dimension() {
        Dimension::Mass => settings.units.weight_unit(),
        Dimension::Volume => settings.units.drink_unit(),
        Dimension::Count => {
            let one = Amount::new(Exact::ONE, Unit::Piece);
            return Ok(next_step(exact, one)?.unwrap_or(Amount::new(Exact::ZERO, Unit::Piece)));
        }
    };
    let steps = steps_of(settings, exact.dimension(), None, least_step(unit));
    Ok(measured_up(exact, &steps)?.map_or(Amount::new(Exact::ZERO, unit), |(_, amount)| amount))
}
