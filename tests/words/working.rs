//! Workings in words, by hand.

use brimwright::book::{
    Basis, Book, Drink, Edit, Figure, FlatCost, Goods, Ice, IcePlace, Ingredient, Key, Line, LineId, Part, Record,
    Scaling, Season, Settings, Stage, Starting, StartingFigure,
};
use brimwright::drink::ledger::{Ledger, OfferError};
use brimwright::foundation::measure::{Currency, Month, NumberStyle, System};
use brimwright::words::{Speaker, Working};
use brimwright::working::{AtPrice, OfOffer, OfPrice, OfSize, Shown, of};

use crate::bars::{juice_bar, smoothie_bar};
use crate::support::{
    amount, container, container_id, drink, drink_id, exact, grams, ingredient, ingredient_id, line, offer, offer_id,
    pack, pack_id, settings, share,
};

/// The working of a number as text, with plain blanks.
pub fn text(book: &Book, shown: Shown) -> String {
    let speaker = Speaker::of(book, NumberStyle::english("$"));
    let step = of(book, &Ledger::of(book), shown).unwrap().unwrap();
    Working { book, speaker: &speaker }.text(&step).replace('\u{a0}', " ")
}

/// Its first line: the number itself.
pub fn first(book: &Book, shown: Shown) -> String {
    text(book, shown).lines().next().unwrap().to_string()
}

pub fn large(of: OfOffer) -> Shown {
    Shown::Offer(offer_id(1, 1), of)
}

fn line_id(number: u64) -> LineId {
    LineId::from_random(number)
}

#[test]
fn a_line_from_the_drink_back_to_the_pack() {
    let book = juice_bar();
    // 16 fl oz * 0.95 less 14.1747615625 mL of ginger are 14.7207 fl oz, 1.84009 times 8.
    assert_eq!(
        text(&book, large(OfOffer::InDrink(line_id(1)))),
        "Apples, pressed, in the drink: 14.7 fl oz. 8 fl oz in the recipe × 1.8401 = 14.7 fl oz.
  Apples, pressed, in the recipe: 8 fl oz. Entered in Apple ginger.
  Recipe multiple: 1.8401. See its own math.
"
    );
    assert_eq!(
        text(&book, large(OfOffer::ToUse(line_id(1)))),
        "Apples, pressed, amount needed: 15.5 fl oz. 14.7 fl oz in the drink ÷ 95% kept after loss = 15.5 fl oz.
  Apples, pressed, in the drink: 14.7 fl oz. See its own math.
  Kept after loss: 95%. The whole 100% − Press or pour loss 5% = 95%.
    The whole: 100%. All of the amount.
    Press or pour loss: 5%. Entered in Apple ginger.
"
    );
    // 15.4955 fl oz * 29.5735 mL * 1.048 = 1.05877 lb; / 0.65 / 0.9 = 1.80987 lb; * 38 / 40.
    assert_eq!(
        text(&book, large(OfOffer::LineCost(line_id(1)))),
        "Apples: $1.719. 1.81 lb from a 40 lb pack at $38.00 = $1.719.
  Apples, as purchased: 1.81 lb. 1.06 lb of juice ÷ 65% juice yield ÷ 90% trim yield = 1.81 lb as purchased.
    Apples, pressed, weight: 1.06 lb. 15.5 fl oz of juice at 8.75 oz per cup = 1.06 lb.
      Apples, pressed, amount needed: 15.5 fl oz. See its own math.
      Apples, juice weight per cup: 8.75 oz per cup. Entered in Apples.
    Apples, juice yield: 65%. Entered in Apples.
    Apples, trim yield: 90%. Entered in Apples.
  Apples, case price: $38.00. Entered in Apples.
  Apples, pack size: 40 lb. Entered in Apples.
"
    );
    assert_eq!(
        text(&book, large(OfOffer::PackagingCost(0))),
        "Invented bottle 1: $0.50. 1 ea from a 120 ea pack at $60.00 = $0.50.
  Invented bottle 1, per drink: 1 ea. Entered in Large.
  Invented bottle 1, case price: $60.00. Entered in Invented bottle 1.
  Invented bottle 1, pack size: 120 ea. Entered in Invented bottle 1.
"
    );
}

