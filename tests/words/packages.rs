//! Workings of packaged drinks and of price points in words, by hand.

use brimwright::book::{Accepted, Book, Container, Edit, FillRule, Filling, Offer, Record};
use brimwright::ledger::Ledger;
use brimwright::working::{AtPrice, OfOffer, OfPackaged, OfPrice, Shown, of};

use crate::bars::{juice_bar, smoothie_bar};
use crate::support::{amount, container_id, exact, money, offer_id};
use crate::working::{first, large, text};

/// The drink packaged ahead in the container of this number, declared as so much.
fn packaged(mut book: Book, number: u64, declared: &str, filling: Filling) -> Book {
    let container = book.container(container_id(number)).unwrap().clone();
    let offer = book.offer(offer_id(1, number)).unwrap().clone();
    for record in [
        Record::Container(Container { declared: Some(amount(declared)), ..container }),
        Record::Offer(Offer { filling: Some(filling), weekly: Some(exact("200")), ..offer }),
    ] {
        book.apply(&Edit::Put(record)).unwrap();
    }
    book
}

fn ounces(rule: FillRule) -> Filling {
    Filling {
        rule,
        accepted: Accepted::TwoAndAHalfPercent,
        allowed: Some(amount("0.25 fl oz")),
        least_headspace: Some(amount("0.25 fl oz")),
        nets: ["14.8 fl oz", "15 fl oz", "15.2 fl oz", "15.4 fl oz"].map(amount).to_vec(),
    }
}

/// The juice in its large bottle, declared as 15 fl oz.
fn juice(rule: FillRule) -> Book {
    packaged(juice_bar(), 1, "15 fl oz", ounces(rule))
}

#[test]
fn a_fill_target_from_its_weighings() {
    let book = juice(FillRule::UnitedStates);
    let of = |of| Shown::Packaged(offer_id(1, 1), of);
    // Off their mean of 15.1 by 0.3, 0.1, 0.1 and 0.3: squares of 0.2 together, over 3, the root
    // 0.258199; times 1.959964 are 0.506061.
    assert_eq!(
        text(&book, of(OfPackaged::Target)),
        "Fill on average: 15.26 fl oz. 15 fl oz is declared, and 15.26 fl oz on average leaves few packages short; the larger of the two: 15.26 fl oz.
  Declared size: 15 fl oz. Entered at Large.
  Average that leaves few short: 15.26 fl oz. 14.75 fl oz that most packages must hold, and 0.506 fl oz for the spread: 15.26 fl oz.
    Least in most packages: 14.75 fl oz. 15 fl oz declared, less 0.25 fl oz tolerated: 14.75 fl oz.
      Declared size: 15 fl oz. Entered at Large.
      Tolerated in a package: 0.25 fl oz. Entered at Apple ginger, Large.
    For the spread: 0.506 fl oz. 1.96 times 0.258 fl oz: 0.506 fl oz.
      Spread of the weighings: 0.258 fl oz. Has a working of its own.
      Times the spread: 1.96. In a normal distribution 2.5 % lie more than so many times the spread under the mean.
"
    );
    assert_eq!(
        text(&book, of(OfPackaged::Mean)),
        "Mean of the weighings: 15.10 fl oz. 4 weighings together, divided by 4: 15.10 fl oz.
  Net contents of a package: 14.8 fl oz. Entered at Apple ginger, Large.
  Net contents of a package: 15 fl oz. Entered at Apple ginger, Large.
  Net contents of a package: 15.2 fl oz. Entered at Apple ginger, Large.
  Net contents of a package: 15.4 fl oz. Entered at Apple ginger, Large.
"
    );
    assert_eq!(
        first(&book, of(OfPackaged::Spread)),
        "Spread of the weighings: 0.258 fl oz. The 4 weighings lie about so far from their mean (their standard deviation): 0.258 fl oz."
    );
}

#[test]
fn what_is_given_away_and_what_there_is_room_for() {
    let book = juice(FillRule::UnitedStates);
    let of = |of| Shown::Packaged(offer_id(1, 1), of);
    assert_eq!(
        first(&book, of(OfPackaged::Giveaway)),
        "Given away in a package: 0.256 fl oz. Fill on average 15.26 fl oz, less declared size 15 fl oz: 0.256 fl oz."
    );
    // 1.851 * 0.256061 / 15.2 = 0.03118; 10400 of that are 324.29.
    assert_eq!(
        text(&book, of(OfPackaged::GiveawayCost)),
        "Given away in a package, in ingredients: $0.031. $1.851 of ingredients fill 15.2 fl oz, and 0.256 fl oz are given away: $0.031.
  Ingredients: $1.851. Has a working of its own.
  Given away in a package: 0.256 fl oz. Has a working of its own.
  Poured: 15.2 fl oz. Has a working of its own.
"
    );
    assert_eq!(
        text(&book, of(OfPackaged::GiveawayCostInAYear)),
        "Given away in a year, in ingredients: $324.286. $0.031 for each of 10,400 packages: $324.286.
  Given away in a package, in ingredients: $0.031. Has a working of its own.
  Packages a year: 10,400. 200 a week for 52 weeks: 10,400.
    Sold a week: 200. Entered at Apple ginger, Large.
    Weeks in a year: 52. A year has 52 weeks.
"
    );
    // 15.256061 + 3 * 0.258199 = 16.030658.
    assert_eq!(
        text(&book, of(OfPackaged::Highest)),
        "Fullest to expect: 16.03 fl oz. Fill on average 15.26 fl oz and three times the spread 0.775 fl oz: together 16.03 fl oz.
  Fill on average: 15.26 fl oz. Has a working of its own.
  Three times the spread: 0.775 fl oz. 3 times 0.258 fl oz: 0.775 fl oz.
    Spread of the weighings: 0.258 fl oz. Has a working of its own.
    Times the spread: 3. In a normal distribution about one package in 740 is fuller.
"
    );
    assert_eq!(
        first(&book, of(OfPackaged::Room)),
        "Room for: 15.75 fl oz. To the rim 16.0 fl oz, less kept empty for the closure 0.25 fl oz: 15.75 fl oz."
    );
}

