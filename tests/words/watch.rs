//! What is said of changed prices, and of what the menu hangs on.

use brimwright::book::{Book, Container, Edit, Goods, Offer, Pack, Quoted, Record, Settings};
use brimwright::buying::price_watch::{
    Changed, ChangedOn, Exposure, Since, WatchError, WeeklyCost, exposure, since, what_if,
};
use brimwright::drink::ledger::Ledger;
use brimwright::foundation::measure::{Overflow, System};
use brimwright::words;

use crate::support::{
    book, container, day, drink, exact, ingredient, ingredient_id, line, money, offer, offer_id, pack, pack_id,
    settings, share, speaker, use_of, vessel,
};

/// Percentages are written with a blank that does not break.
fn spaced(text: &str) -> String {
    text.replace(" %", "\u{a0}%")
}

/// Two drinks of one juice in two bottles: a litre of it was 1.00 on 2 November and is 1.50 since the
/// 16th, with 0.50 delivery. Ten of one a week are sold at 3.00, the other has no price.
fn bar(weekly: Option<&str>) -> Book {
    let juice = Pack {
        day: Some(day("2026-11-16")),
        earlier: vec![Quoted { day: day("2026-11-02"), price: money("1") }],
        surcharge: money("0.5"),
        ..pack(1, "1 L", "1.5")
    };
    let sold = Offer { weekly: weekly.map(exact), ..offer(1, 1, Some("3")) };
    book(
        Settings { units: System::Metric, ..settings() },
        [
            Record::Ingredient(ingredient(1, [juice])),
            Record::Ingredient(ingredient(2, [pack(1, "1 L", "9")])),
            Record::Packaging(vessel(1, [pack(1, "10 ea", "1")])),
            Record::Container(Container { set: vec![use_of(1, "1")], ..container(1, "500 mL") }),
            Record::Drink(drink(1, "500 mL", [line(1, 1, "500 mL")])),
            Record::Drink(drink(2, "500 mL", [line(1, 1, "500 mL")])),
            Record::Offer(sold),
            Record::Offer(offer(2, 1, None)),
        ],
    )
}

fn followed(book: &Book, on: &str) -> Since {
    since(book, &Ledger::of(book), day(on)).unwrap()
}

fn hangs(book: &Book) -> Exposure {
    exposure(book, &Ledger::of(book)).unwrap()
}

#[test]
fn how_many_sizes_prices_moved() {
    let said = |book: &Book, on: &str| words::watch::since(&followed(book, on), day(on));
    // 3.00 leaves 72 % of a cost of 0.85, and 63 % of one of 1.10.
    let one = "1 price changed since 2 Nov 2026. 2 sizes moved: 1 fell under target.";
    assert_eq!(said(&bar(None), "2026-11-02"), one);
    let none = "No price of what you buy has changed since 16 Nov 2026, as far as the book knows.";
    assert_eq!(said(&bar(None), "2026-11-16"), none);
    let mut cheaper = bar(None);
    let price = |price: &str, on: &str| Edit::SetPackPrice {
        goods: Goods::Ingredient(ingredient_id(1)),
        pack: crate::support::pack_id(1),
        price: money(price),
        day: Some(day(on)),
    };
    cheaper.apply(&price("1.20", "2026-11-20")).unwrap();
    let back = "1 price changed since 16 Nov 2026. 2 sizes moved: none fell under target, 1 came back to it.";
    assert_eq!(said(&cheaper, "2026-11-16"), back);
    cheaper.apply(&Edit::Remove(brimwright::book::Key::Offer(offer_id(1, 1)))).unwrap();
    let one = "1 price changed since 16 Nov 2026. 1 size moved: none fell under target.";
    assert_eq!(said(&cheaper, "2026-11-16"), one);
    cheaper.apply(&Edit::Remove(brimwright::book::Key::Offer(offer_id(2, 1)))).unwrap();
    assert_eq!(said(&cheaper, "2026-11-16"), "1 price changed since 16 Nov 2026. No drink moved.");
}

#[test]
fn how_many_sizes_prices_would_move() {
    let book = bar(None);
    let goods = [Goods::Ingredient(ingredient_id(1)), Goods::Ingredient(ingredient_id(2))];
    let said =
        |goods: &[Goods], by| words::watch::what_if(&what_if(&book, &Ledger::of(&book), goods, share(by)).unwrap());
    assert_eq!(said(&goods, "0.2"), "2 sizes move: none falls under target.");
    assert_eq!(said(&goods, "-0.2"), "2 sizes move: none falls under target, 1 comes back to it.");
    assert_eq!(said(&goods[1..], "0.2"), "No drink moves.");
}

