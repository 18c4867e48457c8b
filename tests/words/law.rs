//! Whose law is spoken of: that of the book's country, and not the other one. A fill rule is chosen
//! and says whose it is, so it is not looked at here.

use brimwright::book::{Allergen, Book, Drink, DrinkKind, Edit, Offer, Produce, Record, Service, Settings};
use brimwright::drink::label::{Caution, Facts, Law, allergens_of, facts};
use brimwright::exchange::read;
use brimwright::foundation::measure::{Currency, Exact};
use brimwright::words::{self, Run, counter};

use crate::support::speaker;

const DEMO: &str = include_str!("../../public/books/marrowgate-juice-hall.json");

/// Words of the law of the United States, in small letters.
const AMERICAN: [&str; 14] = [
    "cfr",
    "u.s.",
    "united states",
    "(us, ",
    "fda",
    "haccp",
    "5-log",
    "nist",
    "federal",
    "states",
    "county",
    "inspector",
    "not been pasteurized",
    "display panel",
];

/// Words of the law of the European Union and the United Kingdom, in small letters.
const EUROPEAN: [&str; 13] = [
    "eu and uk",
    "european",
    "directive",
    "regulation",
    "1169/2011",
    "eec",
    "2017/c",
    "annex",
    "art. ",
    "fpackv",
    "sulphite",
    "mollusc",
    "soya",
];

fn words_of(law: Law) -> &'static [&'static str] {
    match law {
        Law::UnitedStates => &AMERICAN,
        Law::European => &EUROPEAN,
    }
}

/// The demo book in a money, its drinks served in a way; one ingredient holds all allergens.
fn demo(money: &str, service: Option<Service>) -> Book {
    let mut book = read(DEMO).expect("the demo book");
    let currency = Currency::from_code(money).expect("a currency");
    let mut edits = vec![Edit::Put(Record::Settings(Box::new(Settings { currency, ..book.settings().clone() })))];
    let offers = book.offers().cloned().collect::<Vec<Offer>>();
    edits.extend(offers.into_iter().map(|offer| Edit::Put(Record::Offer(Offer { service, filling: None, ..offer }))));
    let mut all = book.ingredients().next().expect("an ingredient").clone();
    all.allergens = Some(Allergen::ALL.to_vec());
    edits.push(Edit::Put(Record::Ingredient(all)));
    for edit in edits {
        book.apply(&edit).expect("it holds");
    }
    book
}

/// Every caution that exists, whether the demo book has it or not.
fn all_cautions(book: &Book, service: Option<Service>) -> Vec<Caution> {
    let ids: Vec<_> = book.ingredients().map(|it| it.id).collect();
    let mut all = vec![
        Caution::UntreatedJuice(service),
        Caution::JuiceNotSaid(service, ids.clone()),
        Caution::AtRisk(service),
        Caution::SoldToABusiness,
        Caution::MeasuredLowAcid(Exact::new(59, 1)),
        Caution::PublishedLowAcid(ids.clone()),
        Caution::AcidityNotKnown(ids),
        Caution::FillShortOfDeclared(crate::ounces(50)),
        Caution::AllergensAsInTheBook,
        Caution::NoLegalAdvice,
    ];
    all.extend(Allergen::ALL.iter().map(|it| Caution::NameTheKind(*it)));
    all
}

/// What the page of a label says, without its fold for the other law, and the card of the drink.
fn label(book: &Book, drink: &Drink, facts: &Facts, law: Law) -> Vec<String> {
    let speaker = speaker(book.settings().units);
    let mut said = vec![
        words::allergens(&allergens_of(book, drink), book),
        words::allergens_by_law(&facts.allergens, law),
        words::weight_if_thick(drink.kind, law).to_string(),
        words::how_juice_is_counted(law).to_string(),
        words::label_facts_about(law).to_string(),
        words::keeping(drink, None),
    ];
    if let Some(Ok(package)) = &facts.package {
        let list = words::ingredient_list(&package.ingredients, drink, book, law, &speaker);
        said.push(list.into_iter().map(|run: Run| run.text).collect());
        said.push(words::net_contents_from(&package.net, &speaker));
    }
    if law == Law::UnitedStates {
        said.push(words::besides_the_nine(&facts.allergens));
        said.push(words::also_declare(&facts.allergens, book));
    }
    said.extend(facts.cautions.iter().map(|it| words::caution(it, book)));
    said.extend(facts.cautions.iter().filter_map(|it| counter::counter_caution(it, book)));
    said
}