#[test]
fn other_rules_and_weights() {
    let average = juice(FillRule::Average);
    assert_eq!(
        first(&average, Shown::Packaged(offer_id(1, 1), OfPackaged::Target)),
        "Fill on average: 15.00 fl oz. Only the average counts, so it is the declared size: 15.00 fl oz."
    );
    let metric = Filling {
        accepted: Accepted::TwoPercent,
        allowed: None,
        least_headspace: None,
        nets: ["440 g", "460 mL"].map(amount).to_vec(),
        ..ounces(FillRule::EuropeanOrBritish)
    };
    let book = packaged(smoothie_bar(), 2, "450 mL", metric);
    let of = |of| Shown::Packaged(offer_id(1, 2), of);
    // 3 % of 450 mL (Directive 76/211/EEC, Annex I, 2.4).
    let tolerated =
        "Tolerated in a package: 13.5 mL. The tolerable negative error of Directive 76/211/EEC for this size.\n";
    assert!(text(&book, of(OfPackaged::Target)).contains(tolerated));
    assert_eq!(first(&book, of(OfPackaged::Room)), "Room for: 500.0 mL. To the rim alone: 500.0 mL.");
    assert_eq!(
        text(&book, of(OfPackaged::Mean)),
        "Mean of the weighings: 473.9 mL. 2 weighings together, divided by 2: 473.9 mL.
  Volume in a package: 487.8 mL. 440 g at 0.9019 g/mL: 487.8 mL.
    Net contents of a package: 440 g. Entered at Banana oat, Bottle.
    Density of the drink: 0.9019 g/mL. Has a working of its own.
  Net contents of a package: 460 mL. Entered at Banana oat, Bottle.
"
    );
    let density = text(&book, Shown::Offer(offer_id(1, 2), OfOffer::Density));
    assert_eq!(
        density.lines().take(2).collect::<Vec<_>>().join("\n"),
        "Density of the drink: 0.9019 g/mL. 433 g in 480 mL: 0.9019 g/mL.
  Weight of the drink: 433 g. Bananas, trimmed, weight 115 g; Oats, soaked or brewed, in the drink 47 g; Ice, as bought, weight 32 g; Ice, as bought, weight 33 g; Milk, as bought, weight 205 g: together 433 g."
    );
}

#[test]
fn without_a_fill_target_there_is_no_working() {
    let none = |book: &Book| of(book, &Ledger::of(book), Shown::Packaged(offer_id(1, 1), OfPackaged::Target));
    assert_eq!(none(&juice_bar()), Ok(None));
    let one = Filling { nets: vec![amount("15 fl oz")], ..ounces(FillRule::Average) };
    assert_eq!(none(&packaged(juice_bar(), 1, "15 fl oz", one)), Ok(None));
}

#[test]
fn back_from_a_price_point() {
    let book = juice_bar();
    let at = |of| large(OfOffer::At(AtPrice::Point(money("9")), of));
    assert_eq!(
        text(&book, at(OfPrice::WithoutTax)).lines().take(2).collect::<Vec<_>>().join("\n"),
        "Price without tax: $8.333. $9.00 with tax is 108 % of the price without: $8.333.
  Menu price: $9.00. From what was typed on the spot; it is not in the book."
    );
    // 9 / 1.08 * (1 - 0.4 - 0.1 - 0.029 * 1.08) = 3.90567, less 0.10.
    assert_eq!(
        text(&book, at(OfPrice::MayCost)).lines().take(4).collect::<Vec<_>>().join("\n"),
        "It may cost: $3.806. What the price can bear $3.906, less fixed payment fee $0.10: $3.806.
  What the price can bear: $3.906. 46.9 % of the price without tax, $8.333: $3.906.
    Price without tax: $8.333. Has a working of its own.
    Left of the price: 46.9 %. The whole 100 %, less target margin 40 %, less commission 10 %, less payment fee on price and tax 3.1 %: 46.9 %."
    );
    // 3.80567 * 0.96 - 0.50 - 0.65986 - 0.10 - 0.25 = 2.14358.
    assert_eq!(
        text(&book, at(OfPrice::IngredientsMayCost)),
        "Of that, ingredients: $2.144. What each drink made may cost $3.653, less container $0.50, less labour $0.66, less treatment toll $0.10, less overhead $0.25: $2.144.
  What each drink made may cost: $3.653. $3.806 for each drink sold, and 96 % of those made are sold: $3.653 for each made.
    It may cost: $3.806. Has a working of its own.
    Sold: 96 %. The whole 100 %, less made but not sold 4 %: 96 %.
      The whole: 100 %. All of it.
      Made but not sold: 4 %. Entered in Book.
  Container: $0.50. Has a working of its own.
  Labour: $0.66. Has a working of its own.
  Treatment toll: $0.10. Has a working of its own.
  Overhead: $0.25. Has a working of its own.
"
    );
    // At the price asked, 8.00: 3.47171 - 0.10.
    let asked = large(OfOffer::At(AtPrice::Asked, OfPrice::MayCost));
    assert_eq!(
        first(&book, asked),
        "It may cost: $3.372. What the price can bear $3.472, less fixed payment fee $0.10: $3.372."
    );
}
