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
fn a_row_says_what_whole_packs_are_for() {
    let row = |goods, quote: Quote| said(|words| words.row(goods, &quote));
    let one = quote(1, "4 lb", Here::NotCounted, "1", "26 lb", "52");
    assert_eq!(row(GINGER, one), "1 × 30 lb, 4.00\u{a0}lb needed");
    let enough = quote(1, "4 lb", counted("12 lb", "2026-11-26"), "0", "8 lb", "0");
    assert_eq!(row(GINGER, enough), "Amount needed: 4.00\u{a0}lb.");
    // Why so many: what is here, the least order; and nobody buys a part of a lid.
    let some = quote(1, "40 lb", counted("12 lb", "2026-11-26"), "1", "2 lb", "52");
    assert_eq!(row(GINGER, some), "1 × 30 lb, 40.00\u{a0}lb needed, 12.00\u{a0}lb on hand");
    let least = quote(1, "10 lb", Here::NotCounted, "2", "30 lb", "55");
    assert_eq!(row(KALE, least), "2 × 20 lb, 10.00\u{a0}lb needed, 2 packs per order");
    let lids = quote(1, "48.98 ea", Here::NotCounted, "1", "951.02 ea", "43");
    assert_eq!(row(LID, lids), "1 × 1,000 ea, 49\u{a0}ea needed");
    assert!(proposed(LID, &lids).ends_with("Left over: 951\u{a0}ea."));
    let more = quote(1, "40 lb", Here::NotCounted, "4", "80 lb", "46");
    assert_eq!(said(|words| words.more_for_less(&one, &more)), "Buy 4 instead of 1: $6.00 less in all.");
    let seller = |goods, quote: &Quote| said(|words| words.supplier_of_quote(goods, quote));
    assert_eq!(
        (&*seller(GINGER, &one), &*seller(LID, &quote(1, "1 ea", Here::NotCounted, "1", "9 ea", "1"))),
        ("Tansywold", "No supplier")
    );
}

#[test]
fn what_is_missing() {
    assert_eq!(
        proposed(GINGER, &quote(1, "40 lb", counted("12 lb", "2026-11-25"), "1", "2 lb", "52")),
        "Amount needed: 40.00\u{a0}lb. On hand: 12.00\u{a0}lb, counted Nov 25, 2026. Buy 1 × 30 lb from Tansywold. Left over: 2.00\u{a0}lb."
    );
    assert_eq!(
        proposed(GINGER, &quote(1, "4 lb", counted("12 lb", "2026-11-26"), "0", "8 lb", "0")),
        "Amount needed: 4.00\u{a0}lb. On hand: 12.00\u{a0}lb, counted today. Enough on hand. Left over: 8.00\u{a0}lb."
    );
    assert_eq!(
        proposed(KALE, &quote(1, "10 lb", Here::NotCounted, "2", "30 lb", "55")),
        "Amount needed: 10.00\u{a0}lb. On hand: not counted. Buy 2 × 20 lb from Quillhaven. At least 2 packs per order. Left over: 30.00\u{a0}lb."
    );
    assert_eq!(
        proposed(LID, &quote(1, "10 ea", Here::NotCounted, "1", "990 ea", "43")),
        "Amount needed: 10\u{a0}ea. On hand: not counted. Buy 1 × 1,000 ea. Left over: 990\u{a0}ea."
    );
    let lacks = YieldError::NoPieceWeight(IngredientId::from_random(1));
    let unusable = |on: &str| {
        let here = Here::Unusable { lacks, day: day(on) };
        proposed(GINGER, &quote(1, "40 lb", here, "2", "20 lb", "104"))
    };
    assert_eq!(
        unusable("2026-11-25"),
        "Amount needed: 40.00\u{a0}lb. Buy 2 × 30 lb from Tansywold. Left over: 20.00\u{a0}lb. The count on hand from Nov 25, 2026 is not used. Needs: weight per piece of Ginger. Weigh one as purchased."
    );
    assert_eq!(
        unusable("2026-11-26"),
        "Amount needed: 40.00\u{a0}lb. Buy 2 × 30 lb from Tansywold. Left over: 20.00\u{a0}lb. Today’s count on hand is not used. Needs: weight per piece of Ginger. Weigh one as purchased."
    );
}

