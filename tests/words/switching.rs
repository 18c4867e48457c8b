//! Choosing sizes: switching them, and a price limit.

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

/// A text as it is seen: blanks that do not break are blanks, and none stands before a percent sign.
fn seen(text: impl Into<String>) -> String {
    text.into().replace('\u{a0}', " ").replace(" %", "%")
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
    assert_eq!(sell(ENTERED), "Sell 76 instead of 60 per week (+26.7%)");
    assert_eq!(sell(Sales::NotEntered), "Sell 127 for every 100 sold now (+26.7%)");
    assert_eq!(
        said::sell_formula(&together, &answer, ENTERED, &speaker(System::Metric)),
        "60 sold now × $3.80 profit per drink ÷ $3.00 profit in the new size = 76. Round up to whole drinks."
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
        "Break-even: a price 30.0% lower must bring 25.0% more customers. That is about 0.63% more for each 1% off. Price elasticity at break-even: −0.63."
    );
    assert_eq!(
        said(["5", "2"], ["5.5", "2.5"]),
        "Break-even: a price 10.0% higher can lose 20.0% of your customers. That is about 2.34% of them for each 1% more. Price elasticity at break-even: −2.34."
    );
    assert_eq!(
        said(["5", "2"], ["4.5", "2.5"]),
        "Each drink earns more, even at a price 10.0% lower. You break even with 20.0% fewer customers. Price elasticity at break-even: +2.12."
    );
    assert_eq!(
        said(["5", "2.5"], ["5.5", "2"]),
        "The price is 10.0% higher, yet each drink earns less. You break even only with 25.0% more customers. A higher price seldom brings customers. Price elasticity at break-even: +2.34."
    );
    assert_eq!(
        said(["5", "2"], ["4", "2"]),
        "Each drink earns the same. You break even with as many customers as now. Price elasticity at break-even: 0.00."
    );
    assert_eq!(said(["5", "2"], ["5", "1"]), "The price stays the same. The size alone must keep your customers.");
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
        "Mango Lane, Large: a loss of $0.20 at a price of $3.00. Each one you do not sell saves money. Fix the price or cost of this size first."
    );
    assert_eq!(
        losing(Losing::Then, "1", "0"),
        "Mango Lane, Small: no profit at a price of $3.00. No number of sales earns what you earn now. Raise the new price or cut the cost."
    );
    assert_eq!(
        losing(Losing::Both, "-0.2", "-1"),
        "Mango Lane, Large: a loss of $0.20 at a price of $3.00. Mango Lane, Small: a loss of $1.00 at a price of $3.00. No number of sales earns a profit. Fix price or cost in both sizes, or take the drink off the menu."
    );
}

#[test]
fn why_there_is_no_answer() {
    let error = |error| said::switch_error(&error, &bar());
    assert_eq!(
        error(SwitchError::SameContainer(container_id(1))),
        "Both sizes are Large. Choose a different new size."
    );
    assert_eq!(
        error(SwitchError::NotSold(container_id(2))),
        "None of these drinks is sold in Small. Choose a size you sell."
    );
    let earnings = |why| seen(said::no_earnings(&why, drink_id(1), container_id(2), &bar()));
    assert_eq!(earnings(NoEarnings::NoPrice), "Mango Lane in Small: No price yet. Set one on the drink’s page.");
    let over = ScaleError::FixedLinesOverflow { drink: drink_id(1), over: millilitres("50") };
    assert_eq!(
        earnings(NoEarnings::Offer(OfferError::Scale(over))),
        "Mango Lane in Small: The fixed amounts are 50 mL too much for this size. Lower them, or let them scale with size."
    );
    let none = PriceError::NoPriceReaches { target: share("0.9"), highest: share("0.5") };
    assert_eq!(
        earnings(NoEarnings::NoPriceReaches(none)),
        "Mango Lane in Small: No price reaches a 90.0% margin. Fees and commission leave less than 50.0% of any price. Lower the target or the fees. Or type a price here."
    );
    let from = [PriceFrom::Typed, PriceFrom::Asked, PriceFrom::Suggested].map(said::price_from);
    assert_eq!(from, ["Typed here.", "Your price in this size.", "Suggested for your target."]);
}

#[test]
fn what_is_counted_with() {
    assert_eq!(said::counted_with(ENTERED), "");
    assert_eq!(
        [1, 2].map(|without| said::counted_with(Sales::Entered { without })),
        ["1 drink has no weekly sales and is left out.", "2 drinks have no weekly sales and are left out."]
    );
    assert_eq!(said::counted_with(Sales::NotEntered), "No weekly sales are entered. The math uses 100 of each drink.");
    assert_eq!(
        said::counted_with(Sales::NothingSold),
        "Your weekly sales are all zero. The math uses 100 of each drink."
    );
}

