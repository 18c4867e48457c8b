//! The fields that versions 2 and 3 add: each spoilt in turn.

use std::sync::LazyLock;

use brimwright::book::{
    Accepted, Allergen, Brimful, DrinkKind, Field, FillRule, Goods, Headspace, Ice, IcePlace, KeptConditions, Key,
    OnHand, Problem, Produce, Reading, Ready, Refusal, Scaling, Scope, Service, Stage, Tapered,
};
use brimwright::drink::fill::fill;
use brimwright::exchange::{BookFileError, Fault, Place, read, write};
use brimwright::foundation::measure::{Scale, Temperature};
use serde_json::Value;

use super::{FILE, indented, name_at, schema};
use crate::support::{
    amount, container_id, day, drink_id, exact, ingredient_id, length, money, offer_id, packaging_id, share,
};

/// A small file with every field that versions 2 to 4 add, each value on a line of its own.
pub static EVERY: LazyLock<String> = LazyLock::new(|| indented(include_str!("data/version-4.json")));

/// That file with the first `old` replaced by `new`.
pub fn with(old: &str, new: &str) -> String {
    assert!(EVERY.contains(old), "{old:?}");
    EVERY.replacen(old, new, 1)
}

pub fn error(text: &str) -> BookFileError {
    read(text).err().unwrap_or_else(|| panic!("the reader takes {text}"))
}

#[test]
fn every_field_is_read_and_written_again() {
    let book = read(&*EVERY).unwrap();
    assert_eq!(read(write(&book)), Ok(book.clone()));
    assert!(schema::takes(&EVERY) && schema::takes(&write(&book)));

    let oats = book.ingredient(ingredient_id(1)).unwrap();
    assert_eq!(oats.allergens, Some(vec![Allergen::OtherGluten, Allergen::TreeNuts]));
    assert_eq!(book.ingredient(ingredient_id(2)).unwrap().allergens, Some(Vec::new()));
    assert_eq!((oats.produce, book.ingredient(ingredient_id(2)).unwrap().produce), (Some(Produce::Neither), None));
    assert_eq!((oats.nuts.as_str(), oats.parts.as_deref()), ("almonds", Some("oats, almonds, water")));
    assert_eq!(oats.sold_as, "oat drink");
    let pack = &oats.packs[0];
    let tiers: Vec<_> = pack.tiers.iter().map(|tier| (tier.from, tier.price)).collect();
    assert_eq!(tiers, [(exact("2"), money("28.5")), (exact("6.5"), money("27"))]);
    assert_eq!((pack.at_a_time, pack.price_now()), (exact("6"), money("28.5")));

    let cup = book.container(container_id(1)).unwrap();
    let tapered = Tapered { base: length("2.5 in"), rim: length("90 mm"), height: length("12.1 cm") };
    assert_eq!((&cup.brimful, cup.headspace), (&Brimful::Tapered(tapered), Headspace::Height(length("0.4 in"))));
    let counts: Vec<_> = book.set_of(cup).map(|used| used.count).collect();
    assert_eq!(counts, [exact("1.5")]);
    let flask = book.container(container_id(2)).unwrap();
    let readings = [("30 mm", "3 fl oz"), ("170 mm", "500 mL")]
        .map(|(height, volume)| Reading { height: length(height), volume: amount(volume) });
    assert_eq!(flask.brimful, Brimful::Poured(readings.to_vec()));
    assert_eq!(fill(flask).unwrap().brimful, amount("500 mL").volume().unwrap().unwrap());

    let drink = book.drink(drink_id(1)).unwrap();
    assert_eq!(drink.air, share("0.12"));
    assert_eq!((drink.treated, drink.ph), (true, Some(exact("3.85"))));
    assert_eq!((drink.keep_refrigerated, drink.keeps_days), (true, Some(exact("17"))));
    let scalings: Vec<_> = drink.lines.iter().map(|line| line.scaling).collect();
    assert_eq!(scalings, [Scaling::Stepped(amount("0.5 oz")), Scaling::TopUp, Scaling::Fixed]);
    let ices: Vec<_> = drink.lines.iter().map(|line| line.ice).collect();
    assert_eq!(
        ices,
        [None, None, Some(Ice { packing: share("0.55"), melted: share("0.35"), place: IcePlace::Floating })]
    );

    let offer = book.offer(offer_id(1, 2)).unwrap();
    assert_eq!((offer.weekly, offer.service), (Some(exact("120")), Some(Service::PackagedAhead)));
    let filling = offer.filling.clone().unwrap();
    assert_eq!((filling.rule, filling.accepted), (FillRule::UnitedStates, Accepted::TwoAndAHalfPercent));
    assert_eq!((filling.allowed, filling.least_headspace), (Some(amount("0.5 fl oz")), Some(amount("5 mL"))));
    assert_eq!((filling.batch, filling.batch_risk), (Some(exact("36")), Some(Accepted::OnePercent)));
    assert_eq!(filling.measured_at, Some(Temperature::new(exact("68"), Scale::Fahrenheit)));
    assert_eq!(filling.nets, vec![amount("488.5 mL"), amount("17.3 oz")]);
}

