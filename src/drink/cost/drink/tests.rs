use super::*;
use crate::book::{
    Edit, Ice, Ingredient, Line, Offer, Pack, PackagingSet, PackagingSetId, Record, Reductions, Scaling, Settings,
};
use crate::drink::fill::scale;
use crate::drink::ledger::price_offer;
use crate::drink::price::Hands;
use crate::support::{
    amount, book, book_of_one_drink, container, density, drink, exact, ingredient, ingredient_id, line, millilitres,
    money, offer, offer_id, pack, packaging_id, seconds, settings, share, use_of, vessel,
};

#[test]
fn overhead_follows_what_it_is_typed_for() {
    // 1,240.00 over 939 drinks are 1.3205537..., and those times 939 are 1,240.000206. By hand.
    let typed = |overhead: &str, per: OverheadPer, weekly: Option<&str>, then: OverheadPer| {
        let settings = Settings { overhead: money(overhead), overhead_per: per, ..settings() };
        let sold = Offer { weekly: weekly.map(exact), ..offer(1, 1, Some("5")) };
        let records = [Record::Container(container(1, "500 mL")), Record::Offer(sold)];
        let records = [Record::Drink(drink(1, "500 mL", []))].into_iter().chain(records);
        overhead_for(&book(settings, records), then).unwrap()
    };
    let (week, each) = (OverheadPer::Week, OverheadPer::DrinkSold);
    assert_eq!(typed("1240", week, Some("939"), each), Some(money("1.320554")));
    assert_eq!(typed("1.320554", each, Some("939"), week), Some(money("1240")));
    assert_eq!(typed("1240", week, None, each), None, "nobody knows how many are sold");
    assert_eq!(typed("0", week, None, each), Some(Money::ZERO));
    // The drink sells at 5.00: what is typed first and then said to be for a week stays as it is.
    assert_eq!(typed("1000", each, Some("60"), week), Some(money("1000")));
    assert_eq!(typed("4.99", each, Some("60"), week), Some(money("299.4")));
    assert_eq!(typed("4.99", each, None, week), Some(money("4.99")), "without sales too");
    assert_eq!(typed("0.85", OverheadPer::DrinkMade, None, each), Some(money("0.85")), "both of a drink");
}

/// A drink of 500 mL from this pack, in a bottle from these packs.
fn costed(base: Vec<Pack>, bottles: Vec<Pack>, change: impl FnOnce(&mut Drink)) -> Result<Cost, CostError> {
    costed_of(ingredient(1, base), bottles, change)
}

/// The same from this ingredient.
fn costed_of(base: Ingredient, bottles: Vec<Pack>, change: impl FnOnce(&mut Drink)) -> Result<Cost, CostError> {
    let container = Container { set: vec![use_of(1, "2")], ..container(1, "500 mL") };
    let mut drink = drink(1, "500 mL", [line(1, 1, "250 mL")]);
    change(&mut drink);
    let settings = Settings {
        wage: money("18"),
        overhead: money("0.25"),
        overhead_per: OverheadPer::DrinkMade,
        unsold: share("0.5"),
        ..settings()
    };
    let book = book(
        settings,
        [
            Record::Ingredient(base),
            Record::Packaging(vessel(1, bottles)),
            Record::Container(container.clone()),
            Record::Drink(drink.clone()),
        ],
    );
    let fill = millilitres("500");
    let scaled = scale(&book, &drink, fill).unwrap();
    cost(&book, &drink, &container, &scaled, fill, overhead(&book).unwrap())
}

