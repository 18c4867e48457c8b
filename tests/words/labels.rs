//! What a label says.

use brimwright::book::{
    Allergen, Book, Edit, Field, Ingredient, IngredientId, Key, Problem, Produce, Record, Refusal, Service,
};
use brimwright::drink::fill::ScaleError;
use brimwright::drink::label::{Allergens, Caution, LabelError, Law, NetContents, NetSource, PercentJuice, UsedAround};
use brimwright::drink::ledger::OfferError;
use brimwright::drink::yields::YieldError;
use brimwright::foundation::measure::{Amount, Currency, Exact, NumberStyle, System, Unit};
use brimwright::say;
use brimwright::words::{self, Speaker};

use crate::{GINGER, book, ounces};

const BUTTER: IngredientId = IngredientId::from_random(2);

#[test]
fn net_contents_are_said_in_both_systems() {
    let said = |number, unit, system, style: &NumberStyle| {
        let volume = Amount::new(number, unit).volume().ok().flatten().expect("a volume");
        let net = NetContents::of(volume, NetSource::Fill).expect("small");
        words::net_contents(&net, &Speaker::new(Currency::USD, system, style.clone()))
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
    // European law asks for the metric figure alone.
    let net = |code, system| {
        let volume = Amount::new(Exact::new(500, 0), Unit::Millilitre).volume().ok().flatten().expect("a volume");
        let net = NetContents::of(volume, NetSource::Fill).expect("small");
        let currency = Currency::from_code(code).expect("a currency");
        words::net_contents(&net, &Speaker::new(currency, system, continental.clone()))
    };
    assert_eq!(net("EUR", System::Metric), "500\u{a0}mL");
    assert_eq!(net("GBP", System::Imperial), "500\u{a0}mL");
    let from = |source| {
        let volume = Amount::new(Exact::new(12, 0), Unit::UsFluidOunce).volume().ok().flatten().expect("a volume");
        let net = NetContents::of(volume, source).expect("small");
        words::net_contents_from(&net, &Speaker::new(Currency::USD, System::UsCustomary, english.clone()))
    };
    assert_eq!(from(NetSource::Declared), "Net 12\u{a0}fl oz (354\u{a0}mL) (labeled size)");
    assert_eq!(from(NetSource::Fill), "Net 12\u{a0}fl oz (354\u{a0}mL) (fill, no labeled size)");
}

#[test]
fn cautions_defer_to_law_and_practice() {
    let book = book();
    let said = |caution| words::caution(&caution, &book);
    assert_eq!(
        said(Caution::FillShortOfDeclared(ounces(50))),
        "The fill is 0.50\u{a0}fl oz below the labeled size. Fill more, or label less: a label may not state more than the package holds."
    );
    let kind = |allergen| said(Caution::NameTheKind(allergen));
    assert_eq!(kind(Allergen::TreeNuts), "Name the kind of nut, such as almonds or cashews.");
    assert_eq!(kind(Allergen::Fish), "Name the kind of fish, such as cod.");
    assert_eq!(kind(Allergen::Crustaceans), "Name the kind of crustacean, such as shrimp.");
    assert_eq!(kind(Allergen::OtherGluten), "Name the grain with gluten, such as rye, barley or oats.");
    assert_eq!(kind(Allergen::Milk), "Name the food that the allergen comes from.");
    assert_eq!(
        said(Caution::AllergensAsInTheBook),
        "Allergens are only as right as what you entered for each ingredient. Check every label, and what shares the blender or press."
    );
    assert_eq!(
        said(Caution::NoLegalAdvice),
        "These numbers are not legal advice. Local codes and licensed professionals decide."
    );
}

const PACKAGED: Option<Service> = Some(Service::PackagedAhead);
const GLASS: Option<Service> = Some(Service::ByTheGlass);

/// Sources. The warning on the label of a package, its place and form: 21 CFR 101.17(g)(2), (4)
/// to (6), text. Purées and drinks with juice in them: (g)(1), (2)(ii), text. By the glass:
/// second-hand. Several states: Washington Administrative Code 246-215-03445 and two more, text.
#[test]
fn a_warning_must_warn() {
    let book = with_butter();
    let said = |caution| words::caution(&caution, &book);
    assert_eq!(
        said(Caution::UntreatedJuice(PACKAGED)),
        "Untreated juice, packaged ahead. In the United States, the label must carry the warning in the box (21 CFR 101.17(g)). Purées and raw fruit or vegetables blended in count as juice. Put the box on the information panel or the principal display panel. Keep WARNING in bold capitals, with hairlines around the statement. Several states ask the same of juice packaged in a shop."
    );
    assert_eq!(
        said(Caution::UntreatedJuice(GLASS)),
        "Untreated juice by the glass. The federal label rule is for packages only. Your state or county may have its own rule: ask your local inspector."
    );
    assert_eq!(
        said(Caution::UntreatedJuice(None)),
        "Untreated juice. If packaged ahead, the label must carry the warning in the box (United States, 21 CFR 101.17(g)). Purées and raw fruit or vegetables blended in count as juice. Put the box on the information panel or the principal display panel. Keep WARNING in bold capitals, with hairlines around the statement. By the glass, the federal label rule does not apply: ask your local inspector. Choose how the drink is sold above."
    );
    let raw = "Needs: ingredient type for Ginger, Nut butter. If raw fruit or vegetable, the package must carry the warning in the box (US, 21 CFR 101.17(g)). Set this in Buying.";
    for service in [None, PACKAGED] {
        assert_eq!(said(Caution::JuiceNotSaid(service, vec![GINGER, BUTTER])), raw);
    }
    assert_eq!(
        said(Caution::JuiceNotSaid(GLASS, vec![BUTTER])),
        "Needs: ingredient type for Nut butter. If raw fruit or vegetable, the drink counts as untreated juice. Set this in Buying."
    );
}

/// The three of the statement (21 CFR 101.17(g)(2)), and pregnancy. Places that serve them: FDA
/// Food Code 3-801.11, second-hand.
#[test]
fn who_is_at_risk_is_named() {
    let book = book();
    let said = |caution| words::caution(&caution, &book);
    let at_risk = "Untreated juice can make children, older or pregnant people and people with weak immune systems seriously ill.";
    assert_eq!(said(Caution::AtRisk(None)), at_risk);
    assert_eq!(said(Caution::AtRisk(GLASS)), at_risk);
    let packaged = format!(
        "{at_risk} Packaged untreated juice is not for places that serve them, such as schools, hospitals and care homes."
    );
    assert_eq!(said(Caution::AtRisk(PACKAGED)), packaged);
}

/// 21 CFR 120.3(l), 120.24, text; that some states end the exemption at any amount, second-hand.
#[test]
fn selling_to_another_business_asks_for_more_than_a_warning() {
    assert_eq!(
        words::caution(&Caution::SoldToABusiness, &book()),
        "In the United States, selling juice to another business makes you a processor. All of your juice then needs a HACCP plan and a 5-log treatment (21 CFR 120.3(l), 120.24). The warning on the label does not replace them. Some states ask for both at any amount."
    );
}

/// FDA, Guidance for Industry: Refrigerated Carrot Juice and Other Refrigerated Low-Acid Juices,
/// June 2007, text. The pH of carrots: FDA list, second-hand; of ginger from memory.
#[test]
fn low_acid_juice_is_kept_cold() {
    let mut book = with_butter();
    let carrots = IngredientId::from_random(3);
    book.apply(&Edit::Put(Record::Ingredient(Ingredient::named(carrots, "Carrots")))).expect("an ingredient holds");
    let said = |caution| words::caution(&caution, &book);
    let cold = "Low-acid juice must be kept refrigerated, treated or not. Kept warm, the juice can cause botulism, which can kill (FDA guidance for processors, June 2007).";
    assert_eq!(
        said(Caution::PublishedLowAcid(vec![carrots, GINGER])),
        format!(
            "This juice may be low-acid, by published pH: Carrots 5.88 to 6.40 (FDA list of pH), Ginger 5.60 to 5.90 (source not checked). Above 4.6 is low-acid: measure the drink. {cold}"
        )
    );
    assert_eq!(
        said(Caution::MeasuredLowAcid(Exact::new(59, 1))),
        format!("Low-acid juice: the pH is 5.9, above 4.6. {cold}")
    );
    assert_eq!(
        said(Caution::AcidityNotKnown(vec![BUTTER])),
        format!("No pH is known for Nut butter. Measure the drink: above 4.6 is low-acid. {cold}")
    );
}

#[test]
fn how_a_drink_is_kept() {
    let said = |cold, days: Option<i64>, made: Option<&str>| {
        let mut drink = crate::support::drink(1, "1 L", []);
        (drink.keep_refrigerated, drink.keeps_days) = (cold, days.map(|days| Exact::new(days, 0)));
        words::keeping(&drink, made.map(crate::support::day))
    };
    assert_eq!(said(false, None, None), "");
    assert_eq!(said(false, None, Some("2026-11-27")), "", "no days are guessed");
    assert_eq!(said(true, None, Some("2026-11-27")), "Keep refrigerated.");
    assert_eq!(said(true, Some(3), None), "Keep refrigerated. Use within 3 days of making.");
    assert_eq!(said(true, Some(3), Some("2026-11-27")), "Keep refrigerated. Use by Nov 30, 2026.");
    assert_eq!(said(false, Some(1), None), "Use within 1 day of making.");
    assert_eq!(said(false, Some(0), None), "Use on the day made.");
    assert_eq!(said(false, Some(0), Some("2026-12-31")), "Use by Dec 31, 2026.");
    assert_eq!(
        say!(labels::has_a_fill_target),
        "This size has a fill target, so it is packaged ahead. Remove the fill target first."
    );
    assert_eq!(
        say!(labels::warning_sheet),
        "For packages of untreated juice in the United States (21 CFR 101.17(g)). Put the box on the information panel or the principal display panel. Local codes may ask for more."
    );
    assert_eq!(say!(labels::storage_not_entered), "Not entered. Follow your food-safety plan.");
}

#[test]
fn choices_of_juice_are_named() {
    let us = Law::UnitedStates;
    let produce = [None, Some(Produce::Raw), Some(Produce::Treated), Some(Produce::Neither)];
    let produce = produce.map(|produce| words::produce(produce, us));
    let expected = [
        "Not answered yet",
        "Raw fruit, vegetable, juice or purée",
        "Treated (5-log), such as pasteurized juice",
        "Not fruit or vegetable",
    ];
    assert_eq!(produce, expected);
    let treated = [false, true].map(|treated| words::treatment(treated, us));
    assert_eq!(treated, ["Not treated", "Treated (5-log, such as HPP)"]);
    // 5-log is a figure of the United States.
    assert_eq!(words::treatment(true, Law::European), "Treated, such as HPP");
    assert_eq!(words::produce(Some(Produce::Treated), Law::European), "Treated, such as pasteurized juice");
    assert_eq!([false, true].map(words::keep_refrigerated), ["Not entered", "Keep refrigerated"]);
    assert_eq!([None, PACKAGED, GLASS].map(words::service), ["Not answered yet", "Packaged ahead", "By the glass"]);
}

#[test]
fn what_a_label_lacks() {
    let book = book();
    let said = |error| words::label_error(&error, &book);
    assert_eq!(
        said(LabelError::Mass(YieldError::NoDensity(GINGER))),
        "Labels list ingredients by weight. Needs: weight of one cup of Ginger in the drink."
    );
    assert_eq!(
        said(LabelError::Mass(YieldError::NoJuiceDensity(GINGER))),
        "Labels list ingredients by weight. Needs: weight of one cup of Ginger juice."
    );
    assert_eq!(
        said(LabelError::Mass(YieldError::NoPieceWeight(GINGER))),
        "Needs: weight per piece of Ginger. Weigh one as purchased."
    );
    let drink = brimwright::book::DrinkId::from_random(1);
    let no_lines = LabelError::Offer(OfferError::Scale(ScaleError::NoLines(drink)));
    assert_eq!(said(no_lines), "The recipe is empty. Add an ingredient.");
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
    let said =
        |present, not_stated| words::allergens(&Allergens { present, not_stated, ..Allergens::default() }, &book);
    assert_eq!(said(vec![], vec![]), "None of the allergens that must be named, as far as your book says.");
    let empty = Allergens { nothing_in_it: true, ..Allergens::default() };
    assert_eq!(words::allergens(&empty, &book), "The recipe is empty.");
    assert_eq!(
        said(vec![], vec![GINGER, BUTTER]),
        "Not checked, so the drink may contain any allergen: Ginger, Nut butter. Check each label and mark what you find."
    );
    let present = vec![(Allergen::Peanuts, vec![BUTTER]), (Allergen::Sulphites, vec![BUTTER, GINGER])];
    assert_eq!(said(present.clone(), vec![]), "Contains Peanuts (Nut butter); Sulfites (Nut butter, Ginger).");
    assert_eq!(
        said(present, vec![GINGER]),
        "Not checked, so the drink may contain any allergen: Ginger. Check each label and mark what you find. Contains Peanuts (Nut butter); Sulfites (Nut butter, Ginger)."
    );
}

#[test]
fn beside_none_stands_what_is_used_around() {
    let book = with_butter();
    let around = |held: &[Allergen], not_all_stated| UsedAround { held: held.to_vec(), not_all_stated };
    let used = [Allergen::Peanuts, Allergen::Milk, Allergen::TreeNuts];
    let three = "Made where these are used: Peanuts, Milk, Tree nuts.";
    assert_eq!(words::used_around(&around(&used, false)), three);
    assert_eq!(words::used_around(&around(&used[..2], false)), "Made where these are used: Peanuts, Milk.");
    assert_eq!(words::used_around(&around(&used[1..2], false)), "Made where these are used: Milk.");
    assert_eq!(words::used_around(&around(&used[2..], false)), "Made where these are used: Tree nuts.");
    assert_eq!(words::used_around(&around(&[], false)), "");
    assert_eq!(words::used_around(&around(&[], true)), "You also use ingredients that are not checked yet.");
    let said = |present: Vec<(Allergen, Vec<IngredientId>)>, used_around| {
        words::allergens(&Allergens { present, used_around, ..Allergens::default() }, &book)
    };
    assert_eq!(
        said(vec![], around(&used, true)),
        format!(
            "None of the allergens that must be named, as far as your book says. {three} You also use ingredients that are not checked yet."
        )
    );
    // Beside what it holds too: who must not have peanuts reads "Contains Sesame" as safe.
    assert_eq!(
        said(vec![(Allergen::Sesame, vec![BUTTER])], around(&used, false)),
        "Contains Sesame (Nut butter). Made where these are used: Peanuts, Milk, Tree nuts."
    );
}

#[test]
fn a_mixture_whose_parts_name_more_is_asked_about() {
    let more = Allergens { parts_name_more: vec![BUTTER], ..Allergens::default() };
    assert_eq!(
        words::allergens(&more, &with_butter()),
        "The ingredients of a mixture name an allergen that is not marked: Nut butter. Mark the allergen."
    );
    assert_eq!(words::allergens_by_law(&more, Law::UnitedStates), "Not checked");
}

/// Celery is none of the nine of the United States, yet who asks whether it is in a drink is told.
#[test]
fn what_is_marked_is_said_whatever_the_law() {
    let of = |found: &[Allergen], not_stated: Vec<IngredientId>| Allergens {
        present: found.iter().map(|it| (*it, vec![GINGER])).collect(),
        not_stated,
        ..Allergens::default()
    };
    let celery = of(&[Allergen::Celery], Vec::new());
    assert_eq!(words::allergens_marked(&celery), "Celery");
    assert_eq!(words::allergens_by_law(&celery, Law::UnitedStates), "None");
    // The card says which list it is not on, so that it fits the label's "None".
    let book = with_butter();
    assert_eq!(words::allergens(&celery, &book), "Contains Celery (Ginger) (not on the US list).");
    assert_eq!(
        words::allergens(&of(&[Allergen::Milk, Allergen::Celery], Vec::new()), &book),
        "Contains Milk (Ginger). Contains Celery (Ginger) (not on the US list)."
    );
    assert_eq!(words::allergens_marked(&of(&[Allergen::Milk, Allergen::Celery], Vec::new())), "Milk, Celery");
    assert_eq!(words::allergens_marked(&of(&[], Vec::new())), "None");
    assert_eq!(words::allergens_marked(&of(&[], vec![GINGER])), "Not checked");
    // Who reads only the fold must not take "Milk" for all that is in it.
    assert_eq!(words::allergens_marked(&of(&[Allergen::Milk], vec![GINGER])), "Milk · 1 not checked");
    let mixture = Allergens { parts_not_known: vec![GINGER, BUTTER], ..of(&[Allergen::Milk], vec![GINGER]) };
    assert_eq!(words::allergens_marked(&mixture), "Milk · 2 not checked");
}

#[test]
fn what_is_not_among_the_nine_is_not_hidden() {
    let of = |found: &[Allergen]| {
        let present = found.iter().map(|it| (*it, vec![GINGER])).collect();
        words::besides_the_nine(&Allergens { present, ..Allergens::default() })
    };
    assert_eq!(of(&[Allergen::OtherGluten, Allergen::Milk, Allergen::Celery]), "Gluten other than wheat, Celery");
    // Sulfites are declared in a line of their own.
    assert_eq!(of(&[Allergen::Milk, Allergen::Sulphites]), "");
}

#[test]
fn nuts_are_named_and_mixtures_that_nobody_opened_say_so() {
    let book = with_butter();
    let nuts = Allergens {
        present: vec![(Allergen::Milk, vec![GINGER]), (Allergen::TreeNuts, vec![BUTTER])],
        nuts: vec!["almonds".into(), "cashews".into()],
        ..Allergens::default()
    };
    assert_eq!(words::allergens(&nuts, &book), "Contains Milk (Ginger); Tree nuts: almonds, cashews (Nut butter).");
    let mixed = Allergens { parts_not_known: vec![BUTTER], ..Allergens::default() };
    assert_eq!(
        words::allergens(&mixed, &book),
        "Mixture not known, so the drink may contain more: Nut butter. Read the label and enter the ingredients."
    );
    let at = |field, problem| words::refusal(&Refusal::Field { key: Key::Ingredient(BUTTER), field, problem }, &book);
    assert_eq!(at(Field::Nuts, Problem::TooLong), "Which nuts: over 80 letters. Shorten the text.");
    assert_eq!(at(Field::Parts, Problem::LongerThanALabel), "Ingredients in mix: over 400 letters. Shorten the text.");
    assert_eq!(at(Field::SoldAs, Problem::TooLong), "Name on labels: over 80 letters. Shorten the text.");
}

/// FDA, January 2025: 12 nuts, second-hand, the twelve from memory. European Union: Regulation (EU)
/// No 1169/2011, Annex II, point 8, and notice 2017/C 428, text.
#[test]
fn what_counts_as_a_nut_is_said_by_law_and_year() {
    assert_eq!(
        words::tree_nuts(Law::UnitedStates),
        "United States, 12 nuts (FDA, January 2025). Almond, Brazil nut, cashew, hazelnut, macadamia, pecan, pine nut, pistachio, walnut. Also black walnut, California walnut and heartnut. Coconut, chestnut and shea no longer count."
    );
    assert_eq!(
        words::tree_nuts(Law::European),
        "European Union, 8 nuts and no others (2017/C 428). Almond, Brazil nut, cashew, hazelnut, macadamia, pecan, pistachio, walnut. Pine nuts do not count in the EU."
    );
}

#[test]
fn each_allergen_has_one_plain_name() {
    let names: Vec<&str> = Allergen::ALL.iter().map(|it| words::allergen(*it)).collect();
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
        "Sulfites",
        "Lupin",
        "Mollusks",
    ];
    assert_eq!(names, expected);
}

