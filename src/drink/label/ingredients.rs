//! Ingredients by mass.

use super::LabelError;
use crate::book::{Book, IngredientId, Key, Stage};
use crate::drink::fill::{ScaleError, Scaled, ScaledLine, mass_of_ice};
use crate::drink::yields::mass_at;
use crate::foundation::in_order;
use crate::foundation::measure::{Mass, Overflow, Share};

/// What stands in the list of ingredients of a label.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ListedAs {
    /// An ingredient.
    Food(IngredientId),
    /// The juice that is pressed from one.
    Juice(IngredientId),
    /// Water, and ice that is blended in.
    Water,
}

/// An ingredient in the list of a label.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Listed {
    /// What it is.
    pub what: ListedAs,
    /// Its mass in the drink at this size.
    pub mass: Mass,
    /// Its share of the mass of the drink.
    pub share: Share,
}

/// The ingredients of a drink by mass in falling order, each once; of equal masses the one added
/// first stands first. "Descending order of predominance by weight" (21 CFR 101.4(a)(1), text).
/// Ice is water, and listed with it. What a size has none of is not listed.
///
/// # Errors
/// [`LabelError::Mass`] names an ingredient that lacks a density or a piece weight.
pub fn by_mass(book: &Book, scaled: &Scaled) -> Result<Vec<Listed>, LabelError> {
    let mut masses: Vec<(ListedAs, Mass)> = Vec::new();
    for line in &scaled.lines {
        let (what, mass) = (listed_as(book, line), mass_in_drink(book, line)?);
        match masses.iter_mut().find(|(before, _)| *before == what) {
            Some((_, sum)) => *sum = sum.plus(mass)?,
            None => masses.push((what, mass)),
        }
    }
    let mut heaviest_first = Vec::new();
    let mut whole = Mass::ZERO;
    for (what, mass) in masses.into_iter().filter(|(_, mass)| mass.is_positive()) {
        whole = whole.plus(mass)?;
        in_order::insert(&mut heaviest_first, (what, mass), |(_, other), (_, mass)| other >= mass);
    }
    let listed = |(what, mass): (ListedAs, Mass)| -> Result<Listed, Overflow> {
        let share = Share::from_fraction(mass.ratio_to(whole)?).as_part();
        Ok(Listed { what, mass: mass.as_part(), share })
    };
    Ok(heaviest_first.into_iter().map(listed).collect::<Result<_, _>>()?)
}

/// What a line is listed as: ice, and an ingredient that is called water, is water.
fn listed_as(book: &Book, line: &ScaledLine) -> ListedAs {
    let called_water = |name: &str| name.trim().eq_ignore_ascii_case("water");
    let is_water = book.ingredient(line.ingredient).is_some_and(|it| called_water(&it.name));
    match line.stage {
        _ if line.ice.is_some() || is_water => ListedAs::Water,
        Stage::Pressed => ListedAs::Juice(line.ingredient),
        Stage::AsBought | Stage::Trimmed | Stage::SoakedOrBrewed => ListedAs::Food(line.ingredient),
    }
}

