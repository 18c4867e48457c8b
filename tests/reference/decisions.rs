//! What would have to be true for a change of sizes to pay: against textbook formulas, Python and scipy, and the
//! demo book's pressed drinks by a sum of another make.

use brimwright::book::{Book, Container, Drink, DrinkKind, Offer, Record, Scope};
use brimwright::drink::ledger::Ledger;
use brimwright::foundation::measure::{Exact, Money, Share};
use brimwright::foundation::statistics::numbers_to_tell;
use brimwright::sizes::decision::{Answered, Decision, MenuToday, Question, Told, Verdict};

use crate::csv::rows;
use crate::example;
use crate::support::{
    book, container, container_id, day, drink, exact, ingredient, line, money, offer_id, pack, settings, use_of, vessel,
};

/// Some buyers of a drink, and how it is before and after: what one leaves, the price, the size in millilitres.
struct Turn {
    buyers: String,
    left: [String; 2],
    prices: [String; 2],
    sizes: [String; 2],
}

impl Turn {
    /// As a data file has it: buyers, before and after, price before and after, size before and after.
    fn read(text: &str) -> Turn {
        let words: Vec<String> = text.split_whitespace().map(str::to_string).collect();
        let pair = |at: usize| [words[at].clone(), words[at + 1].clone()];
        Turn { buyers: words[0].clone(), left: pair(1), prices: pair(3), sizes: pair(5) }
    }

    /// What one costs before and after.
    fn cost(&self, at: usize) -> Exact {
        exact(&self.prices[at]).minus(exact(&self.left[at])).unwrap()
    }
}

/// A book in which each drink (1, 2 and on) is sold in the size before, and offered in its own size after with no
/// buyers yet. Its cost is an ingredient's by volume, and as much per drink as makes it right in both sizes.
fn shop(turns: &[Turn]) -> Book {
    let mut records = Vec::new();
    let mut sizes: Vec<&String> = Vec::new();
    for (id, turn) in (1..).zip(turns) {
        let volume = |at: usize| exact(&turn.sizes[at]);
        let (more, further) = (turn.cost(1).minus(turn.cost(0)), volume(1).minus(volume(0)));
        let by_volume = pack(1, &format!("{} mL", further.unwrap().abs()), &more.unwrap().abs().to_string());
        let poured = more.unwrap().abs().times(volume(0)).unwrap().over(further.unwrap().abs()).unwrap();
        let each = turn.cost(0).minus(poured).unwrap().rounded(6);
        records.push(Record::Ingredient(ingredient(id, [by_volume])));
        let made = drink(id, "1 L", [line(1, id, "1 L")]);
        records.push(Record::Drink(Drink { treatment_fee: Money::from_major(each), ..made }));
        for (at, size) in turn.sizes.iter().enumerate() {
            let place = sizes.iter().position(|known| *known == size).unwrap_or(sizes.len());
            if place == sizes.len() {
                sizes.push(size);
                records.push(Record::Container(container(place as u64 + 1, &format!("{size} mL"))));
            }
            let weekly = Some(if at == 0 { exact(&turn.buyers) } else { Exact::ZERO });
            let price = Some(money(&turn.prices[at]));
            records.push(Record::Offer(Offer { price, weekly, ..Offer::new(offer_id(id, place as u64 + 1)) }));
        }
    }
    book(settings(), records)
}

/// The answer without anything typed.
fn asked(book: &Book, scope: Scope, question: &Question) -> Decision {
    let menu = MenuToday::of(book, &Ledger::of(book), scope, &Told::default(), day("2026-11-27")).unwrap();
    menu.answer(question).unwrap()
}

/// Sold so often at this price in a size that costs `cost` to fill, and to be sold at another in one of the same fill:
/// how many bring the same.
fn bring_the_same(cost: &str, weekly: &str, now: &str, then: &str) -> Exact {
    switched(now, cost, then, weekly).break_even_buyers().unwrap().unwrap()
}

/// The change of sales at which a price change of one drink earns the same, in percent to one decimal: the drink
/// in a second container that holds as much.
fn sales_change(price: &str, cost: &str, then: &str) -> Exact {
    let change = switched(price, cost, then, "100").change_at_break_even().unwrap().unwrap();
    change.percent().unwrap().rounded(1)
}

