//! What is said of changed prices, and of the biggest cost drivers.

use brimwright::book::{Book, Container, Edit, Goods, Offer, Pack, Quoted, Record, Settings};
use brimwright::buying::price_watch::{
    Changed, ChangedOn, Exposure, Since, WatchError, WeeklyCost, exposure, since, what_if,
};
use brimwright::drink::ledger::{Ledger, OfferChange, OfferStatus, Snapshot};
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
fn how_many_sizes_dropped_and_what_costs_more_in_them() {
    let book = bar(None);
    let found = followed(&book, "2026-11-02");
    assert_eq!(words::watch::fallen_since(&found, day("2026-11-02")), "1 size dropped below target since Nov 2, 2026.");
    let name = book.name(brimwright::book::Key::Ingredient(ingredient_id(1)));
    let with = words::watch::risen_in_fallen(&found.watched, &book);
    assert_eq!(with, format!("What costs more in it: {name}."));
    let none = followed(&book, "2026-11-16");
    let said = words::watch::fallen_since(&none, day("2026-11-16"));
    assert_eq!(said, "No size dropped below target since Nov 16, 2026.");
    assert_eq!(words::watch::risen_in_fallen(&none.watched, &book), "");
    let juice = [Goods::Ingredient(ingredient_id(1))];
    let tried = |by| words::watch::would_fall(&what_if(&book, &Ledger::of(&book), &juice, share(by)).unwrap());
    // 3.00 leaves 63% at 1.50 already; cheaper, none falls.
    assert_eq!(
        (&*tried("0.5"), &*tried("-0.5")),
        ("No size would drop below target.", "No size would drop below target.")
    );
    let mut cheap = bar(None);
    let price =
        Edit::SetPackPrice { goods: juice[0], pack: pack_id(1), price: money("1"), day: Some(day("2026-11-20")) };
    cheap.apply(&price).unwrap();
    let tried = what_if(&cheap, &Ledger::of(&cheap), &juice, share("0.5")).unwrap();
    assert_eq!(words::watch::would_fall(&tried), "1 size would drop below target.");
}

#[test]
fn how_many_sizes_prices_moved() {
    let said = |book: &Book, on: &str| words::watch::since(&followed(book, on), day(on));
    // 3.00 leaves 72% of a cost of 0.85, and 63% of one of 1.10.
    let one = "1 price changed since Nov 2, 2026. 2 sizes affected, 1 dropped below target.";
    assert_eq!(said(&bar(None), "2026-11-02"), one);
    let none = "No price has changed since Nov 16, 2026.";
    assert_eq!(said(&bar(None), "2026-11-16"), none);
    let mut cheaper = bar(None);
    let price = |price: &str, on: &str| Edit::SetPackPrice {
        goods: Goods::Ingredient(ingredient_id(1)),
        pack: crate::support::pack_id(1),
        price: money(price),
        day: Some(day(on)),
    };
    cheaper.apply(&price("1.20", "2026-11-20")).unwrap();
    let back =
        "1 price changed since Nov 16, 2026. 2 sizes affected, none dropped below target. 1 size is back on target.";
    assert_eq!(said(&cheaper, "2026-11-16"), back);
    cheaper.apply(&Edit::Remove(brimwright::book::Key::Offer(offer_id(1, 1)))).unwrap();
    let one = "1 price changed since Nov 16, 2026. 1 size affected, none dropped below target.";
    assert_eq!(said(&cheaper, "2026-11-16"), one);
    cheaper.apply(&Edit::Remove(brimwright::book::Key::Offer(offer_id(2, 1)))).unwrap();
    assert_eq!(said(&cheaper, "2026-11-16"), "1 price changed since Nov 16, 2026. No sizes affected.");
}

#[test]
fn how_many_sizes_prices_would_move() {
    let book = bar(None);
    let goods = [Goods::Ingredient(ingredient_id(1)), Goods::Ingredient(ingredient_id(2))];
    let said =
        |goods: &[Goods], by| words::watch::what_if(&what_if(&book, &Ledger::of(&book), goods, share(by)).unwrap());
    assert_eq!(said(&goods, "0.2"), "2 sizes would be affected, none would drop below target.");
    assert_eq!(
        said(&goods, "-0.2"),
        "2 sizes would be affected, none would drop below target. 1 size would be back on target."
    );
    assert_eq!(said(&goods[1..], "0.2"), "No sizes would be affected.");
}

