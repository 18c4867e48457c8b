//! What is shown reads back as what it was, in every way of writing numbers.

use brimwright::measure::{
    Amount, Currency, Dimension, Exact, Measure, Money, NumberStyle, ReadError, Share, System, Unit, Volume, Wanted,
    read_amount, read_number, show_amount, show_measure, show_money, show_number, show_percent,
};
use proptest::prelude::*;
use proptest::sample::select;

use crate::number;

fn style() -> impl Strategy<Value = NumberStyle> {
    // French: narrow hard blank between thousands, comma for decimals (CLDR 46, fr).
    let french =
        NumberStyle { decimal: ',', group: '\u{202f}', money_before: String::new(), money_after: "\u{a0}€".into() };
    select(vec![NumberStyle::english("$"), NumberStyle::continental("\u{a0}€"), french])
}

fn system() -> impl Strategy<Value = System> {
    select(vec![System::UsCustomary, System::Metric, System::Imperial])
}

/// Whatever may be typed: up to nine digits before the decimal sign and six after it.
fn typed_number() -> impl Strategy<Value = Exact> {
    (0..=9_u32, 0..=6_u32).prop_flat_map(|(digits, places)| number(10_i64.pow(digits), places))
}

fn amount() -> impl Strategy<Value = Amount> {
    (typed_number(), select(Unit::ALL)).prop_map(|(number, unit)| Amount::new(number, unit))
}

/// A field that takes every kind of amount, bare numbers as `unit`.
fn any_of(unit: Unit) -> Wanted {
    Wanted { dimensions: &[Dimension::Volume, Dimension::Mass, Dimension::Count], unit }
}

proptest! {
    #[test]
    fn numbers(number in typed_number(), style in style()) {
        prop_assert_eq!(read_number(&show_number(number, 0, &style), &style), Ok(number));
        let with_places = show_number(number, 2, &style);
        prop_assert_eq!(read_number(&with_places, &style), Ok(number), "{}", with_places);
    }

    #[test]
    fn negative_numbers_are_refused(number in typed_number(), style in style()) {
        prop_assume!(!number.is_zero());
        prop_assert_eq!(read_number(&show_number(number.negated(), 0, &style), &style), Err(ReadError::Negative));
    }

    #[test]
    fn amounts_in_every_unit(amount in amount(), system in system(), style in style()) {
        let shown = show_amount(amount, system, &style);
        prop_assert_eq!(read_amount(&shown, any_of(amount.unit), system, &style), Ok(amount), "{}", shown);
    }

    #[test]
    fn amounts_as_stored(amount in amount()) {
        let stored = serde_json::to_string(&amount).unwrap();
        prop_assert_eq!(serde_json::from_str::<Amount>(&stored).unwrap(), amount, "{}", stored);
    }

    #[test]
    fn money(number in typed_number(), currency in select(Currency::all().collect::<Vec<_>>()), style in style()) {
        let shown = show_money(Money::from_major(number), currency, &style);
        let rounded = currency.rounded(Money::from_major(number)).major();
        prop_assume!(rounded < Exact::from(1_000_000_000));
        prop_assert_eq!(read_number(&shown, &style), Ok(rounded), "{}", shown);
    }

    #[test]
    fn shares_as_percent(fraction in number(10, 8), style in style()) {
        let share = Share::from_fraction(fraction);
        let shown = show_percent(share, &style).unwrap();
        prop_assert_eq!(read_number(&shown, &style), Ok(share.percent().unwrap().rounded(1)), "{}", shown);
    }

    /// Measures are shown rounded (calculations, 9); what is read back is off by no more than
    /// half of the last digit shown.
    #[test]
    fn measures_to_their_shown_digits(millilitres in number(100_000, 6), system in system(), style in style()) {
        let volume = Volume::from_millilitres(millilitres);
        let shown = show_measure(Measure::Volume(volume), system, &style).unwrap();
        let unit = system.drink_unit();
        let back = read_amount(&shown, any_of(unit), system, &style).unwrap();
        prop_assert_eq!(back.unit, unit, "{}", shown);
        let digits = shown.chars().skip_while(|sign| *sign != style.decimal).skip(1).take_while(char::is_ascii_digit).count();
        let half = Exact::new(5, digits as u32 + 1).times(unit.size()).unwrap();
        let off = back.volume().unwrap().unwrap().millilitres().minus(millilitres).unwrap();
        prop_assert!(off <= half && off >= half.negated(), "{}", shown);
    }

    #[test]
    fn nothing_typed_breaks_the_reader(text in any::<String>(), style in style(), system in system()) {
        let _ = read_number(&text, &style);
        let _ = read_amount(&text, any_of(Unit::Ounce), system, &style);
    }

    #[test]
    fn nothing_like_a_number_breaks_the_reader(
        text in "[-0-9.,/ \u{a0}\u{202f}½⅔$€%'\u{663}\u{ff11}a-zL]{0,14}",
        style in style(),
        system in system(),
    ) {
        if let Ok(number) = read_number(&text, &style) {
            prop_assert!(number.keeps() && !number.is_negative(), "{}", number);
        }
        if let Ok(amount) = read_amount(&text, any_of(Unit::UsFluidOunce), system, &style) {
            prop_assert!(!amount.number.is_negative(), "{}", amount);
            let shown = show_amount(amount, system, &style);
            prop_assert_eq!(read_amount(&shown, any_of(amount.unit), system, &style), Ok(amount), "{}", shown);
        }
    }
}
