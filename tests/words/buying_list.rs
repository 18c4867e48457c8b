//! What is said of the buying list.

use brimwright::book::{
    Book, BuyingList, Container, Drink, Edit, Goods, Ingredient, IngredientId, Pack, PackId, Packaging, PackagingId,
    Record, Settings, ToBuy,
};
use brimwright::buying::buying_list::{Carried, Finished, Here, Listed, PricePaid, Proposal, Proposed, Quote, Totals};
use brimwright::drink::ledger::{OfferChange, OfferError, OfferStatus, Snapshot};
use brimwright::drink::make::Unmade;
use brimwright::drink::yields::YieldError;
use brimwright::foundation::measure::System;
use brimwright::words::buying_list::Buying;
use brimwright::words::sharing::{Sharing, sharing};

use crate::support::{container, day, drink, exact, measure, money, offer_id, pack, share, speaker};

const GINGER: Goods = Goods::Ingredient(IngredientId::from_random(1));
const KALE: Goods = Goods::Ingredient(IngredientId::from_random(2));
const LID: Goods = Goods::Packaging(PackagingId::from_random(1));

/// Ginger of a supplier, kale of another with a least order, lids of nobody.
fn book() -> Book {
    let mut book = Book::new(Settings::new("My book"));
    let of = |supplier: &str, pack: Pack| Pack { supplier: supplier.into(), ..pack };
    let ginger = [of("Tansywold", pack(1, "30 lb", "52")), of("Quillhaven", pack(2, "30 lb", "49"))];
    let kale = Pack { at_a_time: exact("2"), surcharge: money("1.5"), ..of("Quillhaven", pack(1, "20 lb", "26")) };
    let ingredient =
        |id, name: &str, packs| Ingredient { packs, ..Ingredient::named(IngredientId::from_random(id), name) };
    let lid =
        Packaging { packs: vec![pack(1, "1000 ea", "43")], ..Packaging::named(PackagingId::from_random(1), "Lid") };
    let bottle = Container { name: "Bottle".into(), ..container(1, "1 L") };
    let kick = Drink { name: "Kick".into(), ..drink(1, "1 L", []) };
    for record in [
        Record::Container(bottle),
        Record::Drink(kick),
        Record::Ingredient(ingredient(1, "Ginger", ginger.to_vec())),
        Record::Ingredient(ingredient(2, "Kale", vec![kale])),
        Record::Packaging(lid),
    ] {
        book.apply(&Edit::Put(record)).expect("a record that holds");
    }
    book
}

fn said(say: impl FnOnce(&Buying) -> String) -> String {
    say(&Buying { book: &book(), speaker: &speaker(System::UsCustomary) })
}

fn quote(pack: u64, needed: &str, here: Here, packs: &str, left_over: &str, cost: &str) -> Quote {
    let pack = PackId::from_random(pack);
    Quote { pack, needed: measure(needed), here, packs: exact(packs), left_over: measure(left_over), cost: money(cost) }
}

fn counted(text: &str, on: &str) -> Here {
    Here::Counted { amount: measure(text), day: day(on) }
}

fn proposed(goods: Goods, quote: &Quote) -> String {
    said(|words| words.proposed(goods, quote, day("2026-11-26")))
}

