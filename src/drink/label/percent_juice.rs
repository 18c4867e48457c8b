//! How much of a drink is juice.

use super::juice::is_juice;
use crate::book::{Book, Drink, IngredientId};
use crate::drink::fill::Scaled;
use crate::foundation::measure::{Exact, Overflow, Volume};

/// How much of a drink is juice, by volume (21 CFR 101.30, text): pressed juice, purées and raw
/// fruit and vegetables blended in, and juice that was bought, each as it is poured. Concentrate
/// counts as the juice that it makes up to (101.30(h)), so it must be entered as that.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum PercentJuice {
    /// Nothing in it is juice.
    None,
    /// Some, and less than one percent.
    LessThanOne,
    /// So many percent: a whole number, never more than there is.
    Percent(Exact),
    /// Nobody said of these whether they are fruit or vegetable.
    NotSaid(Vec<IngredientId>),
}

impl PercentJuice {
    /// How much of `drink` is juice at the size that it was scaled to. Air that is beaten in is no
    /// part of it; ice that is blended in is water.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn of(book: &Book, drink: &Drink, scaled: &Scaled) -> Result<PercentJuice, Overflow> {
        let (mut juice, mut whole) = (Volume::ZERO, Volume::ZERO);
        let mut not_said = Vec::new();
        for at_size in &scaled.lines {
            whole = whole.plus(at_size.volume)?;
            let line = drink.lines.iter().find(|line| line.id == at_size.line);
            match line.map_or(Some(false), |line| is_juice(book, line)) {
                Some(true) => juice = juice.plus(at_size.volume)?,
                Some(false) => {}
                None if not_said.contains(&at_size.ingredient) => {}
                None => not_said.push(at_size.ingredient),
            }
        }
        if !not_said.is_empty() {
            return Ok(PercentJuice::NotSaid(not_said));
        }
        if !juice.is_positive() {
            return Ok(PercentJuice::None);
        }
        // A division may fall short at its 28th digit, which does not count: a half is 50 percent,
        // not 49.
        let percent = juice.ratio_to(whole)?.as_part().times(Exact::from(100))?.floor();
        Ok(if percent.is_positive() { PercentJuice::Percent(percent) } else { PercentJuice::LessThanOne })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{DrinkKind, Ice, IcePlace, Ingredient, Line, Produce, Record, Stage};
    use crate::drink::fill::scale;
    use crate::support::{book, density, drink, ingredient, ingredient_id, line, millilitres, settings, share};

    const RAW: Option<Produce> = Some(Produce::Raw);
    const NEITHER: Option<Produce> = Some(Produce::Neither);

    /// Of a blended drink of ingredients 1, 2 ... that are this, with so much of each.
    fn of(parts: &[(Option<Produce>, &str)], change: impl FnOnce(&mut Drink)) -> PercentJuice {
        let ids = 1_u64..;
        let records = ids.clone().zip(parts);
        let records = records
            .map(|(id, (produce, _))| Record::Ingredient(Ingredient { produce: *produce, ..ingredient(id, []) }));
        let lines = ids.zip(parts).map(|(id, (_, amount))| line(id, id, amount));
        let mut drink = Drink { kind: DrinkKind::Blended, ..drink(1, "300 mL", lines) };
        change(&mut drink);
        let book = book(settings(), records);
        PercentJuice::of(&book, &drink, &scale(&book, &drink, millilitres("300")).unwrap()).unwrap()
    }

    fn percent(number: u32) -> PercentJuice {
        PercentJuice::Percent(Exact::from(number))
    }

    #[test]
    fn it_is_a_whole_number_and_never_more_than_there_is() {
        assert_eq!(of(&[(RAW, "100 mL")], |_| ()), percent(100));
        // 2 of 3 are 66.7, 1,999 of 2,000 are 99.95, 19 of 1,000 are 1.9.
        assert_eq!(of(&[(RAW, "2 mL"), (NEITHER, "1 mL")], |_| ()), percent(66));
        assert_eq!(of(&[(RAW, "1999 mL"), (NEITHER, "1 mL")], |_| ()), percent(99));
        assert_eq!(of(&[(RAW, "19 mL"), (NEITHER, "981 mL")], |_| ()), percent(1));
        // Each whole number is reached.
        for whole in 1..100 {
            let (juice, rest) = (format!("{} mL", whole * 7), format!("{} mL", (100 - whole) * 7));
            assert_eq!(of(&[(RAW, &juice), (NEITHER, &rest)], |_| ()), percent(whole));
        }
    }

    #[test]
    fn thirds_come_to_a_whole() {
        // Three times 0.01 g at 3 g/mL are 0.01 mL, beside 0.01 mL: by division a little less than
        // half.
        let berries =
            [1, 2, 3].map(|id| Ingredient { density: Some(density("3")), produce: RAW, ..ingredient(id, []) });
        let water = Ingredient { produce: NEITHER, ..ingredient(4, []) };
        let lines = [line(1, 1, "0.01 g"), line(2, 2, "0.01 g"), line(3, 3, "0.01 g"), line(4, 4, "0.01 mL")];
        let drink = Drink { kind: DrinkKind::Blended, ..drink(1, "0.02 mL", lines) };
        let book = book(settings(), berries.into_iter().chain([water]).map(Record::Ingredient));
        let scaled = scale(&book, &drink, millilitres("0.02")).unwrap();
        assert_eq!(PercentJuice::of(&book, &drink, &scaled), Ok(percent(50)));
    }

    #[test]
    fn little_is_less_than_one_and_nothing_is_none() {
        assert_eq!(of(&[(RAW, "9 mL"), (NEITHER, "991 mL")], |_| ()), PercentJuice::LessThanOne);
        assert_eq!(of(&[(NEITHER, "1 L")], |_| ()), PercentJuice::None);
    }

    #[test]
    fn pressed_and_bought_juice_count_too() {
        let bought = [(Some(Produce::Treated), "40 mL"), (NEITHER, "60 mL")];
        assert_eq!(of(&bought, |_| ()), percent(40));
        let pressed = |drink: &mut Drink| drink.lines[0].stage = Stage::Pressed;
        assert_eq!(of(&[(None, "60 mL"), (NEITHER, "40 mL")], pressed), percent(60));
        assert_eq!(of(&[(NEITHER, "60 mL")], pressed), PercentJuice::None, "milk of nuts");
    }

    #[test]
    fn air_is_no_part_of_it_and_ice_is_water() {
        let half = [(RAW, "50 mL"), (NEITHER, "50 mL")];
        assert_eq!(of(&half, |drink| drink.air = share("0.5")), percent(50));
        // 91.7 g of ice are 100 mL.
        let ice = |drink: &mut Drink| {
            let ice = Some(Ice { place: IcePlace::BlendedIn, packing: share("0.6"), melted: share("0") });
            drink.lines[1] = Line { ice, ..line(2, 2, "91.7 g") };
        };
        assert_eq!(of(&[(RAW, "100 mL"), (RAW, "1 mL")], ice), percent(50));
    }

    #[test]
    fn while_nobody_said_it_is_not_guessed() {
        let found = of(&[(RAW, "50 mL"), (None, "50 mL"), (NEITHER, "1 mL")], |_| ());
        assert_eq!(found, PercentJuice::NotSaid(vec![ingredient_id(2)]));
        // A warning takes all of a pressed drink for juice; a percentage may not be too high.
        let pressed = of(&[(RAW, "50 mL"), (None, "50 mL")], |drink| drink.kind = DrinkKind::Pressed);
        assert_eq!(pressed, PercentJuice::NotSaid(vec![ingredient_id(2)]));
    }
}
