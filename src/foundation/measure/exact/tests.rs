use rust_decimal::RoundingStrategy;

use super::*;

fn exact(text: &str) -> Exact {
    Exact::from_plain(text, 12).unwrap()
}

#[test]
fn halves_round_away_from_zero() {
    let rounded = |text: &str| exact(text).rounded(2).to_string();
    assert_eq!(rounded("1.005"), "1.01");
    assert_eq!(rounded("-1.005"), "-1.01");
    assert_eq!(rounded("1.999"), "2");
    assert_eq!(rounded("2.345"), "2.35");
}

#[test]
fn rounding_is_the_librarys() {
    // Against rust_decimal's own, over numbers of every length and every place.
    let mut seed = 1_u128;
    for round in 0..20_000_u32 {
        seed = seed.wrapping_mul(0xda94_2042_e4dd_58b5).wrapping_add(1);
        let digits = i128::try_from((seed >> 31) >> (round % 96 + 1)).unwrap() % (1 << 95);
        let signed = if round % 2 == 0 { digits } else { -digits };
        let number = Decimal::from_i128_with_scale(signed, round % 29);
        for places in [0, 2, 12, round % 28] {
            let library = number.round_dp_with_strategy(places, RoundingStrategy::MidpointAwayFromZero);
            assert_eq!(Exact(number).rounded(places), Exact(library), "{number} to {places}");
        }
    }
    for (text, rounded) in [("0.5", "1"), ("-0.5", "-1"), ("0.49", "0"), ("-0.4", "0"), ("99.5", "100")] {
        assert_eq!(exact(text).rounded(0), exact(rounded));
    }
}

#[test]
fn rounded_up_is_never_less() {
    for (text, up) in [
        ("333.089", "333.1"),
        ("333.1", "333.1"),
        ("333.14", "333.2"),
        ("333.100000000000000000000001", "333.2"),
        ("-0.14", "-0.1"),
        ("0", "0"),
    ] {
        assert_eq!(text.parse().map(Exact).unwrap().rounded_up(1), Ok(exact(up)), "{text}");
    }
    assert_eq!(Exact(Decimal::MAX).rounded_up(0), Ok(Exact(Decimal::MAX)));
}

#[test]
fn estimates_come_and_go() {
    for text in ["0", "-12.5", "0.000000000001", "123456789.123456", "999999999.99999999"] {
        let back = Exact::from_estimate(exact(text).to_estimate()).unwrap();
        let off = back.minus(exact(text)).unwrap().abs();
        assert!(off <= exact("0.000001"), "{text}: {back}");
    }
    assert_eq!(Exact::from_estimate(2.0_f64.sqrt()), Some(exact("1.414213562373")));
    assert_eq!(Exact::from_estimate(-123_456_789_012_345.0), Some(Exact::new(-123_456_789_012_345, 0)));
    for number in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, 1e15, -1e300] {
        assert_eq!(Exact::from_estimate(number), None, "{number}");
    }
}

#[test]
fn only_plain_digits_are_read() {
    for text in ["", "-", ".5", "5.", "1e3", "1_0", "+1", " 1", "1 ", "--1", "1.2.3", "1234567890"] {
        assert_eq!(Exact::from_plain(text, 6), None, "{text:?}");
    }
    assert_eq!(Exact::from_plain("0.1234567", 6), None);
    assert_eq!(exact("007.50").to_string(), "7.5");
    assert_eq!(exact("-0").to_string(), "0");
}

#[test]
fn what_cannot_be_computed_is_said() {
    assert_eq!(Exact::ONE.over(Exact::ZERO), Err(Overflow::DivisionByZero));
    let large = Exact(Decimal::MAX);
    assert_eq!(large.plus(Exact::ONE), Err(Overflow::TooLarge));
    assert_eq!(large.times(Exact::new(2, 0)), Err(Overflow::TooLarge));
}

#[test]
fn square_roots() {
    // OEIS A002193, A002194, A010467 (roots of 2, 3 and 10).
    for (square, root) in [
        ("2", "1.41421356237309504880168872"),
        ("3", "1.73205080756887729352744634"),
        ("10", "3.16227766016837933199889354"),
    ] {
        assert_eq!(exact(square).square_root().unwrap().rounded(26).to_string(), root);
    }
    for root in ["0", "1", "1.5", "0.001", "999999999", "355.2"].map(exact) {
        assert_eq!(root.times(root).unwrap().square_root(), Ok(root), "a square gives its root to the last digit");
    }
    // A step too small to change the last digit ends the search too.
    for number in 1..2000_u32 {
        let square = Exact::from(number).over(Exact::new(7, 0)).unwrap();
        let root = square.square_root().unwrap();
        let off = root.times(root).unwrap().minus(square).unwrap();
        assert!(off.abs() < exact("0.000000000001"), "{number} / 7");
    }
    let smallest = Exact(Decimal::from_parts(1, 0, 0, false, 28)).square_root();
    assert_eq!(smallest, Ok(Exact::new(1, 14)));
    // The root of 2^96 - 1 is 2^48 - 2^-49: the same as 2^48 to the 14 decimals that it can have.
    assert_eq!(Exact(Decimal::MAX).square_root(), Ok(Exact::new(1 << 48, 0)));
    assert_eq!(exact("-0.1").square_root(), Err(Overflow::RootOfNegative));
}

#[test]
fn pi_as_published() {
    // OEIS A000796.
    assert_eq!(Exact::PI.to_string(), "3.141592653589793238462643383");
}

#[test]
fn what_keeps_is_what_is_read_back() {
    for text in ["0", "-1.5", "999999999.99999999", "0.00000001", "1.100000000"] {
        assert!(exact(text).keeps(), "{text}");
    }
    for number in [Exact::new(1_000_000_000, 0), Exact::new(1, 9), Exact::ONE.over(exact("3")).unwrap()] {
        assert!(!number.keeps(), "{number}");
        assert!(serde_json::from_str::<Exact>(&serde_json::to_string(&number).unwrap()).is_err());
    }
}

#[test]
fn stored_numbers_are_strict() {
    assert_eq!(serde_json::to_string(&exact("12.50")).unwrap(), "\"12.5\"");
    assert!(serde_json::from_str::<Exact>("\"1e3\"").is_err());
    assert!(serde_json::from_str::<Exact>("12.5").is_err());
}
