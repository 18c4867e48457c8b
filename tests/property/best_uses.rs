//! What is here and its best use, against trying every count there is.

use brimwright::book::{Book, Container, Edit, Goods, Ingredient, OfferId, OnHand, Record};
use brimwright::counter::on_hand::integer_program::{Constraint, IntegerProgram};
use brimwright::counter::on_hand::{BestUse, Makes, Reach, Stopped, Wish, best_use, makes, needed, reach, used};
use brimwright::drink::ledger::Ledger;
use brimwright::drink::make::needs;
use brimwright::foundation::measure::{Amount, Dimension, Exact, Unit};
use proptest::collection::vec;
use proptest::prelude::*;

use crate::cases::cases;
use crate::menus::menu;
use crate::support::{
    book, container, container_id, day, drink, exact, ingredient, ingredient_id, line, offer, offer_id, pack, settings,
    use_of, vessel,
};

/// Nodes that are enough for every small program.
const NODE_LIMIT: u32 = 4000;

/// Small numbers, so that ties and exact fits are frequent.
fn program() -> impl Strategy<Value = IntegerProgram> {
    (1..5_usize, 0..4_usize).prop_flat_map(|(variables, constraints)| {
        let constraint = (vec(0..8_i128, variables), 0..40_i128)
            .prop_map(|(coefficients, limit)| Constraint { coefficients, limit });
        (vec(0..6_i128, variables), vec(0..6_i128, variables), vec(constraint, constraints))
            .prop_map(|(objective, upper, constraints)| IntegerProgram { objective, upper, constraints })
    })
}

/// Every choice, in the order of its numbers.
fn every(most: &[i128]) -> Vec<Vec<i128>> {
    let Some((last, before)) = most.split_last() else { return vec![Vec::new()] };
    let with = |choice: Vec<i128>| (0..=*last).map(move |units| [choice.as_slice(), &[units]].concat());
    every(before).into_iter().flat_map(with).collect()
}

fn dot(one: &[i128], other: &[i128]) -> i128 {
    one.iter().zip(other).map(|(one, other)| one * other).sum()
}

/// The choice of the greatest value; of several, the last in the order of its numbers.
fn tried_out(program: &IntegerProgram) -> Vec<i128> {
    let reaches = |units: &Vec<i128>| program.constraints.iter().all(|it| dot(&it.coefficients, units) <= it.limit);
    let choices = every(&program.upper).into_iter().filter(reaches);
    choices.max_by_key(|units| (dot(&program.objective, units), units.clone())).expect("nothing at all is a choice")
}

/// Three drinks of three ingredients in bottles. Drinks 1 and 2 share 1, drinks 2 and 3 share 2;
/// all take a bottle. What is here: of each ingredient and of the bottles, or not counted.
fn bar(takes: &[i64], here: &[Option<i64>], prices: &[Option<i64>]) -> Book {
    let millilitres = |number: i64| format!("{number} mL");
    let on_hand = |number: Option<i64>, unit| {
        number.map(|number| OnHand { amount: Amount::new(Exact::new(number, 0), unit), day: day("2026-11-25") })
    };
    let counted = |id: u64| Ingredient {
        on_hand: on_hand(here[id as usize - 1], Unit::Millilitre),
        ..ingredient(id, [pack(id, "1 L", "1")])
    };
    let bottles =
        brimwright::book::Packaging { on_hand: on_hand(here[3], Unit::Piece), ..vessel(1, [pack(9, "100 ea", "10")]) };
    let drinks = [
        drink(1, "400 mL", [line(1, 1, &millilitres(takes[0])), line(2, 3, &millilitres(400 - takes[0]))]),
        drink(2, "400 mL", [line(1, 1, &millilitres(takes[1])), line(2, 2, &millilitres(400 - takes[1]))]),
        drink(3, "400 mL", [line(1, 2, &millilitres(takes[2])), line(2, 3, &millilitres(400 - takes[2]))]),
    ];
    let offers = (1..=3).map(|id| {
        let price = prices[id as usize - 1].map(|price| price.to_string());
        Record::Offer(offer(id, 1, price.as_deref()))
    });
    let records = [
        Record::Packaging(bottles),
        Record::Container(Container { set: vec![use_of(1, "1")], ..container(1, "400 mL") }),
    ];
    let records = records.into_iter().chain((1..=3).map(counted).map(Record::Ingredient));
    book(settings(), records.chain(drinks.map(Record::Drink)).chain(offers))
}

