use std::collections::BTreeSet;

use super::draft::Draft;
use super::*;
use crate::book::{Bought, Container, Field, Filled, Headspace, Labour, Pack, PaymentFee, Problem, Tier};
use crate::drink::ledger::Ledger;
use crate::foundation::measure::{Exact, System};
use crate::sizes::side_by_side::{SideBySide, side_by_side, sold_in};
use crate::support::{
    amount, book, book_of_one_drink, container, container_id, drink, drink_id, exact, ingredient, ingredient_id, line,
    millilitres, money, offer, offer_id, pack, pack_id, packaging_id, seconds, settings, share, use_of, vessel,
};

const DRINK: Scope = Scope::Drink(crate::book::DrinkId::from_random(1));

/// Two drinks of two ingredients each in two bottles, with tiers, surcharges and labour.
fn bar() -> Book {
    let tier = Tier { from: exact("2"), price: money("3.60") };
    let tiered = Pack { tiers: vec![tier], at_a_time: exact("3"), ..pack(1, "1 L", "4.10") };
    let delivered = Pack { surcharge: money("0.333333"), ..pack(1, "750 mL", "9.99") };
    let bottle = |id, size| Container { set: vec![use_of(1, "1")], ..container(id, size) };
    let labour = Labour { per_drink: seconds("40"), ..Labour::default() };
    let made = |id| Drink { labour, ..drink(id, "1 L", [line(1, 1, "600 mL"), line(2, 2, "400 mL")]) };
    let offers = [(1, 1, "3"), (1, 2, "5"), (2, 1, "4"), (2, 2, "6")];
    book(
        Settings { units: System::Metric, wage: money("18"), ..settings() },
        [
            Record::Ingredient(ingredient(1, [tiered, pack(2, "1 L", "5")])),
            Record::Ingredient(ingredient(2, [delivered])),
            Record::Packaging(vessel(1, [pack(1, "1 ea", "0.4")])),
            Record::Container(bottle(1, "300 mL")),
            Record::Container(bottle(2, "500 mL")),
            Record::Drink(made(1)),
            Record::Drink(Drink { target: Some(share("0.5")), ..made(2) }),
        ]
        .into_iter()
        .chain(offers.map(|(drink, container, price)| Record::Offer(offer(drink, container, Some(price))))),
    )
}

fn compared(book: &Book, scope: Scope) -> SideBySide {
    side_by_side(book, &Ledger::of(book), scope, &sold_in(book, scope)).unwrap()
}

/// The same asked of a part of the menu.
fn of(part: Scope, what_if: &WhatIf) -> WhatIf {
    WhatIf { conditions: Conditions { part, ..what_if.conditions.clone() }, ..what_if.clone() }
}

/// Other costs, fees and fills alone.
fn under(conditions: Conditions) -> WhatIf {
    WhatIf { conditions, ..WhatIf::default() }
}

fn filled(container: u64, fill: &str) -> Filled {
    Filled { container: container_id(container), fill: amount(&format!("{fill} mL")) }
}

fn drafted(book: &Book, scope: Scope, what_if: &WhatIf) -> SideBySide {
    let containers = sold_in(book, scope);
    let draft = Draft::of(book, &Ledger::of(book), scope, &containers).with(&of(scope, what_if)).unwrap();
    side_by_side(&draft.book, &draft.ledger, scope, &containers).unwrap()
}

fn all() -> WhatIf {
    let conditions = Conditions {
        ingredients: share("0.2"),
        target: Some(share("0.7")),
        fills: vec![filled(2, "450")],
        ..Conditions::default()
    };
    WhatIf { conditions, prices: vec![(offer_id(1, 1), money("3.50"))], mix: Vec::new() }
}

/// Drink 1 from another supplier who asks 5.50 for his litre, dearer bottles, half more for the rest, a wage
/// of 21.00, a tenth thrown away, and fees.
fn costs() -> WhatIf {
    let bought = |goods, id, price| Bought { goods, pack: pack_id(id), price: Some(money(price)) };
    under(Conditions {
        ingredients: share("0.5"),
        bought: vec![
            bought(Goods::Ingredient(ingredient_id(1)), 2, "5.50"),
            bought(Goods::Packaging(packaging_id(1)), 1, "0.60"),
        ],
        waste: Some(share("0.1")),
        wage: Some(money("21")),
        card_fee: Some(share("0.03")),
        commission: Some(share("0.05")),
        ..Conditions::default()
    })
}

