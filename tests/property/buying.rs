//! The buying list against sums of other means: what is needed is worked out in binary fractions
//! on the way from the recipe to the market; what is bought covers it and hardly more.

use brimwright::book::{
    Book, BuyingList, Edit, Field, Goods, Ingredient, Offer, OfferId, Pack, Problem, Record, Refusal, Stage,
};
use brimwright::buying::buying_list::{Here, Proposal, Proposed, Quote, carry, finish, group, makes, propose};
use brimwright::drink::ledger::Ledger;
use brimwright::foundation::measure::{Date, Dimension, Exact, Measure, Money, Share, Unit};
use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;

use crate::books;
use crate::menus::menu;
use crate::support::{day, offer_id};

fn today() -> Date {
    day("2026-11-26")
}

/// A drink in a container that can be made, its ingredients and packaging quoted in one to three
/// packs, some of them counted; and how many are made.
fn planned() -> impl Strategy<Value = (Book, Exact)> {
    let more = |units: &'static [Unit]| vec(vec(books::pack(units, books::money(80)), 0..3), 3);
    let packs = (more(Unit::ALL), more(&[Unit::Piece]));
    (menu(), packs, 1..400_i64, option::of(0..90_i64)).prop_map(|(menu, (goods, pieces), units, unsold)| {
        let mut book = menu.book;
        let mut records: Vec<Record> = Vec::new();
        for (ingredient, packs) in book.ingredients().zip(goods) {
            let packs = with(&ingredient.packs, packs);
            records.push(Record::Ingredient(Ingredient { packs, ..ingredient.clone() }));
        }
        for (packaging, packs) in book.packagings().zip(pieces) {
            let packs = with(&packaging.packs, packs);
            records.push(Record::Packaging(brimwright::book::Packaging { packs, ..packaging.clone() }));
        }
        let offer = Offer { weekly: Some(Exact::new(units, 0)), ..Offer::new(offer_id(1, 1)) };
        records.push(Record::Offer(offer));
        let mut settings = book.settings().clone();
        settings.unsold = Share::from_fraction(Exact::new(unsold.unwrap_or_default(), 2));
        records.push(Record::Settings(Box::new(settings)));
        for record in records {
            book.apply(&Edit::Put(record)).expect("a complete record");
        }
        (book, Exact::new(units, 0))
    })
}

/// The packs with more, each id once.
fn with(packs: &[Pack], more: Vec<Pack>) -> Vec<Pack> {
    let mut all = packs.to_vec();
    for pack in more {
        if all.iter().all(|other| other.id != pack.id) {
            all.push(pack);
        }
    }
    all
}

fn proposal(book: &Book, makes: &[(OfferId, Exact)]) -> Proposal {
    propose(book, &Ledger::of(book), makes).expect("within range")
}

fn pack_of<'a>(book: &'a Book, goods: Goods, quote: &Quote) -> &'a Pack {
    book.packs(goods).iter().find(|pack| pack.id == quote.pack).unwrap()
}

/// What must be bought in the base unit of this dimension, by a way of our own: to the mass at
/// the stage, back to the market by the yields, and into the units of the pack.
fn bought(ingredient: &Ingredient, stage: Stage, amount: Measure, dimension: Dimension) -> f64 {
    let number = |number: Exact| number.to_estimate();
    let density = ingredient.density.unwrap().grams_per_millilitre().to_estimate();
    let juice = ingredient.juice_density.unwrap().grams_per_millilitre().to_estimate();
    let piece = number(ingredient.piece_weight.unwrap().grams());
    let trim = number(ingredient.trim_yield.fraction());
    let (whole, dense) = match stage {
        Stage::AsBought => (1.0, density),
        Stage::Trimmed => (trim, density),
        Stage::Pressed => (trim * number(ingredient.press_yield.unwrap().fraction()), juice),
        Stage::SoakedOrBrewed => (trim * number(ingredient.soak_yield.unwrap().fraction()), density),
    };
    let grams = match amount {
        Measure::Mass(mass) => number(mass.grams()) / whole,
        Measure::Volume(volume) => number(volume.millilitres()) * dense / whole,
        Measure::Count(count) => number(count.pieces()) * piece,
    };
    match dimension {
        Dimension::Mass => grams,
        Dimension::Volume => grams / density,
        Dimension::Count => grams / piece,
    }
}

