//! Allergens, carried from the ingredients to the drink.

use crate::book::{Allergen, Book, Drink, IngredientId};

/// What a drink holds that must be named, as far as the book states it.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Allergens {
    /// Each with the ingredients that bring it, in the order of [`Allergen::ALL`].
    pub present: Vec<(Allergen, Vec<IngredientId>)>,
    /// Ingredients for which nobody has looked yet: they may hold anything.
    pub not_stated: Vec<IngredientId>,
    /// What else is used where the drink is made: all that the other ingredients of the book hold.
    pub used_around: UsedAround,
}

/// What is used where a drink is made, besides what is in it: blender, press and hands are shared.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct UsedAround {
    /// Held by some ingredient of the book and by none of the drink, in the order of
    /// [`Allergen::ALL`].
    pub held: Vec<Allergen>,
    /// Whether nobody has looked yet at some ingredient of the book, in the drink or not.
    pub not_all_stated: bool,
}

impl Allergens {
    /// Whether every ingredient is stated to hold none. While one is not stated, nobody can say.
    pub fn are_none(&self) -> bool {
        self.present.is_empty() && self.not_stated.is_empty()
    }

    /// Those present that are on the list of the United States. The list of the European Union
    /// has all that are present.
    pub fn in_united_states(&self) -> impl Iterator<Item = Allergen> {
        self.present.iter().map(|(allergen, _)| *allergen).filter(|allergen| allergen.in_united_states())
    }

    fn stated(&self, allergen: Allergen) -> bool {
        self.present.iter().any(|(present, _)| *present == allergen)
    }

    /// Those present whose kind must be named, not only the group: the nut, the species of fish
    /// or crustacean (21 U.S.C. 343(w)(2)), the cereal (Regulation (EU) No 1169/2011, Annex II,
    /// which names each).
    pub fn kinds_to_name(&self) -> impl Iterator<Item = Allergen> {
        let groups = [Allergen::OtherGluten, Allergen::Crustaceans, Allergen::Fish, Allergen::TreeNuts];
        groups.into_iter().filter(|group| self.stated(*group))
    }
}

/// What the ingredients of `drink` hold, whatever its size: an ingredient of which rounding to
/// steps leaves nothing in a small size counts too.
pub fn allergens_of(book: &Book, drink: &Drink) -> Allergens {
    let mut ingredients: Vec<IngredientId> = Vec::new();
    for line in &drink.lines {
        if !ingredients.contains(&line.ingredient) {
            ingredients.push(line.ingredient);
        }
    }
    let stated = |id: &IngredientId| book.ingredient(*id).and_then(|ingredient| ingredient.allergens.as_ref());
    let bringing = |allergen: Allergen| -> Vec<IngredientId> {
        let holds = |id: &IngredientId| stated(id).is_some_and(|allergens| allergens.contains(&allergen));
        ingredients.iter().copied().filter(holds).collect()
    };
    let found = Allergen::ALL.iter().map(|allergen| (*allergen, bringing(*allergen)));
    let present: Vec<(Allergen, Vec<IngredientId>)> =
        found.filter(|(_, ingredients)| !ingredients.is_empty()).collect();
    Allergens {
        not_stated: ingredients.iter().copied().filter(|id| stated(id).is_none()).collect(),
        used_around: used_around(book, &present),
        present,
    }
}

fn used_around(book: &Book, present: &[(Allergen, Vec<IngredientId>)]) -> UsedAround {
    let in_drink = |allergen: &Allergen| present.iter().any(|(it, _)| it == allergen);
    let some_holds = |allergen: &Allergen| {
        book.ingredients().any(|it| it.allergens.as_ref().is_some_and(|held| held.contains(allergen)))
    };
    UsedAround {
        held: Allergen::ALL.iter().copied().filter(|it| !in_drink(it) && some_holds(it)).collect(),
        not_all_stated: book.ingredients().any(|it| it.allergens.is_none()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Ingredient, Record};
    use crate::support::{book, drink, ingredient, ingredient_id, line, settings};

    /// A drink of ingredients 1, 2 ... that hold these; the second line of each is as good as
    /// the first.
    fn of<const N: usize>(held: [Option<&[Allergen]>; N]) -> Allergens {
        let ids = 1..=u64::try_from(N).unwrap();
        let ingredients = ids.clone().zip(held).map(|(id, held)| {
            Record::Ingredient(Ingredient { allergens: held.map(<[_]>::to_vec), ..ingredient(id, []) })
        });
        let lines = ids.clone().chain(ids).zip(1..).map(|(ingredient, id)| line(id, ingredient, "1 mL"));
        let drink = drink(1, "1 L", lines);
        allergens_of(&book(settings(), ingredients), &drink)
    }

    #[test]
    fn each_is_there_once_with_all_that_bring_it() {
        let found =
            of([Some(&[Allergen::Wheat, Allergen::Sesame]), Some(&[]), Some(&[Allergen::Milk, Allergen::Wheat])]);
        let (first, third) = (ingredient_id(1), ingredient_id(3));
        let present =
            vec![(Allergen::Wheat, vec![first, third]), (Allergen::Milk, vec![third]), (Allergen::Sesame, vec![first])];
        assert_eq!(found, Allergens { present, ..Allergens::default() });
        assert!(!found.are_none());
    }

    #[test]
    fn it_is_none_only_where_all_are_stated() {
        assert!(of([Some(&[]), Some(&[])]).are_none());
        let unknown = of([Some(&[]), None]);
        assert!(!unknown.are_none());
        let used_around = UsedAround { held: Vec::new(), not_all_stated: true };
        let expected = Allergens { present: Vec::new(), not_stated: vec![ingredient_id(2)], used_around };
        assert_eq!(unknown, expected);
    }

    /// The drink is of ingredient 1; ingredients 2 and 3 are elsewhere in the book.
    #[test]
    fn what_shares_the_blender_is_what_the_rest_of_the_book_holds() {
        let around = |first: &[Allergen], second: &[Allergen], third: Option<&[Allergen]>| {
            let held = [Some(first), Some(second), third];
            let records = (1..).zip(held).map(|(id, held)| {
                Record::Ingredient(Ingredient { allergens: held.map(<[_]>::to_vec), ..ingredient(id, []) })
            });
            let book = book(settings(), records);
            allergens_of(&book, &drink(1, "1 L", [line(1, 1, "1 L")])).used_around
        };
        let found = around(&[], &[Allergen::Milk, Allergen::Peanuts], Some(&[Allergen::TreeNuts, Allergen::Milk]));
        let held = vec![Allergen::Peanuts, Allergen::Milk, Allergen::TreeNuts];
        assert_eq!(found, UsedAround { held, not_all_stated: false });
        let found = around(&[Allergen::Milk], &[Allergen::Milk, Allergen::Sesame], None);
        assert_eq!(found, UsedAround { held: vec![Allergen::Sesame], not_all_stated: true });
        assert_eq!(around(&[], &[], Some(&[])), UsedAround::default());
    }

    #[test]
    fn the_united_states_name_fewer() {
        let found = of([Some(&[Allergen::Celery, Allergen::TreeNuts, Allergen::OtherGluten])]);
        assert_eq!(found.in_united_states().collect::<Vec<_>>(), [Allergen::TreeNuts]);
        assert_eq!(found.kinds_to_name().collect::<Vec<_>>(), [Allergen::OtherGluten, Allergen::TreeNuts]);
    }
}
