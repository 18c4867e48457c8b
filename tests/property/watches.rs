//! Changed prices followed, and what the menu hangs on.

use brimwright::book::{Book, Drink, Edit, Goods, Offer, Pack, Part, Record};
use brimwright::buying::price_watch::{bought, exposure, raised, rewind, since, what_if};
use brimwright::drink::ledger::{Ledger, Tried};
use brimwright::drink::sales::weekly_contribution;
use brimwright::foundation::measure::{Exact, Money, Share};
use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::sample::{select, subsequence};

use crate::books::{a_day, money, share};
use crate::menus::menu;
use crate::support::{drink_id, ingredient_id, offer_id, packaging_id};
use crate::{near, number};

/// Two drinks of one recipe, of which other shares are thrown away; some have a price, of some it
/// is known how many are sold.
fn bar() -> impl Strategy<Value = Book> {
    let sold = || (option::weighted(0.8, money(40)), option::weighted(0.8, number(100, 2)));
    (menu(), option::of(share(90)), sold(), sold()).prop_map(|(menu, unsold, first, second)| {
        let mut book = menu.book.clone();
        let other = Drink { id: drink_id(2), unsold, ..menu.drink().clone() };
        let offer = |drink, (price, weekly): (Option<Money>, Option<Exact>)| {
            let price = price.map(|price| book_price(&menu.book, price));
            Record::Offer(Offer { price, weekly, ..Offer::new(offer_id(drink, 1)) })
        };
        for record in [Record::Drink(other), offer(1, first), offer(2, second)] {
            book.apply(&Edit::Put(record)).expect("a complete record");
        }
        book
    })
}

/// A price above zero that the book's currency has.
fn book_price(book: &Book, price: Money) -> Money {
    let smallest = book.settings().currency.minor_unit();
    book.settings().currency.rounded(price).max(smallest)
}

fn all_goods() -> Vec<Goods> {
    let ingredients = (1..=3).map(|id| Goods::Ingredient(ingredient_id(id)));
    ingredients.chain((1..=2).map(|id| Goods::Packaging(packaging_id(id)))).collect()
}

/// The pack with another price, put where somebody would type it: at the tier that is reached.
fn typed(pack: &Pack, price: Money) -> Pack {
    let mut pack = pack.clone();
    let mut reached: Option<usize> = None;
    for (place, tier) in pack.tiers.iter().enumerate() {
        if tier.from <= pack.at_a_time && reached.is_none_or(|before| pack.tiers[before].from < tier.from) {
            reached = Some(place);
        }
    }
    match reached {
        Some(place) => pack.tiers[place].price = price,
        None => pack.price = price,
    }
    pack
}

/// The book with other prices of the packs that are bought now, typed in by hand.
fn with_prices(book: &Book, price: impl Fn(Goods, &Pack) -> Money) -> Book {
    let mut edited = book.clone();
    for goods in all_goods() {
        let mut record = book.record(goods.into()).unwrap();
        let packs = record.packs_mut().unwrap();
        packs[0] = typed(&packs[0], price(goods, &packs[0]));
        edited.apply(&Edit::Put(record)).expect("a price that holds");
    }
    edited
}

