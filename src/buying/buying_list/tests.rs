use super::*;
use crate::book::{
    BuyingList, Container, Edit, Ingredient, Key, Make, Offer, OnHand, Pack, Packaging, Quoted, Record, Tier, ToBuy,
};
use crate::drink::ledger::Ledger;
use crate::drink::make::Unmade;
use crate::foundation::measure::{Date, Measure};
use crate::support::{
    amount, batch, book, buying_list, container, day, density, drink, exact, grams, ingredient, ingredient_id, line,
    measure, money, offer, offer_id, pack, pack_id, packaging_id, settings, share, use_of, vessel,
};

fn today() -> Date {
    day("2026-11-26")
}

fn here(text: &str, on: &str) -> Option<OnHand> {
    Some(OnHand { amount: amount(text), day: day(on) })
}

/// Drink 1 in container 1 takes 250 g of ingredient 1, of which half is cut away, 250 g of 2 and
/// a bottle (1); water (3) costs nothing and fills the rest. Drink 2 lacks a pack.
fn bar(first: Ingredient, second: Ingredient, bottle: Packaging) -> Book {
    let trimmed = crate::book::Line { stage: Stage::Trimmed, ..line(1, 1, "250 g") };
    book(
        settings(),
        [
            Record::Ingredient(Ingredient { trim_yield: share("0.5"), ..first }),
            Record::Ingredient(second),
            Record::Ingredient(ingredient(3, [pack(1, "1 L", "0")])),
            Record::Ingredient(ingredient(4, [])),
            Record::Packaging(bottle),
            Record::Container(Container { set: vec![use_of(1, "1")], ..container(1, "1 L") }),
            Record::Drink(drink(1, "1 L", [trimmed, line(2, 2, "250 g"), line(3, 3, "500 mL")])),
            Record::Drink(drink(2, "1 L", [line(1, 4, "1 L")])),
            Record::Offer(Offer { weekly: Some(exact("9")), ..offer(1, 1, Some("9")) }),
            Record::Offer(offer(2, 1, Some("9"))),
            Record::Batch(batch("2026-11-26", &[(1, 1, "10"), (2, 1, "1")])),
            Record::Batch(batch("2026-11-27", &[(1, 1, "4")])),
        ],
    )
}

fn usual() -> Book {
    bar(
        ingredient(1, [pack(1, "2 kg", "4"), pack(2, "5 kg", "9"), pack(3, "1 kg", "1.90")]),
        Ingredient { on_hand: here("1.5 kg", "2026-11-20"), ..ingredient(2, [pack(1, "1 kg", "3")]) },
        vessel(1, [Pack { at_a_time: exact("3"), surcharge: money("0.5"), ..pack(1, "6 ea", "2") }]),
    )
}

fn proposed(book: &Book, days: &[&str], weeks: &str) -> Proposal {
    let days: Vec<Date> = days.iter().map(|text| day(text)).collect();
    propose(book, &Ledger::of(book), &makes(book, &days, exact(weeks)).unwrap()).unwrap()
}

#[test]
fn what_is_made_is_planned_and_usual_and_not_filled_yet() {
    let mut book = usual();
    let all = |book: &Book, days: &[&str], weeks| {
        let days: Vec<Date> = days.iter().map(|text| day(text)).collect();
        makes(book, &days, exact(weeks)).unwrap()
    };
    let (one, two) = (offer_id(1, 1), offer_id(2, 1));
    assert_eq!(all(&book, &["2026-11-26", "2026-11-27"], "0"), [(one, exact("14")), (two, exact("1"))]);
    // A tenth is thrown away: 9 are sold of 10 made; a day without a batch adds nothing.
    let unsold = crate::book::Settings { unsold: share("0.1"), ..settings() };
    book.apply(&Edit::Put(Record::Settings(Box::new(unsold)))).unwrap();
    assert_eq!(all(&book, &["2026-11-27", "2026-11-28"], "2"), [(one, exact("24"))]);
    let filled = Make { filled: true, ..batch("2026-11-27", &[(1, 1, "4")]).makes[0] };
    let done = crate::book::Batch { makes: vec![filled], ..batch("2026-11-27", &[]) };
    book.apply(&Edit::Put(Record::Batch(done))).unwrap();
    assert_eq!(all(&book, &["2026-11-27"], "0"), []);
}