/// One price in place of another, for so many a week.
fn switched(price: &str, cost: &str, then: &str, weekly: &str) -> Decision {
    let at = |id: u64, price: &str, weekly: &str| {
        let (price, weekly) = (Some(money(price)), Some(exact(weekly)));
        Record::Offer(Offer { price, weekly, ..Offer::new(offer_id(1, id)) })
    };
    let book = book(
        settings(),
        [
            Record::Ingredient(ingredient(1, [pack(1, "250 mL", cost)])),
            Record::Drink(drink(1, "250 mL", [line(1, 1, "250 mL")])),
            Record::Container(container(1, "250 mL")),
            Record::Container(container(2, "250 mL")),
            at(1, price, weekly),
            at(2, then, "0"),
        ],
    );
    let switch = Question::Switch { from: container_id(1), to: container_id(2) };
    asked(&book, Scope::Menu, &switch)
}

#[test]
fn the_buyers_that_bring_a_sum_again() {
    // A textbook's fixed costs are here what the old price brings in a week: so much must the new one bring again.
    // PSU Pressbooks ACCTG 211, 7.2: 150 left of 400 (W17), and 20,000 to bring (W18); here 80 a week that leave 250
    // each at 500. OpenStax, Principles of Accounting 2, 3.2 (W19, from memory): 18,000 to bring, 80 left of 100; here
    // 150 a week that leave 120 each at 140.
    assert_eq!((example("W17").1.as_str(), example("W19").1.as_str()), ("150", "225"));
    assert_eq!(example("W18").1, "133.3333 -> 134 units");
    assert_eq!(bring_the_same("250", "80", "500", "400").rounded(4), exact("133.3333"));
    assert_eq!(switched("500", "250", "400", "80").needs_new(), Some(exact("54")), "to 134");
    assert_eq!(bring_the_same("20", "150", "140", "100"), exact("225"));
    assert_eq!(switched("140", "20", "100", "150").needs_new(), Some(exact("75")), "not rounded up");
}

#[test]
fn the_change_of_sales_at_which_a_price_change_breaks_even() {
    // MK 4010, Computing percent breakeven price change (public teaching notes): a price of 2.50, of which 1.00 is
    // variable cost; 0.50 off needs 50 % more, 0.50 on may lose 25 %.
    assert_eq!(sales_change("2.50", "1", "2"), exact("50"));
    assert_eq!(sales_change("2.50", "1", "3"), exact("-25"));
    // The same formula, -dP / (CM + dP), in percent of the price: margins of 42 % and of 22 %, 10 % dearer.
    assert_eq!(sales_change("100", "58", "110"), exact("-19.2"));
    assert_eq!(sales_change("100", "78", "110"), exact("-31.3"));
}

#[test]
fn the_break_even_cannibalization_rate() {
    // The textbook's: margin of the new over margin of the old. 4.00 less 1.50 over 6.00 less 2.00 is 62.5 %; and
    // margins of 3.00 and 2.00: each may be taken.
    for (old, new, rate) in [(["6", "2"], ["4", "1.5"], "0.625"), (["4", "2"], ["5", "2"], "1.5")] {
        let cost = |id: u64, cost: &str| Record::Packaging(vessel(id, [pack(1, "1 ea", cost)]));
        let in_it = |id: u64, size: &str| {
            let set = vec![use_of(id, "1")];
            Record::Container(Container { set, ..container(id, size) })
        };
        let sold = Offer { price: Some(money(old[0])), weekly: Some(exact("90")), ..Offer::new(offer_id(1, 1)) };
        let book = book(
            settings(),
            [
                Record::Ingredient(ingredient(1, [pack(1, "1 L", "0")])),
                Record::Drink(drink(1, "250 mL", [line(1, 1, "250 mL")])),
                cost(1, old[1]),
                cost(2, new[1]),
                in_it(1, "250 mL"),
                in_it(2, "150 mL"),
                Record::Offer(sold),
            ],
        );
        let further = offer_id(1, 2);
        let told =
            Told { prices: vec![(further, money(new[0]))], weekly: vec![(further, exact("40"))], ..Told::default() };
        let menu = MenuToday::of(&book, &Ledger::of(&book), Scope::Menu, &told, day("2026-11-27")).unwrap();
        let decision = menu.answer(&Question::Add { size: container_id(2), taken_from: None }).unwrap();
        let at = Share::from_fraction(exact(rate));
        assert_eq!((decision.break_even(), decision.rows[0].break_even), (Ok(Some(at)), Some(at)));
        let all = rate == "1.5";
        assert_eq!(decision.verdict, if all { Verdict::EvenIfAllTaken } else { Verdict::AtMost { at } });
    }
}

