//! Every error says what is wrong, why, and how to mend it. The sentences are asserted to the
//! letter: they are what a person is left alone with.

mod bars;
mod batches;
mod buying_list;
mod counter;
mod estimates;
mod files;
mod fills;
mod ingredient_list;
mod jumps;
mod keeping;
mod labels;
mod levers;
mod packages;
mod plans;
mod quotes;
mod restore_points;
mod sales;
mod sheets;
mod sizes;
mod steps;
mod switching;
mod table;
mod watch;
mod working;
mod yield_log;

#[path = "../support/mod.rs"]
mod support;

use brimwright::book::{
    Book, Brimful, Container, ContainerId, DrinkId, Field, Goods, Headspace, Ingredient, IngredientId, Key,
    PackagingId, Problem, Record, Refusal, Settings,
};
use brimwright::book::{BookId, Edit};
use brimwright::drink::cost::CostError;
use brimwright::drink::fill::{FillError, ScaleError};
use brimwright::drink::ledger::OfferError;
use brimwright::drink::price::PriceError;
use brimwright::drink::yields::YieldError;
use brimwright::exchange::{BookFileError, Fault as FileFault, Place};
use brimwright::foundation::measure::{Amount, Dimension, Exact, Overflow, ReadError, Share, Unit, Volume};
use brimwright::store::{Cause, Damage, Fault, StoredBook};
use brimwright::words;

const GINGER: IngredientId = IngredientId::from_random(1);
const BOTTLE: ContainerId = ContainerId::from_random(3);

fn book() -> Book {
    let mut book = Book::new(Settings::new("My book"));
    book.apply(&Edit::Put(Record::Ingredient(Ingredient::named(GINGER, "Ginger")))).expect("an ingredient holds");
    let ounces = |number| Amount::new(Exact::new(number, 0), Unit::UsFluidOunce);
    let bottle = Container {
        id: BOTTLE,
        name: "Bottle".into(),
        brimful: Brimful::Weighed(ounces(16)),
        declared: None,
        headspace: Headspace::Volume(ounces(1)),
        set: Vec::new(),
        shared: Vec::new(),
    };
    book.apply(&Edit::Put(Record::Container(bottle))).expect("a container holds");
    book
}

fn ounces(hundredths: i64) -> Volume {
    Volume::from_millilitres(Unit::UsFluidOunce.size().times(Exact::new(hundredths, 2)).expect("small"))
}

fn percent(number: i64) -> Share {
    Share::from_fraction(Exact::new(number, 2))
}

#[test]
fn what_was_typed() {
    let said = |error: ReadError| words::read_error(&error, "12.5");
    assert_eq!(said(ReadError::Empty), "This is empty. Type a number, such as 12.5.");
    assert_eq!(said(ReadError::NotANumber { text: "abc".into() }), "“abc” is not a number. Type digits, such as 12.5.");
    let ambiguous =
        ReadError::Ambiguous { text: "1.234".into(), as_thousands: "1234".into(), as_decimals: "1,234".into() };
    assert_eq!(said(ambiguous), "“1.234” could mean two numbers. Type 1234 or 1,234.");
    assert_eq!(
        said(ReadError::NotOneAmount { text: "10 lb50".into() }),
        "“10 lb50” is not one amount. Type a number and its unit, such as 12.5."
    );
    assert_eq!(
        said(ReadError::NotAnEnding { text: "x".into() }),
        "“x” is not an ending. Type endings with blanks between them, such as .00 .50 .95."
    );
    assert_eq!(
        said(ReadError::UnknownUnit { unit: "stone".into() }),
        "“stone” is not a unit known here. Use one such as fl oz, mL, cup, lb, oz, g or ea: 12.5."
    );
    assert_eq!(
        said(ReadError::WrongKind { unit: Unit::Pound, wanted: &[Dimension::Volume] }),
        "“lb” measures a weight; here a volume is needed, such as 12.5."
    );
    assert_eq!(said(ReadError::Negative), "This cannot be below zero. Type it without the minus sign: 12.5.");
    assert_eq!(said(ReadError::TooLarge), "That is more than nine digits. Check for a digit too many.");
    assert_eq!(said(ReadError::TooFine), "That is finer than six digits after the decimal sign. Round it to six.");
}

