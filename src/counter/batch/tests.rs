use super::*;
use crate::book::{
    Batch, Book, Drink, DrinkKind, Edit, Ingredient, Line, Offer, Ready, Record, Service, Settings, Stage,
};
use crate::drink::ledger::Ledger;
use crate::drink::make::Unmade;
use crate::drink::yields::YieldError;
use crate::foundation::measure::{Amount, System};
use crate::support::{
    amount, batch, book, container, day, density, drink, exact, grams, ingredient, ingredient_id, line, measure, offer,
    offer_id, pack, packaging_id, settings, share, use_of, vessel,
};

/// Carrots as juice and trimmed, leaves by the piece, tea that is soaked, water. Two drinks of
/// half a litre in a bottle and half a label.
fn bar(settings: Settings) -> Book {
    let carrots = Ingredient {
        trim_yield: share("0.8"),
        press_yield: Some(share("0.5")),
        juice_density: Some(density("1.05")),
        ..ingredient(1, [pack(1, "10 kg", "20")])
    };
    let mint = Ingredient {
        trim_yield: share("0.5"),
        piece_weight: Some(grams("40")),
        ..ingredient(2, [pack(2, "12 ea", "9")])
    };
    let tea = Ingredient { soak_yield: Some(share("25")), ..ingredient(3, [pack(3, "1 kg", "30")]) };
    let at = |stage, line: Line| Line { stage, ..line };
    let red = drink(
        1,
        "500 mL",
        [at(Stage::Pressed, line(1, 1, "300 mL")), at(Stage::Trimmed, line(2, 1, "50 g")), line(3, 4, "150 mL")],
    );
    let green =
        drink(2, "500 mL", [at(Stage::SoakedOrBrewed, line(1, 3, "400 mL")), at(Stage::Trimmed, line(2, 2, "100 g"))]);
    let records = [
        Record::Packaging(vessel(1, [pack(4, "100 ea", "10")])),
        Record::Packaging(vessel(2, [pack(5, "100 ea", "10")])),
        Record::Container(crate::book::Container {
            set: vec![use_of(1, "1"), use_of(2, "0.5")],
            ..container(1, "500 mL")
        }),
        Record::Offer(offer(1, 1, None)),
        Record::Offer(offer(2, 1, None)),
    ];
    let water = ingredient(4, [pack(6, "1 L", "0")]);
    let ingredients = [carrots, mint, tea, water].map(Record::Ingredient);
    book(settings, records.into_iter().chain(ingredients).chain([red, green].map(Record::Drink)))
}

fn of(book: &Book, makes: &[(u64, u64, &str)]) -> Sheet {
    sheet(book, &Ledger::of(book), &batch("2026-11-26", makes)).unwrap()
}

fn metric() -> Settings {
    Settings { units: System::Metric, ..settings() }
}

/// Stations of an ingredient at a stage: exact, and rounded.
fn stations(sheet: &Sheet, id: u64, stage: Stage) -> Vec<(Station, crate::foundation::measure::Measure, Amount)> {
    let portion = sheet.portions.iter().find(|it| it.ingredient == ingredient_id(id) && it.stage == stage).unwrap();
    portion.weighed.as_ref().unwrap().iter().map(|it| (it.station, it.exact, it.amount)).collect()
}

#[test]
fn what_is_weighed_out_is_worked_out_by_hand() {
    let steps = Settings { scale_step: Some(amount("5 g")), jug_step: Some(amount("25 mL")), ..metric() };
    let sheet = of(&bar(steps), &[(1, 1, "7"), (2, 1, "3")]);
    // 7 * 300 mL of juice, 2100 * 1.05 = 2205 g; / 0.5 = 4410 g trimmed; / 0.8 = 5512.5 g bought.
    let juice = [
        (Station::Out, measure("5512.5 g"), amount("5515 g")),
        (Station::Trimmed, measure("4410 g"), amount("4410 g")),
        (Station::Juice, measure("2100 mL"), amount("2100 mL")),
    ];
    assert_eq!(stations(&sheet, 1, Stage::Pressed), juice);
    // 7 * 50 g trimmed; / 0.8.
    let trimmed =
        [(Station::Out, measure("437.5 g"), amount("440 g")), (Station::Trimmed, measure("350 g"), amount("350 g"))];
    assert_eq!(stations(&sheet, 1, Stage::Trimmed), trimmed);
    // 300 g of leaves, 600 g with their stalks, 40 g a piece: 15 of them.
    let mint =
        [(Station::Out, measure("15 ea"), amount("15 ea")), (Station::Trimmed, measure("300 g"), amount("300 g"))];
    assert_eq!(stations(&sheet, 2, Stage::Trimmed), mint);
    // 3 * 400 mL of tea at 1 g/mL, out of a 25th of it; nothing is trimmed.
    let tea =
        [(Station::Out, measure("48 g"), amount("50 g")), (Station::Soaked, measure("1200 mL"), amount("1200 mL"))];
    assert_eq!(stations(&sheet, 3, Stage::SoakedOrBrewed), tea);
    assert_eq!(stations(&sheet, 4, Stage::AsBought), [(Station::Out, measure("1050 mL"), amount("1050 mL"))]);
    // Ten bottles, five labels at half a label each.
    assert_eq!(sheet.packaging, [(packaging_id(1), exact("10")), (packaging_id(2), exact("5"))]);
    assert_eq!(sheet.left_out, []);
}