#[test]
fn what_is_missing_is_bought_in_whole_packs() {
    // Ten drinks: 10 * 250 / 0.5 = 5000 g of 1; 2500 g of 2 less 1500 g here; 10 bottles.
    let proposal = proposed(&usual(), &["2026-11-26"], "0");
    let of = |line: &Proposed| (line.goods, line.now().unwrap());
    let lines: Vec<_> = proposal.lines.iter().map(of).collect();
    let quote = |needed, here, packs, left_over, cost| Quote {
        pack: pack_id(1),
        needed: measure(needed),
        here,
        packs: exact(packs),
        left_over: measure(left_over),
        cost: money(cost),
    };
    let counted = Here::Counted { amount: measure("1500 g"), day: day("2026-11-20") };
    let expected = [
        // Two packs of six would do, but three are bought at a time: 3 * 2.50, 8 bottles left.
        (Goods::Packaging(packaging_id(1)), quote("10 ea", Here::NotCounted, "3", "8 ea", "7.5")),
        (Goods::Ingredient(ingredient_id(1)), quote("5000 g", Here::NotCounted, "3", "1000 g", "12")),
        (Goods::Ingredient(ingredient_id(2)), quote("2500 g", counted, "1", "0 g", "3")),
    ];
    assert_eq!(lines, expected);
    assert_eq!(proposal.free, [Goods::Ingredient(ingredient_id(3))]);
    let no_pack = crate::drink::cost::CostError::NoPack(Goods::Ingredient(ingredient_id(4)));
    let stuck = Unmade::Stuck(crate::drink::ledger::OfferError::Cost(no_pack));
    assert_eq!(proposal.left_out, [(offer_id(2, 1), stuck)]);
    assert_eq!(proposal.without_pack, []);
}

#[test]
fn more_can_cost_less_in_all() {
    // By hand: of three packs of 2 kg at 4.00 (12.00), four at 2.90 are 11.60 and six at 1.90 are 11.40. Two of them
    // are for a day of 2 kg: 4.00, and no tier is under that.
    let tier = |from: &str, price: &str| Tier { from: exact(from), price: money(price) };
    let case = |tiers| {
        bar(
            ingredient(1, [Pack { tiers, ..pack(1, "2 kg", "4") }]),
            ingredient(2, [pack(1, "1 kg", "3")]),
            vessel(1, [pack(1, "6 ea", "2")]),
        )
    };
    let goods = Goods::Ingredient(ingredient_id(1));
    let of = |tiers: Vec<Tier>, day| {
        let book = case(tiers);
        let proposal = proposed(&book, &[day], "0");
        let line = proposal.lines.iter().find(|line| line.goods == goods).unwrap().now().unwrap();
        let more = line.more_for_less(&book, goods).unwrap();
        more.map(|more| (more.packs, more.cost, more.left_over))
    };
    let both = || vec![tier("4", "2.9"), tier("6", "1.9")];
    // 5000 g are needed: twelve kilograms leave seven.
    assert_eq!(of(both(), "2026-11-26"), Some((exact("6"), money("11.4"), measure("7000 g"))));
    assert_eq!(of(vec![tier("4", "2.9")], "2026-11-26"), Some((exact("4"), money("11.6"), measure("3000 g"))));
    // As dear in all is not less.
    assert_eq!(of(vec![tier("4", "3")], "2026-11-26"), None);
    assert_eq!(of(Vec::new(), "2026-11-26"), None);
    // A day of one pack.
    assert_eq!(of(both(), "2026-11-27"), None);
}

#[test]
fn the_cheapest_is_what_enough_packs_cost() {
    // 5000 g: three of 2 kg 12.00, one of 5 kg 9.00, five of 1 kg 9.50. A kilogram is cheapest in
    // the smallest, enough of it is not. For 1000 g the smallest is.
    let of = |book: &Book, days: &[&str]| {
        let proposal = proposed(book, days, "0");
        let line = proposal.lines.iter().find(|line| line.goods == Goods::Ingredient(ingredient_id(1))).unwrap();
        let cheapest = line.cheapest().unwrap();
        (line.quotes.iter().map(|quote| quote.cost).collect::<Vec<_>>(), cheapest.pack, cheapest.cost)
    };
    let book = usual();
    let expected = (["12", "9", "9.5"].map(money).to_vec(), pack_id(2), money("9"));
    assert_eq!(of(&book, &["2026-11-26"]), expected);
    let expected = (["4", "9", "3.8"].map(money).to_vec(), pack_id(3), money("3.8"));
    assert_eq!(of(&book, &["2026-11-27"]), expected);
}