/// The lists: United States by "Contains", 21 U.S.C. 343(w)(1)(A), with the kind of nut, (w)(2);
/// European Union: the names of Annex II, second-hand.
#[test]
fn a_law_lists_its_own_allergens() {
    let said = |present: &[Allergen], change: fn(&mut Allergens), law| {
        let present = present.iter().map(|it| (*it, vec![GINGER])).collect();
        let mut allergens =
            Allergens { present, nuts: vec!["almonds".into(), "cashews".into()], ..Allergens::default() };
        change(&mut allergens);
        words::allergens_by_law(&allergens, law)
    };
    let both = [Allergen::Milk, Allergen::TreeNuts, Allergen::Celery];
    assert_eq!(said(&both, |_| (), Law::UnitedStates), "Milk, Tree nuts (almonds, cashews)");
    assert_eq!(said(&both, |_| (), Law::European), "Milk, Nuts (almonds, cashews), Celery");
    assert_eq!(said(&both, |it| it.nuts.clear(), Law::UnitedStates), "Milk, Tree nuts");
    assert_eq!(said(&both[2..], |_| (), Law::UnitedStates), "None");
    let around = |it: &mut Allergens| it.used_around.held.push(Allergen::Molluscs);
    assert_eq!(said(&[], around, Law::European), "None. Made where these are used: Mollusks.");
    assert_eq!(said(&[], around, Law::UnitedStates), "None. Made where these are used: Mollusks.");
    assert_eq!(said(&[], |it| it.not_stated.push(BUTTER), Law::European), "Not checked");
    assert_eq!(said(&[], |it| it.parts_not_known.push(BUTTER), Law::European), "Not checked");
    assert_eq!(said(&[], |it| it.nothing_in_it = true, Law::European), "None marked so far");
}

