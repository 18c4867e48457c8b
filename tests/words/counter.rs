//! What is said at the counter, and of its lock.

use brimwright::book::{Edit, Ice, IcePlace, Ingredient, Record, Scaling, Service, Stage};
use brimwright::drink::fill::{Fill, FillLine, Scaled, ScaledLine};
use brimwright::drink::label::Caution;
use brimwright::drink::make::{Card, Taken};
use brimwright::foundation::lock::PinError;
use brimwright::foundation::measure::{System, Volume};
use brimwright::say;
use brimwright::words::counter;

use crate::book;
use crate::support::{
    amount, exact, ingredient, ingredient_id, line, measure, millilitres, millimetres, settings, share, speaker,
};

const UNITS: System = System::Metric;

fn scaled(scaling: Scaling) -> ScaledLine {
    ScaledLine {
        line: line(1, 1, "100 mL").id,
        ingredient: ingredient_id(1),
        stage: Stage::Pressed,
        scaling,
        ice: None,
        mixed: true,
        in_drink: measure("100 mL"),
        to_use: measure("100 mL"),
        volume: millilitres("100"),
    }
}

#[test]
fn how_an_ingredient_is_added() {
    let said = |line| counter::how_added(&line, false, &book());
    assert_eq!(said(scaled(Scaling::InProportion)), "pressed");
    assert_eq!(said(scaled(Scaling::Fixed)), "pressed");
    assert_eq!(said(scaled(Scaling::Stepped(amount("0.5 ea")))), "pressed");
    assert_eq!(said(scaled(Scaling::TopUp)), "pressed, fill to the line");
    // Air that is beaten in would lift it over the line, unless it goes straight into the glass.
    let beaten = |line| counter::how_added(&line, true, &book());
    assert_eq!(beaten(scaled(Scaling::TopUp)), "pressed");
    assert_eq!(beaten(ScaledLine { mixed: false, ..scaled(Scaling::TopUp) }), "pressed, fill to the line");
    let ice = Some(Ice { place: IcePlace::Floating, packing: Ice::usual_packing(), melted: share("0") });
    let scoop = ScaledLine { ice, ..scaled(Scaling::InProportion) };
    assert_eq!(said(scoop), "floating, scooped");
    // By hand: 60 % of 100 mL are 60 mL of ice of 0.917 g/mL.
    let weight = |line: &ScaledLine, drinks| counter::scoop(line, exact(drinks), &speaker(UNITS));
    assert_eq!((&*weight(&scoop, "1"), &*weight(&scoop, "10")), ("(weighs 55\u{a0}g)", "(weighs 550\u{a0}g)"));
    let weighed = ScaledLine { in_drink: measure("50 g"), to_use: measure("50 g"), ..scoop };
    assert_eq!((&*said(weighed), &*weight(&weighed, "1")), ("floating", ""));
    // What is poured was brewed of it; what is weighed was soaked.
    let brewed = ScaledLine { stage: Stage::SoakedOrBrewed, ..scaled(Scaling::InProportion) };
    let soaked = ScaledLine { to_use: measure("50 g"), ..brewed };
    let taken = |line: &ScaledLine| counter::taken(line, &book());
    assert_eq!((&*taken(&brewed), &*said(brewed)), ("Brewed from Ginger", ""));
    assert_eq!((&*taken(&soaked), &*said(soaked)), ("Ginger", "soaked or brewed"));
    // What nobody trims is taken as it is.
    let whole = |scaling| ScaledLine { stage: Stage::AsBought, ..scaled(scaling) };
    assert_eq!(said(whole(Scaling::InProportion)), "");
    assert_eq!(said(whole(Scaling::TopUp)), "fill to the line");
    let mut cut = book();
    let trimmed = Ingredient { trim_yield: share("0.8"), ..ingredient(1, []) };
    cut.apply(&Edit::Put(Record::Ingredient(trimmed))).unwrap();
    assert_eq!(counter::how_added(&whole(Scaling::InProportion), false, &cut), "as purchased");
}