/// A figure of the starter list says where it is from; one that was confirmed or typed was entered.
#[test]
fn a_starting_figure_says_what_it_rests_on() {
    let mut book = juice_bar();
    let brought = |figure, value: &str, basis| StartingFigure { figure, value: exact(value), basis };
    let apples = book.ingredient(ingredient_id(1)).unwrap().clone();
    let figures = vec![
        brought(Figure::TrimYield, "0.9", Basis::Sr28),
        brought(Figure::PressYield, "0.65", Basis::Memory),
        // Typed anew since: it stands no more.
        brought(Figure::JuiceDensity, "1.04", Basis::Assumed),
    ];
    let starting = Some(Starting { key: "apple".into(), figures });
    book.apply(&Edit::Put(Record::Ingredient(Ingredient { starting, ..apples }))).unwrap();
    let cost = text(&book, large(OfOffer::LineCost(line_id(1))));
    for sentence in [
        "Apples, trim yield: 90%. Starting figure of Apples. From USDA SR28 (2015).\n",
        "Apples, juice yield: 65%. Starting figure of Apples. Rule of thumb, no published source. Weigh your own.\n",
        "Apples, juice weight per cup: 8.75 oz per cup. Entered in Apples.\n",
    ] {
        assert!(cost.contains(sentence), "{sentence} in {cost}");
    }
}

#[test]
fn how_full_and_how_many_times_the_recipe() {
    let book = juice_bar();
    assert_eq!(
        text(&book, Shown::Poured(container_id(1))),
        "Fill: 15.2 fl oz. 16.0 fl oz brimful − 0.80 fl oz headspace = 15.2 fl oz.
  Brimful capacity: 16.0 fl oz. See its own math.
  Headspace: 0.80 fl oz. 16.0 fl oz brimful × 5% = 0.80 fl oz.
    Brimful capacity: 16.0 fl oz. See its own math.
    Headspace share: 5%. Entered in Large.
"
    );
    assert_eq!(
        text(&book, large(OfOffer::Factor)),
        "Recipe multiple: 1.8401. 14.7 fl oz to fill ÷ 8.0 fl oz in the recipe = 1.8401.
  Left to fill: 14.7 fl oz. Fill 15.2 fl oz − Fixed amounts 0.48 fl oz = 14.7 fl oz.
    Fill: 15.2 fl oz. See its own math.
    Fixed amounts: 0.48 fl oz. Ginger, as purchased, volume only: 0.48 fl oz.
      Ginger, as purchased, volume: 0.48 fl oz. 0.5 oz at 8.35 oz per cup = 0.48 fl oz.
        Ginger, as purchased, in the drink: 0.5 oz. See its own math.
        Ginger, weight per cup: 8.35 oz per cup. Entered in Ginger.
  Recipe volume: 8.0 fl oz. Apples, pressed, in the recipe only: 8.0 fl oz.
    Apples, pressed, in the recipe: 8 fl oz. Entered in Apple ginger.
"
    );
}

