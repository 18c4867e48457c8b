//! The plan of a day, and the edits to it.

use crate::book::{
    Batch, Book, DrinkKind, Edit, IngredientId, Key, Make, Offer, OfferId, Ready, Record, Service, Stage,
};
use crate::foundation::measure::{Date, Exact, Overflow};

/// Days in a week.
const WEEK: u32 = 7;

/// The same numbers on another day, nothing of it done.
pub fn again(of: &Batch, day: Date) -> Batch {
    let makes = of.planned().map(|make| Make { filled: false, off_shelf: Exact::ZERO, ..*make });
    Batch { day, makes: makes.collect(), ready: Vec::new() }
}

/// Whether a drink in a size is made before anybody asks for it: as the owner says, else by its kind.
/// Pressed juices and shots are bottled; what is blended or poured over ice is made to order.
pub fn is_made_ahead(book: &Book, offer: OfferId) -> bool {
    match book.offer(offer).and_then(Offer::served) {
        Some(Service::PackagedAhead) => true,
        Some(Service::ByTheGlass) => false,
        None => {
            let kind = book.drink(offer.drink).map(|drink| drink.kind);
            matches!(kind, Some(DrinkKind::Pressed | DrinkKind::Shot))
        }
    }
}

/// A seventh of what is usually sold in a week of each of these that is made ahead, rounded up and in their
/// order; those of which no number is known, or none is sold, are left out.
///
/// # Errors
/// [`Overflow`].
pub fn usual_day(book: &Book, day: Date, offers: &mut dyn Iterator<Item = OfferId>) -> Result<Batch, Overflow> {
    let mut makes = Vec::new();
    for id in offers.filter(|id| is_made_ahead(book, *id)) {
        let OfferId { drink, container } = id;
        let offer = book.offer(id);
        let Some(weekly) = offer.and_then(|offer| offer.weekly).filter(|weekly| weekly.is_positive()) else { continue };
        let units = weekly.over(Exact::from(WEEK))?.ceiling();
        makes.push(Make { drink, container, units, filled: false, off_shelf: Exact::ZERO });
    }
    Ok(Batch { day, makes, ready: Vec::new() })
}

/// Puts a plan on its day. What came off the shelf for a plan of that day that was deleted stays
/// off: it is kept beside the new numbers.
pub fn begun(book: &Book, plan: Batch) -> Edit {
    let mut plan = plan;
    let before = book.batch(plan.day).map(|batch| batch.makes.as_slice()).unwrap_or_default();
    for was in before.iter().filter(|make| make.off_shelf.is_positive()) {
        match plan.makes.iter_mut().find(|make| make.offer() == was.offer()) {
            Some(make) => make.off_shelf = was.off_shelf,
            None => plan.makes.push(out_of_plan(was)),
        }
    }
    Edit::Put(Record::Batch(plan))
}

/// Takes the plan of a day out of the book. Where something of it came off the shelf, that alone is
/// kept, so that it comes off once whatever is planned on the day again.
pub fn deleted(book: &Book, day: Date) -> Option<Edit> {
    let batch = book.batch(day)?;
    let off = batch.makes.iter().filter(|make| make.off_shelf.is_positive());
    let makes: Vec<Make> = off.map(out_of_plan).collect();
    Some(if makes.is_empty() {
        Edit::Remove(Key::Batch(day))
    } else {
        Edit::Put(Record::Batch(Batch { day, makes, ready: Vec::new() }))
    })
}

fn out_of_plan(make: &Make) -> Make {
    Make { units: Exact::ZERO, filled: false, ..*make }
}

/// What is planned and how many of it, in the order of the plan.
pub fn planned(batch: &Batch) -> impl Iterator<Item = (OfferId, Exact)> {
    batch.planned().map(|make| (make.offer(), make.units))
}

/// What is filled and how many of it. Of a number that was changed since, those are filled that came off the
/// shelf.
pub fn made(batch: &Batch) -> impl Iterator<Item = (OfferId, Exact)> {
    let units = |make: &Make| if make.filled { make.units } else { make.off_shelf.min(make.units) };
    batch.makes.iter().map(move |make| (make.offer(), units(make))).filter(|(_, units)| units.is_positive())
}

/// What of the plan still needs what is on the shelf, and how many of it, in the order of the plan.
///
/// # Errors
/// [`Overflow`].
pub fn on_shelf(batch: &Batch) -> Result<Vec<(OfferId, Exact)>, Overflow> {
    counted(batch.makes.iter())
}

/// What is filled and not taken off the shelf yet, and how many of it.
///
/// # Errors
/// [`Overflow`].
pub fn to_take_off(batch: &Batch) -> Result<Vec<(OfferId, Exact)>, Overflow> {
    counted(batch.makes.iter().filter(|make| make.filled))
}

fn counted<'a>(makes: impl Iterator<Item = &'a Make>) -> Result<Vec<(OfferId, Exact)>, Overflow> {
    let mut counted = Vec::new();
    for make in makes {
        let units = make.on_shelf()?;
        if units.is_positive() {
            counted.push((make.offer(), units));
        }
    }
    Ok(counted)
}

/// Notes that what the filled drinks took is off the shelf.
pub fn taken_off(book: &Book, day: Date) -> Option<Edit> {
    changed(book, day, |batch| {
        for make in batch.makes.iter_mut().filter(|make| make.filled) {
            make.off_shelf = make.off_shelf.max(make.units);
        }
    })
}

/// So many of a drink; one that is not in the plan yet comes last. Another number than before is
/// not filled yet. Returns `None` if there is no batch on that day.
pub fn takes_up(book: &Book, day: Date, counts: &mut dyn Iterator<Item = (OfferId, Exact)>) -> Option<Edit> {
    changed(book, day, |batch| {
        for (offer, units) in counts {
            match batch.makes.iter_mut().find(|make| make.offer() == offer) {
                Some(make) if make.units == units => {}
                Some(make) => *make = Make { units, filled: false, ..*make },
                None => {
                    let OfferId { drink, container } = offer;
                    batch.makes.push(Make { drink, container, units, filled: false, off_shelf: Exact::ZERO });
                }
            }
        }
    })
}

/// The plan without a drink in a size. Where some of it came off the shelf, that is kept with the
/// day, so that it comes off once.
pub fn without(book: &Book, day: Date, offer: OfferId) -> Option<Edit> {
    changed(book, day, |batch| {
        batch.makes.retain(|make| make.offer() != offer || make.off_shelf.is_positive());
        for make in batch.makes.iter_mut().filter(|make| make.offer() == offer) {
            *make = out_of_plan(make);
        }
    })
}

/// Ticks that a drink is filled, or takes the tick back.
pub fn filled(book: &Book, day: Date, offer: OfferId, done: bool) -> Option<Edit> {
    changed(book, day, |batch| {
        for make in batch.makes.iter_mut().filter(|make| make.offer() == offer) {
            make.filled = done;
        }
    })
}

/// Ticks that an ingredient is brought to a stage, or takes the tick back.
pub fn ready(book: &Book, day: Date, ingredient: IngredientId, stage: Stage, done: bool) -> Option<Edit> {
    let tick = Ready { ingredient, stage };
    changed(book, day, |batch| {
        batch.ready.retain(|ready| *ready != tick);
        if done {
            batch.ready.push(tick);
        }
    })
}

fn changed(book: &Book, day: Date, change: impl FnOnce(&mut Batch)) -> Option<Edit> {
    let mut batch = book.batch(day)?.clone();
    change(&mut batch);
    Some(Edit::Put(Record::Batch(batch)))
}
