//! What a batch takes against USDA tables (see `ers_prices.rs` and `sr28.rs` for the sources), and
//! the demo book's batch followed by hand.

use brimwright::book::{Book, Goods, Ingredient, IngredientId, Stage};
use brimwright::counter::batch::{Station, sheet};
use brimwright::counter::on_hand::{Reach, reach};
use brimwright::drink::ledger::Ledger;
use brimwright::drink::make::{Needed, Use, needs, whole_packs};
use brimwright::exchange;
use brimwright::foundation::measure::{Amount, Date, Dimension, Exact, Measure, Share, Unit};

use crate::csv::rows;
use crate::support::{exact, ingredient, ingredient_id, money, pack, share};

/// What so many cups of a row take, as bought, in its unit of sale; and a pack of one of these.
fn bought(name: &str, yielded: &str, cup: &Amount, cups: Exact) -> Exact {
    let usable = share(yielded);
    let whole = if cup.unit.dimension() == Dimension::Mass { "1 lb" } else { "1 pt" };
    let bare = ingredient(1, [pack(1, whole, "1")]);
    let (goods, stage) = if usable > Share::WHOLE {
        (Ingredient { soak_yield: Some(usable), ..bare }, Stage::SoakedOrBrewed)
    } else {
        (Ingredient { trim_yield: usable, ..bare }, Stage::Trimmed)
    };
    let amount = cup.measure().unwrap().times(cups).unwrap();
    let needed = Needed { ingredient: ingredient_id(1), uses: vec![Use { stage, amount }] };
    let base = needed.bought(&goods, cup.unit.dimension()).unwrap_or_else(|lacks| panic!("{name}: {lacks:?}"));
    base.over(goods.packs[0].contents.measure().unwrap().base()).unwrap()
}

#[test]
fn so_many_cups_cost_so_many_times_what_is_printed() {
    let mut checked = 0;
    for row in rows(include_str!("data/ers_prices_2020.csv")) {
        let (unit, per_sale) = match row["cup_equiv_unit"].as_str() {
            "pounds" => (Unit::Pound, exact("1")),
            _ => (Unit::UsFluidOunce, exact("16")),
        };
        let cup = Amount::new(exact(&row["cup_equiv_size"]), unit);
        let cups = exact("24");
        let sold = bought(&row["name"], &row["yield"], &cup, cups);
        // n cups are n times the printed size over the printed yield.
        let printed = cup.number.times(cups).unwrap().over(per_sale).unwrap().over(exact(&row["yield"])).unwrap();
        assert!(near(sold, printed, "0.000000001"), "{}: {sold}, not {printed}", row["name"]);
        // And cost n times what is printed, which is rounded to four decimals.
        let cost = sold.times(exact(&row["retail_price"])).unwrap();
        let cost_printed = exact(&row["cup_equiv_price"]).times(cups).unwrap();
        assert!(near(cost, cost_printed, "0.012"), "{}: {cost}, not {cost_printed}", row["name"]);
        // Whole pounds or pints hold it, and less than one is left over.
        let whole = pack(1, if unit == Unit::Pound { "1 lb" } else { "1 pt" }, &row["retail_price"]);
        let base = sold.times(whole.contents.measure().unwrap().base()).unwrap();
        let packs = whole_packs(&whole, base).unwrap();
        let over = packs.minus(sold).unwrap();
        assert!(near(over.max(Exact::ZERO), over, "0.000000001") && over < Exact::ONE, "{}: {over} over", row["name"]);
        checked += 1;
    }
    assert_eq!(checked, 153);
}

#[test]
fn edible_weights_are_bought_with_their_refuse() {
    // USDA SR28: of what is bought, `ep_pct` is edible.
    let mut checked = 0;
    for row in rows(include_str!("data/sr28_edible_yield.csv")) {
        let edible = exact(&row["ep_pct"]).over(exact("100")).unwrap();
        let cup = Amount::new(exact("0.5"), Unit::Pound);
        let sold = bought(&row["key"], &edible.to_string(), &cup, exact("30"));
        let back = sold.times(edible).unwrap();
        assert!(near(back, exact("15"), "0.000000001"), "{}: {back}", row["key"]);
        assert!(sold >= exact("15"), "{}", row["key"]);
        checked += 1;
    }
    assert_eq!(checked, 104);
}

fn near(one: Exact, other: Exact, allowed: &str) -> bool {
    one.minus(other).unwrap().abs() <= exact(allowed)
}

/// Marrowgate Juice Hall, invented.
fn demo() -> Book {
    exchange::read(include_str!("../../public/books/marrowgate-juice-hall.json")).expect("the demo book")
}

#[test]
fn the_carrots_of_a_morning_by_hand() {
    let (book, carrots) = (demo(), IngredientId::from_random(7));
    let batch = book.batch(Date::from_text("2026-11-26").unwrap()).expect("in the demo book");
    let ledger = Ledger::of(&book);
    let sheet = sheet(&book, &ledger, batch).unwrap();
    let portion = sheet.portions.iter().find(|it| it.ingredient == carrots).expect("it has carrots");
    // Filled to 12.1 and 16.1 fl oz. Copper Morning, half of it carrots: 18 * 12.1 + 8 * 16.1 =
    // 346.6 fl oz, 173.3 of carrots. Garnet Row, 2.5 of 16: 8 * 12.1 + 6 * 16.1 = 193.4, 30.21875
    // of carrots. 203.51875 together, of which 3 % stay in the press: / 0.97 = 209.81314 fl oz.
    // 29.5735295625 mL each: 6204.9152 mL. The rest by the yields on the page of the carrots.
    let goods = book.ingredient(carrots).unwrap();
    let density = goods.juice_density.unwrap().grams_per_millilitre();
    assert_eq!((density, goods.press_yield, goods.trim_yield), (exact("0.998"), Some(share("0.55")), share("0.89")));
    // 6204.9152 * 0.998 = 6192.5054 g of juice; / 0.55 = 11259.101 g trimmed; / 0.89 = 12650.675 g.
    let expected = [
        (Station::Out, "12650.675", "446.3 oz"),
        (Station::Trimmed, "11259.101", "397.2 oz"),
        (Station::Juice, "6204.915", "210 fl oz"),
    ];
    let weighed = portion.weighed.as_ref().expect("it can be weighed");
    for (found, (station, by_hand, rounded)) in weighed.iter().zip(expected) {
        assert_eq!((found.station, found.exact.base().rounded(3)), (station, exact(by_hand)));
        // In steps of 0.1 oz and 0.25 fl oz: 12650.675 / 28.349523125 = 446.2394; 397.15; 209.81.
        assert_eq!(found.amount, crate::support::amount(rounded));
    }
    // 12650.675 / 453.59237 = 27.8900 lb; 60 lb are here.
    let takes = needs(&book, &ledger, &mut brimwright::counter::batch::planned(batch)).unwrap();
    let reached = reach(&book, &takes).unwrap();
    let of_carrots = reached.iter().find(|it| it.goods == Goods::Ingredient(carrots)).unwrap();
    let Reach::Enough(left) = of_carrots.reach else { panic!("{of_carrots:?}") };
    assert_eq!((left.number.rounded(4), left.unit), (exact("32.1100"), Unit::Pound));
    assert!(matches!(weighed[2].exact, Measure::Volume(_)));
    // A case of 50 lb is enough.
    let case = pack(1, "50 lb", "1");
    assert_eq!(case.price, money("1"));
    assert_eq!(whole_packs(&case, weighed[0].exact.base()), Ok(Exact::ONE));
}
