//! What so many drinks take.

use crate::book::{Book, Ingredient, IngredientId, OfferId, PackagingId, Stage};
use crate::drink::ledger::{Ledger, OfferError};
use crate::drink::yields::{YieldError, bought_for};
use crate::foundation::in_order;
use crate::foundation::measure::{Dimension, Exact, Measure, Overflow};

/// What so many drinks take. What stays in the press or jug is in it.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Needs {
    /// Ingredients, by id.
    pub ingredients: Vec<Needed>,
    /// Packaging with the number of pieces, by id.
    pub packaging: Vec<(PackagingId, Exact)>,
    /// Drinks that are not counted, and why.
    pub left_out: Vec<(OfferId, Unmade)>,
}

/// What is needed of an ingredient.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Needed {
    /// The ingredient.
    pub ingredient: IngredientId,
    /// At which stages, by stage and dimension.
    pub uses: Vec<Use>,
}

/// An amount that is needed at a stage.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Use {
    /// The stage at which the amount is meant.
    pub stage: Stage,
    /// How much.
    pub amount: Measure,
}

/// Why a drink is not counted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unmade {
    /// It is not sold in this size any more.
    NotOnTheMenu,
    /// It cannot be computed.
    Stuck(OfferError),
}

/// What so many of each drink in a size take.
///
/// # Errors
/// [`Overflow`].
pub fn needs(
    book: &Book,
    ledger: &Ledger,
    makes: &mut dyn Iterator<Item = (OfferId, Exact)>,
) -> Result<Needs, Overflow> {
    let mut needs = Needs::default();
    for (offer, units) in makes {
        if units.is_zero() {
            continue;
        }
        let priced = match ledger.get(offer) {
            Some(Ok(priced)) => priced,
            Some(Err(error)) => {
                needs.left_out.push((offer, Unmade::Stuck(*error)));
                continue;
            }
            None => {
                needs.left_out.push((offer, Unmade::NotOnTheMenu));
                continue;
            }
        };
        for line in &priced.scaled.lines {
            needs.add(line.ingredient, Use { stage: line.stage, amount: line.bought_as()?.times(units)? })?;
        }
        let Some(container) = book.container(offer.container) else { continue };
        for used in book.set_of(container) {
            needs.add_packaging(used.packaging, used.count.times(units)?)?;
        }
    }
    Ok(needs)
}

impl Needs {
    fn add(&mut self, ingredient: IngredientId, more: Use) -> Result<(), Overflow> {
        let place = self.ingredients.partition_point(|needed| needed.ingredient < ingredient);
        let here = self.ingredients.get_mut(place).filter(|needed| needed.ingredient == ingredient);
        let Some(needed) = here else {
            self.ingredients.insert(place, Needed { ingredient, uses: vec![more] });
            return Ok(());
        };
        for used in &mut needed.uses {
            if used.stage == more.stage
                && let Some(sum) = used.amount.plus(more.amount)?
            {
                used.amount = sum;
                return Ok(());
            }
        }
        let order = |used: &Use| (used.stage, used.amount.dimension());
        in_order::insert(&mut needed.uses, more, |used, more| order(used) < order(more));
        Ok(())
    }

    fn add_packaging(&mut self, packaging: PackagingId, pieces: Exact) -> Result<(), Overflow> {
        let place = self.packaging.partition_point(|(id, _)| *id < packaging);
        match self.packaging.get_mut(place).filter(|(id, _)| *id == packaging) {
            Some((_, sum)) => *sum = sum.plus(pieces)?,
            None => self.packaging.insert(place, (packaging, pieces)),
        }
        Ok(())
    }
}