#[test]
fn what_is_missing() {
    assert_eq!(
        proposed(GINGER, &quote(1, "40 lb", counted("12 lb", "2026-11-25"), "1", "2 lb", "52")),
        "40.00\u{a0}lb needed, 12.00\u{a0}lb here, counted 25 Nov 2026: 1 × 30 lb from Tansywold, 2.00\u{a0}lb left over."
    );
    assert_eq!(
        proposed(GINGER, &quote(1, "4 lb", counted("12 lb", "2026-11-26"), "0", "8 lb", "0")),
        "4.00\u{a0}lb needed, 12.00\u{a0}lb here, counted today: enough, 8.00\u{a0}lb left over."
    );
    assert_eq!(
        proposed(KALE, &quote(1, "10 lb", Here::NotCounted, "2", "30 lb", "55")),
        "10.00\u{a0}lb needed, none counted here: 2 × 20 lb from Quillhaven (at least 2 at a time), 30.00\u{a0}lb left over."
    );
    assert_eq!(
        proposed(LID, &quote(1, "10 ea", Here::NotCounted, "1", "990 ea", "43")),
        "10\u{a0}ea needed, none counted here: 1 × 1,000 ea, 990\u{a0}ea left over."
    );
    let lacks = YieldError::NoPieceWeight(IngredientId::from_random(1));
    assert_eq!(
        proposed(GINGER, &quote(1, "40 lb", Here::Unusable { lacks, day: day("2026-11-25") }, "2", "20 lb", "104")),
        "40.00\u{a0}lb needed: 2 × 30 lb from Tansywold, 20.00\u{a0}lb left over. What is here, counted 25 Nov 2026, is not taken off: Ginger is counted in pieces but no piece has a weight. Enter the weight of one as bought."
    );
}

#[test]
fn what_other_packs_would_save() {
    let (now, other) = (
        quote(1, "40 lb", Here::NotCounted, "2", "20 lb", "104"),
        quote(2, "40 lb", Here::NotCounted, "2", "20 lb", "98"),
    );
    let saves = |now: &Quote, other: &Quote| said(|words| words.saves(GINGER, now, other).unwrap_or_default());
    assert_eq!(saves(&now, &other), "2 × 30 lb from Quillhaven would cost $6.00 less.");
    assert_eq!(saves(&other, &now), "");
    assert_eq!(saves(&now, &now), "");
    let in_all = |now: &str, then: &str| said(|words| words.saves_in_all(money(now), money(then)));
    assert_eq!(in_all("104", "98"), "The cheapest packs for so much would cost $6.00 less in all.");
    assert_eq!(in_all("98", "98"), "No other packs would cost less for so much.");
}

#[test]
fn what_is_not_on_the_list() {
    assert_eq!(
        said(|words| words.without_pack(GINGER, None)),
        "Ginger has no pack. Enter what a pack holds and costs."
    );
    let lacks = YieldError::NoDensity(IngredientId::from_random(1));
    assert_eq!(
        said(|words| words.without_pack(GINGER, Some(lacks))),
        "Ginger is weighed in one place and poured by volume in another, so it needs a density. Enter grams per mL as it is in the drink."
    );
    let gone = offer_id(1, 1);
    assert_eq!(
        said(|words| words.left_out(gone, Unmade::NotOnTheMenu)),
        "Kick, Bottle: It is not on the menu in this size any more."
    );
    let stuck = Unmade::Stuck(OfferError::Cost(brimwright::drink::cost::CostError::NoPack(GINGER)));
    assert_eq!(
        said(|words| words.left_out(gone, stuck)),
        "Kick, Bottle: Ginger has no pack yet, so no cost. Enter in Buying what a pack holds and costs."
    );
    assert_eq!(said(|words| words.free(&[])), "");
    assert_eq!(said(|words| words.free(&[GINGER, LID])), "Not on the list, since it costs nothing: Ginger, Lid.");
    let sizes = |count| said(|words| words.without_number(count));
    assert_eq!(sizes(0), "");
    assert_eq!(sizes(1), "1 size has no weekly number and counts for nothing.");
    assert_eq!(sizes(3), "3 sizes have no weekly number and count for nothing.");
}

#[test]
fn counts_of_before_today() {
    let of = |days: &[Option<&str>]| {
        let line = |on: &Option<&str>| {
            let here = on.map_or(Here::NotCounted, |on| counted("1 lb", on));
            Proposed { goods: GINGER, quotes: vec![quote(1, "1 lb", here, "0", "0 lb", "0")] }
        };
        let proposal = Proposal { lines: days.iter().map(line).collect(), ..Proposal::default() };
        said(|words| words.old_counts(&proposal, day("2026-11-26")))
    };
    assert_eq!(of(&[None, Some("2026-11-26")]), "");
    assert_eq!(
        of(&[None, Some("2026-11-25")]),
        "1 count is from before today, the oldest of 25 Nov 2026. What was used since is not taken off."
    );
    assert_eq!(
        of(&[Some("2026-11-25"), Some("2026-11-02"), Some("2026-11-26")]),
        "2 counts are from before today, the oldest of 2 Nov 2026. What was used since is not taken off."
    );
}