/// The mass of a line in the drink; a volume of ice is a scoop.
fn mass_in_drink(book: &Book, line: &ScaledLine) -> Result<Mass, LabelError> {
    let missing = ScaleError::Missing(Key::Ingredient(line.ingredient));
    let ingredient = book.ingredient_now(line.ingredient).ok_or(missing)?;
    Ok(match line.ice {
        Some(ice) => mass_of_ice(&ingredient, ice, line.in_drink)?,
        None => mass_at(&ingredient, line.stage, line.in_drink)?,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Drink, Ice, IcePlace, Ingredient, Line, Record, Scaling, Stage};
    use crate::drink::fill::scale;
    use crate::support::{
        amount, book, density, drink, exact, grams, ingredient, ingredient_id, line, millilitres, settings, share,
    };

    /// The list of a drink of ingredients 1 (1 g/mL), 2 (2 g/mL, 10 g a piece, half trimmed away)
    /// and 3 (ice).
    fn listed(drink: &Drink, volume: &str) -> Vec<(u64, String)> {
        let heavy = Ingredient {
            density: Some(density("2")),
            piece_weight: Some(grams("10")),
            trim_yield: share("0.5"),
            ..ingredient(2, [])
        };
        let records = [ingredient(1, []), heavy, ingredient(3, [])].map(Record::Ingredient);
        let book = book(settings(), records);
        let scaled = scale(&book, drink, millilitres(volume)).unwrap();
        let list = by_mass(&book, &scaled).unwrap();
        let whole = list.iter().try_fold(Share::ZERO, |sum, listed| sum.plus(listed.share)).unwrap();
        assert_eq!(whole.fraction().rounded(9), exact("1"));
        let number = |what| match what {
            ListedAs::Food(id) | ListedAs::Juice(id) => id.number(),
            ListedAs::Water => 0,
        };
        list.iter().map(|listed| (number(listed.what), listed.mass.grams().to_string())).collect()
    }

    #[test]
    fn lines_of_one_ingredient_are_added_up() {
        // 60 mL + 50 mL at 1 g/mL are 110 g; 50 mL at 2 g/mL are 100 g.
        let mixed = drink(1, "160 mL", [line(1, 1, "60 mL"), line(2, 2, "50 mL"), line(3, 1, "50 mL")]);
        assert_eq!(listed(&mixed, "160"), [(1, "110".into()), (2, "100".into())]);
    }

    #[test]
    fn mass_counts_not_volume() {
        // 60 mL weigh 60 g, 50 mL of the other 100 g; twice that in twice the size.
        let mixed = drink(1, "110 mL", [line(1, 1, "60 mL"), line(2, 2, "50 mL")]);
        assert_eq!(listed(&mixed, "220"), [(2, "200".into()), (1, "120".into())]);
    }

    #[test]
    fn of_equal_masses_the_first_added_stands_first() {
        let mixed = drink(1, "75 mL", [line(1, 2, "25 mL"), line(2, 1, "50 mL")]);
        assert_eq!(listed(&mixed, "75"), [(2, "50".into()), (1, "50".into())]);
    }

    #[test]
    fn pieces_weigh_what_is_left_after_trimming() {
        // Four pieces of 10 g, half trimmed away: 20 g, 10 mL.
        let pieces = Line { stage: Stage::Trimmed, ..line(1, 2, "4 ea") };
        assert_eq!(
            listed(&drink(1, "100 mL", [pieces, line(2, 1, "90 mL")]), "100"),
            [(1, "90".into()), (2, "20".into())]
        );
    }

    #[test]
    fn a_scoop_of_ice_is_listed_by_the_mass_of_its_ice() {
        // 200 mL of cubes, 60 % of it ice of 0.917 g/mL: 110.04 g, that takes 120 mL of 270.
        let ice = Some(Ice { place: IcePlace::HeldUnder, packing: share("0.6"), melted: Share::ZERO });
        let scoop = Line { ice, scaling: Scaling::Fixed, ..line(1, 3, "200 mL") };
        let iced = drink(1, "270 mL", [scoop, line(2, 1, "150 mL")]);
        assert_eq!(listed(&iced, "270"), [(1, "150".into()), (0, "110.04".into())]);
    }

    #[test]
    fn ice_that_is_blended_in_is_listed_with_water() {
        let water = Ingredient { name: "Water".into(), ..ingredient(1, []) };
        let book = book(settings(), [water, ingredient(2, []), ingredient(3, [])].map(Record::Ingredient));
        let ice = Some(Ice { place: IcePlace::BlendedIn, packing: share("0.6"), melted: Share::ZERO });
        // 91.7 g of ice are 100 mL.
        let lines = [line(1, 2, "90 mL"), Line { ice, ..line(2, 3, "91.7 g") }, line(3, 1, "10 mL")];
        let blended = drink(1, "200 mL", lines);
        let list = by_mass(&book, &scale(&book, &blended, millilitres("200")).unwrap()).unwrap();
        let list: Vec<_> = list.iter().map(|listed| (listed.what, listed.mass.grams())).collect();
        assert_eq!(list, [(ListedAs::Water, exact("101.7")), (ListedAs::Food(ingredient_id(2)), exact("90"))]);
    }

    #[test]
    fn juice_is_another_food_than_what_it_is_pressed_from() {
        let apple =
            Ingredient { press_yield: share("0.5").into(), juice_density: Some(density("1")), ..ingredient(1, []) };
        let book = book(settings(), [Record::Ingredient(apple)]);
        let pressed = Line { stage: Stage::Pressed, ..line(1, 1, "60 mL") };
        let both = drink(1, "100 mL", [pressed, line(2, 1, "40 mL")]);
        let list = by_mass(&book, &scale(&book, &both, millilitres("100")).unwrap()).unwrap();
        let list: Vec<_> = list.iter().map(|listed| listed.what).collect();
        assert_eq!(list, [ListedAs::Juice(ingredient_id(1)), ListedAs::Food(ingredient_id(1))]);
    }

    #[test]
    fn what_stays_in_the_press_is_not_in_the_drink() {
        let lossy = Drink { process_loss: share("0.2"), ..drink(1, "100 mL", [line(1, 1, "100 mL")]) };
        assert_eq!(listed(&lossy, "100"), [(1, "100".into())]);
    }

    #[test]
    fn what_rounds_to_no_step_is_not_listed() {
        let stepped = Line { scaling: Scaling::Stepped(amount("10 mL")), ..line(1, 2, "10 mL") };
        let large = drink(1, "100 mL", [stepped, line(2, 1, "90 mL")]);
        assert_eq!(listed(&large, "100"), [(1, "90".into()), (2, "20".into())]);
        assert_eq!(listed(&large, "30"), [(1, "30".into())]);
    }

    #[test]
    fn what_lacks_a_density_is_named() {
        let bare = Ingredient { density: None, ..ingredient(1, []) };
        let book = book(settings(), [Record::Ingredient(bare)]);
        let scaled = scale(&book, &drink(1, "1 L", [line(1, 1, "1 L")]), millilitres("1000")).unwrap();
        let lacks = crate::drink::yields::YieldError::NoDensity(ingredient_id(1));
        assert_eq!(by_mass(&book, &scaled), Err(LabelError::Mass(lacks)));
    }
}