/// The same typed into a book; the prices of suppliers only where they are `asked`.
fn costs_by_hand(book: &Book, scope: Scope, asked: bool) -> Book {
    let mut hand = book.clone();
    let mut put = |record| drop(hand.apply(&Edit::Put(record)).unwrap());
    let settings = book.settings().clone();
    let payment_fee = PaymentFee { share: share("0.03"), ..settings.payment_fee };
    let mut settings = Settings { wage: money("21"), payment_fee, commission: share("0.05"), ..settings };
    if scope == Scope::Menu {
        settings.unsold = share("0.1");
    } else {
        for drink in book.drinks().filter(|drink| book.belongs(drink.id, scope)) {
            put(Record::Drink(Drink { unsold: Some(share("0.1")), ..drink.clone() }));
        }
    }
    put(Record::Settings(Box::new(settings)));
    let [first, second] = [1, 2].map(|id| book.ingredient(ingredient_id(id)).unwrap().clone());
    let price = if asked { "5.50" } else { "5" };
    put(Record::Ingredient(ingredient(1, [pack(2, "1 L", price), first.packs[0].clone()])));
    if asked {
        // Half more than 9.99 and 0.333333.
        let delivered = Pack { surcharge: money("0.4999995"), price: money("14.985"), ..second.packs[0].clone() };
        put(Record::Ingredient(ingredient(2, [delivered])));
        put(Record::Packaging(vessel(1, [pack(1, "1 ea", "0.6")])));
    }
    hand
}

#[test]
fn nothing_tried_changes_nothing() {
    let book = bar();
    for scope in [DRINK, Scope::Menu] {
        assert_eq!(drafted(&book, scope, &WhatIf::default()), compared(&book, scope));
    }
}

#[test]
fn a_draft_is_as_a_book_edited_by_hand() {
    let book = bar();
    let before = book.clone();
    let drafts = [DRINK, Scope::Kind(crate::book::DrinkKind::Blended), Scope::Menu]
        .map(|scope| (scope, drafted(&book, scope, &all())));
    assert_eq!(book, before);
    for (scope, draft) in drafts {
        let mut hand = book.clone();
        let mut put = |record| drop(hand.apply(&Edit::Put(record)).unwrap());
        // A fifth more for each price and surcharge, typed in.
        let tier = Tier { from: exact("2"), price: money("4.32") };
        let tiered = Pack { tiers: vec![tier], at_a_time: exact("3"), ..pack(1, "1 L", "4.92") };
        put(Record::Ingredient(ingredient(1, [tiered, pack(2, "1 L", "6")])));
        let delivered = Pack { surcharge: money("0.3999996"), ..pack(1, "750 mL", "11.988") };
        put(Record::Ingredient(ingredient(2, [delivered])));
        put(Record::Offer(offer(1, 1, Some("3.50"))));
        let headspace = Headspace::Volume(amount("50 mL"));
        put(Record::Container(Container { headspace, ..book.container(container_id(2)).unwrap().clone() }));
        let target = Some(share("0.7"));
        match scope {
            Scope::Menu => {
                put(Record::Settings(Box::new(Settings { target: share("0.7"), ..book.settings().clone() })));
            }
            _ => {
                for drink in book.drinks().filter(|drink| book.belongs(drink.id, scope)) {
                    put(Record::Drink(Drink { target, ..drink.clone() }));
                }
            }
        }
        assert_eq!(draft, compared(&hand, scope), "{scope:?}");
    }
}

#[test]
fn suppliers_wage_waste_and_fees_are_as_edited_by_hand() {
    let book = bar();
    for scope in [DRINK, Scope::Kind(crate::book::DrinkKind::Blended), Scope::Menu] {
        let hand = costs_by_hand(&book, scope, true);
        assert_eq!(drafted(&book, scope, &costs()), compared(&hand, scope), "{scope:?}");
        let mut used = book.clone();
        used.apply(&of(scope, &costs()).edit(&book).unwrap()).unwrap();
        assert_eq!(used, costs_by_hand(&book, scope, false), "{scope:?}: what suppliers ask is not ours");
    }
}