/// The percentage: 21 CFR 101.30, text; the name: 21 CFR 102.33(a), text.
#[test]
fn percent_juice_and_what_the_name_needs() {
    let book = with_butter();
    let said = |juice| words::percent_juice(&juice, &book);
    let percent = |number| said(PercentJuice::Percent(Exact::new(number, 0)));
    assert_eq!([percent(100), percent(99)], ["Contains 100% juice.", "Contains 99% juice."]);
    assert_eq!(said(PercentJuice::LessThanOne), "Contains less than 1% juice.");
    let needs = "Under 100% juice, a name with “juice” also needs “drink” or “beverage” (21 CFR 102.33).";
    let name = |number| words::name_with_juice(&PercentJuice::Percent(Exact::new(number, 0)));
    assert_eq!([name(1), name(99), name(100)], [needs, needs, ""]);
    assert_eq!(words::name_with_juice(&PercentJuice::LessThanOne), needs);
    let none = [PercentJuice::None, PercentJuice::NotSaid(Vec::new())];
    assert_eq!(none.each_ref().map(words::name_with_juice), ["", ""]);
    assert_eq!(said(PercentJuice::None), "No juice");
    assert_eq!(
        said(PercentJuice::NotSaid(vec![GINGER, BUTTER])),
        "Needs: ingredient type for Ginger, Nut butter, such as raw fruit. Set this in Buying."
    );
    assert_eq!(
        say!(labels::how_juice_is_counted),
        "Percent juice is by volume, rounded down (21 CFR 101.30). Purées count. Enter concentrate mixed: the juice made from it counts."
    );
}