#[test]
fn what_is_not_known_from_a_day() {
    let book = bar(None);
    let said = |on| words::watch::unknown(&followed(&book, on).unknown, day(on), &book);
    let names = "Invented ingredient 2, Invented bottle 1";
    let known =
        |names: &str, on: &str| format!("No price is known from {on}, so today's counts on both sides: {names}.");
    assert_eq!(said("2026-11-02"), known(names, "2 Nov 2026"));
    assert_eq!(said("2026-11-01"), known(&format!("Invented ingredient 1, {names}"), "1 Nov 2026"));
    let goods = [1, 2, 2, 1, 2].map(|id| Goods::Ingredient(ingredient_id(id)));
    let four = "Invented ingredient 1, Invented ingredient 2, Invented ingredient 2 and 2 more";
    assert_eq!(words::watch::unknown(&goods, day("2026-11-02"), &book), known(four, "2 Nov 2026"));
    assert_eq!(words::watch::unknown(&[], day("2026-11-02"), &book), "");
    let ahead = "1 Jan 2027 is not here yet, so no price has changed since. Choose an earlier day.";
    assert_eq!(words::watch::ahead(day("2027-01-01")), ahead);
}

#[test]
fn how_a_price_changed() {
    let goods = Goods::Ingredient(ingredient_id(1));
    let said = |by: Option<&str>| {
        words::watch::change(
            &Changed { goods, before: money("1"), after: money("1"), share: by.map(share) },
            &speaker(System::UsCustomary),
        )
    };
    let expected = ["+18.2 %", "\u{2212}10.0 %", "0.0 %"].map(spaced);
    assert_eq!([Some("0.1819"), Some("-0.1"), Some("0.0001")].map(said), expected);
    assert_eq!(said(None), "was free");
}

#[test]
fn what_a_week_leaves() {
    let said = |weekly| {
        let book = bar(weekly);
        words::watch::weekly(&followed(&book, "2026-11-02").watched, &book)
    };
    let other = "Not counted: Invented drink 2, Invented 500 mL 1 (no price yet)";
    let how =
        "What is left after everything: the number sold in a usual week times what one leaves, added up over 1 size.";
    assert_eq!(said(Some("10")), format!("{how} {other}."));
    let nothing = "Of no drink it is known both what it sells for and how many are sold in a usual week. Give sizes a price, and type how many you sell in Sizes, under Sales.";
    let first = "Not counted: Invented drink 1, Invented 500 mL 1 (number not known); Invented drink 2, Invented 500 mL 1 (no price yet)";
    assert_eq!(said(None), format!("{nothing} {first}."));
}

#[test]
fn what_the_menu_hangs_on() {
    let said = |book: &Book| words::watch::exposure(&hangs(book), book, &speaker(System::UsCustomary));
    let working = |book: &Book| words::watch::exposure_working(&hangs(book), book, &speaker(System::UsCustomary));
    // Half a litre of 2.00 and a bottle of 0.10, ten times. A tenth of 10.00 * 1.50 / 2.00.
    let other = "Not counted: Invented drink 2, Invented 500 mL 1 (no price yet).";
    let sold = bar(Some("10"));
    let sentence = "A usual week takes goods for $11.00. The most of it, 90.9 %, is Invented ingredient 1. If the price of Invented ingredient 1 rises by 10 %, a week leaves $0.75 less.";
    assert_eq!(said(&sold), spaced(&format!("{sentence} {other}")).replace("by 10\u{a0}%", "by 10 %"));
    let how = "The number sold in a usual week times the cost in one drink, and what is made and not sold on top, added up over all drinks: for Invented ingredient 1 $10.00. $10.00 ÷ $11.00 is 90.9\u{a0}%. Of $2.00 paid for a pack, $1.50 is its price: 10 % of $10.00 × $1.50 ÷ $2.00 is $0.75.";
    assert_eq!(working(&sold), how);
    let idle = |book: &Book| words::watch::idle(&hangs(book).idle, book);
    assert_eq!(idle(&sold), "In no drink that is counted: Invented ingredient 2. Nothing can be said of it.");

    let unsold = bar(None);
    assert!(said(&unsold).starts_with("Of no drink it is known both what it sells for and how many"));
    assert_eq!(working(&unsold), "");
    let all = "In no drink that is counted: Invented ingredient 1, Invented ingredient 2, Invented bottle 1. Nothing can be said of them.";
    assert_eq!(idle(&unsold), all);
    assert_eq!(words::watch::idle(&[], &sold), "");

    let mut delivered = bar(Some("10"));
    let mut free = bar(Some("10"));
    for (book, surcharge, bottles) in [(&mut delivered, "2", "0.1"), (&mut free, "0", "0")] {
        let mut juice = book.ingredient(ingredient_id(1)).unwrap().clone();
        juice.packs = vec![Pack { surcharge: money(surcharge), ..pack(1, "1 L", "0") }];
        book.apply(&Edit::Put(Record::Ingredient(juice))).unwrap();
        book.apply(&Edit::Put(Record::Packaging(vessel(1, [pack(1, "10 ea", bottles)])))).unwrap();
    }
    let nothing =
        "10 % more on the price of Invented ingredient 1 changes nothing: only what is paid besides costs money.";
    assert!(said(&delivered).contains(nothing), "{}", said(&delivered));
    assert_eq!(said(&free), "All that a usual week takes is free.");
    assert_eq!(working(&free), "");
}

