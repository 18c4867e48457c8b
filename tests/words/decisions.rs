//! Decisions on sizes, and a price limit, in sentences.
//!
//! Each figure was worked out by hand from the bar below.

use brimwright::book::{Book, Container, Drink, Edit, Ingredient, Offer, OfferId, Packaging, Record, Scope, Settings};
use brimwright::drink::ledger::Ledger;
use brimwright::foundation::measure::{Exact, Money, System};
use brimwright::sizes::decision::{
    Answered, BelowPrice, Decision, FirstOrder, LeftOver, MenuToday, NoAnswer, Plan, Plans, Question, Swing, Told,
    below_price, findings,
};
use brimwright::sizes::price_point::at_point;
use brimwright::words::price_points::{give_up, spare, tightest};
use brimwright::words::{Decisions, even_at, even_short, even_whole, people, price_points};

use crate::support::{
    book, container, container_id, day, drink, drink_id, exact, ingredient, line, money, offer, offer_id, pack,
    packaging_id, settings, share, speaker, use_of, vessel,
};

/// A text as it is seen: blanks that do not break are blanks, and none stands before a percent sign.
fn seen(text: impl Into<String>) -> String {
    text.into().replace('\u{a0}', " ").replace(" %", "%")
}

/// A drink of 10.00 a litre in a small size of 300 mL at 6.00 and a large one of 500 mL at 9.00: it leaves 3.00
/// and 4.00. 60 small and 40 large are sold a week, so a week brings 180.00 and 160.00.
fn bar() -> Book {
    let size = |id, name: &str, brimful| Record::Container(Container { name: name.into(), ..container(id, brimful) });
    let sold = |container, price, weekly: &str| {
        Record::Offer(Offer { weekly: Some(exact(weekly)), ..offer(1, container, Some(price)) })
    };
    book(
        Settings { target: share("0.5"), units: System::Metric, ..settings() },
        [
            Record::Ingredient(ingredient(1, [pack(1, "1 L", "10")])),
            size(1, "Small", "300 mL"),
            size(2, "Large", "500 mL"),
            size(3, "Huge", "1 L"),
            Record::Drink(Drink { name: "Mango Lane".into(), ..drink(1, "300 mL", [line(1, 1, "300 mL")]) }),
            sold(1, "6", "60"),
            sold(2, "9", "40"),
        ],
    )
}