/// A file of version 3 from before these fields: nobody said, nobody measured, nothing is promised.
#[test]
fn what_an_older_file_leaves_out_is_not_said() {
    let mut older = EVERY.clone();
    for field in [
        "      \"nuts\": \"almonds\",\n",
        "      \"parts\": \"oats, almonds, water\",\n",
        "      \"sold-as\": \"oat drink\",\n",
        "      \"produce\": \"neither\",\n",
        ",\n      \"treated\": true",
        ",\n      \"ph\": \"3.85\"",
        ",\n      \"keep-refrigerated\": true",
        ",\n      \"keeps-days\": \"17\"",
        ",\n      \"service\": \"packaged-ahead\"",
        "        \"batch\": \"36\",\n",
        "        \"batch-risk\": \"0.01\",\n",
        "        \"measured-at\": \"68 F\",\n",
    ] {
        assert!(older.contains(field), "{field:?}");
        older = older.replacen(field, "", 1);
    }
    let book = read(&*older).unwrap();
    let oats = book.ingredient(ingredient_id(1)).unwrap();
    assert_eq!((oats.nuts.as_str(), oats.parts.as_deref(), oats.produce), ("", None, None));
    assert_eq!(oats.sold_as, "");
    let drink = book.drink(drink_id(1)).unwrap();
    assert_eq!((drink.treated, drink.ph, drink.keep_refrigerated, drink.keeps_days), (false, None, false, None));
    assert_eq!(book.offer(offer_id(1, 2)).unwrap().service, None);
    assert!(schema::takes(&older));
    assert!(
        !["\"nuts\"", "\"parts\"", "sold-as", "produce", "treated", "\"ph\"", "keep", "service"]
            .iter()
            .any(|field| write(&book).contains(field))
    );
}

#[test]
fn sales_and_what_is_asked_of_them_are_read_and_written_again() {
    let book = read(&*EVERY).unwrap();
    let till = book.settings().till.clone().unwrap();
    assert_eq!((till.item.as_str(), till.units.as_str()), ("Article", "Quantity"));
    assert_eq!((till.size.as_deref(), till.day.as_deref()), (Some("Cup size"), Some("Sold on")));

    let [week] = book.weeks().collect::<Vec<_>>()[..] else { panic!("one week") };
    assert_eq!(week.monday, day("2026-11-16"));
    let sold: Vec<_> = week.sold.iter().map(|sold| (sold.offer(), sold.units, sold.contribution)).collect();
    let expected = [(offer_id(1, 2), exact("31"), money("2.8125")), (offer_id(1, 1), exact("0.25"), money("-0.04"))];
    assert_eq!(sold, expected);

    let [seen] = book.seen_prices().collect::<Vec<_>>()[..] else { panic!("one price") };
    assert_eq!((seen.place.as_str(), seen.kind, seen.day), ("Nowhere Stand", DrinkKind::OverIce, day("2026-11-19")));
    assert_eq!((seen.size, seen.price), (amount("450 mL"), money("4.75")));

    let trials: Vec<_> = book.trials().map(|trial| (trial.scope, trial.first, trial.start, trial.last)).collect();
    let expected = [
        (Scope::Menu, day("2026-10-05"), day("2026-11-02"), Some(day("2026-11-30"))),
        (Scope::Kind(DrinkKind::Shot), day("2026-10-12"), day("2026-11-09"), None),
        (Scope::Drink(drink_id(1)), day("2026-10-19"), day("2026-10-26"), None),
    ];
    assert_eq!(trials, expected);

    let [scenario] = book.scenarios().collect::<Vec<_>>()[..] else { panic!("one scenario") };
    assert_eq!(scenario.name, "Cups alone");
    let offers: Vec<_> = scenario.offers.iter().map(|offer| (offer.id(), offer.price, offer.weekly)).collect();
    assert_eq!(offers, [(offer_id(1, 1), Some(money("5.25")), Some(exact("70")))]);
}