fn a_bar() -> impl Strategy<Value = Book> {
    let takes = vec(50..350_i64, 3);
    let here = vec(proptest::option::weighted(0.8, 0..2000_i64), 4);
    let prices = vec(proptest::option::weighted(0.8, 1..6_i64), 3);
    (takes, here, prices).prop_map(|(takes, mut here, prices)| {
        here[3] = here[3].map(|bottles| bottles % 12);
        bar(&takes, &here, &prices)
    })
}

/// Whether what is here reaches for these counts.
fn can_be_made(book: &Book, counts: &[(OfferId, Exact)]) -> bool {
    let needs = needs(book, &Ledger::of(book), &mut counts.iter().copied()).unwrap();
    reach(book, &needs).unwrap().iter().all(|it| !matches!(it.reach, Reach::Short(_) | Reach::Unknown(_)))
}

/// What counts are judged by: contribution, or their number where no drink has a price.
fn worth(ledger: &Ledger, counts: &[(OfferId, Exact)]) -> Exact {
    let asked = |offer: &OfferId| ledger.get(*offer).unwrap().as_ref().unwrap().asked;
    let none = counts.iter().all(|(offer, _)| asked(offer).is_none());
    let one = |offer: &OfferId| match asked(offer) {
        _ if none => Exact::ONE,
        Some(asked) => asked.contribution.major().max(Exact::ZERO),
        None => Exact::ZERO,
    };
    counts.iter().fold(Exact::ZERO, |sum, (offer, units)| sum.plus(one(offer).times(*units).unwrap()).unwrap())
}

proptest! {
    #![proptest_config(cases(3000))]

    #[test]
    fn a_small_program_is_solved_as_by_trying_everything(program in program()) {
        let solution = program.solve(NODE_LIMIT).expect("small numbers");
        prop_assert!(solution.proved);
        prop_assert_eq!(solution.units, tried_out(&program));
    }
}