#[test]
fn the_price_is_that_for_so_many() {
    let tiers = vec![Tier { from: exact("3"), price: money("3.5") }];
    let book = bar(
        ingredient(1, [Pack { tiers, ..pack(1, "2 kg", "4") }]),
        ingredient(2, [pack(1, "1 kg", "3")]),
        vessel(1, [pack(1, "6 ea", "2")]),
    );
    let costs = |days: &[&str]| {
        let proposal = proposed(&book, days, "0");
        proposal.lines.iter().filter_map(Proposed::now).map(|quote| quote.cost).collect::<Vec<_>>()
    };
    assert_eq!(costs(&["2026-11-26"]), ["4", "10.5", "9"].map(money));
    assert_eq!(costs(&["2026-11-27"]), ["2", "4", "3"].map(money));
}

#[test]
fn a_count_in_other_units_is_turned_into_those_of_the_pack_or_named() {
    let pieces = |piece_weight| Ingredient {
        on_hand: here("10 ea", "2026-11-26"),
        piece_weight,
        ..ingredient(1, [pack(1, "2 kg", "4")])
    };
    let quote = |first| {
        let book = bar(first, ingredient(2, [pack(1, "1 kg", "3")]), vessel(1, [pack(1, "6 ea", "2")]));
        let proposal = proposed(&book, &["2026-11-26"], "0");
        let line = proposal.lines.iter().find(|line| line.goods == Goods::Ingredient(ingredient_id(1)));
        line.and_then(Proposed::now).map(|quote| (quote.here, quote.packs, quote.left_over)).unwrap()
    };
    // Ten of 150 g are 1500 g: 3500 g are missing.
    let here = Here::Counted { amount: measure("1500 g"), day: today() };
    assert_eq!(quote(pieces(Some(grams("150")))), (here, exact("2"), measure("500 g")));
    let here = Here::Unusable { lacks: YieldError::NoPieceWeight(ingredient_id(1)), day: today() };
    assert_eq!(quote(pieces(None)), (here, exact("3"), measure("1000 g")));
}

#[test]
fn goods_in_no_pack_that_can_be_counted_are_named() {
    // The ledger of a book in which both still had packs that could be.
    let before = usual();
    let ledger = Ledger::of(&before);
    let mut book = before;
    for changed in [ingredient(1, [pack(1, "6 ea", "4")]), ingredient(2, [])] {
        book.apply(&Edit::Put(Record::Ingredient(changed))).unwrap();
    }
    let makes = makes(&book, &[day("2026-11-27")], Exact::ZERO).unwrap();
    let proposal = propose(&book, &ledger, &makes).unwrap();
    let lacks = YieldError::NoPieceWeight(ingredient_id(1));
    let goods = |id| Goods::Ingredient(ingredient_id(id));
    assert_eq!(proposal.without_pack, [(goods(1), Some(lacks)), (goods(2), None)]);
    assert_eq!(proposal.lines.len(), 1);
}

#[test]
fn the_list_has_what_is_missing_in_the_packs_chosen() {
    let proposal = proposed(&usual(), &["2026-11-27"], "0");
    // Four drinks: 2 kg of 1, 1 kg of 2 of which 1.5 kg are here, four bottles.
    let list = proposal.list(today(), &|line| line.cheapest());
    let line =
        |goods, pack, packs| ToBuy { goods, pack: pack_id(pack), packs: exact(packs), bought: false, paid: None };
    let lines =
        vec![line(Goods::Packaging(packaging_id(1)), 1, "3"), line(Goods::Ingredient(ingredient_id(1)), 3, "2")];
    assert_eq!(list, BuyingList { day: today(), lines });
}

/// Packs of three suppliers and of none.
fn suppliers() -> Book {
    let of = |supplier: &str, id, price| Pack { supplier: supplier.into(), ..pack(id, "1 kg", price) };
    let tiers = vec![Tier { from: exact("2"), price: money("4") }];
    bar(
        ingredient(1, [of("vale", 1, "10"), Pack { surcharge: money("0.25"), tiers, ..of("Ash", 2, "5") }]),
        ingredient(2, [of("", 1, "3"), of("Ash", 2, "7")]),
        vessel(1, [pack(1, "6 ea", "2")]),
    )
}