#[test]
fn steps_are_those_of_the_book_or_of_its_units() {
    let out = |settings, makes: &[(u64, u64, &str)]| stations(&of(&bar(settings), makes), 1, Stage::Trimmed)[0].2;
    // 62.5 g bought for one.
    assert_eq!(out(metric(), &[(1, 1, "1")]), amount("63 g"));
    // 62.5 / 28.349523125 = 2.2046 oz; in pounds 0.13779.
    assert_eq!(out(settings(), &[(1, 1, "1")]), amount("2.3 oz"));
    let pounds = Settings { scale_step: Some(amount("0.02 lb")), ..settings() };
    assert_eq!(out(pounds, &[(1, 1, "1")]), amount("0.14 lb"));
    // Two of them are 125 g, five times 25 g: no step more.
    let quarters = Settings { scale_step: Some(amount("25 g")), ..metric() };
    assert_eq!(out(quarters, &[(1, 1, "2")]), amount("125 g"));
    // Half a label is a whole one.
    assert_eq!(of(&bar(metric()), &[(1, 1, "1")]).packaging[1], (packaging_id(2), exact("1")));
}

#[test]
fn what_cannot_be_made_or_weighed_is_named_and_the_rest_goes_on() {
    let mut book = bar(metric());
    let mut mint = book.ingredient(ingredient_id(2)).unwrap().clone();
    mint.piece_weight = None;
    book.apply(&Edit::Put(Record::Ingredient(mint))).unwrap();
    let sheet = of(&book, &[(1, 1, "1"), (2, 1, "1"), (3, 1, "4")]);
    let left_out: Vec<_> = sheet.left_out.iter().map(|(offer, _)| *offer).collect();
    assert_eq!(left_out, [offer_id(2, 1), offer_id(3, 1)]);
    assert!(matches!(sheet.left_out[0].1, Unmade::Stuck(_)));
    assert_eq!(sheet.portions.len(), 3, "of the other drink");
    // Bought and soaked by volume: what is left after trimming has no weight without a density.
    let mut book = bar(metric());
    let tea = Ingredient {
        density: None,
        trim_yield: share("0.5"),
        packs: vec![pack(9, "1 L", "9")],
        ..book.ingredient(ingredient_id(3)).unwrap().clone()
    };
    book.apply(&Edit::Put(Record::Ingredient(tea))).unwrap();
    let sheet = of(&book, &[(2, 1, "1")]);
    let tea = sheet.portions.iter().find(|it| it.ingredient == ingredient_id(3)).unwrap();
    assert_eq!(tea.weighed, Err(YieldError::NoDensity(ingredient_id(3))));
    assert_eq!(stations(&sheet, 2, Stage::Trimmed).len(), 2);
}

