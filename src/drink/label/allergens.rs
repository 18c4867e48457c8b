//! Allergens, carried from the ingredients to the drink.

use super::names::says;
use crate::book::{Allergen, Book, Drink, Ingredient, IngredientId};
use crate::foundation::measure::is_seen;

/// What a drink holds that must be named, as far as the book states it.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Allergens {
    /// Each with the ingredients that bring it, in the order of [`Allergen::ALL`].
    pub present: Vec<(Allergen, Vec<IngredientId>)>,
    /// Ingredients for which nobody has looked yet: they may hold anything.
    pub not_stated: Vec<IngredientId>,
    /// Mixtures of which nobody knows the parts: they may hold more than was stated of them.
    pub parts_not_known: Vec<IngredientId>,
    /// Which tree nuts, in the owner's words, each list once; empty where nobody said.
    pub nuts: Vec<String>,
    /// Ingredients whose parts name an allergen that is not marked.
    pub parts_name_more: Vec<IngredientId>,
    /// Whether every ingredient that brings tree nuts says which.
    pub nuts_are_named: bool,
    /// Whether nothing is in the recipe yet: then nobody can say anything.
    pub nothing_in_it: bool,
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
    /// Whether every ingredient is stated to hold none. While one is not stated, or is a mixture
    /// whose parts are not known, nobody can say; of an empty recipe neither.
    pub fn are_none(&self) -> bool {
        self.present.is_empty() && self.are_all_known()
    }

    /// Whether all that is in the drink is known: nothing that is not named is in it.
    pub fn are_all_known(&self) -> bool {
        let open = [&self.not_stated, &self.parts_not_known, &self.parts_name_more];
        !self.nothing_in_it && open.iter().all(|ids| ids.is_empty())
    }

    /// The ingredients of which it is not known what else they hold, each once.
    pub fn open(&self) -> impl Iterator<Item = IngredientId> {
        let mixtures = || self.parts_not_known.iter().filter(|id| !self.not_stated.contains(id));
        let named = self
            .parts_name_more
            .iter()
            .filter(move |id| !self.not_stated.contains(id) && !self.parts_not_known.contains(id));
        self.not_stated.iter().chain(mixtures()).chain(named).copied()
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
    /// which names each). Nuts that every ingredient names need it no more.
    pub fn kinds_to_name(&self) -> impl Iterator<Item = Allergen> {
        let groups = [Allergen::OtherGluten, Allergen::Crustaceans, Allergen::Fish, Allergen::TreeNuts];
        let open = |group: &Allergen| self.stated(*group) && !(*group == Allergen::TreeNuts && self.nuts_are_named);
        groups.into_iter().filter(open)
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
    let unopened = |parts: &String| !is_seen(parts);
    let is_unopened =
        |id: &IngredientId| book.ingredient(*id).is_some_and(|it| it.parts.as_ref().is_some_and(unopened));
    let with_nuts: Vec<&Ingredient> =
        bringing(Allergen::TreeNuts).into_iter().filter_map(|id| book.ingredient(id)).collect();
    let mut nuts: Vec<String> = Vec::new();
    for named in with_nuts.iter().map(|it| &it.nuts).filter(|it| is_seen(it)) {
        if !nuts.contains(named) {
            nuts.push(named.clone());
        }
    }
    Allergens {
        parts_name_more: ingredients
            .iter()
            .copied()
            .filter(|id| book.ingredient(*id).is_some_and(parts_name_more))
            .collect(),
        parts_not_known: ingredients.iter().copied().filter(is_unopened).collect(),
        nuts_are_named: with_nuts.iter().all(|it| is_seen(&it.nuts)),
        nuts,
        nothing_in_it: ingredients.is_empty(),
        not_stated: ingredients.iter().copied().filter(|id| stated(id).is_none()).collect(),
        used_around: used_around(book, &ingredients, &present),
        present,
    }
}

/// Whether the parts of an ingredient name an allergen that it is not marked with.
fn parts_name_more(ingredient: &Ingredient) -> bool {
    let (Some(parts), Some(marked)) = (&ingredient.parts, &ingredient.allergens) else { return false };
    Allergen::ALL.iter().any(|allergen| !marked.contains(allergen) && says(parts, *allergen))
}

fn used_around(book: &Book, in_it: &[IngredientId], present: &[(Allergen, Vec<IngredientId>)]) -> UsedAround {
    let in_drink = |allergen: &Allergen| present.iter().any(|(it, _)| it == allergen);
    let some_holds = |allergen: &Allergen| {
        book.ingredients().any(|it| it.allergens.as_ref().is_some_and(|held| held.contains(allergen)))
    };
    UsedAround {
        held: Allergen::ALL.iter().copied().filter(|it| !in_drink(it) && some_holds(it)).collect(),
        not_all_stated: book.ingredients().any(|it| it.allergens.is_none() && !in_it.contains(&it.id)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::Record;
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
        assert_eq!(found, Allergens { present, nuts_are_named: true, ..Allergens::default() });
        assert!(!found.are_none());
    }

    #[test]
    fn it_is_none_only_where_all_are_stated() {
        assert!(of([Some(&[]), Some(&[])]).are_none());
        let unknown = of([Some(&[]), None]);
        assert!(!unknown.are_none());
        let expected = Allergens { not_stated: vec![ingredient_id(2)], nuts_are_named: true, ..Allergens::default() };
        assert_eq!(unknown, expected);
    }

    #[test]
    fn what_is_open_is_named_once() {
        let [first, second, third] = [1, 2, 3].map(ingredient_id);
        let found = Allergens {
            not_stated: vec![first],
            parts_not_known: vec![first, second],
            parts_name_more: vec![second, third],
            ..Allergens::default()
        };
        assert_eq!(found.open().collect::<Vec<_>>(), [first, second, third]);
        assert_eq!(of([Some(&[])]).open().count(), 0);
    }

    #[test]
    fn an_empty_recipe_is_not_none() {
        let empty = of([]);
        assert!(empty.nothing_in_it && !empty.are_none() && !empty.are_all_known());
        assert!(of([Some(&[])]).are_none());
    }

    #[test]
    fn a_mixture_whose_parts_name_more_cannot_say_none() {
        let of = |parts: &str| {
            let mixture =
                Ingredient { allergens: Some(vec![Allergen::Milk]), parts: Some(parts.into()), ..ingredient(1, []) };
            let drink = drink(1, "1 L", [line(1, 1, "1 mL")]);
            allergens_of(&book(settings(), [Record::Ingredient(mixture)]), &drink)
        };
        assert_eq!(of("peanuts, whole milk").parts_name_more, [ingredient_id(1)]);
        assert!(!of("peanuts").are_all_known());
        assert_eq!(of("whole milk, cocoa").parts_name_more, []);
        assert!(of("whole milk, cocoa").are_all_known());
    }

    #[test]
    fn a_mixture_whose_parts_are_not_known_cannot_say_none() {
        let of = |parts: Option<&str>| {
            let granola = Ingredient { allergens: Some(Vec::new()), parts: parts.map(Into::into), ..ingredient(1, []) };
            let book = book(settings(), [Record::Ingredient(granola)]);
            allergens_of(&book, &drink(1, "1 L", [line(1, 1, "1 L")]))
        };
        assert!(of(None).are_none());
        for unknown in ["", "  "] {
            let found = of(Some(unknown));
            assert!(!found.are_none());
            assert_eq!(found.parts_not_known, [ingredient_id(1)]);
        }
        assert!(of(Some("rice, honey")).are_none());
    }

    #[test]
    fn nuts_are_named_once_and_asked_for_while_some_are_not() {
        let of = |named: [&str; 3]| {
            let records = (1..).zip(named).map(|(id, nuts)| {
                let allergens = Some(vec![Allergen::TreeNuts]);
                Record::Ingredient(Ingredient { allergens, nuts: nuts.into(), ..ingredient(id, []) })
            });
            let lines = [1, 2, 3].map(|id| line(id, id, "1 mL"));
            allergens_of(&book(settings(), records), &drink(1, "1 L", lines))
        };
        let all = of(["almonds", "cashews", "almonds"]);
        assert_eq!(all.nuts, ["almonds", "cashews"]);
        assert_eq!(all.kinds_to_name().count(), 0);
        let some = of(["almonds", "", "almonds"]);
        assert_eq!(some.kinds_to_name().collect::<Vec<_>>(), [Allergen::TreeNuts]);
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