#[test]
fn a_cost_from_its_parts() {
    let book = juice_bar();
    let said = |of| first(&book, large(of));
    assert_eq!(
        said(OfOffer::Cost),
        "Full cost: $3.501. Ingredients $1.851 + Packaging $0.50 + Labor $0.66 + Processing fee $0.10 + Overhead $0.25 + Waste $0.14 = $3.501."
    );
    assert_eq!(said(OfOffer::Part(Part::Ingredients)), "Ingredients: $1.851. Apples $1.719 + Ginger $0.132 = $1.851.");
    assert_eq!(
        said(OfOffer::Part(Part::Flat(FlatCost::TreatmentFee))),
        "Processing fee: $0.10. Entered in Apple ginger."
    );
    assert_eq!(said(OfOffer::Part(Part::Flat(FlatCost::Overhead))), "Overhead: $0.25. Entered in Book.");
    // 45 s, 60 s a litre for 449.5 mL, a tenth of 600 s: 131.97 s at 18.00 / 3600 a second.
    assert_eq!(
        text(&book, large(OfOffer::Part(Part::Labour))),
        "Labor: $0.66. 2:12 at $18.00 per hour = $0.66.
  Total labor: 2:12. See its own math.
  Hourly wage: $18.00. Entered in Book.
  An hour: 60:00. An hour has 60 minutes.
"
    );
    assert_eq!(
        text(&book, large(OfOffer::Time)),
        "Total labor: 2:12. Labor per drink 0:45 + Labor for fill 0:27 + Batch labor share 1:00 = 2:12.
  Labor per drink: 0:45. Entered in Apple ginger.
  Labor for fill: 0:27. 3:47.1 per gallon × 15.2 fl oz = 0:27.
    Labor per gallon: 3:47.1. Entered in Apple ginger.
    Fill: 15.2 fl oz. See its own math.
    A gallon: 128.0 fl oz. A gallon has 128 fl oz.
  Batch labor share: 1:00. 10:00 ÷ 10 per batch = 1:00 each.
    Labor per batch: 10:00. Entered in Apple ginger.
    Drinks per batch: 10. Entered in Apple ginger.
"
    );
    // 60 s a litre are 227.12 s a gallon of 3.785411784 L.
    let metric = Speaker::new(Currency::USD, System::Metric, NumberStyle::english("$"));
    let step = of(&book, &Ledger::of(&book), large(OfOffer::Time)).unwrap().unwrap();
    let metric = Working { book: &book, speaker: &metric }.text(&step).replace('\u{a0}', " ");
    assert!(
        metric.contains("  Labor for fill: 0:27. 1:00 per liter × 450 mL = 0:27.\n    Labor per liter: 1:00."),
        "{metric}"
    );
    assert!(metric.contains("    A liter: 1,000 mL. A liter has 1000 milliliters.\n"), "{metric}");
    // 3.36081 * 4 / 96.
    assert_eq!(said(OfOffer::Part(Part::Unsold)), "Waste: $0.14. $3.361 per drink made × 4% waste ÷ 96% sold = $0.14.");
}

#[test]
fn a_price_from_the_cost() {
    let book = juice_bar();
    // 3.60085 / (1 - 0.4 - 0.1 - 0.029 * 1.08) = 7.68295; * 1.08 = 8.29759.
    assert_eq!(
        text(&book, large(OfOffer::TargetWithoutTax)),
        "Target before tax: $7.683. $3.601 to cover ÷ 46.9% of the price = $7.683.
  Costs to cover: $3.601. Full cost $3.501 + Fee per transaction $0.10 = $3.601.
    Full cost: $3.501. See its own math.
    Fee per transaction: $0.10. Entered in Book.
  Share for costs: 46.9%. The whole 100% − Target margin 40% − Commission share 10% − Taxed card fee 3.1% = 46.9%.
    The whole: 100%. All of the amount.
    Target margin: 40%. Entered in Book.
    Commission share: 10%. Entered in Book.
    Taxed card fee: 3.1%. 2.9% card fee × 108% price and tax = 3.1% of the price.
      Card fee share: 2.9%. Entered in Book.
      Price and tax: 108%. 100% + 8% tax = 108%.
        The whole: 100%. All of the amount.
        Sales tax: 8%. Entered in Book.
"
    );
    let said = |of| first(&book, large(of));
    assert_eq!(said(OfOffer::Exact), "Exact target price: $8.298. $7.683 before tax × 108% = $8.298.");
    assert_eq!(said(OfOffer::Suggested), "Suggested price: $8.50. $8.298 rounded up to your price endings = $8.50.");
}

