//! What the starter list brings, and where it is from.

use super::{Speaker, allergen, drink_density, juice_density};
use crate::book::{Basis, Figure, StartingFigure};
use crate::buying::starter::vessels::{Vessel, VesselKind};
use crate::buying::starter::{AtOdds, Row};
use crate::foundation::measure::{Amount, Density, Mass, Share, System};
use crate::say;

/// As many facts of a row are said while a name is typed.
const FEW: usize = 3;

/// What a row brings, in a few words: "trim yield 89%, juice yield 52.5%, 68.5 g per piece".
pub fn brings(row: &Row, units: System, speaker: &Speaker) -> String {
    said(&row.figures(), units, speaker)
}

/// Figures in a few words: what is cut away first, then juice, pieces and densities.
pub fn said(figures: &[StartingFigure], units: System, speaker: &Speaker) -> String {
    let of = |wanted: Figure| figures.iter().find(|it| it.figure == wanted).map(|it| it.value);
    let share = |wanted| of(wanted).map(|value| speaker.short_percent(Share::from_fraction(value), 1));
    let density = |wanted| of(wanted).map(|value| speaker.density(Density::from_grams_per_millilitre(value)));
    let facts = [
        share(Figure::TrimYield).map(|share| say!(starter::trim_left, share = share)),
        share(Figure::PressYield).map(|share| say!(starter::juice_left, share = share)),
        of(Figure::PieceWeight).map(|value| {
            let weight = Amount::of_kept_mass(Mass::from_grams(value), units);
            say!(starter::piece_weighs, weight = speaker.amount(weight))
        }),
        density(Figure::Density).map(|density| say!(starter::weighs, density = density)),
        density(Figure::JuiceDensity).map(|density| say!(starter::juice_weighs, density = density)),
    ];
    let facts: Vec<String> = facts.into_iter().flatten().take(FEW).collect();
    if facts.is_empty() { say!(starter::name_only).to_string() } else { facts.join(", ") }
}

/// The name of a figure that the list has.
pub fn figure(figure: Figure, units: System) -> &'static str {
    match figure {
        Figure::TrimYield => say!(goods::trim_yield),
        Figure::PressYield => say!(goods::juice_yield),
        Figure::Density => drink_density(units),
        Figure::JuiceDensity => juice_density(units),
        Figure::PieceWeight => say!(goods::piece_weight),
    }
}

/// A starting figure as its field would show it, with its unit.
pub fn value(starting: StartingFigure, units: System, speaker: &Speaker) -> String {
    match starting.figure {
        Figure::TrimYield | Figure::PressYield => speaker.percent(Share::from_fraction(starting.value)),
        Figure::Density | Figure::JuiceDensity => speaker.density(Density::from_grams_per_millilitre(starting.value)),
        Figure::PieceWeight => speaker.amount(Amount::of_kept_mass(Mass::from_grams(starting.value), units)),
    }
}

/// Where a figure is from, in a sentence; with the number of its food where that is known.
pub fn basis(basis: Basis, ndb_no: Option<&str>) -> String {
    match (basis, ndb_no.filter(|number| !number.is_empty())) {
        (Basis::Sr28, Some(number)) => say!(starter::from_sr28_item, number = number),
        (Basis::Sr28, None) => say!(starter::from_sr28).to_string(),
        (Basis::Assumed, _) => say!(starter::assumed).to_string(),
        (Basis::Memory, _) => say!(starter::rule_of_thumb).to_string(),
    }
}

/// What a row usually contains, and what it can contain, each in a sentence.
pub fn offered_allergens(row: &Row) -> Vec<String> {
    let names = |certain: bool| {
        let some = row.allergens.iter().filter(|offered| offered.is_certain == certain);
        some.map(|offered| allergen(offered.allergen)).collect::<Vec<&str>>().join(", ")
    };
    let (always, sometimes) = (names(true), names(false));
    let always = (!always.is_empty()).then(|| say!(starter::usually_contains, allergens = always));
    let sometimes = (!sometimes.is_empty()).then(|| say!(starter::can_contain, allergens = sometimes));
    always.into_iter().chain(sometimes).collect()
}

/// Two figures that do not go together, in a sentence.
pub fn at_odds(found: AtOdds, units: System, speaker: &Speaker) -> String {
    let weight = |mass| speaker.amount(Amount::of_kept_mass(mass, units));
    match found {
        AtOdds::OtherTrimYield { list, own } => {
            say!(starter::other_trim_yield, list = speaker.percent(list), own = speaker.percent(own))
        }
        AtOdds::TrimmedPiece { list, own } => say!(starter::trimmed_piece, list = weight(list), own = weight(own)),
    }
}

/// A usual bottle or cup by its size: "16 oz bottle".
pub fn vessel(vessel: &Vessel, speaker: &Speaker) -> String {
    let size = speaker.size(vessel.labeled);
    match vessel.kind {
        VesselKind::Bottle => say!(starter::bottle_of, size = size),
        VesselKind::Cup => say!(starter::cup_of, size = size),
    }
}
