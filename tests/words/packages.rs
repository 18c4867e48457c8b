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
        "Fill to: 15.53 fl oz. The labeled size is 15 fl oz, and single packages need 15.53 fl oz on average. The larger is 15.53 fl oz.
  Labeled size: 15 fl oz. Entered in Large.
  Average for packages: 15.53 fl oz. 14.75 fl oz lowest allowed + 0.775 fl oz for the spread = 15.53 fl oz.
    Lowest allowed: 14.75 fl oz. 15 fl oz labeled size − 0.25 fl oz allowed = 14.75 fl oz.
      Labeled size: 15 fl oz. Entered in Large.
      Allowed variation: 0.25 fl oz. Entered in Apple ginger, Large.
    Added for spread: 0.775 fl oz. 3 × 0.258 fl oz spread = 0.775 fl oz.
      Standard deviation: 0.258 fl oz. See its own math.
      Number of spreads: 3. At least three spreads. About 1 package in 740 would be lower.
"
    );
    assert_eq!(
        text(&book, of(OfPackaged::Mean)),
        "Average weighed: 15.10 fl oz. The average of 4 weighings is 15.10 fl oz.
  Net contents: 14.8 fl oz. Entered in Apple ginger, Large.
  Net contents: 15 fl oz. Entered in Apple ginger, Large.
  Net contents: 15.2 fl oz. Entered in Apple ginger, Large.
  Net contents: 15.4 fl oz. Entered in Apple ginger, Large.
"
    );
    assert_eq!(
        first(&book, of(OfPackaged::Spread)),
        "Standard deviation: 0.258 fl oz. The standard deviation of 4 weighings is 0.258 fl oz."
    );
}

#[test]
fn what_is_given_away_and_what_there_is_room_for() {
    let book = juice(FillRule::UnitedStates);
    let of = |of| Shown::Packaged(offer_id(1, 1), of);
    assert_eq!(
        first(&book, of(OfPackaged::Giveaway)),
        "Giveaway per package: 0.525 fl oz. Fill to 15.53 fl oz − Labeled size 15 fl oz = 0.525 fl oz."
    );
    // 1.85096 * 0.524597 / 15.2 = 0.063882; 10400 of that are 664.37.
    assert_eq!(
        text(&book, of(OfPackaged::GiveawayCost)),
        "Giveaway cost: $0.064. $1.851 of ingredients ÷ 15.2 fl oz × 0.525 fl oz giveaway = $0.064.
  Ingredients: $1.851. See its own math.
  Giveaway per package: 0.525 fl oz. See its own math.
  Fill: 15.2 fl oz. See its own math.
"
    );
    assert_eq!(
        text(&book, of(OfPackaged::GiveawayCostInAYear)),
        "Yearly giveaway cost: $664.372. $0.064 per package × 10,400 per year = $664.372.
  Giveaway cost: $0.064. See its own math.
  Packages per year: 10,400. 200 per week × 52 weeks = 10,400.
    Drinks sold per week: 200. Entered in Apple ginger, Large.
    Weeks per year: 52. A year has 52 weeks.
"
    );
    // 15.524597 + 3 * 0.258199 = 16.299193.
    assert_eq!(
        text(&book, of(OfPackaged::Highest)),
        "Fullest package: 16.30 fl oz. Fill to 15.53 fl oz + Fill variation 0.775 fl oz = 16.30 fl oz.
  Fill to: 15.53 fl oz. See its own math.
  Fill variation: 0.775 fl oz. 3 × 0.258 fl oz spread = 0.775 fl oz.
    Standard deviation: 0.258 fl oz. See its own math.
    Number of spreads: 3. In a normal distribution, about 1 package in 740 is fuller.
"
    );
    assert_eq!(
        first(&book, of(OfPackaged::Room)),
        "Room in container: 15.75 fl oz. Brimful capacity 16.0 fl oz − Room for cap 0.25 fl oz = 15.75 fl oz."
    );
}

