//! The fields that version 4 adds, what varies in costs, seasons and starting figures: each spoilt in turn, by
//! the reader and the schema alike, and left out in turn.

use brimwright::book::{
    Basis, CommissionBase, DrinkKind, Field, Figure, Key, KindRate, OverheadPer, PaymentFee, Problem, Reductions,
    Refusal, Season, Settings,
};
use brimwright::exchange::{BookFileError, Fault, read, take_in, write};
use brimwright::foundation::measure::{Exact, Money, Month, Share};

use super::fields::{EVERY, error, with};
use super::schema;
use crate::support::{amount, container_id, drink_id, exact, ingredient_id, money, share};

#[test]
fn every_field_is_read() {
    let book = read(&*EVERY).unwrap();
    let settings = book.settings();
    let rates = [(DrinkKind::Pressed, "0.0725"), (DrinkKind::Blended, "0.19")];
    assert_eq!(settings.tax_by_kind, rates.map(|(kind, rate)| KindRate { kind, rate: share(rate) }));
    assert!(settings.deposit_taxed);
    let fee = PaymentFee { share: share("0.024"), fixed: money("0.3"), drinks: exact("1.6") };
    assert_eq!(settings.payment_fee, fee);
    assert_eq!((settings.commission, settings.commission_on), (share("0.085"), CommissionBase::WithTax));
    assert_eq!((settings.overhead, settings.overhead_per), (money("1440"), OverheadPer::Week));
    let reductions = Reductions {
        discounts: share("0.031"),
        free: share("0.013"),
        marked_down: share("0.041"),
        marked_down_to: share("0.51"),
    };
    assert_eq!(settings.reductions, reductions);

    let oats = book.ingredient(ingredient_id(1)).unwrap();
    let season =
        Season { from: Month::November, to: Month::April, trim_yield: share("0.87"), press_yield: Some(share("0.62")) };
    assert_eq!(oats.season, Some(season));
    let starting = oats.starting.as_ref().unwrap();
    assert_eq!(starting.key, "oat-drink");
    let brought: Vec<_> = starting.figures.iter().map(|it| (it.figure, it.value, it.basis)).collect();
    let expected = [
        (Figure::Density, exact("1.03"), Basis::Assumed),
        (Figure::PieceWeight, exact("172"), Basis::Memory),
        (Figure::TrimYield, exact("0.97"), Basis::Sr28),
    ];
    assert_eq!(brought, expected);
    // The weight of a piece and the trim yield were typed since.
    let standing: Vec<Figure> = oats.starting_figures().map(|it| it.figure).collect();
    assert_eq!(standing, [Figure::Density]);

    let flask = book.container(container_id(2)).unwrap();
    assert_eq!((flask.deposit, flask.starting), (money("0.15"), Some(amount("505 mL"))));
    assert!(!flask.is_starting(), "it was measured since");
    let drink = book.drink(drink_id(1)).unwrap();
    assert_eq!((drink.tax_rate, drink.labour.batch_volume), (Some(share("0.055")), Some(amount("18.5 L"))));
    assert_eq!(drink.labour.batch, exact("48"));
    let in_glass: Vec<bool> = drink.lines.iter().map(|line| line.in_glass).collect();
    assert_eq!(in_glass, [false, false, true]);
    assert_eq!(drink.lines[2].ice.unwrap().melted, share("0.35"));
}