#[test]
fn what_a_price_brings() {
    let book = juice_bar();
    let said = |of| first(&book, large(OfOffer::At(AtPrice::Asked, of)));
    // 8 / 1.08 = 7.40741; 8 * 0.029 + 0.10 + 0.74074 = 1.07274; 2.83382 are left, 38.26%.
    assert_eq!(said(OfPrice::WithoutTax), "Price before tax: $7.407. $8.00 with tax ÷ 108% = $7.407 before tax.");
    assert_eq!(said(OfPrice::CustomerPays), "Customer pays: $8.00. Nothing is added to the menu price: $8.00.");
    assert_eq!(
        text(&book, large(OfOffer::At(AtPrice::Asked, OfPrice::Fees))),
        "Fees: $1.073. Card fee $0.232 + Fee per transaction $0.10 + Delivery app commission $0.741 = $1.073.
  Card fee: $0.232. 2.9% of the $8.00 the customer pays = $0.232.
    Customer pays: $8.00. See its own math.
    Card fee share: 2.9%. Entered in Book.
  Fee per transaction: $0.10. Entered in Book.
  Delivery app commission: $0.741. 10% of the $7.407 price before tax = $0.741.
    Price before tax: $7.407. See its own math.
    Commission share: 10%. Entered in Book.
"
    );
    assert_eq!(said(OfPrice::Margin), "Margin: 38.3%. $2.834 margin ÷ $7.407 before tax = 38.3%.");
    assert_eq!(
        said(OfPrice::Contribution),
        "Profit per drink: $2.834. Price before tax $7.407 − Full cost $3.501 − Fees $1.073 = $2.834. Each figure is rounded."
    );
}

#[test]
fn a_size_among_the_others() {
    let book = juice_bar();
    let said = |of| first(&book, Shown::Size(offer_id(1, 1), of));
    assert_eq!(said(OfSize::PricePerVolume), "Price per volume: $0.526. $8.00 for 15.2 fl oz = $0.526 for 1 fl oz.");
    assert_eq!(
        said(OfSize::ContributionPerMinute),
        "Profit per labor minute: $1.288. $2.834 for 2:12 of labor = $1.288 per minute."
    );
    // 8 / 15.2 against 6.5 / 11.4.
    assert_eq!(
        said(OfSize::AgainstSmallest),
        "Versus smallest size: 92.3%. $0.526 ÷ $0.57 for the smallest size = 92.3%."
    );
    assert_eq!(said(OfSize::ExtraPrice), "Extra price: $1.50. $8.00 − $6.50 for the next smaller size = $1.50.");
    assert_eq!(said(OfSize::Kept), "Extra price kept: 51.1%. $0.709 more profit ÷ $1.389 more before tax = 51.1%.");
}

