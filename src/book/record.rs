//! Records and their keys. A record is the unit of change and of storage.

use std::fmt;

use serde::{Deserialize, Serialize};

use super::{
    Batch, BuyingList, Container, ContainerId, Drink, DrinkId, Goods, Ingredient, IngredientId, Offer, OfferId, Pack,
    Packaging, PackagingId, PackagingSet, PackagingSetId, Scenario, ScenarioId, Scope, SeenPrice, SeenPriceId,
    Settings, Trial, TrialId, Week,
};
use crate::foundation::measure::Date;

/// The key of a record: its kind and id.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Key {
    /// The book's settings.
    Settings,
    /// An ingredient.
    Ingredient(IngredientId),
    /// Packaging.
    Packaging(PackagingId),
    /// A set of packaging that containers share.
    PackagingSet(PackagingSetId),
    /// A container.
    Container(ContainerId),
    /// A drink.
    Drink(DrinkId),
    /// An offer.
    Offer(OfferId),
    /// What was sold in the week that begins on this Monday.
    Week(Date),
    /// A price seen elsewhere.
    SeenPrice(SeenPriceId),
    /// A trial.
    Trial(TrialId),
    /// A scenario.
    Scenario(ScenarioId),
    /// What is made on this day.
    Batch(Date),
    /// What is to be bought.
    BuyingList,
}

impl Key {
    /// Reads what [`Key`] displays, such as `drink:a1`. Returns `None` for anything else.
    pub fn from_text(text: &str) -> Option<Key> {
        let Some((kind, id)) = text.split_once(':') else {
            return match text {
                "settings" => Some(Key::Settings),
                "buying-list" => Some(Key::BuyingList),
                _ => None,
            };
        };
        match kind {
            "ingredient" => IngredientId::from_text(id).map(Key::Ingredient),
            "packaging" => PackagingId::from_text(id).map(Key::Packaging),
            "packaging-set" => PackagingSetId::from_text(id).map(Key::PackagingSet),
            "container" => ContainerId::from_text(id).map(Key::Container),
            "drink" => DrinkId::from_text(id).map(Key::Drink),
            "offer" => OfferId::from_text(id).map(Key::Offer),
            "week" => Date::from_text(id).map(Key::Week),
            "seen-price" => SeenPriceId::from_text(id).map(Key::SeenPrice),
            "trial" => TrialId::from_text(id).map(Key::Trial),
            "scenario" => ScenarioId::from_text(id).map(Key::Scenario),
            "batch" => Date::from_text(id).map(Key::Batch),
            _ => None,
        }
    }
}

/// `kind:id`, such as `drink:a1`.
impl fmt::Display for Key {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Key::Settings => f.write_str("settings"),
            Key::Ingredient(id) => write!(f, "ingredient:{id}"),
            Key::Packaging(id) => write!(f, "packaging:{id}"),
            Key::PackagingSet(id) => write!(f, "packaging-set:{id}"),
            Key::Container(id) => write!(f, "container:{id}"),
            Key::Drink(id) => write!(f, "drink:{id}"),
            Key::Offer(id) => write!(f, "offer:{id}"),
            Key::Week(monday) => write!(f, "week:{monday}"),
            Key::SeenPrice(id) => write!(f, "seen-price:{id}"),
            Key::Trial(id) => write!(f, "trial:{id}"),
            Key::Scenario(id) => write!(f, "scenario:{id}"),
            Key::Batch(day) => write!(f, "batch:{day}"),
            Key::BuyingList => f.write_str("buying-list"),
        }
    }
}

impl From<Goods> for Key {
    fn from(goods: Goods) -> Key {
        match goods {
            Goods::Ingredient(id) => Key::Ingredient(id),
            Goods::Packaging(id) => Key::Packaging(id),
        }
    }
}

/// A record of any kind.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Record {
    /// The book's settings.
    Settings(Box<Settings>),
    /// An ingredient.
    Ingredient(Ingredient),
    /// Packaging.
    Packaging(Packaging),
    /// A set of packaging that containers share.
    PackagingSet(PackagingSet),
    /// A container.
    Container(Container),
    /// A drink.
    Drink(Drink),
    /// An offer.
    Offer(Offer),
    /// What was sold in a week.
    Week(Week),
    /// A price seen elsewhere.
    SeenPrice(SeenPrice),
    /// A trial.
    Trial(Trial),
    /// A scenario.
    Scenario(Scenario),
    /// What is made on a day.
    Batch(Batch),
    /// What is to be bought.
    BuyingList(BuyingList),
}

impl Record {
    /// Its key.
    pub fn key(&self) -> Key {
        match self {
            Record::Settings(_) => Key::Settings,
            Record::Ingredient(record) => Key::Ingredient(record.id),
            Record::Packaging(record) => Key::Packaging(record.id),
            Record::PackagingSet(record) => Key::PackagingSet(record.id),
            Record::Container(record) => Key::Container(record.id),
            Record::Drink(record) => Key::Drink(record.id),
            Record::Offer(record) => Key::Offer(record.id()),
            Record::Week(record) => Key::Week(record.monday),
            Record::SeenPrice(record) => Key::SeenPrice(record.id),
            Record::Trial(record) => Key::Trial(record.id),
            Record::Scenario(record) => Key::Scenario(record.id),
            Record::Batch(record) => Key::Batch(record.day),
            Record::BuyingList(_) => Key::BuyingList,
        }
    }

