//! One drink of the demo book followed by hand, from what its ingredients cost at the supplier to
//! whether its 12 fl oz bottle may take the place of the 16 fl oz one. Worked out on paper from
//! the price tags, rounded at the last digit shown; the rules are those of the calculations page
//! of the design and the definitions of the units those of NIST Handbook 44.

use brimwright::book::{Book, ContainerId, DrinkId, FlatCost, IngredientId, OfferId, Part, Scope, Stage};
use brimwright::drink::cost::usable_cost;
use brimwright::drink::ledger::{Ledger, Priced};
use brimwright::exchange;
use brimwright::foundation::measure::{Amount, Date, Exact, Money, Unit};
use brimwright::sizes::decision::{MenuToday, Question, Told};

use crate::support::exact;

/// Orchard Green, invented.
const DRINK: DrinkId = DrinkId::from_random(1);
/// 16 oz bottle: poured to 16.7 less 0.6.
const LARGE: ContainerId = ContainerId::from_random(4);
/// 12 oz bottle: poured to 12.6 less 0.5.
const SMALL: ContainerId = ContainerId::from_random(3);

fn demo() -> Book {
    exchange::read(include_str!("../../public/books/marrowgate-juice-hall.json")).expect("the demo book")
}

fn rounded(money: Money) -> Exact {
    money.major().rounded(4)
}

fn priced(ledger: &Ledger, container: ContainerId) -> &Priced {
    let offer = OfferId { drink: DRINK, container };
    ledger.get(offer).expect("it is sold").as_ref().expect("it is computed")
}

#[test]
fn juice_from_the_price_tag() {
    let book = demo();
    // Price of the pack, its pounds, what trimming and pressing leave, grams in a millilitre of
    // juice. 1 lb is 453.59237 g and 1 fl oz 29.5735295625 mL, so 40 lb of apples are
    // 18143.6948 g, 0.9 * 0.65 of it 10614.06 g of juice, 10127.92 mL, 342.4658 fl oz:
    // 38.00 / 342.4658 = 0.1110. The others by the same steps; 24 celery weigh 1020 g each.
    let juices = [
        (0x1, "0.1110"), // apples: 38.00 for 40 lb, 90 %, 65 %, 1.048
        (0x9, "0.0680"), // cucumbers: 29.00 for 40 lb, 97 %, 72 %, 1.005: 426.3446 fl oz
        (0x8, "0.0744"), // celery: 38.00 for 24 pieces, 89 %, 70 %, 1.010: 510.5931 fl oz
        (0xc, "0.2532"), // spinach: 19.50 for 10 lb, 98 %, 52 %, 1.015: 77.0062 fl oz
        (0x3, "0.1946"), // lemons: 44.00 for 38 lb, 100 %, 40 %, 1.031: 226.1244 fl oz
    ];
    for (id, cost) in juices {
        let ingredient = book.ingredient(IngredientId::from_random(id)).expect("in the demo book");
        let ounce = Amount::new(Exact::ONE, Unit::UsFluidOunce).measure().expect("a volume");
        let found = usable_cost(ingredient, &ingredient.packs[0], Stage::Pressed, ounce).expect("it has a cost");
        assert_eq!(rounded(found), exact(cost), "{}", ingredient.name);
    }
}