#[test]
fn every_part_by_hand() {
    // Half a litre at 3.50 and 0.50 delivery a litre: 2.00. Two of ten for 2.50: 0.50.
    // 60 s, 30 s/L and 600 s for ten: 135 s at 18.00 an hour, 0.675. A fifth unsold adds a
    // quarter: (2 + 0.5 + 0.4) / 4, 0.675 / 4, 0.25 / 4.
    let base = Pack { surcharge: money("0.50"), ..pack(1, "1 L", "3.50") };
    let labour = Labour {
        per_drink: seconds("60"),
        per_litre: seconds("30"),
        per_batch: seconds("600"),
        batch: exact("10"),
        batch_volume: None,
    };
    let cost = costed(vec![base], vec![pack(1, "10 ea", "2.50")], |drink| {
        drink.labour = labour;
        drink.treatment_fee = money("0.40");
        drink.unsold = Some(share("0.2"));
    })
    .unwrap();
    let parts = Part::ALL.map(|part| cost.part(part).unwrap());
    assert_eq!(parts, ["2", "0.5", "0.675", "0.4", "0.25", "0.95625", "0"].map(money));
    assert_eq!(cost.total(), money("4.78125"));
    assert_eq!(cost.time, seconds("135"));
    assert_eq!(cost.covered(CostBasis::Goods), money("3.625"));
    assert_eq!(cost.covered(CostBasis::GoodsAndLabour), money("4.46875"));
    assert_eq!(cost.covered(CostBasis::Everything), money("4.78125"));
}

#[test]
fn a_batch_by_volume_gives_each_drink_its_share() {
    // By hand: 600 s for 20 L, and 500 mL of it: 15 s. With 8 L of ten drinks in between 24 s, not 60.
    let time = |per_batch, batch_volume: Option<&str>| {
        let labour = Labour {
            per_batch: seconds(per_batch),
            batch: exact("10"),
            batch_volume: batch_volume.map(amount),
            ..Labour::default()
        };
        let (base, bottle) = (vec![pack(1, "1 L", "4")], vec![pack(1, "1 ea", "0")]);
        costed(base, bottle, |drink| drink.labour = labour).unwrap().time
    };
    assert_eq!(time("600", Some("20 L")), seconds("15"));
    assert_eq!(time("384", Some("8 L")), seconds("24"));
    assert_eq!(time("600", None), seconds("60"));
}

#[test]
fn ice_in_the_glass_takes_no_time_in_the_jug() {
    // By hand: 91.7 g of ice held under take 100 mL at 0.917 g/mL, so that 400 of 500 mL are poured:
    // 30 s a litre are 12 s, and of 600 s for 20 L 12 s. Blended in it counts: 15 s and 15 s.
    let time = |place| {
        let ice = Line { ice: Some(Ice::in_a_scoop(place)), scaling: Scaling::Fixed, ..line(2, 1, "91.7 g") };
        let labour = Labour {
            per_litre: seconds("30"),
            per_batch: seconds("600"),
            batch_volume: Some(amount("20 L")),
            ..Labour::default()
        };
        let frozen = |drink: &mut Drink| {
            drink.lines.push(ice);
            drink.labour = labour;
        };
        let base = pack(1, "1 kg", "4");
        let juice = Ingredient { density: Some(density("1")), ..ingredient(1, [base]) };
        costed_of(juice, vec![pack(1, "1 ea", "0")], frozen).unwrap().time
    };
    assert_eq!(time(IcePlace::HeldUnder), seconds("24"));
    assert_eq!(time(IcePlace::BlendedIn), seconds("30"));
}