#[test]
fn what_is_made_and_bought_is_read_and_written_again() {
    let book = read(&*EVERY).unwrap();
    let settings = book.settings();
    assert_eq!(settings.price_days, Some(exact("28")));
    assert_eq!((settings.scale_step, settings.jug_step), (Some(amount("5 g")), Some(amount("10 mL"))));

    let oats = book.ingredient(ingredient_id(1)).unwrap();
    let heard: Vec<_> = oats.packs[0].heard().map(|quoted| (quoted.day, quoted.price)).collect();
    let expected = [("2026-10-01", "27.5"), ("2026-11-03", "29"), ("2026-11-20", "28.5")];
    assert_eq!(heard, expected.map(|(on, price)| (day(on), money(price))));
    assert_eq!(oats.on_hand, Some(OnHand { amount: amount("9.5 lb"), day: day("2026-11-25") }));
    let [first, second] = oats.weighings[..] else { panic!("two weighings") };
    assert_eq!((first.bought, first.trimmed), (amount("12 lb"), Some(amount("10.75 lb"))));
    assert_eq!((first.pressed, first.day), (Some(amount("2950 g")), day("2026-11-24")));
    assert_eq!((second.trimmed, second.pressed), (None, None));
    let lid = book.on_hand(Goods::Packaging(packaging_id(2)));
    assert_eq!(lid, Some(OnHand { amount: amount("40 ea"), day: day("2026-11-23") }));

    let [batch] = book.batches().collect::<Vec<_>>()[..] else { panic!("one batch") };
    let makes: Vec<_> = batch.makes.iter().map(|make| (make.offer(), make.units, make.filled)).collect();
    assert_eq!(makes, [(offer_id(1, 1), exact("7"), false), (offer_id(1, 2), exact("3"), true)]);
    let off_shelf: Vec<_> = batch.makes.iter().map(|make| make.off_shelf).collect();
    assert_eq!(off_shelf, [exact("0"), exact("2")]);
    assert_eq!(batch.ready, [Ready { ingredient: ingredient_id(1), stage: Stage::SoakedOrBrewed }]);

    let list = book.buying_list().unwrap();
    assert_eq!(list.day, day("2026-11-24"));
    let lines: Vec<_> = list.lines.iter().map(|line| (line.goods, line.packs, line.bought, line.paid)).collect();
    let expected = [
        (Goods::Ingredient(ingredient_id(1)), exact("2"), true, Some(money("31.25"))),
        (Goods::Packaging(packaging_id(2)), exact("1.5"), false, None),
    ];
    assert_eq!(lines, expected);
}

