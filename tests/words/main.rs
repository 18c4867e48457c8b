//! Every error says what is wrong, why, and how to mend it. The sentences are asserted to the
//! letter: they are what a person is left alone with.

mod bars;
mod batches;
mod buying_list;
mod counter;
mod decisions;
mod estimates;
mod files;
mod fills;
mod ingredient_list;
mod jumps;
mod keeping;
mod labels;
mod law;
mod levers;
mod measures;
mod packages;
mod quotes;
mod restore_points;
mod sales;
mod sheets;
mod sizes;
mod starting;
mod steps;
mod table;
mod varying;
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
        headspace: Headspace::Volume(ounces(1)),
        ..Container::new(BOTTLE, "Bottle".into(), Brimful::Weighed(ounces(16)))
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
    assert_eq!(said(ReadError::Empty), "This field is empty. Type a number, such as 12.5.");
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
        "“x” is not a price ending. Type endings with spaces between, such as 12.5."
    );
    assert_eq!(
        said(ReadError::UnknownUnit { unit: "stone".into() }),
        "“stone” is not a known unit. Use fl oz, mL, cup, lb, oz, g or ea, such as 12.5."
    );
    assert_eq!(
        said(ReadError::WrongKind { unit: Unit::Pound, wanted: &[Dimension::Volume] }),
        "“lb” is a weight. Type a volume, such as 12.5."
    );
    assert_eq!(said(ReadError::Negative), "This cannot be below zero. Leave out the minus sign: 12.5.");
    assert_eq!(said(ReadError::TooLarge), "This number has more than nine digits. Check for an extra digit.");
    assert_eq!(said(ReadError::TooFine), "This number has more than six decimals. Round to six.");
}

#[test]
fn what_was_refused() {
    let book = book();
    let key = Key::Ingredient(GINGER);
    let said = |refusal: Refusal| words::refusal(&refusal, &book);
    let at = |field, problem| said(Refusal::Field { key, field, problem });
    assert_eq!(at(Field::Name, Problem::Empty), "Name: nothing typed. Type at least one letter.");
    assert_eq!(at(Field::Name, Problem::TooLong), "Name: over 80 letters. Shorten the text.");
    assert_eq!(
        at(Field::Contents, Problem::NotPositive),
        "Pack size: must be more than zero. Type a number such as 12."
    );
    assert_eq!(at(Field::PackPrice, Problem::Negative), "Case price: cannot be below zero. Leave out the minus sign.");
    assert_eq!(
        at(Field::TrimYield, Problem::NotAYield),
        "Trim yield: must be above 0% and at most 100%. Type 90 if 90% is left."
    );
    assert_eq!(
        at(Field::Target, Problem::NotAShare),
        "Target margin: must be at least 0% and under 100%. Type 5 for 5%."
    );
    assert_eq!(
        at(Field::Headspace, Problem::NothingFits),
        "Headspace: leaves no room for a drink. Type a smaller one."
    );
    assert_eq!(
        at(Field::Declared, Problem::MoreThanBrimful),
        "Labeled size: more than the container holds. Check the brimful capacity."
    );
    assert_eq!(
        at(Field::Endings, Problem::NotAnEnding),
        "Price endings: each must be under one, such as 0.50 0.95 (under 100 without cents)."
    );
    assert_eq!(
        at(Field::WeighedBought, Problem::NotAWeight),
        "Weight as purchased: must be a weight, such as 5 lb or 2 kg."
    );
    assert_eq!(
        at(Field::WeighedPressed, Problem::MoreThanBefore),
        "Juice: more than the weight before. Trimming and pressing add no weight: weigh again."
    );
    assert_eq!(at(Field::Makes, Problem::NotWhole), "Drinks to make: must be a whole number, such as 12.");
    assert_eq!(at(Field::OnHand, Problem::Negative), "On hand: cannot be below zero. Leave out the minus sign.");
    assert_eq!(
        at(Field::PacksToBuy, Problem::NotPositive),
        "Packs to buy: must be more than zero. Type a number such as 12."
    );
    assert_eq!(
        at(Field::PriceDays, Problem::LessThanOne),
        "Flag prices older than: must be at least 1. Type a number such as 12."
    );
    assert_eq!(
        at(Field::ScaleStep, Problem::NotPositive),
        "Scale rounds to: must be more than zero. Type a number such as 12."
    );
    assert_eq!(
        at(Field::Batch, Problem::LessThanOne),
        "Drinks per batch: must be at least 1. Type a number such as 12."
    );
    assert_eq!(
        said(Refusal::Missing { key, needed_by: None }),
        "No longer in your book: ingredient. Undo the removal, or go back."
    );
    assert_eq!(
        said(Refusal::InUse { key, by: vec![key, key, key, key, key] }),
        "Ginger is used in Ginger; Ginger; Ginger and 2 more. Replace or remove Ginger there first."
    );
}