#[test]
fn using_it_is_said_line_by_line() {
    let book = bar();
    let uses = WhatIf { mix: vec![(container_id(1), share("0.4"))], ..of(DRINK, &all()) }.uses(&book);
    let price = Change::Price { offer: offer_id(1, 1), from: Some(money("3")), to: money("3.50") };
    let (from, to) = (Some(millilitres("500")), millilitres("450"));
    let fill = Change::Fill { container: container_id(2), from, to, drinks: 2 };
    assert_eq!(uses.changes, [price, fill, Change::Target(book.settings().target, share("0.7"), 1)]);
    assert_eq!(uses.not_ours, [NotOurs::Ingredients(share("0.2")), NotOurs::Mix(container_id(1), share("0.4")),]);
    let uses = costs().uses(&book);
    let [first, second] = [1, 2].map(|id| pack(id, "1 L", "1").id);
    let goods = Goods::Ingredient(ingredient_id(1));
    assert_eq!(
        uses.changes,
        [
            Change::Pack { goods, from: Some(first), to: second },
            Change::Waste(Share::ZERO, share("0.1"), 0),
            Change::Wage(money("18"), money("21")),
            Change::CardFee(Share::ZERO, share("0.03")),
            Change::Commission(Share::ZERO, share("0.05")),
        ]
    );
    let bottle = Goods::Packaging(packaging_id(1));
    assert_eq!(
        uses.not_ours,
        [
            NotOurs::Ingredients(share("0.5")),
            NotOurs::PackPrice { goods, pack: second, to: money("5.50") },
            NotOurs::PackPrice { goods: bottle, pack: first, to: money("0.60") },
        ]
    );
    assert_eq!(WhatIf::default().uses(&book), Uses::default());
}

#[test]
fn prices_that_change_by_the_same_stand_by_size() {
    let change = |drink, container, from: Option<&str>, to| Change::Price {
        offer: offer_id(drink, container),
        from: from.map(money),
        to: money(to),
    };
    let alone = [change(3, 1, Some("4"), "4.25"), change(4, 1, None, "3.50"), Change::Wage(money("18"), money("21"))];
    let alike = [change(1, 1, Some("3"), "3.50"), change(2, 1, Some("4.10"), "4.60")];
    let lower = [change(1, 2, Some("6"), "5"), change(2, 2, Some("7"), "6"), change(5, 2, Some("5"), "4")];
    let changes = [&alike[..1], &alone[..1], &alike[1..], &lower, &alone[1..]].concat();
    let (rises, others) = Uses { changes, not_ours: Vec::new() }.by_size();
    let rise = |container, by: &str, drinks| Rise { container: container_id(container), by: money(by), drinks };
    assert_eq!((rises.as_slice(), others.as_slice()), ([rise(1, "0.50", 2), rise(2, "-1", 3)].as_slice(), &alone[..]));
}

/// A drink at 3.00 that costs 1 to make; overhead of 0.30 does not change with the number: 10 * 2.
#[test]
fn a_week_counts_what_changes_with_the_number_of_drinks() {
    let settings = Settings { overhead: money("0.30"), ..settings() };
    let ledger = Ledger::of(&book_of_one_drink(settings, "1", Some("3")));
    let sales = [(offer_id(1, 1), exact("10")), (offer_id(9, 1), exact("4"))];
    assert_eq!(week(&ledger, &sales), Ok(Week { units: exact("10"), profit: money("20") }));
}

/// What a draft brings is what the book, edited by hand, brings offer by offer.
#[test]
fn a_week_of_a_draft_is_that_of_the_changed_book() {
    let book = bar();
    let sales = [(1, 1, "7"), (1, 2, "4.5"), (2, 1, "3"), (2, 2, "11")];
    let sales = sales.map(|(drink, container, units)| (offer_id(drink, container), exact(units)));
    let hand = Ledger::of(&costs_by_hand(&book, Scope::Menu, true));
    let draft = Draft::of(&book, &Ledger::of(&book), Scope::Menu, &sold_in(&book, Scope::Menu)).with(&costs()).unwrap();
    let each = |offer| hand.get(offer).unwrap().as_ref().unwrap().asked.unwrap().contribution;
    let sum = sales.iter().try_fold(Money::ZERO, |sum, (offer, units)| sum.plus(each(*offer).times(*units)?));
    // No overhead in this book: all of a contribution changes with the number.
    assert_eq!(week(&draft.ledger, &sales).unwrap().profit.major().rounded(9), sum.unwrap().major().rounded(9));
}