#[test]
#[expect(clippy::too_many_lines, reason = "a table of values")]
fn unreadable_values_are_shown_with_their_place() {
    let no_length = |text: &str| format!("\"{text}\" is not a length such as \"90 mm\" or \"3.5 in\"");
    let no_amount = |text: &str| format!("\"{text}\" is not an amount such as \"40 lb\" or \"16 fl oz\"");
    let no_number =
        |text: &str| format!("\"{text}\" is not a plain decimal of at most 9 digits before the point and 8 after it");
    let no_day = |text: &str| format!("\"{text}\" is not a day, such as 2026-11-23");
    let brimful = "a volume such as \"16 fl oz\", or the measures of a cup or bottle";
    let cases = [
        ("\"2.5 in\"", "\"2.5in\"", "containers[0].brimful.tapered.base", no_length("2.5in")),
        ("\"90 mm\"", "\"90 ft\"", "containers[0].brimful.tapered.rim", no_length("90 ft")),
        ("\"12.1 cm\"", "\"12,1 cm\"", "containers[0].brimful.tapered.height", no_length("12,1 cm")),
        ("\"0.4 in\"", "\"0.4 fl oz\"", "containers[0].headspace.height", no_length("0.4 fl oz")),
        ("\"30 mm\"", "\"30\"", "containers[1].brimful.poured[0].height", no_length("30")),
        ("\"500 mL\"", "\"500 ml\"", "containers[1].brimful.poured[1].volume", no_amount("500 ml")),
        (
            "{\n        \"tapered\"",
            "7, \"was\": {\n        \"tapered\"",
            "containers[0].brimful",
            format!("invalid type: integer `7`, expected {brimful}"),
        ),
        (
            "{\n        \"tapered\"",
            "{\n        \"conical\"",
            "containers[0].brimful",
            "unknown variant `conical`, expected `tapered` or `poured`".to_string(),
        ),
        ("\"tree-nuts\"", "\"nuts\"", "ingredients[0].allergens[1]", unknown_allergen("nuts")),
        ("\"6.5\"", "\"six\"", "ingredients[0].packs[0].tiers[1].from", no_number("six")),
        ("\"28.5\"", "\"28,5\"", "ingredients[0].packs[0].tiers[0].price", no_number("28,5")),
        ("\"6\",", "\"+6\",", "ingredients[0].packs[0].at-a-time", no_number("+6")),
        ("\"1.5\"", "\"1 1/2\"", "packaging-sets[0].uses[0].count", no_number("1 1/2")),
        ("\"0.5 oz\"", "\"half\"", "drinks[0].lines[0].scaling.stepped", no_amount("half")),
        (
            "\"top-up\"",
            "\"rest\"",
            "drinks[0].lines[1].scaling",
            "unknown variant `rest`, expected one of `in-proportion`, `fixed`, `stepped`, `top-up`".to_string(),
        ),
        (
            "\"floating\"",
            "\"sunk\"",
            "drinks[0].lines[2].ice.place",
            "unknown variant `sunk`, expected one of `blended-in`, `held-under`, `floating`".to_string(),
        ),
        ("\"0.55\"", "\"55%\"", "drinks[0].lines[2].ice.packing", no_number("55%")),
        ("\"0.12\"", "\"twelve\"", "drinks[0].air", no_number("twelve")),
        (
            "\"united-states\"",
            "\"house\"",
            "offers[0].filling.rule",
            "unknown variant `house`, expected one of `average`, `european-or-british`, `united-states`".to_string(),
        ),
        (
            "\"0.025\"",
            "\"0.03\"",
            "offers[0].filling.accepted",
            "unknown variant `0.03`, expected one of `0.001`, `0.01`, `0.02`, `0.025`, `0.05`".to_string(),
        ),
        ("\"0.5 fl oz\"", "\"0.5 floz\"", "offers[0].filling.allowed", no_amount("0.5 floz")),
        ("\"5 mL\"", "\"5 drops\"", "offers[0].filling.least-headspace", no_amount("5 drops")),
        ("\"120\"", "\"1e2\"", "offers[0].weekly", no_number("1e2")),
        (
            "\"neither\"",
            "\"fruit\"",
            "ingredients[0].produce",
            "unknown variant `fruit`, expected one of `raw`, `treated`, `neither`".to_string(),
        ),
        ("\"3.85\"", "\"acid\"", "drinks[0].ph", no_number("acid")),
        ("\"17\"", "\"seventeen\"", "drinks[0].keeps-days", no_number("seventeen")),
        (
            "\"packaged-ahead\"",
            "\"bottled\"",
            "offers[0].service",
            "unknown variant `bottled`, expected `packaged-ahead` or `by-the-glass`".to_string(),
        ),
        ("\"17.3 oz\"", "\"17.3 ounces\"", "offers[0].filling.nets[1]", no_amount("17.3 ounces")),
        ("\"2026-11-16\"", "\"16.11.2026\"", "weeks[0].monday", no_day("16.11.2026")),
        ("\"31\"", "\"1.000,5\"", "weeks[0].sold[0].units", no_number("1.000,5")),
        ("\"2.8125\"", "\"$2.81\"", "weeks[0].sold[0].contribution", no_number("$2.81")),
        (
            "\"over-ice\"",
            "\"frozen\"",
            "seen-prices[0].kind",
            "unknown variant `frozen`, expected one of `pressed`, `blended`, `over-ice`, `shot`".to_string(),
        ),
        ("\"450 mL\"", "\"large\"", "seen-prices[0].size", no_amount("large")),
        ("\"4.75\"", "\"4,75\"", "seen-prices[0].price", no_number("4,75")),
        ("\"2026-11-19\"", "\"2026-11-31\"", "seen-prices[0].day", no_day("2026-11-31")),
        (
            "\"menu\"",
            "\"everything\"",
            "trials[0].scope",
            "unknown variant `everything`, expected one of `menu`, `kind`, `drink`".to_string(),
        ),
        ("\"2026-10-05\"", "\"2026-W41\"", "trials[0].first", no_day("2026-W41")),
        ("\"2026-11-30\"", "\"open\"", "trials[0].last", no_day("open")),
        ("\"5.25\"", "\"5,25\"", "scenarios[0].offers[0].price", no_number("5,25")),
    ];
    for (old, new, path, reason) in cases {
        let text = with(old, new);
        let before = &EVERY[..EVERY.find(old).unwrap()];
        let line_begins = before.rfind('\n').unwrap() + 1;
        let place = Place {
            line: before.matches('\n').count() + 1,
            column: before.len() - line_begins + 1,
            path: path.to_string(),
            name: name_at(&text, path),
        };
        // A reason longer than 120 letters is shortened.
        let reason = match reason.char_indices().nth(120) {
            Some((end, _)) => format!("{}…", &reason[..end]),
            None => reason,
        };
        assert_eq!(error(&text), BookFileError::Value { place, fault: Fault::Unreadable(reason) }, "{new}");
        assert!(!schema::takes(&text), "the schema takes {new}");
    }
}

fn unknown_allergen(name: &str) -> String {
    let all = Allergen::ALL.iter().map(|known| format!("`{}`", serde_json::to_value(known).unwrap().as_str().unwrap()));
    format!("unknown variant `{name}`, expected one of {}", all.collect::<Vec<_>>().join(", "))
}

