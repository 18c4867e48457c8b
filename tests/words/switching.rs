//! Choosing sizes: one in place of another, and back from a price point.

use brimwright::book::{Book, Container, Drink, DrinkId, Edit, Ingredient, Offer, Packaging, Record, Scope, Settings};
use brimwright::drink::fill::ScaleError;
use brimwright::drink::ledger::OfferError;
use brimwright::drink::price::PriceError;
use brimwright::foundation::measure::{Exact, Money, Share, System};
use brimwright::sizes::price_point::at_point;
use brimwright::sizes::switching::{
    BreakEven, Earnings, FirstOrder, Losing, NoEarnings, PriceFrom, Question, Sales, Switch, SwitchError, Together,
    switch,
};
use brimwright::words::price_points::give_up;
use brimwright::words::switching as said;

use crate::support::{
    book, container, container_id, drink, drink_id, exact, ingredient, line, millilitres, money, offer, offer_id, pack,
    packaging_id, settings, share, speaker, use_of, vessel,
};

/// A text as it is seen: blanks that do not break are blanks.
fn seen(text: impl Into<String>) -> String {
    text.into().replace('\u{a0}', " ")
}

/// 300 mL of base at 2.00 and 100 mL of mango at 10.00 a litre, in a large (1) and a small cup (2)
/// at 0.20; sold 60 times a week at 5.60 in the large one.
fn bar() -> Book {
    let named = |id, name: &str, price| {
        Record::Ingredient(Ingredient { name: name.into(), ..ingredient(id, [pack(1, "1 L", price)]) })
    };
    let cup = |id, name: &str, brimful| {
        Record::Container(Container { name: name.into(), set: vec![use_of(1, "1")], ..container(id, brimful) })
    };
    let smoothie =
        Drink { name: "Mango Lane".into(), ..drink(1, "400 mL", [line(1, 1, "100 mL"), line(2, 2, "300 mL")]) };
    let sold = Offer { weekly: Some(exact("60")), ..offer(1, 1, Some("5.6")) };
    book(
        Settings { target: share("0.5"), units: System::Metric, ..settings() },
        [
            named(1, "Mango", "10"),
            named(2, "Base", "2"),
            Record::Packaging(Packaging { name: "Cup".into(), ..vessel(1, [pack(1, "10 ea", "2")]) }),
            cup(1, "Large", "400 mL"),
            cup(2, "Small", "200 mL"),
            Record::Drink(smoothie),
            Record::Offer(sold),
        ],
    )
}

fn question() -> Question {
    Question { scope: Scope::Drink(drink_id(1)), from: container_id(1), to: container_id(2) }
}

/// The switch at this price in the small cup.
fn at(price: &str) -> (Switch, Together) {
    let prices: [(DrinkId, Money); 1] = [(drink_id(1), money(price))];
    let found = switch(&bar(), question(), &prices).unwrap();
    let together = found.together.unwrap();
    (found, together)
}

const ENTERED: Sales = Sales::Entered { without: 0 };

#[test]
fn how_many_to_sell() {
    // 5.60 - 1.80 = 3.80 now; 4.00 - 1.00 = 3.00 then: 60 * 3.80 / 3.00 = 76.
    let (_, together) = at("4");
    let answer = together.answer.unwrap();
    let sell = |sales| seen(said::sell_instead(together.units, &answer, sales, &speaker(System::Metric)));
    assert_eq!(sell(ENTERED), "Sell 76 instead of 60 a week (+26.7 %)");
    assert_eq!(sell(Sales::NotEntered), "Sell 127 for every 100 sold now (+26.7 %)");
    assert_eq!(
        said::sell_formula(&together, &answer, ENTERED, &speaker(System::Metric)),
        "60 sold now × $3.80 left of each ÷ $3.00 left of each in the new size = 76, rounded up to whole drinks."
    );
}

