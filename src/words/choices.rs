//! Names of choices.

use crate::book::{
    CommissionBase, DrinkKind, FillRule, IcePlace, OverheadPer, PackagingPart, Produce, Scaling, Service, Stage,
    TaxPlace,
};
use crate::drink::fill::Known;
use crate::drink::label::Law;
use crate::drink::ledger::OfferStatus;
use crate::foundation::measure::System;
use crate::say;

/// What an amount in a recipe means.
pub fn stage(stage: Stage) -> &'static str {
    match stage {
        Stage::AsBought => say!(drinks::as_purchased),
        Stage::Trimmed => say!(drinks::trimmed),
        Stage::Pressed => say!(drinks::pressed),
        Stage::SoakedOrBrewed => say!(drinks::soaked_or_brewed),
    }
}

/// How a line follows the size.
pub fn scaling(scaling: Scaling) -> &'static str {
    match scaling {
        Scaling::InProportion => say!(drinks::scale_with_size),
        Scaling::Fixed => say!(drinks::fixed_amount),
        Scaling::Stepped(_) => say!(drinks::by_the_piece),
        Scaling::TopUp => say!(drinks::fill_to_the_line),
    }
}

/// Where ice is in a drink.
pub fn ice_place(place: IcePlace) -> &'static str {
    match place {
        IcePlace::BlendedIn => say!(drinks::ice_blended_in),
        IcePlace::HeldUnder => say!(drinks::ice_under_line),
        IcePlace::Floating => say!(drinks::ice_floating),
    }
}

/// Ice at its place, among the ways an ingredient is used.
pub fn ice_use(place: IcePlace) -> &'static str {
    match place {
        IcePlace::BlendedIn => say!(drinks::use_ice_blended_in),
        IcePlace::HeldUnder => say!(drinks::use_ice_under_line),
        IcePlace::Floating => say!(drinks::use_ice_floating),
    }
}

/// A rule for the contents of packages.
pub fn fill_rule(rule: FillRule) -> &'static str {
    match rule {
        FillRule::Average => say!(drinks::rule_average),
        FillRule::EuropeanOrBritish => say!(drinks::rule_europe),
        FillRule::UnitedStates => say!(drinks::rule_united_states),
    }
}

/// How a drink is made.
pub fn drink_kind(kind: DrinkKind) -> &'static str {
    match kind {
        DrinkKind::Pressed => say!(first::type_pressed),
        DrinkKind::Blended => say!(first::type_blended),
        DrinkKind::OverIce => say!(first::type_over_ice),
        DrinkKind::Shot => say!(first::type_shot),
    }
}

/// Whether an ingredient is fruit or vegetable, and treated.
pub fn produce(produce: Option<Produce>, law: Law) -> &'static str {
    match produce {
        None => say!(drinks::not_answered),
        Some(Produce::Raw) => say!(drinks::produce_raw),
        Some(Produce::Treated) if law == Law::European => say!(drinks::produce_treated_european),
        Some(Produce::Treated) => say!(drinks::produce_treated),
        Some(Produce::Neither) => say!(drinks::produce_neither),
    }
}

/// Whether a drink is treated.
pub fn treatment(treated: bool, law: Law) -> &'static str {
    match (treated, law) {
        (false, _) => say!(drinks::not_treated),
        (true, Law::UnitedStates) => say!(drinks::treated),
        (true, Law::European) => say!(drinks::treated_european),
    }
}

/// The tax on what is sold.
pub fn sales_tax(law: Law) -> &'static str {
    match law {
        Law::UnitedStates => say!(common::sales_tax),
        Law::European => say!(common::tax_european),
    }
}

/// Its rate.
pub fn sales_tax_rate(law: Law) -> &'static str {
    match law {
        Law::UnitedStates => say!(book::sales_tax_rate),
        Law::European => say!(book::tax_rate_european),
    }
}

/// What a customer pays with the tax on what is sold.
pub fn customer_pays_with_tax(law: Law, price: &str) -> String {
    match law {
        Law::UnitedStates => say!(drinks::customer_pays_with_tax, price = price),
        Law::European => say!(drinks::customer_pays_with_tax_european, price = price),
    }
}

/// Whether a drink must be kept refrigerated.
pub fn keep_refrigerated(keep_refrigerated: bool) -> &'static str {
    if keep_refrigerated { say!(labels::keep_refrigerated) } else { say!(drinks::not_entered) }
}

/// How a drink in a container reaches the customer.
pub fn service(service: Option<Service>) -> &'static str {
    match service {
        None => say!(drinks::not_answered),
        Some(Service::PackagedAhead) => say!(drinks::packaged_ahead),
        Some(Service::ByTheGlass) => say!(drinks::by_the_glass),
    }
}

/// A part of the container set.
pub fn packaging_part(part: PackagingPart) -> &'static str {
    match part {
        PackagingPart::Vessel => say!(drinks::piece_vessel),
        PackagingPart::Closure => say!(drinks::piece_closure),
        PackagingPart::Label => say!(drinks::piece_label),
        PackagingPart::Seal => say!(drinks::piece_seal),
        PackagingPart::Straw => say!(drinks::piece_straw),
        PackagingPart::Sleeve => say!(drinks::piece_sleeve),
    }
}

/// How what a container holds is known.
pub fn known(known: Known) -> &'static str {
    match known {
        Known::Weighed => say!(drinks::by_water_weight),
        Known::Measured => say!(drinks::by_measures),
        Known::Poured => say!(drinks::by_pouring),
    }
}

/// Where the tax stands.
pub fn tax_place(place: TaxPlace) -> &'static str {
    match place {
        TaxPlace::InThePrice => say!(drinks::tax_included),
        TaxPlace::AddedAtTheTill => say!(drinks::tax_added),
    }
}

/// The price of which commission is a share.
pub fn commission_base(base: CommissionBase) -> &'static str {
    match base {
        CommissionBase::WithoutTax => say!(book::price_without_tax),
        CommissionBase::WithTax => say!(book::price_with_tax),
    }
}

/// What overhead is typed for.
pub fn overhead_per(per: OverheadPer) -> &'static str {
    match per {
        OverheadPer::DrinkMade => say!(book::drink_made),
        OverheadPer::DrinkSold => say!(book::drink_sold),
        OverheadPer::Week => say!(book::each_week),
    }
}

/// A system of units.
pub fn system(system: System) -> &'static str {
    match system {
        System::UsCustomary => say!(drinks::us_customary),
        System::Metric => say!(drinks::metric),
        System::Imperial => say!(drinks::imperial),
    }
}

/// Where an offer stands.
pub fn offer_status(status: OfferStatus) -> &'static str {
    match status {
        OfferStatus::CannotCompute => say!(first::needs_details),
        OfferStatus::UnderTarget => say!(first::below_target),
        OfferStatus::WithoutPrice => say!(first::no_price_yet),
        OfferStatus::OnTarget => say!(first::on_target),
    }
}