#[test]
fn the_curve_says_where_it_crosses() {
    let crossing = |price| seen(said::crossing(&at(price).1, &speaker(System::Metric)));
    assert_eq!(
        crossing("4"),
        "The new size matches today’s $228.00 at 126.7% of customers. Above that, it earns more."
    );
    assert_eq!(crossing("1"), "The new size makes no profit, so more sales do not help. Today’s profit is $228.00.");
    let lost = Together { now: Earnings { price: money("1"), contribution: money("-5") }, ..at("4").1 };
    let lost = Together { answer: Err(Losing::Now), ..lost };
    assert_eq!(
        said::crossing(&lost, &speaker(System::Metric)),
        "Today’s profit is −$5.00. The new size earns more at every point shown."
    );
    let kept = |kept: &str, sales| seen(said::with_kept(&at("4").1, share(kept), sales, &speaker(System::Metric)));
    assert_eq!(
        kept("0.9", ENTERED),
        "At 90% of today’s customers, you earn $162.00 per week. That is $66.00 less than today’s $228.00."
    );
    assert_eq!(
        kept("1.5", Sales::NotEntered),
        "At 150% of today’s customers, 100 of each drink earn $270.00. That is $42.00 more than today’s $228.00."
    );
    let same = Together { then: at("4").1.now, ..at("4").1 };
    assert_eq!(
        seen(said::with_kept(&same, Share::WHOLE, ENTERED, &speaker(System::Metric))),
        "At 100% of today’s customers, you earn $228.00 per week. That is the same as today."
    );
}

#[test]
fn what_it_costs_once_and_when_it_is_back() {
    let back = |kept: &str, once: &str, sales| {
        let said = said::payback(&at("4").1, share(kept), money(once), sales, &speaker(System::Metric));
        (said.0, seen(said.1))
    };
    // 150% kept bring 42.00 more.
    let expected = |short: &str, long: &str| (short.to_string(), long.to_string());
    assert_eq!(
        back("1.5", "210", ENTERED),
        expected("5.0 weeks", "$210.00 one-time ÷ $42.00 more per week = 5.0 weeks.")
    );
    assert_eq!(
        back("1.5", "210", Sales::NotEntered),
        expected(
            "not known yet",
            "You earn $42.00 more on 100 of each drink. Enter weekly sales to see when $210.00 is paid back."
        )
    );
    assert_eq!(back("1.5", "0", ENTERED), expected("right away", "No one-time cost, and you earn more."));
    assert_eq!(
        back("1", "210", ENTERED),
        expected(
            "no payback",
            "At 100% of today’s customers, the new size earns no more than today. So $210.00 is not paid back."
        )
    );
    assert_eq!(
        back("1", "0", ENTERED),
        expected("no payback", "At 100% of today’s customers, the new size earns no more than today.")
    );
    let order = |packs: &str, cost: Option<&str>, in_use| {
        let order = FirstOrder { packaging: packaging_id(1), packs: exact(packs), cost: cost.map(money), in_use };
        said::first_order(&order, &bar(), &speaker(System::Metric))
    };
    assert_eq!(order("1", Some("135"), false), "Cup: 1 pack to start, $135.00.");
    assert_eq!(order("3", Some("135"), false), "Cup: 3 packs to start, $135.00.");
    assert_eq!(order("3", Some("135"), true), "Cup: another size on your menu uses this already, so no cost here.");
    assert_eq!(order("1", None, false), "Cup: no case price yet, so not counted. Enter one in Buying.");
}

fn gives_up(book: &Book, price: &str) -> Vec<String> {
    let at = at_point(book, offer_id(1, 1), money(price)).unwrap();
    give_up(&at, book, &speaker(System::Metric)).into_iter().map(seen).collect()
}

#[test]
fn what_a_price_asks_a_recipe_to_give_up() {
    // Ingredients of 1.60 and a cup of 0.20: see the engine's own tests for these figures.
    assert_eq!(gives_up(&bar(), "4"), ["This fits. You can spend $0.20 more on ingredients."]);
    assert_eq!(gives_up(&bar(), "3.6"), ["This fits, with nothing to spare."]);
    assert_eq!(
        gives_up(&bar(), "3"),
        [
            "Save $0.30 on ingredients: 18.8% of the $1.60 they cost now.",
            "Or pour 75 mL less: 325 mL instead of 400 mL.",
            "Start with Mango ($1.00). Use 44.5% less, and let the rest of the recipe fill the size.",
        ]
    );
    assert_eq!(
        gives_up(&bar(), "1.8")[2],
        "Start with Mango ($1.00). Less of this alone is not enough, as the rest fills its place."
    );
    assert_eq!(
        gives_up(&bar(), "0.3"),
        [
            "This price leaves nothing for ingredients. Other costs and your target are $0.05 over. Raise the price, or use a cheaper container.",
            "No smaller fill fits. Costs that stay the same in every size are too high.",
            "Start with Mango ($1.00). Less of this alone is not enough, as the rest fills its place.",
        ]
    );
}

#[test]
fn what_is_to_be_saved_is_rounded_up() {
    // At 3.59, 1.595 of ingredients may be spent less 0.20 of cup: 0.005 too much; 398.75 mL.
    let said = gives_up(&bar(), "3.59");
    assert_eq!(said[0], "Save $0.01 on ingredients: 0.3% of the $1.60 they cost now.");
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
            "This price leaves nothing for ingredients. Other costs and your target are $0.20 over. Raise the price, or use a cheaper container.",
            "No smaller fill fits. Costs that stay the same in every size are too high.",
        ]
    );
}