#[test]
fn elasticity_in_plain_words() {
    let said = |now: [&str; 2], then: [&str; 2]| {
        let earnings = |[price, left]: [&str; 2]| Earnings { price: money(price), contribution: money(left) };
        seen(said::elasticity(
            &BreakEven::of(earnings(now), earnings(then)).unwrap().unwrap(),
            &speaker(System::Metric),
        ))
    };
    // ln 1.25 / ln 0.7, ln 0.8 / ln 1.1, ln 0.8 / ln 0.9 and ln 1.25 / ln 1.1 (Python 3).
    assert_eq!(
        said(["6", "4"], ["4.2", "3.2"]),
        "It breaks even if the price, 30.0 % lower, brings 25.0 % more buyers: about 0.63 % more for each 1 % off. Price elasticity at break-even: −0.63."
    );
    assert_eq!(
        said(["5", "2"], ["5.5", "2.5"]),
        "It breaks even if the price, 10.0 % higher, drives away 20.0 % of the buyers: about 2.34 % of them for each 1 % more. Price elasticity at break-even: −2.34."
    );
    assert_eq!(
        said(["5", "2"], ["4.5", "2.5"]),
        "Each drink earns more although its price is 10.0 % lower: it breaks even with 20.0 % fewer buyers. Price elasticity at break-even: +2.12."
    );
    assert_eq!(
        said(["5", "2.5"], ["5.5", "2"]),
        "The price is 10.0 % higher and each drink earns less: only with 25.0 % more buyers would it break even, and a higher price seldom brings them. Price elasticity at break-even: +2.34."
    );
    assert_eq!(
        said(["5", "2"], ["4", "2"]),
        "Each drink earns the same: it breaks even with as many buyers as now. Price elasticity at break-even: 0.00."
    );
    assert_eq!(
        said(["5", "2"], ["5", "1"]),
        "The price stays as it is, so there is no price elasticity: the size alone must hold the buyers."
    );
}

#[test]
fn what_loses_money_is_named_with_what_to_mend() {
    let losing = |which, now: &str, then: &str| {
        let earnings = |left| Earnings { price: money("3"), contribution: money(left) };
        let containers = (container_id(1), container_id(2));
        said::losing(
            which,
            "Mango Lane",
            (earnings(now), earnings(then)),
            containers,
            (&bar(), &speaker(System::Metric)),
        )
    };
    assert_eq!(
        losing(Losing::Now, "-0.2", "1"),
        "Mango Lane: −$0.20 is left of $3.00 in Large, a loss. There is nothing to earn again, and each one not sold is a gain. First mend its price or cost there."
    );
    assert_eq!(
        losing(Losing::Then, "1", "0"),
        "Mango Lane: nothing is left of $3.00 in Small. However many are sold, it does not earn what it earns now. Ask more in the new size, or make it for less."
    );
    assert_eq!(
        losing(Losing::Both, "-0.2", "-1"),
        "Mango Lane: −$0.20 is left of $3.00 in Large, a loss; −$1.00 is left of $3.00 in Small, a loss. No number of them earns anything. Mend price or cost in both sizes, or take it off the menu."
    );
}

#[test]
fn why_there_is_no_answer() {
    let error = |error| said::switch_error(&error, &bar());
    assert_eq!(
        error(SwitchError::SameContainer(container_id(1))),
        "Both sizes are Large. Choose another one to go to."
    );
    assert_eq!(
        error(SwitchError::NotSold(container_id(2))),
        "None of these drinks is sold in Small. Choose a size that they are in."
    );
    let earnings = |why| seen(said::no_earnings(&why, drink_id(1), container_id(2), &bar()));
    assert_eq!(earnings(NoEarnings::NoPrice), "Mango Lane in Small: No price is asked. Enter one on its page.");
    let over = ScaleError::FixedLinesOverflow { drink: drink_id(1), over: millilitres("50") };
    assert_eq!(
        earnings(NoEarnings::Offer(OfferError::Scale(over))),
        "Mango Lane in Small: The fixed amounts alone are 50 mL more than fits here. Make the fixed amounts less, or let them follow in proportion."
    );
    let none = PriceError::NoPriceReaches { target: share("0.9"), highest: share("0.5") };
    assert_eq!(
        earnings(NoEarnings::NoPriceReaches(none)),
        "Mango Lane in Small: No price reaches a margin of 90.0 %: fees and commission alone leave less than 50.0 % of any price. Lower the target or the fees. Or type a price here."
    );
    let from = [PriceFrom::Typed, PriceFrom::Asked, PriceFrom::Suggested].map(said::price_from);
    assert_eq!(from, ["typed here", "asked there already", "suggested for the target"]);
}