#[test]
fn what_cannot_be_computed() {
    let book = book();
    let drink = DrinkId::from_random(2);
    let said = |error: OfferError| words::offer_error(&error, &book);
    assert_eq!(said(OfferError::Scale(ScaleError::NoLines(drink))), "The recipe is empty. Add an ingredient.");
    assert_eq!(
        said(OfferError::Missing(Key::Drink(drink))),
        "The drink of this size is gone. Remove the size, then add the size again."
    );
    assert_eq!(
        said(OfferError::Cost(CostError::Missing(Key::Packaging(PackagingId::from_random(4))))),
        "The cost uses packaging that is gone. Remove that packaging where you use it."
    );
    assert_eq!(
        said(OfferError::Scale(ScaleError::Missing(Key::Ingredient(GINGER)))),
        "The recipe uses an ingredient that is gone. Remove that line."
    );
    assert_eq!(
        said(OfferError::Scale(ScaleError::FixedLinesOverflow { drink, over: ounces(250) })),
        "The fixed amounts are 2.5\u{a0}fl oz too much for this size. Lower them, or let them scale with size."
    );
    assert_eq!(
        said(OfferError::Scale(ScaleError::NothingScales { drink, short: ounces(50) })),
        "Every amount is fixed, so this size is 0.50\u{a0}fl oz short. Let one ingredient scale with size."
    );
    assert_eq!(
        said(OfferError::Cost(CostError::NoPack(Goods::Ingredient(GINGER)))),
        "Needs: case price of Ginger. Enter pack size and case price in Buying."
    );
    let lacks = |error| said(OfferError::Cost(CostError::Yield(error)));
    assert_eq!(
        lacks(YieldError::NoPressYield(GINGER)),
        "Needs: juice yield of Ginger. Weigh what you press and the juice you get. Enter the share."
    );
    assert_eq!(
        lacks(YieldError::NoJuiceDensity(GINGER)),
        "Needs: weight per cup of Ginger juice. You weigh in one place and pour by volume in another. Enter the weight of one cup."
    );
    assert_eq!(
        lacks(YieldError::NoDensity(GINGER)),
        "Needs: weight per cup of Ginger in drinks. You weigh in one place and pour by volume in another. Enter the weight of one cup."
    );
    assert_eq!(lacks(YieldError::NoPieceWeight(GINGER)), "Needs: weight per piece of Ginger. Weigh one as purchased.");
    assert_eq!(
        lacks(YieldError::NoSoakYield(GINGER)),
        "Needs: soaked or brewed weight of Ginger. Enter the weight after as a share of the weight before."
    );
    assert_eq!(
        said(OfferError::Fill(FillError::NothingFits(BOTTLE))),
        "The headspace of Bottle leaves no room for a drink. Make the headspace smaller."
    );
    assert_eq!(
        said(OfferError::Arithmetic(Overflow::TooLarge)),
        "These numbers are too large. Check for an extra digit."
    );
    assert_eq!(
        said(OfferError::Arithmetic(Overflow::RootOfNegative)),
        "Something here is below zero and must not be. Check for a minus sign."
    );
    assert_eq!(
        words::price_error(&PriceError::NoPriceReaches { target: percent(95), highest: percent(94) }),
        "No price reaches a 95.0% margin. Fees and commission leave less than 94.0% of any price. Lower the target or the fees."
    );
}

#[test]
fn what_could_not_be_kept() {
    let said = |fault: Fault| words::fault(&fault);
    assert_eq!(
        said(Fault::Full),
        "This device is out of space. Your changes are still on the screen. Save a copy, free up space, then try again."
    );
    assert_eq!(
        said(Fault::NoAnswer),
        "Your books did not open. Nothing was changed. Wait a moment, then try again. If that fails, close every window of your browser."
    );
    assert_eq!(
        said(Fault::NewerVersionOpen),
        "Another tab has a newer version open. This tab no longer saves. Reload this page to go on."
    );
    assert_eq!(
        said(Fault::Deleted),
        "This book was deleted in another tab. Save what you see as a new book, or close it."
    );
    assert_eq!(said(Fault::Gone), "Your browser removed this book from the device. Save what you see as a new book.");
    let causes = vec![Cause::Row { index: 0, why: "cut short".into() }];
    let stored = StoredBook { entry: None, rows: Vec::new() };
    let damage = Damage { book: BookId::from_random(1), stored, causes };
    assert_eq!(
        said(Fault::Damaged(Box::new(damage))),
        "1 part of this book cannot be read. Nothing was changed or deleted. Save the stored data, or show the readable parts."
    );
}

#[test]
fn what_could_not_be_imported() {
    let said = |error: BookFileError| words::book_file_error(&error);
    assert_eq!(said(BookFileError::Empty), "This file is empty. Choose another file.");
    assert_eq!(
        said(BookFileError::Foreign { format: None }),
        "This file is not a Brimwright book. Choose a book file."
    );
    assert_eq!(
        said(BookFileError::Newer { version: 2 }),
        "This file has version 2, newer than this Brimwright. Update Brimwright first."
    );
    assert_eq!(said(BookFileError::CutShort { line: 7 }), "This file stops early, at line 7. Download the file again.");
    let place = Place { line: 3, column: 9, path: "drinks[0]".into(), name: String::new() };
    assert_eq!(
        said(BookFileError::Value { place, fault: FileFault::MissingField("name".into()) }),
        "Line 3, drink 1: “name” is missing. Add that field, or choose another copy."
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
        "Line 12, packaging “Cap”: Not imported. Pack size: must be a number of pieces, such as 250 ea."
    );
}