#[test]
fn the_list_stands_by_supplier_with_what_it_costs() {
    let book = suppliers();
    let mut list = buying_list(&[(2, 1, "2"), (2, 2, "1"), (1, 2, "2"), (1, 1, "1"), (1, 9, "1")]);
    list.lines[1].bought = true;
    list.lines[2].paid = Some(money("4.5"));
    let (groups, totals) = group(&book, &list).unwrap();
    let names: Vec<&str> = groups.iter().map(|group| group.supplier.as_str()).collect();
    assert_eq!(names, ["Ash", "vale", ""]);
    let costs = |group: &Group| group.lines.iter().map(|it| it.cost).collect::<Vec<_>>();
    // Two at 4.50 paid instead of 4.00 asked, each with 0.25 of delivery; one at 7.00.
    assert_eq!(costs(&groups[0]), [Some(money("9.5")), Some(money("7"))]);
    // The ninth pack is not quoted any more.
    assert_eq!(costs(&groups[2]), [None, Some(money("6"))]);
    let of_ash = Totals { all: money("16.5"), bought: money("7"), lines: 2, ticked: 1, unpriced: 0 };
    assert_eq!(groups[0].totals, of_ash);
    assert_eq!(totals, Totals { all: money("32.5"), bought: money("7"), lines: 5, ticked: 1, unpriced: 1 });
    assert_eq!(totals.left(), Ok(money("25.5")));
}

#[test]
fn what_is_not_on_the_list_may_be_added() {
    let list = buying_list(&[(1, 2, "1"), (2, 1, "1")]);
    let book = suppliers();
    let of = |list: Option<&BuyingList>| addable(&book, list).map(|line| (line.goods, line.pack)).collect::<Vec<_>>();
    let pair = |id, pack| (Goods::Ingredient(ingredient_id(id)), pack_id(pack));
    let bottle = (Goods::Packaging(packaging_id(1)), pack_id(1));
    assert_eq!(of(Some(&list)), [pair(1, 1), pair(2, 2), pair(3, 1), bottle]);
    assert_eq!(of(None).len(), 6);
    let three = addable(&usual(), None).last().map(|line| line.packs);
    assert_eq!(three, Some(exact("3")), "as many as are bought at a time");
}

#[test]
fn a_price_paid_goes_to_the_price_that_it_belongs_to() {
    let mut book = suppliers();
    let mut list = buying_list(&[(1, 1, "1"), (1, 2, "2"), (2, 1, "1"), (2, 9, "1"), (2, 2, "1")]);
    for (line, paid) in list.lines.iter_mut().zip(["11", "4.5", "3", "8"]) {
        line.paid = Some(money(paid));
    }
    let carried = carry(&book, &list, today()).unwrap();
    let goods = Goods::Ingredient(ingredient_id(1));
    let paid = |pack, was, now| PricePaid { goods, pack: pack_id(pack), was: money(was), now: money(now) };
    assert_eq!(carried.prices, [paid(1, "10", "11"), paid(2, "4", "4.5")]);
    assert_eq!(carried.not_quoted, [Goods::Ingredient(ingredient_id(2))]);
    let before = book.clone();
    let applied = book.apply(&carried.edit).unwrap();
    let packs = book.packs(goods);
    assert_eq!((packs[0].price, packs[0].day), (money("11"), Some(today())));
    // Two were bought: the price for one at a time stays.
    assert_eq!((packs[1].price, packs[1].tiers[0].price, packs[1].day), (money("5"), money("4.5"), None));
    // What was paid as asked is heard today.
    let confirmed = &book.packs(Goods::Ingredient(ingredient_id(2)))[0];
    assert_eq!((confirmed.price, confirmed.day), (money("3"), Some(today())));
    book.apply(&applied.inverse).unwrap();
    assert_eq!(book, before);
}

#[test]
fn a_price_paid_leaves_the_one_before_in_the_history() {
    let mut book = usual();
    let mut first = book.ingredient(ingredient_id(1)).unwrap().clone();
    first.packs[0].day = Some(day("2026-11-01"));
    book.apply(&Edit::Put(Record::Ingredient(first))).unwrap();
    let mut list = buying_list(&[(1, 1, "1")]);
    list.lines[0].paid = Some(money("4.20"));
    book.apply(&carry(&book, &list, today()).unwrap().edit).unwrap();
    let pack = &book.packs(Goods::Ingredient(ingredient_id(1)))[0];
    assert_eq!(pack.earlier, [Quoted { day: day("2026-11-01"), price: money("4") }]);
}