#[test]
fn what_other_packs_would_save() {
    let (now, other) = (
        quote(1, "40 lb", Here::NotCounted, "2", "20 lb", "104"),
        quote(2, "40 lb", Here::NotCounted, "2", "20 lb", "98"),
    );
    let saves = |now: &Quote, other: &Quote| said(|words| words.saves(GINGER, now, other).unwrap_or_default());
    assert_eq!(saves(&now, &other), "2 × 30 lb from Quillhaven would save you $6.00.");
    assert_eq!(saves(&other, &now), "");
    assert_eq!(saves(&now, &now), "");
    let in_all = |now: &str, then: &str| said(|words| words.saves_in_all(money(now), money(then)));
    assert_eq!(in_all("104", "98"), "The cheapest packs would save you $6.00.");
    assert_eq!(in_all("98", "98"), "No other packs cost less.");
}

#[test]
fn what_is_not_on_the_list() {
    assert_eq!(
        said(|words| words.without_pack(GINGER, None)),
        "Needs: case price of Ginger. Enter pack size and case price in Buying."
    );
    let lacks = YieldError::NoDensity(IngredientId::from_random(1));
    assert_eq!(
        said(|words| words.without_pack(GINGER, Some(lacks))),
        "Needs: weight per cup of Ginger in drinks. You weigh in one place and pour by volume in another. Enter the weight of one cup."
    );
    let gone = offer_id(1, 1);
    assert_eq!(
        said(|words| words.left_out(gone, Unmade::NotOnTheMenu)),
        "Kick, Bottle. This size is no longer on the menu."
    );
    let stuck = Unmade::Stuck(OfferError::Cost(brimwright::drink::cost::CostError::NoPack(GINGER)));
    assert_eq!(
        said(|words| words.left_out(gone, stuck)),
        "Kick, Bottle. Needs: case price of Ginger. Enter pack size and case price in Buying."
    );
    assert_eq!(said(|words| words.free(&[])), "");
    assert_eq!(said(|words| words.free(&[GINGER, LID])), "Free, so not on the list: Ginger, Lid.");
    let sizes = |count| said(|words| words.without_number(count));
    assert_eq!(sizes(0), "");
    assert_eq!(sizes(1), "1 size has no weekly sales, so the list leaves it out.");
    assert_eq!(sizes(3), "3 sizes have no weekly sales, so the list leaves them out.");
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
        "1 count on hand is from Nov 25, 2026. What you used since is not deducted."
    );
    assert_eq!(
        of(&[Some("2026-11-25"), Some("2026-11-02"), Some("2026-11-26")]),
        "2 counts on hand are from before today, the oldest from Nov 2, 2026. What you used since is not deducted."
    );
}

fn line(goods: Goods, pack: u64, packs: &str) -> ToBuy {
    ToBuy { goods, pack: PackId::from_random(pack), packs: exact(packs), bought: false, paid: None }
}

#[test]
fn what_a_line_costs() {
    let of = |line: ToBuy| said(|words| words.line_cost(&Listed::of(words.book, line).unwrap()));
    assert_eq!(of(line(GINGER, 1, "1")), "Quoted $52.00");
    assert_eq!(of(ToBuy { paid: Some(money("50")), ..line(GINGER, 1, "1") }), "Paid $50.00");
    assert_eq!(of(line(GINGER, 1, "3")), "Quoted $52.00 each, $156.00 total");
    assert_eq!(of(line(KALE, 1, "2")), "Quoted $26.00 + $1.50 each, $55.00 total");
    assert_eq!(of(ToBuy { paid: Some(money("50")), ..line(GINGER, 1, "2") }), "Paid $50.00 each, $100.00 total");
    assert_eq!(of(line(GINGER, 9, "2")), "No price yet. Type what you pay per pack.");
    let packs = |goods, pack: u64, number: &str| {
        said(|words| {
            let found = words.book.packs(goods).iter().find(|it| it.id == PackId::from_random(pack));
            words.packs(exact(number), found)
        })
    };
    assert_eq!(packs(GINGER, 1, "2"), "2 × 30 lb");
    assert_eq!(packs(GINGER, 9, "1"), "1 pack, no longer in your book");
    assert_eq!(packs(GINGER, 9, "2.5"), "2.5 packs, no longer in your book");
    let choice = |goods| said(|words| words.choice(goods, PackId::from_random(1)));
    assert_eq!([choice(GINGER), choice(LID)], ["Ginger, 30 lb from Tansywold", "Lid, 1,000 ea"]);
}