/// What so many drinks need of goods, in the base unit of the pack.
fn needed(book: &Book, goods: Goods, units: Exact, dimension: Dimension) -> f64 {
    let ledger = Ledger::of(book);
    let each = match goods {
        Goods::Ingredient(id) => {
            let ingredient = book.ingredient(id).unwrap();
            let priced = ledger.get(offer_id(1, 1)).unwrap().as_ref().unwrap();
            let lines = priced.scaled.lines.iter().filter(|line| line.ingredient == id);
            lines.map(|line| bought(ingredient, line.stage, line.bought_as().unwrap(), dimension)).sum::<f64>()
        }
        Goods::Packaging(id) => {
            let container = book.containers().next().unwrap();
            let uses = book.set_of(container).filter(|used| used.packaging == id);
            uses.map(|used| used.count.to_estimate()).sum()
        }
    };
    each * units.to_estimate()
}

/// What is here of goods, in the base unit of the pack.
fn on_the_shelf(book: &Book, goods: Goods, dimension: Dimension) -> f64 {
    let Some(on_hand) = book.on_hand(goods) else { return 0.0 };
    let amount = on_hand.amount.measure().unwrap();
    match goods {
        Goods::Ingredient(id) => bought(book.ingredient(id).unwrap(), Stage::AsBought, amount, dimension),
        Goods::Packaging(_) => amount.base().to_estimate(),
    }
}

/// The list of a proposal, in the packs bought now or the cheapest, all of it ticked.
fn ticked(proposal: &Proposal, cheapest: bool) -> BuyingList {
    let mut list = proposal.list(today(), &|line| if cheapest { line.cheapest() } else { line.now() });
    list.lines.iter_mut().for_each(|line| line.bought = true);
    list
}