/// Weight for what is viscous: 21 CFR 101.7(a), text. Not repeated: notice 2017/C 428, 3.5, text.
#[test]
fn what_is_not_for_every_drink_is_said_in_a_line() {
    assert_eq!(
        say!(labels::thick),
        "Thick, or eaten with a spoon? In the United States, state the weight, not the volume (21 CFR 101.7(a))."
    );
    assert_eq!(
        say!(labels::by_the_glass),
        "Sold by the glass, so no label is needed. Use these facts for the menu and for questions."
    );
    assert_eq!(say!(labels::size_includes_ice), "Includes the ice");
    assert_eq!(
        say!(labels::not_repeated),
        "Shown in capitals in the ingredients. The label does not repeat them as “Contains” (2017/C 428, 3.5)."
    );
}

/// FDA, Small Business Nutrition Labeling Exemption Guide (May 2007), text: retailers of "not more
/// than $500,000" gross sales or "not more than $50,000" of food, no notice; "fewer than an average
/// of 100 full-time equivalent employees and fewer than 100,000 units", a notice each year. A claim
/// ends it: FDA, Small Business Food Labeling Exemption (July 2002), text. The rest from memory.
#[test]
fn what_a_label_needs_besides_is_a_short_list() {
    let us = [
        "The name of the food, on the principal display panel (21 CFR 101.3).",
        "Your business name and address (21 CFR 101.5).",
        "Nutrition facts: none are made here. Some small businesses are exempt.",
        "Exempt: retailers that sell up to $500,000 a year, or $50,000 of food (21 CFR 101.9(j)(1)).",
        "Also exempt: under 100 employees and 100,000 units a year. FDA needs a yearly notice (101.9(j)(18)).",
        "A nutrition or health claim ends the exemption.",
        "The date, and how to store the drink. Follow your food-safety plan and your state.",
        "The deposit mark, if your state takes deposits.",
        "Type sizes and places: at least 1/16 inch (21 CFR 101.2(c), 101.7).",
    ];
    assert_eq!(words::also_needed(Law::UnitedStates), us);
    let european = [
        "The name of the food (Regulation 1169/2011, Art. 17).",
        "Your business name and address (Art. 9(1)(h)).",
        "Nutrition declaration: none is made here (Art. 30).",
        "Exempt: small amounts, sold directly or to local shops (Annex V, 19).",
        "A nutrition or health claim ends the exemption.",
        "The date, and how to store the drink. Follow your food-safety plan.",
        "The deposit mark, if your country takes deposits.",
        "Type size: letters at least 1.2 mm tall, measured as an x (Art. 13(2)).",
    ];
    assert_eq!(words::also_needed(Law::European), european);
}

/// Sulfites "at 10 ppm or more": 21 CFR 101.100(a)(4), text. "More than 10 mg/kg or 10 mg/litre":
/// Regulation (EU) No 1169/2011, Annex II, point 12, text.
#[test]
fn sulfites_are_declared_too() {
    assert_eq!(words::allergen_to_mark(Allergen::Sulphites, Law::UnitedStates), "Sulfites, 10 ppm or more");
    assert_eq!(words::allergen_to_mark(Allergen::Sulphites, Law::European), "Sulfites, over 10 mg/kg");
    assert_eq!(words::allergen_to_mark(Allergen::Milk, Law::European), "Milk");
    let book = with_butter();
    let said = |present| words::also_declare(&Allergens { present, ..Allergens::default() }, &book);
    assert_eq!(said(vec![(Allergen::Celery, vec![GINGER])]), "");
    assert_eq!(
        said(vec![(Allergen::Milk, vec![BUTTER]), (Allergen::Sulphites, vec![GINGER, BUTTER])]),
        "Sulfites, at 10 ppm or more in the drink (21 CFR 101.100(a)(4)): Ginger, Nut butter"
    );
}
