//! What is said of suppliers' quotes.

use brimwright::book::{Book, DayError, Goods, Ingredient, Key, Pack, Record, Stage};
use brimwright::buying::quotes::{Age, Compared, Usable, compared, history};
use brimwright::drink::cost::CostError;
use brimwright::drink::ledger::{OfferChange, OfferStatus, Snapshot};
use brimwright::drink::yields::YieldError;
use brimwright::foundation::measure::{Date, Exact, Share, System};
use brimwright::words::quotes as words;

use crate::support::{
    amount, book_of_one_drink, day, ingredient, ingredient_id, money, offer_id, pack, pack_id, settings, share, speaker,
};

fn goods() -> Goods {
    Goods::Ingredient(ingredient_id(1))
}

fn with_packs(packs: impl IntoIterator<Item = Pack>) -> Book {
    crate::support::book(settings(), [Record::Ingredient(Ingredient { density: None, ..ingredient(1, packs) })])
}

fn from(supplier: &str, pack: Pack) -> Pack {
    Pack { supplier: supplier.into(), ..pack }
}

#[test]
fn the_amount_that_packs_are_compared_by() {
    let said = |stage, text: &str| words::per(Usable { stage, amount: amount(text) }, &speaker(System::UsCustomary));
    assert_eq!(said(Stage::Pressed, "1 fl oz"), "per fl oz of juice");
    assert_eq!(said(Stage::Trimmed, "1 lb"), "per lb trimmed");
    assert_eq!(said(Stage::Pressed, "100 mL"), "per 100 mL of juice");
    assert_eq!(said(Stage::AsBought, "1 lb"), "per lb as purchased");
    assert_eq!(said(Stage::SoakedOrBrewed, "1 fl oz"), "per fl oz soaked or brewed");
    assert_eq!(said(Stage::AsBought, "1 ea"), "per piece");
    let label =
        |stage, text: &str| words::label_per(Usable { stage, amount: amount(text) }, &speaker(System::UsCustomary));
    assert_eq!(label(Stage::AsBought, "1 lb"), "Per lb as purchased");
    assert_eq!(label(Stage::Trimmed, "1 lb"), "Per lb trimmed");
    assert_eq!(label(Stage::Pressed, "1 fl oz"), "Per fl oz of juice");
    assert_eq!(label(Stage::SoakedOrBrewed, "1 fl oz"), "Per fl oz soaked or brewed");
    assert_eq!(label(Stage::AsBought, "1 ea"), "Per piece");
}

#[test]
fn how_old_a_price_is() {
    let today = day("2026-11-26");
    let said = |age| words::age(age, today);
    assert_eq!(said(Age::Fresh(today)), "checked today");
    assert_eq!(said(Age::Fresh(day("2026-11-09"))), "quoted Nov 9, 2026");
    assert_eq!(said(Age::Old(day("2026-09-14"))), "needs a new price: quoted Sep 14, 2026");
    assert_eq!(said(Age::Undated), "no date");
    let in_column = |age| words::age_in_column(age, today);
    assert_eq!(in_column(Age::Fresh(today)), "checked today");
    assert_eq!(in_column(Age::Fresh(day("2026-11-09"))), "Nov 9, 2026");
    assert_eq!(in_column(Age::Old(day("2026-09-14"))), "needs a new price: quoted Sep 14, 2026");
}

/// An offer that moved to a margin of so many percent.
fn moved(drink: u64, from: OfferStatus, to: OfferStatus, percent: i64) -> OfferChange {
    let snapshot = |status, margin: i64| Snapshot {
        status,
        cost: Some(money("1")),
        covered: None,
        target: None,
        margin: Some(Share::from_fraction(Exact::new(margin, 2))),
        suggested: Some(money("4.5")),
        price: Some(money("4")),
    };
    OfferChange { offer: offer_id(drink, 1), before: Some(snapshot(from, 70)), after: Some(snapshot(to, percent)) }
}

const ON: OfferStatus = OfferStatus::OnTarget;
const UNDER: OfferStatus = OfferStatus::UnderTarget;

#[test]
fn what_fell_and_what_mends_the_worst() {
    let book = book_of_one_drink(settings(), "1", Some("4"));
    let name = book.name(Key::Offer(offer_id(1, 1)));
    let none = [moved(1, UNDER, UNDER, 50), moved(1, ON, ON, 66)];
    assert_eq!(
        (words::fell(&none, &book), words::worst(&none, &book, &speaker(System::UsCustomary))),
        (String::new(), String::new())
    );
    let one = [moved(1, ON, UNDER, 60), moved(1, UNDER, UNDER, 50)];
    assert_eq!(words::fell(&one, &book), format!("Now below target: {name}."));
    assert_eq!(
        words::worst(&one, &book, &speaker(System::UsCustomary)),
        format!("The lowest of these: {name} at 60.0%. Change the price from $4.00 to $4.50 to reach the target.")
    );
    let without = |snapshot: Snapshot| Snapshot { suggested: None, ..snapshot };
    let stuck = OfferChange { after: one[0].after.map(without), ..one[0] };
    assert_eq!(
        words::worst(&[stuck], &book, &speaker(System::UsCustomary)),
        format!("The lowest of these: {name} at 60.0%. No menu price alone reaches the target.")
    );
    let seven = [moved(1, ON, UNDER, 60); 7];
    let five = [name.as_str(); 5].join("; ");
    assert_eq!(words::fell(&seven, &book), format!("Now below target: {five} and 2 more."));
    assert_eq!(words::or("Buy it at $3.00.".into()), "Another way: Buy it at $3.00.");
}