#[test]
fn what_is_not_known_from_a_day() {
    let book = bar(None);
    let said = |on| words::watch::unknown(&followed(&book, on).unknown, day(on), &book);
    let names = "Invented ingredient 2; Invented bottle 1";
    let known = |names: &str, on: &str| format!("No price from {on} for {names}. Today’s price is used.");
    assert_eq!(said("2026-11-02"), known(names, "Nov 2, 2026"));
    assert_eq!(said("2026-11-01"), known(&format!("Invented ingredient 1; {names}"), "Nov 1, 2026"));
    let goods = [1, 2, 2, 1, 2].map(|id| Goods::Ingredient(ingredient_id(id)));
    let four = "Invented ingredient 1; Invented ingredient 2; Invented ingredient 2 and 2 more";
    assert_eq!(words::watch::unknown(&goods, day("2026-11-02"), &book), known(four, "Nov 2, 2026"));
    assert_eq!(words::watch::unknown(&[], day("2026-11-02"), &book), "");
    let ahead = "Jan 1, 2027 is in the future. Choose today or an earlier day.";
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
    let expected = ["+18.2%", "\u{2212}10.0%", "0.0%"].map(spaced);
    assert_eq!([Some("0.1819"), Some("-0.1"), Some("0.0001")].map(said), expected);
    assert_eq!(said(None), "was free");
}

#[test]
fn the_profit_of_a_week() {
    let said = |weekly| {
        let book = bar(weekly);
        words::watch::weekly(&followed(&book, "2026-11-02").watched, &book)
    };
    let other = "Not counted: Invented drink 2, Invented 500 mL 1 (no price yet)";
    let how = "Drinks sold per week × profit per drink, for 1 size.";
    assert_eq!(said(Some("10")), format!("{how} {other}."));
    let nothing = "No size has both a price and weekly sales yet. Set prices first. Then enter drinks sold per week in Sizes, under Sales.";
    let first = "Not counted: Invented drink 1, Invented 500 mL 1 (no weekly sales); Invented drink 2, Invented 500 mL 1 (no price yet)";
    assert_eq!(said(None), format!("{nothing} {first}."));
}

#[test]
fn the_biggest_cost_drivers() {
    let said = |book: &Book| words::watch::exposure(&hangs(book), book, &speaker(System::UsCustomary));
    let working = |book: &Book| words::watch::exposure_working(&hangs(book), book, &speaker(System::UsCustomary));
    // Half a litre of 2.00 and a bottle of 0.10, ten times. A tenth of 10.00 * 1.50 / 2.00.
    let other = "Not counted: Invented drink 2, Invented 500 mL 1 (no price yet).";
    let sold = bar(Some("10"));
    let sentence = "Ingredients and packaging cost you $11.00 per week. Your biggest cost driver is Invented ingredient 1, at 90.9%. If the price of Invented ingredient 1 goes up 10%, your profit drops by $0.75 per week.";
    assert_eq!(said(&sold), spaced(&format!("{sentence} {other}")));
    let how = "Invented ingredient 1: drinks sold per week × its cost in each drink, plus waste and free drinks, is $10.00. $10.00 ÷ $11.00 is 90.9%. The price is $1.50 of the $2.00 you pay per pack. 10% of $10.00 × $1.50 ÷ $2.00 is $0.75.";
    assert_eq!(working(&sold), how);
    let idle = |book: &Book| words::watch::idle(&hangs(book).idle, book);
    assert_eq!(idle(&sold), "Not used in any counted drink: Invented ingredient 2.");

    let unsold = bar(None);
    assert!(said(&unsold).starts_with("No size has both a price and weekly sales yet. "));
    assert_eq!(working(&unsold), "");
    let all = "Not used in any counted drink: Invented ingredient 1, Invented ingredient 2, Invented bottle 1.";
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
        "A 10% price increase for Invented ingredient 1 changes nothing. You pay only for delivery or deposit.";
    assert!(said(&delivered).contains(nothing), "{}", said(&delivered));
    assert_eq!(said(&free), "Everything you use is free.");
    assert_eq!(working(&free), "");
}

#[test]
fn all_others_in_one_line() {
    let book = bar(Some("10"));
    let found = hangs(&book);
    let others = |goods| words::watch::others(goods).map(|(name, sum)| (name, sum.cost, sum.less));
    assert_eq!(others(&found.goods), Some(("2 other items".to_string(), money("11"), money("0.85"))));
    assert_eq!(others(&found.goods[1..]), Some(("1 other item".to_string(), money("1"), money("0.1"))));
    assert_eq!(others(&[]), None);
}

