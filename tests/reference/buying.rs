//! What must be bought for so many edible cups or kilograms, in whole packs: from the yields and
//! prices printed by the USDA (`data/ers_prices_2020.csv`, `data/sr28_edible_yield.csv`). The
//! expected packs are computed here from the printed digits, in whole numbers.

use brimwright::book::{Book, Goods, Ingredient, Line, Record, Scaling, Stage};
use brimwright::buying::buying_list::{Quote, propose};
use brimwright::drink::ledger::Ledger;
use brimwright::foundation::measure::{Exact, Share};

use crate::csv::{Row, rows};
use crate::support::{
    book, container, drink, exact, ingredient, ingredient_id, line, money, offer, offer_id, pack, settings, share,
};

/// Drinks made.
const DRINKS: i128 = 100;

/// A printed decimal as a whole number of millionths.
fn millionths(text: &str) -> i128 {
    let (whole, part) = text.split_once('.').unwrap_or((text, ""));
    assert!(part.len() <= 6, "{text:?}");
    format!("{whole}{part:0<6}").parse().unwrap()
}

/// The next whole number at or above a quotient.
fn up(dividend: i128, divisor: i128) -> i128 {
    (dividend + divisor - 1) / divisor
}

/// A bar whose only drink takes a fixed amount of ingredient 1 at a stage; water fills the rest.
fn bar(of: Ingredient, stage: Stage, amount: &str) -> Book {
    let fixed = Line { stage, scaling: Scaling::Fixed, ..line(1, 1, amount) };
    book(
        settings(),
        [
            Record::Ingredient(of),
            Record::Ingredient(ingredient(2, [pack(1, "1 L", "0")])),
            Record::Container(container(1, "1 L")),
            Record::Drink(drink(1, "1 L", [fixed, line(2, 2, "1 L")])),
            Record::Offer(offer(1, 1, None)),
        ],
    )
}

/// What is to be bought of ingredient 1 for a hundred drinks, in its packs.
fn quotes(book: &Book) -> Vec<Quote> {
    let makes = [(offer_id(1, 1), Exact::new(DRINKS as i64, 0))];
    let proposal = propose(book, &Ledger::of(book), &makes).unwrap();
    assert_eq!(proposal.lines.len(), 1, "{proposal:?}");
    assert_eq!(proposal.lines[0].goods, Goods::Ingredient(ingredient_id(1)));
    proposal.lines[0].quotes.clone()
}

fn whole(number: i128) -> Exact {
    exact(&number.to_string())
}

/// Packs that hold one and 25 of the unit that the row's price is for.
fn of_row(row: &Row) -> Book {
    let (pack_unit, cup_unit) = match row["retail_unit"].as_str() {
        "per pound" => ("lb", "lb"),
        "per pint" => ("pt", "fl oz"),
        other => panic!("no such unit: {other:?}"),
    };
    let price = exact(&row["retail_price"]);
    let case = price.times(exact("25")).unwrap().to_string();
    let packs = [pack(1, &format!("1 {pack_unit}"), &row["retail_price"]), pack(2, &format!("25 {pack_unit}"), &case)];
    let usable = share(&row["yield"]);
    let cup = format!("{} {cup_unit}", row["cup_equiv_size"]);
    if usable > Share::WHOLE {
        let soaked = Ingredient { soak_yield: Some(usable), ..ingredient(1, packs) };
        bar(soaked, Stage::SoakedOrBrewed, &cup)
    } else {
        bar(Ingredient { trim_yield: usable, ..ingredient(1, packs) }, Stage::Trimmed, &cup)
    }
}

#[test]
fn a_hundred_edible_cups_take_so_many_pounds() {
    let mut checked = 0;
    for row in rows(include_str!("data/ers_prices_2020.csv")) {
        // 16 fl oz are a pint.
        let parts = if row["retail_unit"] == "per pint" { 16 } else { 1 };
        let (cup, usable, price) =
            (millionths(&row["cup_equiv_size"]), millionths(&row["yield"]), millionths(&row["retail_price"]));
        let (pounds, cases) = (up(DRINKS * cup, usable * parts), up(DRINKS * cup, usable * parts * 25));
        let quotes = quotes(&of_row(&row));
        for (quote, packs, each) in [(quotes[0], pounds, price), (quotes[1], cases, price * 25)] {
            assert_eq!(quote.packs, whole(packs), "{row:?}");
            let cost = Exact::new(1, 6).times(whole(packs * each));
            assert_eq!(Ok(quote.cost.major()), cost, "{row:?}");
        }
        checked += 1;
    }
    assert_eq!(checked, 153);
}

#[test]
fn apples_by_the_case() {
    // Printed there: fresh apples, 0.2425 lb a cup, 90 % usable. A hundred cups: 24.25 / 0.9 =
    // 26.94 lb, so one case of 40 lb, and 40 - 26.944... lb left over, or two of 25.
    let packs = [pack(1, "40 lb", "38"), pack(2, "25 lb", "25")];
    let apples = Ingredient { trim_yield: share("0.9"), ..ingredient(1, packs) };
    let quotes = quotes(&bar(apples, Stage::Trimmed, "0.2425 lb"));
    assert_eq!(quotes.iter().map(|quote| quote.packs).collect::<Vec<_>>(), ["1", "2"].map(exact));
    assert_eq!(quotes.iter().map(|quote| quote.cost).collect::<Vec<_>>(), ["38", "50"].map(money));
    let left: Vec<Exact> =
        quotes.iter().map(|quote| quote.left_over.base().over(exact("453.59237")).unwrap().rounded(6)).collect();
    assert_eq!(left, ["13.055556", "23.055556"].map(exact));
}

#[test]
fn edible_kilograms_take_what_is_bought_less_refuse() {
    let mut checked = 0;
    for row in rows(include_str!("data/sr28_edible_yield.csv")) {
        let edible = share(&exact(&row["ep_pct"]).over(exact("100")).unwrap().to_string());
        let produce = Ingredient { trim_yield: edible, ..ingredient(1, [pack(1, "1 kg", "2.50")]) };
        let quote = quotes(&bar(produce, Stage::Trimmed, "0.15 kg"))[0];
        // A hundred drinks of 150 g: 15 kg, of which each bought kilogram has so many hundredths.
        let packs = up(1500 * 1_000_000, millionths(&row["ep_pct"]));
        assert_eq!(quote.packs, whole(packs), "{}", row["key"]);
        assert_eq!(quote.cost.major(), whole(packs).times(exact("2.5")).unwrap());
        checked += 1;
    }
    assert_eq!(checked, 104);
}
