//! What is said of batches and of what is here.

use brimwright::book::{
    Batch, Book, Drink, Edit, Goods, Ingredient, Line, Make, OfferId, Produce, Record, Settings, Stage,
};
use brimwright::counter::batch::Station;
use brimwright::counter::on_hand::{BestUse, Makes, NotMade, Reach, Reached, Scarce, Stopped, Used};
use brimwright::drink::fill::ScaleError;
use brimwright::drink::ledger::OfferError;
use brimwright::drink::make::Unmade;
use brimwright::drink::yields::YieldError;
use brimwright::foundation::measure::{Overflow, System};
use brimwright::say;
use brimwright::words::{self, Batches};

use crate::support::{amount, batch, day, drink, drink_id, exact, line, offer_id, packaging_id, speaker, vessel};
use crate::{BOTTLE, GINGER, book};

const CARROTS: Goods = Goods::Ingredient(GINGER);

fn bar(units: System) -> Book {
    let mut book = book();
    book.apply(&Edit::Put(Record::Drink(drink(1, "500 mL", [])))).unwrap();
    book.apply(&Edit::Put(Record::Packaging(vessel(1, [])))).unwrap();
    let settings = Settings { units, ..book.settings().clone() };
    book.apply(&Edit::Put(Record::Settings(Box::new(settings)))).unwrap();
    book
}

fn said<T>(say: impl FnOnce(&Batches) -> T) -> T {
    say(&Batches { book: &bar(System::UsCustomary), speaker: &speaker(System::UsCustomary) })
}

/// Drink 1 in the bottle.
fn offer() -> OfferId {
    OfferId { drink: drink_id(1), container: BOTTLE }
}

#[test]
fn how_what_is_made_is_kept_and_until_when() {
    let mut book = bar(System::Metric);
    let mut kept = drink(2, "500 mL", []);
    (kept.keep_refrigerated, kept.keeps_days) = (true, Some(exact("3")));
    let name = kept.name.clone();
    book.apply(&Edit::Put(Record::Drink(kept))).unwrap();
    let made = batch("2026-11-26", &[(1, 1, "12"), (2, 1, "6"), (2, 2, "4")]);
    let words = Batches { book: &book, speaker: &speaker(System::UsCustomary) };
    let first = book.drink(drink_id(1)).unwrap().name.clone();
    let expected = [
        (first, "Not entered. Follow your food-safety plan.".to_string()),
        (name, "Keep refrigerated. Use by Nov 29, 2026.".to_string()),
    ];
    assert_eq!(words.kept(&made), expected);
    // In the words of the card, each drink once.
    let card = |(name, _): &(String, String)| (name.clone(), "The recipe is empty.".to_string());
    assert_eq!(words.allergens(&made), expected.iter().map(card).collect::<Vec<_>>());
}

/// On the sheet of a batch: each caution once, with the drinks of which it holds.
#[test]
fn what_to_be_careful_of_and_what_is_short() {
    let mut book = bar(System::UsCustomary);
    let ginger = Ingredient { produce: Some(Produce::Raw), ..book.ingredient(GINGER).unwrap().clone() };
    book.apply(&Edit::Put(Record::Ingredient(ginger))).unwrap();
    let pressed = |id| {
        let line = Line { ingredient: GINGER, stage: Stage::Pressed, ..line(1, 1, "300 mL") };
        Record::Drink(Drink { ph: Some(exact("5.9")), ..drink(id, "500 mL", [line]) })
    };
    for record in [pressed(1), pressed(2)] {
        book.apply(&Edit::Put(record)).unwrap();
    }
    let words = Batches { book: &book, speaker: &speaker(System::UsCustomary) };
    let (first, second) = (book.drink(drink_id(1)).unwrap(), book.drink(drink_id(2)).unwrap());
    let both = format!("{}, {}", first.name, second.name);
    let made = batch("2026-11-26", &[(1, 1, "12"), (2, 1, "6"), (2, 2, "4")]);
    let expected = [
        "Untreated juice: if packaged ahead, each package must carry the warning label (United States).",
        "Untreated juice can make children, older or pregnant people and people with weak immune systems seriously ill.",
        "Low-acid juice: refrigerate at all times. If kept warm, this juice can cause botulism.",
    ];
    assert_eq!(words.cautions(&made), expected.map(|said| (said.to_string(), both.clone())));
    let reached = [
        Reached { goods: CARROTS, reach: Reach::Short(amount("2 lb")) },
        Reached { goods: Goods::Packaging(packaging_id(1)), reach: Reach::Enough(amount("3 ea")) },
    ];
    let short = |deducted| words.shortages(&reached, deducted);
    assert_eq!(short(false), [("Ginger".to_string(), "Short by 2\u{a0}lb.".to_string())]);
    assert_eq!(short(true)[0].1, "Short by 2\u{a0}lb for drinks not deducted yet.");
    let not_counted = [Reached { goods: CARROTS, reach: Reach::NotCounted }];
    let said = [("1 item is not counted.".to_string(), "Ginger".to_string())];
    assert_eq!(words.shortages(&not_counted, false), said);
}