#[test]
fn what_was_refused() {
    let book = book();
    let key = Key::Ingredient(GINGER);
    let said = |refusal: Refusal| words::refusal(&refusal, &book);
    let at = |field, problem| said(Refusal::Field { key, field, problem });
    assert_eq!(at(Field::Name, Problem::Empty), "The name is empty. Type at least one letter.");
    assert_eq!(at(Field::Name, Problem::TooLong), "The name is longer than 80 letters. Shorten it.");
    assert_eq!(at(Field::Contents, Problem::NotPositive), "What the pack holds must be more than zero.");
    assert_eq!(at(Field::PackPrice, Problem::Negative), "The price of the pack cannot be below zero.");
    assert_eq!(
        at(Field::TrimYield, Problem::NotAYield),
        "The trim yield is what is left of what went in: more than 0 % and at most 100 %. Type 90 for 90 %."
    );
    assert_eq!(
        at(Field::Target, Problem::NotAShare),
        "The target margin must be at least 0 % and under 100 %. Type 65 for 65 %."
    );
    assert_eq!(
        at(Field::Headspace, Problem::NothingFits),
        "The headspace leaves no room for a drink. Make it smaller."
    );
    assert_eq!(
        at(Field::Declared, Problem::MoreThanBrimful),
        "The declared size is more than the container holds to the rim. Check it against the brimful volume."
    );
    assert_eq!(
        at(Field::Endings, Problem::NotAnEnding),
        "Price endings must each be less than one, such as .50 or .95 (under 100 where there are no cents)."
    );
    assert_eq!(
        at(Field::WeighedBought, Problem::NotAWeight),
        "The weight as bought must be a weight, such as 5 lb or 2 kg."
    );
    assert_eq!(
        at(Field::WeighedPressed, Problem::MoreThanBefore),
        "The weight of the juice is more than the weight before it: nothing grows by trimming or pressing. Weigh again."
    );
    assert_eq!(at(Field::Makes, Problem::NotWhole), "The number to make must be a whole number, such as 12.");
    assert_eq!(at(Field::OnHand, Problem::Negative), "What is here cannot be below zero.");
    assert_eq!(at(Field::PacksToBuy, Problem::NotPositive), "The number of packs must be more than zero.");
    assert_eq!(at(Field::PriceDays, Problem::LessThanOne), "The days until a price is old must be at least 1.");
    assert_eq!(at(Field::ScaleStep, Problem::NotPositive), "The step of the scale must be more than zero.");
    assert_eq!(at(Field::Batch, Problem::LessThanOne), "The number of drinks in a batch must be at least 1.");
    assert_eq!(
        said(Refusal::Missing { key, needed_by: None }),
        "This ingredient is not in the book any more. Undo its removal, or go back."
    );
    assert_eq!(
        said(Refusal::InUse { key, by: vec![key, key, key, key, key] }),
        "Ginger is used in Ginger; Ginger; Ginger and 2 more. Replace or remove it there first."
    );
}

