//! Workings of packaged drinks and of price points in words, by hand.

use brimwright::book::{Accepted, Book, Container, Edit, FillRule, Filling, Offer, Record};
use brimwright::drink::ledger::Ledger;
use brimwright::foundation::measure::{Scale, Temperature};
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
        allowed: Some(amount("0.25 fl oz")),
        least_headspace: Some(amount("0.25 fl oz")),
        nets: ["14.8 fl oz", "15 fl oz", "15.2 fl oz", "15.4 fl oz"].map(amount).to_vec(),
        ..Filling::new(rule, Accepted::TwoAndAHalfPercent)
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
    // 0.258199; three times that are 0.774597, and 15.524597 is shown rounded up.
    assert_eq!(
        text(&book, of(OfPackaged::Target)),
        "Fill to: 15.53 fl oz. 15 fl oz is declared, and single packages need 15.53 fl oz on average; the larger of the two: 15.53 fl oz.
  Declared size: 15 fl oz. Entered at Large.
  Average that leaves few short: 15.53 fl oz. 14.75 fl oz as the least, and 0.775 fl oz for the spread: 15.53 fl oz.
    Least in a package: 14.75 fl oz. 15 fl oz declared, less 0.25 fl oz tolerated: 14.75 fl oz.
      Declared size: 15 fl oz. Entered at Large.
      Tolerated in a package: 0.25 fl oz. Entered at Apple ginger, Large.
    For the spread: 0.775 fl oz. 3 times 0.258 fl oz: 0.775 fl oz.
      Spread of the weighings: 0.258 fl oz. Has a working of its own.
      Times the spread: 3. At least three spreads: about one package in 740 would be lower.
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
        "Given away in a package: 0.525 fl oz. Fill to 15.53 fl oz, less declared size 15 fl oz: 0.525 fl oz."
    );
    // 1.85096 * 0.524597 / 15.2 = 0.063882; 10400 of that are 664.37.
    assert_eq!(
        text(&book, of(OfPackaged::GiveawayCost)),
        "Given away in a package, in ingredients: $0.064. $1.851 of ingredients fill 15.2 fl oz, and 0.525 fl oz are given away: $0.064.
  Ingredients: $1.851. Has a working of its own.
  Given away in a package: 0.525 fl oz. Has a working of its own.
  Poured: 15.2 fl oz. Has a working of its own.
"
    );
    assert_eq!(
        text(&book, of(OfPackaged::GiveawayCostInAYear)),
        "Given away in a year, in ingredients: $664.372. $0.064 for each of 10,400 packages: $664.372.
  Given away in a package, in ingredients: $0.064. Has a working of its own.
  Packages a year: 10,400. 200 a week for 52 weeks: 10,400.
    Sold a week: 200. Entered at Apple ginger, Large.
    Weeks in a year: 52. A year has 52 weeks.
"
    );
    // 15.524597 + 3 * 0.258199 = 16.299193.
    assert_eq!(
        text(&book, of(OfPackaged::Highest)),
        "Fullest to expect: 16.30 fl oz. Fill to 15.53 fl oz and three times the spread 0.775 fl oz: together 16.30 fl oz.
  Fill to: 15.53 fl oz. Has a working of its own.
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
        "Fill to: 15.00 fl oz. The declared size, as nobody said how many packages a batch has: 15.00 fl oz."
    );
    // 0.258199 * 1.959964 = 0.506061, over the root of 12.
    let of_twelve = Filling { batch: Some(exact("12")), ..ounces(FillRule::Average) };
    assert_eq!(
        text(&packaged(juice_bar(), 1, "15 fl oz", of_twelve), Shown::Packaged(offer_id(1, 1), OfPackaged::Target)),
        "Fill to: 15.15 fl oz. 15 fl oz declared, and 0.147 fl oz more for the average of a batch: 15.15 fl oz.
  Declared size: 15 fl oz. Entered at Large.
  For the average: 0.147 fl oz. 0.506 fl oz for a single package, divided by 3.4641: 0.147 fl oz.
    For the spread: 0.506 fl oz. 1.96 times 0.258 fl oz: 0.506 fl oz.
      Spread of the weighings: 0.258 fl oz. Has a working of its own.
      Times the spread: 1.96. In a normal distribution 2.5 % lie more than so many times the spread under the mean.
    Root of the packages: 3.4641. The square root of 12 packages: 3.4641.
      Packages per batch: 12. Entered at Apple ginger, Large.
"
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
    let tolerated = "Tolerated in a package: 13.5 mL. The tolerable negative error of Directive 76/211/EEC, Annex I, 2.4, for this size.\n";
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
fn a_batch_that_was_measured_cold() {
    // 1 % of batches: 2.326348. Counted at 20 °C, water 0.998207 g/mL, at 4 °C 0.999975 (Tanaka and
    // others, Metrologia 38, 2001): 450 * 0.998207 / 0.999975 = 449.204, 13.5 of it 13.476.
    let cold = Filling {
        allowed: None,
        least_headspace: None,
        batch: Some(exact("100")),
        batch_risk: Some(Accepted::OnePercent),
        measured_at: Some(Temperature::new(exact("4"), Scale::Celsius)),
        nets: ["450 mL", "460 mL"].map(amount).to_vec(),
        ..Filling::new(FillRule::EuropeanOrBritish, Accepted::TwoPercent)
    };
    let book = packaged(smoothie_bar(), 2, "450 mL", cold);
    // Deviation the root of 50, 7.071068: 2.326348 of it are 16.44997, a tenth of that 1.644997;
    // 2.053749 of it are 14.522: less 13.476 they add 1.046.
    assert_eq!(
        text(&book, Shown::Packaged(offer_id(1, 2), OfPackaged::Target)),
        "Fill to: 450.9 mL. 450.9 mL for the average, and 450.3 mL for single packages; the larger of the two: 450.9 mL.
  Average that leaves few batches short: 450.9 mL. 449.2 mL declared, and 1.7 mL more for the average of a batch: 450.9 mL.
    Declared size, as measured: 449.2 mL. 450 mL where the law counts. Water is 0.9982 g/mL there, and 1 g/mL as measured: 449.2 mL.
      Declared size: 450 mL. Entered at Bottle.
      Water, as the law counts: 0.9982 g/mL. Water at that temperature (Tanaka and others, Metrologia 38, 2001).
      Water, as measured: 1 g/mL. Water at that temperature (Tanaka and others, Metrologia 38, 2001).
    For the average: 1.7 mL. 16.4 mL for a single package, divided by 10: 1.7 mL.
      For the spread: 16.4 mL. 2.3263 times 7.1 mL: 16.4 mL.
        Spread of the weighings: 7.1 mL. Has a working of its own.
        Times the spread: 2.3263. In a normal distribution 1 % lie more than so many times the spread under the mean.
      Root of the packages: 10. The square root of 100 packages: 10.
        Packages per batch: 100. Entered at Banana oat, Bottle.
  Average that leaves few short: 450.3 mL. 435.7 mL as the least, and 14.5 mL for the spread: 450.3 mL.
    Least in a package: 435.7 mL. 449.2 mL declared, less 13.5 mL tolerated: 435.7 mL.
      Declared size, as measured: 449.2 mL. 450 mL where the law counts. Water is 0.9982 g/mL there, and 1 g/mL as measured: 449.2 mL.
        Declared size: 450 mL. Entered at Bottle.
        Water, as the law counts: 0.9982 g/mL. Water at that temperature (Tanaka and others, Metrologia 38, 2001).
        Water, as measured: 1 g/mL. Water at that temperature (Tanaka and others, Metrologia 38, 2001).
      Tolerated, as measured: 13.5 mL. 13.5 mL where the law counts. Water is 0.9982 g/mL there, and 1 g/mL as measured: 13.5 mL.
        Tolerated in a package: 13.5 mL. The tolerable negative error of Directive 76/211/EEC, Annex I, 2.4, for this size.
        Water, as the law counts: 0.9982 g/mL. Water at that temperature (Tanaka and others, Metrologia 38, 2001).
        Water, as measured: 1 g/mL. Water at that temperature (Tanaka and others, Metrologia 38, 2001).
    For the spread: 14.5 mL. 2.0537 times 7.1 mL: 14.5 mL.
      Spread of the weighings: 7.1 mL. Has a working of its own.
      Times the spread: 2.0537. In a normal distribution 2 % lie more than so many times the spread under the mean.
"
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
