//! What to be careful of with a label.

use super::Allergens;
use crate::book::{Allergen, Drink, DrinkKind, Stage};
use crate::fill::Fill;
use crate::measure::Volume;

/// Something that these facts cannot answer for. Local codes and licensed practice decide.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Caution {
    /// Juice that was not treated may need a warning statement (21 CFR 101.17(g)) and a treatment
    /// plan (21 CFR part 120).
    UntreatedJuice,
    /// Less is poured than is declared, by so much.
    FillShortOfDeclared(Volume),
    /// The kind of nut, fish, crustacean or cereal must be named.
    NameTheKind(Allergen),
    /// Allergens are only as right as what was entered.
    AllergensAsInTheBook,
    /// The numbers are no legal advice.
    NoLegalAdvice,
}

impl Caution {
    /// The cautions of a drink at a fill. The warning of 21 CFR 101.17(g) is for juices and
    /// drinks that hold juice, so a blended drink with pressed juice has it too.
    pub fn of(drink: &Drink, fill: &Fill, allergens: &Allergens) -> Vec<Caution> {
        let is_juice = matches!(drink.kind, DrinkKind::Pressed | DrinkKind::Shot);
        let holds_juice = drink.lines.iter().any(|line| line.stage == Stage::Pressed);
        let juice = (is_juice || holds_juice).then_some(Caution::UntreatedJuice);
        let short = fill.short_of_declared.map(Caution::FillShortOfDeclared);
        let kinds = allergens.kinds_to_name().map(Caution::NameTheKind);
        let always = [Caution::AllergensAsInTheBook, Caution::NoLegalAdvice];
        juice.into_iter().chain(short).chain(kinds).chain(always).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::Line;
    use crate::fill::fill;
    use crate::support::{container, drink, ingredient_id, line};

    fn of(kind: DrinkKind, stage: Stage, present: &[Allergen]) -> Vec<Caution> {
        let drink = Drink { kind, ..drink(1, "1 L", [Line { stage, ..line(1, 1, "1 L") }]) };
        let present = present.iter().map(|allergen| (*allergen, vec![ingredient_id(1)])).collect();
        let allergens = Allergens { present, not_stated: Vec::new() };
        let cautions = Caution::of(&drink, &fill(&container(1, "1 L")).unwrap(), &allergens);
        let always = [Caution::AllergensAsInTheBook, Caution::NoLegalAdvice];
        assert!(cautions.ends_with(&always));
        cautions[..cautions.len() - always.len()].to_vec()
    }

    #[test]
    fn juice_may_be_untreated() {
        assert_eq!(of(DrinkKind::Pressed, Stage::AsBought, &[]), [Caution::UntreatedJuice]);
        assert_eq!(of(DrinkKind::Shot, Stage::AsBought, &[]), [Caution::UntreatedJuice]);
        assert_eq!(of(DrinkKind::Blended, Stage::Pressed, &[]), [Caution::UntreatedJuice]);
        assert_eq!(of(DrinkKind::Blended, Stage::Trimmed, &[]), []);
        assert_eq!(of(DrinkKind::OverIce, Stage::AsBought, &[]), []);
    }

    #[test]
    fn groups_are_named_by_their_kind() {
        let kinds = of(DrinkKind::Blended, Stage::AsBought, Allergen::ALL);
        let expected = [Allergen::OtherGluten, Allergen::Crustaceans, Allergen::Fish, Allergen::TreeNuts];
        assert_eq!(kinds, expected.map(Caution::NameTheKind));
    }
}
