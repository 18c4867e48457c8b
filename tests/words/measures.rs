//! Measures as people of a book's units think of them.

use brimwright::book::{Book, Edit, Field, Ingredient, Key, Labour, Problem, Record, Refusal};
use brimwright::drink::cost::CostError;
use brimwright::drink::label::LabelError;
use brimwright::drink::ledger::OfferError;
use brimwright::drink::yields::YieldError;
use brimwright::foundation::measure::{
    Amount, Count, Dimension, LengthUnit, NumberStyle, ReadError, System, TypedLength, Unit, Wanted, read_amount,
    read_length, read_time,
};
use brimwright::words::texts::Table;
use brimwright::words::voice::{self, Voice};
use brimwright::words::{self, Speaker, label_error, offer_error, read_error, refusal};

use crate::support::{
    amount, book, density, drink, exact, ingredient, ingredient_id, line, seconds, settings, speaker,
};

fn plain(text: &str) -> String {
    text.replace('\u{a0}', " ")
}

fn us() -> Speaker {
    speaker(System::UsCustomary)
}

fn a_book(units: System) -> Book {
    let ginger = Ingredient { name: "Ginger".into(), ..ingredient(1, []) };
    let settings = brimwright::book::Settings { units, ..settings() };
    book(settings, [Record::Ingredient(ginger), Record::Drink(drink(1, "1 L", [line(1, 1, "1 L")]))])
}

#[test]
fn times_are_minutes_and_seconds_everywhere() {
    for (time, shown) in [("90", "1:30"), ("45", "0:45"), ("7.46", "0:07.5"), ("600", "10:00"), ("0.04", "0:00")] {
        assert_eq!(us().time(seconds(time)), shown, "{time}");
    }
    assert_eq!(us().typed_time(seconds("7.46")), "0:07.46");
    let why = read_time("1:5", us().style()).unwrap_err();
    assert_eq!(read_error(&why, "1:30"), "“1:5” is not a time. Type minutes and seconds, such as 1:30.");
    assert_eq!(why, ReadError::NotATime { text: "1:5".into() });
}

#[test]
fn labor_is_said_per_gallon_or_per_liter() {
    assert_eq!(
        (us().labor(seconds("20")).as_str(), us().typed_labor(seconds("19.81290393")).as_str()),
        ("1:15.7", "1:15")
    );
    let metric = speaker(System::Metric);
    assert_eq!((metric.labor(seconds("20")).as_str(), metric.typed_labor(seconds("20")).as_str()), ("0:20", "0:20"));
    let names = [System::UsCustomary, System::Metric, System::Imperial].map(words::labor_per_volume);
    assert_eq!(names, ["Labor per gallon", "Labor per liter", "Labor per liter"]);
    // A refusal calls the field as the screen does.
    for (units, said) in [
        (System::UsCustomary, "Labor per gallon: cannot be below zero. Leave out the minus sign."),
        (System::Metric, "Labor per liter: cannot be below zero. Leave out the minus sign."),
    ] {
        let key = Key::Drink(brimwright::book::DrinkId::from_random(1));
        let refused = Refusal::Field { key, field: Field::PerLitre, problem: Problem::Negative };
        assert_eq!(refusal(&refused, &a_book(units)), said);
    }
}

#[test]
fn a_density_is_said_as_the_weight_of_one_cup_in_a_us_book() {
    let densities = [System::UsCustomary, System::Metric, System::Imperial]
        .map(|units| plain(&speaker(units).density(density("1.048"))));
    assert_eq!(densities, ["8.75 oz per cup", "1.048 g/mL", "1.048 g/mL"]);
    // As a field shows it: as it was typed, else to 0.01 oz.
    let in_field = |stored: &str| us().typed_density(density(stored));
    assert_eq!(["1.04248992", "1.048", "1"].map(in_field), ["8.7", "8.75", "8.35"]);
    assert_eq!(speaker(System::Metric).typed_density(density("1.04248992")), "1.04248992");
    assert_eq!((us().density_unit(), speaker(System::Imperial).density_unit()), ("oz", "g/mL"));
    let named = |units| [words::drink_density(units), words::juice_density(units)];
    assert_eq!(named(System::UsCustomary), ["Weight per cup", "Juice weight per cup"]);
    assert_eq!(named(System::Metric), ["Density in drinks", "Juice density"]);
}

#[test]
fn a_metric_book_asks_for_grams_per_milliliter() {
    let book = a_book(System::Metric);
    let ginger = ingredient_id(1);
    let lacks = |error| offer_error(&OfferError::Cost(CostError::Yield(error)), &book);
    assert_eq!(
        lacks(YieldError::NoDensity(ginger)),
        "Needs: density of Ginger in drinks. You weigh in one place and pour by volume in another. Enter grams per mL."
    );
    assert_eq!(
        lacks(YieldError::NoJuiceDensity(ginger)),
        "Needs: juice density of Ginger. You weigh in one place and pour by volume in another. Enter grams per mL."
    );
    assert_eq!(
        label_error(&LabelError::Mass(YieldError::NoDensity(ginger)), &book),
        "Labels list ingredients by weight. Needs: density of Ginger in the drink, in grams per mL."
    );
    assert_eq!(
        label_error(&LabelError::Mass(YieldError::NoJuiceDensity(ginger)), &book),
        "Labels list ingredients by weight. Needs: density of the juice of Ginger, in grams per mL."
    );
}

