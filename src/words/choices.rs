//! Names of choices, in trade words.

use crate::book::{DrinkKind, FillRule, IcePlace, PackagingPart, Produce, Scaling, Service, Stage, TaxPlace};
use crate::drink::fill::Known;
use crate::drink::ledger::OfferStatus;
use crate::foundation::measure::System;

/// What an amount in a recipe means.
pub const fn stage(stage: Stage) -> &'static str {
    match stage {
        Stage::AsBought => "as bought",
        Stage::Trimmed => "trimmed",
        Stage::Pressed => "pressed",
        Stage::SoakedOrBrewed => "soaked or brewed",
    }
}

/// How a line follows the size.
pub const fn scaling(scaling: Scaling) -> &'static str {
    match scaling {
        Scaling::InProportion => "in proportion",
        Scaling::Fixed => "fixed",
        Scaling::Stepped(_) => "in steps",
        Scaling::TopUp => "top-up",
    }
}

/// Where ice is in a drink.
pub const fn ice_place(place: IcePlace) -> &'static str {
    match place {
        IcePlace::BlendedIn => "blended in",
        IcePlace::HeldUnder => "held under the line",
        IcePlace::Floating => "floating",
    }
}

/// A rule for the contents of packages.
pub const fn fill_rule(rule: FillRule) -> &'static str {
    match rule {
        FillRule::Average => "Average only",
        FillRule::EuropeanOrBritish => "European Union or United Kingdom (76/211/EEC)",
        FillRule::UnitedStates => "United States (NIST Handbook 133)",
    }
}

/// How a drink is made.
pub const fn drink_kind(kind: DrinkKind) -> &'static str {
    match kind {
        DrinkKind::Pressed => "Pressed",
        DrinkKind::Blended => "Blended",
        DrinkKind::OverIce => "Over ice",
        DrinkKind::Shot => "Shot",
    }
}

/// Whether an ingredient is fruit or vegetable, and treated.
pub const fn produce(produce: Option<Produce>) -> &'static str {
    match produce {
        None => "Not said yet",
        Some(Produce::Raw) => "Raw fruit, vegetable, juice or purée",
        Some(Produce::Treated) => "Treated (5-log), such as pasteurized juice",
        Some(Produce::Neither) => "Neither fruit nor vegetable",
    }
}

/// Whether a drink is treated.
pub const fn treatment(treated: bool) -> &'static str {
    if treated { "Treated (5-log, such as HPP)" } else { "Not treated" }
}

/// Whether a drink must be kept refrigerated.
pub const fn keep_refrigerated(keep_refrigerated: bool) -> &'static str {
    if keep_refrigerated { "Keep refrigerated" } else { "Not entered" }
}

/// How a drink in a container reaches the customer.
pub const fn service(service: Option<Service>) -> &'static str {
    match service {
        None => "Not said yet",
        Some(Service::PackagedAhead) => "Packaged ahead",
        Some(Service::ByTheGlass) => "By the glass",
    }
}

/// A part of the container set.
pub const fn packaging_part(part: PackagingPart) -> &'static str {
    match part {
        PackagingPart::Vessel => "Bottle, cup or jar",
        PackagingPart::Closure => "Cap or lid",
        PackagingPart::Label => "Label",
        PackagingPart::Seal => "Seal",
        PackagingPart::Straw => "Straw",
        PackagingPart::Sleeve => "Sleeve",
    }
}

/// How what a container holds is known.
pub const fn known(known: Known) -> &'static str {
    match known {
        Known::Weighed => "weighed with water",
        Known::Measured => "by its measures",
        Known::Poured => "by pouring",
    }
}

/// Where the tax stands.
pub const fn tax_place(place: TaxPlace) -> &'static str {
    match place {
        TaxPlace::InThePrice => "Inside the menu price",
        TaxPlace::AddedAtTheTill => "Added at the till",
    }
}

/// A system of units.
pub const fn system(system: System) -> &'static str {
    match system {
        System::UsCustomary => "US customary",
        System::Metric => "Metric",
        System::Imperial => "Imperial",
    }
}

/// Where an offer stands.
pub const fn offer_status(status: OfferStatus) -> &'static str {
    match status {
        OfferStatus::CannotCompute => "cannot be computed",
        OfferStatus::UnderTarget => "under target",
        OfferStatus::WithoutPrice => "no price yet",
        OfferStatus::OnTarget => "on target",
    }
}