#[test]
fn what_an_amount_stands_for() {
    let taken = Taken { line: scaled(Scaling::InProportion), amount: amount("100 mL"), under_a_step: false };
    assert_eq!(counter::of_the_amount(&taken), "");
    assert_eq!(
        counter::of_the_amount(&Taken { under_a_step: true, ..taken }),
        "too little for your scale or cup: make several"
    );
}

#[test]
fn what_amounts_are_rounded_to() {
    let said = |scale: Option<&str>, jug: Option<&str>, missed: Option<&str>| {
        let (scale_step, jug_step) = (scale.map(amount), jug.map(amount));
        let settings = brimwright::book::Settings { scale_step, jug_step, ..settings() };
        let card = Card { off: missed.map(millilitres).unwrap_or_default(), ..bare_card() };
        counter::rounded(&card, &settings, &speaker(UNITS))
    };
    assert_eq!(said(None, None, None), "");
    let together = "Together, they reach the fill line.";
    assert_eq!(said(Some("5 g"), None, None), format!("Amounts round to 5 g on your scale. {together}"));
    assert_eq!(said(None, Some("10 mL"), None), format!("Amounts round to 10 mL in your measuring cup. {together}"));
    assert_eq!(
        said(Some("5 g"), Some("10 mL"), Some("-12")),
        "Amounts round to 5 g on your scale and 10 mL in your measuring cup. \
         These rounded amounts stop 12\u{a0}mL below the fill line. The exact amounts reach it."
    );
    // 330 mL and less than half of one more are shown as 330; 3 of them are no fiftieth, and are seen.
    assert!(said(Some("5 g"), None, Some("0.4")).ends_with(together));
    for off in ["3", "-3"] {
        let near = "Together, they come within 3\u{a0}mL of the fill line.";
        assert_eq!(said(Some("5 g"), None, Some(off)), format!("Amounts round to 5 g on your scale. {near}"));
    }
}

/// By hand: a step of the scale of 0.1 oz is 2.83 g, and one of the cup 1.5 tsp.
#[test]
fn what_is_measured_finer_than_the_scale_and_the_cup_is_said() {
    let steps = brimwright::book::Settings {
        scale_step: Some(amount("0.1 oz")),
        jug_step: Some(amount("0.25 fl oz")),
        ..settings()
    };
    let finer = |taken: &str| {
        let taken = Taken { line: scaled(Scaling::InProportion), amount: amount(taken), under_a_step: false };
        let card = Card { take: vec![taken], ..bare_card() };
        counter::rounded(&card, &steps, &speaker(UNITS)).contains("Small amounts are measured finer.")
    };
    for (taken, is) in [("2.3 oz", false), ("7 g", true), ("4.25 fl oz", false), ("0.75 tsp", true), ("3 tsp", false)] {
        assert_eq!(finer(taken), is, "{taken}");
    }
    assert!(!finer("2 ea"));
}

#[test]
fn what_takes_up_the_rest_of_whole_pieces_is_told() {
    let stepped = ScaledLine { ingredient: ingredient_id(2), ..scaled(Scaling::Stepped(amount("0.5 ea"))) };
    let said = |lines: Vec<ScaledLine>, unrounded| {
        let scaled = Scaled { lines, unrounded: exact(unrounded), ..bare_card().scaled };
        counter::takes_up(&scaled, &book())
    };
    let name = book().ingredient(ingredient_id(1)).unwrap().name.clone();
    let one = said(vec![scaled(Scaling::InProportion), stepped, scaled(Scaling::Fixed)], "1.1");
    assert_eq!(one, format!("{name} takes up what whole pieces leave."));
    let two = said(vec![scaled(Scaling::InProportion), scaled(Scaling::InProportion), stepped], "1.1");
    assert_eq!(two, format!("{name} and {name} take up what whole pieces leave."));
    let four = [Scaling::InProportion; 4].map(scaled).to_vec();
    assert_eq!(said(four, "1.1"), "Ingredients that scale take up what whole pieces leave.");
    // Where pieces come out whole, and where a line tops up, nothing is told.
    assert_eq!(said(vec![scaled(Scaling::InProportion), stepped], "1"), "");
    assert_eq!(said(vec![scaled(Scaling::TopUp), stepped], "1.1"), "");
}

