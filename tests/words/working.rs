//! Workings in words, by hand.

use brimwright::book::{Book, Edit, FlatCost, Goods, Key, LineId, Part, Record, Stage};
use brimwright::drink::ledger::{Ledger, OfferError};
use brimwright::foundation::measure::NumberStyle;
use brimwright::words::{Speaker, Working};
use brimwright::working::{AtPrice, OfOffer, OfPrice, OfSize, Shown, of};

use crate::bars::{juice_bar, smoothie_bar};
use crate::support::{amount, container_id, drink_id, ingredient_id, offer_id, pack_id};

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
        "Apples, pressed, in the drink: 14.7 fl oz. 8 fl oz in the recipe, 1.8401 times: 14.7 fl oz.
  Apples, pressed, as the recipe says: 8 fl oz. Entered at Apple ginger.
  Times the recipe: 1.8401. Has a working of its own.
"
    );
    assert_eq!(
        text(&book, large(OfOffer::ToUse(line_id(1)))),
        "Apples, pressed, to use: 15.5 fl oz. 14.7 fl oz in the drink is 95 % of what is used: 15.5 fl oz.
  Apples, pressed, in the drink: 14.7 fl oz. Has a working of its own.
  Comes into the drink: 95 %. The whole 100 %, less stays in the press or jug 5 %: 95 %.
    The whole: 100 %. All of it.
    Stays in the press or jug: 5 %. Entered at Apple ginger.
"
    );
    // 15.4955 fl oz * 29.5735 mL * 1.048 = 1.05877 lb; / 0.65 / 0.9 = 1.80987 lb; * 38 / 40.
    assert_eq!(
        text(&book, large(OfOffer::LineCost(line_id(1)))),
        "Apples: $1.719. 1.81 lb of a 40 lb pack for $38.00: $1.719.
  Apples, bought: 1.81 lb. 1.06 lb of juice is 65 % of what is pressed, which is 90 % of what is bought: 1.81 lb bought.
    Apples, pressed, weight: 1.06 lb. 15.5 fl oz of juice at 1.048 g/mL is 1.06 lb.
      Apples, pressed, to use: 15.5 fl oz. Has a working of its own.
      Apples, density of the juice: 1.048 g/mL. Entered at Apples.
    Apples, left as juice: 65 %. Entered at Apples.
    Apples, left after trimming: 90 %. Entered at Apples.
  Apples, price of a pack: $38.00. Entered at Apples.
  Apples, what a pack holds: 40 lb. Entered at Apples.
"
    );
    assert_eq!(
        text(&book, large(OfOffer::PackagingCost(0))),
        "Invented bottle 1: $0.50. 1 ea of a 120 ea pack for $60.00: $0.50.
  Invented bottle 1, for one drink: 1 ea. Entered at Large.
  Invented bottle 1, price of a pack: $60.00. Entered at Invented bottle 1.
  Invented bottle 1, what a pack holds: 120 ea. Entered at Invented bottle 1.
"
    );
}

#[test]
fn how_full_and_how_many_times_the_recipe() {
    let book = juice_bar();
    assert_eq!(
        text(&book, Shown::Poured(container_id(1))),
        "Poured: 15.2 fl oz. 16.0 fl oz to the rim, less 0.80 fl oz left empty: 15.2 fl oz.
  To the rim: 16.0 fl oz. Has a working of its own.
  Left empty: 0.80 fl oz. 5 % of 16.0 fl oz to the rim: 0.80 fl oz.
    To the rim: 16.0 fl oz. Has a working of its own.
    Share left empty: 5 %. Entered at Large.
"
    );
    assert_eq!(
        text(&book, large(OfOffer::Factor)),
        "Times the recipe: 1.8401. 14.7 fl oz to fill, and the recipe as written fills 8.0 fl oz: 1.8401 times the recipe.
  Left to fill: 14.7 fl oz. Poured 15.2 fl oz, less fixed amounts 0.48 fl oz: 14.7 fl oz.
    Poured: 15.2 fl oz. Has a working of its own.
    Fixed amounts: 0.48 fl oz. Ginger, as bought, volume alone: 0.48 fl oz.
      Ginger, as bought, volume: 0.48 fl oz. 0.5 oz at 1 g/mL is 0.48 fl oz.
        Ginger, as bought, in the drink: 0.5 oz. Has a working of its own.
        Ginger, density: 1 g/mL. Entered at Ginger.
  Filled by the recipe as written: 8.0 fl oz. Apples, pressed, as the recipe says alone: 8.0 fl oz.
    Apples, pressed, as the recipe says: 8 fl oz. Entered at Apple ginger.
"
    );
}

