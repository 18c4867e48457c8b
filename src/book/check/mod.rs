//! The checks of a record's values, before it is put in the book.

mod conditions;
mod containers;
mod days;
mod drinks;
mod goods;
mod settings;
#[cfg(test)]
mod tests;
mod values;

use super::{Record, Refusal};

pub(super) use conditions::conditions;

/// Checks a record's own values. References are checked by the book. The checks depend on nothing else
/// in the book, so that a record that was in it once can always be put back.
///
/// # Errors
/// [`Refusal::Field`] at the first value that does not hold.
pub(super) fn record(record: &Record) -> Result<(), Refusal> {
    let checked = match record {
        Record::Settings(record) => settings::settings(record),
        Record::Ingredient(record) => goods::ingredient(record),
        Record::Packaging(record) => goods::packaging(record),
        Record::PackagingSet(record) => containers::packaging_set(record),
        Record::Container(record) => containers::container(record),
        Record::Drink(record) => drinks::drink(record),
        Record::Offer(record) => drinks::offer(record),
        Record::Week(record) => days::week(record),
        Record::SeenPrice(record) => days::seen_price(record),
        Record::Trial(record) => days::trial(record),
        Record::Scenario(record) => drinks::scenario(record),
        Record::Batch(record) => days::batch(record),
        Record::BuyingList(record) => goods::buying_list(record),
    };
    checked.map_err(|(field, problem)| Refusal::Field { key: record.key(), field, problem })
}