#[test]
fn how_far_the_list_is() {
    let totals = |unpriced| Totals { all: money("120"), bought: money("34"), lines: 7, ticked: 3, unpriced };
    let of = |unpriced| said(|words| words.totals(&totals(unpriced)));
    assert_eq!(of(0), "Total $120.00: $34.00 bought, $86.00 to buy.");
    assert_eq!(of(1), "Total $120.00: $34.00 bought, $86.00 to buy. 1 item has no price.");
    assert_eq!(of(2), "Total $120.00: $34.00 bought, $86.00 to buy. 2 items have no price.");
    assert_eq!(said(|words| words.progress(&totals(0))), "3 of 7 items bought");
    let one = Totals { lines: 1, ticked: 0, ..totals(0) };
    assert_eq!(said(|words| words.progress(&one)), "0 of 1 item bought");
}

fn moved(before: OfferStatus, after: OfferStatus) -> OfferChange {
    let snapshot = |status, margin: &str| {
        Some(Snapshot {
            status,
            cost: None,
            covered: None,
            target: None,
            margin: Some(share(margin)),
            suggested: None,
            price: None,
        })
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
    assert_eq!(of(0, &[], &[]), "You paid the quoted prices. They get today’s date. No sizes would be affected.");
    assert_eq!(of(1, &[holds], &[]), "1 price changes. 1 size would be affected, none would drop below target.");
    assert_eq!(of(2, &[falls, holds], &[]), "2 prices change. 2 sizes would be affected, 1 would drop below target.");
    assert_eq!(of(2, &[falls, falls], &[]), "2 prices change. 2 sizes would be affected, 2 would drop below target.");
    assert_eq!(
        of(1, &[], &[KALE]),
        "1 price changes. No sizes would be affected. Kale: this pack is no longer in your book. Add the pack again, then enter its price."
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
        "You checked off no items, so your stock stays the same. Then the list is deleted, with 1 item you did not buy. Undo brings everything back."
    );
    let paid = PricePaid { goods: GINGER, pack: PackId::from_random(1), was: money("52"), now: money("49.5") };
    assert_eq!(
        of(&Finished { added: 1, not_bought: 0, prices: vec![paid], ..none.clone() }),
        "1 item you bought is added to your stock. 1 price you paid is saved. Then the list is deleted. Undo brings everything back."
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
        "2 items you bought are added to your stock. 2 prices you paid are saved. Then the list is deleted, with 2 items you did not buy. Undo brings everything back. Ginger: the old count cannot be used. A new count starts with what you bought. Needs: weight per piece of Ginger. Weigh one as purchased. Kale: this pack is no longer in your book, so your stock stays the same."
    );
}

#[test]
fn the_text_to_send() {
    let mut lines = vec![line(GINGER, 1, "2"), line(KALE, 1, "2"), line(GINGER, 2, "1"), line(LID, 1, "1")];
    lines[0].bought = true;
    let list = BuyingList { day: day("2026-11-26"), lines };
    let of = |prices| said(|words| words.text(&list, prices).unwrap());
    let expected = [
        "Buying list, Nov 26, 2026",
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
        "Buying list, Nov 26, 2026",
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
        "Total: $251.00",
    ];
    assert_eq!(of(true).lines().collect::<Vec<_>>(), expected);
}

#[test]
fn what_became_of_a_text() {
    assert_eq!(sharing(Sharing::PassedOn), "Sent where you chose.");
    assert_eq!(sharing(Sharing::Closed), "Not shared. You closed the list of apps.");
    assert_eq!(sharing(Sharing::Copied), "Copied. Paste the text into a message.");
    assert_eq!(sharing(Sharing::ToCopy), "Your browser cannot share or copy. Select the text below and copy it.");
}
