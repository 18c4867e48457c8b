//! A line as purchased of an ingredient of which something is cut away: its peel is no drink.

use crate::book::{Book, Line, Scaling, Stage};
use crate::foundation::measure::{Amount, Dimension, Overflow, Share};

/// Whether the peel in a line is to be asked about: it is meant as purchased, and something of it is cut away.
pub fn asks_about_peel(book: &Book, line: &Line) -> bool {
    let cut = book.ingredient_now(line.ingredient).is_some_and(|it| it.trim_yield < Share::WHOLE);
    cut && line.stage == Stage::AsBought && line.ice.is_none()
}

/// The line trimmed, if its amount was weighed with the peel: what is left of it. A piece is a piece as purchased
/// either way. Returns `None` if its ingredient is gone.
///
/// # Errors
/// [`Overflow`].
pub fn without_peel(book: &Book, line: Line) -> Result<Option<Line>, Overflow> {
    let Some(ingredient) = book.ingredient_now(line.ingredient) else { return Ok(None) };
    let left = |amount: Amount| match amount.unit.dimension() {
        Dimension::Count => Ok(amount),
        Dimension::Mass | Dimension::Volume => {
            let number = amount.number.times(ingredient.trim_yield.fraction())?;
            Ok::<Amount, Overflow>(Amount::new(number.kept(), amount.unit))
        }
    };
    let scaling = match line.scaling {
        Scaling::Stepped(step) => Scaling::Stepped(left(step)?),
        other => other,
    };
    Ok(Some(Line { stage: Stage::Trimmed, amount: left(line.amount)?, scaling, ..line }))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Ingredient, Record};
    use crate::drink::cost::usable_cost;
    use crate::support::{amount, book, ingredient, ingredient_id, line, pack, settings, share};

    /// Bananas at 2.00 a kilogram, 64 % of which is left after peeling (USDA SR28).
    fn bananas(trim: &str) -> Book {
        let bananas = Ingredient { trim_yield: share(trim), ..ingredient(1, [pack(1, "1 kg", "2")]) };
        book(settings(), [Record::Ingredient(bananas)])
    }

    #[test]
    fn only_peel_that_is_cut_away_is_asked_about() {
        let whole = line(1, 1, "100 g");
        assert!(asks_about_peel(&bananas("0.64"), &whole));
        assert!(!asks_about_peel(&bananas("1"), &whole));
        assert!(!asks_about_peel(&bananas("0.64"), &Line { stage: Stage::Trimmed, ..whole }));
    }

    #[test]
    fn weighed_with_the_peel_it_costs_the_same_and_fills_less() {
        let with_peel = Line { scaling: Scaling::Fixed, ..line(1, 1, "150 g") };
        let left = without_peel(&bananas("0.64"), with_peel).unwrap().unwrap();
        assert_eq!((left.stage, left.amount), (Stage::Trimmed, amount("96 g")));
        let steps = Line { scaling: Scaling::Stepped(amount("50 g")), ..with_peel };
        let steps = without_peel(&bananas("0.64"), steps).unwrap().unwrap();
        assert_eq!(steps.scaling, Scaling::Stepped(amount("32 g")));
        let piece = without_peel(&bananas("0.64"), line(1, 1, "1 ea")).unwrap().unwrap();
        assert_eq!((piece.stage, piece.amount), (Stage::Trimmed, amount("1 ea")));
        let cost = |line: Line| {
            let book = bananas("0.64");
            let bananas = book.ingredient(ingredient_id(1)).unwrap();
            usable_cost(bananas, &bananas.packs[0], line.stage, line.amount.measure().unwrap()).unwrap()
        };
        assert_eq!(cost(with_peel), cost(left), "150 g bought either way");
    }
}
