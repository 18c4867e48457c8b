//! Figures that US books have in other units than they are stored in, by the factors of `data/units.csv` (NIST
//! Handbook 44, Appendix C). Each expected number was worked out from them in whole numbers.

use brimwright::foundation::measure::{
    Count, Density, Dimension, Exact, Length, LengthUnit, NumberStyle, ReadError, System, Time, TypedLength, Unit,
    Wanted, read_amount, read_density, read_length, read_time, show_count, show_length, show_time, show_typed_length,
};

use crate::csv::rows;
use crate::support::exact;

fn english() -> NumberStyle {
    NumberStyle::english("$")
}

fn factor(unit: &str) -> Exact {
    let row = rows(include_str!("data/units.csv")).into_iter().find(|row| row["unit"] == unit);
    exact(&row.unwrap_or_else(|| panic!("no unit {unit}"))["exact_value"])
}

/// A gallon is 3785.411784 mL: 20 s a liter are 75.70823568 s a gallon, 75 s a gallon 19.812903931…
#[test]
fn labor_is_counted_per_gallon_in_a_us_book() {
    assert_eq!(factor("US gallon"), exact("3785.411784"));
    let seconds = |text: &str| Time::from_seconds(exact(text));
    let us = System::UsCustomary;
    for (typed, stored) in [("75", "19.81290393"), ("90", "23.77548471"), ("60", "15.85032314"), ("0.5", "0.13208603")]
    {
        let kept = seconds(typed).per_litre(us).unwrap();
        assert_eq!(kept.seconds().to_string(), stored, "{typed} s a gallon");
        assert_eq!(kept.of_labor_volume(us), Ok(seconds(typed)), "as it was typed");
    }
    // Typed per liter, shown per gallon: for the eye only.
    for (stored, shown) in [("20", "1:15.7"), ("60", "3:47.1"), ("45.5", "2:52.2")] {
        let eye = seconds(stored).of_labor_volume(us).unwrap();
        assert_eq!(show_time(eye, &english()), shown, "{stored} s a liter");
    }
    for system in [System::Metric, System::Imperial] {
        assert_eq!(seconds("20").per_litre(system), Ok(seconds("20")));
        assert_eq!(seconds("20").of_labor_volume(system), Ok(seconds("20")));
    }
}

/// A cup is 236.5882365 mL and an ounce 28.349523125 g: 1 g/mL is 8.345404452… oz a cup.
#[test]
fn a_density_is_the_weight_of_one_cup_in_a_us_book() {
    assert_eq!(
        (factor("US cup (customary)"), factor("avoirdupois ounce")),
        (exact("236.5882365"), exact("28.349523125"))
    );
    let density = |text: &str| Density::from_grams_per_millilitre(exact(text));
    let read = |text: &str, system| read_density(text, system, &english());
    for (typed, stored, shown) in [
        ("8.7", "1.04248992", "8.7"),
        ("8.75 oz", "1.04848124", "8.75"),
        ("8 1/2", "1.01852463", "8.5"),
        // In grams a cup of 236.5882365 mL: 246 / 236.5882365.
        ("246 g", "1.03978120", "8.68"),
        // As it stands in tables: 1.04 * 8.345404452 = 8.679221.
        ("1.04 g/mL", "1.04", "8.68"),
        ("1.04g/ml", "1.04", "8.68"),
        ("1.048 g/mL", "1.048", "8.75"),
    ] {
        let kept = read(typed, System::UsCustomary).unwrap();
        assert_eq!(kept, density(stored), "{typed}");
        assert_eq!(kept.ounces_per_cup().unwrap().rounded(2).to_string(), shown, "{typed}");
    }
    for system in [System::Metric, System::Imperial] {
        assert_eq!(read("1.04", system), Ok(density("1.04")));
        assert_eq!(read("1.04 g/mL", system), Ok(density("1.04")));
        assert!(matches!(read("8.7 oz", system), Err(ReadError::NotANumber { .. })));
    }
    // What is no weight is no weight of a cup; nothing is guessed.
    assert!(matches!(read("8 fl oz", System::UsCustomary), Err(ReadError::WrongKind { unit: Unit::UsFluidOunce, .. })));
    assert_eq!(read("-8.7", System::UsCustomary), Err(ReadError::Negative));
    assert!(matches!(read("1.04 g/mL 2", System::UsCustomary), Err(ReadError::UnknownUnit { .. })));
    let french = NumberStyle { group: '\u{202f}', ..NumberStyle::continental("\u{a0}€") };
    let asked = read_density("1.048 g/mL", System::Metric, &french);
    let (as_thousands, as_decimals) = ("1048 g/mL".to_string(), "1,048 g/mL".to_string());
    assert_eq!(asked, Err(ReadError::Ambiguous { text: "1.048 g/mL".into(), as_thousands, as_decimals }));
}

