//! Tests: how far each lever must go.

use super::*;
use crate::book::{
    Container, CostBasis, Drink, Goods, Headspace, Ingredient, Labour, Line, Record, Scaling, Settings, Stage,
};
use crate::drink::fill::ScaleError;
use crate::foundation::measure::System;
use crate::support::{
    amount, book, container, container_id, drink, drink_id, exact, grams, ingredient, ingredient_id, line, millilitres,
    money, offer, offer_id, pack, packaging_id, seconds, settings, share, use_of, vessel,
};

/// 300 mL of a juice and 200 mL of water in a bottle, asked at 11.00, half of which is to be
/// left. The juice takes 300 / (0.9 * 0.5) g of 2 kg at 9.00: 3.00; the water 0.20, the
/// bottle 0.80, 40 s a drink and 20 s a litre at 72.00 an hour 1.00: 5.00, and with a fifth
/// unsold 6.25. At 11.00 it may be 5.50, 4.40 without what is not sold: 0.60 too much.
fn bar(basis: CostBasis, price: Option<&str>) -> Book {
    let juice = Ingredient {
        trim_yield: share("0.9"),
        press_yield: Some(share("0.5")),
        juice_density: Some(crate::support::density("1")),
        ..ingredient(1, [pack(1, "2 kg", "9")])
    };
    let pressed = Line { stage: Stage::Pressed, ..line(1, 1, "300 mL") };
    let labour = Labour { per_drink: seconds("40"), per_litre: seconds("20"), ..Labour::default() };
    let settings = Settings {
        units: System::Metric,
        wage: money("72"),
        unsold: share("0.2"),
        target: share("0.5"),
        cost_basis: basis,
        endings: vec![money("0.99")],
        ..settings()
    };
    book(
        settings,
        [
            Record::Ingredient(juice),
            Record::Ingredient(ingredient(2, [pack(1, "1 L", "1")])),
            Record::Packaging(vessel(1, [pack(1, "10 ea", "8")])),
            Record::Container(Container { set: vec![use_of(1, "1")], ..container(1, "500 mL") }),
            Record::Container(container(2, "250 mL")),
            Record::Drink(Drink { labour, ..drink(1, "500 mL", [pressed, line(2, 2, "200 mL")]) }),
            Record::Drink(drink(2, "1 L", [line(1, 2, "1 L")])),
            Record::Offer(offer(1, 1, price)),
            Record::Offer(offer(1, 2, None)),
            Record::Offer(offer(2, 1, None)),
            Record::Offer(offer(2, 2, None)),
        ],
    )
}

/// Overhead by the week is over what the whole menu sells, not over what the offer itself does: 75.00 over 100
/// drinks are 0.75, so that 6.25 and 0.75 need 14.00 for a half; over 25 of this size alone 3.00.
#[test]
fn overhead_of_a_week_is_that_of_the_whole_menu() {
    let mut book = bar(CostBasis::Everything, Some("13.50"));
    let settings = Settings {
        overhead: money("75"),
        overhead_per: crate::book::OverheadPer::Week,
        endings: Vec::new(),
        ..book.settings().clone()
    };
    let sold = |drink, container, price, weekly| Offer {
        weekly: Some(crate::support::exact(weekly)),
        ..offer(drink, container, price)
    };
    let offers = [sold(1, 1, Some("13.50"), "25"), sold(2, 1, None, "75")].map(Record::Offer);
    put(&mut book, offers.into_iter().chain([Record::Settings(Box::new(settings))]));
    assert_eq!(at(&book, Lever::MenuPrice(offer_id(1, 1))), Ok(Figure::Money(money("14"))));
}

fn put(book: &mut Book, records: impl IntoIterator<Item = Record>) {
    for record in records {
        book.apply(&Edit::Put(record)).unwrap();
    }
}

fn ways_of(book: &Book) -> Vec<Way> {
    ways(book, offer_id(1, 1)).unwrap()
}

/// Where a lever of the book's first offer closes.
fn closing(book: &Book, lever: Lever) -> Result<Closing, WhyNot> {
    ways_of(book).into_iter().find(|way| way.lever == lever).unwrap().closes
}