    /// Its name; empty for an offer, which is called after its drink and container, and for what
    /// is called after a day; the place for a price seen elsewhere.
    pub fn name(&self) -> &str {
        match self {
            Record::Settings(record) => &record.name,
            Record::Ingredient(record) => &record.name,
            Record::Packaging(record) => &record.name,
            Record::PackagingSet(record) => &record.name,
            Record::Container(record) => &record.name,
            Record::Drink(record) => &record.name,
            Record::Offer(_) | Record::Week(_) | Record::Batch(_) | Record::BuyingList(_) => "",
            Record::SeenPrice(record) => &record.place,
            Record::Trial(record) => &record.name,
            Record::Scenario(record) => &record.name,
        }
    }

    /// The ingredient, if it is one.
    pub fn ingredient(&self) -> Option<&Ingredient> {
        if let Record::Ingredient(record) = self { Some(record) } else { None }
    }

    /// The packaging, if it is one.
    pub fn packaging(&self) -> Option<&Packaging> {
        if let Record::Packaging(record) = self { Some(record) } else { None }
    }

    /// The set of packaging, if it is one.
    pub fn packaging_set(&self) -> Option<&PackagingSet> {
        if let Record::PackagingSet(record) = self { Some(record) } else { None }
    }

    /// The container, if it is one.
    pub fn container(&self) -> Option<&Container> {
        if let Record::Container(record) = self { Some(record) } else { None }
    }

    /// The drink, if it is one.
    pub fn drink(&self) -> Option<&Drink> {
        if let Record::Drink(record) = self { Some(record) } else { None }
    }

    /// The offer, if it is one.
    pub fn offer(&self) -> Option<&Offer> {
        if let Record::Offer(record) = self { Some(record) } else { None }
    }

    /// The week's sales, if it is that.
    pub fn week(&self) -> Option<&Week> {
        if let Record::Week(record) = self { Some(record) } else { None }
    }

    /// The price seen elsewhere, if it is one.
    pub fn seen_price(&self) -> Option<&SeenPrice> {
        if let Record::SeenPrice(record) = self { Some(record) } else { None }
    }

    /// The trial, if it is one.
    pub fn trial(&self) -> Option<&Trial> {
        if let Record::Trial(record) = self { Some(record) } else { None }
    }

    /// The scenario, if it is one.
    pub fn scenario(&self) -> Option<&Scenario> {
        if let Record::Scenario(record) = self { Some(record) } else { None }
    }

    /// The batch, if it is one.
    pub fn batch(&self) -> Option<&Batch> {
        if let Record::Batch(record) = self { Some(record) } else { None }
    }

    /// The buying list, if it is one.
    pub fn buying_list(&self) -> Option<&BuyingList> {
        if let Record::BuyingList(record) = self { Some(record) } else { None }
    }

    /// The packs in which it is quoted, if it is goods.
    pub fn packs_mut(&mut self) -> Option<&mut Vec<Pack>> {
        match self {
            Record::Ingredient(record) => Some(&mut record.packs),
            Record::Packaging(record) => Some(&mut record.packs),
            Record::Settings(_)
            | Record::PackagingSet(_)
            | Record::Container(_)
            | Record::Drink(_)
            | Record::Offer(_)
            | Record::Week(_)
            | Record::SeenPrice(_)
            | Record::Trial(_)
            | Record::Scenario(_)
            | Record::Batch(_)
            | Record::BuyingList(_) => None,
        }
    }

    /// The keys of the records to which this one refers.
    pub fn needs(&self) -> Vec<Key> {
        match self {
            Record::Settings(_) | Record::Ingredient(_) | Record::Packaging(_) | Record::SeenPrice(_) => Vec::new(),
            Record::PackagingSet(record) => record.uses.iter().map(|used| Key::Packaging(used.packaging)).collect(),
            Record::Container(record) => {
                let own = record.set.iter().map(|used| Key::Packaging(used.packaging));
                own.chain(record.shared.iter().map(|id| Key::PackagingSet(*id))).collect()
            }
            Record::Drink(record) => record.lines.iter().map(|line| Key::Ingredient(line.ingredient)).collect(),
            Record::Offer(record) => of_offer(record.id()).to_vec(),
            Record::Week(record) => record.sold.iter().flat_map(|sold| of_offer(sold.offer())).collect(),
            Record::Trial(record) => match record.scope {
                Scope::Drink(drink) => vec![Key::Drink(drink)],
                Scope::Menu | Scope::Kind(_) => Vec::new(),
            },
            Record::Scenario(record) => record.offers.iter().flat_map(|offer| of_offer(offer.id())).collect(),
            Record::Batch(record) => record.makes.iter().flat_map(|make| of_offer(make.offer())).collect(),
            Record::BuyingList(record) => record.lines.iter().map(|line| Key::from(line.goods)).collect(),
        }
    }
}

/// The drink and the container of an offer.
fn of_offer(id: OfferId) -> [Key; 2] {
    [Key::Drink(id.drink), Key::Container(id.container)]
}