#[test]
fn pieces_and_inches_are_fractions() {
    let said = |typed: &str| us().amount(amount(typed));
    assert_eq!(
        ["0.5 ea", "1.5 ea", "2.25 ea", "0.4 ea", "5.5 fl oz"].map(said),
        ["1/2 ea", "1 1/2 ea", "2 1/4 ea", "0.4 ea", "5.5 fl oz"]
    );
    // A card names the ingredient beside it.
    assert_eq!(
        ["0.5 ea", "2 ea", "0.4 ea", "6 oz", "1.75 tsp"].map(|typed| us().on_card(amount(typed))),
        [("1/2", ""), ("2", ""), ("0.4", ""), ("6", "oz"), ("1 3/4", "tsp")]
            .map(|(number, unit)| (number.to_string(), unit))
    );
    let inches = |number: &str| us().typed_length(TypedLength::new(exact(number), LengthUnit::Inch));
    assert_eq!(["3.5", "0.75", "3.4"].map(inches), ["3 1/2 in", "3/4 in", "3.4 in"]);
    let cards = speaker(System::Metric).measure(amount("1.5 ea").measure().unwrap());
    assert_eq!(plain(&cards), "1 1/2 ea");
    let german = Speaker::new(us().currency(), System::Metric, NumberStyle::continental("\u{a0}€"));
    assert_eq!(["0.5 ea", "0.4 ea"].map(|typed| german.amount(amount(typed))), ["1/2 ea", "0,4 ea"]);
}

#[test]
fn a_size_is_in_plain_ounces_where_no_weight_can_be_meant() {
    let size = Amount::new(exact("12"), Unit::UsFluidOunce);
    let all = [System::UsCustomary, System::Metric, System::Imperial];
    assert_eq!(all.map(|units| speaker(units).size(size)), ["12 oz", "12 fl oz", "12 US fl oz"]);
    assert_eq!(all.map(|units| speaker(units).size_unit()), ["oz", "mL", "imp fl oz"]);
    // A size by another unit keeps it.
    assert_eq!(us().size(amount("500 mL")), "500 mL");
}

/// What another step left in a field of labor, as the field shows it.
#[test]
fn a_time_that_stands_in_the_way_is_said_as_its_field_shows_it() {
    let said = |units, first: Labour, second: Labour| {
        let mut bar = a_book(units);
        let put = |bar: &mut Book, labour| {
            let Some(Record::Drink(drink)) = bar.record(Key::Drink(brimwright::book::DrinkId::from_random(1))) else {
                panic!("a drink")
            };
            let edit = Edit::Put(Record::Drink(brimwright::book::Drink { labour, ..drink }));
            let was = bar.at(&edit.keys());
            bar.apply(&edit).unwrap();
            brimwright::book::Patch::between(&was, bar)
        };
        let step = put(&mut bar, first);
        put(&mut bar, second);
        let clashes = step.inverse().edit(&bar).unwrap_err();
        plain(&words::steps::changed_since(&clashes, &bar, &speaker(units)))
    };
    let per_drink = |time| Labour { per_drink: seconds(time), ..Labour::default() };
    let per_litre = |time| Labour { per_litre: seconds(time), ..Labour::default() };
    let now = |value: &str| format!("now {value}, changed by a later change");
    for (units, said, value) in [
        (System::UsCustomary, said(System::UsCustomary, per_drink("30"), per_drink("45")), "0:45"),
        (System::UsCustomary, said(System::UsCustomary, per_litre("10"), per_litre("19.81290393")), "1:15"),
        (System::Metric, said(System::Metric, per_litre("10"), per_litre("90")), "1:30"),
    ] {
        assert!(said.contains(&now(value)), "{units:?}: {said}");
    }
}

/// Inches and pieces have signs of their own in Spanish. What is stored does not change, and both are read.
#[test]
fn inches_and_pieces_are_called_as_the_language_calls_them() {
    let three = Amount::new(exact("3"), Unit::Piece);
    let length = TypedLength::new(exact("3.5"), LengthUnit::Inch);
    let said = || {
        let speaker = us();
        [
            speaker.amount(three),
            speaker.count(Count::from_pieces(exact("3"))),
            speaker.typed_length(length),
            speaker.length(length.length().unwrap()),
        ]
        .map(|said| plain(&said))
    };
    assert_eq!(said(), ["3 ea", "3 ea", "3 1/2 in", "3 1/2 in"]);
    voice::set(Voice { texts: Table::built_in("es-US"), ..voice::here().clone() });
    assert_eq!(said(), ["3 pza", "3 pza", "3 1/2 pulg", "3 1/2 pulg"]);
    assert_eq!(words::unit(Unit::Pound, System::UsCustomary), "lb");
    let wanted = Wanted { dimensions: &[Dimension::Count], unit: Unit::Piece };
    for text in ["3 pza", "3 ea", "3 piezas"] {
        let read = read_amount(text, wanted, System::UsCustomary, us().style());
        assert_eq!(read, Ok(three), "{text}");
    }
    for text in ["3 1/2 pulg", "3 1/2 in", "3.5 pulgadas"] {
        assert_eq!(read_length(text, System::UsCustomary, us().style()), Ok(length), "{text}");
    }
    assert_eq!((three.to_string(), length.to_string()), ("3 ea".to_string(), "3.5 in".to_string()));
}