/// Each pair is a field as it stands in the file, and what stands in its place where it is left out.
const LEFT_OUT: [(&str, &str); 20] = [
    (
        "    \"tax-by-kind\": [\n      {\n        \"kind\": \"pressed\",\n        \"rate\": \"0.0725\"\n      },\n      {\n        \"kind\": \"blended\",\n        \"rate\": \"0.19\"\n      }\n    ],\n",
        "",
    ),
    ("    \"deposit-taxed\": true,\n", ""),
    (",\n      \"drinks\": \"1.6\"", ""),
    ("    \"commission-on\": \"with-tax\",\n", ""),
    ("    \"overhead-per\": \"week\",\n", ""),
    ("      \"discounts\": \"0.031\",\n", ""),
    ("      \"free\": \"0.013\",\n", ""),
    (",\n      \"marked-down-to\": \"0.51\"", ""),
    ("      \"marked-down\": \"0.041\"\n", "      \"discounts\": \"0\"\n"),
    ("    \"reductions\": {\n      \"discounts\": \"0\"\n    },\n", ""),
    (",\n        \"press-yield\": \"0.62\"", ""),
    (
        ",\n      \"season\": {\n        \"from\": \"november\",\n        \"to\": \"april\",\n        \"trim-yield\": \"0.87\"\n      }",
        "",
    ),
    ("; piece-weight 172 from-memory; trim-yield 0.97 sr28", ""),
    ("; density 1.03 assumed", ""),
    (",\n      \"starting\": \"oat-drink\"", ""),
    (",\n      \"deposit\": \"0.15\",\n      \"starting\": \"505 mL\"", ""),
    (",\n            \"melted\": \"0.35\"", ""),
    (",\n          \"in-glass\": true", ""),
    (",\n        \"batch-volume\": \"18.5 L\"", ""),
    (",\n      \"tax-rate\": \"0.055\"", ""),
];

/// Left out one after the other, each is what books before version 4 said, and is not written again.
#[test]
fn each_may_be_left_out() {
    let mut text = EVERY.clone();
    for (field, instead) in LEFT_OUT {
        assert!(text.contains(field), "{field}");
        text = text.replacen(field, instead, 1);
        let book = read(&text).unwrap_or_else(|error| panic!("without {field}: {error:?}"));
        assert!(schema::takes(&text), "the schema refuses a file without {field}");
        assert_eq!(read(write(&book)), Ok(book));
    }
    let book = read(&text).unwrap();
    let settings = book.settings();
    let before = Settings { overhead_per: OverheadPer::DrinkMade, ..Settings::new("") };
    assert_eq!((&settings.tax_by_kind, settings.deposit_taxed), (&before.tax_by_kind, false));
    assert_eq!((settings.payment_fee.drinks, settings.commission_on), (Exact::ONE, CommissionBase::WithoutTax));
    assert_eq!((settings.overhead_per, settings.reductions), (before.overhead_per, before.reductions));
    let oats = book.ingredient(ingredient_id(1)).unwrap();
    assert_eq!((oats.season, &oats.starting), (None, &None));
    let flask = book.container(container_id(2)).unwrap();
    assert_eq!((flask.deposit, flask.starting), (Money::ZERO, None));
    let drink = book.drink(drink_id(1)).unwrap();
    assert_eq!((drink.tax_rate, drink.labour.batch_volume), (None, None));
    assert!(drink.lines.iter().all(|line| !line.in_glass && line.ice.is_none_or(|ice| ice.melted == Share::ZERO)));
    let written = write(&book);
    let fields = ["tax-by-kind", "deposit", "\"drinks\":\"", "commission-on", "overhead-per", "reductions", "season"];
    let more = ["starting", "melted", "in-glass", "batch-volume", "tax-rate"];
    assert_eq!(fields.iter().chain(&more).find(|field| written.contains(**field)), None);
}