#[test]
fn fields_within_fields_are_known_by_name() {
    let unknown = [
        ("\"base\":", "\"bottom\":"),
        ("\"stepped\": \"0.5 oz\"", "\"stepped\": \"0.5 oz\", \"up\": true"),
        ("\"packing\":", "\"density\":"),
        ("\"from\": \"2\"", "\"least\": \"2\""),
        ("\"uses\": [", "\"use\": ["),
        ("\"shared\": [", "\"sets\": ["),
        ("\"packaging-sets\": [", "\"sets\": ["),
        ("\"least-headspace\":", "\"least\":"),
        ("\"air\":", "\"foam\":"),
        ("\"allergens\":", "\"contains\":"),
        ("\"at-a-time\":", "\"together\":"),
        ("\"tapered\": {", "\"poured\": [], \"tapered\": {"),
        ("\"weeks\": [", "\"week\": ["),
        ("\"seen-prices\": [", "\"seen\": ["),
        ("\"trials\": [", "\"trial\": ["),
        ("\"scenarios\": [", "\"scenario\": ["),
        ("\"sold\": [", "\"sales\": ["),
        ("\"contribution\": \"2.8125\"", "\"margin\": \"2.8125\""),
        ("\"place\": \"Nowhere Stand\"", "\"shop\": \"Nowhere Stand\""),
        ("\"kind\": \"shot\"", "\"kind\": \"shot\", \"drink\": \"1\""),
        ("\"start\": \"2026-11-02\"", "\"from\": \"2026-11-02\""),
        ("\"item\":", "\"name\":"),
    ];
    let missing = [
        "          \"base\": \"2.5 in\",\n",
        "            \"place\": \"floating\",\n",
        "              \"from\": \"2\",\n",
        "        \"rule\": \"united-states\",\n",
        "        \"accepted\": \"0.025\",\n",
        "            \"height\": \"30 mm\",\n",
        "      \"item\": \"Article\",\n",
        "      \"monday\": \"2026-11-16\",\n",
        "          \"units\": \"31\",\n",
        "      \"size\": \"450 mL\",\n",
        "      \"first\": \"2026-10-05\",\n",
        "      \"name\": \"Cups alone\",\n",
    ];
    for (old, new) in unknown.into_iter().chain(missing.map(|line| (line, ""))) {
        let text = with(old, new);
        assert!(matches!(error(&text), BookFileError::Value { .. }), "{new} for {old}: {:?}", error(&text));
        assert!(!schema::takes(&text), "the schema takes {new} for {old}");
    }
}

