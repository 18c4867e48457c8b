//! What a label says, its cautions, and why there is none.

use super::offer_errors::{offer_error, volume, yield_error};
use super::{Speaker, day};
use crate::book::{Allergen, Book, Drink, DrinkKind, IngredientId, Key, Service};
use crate::drink::label::{
    Caution, LOW_ACID_ABOVE, LabelError, Law, NetContents, NetSource, PercentJuice, PhSource, published_ph,
};
use crate::drink::yields::YieldError;
use crate::foundation::measure::{Amount, Date, Exact, LengthUnit, System, TypedLength, Unit};
use crate::say;

/// Net contents in both systems: "Net 16 fl oz (1 pt) 473 mL" where people measure in US
/// customary units, "473 mL" under European law, which asks for no other, and "473 mL (16 fl oz)" elsewhere.
pub fn net_contents(net: &NetContents, speaker: &Speaker) -> String {
    let units = speaker.units();
    let shown = |amount: Amount| speaker.with_unit(amount.number, 0, amount.unit.name_in(units));
    let ounces = shown(Amount::new(net.fluid_ounces, Unit::UsFluidOunce));
    let metric = shown(net.metric);
    let larger: Vec<String> = net.largest_units.iter().map(|amount| shown(*amount)).collect();
    let larger = larger.join(" ");
    match units {
        _ if speaker.law() == Law::European => metric,
        System::Metric | System::Imperial => say!(labels::net_contents_in_metric, metric = metric, ounces = ounces),
        System::UsCustomary if net.is_a_gallon() => {
            say!(labels::net_contents_in_gallons, larger = larger, metric = metric)
        }
        System::UsCustomary if larger.is_empty() => {
            say!(labels::net_contents_in_ounces, ounces = ounces, metric = metric)
        }
        System::UsCustomary => {
            say!(labels::net_contents_in_larger_units, ounces = ounces, larger = larger, metric = metric)
        }
    }
}

/// Net contents, and what they were taken from.
pub fn net_contents_from(net: &NetContents, speaker: &Speaker) -> String {
    let said = net_contents(net, speaker);
    match net.source {
        NetSource::Declared => say!(labels::net_from_labeled_size, net = said),
        NetSource::Fill => say!(labels::net_from_fill, net = said),
    }
}

/// How much of a drink is juice (21 CFR 101.30, text; under one percent, from memory).
pub fn percent_juice(juice: &PercentJuice, book: &Book) -> String {
    match juice {
        PercentJuice::None => say!(labels::no_juice).to_string(),
        PercentJuice::LessThanOne => say!(labels::less_than_one_percent_juice).to_string(),
        PercentJuice::Percent(percent) => {
            say!(labels::percent_juice, percent = Speaker::plain().number(*percent))
        }
        PercentJuice::NotSaid(ids) => say!(labels::juice_not_said, names = names(ids, book)),
    }
}

/// What the name of a drink needs that is juice in part: "if the common or usual name uses the word
/// juice, \[it\] shall include a qualifying term such as beverage, cocktail, or drink" (21 CFR
/// 102.33(a), text). Returns an empty text if nothing or all of it is juice, or nobody knows.
pub fn name_with_juice(juice: &PercentJuice) -> &'static str {
    match juice {
        PercentJuice::Percent(percent) if *percent >= Exact::from(100) => "",
        PercentJuice::Percent(_) | PercentJuice::LessThanOne => {
            say!(labels::name_with_juice)
        }
        PercentJuice::None | PercentJuice::NotSaid(_) => "",
    }
}

/// Where a law holds.
pub fn where_it_holds(law: Law) -> &'static str {
    match law {
        Law::UnitedStates => say!(labels::in_the_united_states),
        Law::European => say!(labels::in_the_eu_and_uk),
    }
}

/// What the facts for a label are for.
pub fn label_facts_about(law: Law) -> &'static str {
    match law {
        Law::UnitedStates => say!(labels::label_facts_about),
        Law::European => say!(labels::label_facts_about_european),
    }
}

/// That what is thick is sold by weight in the United States (21 CFR 101.7(a), text). Returns an
/// empty text for what is not blended, and elsewhere.
pub fn weight_if_thick(kind: DrinkKind, law: Law) -> &'static str {
    if kind == DrinkKind::Blended && law == Law::UnitedStates { say!(labels::thick) } else { "" }
}

/// How juice is counted, where a label must say how much of a drink is juice. Returns an empty text
/// elsewhere.
pub fn how_juice_is_counted(law: Law) -> &'static str {
    match law {
        Law::UnitedStates => say!(labels::how_juice_is_counted),
        Law::European => "",
    }
}

