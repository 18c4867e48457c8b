//! Allergens, carried from the ingredients to the drink.

use crate::book::{Allergen, Book, Drink, IngredientId};

/// What a drink holds that must be named, as far as the book states it.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Allergens {
    /// Each with the ingredients that bring it, in the order of [`Allergen::ALL`].
    pub present: Vec<(Allergen, Vec<IngredientId>)>,
    /// Ingredients for which nobody has looked yet: they may hold anything.
    pub not_stated: Vec<IngredientId>,
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
    Allergens {
        present: found.filter(|(_, ingredients)| !ingredients.is_empty()).collect(),
        not_stated: ingredients.iter().copied().filter(|id| stated(id).is_none()).collect(),
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
        assert_eq!(found, Allergens { present, not_stated: Vec::new() });
        assert!(!found.are_none());
    }

    #[test]
    fn it_is_none_only_where_all_are_stated() {
        assert!(of([Some(&[]), Some(&[])]).are_none());
        let unknown = of([Some(&[]), None]);
        assert!(!unknown.are_none());
        assert_eq!(unknown, Allergens { present: Vec::new(), not_stated: vec![ingredient_id(2)] });
    }

    #[test]
    fn the_united_states_name_fewer() {
        let found = of([Some(&[Allergen::Celery, Allergen::TreeNuts, Allergen::OtherGluten])]);
        assert_eq!(found.in_united_states().collect::<Vec<_>>(), [Allergen::TreeNuts]);
        assert_eq!(found.kinds_to_name().collect::<Vec<_>>(), [Allergen::OtherGluten, Allergen::TreeNuts]);
    }
}