/// All that a book says of labels, allergens and cautions, and how many labels those are.
fn said(money: &str) -> (Law, Vec<String>, usize) {
    let (mut all, mut labels) = (Vec::new(), 0);
    let law = Law::of(demo(money, None).settings());
    for service in [None, Some(Service::PackagedAhead), Some(Service::ByTheGlass)] {
        let book = demo(money, service);
        for offer in book.offers() {
            let drink = book.drink(offer.drink).expect("a drink");
            let facts = facts(&book, offer).expect("facts");
            assert_eq!(facts.cautions.last(), Some(&Caution::NoLegalAdvice));
            all.extend(label(&book, drink, &facts, law));
            labels += 1;
        }
        for caution in all_cautions(&book, service) {
            all.push(words::caution(&caution, &book));
            all.extend(counter::counter_caution(&caution, &book));
        }
    }
    all.extend(Allergen::ALL.iter().map(|it| words::allergen(*it).to_string()));
    all.extend(Allergen::ALL.iter().map(|it| words::allergen_to_mark(*it, law).to_string()));
    all.extend(words::also_needed(law));
    let sources = words::tolerance_rules(law).iter().map(|rule| words::tolerance_source(*rule));
    all.extend(sources.map(str::to_string));
    all.extend([words::tree_nuts(law), words::warning_sheet(law), words::sold_to_a_business(law)].map(str::to_string));
    all.push(words::book_cautions(law));
    (law, all, labels)
}

fn found<'a>(said: &'a [String], words: &[&str]) -> Vec<&'a String> {
    said.iter().filter(|text| words.iter().any(|word| text.to_lowercase().contains(word))).collect()
}

#[test]
fn a_book_speaks_of_the_law_of_its_country_alone() {
    for (money, law) in [("USD", Law::UnitedStates), ("EUR", Law::European), ("GBP", Law::European)] {
        let (of_the_book, said, labels) = said(money);
        assert_eq!(of_the_book, law);
        assert!(labels > 100, "{labels} labels");
        let none: Vec<&String> = Vec::new();
        assert_eq!(found(&said, words_of(law.other())), none, "{money}");
        // Its own is spoken of, so that the words above are those that are said.
        assert!(!found(&said, words_of(law)).is_empty(), "{money}");
        let decides = ["Local codes and licensed professionals decide."];
        assert!(decides.iter().all(|it| said.iter().any(|text| text.contains(it))), "{money}");
    }
}

#[test]
fn each_word_of_a_law_is_said_where_it_holds() {
    for (money, law) in [("USD", Law::UnitedStates), ("EUR", Law::European)] {
        let said = said(money).1;
        // Of fill rules and of the fold for the other law, which are not said above.
        let elsewhere = ["u.s.", "nist", "not been pasteurized", "eu and uk", "directive", "annex", "fpackv"];
        for word in words_of(law).iter().filter(|word| !elsewhere.contains(word)) {
            assert!(!found(&said, &[word]).is_empty(), "{word} is not said in {money}");
        }
    }
}

/// Food hygiene (Regulation (EC) No 852/2004, from memory) asks for cold and a plan; no law is named.
#[test]
fn a_european_book_is_cautioned_of_untreated_juice() {
    let book = demo("EUR", None);
    let said = |caution| words::caution(&caution, &book);
    let at_the_counter = |caution| counter::counter_caution(&caution, &book);
    let at_risk = "Untreated juice can make children, older or pregnant people and people with weak immune systems seriously ill.";
    for service in [None, Some(Service::PackagedAhead), Some(Service::ByTheGlass)] {
        assert_eq!(
            said(Caution::UntreatedJuice(service)),
            "Untreated juice. Keep the juice cold and follow your food-safety plan. Your local authority decides what you must tell customers."
        );
        assert_eq!(
            at_the_counter(Caution::UntreatedJuice(service)).as_deref(),
            Some(
                "Untreated juice: keep cold and follow the food-safety plan. Ask your manager what to tell customers."
            )
        );
        assert!(!Caution::UntreatedJuice(service).asks_for_the_warning(Law::European));
        assert_eq!(
            said(Caution::JuiceNotSaid(service, vec![brimwright::book::IngredientId::from_random(1)])),
            "Needs: ingredient type for Apples. If raw fruit or vegetable, the drink counts as untreated juice. Set this in Buying."
        );
    }
    assert_eq!(said(Caution::AtRisk(None)), at_risk);
    assert_eq!(
        said(Caution::AtRisk(Some(Service::PackagedAhead))),
        format!(
            "{at_risk} Schools, hospitals and care homes serve such people: ask your local authority before you sell there."
        )
    );
    let sold = "Selling juice to another business? More rules may apply: ask your local authority first.";
    assert_eq!([&*said(Caution::SoldToABusiness), words::sold_to_a_business(Law::European)], [sold; 2]);
    assert_eq!(
        said(Caution::MeasuredLowAcid(Exact::new(59, 1))),
        "Low-acid juice: the pH is 5.9, above 4.6. Low-acid juice must be kept refrigerated, treated or not. Kept warm, the juice can cause botulism, which can kill."
    );
    assert_eq!(
        words::book_cautions(Law::European),
        "Keep untreated juice cold and follow your food-safety plan. Your local authority decides what its label must say. Low-acid juice must be kept refrigerated. Allergens are only as right as what you enter. Nothing here is legal, tax or food-safety advice. Local codes and licensed professionals decide."
    );
    assert_eq!(
        words::warning_sheet(Law::European),
        "Your book has no warning to print. Your local authority decides what your label must say."
    );
}

