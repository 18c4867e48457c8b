//! What a line of a recipe lacks before it can be scaled and costed.

use crate::book::{Book, Drink, Ice, Ingredient, Line, Scaling, Stage};
use crate::drink::fill::mass_of_ice;
use crate::drink::yields::{YieldError, bought_for, mass_at, volume_in_drink};
use crate::foundation::measure::Measure;

/// What a line lacks, the first of it: for the volume that it takes in the drink, then for what is to be
/// bought. Returns `None` if it lacks nothing.
pub fn lacking(book: &Book, drink: &Drink, line: &Line) -> Option<YieldError> {
    let ingredient = book.ingredient_now(line.ingredient)?;
    let step = match line.scaling {
        Scaling::Stepped(step) => Some(step),
        Scaling::InProportion | Scaling::Fixed | Scaling::TopUp => None,
    };
    let floats = drink.lines.iter().any(|line| line.ice.is_some_and(Ice::floats));
    let amounts = [Some(line.amount), step];
    let amounts = || amounts.into_iter().flatten().filter_map(|amount| amount.measure().ok());
    let in_drink = amounts().find_map(|amount| in_drink(&ingredient, line, amount, floats).err());
    let lacks = in_drink.or_else(|| amounts().find_map(|amount| to_buy(&ingredient, line, amount).err()));
    lacks.filter(|lacks| !matches!(lacks, YieldError::Arithmetic(_)))
}

fn in_drink(ingredient: &Ingredient, line: &Line, amount: Measure, floats: bool) -> Result<(), YieldError> {
    if let Some(ice) = line.ice {
        mass_of_ice(ingredient, ice, amount)?;
        return Ok(());
    }
    volume_in_drink(ingredient, line.stage, amount)?;
    if floats {
        mass_at(ingredient, line.stage, amount)?;
    }
    Ok(())
}

fn to_buy(ingredient: &Ingredient, line: &Line, amount: Measure) -> Result<(), YieldError> {
    let Some(pack) = ingredient.packs.first() else { return Ok(()) };
    let amount = match (line.ice, amount) {
        (Some(ice), Measure::Volume(_)) => Measure::Mass(mass_of_ice(ingredient, ice, amount)?),
        _ => amount,
    };
    let stage = if line.ice.is_some() { Stage::AsBought } else { line.stage };
    bought_for(ingredient, stage, amount, pack.contents.unit.dimension()).map(|_| ())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{IcePlace, Record};
    use crate::support::{amount, book, density, drink, grams, ingredient, ingredient_id, line, pack, settings, share};

    /// What this line of ingredient 1 lacks in a drink, alone or over floating ice.
    fn lacks(of: Ingredient, line: Line, over_ice: bool) -> Option<YieldError> {
        let floating = Line { ice: Some(Ice::in_a_scoop(IcePlace::Floating)), ..super::tests::line(2, 2, "100 g") };
        let drink = drink(1, "500 mL", std::iter::once(line).chain(over_ice.then_some(floating)));
        let book = book(settings(), [Record::Ingredient(of), Record::Ingredient(ingredient(2, []))]);
        lacking(&book, &drink, &line)
    }

    #[test]
    fn one_thing_after_another_is_named() {
        let id = ingredient_id(1);
        let bare = Ingredient { density: None, ..ingredient(1, [pack(1, "1 kg", "2")]) };
        let pressed = |takes| Line { stage: Stage::Pressed, ..line(1, 1, takes) };
        assert_eq!(lacks(bare.clone(), pressed("100 mL"), false), Some(YieldError::NoJuiceDensity(id)));
        let dense = Ingredient { juice_density: Some(density("1.04")), ..bare.clone() };
        assert_eq!(lacks(dense.clone(), pressed("100 mL"), false), Some(YieldError::NoPressYield(id)));
        let whole = Ingredient { press_yield: Some(share("0.6")), ..dense };
        assert_eq!(lacks(whole.clone(), pressed("100 mL"), false), None);
        assert_eq!(lacks(whole.clone(), pressed("2 ea"), false), Some(YieldError::NoPieceWeight(id)));
        assert_eq!(lacks(whole, line(1, 1, "100 g"), false), Some(YieldError::NoDensity(id)));
        // What is bought by volume and poured needs nothing, but for ice that floats in it.
        let poured = Ingredient { density: None, ..ingredient(1, [pack(1, "1 L", "2")]) };
        assert_eq!(lacks(poured.clone(), line(1, 1, "100 mL"), false), None);
        assert_eq!(lacks(poured, line(1, 1, "100 mL"), true), Some(YieldError::NoDensity(id)));
        let halves = Line { scaling: Scaling::Stepped(amount("0.5 ea")), ..line(1, 1, "1 ea") };
        let pieces = Ingredient { piece_weight: Some(grams("100")), ..bare };
        assert_eq!(lacks(pieces, halves, false), Some(YieldError::NoDensity(id)));
    }
}