fn at(book: &Book, lever: Lever) -> Result<Figure, WhyNot> {
    closing(book, lever).map(|closing| closing.at)
}

#[test]
fn every_lever_by_hand() {
    let book = bar(CostBasis::GoodsAndLabour, Some("11"));
    let ways = ways_of(&book);
    let found: Vec<_> = ways
        .iter()
        .map(|way| (way.lever, way.now, way.closes.as_ref().map(|closing| (closing.at, closing.change))))
        .collect();
    let money = |text| Figure::Money(money(text));
    let share_of = |text| Figure::Share(share(text));
    let (juice, water) = (Goods::Ingredient(ingredient_id(1)), Goods::Ingredient(ingredient_id(2)));
    let bottle = Goods::Packaging(packaging_id(1));
    let cannot = Err(&WhyNot::CannotCloseAlone);
    let expected = [
        // 6.25 / 0.5 = 12.50; 1.50 more than 11.
        (Lever::MenuPrice(offer_id(1, 1)), money("11"), Ok((money("12.5"), share("0.136363636364")))),
        // A millilitre costs 0.006 + 0.0004 + 0.0004, the rest 1.60: 2.80 / 0.0068 =
        // 411.764705882...; of headspace 88.235294117..., upwards at the sixth decimal.
        (
            Lever::Fill(container_id(1)),
            Figure::Volume(millilitres("500")),
            Ok((Figure::Volume(millilitres("411.764705")), share("-0.17647059"))),
        ),
        // 3.00 to 2.40: four fifths of the price, or five quarters of the yield.
        (Lever::PackPrice(juice), money("9"), Ok((money("7.2"), share("-0.2")))),
        (Lever::PressYield(ingredient_id(1)), share_of("0.5"), Ok((share_of("0.625"), share("0.25")))),
        // 1 - 5 / 5.5 = 1/11.
        (Lever::Unsold(drink_id(1)), share_of("0.2"), Ok((share_of("0.09090909"), share("-0.54545455")))),
        // 0.60 are 30 of the 50 s.
        (Lever::HandsTime(drink_id(1)), Figure::Time(seconds("50")), Ok((Figure::Time(seconds("20")), share("-0.6")))),
        (Lever::ContainerSet(container_id(1)), money("0.8"), Ok((money("0.2"), share("-0.75")))),
        (Lever::PackPrice(bottle), money("8"), Ok((money("2"), share("-0.75")))),
        // 0.9 * 1.25 is more than all of it; the water is 0.20 in all.
        (Lever::TrimYield(ingredient_id(1)), share_of("0.9"), cannot),
        (Lever::PackPrice(water), money("1"), cannot),
    ];
    assert_eq!(found, expected);
}

#[test]
fn one_lever_alone_is_found_as_among_all() {
    let book = bar(CostBasis::GoodsAndLabour, Some("11"));
    for one in ways_of(&book) {
        assert_eq!(way(&book, offer_id(1, 1), one.lever), Ok(Some(one)));
    }
}

#[test]
fn what_was_sold_or_is_planned_moves_with_no_lever() {
    let mut book = bar(CostBasis::GoodsAndLabour, Some("11"));
    let moving = |book: &Book| -> Vec<usize> {
        ways_of(book).into_iter().filter_map(|way| way.closes.ok()).map(|closing| closing.moves_too).collect()
    };
    let before = moving(&book);
    for record in [
        Record::Week(crate::support::week("2026-11-23", &[(1, "5", "2")])),
        Record::Scenario(crate::support::scenario(1, [offer(1, 1, None)])),
        Record::Batch(crate::support::batch("2026-11-27", &[(1, 1, "5")])),
    ] {
        book.apply(&Edit::Put(record)).unwrap();
    }
    assert_eq!(moving(&book), before);
}