#[test]
fn a_batch_begins_from_another_or_from_a_usual_day() {
    let mut book = bar(metric());
    let usual = |book: &Book| usual_day(book, day("2026-11-27"), &mut book.offers().map(Offer::id));
    let ahead = Some(Service::PackagedAhead);
    let sold =
        |drink, weekly: Option<&str>| Offer { weekly: weekly.map(exact), service: ahead, ..offer(drink, 1, None) };
    book.apply(&Edit::Put(Record::Offer(sold(1, Some("22"))))).unwrap();
    // 22 / 7 = 3.14.
    assert_eq!(usual(&book), Ok(batch("2026-11-27", &[(1, 1, "4")])));
    book.apply(&Edit::Put(Record::Offer(sold(1, Some("0"))))).unwrap();
    book.apply(&Edit::Put(Record::Offer(sold(2, Some("14"))))).unwrap();
    assert_eq!(usual(&book), Ok(batch("2026-11-27", &[(2, 1, "2")])));
    // What is made to order is not made ahead, whatever is sold of it.
    let to_order = Offer { service: Some(Service::ByTheGlass), ..sold(2, Some("14")) };
    book.apply(&Edit::Put(Record::Offer(to_order))).unwrap();
    assert_eq!(usual(&book), Ok(batch("2026-11-27", &[])));
    let mut done = batch("2026-11-26", &[(1, 1, "4"), (2, 1, "6")]);
    done.makes[0].filled = true;
    done.ready = vec![Ready { ingredient: ingredient_id(1), stage: Stage::Pressed }];
    assert_eq!(again(&done, day("2026-11-28")), batch("2026-11-28", &[(1, 1, "4"), (2, 1, "6")]));
    assert_eq!(made(&done).collect::<Vec<_>>(), [(offer_id(1, 1), exact("4"))]);
}

#[test]
fn what_is_made_ahead_goes_by_its_kind_where_nobody_says() {
    for (kind, service, ahead) in [
        (DrinkKind::Pressed, None, true),
        (DrinkKind::Shot, None, true),
        (DrinkKind::Blended, None, false),
        (DrinkKind::OverIce, None, false),
        (DrinkKind::Pressed, Some(Service::ByTheGlass), false),
        (DrinkKind::Blended, Some(Service::PackagedAhead), true),
    ] {
        let mut book = bar(metric());
        let of_kind = Drink { kind, ..book.drink(offer_id(1, 1).drink).unwrap().clone() };
        book.apply(&Edit::Put(Record::Drink(of_kind))).unwrap();
        book.apply(&Edit::Put(Record::Offer(Offer { service, ..offer(1, 1, None) }))).unwrap();
        assert_eq!(is_made_ahead(&book, offer_id(1, 1)), ahead, "{kind:?} {service:?}");
    }
}

#[test]
fn what_a_drink_took_comes_off_the_shelf_once() {
    let on = day("2026-11-26");
    let mut book = bar(metric());
    let (one, two) = (offer_id(1, 1), offer_id(2, 1));
    let mut done = batch("2026-11-26", &[(1, 1, "4"), (2, 1, "6")]);
    done.makes[0].filled = true;
    book.apply(&Edit::Put(Record::Batch(done))).unwrap();
    assert_eq!(on_shelf(book.batch(on).unwrap()), Ok(vec![(one, exact("4")), (two, exact("6"))]));
    book.apply(&taken_off(&book, on).unwrap()).unwrap();
    assert_eq!(to_take_off(book.batch(on).unwrap()), Ok(Vec::new()));
    assert_eq!(on_shelf(book.batch(on).unwrap()), Ok(vec![(two, exact("6"))]));
    // Three more of the first: only they are still to come off.
    book.apply(&takes_up(&book, on, &mut [(one, exact("7"))].into_iter()).unwrap()).unwrap();
    assert_eq!(to_take_off(book.batch(on).unwrap()), Ok(Vec::new()), "not filled yet");
    // The four that came off the shelf are filled all the same.
    assert_eq!(made(book.batch(on).unwrap()).collect::<Vec<_>>(), [(one, exact("4"))]);
    book.apply(&filled(&book, on, one, true).unwrap()).unwrap();
    assert_eq!(to_take_off(book.batch(on).unwrap()), Ok(vec![(one, exact("3"))]));
    // Fewer than came off: nothing goes back by itself.
    book.apply(&takes_up(&book, on, &mut [(one, exact("2"))].into_iter()).unwrap()).unwrap();
    book.apply(&filled(&book, on, one, true).unwrap()).unwrap();
    book.apply(&taken_off(&book, on).unwrap()).unwrap();
    assert_eq!(book.batch(on).unwrap().makes[0].off_shelf, exact("4"));
    // On another day it begins anew.
    assert_eq!(again(book.batch(on).unwrap(), day("2026-11-27")), batch("2026-11-27", &[(1, 1, "2"), (2, 1, "6")]));
}