proptest! {
    #![proptest_config(cases(300))]

    #[test]
    fn the_best_use_is_that_found_by_trying_everything(book in a_bar(), most in vec(0..5_u32, 3)) {
        let ledger = Ledger::of(&book);
        let wishes: Vec<Wish> = (1..).zip(&most).map(|(id, most)| {
            Wish { offer: offer_id(id, 1), least: Exact::ZERO, most: Some(Exact::from(*most)) }
        }).collect();
        let best = best_use(&book, &ledger, &wishes).unwrap();
        prop_assert!(best.proved);
        let limits: Vec<i128> = most.iter().map(|most| i128::from(*most)).collect();
        let counts = |units: &Vec<i128>| -> Vec<(OfferId, Exact)> {
            (1..).zip(units).map(|(id, units)| (offer_id(id, 1), Exact::from(*units as u32))).collect()
        };
        let made = every(&limits).into_iter().filter(|units| can_be_made(&book, &counts(units)));
        let expected = made.max_by_key(|units| (worth(&ledger, &counts(units)), units.clone())).unwrap();
        prop_assert_eq!(&best.counts, &counts(&expected));
        // What is left of what is scarce is what was here less what it takes.
        for scarce in &best.scarce {
            let takes = needs(&book, &ledger, &mut best.counts.iter().copied()).unwrap();
            let here = book.on_hand(scarce.goods).unwrap().amount;
            let takes = needed(&book, &takes, scarce.goods, here.unit.dimension()).unwrap();
            prop_assert!(crate::near(scarce.left.number.plus(takes).unwrap(), here.number, "0.000001"));
        }
    }

    #[test]
    fn what_must_be_made_is_made_or_what_stands_in_the_way_is_named(book in a_bar(), least in vec(0..4_u32, 3)) {
        let ledger = Ledger::of(&book);
        let wishes: Vec<Wish> = (1..).zip(&least).map(|(id, least)| {
            let least = Exact::from(*least);
            Wish { offer: offer_id(id, 1), least, most: Some(least.plus(Exact::ONE).unwrap()) }
        }).collect();
        let at_least: Vec<(OfferId, Exact)> = wishes.iter().map(|wish| (wish.offer, wish.least)).collect();
        match best_use(&book, &ledger, &wishes) {
            Ok(best) => {
                prop_assert!(can_be_made(&book, &best.counts));
                prop_assert!(best.counts.iter().zip(&at_least).all(|(made, least)| made.1 >= least.1));
            }
            Err(stopped) => {
                prop_assert!(matches!(stopped, Stopped::LeastTooMany(_)), "{stopped:?}");
                prop_assert!(!can_be_made(&book, &at_least));
            }
        }
    }

    #[test]
    fn more_on_the_shelf_never_brings_less(book in a_bar(), goods in 1..4_u64, more in 0..500_i64) {
        let ledger = Ledger::of(&book);
        let wishes = [1, 2, 3].map(|id| Wish { offer: offer_id(id, 1), least: Exact::ZERO, most: Some(Exact::from(6)) });
        let before = best_use(&book, &ledger, &wishes).unwrap();
        let mut fuller = book.clone();
        let mut ingredient = book.ingredient(ingredient_id(goods)).unwrap().clone();
        if let Some(on_hand) = &mut ingredient.on_hand {
            on_hand.amount.number = on_hand.amount.number.plus(Exact::new(more, 0)).unwrap();
        }
        fuller.apply(&Edit::Put(Record::Ingredient(ingredient))).unwrap();
        let after = best_use(&fuller, &ledger, &wishes).unwrap();
        prop_assert!(worth(&ledger, &after.counts) >= worth(&ledger, &before.counts));
        for id in 1..=3 {
            let count = |book| makes(book, &ledger, offer_id(id, 1)).map(|it: Makes| it.count);
            if let (Ok(before), Ok(after)) = (count(&book), count(&fuller)) {
                prop_assert!(after >= before);
            }
        }
    }

    #[test]
    fn what_was_bought_for_so_many_makes_so_many(menu in menu(), units in 1..40_u32) {
        let mut book = menu.book.clone();
        let id = offer_id(1, 1);
        book.apply(&Edit::Put(Record::Offer(offer(1, 1, None)))).unwrap();
        let ledger = Ledger::of(&book);
        let units = Exact::from(units);
        let takes = needs(&book, &ledger, &mut [(id, units)].into_iter()).unwrap();
        // Written down to the eight decimals that a book keeps, and not below what it takes.
        let stocked = |book: &Book, goods: Goods, dimension: Dimension| {
            let unit = match dimension {
                Dimension::Mass => Unit::Gram,
                Dimension::Volume => Unit::Millilitre,
                Dimension::Count => Unit::Piece,
            };
            let bought = needed(book, &takes, goods, dimension).unwrap();
            let number = bought.rounded(8).plus(exact("0.00000001")).unwrap();
            OnHand { amount: Amount::new(number, unit), day: day("2026-11-25") }
        };
        let shelf = book.clone();
        for ingredient in shelf.ingredients() {
            let dimension = ingredient.packs[0].contents.unit.dimension();
            let on_hand = stocked(&shelf, Goods::Ingredient(ingredient.id), dimension);
            prop_assume!(on_hand.amount.number.keeps());
            book.apply(&Edit::Put(Record::Ingredient(Ingredient { on_hand: Some(on_hand), ..ingredient.clone() }))).unwrap();
        }
        let wanted = needs(&book, &ledger, &mut [(id, units)].into_iter()).unwrap();
        prop_assert!(reach(&book, &wanted).unwrap().iter().all(|it| !matches!(it.reach, Reach::Short(_))));
        // An amount under a billionth of a gram a drink would make one more of what is rounded up.
        let found = makes(&book, &ledger, id).unwrap();
        let each = needed(&book, &wanted, found.runs_out, match found.runs_out {
            Goods::Ingredient(of) => book.ingredient(of).unwrap().on_hand.unwrap().amount.unit.dimension(),
            Goods::Packaging(_) => Dimension::Count,
        }).unwrap().over(units).unwrap();
        prop_assume!(each > exact("0.001"));
        prop_assert_eq!(found.count, units);
        // And taken off the shelf nothing much is left, and none lacks.
        let off = used(&book, &wanted).unwrap();
        prop_assert_eq!(off.below, Vec::new());
        book.apply(&off.edit).unwrap();
        let left = makes(&book, &ledger, id).unwrap();
        prop_assert_eq!(left.count, Exact::ZERO);
    }
}

