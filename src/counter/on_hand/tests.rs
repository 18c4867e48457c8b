use super::*;
use crate::book::{
    Book, Container, Edit, Ingredient, IngredientId, Line, OnHand, Packaging, PackagingId, Record, Stage,
};
use crate::drink::ledger::Ledger;
use crate::drink::make::{Needs, Unmade, needs};
use crate::foundation::measure::{Amount, Unit};
use crate::support::{
    amount, book, container, day, drink, exact, ingredient, ingredient_id, line, offer, offer_id, pack, packaging_id,
    settings, share, use_of, vessel,
};

/// Two drinks of half a litre. 1: 300 mL of 1 and 200 mL of 2. 2: 500 mL of 2. A bottle each, of
/// which 30 are here; 2 kg are here of 1, nobody counted 2.
fn bar() -> Book {
    let here = |text: &str| Some(OnHand { amount: amount(text), day: day("2026-11-20") });
    book(
        settings(),
        [
            Record::Ingredient(Ingredient { on_hand: here("2 kg"), ..ingredient(1, [pack(1, "10 kg", "20")]) }),
            Record::Ingredient(ingredient(2, [pack(2, "1 L", "1")])),
            Record::Packaging(Packaging { on_hand: here("30 ea"), ..vessel(1, [pack(3, "100 ea", "10")]) }),
            Record::Container(Container { set: vec![use_of(1, "1")], ..container(1, "500 mL") }),
            Record::Drink(drink(1, "500 mL", [line(1, 1, "300 mL"), line(2, 2, "200 mL")])),
            Record::Drink(drink(2, "500 mL", [line(1, 2, "500 mL")])),
            Record::Offer(offer(1, 1, None)),
            Record::Offer(offer(2, 1, None)),
        ],
    )
}

fn of(book: &Book, makes: &[(u64, &str)]) -> Needs {
    let makes = makes.iter().map(|(drink, units)| (offer_id(*drink, 1), exact(units)));
    needs(book, &Ledger::of(book), &mut makes.into_iter()).unwrap()
}

fn put_ingredient(book: &mut Book, change: impl FnOnce(&mut Ingredient)) {
    let mut first = book.ingredient(ingredient_id(1)).unwrap().clone();
    change(&mut first);
    book.apply(&Edit::Put(Record::Ingredient(first))).unwrap();
}

const FIRST: Goods = Goods::Ingredient(IngredientId::from_random(1));
const BOTTLE: Goods = Goods::Packaging(PackagingId::from_random(1));

#[test]
fn what_reaches_and_what_is_short_in_the_unit_of_the_count() {
    let reached = |makes: &[(u64, &str)]| -> Vec<Reach> {
        reach(&bar(), &of(&bar(), makes)).unwrap().into_iter().map(|it| it.reach).collect()
    };
    let [enough, short] = [Reach::Enough, Reach::Short];
    // 300 g each of 2 kg; 30 bottles.
    assert_eq!(reached(&[(1, "6")]), [enough(amount("0.2 kg")), Reach::NotCounted, enough(amount("24 ea"))]);
    assert_eq!(reached(&[(1, "7"), (2, "25")]), [short(amount("0.1 kg")), Reach::NotCounted, short(amount("2 ea"))]);
    // Counted by the piece, and nobody weighed one.
    let mut book = bar();
    let pieces = Some(OnHand { amount: amount("9 ea"), day: day("2026-11-20") });
    put_ingredient(&mut book, |it| it.on_hand = pieces);
    let found = reach(&book, &of(&book, &[(1, "6")])).unwrap();
    assert_eq!(found[0].reach, Reach::Unknown(YieldError::NoPieceWeight(ingredient_id(1))));
    let ledger = Ledger::of(&book);
    let unknown = NotMade::Unknown(YieldError::NoPieceWeight(ingredient_id(1)));
    assert_eq!(makes(&book, &ledger, offer_id(1, 1)), Err(unknown));
}

#[test]
fn how_many_one_drink_makes() {
    let (mut book, ledger) = (bar(), Ledger::of(&bar()));
    let not_counted = vec![Goods::Ingredient(ingredient_id(2))];
    let six = Makes { count: exact("6"), runs_out: FIRST, not_counted: not_counted.clone() };
    assert_eq!(makes(&book, &ledger, offer_id(1, 1)), Ok(six.clone()));
    assert_eq!(makes(&book, &ledger, offer_id(2, 1)), Ok(Makes { count: exact("30"), runs_out: BOTTLE, not_counted }));
    assert_eq!(makes(&book, &ledger, offer_id(3, 1)), Err(NotMade::Unmade(Unmade::NotOnTheMenu)));
    // Exactly six of 300 g are in 1.8 kg, and as bought nothing is cut away.
    put_ingredient(&mut book, |it| it.on_hand = Some(OnHand { amount: amount("1.8 kg"), day: day("2026-11-20") }));
    assert_eq!(makes(&book, &ledger, offer_id(1, 1)), Ok(six.clone()));
    put_ingredient(&mut book, |it| {
        it.trim_yield = share("0.7");
        it.on_hand = Some(OnHand { amount: amount("1.8 kg"), day: day("2026-11-20") });
    });
    assert_eq!(makes(&book, &Ledger::of(&book), offer_id(1, 1)), Ok(six));
    let bottles = Packaging { on_hand: None, ..book.packaging(packaging_id(1)).unwrap().clone() };
    book.apply(&Edit::Put(Record::Packaging(bottles))).unwrap();
    assert_eq!(makes(&book, &ledger, offer_id(2, 1)), Err(NotMade::NothingCounted));
}