/// What is said of a book.
fn said<T>(book: &Book, say: impl FnOnce(&Decisions<'_>) -> T) -> T {
    say(&Decisions { book, speaker: &speaker(System::Metric) })
}

fn with_menu<T>(book: &Book, told: &Told, read: impl FnOnce(&MenuToday<'_>) -> T) -> T {
    read(&MenuToday::of(book, &Ledger::of(book), Scope::Menu, told, day("2026-11-27")).unwrap())
}

fn answer(question: &Question, told: &Told) -> Result<Decision, NoAnswer> {
    with_menu(&bar(), told, |menu| menu.answer(question))
}

/// The verdict on a question, and what is brought at best.
fn judged(question: &Question, told: &Told) -> [String; 2] {
    let decision = answer(question, told).unwrap();
    said(&bar(), |words| [words.verdict(&decision), words.at_best(&decision)].map(seen))
}

fn drop_small() -> Question {
    Question::Drop { size: container_id(1) }
}

#[test]
fn who_pays_the_new_price_without_turning_is_said() {
    let switch = Question::Switch { from: container_id(1), to: container_id(2) };
    let others = |price: &str| {
        let prices = vec![(OfferId { drink: drink_id(1), container: container_id(2) }, money(price))];
        let decision = answer(&switch, &Told { prices, ..Told::default() }).unwrap();
        said(&bar(), |words| words.others(&decision).map(seen))
    };
    // 40 of them, each 0.50 more, or 0.25 less.
    let more = "Those who already buy Large pay a price you changed too: $20.00 more per week, counted here.";
    let less = "Those who already buy Large pay a price you changed too: $10.00 less per week, counted here.";
    assert_eq!([others("9.5"), others("8.75"), others("9")], [Some(more.to_string()), Some(less.to_string()), None]);
    // Nobody buys what is not sold yet.
    let huge = Question::Switch { from: container_id(1), to: container_id(3) };
    let prices = vec![(OfferId { drink: drink_id(1), container: container_id(3) }, money("20"))];
    let decision = answer(&huge, &Told { prices, ..Told::default() }).unwrap();
    assert_eq!(said(&bar(), |words| words.others(&decision)), None);
}

#[test]
fn dropping_a_size() {
    // 60 * 4.00 = 240.00 if all stay, so 180 / 240 = 75 % of them.
    assert_eq!(
        judged(&drop_small(), &Told::default()),
        ["It pays if 75 of 100 buyers take the Large", "If all 60 buyers take the Large, you earn $60.00 more a week."]
    );
    // 40 * 3.00 = 120.00 against 160.00.
    assert_eq!(
        judged(&Question::Drop { size: container_id(2) }, &Told::default()),
        ["With today’s buyers, it cannot pay", "Even if all 40 buyers take the Small, you lose $40.00 a week."]
    );
    // 190.00 saved with a size: more than the 180.00 of all its buyers.
    let saved = Told { keeping: money("190"), ..Told::default() };
    assert_eq!(judged(&drop_small(), &saved)[0], "It pays even if every buyer leaves");
    // (180 - 170) / 240 = 4.2 %, up to a whole buyer.
    let nearly = Told { keeping: money("170"), ..Told::default() };
    assert_eq!(judged(&drop_small(), &nearly)[0], "It pays if 5 of 100 buyers take the Large");
}

/// The bar with a further drink in the small size at 6.00, of which 10.4 are sold a week, and in a large one at
/// this price.
fn with_another(large: Option<&str>) -> Book {
    let mut book = bar();
    let sold = |container, price: &str, weekly: &str| {
        Record::Offer(Offer { weekly: Some(exact(weekly)), ..offer(2, container, Some(price)) })
    };
    let other = Record::Drink(Drink { name: "Fig Alley".into(), ..drink(2, "300 mL", [line(1, 1, "300 mL")]) });
    let large = large.map(|price| sold(2, price, "0"));
    for record in [other, sold(1, "6", "10.4")].into_iter().chain(large) {
        book.apply(&Edit::Put(record)).unwrap();
    }
    book
}

#[test]
fn those_who_cannot_stay_are_told_apart() {
    // (60 + 10.4) * 3.00 = 211.20 against 60 * 4.00 = 240.00: 88 % of those who can stay.
    let book = with_another(None);
    let (ledger, told, day) = (Ledger::of(&book), Told::default(), day("2026-11-27"));
    let decision = MenuToday::of(&book, &ledger, Scope::Menu, &told, day).unwrap().answer(&drop_small()).unwrap();
    let best = "If all 60 buyers who can stay do, you earn $28.80 more a week. 10 buyers leave.";
    let all = findings(&book, &ledger, &told, None, None, day).unwrap();
    said(&book, |words| {
        assert_eq!(words.verdict(&decision), "It pays if 88 of 100 buyers who can stay do");
        assert_eq!(seen(words.at_best(&decision)), best);
        let found: Vec<_> = all.iter().map(|finding| words.finding(finding)).collect();
        let drop = "Dropping the Small pays if 88 of 100 who can take another size do";
        let faced = "60 of those who stay pay $3.00 more for 200 mL more.";
        assert!(
            found.iter().any(|(said, about)| said == drop && seen(about.as_str()) == [best, faced].join(" ")),
            "{found:?}"
        );
    });
}

#[test]
fn buyers_who_face_several_prices_are_told_by_the_most() {
    // The further drink's buyers would pay 2.00 more: 10 of 70, both of whole ones.
    let book = with_another(Some("8"));
    let all = findings(&book, &Ledger::of(&book), &Told::default(), None, None, day("2026-11-27")).unwrap();
    let abouts: Vec<String> = said(&book, |words| all.iter().map(|it| seen(words.finding(it).1)).collect());
    // From 6.00 to 9.00 and to 8.00: 50 % and 33.3 % more.
    let faced = "If all 70 buyers take the Large, you earn $60.00 more a week. \
                 60 of those who stay pay $3.00 more for 200 mL more. Across drinks, they pay 33% more to 50% more.";
    assert!(abouts.iter().any(|about| about == faced), "{abouts:?}");
}

#[test]
fn switching_a_size() {
    let (small, large) = (container_id(1), container_id(2));
    // 25 % of 60 may leave.
    let up = Question::Switch { from: small, to: large };
    assert_eq!(judged(&up, &Told::default())[0], "It pays if you lose no more than 15 buyers a week");
    // 160 / 120 = 133.3 % of 40: 13.3 more, 14 whole ones.
    let down = Question::Switch { from: large, to: small };
    assert_eq!(judged(&down, &Told::default())[0], "You need 14 more buyers a week, or you earn less");
    // At 7.00, a small one leaves 4.00 as well.
    let same = Told { prices: vec![(offer_id(1, 1), money("7"))], ..Told::default() };
    let needs = answer(&down, &same).unwrap();
    assert!(needs.verdict.can_pay(), "{needs:?}");
}

#[test]
fn adding_a_size() {
    // In 1 L at 15.00 it leaves 5.00. Of 10 buyers, all new: 50.00; each who would have bought a large one costs
    // 4.00, so it pays if all of them would have. At 13.00, 3.00 each: 30 / 40 of them.
    let add = Question::Add { size: container_id(3), taken_from: None };
    let told = |price| Told {
        prices: vec![(offer_id(1, 3), money(price))],
        weekly: vec![(offer_id(1, 3), exact("10"))],
        ..Told::default()
    };
    assert_eq!(
        judged(&add, &told("15")),
        [
            "It pays even if every buyer comes from another size",
            "If all 10 buyers are new, you earn $50.00 more a week."
        ]
    );
    assert_eq!(judged(&add, &told("13"))[0], "It pays if at most 75 of 100 buyers come from another size");
    let dear = Told { keeping: money("60"), ..told("15") };
    assert_eq!(judged(&add, &dear), ["It cannot pay", "Even if all 10 buyers are new, you lose $10.00 a week."]);
    let why = answer(&add, &Told::default()).unwrap_err();
    let missing = "Weekly sales are missing. Type how many you sell, or expect to sell.";
    assert_eq!(said(&bar(), |words| words.no_answer(&why)), missing);
}

#[test]
fn profit_now_and_then() {
    let shown = |now, then| said(&bar(), |words| words.gain_shown(money(now), money(then)));
    let said = |now, then| said(&bar(), |words| words.now_and_then(money(now), money(then)).map(seen));
    assert_eq!(said("546", "558.604"), ["$546.00", "$558.60", "+$12.60"]);
    assert_eq!(said("546", "529.2"), ["$546.00", "$529.20", "−$16.80"]);
    // 1,108.4 and 901.6 differ by 206.8, the figures that stand there by 206.
    assert_eq!(said("1108.4", "901.6"), ["$1,108", "$902", "−$206"]);
    assert_eq!(said("999.999", "1000"), ["$1,000", "$1,000", "$0"]);
    // What is not to be seen is no gain: nobody earns $0 more.
    assert_eq!((shown("999.999", "1000"), shown("1.004", "1.001")), (Money::ZERO, Money::ZERO));
    assert_eq!(shown("546", "558.604"), money("12.6"));
}

#[test]
fn what_buyers_see() {
    let decision = answer(&drop_small(), &Told::default()).unwrap();
    let customer = decision.customer().unwrap();
    said(&bar(), |words| {
        assert_eq!(seen(words.faced(&customer)), "They pay $3.00 more for 200 mL more.");
        // 6.00 to 9.00; 2.00 to 1.80 per 100 mL.
        assert_eq!(seen(words.seen_change(customer.change)), "50% more");
        assert_eq!(seen(words.seen_change(customer.per_volume_change)), "10% less");
        assert_eq!(seen(words.seen_change(share("0.001"))), "The same");
        // 82.1 of those who must stay are 83, of those who may come from other sizes 82.
        let speaker = speaker(System::Metric);
        let even = |question| even_at(share("0.821"), question, &speaker);
        let add = Question::Add { size: container_id(3), taken_from: None };
        assert_eq!((even(&drop_small()), even(&add)), ("even at 83".into(), "even at 82".into()));
        // The same wherever it is said; no number where no share of today's buyers would do, or any would.
        assert_eq!(
            (even_whole(share("0.67"), &add), even_whole(share("0.670001"), &drop_small())),
            (exact("67"), exact("68"))
        );
        let short = |at: &str, question: &Question| even_short(share(at), question, &speaker);
        assert_eq!(
            (short("0.821", &drop_small()), short("1.23", &drop_small())),
            ("even at 83".into(), "over 100".into())
        );
        assert_eq!((short("3.61", &add), short("-0.2", &add)), (String::new(), String::new()));
        // (180 - 0) / 240.
        assert_eq!(
            seen(words.math(&decision, decision.break_even().unwrap().unwrap())),
            "($180.00 today − $0.00 with no buyer left) ÷ $240.00 that buyers bring if all stay = 75.0%."
        );
    });
}

#[test]
fn where_a_change_tips() {
    // 0.75 = 1.5^e * (5/3)^(-e/4): e = ln 0.75 / (ln 1.5 - ln(5/3) / 4) = -1.0359, 1 - 1.1^e = 9.4 % (Python 3).
    let tips = |question: &Question| {
        let decision = answer(question, &Told::default()).unwrap();
        let tipping = decision.tipping().unwrap();
        said(&bar(), |words| words.tipping(&tipping, &decision.verdict))
    };
    assert_eq!(tips(&drop_small()), "It pays if a price 10% higher loses fewer than 9 of 100 buyers.");
    // ln(4/3) / (ln(2/3) - ln(3/5) / 4): the same point from the other side, where a price 10 % lower draws
    // 0.9^-1.0359 - 1 = 11.5 % (Python 3).
    let down = Question::Switch { from: container_id(2), to: container_id(1) };
    assert_eq!(tips(&down), "It pays if a price 10% lower draws more than 12 new buyers for each 100.");
    // What cannot pay with the buyers of today does not pay after all: it needs others. 160 / 120 = 133.3 %.
    assert_eq!(
        tips(&Question::Drop { size: container_id(2) }),
        "You would need 134 buyers for each 100 today. \
         A price 10% lower must draw more than 12 for each 100."
    );
}

#[test]
fn what_is_kept_says_what_its_sales_assume() {
    let (small, large) = (container_id(1), container_id(2));
    let add = Question::Add { size: large, taken_from: None };
    let switch = Question::Switch { from: small, to: large };
    said(&bar(), |words| {
        let named = |question: &Question, at: &str| words.name_with("Drop the Small", question, share(at));
        assert_eq!(named(&drop_small(), "1"), "Drop the Small, 100 of 100 stay");
        assert_eq!(named(&drop_small(), "0.4"), "Drop the Small, 40 of 100 stay");
        assert_eq!(named(&Question::Keep { sizes: vec![large] }, "0.4"), "Drop the Small, 40 of 100 stay");
        assert_eq!(named(&add, "0.5"), "Drop the Small, 50 of 100 from other sizes");
        assert_eq!(named(&switch, "1.2"), "Drop the Small, 120 buyers per 100");
        let assumes = |question: &Question, at: &str| words.assumes(question, share(at));
        assert_eq!(
            assumes(&drop_small(), "1"),
            "Weekly sales here assume 100 of 100 buyers stay. You have not made these sales yet."
        );
        assert!(assumes(&add, "0.5").contains("with 50 of 100 from other sizes"));
        assert!(assumes(&switch, "1.2").contains("120 buyers for each 100 today"));
    });
}

#[test]
fn people_are_whole() {
    let whole = |number: &str| people(exact(number));
    assert_eq!(["145.6", "0.2", "0", "926.5"].map(whole), ["146", "1", "0", "927"].map(exact));
}

#[test]
fn a_plan_by_the_owners_guess() {
    let plans = with_menu(&bar(), &Told::default(), |menu| menu.plans()).unwrap();
    let (small, large) = (plan(&plans, &[1]), plan(&plans, &[2]));
    let guess = |plan: &Plan, stay| plan.against(&plans.today, &Answered::of_ten(exact(stay)).unwrap()).unwrap();
    said(&bar(), |words| {
        // All of the 60 take the large one: 60.00 more. Half of them would be lost: 1.1^e = 0.5 is e = -7.27, and
        // 13.3 % take it: 180.00 - 31.84 (Python 3).
        assert_eq!(
            seen(words.guess(&guess(&large, "10"))),
            "By your guess, 100 of 100 stay: about $60.00 more a week."
        );
        assert_eq!(seen(words.guess(&guess(&large, "5"))), "By your guess, 13 of 100 stay: about $148.16 less a week.");
        assert_eq!(
            seen(words.plan_guess(&large, &guess(&large, "10"))),
            "By your guess, Large earns about $60.00 more a week"
        );
        // Down from 9.00 to 6.00 a price that matters little draws few, one that matters much draws many: of 40, 40 *
        // (2/3 * (5/3)^(1/4))^e, which is 46.4 for e = ln 0.95 / ln 1.1 and 76.6 for ln 0.8 / ln 1.1 (Python 3). Each
        // brings 3.00, and the 40 bring 160.00 today.
        assert_eq!(
            seen(words.guess(&guess(&small, "9.5"))),
            "By your guess, 40 buyers become 46: about $20.65 less a week."
        );
        assert_eq!(
            seen(words.guess(&guess(&small, "8"))),
            "By your guess, 40 buyers become 77: about $69.93 more a week."
        );
    });
}

#[test]
fn what_the_numbers_say() {
    let found = |point: Option<Money>, answered: Option<Answered>| {
        let (book, told) = (bar(), Told::default());
        let all = findings(&book, &Ledger::of(&book), &told, point, answered, day("2026-11-27")).unwrap();
        let pair = |(said, about): (String, String)| (seen(said), seen(about));
        said(&book, |words| all.iter().map(|finding| pair(words.finding(finding))).collect::<Vec<_>>())
    };
    let pair = |said: &str, about: &str| (said.to_string(), about.to_string());
    let turns = "If a price 10% higher loses over 9 of 100 buyers, smaller sizes earn more";
    let known = [
        pair(
            "Dropping the Large cannot pay with today’s buyers",
            "Even if all 40 buyers take the Small, you lose $40.00 a week.",
        ),
        pair(
            "Dropping the Small pays if 75 of 100 buyers take the Large",
            "If all 60 buyers take the Large, you earn $60.00 more a week. They pay $3.00 more for 200 mL more.",
        ),
        pair(turns, "You have not said how your customers react."),
    ];
    assert_eq!(found(None, None), known);
    // Half leave: far over the tipping point. None leaves: under it.
    let first = |stay: &str| found(None, Answered::of_ten(exact(stay))).remove(0);
    assert_eq!(first("5"), pair(turns, "By your own answer, smaller sizes earn more."));
    assert_eq!(first("10"), pair(turns, "By your own answer, larger sizes earn more."));
    // By that answer the verdicts turn, and say so: e is -7.27, 40 * (2/3)^e * (3/5)^(-e/4) = 301.5, each at 3.00 for
    // 160.00; of the 60 13.3 % take the large one (Python 3).
    let turned = found(None, Answered::of_ten(exact("5")));
    let guessed = [
        pair(
            "By your guess, dropping the Small does not pay",
            "By your guess, 13 of 100 stay: about $148.16 less a week. \
             If all 60 buyers take the Large, you earn $60.00 more a week. They pay $3.00 more for 200 mL more.",
        ),
        pair(
            "By your guess, dropping the Large pays",
            "By your guess, 40 buyers become 302: about $744.61 more a week. \
             Even if all 40 buyers take the Small, you lose $40.00 a week.",
        ),
    ];
    assert_eq!(turned.get(1..), Some(guessed.as_slice()));
    let agreed = found(None, Answered::of_ten(exact("10")));
    assert!(agreed.iter().any(|(said, _)| *said == known[0].0), "what it confirms stands as it was: {agreed:?}");
    // Half of the price is to be left of 3.00: 6.00 for the small one.
    let under = found(Some(money("5")), None).pop().unwrap();
    let needs = "Mango Lane, Small needs $6.00 to reach your target.";
    assert_eq!(under, pair("1 of 1 drinks misses your target at $5.00 in every size", needs));
}

/// The plan of these sizes.
fn plan(plans: &Plans, sizes: &[u64]) -> Plan {
    let sizes: Vec<_> = sizes.iter().map(|id| container_id(*id)).collect();
    plans.pays.iter().chain(&plans.cannot_pay).find(|plan| plan.sizes == sizes).unwrap().clone()
}

#[test]
fn how_many_sizes() {
    let plans = with_menu(&bar(), &Told::default(), |menu| menu.plans()).unwrap();
    let (small, large) = (plan(&plans, &[1]), plan(&plans, &[2]));
    said(&bar(), |words| {
        assert_eq!(words.plan_pays(&large), "Large pays if 75 of 100 others stay");
        assert_eq!(seen(words.plan_about(&large)), "40% choose these today. 1 card.");
        assert_eq!((words.plan_needs(&large), words.plan_needs(&small)), ("75 of 100".into(), "over 100".into()));
        assert_eq!(
            seen(words.of_count(&large, None)),
            "One size: Large, chosen by 40% today. Pays if 75 of 100 others stay."
        );
        assert_eq!(seen(words.of_count(&small, None)), "One size: Small, chosen by 60% today. Cannot pay.");
        // What the owner's answer has pay does not cannot pay.
        let guess = small.against(&plans.today, &Answered::of_ten(exact("8")).unwrap()).unwrap();
        assert_eq!(
            seen(words.of_count(&small, Some(&guess))),
            "One size: Small, chosen by 60% today. By your guess, 40 buyers become 77: about $69.93 more a week."
        );
        let today = "Today’s two sizes earn $340.00 a week before rent and power.";
        assert_eq!(seen(words.plan_today(&plans.today)), today);
    });
}

#[test]
fn how_far_weeks_swing() {
    let swing = Swing { weeks: 8, mean: money("340"), deviation: money("25") };
    let about = "Over 8 weeks, profit swings by about $25.00 from week to week.";
    said(&bar(), |words| {
        assert_eq!(seen(words.swing(&swing, money("100"), money("160"))), about);
        // The difference is that of the figures beside it: 100.00 and 89.99.
        let hidden = format!("{about} A difference of $10.01 cannot be seen in one week.");
        assert_eq!(seen(words.swing(&swing, money("100.004"), money("89.99"))), hidden);
    });
}

#[test]
fn why_there_is_no_answer() {
    let why = |why: NoAnswer| said(&bar(), |words| words.no_answer(&why));
    let (small, offers) = (container_id(1), vec![offer_id(1, 1)]);
    let weeks = "Enter at least two weeks of sales to see how far weeks swing.";
    assert_eq!(why(NoAnswer::OneWeek), weeks);
    assert_eq!(why(NoAnswer::OneSize(small)), "You sell only the Small. Choose a size to add.");
    let not_sold = "None of these drinks is sold in the Small. Choose a size you sell.";
    assert_eq!(why(NoAnswer::NotSold(small)), not_sold);
    assert_eq!(why(NoAnswer::SameSize(small)), "Both sizes are the Small. Choose a different one.");
    let nothing = "Mango Lane, Small earns nothing at its price. Type a higher price.";
    assert_eq!(why(NoAnswer::NothingLeft(offers.clone())), nothing);
    let nobody = "None of these drinks is sold in another size, so no buyer can stay. You would lose $12.50 a week.";
    assert_eq!(seen(why(NoAnswer::NobodyCanStay { offers: offers.clone(), lost: money("12.5") })), nobody);
    assert_eq!(why(NoAnswer::NoPrice(offers)), "Mango Lane, Small has no price. Type the price you would ask.");
}

#[test]
fn what_a_change_does_to_the_menu() {
    let book = bar();
    let becomes = |was: Option<&Offer>, then: Option<&Offer>| -> Vec<String> {
        said(&book, |words| words.becomes(was, then)).into_iter().map(seen).collect()
    };
    let (small, none) = (book.offer(offer_id(1, 1)).unwrap(), Vec::<String>::new());
    assert_eq!(becomes(Some(small), Some(small)), none);
    assert_eq!(becomes(Some(small), None), ["Mango Lane, Small: no longer sold."]);
    let huge = Offer { weekly: Some(exact("12")), ..offer(1, 3, Some("15")) };
    assert_eq!(becomes(None, Some(&huge)), ["Mango Lane, Huge: added at $15.00, 12 a week."]);
    let fewer = Offer { price: Some(money("6.5")), weekly: Some(exact("50")), ..small.clone() };
    assert_eq!(
        becomes(Some(small), Some(&fewer)),
        ["Mango Lane, Small: $6.50 instead of $6.00.", "Mango Lane, Small: 50 a week instead of 60."]
    );
}

#[test]
fn what_it_costs_once() {
    let cup = Packaging { name: "Cup".into(), ..vessel(1, []) };
    let book = book(settings(), [Record::Packaging(cup)]);
    let order = |packs: &str, cost: Option<&str>, in_use| {
        let order = FirstOrder { packaging: packaging_id(1), packs: exact(packs), cost: cost.map(money), in_use };
        seen(said(&book, |words| words.first_order(&order)))
    };
    assert_eq!(order("3", Some("135"), false), "Cup: 3 packs to start, $135.00.");
    assert_eq!(order("1", Some("135"), false), "Cup: 1 pack to start, $135.00.");
    assert_eq!(order("3", Some("135"), true), "Cup: another size on your menu uses this already, so no cost here.");
    assert_eq!(order("1", None, false), "Cup: no case price yet, so not counted. Enter one in Buying.");
    let left = LeftOver { packaging: packaging_id(1), pieces: exact("40"), cost: Some(money("8")) };
    assert_eq!(seen(said(&book, |words| words.left_over(&left))), "Cup: $8.00 of leftover stock.");
}

#[test]
fn drinks_under_a_price() {
    // Half of the price is to be left: 3.00 of ingredients take 6.00, 5.00 take 10.00.
    let book = bar();
    let offers = [offer_id(1, 1), offer_id(1, 2)];
    let below = |price| below_price(&book, &Ledger::of(&book), &offers, money(price)).unwrap();
    let speaker = speaker(System::Metric);
    let at = below("7");
    let lines: Vec<String> = at.rows.iter().map(|row| seen(spare(row, &speaker))).collect();
    assert_eq!(lines, ["$3.00 short", "$1.00 to spare"]);
    let short = "Farthest off is Mango Lane, Large, $3.00 short before tax, $3.00 with tax.";
    assert_eq!(seen(tightest(at.tightest().unwrap(), &book, &speaker)), short);
    let all = below("11.505");
    let spare = "Tightest is Mango Lane, Large, with $1.50 to spare before tax, $1.50 with tax.";
    assert_eq!(seen(tightest(all.tightest().unwrap(), &book, &speaker)), spare);
    // Of those that fit the tightest, then those that do not, then those that are not looked at.
    let said = |below: &BelowPrice, without: &[OfferId]| {
        price_points::said(below, without, &book, &speaker).into_iter().map(seen).collect::<Vec<_>>()
    };
    let fits = "Tightest is Mango Lane, Small, with $1.00 to spare before tax, $1.00 with tax.";
    let missed = "Below your target at this price: Mango Lane, Large.";
    let without = "Not counted: Mango Lane, Huge (no price yet).";
    assert_eq!(said(&at, &[offer_id(1, 3)]), [fits, missed, without]);
    assert_eq!(said(&all, &[]), [spare]);
    assert_eq!(said(&below("5"), &[])[0], "Farthest off is Mango Lane, Large, $5.00 short before tax, $5.00 with tax.");
}

/// 300 mL of base at 2.00 and 100 mL of mango at 10.00 a litre, in a cup at 0.20, sold at 5.60.
fn smoothies() -> Book {
    let named = |id, name: &str, price| {
        Record::Ingredient(Ingredient { name: name.into(), ..ingredient(id, [pack(1, "1 L", price)]) })
    };
    let smoothie = drink(1, "400 mL", [line(1, 1, "100 mL"), line(2, 2, "300 mL")]);
    book(
        Settings { target: share("0.5"), units: System::Metric, ..settings() },
        [
            named(1, "Mango", "10"),
            named(2, "Base", "2"),
            Record::Packaging(Packaging { name: "Cup".into(), ..vessel(1, [pack(1, "10 ea", "2")]) }),
            Record::Container(Container { set: vec![use_of(1, "1")], ..container(1, "400 mL") }),
            Record::Drink(smoothie),
            Record::Offer(offer(1, 1, Some("5.6"))),
        ],
    )
}

fn gives_up(book: &Book, price: &str) -> Vec<String> {
    let at = at_point(book, offer_id(1, 1), money(price)).unwrap();
    give_up(&at, book, &speaker(System::Metric)).into_iter().map(seen).collect()
}

#[test]
fn what_a_price_asks_a_recipe_to_give_up() {
    // Ingredients of 1.60 and a cup of 0.20: see the engine's own tests for these figures.
    let book = smoothies();
    assert_eq!(gives_up(&book, "4"), ["This fits. You can spend $0.20 more on ingredients."]);
    assert_eq!(gives_up(&book, "3.6"), ["This fits, with nothing to spare."]);
    assert_eq!(
        gives_up(&book, "3"),
        [
            "Save $0.30 on ingredients: 18.8% of the $1.60 they cost now.",
            "Or pour 75 mL less: 325 mL instead of 400 mL.",
            "Start with Mango ($1.00). Use 44.5% less, and let the rest of the recipe fill the size.",
        ]
    );
    assert_eq!(
        gives_up(&book, "1.8")[2],
        "Start with Mango ($1.00). Less of this alone is not enough, as the rest fills its place."
    );
    assert_eq!(
        gives_up(&book, "0.3"),
        [
            "This price leaves nothing for ingredients. Other costs and your target are $0.05 over. Raise the price, or use a cheaper container.",
            "No smaller fill fits. Costs that stay the same in every size are too high.",
            "Start with Mango ($1.00). Less of this alone is not enough, as the rest fills its place.",
        ]
    );
}

#[test]
fn what_is_to_be_saved_is_what_cost_and_limit_differ_by() {
    // At 3.59, 1.595 of ingredients may be spent less 0.20 of cup: 0.005 too much; 398.75 mL.
    let said = gives_up(&smoothies(), "3.59");
    assert_eq!(said[0], "Save $0.01 on ingredients: 0.3% of the $1.60 they cost now.");
    assert_eq!(said[1], "Or pour 2 mL less: 398 mL instead of 400 mL.");
    // At 4.01, 2.005 - 0.20 - 1.60 = 0.205 are to spare: no cent more than there is.
    assert_eq!(gives_up(&smoothies(), "4.01"), ["This fits. You can spend $0.20 more on ingredients."]);
}

#[test]
fn free_ingredients_save_nothing() {
    let mut book = smoothies();
    for id in [1, 2] {
        let free = ingredient(id, [pack(1, "1 L", "0")]);
        book.apply(&Edit::Put(Record::Ingredient(free))).unwrap();
    }
    let toll = Drink { treatment_fee: Money::from_major(Exact::ONE), ..book.drink(drink_id(1)).unwrap().clone() };
    book.apply(&Edit::Put(Record::Drink(toll))).unwrap();
    assert_eq!(
        gives_up(&book, "2"),
        [
            "This price leaves nothing for ingredients. Other costs and your target are $0.20 over. Raise the price, or use a cheaper container.",
            "No smaller fill fits. Costs that stay the same in every size are too high.",
        ]
    );
}