#[test]
fn what_came_off_stays_off_where_a_drink_or_the_plan_is_taken_out() {
    let on = day("2026-11-26");
    let mut book = bar(metric());
    let (one, two) = (offer_id(1, 1), offer_id(2, 1));
    let mut done = batch("2026-11-26", &[(1, 1, "4"), (2, 1, "6")]);
    done.makes[0].filled = true;
    done.ready = vec![Ready { ingredient: ingredient_id(1), stage: Stage::Pressed }];
    book.apply(&Edit::Put(Record::Batch(done))).unwrap();
    book.apply(&taken_off(&book, on).unwrap()).unwrap();
    let all_again = |book: &mut Book, units: &str| {
        book.apply(&takes_up(book, on, &mut [(one, exact(units))].into_iter()).unwrap()).unwrap();
        book.apply(&filled(book, on, one, true).unwrap()).unwrap();
        to_take_off(book.batch(on).unwrap()).unwrap()
    };
    // Taken out of the plan and added again: the four are off the shelf already.
    book.apply(&without(&book, on, one).unwrap()).unwrap();
    assert_eq!(planned(book.batch(on).unwrap()).collect::<Vec<_>>(), [(two, exact("6"))]);
    assert_eq!(on_shelf(book.batch(on).unwrap()), Ok(vec![(two, exact("6"))]));
    assert_eq!(all_again(&mut book, "4"), []);
    assert_eq!(all_again(&mut book, "6"), [(one, exact("2"))]);
    // The same where the whole plan is deleted, and begun again in whatever way.
    book.apply(&deleted(&book, on).unwrap()).unwrap();
    let left = book.batch(on).unwrap();
    assert!(!left.is_planned());
    assert_eq!((planned(left).count(), left.ready.len()), (0, 0));
    assert_eq!(again(left, day("2026-11-27")), batch("2026-11-27", &[]));
    for plan in [&[(1, 1, "4"), (2, 1, "1")][..], &[(2, 1, "1")], &[]] {
        let mut book = book.clone();
        let edit = begun(&book, batch("2026-11-26", plan));
        book.apply(&edit).unwrap();
        assert_eq!(all_again(&mut book, "4"), [], "{plan:?}");
        assert_eq!(all_again(&mut book, "5"), [(one, exact("1"))], "{plan:?}");
    }
    // A plan of which nothing came off leaves nothing.
    book.apply(&begun(&book, batch("2026-11-27", &[(2, 1, "6")]))).unwrap();
    assert!(book.batch(day("2026-11-27")).unwrap().is_planned());
    book.apply(&deleted(&book, day("2026-11-27")).unwrap()).unwrap();
    assert_eq!(book.batch(day("2026-11-27")), None);
    assert_eq!(deleted(&book, day("2026-11-27")), None);
}

#[test]
fn edits_of_a_batch() {
    let on = day("2026-11-26");
    let mut book = bar(metric());
    assert_eq!(filled(&book, on, offer_id(1, 1), true), None, "there is none");
    book.apply(&Edit::Put(Record::Batch(batch("2026-11-26", &[(1, 1, "4")])))).unwrap();
    let mut change = |edit: &dyn Fn(&Book) -> Option<Edit>| -> Batch {
        let edit = edit(&book).unwrap();
        book.apply(&edit).unwrap();
        book.batch(on).unwrap().clone()
    };
    let (red, green) = (offer_id(1, 1), offer_id(2, 1));
    assert!(change(&|book| filled(book, on, red, true)).makes[0].filled);
    // The same number keeps the tick, another takes it back; a new drink comes last.
    let counts = [(red, exact("4")), (green, exact("3"))];
    let after = change(&|book| takes_up(book, on, &mut counts.into_iter()));
    assert_eq!((after.makes[0].filled, after.makes[1].offer(), after.makes[1].units), (true, green, exact("3")));
    let after = change(&|book| takes_up(book, on, &mut [(red, exact("5"))].into_iter()));
    assert_eq!((after.makes[0].filled, after.makes[0].units), (false, exact("5")));
    let pressed = Ready { ingredient: ingredient_id(1), stage: Stage::Pressed };
    let tick = |done| move |book: &Book| ready(book, on, pressed.ingredient, pressed.stage, done);
    assert_eq!(change(&tick(true)).ready, [pressed]);
    assert_eq!(change(&tick(true)).ready, [pressed], "ticked once");
    assert_eq!(change(&tick(false)).ready, []);
    assert_eq!(change(&|book| without(book, on, red)), batch("2026-11-26", &[(2, 1, "3")]));
}