#[test]
fn what_cannot_be_tried() {
    let book = bar(None);
    let said = |error| words::watch::watch_error(&error, &book);
    let beyond = "Type a number from \u{2212}100 to 1,000. For 20% more, type 20. For 10% less, type -10.";
    assert_eq!(said(WatchError::BeyondTried), beyond);
    let large = "These numbers are too large. Check for an extra digit.";
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
    let said = spaced(&words::watch::changed(&change, &speaker(System::UsCustomary)));
    assert_eq!(said, "Was $1.00, now $1.50, +50.0%");
    let of = words::watch::changed_pack(&change, &book, &speaker(System::UsCustomary));
    assert_eq!(of.replace('\u{a0}', " "), [book.name(juice.into()).as_str(), "1 L"].join(", "));

    let cost = |more: &str, counted, unknown| WeeklyCost { more: money(more), counted, unknown, without_cost: 0 };
    let said = |cost| words::watch::weekly_cost(cost, &speaker(System::UsCustomary));
    assert_eq!(said(Some(cost("6", 2, 0))), "Costs $6.00 more per week.");
    assert_eq!(said(Some(cost("-6.004", 1, 0))), "Saves $6.00 per week.");
    assert_eq!(said(Some(cost("0.004", 1, 0))), "Costs the same per week.");
    assert_eq!(said(Some(cost("0", 0, 0))), "No sizes affected.");
    assert_eq!(said(Some(cost("0", 0, 3))), "Needs: drinks sold per week.");
    assert_eq!(said(Some(cost("6", 2, 1))), "Costs $6.00 more per week. 1 size has no weekly sales yet.");
    assert_eq!(said(Some(cost("6", 2, 3))), "Costs $6.00 more per week. 3 sizes have no weekly sales yet.");
    let without_cost =
        |counted, unknown, without_cost| said(Some(WeeklyCost { without_cost, ..cost("6", counted, unknown) }));
    assert_eq!(without_cost(2, 0, 1), "Costs $6.00 more per week. 1 size has no cost yet.");
    assert_eq!(
        without_cost(2, 3, 4),
        "Costs $6.00 more per week. 3 sizes have no weekly sales yet. 4 sizes have no cost yet."
    );
    assert_eq!(without_cost(0, 0, 1), "Needs: drink costs.");
    assert_eq!(without_cost(0, 2, 1), "Needs: drinks sold per week and drink costs.");
    assert_eq!(said(None), words::overflow(Overflow::TooLarge));

    let sum = |costs: &[WeeklyCost]| words::watch::weekly_costs(costs.len(), costs, &speaker(System::UsCustomary));
    assert_eq!(sum(&[cost("6", 1, 0), cost("5", 1, 0)]), "2 prices: cost you $11.00 more per week");
    assert_eq!(sum(&[cost("6", 1, 0), cost("-8", 2, 1)]), "2 prices: save you $2.00 per week");
    assert_eq!(sum(&[cost("6", 1, 0), cost("-6", 2, 0)]), "2 prices: cost the same per week");
    assert_eq!(sum(&[cost("6", 1, 0)]), "1 price: costs you $6.00 more per week");
    assert_eq!(sum(&[cost("-6", 1, 0)]), "1 price: saves you $6.00 per week");
    assert_eq!(sum(&[cost("0", 0, 1)]), "1 price changed");
    assert_eq!(sum(&[cost("6", 1, 0), cost("0", 0, 1)]), "2 prices: cost you $6.00 more per week");
    assert_eq!(sum(&[cost("0", 0, 1), cost("0", 0, 0)]), "2 prices changed");

    let stands = |margin: Option<&str>, suggested: Option<&str>| {
        let snapshot = Snapshot {
            status: OfferStatus::UnderTarget,
            cost: None,
            covered: None,
            target: None,
            margin: margin.map(share),
            suggested: suggested.map(money),
            price: None,
        };
        let moved = OfferChange { offer: offer_id(1, 1), before: None, after: Some(snapshot) };
        words::watch::fallen_to(&moved, &speaker(System::UsCustomary))
    };
    assert_eq!(stands(Some("0.657"), Some("8.75")), "65.7% margin, suggested price $8.75");
    assert_eq!(stands(Some("0.657"), None), "65.7% margin");
    assert_eq!(stands(None, Some("8.75")), "");

    let new = words::watch::new_today;
    assert_eq!(new(0), "");
    assert_eq!(new(1), "1 more price is new today. Its earlier price is unknown.");
    assert_eq!(new(2), "2 more prices are new today. Their earlier prices are unknown.");
}

#[test]
fn how_many_sizes_a_step_moved() {
    let snapshot = |status| {
        Some(Snapshot { status, cost: None, covered: None, target: None, margin: None, suggested: None, price: None })
    };
    let moved = |before, after| OfferChange { offer: offer_id(1, 1), before: snapshot(before), after: snapshot(after) };
    let (holds, falls) =
        (moved(OfferStatus::OnTarget, OfferStatus::OnTarget), moved(OfferStatus::OnTarget, OfferStatus::UnderTarget));
    let said = |moves: &[OfferChange]| words::watch::step_moved("Price of Kale", moves);
    assert_eq!(said(&[]), "Price of Kale: no sizes affected.");
    assert_eq!(said(&[holds]), "Price of Kale: 1 size affected, none dropped below target.");
    assert_eq!(said(&[holds, holds]), "Price of Kale: 2 sizes affected, none dropped below target.");
    assert_eq!(said(&[falls]), "Price of Kale: 1 size affected, 1 dropped below target.");
    assert_eq!(said(&[falls, falls, holds]), "Price of Kale: 3 sizes affected, 2 dropped below target.");
}