/// What is no value of its kind, and where the reader finds it.
#[test]
fn what_cannot_be_read_is_told_with_its_place() {
    let cases = [
        ("\"0.0725\"", "\"7.25%\"", "settings.tax-by-kind[0].rate"),
        ("\"blended\",\n        \"rate\"", "\"stirred\",\n        \"rate\"", "settings.tax-by-kind[1].kind"),
        ("\"deposit-taxed\": true", "\"deposit-taxed\": \"yes\"", "settings.deposit-taxed"),
        ("\"1.6\"", "1.6", "settings.payment-fee.drinks"),
        ("\"with-tax\"", "\"gross\"", "settings.commission-on"),
        ("\"week\"", "\"month\"", "settings.overhead-per"),
        ("\"0.031\"", "\"a few\"", "settings.reductions.discounts"),
        ("\"0.013\"", "\"1 in 77\"", "settings.reductions.free"),
        ("\"0.041\"", "\"4,1\"", "settings.reductions.marked-down"),
        ("\"0.51\"", "\"half\"", "settings.reductions.marked-down-to"),
        ("\"november\"", "\"nov\"", "ingredients[0].season.from"),
        ("\"april\"", "\"13\"", "ingredients[0].season.to"),
        ("\"0.87\"", "\"87 %\"", "ingredients[0].season.trim-yield"),
        ("\"0.62\"", "\"0,62\"", "ingredients[0].season.press-yield"),
        ("; density 1.03", "; weight 1.03", "ingredients[0].starting"),
        ("weight 172 from", "weight 172 g from", "ingredients[0].starting"),
        (" sr28\"", " hearsay\"", "ingredients[0].starting"),
        ("\"0.15\"", "\"15 ct\"", "containers[1].deposit"),
        ("\"505 mL\"", "\"505 ml\"", "containers[1].starting"),
        ("\"0.35\"", "\"a third\"", "drinks[0].lines[2].ice.melted"),
        ("\"in-glass\": true", "\"in-glass\": 1", "drinks[0].lines[2].in-glass"),
        ("\"18.5 L\"", "\"18.5 l\"", "drinks[0].labour.batch-volume"),
        ("\"0.055\"", "\".055\"", "drinks[0].tax-rate"),
    ];
    for (old, new, path) in cases {
        let text = with(old, new);
        match error(&text) {
            BookFileError::Value { place, fault: Fault::Unreadable(_) } => assert_eq!(place.path, path, "{new}"),
            other => panic!("{new} for {old}: {other:?}"),
        }
        assert!(!schema::takes(&text), "the schema takes {new}");
    }
}

#[test]
fn fields_are_known_by_name_and_those_that_must_be_there_are_missed() {
    let cases = [
        ("\"tax-by-kind\":", "\"taxes\":"),
        ("\"deposit-taxed\":", "\"deposits\":"),
        ("\"drinks\": \"1.6\"", "\"per-payment\": \"1.6\""),
        ("\"commission-on\":", "\"commission-base\":"),
        ("\"overhead-per\":", "\"overhead-for\":"),
        ("\"free\":", "\"given\":"),
        ("\"season\":", "\"winter\":"),
        ("\"to\": \"april\"", "\"until\": \"april\""),
        ("        \"from\": \"november\",\n", ""),
        ("        \"trim-yield\": \"0.87\",\n", ""),
        (" 172 ", " "),
        (" sr28\"", "\""),
        ("\"deposit\":", "\"pledge\":"),
        ("\"melted\":", "\"melts\":"),
        ("\"in-glass\":", "\"in-cup\":"),
        ("\"batch-volume\":", "\"batch-size\":"),
        ("\"tax-rate\":", "\"tax\":"),
        ("        \"rate\": \"0.19\"\n", "        \"kind\": \"blended\"\n"),
    ];
    for (old, new) in cases {
        let text = with(old, new);
        assert!(matches!(error(&text), BookFileError::Value { .. }), "{new} for {old}: {:?}", error(&text));
        // JSON keeps the last of two fields of one name, and the schema sees one of them.
        assert!(!schema::takes(&text), "the schema takes {new} for {old}");
    }
}