#[test]
fn a_cost_from_its_parts() {
    let book = juice_bar();
    let said = |of| first(&book, large(of));
    assert_eq!(
        said(OfOffer::Cost),
        "Full cost: $3.501. Ingredients $1.851; container $0.50; labour $0.66; treatment toll $0.10; overhead $0.25; made but not sold $0.14: together $3.501."
    );
    assert_eq!(
        said(OfOffer::Part(Part::Ingredients)),
        "Ingredients: $1.851. Apples $1.719 and Ginger $0.132: together $1.851."
    );
    assert_eq!(
        said(OfOffer::Part(Part::Flat(FlatCost::TreatmentFee))),
        "Treatment toll: $0.10. Entered at Apple ginger."
    );
    assert_eq!(said(OfOffer::Part(Part::Flat(FlatCost::Overhead))), "Overhead: $0.25. Entered in Book.");
    // 45 s, 60 s a litre for 449.5 mL, a tenth of 600 s: 131.97 s at 18.00 / 3600 a second.
    assert_eq!(
        text(&book, large(OfOffer::Part(Part::Labour))),
        "Labour: $0.66. 132 s at $18.00 an hour: $0.66.
  Hands' time: 132 s. Has a working of its own.
  Hourly wage: $18.00. Entered in Book.
  An hour: 3,600 s. An hour has 3600 seconds.
"
    );
    assert_eq!(
        text(&book, large(OfOffer::Time)),
        "Hands' time: 132 s. Time per drink 45 s; time by the litre 27 s; share of the time for a batch 60 s: together 132 s.
  Time per drink: 45 s. Entered at Apple ginger.
  Time by the litre: 27 s. 60 s for each litre, and 15.2 fl oz poured: 27 s.
    Time per litre: 60 s. Entered at Apple ginger.
    Poured: 15.2 fl oz. Has a working of its own.
    A litre: 33.8 fl oz. A litre has 1000 millilitres.
  Share of the time for a batch: 60 s. 600 s for a batch of 10: 60 s each.
    Time for a batch: 600 s. Entered at Apple ginger.
    Drinks in a batch: 10. Entered at Apple ginger.
"
    );
    // 3.36081 * 4 / 96.
    assert_eq!(
        said(OfOffer::Part(Part::Unsold)),
        "Made but not sold: $0.14. $3.361 for each drink made; 4 % is not sold, and the 96 % sold bear it: $0.14 each."
    );
}

#[test]
fn a_price_from_the_cost() {
    let book = juice_bar();
    // 3.60085 / (1 - 0.4 - 0.1 - 0.029 * 1.08) = 7.68295; * 1.08 = 8.29759.
    assert_eq!(
        text(&book, large(OfOffer::TargetWithoutTax)),
        "Price without tax for the target: $7.683. $3.601 may be 46.9 % of the price without tax: $7.683.
  What the price must bear: $3.601. Full cost $3.501 and fixed payment fee $0.10: together $3.601.
    Full cost: $3.501. Has a working of its own.
    Fixed payment fee: $0.10. Entered in Book.
  Left of the price: 46.9 %. The whole 100 %, less target margin 40 %, less commission 10 %, less payment fee on price and tax 3.1 %: 46.9 %.
    The whole: 100 %. All of it.
    Target margin: 40 %. Entered in Book.
    Commission: 10 %. Entered in Book.
    Payment fee on price and tax: 3.1 %. 2.9 % of what the customer pays, which is 108 % of the price without tax: 3.1 % of that price.
      Payment fee: 2.9 %. Entered in Book.
      Price with tax: 108 %. 100 % of the price and 8 % tax: 108 %.
        The whole: 100 %. All of it.
        Tax: 8 %. Entered in Book.
"
    );
    let said = |of| first(&book, large(of));
    assert_eq!(
        said(OfOffer::Exact),
        "Price for the target: $8.298. $7.683 without tax, and 108 % of that with tax: $8.298."
    );
    assert_eq!(
        said(OfOffer::Suggested),
        "Suggested price: $8.50. $8.298, raised to the next price that ends as you like: $8.50."
    );
}