#[test]
fn what_is_ours_comes_with_its_edit() {
    let book = bar(CostBasis::GoodsAndLabour, Some("11"));
    let edits: Vec<_> = ways_of(&book)
        .into_iter()
        .filter_map(|way| way.closes.ok())
        .filter_map(|closing| closing.edit.map(|edit| (edit, closing.moves_too)))
        .collect();
    let drink = book.drink(drink_id(1)).unwrap();
    let bottle = book.container(container_id(1)).unwrap();
    let headspace = Headspace::Volume(amount("88.235295 mL"));
    let unsold = Some(share("0.09090909"));
    let labour = Labour { per_drink: seconds("10"), ..drink.labour };
    let expected = [
        // With the ending .99.
        (Edit::SetPrice { offer: offer_id(1, 1), price: Some(money("12.99")) }, 0),
        (Edit::Put(Record::Container(Container { headspace, ..bottle.clone() })), 1),
        (Edit::Put(Record::Drink(Drink { unsold, ..drink.clone() })), 1),
        (Edit::Put(Record::Drink(Drink { labour, ..drink.clone() })), 1),
    ];
    assert_eq!(edits, expected);
}

#[test]
fn hands_count_where_the_target_covers_them() {
    // Goods alone: 4.00 and a fifth unsold, 5.00; at 9.99 it may be 4.995.
    let goods = bar(CostBasis::Goods, Some("9.99"));
    assert_eq!(ways_of(&goods).last().unwrap().lever, Lever::HandsTime(drink_id(1)));
    assert_eq!(closing(&goods, Lever::HandsTime(drink_id(1))), Err(WhyNot::DoesNotCount));
    // 12.48 leaves 6.24, 4.992 before what is not sold: 0.008 are 0.4 of the 50 s, and 39.6
    // of the 40 that are not by the litre.
    let everything = bar(CostBasis::Everything, Some("12.48"));
    assert_eq!(at(&everything, Lever::HandsTime(drink_id(1))), Ok(Figure::Time(seconds("49.6"))));
    // At 10.00 1.00 is too much: the 40 s are 0.80 of it.
    let low = bar(CostBasis::GoodsAndLabour, Some("10"));
    assert_eq!(at(&low, Lever::HandsTime(drink_id(1))), Err(WhyNot::CannotCloseAlone));
}

#[test]
fn there_is_no_way_where_there_is_no_gap() {
    assert_eq!(ways_of(&bar(CostBasis::GoodsAndLabour, Some("12.50"))), []);
    assert_eq!(ways_of(&bar(CostBasis::GoodsAndLabour, None)), []);
    let on_target = bar(CostBasis::GoodsAndLabour, Some("12.50"));
    assert_eq!(way(&on_target, offer_id(1, 1), Lever::MenuPrice(offer_id(1, 1))), Ok(None));
    let mut book = bar(CostBasis::Goods, Some("1"));
    let gone = offer_id(1, 9);
    assert_eq!(ways(&book, gone), Err(OfferError::Missing(Key::Offer(gone))));
    put(&mut book, [Record::Drink(drink(1, "1 L", []))]);
    assert_eq!(ways(&book, offer_id(1, 1)), Err(OfferError::Scale(ScaleError::NoLines(drink_id(1)))));
}

#[test]
fn a_lever_that_nothing_can_be_gained_from_is_left_out() {
    let mut book = bar(CostBasis::GoodsAndLabour, Some("1"));
    let whole = Ingredient { trim_yield: Share::WHOLE, ..book.ingredient(ingredient_id(1)).unwrap().clone() };
    let idle =
        Drink { labour: Labour::default(), unsold: Some(Share::ZERO), ..book.drink(drink_id(1)).unwrap().clone() };
    put(
        &mut book,
        [Record::Ingredient(whole), Record::Drink(idle), Record::Packaging(vessel(1, [pack(1, "1 ea", "0")]))],
    );
    let left: Vec<_> = ways_of(&book).into_iter().map(|way| way.lever).collect();
    let price = |id| Lever::PackPrice(Goods::Ingredient(ingredient_id(id)));
    let (menu, fill) = (Lever::MenuPrice(offer_id(1, 1)), Lever::Fill(container_id(1)));
    assert_eq!(left, [fill, price(1), menu, Lever::PressYield(ingredient_id(1)), price(2)]);
}