#[test]
fn amounts_as_they_are_read_off() {
    let read = |text: &str| said(|words| words.weighed(amount(text)));
    let pairs = [
        ("3.4 oz", "3.4\u{a0}oz"),
        ("16 oz", "1\u{a0}lb"),
        ("115.4 oz", "7\u{a0}lb 3.4\u{a0}oz"),
        ("151.5 fl oz", "151.5\u{a0}fl oz"),
        ("999 g", "999\u{a0}g"),
        ("1250 g", "1.25\u{a0}kg"),
        ("1000 mL", "1\u{a0}L"),
        ("0.5 lb", "0.5\u{a0}lb"),
        ("12 ea", "12\u{a0}ea"),
    ];
    for (text, shown) in pairs {
        assert_eq!(read(text), shown);
    }
    // In an imperial book, of whom an ounce is.
    let book = bar(System::Imperial);
    let words = Batches { book: &book, speaker: &speaker(System::Imperial) };
    assert_eq!(words.weighed(amount("2.5 fl oz")), "2.5\u{a0}US fl oz");
}

#[test]
fn stations_by_name() {
    let stations = [Station::Out, Station::Trimmed, Station::Juice, Station::Soaked];
    assert_eq!(stations.map(words::station), ["Start with", "Trimmed", "Juice", "Soaked or brewed"]);
}

#[test]
fn when_it_was_counted() {
    let on = |text: &str| words::counted(day(text), day("2026-11-26"));
    assert_eq!(on("2026-11-26"), "Counted today.");
    assert_eq!(on("2026-11-25"), "Counted yesterday.");
    assert_eq!(on("2026-11-20"), "Counted 6 days ago.");
    assert_eq!(on("2026-08-01"), "Counted on Aug 1, 2026.");
    assert_eq!(on("2026-11-27"), "Counted on Nov 27, 2026.");
}

#[test]
fn where_a_batch_stands() {
    let speaker = speaker(System::UsCustomary);
    let none = Batch { makes: Vec::new(), ..batch("2026-11-26", &[]) };
    assert_eq!(words::batch_stands(&none, &speaker), Ok("Nothing is planned yet.".into()));
    assert_eq!(
        words::batch_stands(&batch("2026-11-26", &[(1, 1, "12")]), &speaker),
        Ok("1 drink size: 12 to make, 0 filled.".into())
    );
    let mut two = batch("2026-11-26", &[(1, 1, "12"), (1, 2, "18")]);
    two.makes[1] = Make { filled: true, ..two.makes[1] };
    assert_eq!(words::batch_stands(&two, &speaker), Ok("2 drink sizes: 30 to make, 18 filled.".into()));
    // Grouped as in its field; what is kept for what came off the shelf is not counted.
    two.makes[0].units = exact("1000129");
    two.makes.push(Make { off_shelf: exact("4"), ..batch("2026-11-26", &[(2, 1, "0")]).makes[0] });
    let stands = "2 drink sizes: 1,000,147 to make, 18 filled.";
    assert_eq!(words::batch_stands(&two, &speaker), Ok(stands.into()));
}