/// What the demo book's batch takes, and so much of it here in hundredths, another share of each.
#[test]
fn the_demo_books_morning_is_solved_to_the_end_whatever_is_short() {
    let demo = brimwright::exchange::read(include_str!("../../public/books/marrowgate-juice-hall.json")).unwrap();
    let ledger = Ledger::of(&demo);
    let batch = demo.batch(day("2026-11-26")).unwrap();
    let takes = needs(&demo, &ledger, &mut brimwright::counter::batch::planned(batch)).unwrap();
    let wishes: Vec<Wish> = brimwright::counter::batch::planned(batch)
        .map(|(offer, units)| Wish { offer, least: Exact::ZERO, most: Some(units) })
        .collect();
    for round in 0..12_i64 {
        let mut book = demo.clone();
        for (place, needed) in (0_i64..).zip(&takes.ingredients) {
            let ingredient = demo.ingredient(needed.ingredient).unwrap().clone();
            let all = needed.bought(&ingredient, Dimension::Mass).unwrap();
            let here = all.times(Exact::new(30 + (place * 29 + round * 17) % 90, 2)).unwrap().rounded(1);
            let on_hand = Some(OnHand { amount: Amount::new(here, Unit::Gram), day: day("2026-11-26") });
            book.apply(&Edit::Put(Record::Ingredient(Ingredient { on_hand, ..ingredient }))).unwrap();
        }
        let best = best_use(&book, &ledger, &wishes).unwrap();
        assert!(best.proved && best.scarce.len() > 3, "round {round}: {best:?}");
        assert!(can_be_made(&book, &best.counts));
    }
}

#[test]
fn a_drink_that_loses_money_is_made_of_what_the_others_leave() {
    // 400 mL cost 0.40 and 0.10 for the bottle: at 0.20 it loses.
    let mut book = bar(&[200, 200, 200], &[Some(1000), Some(600), None, None], &[Some(1), Some(2), Some(3)]);
    book.apply(&Edit::Put(Record::Offer(offer(1, 1, Some("0.20"))))).unwrap();
    let wishes = [1, 2, 3].map(|id| Wish { offer: offer_id(id, 1), least: Exact::ZERO, most: Some(Exact::from(3)) });
    let best: BestUse = best_use(&book, &Ledger::of(&book), &wishes).unwrap();
    // 600 mL of 2 make three of drink 3 at 2.50; five of drink 1 could be made of 1.
    assert_eq!(best.counts, [(offer_id(1, 1), exact("3")), (offer_id(2, 1), exact("0")), (offer_id(3, 1), exact("3"))]);
    assert_eq!((best.for_nothing, best.by_number), (vec![offer_id(1, 1)], false));
    assert_eq!(container_id(1), best.counts[0].0.container);
}
