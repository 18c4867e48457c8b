use super::*;

fn english(text: &str) -> Result<String, ReadError> {
    read_number(text, &NumberStyle::english("$")).map(|number| number.to_string())
}

fn german(text: &str) -> Result<String, ReadError> {
    read_number(text, &NumberStyle::continental("\u{a0}€")).map(|number| number.to_string())
}

fn liquid(text: &str) -> Result<String, ReadError> {
    let wanted = Wanted { dimensions: &[Dimension::Volume, Dimension::Mass], unit: Unit::UsFluidOunce };
    read_amount(text, wanted, System::UsCustomary, &NumberStyle::english("$")).map(|amount| amount.to_string())
}

fn weight(text: &str) -> Result<String, ReadError> {
    let wanted = Wanted { dimensions: &[Dimension::Mass], unit: Unit::Pound };
    read_amount(text, wanted, System::UsCustomary, &NumberStyle::english("$")).map(|amount| amount.to_string())
}

#[test]
fn a_number_is_read_by_the_locale() {
    for (text, number) in [
        ("12,5", "12.5"),
        ("12.5", "12.5"),
        ("1,234", "1234"),
        ("0,125", "0.125"),
        ("1.234,5", "1234.5"),
        ("1,234.5", "1234.5"),
        ("1,234,567", "1234567"),
        ("$38", "38"),
        ("90 %", "90"),
        ("\u{663}\u{664}\u{66b}\u{665}", "34.5"),
        ("\u{ff11}\u{ff12}", "12"),
        ("1\u{a0}234", "1234"),
        (" 7 ", "7"),
        (".5", "0.5"),
    ] {
        assert_eq!(english(text).as_deref(), Ok(number), "{text:?}");
    }
    for (text, number) in [("1.234", "1234"), ("12.5", "12.5"), ("1,234", "1.234"), ("9,50 €", "9.5")] {
        assert_eq!(german(text).as_deref(), Ok(number), "{text:?}");
    }
}

#[test]
fn a_change_may_fall() {
    let read = |text| read_change(text, &NumberStyle::continental("\u{a0}€"));
    assert_eq!(read("-12,5"), Ok(Exact::new(-125, 1)));
    assert_eq!(read(" \u{2212}3 %"), Ok(Exact::new(-3, 0)));
    assert_eq!(read("+20"), Ok(Exact::new(20, 0)));
    assert_eq!(read("0"), Ok(Exact::ZERO));
    assert_eq!((read("-"), read("--1")), (Err(ReadError::Empty), Err(ReadError::Negative)));
}

#[test]
fn a_sign_that_could_mean_either_is_asked() {
    let french = NumberStyle { group: '\u{202f}', ..NumberStyle::continental(" €") };
    assert_eq!(
        read_number("1.234", &french),
        Err(ReadError::Ambiguous { text: "1.234".into(), as_thousands: "1234".into(), as_decimals: "1,234".into() })
    );
}

#[test]
fn both_readings_keep_what_stands_around_the_number() {
    let french = NumberStyle { group: '\u{202f}', ..NumberStyle::continental(" €") };
    for (text, readings) in [
        ("8.875", Some(["8875", "8,875"])),
        ("8.875 €", Some(["8875 €", "8,875 €"])),
        ("1.234 kg", Some(["1234 kg", "1,234 kg"])),
        ("1 kg 1.234 g", Some(["1 kg 1234 g", "1 kg 1,234 g"])),
        ("1.234\"", Some(["1234\"", "1,234\""])),
        ("8,875", None),
        ("8.5", None),
        ("abc", None),
        ("", None),
    ] {
        let readings = readings.map(|readings| readings.map(str::to_string));
        assert_eq!(both_readings(text, &french), readings, "{text:?}");
    }
    // Where the sign groups thousands or sets decimals apart, the locale decides.
    assert_eq!(both_readings("8,875", &NumberStyle::english("$")), None);
    assert_eq!(english("8,875").as_deref(), Ok("8875"));
    assert_eq!(german("8,875").as_deref(), Ok("8.875"));
}

#[test]
fn fractions_are_read() {
    for (text, number) in
        [("1 1/2", "1.5"), ("1/4", "0.25"), ("½", "0.5"), ("2½", "2.5"), ("1/3", "0.333333"), ("2/3", "0.666667")]
    {
        assert_eq!(english(text).as_deref(), Ok(number), "{text:?}");
    }
    assert_eq!(english("1/0"), Err(not_a_number("1/0")));
}

#[test]
fn what_is_no_number_is_refused() {
    assert_eq!(english(""), Err(ReadError::Empty));
    assert_eq!(english("  "), Err(ReadError::Empty));
    for text in ["abc", "1..2", "1,2,3", "--1", "1e3", "$", "%", "1/2/3", "12 lb", "1 234"] {
        assert_eq!(english(text), Err(not_a_number(text)), "{text:?}");
    }
    // A hard blank groups only what stands in threes.
    assert_eq!(english("1\u{a0}23"), Err(ReadError::NotANumber { text: "1\u{a0}23".into() }));
    assert_eq!(english("-3"), Err(ReadError::Negative));
    assert_eq!(english("\u{2212}3"), Err(ReadError::Negative));
    assert_eq!(english("1234567890"), Err(ReadError::TooLarge));
    assert_eq!(english("999999999 2/1"), Err(ReadError::TooLarge));
    assert_eq!(english("0.1234567"), Err(ReadError::TooFine));
}