#[test]
fn what_is_counted_with() {
    assert_eq!(said::counted_with(ENTERED), "");
    assert_eq!(
        [1, 2].map(|without| said::counted_with(Sales::Entered { without })),
        [
            "1 drink has no weekly sales entered and is left out of the sums.",
            "2 drinks have no weekly sales entered and are left out of the sums."
        ]
    );
    assert_eq!(
        said::counted_with(Sales::NotEntered),
        "No weekly sales are entered, so 100 of each drink are counted with, all in equal shares."
    );
    assert_eq!(
        said::counted_with(Sales::NothingSold),
        "By the weekly sales entered none is sold, so 100 of each drink are counted with, all in equal shares."
    );
}

#[test]
fn the_curve_says_where_it_crosses() {
    let crossing = |price, sales| seen(said::crossing(&at(price).1, sales, &speaker(System::Metric)));
    assert_eq!(
        crossing("4", ENTERED),
        "What is left of a week by the share of sales kept. It crosses today's $228.00 at 126.7 %: above that the new size earns more."
    );
    assert_eq!(
        crossing("1", Sales::NotEntered),
        "What is left of 100 of each drink by the share of sales kept. Nothing is left in the new size, so more sales do not help; today's is $228.00."
    );
    let lost = Together { now: Earnings { price: money("1"), contribution: money("-5") }, ..at("4").1 };
    let lost = Together { answer: Err(Losing::Now), ..lost };
    assert_eq!(
        said::crossing(&lost, ENTERED, &speaker(System::Metric)),
        "What is left of a week by the share of sales kept. Today's is −$5.00, no gain, so every share shown lies above it."
    );
    let kept = |kept: &str, sales| seen(said::with_kept(&at("4").1, share(kept), sales, &speaker(System::Metric)));
    assert_eq!(kept("0.9", ENTERED), "With 90 % of the sales kept, a week brings $162.00, today $228.00: $66.00 less.");
    assert_eq!(
        kept("1.5", Sales::NotEntered),
        "With 150 % of the sales kept, 100 of each drink bring $270.00, today $228.00: $42.00 more."
    );
    let same = Together { then: at("4").1.now, ..at("4").1 };
    assert_eq!(
        seen(said::with_kept(&same, Share::WHOLE, ENTERED, &speaker(System::Metric))),
        "With 100 % of the sales kept, a week brings $228.00, today $228.00: the same."
    );
}

