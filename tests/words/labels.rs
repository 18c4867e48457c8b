//! What a label says.

use brimwright::book::{Allergen, Book, Edit, Ingredient, IngredientId, Record};
use brimwright::fill::ScaleError;
use brimwright::label::{Allergens, Caution, LabelError, NetContents, NetSource};
use brimwright::ledger::Trouble;
use brimwright::measure::{Amount, Exact, NumberStyle, System, Unit};
use brimwright::words;
use brimwright::yields::YieldError;

use crate::{GINGER, book, ounces};

const BUTTER: IngredientId = IngredientId::from_random(2);

#[test]
fn net_contents_are_said_in_both_systems() {
    let said = |number, unit, system, style: &NumberStyle| {
        let volume = Amount::new(number, unit).volume().ok().flatten().expect("a volume");
        let net = NetContents::of(volume, NetSource::Fill).expect("small");
        words::net_contents(&net, system, style)
    };
    let (english, continental) = (NumberStyle::english("$"), NumberStyle::continental(""));
    let ounces = |tenths, system| said(Exact::new(tenths, 1), Unit::UsFluidOunce, system, &english);
    assert_eq!(ounces(120, System::UsCustomary), "Net 12\u{a0}fl oz (354\u{a0}mL)");
    assert_eq!(ounces(160, System::UsCustomary), "Net 16\u{a0}fl oz (1\u{a0}pt) 473\u{a0}mL");
    assert_eq!(
        ounces(565, System::UsCustomary),
        "Net 56.5\u{a0}fl oz (1\u{a0}qt 1\u{a0}pt 8.5\u{a0}fl oz) 1.67\u{a0}L"
    );
    assert_eq!(ounces(1280, System::UsCustomary), "Net 1\u{a0}gal (3.78\u{a0}L)");
    assert_eq!(ounces(120, System::Imperial), "354\u{a0}mL (12\u{a0}US fl oz)");
    let half_litre = said(Exact::new(500, 0), Unit::Millilitre, System::Metric, &continental);
    assert_eq!(half_litre, "500\u{a0}mL (16,9\u{a0}fl oz)");
    assert_eq!(words::net_source(NetSource::Declared), "declared size");
    assert_eq!(words::net_source(NetSource::Fill), "fill, as no size is declared");
}

#[test]
fn cautions_defer_to_law_and_practice() {
    let book = book();
    let said = |caution| words::caution(caution, &book);
    assert_eq!(
        said(Caution::UntreatedJuice),
        "Juice that was not treated against germs may need a warning on its label, in the United States (21 CFR 101.17(g)): “WARNING: This product has not been pasteurized and, therefore, may contain harmful bacteria that can cause serious illness in children, the elderly, and persons with weakened immune systems.” It may also need a treatment plan (21 CFR part 120). Ask what applies to you."
    );
    assert_eq!(
        said(Caution::FillShortOfDeclared(ounces(50))),
        "The fill is 0.50\u{a0}fl oz less than the declared size. Fill more or declare less: a label may not state more than is there."
    );
    let kind = |allergen| said(Caution::NameTheKind(allergen));
    assert_eq!(kind(Allergen::TreeNuts), "Name the kind of nut, such as almonds or cashews.");
    assert_eq!(kind(Allergen::Fish), "Name the kind of fish, such as cod.");
    assert_eq!(kind(Allergen::Crustaceans), "Name the kind of crustacean, such as shrimp.");
    assert_eq!(kind(Allergen::OtherGluten), "Name the cereal with gluten, such as rye, barley or oats.");
    assert_eq!(kind(Allergen::Milk), "Name the food that it comes from.");
    assert_eq!(
        said(Caution::AllergensAsInTheBook),
        "Allergens are only as right as what was entered for each ingredient. Check every label, and what shares the blender or press."
    );
    assert_eq!(
        said(Caution::NoLegalAdvice),
        "These numbers are no legal advice: local codes and licensed practice decide."
    );
}

#[test]
fn what_a_label_lacks() {
    let book = book();
    let said = |error| words::label_error(&error, &book);
    assert_eq!(
        said(LabelError::Mass(YieldError::NoDensity(GINGER))),
        "A label lists ingredients by weight, and Ginger is poured by volume. Enter its grams per mL as it is in the drink."
    );
    assert_eq!(
        said(LabelError::Mass(YieldError::NoJuiceDensity(GINGER))),
        "A label lists ingredients by weight, and the juice of Ginger is poured by volume. Enter grams per mL of the juice."
    );
    assert_eq!(
        said(LabelError::Mass(YieldError::NoPieceWeight(GINGER))),
        "Ginger is counted in pieces but no piece has a weight. Enter the weight of one as bought."
    );
    let drink = brimwright::book::DrinkId::from_random(1);
    let no_lines = LabelError::Offer(Trouble::Scale(ScaleError::NoLines(drink)));
    assert_eq!(said(no_lines), "The recipe is empty. Add what goes in.");
}

/// The book with an invented nut butter beside the ginger.
fn with_butter() -> Book {
    let mut book = book();
    book.apply(&Edit::Put(Record::Ingredient(Ingredient::named(BUTTER, "Nut butter")))).expect("an ingredient holds");
    book
}

#[test]
fn allergens_are_none_only_where_all_is_stated() {
    let book = with_butter();
    let said = |present, not_stated| words::allergens(&Allergens { present, not_stated }, &book);
    assert_eq!(said(vec![], vec![]), "None of the allergens that must be named, as far as the book states.");
    assert_eq!(
        said(vec![], vec![GINGER, BUTTER]),
        "Not stated yet, so it may hold any: Ginger, Nut butter. Check the label of each, and enter it."
    );
    let present = vec![(Allergen::Peanuts, vec![BUTTER]), (Allergen::Sulphites, vec![BUTTER, GINGER])];
    assert_eq!(said(present.clone(), vec![]), "Contains Peanuts (Nut butter); Sulphites (Nut butter, Ginger).");
    assert_eq!(
        said(present, vec![GINGER]),
        "Contains Peanuts (Nut butter); Sulphites (Nut butter, Ginger). Not stated yet, so it may hold any: Ginger. Check the label of each, and enter it."
    );
}

#[test]
fn each_allergen_has_one_plain_name() {
    let names: Vec<&str> = Allergen::ALL.iter().map(|allergen| words::allergen(*allergen)).collect();
    let expected = [
        "Wheat",
        "Gluten other than wheat",
        "Crustaceans",
        "Eggs",
        "Fish",
        "Peanuts",
        "Soy",
        "Milk",
        "Tree nuts",
        "Celery",
        "Mustard",
        "Sesame",
        "Sulphites",
        "Lupin",
        "Molluscs",
    ];
    assert_eq!(names, expected);
}