proptest! {
    #[test]
    fn rewound_and_wound_on_a_book_is_as_it_was(book in bar(), on in a_day()) {
        let mut then = book.clone();
        let applied = then.apply(&rewind(&book, on)).unwrap();
        for (goods, pack) in bought(&book) {
            let known = pack.price_on(on).unwrap_or(pack.price_now());
            prop_assert_eq!(then.packs(goods)[0].price_now(), known);
        }
        prop_assert_eq!(&with_prices(&then, |goods, _| book.packs(goods)[0].price_now()), &book);
        then.apply(&applied.inverse).unwrap();
        prop_assert_eq!(&then, &book);
    }

    #[test]
    fn what_changed_since_a_day_lies_between_the_book_then_and_now(book in bar(), on in a_day()) {
        let ledger = Ledger::of(&book);
        let found = since(&book, &ledger, on).unwrap();
        let then = with_prices(&book, |_, pack| pack.price_on(on).unwrap_or(pack.price_now()));
        let ledger_then = Ledger::of(&then);
        let menu = brimwright::book::Scope::Menu;
        prop_assert_eq!(&found.watched.before, &weekly_contribution(&then, &ledger_then, menu).unwrap());
        prop_assert_eq!(&found.watched.after, &weekly_contribution(&book, &ledger, menu).unwrap());
        let moved: Vec<_> = found.watched.moves.iter().map(|moved| moved.offer).collect();
        for (id, result) in ledger.offers() {
            let before = ledger_then.get(id).unwrap();
            prop_assert_eq!(moved.contains(&id), before != result);
        }
        for moved in &found.watched.moves {
            let cost = |ledger: &Ledger| ledger.get(moved.offer).unwrap().as_ref().unwrap().cost.total();
            prop_assert_eq!(moved.before.unwrap().cost, Some(cost(&ledger_then)));
            prop_assert_eq!(moved.after.unwrap().cost, Some(cost(&ledger)));
        }
    }

    #[test]
    fn what_if_is_as_typed_by_hand_and_leaves_the_book(
        book in bar(),
        goods in subsequence(all_goods(), 0..=5),
        percent in -100..=1000_i64,
    ) {
        let (before, ledger) = (book.clone(), Ledger::of(&book));
        let found = what_if(&book, &ledger, &goods, Share::from_fraction(Exact::new(percent, 2))).unwrap();
        prop_assert_eq!(&book, &before);
        let factor = Exact::new(100 + percent, 2);
        // Three decimals and two more: nothing is rounded.
        let hand = with_prices(&book, |of, pack| {
            if goods.contains(&of) { pack.price_now().times(factor).unwrap() } else { pack.price_now() }
        });
        let by_hand = Ledger::of(&hand);
        let tried = Tried::of(&book, &ledger, &Edit::replace(&book, &hand)).unwrap();
        prop_assert_eq!(&tried.ledger, &by_hand);
        prop_assert_eq!(&found.moves, &tried.moves);
        let menu = brimwright::book::Scope::Menu;
        prop_assert_eq!(&found.after, &weekly_contribution(&hand, &by_hand, menu).unwrap());
        for changed in &found.changed {
            prop_assert!(goods.contains(&changed.goods) && changed.share == Some(Share::from_fraction(Exact::new(percent, 2))));
        }
    }

    /// The shares add up to the whole, and the costs to what the parts of each drink say.
    #[test]
    fn what_the_menu_hangs_on_adds_up(book in bar()) {
        let ledger = Ledger::of(&book);
        let found = exposure(&book, &ledger).unwrap();
        let sum = found.goods.iter().fold(Money::ZERO, |sum, it| sum.plus(it.cost).unwrap());
        prop_assert_eq!(sum, found.cost);
        let shares = found.goods.iter().fold(Exact::ZERO, |sum, it| sum.plus(it.share.fraction()).unwrap());
        prop_assert!(found.cost.is_zero() || near(shares, Exact::ONE, "0.000000000001"), "{}", shares);
        let mut by_parts = Exact::ZERO;
        for offer in book.offers().filter(|offer| offer.price.is_some()) {
            let cost = &ledger.get(offer.id()).unwrap().as_ref().unwrap().cost;
            let parts = [Part::Ingredients, Part::ContainerSet].map(|part| cost.part(part).unwrap().major());
            let goods = parts[0].plus(parts[1]).unwrap();
            let sold = book.drink(offer.drink).unwrap().unsold.unwrap_or(book.settings().unsold).rest().unwrap();
            let paid = book.settings().reductions.free.rest().unwrap();
            let made = goods.over(sold.fraction()).unwrap().over(paid.fraction()).unwrap();
            let weekly = made.times(offer.weekly.unwrap_or(Exact::ZERO)).unwrap();
            by_parts = by_parts.plus(weekly).unwrap();
        }
        // Each line is rounded at its twelfth decimal, up to 100 of a drink are made.
        prop_assert!(near(found.cost.major(), by_parts, "0.00000001"), "{} {}", found.cost.major(), by_parts);
        prop_assert!(found.goods.is_sorted_by(|one, next| one.cost >= next.cost));
        prop_assert_eq!(found.goods.len() + found.idle.len(), all_goods().len());
    }

    /// Pricing every drink anew with one price a tenth higher says the same.
    #[test]
    fn a_tenth_more_costs_what_pricing_anew_says(book in bar()) {
        let ledger = Ledger::of(&book);
        let brings = |ledger: &Ledger| -> Exact {
            let of = |offer: &Offer| {
                let asked = ledger.get(offer.id()).unwrap().as_ref().unwrap().asked;
                asked.zip(offer.weekly).map(|(asked, units)| asked.contribution.times(units).unwrap().major())
            };
            book.offers().filter_map(of).fold(Exact::ZERO, |sum, one| sum.plus(one).unwrap())
        };
        let now = brings(&ledger);
        for exposed in exposure(&book, &ledger).unwrap().goods {
            let edit = raised(&book, &[exposed.goods], Share::from_fraction(Exact::new(1, 1))).unwrap();
            let then = brings(&Tried::of(&book, &ledger, &edit).unwrap().ledger);
            let less = now.minus(then).unwrap();
            // Parts are rounded at their twelfth decimal, before and after.
            prop_assert!(near(exposed.less.major(), less, "0.00000001"), "{:?}: {}", exposed, less);
        }
    }

    #[test]
    fn dearer_by_nothing_moves_nothing(book in bar(), goods in vec(select(all_goods()), 0..3)) {
        let found = what_if(&book, &Ledger::of(&book), &goods, Share::ZERO).unwrap();
        prop_assert!(found.changed.is_empty() && found.moves.is_empty() && found.before == found.after);
    }

    #[test]
    fn a_rise_lets_none_climb(book in bar(), percent in 0..=1000_i64) {
        let by = Share::from_fraction(Exact::new(percent, 2));
        let found = what_if(&book, &Ledger::of(&book), &all_goods(), by).unwrap();
        prop_assert!(!found.moves.iter().any(|moved| moved.rose()));
        prop_assert!(found.after.contribution <= found.before.contribution);
    }
}