#[test]
fn all_others_in_one_line() {
    let book = bar(Some("10"));
    let found = hangs(&book);
    let others = |goods| words::watch::others(goods).map(|(name, sum)| (name, sum.cost, sum.less));
    assert_eq!(others(&found.goods), Some(("2 others".to_string(), money("11"), money("0.85"))));
    assert_eq!(others(&found.goods[1..]), Some(("1 other".to_string(), money("1"), money("0.1"))));
    assert_eq!(others(&[]), None);
}

#[test]
fn what_cannot_be_tried() {
    let book = bar(None);
    let said = |error| words::watch::watch_error(&error, &book);
    let beyond = "Type from -100 to 1000, such as 20 for a fifth more or -10 for a tenth less.";
    assert_eq!(said(WatchError::BeyondTried), beyond);
    let large = "The numbers are too large to compute with. Check for a digit too many.";
    assert_eq!(said(WatchError::Arithmetic(Overflow::TooLarge)), large);
    let missing = brimwright::book::Key::Ingredient(ingredient_id(9));
    let refusal = brimwright::book::Refusal::Missing { key: missing, needed_by: None };
    assert_eq!(said(WatchError::Refused(refusal.clone())), words::refusal(&refusal, &book));
}

#[test]
fn what_changed_today_and_what_it_costs_a_week() {
    let book = bar(None);
    let juice = Goods::Ingredient(ingredient_id(1));
    let changed = Changed { goods: juice, before: money("1"), after: money("1.5"), share: Some(share("0.5")) };
    let change = ChangedOn { pack: pack_id(1), changed, heard: None };
    let said = spaced(&words::watch::changed(&change, &book, &speaker(System::UsCustomary)));
    assert_eq!(said.replace("1\u{a0}L", "1 L"), spaced("1 L: was $1.00, now $1.50, +50.0 %"));

    let cost = |more: &str, counted, unknown| WeeklyCost { more: money(more), counted, unknown, without_cost: 0 };
    let said = |cost| words::watch::weekly_cost(cost, &speaker(System::UsCustomary));
    assert_eq!(said(Some(cost("6", 2, 0))), "Costs $6.00 more a week.");
    assert_eq!(said(Some(cost("-6.004", 1, 0))), "Saves $6.00 a week.");
    assert_eq!(said(Some(cost("0.004", 1, 0))), "Costs the same a week.");
    assert_eq!(said(Some(cost("0", 0, 0))), "Moves no drink.");
    assert_eq!(said(Some(cost("0", 0, 3))), "Weekly numbers not known.");
    assert_eq!(said(Some(cost("6", 2, 1))), "Costs $6.00 more a week; weekly number of 1 size not known.");
    assert_eq!(said(Some(cost("6", 2, 3))), "Costs $6.00 more a week; weekly numbers of 3 sizes not known.");
    let without_cost =
        |counted, unknown, without_cost| said(Some(WeeklyCost { without_cost, ..cost("6", counted, unknown) }));
    assert_eq!(without_cost(2, 0, 1), "Costs $6.00 more a week; cost of 1 size not known.");
    assert_eq!(
        without_cost(2, 3, 4),
        "Costs $6.00 more a week; weekly numbers of 3 sizes not known; costs of 4 sizes not known."
    );
    assert_eq!(without_cost(0, 0, 1), "Costs not known.");
    assert_eq!(without_cost(0, 2, 1), "Weekly numbers and costs not known.");
    assert_eq!(said(None), words::overflow(Overflow::TooLarge));

    let sum = |costs: &[WeeklyCost]| words::watch::weekly_costs(costs, &speaker(System::UsCustomary));
    assert_eq!(sum(&[cost("6", 1, 0), cost("5", 1, 0)]), "Costs $11.00 more a week, all changes together.");
    assert_eq!(sum(&[cost("6", 1, 0), cost("-8", 2, 1)]), "Saves $2.00 a week, all changes together.");
    assert_eq!((sum(&[]), sum(&[cost("6", 1, 0), cost("0", 0, 1)])), (String::new(), String::new()));
}