#[test]
fn amounts_carry_their_unit() {
    for (text, amount) in [
        ("12 oz", "12 fl oz"),
        ("12", "12 fl oz"),
        ("12oz.", "12 fl oz"),
        ("12 oz wt", "12 oz"),
        ("12 oz by weight", "12 oz"),
        ("3 lb 4 oz", "3.25 lb"),
        ("1 pt 4 oz", "1.25 pt"),
        ("1 1/2 cup", "1.5 cup"),
        ("0,75 l", "0.75 L"),
        ("250 ml", "250 mL"),
        ("100 g", "100 g"),
        ("8 FL OZ", "8 fl oz"),
        ("2 tablespoons", "2 tbsp"),
        ("1 gal 1 tsp", "769 tsp"),
    ] {
        assert_eq!(liquid(text).as_deref(), Ok(amount), "{text:?}");
    }
    for (text, amount) in [
        ("12 oz", "12 oz"),
        ("40", "40 lb"),
        ("3 lb 4 oz", "3.25 lb"),
        ("3lb4oz", "3.25 lb"),
        ("3 lb. 4 oz.", "3.25 lb"),
        ("3 lb .5 oz", "3.03125 lb"),
        ("2,5 kg", "2.5 kg"),
        ("50#", "50 lb"),
        ("50 #", "50 lb"),
        ("3# 4oz", "3.25 lb"),
        ("1/2", "0.5 lb"),
        ("1/2 oz", "0.5 oz"),
    ] {
        assert_eq!(weight(text).as_deref(), Ok(amount), "{text:?}");
    }
}

#[test]
fn amounts_that_are_not_one_are_refused() {
    // What stood in a field, with something typed behind it; and a second pound in an amount.
    for text in
        ["10 lb50", "10 lb 50", "10 lb50 lb", "10 lb 1 lb", "10#50", "4 oz 3 lb", "3 lb 16 oz", "3lb 4", "10 lb 0.5 lb"]
    {
        assert_eq!(weight(text), Err(ReadError::NotOneAmount { text: text.into() }), "{text:?}");
    }
    assert_eq!(liquid("12 fl oz16"), Err(ReadError::NotOneAmount { text: "12 fl oz16".into() }));
    assert!(weight("10 lb.").is_ok());
    assert_eq!(weight("10 lb.5"), Err(ReadError::NotOneAmount { text: "10 lb.5".into() }));
}

#[test]
fn whose_unit_it_is_can_be_said() {
    let read = |text: &str, system| {
        let wanted = Wanted { dimensions: &[Dimension::Volume], unit: Unit::Millilitre };
        read_amount(text, wanted, system, &NumberStyle::english("")).map(|amount| amount.unit)
    };
    for (text, us, metric, imperial) in [
        ("1 cup", Unit::UsCup, Unit::MetricCup, Unit::MetricCup),
        ("1 US cup", Unit::UsCup, Unit::UsCup, Unit::UsCup),
        ("1 metric cup", Unit::MetricCup, Unit::MetricCup, Unit::MetricCup),
        ("1 pint", Unit::UsPint, Unit::UsPint, Unit::ImperialPint),
        ("1 US pint", Unit::UsPint, Unit::UsPint, Unit::UsPint),
        ("1 UK pint", Unit::ImperialPint, Unit::ImperialPint, Unit::ImperialPint),
        ("1 oz", Unit::UsFluidOunce, Unit::UsFluidOunce, Unit::ImperialFluidOunce),
        ("1 U.S. fl. oz.", Unit::UsFluidOunce, Unit::UsFluidOunce, Unit::UsFluidOunce),
    ] {
        assert_eq!(read(text, System::UsCustomary), Ok(us), "{text}");
        assert_eq!(read(text, System::Metric), Ok(metric), "{text}");
        assert_eq!(read(text, System::Imperial), Ok(imperial), "{text}");
    }
    // No unit of ours: an imperial cup, an imperial quart.
    let unknown = |unit: &str| Err(ReadError::UnknownUnit { unit: unit.into() });
    assert_eq!(read("1 imp cup", System::UsCustomary), unknown("imp cup"));
    assert_eq!(read("1 qt", System::Imperial), unknown("qt"));
}

#[test]
fn a_wrong_unit_is_named() {
    assert_eq!(liquid("3 stone"), Err(ReadError::UnknownUnit { unit: "stone".into() }));
    assert_eq!(weight("3 cups"), Err(ReadError::WrongKind { unit: Unit::UsCup, wanted: &[Dimension::Mass] }));
    assert_eq!(liquid("oz"), Err(not_a_number("oz")));
    assert_eq!(liquid("-2 oz"), Err(ReadError::Negative));
    assert_eq!(liquid("999999999 gal 1 tsp"), Err(ReadError::TooLarge));
    let not_a_volume = ReadError::WrongKind { unit: Unit::Gram, wanted: &[Dimension::Volume] };
    assert_eq!(liquid("1 cup 100 g"), Err(not_a_volume));
}

#[test]
fn lengths() {
    let read = |text: &str, system| read_length(text, system, &NumberStyle::english("$"));
    let us = |text: &str| read(text, System::UsCustomary).unwrap().to_string();
    assert_eq!(
        ["3 1/2", "3.5 in", "3½\"", "90 mm", "9 cm.", "3 inches"].map(us),
        ["3.5 in", "3.5 in", "3.5 in", "90 mm", "9 cm", "3 in"]
    );
    assert_eq!(read("90", System::Metric).unwrap().to_string(), "90 mm");
    assert_eq!(read("90", System::Imperial).unwrap().to_string(), "90 mm");
    assert_eq!(read(" ", System::Metric), Err(ReadError::Empty));
    assert_eq!(read("-3 in", System::Metric), Err(ReadError::Negative));
    assert_eq!(read("3 oz", System::Metric), Err(ReadError::NotALength { unit: "oz".into() }));
    assert!(matches!(read("in", System::Metric), Err(ReadError::NotANumber { .. })));
}
