//! What is shown reads back as what it was, in every way of writing numbers.

use brimwright::foundation::jump::Figure;
use brimwright::foundation::measure::{
    Amount, Currency, Density, Dimension, Exact, LengthUnit, Money, NumberStyle, ReadError, Share, System, Time,
    TypedLength, Unit, Volume, Wanted, both_readings, read_amount, read_density, read_endings, read_number, read_time,
    show_amount, show_inches, show_money, show_number, show_percent, show_pieces, show_time, show_typed_length,
    show_volume,
};
use proptest::prelude::*;
use proptest::sample::select;

use crate::number;

fn style() -> impl Strategy<Value = NumberStyle> {
    // French: narrow hard blank between thousands, comma for decimals (CLDR 46, fr).
    let french = NumberStyle { group: '\u{202f}', ..NumberStyle::continental("\u{a0}€") };
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

/// Two units of one kind, the larger first.
fn two_units() -> impl Strategy<Value = (Unit, Unit)> {
    (select(Unit::ALL), select(Unit::ALL)).prop_filter("a larger and a smaller unit of one kind", |(large, small)| {
        large.dimension() == small.dimension() && large.size() > small.size()
    })
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
        let shown = show_amount(amount, amount.unit.name_in(system), &style);
        prop_assert_eq!(read_amount(&shown, any_of(amount.unit), system, &style), Ok(amount), "{}", shown);
    }

    /// A field shows an amount as a number with its unit beside it.
    #[test]
    fn what_a_field_shows_is_a_number_and_its_unit(amount in amount(), system in system(), style in style()) {
        let shown = show_amount(amount, amount.unit.name_in(system), &style);
        prop_assert_eq!(Figure::shown(&shown, system, &style), Some(Figure::Amount(amount)), "{}", shown);
        let length = TypedLength::new(amount.number, LengthUnit::Inch);
        let shown = show_typed_length(length, length.unit.symbol(), &style);
        prop_assert_eq!(Figure::shown(&shown, system, &style), Some(Figure::Length(length)), "{}", shown);
    }

    /// Times are read back as minutes and seconds.
    #[test]
    fn times_in_minutes_and_seconds(seconds in typed_number(), style in style()) {
        let time = Time::from_seconds(seconds);
        let shown = show_time(time, &style);
        prop_assert_eq!(read_time(&shown, &style), Ok(time), "{}", shown);
    }

    /// What is typed per gallon, or as the weight of one cup, is shown again as it was typed.
    #[test]
    fn what_is_stored_in_another_unit_shows_as_it_was_typed(
        number in (0..=5_u32, 0..=6_u32).prop_flat_map(|(digits, places)| number(10_i64.pow(digits), places)),
        system in system(), style in style(),
    ) {
        let time = Time::from_seconds(number);
        let kept = time.per_litre(system).unwrap();
        prop_assert!(kept.seconds().keeps());
        // Of a gallon in few decimals of a liter only hundredths are told from what was typed per liter.
        let told = |kept: Exact| kept.places() > 3 || number.places() <= 2;
        if system != System::UsCustomary || told(kept.seconds()) {
            prop_assert_eq!(kept.of_labor_volume(system), Ok(time));
        }
        let kept = read_density(&show_number(number, 0, &style), system, &style).unwrap();
        prop_assert!(kept.grams_per_millilitre().keeps());
        if system.weighs_cups() && told(kept.grams_per_millilitre()) {
            prop_assert_eq!(kept.ounces_per_cup(), Ok(number));
        }
        // A density of science is stored as it is.
        let science = format!("{} g/mL", show_number(number, 0, &style));
        prop_assert_eq!(read_density(&science, system, &style), Ok(Density::from_grams_per_millilitre(number)));
    }

    /// Fractions of pieces and inches are read back as what they were.
    #[test]
    fn fractions_that_are_shown(parts in 0..200_000_i64, of in select(vec![1_u32, 2, 3, 4, 16]), style in style()) {
        let number = Exact::new(parts, 0).over(Exact::from(of)).unwrap().rounded(6);
        let pieces = show_pieces(number, &style);
        prop_assert_eq!(read_number(&pieces, &style), Ok(number), "{}", pieces);
        let inches = show_inches(number, &style);
        prop_assert_eq!(read_number(&inches, &style), Ok(number), "{}", inches);
        if parts % i64::from(of) != 0 && parts / i64::from(of) < 1000 {
            prop_assert!(inches.contains('/') || of == 3, "{}", inches);
            prop_assert!(pieces.contains('/') || of == 16, "{}", pieces);
        }
    }

    /// A number alone takes the unit beside it, whatever the field would take a bare number as.
    #[test]
    fn a_number_takes_the_unit_beside_it(
        amount in amount(), bare in select(Unit::ALL), system in system(), style in style(),
    ) {
        let typed = format!("{} {}", show_number(amount.number, 0, &style), amount.unit.typed_in(system));
        prop_assert_eq!(read_amount(&typed, any_of(bare), system, &style), Ok(amount), "{}", typed);
    }

    /// A filled field that is typed into without being typed over.
    #[test]
    fn what_is_typed_behind_an_amount_is_refused(
        amount in amount(), more in typed_number(), system in system(), style in style(),
    ) {
        let shown = show_amount(amount, amount.unit.name_in(system), &style);
        let (bare, again) = (show_number(more, 0, &style), show_amount(Amount::new(more, amount.unit), amount.unit.name_in(system), &style));
        for text in [format!("{shown}{bare}"), format!("{shown} {bare}"), format!("{shown}{again}")] {
            let refused = Err(ReadError::NotOneAmount { text: text.clone() });
            prop_assert_eq!(read_amount(&text, any_of(amount.unit), system, &style), refused);
        }
    }

    /// "3 lb 4 oz" is 3.25 lb, whatever the units, where the sum has six decimals in one of them.
    #[test]
    fn an_amount_in_two_units_is_their_sum(
        whole in number(1000, 0), units in two_units(), share in 1..1000_i64, system in system(), style in style(),
    ) {
        let (large, small) = units;
        let most = large.size().over(small.size()).unwrap();
        let rest = most.times(Exact::new(share, 3)).unwrap().rounded(3);
        prop_assume!(rest < most);
        let (first, second) = (Amount::new(whole, large), Amount::new(rest, small));
        let text = format!("{} {}", show_amount(first, first.unit.name_in(system), &style), show_amount(second, second.unit.name_in(system), &style));
        let base = |amount: Amount| amount.measure().unwrap().base();
        match read_amount(&text, any_of(large), system, &style) {
            Ok(sum) => prop_assert_eq!(base(sum), base(first).plus(base(second)).unwrap(), "{}", text),
            Err(error) => prop_assert_eq!(error, ReadError::TooFine, "{}", text),
        }
    }

    #[test]
    fn endings_with_anything_between_them(
        cents in proptest::collection::vec(0..100_i64, 0..5),
        between in select(vec![" ", "; ", ", "]),
        bare in any::<bool>(),
        style in style(),
    ) {
        let ending = |cents: &i64| Exact::new(*cents, 2);
        let written = |cents: &i64| if bare { format!("{cents:0>2}") } else { show_number(ending(cents), 2, &style) };
        let text = cents.iter().map(written).collect::<Vec<_>>().join(between);
        let endings = cents.iter().map(|cents| Money::from_major(ending(cents))).collect();
        prop_assert_eq!(read_endings(&text, 2, &style), Ok(endings), "{}", text);
    }

    /// What could mean two numbers is asked about; either answer is read, and is not asked again.
    #[test]
    fn an_answer_to_what_is_unclear_is_clear(text in "[0-9]{1,3}[.,][0-9]{3}( kg)?", style in style()) {
        if let Some(readings) = both_readings(&text, &style) {
            let [thousands, decimals] = readings.map(|reading| {
                assert_eq!(both_readings(&reading, &style), None, "{reading}");
                read_amount(&reading, any_of(Unit::Kilogram), System::Metric, &style).expect("a reading is read")
            });
            prop_assert_eq!(thousands.number, decimals.number.times(Exact::from(1000)).unwrap(), "{}", text);
        } else {
            prop_assert!(read_amount(&text, any_of(Unit::Kilogram), System::Metric, &style).is_ok(), "{}", text);
        }
    }

    /// A weight kept in grams is shown as an amount that is the same weight.
    #[test]
    fn weights_kept_in_grams(number in typed_number(), unit in select(vec![Unit::Gram, Unit::Kilogram, Unit::Ounce, Unit::Pound]), system in system(), style in style()) {
        let kept = Amount::new(number, unit).kept_mass().unwrap();
        // A book keeps nine digits before the point.
        prop_assume!(!number.is_zero() && kept.grams() < Exact::from(1_000_000_000));
        let amount = Amount::of_kept_mass(kept, system);
        let shown = show_amount(amount, amount.unit.name_in(system), &style);
        let read = read_amount(&shown, any_of(unit), system, &style);
        prop_assert_eq!(read.as_ref().ok().and_then(|amount| amount.kept_mass()), Some(kept), "{}", shown);
    }

    /// A weight of few digits in the unit of the book's own scale is shown as it was typed.
    #[test]
    fn a_weight_on_the_scale_stays_as_typed(hundredths in 1..100_000_i64, system in system()) {
        // Under a pound or a kilogram: from there on the larger unit comes first.
        let most = if system == System::Metric { 100_000 } else { 1_600 };
        let typed = Amount::new(Exact::new(1 + hundredths % (most - 1), 2), system.weight_unit());
        prop_assert_eq!(Amount::of_kept_mass(typed.kept_mass().unwrap(), system), typed);
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

    /// Measures are shown rounded; what is read back is off by no more than
    /// half of the last digit shown.
    #[test]
    fn measures_to_their_shown_digits(millilitres in number(100_000, 6), system in system(), style in style()) {
        let volume = Volume::from_millilitres(millilitres);
        let shown = show_volume(volume, system, &style).unwrap();
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
        let _ = read_endings(&text, 2, &style);
        let _ = both_readings(&text, &style);
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
            let shown = show_amount(amount, amount.unit.name_in(system), &style);
            prop_assert_eq!(read_amount(&shown, any_of(amount.unit), system, &style), Ok(amount), "{}", shown);
        }
    }
}