#[test]
fn without_a_price_paid_there_is_nothing_to_carry() {
    let carried = carry(&usual(), &buying_list(&[(1, 1, "1")]), today()).unwrap();
    assert_eq!(carried, Carried { edit: Edit::Together(Vec::new()), prices: Vec::new(), not_quoted: Vec::new() });
}

#[test]
fn what_was_bought_is_added_to_what_is_here() {
    let third = Ingredient { on_hand: here("2 ea", "2026-11-20"), ..ingredient(5, [pack(1, "2 kg", "4")]) };
    let weighed = Ingredient { id: ingredient_id(6), piece_weight: Some(grams("6")), ..third.clone() };
    let poured = Ingredient {
        on_hand: here("1 L", "2026-11-20"),
        density: Some(density("0.8")),
        ..ingredient(7, [pack(1, "1 kg", "4")])
    };
    let mut book = usual();
    for goods in [third, weighed, poured] {
        book.apply(&Edit::Put(Record::Ingredient(goods))).unwrap();
    }
    let mut list =
        buying_list(&[(1, 1, "2"), (1, 2, "1"), (2, 1, "1"), (5, 1, "1"), (6, 1, "1"), (7, 1, "1"), (7, 9, "1")]);
    for line in &mut list.lines {
        line.bought = true;
    }
    list.lines[1].bought = false;
    list.lines[0].paid = Some(money("4.20"));
    let unticked = ToBuy { goods: Goods::Packaging(packaging_id(1)), bought: false, ..list.lines[0] };
    list.lines.push(ToBuy { paid: None, ..unticked });
    book.apply(&Edit::Put(Record::BuyingList(list.clone()))).unwrap();
    let before = book.clone();
    let finished = finish(&book, &list, today()).unwrap();
    assert_eq!((finished.added, finished.not_bought, finished.prices.len()), (5, 2, 1));
    assert_eq!(finished.not_quoted, [Goods::Ingredient(ingredient_id(7))]);
    let anew = (Goods::Ingredient(ingredient_id(5)), YieldError::NoPieceWeight(ingredient_id(5)));
    assert_eq!(finished.started_anew, [anew]);
    let applied = book.apply(&finished.edit).unwrap();
    assert_eq!(book.buying_list(), None);
    let now = |id| book.on_hand(Goods::Ingredient(ingredient_id(id)));
    // Two of 2 kg, where nobody had counted.
    assert_eq!(now(1), here("4 kg", "2026-11-26"));
    // The count keeps its day: buying is no counting.
    assert_eq!(now(2), here("2.5 kg", "2026-11-20"));
    assert_eq!(now(5), here("2 kg", "2026-11-26"));
    // 2 and 2000 / 6 pieces, rounded up in the eighth decimal.
    assert_eq!(now(6), here("335.33333334 ea", "2026-11-20"));
    // 1000 g at 0.8 g/mL are 1250 mL.
    assert_eq!(now(7), here("2.25 L", "2026-11-20"));
    assert_eq!(book.on_hand(Goods::Packaging(packaging_id(1))), None);
    assert_eq!(book.packs(Goods::Ingredient(ingredient_id(1)))[0].price, money("4.2"));
    book.apply(&applied.inverse).unwrap();
    assert_eq!(book, before);
    assert!(book.contains(Key::BuyingList));
}

#[test]
fn a_sum_is_never_rounded_down() {
    // A third of a kilogram, three of them in grams: 333.33333333 would be less than was bought.
    let third = exact("1000").over(exact("3")).unwrap();
    assert_eq!(third.kept_up(), Ok(exact("333.33333334")));
    assert_eq!(exact("0.5").kept_up(), Ok(exact("0.5")));
}

#[test]
fn an_amount_keeps_its_dimension() {
    let book = usual();
    let goods = Goods::Ingredient(ingredient_id(1));
    for text in ["2 kg", "3 L", "4 ea"] {
        let amount: Measure = measure(text);
        assert_eq!(in_dimension(&book, goods, amount, amount.dimension()), Ok(amount.base()), "{text}");
    }
}
