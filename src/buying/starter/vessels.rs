//! Usual bottles and cups, until the owner weighs theirs full of water.
//!
//! What such a vessel holds to the rim is invented, as usual in the trade: it differs by maker.

use crate::book::{Brimful, Container, ContainerId, Headspace};
use crate::foundation::measure::{Amount, Exact, System, Unit};

/// A kind of vessel.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum VesselKind {
    /// A bottle.
    Bottle,
    /// A cup.
    Cup,
}

/// A usual bottle or cup.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Vessel {
    /// What it is.
    pub kind: VesselKind,
    /// The size that it goes by.
    pub labeled: Amount,
    /// What it holds to the rim.
    pub brimful: Amount,
}

/// Kind, size it goes by, hundredths of what it holds to the rim, unit.
const USUAL: [(VesselKind, i64, i64, Unit); 19] = [
    (VesselKind::Bottle, 2, 220, Unit::UsFluidOunce),
    (VesselKind::Bottle, 8, 860, Unit::UsFluidOunce),
    (VesselKind::Bottle, 12, 1_270, Unit::UsFluidOunce),
    (VesselKind::Bottle, 16, 1_680, Unit::UsFluidOunce),
    (VesselKind::Bottle, 32, 3_340, Unit::UsFluidOunce),
    (VesselKind::Bottle, 64, 6_600, Unit::UsFluidOunce),
    (VesselKind::Cup, 12, 1_260, Unit::UsFluidOunce),
    (VesselKind::Cup, 16, 1_660, Unit::UsFluidOunce),
    (VesselKind::Cup, 20, 2_070, Unit::UsFluidOunce),
    (VesselKind::Cup, 24, 2_480, Unit::UsFluidOunce),
    (VesselKind::Bottle, 250, 26_200, Unit::Millilitre),
    (VesselKind::Bottle, 330, 34_500, Unit::Millilitre),
    (VesselKind::Bottle, 500, 52_000, Unit::Millilitre),
    (VesselKind::Bottle, 750, 77_500, Unit::Millilitre),
    (VesselKind::Bottle, 1, 103, Unit::Litre),
    (VesselKind::Cup, 200, 22_500, Unit::Millilitre),
    (VesselKind::Cup, 300, 33_000, Unit::Millilitre),
    (VesselKind::Cup, 400, 43_500, Unit::Millilitre),
    (VesselKind::Cup, 500, 54_000, Unit::Millilitre),
];

/// Usual bottles and cups, those in the units of a book before the others.
pub fn usual(system: System) -> impl Iterator<Item = Vessel> {
    let all = || USUAL.into_iter().map(vessel);
    all().filter(move |it| it.is_of(system)).chain(all().filter(move |it| !it.is_of(system)))
}

fn vessel((kind, labeled, hundredths, unit): (VesselKind, i64, i64, Unit)) -> Vessel {
    Vessel {
        kind,
        labeled: Amount::new(Exact::new(labeled, 0), unit),
        brimful: Amount::new(Exact::new(hundredths, 2), unit),
    }
}

impl Vessel {
    /// Whether it goes by a size in the units of a book. Bottles of imperial ounces are none of these: such a book
    /// has the metric ones.
    pub fn is_of(&self, system: System) -> bool {
        let system = if system == System::UsCustomary { system } else { System::Metric };
        self.labeled.unit.belongs_to(system)
    }

    /// A new container of it, filled to the size that it goes by. What it holds to the rim is a starting figure.
    pub fn container(&self, id: ContainerId, name: String) -> Container {
        let empty = self.brimful.number.minus(self.labeled.number).unwrap_or(Exact::ZERO);
        let new = Container::new(id, name, Brimful::Weighed(self.brimful));
        Container {
            declared: Some(self.labeled),
            headspace: Headspace::Volume(Amount::new(empty, self.brimful.unit)),
            starting: Some(self.brimful),
            ..new
        }
    }
}