#[test]
fn other_rules_and_weights() {
    let average = juice(FillRule::Average);
    assert_eq!(
        first(&average, Shown::Packaged(offer_id(1, 1), OfPackaged::Target)),
        "Fill to: 15.00 fl oz. You entered no packages per batch, so fill to the labeled size: 15.00 fl oz."
    );
    // 0.258199 * 1.959964 = 0.506061, over the root of 12.
    let of_twelve = Filling { batch: Some(exact("12")), ..ounces(FillRule::Average) };
    assert_eq!(
        text(&packaged(juice_bar(), 1, "15 fl oz", of_twelve), Shown::Packaged(offer_id(1, 1), OfPackaged::Target)),
        "Fill to: 15.15 fl oz. 15 fl oz labeled size + 0.147 fl oz for the average = 15.15 fl oz.
  Labeled size: 15 fl oz. Entered in Large.
  Added for average: 0.147 fl oz. 0.506 fl oz for a single package ÷ 3.4641 = 0.147 fl oz.
    Added for spread: 0.506 fl oz. 1.96 × 0.258 fl oz spread = 0.506 fl oz.
      Standard deviation: 0.258 fl oz. See its own math.
      Number of spreads: 1.96. In a normal distribution, 2.5% lie more than this many spreads below the average.
    Square root: 3.4641. The square root of 12 = 3.4641.
      Packages per batch: 12. Entered in Apple ginger, Large.
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
    // 3% of 450 mL (Directive 76/211/EEC, Annex I, 2.4).
    let tolerated =
        "Allowed variation: 13.5 mL. The tolerable negative error for this size (76/211/EEC, Annex I, 2.4).\n";
    assert!(text(&book, of(OfPackaged::Target)).contains(tolerated));
    assert_eq!(first(&book, of(OfPackaged::Room)), "Room in container: 500.0 mL. Brimful capacity only: 500.0 mL.");
    assert_eq!(
        text(&book, of(OfPackaged::Mean)),
        "Average weighed: 473.8 mL. The average of 2 weighings is 473.8 mL.
  Net volume: 487.7 mL. 440 g at 0.9023 g/mL = 487.7 mL.
    Net contents: 440 g. Entered in Banana oat, Bottle.
    Drink density: 0.9023 g/mL. See its own math.
  Net contents: 460 mL. Entered in Banana oat, Bottle.
"
    );
    // By hand, of a drink that carries its own ice: 33.012 g float and take 33.012 / rho mL, the rest of 480 mL is
    // 1 banana, 1.1812 times oats and ice, and milk, all with a tenth of air: rho = 0.90226 fulfils both.
    let density = text(&book, Shown::Offer(offer_id(1, 2), OfOffer::Density));
    assert_eq!(
        density.lines().take(2).collect::<Vec<_>>().join("\n"),
        "Drink density: 0.9023 g/mL. 433 g ÷ 480 mL = 0.9023 g/mL.
  Drink weight: 433 g. Bananas, trimmed, weight 115 g + Oats, soaked or brewed, in the drink 47 g + Ice, as purchased, weight 32 g + Ice, as purchased, weight 33 g + Milk, as purchased, weight 205 g = 433 g."
    );
}

#[test]
fn a_batch_that_was_measured_cold() {
    // 1% of batches: 2.326348. Counted at 20 °C, water 0.998207 g/mL, at 4 °C 0.999975 (Tanaka and
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
        "Fill to: 450.9 mL. The batch needs 450.9 mL on average, and single packages need 450.3 mL. The larger is 450.9 mL.
  Average for batch: 450.9 mL. 449.2 mL labeled size + 1.7 mL for the average = 450.9 mL.
    Adjusted labeled size: 449.2 mL. 450 mL × 0.9982 g/mL by law ÷ 1 g/mL as measured = 449.2 mL.
      Labeled size: 450 mL. Entered in Bottle.
      Water by law: 0.9982 g/mL. Water at that temperature (Tanaka and others, Metrologia 38, 2001).
      Water, measured: 1 g/mL. Water at that temperature (Tanaka and others, Metrologia 38, 2001).
    Added for average: 1.7 mL. 16.4 mL for a single package ÷ 10 = 1.7 mL.
      Added for spread: 16.4 mL. 2.3263 × 7.1 mL spread = 16.4 mL.
        Standard deviation: 7.1 mL. See its own math.
        Number of spreads: 2.3263. In a normal distribution, 1% lie more than this many spreads below the average.
      Square root: 10. The square root of 100 = 10.
        Packages per batch: 100. Entered in Banana oat, Bottle.
  Average for packages: 450.3 mL. 435.7 mL lowest allowed + 14.5 mL for the spread = 450.3 mL.
    Lowest allowed: 435.7 mL. 449.2 mL labeled size − 13.5 mL allowed = 435.7 mL.
      Adjusted labeled size: 449.2 mL. 450 mL × 0.9982 g/mL by law ÷ 1 g/mL as measured = 449.2 mL.
        Labeled size: 450 mL. Entered in Bottle.
        Water by law: 0.9982 g/mL. Water at that temperature (Tanaka and others, Metrologia 38, 2001).
        Water, measured: 1 g/mL. Water at that temperature (Tanaka and others, Metrologia 38, 2001).
      Adjusted allowed variation: 13.5 mL. 13.5 mL × 0.9982 g/mL by law ÷ 1 g/mL as measured = 13.5 mL.
        Allowed variation: 13.5 mL. The tolerable negative error for this size (76/211/EEC, Annex I, 2.4).
        Water by law: 0.9982 g/mL. Water at that temperature (Tanaka and others, Metrologia 38, 2001).
        Water, measured: 1 g/mL. Water at that temperature (Tanaka and others, Metrologia 38, 2001).
    Added for spread: 14.5 mL. 2.0537 × 7.1 mL spread = 14.5 mL.
      Standard deviation: 7.1 mL. See its own math.
      Number of spreads: 2.0537. In a normal distribution, 2% lie more than this many spreads below the average.
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
        "Price before tax: $8.333. $9.00 with tax ÷ 108% = $8.333 before tax.
  Menu price: $9.00. Typed here only. Your book does not keep this price."
    );
    // 9 / 1.08 * (1 - 0.4 - 0.1 - 0.029 * 1.08) = 3.90567, less 0.10.
    assert_eq!(
        text(&book, at(OfPrice::MayCost)).lines().take(4).collect::<Vec<_>>().join("\n"),
        "Drink cost limit: $3.806. Before transaction fee $3.906 − Fee per transaction $0.10 = $3.806.
  Before transaction fee: $3.906. $8.333 before tax × 46.9% for costs = $3.906.
    Price before tax: $8.333. See its own math.
    Share for costs: 46.9%. The whole 100% − Target margin 40% − Commission share 10% − Taxed card fee 3.1% = 46.9%."
    );
    // 3.80567 * 0.96 - 0.50 - 0.65986 - 0.10 - 0.25 = 2.14358.
    assert_eq!(
        text(&book, at(OfPrice::IngredientsMayCost)),
        "Ingredient cost limit: $2.144. Limit before waste $3.653 − Packaging $0.50 − Labor $0.66 − Processing fee $0.10 − Overhead $0.25 = $2.144. Each figure is rounded.
  Limit before waste: $3.653. $3.806 per drink sold × 96% sold = $3.653 per drink made.
    Drink cost limit: $3.806. See its own math.
    Sold share: 96%. The whole 100% − Waste share 4% = 96%.
      The whole: 100%. All of the amount.
      Waste share: 4%. Entered in Book.
  Packaging: $0.50. See its own math.
  Labor: $0.66. See its own math.
  Processing fee: $0.10. See its own math.
  Overhead: $0.25. See its own math.
"
    );
    // At the price asked, 8.00: 3.47171 - 0.10.
    let asked = large(OfOffer::At(AtPrice::Asked, OfPrice::MayCost));
    assert_eq!(
        first(&book, asked),
        "Drink cost limit: $3.372. Before transaction fee $3.472 − Fee per transaction $0.10 = $3.372."
    );
}
