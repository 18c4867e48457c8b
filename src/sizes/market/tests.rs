use super::*;
use crate::book::{Container, DrinkKind, Record, SeenPrice, Settings};
use crate::foundation::measure::System;
use crate::support::{
    amount, book, container, day, drink, exact, ingredient, line, millilitres, money, offer, offer_id, pack,
    seen_price, settings,
};

const TODAY: &str = "2026-11-26";

/// Prices seen of blended drinks, and a drink of ours in 250 mL (1) and 500 mL (2) at these prices.
fn shop(seen: &[(&str, &str)], ours: [Option<&str>; 2]) -> Market {
    shop_with(seen.iter().zip(1..).map(|((size, price), id)| seen_price(id, size, price)).collect(), ours)
}

fn shop_with(seen: Vec<SeenPrice>, ours: [Option<&str>; 2]) -> Market {
    market(&bar(seen, ours), Some(DrinkKind::Blended), day(TODAY)).unwrap()
}

fn bar(seen: Vec<SeenPrice>, ours: [Option<&str>; 2]) -> Book {
    let records = [
        Record::Ingredient(ingredient(1, [pack(1, "1 L", "4")])),
        Record::Container(container(1, "250 mL")),
        Record::Container(container(2, "500 mL")),
        Record::Drink(drink(1, "1 L", [line(1, 1, "1 L")])),
    ];
    let offers = (1..).zip(ours).map(|(container, price)| Record::Offer(offer(1, container, price)));
    let settings = Settings { units: System::Metric, ..settings() };
    book(settings, records.into_iter().chain(offers).chain(seen.into_iter().map(Record::SeenPrice)))
}

fn on_curve(market: &Market, place: usize) -> OnCurve {
    market.ours[place].against.unwrap().on_curve().unwrap()
}

#[test]
fn prices_on_a_square_root_are_a_curve_through_them() {
    // 3.00 for 100 mL, and with four times the size twice the price: b is a half.
    let market = shop(&[("400 mL", "6"), ("100 mL", "3"), ("900 mL", "9")], [Some("5.40"), Some("6")]);
    let sizes: Vec<Volume> = market.seen.iter().map(|seen| seen.size).collect();
    assert_eq!(sizes, ["100", "400", "900"].map(millilitres));
    assert_eq!(market.seen[1].per_volume, money("1.5"));
    let curve = market.curve.unwrap();
    assert_eq!(curve.exponent.rounded(9), exact("0.5"));
    assert_eq!(curve.explained.map(Share::fraction).map(|it| it.rounded(9)), Some(Exact::ONE));
    // The root of two, less one (OEIS A002193).
    assert_eq!(curve.doubling.fraction().rounded(9), exact("0.414213562"));
    assert_eq!((curve.smallest, curve.largest), (millilitres("100"), millilitres("900")));
    // 3.00 times the root of 2.5 is 4.743416; 5.40 lies 13.842 % above it.
    let small = on_curve(&market, 0);
    assert_eq!(small.price.major().rounded(6), exact("4.743416"));
    assert_eq!(small.above.fraction().rounded(5), exact("0.13842"));
    // 3.00 times the root of 5 is 6.708204; 6.00 lies 10.557 % under it.
    let large = on_curve(&market, 1);
    assert_eq!(large.above.fraction().rounded(5), exact("-0.10557"));
    let drawn = curve.drawn(3);
    assert_eq!(drawn.iter().map(|(size, _)| *size).collect::<Vec<_>>(), ["100", "500", "900"].map(millilitres));
    assert_eq!(drawn[1].1, large.price);
}

#[test]
fn why_there_is_no_curve() {
    let why = |seen: &[(&str, &str)]| shop(seen, [Some("5"), None]).curve.unwrap_err();
    assert_eq!(why(&[]), NoCurve::TooFew(0));
    assert_eq!(why(&[("400 mL", "6")]), NoCurve::TooFew(1));
    assert_eq!(why(&[("400 mL", "6"), ("500 mL", "7")]), NoCurve::TooFew(2));
    assert_eq!(why(&[("400 mL", "6"), ("400 mL", "7"), ("400 mL", "6")]), NoCurve::OneSize);
    assert_eq!(why(&[("473 mL", "6"), ("16 fl oz", "7"), ("480 mL", "6")]), NoCurve::OneSize, "all but one size");
    assert!(shop(&[("400 mL", "6"), ("400 mL", "7"), ("420 mL", "6")], [None, None]).curve.is_ok());
    let ours = shop(&[("400 mL", "6")], [Some("5"), None]).ours;
    assert_eq!(ours.iter().map(|it| it.against).collect::<Vec<_>>(), [None]);
}