/// Each is refused by the book. The second list is what a schema cannot say: one value against
/// another.
#[test]
#[expect(clippy::too_many_lines, reason = "a table of values")]
fn what_the_book_refuses_is_named() {
    use Field::{
        Air, Allowed, AtATime, Base, BatchSize, Headspace, Height, LeastHeadspace, MeasuredAt, Monday, Net, Packing,
        Readings, Rim, SetCount, Step, TierFrom, TierPrice, Weekly,
    };
    let by_value = [
        ("\"2.5 in\"", "\"0 in\"", "container:1", Base, Problem::NotPositive),
        ("\"90 mm\"", "\"-90 mm\"", "container:1", Rim, Problem::NotPositive),
        ("\"12.1 cm\"", "\"0.0 cm\"", "container:1", Height, Problem::NotPositive),
        ("\"0.4 in\"", "\"-0.4 in\"", "container:1", Headspace, Problem::Negative),
        ("\"share\": \"0.05\"", "\"share\": \"1\"", "container:2", Headspace, Problem::NotAShare),
        ("\"30 mm\"", "\"0 mm\"", "container:2", Readings, Problem::NotPositive),
        ("\"500 mL\"", "\"500 g\"", "container:2", Readings, Problem::NotAVolume),
        ("\"12 ea\"", "\"0 ea\"", "ingredient:1", Field::Contents, Problem::NotPositive),
        ("\"6\",", "\"0.5\",", "ingredient:1", AtATime, Problem::LessThanOne),
        ("\"from\": \"2\"", "\"from\": \"1\"", "ingredient:1", TierFrom, Problem::NotAboveOne),
        ("\"28.5\"", "\"-28.5\"", "ingredient:1", TierPrice, Problem::Negative),
        ("\"tree-nuts\"", "\"other-gluten\"", "ingredient:1", Field::Allergens, Problem::Twice),
        ("\"1.5\"", "\"0\"", "packaging-set:1", SetCount, Problem::NotPositive),
        ("\"name\": \"Lid and straw\"", "\"name\": \"\"", "packaging-set:1", Field::Name, Problem::Empty),
        ("\"0.5 oz\"", "\"0 oz\"", "drink:1", Step, Problem::NotPositive),
        ("\"0.5 oz\"", "\"0.5 ea\"", "drink:1", Step, Problem::AnotherKind),
        ("\"0.5 oz\"", "\"0.5 fl oz\"", "drink:1", Step, Problem::AnotherKind),
        ("\"scaling\": \"fixed\"", "\"scaling\": \"top-up\"", "drink:1", Field::TopUp, Problem::MoreThanOne),
        ("\"0.55\"", "\"0\"", "drink:1", Packing, Problem::NotAPacking),
        ("\"0.55\"", "\"1.1\"", "drink:1", Packing, Problem::NotAPacking),
        ("\"0.12\"", "\"-0.12\"", "drink:1", Air, Problem::Negative),
        ("\"3.85\"", "\"-0.01\"", "drink:1", Field::Ph, Problem::NotAPh),
        ("\"3.85\"", "\"14.01\"", "drink:1", Field::Ph, Problem::NotAPh),
        ("\"keeps-days\": \"17\"", "\"keeps-days\": \"-3\"", "drink:1", Field::KeepsDays, Problem::Negative),
        ("\"keeps-days\": \"17\"", "\"keeps-days\": \"2.5\"", "drink:1", Field::KeepsDays, Problem::NotWhole),
        ("\"keeps-days\": \"17\"", "\"keeps-days\": \"731\"", "drink:1", Field::KeepsDays, Problem::TooManyDays),
        ("\"0.5 fl oz\"", "\"0 fl oz\"", "offer:1-2", Allowed, Problem::NotPositive),
        ("\"0.5 fl oz\"", "\"0.5 oz\"", "offer:1-2", Allowed, Problem::NotAVolume),
        ("\"5 mL\"", "\"-5 mL\"", "offer:1-2", LeastHeadspace, Problem::Negative),
        ("\"5 mL\"", "\"5 g\"", "offer:1-2", LeastHeadspace, Problem::NotAVolume),
        ("\"36\"", "\"0\"", "offer:1-2", BatchSize, Problem::LessThanOne),
        ("\"36\"", "\"12.5\"", "offer:1-2", BatchSize, Problem::NotWhole),
        ("\"68 F\"", "\"31.99 F\"", "offer:1-2", MeasuredAt, Problem::NotMeasuredThere),
        ("\"68 F\"", "\"104.01 F\"", "offer:1-2", MeasuredAt, Problem::NotMeasuredThere),
        ("\"68 F\"", "\"-0.5 C\"", "offer:1-2", MeasuredAt, Problem::NotMeasuredThere),
        ("\"68 F\"", "\"40.01 C\"", "offer:1-2", MeasuredAt, Problem::NotMeasuredThere),
        ("\"120\"", "\"-120\"", "offer:1-2", Weekly, Problem::Negative),
        ("\"17.3 oz\"", "\"0 oz\"", "offer:1-2", Net, Problem::NotPositive),
        ("\"17.3 oz\"", "\"1 ea\"", "offer:1-2", Net, Problem::NeitherWeightNorVolume),
        (SECOND_READING, "", "container:2", Readings, Problem::TooFew),
        (TAPERED, "\"brimful\": \"16 fl oz\",\n", "container:1", Headspace, Problem::NoHeights),
        ("[\n        \"1\"\n      ]", "[\n        \"1\", \"1\"\n      ]", "container:1", SetCount, Problem::Twice),
        ("\"Article\"", "\" \"", "settings", Field::TillColumn, Problem::Empty),
        ("\"Sold on\"", "\"\"", "settings", Field::TillColumn, Problem::Empty),
        ("\"31\"", "\"-1\"", "week:2026-11-16", Field::Units, Problem::Negative),
        ("\"Nowhere Stand\"", "\"\"", "seen-price:1", Field::Place, Problem::Empty),
        ("\"450 mL\"", "\"0 mL\"", "seen-price:1", Field::Size, Problem::NotPositive),
        ("\"450 mL\"", "\"450 g\"", "seen-price:1", Field::Size, Problem::NotAVolume),
        ("\"4.75\"", "\"0\"", "seen-price:1", Field::Price, Problem::NotPositive),
        ("\"Less ice\"", "\"\"", "trial:2", Field::Name, Problem::Empty),
        ("\"Cups alone\"", "\" \"", "scenario:1", Field::Name, Problem::Empty),
        ("\"5.25\"", "\"0\"", "scenario:1", Field::Price, Problem::NotPositive),
        ("\"70\"", "\"-70\"", "scenario:1", Weekly, Problem::Negative),
        ("\"29\"", "\"-29\"", "ingredient:1", Field::EarlierPrice, Problem::Negative),
        ("\"9.5 lb\"", "\"-9.5 lb\"", "ingredient:1", Field::OnHand, Problem::Negative),
        ("\"40 ea\"", "\"40 lb\"", "packaging:2", Field::OnHand, Problem::NotACount),
        ("\"12 lb\"", "\"12 fl oz\"", "ingredient:1", Field::WeighedBought, Problem::NotAWeight),
        ("\"11 lb\"", "\"0 lb\"", "ingredient:1", Field::WeighedBought, Problem::NotPositive),
        ("\"10.75 lb\"", "\"10.75 ea\"", "ingredient:1", Field::WeighedTrimmed, Problem::NotAWeight),
        ("\"2950 g\"", "\"-2950 g\"", "ingredient:1", Field::WeighedPressed, Problem::NotPositive),
        ("\"7\"", "\"7.5\"", "batch:2026-11-26", Field::Makes, Problem::NotWhole),
        ("\"7\"", "\"-7\"", "batch:2026-11-26", Field::Makes, Problem::Negative),
        ("\"off-shelf\": \"2\"", "\"off-shelf\": \"-2\"", "batch:2026-11-26", Field::OffShelf, Problem::Negative),
        ("\"off-shelf\": \"2\"", "\"off-shelf\": \"2.5\"", "batch:2026-11-26", Field::OffShelf, Problem::NotWhole),
        ("\"packs\": \"2\"", "\"packs\": \"0\"", "buying-list", Field::PacksToBuy, Problem::NotPositive),
        ("\"31.25\"", "\"-31.25\"", "buying-list", Field::Paid, Problem::Negative),
        ("\"28\"", "\"0\"", "settings", Field::PriceDays, Problem::LessThanOne),
        ("\"28\"", "\"28.5\"", "settings", Field::PriceDays, Problem::NotWhole),
        ("\"5 g\"", "\"5 mL\"", "settings", Field::ScaleStep, Problem::NotAWeight),
        ("\"5 g\"", "\"0 g\"", "settings", Field::ScaleStep, Problem::NotPositive),
        ("\"10 mL\"", "\"10 g\"", "settings", Field::JugStep, Problem::NotAVolume),
    ];
    let by_comparison = [
        ("\"0.4 in\"", "\"12.1 cm\"", "container:1", Headspace, Problem::NothingFits),
        ("\"30 mm\"", "\"17 cm\"", "container:2", Readings, Problem::Falls(2)),
        ("\"500 mL\"", "\"3 fl oz\"", "container:2", Readings, Problem::Falls(2)),
        ("\"6.5\"", "\"2.0\"", "ingredient:1", TierFrom, Problem::Twice),
        (TAPERED, HUGE, "container:1", Field::Brimful, Problem::TooLarge),
        ("\"2026-11-16\"", "\"2026-11-17\"", "week:2026-11-17", Monday, Problem::NotAMonday),
        (
            SECOND_SOLD,
            "\"container\": \"2\",\n          \"units\": \"0.25\"",
            "week:2026-11-16",
            Field::Units,
            Problem::Twice,
        ),
        ("\"2026-10-05\"", "\"2026-10-06\"", "trial:1", Monday, Problem::NotAMonday),
        ("\"2026-11-02\"", "\"2026-10-05\"", "trial:1", Field::Start, Problem::NotAfter),
        ("\"2026-11-30\"", "\"2026-10-26\"", "trial:1", Field::Last, Problem::NotAfter),
        (SCENARIO_OFFER, TWICE_OFFERED, "scenario:1", Field::Offers, Problem::Twice),
        ("\"2026-10-01\"", "\"2026-11-03\"", "ingredient:1", Field::EarlierPrice, Problem::NotAfter),
        ("\"2026-11-20\"", "\"2026-11-03\"", "ingredient:1", Field::EarlierPrice, Problem::NotAfter),
        ("\"day\": \"2026-11-20\",", "", "ingredient:1", Field::PriceDay, Problem::Empty),
        ("\"10.75 lb\"", "\"12.01 lb\"", "ingredient:1", Field::WeighedTrimmed, Problem::MoreThanBefore),
        ("\"2950 g\"", "\"4900 g\"", "ingredient:1", Field::WeighedPressed, Problem::MoreThanBefore),
        (
            SECOND_MADE,
            "\"container\": \"1\",\n          \"units\": \"3\"",
            "batch:2026-11-26",
            Field::Makes,
            Problem::Twice,
        ),
    ];
    let cases = by_value.map(|case| (case, false)).into_iter().chain(by_comparison.map(|case| (case, true)));
    for ((old, new, key, field, problem), schema_takes) in cases {
        let text = with(old, new);
        let key = Key::from_text(key).unwrap();
        match error(&text) {
            BookFileError::Refused { key: at, refusal, .. } => {
                assert_eq!((at, refusal), (key, Refusal::Field { key, field, problem }), "{new} for {old}");
            }
            other => panic!("{new} for {old}: {other:?}"),
        }
        assert_eq!(schema::takes(&text), schema_takes, "the schema and {new} for {old}");
    }
}