fn line(goods: Goods, pack: u64, packs: &str) -> ToBuy {
    ToBuy { goods, pack: PackId::from_random(pack), packs: exact(packs), bought: false, paid: None }
}

#[test]
fn what_a_line_costs() {
    let of = |line: ToBuy| said(|words| words.line_cost(&Listed::of(words.book, line).unwrap()));
    assert_eq!(of(line(GINGER, 1, "1")), "asked $52.00");
    assert_eq!(of(line(GINGER, 1, "3")), "asked $52.00 each, $156.00 in all");
    assert_eq!(of(line(KALE, 1, "2")), "asked $26.00 + $1.50 each, $55.00 in all");
    assert_eq!(of(ToBuy { paid: Some(money("50")), ..line(GINGER, 1, "2") }), "paid $50.00 each, $100.00 in all");
    assert_eq!(of(line(GINGER, 9, "2")), "No price: type what you pay for one.");
    let packs = |goods, pack: u64, number: &str| {
        said(|words| {
            let found = words.book.packs(goods).iter().find(|it| it.id == PackId::from_random(pack));
            words.packs(exact(number), found)
        })
    };
    assert_eq!(packs(GINGER, 1, "2"), "2 × 30 lb");
    assert_eq!(packs(GINGER, 9, "1"), "1 pack, not quoted any more");
    assert_eq!(packs(GINGER, 9, "2.5"), "2.5 packs, not quoted any more");
    let choice = |goods| said(|words| words.choice(goods, PackId::from_random(1)));
    assert_eq!([choice(GINGER), choice(LID)], ["Ginger, 30 lb from Tansywold", "Lid, 1,000 ea"]);
}

#[test]
fn how_far_the_list_is() {
    let totals = |unpriced| Totals { all: money("120"), bought: money("34"), lines: 7, ticked: 3, unpriced };
    let of = |unpriced| said(|words| words.totals(&totals(unpriced)));
    assert_eq!(of(0), "$120.00: $34.00 ticked, $86.00 left.");
    assert_eq!(of(1), "$120.00: $34.00 ticked, $86.00 left. 1 line has no price.");
    assert_eq!(of(2), "$120.00: $34.00 ticked, $86.00 left. 2 lines have no price.");
    assert_eq!(said(|words| words.progress(&totals(0))), "3 of 7 ticked");
}

fn moved(before: OfferStatus, after: OfferStatus) -> OfferChange {
    let snapshot = |status, margin: &str| {
        Some(Snapshot { status, cost: None, margin: Some(share(margin)), suggested: None, price: None })
    };
    OfferChange { offer: offer_id(1, 1), before: snapshot(before, "0.701"), after: snapshot(after, "0.6894") }
}

#[test]
fn what_carrying_the_prices_does() {
    let paid = PricePaid { goods: GINGER, pack: PackId::from_random(1), was: money("52"), now: money("49.5") };
    assert_eq!(said(|words| words.price_paid(&paid)), "Ginger, 30 lb from Tansywold: $49.50 instead of $52.00");
    let of = |prices: usize, moves: &[OfferChange], not_quoted: &[Goods]| {
        let edit = Edit::Together(Vec::new());
        let carried = Carried { edit, prices: vec![paid; prices], not_quoted: not_quoted.to_vec() };
        said(|words| words.carried(&carried, moves))
    };
    let (holds, falls) =
        (moved(OfferStatus::OnTarget, OfferStatus::OnTarget), moved(OfferStatus::OnTarget, OfferStatus::UnderTarget));
    assert_eq!(of(0, &[], &[]), "No price differs from its quote; the quotes are dated today. No size moves.");
    assert_eq!(of(1, &[holds], &[]), "1 price changes. 1 size moves, none falls under target.");
    assert_eq!(of(2, &[falls, holds], &[]), "2 prices change. 2 sizes move, 1 falls under target.");
    assert_eq!(of(2, &[falls, falls], &[]), "2 prices change. 2 sizes move, 2 fall under target.");
    assert_eq!(
        of(1, &[], &[KALE]),
        "1 price changes. No size moves. Kale is not quoted in that pack any more: its price goes nowhere."
    );
}