impl Needed {
    /// How much must be bought, in the base unit of this dimension.
    ///
    /// # Errors
    /// What the ingredient lacks.
    pub fn bought(&self, ingredient: &Ingredient, dimension: Dimension) -> Result<Exact, YieldError> {
        self.uses.iter().try_fold(Exact::ZERO, |sum, used| {
            Ok(sum.plus(bought_for(ingredient, used.stage, used.amount, dimension)?.amount()?)?)
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Container, Ingredient, Record};
    use crate::support::{
        book, container, density, drink, exact, ingredient, ingredient_id, line, measure, offer, offer_id, pack,
        packaging_id, settings, share, use_of, vessel,
    };

    /// Drink 1: 300 mL of pressed juice of 1 and 200 mL of 2 in half a litre, 20 % stays in the
    /// press. Drink 2: 500 mL of 2. Container 1 is half a litre with a bottle and two lids.
    fn bar() -> Book {
        let juicy = Ingredient {
            trim_yield: share("0.8"),
            press_yield: Some(share("0.5")),
            juice_density: Some(density("1.05")),
            ..ingredient(1, [pack(1, "10 kg", "20")])
        };
        let pressed = crate::book::Line { stage: Stage::Pressed, ..line(1, 1, "300 mL") };
        let lossy =
            crate::book::Drink { process_loss: share("0.2"), ..drink(1, "500 mL", [pressed, line(2, 2, "200 mL")]) };
        book(
            settings(),
            [
                Record::Ingredient(juicy),
                Record::Ingredient(ingredient(2, [pack(2, "1 L", "1")])),
                Record::Packaging(vessel(1, [pack(3, "100 ea", "10")])),
                Record::Packaging(vessel(2, [pack(4, "100 ea", "1")])),
                Record::Container(Container { set: vec![use_of(1, "1"), use_of(2, "2")], ..container(1, "500 mL") }),
                Record::Drink(lossy),
                Record::Drink(drink(2, "500 mL", [line(1, 2, "500 mL")])),
                Record::Offer(offer(1, 1, None)),
                Record::Offer(offer(2, 1, None)),
            ],
        )
    }

    fn of(book: &Book, makes: &[(OfferId, &str)]) -> Needs {
        let makes = makes.iter().map(|(offer, units)| (*offer, exact(units)));
        needs(book, &Ledger::of(book), &mut makes.into_iter()).unwrap()
    }

    #[test]
    fn what_drinks_take_is_added_up_by_hand() {
        let book = bar();
        let needs = of(&book, &[(offer_id(1, 1), "8"), (offer_id(2, 1), "3")]);
        // 8 * 300 / 0.8 = 3000 mL of juice; 8 * 200 / 0.8 + 3 * 500 = 3500 mL.
        let juice = Use { stage: Stage::Pressed, amount: measure("3000 mL") };
        let base = Use { stage: Stage::AsBought, amount: measure("3500 mL") };
        let expected =
            [(1, juice), (2, base)].map(|(id, used)| Needed { ingredient: ingredient_id(id), uses: vec![used] });
        assert_eq!(needs.ingredients, expected);
        assert_eq!(needs.packaging, [(packaging_id(1), exact("11")), (packaging_id(2), exact("22"))]);
        assert_eq!(needs.left_out, []);
        // 3000 mL * 1.05 g/mL = 3150 g of juice, / (0.8 * 0.5) = 7875 g bought.
        let ingredient = book.ingredient(ingredient_id(1)).unwrap();
        assert_eq!(needs.ingredients[0].bought(ingredient, Dimension::Mass), Ok(exact("7875")));
    }

    #[test]
    fn what_cannot_be_made_is_named() {
        let book = bar();
        let gone = offer_id(3, 1);
        let needs = of(&book, &[(gone, "2"), (offer_id(2, 1), "0")]);
        assert_eq!(needs, Needs { left_out: vec![(gone, Unmade::NotOnTheMenu)], ..Needs::default() });
    }

    #[test]
    fn packs_are_whole_and_enough() {
        let case = pack(1, "10 kg", "20");
        let packs = |grams: &str| super::super::whole_packs(&case, exact(grams));
        assert_eq!(["0", "1", "10000", "10000.001"].map(packs), ["0", "1", "1", "2"].map(|packs| Ok(exact(packs))));
        // Three thirds of a pack are one.
        let third = exact("10000").over(Exact::from(3)).unwrap();
        let three = third.plus(third).unwrap().plus(third).unwrap();
        assert_eq!(super::super::whole_packs(&case, three), Ok(Exact::ONE));
    }
}
