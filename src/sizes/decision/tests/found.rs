//! What a book's numbers say of its sizes, and where a price would stand.

use super::*;
use crate::sizes::decision::{Answered, EarnsMore, Finding, Says, findings};
use crate::support::seen_price;

fn found(offers: &[Sold], point: Option<&str>, stay: Option<&str>) -> Vec<Finding> {
    let book = bar(offers);
    let answered = stay.map(|of_ten| Answered::of_ten(exact(of_ten)).unwrap());
    findings(&book, &Ledger::of(&book), &Told::default(), point.map(money), answered, today()).unwrap()
}

/// What is said, in short.
fn short(says: &Says) -> String {
    match says {
        Says::CannotDrop(decision) => format!("cannot drop {:?}", decision.rows[0].now.unwrap().offer.container),
        Says::DropPays(decision) => format!("drop {:?}", decision.rows[0].now.unwrap().offer.container),
        Says::OnlyPays { plan, .. } => format!("only {:?}", plan.sizes[0]),
        Says::TurnsOnPrice { .. } => "turns".into(),
        Says::NotUnder { cannot, of, .. } => format!("not under {cannot} of {of}"),
    }
}

#[test]
fn what_cannot_pay_goes_first_then_what_asks_least_of_buyers() {
    let found = found(&three_sizes(), Some("4"), None);
    assert!(found.iter().all(|finding| finding.kind == DrinkKind::Blended));
    let said: Vec<String> = found.iter().map(|finding| short(&finding.says)).collect();
    let size = |id| format!("{:?}", container_id(id));
    // The middle one loses 30 if all stay, the large one 10. The small may go at 66.7 %, the middle alone pays at
    // 80 %. The large alone would need (210 - 40) / (70 * 4) = 60.7 %, but the small one's buyers would have to
    // drink three times as much.
    let expected = [
        format!("cannot drop {}", size(2)),
        format!("cannot drop {}", size(3)),
        format!("drop {}", size(1)),
        format!("only {}", size(2)),
        "turns".into(),
        "not under 1 of 1".into(),
    ];
    assert_eq!(said, expected);
}

#[test]
fn nothing_is_said_of_buyers_who_would_turn_too_far() {
    // Twice the volume of the middle one for less than twice its price is near enough; at 10.81 it is not.
    let turned = |price: &'static str| {
        let offers = [(1, 2, Some("5.4"), Some("30")), (1, 3, Some(price), Some("10"))];
        found(&offers, None, None).iter().map(|finding| short(&finding.says)).collect::<Vec<_>>()
    };
    assert_eq!(turned("10.8").len(), 3, "either size, and what turns on a price");
    assert_eq!(turned("10.81"), Vec::<String>::new());
    // From 200 to 600 mL is three times as much.
    assert_eq!(found(&[(1, 1, Some("3.6"), Some("40")), (1, 3, Some("7"), Some("10"))], None, None), []);
}

#[test]
fn an_owners_answer_says_which_sizes_earn_more() {
    let turns = |stay: Option<&str>| {
        let found = found(&three_sizes(), None, stay);
        let says = found.into_iter().map(|finding| finding.says);
        let mut turns = says.filter_map(|says| match says {
            Says::TurnsOnPrice { least, most, earns_more } => Some((least, most, earns_more)),
            _ => None,
        });
        turns.next().unwrap()
    };
    let (least, most, unsaid) = turns(None);
    assert!(least < most && least.is_positive() && unsaid.is_none());
    assert_eq!(turns(Some("9.9")).2, Some(EarnsMore::Larger));
    assert_eq!(turns(Some("6")).2, Some(EarnsMore::Smaller));
    // Between small and middle ln(2/3) / (0.75 ln 1.5) is -4/3, so 11.9 %; from large to middle
    // ln(4/3) / (ln(5.4/8.8) + ln(2) / 4) is -0.913, so 8.3 %. One of ten lies between.
    assert_eq!((least.fraction().rounded(3), most.fraction().rounded(3)), (exact("0.083"), exact("0.119")));
    assert_eq!(turns(Some("9")).2, None);
}

#[test]
fn what_an_owners_answer_decides_goes_first() {
    let first = |stay| short(&found(&three_sizes(), None, stay)[0].says);
    assert_eq!(first(Some("6")), "turns");
    // An answer between the tipping points decides nothing.
    for open in [None, Some("9")] {
        assert!(first(open).starts_with("cannot drop"), "{open:?}");
    }
}

#[test]
fn nothing_is_found_where_nothing_is_sold_or_in_one_size() {
    assert_eq!(found(&[], Some("4"), None), []);
    assert_eq!(found(&[(1, 1, Some("3.6"), Some("40"))], Some("9"), None), []);
}

#[test]
fn a_price_stands_among_those_seen() {
    let mut book = bar(&three_sizes());
    for (id, size, price) in [(1, "200 mL", "4"), (2, "400 mL", "6"), (3, "800 mL", "9"), (4, "395 mL", "5.5")] {
        book.apply(&Edit::Put(Record::SeenPrice(seen_price(id, size, price)))).unwrap();
    }
    let menu = menu(&book, &Told::default());
    let at = menu.position(container_id(1), money("5")).unwrap().unwrap();
    assert_eq!((at.seen, at.at_size, at.size.millilitres()), (4, Some((1, money("4"), money("4"))), exact("200")));
    let above = at.against.unwrap().on_curve().unwrap().above;
    assert!(above > share("0.2") && above < share("0.3"), "{above:?}");
    assert_eq!(menu.position(container_id(3), money("5")).unwrap().unwrap().at_size, None);
    assert_eq!(menu.position(container_id(9), money("5")), Ok(None));
}