const SECOND_READING: &str =
    ",\n          {\n            \"height\": \"170 mm\",\n            \"volume\": \"500 mL\"\n          }";
const TAPERED: &str = "\"brimful\": {\n        \"tapered\": {\n          \"base\": \"2.5 in\",\n          \"rim\": \"90 mm\",\n          \"height\": \"12.1 cm\"\n        }\n      },\n";

const HUGE: &str = "\"brimful\": {\"tapered\": {\"base\": \"999999999 in\", \"rim\": \"999999999 in\", \"height\": \"999999999 in\"}},\n";

const SECOND_SOLD: &str = "\"container\": \"1\",\n          \"units\": \"0.25\"";
const SECOND_MADE: &str = "\"container\": \"2\",\n          \"units\": \"3\"";
const SCENARIO_OFFER: &str = "\"price\": \"5.25\",\n          \"weekly\": \"70\"";
const TWICE_OFFERED: &str = "\"price\": \"5.25\"}, {\"drink\": \"1\", \"container\": \"1\"";

#[test]
fn a_week_stands_once() {
    let week = "  \"weeks\": [\n";
    let text = with(week, "  \"weeks\": [\n{\"monday\": \"2026-11-16\", \"sold\": []},\n");
    let key = Key::Week(day("2026-11-16"));
    let at = text[..text.rfind("\"monday\": \"2026-11-16\"").unwrap()].matches('\n').count();
    assert_eq!(error(&text), BookFileError::Twice { key, name: String::new(), line: at });
    assert_eq!(read(with(week, "  \"weeks\": [\n{\"monday\": \"2026-11-23\", \"sold\": []},\n")).err(), None);
}

