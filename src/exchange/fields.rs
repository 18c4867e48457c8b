//! The fields of a book file.

use crate::book::{BuyingList, Record, Scenario, Settings, from_json};

/// Reads one record.
pub(super) type ReadRecord = fn(&str) -> Result<Record, serde_json::Error>;

/// A field of the file.
pub(super) struct Field {
    /// Its name.
    pub(super) name: &'static str,
    /// What stands in it.
    pub(super) holds: Holds,
    /// Whether it must be there.
    pub(super) needed: bool,
}

/// What stands in a field of the file.
#[derive(Clone, Copy)]
pub(super) enum Holds {
    /// Format and version, which were looked at before.
    Header,
    /// One record.
    One(ReadRecord),
    /// One record, or null.
    OneOrNone(ReadRecord),
    /// A list of records.
    List(ReadRecord),
}

/// Every field of the file, and how what stands in it is read.
pub(super) const FIELDS: [Field; 15] = [
    field("format", Holds::Header, true),
    field("version", Holds::Header, true),
    field("settings", Holds::One(|text| from_json::<Settings>(text).map(|it| Record::Settings(Box::new(it)))), true),
    field("ingredients", Holds::List(|text| from_json(text).map(Record::Ingredient)), true),
    field("packagings", Holds::List(|text| from_json(text).map(Record::Packaging)), true),
    field("packaging-sets", Holds::List(|text| from_json(text).map(Record::PackagingSet)), false),
    field("containers", Holds::List(|text| from_json(text).map(Record::Container)), true),
    field("drinks", Holds::List(|text| from_json(text).map(Record::Drink)), true),
    field("offers", Holds::List(|text| from_json(text).map(Record::Offer)), true),
    field("weeks", Holds::List(|text| from_json(text).map(Record::Week)), false),
    field("seen-prices", Holds::List(|text| from_json(text).map(Record::SeenPrice)), false),
    field("trials", Holds::List(|text| from_json(text).map(Record::Trial)), false),
    field("scenarios", Holds::List(scenario), false),
    field("batches", Holds::List(|text| from_json(text).map(Record::Batch)), false),
    field("buying-list", Holds::OneOrNone(|text| from_json::<BuyingList>(text).map(Record::BuyingList)), false),
];

/// A scenario, with conditions that read.
fn scenario(text: &str) -> Result<Record, serde_json::Error> {
    let scenario: Scenario = from_json(text)?;
    scenario.conditions.read()?;
    Ok(Record::Scenario(scenario))
}

const fn field(name: &'static str, holds: Holds, needed: bool) -> Field {
    Field { name, holds, needed }
}