/// A card of 330 mL, of which nothing else is known.
fn bare_card() -> Card {
    let fill = Fill {
        brimful: millilitres("355"),
        headspace: millilitres("25"),
        volume: millilitres("330"),
        short_of_declared: None,
    };
    let scaled = brimwright::drink::fill::Scaled {
        factor: exact("1"),
        unrounded: exact("1"),
        fixed: Volume::ZERO,
        air: Volume::ZERO,
        liquid: None,
        lines: Vec::new(),
    };
    Card {
        fill,
        fill_line: None,
        scaled,
        take: Vec::new(),
        stays_behind: Volume::ZERO,
        off: Volume::ZERO,
        cautions: Vec::new(),
    }
}

#[test]
fn what_the_amounts_have_more_than_the_cup() {
    let said = |card: &Card| (counter::stays_behind(card, &speaker(UNITS)), counter::air(card, &speaker(UNITS)));
    assert_eq!(said(&bare_card()), (String::new(), String::new()));
    let mut card = Card { stays_behind: millilitres("12"), ..bare_card() };
    card.scaled.air = millilitres("30");
    let expected = ("These amounts include 12\u{a0}mL of press or pour loss.", "Air from blending: 30\u{a0}mL");
    assert_eq!(said(&card), (expected.0.to_string(), expected.1.to_string()));
}

#[test]
fn a_margin_just_under_its_target_does_not_look_like_it() {
    let said = |margin: &str, target: &str| speaker(UNITS).percent_beside(share(margin), Some(share(target)));
    // By hand.
    for (margin, target, shown) in [
        ("0.6796", "0.68", "67.96%"),
        ("0.679999", "0.68", "67.9999%"),
        ("0.6794", "0.68", "67.9%"),
        ("0.68", "0.68", "68.0%"),
        ("0.6801", "0.68", "68.0%"),
        ("0.68", "0.6804", "68%"),
    ] {
        assert_eq!(said(margin, target), shown, "{margin} beside {target}");
    }
    assert_eq!(speaker(UNITS).percent_beside(share("0.6796"), None), "68.0%");
}

#[test]
fn where_to_fill_to() {
    let card = bare_card();
    let said = |card: &Card| counter::fill_to(card, &speaker(UNITS));
    assert_eq!(said(&card), "Fill to the line. Headspace: 25\u{a0}mL.");
    assert_eq!(counter::fill_on_paper(&card, &speaker(UNITS)), "Fill to 330\u{a0}mL. Headspace: 25\u{a0}mL.");
    let fill_line = Some(FillLine { above_base: millimetres("90"), below_rim: millimetres("10.04") });
    let card = Card { fill_line, ..card };
    assert_eq!(said(&card), "Fill to the line, 10.0\u{a0}mm below the rim. Headspace: 25\u{a0}mL.");
    assert_eq!(
        counter::fill_on_paper(&card, &speaker(UNITS)),
        "Fill to 330\u{a0}mL, 10.0\u{a0}mm below the rim. Headspace: 25\u{a0}mL."
    );
}

#[test]
fn what_rounding_does_to_a_drink() {
    let said = |missed| counter::missed_fill(millilitres(missed), &speaker(UNITS));
    assert_eq!(said("30"), "These rounded amounts go 30\u{a0}mL past the fill line. Stop at the line.");
    assert_eq!(said("-12"), "These rounded amounts stop 12\u{a0}mL below the fill line. The exact amounts reach it.");
}

#[test]
fn for_how_many() {
    let said = |drinks| counter::for_drinks(exact(drinks), &speaker(UNITS));
    assert_eq!((said("1").as_str(), said("3").as_str()), ("For 1 drink", "For 3 drinks"));
    assert_eq!(counter::number_of_drinks(), "Type a whole number from 1 to 999, such as 12.");
}