#[test]
fn what_it_costs_once_and_when_it_is_back() {
    let back = |kept: &str, once: &str, sales| {
        let said = said::payback(&at("4").1, share(kept), money(once), sales, &speaker(System::Metric));
        (said.0, seen(said.1))
    };
    // 150 % kept bring 42.00 more.
    let expected = |short: &str, long: &str| (short.to_string(), long.to_string());
    assert_eq!(back("1.5", "210", ENTERED), expected("5.0 weeks", "$210.00 once ÷ $42.00 more a week = 5.0 weeks."));
    assert_eq!(
        back("1.5", "210", Sales::NotEntered),
        expected(
            "not known",
            "It brings more, $42.00 on 100 of each drink. Enter what is sold a week to see how many weeks pay $210.00 back."
        )
    );
    assert_eq!(back("1.5", "0", ENTERED), expected("at once", "It costs nothing once and brings more."));
    assert_eq!(
        back("1", "210", ENTERED),
        expected(
            "does not pay back",
            "With 100 % of the sales kept the new size brings no more than today, so $210.00 does not come back."
        )
    );
    assert_eq!(
        back("1", "0", ENTERED),
        expected("does not pay back", "With 100 % of the sales kept the new size brings no more than today.")
    );
    let order = |packs: &str, cost: Option<&str>, in_use| {
        let order = FirstOrder { packaging: packaging_id(1), packs: exact(packs), cost: cost.map(money), in_use };
        said::first_order(&order, &bar(), &speaker(System::Metric))
    };
    assert_eq!(order("1", Some("135"), false), "Cup: 1 pack at first, $135.00.");
    assert_eq!(order("3", Some("135"), false), "Cup: 3 packs at first, $135.00.");
    assert_eq!(order("3", Some("135"), true), "Cup: bought already for another size on the menu, so not counted.");
    assert_eq!(
        order("1", None, false),
        "Cup: has no pack yet, so its first order is not counted. Enter one in Buying."
    );
}

fn gives_up(book: &Book, price: &str) -> Vec<String> {
    let at = at_point(book, offer_id(1, 1), money(price)).unwrap();
    give_up(&at, book, &speaker(System::Metric)).into_iter().map(seen).collect()
}

#[test]
fn what_a_price_asks_a_recipe_to_give_up() {
    // Ingredients of 1.60 and a cup of 0.20: see the engine's own tests for these figures.
    assert_eq!(gives_up(&bar(), "4"), ["It fits: $0.20 more may go into ingredients."]);
    assert_eq!(gives_up(&bar(), "3.6"), ["It fits, with nothing to spare."]);
    assert_eq!(
        gives_up(&bar(), "3"),
        [
            "It has to save $0.30 on ingredients: 18.8 % of the $1.60 that they cost.",
            "Or pour 75 mL less: 325 mL instead of 400 mL.",
            "Look first at Mango, $1.00 of it: 44.5 % less of it would do alone, the rest of the recipe filling the size.",
        ]
    );
    assert_eq!(
        gives_up(&bar(), "1.8")[2],
        "Look first at Mango, $1.00 of it; but less of it cannot do it alone, since the rest of the recipe fills its place."
    );
    assert_eq!(
        gives_up(&bar(), "0.3"),
        [
            "The price leaves nothing for ingredients: container, fees and whatever else the target covers are $0.05 too much already. Raise the price, or take a cheaper container.",
            "No smaller fill fits either: what stays the same in every size costs too much alone.",
            "Look first at Mango, $1.00 of it; but less of it cannot do it alone, since the rest of the recipe fills its place.",
        ]
    );
}

#[test]
fn what_is_to_be_saved_is_rounded_up() {
    // At 3.59, 1.595 of ingredients may be spent less 0.20 of cup: 0.005 too much; 398.75 mL.
    let said = gives_up(&bar(), "3.59");
    assert_eq!(said[0], "It has to save $0.01 on ingredients: 0.3 % of the $1.60 that they cost.");
    assert_eq!(said[1], "Or pour 2 mL less: 398 mL instead of 400 mL.");
}

#[test]
fn free_ingredients_save_nothing() {
    let mut book = bar();
    for id in [1, 2] {
        let free = ingredient(id, [pack(1, "1 L", "0")]);
        book.apply(&Edit::Put(Record::Ingredient(free))).unwrap();
    }
    let toll = Drink { treatment_fee: Money::from_major(Exact::ONE), ..book.drink(drink_id(1)).unwrap().clone() };
    book.apply(&Edit::Put(Record::Drink(toll))).unwrap();
    assert_eq!(
        gives_up(&book, "2"),
        [
            "The price leaves nothing for ingredients: container, fees and whatever else the target covers are $0.20 too much already. Raise the price, or take a cheaper container.",
            "No smaller fill fits either: what stays the same in every size costs too much alone.",
        ]
    );
}