#[test]
fn what_is_soaked_may_gain_more_than_its_own_weight() {
    // 300 g at a yield of 3 are 100 g of 1 kg at 30.00, 3.00; at 5.00 it may be 2.50: 3.6.
    let mut book = bar(CostBasis::Goods, Some("5"));
    let soaked = |amount| Line { stage: Stage::SoakedOrBrewed, ..line(1, 1, amount) };
    let leaves = |soak: &str, packs| Ingredient { soak_yield: Some(share(soak)), ..ingredient(1, [packs]) };
    let bare = |lines: Vec<Line>| Drink { unsold: Some(Share::ZERO), ..drink(1, "300 mL", lines) };
    let bottle = |brimful| Record::Container(container(1, brimful));
    put(
        &mut book,
        [
            Record::Ingredient(leaves("3", pack(1, "1 kg", "30"))),
            bottle("300 mL"),
            Record::Drink(bare(vec![soaked("300 g")])),
        ],
    );
    let lever = Lever::SoakYield(ingredient_id(1));
    assert_eq!(at(&book, lever), Ok(Figure::Share(share("3.6"))));

    // Ten fixed pieces of 10 g at 0.10, twice as heavy once soaked, take 200 of 500 mL; the
    // rest costs 10.00 a litre: 4.00. At 7.00 it may be 3.50: 250 mL of each, 2.5. At a yield
    // of 5 they fill the bottle, and beyond it nothing can be made.
    let fixed = Line { scaling: Scaling::Fixed, ..soaked("10 ea") };
    let pieces = Ingredient { piece_weight: Some(grams("10")), ..leaves("2", pack(1, "10 ea", "1")) };
    put(
        &mut book,
        [
            Record::Ingredient(pieces),
            Record::Ingredient(ingredient(2, [pack(1, "1 L", "10")])),
            bottle("500 mL"),
            Record::Drink(bare(vec![fixed, line(2, 2, "300 mL")])),
            Record::Offer(offer(1, 1, Some("7"))),
        ],
    );
    assert_eq!(at(&book, lever), Ok(Figure::Share(share("2.5"))));
    // At 2.00 it may be 1.00: the pieces alone, and nothing of the rest.
    put(&mut book, [Record::Offer(offer(1, 1, Some("2")))]);
    assert_eq!(at(&book, lever), Ok(Figure::Share(share("5"))));
    put(&mut book, [Record::Offer(offer(1, 1, Some("1.99")))]);
    assert_eq!(at(&book, lever), Err(WhyNot::CannotCloseAlone));
}

#[test]
fn a_dear_step_must_go() {
    // 400 mL at 1.00 a litre and a step of 100 mL at 10.00: 1.40. At 1.80 it may be 0.90. One
    // step alone is 1.00, so it must go: that is under half the recipe, less than 250 mL, where the
    // rest of the recipe takes its place.
    let mut book = bar(CostBasis::Goods, Some("1.80"));
    let stepped = Line { scaling: Scaling::Stepped(amount("100 mL")), ..line(2, 1, "100 mL") };
    let smoothie = Drink { unsold: Some(Share::ZERO), ..drink(1, "500 mL", [line(1, 2, "400 mL"), stepped]) };
    put(
        &mut book,
        [
            Record::Ingredient(ingredient(1, [pack(1, "1 L", "10")])),
            Record::Container(container(1, "500 mL")),
            Record::Drink(smoothie.clone()),
        ],
    );
    let fill = Lever::Fill(container_id(1));
    assert_eq!(at(&book, fill), Ok(Figure::Volume(millilitres("249.999999"))));
    // At 2.60 it may be 1.30: with the step, 300 mL of the rest.
    put(&mut book, [Record::Offer(offer(1, 1, Some("2.60")))]);
    assert_eq!(at(&book, fill), Ok(Figure::Volume(millilitres("400"))));
    // In steps alone only whole steps can be made, and a lever that does not meet one by
    // chance closes nothing.
    put(&mut book, [Record::Drink(Drink { lines: vec![stepped], ..smoothie })]);
    assert_eq!(at(&book, fill), Err(WhyNot::CannotCloseAlone));
}