#[test]
fn what_cannot_be_computed() {
    let book = book();
    let drink = DrinkId::from_random(2);
    let said = |error: OfferError| words::offer_error(&error, &book);
    assert_eq!(said(OfferError::Scale(ScaleError::NoLines(drink))), "The recipe is empty. Add what goes in.");
    assert_eq!(
        said(OfferError::Scale(ScaleError::FixedLinesOverflow { drink, over: ounces(250) })),
        "The fixed amounts alone are 2.5\u{a0}fl oz more than fits here. Make the fixed amounts less, or let them follow in proportion."
    );
    assert_eq!(
        said(OfferError::Scale(ScaleError::NothingScales { drink, short: ounces(50) })),
        "Every amount is fixed, and 0.50\u{a0}fl oz of this size stays empty. Let one follow in proportion."
    );
    assert_eq!(
        said(OfferError::Cost(CostError::NoPack(Goods::Ingredient(GINGER)))),
        "Ginger has no pack yet, so no cost. Enter in Buying what a pack holds and costs."
    );
    let lacks = |error| said(OfferError::Cost(CostError::Yield(error)));
    assert_eq!(
        lacks(YieldError::NoPressYield(GINGER)),
        "Ginger is used as juice but has no press yield. Weigh what goes in and the juice that comes out, and enter the share."
    );
    assert_eq!(
        lacks(YieldError::NoJuiceDensity(GINGER)),
        "The juice of Ginger is weighed in one place and poured by volume in another, so it needs a density. Enter its grams per mL."
    );
    assert_eq!(
        lacks(YieldError::NoDensity(GINGER)),
        "Ginger is weighed in one place and poured by volume in another, so it needs a density. Enter grams per mL as it is in the drink."
    );
    assert_eq!(
        lacks(YieldError::NoPieceWeight(GINGER)),
        "Ginger is counted in pieces but no piece has a weight. Enter the weight of one as bought."
    );
    assert_eq!(
        lacks(YieldError::NoSoakYield(GINGER)),
        "Ginger is used soaked or brewed but has no yield for that. Enter weight after over weight before."
    );
    assert_eq!(
        said(OfferError::Fill(FillError::NothingFits(BOTTLE))),
        "The headspace of Bottle leaves no room for a drink. Make it smaller."
    );
    assert_eq!(
        said(OfferError::Arithmetic(Overflow::TooLarge)),
        "The numbers are too large to compute with. Check for a digit too many."
    );
    assert_eq!(
        said(OfferError::Arithmetic(Overflow::RootOfNegative)),
        "Something here is below zero that must not be. Check for a minus sign."
    );
    assert_eq!(
        words::price_error(&PriceError::NoPriceReaches { target: percent(95), highest: percent(94) }),
        "No price reaches a margin of 95.0\u{a0}%: fees and commission alone leave less than 94.0\u{a0}% of any price. Lower the target or the fees."
    );
}

#[test]
fn what_could_not_be_kept() {
    let said = |fault: Fault| words::fault(&fault);
    assert_eq!(
        said(Fault::Full),
        "This device has no room left. Your changes are still on the screen: save a copy as a file, make room, then try again."
    );
    assert_eq!(
        said(Fault::NoAnswer),
        "Your books do not answer. Nothing was changed. Wait a little or try again; if that does not help, close all tabs and windows of the browser."
    );
    assert_eq!(
        said(Fault::NewerVersionOpen),
        "A newer version is open in another tab. This tab no longer saves: load the page again to go on here."
    );
    assert_eq!(
        said(Fault::Deleted),
        "This book was deleted in another tab. Keep what you see as a new book, or close it."
    );
    assert_eq!(
        said(Fault::Gone),
        "The browser has removed this book from the device. Keep what you see as a new book."
    );
    let causes = vec![Cause::Row { index: 0, why: "cut short".into() }];
    let stored = StoredBook { entry: None, rows: Vec::new() };
    let damage = Damage { book: BookId::from_random(1), stored, causes };
    assert_eq!(
        said(Fault::Damaged(Box::new(damage))),
        "One part of this book cannot be read. Nothing was changed or deleted: save what is stored as a file, or see what is whole."
    );
}

#[test]
fn what_could_not_be_imported() {
    let said = |error: BookFileError| words::book_file_error(&error);
    assert_eq!(said(BookFileError::Empty), "The file is empty. Choose another.");
    assert_eq!(
        said(BookFileError::Foreign { format: None }),
        "The file is something else, not a Brimwright book. Choose a book file."
    );
    assert_eq!(
        said(BookFileError::Newer { version: 2 }),
        "The file is of version 2, newer than this Brimwright knows. Update Brimwright first."
    );
    assert_eq!(
        said(BookFileError::CutShort { line: 7 }),
        "The file stops in the middle, at line 7. It may be half a download; fetch it again."
    );
    let place = Place { line: 3, column: 9, path: "drinks[0]".into(), name: String::new() };
    assert_eq!(
        said(BookFileError::Value { place, fault: FileFault::MissingField("name".into()) }),
        "Line 3, drink 1: “name” is missing. Add it, or choose another copy."
    );
    let refusal = Refusal::Field {
        key: Key::Packaging(PackagingId::from_random(4)),
        field: Field::Contents,
        problem: Problem::NotACount,
    };
    assert_eq!(
        said(BookFileError::Refused {
            key: Key::Packaging(PackagingId::from_random(4)),
            name: "Cap".into(),
            line: 12,
            refusal
        }),
        "Line 12: the packaging “Cap” cannot be taken in. What the pack holds must be a number of pieces, such as 250 ea."
    );
}
