use super::*;
use crate::book::{CostBasis, Edit, Goods, IngredientId, PaymentFee, Record, Scaling, Settings};
use crate::drink::ledger::OfferStatus;
use crate::support::{
    book, container, container_id, drink, drink_id, exact, ingredient, ingredient_id, line, millilitres, money, offer,
    offer_id, pack, pack_id, settings, share, use_of, vessel,
};

/// 100 mL of mango at 10.00 a litre and 300 mL of a base at 2.00, in a cup at 0.20; half of the
/// price is to be left. Sold in 400 mL; 200 mL, and a drink of base alone in 400 mL, besides.
fn bar() -> Book {
    let cup = |id, brimful| Record::Container(Container { set: vec![use_of(1, "1")], ..container(id, brimful) });
    book(
        Settings { target: share("0.5"), ..settings() },
        [
            Record::Ingredient(ingredient(1, [pack(1, "1 L", "10")])),
            Record::Ingredient(ingredient(2, [pack(1, "1 L", "2")])),
            Record::Packaging(vessel(1, [pack(1, "10 ea", "2")])),
            cup(1, "400 mL"),
            cup(2, "200 mL"),
            Record::Drink(drink(1, "400 mL", [line(1, 1, "100 mL"), line(2, 2, "300 mL")])),
            Record::Drink(drink(2, "400 mL", [line(1, 2, "400 mL")])),
            Record::Drink(drink(3, "400 mL", [])),
            Record::Offer(offer(1, 1, None)),
            Record::Offer(offer(2, 1, None)),
            Record::Offer(offer(3, 1, None)),
        ],
    )
}

fn over(at: &AtPoint) -> Over {
    match at.verdict {
        Verdict::Over(over) => over,
        Verdict::Fits(room) => panic!("it fits, with {room:?} to spare"),
    }
}

#[test]
fn what_is_too_dear_by_hand() {
    // Mango 1.00, base 0.60. At 3.00, 1.50 may be spent, 0.20 of it on the cup: 1.30, 0.30 too
    // much, and 1.30 / 4 per 100 mL. 1.30 buy 325 mL at 0.004 a millilitre.
    let mut book = bar();
    book.apply(&Edit::Put(Record::Settings(Box::new(Settings {
        target: share("0.5"),
        units: crate::foundation::measure::System::Metric,
        ..settings()
    }))))
    .unwrap();
    let at = at_point(&book, offer_id(1, 1), money("3")).unwrap();
    assert_eq!((at.ceiling.cost, at.ceiling.ingredients), (money("1.5"), money("1.3")));
    assert_eq!((at.ingredients, at.may_cost_per_volume), (money("1.6"), money("0.325")));
    let short = at.largest_fill.unwrap().millilitres().minus(exact("325")).unwrap();
    assert!(short.abs() < exact("0.000001"), "{at:?}");
    assert_eq!(at.poured, millilitres("400"));
    let over = over(&at);
    assert_eq!((over.money, over.share), (money("0.3"), Some(share("0.1875"))));
    // With x mL of mango to 300 of base, scaled to 400 mL: 400 (0.01 x + 0.6) / (x + 300) = 1.30,
    // so x = 150 / 2.7 = 55.5556: 44.4444 % less.
    let first = over.first.unwrap();
    assert_eq!((first.ingredient, first.cost), (ingredient_id(1), money("1")));
    let off = first.less.unwrap().fraction().minus(exact("0.444444444444")).unwrap();
    assert!(off.abs() < exact("0.000002"), "{first:?}");
}

#[test]
fn what_fits_has_room() {
    // At 4.00, 2.00 less 0.20: 1.80 of which 1.60 is spent. In 200 mL 0.80 is, and it is not sold.
    let book = bar();
    let at = at_point(&book, offer_id(1, 1), money("4")).unwrap();
    assert_eq!((at.verdict, at.largest_fill), (Verdict::Fits(money("0.2")), Some(millilitres("400"))));
    assert_eq!(at_point(&book, offer_id(1, 2), money("4")).unwrap().verdict, Verdict::Fits(money("1")));
    // At 3.60 it fits to the cent.
    let at = at_point(&book, offer_id(1, 1), money("3.6")).unwrap();
    assert_eq!(at.verdict, Verdict::Fits(money("0")));
}

/// The margin of the first drink at this price after an edit, and where it stands.
fn applied(mut book: Book, edit: Edit, price: &str) -> (Share, OfferStatus) {
    book.apply(&edit).unwrap();
    let priced = price_offer(&book, &offer(1, 1, Some(price))).unwrap();
    (priced.margin().unwrap(), priced.status())
}

#[test]
fn giving_up_exactly_that_much_brings_the_target() {
    let book = bar();
    let over = over(&at_point(&book, offer_id(1, 1), money("3")).unwrap());
    // The 100 mL of mango that cost 1.00 bought cheaper by exactly that: 7.00 a litre.
    let cheaper = money("10").minus(over.money.times(exact("10")).unwrap()).unwrap();
    let goods = Goods::Ingredient(ingredient_id(1));
    let edit = Edit::SetPackPrice { goods, pack: pack_id(1), price: cheaper, day: None };
    assert_eq!(applied(book, edit, "3"), (share("0.5"), OfferStatus::OnTarget));
}

