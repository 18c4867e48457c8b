//! What to be careful of with a label.

use super::juice::{Acidity, Juice, served};
use super::{Allergens, Law, allergens_of};
use crate::book::{Allergen, Book, Drink, IngredientId, Offer, Service};
use crate::drink::fill::Fill;
use crate::foundation::measure::{Exact, Volume};

/// Something that these facts cannot answer for. Local codes and licensed practice decide.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Caution {
    /// Untreated juice, and packaged ahead also raw fruit or vegetables that are blended in. Packaged ahead, its label
    /// must carry a warning statement (21 CFR 101.17(g)); by the glass, that rule does not apply; where nobody said
    /// how it is sold, both are said.
    UntreatedJuice(Option<Service>),
    /// Nobody said whether these are fruit or vegetable, so it may be untreated juice.
    JuiceNotSaid(Option<Service>, Vec<IngredientId>),
    /// Who can become seriously ill of untreated juice.
    AtRisk(Option<Service>),
    /// Selling juice to another business makes its maker a processor (21 CFR 120.3(l), 120.24),
    /// treated or not.
    SoldToABusiness,
    /// Juice that is low-acid, by a pH as measured.
    MeasuredLowAcid(Exact),
    /// Juice that is published as low-acid: these ingredients.
    PublishedLowAcid(Vec<IngredientId>),
    /// Juice of which nobody knows how acid it is: these ingredients.
    AcidityNotKnown(Vec<IngredientId>),
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
    /// The cautions of a drink as it is offered, at a fill. `offer` is `None` if it is not offered,
    /// and `fill` is `None` if that cannot be computed.
    pub fn of(book: &Book, drink: &Drink, offer: Option<&Offer>, fill: Option<&Fill>) -> Vec<Caution> {
        let juice = Juice::of(book, drink);
        let mut cautions = Caution::of_juice(juice, served(drink, offer));
        cautions.extend(fill.and_then(|fill| fill.short_of_declared).map(Caution::FillShortOfDeclared));
        cautions.extend(Caution::of_allergens(&allergens_of(book, drink)));
        cautions.extend([Caution::AllergensAsInTheBook, Caution::NoLegalAdvice]);
        cautions
    }

    fn of_juice(juice: Juice, served: Option<Service>) -> Vec<Caution> {
        let mut cautions = Vec::new();
        // A blend that is handed over as it is made has no package, no shelf life, and no juice in it but that of the
        // whole fruit: the warning and the cold are for what is packaged ahead, and for juice.
        let made_to_order = served == Some(Service::ByTheGlass) && !juice.poured && juice.not_said.is_empty();
        if made_to_order {
            cautions.extend(juice.made_here.then_some(Caution::SoldToABusiness));
            return cautions;
        }
        match (juice.untreated.is_empty(), juice.not_said.is_empty()) {
            (false, _) => {
                cautions.extend([Caution::UntreatedJuice(served), Caution::AtRisk(served)]);
            }
            (true, false) => cautions.push(Caution::JuiceNotSaid(served, juice.not_said)),
            (true, true) => {}
        }
        cautions.extend(juice.made_here.then_some(Caution::SoldToABusiness));
        cautions.extend(match juice.acidity {
            Acidity::Acid => None,
            Acidity::Measured(ph) => Some(Caution::MeasuredLowAcid(ph)),
            Acidity::Published(ingredients) => Some(Caution::PublishedLowAcid(ingredients)),
            Acidity::NotKnown(ingredients) => Some(Caution::AcidityNotKnown(ingredients)),
        });
        cautions
    }

    fn of_allergens(allergens: &Allergens) -> impl Iterator<Item = Caution> {
        allergens.kinds_to_name().map(Caution::NameTheKind)
    }

    /// Whether the warning statement is shown beside it, for a package to carry: by the law of the
    /// United States alone.
    pub fn asks_for_the_warning(&self, law: Law) -> bool {
        match self {
            Caution::UntreatedJuice(served) | Caution::JuiceNotSaid(served, _) => {
                law == Law::UnitedStates && *served != Some(Service::ByTheGlass)
            }
            _ => false,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{DrinkKind, Ingredient, Line, Produce, Record, Stage};
    use crate::drink::fill::fill;
    use crate::support::{book, container, drink, exact, ingredient, ingredient_id, line, offer, settings};

    const PACKAGED: Option<Service> = Some(Service::PackagedAhead);
    const GLASS: Option<Service> = Some(Service::ByTheGlass);

    /// The cautions of a drink of one ingredient, but for the two that are always there.
    fn of(part: Ingredient, change: impl FnOnce(&mut Drink), service: Option<Service>) -> Vec<Caution> {
        let mut drink = Drink { kind: DrinkKind::Blended, ..drink(1, "1 L", [line(1, 1, "1 L")]) };
        change(&mut drink);
        let offer = Offer { service, ..offer(1, 1, None) };
        let book = book(settings(), [Record::Ingredient(part)]);
        let mut cautions = Caution::of(&book, &drink, Some(&offer), fill(&container(1, "1 L")).ok().as_ref());
        assert_eq!(cautions.pop(), Some(Caution::NoLegalAdvice));
        assert_eq!(cautions.pop(), Some(Caution::AllergensAsInTheBook));
        cautions
    }

    fn named(name: &str, produce: Option<Produce>) -> Ingredient {
        Ingredient { name: name.into(), produce, ..ingredient(1, []) }
    }

    fn untreated(service: Option<Service>) -> Vec<Caution> {
        vec![Caution::UntreatedJuice(service), Caution::AtRisk(service), Caution::SoldToABusiness]
    }

    #[test]
    fn each_kind_of_product_has_its_caution() {
        let strawberries = || named("Strawberries, frozen", Some(Produce::Raw));
        let milk = || named("Whole milk", Some(Produce::Neither));
        for service in [None, PACKAGED, GLASS] {
            let pressed = |drink: &mut Drink| {
                drink.kind = DrinkKind::Pressed;
                drink.lines = vec![Line { stage: Stage::Pressed, ..line(1, 1, "1 L") }];
            };
            assert_eq!(of(named("Apples", None), pressed, service), untreated(service), "pressed");
            let blended = of(strawberries(), |_| (), service);
            let by_the_glass = vec![Caution::SoldToABusiness];
            let expected = if service == GLASS { by_the_glass } else { untreated(service) };
            assert_eq!(blended, expected, "blended with raw produce");
            let poured = of(named("Strawberry juice", Some(Produce::Raw)), |_| (), service);
            assert_eq!(poured, untreated(service), "raw juice that was bought");
            assert_eq!(of(milk(), |_| (), service), [], "blended without");
            assert_eq!(
                of(strawberries(), |drink| drink.treated = true, service),
                [Caution::SoldToABusiness],
                "treated"
            );
            assert_eq!(of(named("Orange juice", Some(Produce::Treated)), |_| (), service), [], "bought treated");
            let not_said = of(named("Something", None), |_| (), service);
            assert_eq!(not_said, [Caution::JuiceNotSaid(service, vec![ingredient_id(1)])]);
        }
        let over_ice = |drink: &mut Drink| drink.kind = DrinkKind::OverIce;
        let pressed_over_ice = |drink: &mut Drink| {
            drink.kind = DrinkKind::OverIce;
            drink.lines = vec![Line { stage: Stage::Pressed, ..line(1, 1, "1 L") }];
        };
        assert_eq!(of(strawberries(), pressed_over_ice, None), untreated(GLASS), "pressed, over ice");
        assert_eq!(of(strawberries(), over_ice, None), [Caution::SoldToABusiness], "whole fruit over ice");
        assert_eq!(of(strawberries(), over_ice, PACKAGED), untreated(PACKAGED), "a bottle that says over ice");
    }

    #[test]
    fn the_statement_is_for_packages() {
        for (service, asks) in [(None, true), (PACKAGED, true), (GLASS, false)] {
            let (untreated, not_said) = (Caution::UntreatedJuice(service), Caution::JuiceNotSaid(service, Vec::new()));
            for caution in [untreated, not_said] {
                assert_eq!(caution.asks_for_the_warning(Law::UnitedStates), asks);
                assert!(!caution.asks_for_the_warning(Law::European));
            }
            assert!(!Caution::AtRisk(service).asks_for_the_warning(Law::UnitedStates));
        }
    }

    #[test]
    fn low_acid_juice_is_cautioned_of_treated_or_not() {
        let carrots = || named("Carrots", Some(Produce::Raw));
        let low = Caution::PublishedLowAcid(vec![ingredient_id(1)]);
        assert_eq!(of(carrots(), |_| (), PACKAGED).last(), Some(&low));
        assert_eq!(of(carrots(), |drink| drink.treated = true, PACKAGED), [Caution::SoldToABusiness, low]);
        let measured = |ph| of(carrots(), move |drink| (drink.treated, drink.ph) = (true, Some(exact(ph))), PACKAGED);
        assert_eq!(measured("4.2"), [Caution::SoldToABusiness]);
        assert_eq!(measured("5.9"), [Caution::SoldToABusiness, Caution::MeasuredLowAcid(exact("5.9"))]);
        let unknown = of(named("Wheatgrass", Some(Produce::Treated)), |_| (), PACKAGED);
        assert_eq!(unknown, [Caution::AcidityNotKnown(vec![ingredient_id(1)])]);
    }

    #[test]
    fn groups_are_named_by_their_kind() {
        let all = Ingredient { allergens: Some(Allergen::ALL.to_vec()), ..named("All", Some(Produce::Neither)) };
        let expected = [Allergen::OtherGluten, Allergen::Crustaceans, Allergen::Fish, Allergen::TreeNuts];
        assert_eq!(of(all, |_| (), None), expected.map(Caution::NameTheKind));
    }
}