#[test]
fn no_price_closes_what_fees_alone_open() {
    let mut book = bar(CostBasis::Everything, Some("11"));
    let half_gone = Settings { commission: share("0.5"), ..book.settings().clone() };
    put(&mut book, [Record::Settings(Box::new(half_gone))]);
    assert_eq!(closing(&book, Lever::MenuPrice(offer_id(1, 1))), Err(WhyNot::CannotCloseAlone));
}

fn levers(ways: &[Way]) -> Vec<Lever> {
    ways.iter().map(|way| way.lever).collect()
}

#[test]
fn three_practical_ways_stand_first() {
    // Of what closes by hand above: the price by 13.6 % at 12.50, 18.1 % with its ending; the fill by
    // 17.6 %; the juice, which costs most, by 20 %.
    let book = bar(CostBasis::GoodsAndLabour, Some("11"));
    let Ways { practical, others } = practical_ways(&book, offer_id(1, 1)).unwrap();
    let juice = Goods::Ingredient(ingredient_id(1));
    let three = [Lever::MenuPrice(offer_id(1, 1)), Lever::Fill(container_id(1)), Lever::PackPrice(juice)];
    assert_eq!(levers(&practical), three);
    assert_eq!(practical[0].change(), Some(share("0.180909090909")));
    // What does not close it is no way, and neither is more than a half.
    let half = exact("0.5");
    let all = ways_of(&book);
    let thinkable = all.iter().filter(|way| way.change().is_some_and(|it| it.fraction().abs() <= half)).count();
    assert!(thinkable < all.len());
    let rest: Vec<Lever> = levers(&all[..thinkable]).into_iter().filter(|lever| !three.contains(lever)).collect();
    assert_eq!(levers(&others), rest);
}

#[test]
fn a_fill_under_the_labeled_size_is_no_button_and_stands_with_the_others() {
    let mut book = bar(CostBasis::GoodsAndLabour, Some("11"));
    let label = |book: &mut Book, size: &str| {
        let labeled = Container { declared: Some(amount(size)), ..book.container(container_id(1)).unwrap().clone() };
        put(book, [Record::Container(labeled)]);
    };
    let fill = Lever::Fill(container_id(1));
    // It closes at 411.764705 mL.
    label(&mut book, "411.764706 mL");
    let Ways { practical, others } = practical_ways(&book, offer_id(1, 1)).unwrap();
    let Figure::Volume(closes) = at(&book, fill).unwrap() else { panic!("a fill is a volume") };
    assert!(closes < millilitres("411.764706"));
    assert_eq!(closing(&book, fill).unwrap().edit, None);
    assert!(!levers(&practical).contains(&fill) && levers(&others).contains(&fill));
    // The smallest of the other changes takes its place: pressing 10 % more.
    assert_eq!(practical.len(), 3);
    label(&mut book, "411 mL");
    assert!(closing(&book, fill).unwrap().edit.is_some());
    assert!(levers(&practical_ways(&book, offer_id(1, 1)).unwrap().practical).contains(&fill));
}

#[test]
fn a_price_counts_with_its_ending() {
    // From 10.20 to 12.50 are 22.5 %, to 12.99 27.4 %.
    let book = bar(CostBasis::GoodsAndLabour, Some("10.20"));
    let price = Lever::MenuPrice(offer_id(1, 1));
    assert!(closing(&book, price).unwrap().change.fraction() < crate::support::exact("0.25"));
    let Ways { practical, others } = practical_ways(&book, offer_id(1, 1)).unwrap();
    assert!(!levers(&practical).contains(&price) && levers(&others).contains(&price));
}

#[test]
fn nothing_by_more_than_a_quarter_is_practical() {
    // At 7.99 nothing does it by a quarter but nothing.
    let book = bar(CostBasis::GoodsAndLabour, Some("7.99"));
    let Ways { practical, others } = practical_ways(&book, offer_id(1, 1)).unwrap();
    // By more than a half it is the menu price alone: nobody gets a case for a tenth of its price.
    assert_eq!((levers(&practical), levers(&others)), (Vec::new(), vec![Lever::MenuPrice(offer_id(1, 1))]));
    let on_target = bar(CostBasis::GoodsAndLabour, Some("12.50"));
    assert_eq!(practical_ways(&on_target, offer_id(1, 1)), Ok(Ways::default()));
}