#[test]
fn less_of_the_dearest_line_brings_the_target() {
    let book = bar();
    let first = over(&at_point(&book, offer_id(1, 1), money("3")).unwrap()).first.unwrap();
    let kept = first.less.unwrap().rest().unwrap().fraction();
    let with = |kept: Exact| {
        let mut drink = book.drink(drink_id(1)).unwrap().clone();
        drink.lines[0].amount.number = drink.lines[0].amount.number.times(kept).unwrap().rounded(6);
        applied(book.clone(), Edit::Put(Record::Drink(drink)), "3")
    };
    let (margin, _) = with(kept);
    assert!(margin.minus(share("0.5")).unwrap().fraction().abs() < exact("0.000001"), "{margin:?}");
    assert_eq!(with(kept.minus(exact("0.00001")).unwrap()).1, OfferStatus::OnTarget);
    assert_eq!(with(kept.plus(exact("0.00001")).unwrap()).1, OfferStatus::UnderTarget);
}

#[test]
fn the_largest_fill_costs_the_ceiling() {
    let book = bar();
    let at = at_point(&book, offer_id(1, 1), money("3")).unwrap();
    let (drink, container) = (book.drink(drink_id(1)).unwrap(), book.container(container_id(1)).unwrap());
    let fill = at.largest_fill.unwrap();
    let scaled = scale(&book, drink, fill).unwrap();
    let cost = cost(&book, drink, container, &scaled, fill, Money::ZERO).unwrap();
    let off = cost.covered(CostBasis::Goods).minus(at.ceiling.cost).unwrap();
    assert!(off.major().abs() < exact("0.00000001"), "{off:?}");
}

#[test]
fn a_line_that_cannot_do_it_alone_is_said() {
    // At 1.80, 0.70 for ingredients; without mango 400 mL of base cost 0.80 already.
    let at = at_point(&bar(), offer_id(1, 1), money("1.8")).unwrap();
    assert_eq!(over(&at).first.map(|first| first.less), Some(None));
    // Of base alone, less is filled up by base: it changes nothing.
    let at = at_point(&bar(), offer_id(2, 1), money("1.8")).unwrap();
    assert_eq!(over(&at).first.map(|first| first.less), Some(None));
    // Fixed lines leave the size empty when they shrink.
    let mut book = bar();
    let mut fixed = book.drink(drink_id(1)).unwrap().clone();
    for line in &mut fixed.lines {
        line.scaling = Scaling::Fixed;
    }
    book.apply(&Edit::Put(Record::Drink(fixed))).unwrap();
    let at = at_point(&book, offer_id(1, 1), money("3")).unwrap();
    assert_eq!((at.largest_fill, over(&at).first.map(|first| first.less)), (None, Some(None)));
}

#[test]
fn a_price_may_leave_nothing_for_ingredients() {
    // A fee of 0.30 and a cup of 0.20 against half of 0.60.
    let mut book = bar();
    let fees = PaymentFee { share: Share::ZERO, fixed: money("0.30"), ..PaymentFee::default() };
    let all = Settings { payment_fee: fees, cost_basis: CostBasis::Everything, target: share("0.5"), ..settings() };
    book.apply(&Edit::Put(Record::Settings(Box::new(all)))).unwrap();
    let at = at_point(&book, offer_id(1, 1), money("0.6")).unwrap();
    assert_eq!((at.ceiling.ingredients, at.largest_fill), (money("-0.2"), None));
    assert_eq!(over(&at).share, Some(share("1.125")));
}

#[test]
fn free_ingredients_have_no_share_and_no_dearest_line() {
    let mut book = bar();
    for id in [1, 2] {
        let goods = Goods::Ingredient(IngredientId::from_random(id));
        book.apply(&Edit::SetPackPrice { goods, pack: pack_id(1), price: Money::ZERO, day: None }).unwrap();
    }
    let at = at_point(&book, offer_id(1, 1), money("0.3")).unwrap();
    assert_eq!(over(&at), Over { money: money("0.05"), share: None, first: None });
}

#[test]
fn the_worst_stands_first() {
    let mut book = bar();
    let kind = Scope::Kind(crate::book::DrinkKind::Blended);
    assert_eq!(sizes_of(&book, kind, &[container_id(1)]), [], "none has a price");
    for drink in [1, 2, 3] {
        book.apply(&Edit::SetPrice { offer: offer_id(drink, 1), price: Some(money("5")) }).unwrap();
    }
    let sizes = sizes_of(&book, kind, &[container_id(1), container_id(2)]);
    assert_eq!(sizes, [1, 2, 3].map(|drink| offer_id(drink, 1)));
    let order = |menu: &str| worst_first(&book, &sizes, money(menu)).iter().map(|row| row.0).collect::<Vec<_>>();
    // At 1.80: over by 0.90 of 1.60 and by 0.10 of 0.80. At 4.00: room of 0.20 and of 1.00.
    assert_eq!(order("1.8"), [1, 2, 3].map(|drink| offer_id(drink, 1)));
    assert_eq!(order("4"), [1, 2, 3].map(|drink| offer_id(drink, 1)));
    // At 2.20, 0.90 may be spent: 0.70 of 1.60 too much, and 0.10 to spare.
    let rows = worst_first(&book, &[offer_id(3, 1), offer_id(2, 1), offer_id(1, 1)], money("2.2"));
    assert_eq!(rows.iter().map(|row| row.0).collect::<Vec<_>>(), [1, 2, 3].map(|drink| offer_id(drink, 1)));
    assert!(rows[2].1.is_err(), "a recipe without lines cannot be computed: {rows:?}");
    let one = sizes_of(&book, Scope::Drink(drink_id(1)), &[container_id(2), container_id(1)]);
    assert_eq!(one, [offer_id(1, 2), offer_id(1, 1)], "one drink in each container, sold in it or not");
}