#[test]
fn what_buying_another_pack_would_move() {
    let book = book_of_one_drink(settings(), "1", Some("4"));
    let name = book.name(Key::Offer(offer_id(1, 1)));
    let said = |moves: &[OfferChange]| words::would_move(moves, &book);
    assert_eq!(said(&[]), "No sizes would be affected.");
    assert_eq!(said(&[moved(1, ON, ON, 66)]), "1 size would be affected. None would drop below target.");
    assert_eq!(
        said(&[moved(1, ON, UNDER, 60), moved(1, ON, ON, 66)]),
        format!("2 sizes would be affected. Would drop below target: {name}.")
    );
    assert_eq!(
        said(&[moved(1, UNDER, ON, 70)]),
        format!("1 size would be affected. None would drop below target. Would be back on target: {name}.")
    );
}

fn current_pack(packs: impl IntoIterator<Item = Pack>) -> String {
    let book = with_packs(packs);
    words::current_pack(&compared(&book, goods()), goods(), &book, &speaker(System::UsCustomary))
}

#[test]
fn whether_the_pack_bought_is_the_cheapest() {
    let north = || from("North (invented)", pack(1, "10 lb", "20"));
    let south = || from("South (invented)", pack(2, "10 lb", "15"));
    assert_eq!(current_pack([south(), north()]), "No other pack costs less than your current pack.");
    // 15 / 20: a quarter less.
    assert_eq!(
        current_pack([north(), south()]),
        "South (invented), 10 lb costs 25.0% less than your current pack: $1.500 instead of $2.000."
    );
    let litre = || pack(3, "1 L", "3");
    assert_eq!(current_pack([litre(), south(), north()]), "Your current pack cannot be compared with the others.");
    let free = pack(4, "10 lb", "0");
    assert_eq!(
        current_pack([pack(5, "10 lb", "1"), free]),
        "10 lb costs 100.0% less than your current pack: $0.000 instead of $0.100."
    );
    assert_eq!(current_pack([]), "These packs cannot be compared yet.");
}

#[test]
fn how_much_more_a_pack_costs() {
    let said = |cost, more: Option<&str>| {
        words::above_cheapest(
            &Compared { pack: pack_id(1), cost, above_cheapest: more.map(share) },
            &speaker(System::UsCustomary),
        )
    };
    assert_eq!(said(Ok(money("1")), Some("0")), "lowest");
    assert_eq!(said(Ok(money("1")), Some("0.092")), "+9.2%");
    assert_eq!(said(Ok(money("0")), None), "free");
    assert_eq!(said(Ok(money("1")), None), "not free");
    assert_eq!(said(Err(CostError::Yield(YieldError::NoDensity(ingredient_id(1)))), None), "");
}

#[test]
fn why_a_price_cannot_be_dated_so() {
    let said = |error: fn(Date) -> DayError| words::day_error(error(day("2026-11-09")));
    assert_eq!(
        said(DayError::Taken),
        "You have a price from Nov 9, 2026. Choose another date, or remove that price first."
    );
    assert_eq!(
        said(DayError::NotAfter),
        "Your earlier price is from Nov 9, 2026. Choose a later date, or remove that price first."
    );
    assert_eq!(said(DayError::NotBefore), "Your current price is from Nov 9, 2026. Choose an earlier date.");
}

#[test]
fn what_was_asked_over_time() {
    let said = |heard: &[(&str, &str)]| {
        let mut quoted = pack(1, "40 lb", "0");
        for (on, price) in heard {
            quoted.quote(money(price), day(on));
        }
        words::history(&history(&quoted).expect("it was heard"), &speaker(System::UsCustomary))
    };
    assert_eq!(said(&[("2026-11-23", "38")]), "Quoted once: $38.00 on Nov 23, 2026.");
    let thrice = [("2026-09-21", "40"), ("2026-10-12", "36"), ("2026-11-23", "44")];
    // 44 / 40 and 36 / 40.
    assert_eq!(
        said(&thrice),
        "From $40.00 on Sep 21, 2026 to $44.00 on Nov 23, 2026, +10.0%. Lowest $36.00 on Oct 12, 2026, highest $44.00 on Nov 23, 2026."
    );
    assert_eq!(
        said(&thrice[..2]),
        "From $40.00 on Sep 21, 2026 to $36.00 on Oct 12, 2026, \u{2212}10.0%. Lowest $36.00 on Oct 12, 2026, highest $40.00 on Sep 21, 2026."
    );
    assert_eq!(
        said(&[("2026-10-05", "41.5"), ("2026-11-16", "41.5")]),
        "Always $41.50, first quoted Oct 5, 2026, last Nov 16, 2026."
    );
    assert_eq!(words::days_axis(day("2026-01-01"), day("2026-11-01")), "Day, 2026");
    assert_eq!(words::days_axis(day("2025-12-01"), day("2026-01-01")), "Day, 2025 to 2026");
    assert_eq!(brimwright::words::short_day(Date::FIRST), "Jan 1");
}
