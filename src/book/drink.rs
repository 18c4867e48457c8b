//! Drinks and their recipes.

use serde::{Deserialize, Serialize};

use super::{DrinkId, Filling, IngredientId, LineId, OfferId, Stage};
use crate::foundation::measure::{Amount, Date, Exact, Money, Share, Time, stored_by_name};

/// A drink: a recipe that is written once, at a reference size, for every size in which it is sold.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Drink {
    /// Its id.
    pub id: DrinkId,
    /// Its name on the menu.
    pub name: String,
    /// How it is made.
    pub kind: DrinkKind,
    /// The volume at which the recipe is written.
    pub reference: Amount,
    /// The recipe, in the order of adding.
    pub lines: Vec<Line>,
    /// The air beaten in, as a share of the volume of what is mixed, 0 or more.
    #[serde(default, skip_serializing_if = "Share::is_zero")]
    pub air: Share,
    /// What is left in the press or jug, as a share of what is made, in [0, 1).
    #[serde(default)]
    pub process_loss: Share,
    /// Hands' time.
    #[serde(default)]
    pub labour: Labour,
    /// Paid per drink for treatment, such as a toll for treating it under pressure.
    #[serde(default, rename = "toll")]
    pub treatment_fee: Money,
    /// The share of what is made that is thrown away, in [0, 1). Without one, the book's holds.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub unsold: Option<Share>,
    /// The target margin, in [0, 1). Without one, the book's holds.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub target: Option<Share>,
    /// Its tax rate, 0 or more. Without one, that of its kind holds, and without that the book's.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tax_rate: Option<Share>,
    /// Whether the drink is treated so that of 100,000 germs at most one is left (5 log), such
    /// as by pressure or by heat.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub treated: bool,
    /// Its measured pH, from 1 to 14, or `None` if nobody measured it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub ph: Option<Exact>,
    /// Whether it must be kept refrigerated, by the owner's food-safety plan.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub keep_refrigerated: bool,
    /// How many days after the day of making it may be used, by the owner's food-safety plan: a whole number,
    /// 0 to 730, or `None` if it was not entered.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub keeps_days: Option<Exact>,
}

impl Drink {
    /// A drink without a recipe, and without other costs.
    pub fn new(id: DrinkId, name: String, kind: DrinkKind, reference: Amount) -> Drink {
        Drink {
            id,
            name,
            kind,
            reference,
            lines: Vec::new(),
            air: Share::ZERO,
            process_loss: Share::ZERO,
            labour: Labour::default(),
            treatment_fee: Money::ZERO,
            unsold: None,
            target: None,
            tax_rate: None,
            treated: false,
            ph: None,
            keep_refrigerated: false,
            keeps_days: None,
        }
    }

    /// The last day on which it may be used if it was made on `made`. Returns `None` if the book has no number
    /// of days.
    pub fn use_by(&self, made: Date) -> Option<Date> {
        let days = self.keeps_days?.whole_parts(0)?;
        Some(made.plus_days(i32::try_from(days).ok()?))
    }
}

/// How a drink is made.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum DrinkKind {
    /// Pressed juice.
    Pressed,
    /// Blended, such as a smoothie.
    Blended,
    /// Poured over ice.
    OverIce,
    /// A shot.
    Shot,
}

stored_by_name! {
    DrinkKind {
        Pressed = "pressed",
        Blended = "blended",
        OverIce = "over-ice",
        Shot = "shot",
    }
}

/// How a drink in a container reaches the customer.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Service {
    /// Closed before anybody asks for it.
    PackagedAhead,
    /// Made or poured when somebody asks for it.
    ByTheGlass,
}

stored_by_name! {
    Service {
        PackagedAhead = "packaged-ahead",
        ByTheGlass = "by-the-glass",
    }
}

/// One ingredient of a recipe.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Line {
    /// Its id within the drink.
    pub id: LineId,
    /// The ingredient.
    pub ingredient: IngredientId,
    /// The stage at which the amount is meant.
    pub stage: Stage,
    /// The amount at the reference size. Pieces are pieces as bought.
    pub amount: Amount,
    /// How it scales with the size.
    pub scaling: Scaling,
    /// How it is in the glass, if it is ice.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub ice: Option<Ice>,
    /// Whether it goes straight into the glass: nothing of it stays in the press or jug.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub in_glass: bool,
}

impl Line {
    /// Whether it is ice that is put into the glass.
    pub fn is_ice_in_glass(&self) -> bool {
        self.ice.is_some_and(|ice| ice.place != IcePlace::BlendedIn)
    }

    /// Whether it is mixed in the press or jug: air is beaten into it, and some of it stays behind.
    pub fn is_mixed(&self) -> bool {
        !self.in_glass && !self.is_ice_in_glass()
    }
}

/// The ice of a line. A volume of it is that of a heap of cubes, as in a scoop.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Ice {
    /// Where it is in the drink.
    pub place: IcePlace,
    /// The share of a scoop that is ice and not the air between the cubes, in (0, 1].
    #[serde(default = "Ice::usual_packing")]
    pub packing: Share,
    /// The share of blended ice that melts before it is poured, in [0, 1].
    #[serde(default, skip_serializing_if = "Share::is_zero")]
    pub melted: Share,
}