/// A value that the book refuses, in a file and everywhere else. Of two values of one kind the schema says
/// nothing.
#[test]
fn what_the_book_refuses_is_named() {
    use Field::{
        BatchVolume, Deposit, Discounts, FeeDrinks, FreeDrinks, MarkedDown, MarkedDownTo, Melted, SeasonPressYield,
        SeasonTrimYield, StartingFigure, TaxByKind, TaxRate,
    };
    let by_value = [
        ("\"0.0725\"", "\"-0.07\"", "settings", TaxByKind, Problem::Negative),
        ("\"1.6\"", "\"0\"", "settings", FeeDrinks, Problem::LessThanOne),
        ("\"1.6\"", "\"0.99\"", "settings", FeeDrinks, Problem::LessThanOne),
        ("\"0.031\"", "\"1\"", "settings", Discounts, Problem::NotAShare),
        ("\"0.013\"", "\"-0.013\"", "settings", FreeDrinks, Problem::NotAShare),
        ("\"0.041\"", "\"1.041\"", "settings", MarkedDown, Problem::NotAShare),
        ("\"0.51\"", "\"0\"", "settings", MarkedDownTo, Problem::NotAYield),
        ("\"0.51\"", "\"1.01\"", "settings", MarkedDownTo, Problem::NotAYield),
        ("\"0.87\"", "\"0\"", "ingredient:1", SeasonTrimYield, Problem::NotAYield),
        ("\"0.62\"", "\"1.2\"", "ingredient:1", SeasonPressYield, Problem::NotAYield),
        ("\"oat-drink;", "\" ;", "ingredient:1", Field::Name, Problem::Empty),
        (" 172 ", " 0 ", "ingredient:1", StartingFigure, Problem::NotPositive),
        ("\"0.15\"", "\"-0.15\"", "container:2", Deposit, Problem::Negative),
        ("\"505 mL\"", "\"505 g\"", "container:2", StartingFigure, Problem::NotAVolume),
        ("\"505 mL\"", "\"0 mL\"", "container:2", StartingFigure, Problem::NotPositive),
        ("\"0.35\"", "\"-0.35\"", "drink:1", Melted, Problem::NotAPart),
        ("\"0.35\"", "\"1.35\"", "drink:1", Melted, Problem::NotAPart),
        ("\"18.5 L\"", "\"18.5 kg\"", "drink:1", BatchVolume, Problem::NotAVolume),
        ("\"18.5 L\"", "\"0 L\"", "drink:1", BatchVolume, Problem::NotPositive),
        ("\"0.055\"", "\"-0.055\"", "drink:1", TaxRate, Problem::Negative),
    ];
    let by_comparison = [
        ("\"blended\",\n        \"rate\"", "\"pressed\",\n        \"rate\"", "settings", TaxByKind, Problem::TwoRates),
        ("; piece-weight", "; density", "ingredient:1", StartingFigure, Problem::Twice),
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

/// The ends of what each may be.
#[test]
fn the_ends_of_each_range_are_taken() {
    let cases = [
        ("\"0.0725\"", "\"0\""),
        ("\"0.0725\"", "\"1.5\""),
        ("\"1.6\"", "\"1\""),
        ("\"0.031\"", "\"0\""),
        ("\"0.031\"", "\"0.99999999\""),
        ("\"0.51\"", "\"1\""),
        ("\"0.51\"", "\"0.00000001\""),
        ("\"0.15\"", "\"0\""),
        ("\"0.35\"", "\"0\""),
        ("\"0.35\"", "\"1\""),
        ("\"april\"", "\"november\""),
        ("\"0.87\"", "\"1\""),
        ("\"18.5 L\"", "\"0.00000001 fl oz\""),
        ("\"0.055\"", "\"0\""),
        ("\"week\"", "\"drink-sold\""),
        ("\"week\"", "\"drink-made\""),
        ("\"with-tax\"", "\"without-tax\""),
    ];
    for (old, new) in cases {
        let text = with(old, new);
        let book = read(&text).unwrap_or_else(|error| panic!("{new} for {old}: {error:?}"));
        assert!(schema::takes(&text), "the schema refuses {new} for {old}");
        assert!(schema::takes(&write(&book)), "the schema refuses what is written of {new} for {old}");
    }
}

/// A stored book of which one record is spoilt in a field of this version keeps the others.
#[test]
fn a_record_that_is_spoilt_in_such_a_field_is_left_out_alone() {
    let book = read(&*EVERY).unwrap();
    let rows: Vec<String> = book
        .records()
        .map(|record| {
            let key = record.key();
            let text = serde_json::to_string(&record).unwrap();
            let record: serde_json::Value = serde_json::from_str(&text).unwrap();
            format!("{{\"book\":\"b1\",\"key\":\"{key}\",\"revision\":1,\"grew-from\":0,\"record\":{record}}}")
        })
        .collect();
    let stored = rows.join("\n");
    let whole = take_in(&stored).unwrap();
    assert_eq!((whole.book, whole.left_out.len()), (book, 0));
    let spoilt = stored.replacen("\"deposit\":\"0.15\"", "\"deposit\":\"15 ct\"", 1);
    assert_ne!(spoilt, stored);
    let taken = take_in(&spoilt).unwrap();
    assert_eq!(taken.book.container(container_id(2)), None);
    assert!(taken.book.container(container_id(1)).is_some() && taken.book.drink(drink_id(1)).is_some());
    assert!(!taken.left_out.is_empty());
}