#[test]
fn what_was_deducted_for_a_drink_stays_with_its_day() {
    let deducted = |off_shelf| {
        let make = Make { off_shelf: exact(off_shelf), ..batch("2026-11-26", &[(1, 1, "4")]).makes[0] };
        words::deducted(&make, &speaker(System::UsCustomary))
    };
    assert_eq!(deducted("0"), "");
    assert_eq!(deducted("1"), "Deducted from stock: 1 drink. It counts once, so this row stays.");
    assert_eq!(deducted("1200"), "Deducted from stock: 1,200 drinks. Each counts once, so this row stays.");
    let mut gone = batch("2026-11-26", &[(1, 1, "4")]);
    assert_eq!(words::batch_deleted(&gone), "You deleted the batch of Nov 26, 2026. Undo brings it back.");
    gone.makes[0].off_shelf = exact("4");
    assert_eq!(
        words::batch_deleted(&gone),
        "You deleted the batch of Nov 26, 2026. What it used stays deducted. Undo brings the batch back."
    );
    assert_eq!(
        say!(counter::deduct_about),
        "This deducts what your filled drinks used, as purchased. Each drink counts once, even if you delete its batch and start over."
    );
}

#[test]
fn a_number_that_cannot_be_read_is_named_on_the_sheet() {
    let book = bar(System::UsCustomary);
    assert_eq!(
        words::not_planned(&words::number_of(offer(), &book), "12 oz"),
        "Not in this plan yet: “12 oz” as Number of Invented drink 1, Bottle. Fix the number in the batch."
    );
}

#[test]
fn whether_it_reaches() {
    let reach = |reach| said(|words| words.reach(&reach, false));
    assert_eq!(reach(Reach::NotCounted), "");
    assert_eq!(reach(Reach::Enough(amount("2.349 lb"))), "");
    // Never less than is lacking.
    // 37.456 oz, in the words in which it is weighed out.
    assert_eq!(reach(Reach::Short(amount("2.341 lb"))), "Short by 2\u{a0}lb 5.5\u{a0}oz.");
    assert_eq!(reach(Reach::Short(amount("2.341 kg"))), "Short by 2.35 kg.");
    // A part of the plan is off the shelf: what is short is for the rest.
    let rest = said(|words| words.reach(&Reach::Short(amount("24 ea")), true));
    assert_eq!(rest, "Short by 24 ea for drinks not deducted yet.");
    assert_eq!(reach(Reach::Short(amount("2.2 ea"))), "Short by 3 ea.");
    assert_eq!(
        reach(Reach::Unknown(YieldError::NoDensity(GINGER))),
        "The count and the recipe use different units. Needs: weight per cup of Ginger in drinks. You weigh in one place and pour by volume in another. Enter the weight of one cup."
    );
    let today = |reach| said(|words| words.reach_today(&reach));
    assert_eq!(today(Reach::NotCounted), "Needed today. Count it.");
    assert_eq!(today(Reach::Enough(amount("2.349 lb"))), "");
    assert_eq!(today(Reach::Short(amount("2.341 lb"))), "Short today by 2\u{a0}lb 5.5\u{a0}oz.");
    let lacks = YieldError::NoDensity(GINGER);
    assert_eq!(today(Reach::Unknown(lacks)), reach(Reach::Unknown(lacks)));
}

#[test]
fn what_cannot_be_made() {
    let unmade = |why| said(|words| words.unmade(offer(), &why));
    assert_eq!(
        unmade(Unmade::NotOnTheMenu),
        "Invented drink 1, Bottle is no longer on the menu. Remove the drink from the batch, or add the size again."
    );
    assert_eq!(
        unmade(Unmade::Stuck(OfferError::Scale(ScaleError::NoLines(drink_id(1))))),
        "Invented drink 1, Bottle: The recipe is empty. Add an ingredient."
    );
}

