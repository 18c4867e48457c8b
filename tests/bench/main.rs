//! How fast the engine is, on the generated book, in figures: the middle of many runs.

mod figure;
mod files;
mod generated;
mod growth;
mod in_node;
mod one_price;
mod spreadsheet;

use std::hint::black_box;
use std::time::Duration;

use brimwright::book::{Book, Conditions, Edit, Goods, Ingredient, Offer, OfferId, OnHand, PackagingId, Record, Scope};
use brimwright::buying::buying_list::{makes, propose};
use brimwright::buying::price_watch::{bought, exposure, what_if};
use brimwright::counter::on_hand::{Wish, best_use};
use brimwright::drink::gap::ways;
use brimwright::drink::ledger::{Ledger, OfferStatus};
use brimwright::drink::make::needs;
use brimwright::exchange;
use brimwright::foundation::measure::{Amount, Date, Exact, Money, Share, Unit};
use brimwright::sizes::decision::{MenuToday, Question, Told, findings};
use brimwright::sizes::side_by_side::{Draft, WhatIf, side_by_side, sold_together};

use figure::{figure, timed};
use one_price::{Priced, Repriced};

/// Re-pricing all that one pack price moves.
const ONE_PRICE_BAR: Duration = Duration::from_micros(250);
/// Re-pricing a third of the menu: the price of a bottle.
const ONE_BOTTLE_BAR: Duration = Duration::from_millis(4);
/// A book file of the largest size, taken or refused.
const FILE_BAR: Duration = Duration::from_secs(1);
/// Computing every offer of the book.
const WHOLE_BOOK_BAR: Duration = Duration::from_millis(10);
/// One step of a what-if over the whole menu: price, ingredients, and the comparison.
const WHAT_IF_BAR: Duration = Duration::from_millis(15);
/// What a usual week of the whole menu takes from the market.
const BUYING_BAR: Duration = Duration::from_millis(5);
/// Every lever of one offer under its target.
const LEVERS_BAR: Duration = Duration::from_millis(10);
/// What the menu hangs on, from what its drinks cost.
const EXPOSURE_BAR: Duration = Duration::from_millis(10);
/// Every price of the book tried at once, with all that it moves.
const ALL_DEARER_BAR: Duration = Duration::from_millis(30);
/// The best use of what is here for a plan of three dozen drinks and sizes.
const BEST_USE_BAR: Duration = Duration::from_millis(100);
/// A decision on a size over the whole menu, from the ledger: which buyers turn where, and what must be true.
const DECISION_BAR: Duration = Duration::from_millis(10);
/// One step of the slider: profit then, the difference, and the payback.
const SLIDER_BAR: Duration = Duration::from_micros(10);
/// Every plan of one to three sizes.
const PLANS_BAR: Duration = Duration::from_millis(30);
/// What the book says of its sizes, kind by kind.
const FINDINGS_BAR: Duration = Duration::from_millis(60);

fn main() {
    let book = generated::book();
    println!(
        "generated book: {} drinks, {} offers, {} weeks, {} scenarios, {} batches",
        book.drinks().count(),
        book.offers().count(),
        book.weeks().count(),
        book.scenarios().count(),
        book.batches().count()
    );
    let computed = Ledger::of(&book).offers().filter(|(_, result)| result.is_ok()).count();
    assert_eq!(computed, book.offers().count(), "every generated offer can be computed");

    let (one_price, moved) = one_price(book.clone());
    figure(&format!("one pack price, {moved} offers moved on average"), one_price, ONE_PRICE_BAR);
    growth::growth();
    in_node::beside_a_spreadsheet(&book);
    figure("one bottle's price, 500 offers moved", bottle_price(book.clone()), ONE_BOTTLE_BAR);
    let whole = (0..200).map(|_| timed(|| Ledger::of(black_box(&book)))).collect();
    figure("whole book", whole, WHOLE_BOOK_BAR);
    let (prices, ingredients) = what_ifs(&book);
    figure("a price tried over the whole menu", prices, WHAT_IF_BAR);
    figure("dearer ingredients tried over the whole menu", ingredients, WHAT_IF_BAR);
    let (buying, lines) = buying(book.clone());
    figure(&format!("a buying list of {lines} lines for a week of the whole menu"), buying, BUYING_BAR);
    let (levers, ways) = levers(&book);
    figure(&format!("the levers of one offer, {ways} on average"), levers, LEVERS_BAR);
    let (best_uses, scarce, proved) = best_uses(&book);
    let name = format!("best use of {scarce} scarce goods on average, {proved} of {} proved", best_uses.len());
    figure(&name, best_uses, BEST_USE_BAR);
    let (many, whole) = large_files();
    figure("a file of 10 MB with a list of 300,000, refused", many, FILE_BAR);
    figure("a file of 10 MB, read and checked", whole, FILE_BAR);
    let sold = generated::with_a_usual_week(book);
    let (decisions, slides) = decisions(&sold);
    figure("a decision on a size of the whole menu", decisions, DECISION_BAR);
    figure("a step of the slider of buyers who stay", slides, SLIDER_BAR);
    let (plans, found) = plans_and_findings(&sold);
    figure("every plan of one to three sizes", plans, PLANS_BAR);
    figure("what the book says of its sizes", found, FINDINGS_BAR);
    let (exposures, dearer) = watched(&sold);
    figure("what the menu hangs on", exposures, EXPOSURE_BAR);
    figure("every price dearer, and all that it moves", dearer, ALL_DEARER_BAR);
}