#[test]
fn tipping_points_are_those_of_python() {
    let rows = rows(include_str!("data/tipping_points.csv"));
    let near = |one: Exact, other: &str| one.minus(exact(other)).unwrap().abs() < exact("0.000005");
    for row in &rows {
        let turns: Vec<Turn> = row["menu"].split(" + ").map(Turn::read).collect();
        let drop = Question::Drop { size: container_id(1) };
        let decision = asked(&shop(&turns), Scope::Menu, &drop);
        let tipping = decision.tipping().unwrap_or_else(|| panic!("{row:?}"));
        assert!(near(tipping.elasticity, &row["elasticity"]), "{row:?}: {tipping:?}");
        assert!(near(tipping.loses.fraction(), &row["loses"]), "{row:?}: {tipping:?}");
        // An owner whose buyers answer just so earns what he earns today.
        let stay = Exact::ONE.minus(tipping.loses.fraction()).unwrap().times(exact("10")).unwrap();
        let profit = decision.by_owner(&Answered::of_ten(stay).unwrap()).unwrap();
        assert!(near(profit.minus(decision.now).unwrap().major(), "0"), "{row:?}: {profit:?}");
    }
    assert_eq!(rows.len(), 6);
}

#[test]
fn trials_are_as_long_as_scipy_has_them() {
    let rows = rows(include_str!("data/trial_lengths.csv"));
    for row in &rows {
        let weeks = numbers_to_tell(exact(&row["deviation"]), exact(&row["gain"]), 1000).unwrap().unwrap();
        assert_eq!(weeks.to_string(), row["normal"], "{row:?}");
        // The exact test, which knows how few the weeks are, takes one or two more a side.
        let further = row["exact"].parse::<u32>().unwrap() - weeks;
        assert!((1..=2).contains(&further), "{row:?}");
    }
    assert_eq!(rows.len(), 10);
}

#[test]
fn the_demo_books_pressed_drinks_by_hand() {
    let book = brimwright::exchange::read(include_str!("../../public/books/marrowgate-juice-hall.json")).unwrap();
    // By `data/demo_books.py drops`, weekly numbers times what each leaves: 70.40 of 104.61 a week, 633.52 of
    // 756.57, 811.64 of 678.71, 76.58 of 39.65, and 780.51 of 921.50 if all but the 16 oz go. With overhead counted
    // it would be 44.0, 74.7, 133.9, 247.0 and 76.2 %, but overhead does not change with the number of drinks.
    let shares = ["67.3", "83.7", "119.6", "193.2", "84.7"].map(exact);

    let pressed = Scope::Kind(DrinkKind::Pressed);
    let questions = [2, 3, 4, 5].map(|id| Question::Drop { size: container_id(id) });
    let only_16 = Question::Keep { sizes: vec![container_id(4)] };
    for (question, share) in questions.into_iter().chain([only_16]).zip(shares) {
        let decision = asked(&book, pressed, &question);
        let at = decision.break_even().unwrap().unwrap();
        assert_eq!(at.percent().unwrap().rounded(1), share, "{question:?}");
        match decision.verdict {
            Verdict::AtLeast { at: said } => assert!(said == at && share <= exact("100"), "{question:?}"),
            Verdict::CannotPay { at: said, .. } => assert!(said == Some(at) && share > exact("100"), "{question:?}"),
            other => panic!("{question:?}: {other:?}"),
        }
    }
}