proptest! {
    #[test]
    fn what_is_bought_and_here_is_enough_and_hardly_more((book, units) in planned()) {
        let proposal = proposal(&book, &[(offer_id(1, 1), units)]);
        prop_assert_eq!(&proposal.left_out, &[]);
        prop_assert_eq!(&proposal.without_pack, &[]);
        for line in &proposal.lines {
            prop_assert_eq!(line.quotes.len(), book.packs(line.goods).len());
            for quote in &line.quotes {
                let pack = pack_of(&book, line.goods, quote);
                let contents = pack.contents.measure().unwrap();
                let dimension = contents.dimension();
                let holds = contents.base().to_estimate();
                let (need, here) = (needed(&book, line.goods, units, dimension), on_the_shelf(&book, line.goods, dimension));
                let packs = quote.packs.to_estimate();
                let there = here + packs * holds;
                // As near as binary fractions and a billionth of a pack.
                let near = 1e-9 * (need + here + holds) + 1e-9;
                prop_assert!(there >= need - near, "short: {there} of {need} in {quote:?}");
                prop_assert_eq!(quote.packs, quote.packs.floor());
                let least = pack.at_a_time.ceiling().to_estimate();
                let spare = there - need;
                if packs == 0.0 {
                    prop_assert!(here >= need - near, "{here} of {need} here");
                } else {
                    prop_assert!(here < need + near, "bought although {here} of {need} is here");
                    prop_assert!(packs >= least);
                    prop_assert!(spare < holds + near || packs == least, "{spare} left of packs of {holds}");
                }
                prop_assert!((quote.left_over.base().to_estimate() - spare).abs() <= near);
                prop_assert!((quote.needed.base().to_estimate() - need).abs() <= near);
                let is_counted = matches!(quote.here, Here::Counted { .. });
                prop_assert_eq!(is_counted, book.on_hand(line.goods).is_some());
            }
        }
    }

    #[test]
    fn the_price_is_that_of_the_tier_and_none_is_cheaper((book, units) in planned()) {
        for line in &proposal(&book, &[(offer_id(1, 1), units)]).lines {
            let costs: Vec<Money> = line.quotes.iter().map(|quote| {
                let pack = pack_of(&book, line.goods, quote);
                let reached = pack.tiers.iter().rev().find(|tier| tier.from <= quote.packs);
                let price = reached.map_or(pack.price, |tier| tier.price);
                price.plus(pack.surcharge).unwrap().times(quote.packs).unwrap()
            }).collect();
            prop_assert_eq!(&line.quotes.iter().map(|quote| quote.cost).collect::<Vec<_>>(), &costs);
            prop_assert_eq!(Some(line.cheapest().unwrap().cost), costs.iter().min().copied());
            prop_assert_eq!(line.now().unwrap().pack, book.packs(line.goods)[0].id);
        }
    }

    #[test]
    fn once_it_is_bought_nothing_is_missing((book, units) in planned(), cheapest: bool) {
        let made = [(offer_id(1, 1), units)];
        let list = ticked(&proposal(&book, &made), cheapest);
        let mut book = book;
        if list.lines.iter().any(|line| !line.packs.keeps()) {
            return Ok(());
        }
        book.apply(&Edit::Put(Record::BuyingList(list.clone()))).expect("a list of whole packs");
        let before = book.clone();
        let finished = finish(&book, &list, today()).unwrap();
        prop_assert_eq!((finished.added, finished.not_bought), (list.lines.len(), 0));
        prop_assert_eq!((&finished.started_anew, &finished.not_quoted), (&Vec::new(), &Vec::new()));
        let applied = match book.apply(&finished.edit) {
            Ok(applied) => applied,
            // Of a thousandth of a gram in a pack it may take more packs than a count has digits.
            Err(Refusal::Field { field: Field::OnHand, problem: Problem::TooLarge, .. }) => return Ok(()),
            Err(other) => panic!("{other:?}"),
        };
        prop_assert!(book.buying_list().is_none());
        let again = proposal(&book, &made);
        prop_assert_eq!(ticked(&again, cheapest).lines, []);
        book.apply(&applied.inverse).unwrap();
        prop_assert_eq!(book, before);
    }

    #[test]
    fn the_totals_are_those_of_the_lines((book, units) in planned(), cheapest: bool, ticks: Vec<bool>) {
        let proposal = proposal(&book, &[(offer_id(1, 1), units)]);
        let mut list = ticked(&proposal, cheapest);
        for (line, bought) in list.lines.iter_mut().zip(ticks) {
            line.bought = bought;
        }
        let (groups, totals) = group(&book, &list).unwrap();
        let sum = |of: &dyn Fn(&brimwright::book::ToBuy) -> bool| {
            let lines = list.lines.iter().filter(|line| of(line));
            lines.fold(Money::ZERO, |sum, line| {
                let quote = proposal.lines.iter().find(|it| it.goods == line.goods).unwrap().in_pack(line.pack).unwrap();
                sum.plus(quote.cost).unwrap()
            })
        };
        prop_assert_eq!((totals.all, totals.bought), (sum(&|_| true), sum(&|line| line.bought)));
        let chosen = |line: &Proposed| if cheapest { line.cheapest() } else { line.now() };
        prop_assert_eq!(proposal.cost(&chosen), Ok(totals.all));
        prop_assert_eq!(totals.left(), Ok(sum(&|line| !line.bought)));
        prop_assert_eq!(groups.iter().map(|group| group.lines.len()).sum::<usize>(), list.lines.len());
        for group in &groups {
            let of_group = group.lines.iter().map(|it| it.pack.as_ref().unwrap().supplier.clone());
            prop_assert!(of_group.clone().all(|supplier| supplier.trim() == group.supplier));
        }
    }

    #[test]
    fn a_price_carried_is_the_price_paid((book, units) in planned(), paid in vec(option::of(books::money(90)), 5)) {
        let mut book = book;
        let mut list = ticked(&proposal(&book, &[(offer_id(1, 1), units)]), false);
        for (line, paid) in list.lines.iter_mut().zip(paid) {
            line.paid = paid;
        }
        let before = book.clone();
        let carried = carry(&book, &list, day("2027-02-01")).unwrap();
        let applied = book.apply(&carried.edit).expect("prices that hold");
        for line in &list.lines {
            let price = |book: &Book| {
                let packs = book.packs(line.goods);
                packs.iter().find(|pack| pack.id == line.pack).unwrap().price_at(line.packs)
            };
            prop_assert_eq!(price(&book), line.paid.unwrap_or(price(&before)));
        }
        prop_assert_eq!(carry(&book, &list, day("2027-02-01")).unwrap().edit, Edit::Together(Vec::new()));
        book.apply(&applied.inverse).unwrap();
        prop_assert_eq!(book, before);
    }

    #[test]
    fn a_usual_week_is_what_is_sold_handed_out_free_and_thrown_away((book, units) in planned(), weeks in 1..9_i64) {
        let made = makes(&book, &[], Exact::new(weeks, 0)).unwrap();
        let drink = book.drinks().next().unwrap();
        let unsold = drink.unsold.unwrap_or(book.settings().unsold).fraction().to_estimate();
        let free = book.settings().reductions.free.fraction().to_estimate();
        let expected = units.to_estimate() * weeks as f64 / (1.0 - free) / (1.0 - unsold);
        prop_assert_eq!(made.len(), 1);
        prop_assert!((made[0].1.to_estimate() / expected - 1.0).abs() < 1e-9);
    }
}