/// Every price in turn, ten times, and how many offers one moved.
fn one_price(book: Book) -> (Vec<Duration>, usize) {
    let mut priced = Priced::of(book);
    let repriced: Vec<Repriced> = (0..10).flat_map(|round| priced.round(round)).collect();
    let moved: usize = repriced.iter().map(|it| it.moved).sum();
    (repriced.iter().map(|it| it.time).collect(), moved / repriced.len())
}

/// The price of the bottle of each size in turn, up and down: edit and re-pricing together.
fn bottle_price(mut book: Book) -> Vec<Duration> {
    let mut ledger = Ledger::of(&book);
    let mut times = Vec::new();
    for round in 0..100 {
        let goods = Goods::Packaging(PackagingId::from_random(2 * (round % 3) + 1));
        let pack = book.packs(goods)[0].clone();
        let price = Money::from_major(Exact::new(6000 + round as i64, 2));
        let edit = Edit::SetPackPrice { goods, pack: pack.id, price, day: None };
        times.push(timed(|| {
            let applied = book.apply(&edit).expect("a price above zero");
            assert_eq!(ledger.refresh(&book, &applied.touched).len() as u64, generated::DRINKS);
        }));
    }
    times
}

/// Files of nearly 10 MB: one with too long a list, and one with as much as may be in it.
fn large_files() -> (Vec<Duration>, Vec<Duration>) {
    let (many, full) = (files::too_many(), files::full());
    let refused = (0..5).map(|_| timed(|| exchange::read(black_box(&many)).expect_err("too many"))).collect();
    let taken = (0..5).map(|_| timed(|| exchange::read(black_box(&full)).expect("it holds"))).collect();
    (refused, taken)
}

/// A change of all prices in one size, and of all ingredients, each compared over the whole menu.
fn what_ifs(book: &Book) -> (Vec<Duration>, Vec<Duration>) {
    let menu = Scope::Menu;
    let ledger = Ledger::of(book);
    let containers = sold_together(book, &ledger, menu);
    let draft = Draft::of(book, &ledger, menu, &containers);
    let now = side_by_side(&draft.book, &draft.ledger, menu, &containers).expect("small");
    assert_eq!((now.drinks.len(), now.sizes.len()), (book.drinks().count(), containers.len()));
    let tried = |what_if: &WhatIf| {
        timed(|| {
            let then = draft.with(what_if).expect("it can be tried");
            side_by_side(&then.book, &then.ledger, menu, &containers).expect("small")
        })
    };
    let raised = |cents| now.raised(book, containers[0], Money::from_major(Exact::new(cents, 2))).expect("small");
    let prices = (1..50).map(|cents| tried(&WhatIf { prices: raised(cents), ..WhatIf::default() })).collect();
    let share = |percent| Share::from_fraction(Exact::new(percent, 2));
    let under = |percent| Conditions { ingredients: share(percent), ..Conditions::default() };
    let dearer = |percent| WhatIf { conditions: under(percent), ..WhatIf::default() };
    let dearer = (1..50).map(|percent| tried(&dearer(percent))).collect();
    (prices, dearer)
}

/// What is to be bought for a week in which each size is sold 20 times, and how much of it.
fn buying(mut book: Book) -> (Vec<Duration>, usize) {
    let sold: Vec<Offer> =
        book.offers().map(|offer| Offer { weekly: Some(Exact::new(20, 0)), ..offer.clone() }).collect();
    for offer in sold {
        book.apply(&Edit::Put(Record::Offer(offer))).expect("a number above zero");
    }
    let ledger = Ledger::of(&book);
    let mut lines = 0;
    let proposed = |lines: &mut usize| {
        let made = makes(black_box(&book), &[], Exact::ONE).expect("small");
        *lines = propose(&book, &ledger, &made).expect("small").lines.len();
    };
    let times = (0..100).map(|_| timed(|| proposed(&mut lines))).collect();
    (times, lines)
}