/// What else a label has that is not made here, and who need not have nutrition facts. United
/// States: FDA, Small Business Nutrition Labeling Exemption Guide, after 21 CFR 101.9(j)(1) and
/// (18), text; names, addresses and type sizes from memory. European Union: Regulation (EU) No
/// 1169/2011, from memory.
pub fn also_needed(law: Law) -> Vec<String> {
    let number = super::number;
    let height = Speaker::plain().typed_length(TypedLength::new(Exact::new(12, 1), LengthUnit::Millimetre));
    let exempt = [
        say!(labels::label_exempt_retailers, sales = number(500_000), food = number(50_000)),
        say!(labels::label_exempt_by_notice, employees = number(100), units = number(100_000)),
    ];
    let [retailers, by_notice] = &exempt;
    let type_size = say!(labels::label_needs_type_size_european, height = height);
    let needed = match law {
        Law::UnitedStates => vec![
            say!(labels::label_needs_name),
            say!(labels::label_needs_address),
            say!(labels::label_needs_nutrition),
            retailers,
            by_notice,
            say!(labels::label_claim_ends_exemption),
            say!(labels::label_needs_date),
            say!(labels::label_needs_deposit_mark),
            say!(labels::label_needs_type_size),
        ],
        Law::European => vec![
            say!(labels::label_needs_name_european),
            say!(labels::label_needs_address_european),
            say!(labels::label_needs_nutrition_european),
            say!(labels::label_exempt_european),
            say!(labels::label_claim_ends_exemption),
            say!(labels::label_needs_date_european),
            say!(labels::label_needs_deposit_mark_european),
            &type_size,
        ],
    };
    needed.into_iter().map(str::to_string).collect()
}

/// What to be careful of.
///
/// How to keep low-acid juice: FDA, Guidance for Industry: Refrigerated Carrot Juice and Other
/// Refrigerated Low-Acid Juices, June 2007, written for processors. Who can become ill: the
/// statement's own three and pregnancy. What selling to another business brings: 21 CFR 120.3(l),
/// 120.24; that some states end the exemption of shops at any amount: second-hand.
pub fn caution(caution: &Caution, book: &Book) -> String {
    caution_by_law(caution, Law::of(book.settings()), book)
}

/// What to be careful of, by a law. European ones name no law: what is asked of juice there is
/// general (Regulation (EC) No 852/2004, from memory).
pub fn caution_by_law(caution: &Caution, law: Law, book: &Book) -> String {
    let limit = || Speaker::plain().number(LOW_ACID_ABOVE);
    let kept_cold = |low_acid: String| {
        let cold = match law {
            Law::UnitedStates => say!(labels::keep_cold),
            Law::European => say!(labels::keep_cold_european),
        };
        [&low_acid, cold].join(" ")
    };
    match caution {
        Caution::UntreatedJuice(served) => untreated(*served, law).to_string(),
        Caution::JuiceNotSaid(service, ids) => {
            let names = names(ids, book);
            if law == Law::European || *service == Some(Service::ByTheGlass) {
                say!(labels::fruit_not_said_by_the_glass, names = names)
            } else {
                say!(labels::fruit_not_said_packaged, names = names)
            }
        }
        Caution::AtRisk(Some(Service::PackagedAhead)) => {
            let places = match law {
                Law::UnitedStates => say!(labels::at_risk_places),
                Law::European => say!(labels::at_risk_places_european),
            };
            [say!(labels::at_risk), places].join(" ")
        }
        Caution::AtRisk(_) => say!(labels::at_risk).to_string(),
        Caution::SoldToABusiness => sold_to_a_business(law).to_string(),
        Caution::MeasuredLowAcid(ph) => {
            kept_cold(say!(labels::low_acid_measured, ph = Speaker::plain().number(*ph), limit = limit()))
        }
        Caution::PublishedLowAcid(ids) => {
            let published: Vec<String> = ids.iter().map(|id| with_ph(*id, law, book)).collect();
            kept_cold(say!(labels::low_acid_published, published = published.join(", "), limit = limit()))
        }
        Caution::AcidityNotKnown(ids) => {
            kept_cold(say!(labels::acidity_not_known, names = names(ids, book), limit = limit()))
        }
        Caution::FillShortOfDeclared(short) => {
            say!(labels::fill_below_labeled_size, short = volume(*short, book))
        }
        Caution::NameTheKind(allergen) => name_the_kind(*allergen).to_string(),
        Caution::AllergensAsInTheBook => say!(labels::allergens_as_entered).to_string(),
        Caution::NoLegalAdvice => say!(labels::no_legal_advice).to_string(),
    }
}

/// What selling juice to another business asks for, treated or not.
pub fn sold_to_a_business(law: Law) -> &'static str {
    match law {
        Law::UnitedStates => say!(labels::sold_to_a_business),
        Law::European => say!(labels::sold_to_a_business_european),
    }
}

/// What an ingredient's type decides on labels.
pub fn on_labels_about(law: Law) -> &'static str {
    match law {
        Law::UnitedStates => say!(goods::on_labels_about),
        Law::European => say!(goods::on_labels_about_european),
    }
}