impl Ice {
    /// Ice of a scoop with the usual share of air, of which nothing melts.
    pub const fn in_a_scoop(place: IcePlace) -> Ice {
        Ice { place, packing: Ice::usual_packing(), melted: Share::ZERO }
    }

    /// Whether it floats freely.
    pub fn floats(self) -> bool {
        self.place == IcePlace::Floating
    }

    /// The share of it that melts before the drink is poured: only what is blended in does.
    pub fn melts(self) -> Share {
        if self.place == IcePlace::BlendedIn { self.melted } else { Share::ZERO }
    }

    /// The usual share. Cubes poured at random fill 0.54 (loose) to 0.67 (dense) of a space: Baker and
    /// Kudrolli, Phys. Rev. E 82, 061304 (2010). That is for plastic cubes, so a guide only; this is the
    /// middle.
    pub const fn usual_packing() -> Share {
        Share::from_fraction(Exact::new(6, 1))
    }
}

/// Where ice is in a drink.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum IcePlace {
    /// Blended in with the rest.
    BlendedIn,
    /// In the glass, held under the fill line.
    HeldUnder,
    /// In the glass, floating freely: it displaces its own mass of the liquid.
    Floating,
}

stored_by_name! {
    IcePlace {
        BlendedIn = "blended-in",
        HeldUnder = "held-under",
        Floating = "floating",
    }
}

/// How a line scales with the size of the drink.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Scaling {
    /// In proportion to the drink.
    InProportion,
    /// The same in every size.
    Fixed,
    /// In proportion, rounded to a whole number of these steps, half a step upwards.
    Stepped(Amount),
    /// It takes what the other lines leave, so that the drink meets its fill. At most one line does.
    TopUp,
}

/// Hands' time for a drink.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Labour {
    /// Per drink, whatever its size.
    #[serde(default)]
    pub per_drink: Time,
    /// Per litre of drink.
    #[serde(default)]
    pub per_litre: Time,
    /// For a whole batch, divided among its drinks.
    #[serde(default)]
    pub per_batch: Time,
    /// Drinks in a batch, at least 1. It counts where the batch has no volume.
    #[serde(default = "Exact::one", skip_serializing_if = "Exact::is_one")]
    pub batch: Exact,
    /// The volume of a batch: each drink then bears the share of the time that is its share of the volume.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub batch_volume: Option<Amount>,
}

/// No time, for a batch of one drink.
impl Default for Labour {
    fn default() -> Labour {
        Labour {
            per_drink: Time::ZERO,
            per_litre: Time::ZERO,
            per_batch: Time::ZERO,
            batch: Exact::ONE,
            batch_volume: None,
        }
    }
}

/// A drink sold in a container, and the price asked for it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Offer {
    /// The drink.
    pub drink: DrinkId,
    /// The container.
    pub container: super::ContainerId,
    /// The menu price, or `None` if there is none yet.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub price: Option<Money>,
    /// How many are usually sold in a week, or `None` if that is not known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub weekly: Option<Exact>,
    /// The day from which written weeks tell how many are sold: those that begin before it are of another menu. It is
    /// `None` where all weeks tell.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub weekly_from: Option<Date>,
    /// How full the package must be, if the drink is packaged ahead of sale.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub filling: Option<Filling>,
    /// How it reaches the customer, or `None` if nobody said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub service: Option<Service>,
}

impl Offer {
    /// A drink in a container, with no price yet.
    pub fn new(id: OfferId) -> Offer {
        Offer {
            drink: id.drink,
            container: id.container,
            price: None,
            weekly: None,
            weekly_from: None,
            filling: None,
            service: None,
        }
    }

    /// The offer as it stands in a changed menu: where another number is expected than `today`'s, written weeks tell
    /// from the Monday `from` on only.
    pub fn expected_from(&self, today: Option<&Offer>, from: Date) -> Offer {
        let other = today.is_some_and(|today| today.weekly != self.weekly);
        Offer { weekly_from: if other { Some(from) } else { self.weekly_from }, ..self.clone() }
    }

    /// Its id: the pair of drink and container.
    pub fn id(&self) -> OfferId {
        OfferId { drink: self.drink, container: self.container }
    }

    /// How it reaches the customer. An offer with a rule for its fill is packaged ahead, whatever else is said
    /// of it. Returns `None` if nobody said.
    pub fn served(&self) -> Option<Service> {
        if self.filling.is_some() { Some(Service::PackagedAhead) } else { self.service }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Book, Record};
    use crate::support::settings;

    #[test]
    fn a_stored_drink_may_leave_out_what_is_nothing() {
        let stored = r#"{"id": "1", "name": "Water", "kind": "shot", "reference": "2 fl oz", "lines": []}"#;
        let drink: Drink = serde_json::from_str(stored).unwrap();
        assert_eq!(drink.labour.batch, Exact::ONE);
        let records = [Record::Settings(Box::new(settings())), Record::Drink(drink)];
        assert_eq!(Book::from_records(records).map(|_| ()), Ok(()));
    }
}