/// The levers of each offer under its target, and how many one has.
fn levers(book: &Book) -> (Vec<Duration>, usize) {
    let ledger = Ledger::of(book);
    let under = ledger.offers().filter(|(_, result)| OfferStatus::from(*result) == OfferStatus::UnderTarget);
    let under: Vec<OfferId> = under.map(|(id, _)| id).take(200).collect();
    let mut found = 0;
    let times: Vec<Duration> =
        under.iter().map(|id| timed(|| found += ways(black_box(book), *id).expect("it is computed").len())).collect();
    let runs = times.len();
    (times, found / runs)
}

/// Dropping each size of the whole menu in turn, as a page asks it; and its slider, moved by a hundredth at a time.
fn decisions(book: &Book) -> (Vec<Duration>, Vec<Duration>) {
    let (ledger, told) = (Ledger::of(book), Told::default());
    let ask = |size| {
        let menu = MenuToday::of(book, &ledger, Scope::Menu, &told, Date::LAST).expect("small");
        menu.answer(&Question::Drop { size }).expect("it is sold")
    };
    let sizes = sold_together(book, &ledger, Scope::Menu);
    let times = (0..30).flat_map(|_| &sizes).map(|size| timed(|| ask(black_box(*size)))).collect();
    let decision = ask(sizes[0]);
    let once = Money::from_major(Exact::new(250, 0));
    let slide = |percent| {
        let share = Share::from_fraction(Exact::new(percent, 2));
        timed(|| (decision.line.at(black_box(share)), decision.gain(share), decision.payback(share, once)))
    };
    (times, (0..=100).map(slide).collect())
}

/// Every plan of the whole menu, and what the book says of its sizes.
fn plans_and_findings(book: &Book) -> (Vec<Duration>, Vec<Duration>) {
    let (ledger, told) = (Ledger::of(book), Told::default());
    let planned = || MenuToday::of(black_box(book), &ledger, Scope::Menu, &told, Date::LAST).expect("small").plans();
    let found = || findings(black_box(book), &ledger, &told, None, None, Date::LAST).expect("small");
    ((0..30).map(|_| timed(planned)).collect(), (0..30).map(|_| timed(found)).collect())
}

/// What the menu hangs on, and all prices moved at once.
fn watched(book: &Book) -> (Vec<Duration>, Vec<Duration>) {
    let ledger = Ledger::of(book);
    let goods: Vec<Goods> = bought(book).map(|(goods, _)| goods).collect();
    let exposed = || timed(|| exposure(black_box(book), &ledger).expect("small"));
    let tried = |percent| {
        let by = Share::from_fraction(Exact::new(percent, 2));
        timed(|| what_if(book, &ledger, &goods, by).expect("it can be tried"))
    };
    ((0..100).map(|_| exposed()).collect(), (1..50).map(tried).collect())
}

/// A plan of a dozen drinks in three sizes, with a fifth of what it takes counted, most of that too
/// little; how many goods were scarce, and of how many plans the best was proved.
fn best_uses(book: &Book) -> (Vec<Duration>, usize, usize) {
    let ledger = Ledger::of(book);
    let offers: Vec<OfferId> = ledger.offers().map(|(id, _)| id).collect();
    let (mut times, mut scarce, mut proved) = (Vec::new(), 0, 0);
    for (round, plan) in (0..).zip(offers.chunks_exact(36)) {
        let wishes: Vec<Wish> = (0..)
            .zip(plan)
            .map(|(place, offer)| {
                let most = Some(Exact::new((round * 7 + place * 5) % 23 + 6, 0));
                Wish { offer: *offer, least: Exact::ZERO, most }
            })
            .collect();
        let mut planned = wishes.iter().map(|wish| (wish.offer, wish.most.expect("planned")));
        let takes = needs(book, &ledger, &mut planned).expect("small");
        let mut book = book.clone();
        for (place, needed) in (0..).zip(takes.ingredients.iter().step_by(5)) {
            let ingredient = book.ingredient(needed.ingredient).expect("needed").clone();
            let all = needed.bought(&ingredient, Unit::Gram.dimension()).expect("it has a weight");
            let here = all.times(Exact::new(40 + (place * 37) % 70, 2)).expect("small").rounded(0);
            let on_hand = Some(OnHand { amount: Amount::new(here, Unit::Gram), day: Date::FIRST });
            book.apply(&Edit::Put(Record::Ingredient(Ingredient { on_hand, ..ingredient }))).expect("it holds");
        }
        times.push(timed(|| {
            let best = best_use(&book, &ledger, &wishes).expect("small");
            scarce += best.scarce.len();
            proved += usize::from(best.proved);
        }));
    }
    let runs = times.len();
    (times, scarce / runs, proved)
}
