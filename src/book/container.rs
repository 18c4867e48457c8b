//! What drinks are sold in.

use serde::{Deserialize, Serialize};

use super::{Brimful, ContainerId, OnHand, Pack, PackagingId, PackagingSetId};
use crate::foundation::measure::{Amount, Exact, Share, TypedLength, stored_by_name};

/// One kind of packaging bought by the case: a bottle, a cap, a straw.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Packaging {
    /// Its id.
    pub id: PackagingId,
    /// Its name.
    pub name: String,
    /// What part of the container set it is.
    pub part: PackagingPart,
    /// The packs it is quoted in; the first is the one bought now.
    #[serde(default)]
    pub packs: Vec<Pack>,
    /// What is here of it, when it was last counted; none where nobody counted.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub on_hand: Option<OnHand>,
}

impl Packaging {
    /// A vessel of which only the name is known.
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

/// A size on the menu: a vessel with what closes and dresses it, and how full it is poured.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Container {
    /// Its id.
    pub id: ContainerId,
    /// Its name on the menu.
    pub name: String,
    /// Volume to the rim.
    pub brimful: Brimful,
    /// What the menu or label says it holds.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub declared: Option<Amount>,
    /// What is left empty.
    pub headspace: Headspace,
    /// What one drink takes of each kind of packaging.
    pub set: Vec<PackagingUse>,
    /// And what it takes of sets that containers share.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub shared: Vec<PackagingSetId>,
}

/// Packaging that goes together, such as lid, straw and sleeve, for all containers that share it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct PackagingSet {
    /// Its id.
    pub id: PackagingSetId,
    /// Its name.
    pub name: String,
    /// What one drink takes of each kind of packaging.
    pub uses: Vec<PackagingUse>,
}

/// What is left empty under the rim.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Headspace {
    /// So much volume.
    Volume(Amount),
    /// A share of the brimful volume, in [0, 1).
    Share(Share),
    /// Down to so far under the rim.
    Height(TypedLength),
}

/// So many of one kind of packaging for one drink.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct PackagingUse {
    /// The packaging.
    pub packaging: PackagingId,
    /// How many.
    pub count: Exact,
}