#[test]
fn thirds_on_the_way_cost_no_drink() {
    // 300 g trimmed out of 300 / 0.18 = 1666.67 g, rounded up at its last digit: three times that
    // is more than the 5 kg that are here by less than a millionth of a gram.
    let mut book = bar();
    put_ingredient(&mut book, |it| {
        it.trim_yield = share("0.18");
        it.on_hand = Some(OnHand { amount: amount("5 kg"), day: day("2026-11-20") });
    });
    let trimmed = Line { stage: Stage::Trimmed, ..line(1, 1, "300 mL") };
    book.apply(&Edit::Put(Record::Drink(drink(1, "500 mL", [trimmed, line(2, 2, "200 mL")])))).unwrap();
    assert_eq!(makes(&book, &Ledger::of(&book), offer_id(1, 1)).map(|it| it.count), Ok(exact("3")));
    assert_eq!(reach(&book, &of(&book, &[(1, "3")])).unwrap()[0].reach, Reach::Enough(amount("0 kg")));
    let wish = Wish { offer: offer_id(1, 1), least: Exact::ZERO, most: Some(exact("9")) };
    let best = best_use(&book, &Ledger::of(&book), &[wish]).unwrap();
    assert_eq!(best.counts, [(offer_id(1, 1), exact("3"))]);
    let three = Wish { least: exact("3"), ..wish };
    assert_eq!(best_use(&book, &Ledger::of(&book), &[three]).map(|best| best.counts), Ok(best.counts));
}

#[test]
fn what_was_used_comes_off_the_shelf() {
    let mut book = bar();
    // 7 * 300 g of 2 kg: nothing is left. 7 of 30 bottles.
    let off = used(&book, &of(&book, &[(1, "7")])).unwrap();
    assert_eq!((off.taken, off.below.as_slice()), (2, [FIRST].as_slice()));
    let applied = book.apply(&off.edit).unwrap();
    let left = |book: &Book, goods| book.on_hand(goods).map(|it| (it.amount, it.day));
    let counted_on = day("2026-11-20");
    assert_eq!(left(&book, FIRST), Some((amount("0 kg"), counted_on)));
    assert_eq!(left(&book, BOTTLE), Some((amount("23 ea"), counted_on)));
    book.apply(&applied.inverse).unwrap();
    assert_eq!(book, bar());
    // 300 g of 1.23456 kg: 0.93456, written down as 0.934.
    let here = Amount::new(exact("1.23456"), Unit::Kilogram);
    put_ingredient(&mut book, |it| it.on_hand = Some(OnHand { amount: here, day: counted_on }));
    let off = used(&book, &of(&book, &[(1, "1")])).unwrap();
    book.apply(&off.edit).unwrap();
    assert_eq!((left(&book, FIRST), off.below), (Some((amount("0.934 kg"), counted_on)), vec![]));
    assert_eq!(used(&book, &Needs::default()).map(|used| used.taken), Ok(0));
}

#[test]
fn what_cannot_be_shared_out_is_named() {
    let (book, ledger) = (bar(), Ledger::of(&bar()));
    let wish = |drink, least: &str, most: Option<&str>| Wish {
        offer: offer_id(drink, 1),
        least: exact(least),
        most: most.map(exact),
    };
    // No drink has a price: as many as can be, 30 bottles; 1 comes first, but 2 kg make six.
    let best = best_use(&book, &ledger, &[wish(1, "0", None), wish(2, "0", None), wish(3, "0", None)]).unwrap();
    assert_eq!(best.counts, [(offer_id(1, 1), exact("6")), (offer_id(2, 1), exact("24"))]);
    assert_eq!((best.by_number, best.proved, best.left_out.len()), (true, true, 1));
    assert_eq!(best.scarce, [Scarce { goods: BOTTLE, left: amount("0 ea") }], "alone 1 would reach");
    assert_eq!(best.out, []);
    // None of 1 is here, and the rest is enough.
    let mut none = book.clone();
    put_ingredient(&mut none, |it| it.on_hand = Some(OnHand { amount: amount("0 kg"), day: day("2026-11-20") }));
    let best = best_use(&none, &ledger, &[wish(1, "0", None), wish(2, "0", None)]).unwrap();
    assert_eq!(best.counts, [(offer_id(1, 1), exact("0")), (offer_id(2, 1), exact("30"))]);
    assert_eq!((best.out, best.scarce), (vec![(offer_id(1, 1), FIRST)], vec![]));
    // Seven of 1 in any case.
    let stopped = best_use(&book, &ledger, &[wish(1, "7", Some("9")), wish(2, "0", Some("9"))]);
    assert_eq!(stopped, Err(Stopped::LeastTooMany(FIRST)));
    // Nothing that 2 takes was counted, and nobody says how many.
    let mut book = book;
    let bottles = Packaging { on_hand: None, ..book.packaging(packaging_id(1)).unwrap().clone() };
    book.apply(&Edit::Put(Record::Packaging(bottles))).unwrap();
    let best = best_use(&book, &ledger, &[wish(1, "2", Some("5")), wish(2, "0", None)]).unwrap();
    assert_eq!((best.counts, best.endless), (vec![(offer_id(1, 1), exact("5"))], vec![offer_id(2, 1)]));
    assert_eq!(best_use(&book, &ledger, &[]).map(|best| (best.counts, best.proved)), Ok((vec![], true)));
}