/// The cautions of a whole book, whatever is in it.
pub fn book_cautions(law: Law) -> String {
    let untreated = match law {
        Law::UnitedStates => say!(book::caution_untreated),
        Law::European => say!(book::caution_untreated_european),
    };
    [untreated, say!(book::caution_allergens), say!(book::caution_advice)].join(" ")
}

/// What stands under the boxes of the sheet of warnings. Under European law there are none.
pub fn warning_sheet(law: Law) -> &'static str {
    match law {
        Law::UnitedStates => say!(labels::warning_sheet),
        Law::European => say!(labels::no_warning_to_print),
    }
}

/// Untreated juice, by how it is sold. Where the statement stands and how it looks: 21 CFR
/// 101.17(g)(4) to (6). That the rule is for packages: second-hand.
fn untreated(served: Option<Service>, law: Law) -> &'static str {
    match (law, served) {
        (Law::European, _) => say!(labels::untreated_european),
        (Law::UnitedStates, Some(Service::PackagedAhead)) => say!(labels::untreated_packaged),
        (Law::UnitedStates, Some(Service::ByTheGlass)) => say!(labels::untreated_by_the_glass),
        (Law::UnitedStates, None) => say!(labels::untreated_not_said),
    }
}

fn names(ids: &[IngredientId], book: &Book) -> String {
    let names: Vec<String> = ids.iter().map(|id| book.name(Key::Ingredient(*id))).collect();
    names.join(", ")
}

/// An ingredient with the pH that is published of it: "Carrots 5.88 to 6.40 (FDA list of pH)".
fn with_ph(id: IngredientId, law: Law, book: &Book) -> String {
    let name = book.name(Key::Ingredient(id));
    let Some(published) = published_ph(&name) else { return name };
    let number = |number| Speaker::plain().digits(number, 2);
    let (least, most) = (number(published.least), number(published.most));
    match (published.source, law) {
        (PhSource::FdaList, Law::UnitedStates) => say!(labels::ph_fda_list, name = name, least = least, most = most),
        (PhSource::FdaList, Law::European) => say!(labels::ph_american_list, name = name, least = least, most = most),
        (PhSource::FdaHandbook, Law::UnitedStates) => {
            say!(labels::ph_fda_handbook, name = name, least = least, most = most)
        }
        (PhSource::FdaHandbook, Law::European) => {
            say!(labels::ph_american_handbook, name = name, least = least, most = most)
        }
        (PhSource::FromMemory, _) => say!(labels::ph_source_not_checked, name = name, least = least, most = most),
    }
}

/// What is low-acid.
pub fn low_acid_above() -> String {
    say!(labels::low_acid_above, limit = Speaker::plain().number(LOW_ACID_ABOVE))
}

/// How a drink is kept, by the owner's food-safety plan; of one that was made on a day, until when.
/// Returns an empty text if nothing was entered.
pub fn keeping(drink: &Drink, made: Option<Date>) -> String {
    let cold = if drink.keep_refrigerated { say!(labels::keep_refrigerated_sentence) } else { "" };
    let until = match (drink.keeps_days, made.and_then(|made| drink.use_by(made))) {
        (_, Some(last)) => say!(labels::use_by, day = day(last)),
        (Some(days), None) if days.is_zero() => say!(labels::use_on_the_day).to_string(),
        (Some(days), None) => say!(labels::use_within_days, days = Speaker::plain().counted(days)),
        (None, None) => String::new(),
    };
    [cold, &until].into_iter().filter(|said| !said.is_empty()).collect::<Vec<_>>().join(" ")
}

fn name_the_kind(allergen: Allergen) -> &'static str {
    match allergen {
        Allergen::TreeNuts => say!(labels::name_the_nut),
        Allergen::Fish => say!(labels::name_the_fish),
        Allergen::Crustaceans => say!(labels::name_the_crustacean),
        Allergen::OtherGluten => say!(labels::name_the_grain),
        _ => say!(labels::name_the_source),
    }
}

/// Why there are no facts for a label, and what would mend it.
pub fn label_error(error: &LabelError, book: &Book) -> String {
    let name = |id| book.name(Key::Ingredient(id));
    let cups = book.settings().units.weighs_cups();
    match error {
        LabelError::Offer(reason) => offer_error(reason, book),
        LabelError::Mass(YieldError::NoDensity(id)) if cups => say!(labels::no_cup_weight, name = name(*id)),
        LabelError::Mass(YieldError::NoJuiceDensity(id)) if cups => {
            say!(labels::no_juice_cup_weight, name = name(*id))
        }
        LabelError::Mass(YieldError::NoDensity(id)) => say!(labels::no_density, name = name(*id)),
        LabelError::Mass(YieldError::NoJuiceDensity(id)) => say!(labels::no_juice_density, name = name(*id)),
        LabelError::Mass(error) => yield_error(error, book),
    }
}