#[test]
fn what_a_price_brings() {
    let book = juice_bar();
    let said = |of| first(&book, large(OfOffer::At(AtPrice::Asked, of)));
    // 8 / 1.08 = 7.40741; 8 * 0.029 + 0.10 + 0.74074 = 1.07274; 2.83382 are left, 38.26 %.
    assert_eq!(
        said(OfPrice::WithoutTax),
        "Price without tax: $7.407. $8.00 with tax is 108 % of the price without: $7.407."
    );
    assert_eq!(said(OfPrice::CustomerPays), "Customer pays: $8.00. Nothing is added to the menu price: $8.00.");
    assert_eq!(
        text(&book, large(OfOffer::At(AtPrice::Asked, OfPrice::Fees))),
        "Fees: $1.073. Payment fee $0.232; fixed payment fee $0.10; commission $0.741: together $1.073.
  Payment fee: $0.232. 2.9 % of the $8.00 that the customer pays: $0.232.
    Customer pays: $8.00. Has a working of its own.
    Payment fee: 2.9 %. Entered in Book.
  Fixed payment fee: $0.10. Entered in Book.
  Commission: $0.741. 10 % of the price without tax, $7.407: $0.741.
    Price without tax: $7.407. Has a working of its own.
    Commission: 10 %. Entered in Book.
"
    );
    assert_eq!(said(OfPrice::Margin), "Margin: 38.3 %. $2.834 is left of $7.407: 38.3 %.");
    assert_eq!(
        said(OfPrice::Contribution),
        "Left after everything: $2.834. Price without tax $7.407, less full cost $3.501, less fees $1.073: $2.834."
    );
}

#[test]
fn a_size_among_the_others() {
    let book = juice_bar();
    let said = |of| first(&book, Shown::Size(offer_id(1, 1), of));
    assert_eq!(said(OfSize::PricePerVolume), "Price by volume: $0.526. $8.00 for 15.2 fl oz: $0.526 for 1 fl oz.");
    assert_eq!(
        said(OfSize::ContributionPerMinute),
        "Left per minute of hands: $1.288. $2.834 for 132 s of hands' time: $1.288 a minute."
    );
    // 8 / 15.2 against 6.5 / 11.4.
    assert_eq!(
        said(OfSize::AgainstSmallest),
        "Against the smallest size: 92.3 %. $0.526 against $0.57 for the smallest size: 92.3 %."
    );
    assert_eq!(said(OfSize::ExtraPrice), "Asked more: $1.50. $8.00, and $6.50 for the next smaller size: $1.50 more.");
    assert_eq!(said(OfSize::Kept), "Kept of what is asked more: 51.1 %. $0.709 of $1.389 more is kept: 51.1 %.");
}

#[test]
fn steps_ice_air_and_a_top_up() {
    let book = smoothie_bar();
    let said = |of| first(&book, large(of));
    // The cup: pi / 12 * 110 * (60^2 + 60 * 87.5 + 87.5^2) = 475346 mm3. Ice that floats takes
    // 33.012 g / 0.8983 g/mL; the rest of the recipe fills 375.39 mL as written.
    assert_eq!(
        said(OfOffer::Factor),
        "Times the recipe: 1.1684. 439 mL to fill, and the recipe as written fills 375 mL: 1.1684 times the recipe."
    );
    assert_eq!(
        text(&book, large(OfOffer::InDrink(line_id(1)))),
        "Bananas, trimmed, in the drink: 1 ea. 2 times 0.5 ea: 1 ea.
  Bananas, trimmed, one step: 0.5 ea. Entered at Banana oat.
  Bananas, whole steps: 2. 2.3368 to the nearest whole: 2.
    Bananas, steps before rounding: 2.3368. 1 ea in the recipe, 1.1684 times, in steps of 0.5 ea: 2.3368.
      Bananas, trimmed, as the recipe says: 1 ea. Entered at Banana oat.
      Times the recipe: 1.1684. Has a working of its own.
      Bananas, trimmed, one step: 0.5 ea. Entered at Banana oat.
"
    );
    assert_eq!(
        text(&book, large(OfOffer::Written(line_id(1)))),
        "Bananas, trimmed, volume with air: 133 mL. 121 mL, with air 110 % of that: 133 mL.
  Bananas, trimmed, volume: 121 mL. 115 g at 0.95 g/mL is 121 mL.
    Bananas, trimmed, weight: 115 g. 1 ea at 180 g a piece, 64 % of that left: 115 g.
      Bananas, trimmed, as the recipe says: 1 ea. Entered at Banana oat.
      Bananas, weight of a piece: 180 g. Entered at Bananas.
      Bananas, left after trimming: 64 %. Entered at Bananas.
    Bananas, density: 0.95 g/mL. Entered at Bananas.
  Volume with air: 110 %. 100 % of the volume and 10 % air: 110 %.
    The whole: 100 %. All of it.
    Air beaten in: 10 %. Entered at Banana oat.
"
    );
    assert_eq!(
        text(&book, large(OfOffer::LineCost(line_id(3)))),
        "Ice: $0.01. 32 g of a 10 kg pack for $3.00: $0.01.
  Ice, as bought, weight: 32 g. 58 mL of cubes, 60 % of it ice at 0.917 g/mL: 32 g.
    Ice, as bought, to use: 58 mL. Has a working of its own.
    Ice, share of a scoop that is ice: 60 %. Entered at Banana oat.
    Density of ice: 0.917 g/mL. Ice at 0 °C weighs 0.917 grams a millilitre (IAPWS R10-06).
  Ice, price of a pack: $3.00. Entered at Ice.
  Ice, what a pack holds: 10 kg. Entered at Ice.
"
    );
    // 475.35 - 133.39 - 51.41 - 38.56 - 36.75 = 215.24 mL; the top-up's 150 mL fill 165 with air.
    assert_eq!(
        said(OfOffer::InDrink(line_id(5))),
        "Milk, as bought, in the drink: 196 mL. 215 mL is left to fill, and the recipe's 150 mL fills 165 mL: 196 mL."
    );
    assert_eq!(
        first(&book, large(OfOffer::Liquid)),
        "Density of what ice floats in: 0.8983 g/mL. 337 g in 375 mL: 0.8983 g/mL."
    );
    // Steps, the rest and nothing to top up: found together.
    let mut two = book.drink(drink_id(1)).unwrap().clone();
    two.lines.retain(|line| line.id != line_id(5));
    let mut book = book;
    book.apply(&Edit::Put(Record::Drink(two))).unwrap();
    let factor = text(&book, large(OfOffer::Factor));
    let found = "Bananas, trimmed, in the drink: 2 ea. Whole steps, found so that all together fills the drink: 2 ea.";
    assert!(factor.contains(found), "{factor}");
}