/// 100 drinks, 50 of each size. By hand: 80 large ones are 80 * 10 / 50 = 16 and 64; 20 small ones 12 and 8.
#[test]
fn sizes_in_other_shares_keep_what_is_sold_of_all() {
    let sales = [(1, 1, "30"), (1, 2, "10"), (2, 1, "20"), (2, 2, "40")];
    let sales = sales.map(|(drink, container, units)| (offer_id(drink, container), exact(units)));
    let units = |sales: &[(OfferId, Exact)], mix: &[(u64, &str)]| {
        let mix: Vec<_> = mix.iter().map(|(id, part)| (container_id(*id), share(part))).collect();
        mixed(sales, &mix).unwrap().map(|all| all.iter().map(|(_, units)| units.to_string()).collect::<Vec<_>>())
    };
    assert_eq!(units(&sales, &[]).unwrap(), ["30", "10", "20", "40"]);
    assert_eq!(units(&sales, &[(2, "0.8")]).unwrap(), ["12", "16", "8", "64"]);
    assert_eq!(units(&sales, &[(1, "0.2"), (2, "0.8")]).unwrap(), ["12", "16", "8", "64"]);
    assert_eq!(units(&sales, &[(1, "0.7"), (2, "0.8")]), Err(MixError::OverTheWhole));
    assert_eq!(units(&sales, &[(1, "0.1"), (2, "0.8")]), Err(MixError::UnderTheWhole));
    assert_eq!(units(&[], &[(1, "0.1")]), Err(MixError::NoSales));
    // A quarter takes a size that nobody buys today: 25 by what is sold of each drink, 40 and 60 of 100.
    let unsold = [(offer_id(1, 3), Exact::ZERO), (offer_id(2, 3), Exact::ZERO)];
    let with_new: Vec<_> = sales.into_iter().chain(unsold).collect();
    assert_eq!(units(&with_new, &[(3, "0.25")]).unwrap(), ["22.5", "7.5", "15", "30", "10", "15"]);
}

#[test]
fn ingredients_cost_more_by_that_share_and_nothing_else_does() {
    let book = bar();
    let now = compared(&book, DRINK);
    let then = drafted(&book, DRINK, &under(Conditions { ingredients: share("0.25"), ..Conditions::default() }));
    for (now, then) in now.sizes.iter().zip(&then.sizes) {
        let fifth = now.parts[0].times(exact("1.25")).unwrap();
        let off = then.parts[0].minus(fifth).unwrap().major().abs();
        assert!(off <= exact("0.00000001"), "{off}: a price is kept to eight decimals");
        assert_eq!(now.parts[1..], then.parts[1..]);
    }
}

#[test]
fn what_the_owner_decides_leaves_out_suppliers_and_customers() {
    let quoted = Bought { goods: Goods::Ingredient(ingredient_id(1)), pack: pack_id(2), price: Some(money("9")) };
    let conditions = Conditions { bought: vec![quoted], ..all().conditions };
    let what_if = WhatIf { conditions, mix: vec![(container_id(1), share("0.4"))], ..all() };
    let ours = what_if.ours();
    let decided = Bought { price: None, ..quoted };
    let conditions = Conditions { ingredients: Share::ZERO, bought: vec![decided], ..what_if.conditions.clone() };
    assert_eq!(ours, WhatIf { conditions, prices: what_if.prices.clone(), mix: Vec::new() });
    // It is what using it puts into the book.
    let book = bar();
    assert_eq!(ours.edit(&book), what_if.edit(&book));
}

/// What the book already has is no change: its wage, its pack, its price, its fill.
#[test]
fn what_is_so_already_is_no_change() {
    let conditions = Conditions {
        wage: Some(money("18")),
        bought: vec![Bought { goods: Goods::Ingredient(ingredient_id(1)), pack: pack_id(1), price: None }],
        fills: vec![filled(1, "300")],
        ..Conditions::default()
    };
    let what_if = WhatIf { conditions, prices: vec![(offer_id(1, 1), money("3"))], mix: Vec::new() };
    assert_eq!(what_if.uses(&bar()), Uses::default());
}