#[test]
fn steps_ice_air_and_a_top_up() {
    let book = smoothie_bar();
    let said = |of| first(&book, large(of));
    // The cup: pi / 12 * 110 * (60^2 + 60 * 87.5 + 87.5^2) = 475346 mm3. Ice that floats takes
    // 33.012 g / 0.902 g/mL; the rest of the recipe fills 375.39 mL as written.
    assert_eq!(said(OfOffer::Factor), "Recipe multiple: 1.1688. 439 mL to fill ÷ 375 mL in the recipe = 1.1688.");
    assert_eq!(
        text(&book, large(OfOffer::InDrink(line_id(1)))),
        "Bananas, trimmed, in the drink: 1 ea. 2 × 1/2 ea = 1 ea.
  Bananas, trimmed, piece size: 1/2 ea. Entered in Banana oat.
  Bananas, whole pieces: 2. 2.3376 to the nearest whole number = 2.
    Bananas, pieces before rounding: 2.3376. 1 ea in the recipe × 1.1688 ÷ 1/2 ea per piece = 2.3376.
      Bananas, trimmed, in the recipe: 1 ea. Entered in Banana oat.
      Recipe multiple: 1.1688. See its own math.
      Bananas, trimmed, piece size: 1/2 ea. Entered in Banana oat.
"
    );
    assert_eq!(
        text(&book, large(OfOffer::Written(line_id(1)))),
        "Bananas, trimmed, volume with air: 133 mL. 121 mL × 110% with air = 133 mL.
  Bananas, trimmed, volume: 121 mL. 115 g at 0.95 g/mL = 121 mL.
    Bananas, trimmed, weight: 115 g. 1 ea at 180 g per piece × 64% yield = 115 g.
      Bananas, trimmed, in the recipe: 1 ea. Entered in Banana oat.
      Bananas, weight per piece: 180 g. Entered in Bananas.
      Bananas, trim yield: 64%. Entered in Bananas.
    Bananas, density: 0.95 g/mL. Entered in Bananas.
  Volume with air: 110%. 100% + 10% air = 110%.
    The whole: 100%. All of the amount.
    Air from blending: 10%. Entered in Banana oat.
"
    );
    assert_eq!(
        text(&book, large(OfOffer::LineCost(line_id(3)))),
        "Ice: $0.01. 32 g from a 10 kg pack at $3.00 = $0.01.
  Ice, as purchased, weight: 32 g. 58 mL of cubes × 60% solid ice × 0.917 g/mL = 32 g.
    Ice, as purchased, amount needed: 58 mL. See its own math.
    Ice, solid ice per scoop: 60%. Entered in Banana oat.
    Ice density: 0.917 g/mL. Ice at 0 °C weighs 0.917 g/mL (IAPWS R10-06).
  Ice, case price: $3.00. Entered in Ice.
  Ice, pack size: 10 kg. Entered in Ice.
"
    );
    // 475.35 - 133.39 - 51.43 - 38.57 - 36.6 = 215.36 mL; the top-up's 150 mL fill 165 with air.
    assert_eq!(
        said(OfOffer::InDrink(line_id(5))),
        "Milk, as purchased, in the drink: 196 mL. The recipe’s 150 mL fills 165 mL. With 215 mL left to fill, this takes 196 mL."
    );
    // As it is poured: 115.2 g of banana, 1.1688 times 40 g of oats and 27.51 g of ice, 201.66 g of milk.
    assert_eq!(first(&book, large(OfOffer::Liquid)), "Liquid density: 0.902 g/mL. 396 g ÷ 439 mL = 0.902 g/mL.");
    // Steps, the rest and nothing to top up: found together.
    let mut two = book.drink(drink_id(1)).unwrap().clone();
    two.lines.retain(|line| line.id != line_id(5));
    let mut book = book;
    book.apply(&Edit::Put(Record::Drink(two))).unwrap();
    let factor = text(&book, large(OfOffer::Factor));
    let found = "Bananas, trimmed, in the drink: 2 ea. Whole pieces that fill the drink with all the rest: 2 ea.";
    assert!(factor.contains(found), "{factor}");
}

/// Milk and half bananas of 50 g at the density of water, in a cup of so much; a season in June. Invented.
fn milk_and_bananas(filled: &str, melted: &str) -> Book {
    let season = Season { from: Month::June, to: Month::June, trim_yield: share("0.5"), press_yield: None };
    let bananas = Ingredient {
        name: "Bananas".into(),
        trim_yield: share("0.8"),
        piece_weight: Some(grams("62.5")),
        season: Some(season),
        ..ingredient(2, [pack(1, "1 kg", "2")])
    };
    let milk = Ingredient { name: "Milk".into(), ..ingredient(1, [pack(1, "1 L", "1")]) };
    let ice = Ingredient { name: "Ice".into(), ..ingredient(3, [pack(1, "10 kg", "3")]) };
    let steps = Scaling::Stepped(amount("0.8 ea"));
    let mut lines = vec![line(1, 1, "100 mL"), Line { stage: Stage::Trimmed, scaling: steps, ..line(2, 2, "1 ea") }];
    if melted != "0" {
        let ice = Ice { place: IcePlace::BlendedIn, packing: share("0.6"), melted: share(melted) };
        lines.push(Line { ice: Some(ice), scaling: Scaling::Fixed, ..line(3, 3, "91.7 g") });
    }
    let smoothie = Drink { name: "Banana milk".into(), ..drink(1, "150 mL", lines) };
    let records = [
        Record::Ingredient(milk),
        Record::Ingredient(bananas),
        Record::Ingredient(ice),
        Record::Container(container(1, filled)),
        Record::Drink(smoothie),
        Record::Offer(offer(1, 1, Some("6"))),
    ];
    crate::support::book(Settings { units: System::Metric, ..settings() }, records)
}