#[test]
fn equal_prices_are_a_flat_curve_that_explains_nothing() {
    let market = shop(&[("200 mL", "5"), ("400 mL", "5"), ("600 mL", "5")], [Some("5"), None]);
    let curve = market.curve.unwrap();
    assert_eq!(curve.explained, None);
    assert_eq!(curve.doubling.fraction().rounded(9), Exact::ZERO);
    assert_eq!(on_curve(&market, 0).above.fraction().rounded(9), Exact::ZERO);
}

#[test]
fn the_curve_is_not_read_far_beyond_the_sizes_seen() {
    let against = |smallest: &str, largest: &str| {
        let middle = "310 mL";
        let market = shop(&[(smallest, "4"), (middle, "5"), (largest, "6")], [Some("5"), Some("7")]);
        [market.ours[0].against.unwrap(), market.ours[1].against.unwrap()]
    };
    assert!(matches!(against("250 mL", "500 mL"), [Against::Within(_), Against::Within(_)]));
    assert!(matches!(against("251 mL", "499 mL"), [Against::Beyond(_), Against::Beyond(_)]));
    // 375 and 333.4 are 1.5 times 250 and under 500 / 1.5.
    assert!(matches!(against("300 mL", "333.4 mL"), [Against::Beyond(_), Against::Beyond(_)]));
    assert!(matches!(against("300 mL", "333.3 mL"), [Against::Beyond(_), Against::FarBeyond]));
    assert!(matches!(against("305 mL", "375.1 mL"), [Against::Beyond(_), Against::Beyond(_)]));
    let market = shop(&[("375.1 mL", "4"), ("400 mL", "5"), ("500 mL", "6")], [Some("5"), None]);
    assert_eq!(market.ours[0].against, Some(Against::FarBeyond));
}

#[test]
fn a_size_is_what_the_menu_says_or_else_what_is_poured() {
    let mut bar = bar(Vec::new(), [Some("5"), Some("7")]);
    let declared = Container { declared: Some(amount("240 mL")), ..container(1, "250 mL") };
    bar.apply(&crate::book::Edit::Put(Record::Container(declared))).unwrap();
    let ours = market(&bar, None, day(TODAY)).unwrap().ours;
    let sizes: Vec<_> = ours.iter().map(|ours| (ours.offer, ours.size)).collect();
    assert_eq!(sizes, [(offer_id(1, 1), millilitres("240")), (offer_id(1, 2), millilitres("500"))]);
    assert_eq!(ours[0].per_volume.major().rounded(6), exact("2.083333"));
}

#[test]
fn only_the_kind_that_is_asked_for_counts() {
    let seen = vec![
        seen_price(1, "300 mL", "5"),
        SeenPrice { kind: DrinkKind::Shot, ..seen_price(2, "60 mL", "3") },
        seen_price(3, "400 mL", "6"),
    ];
    let bar = bar(seen, [Some("5"), None]);
    let count = |kind| {
        let market = market(&bar, kind, day(TODAY)).unwrap();
        (market.seen.len(), market.ours.len())
    };
    assert_eq!(count(None), (3, 1));
    assert_eq!(count(Some(DrinkKind::Blended)), (2, 1));
    assert_eq!(count(Some(DrinkKind::Shot)), (1, 0));
}

#[test]
fn a_price_is_old_after_twelve_months() {
    let old = |seen: &str, today: &str| is_old(day(seen), day(today));
    assert!(!old("2025-11-26", TODAY) && old("2025-11-25", TODAY));
    assert!(!old("2023-02-28", "2024-02-29") && old("2023-02-27", "2024-02-29"), "a leap day");
    assert!(!old("2027-01-01", TODAY));
    let seen = SeenPrice { day: day("2020-01-01"), ..seen_price(1, "300 mL", "5") };
    assert!(shop_with(vec![seen], [None, None]).seen[0].old);
}