#[test]
fn what_is_tried_is_read_again() {
    let goods = Goods::Packaging(packaging_id(1));
    let conditions = Conditions {
        ingredients: share("0.2"),
        bought: vec![Bought { goods, pack: pack_id(1), price: Some(money("0.45")) }],
        target: Some(share("0.7")),
        wage: Some(money("18.50")),
        fills: vec![Filled { container: container_id(1), fill: amount("7.5 fl oz") }],
        ..Conditions::default()
    };
    let tried = Tried {
        conditions,
        prices: vec![(container_id(2), money("-0.25"))],
        mix: vec![(container_id(1), share("0.4"))],
    };
    assert_eq!(Tried::read(&tried.text()), tried);
    for unread in ["", "{}", "prices", "{\"prices\": 3}"] {
        assert_eq!(Tried::read(unread), Tried::default(), "{unread}");
    }
}

#[test]
fn using_it_is_one_edit_without_the_ingredients() {
    let mut book = bar();
    let before = book.clone();
    let applied = book.apply(&of(DRINK, &all()).edit(&book).unwrap()).unwrap();
    let touched = [Key::Container(container_id(2)), Key::Drink(drink_id(1)), Key::Offer(offer_id(1, 1))];
    assert_eq!(applied.touched, BTreeSet::from(touched));
    let without_ingredients =
        WhatIf { prices: all().prices, ..under(Conditions { ingredients: Share::ZERO, ..all().conditions }) };
    assert_eq!(compared(&book, DRINK), drafted(&before, DRINK, &without_ingredients));
    book.apply(&applied.inverse).unwrap();
    assert_eq!(book, before);
}

#[test]
fn what_cannot_be_is_refused_and_the_draft_stays() {
    let book = bar();
    let draft = Draft::of(&book, &Ledger::of(&book), DRINK, &sold_in(&book, DRINK));
    let before = draft.clone();
    let refused = |what_if: WhatIf| draft.with(&of(DRINK, &what_if)).unwrap_err();
    let price = WhatIf { prices: vec![(offer_id(1, 1), money("0"))], ..WhatIf::default() };
    let field = |key, field, problem| WhatIfError::Refused(Refusal::Field { key, field, problem });
    let offer = Key::Offer(offer_id(1, 1));
    assert_eq!(refused(price), field(offer, Field::Price, Problem::NotPositive));
    let target = under(Conditions { target: Some(Share::WHOLE), ..Conditions::default() });
    assert_eq!(refused(target), field(Key::Drink(drink_id(1)), Field::Target, Problem::NotAShare));
    let fill = |volume| under(Conditions { fills: vec![filled(1, volume)], ..Conditions::default() });
    assert_eq!(refused(fill("300.1")), WhatIfError::OverTheRim(millilitres("300")));
    assert_eq!(refused(fill("0")), WhatIfError::NothingPoured);
    assert!(draft.with(&fill("300")).is_ok());
    let gone = under(Conditions { fills: vec![filled(9, "1")], ..Conditions::default() });
    let missing = Refusal::Missing { key: Key::Container(container_id(9)), needed_by: None };
    assert_eq!(refused(gone), WhatIfError::Refused(missing));
    assert_eq!(draft, before);
}

#[test]
fn a_part_of_the_menu_has_its_drinks_target_or_the_books() {
    let book = bar();
    assert_eq!(target_of(&book, DRINK), book.settings().target);
    assert_eq!(target_of(&book, Scope::Drink(drink_id(2))), share("0.5"));
    let kind = Scope::Kind(crate::book::DrinkKind::Blended);
    assert_eq!(target_of(&book, kind), book.settings().target);
    let mut alike = book;
    let own = Drink { target: Some(share("0.5")), ..alike.drink(drink_id(1)).unwrap().clone() };
    alike.apply(&Edit::Put(Record::Drink(own))).unwrap();
    assert_eq!(target_of(&alike, kind), share("0.5"));
    assert_eq!(target_of(&alike, Scope::Menu), alike.settings().target);
}