#[test]
fn cups_and_bottles() {
    let book = smoothie_bar();
    assert_eq!(
        text(&book, Shown::Brimful(container_id(1))),
        "To the rim: 537 mL. A cup of 60 mm at the base, 90 mm at the rim and 120 mm in height: 537 mL.
  Diameter at the base: 60 mm. Entered at Cup.
  Diameter at the rim: 90 mm. Entered at Cup.
  Height inside: 120 mm. Entered at Cup.
"
    );
    assert_eq!(
        text(&book, Shown::Poured(container_id(1))),
        "Poured: 475 mL. 537 mL to the rim, less 62 mL left empty: 475 mL.
  To the rim: 537 mL. Has a working of its own.
  Left empty: 62 mL. What the rim's last 10 mm of height hold: 62 mL.
    Left empty under the rim: 10 mm. Entered at Cup.
    Diameter at the base: 60 mm. Entered at Cup.
    Diameter at the rim: 90 mm. Entered at Cup.
    Height inside: 120 mm. Entered at Cup.
"
    );
    assert_eq!(
        first(&book, Shown::Brimful(container_id(2))),
        "To the rim: 500 mL. The last pouring reaches the rim: 500 mL."
    );
}

#[test]
fn packs_by_tier_and_by_the_piece() {
    let book = smoothie_bar();
    let bananas = Goods::Ingredient(ingredient_id(1));
    assert_eq!(
        text(&book, Shown::Piece(bananas, pack_id(1))),
        "Bananas, cost of a piece: $0.20. $20.00 for 100 ea: $0.20 each.
  Bananas, paid for a pack: $20.00. Bananas, price of a pack $18.00 and Bananas, delivery or deposit for a pack $2.00: together $20.00.
    Bananas, price of a pack: $18.00. 6 bought at a time: $18.00 for each.
      Bananas, packs bought at a time: 6. Entered at Bananas.
      Bananas, price of a pack from 1 at a time: $20.00. Entered at Bananas.
      Bananas, price of a pack from 5 at a time: $18.00. Entered at Bananas.
      Bananas, price of a pack from 20 at a time: $15.00. Entered at Bananas.
    Bananas, delivery or deposit for a pack: $2.00. Entered at Bananas.
  Bananas, what a pack holds: 100 ea. Entered at Bananas.
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
        "Bananas, trimmed, cost: $1.736. 8.68 ea of a 100 ea pack for $20.00: $1.736.
  Bananas, bought: 8.68 ea. 1.56 kg at 180 g a piece: 8.68 ea bought."
    );
    assert_eq!(
        usable(2, Stage::SoakedOrBrewed, "1 kg"),
        "Oats, soaked or brewed, cost: $0.96. 400 g of a 5 kg pack for $12.00: $0.96.
  Oats, bought: 400 g. 1 kg is 250 % of what is soaked or brewed: 400 g bought."
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