#[test]
fn whole_pieces_that_another_line_makes_room_for() {
    // By hand: 180 mL are 1.2 times 150; 1.2 bananas are one and a half steps of 0.8, taken as two, 80 mL. Milk takes
    // 100 mL, once the recipe, by which one step would be the nearest.
    let book = milk_and_bananas("180 mL", "0");
    assert_eq!(
        text(&book, large(OfOffer::InDrink(line_id(2)))),
        "Bananas, trimmed, in the drink: 1.6 ea. 2 × 0.8 ea = 1.6 ea.
  Bananas, trimmed, piece size: 0.8 ea. Entered in Banana milk.
  Bananas, whole pieces: 2. 1.5 to the nearest whole number = 2.
    Bananas, pieces before rounding: 1.5. 1 ea in the recipe × 1.2 ÷ 0.8 ea per piece = 1.5.
      Bananas, trimmed, in the recipe: 1 ea. Entered in Banana milk.
      Recipe multiple before whole pieces: 1.2. 180 mL to fill ÷ 150 mL in the recipe = 1.2.
        Left to fill: 180 mL. Fill only: 180 mL.
          Fill: 180 mL. See its own math.
        Recipe volume: 150 mL. Milk, as purchased, in the recipe 100 mL + Bananas, trimmed, volume 50 mL = 150 mL.
          Milk, as purchased, in the recipe: 100 mL. Entered in Banana milk.
          Bananas, trimmed, volume: 50 mL. See its own math.
      Bananas, trimmed, piece size: 0.8 ea. Entered in Banana milk.
"
    );
}

#[test]
fn a_season_in_force_is_named() {
    // By hand: of a piece of 62.5 g, 50 g are left, and in June half of it, 31.25 g.
    let mut book = milk_and_bananas("180 mL", "0");
    let weight = |book: &Book| text(book, large(OfOffer::Written(line_id(2))));
    assert!(weight(&book).contains("Bananas, trim yield: 80%. Entered in Bananas."), "{}", weight(&book));
    book.set_month(Some(Month::June));
    assert!(weight(&book).contains("Bananas, trim yield this season: 50%. Entered in Bananas."), "{}", weight(&book));
    assert!(weight(&book).contains("1 ea at 63 g per piece × 50% yield = 31 g"), "{}", weight(&book));
}

#[test]
fn blended_ice_that_melts() {
    // By hand: of 91.7 g, a tenth melts: 9.17 g / 0.9982 = 9.187 mL, and 82.53 g / 0.917 = 90 mL.
    let book = milk_and_bananas("280 mL", "0.1");
    assert_eq!(
        text(&book, large(OfOffer::Written(line_id(3)))),
        "Ice, as purchased, volume: 99 mL. Ice, volume still frozen 90 mL + Ice, volume melted 9 mL = 99 mL.
  Ice, volume still frozen: 90 mL. 91.7 g × 90% at 0.917 g/mL = 90 mL.
    Ice, as purchased, in the recipe: 91.7 g. Entered in Banana milk.
    Ice, still frozen: 90%. The whole 100% − Ice, melted 10% = 90%.
      The whole: 100%. All of the amount.
      Ice, melted: 10%. Entered in Banana milk.
    Ice density: 0.917 g/mL. Ice at 0 °C weighs 0.917 g/mL (IAPWS R10-06).
  Ice, volume melted: 9 mL. 91.7 g × 10% at 0.9982 g/mL = 9 mL.
    Ice, as purchased, in the recipe: 91.7 g. Entered in Banana milk.
    Ice, melted: 10%. Entered in Banana milk.
    Density of melted ice: 0.9982 g/mL. Water at 20 °C weighs 0.9982 g/mL (IAPWS R6-95).
"
    );
}