/// An inch is 25.4 mm: 19.812 mm are 0.78 in, nearest to 12/16; 122.156 mm are 4.8093 in, nearest to 4 13/16.
#[test]
fn inches_are_shown_to_a_sixteenth() {
    let shown = |millimetres: &str, system| {
        let length = Length::from_millimetres(exact(millimetres));
        show_length(length, system, LengthUnit::of(system).symbol(), &english()).unwrap().replace('\u{a0}', " ")
    };
    for (millimetres, inches) in
        [("19.812", "3/4 in"), ("122.156", "4 13/16 in"), ("88.9", "3 1/2 in"), ("152.4", "6 in")]
    {
        assert_eq!(shown(millimetres, System::UsCustomary), inches);
    }
    assert_eq!(shown("88.9", System::Metric), "88.9 mm");
    for (typed, kept, again) in [
        ("3 1/2", "3.5 in", "3 1/2 in"),
        ("3½", "3.5 in", "3 1/2 in"),
        ("1/2", "0.5 in", "1/2 in"),
        ("3.5", "3.5 in", "3 1/2 in"),
        ("4 13/16 in", "4.8125 in", "4 13/16 in"),
        ("3.4", "3.4 in", "3.4 in"),
        ("90 mm", "90 mm", "90 mm"),
    ] {
        let read: TypedLength = read_length(typed, System::UsCustomary, &english()).unwrap();
        assert_eq!(
            (read.to_string().as_str(), show_typed_length(read, read.unit.symbol(), &english()).as_str()),
            (kept, again),
            "{typed}"
        );
    }
    assert!(matches!(read_length("1/2/3 in", System::UsCustomary, &english()), Err(ReadError::NotANumber { .. })));
}

#[test]
fn pieces_are_typed_and_shown_in_fractions() {
    let wanted = Wanted { dimensions: &[Dimension::Count], unit: Unit::Piece };
    let read = |text: &str| read_amount(text, wanted, System::UsCustomary, &english());
    for (typed, kept, shown) in [
        ("1/2", "0.5", "1/2 ea"),
        ("1 1/2", "1.5", "1 1/2 ea"),
        ("½", "0.5", "1/2 ea"),
        ("2¼ ea", "2.25", "2 1/4 ea"),
        ("1/3", "0.333333", "1/3 ea"),
        ("0.4", "0.4", "0.4 ea"),
        ("24", "24", "24 ea"),
    ] {
        let amount = read(typed).unwrap();
        assert_eq!(amount.number.to_string(), kept, "{typed}");
        let count = Count::from_pieces(amount.number);
        assert_eq!(show_count(count, "ea", &english()).replace('\u{a0}', " "), shown, "{typed}");
    }
    // A computed third, and what is none.
    let third = Exact::ONE.over(exact("3")).unwrap();
    assert_eq!(show_count(Count::from_pieces(third), "ea", &english()), "1/3\u{a0}ea");
    assert_eq!(show_count(Count::from_pieces(exact("0.7812")), "ea", &english()), "0.78\u{a0}ea");
    for refused in ["1/2/3", "1//2", "1/0", "1 1/2 1/2"] {
        assert!(matches!(read(refused), Err(ReadError::NotANumber { .. })), "{refused}");
    }
}

#[test]
fn a_bare_number_of_a_time_is_seconds() {
    let shown = |typed: &str| show_time(read_time(typed, &english()).unwrap(), &english());
    assert_eq!(
        ["90", "1:30", "45", "0:45", "600", "7.5"].map(shown),
        ["1:30", "1:30", "0:45", "0:45", "10:00", "0:07.5"]
    );
}