#[test]
fn cautions_for_staff() {
    let said = |caution| counter::counter_caution(&caution, &book());
    let untreated = |service| said(Caution::UntreatedJuice(service));
    assert_eq!(
        untreated(Some(Service::PackagedAhead)).as_deref(),
        Some("Untreated juice: each package must carry the warning label (United States).")
    );
    assert_eq!(
        untreated(Some(Service::ByTheGlass)).as_deref(),
        Some("Untreated juice by the glass: ask your local inspector what to tell customers.")
    );
    assert_eq!(
        untreated(None).as_deref(),
        Some("Untreated juice: if packaged ahead, each package must carry the warning label (United States).")
    );
    assert_eq!(
        said(Caution::JuiceNotSaid(None, vec![ingredient_id(1)])).as_deref(),
        Some("Raw fruit or vegetables: not checked yet. Treat this drink as untreated juice. Tell your manager.")
    );
    assert_eq!(
        said(Caution::AtRisk(None)).as_deref(),
        Some(
            "Untreated juice can make children, older or pregnant people and people with weak immune systems seriously ill."
        )
    );
    let cold = "Low-acid juice: refrigerate at all times. If kept warm, this juice can cause botulism.";
    assert_eq!(said(Caution::MeasuredLowAcid(exact("5.9"))).as_deref(), Some(cold));
    // Of the drink itself nobody knows it.
    assert_eq!(
        said(Caution::PublishedLowAcid(vec![ingredient_id(1)])).as_deref(),
        Some("This juice may be low-acid: refrigerate at all times. Low-acid juice kept warm can cause botulism.")
    );
    assert_eq!(
        said(Caution::AcidityNotKnown(Vec::new())).as_deref(),
        Some("Acidity not checked: refrigerate at all times. Low-acid juice kept warm can cause botulism.")
    );
    assert_eq!(said(Caution::SoldToABusiness), None);
    assert_eq!(
        said(Caution::FillShortOfDeclared(millilitres("29.5735295625"))).as_deref(),
        Some("This fill is 1.0\u{a0}fl oz under the labeled size. Tell your manager.")
    );
    assert_eq!(
        said(Caution::AllergensAsInTheBook).as_deref(),
        Some(
            "Allergens are only as right as what you entered. Check every label, and what shares the blender or press."
        )
    );
    assert_eq!(said(Caution::NoLegalAdvice), None);
}

#[test]
fn how_long_what_is_made_today_keeps() {
    let mut drink = crate::support::drink(1, "1 L", []);
    let today = crate::support::day("2026-11-26");
    assert_eq!(counter::made_today(&drink, today), "");
    drink.keep_refrigerated = true;
    assert_eq!(counter::made_today(&drink, today), "Keep refrigerated.");
    drink.keeps_days = Some(exact("3"));
    assert_eq!(counter::made_today(&drink, today), "Made today. Keep refrigerated. Use by Nov 29, 2026.");
}

#[test]
fn why_a_pin_is_not_taken() {
    let said = counter::pin_error;
    assert_eq!(said(PinError::Empty), "No PIN typed yet. Choose 4 to 8 digits, such as 4207.");
    assert_eq!(said(PinError::NotDigits), "A PIN has digits only, from 0 to 9. Choose 4 to 8 digits, such as 4207.");
    assert_eq!(said(PinError::TooShort(1)), "1 digit is too few. Choose 4 to 8 digits, such as 4207.");
    assert_eq!(said(PinError::TooShort(3)), "3 digits are too few. Choose 4 to 8 digits, such as 4207.");
    assert_eq!(said(PinError::TooLong(9)), "9 digits are too many. Choose 4 to 8 digits, such as 4207.");
    assert_eq!(said(PinError::NotTheSame), "The two PINs do not match. Type the same digits twice.");
}

#[test]
fn what_is_there_while_a_device_is_locked() {
    assert_eq!(
        say!(counter::lock_about),
        "While locked, this device shows recipe cards, batches and stock only. Prices stay hidden. Undo works for batches and counts only."
    );
}

#[test]
fn how_a_forgotten_pin_opens() {
    assert_eq!(
        counter::without_pin(),
        "Type “open without the PIN” to unlock this device. The lock is no real security."
    );
    assert_eq!(counter::not_without_pin(), "That is a different sentence. Type “open without the PIN”, word for word.");
}