#[test]
fn overhead_is_per_drink_made_sold_or_by_the_week() {
    // A drink of 2.00, a fifth thrown away and half of what is handed out free: 2.50, then 5.00. Overhead of
    // 0.40 per drink made is 1.00 with both, and 0.40 per drink sold; 120.00 a week over 300 drinks is 0.40.
    // Of 10.00, 5.00 change with the number of drinks.
    let of = |overhead_per, overhead: &str, weekly: Option<&str>| {
        let settings = Settings {
            overhead: money(overhead),
            overhead_per,
            unsold: share("0.2"),
            reductions: Reductions { free: share("0.5"), ..Reductions::default() },
            cost_basis: CostBasis::Everything,
            ..settings()
        };
        let mut book = book_of_one_drink(settings, "2", Some("10"));
        let sold = Offer { weekly: weekly.map(exact), ..offer(1, 1, Some("10")) };
        let other = Offer { weekly: Some(exact("0")), ..offer(1, 2, None) };
        for record in [Record::Container(container(2, "1 L")), Record::Offer(sold), Record::Offer(other)] {
            book.apply(&Edit::Put(record)).unwrap();
        }
        let priced = price_offer(&book, book.offer(offer_id(1, 1)).unwrap()).unwrap();
        let parts = [Part::Flat(FlatCost::Overhead), Part::Unsold, Part::Free].map(|it| priced.cost.part(it).unwrap());
        let changes = priced.profit_that_changes(Hands::Counted).unwrap().unwrap();
        assert_eq!(changes, money("5"), "{overhead_per:?}");
        (parts.map(|it| it.major().to_string()).join(" "), priced.cost.total())
    };
    let is = |parts: &str, total| (parts.to_string(), money(total));
    assert_eq!(of(OverheadPer::DrinkMade, "0.4", None), is("0.4 0.6 3", "6"));
    assert_eq!(of(OverheadPer::DrinkSold, "0.4", None), is("0.4 0.5 2.5", "5.4"));
    assert_eq!(of(OverheadPer::Week, "120", Some("300")), is("0.4 0.5 2.5", "5.4"));
    assert_eq!(of(OverheadPer::Week, "120", None), is("0 0.5 2.5", "5"));
}

#[test]
fn the_books_unsold_share_holds_where_a_drink_has_none() {
    let cost = costed(vec![pack(1, "1 L", "4")], vec![pack(1, "10 ea", "2.50")], |_| ()).unwrap();
    assert_eq!(cost.part(Part::Unsold), Ok(money("2.75")));
}

#[test]
fn what_stays_in_the_press_is_paid_for() {
    // A fifth stays behind: of 4.00 a litre, 625 mL for 500.
    let lossy = |drink: &mut Drink| drink.process_loss = share("0.2");
    let cost = costed(vec![pack(1, "1 L", "4")], vec![pack(1, "1 ea", "0")], lossy).unwrap();
    assert_eq!(cost.part(Part::Ingredients), Ok(money("2.5")));
}

#[test]
fn a_shared_set_is_paid_for_with_the_containers_own() {
    // A bottle at 0.50 of its own, two straws at 0.02 with the set.
    let straws =
        PackagingSet { id: PackagingSetId::from_random(1), name: "Invented".into(), uses: vec![use_of(2, "2")] };
    let shared = vec![straws.id];
    let container = Container { set: vec![use_of(1, "1")], shared, ..container(1, "500 mL") };
    let drink = drink(1, "500 mL", [line(1, 1, "500 mL")]);
    let records = [
        Record::Ingredient(ingredient(1, [pack(1, "1 L", "4")])),
        Record::Packaging(vessel(1, [pack(1, "1 ea", "0.5")])),
        Record::Packaging(vessel(2, [pack(1, "100 ea", "2")])),
        Record::PackagingSet(straws),
    ];
    let book = book(settings(), records);
    let fill = millilitres("500");
    let scaled = scale(&book, &drink, fill).unwrap();
    let cost = cost(&book, &drink, &container, &scaled, fill, Money::ZERO).unwrap();
    assert_eq!(cost.part(Part::ContainerSet), Ok(money("0.54")));
    assert_eq!(cost.packaging.len(), 2);
}

#[test]
fn the_first_pack_is_the_one_bought() {
    let cost = costed(vec![pack(2, "1 L", "4"), pack(1, "1 L", "1")], vec![pack(1, "1 ea", "0")], |_| ()).unwrap();
    assert_eq!(cost.part(Part::Ingredients), Ok(money("2")));
}

#[test]
fn what_has_no_pack_is_named() {
    let no_base = costed(vec![], vec![pack(1, "1 ea", "1")], |_| ());
    assert_eq!(no_base, Err(CostError::NoPack(Goods::Ingredient(ingredient_id(1)))));
    let no_bottle = costed(vec![pack(1, "1 L", "4")], vec![], |_| ());
    assert_eq!(no_bottle, Err(CostError::NoPack(Goods::Packaging(packaging_id(1)))));
}
