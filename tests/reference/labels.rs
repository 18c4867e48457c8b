//! Label facts against laws and published weights.

use brimwright::book::{Container, Drink, DrinkId, DrinkKind, Ingredient, Line, Record, Stage};
use brimwright::drink::fill::scale;
use brimwright::drink::label::{Caution, ListedAs, NetContents, NetSource, PercentJuice, facts};
use brimwright::exchange;
use brimwright::foundation::measure::{System, Volume};
use brimwright::say;
use brimwright::words::{label_error, net_contents};

use crate::sr28::juice_density;
use crate::support::{
    amount, book, container, drink, exact, ingredient, ingredient_id, line, offer, settings, share, speaker,
};

/// The statement of net contents, with plain blanks.
fn stated(typed: &str, units: System) -> String {
    let volume = amount(typed).volume().unwrap().unwrap();
    let net = NetContents::of(volume, NetSource::Declared).unwrap();
    net_contents(&net, &speaker(units)).replace('\u{a0}', " ")
}

#[test]
fn net_contents_are_in_the_form_of_the_rule() {
    // 21 CFR 101.7(m), examples from memory: "Net 32 fl. oz. (1 qt.)"; "Net 56 fluid oz. (1 qt.
    // 1 pt. 8 oz.)" and not quarts and ounces; "Net contents 2 gal. 2 qt." and not "2 gallons 4
    // pints". The metric figure beside them: 15 U.S.C. 1453(a)(2).
    assert_eq!(stated("1 qt", System::UsCustomary), "Net 32 fl oz (1 qt) 946 mL");
    assert_eq!(stated("1.75 qt", System::UsCustomary), "Net 56 fl oz (1 qt 1 pt 8 fl oz) 1.65 L");
    assert_eq!(stated("2.5 gal", System::UsCustomary), "Net 2 gal 2 qt (9.46 L)");
}

#[test]
fn the_metric_figure_has_three_digits_and_no_more_than_there_is() {
    // 16 CFR 500.19(a): 1 fluid ounce = 29.5735 mL, 1 liquid pint = 473.177 mL, 1 liquid quart =
    // 946.353 mL, 1 gallon = 3.78541 L; (b): three digits, two below 100 mL. NIST, Fact Sheet on
    // Metric Labeling for Consumer Packages: "In no case shall rounded net contents declarations
    // overstate a quantity".
    for (typed, metric) in [("1 fl oz", "29 mL"), ("1 pt", "473 mL"), ("1 qt", "946 mL"), ("1 gal", "3.78 L")] {
        assert_eq!(stated(typed, System::Metric).split(" (").next(), Some(metric), "{typed}");
    }
}

#[test]
fn the_warning_is_the_laws() {
    // U.S. Food and Drug Administration, Guidance for Industry, Warning and Notice Statement:
    // Labeling of Juice Products, Small Entity Compliance Guide (18 September 1998), after
    // 21 CFR 101.17(g); the same words in Washington Administrative Code 246-215-03445.
    let law = concat!(
        "WARNING: This product has not been pasteurized and, therefore, may contain harmful bacteria that can ",
        "cause serious illness in children, the elderly, and persons with weakened immune systems."
    );
    assert_eq!(say!(labels::untreated_juice_warning), law);
}