#[test]
fn what_runs_out_first() {
    let makes = |makes: Result<Makes, NotMade>| said(|words| words.makes(&[&makes]));
    let bottle = Goods::Packaging(packaging_id(1));
    let runs_out = |not_counted| Ok(Makes { count: exact("3"), runs_out: CARROTS, not_counted });
    assert_eq!(makes(runs_out(vec![])), "First to run out: Ginger.");
    assert_eq!(makes(runs_out(vec![bottle])), "1 item is not counted. Of the rest, first to run out: Ginger.");
    assert_eq!(
        makes(runs_out(vec![bottle, CARROTS, CARROTS])),
        "3 items are not counted. Of the rest, first to run out: Ginger."
    );
    // Of several sizes each thing once.
    let (small, large) = (runs_out(vec![bottle]), Ok(Makes { runs_out: bottle, ..runs_out(vec![]).unwrap() }));
    let sizes = [&small, &large, &small, &Err(NotMade::Unmade(Unmade::NotOnTheMenu))];
    assert_eq!(
        said(|words| words.makes(&sizes)),
        "1 item is not counted. Of the rest, first to run out: Ginger, Invented bottle 1. This size is not on the menu."
    );
    assert_eq!(makes(Err(NotMade::NothingCounted)), "You have no counts for this drink yet.");
    assert_eq!(makes(Err(NotMade::Unmade(Unmade::NotOnTheMenu))), "This size is not on the menu.");
    assert_eq!(
        makes(Err(NotMade::Unmade(Unmade::Stuck(OfferError::Scale(ScaleError::NoLines(drink_id(1))))))),
        "The recipe is empty. Add an ingredient."
    );
    assert_eq!(
        makes(Err(NotMade::Unknown(YieldError::NoPieceWeight(GINGER)))),
        "The count and the recipe use different units. Needs: weight per piece of Ginger. Weigh one as purchased."
    );
}

#[test]
fn how_sure_the_best_use_is() {
    let scarce = vec![Scarce { goods: CARROTS, left: amount("0.419 lb") }];
    let best = BestUse { scarce: scarce.clone(), proved: true, ..BestUse::default() };
    let of = |best: BestUse| said(|words| words.best(&best));
    assert_eq!(of(best.clone()), "No other plan makes more profit from your stock.");
    assert_eq!(
        of(BestUse { by_number: true, ..best.clone() }),
        "No other plan makes more drinks from your stock. No drink has a price, so the plan counts drinks."
    );
    assert_eq!(
        of(BestUse { proved: false, ..best.clone() }),
        "This is the best plan found. Too many drinks share stock to try every plan. Another plan may make a little more."
    );
    assert_eq!(
        of(BestUse { scarce: vec![], for_nothing: vec![offer()], endless: vec![offer_id(1, 9)], ..best }),
        "You have enough on hand for all of these drinks. Made from what is left: Invented drink 1, Bottle. Left out, because you counted nothing that they use: Invented drink 1, ."
    );
    assert_eq!(said(|words| words.scarce(&scarce[0])), "Ginger: 6.7\u{a0}oz left.");
    // Where something is used up, it is not enough for all.
    let counts = vec![(offer(), exact("0")), (offer_id(1, 9), exact("3"))];
    let out = BestUse { out: vec![(offer(), CARROTS)], counts, proved: true, ..BestUse::default() };
    let none = "You are out of Ginger, so you can make none: Invented drink 1, Bottle.";
    assert_eq!(of(out.clone()), none);
    let shared = format!("No other plan makes more profit from your stock. {none}");
    assert_eq!(of(BestUse { scarce: scarce.clone(), ..out }), shared);
}

#[test]
fn why_there_is_no_best_use() {
    let stopped = |why| said(|words| words.stopped(&why));
    assert_eq!(
        stopped(Stopped::LeastTooMany(CARROTS)),
        "The drinks you checked need more Ginger than you have. Uncheck one, or count again."
    );
    assert_eq!(
        stopped(Stopped::Arithmetic(Overflow::TooLarge)),
        "These numbers are too large. Check for an extra digit."
    );
    let lacks = YieldError::NoDensity(GINGER);
    assert_eq!(stopped(Stopped::Unknown(lacks)), said(|words| words.not_comparable(&lacks)));
}

#[test]
fn what_was_taken_off_the_shelf() {
    let taken = |taken, below| {
        let used = Used { edit: Edit::Together(Vec::new()), taken, below };
        said(|words| words.taken(&used))
    };
    assert_eq!(taken(0, vec![]), "You have no stock counts for these drinks.");
    assert_eq!(taken(1, vec![]), "Deducted from stock: 1 item. Undo puts it back.");
    assert_eq!(
        taken(4, vec![CARROTS]),
        "Deducted from stock: 4 items. Undo puts them back. You used more than you counted, so nothing is left: Ginger. Count again."
    );
}