#[test]
fn what_finishing_the_list_does() {
    let none = Finished {
        edit: Edit::Together(Vec::new()),
        added: 0,
        not_bought: 1,
        prices: Vec::new(),
        started_anew: Vec::new(),
        not_quoted: Vec::new(),
    };
    let of = |finished: &Finished| said(|words| words.finished(finished));
    assert_eq!(
        of(&none),
        "Nothing is ticked, so nothing is added to what is here; then the list is gone, with 1 line that is not ticked. Undo takes all of it back."
    );
    let paid = PricePaid { goods: GINGER, pack: PackId::from_random(1), was: money("52"), now: money("49.5") };
    assert_eq!(
        of(&Finished { added: 1, not_bought: 0, prices: vec![paid], ..none.clone() }),
        "What is ticked, 1 line, is added to what is here; 1 price paid goes into its quote; then the list is gone. Undo takes all of it back."
    );
    let lacks = YieldError::NoPieceWeight(IngredientId::from_random(1));
    assert_eq!(
        of(&Finished {
            added: 2,
            not_bought: 2,
            prices: vec![paid, paid],
            started_anew: vec![(GINGER, lacks)],
            not_quoted: vec![KALE],
            ..none
        }),
        "What is ticked, 2 lines, is added to what is here; 2 prices paid go into their quotes; then the list is gone, with 2 lines that are not ticked. Undo takes all of it back. Ginger: the count before cannot be added to, a new one starts with what was bought. Ginger is counted in pieces but no piece has a weight. Enter the weight of one as bought. Kale is not quoted in that pack any more: nobody knows how much was bought."
    );
}

#[test]
fn the_text_to_send() {
    let mut lines = vec![line(GINGER, 1, "2"), line(KALE, 1, "2"), line(GINGER, 2, "1"), line(LID, 1, "1")];
    lines[0].bought = true;
    let list = BuyingList { day: day("2026-11-26"), lines };
    let of = |prices| said(|words| words.text(&list, prices).unwrap());
    let expected = [
        "Buying list, 26 Nov 2026",
        "",
        "Quillhaven",
        "[ ] Ginger, 1 × 30 lb",
        "[ ] Kale, 2 × 20 lb",
        "",
        "Tansywold",
        "[x] Ginger, 2 × 30 lb",
        "",
        "No supplier",
        "[ ] Lid, 1 × 1,000 ea",
    ];
    assert_eq!(of(false).lines().collect::<Vec<_>>(), expected);
    let expected = [
        "Buying list, 26 Nov 2026",
        "",
        "Quillhaven: $104.00",
        "[ ] Ginger, 1 × 30 lb: $49.00",
        "[ ] Kale, 2 × 20 lb: $55.00",
        "",
        "Tansywold: $104.00",
        "[x] Ginger, 2 × 30 lb: $104.00",
        "",
        "No supplier: $43.00",
        "[ ] Lid, 1 × 1,000 ea: $43.00",
        "",
        "Altogether: $251.00",
    ];
    assert_eq!(of(true).lines().collect::<Vec<_>>(), expected);
}

#[test]
fn what_became_of_a_text() {
    assert_eq!(sharing(Sharing::PassedOn), "Handed to where you chose.");
    assert_eq!(sharing(Sharing::Closed), "Not shared: you closed the choice of where to.");
    assert_eq!(sharing(Sharing::Copied), "Copied. Paste it into a message.");
    assert_eq!(
        sharing(Sharing::ToCopy),
        "This browser neither shares nor copies by itself. The text stands below: select it and copy it."
    );
}