#[test]
fn cups_and_bottles() {
    let book = smoothie_bar();
    assert_eq!(
        text(&book, Shown::Brimful(container_id(1))),
        "Brimful capacity: 537 mL. A cup 60 mm wide at the base, 90 mm at the rim and 120 mm tall = 537 mL.
  Inside base width: 60 mm. Entered in Cup.
  Inside rim width: 90 mm. Entered in Cup.
  Inside height: 120 mm. Entered in Cup.
"
    );
    assert_eq!(
        text(&book, Shown::Poured(container_id(1))),
        "Fill: 475 mL. 537 mL brimful − 62 mL headspace = 475 mL.
  Brimful capacity: 537 mL. See its own math.
  Headspace: 62 mL. The top 10 mm under the rim = 62 mL.
    Headspace height: 10 mm. Entered in Cup.
    Inside base width: 60 mm. Entered in Cup.
    Inside rim width: 90 mm. Entered in Cup.
    Inside height: 120 mm. Entered in Cup.
"
    );
    assert_eq!(
        first(&book, Shown::Brimful(container_id(2))),
        "Brimful capacity: 500 mL. The last pour reaches the rim at 500 mL."
    );
}

#[test]
fn packs_by_tier_and_by_the_piece() {
    let book = smoothie_bar();
    let bananas = Goods::Ingredient(ingredient_id(1));
    assert_eq!(
        text(&book, Shown::Piece(bananas, pack_id(1))),
        "Bananas, cost per piece: $0.20. $20.00 ÷ 100 ea = $0.20 each.
  Bananas, paid per pack: $20.00. Bananas, case price $18.00 + Bananas, delivery or deposit $2.00 = $20.00.
    Bananas, case price: $18.00. When you buy 6 at a time, the price is $18.00 each.
      Bananas, packs per order: 6. Entered in Bananas.
      Bananas, case price from 1 at a time: $20.00. Entered in Bananas.
      Bananas, case price from 5 at a time: $18.00. Entered in Bananas.
      Bananas, case price from 20 at a time: $15.00. Entered in Bananas.
    Bananas, delivery or deposit: $2.00. Entered in Bananas.
  Bananas, pack size: 100 ea. Entered in Bananas.
"
    );
    let usable = |ingredient, stage, of| {
        let shown =
            Shown::Usable { ingredient: ingredient_id(ingredient), pack: pack_id(1), stage, amount: amount(of) };
        text(&book, shown).lines().take(2).collect::<Vec<_>>().join("\n")
    };
    // 1 kg / 0.64 / 180 g = 8.68 pieces at 0.20.
    assert_eq!(
        usable(1, Stage::Trimmed, "1 kg"),
        "Bananas, trimmed, cost: $1.736. 8.68 ea from a 100 ea pack at $20.00 = $1.736.
  Bananas, as purchased: 8.68 ea. 1.56 kg at 180 g per piece = 8.68 ea as purchased."
    );
    assert_eq!(
        usable(2, Stage::SoakedOrBrewed, "1 kg"),
        "Oats, soaked or brewed, cost: $0.96. 400 g from a 5 kg pack at $12.00 = $0.96.
  Oats, as purchased: 400 g. 1 kg ÷ 250% soaked or brewed weight = 400 g as purchased."
    );
}

#[test]
fn what_is_not_there_has_no_working() {
    let book = smoothie_bar();
    let ledger = Ledger::of(&book);
    let without_price = Shown::Offer(offer_id(1, 2), OfOffer::At(AtPrice::Asked, OfPrice::Margin));
    assert_eq!(of(&book, &ledger, without_price), Ok(None));
    let no_time = Shown::Size(offer_id(1, 1), OfSize::ContributionPerMinute);
    assert_eq!(of(&book, &ledger, no_time), Ok(None));
    let missing = Shown::Offer(offer_id(2, 1), OfOffer::Cost);
    assert_eq!(of(&book, &ledger, missing), Err(OfferError::Missing(Key::Offer(offer_id(2, 1)))));
}