#[test]
fn what_one_law_alone_asks_is_not_said_under_the_other() {
    assert_eq!(words::label_facts_about(Law::European), "Facts to copy to your label.");
    assert_eq!(
        words::label_facts_about(Law::UnitedStates),
        "Facts for your label. Only the warning is ready to print."
    );
    let thick = |kind, law| words::weight_if_thick(kind, law).is_empty();
    assert!(!thick(DrinkKind::Blended, Law::UnitedStates));
    assert!(thick(DrinkKind::Pressed, Law::UnitedStates) && thick(DrinkKind::Blended, Law::European));
    assert_eq!(words::how_juice_is_counted(Law::European), "");
    assert_eq!(
        [Law::UnitedStates, Law::European].map(words::where_it_holds),
        ["In the United States", "In the EU and UK"]
    );
    let rules = |law| words::tolerance_rules(law).iter().map(|it| words::tolerance_source(*it)).collect::<Vec<_>>();
    assert_eq!(rules(Law::UnitedStates), ["OIML R 138, 5.1.1"; 2]);
    let directives =
        ["Directive 76/211/EEC, Annex I, 2.4. On average, no shortage is allowed.", "Directive 75/107/EEC, Annex I"];
    assert_eq!(rules(Law::European)[..2], directives);
    assert_eq!(rules(Law::European)[2..], rules(Law::UnitedStates));
}

/// In the United States the nine, and sulfites; what else is in it is not hidden.
#[test]
fn a_card_names_what_the_law_names_first() {
    let card = |money, present: &[Allergen]| {
        let mut book = demo(money, None);
        let mut part = book.ingredients().next().expect("an ingredient").clone();
        part.allergens = Some(present.to_vec());
        part.produce = Some(Produce::Raw);
        let drink = crate::support::drink(99, "16 fl oz", [crate::support::line(1, 1, "16 fl oz")]);
        for record in [Record::Ingredient(part), Record::Drink(drink.clone())] {
            book.apply(&Edit::Put(record)).expect("it holds");
        }
        let said = words::allergens(&allergens_of(&book, &drink), &book);
        said.split(" Made where").next().unwrap_or_default().to_string()
    };
    let some = [Allergen::Milk, Allergen::Celery, Allergen::Sulphites, Allergen::Molluscs];
    let [named, besides] = ["Milk (Apples); Sulfites (Apples)", "Celery (Apples); Mollusks (Apples)"];
    assert_eq!(card("USD", &some), format!("Contains {named}. Contains {besides} (not on the US list)."));
    assert_eq!(card("EUR", &some), "Contains Milk (Apples); Celery (Apples); Sulfites (Apples); Mollusks (Apples).");
    assert_eq!(card("USD", &[Allergen::Celery]), "Contains Celery (Apples) (not on the US list).");
    assert_eq!(card("USD", &[Allergen::Milk]), "Contains Milk (Apples).");
}

#[test]
fn the_tax_on_sales_is_called_as_where_the_book_is() {
    use brimwright::book::{Tax, TaxPlace};
    use brimwright::foundation::measure::{NumberStyle, System};
    let names = |law| [words::sales_tax(law), words::sales_tax_rate(law)];
    assert_eq!(names(Law::UnitedStates), ["Sales tax", "Sales tax rate"]);
    assert_eq!(names(Law::European), ["VAT or tax", "VAT rate"]);
    let said = |code, place, rate| {
        let currency = Currency::from_code(code).expect("a currency");
        let speaker = words::Speaker::new(currency, System::Metric, NumberStyle::english(""));
        words::tax(&[Tax { place, rate: crate::support::share(rate) }], &speaker)
    };
    assert_eq!(said("USD", TaxPlace::AddedAtTheTill, "0.065"), "Sales tax of 6.5% is added at the register.");
    assert_eq!(said("EUR", TaxPlace::InThePrice, "0.19"), "Prices include 19% VAT or tax.");
    for (place, rate) in
        [(TaxPlace::InThePrice, "0.19"), (TaxPlace::AddedAtTheTill, "0.19"), (TaxPlace::InThePrice, "0")]
    {
        let said = said("EUR", place, rate);
        assert!(!said.to_lowercase().contains("sales tax") && said.contains("VAT"), "{said}");
    }
}