#[test]
fn what_is_needed_must_be_there() {
    let cases = [
        (SECOND_SOLD, "\"container\": \"9\",\n          \"units\": \"0.25\"", "container:9", "week:2026-11-16"),
        (SCENARIO_OFFER, "\"price\": \"5.25\"}, {\"drink\": \"9\", \"container\": \"1\"", "drink:9", "scenario:1"),
        ("\"scope\": {\n        \"drink\": \"1\"", "\"scope\": {\n        \"drink\": \"9\"", "drink:9", "trial:3"),
        ("\"packaging\": \"2\"", "\"packaging\": \"9\"", "packaging:9", "packaging-set:1"),
        ("[\n        \"1\"\n      ]", "[\n        \"9\"\n      ]", "packaging-set:9", "container:1"),
    ];
    for (old, new, missing, user) in cases {
        let [missing, user] = [missing, user].map(|key| Key::from_text(key).unwrap());
        let refusal = Refusal::Missing { key: missing, needed_by: Some(user) };
        match error(&with(old, new)) {
            BookFileError::Refused { key, refusal: found, .. } => assert_eq!((key, found), (user, refusal)),
            other => panic!("{other:?}"),
        }
    }
}

#[test]
fn what_may_be_left_out() {
    let left_out = [
        "            \"packing\": \"0.55\",\n",
        ",\n      \"air\": \"0.12\"",
        ",\n          \"at-a-time\": \"6\"",
        "        \"allowed\": \"0.5 fl oz\",\n",
        "        \"least-headspace\": \"5 mL\",\n",
        "      \"weekly\": \"120\",\n",
        ",\n      \"allergens\": []",
        ",\n    \"till\": {\n      \"item\": \"Article\",\n      \"size\": \"Cup size\",\n      \"units\": \"Quantity\",\n      \"day\": \"Sold on\"\n    }",
        ",\n      \"size\": \"Cup size\"",
        ",\n      \"day\": \"Sold on\"",
        ",\n      \"last\": \"2026-11-30\"",
        "      \"set\": [],\n      \"shared\": []",
    ];
    let instead = |old: &str| match old {
        old if old.contains("\"set\"") => "      \"set\": []",
        _ => "",
    };
    for (old, new) in left_out.map(|old| (old, instead(old))) {
        let text = with(old, new);
        assert_eq!(read(&text).err(), None, "without {old}");
        assert!(schema::takes(&text), "the schema refuses a file without {old}");
    }
    let book = read(with(left_out[0], instead(left_out[0]))).unwrap();
    let ice = book.drink(drink_id(1)).unwrap().lines[2].ice.unwrap();
    assert_eq!(ice.packing, share("0.6"));
}

/// What a scenario takes to be other than in the book is refused where it does not read or does not hold.
#[test]
fn conditions_that_do_not_hold_are_refused() {
    let book = read(&*EVERY).unwrap();
    let scenario = book.scenarios().next().unwrap();
    let kept: Value = serde_json::to_value(scenario).unwrap();
    let text = kept["conditions"].as_str().unwrap();
    assert!(schema::takes_conditions(text), "{text}");
    assert_eq!(KeptConditions::of(&scenario.conditions()), scenario.conditions, "all of it is read");
    let key = Key::from_text("scenario:1").unwrap();
    let refused = [
        (r#"\"target\":\"0.7\""#, r#"\"target\":\"1\""#, Field::Target, Problem::NotAShare),
        (r#"\"wage\":\"21\""#, r#"\"wage\":\"-21\""#, Field::Wage, Problem::Negative),
        (r#"\"fill\":\"330 mL\""#, r#"\"fill\":\"330 g\""#, Field::Allowed, Problem::NotAVolume),
    ];
    for (old, new, field, problem) in refused {
        match error(&with(old, new)) {
            BookFileError::Refused { key: at, refusal, .. } => {
                assert_eq!((at, refusal), (key, Refusal::Field { key, field, problem }), "{new} for {old}");
            }
            other => panic!("{new} for {old}: {other:?}"),
        }
    }
    for (old, new) in [(r#"\"wage\""#, r#"\"pay\""#), (r#"\"part\":"#, "")] {
        assert!(matches!(error(&with(old, new)), BookFileError::Value { .. }), "{new} for {old}");
    }
}

/// No field of the schema is without a value in the files that are spoilt here.
#[test]
fn every_field_of_the_schema_is_tried() {
    let schema: Value = serde_json::from_str(schema::SCHEMA).unwrap();
    let mut untried = Vec::new();
    let mut waiting = vec![&schema];
    while let Some(value) = waiting.pop() {
        match value {
            Value::Object(object) => {
                let fields = object.get("properties").and_then(Value::as_object).into_iter().flatten();
                // What a scenario takes to be other is a JSON text within the file.
                let tried = |name: &String| {
                    [format!("\"{name}\":"), format!("\\\"{name}\\\":")]
                        .iter()
                        .any(|field| FILE.contains(field) || EVERY.contains(field))
                };
                untried.extend(fields.map(|(name, _)| name).filter(|name| !tried(name)));
                waiting.extend(object.values());
            }
            Value::Array(list) => waiting.extend(list),
            _ => {}
        }
    }
    assert_eq!(untried, Vec::<&String>::new());
}