#[test]
fn a_juice_weighs_what_its_cups_weigh() {
    // USDA SR28: a cup of apple juice weighs 248 g, of carrot juice 236 g, of lemon juice 244 g.
    // A cup of carrot, a cup of apple and half a cup of lemon fill 20 fl oz and weigh 606 g.
    let juice = |id, key| {
        let press_yield = Some(share("0.5"));
        Record::Ingredient(Ingredient { juice_density: Some(juice_density(key)), press_yield, ..ingredient(id, []) })
    };
    let pressed = |id, ingredient, takes| Line { stage: Stage::Pressed, ..line(id, ingredient, takes) };
    let lines = [pressed(1, 3, "0.5 cup"), pressed(2, 2, "1 cup"), pressed(3, 1, "1 cup")];
    let book = book(
        settings(),
        [
            juice(1, "apple_juice"),
            juice(2, "carrot_juice"),
            juice(3, "lemon_juice_raw"),
            Record::Container(Container { declared: Some(amount("20 fl oz")), ..container(1, "20 fl oz") }),
            Record::Drink(Drink { kind: DrinkKind::Pressed, ..drink(1, "20 fl oz", lines) }),
            Record::Offer(offer(1, 1, None)),
        ],
    );
    let facts = facts(&book, &offer(1, 1, None)).unwrap();
    let package = facts.package.unwrap().unwrap();
    assert_eq!(package.juice, PercentJuice::Percent(exact("100")));
    let listed = package.ingredients.iter();
    let listed: Vec<_> = listed
        .map(|listed| (listed.what, listed.mass.grams().rounded(4), listed.share.fraction().rounded(6)))
        .collect();
    // 248/606, 236/606 and 122/606.
    let expected = [(1, "248", "0.409241"), (2, "236", "0.389439"), (3, "122", "0.20132")];
    assert_eq!(
        listed,
        expected.map(|(id, mass, share)| (ListedAs::Juice(ingredient_id(id)), exact(mass), exact(share)))
    );
    let said = net_contents(&package.net, &speaker(System::UsCustomary)).replace('\u{a0}', " ");
    assert_eq!((said.as_str(), package.net.source), ("Net 20 fl oz (1 pt 4 fl oz) 591 mL", NetSource::Declared));
    assert_eq!(facts.cautions.first(), Some(&Caution::UntreatedJuice(None)));
}

/// 21 CFR 101.30, text: the percentage of juice by volume, a whole number not above the actual one.
/// Three drinks of the demo book, which is invented, by hand.
#[test]
fn percent_juice_of_three_demo_drinks_by_hand() {
    let book = exchange::read(include_str!("../../public/books/marrowgate-juice-hall.json")).expect("the demo book");
    let juice = |drink, millilitres: &str| {
        let drink = book.drink(DrinkId::from_random(drink)).unwrap();
        let volume = Volume::from_millilitres(exact(millilitres));
        PercentJuice::of(&book, drink, &scale(&book, drink, volume).unwrap()).unwrap()
    };
    for millilitres in ["59", "354", "1000"] {
        // Orchard Green: 6, 4.5, 3, 1.5 and 1 fl oz of 16, all pressed.
        assert_eq!(juice(1, millilitres), PercentJuice::Percent(exact("100")));
        // Quick Spark: 0.9, 0.7 and 0.4 fl oz are 59.147 mL of juice, 0.003 oz of cayenne at 1.3
        // g/mL are 0.065 mL: 59.147 / 59.212 = 99.89 %.
        assert_eq!(juice(13, millilitres), PercentJuice::Percent(exact("99")));
        // Sunny Terrace: 2.9 fl oz of treated coconut water and 2.5 of orange juice are 159.697
        // mL; 4 oz of mango at 1.02 are 111.175, 2.5 oz of pineapple at 1.01 are 70.172, 1.5 oz of
        // bananas at 0.951 are 44.715: 385.759 mL. 1.45 oz of ice at 0.9167 are 44.842 mL:
        // 385.759 / 430.601 = 89.59 %.
        assert_eq!(juice(7, millilitres), PercentJuice::Percent(exact("89")));
    }
}

/// A drink of which nobody knows the volume has no percentage, only the words that mend it. No
/// outside source: what is asked for is that nothing is guessed.
#[test]
fn without_a_volume_there_are_words_and_no_percentage() {
    let bare = Ingredient { density: None, ..ingredient(1, []) };
    let records = [
        Record::Ingredient(bare),
        Record::Container(container(1, "12 fl oz")),
        Record::Drink(drink(1, "12 fl oz", [line(1, 1, "300 g")])),
        Record::Offer(offer(1, 1, None)),
    ];
    let book = book(settings(), records);
    let error = facts(&book, &offer(1, 1, None)).unwrap().package.unwrap().unwrap_err();
    assert_eq!(
        label_error(&error, &book),
        "Needs: weight per cup of Invented ingredient 1 in drinks. You weigh in one place and pour by volume in another. Enter the weight of one cup."
    );
}
