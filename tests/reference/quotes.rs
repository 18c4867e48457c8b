//! Quotes compared per usable amount: USDA Economic Research Service, Fruit and Vegetable Prices
//! 2020 (public domain), see `data/ers_prices_2020.csv`: what a pound costs and what is left of it
//! to eat give the printed price of an edible cup.

use std::collections::BTreeMap;

use brimwright::book::{Goods, Ingredient, Record, Stage};
use brimwright::buying::quotes::{Usable, compared, usable};
use brimwright::foundation::measure::{Exact, Money, Share};

use crate::csv::{Row, rows};
use crate::support::{amount, book, exact, ingredient, ingredient_id, money, pack, pack_id, settings, share};

const PRINTED: &str = include_str!("data/ers_prices_2020.csv");

fn goods() -> Goods {
    Goods::Ingredient(ingredient_id(1))
}

/// Cups are printed to four decimals.
fn is_as_printed(cost: Money, row: &Row) -> bool {
    // Our cost is that of a usable pound.
    let cup = cost.times(exact(&row["cup_equiv_size"])).unwrap().major();
    let off = cup.minus(exact(&row["cup_equiv_price"])).unwrap().abs();
    off <= exact("0.0005")
}

/// Rows by what is left and how much a cup is: packs of one ingredient, in the order of the file.
fn alike() -> Vec<Vec<Row>> {
    let mut groups: BTreeMap<(String, String), Vec<Row>> = BTreeMap::new();
    let by_weight = |row: &Row| row["cup_equiv_unit"] == "pounds" && exact(&row["yield"]) <= Exact::ONE;
    for row in rows(PRINTED).into_iter().filter(by_weight) {
        groups.entry((row["yield"].clone(), row["cup_equiv_size"].clone())).or_default().push(row);
    }
    groups.into_values().collect()
}

#[test]
fn packs_stand_in_the_order_of_the_printed_cups() {
    let mut packs = 0;
    let mut pairs = 0;
    for group in alike() {
        let quoted = (1..).zip(&group).map(|(id, row)| pack(id, "1 lb", &row["retail_price"]));
        let left = share(&group[0]["yield"]);
        let book = book(settings(), [Record::Ingredient(Ingredient { trim_yield: left, ..ingredient(1, quoted) })]);
        let stage = if left < Share::WHOLE { Stage::Trimmed } else { Stage::AsBought };
        assert_eq!(usable(&book, goods()), Usable { stage, amount: amount("1 lb") });
        let found = compared(&book, goods());
        assert_eq!(found.len(), group.len());
        let row_of = |place: usize| {
            let id = found[place].pack;
            (1..).zip(&group).find(|(number, _)| pack_id(*number) == id).expect("one of the group").1
        };
        for (place, one) in found.iter().enumerate() {
            let row = row_of(place);
            assert!(is_as_printed(one.cost.unwrap(), row), "{row:?}: {one:?}");
            packs += 1;
        }
        for place in 1..found.len() {
            let cup = |place| exact(&row_of(place)["cup_equiv_price"]);
            assert!(cup(place - 1) <= cup(place), "{:?} after {:?}", row_of(place), row_of(place - 1));
            pairs += 1;
        }
    }
    // Rows in pounds with a yield of at most 1, and the same less the kinds of yield and cup among
    // them: counted in the file by Python's csv module.
    assert_eq!((packs, pairs), (129, 37));
}

#[test]
fn delivery_turns_the_order_round() {
    // Apples, fresh: 1.5193 a pound, 0.9 of it left, 0.2425 lb a cup, printed 0.4094. A second
    // supplier asks 1.45 and 2.00 for bringing 20 lb: 31.00 for 20 lb, 1.55 a pound.
    let row = rows(PRINTED).into_iter().find(|row| row["name"] == "Apples" && row["form"] == "Fresh").unwrap();
    let here = pack(1, "1 lb", &row["retail_price"]);
    let brought = brimwright::book::Pack { surcharge: money("2"), ..pack(2, "20 lb", "29") };
    let apples = Ingredient { trim_yield: share(&row["yield"]), ..ingredient(1, [brought, here]) };
    let found = compared(&book(settings(), [Record::Ingredient(apples)]), goods());
    assert_eq!(found.iter().map(|one| one.pack).collect::<Vec<_>>(), [pack_id(1), pack_id(2)]);
    assert!(is_as_printed(found[0].cost.unwrap(), &row));
    // 1.55 / 1.5193 - 1
    assert_eq!(found[1].above_cheapest, Some(share("0.020206674126")));
}