#[test]
fn the_cost_of_both_bottles() {
    let book = demo();
    let ledger = Ledger::of(&book);
    assert_eq!(book.drink(DRINK).map(|drink| drink.name.as_str()), Some("Orchard Green"));
    // Written for 16 fl oz: 6 * 0.110960 + 4.5 * 0.068020 + 3 * 0.074423 + 1.5 * 0.253226
    // + 1 * 0.194583 = 1.769543, 0.110596 a fluid ounce; 3 % stay in the press.
    // 16.1 / 0.97 of it is 1.8357, 12.1 / 0.97 is 1.3796.
    // Bottle 37.50 / 112 or 39.00 / 130, cap 0.046, label 0.058, band 0.015.
    // Hands: 60 s, 45 s a litre of 476.1338 or 357.8397 mL, and 8100 s for a batch of 5 gal, 18927.0589 mL: 203.77
    // or 153.14 s; together 285.19 or 229.24 s at 19.50 an hour.
    // All that over 0.95, since 5 % are thrown away, and over 0.99, since 1 % of the rest is free: 0.2018 and 0.0408
    // of 3.8343, 0.1600 and 0.0323 of 3.0403. A week's 1240 of overhead over 939 drinks.
    let parts = [
        (LARGE, ["1.8357", "0.4538", "1.5448", "1.3206", "0.2018", "0.0408"], "5.3974"),
        (SMALL, ["1.3796", "0.4190", "1.2417", "1.3206", "0.1600", "0.0323"], "4.5532"),
    ];
    let overhead = Part::Flat(FlatCost::Overhead);
    let named = [Part::Ingredients, Part::ContainerSet, Part::Labour, overhead, Part::Unsold, Part::Free];
    for (container, by_hand, total) in parts {
        let cost = &priced(&ledger, container).cost;
        for (part, by_hand) in named.into_iter().zip(by_hand) {
            assert_eq!(rounded(cost.part(part).expect("a part")), exact(by_hand), "{part:?}");
        }
        assert_eq!(rounded(cost.total()), exact(total));
    }
}

#[test]
fn what_is_left_of_both_prices() {
    let book = demo();
    let ledger = Ledger::of(&book);
    // Discounts take 1.5 %, and 2 % of the rest are marked down to 60 %: 0.985 * 0.992 = 97.712 % are paid, 8.3055
    // and 6.7910. The customer pays 6.5 % tax on top; the card takes 2.9 % of that and 0.30 for 1.6 drinks.
    // 8.3055 - 0.4440 - 5.3974 = 2.4641; 6.7910 - 0.3972 - 4.5532 = 1.8405.
    // The target covers goods: 1 - (1.8357 + 0.4538) / 0.95 / 0.99 / 8.3055 = 70.69 %; 71.84 %.
    for (container, contribution, margin) in [(LARGE, "2.4641", "0.7069"), (SMALL, "1.8405", "0.7184")] {
        let asked = priced(&ledger, container).asked.expect("it has a price");
        assert_eq!(rounded(asked.contribution), exact(contribution));
        assert_eq!(asked.margin.fraction().rounded(4), exact(margin));
    }
}

#[test]
fn the_conclusion() {
    let book = demo();
    let (ledger, day) = (Ledger::of(&book), Date::new(2026, 11, 27).expect("a day"));
    let menu = MenuToday::of(&book, &ledger, Scope::Drink(DRINK), &Told::default(), day).expect("small");
    let decision = menu.answer(&Question::Switch { from: LARGE, to: SMALL }).expect("both are sold");
    // Overhead, 1.3206, does not change: 2.4641 + 1.3206 = 3.7846 against 1.8405 + 1.3206 = 3.1611, to a digit.
    // 3.7846 / 3.1611 = 1.1972: 19.7 % more must be sold for a price 18.2 % lower.
    let row = &decision.rows[0];
    let (now, then) = (row.now.expect("it is sold"), row.then.expect("it is sold"));
    assert_eq!((rounded(now.profit), rounded(then.profit)), (exact("3.7846"), exact("3.1611")));
    let change = decision.change_at_break_even().expect("small").expect("a share");
    assert_eq!(change.fraction().rounded(3), exact("0.197"));
    let customer = decision.customer().expect("they pay less");
    assert_eq!(customer.change.fraction().rounded(3), exact("-0.182"));
    // 140 a week are sold in the large bottle: 140 * 1.1972 = 167.6, so 28 more.
    assert_eq!((decision.buyers, decision.needs_new()), (exact("140"), Some(exact("28"))));
    // Per fluid ounce on the menu the small one asks more, 6.95 / 12 = 0.579 against 8.50 / 16 = 0.531: 9 %.
    assert_eq!(customer.per_volume_change.fraction().rounded(2), exact("0.09"));
}
