//! Containers, and the packaging that goes with them.

use serde::{Deserialize, Serialize};

use super::{Brimful, ContainerId, OnHand, Pack, PackagingId, PackagingSetId};
use crate::foundation::measure::{Amount, Exact, Money, Share, TypedLength, stored_by_name};

/// One kind of packaging, such as a bottle, a cap or a straw.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Packaging {
    /// Its id.
    pub id: PackagingId,
    /// Its name.
    pub name: String,
    /// Its part in the container set.
    pub part: PackagingPart,
    /// The packs in which it is quoted. The first is the one that is bought now.
    #[serde(default)]
    pub packs: Vec<Pack>,
    /// Its last count, or `None` if nobody counted it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub on_hand: Option<OnHand>,
}

impl Packaging {
    /// A vessel of which only the name is known: a bottle, cup or jar without packs.
    pub fn named(id: PackagingId, name: &str) -> Packaging {
        Packaging { id, name: name.to_string(), part: PackagingPart::Vessel, packs: Vec::new(), on_hand: None }
    }
}

/// A part of a container set.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum PackagingPart {
    /// Bottle, cup or jar.
    Vessel,
    /// Cap or lid.
    Closure,
    /// Label.
    Label,
    /// Seal.
    Seal,
    /// Straw.
    Straw,
    /// Sleeve.
    Sleeve,
}

stored_by_name! {
    PackagingPart {
        Vessel = "vessel",
        Closure = "closure",
        Label = "label",
        Seal = "seal",
        Straw = "straw",
        Sleeve = "sleeve",
    }
}

/// A size on the menu: a vessel, the packaging that goes with it, and how full it is poured.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Container {
    /// Its id.
    pub id: ContainerId,
    /// Its name on the menu.
    pub name: String,
    /// Its volume to the rim.
    pub brimful: Brimful,
    /// The volume that the menu or label states.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub declared: Option<Amount>,
    /// What is left empty under the rim.
    pub headspace: Headspace,
    /// How many pieces one drink takes, each kind of packaging once.
    pub set: Vec<PackagingUse>,
    /// The sets of packaging that it shares with other containers.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub shared: Vec<PackagingSetId>,
    /// The deposit that a customer pays beside the price and gets back with the empty container.
    #[serde(default, skip_serializing_if = "Money::is_zero")]
    pub deposit: Money,
    /// The brimful volume that was brought as a starting figure. It is one as long as that volume stands.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub starting: Option<Amount>,
}

impl Container {
    /// Whether its brimful volume is a starting figure that nobody confirmed yet.
    pub fn is_starting(&self) -> bool {
        self.starting.is_some_and(|brought| self.brimful == Brimful::Weighed(brought))
    }

    /// A container poured to the rim, without packaging and a declared size.
    pub fn new(id: ContainerId, name: String, brimful: Brimful) -> Container {
        Container {
            id,
            name,
            brimful,
            declared: None,
            headspace: Headspace::Share(Share::ZERO),
            set: Vec::new(),
            shared: Vec::new(),
            deposit: Money::ZERO,
            starting: None,
        }
    }
}

/// Packaging that goes together, such as lid, straw and sleeve, and is shared by several containers.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct PackagingSet {
    /// Its id.
    pub id: PackagingSetId,
    /// Its name.
    pub name: String,
    /// How many pieces one drink takes, each kind of packaging once.
    pub uses: Vec<PackagingUse>,
}

/// What is left empty under the rim.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Headspace {
    /// This volume.
    Volume(Amount),
    /// This share of the brimful volume, in [0, 1).
    Share(Share),
    /// Down to this height under the rim.
    Height(TypedLength),
}

/// How many pieces of one kind of packaging one drink takes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct PackagingUse {
    /// The packaging.
    pub packaging: PackagingId,
    /// How many.
    pub count: Exact,
}
