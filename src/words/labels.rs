//! What a label says, its cautions, and why there is none.

use super::offer_errors::{offer_error, volume, yield_error};
use super::{Speaker, day};
use crate::book::{Allergen, Book, Drink, IngredientId, Key, Service};
use crate::drink::label::{
    Caution, LOW_ACID_ABOVE, LabelError, Law, NetContents, NetSource, PercentJuice, PhSource, published_ph,
};
use crate::drink::yields::YieldError;
use crate::foundation::measure::{Amount, Date, Exact, System, Unit};

/// Net contents in both systems: "Net 16 fl oz (1 pt) 473 mL" where people measure in US
/// customary units, "473 mL (16 fl oz)" elsewhere.
pub fn net_contents(net: &NetContents, speaker: &Speaker) -> String {
    let units = speaker.units();
    let shown = |amount: Amount| speaker.with_unit(amount.number, 0, amount.unit.name_in(units));
    let ounces = shown(Amount::new(net.fluid_ounces, Unit::UsFluidOunce));
    let metric = shown(net.metric);
    let largest: Vec<String> = net.largest_units.iter().map(|amount| shown(*amount)).collect();
    let largest = largest.join(" ");
    match units {
        System::Metric | System::Imperial => format!("{metric} ({ounces})"),
        System::UsCustomary if net.is_a_gallon() => format!("Net {largest} ({metric})"),
        System::UsCustomary if largest.is_empty() => format!("Net {ounces} ({metric})"),
        System::UsCustomary => format!("Net {ounces} ({largest}) {metric}"),
    }
}

/// What net contents were taken from.
pub const fn net_source(source: NetSource) -> &'static str {
    match source {
        NetSource::Declared => "declared size",
        NetSource::Fill => "fill, as no size is declared",
    }
}

/// How much of a drink is juice (21 CFR 101.30, text; under one percent, from memory).
pub fn percent_juice(juice: &PercentJuice, book: &Book) -> String {
    match juice {
        PercentJuice::None => "no juice in it".to_string(),
        PercentJuice::LessThanOne => "Contains less than 1% juice.".to_string(),
        PercentJuice::Percent(percent) => format!("Contains {percent}% juice."),
        PercentJuice::NotSaid(ids) => format!(
            "not known: nobody said yet whether these are fruit or vegetable: {}. Say it at each, in Buying.",
            names(ids, book)
        ),
    }
}

/// What the name of a drink needs that is juice in part: "if the common or usual name uses the word
/// juice, \[it\] shall include a qualifying term such as beverage, cocktail, or drink" (21 CFR
/// 102.33(a), text). Returns an empty text if nothing or all of it is juice, or nobody knows.
pub fn name_with_juice(juice: &PercentJuice) -> &'static str {
    match juice {
        PercentJuice::Percent(percent) if *percent >= Exact::from(100) => "",
        PercentJuice::Percent(_) | PercentJuice::LessThanOne => {
            "Under 100%, a name that says “juice” needs “drink” or “beverage” too (21 CFR 102.33)."
        }
        PercentJuice::None | PercentJuice::NotSaid(_) => "",
    }
}

/// How percent juice is counted (21 CFR 101.30, text).
pub const HOW_JUICE_IS_COUNTED: &str = "Percent juice is by volume and rounded down (21 CFR 101.30). Purées count. Concentrate counts as the juice it makes up to: enter it mixed.";

/// What of a thick drink is stated: "in terms of fluid measure if the food is liquid, or in terms
/// of weight if the food is solid, semisolid, or viscous" (21 CFR 101.7(a), text).
pub const THICK: &str =
    "Thick, or eaten with a spoon: in the United States, state the weight, not the volume (21 CFR 101.7(a)).";

/// Stands where a drink has no label.
pub const BY_THE_GLASS: &str =
    "Sold by the glass, so it has no label. These facts are for the menu and for whoever asks.";

/// Stands where ice is in the glass.
pub const SIZE_INCLUDES_ICE: &str = "The menu size includes the ice.";

/// Stands beside allergens that the list of ingredients has in capitals (Regulation (EU) No
/// 1169/2011, Art. 21(1)(b); notice 2017/C 428, 3.5, text).
pub const NOT_REPEATED: &str =
    "In capitals in the ingredients. The label does not repeat them as “Contains” (2017/C 428, 3.5).";

/// What else a label has that is not made here, and who need not have nutrition facts. United
/// States: FDA, Small Business Nutrition Labeling Exemption Guide, after 21 CFR 101.9(j)(1) and
/// (18), text; names, addresses and type sizes from memory. European Union: Regulation (EU) No
/// 1169/2011, from memory.
pub const fn not_on_this_page(law: Law) -> &'static [&'static str] {
    match law {
        Law::UnitedStates => &[
            "The name of the food, on the principal display panel (21 CFR 101.3).",
            "Your business name and address (21 CFR 101.5).",
            "Nutrition facts: none are made here. Some small businesses are exempt.",
            "Exempt retailers sell $500,000 a year at most, or $50,000 of food (21 CFR 101.9(j)(1)).",
            "Or: under 100 employees and 100,000 units a year, by a yearly notice to FDA (101.9(j)(18)).",
            "A nutrition or health claim ends the exemption.",
            "The date, and how to keep it: your food-safety plan and your state say.",
            "The deposit mark, where your state takes deposits.",
            "Type sizes and places: at least 1/16 inch (21 CFR 101.2(c), 101.7).",
        ],
        Law::European => &[
            "The name of the food (Regulation 1169/2011, Art. 17).",
            "Your business name and address (Art. 9(1)(h)).",
            "Nutrition declaration: none is made here (Art. 30).",
            "Exempt: small amounts, sold directly or to local shops (Annex V, 19).",
            "A nutrition or health claim ends the exemption.",
            "The date, and how to keep it: your food-safety plan says.",
            "The deposit mark, where your country takes deposits.",
            "Type size: letters at least 1.2 mm tall, measured as an x (Art. 13(2)).",
        ],
    }
}

/// What to be careful of.
pub fn caution(caution: &Caution, book: &Book) -> String {
    match caution {
        Caution::UntreatedJuice(served) => untreated(*served).to_string(),
        Caution::JuiceNotSaid(served, ids) => {
            let then = match served {
                Some(Service::ByTheGlass) => "Raw, it counts as untreated juice.",
                Some(Service::PackagedAhead) | None => {
                    "Raw, its package must carry the warning in the box, in the United States (21 CFR 101.17(g))."
                }
            };
            let names = names(ids, book);
            format!("Nobody said yet whether these are fruit or vegetable: {names}. {then} Say it at each, in Buying.")
        }
        Caution::AtRisk(Some(Service::PackagedAhead)) => format!(
            "{AT_RISK} Packaged untreated juice is not for places that serve them, such as schools, hospitals and care homes."
        ),
        Caution::AtRisk(_) => AT_RISK.to_string(),
        Caution::SoldToABusiness => SOLD_TO_A_BUSINESS.to_string(),
        Caution::MeasuredLowAcid(ph) => {
            format!("Low-acid juice: its pH is {}, above {LOW_ACID_ABOVE}. {KEEP_COLD}", Speaker::plain().number(*ph))
        }
        Caution::PublishedLowAcid(ids) => {
            let published: Vec<String> = ids.iter().map(|id| with_ph(*id, book)).collect();
            format!(
                "Juice that may be low-acid, by published pH: {}. Above {LOW_ACID_ABOVE} is low-acid: measure the drink. {KEEP_COLD}",
                published.join(", ")
            )
        }
        Caution::AcidityNotKnown(ids) => format!(
            "No pH is known here for {}. Measure the drink: above {LOW_ACID_ABOVE} it is low-acid. {KEEP_COLD}",
            names(ids, book)
        ),
        Caution::FillShortOfDeclared(short) => format!(
            "The fill is {} less than the declared size. Fill more or declare less: a label may not state more than is there.",
            volume(*short, book)
        ),
        Caution::NameTheKind(allergen) => name_the_kind(*allergen).to_string(),
        Caution::AllergensAsInTheBook => {
            "Allergens are only as right as what was entered for each ingredient. Check every label, and what shares the blender or press.".to_string()
        }
        Caution::NoLegalAdvice => {
            "These numbers are no legal advice: local codes and licensed practice decide.".to_string()
        }
    }
}

/// Untreated juice, by how it is sold. Where the statement stands and how it looks: 21 CFR
/// 101.17(g)(4) to (6). That the rule is for packages: second-hand.
const fn untreated(served: Option<Service>) -> &'static str {
    match served {
        Some(Service::PackagedAhead) => {
            "Untreated juice, packaged ahead: in the United States its label must carry the warning in the box (21 CFR 101.17(g)). Purées and raw fruit and vegetables blended in count as juice. The box stands on the information panel or the principal display panel. WARNING stays in bold capitals, with hairlines around the statement. Several states ask the same of juice packaged in a shop."
        }
        Some(Service::ByTheGlass) => {
            "Untreated juice by the glass: the federal label rule is for packages. Your state or county may have a rule of its own: ask your local inspector."
        }
        None => {
            "Untreated juice. Packaged ahead, in the United States its label must carry the warning in the box (21 CFR 101.17(g)). Purées and raw fruit and vegetables blended in count as juice. The box stands on the information panel or the principal display panel. WARNING stays in bold capitals, with hairlines around the statement. By the glass, the federal label rule does not apply: ask your local inspector. Say above how it is sold."
        }
    }
}

/// Who can become ill of untreated juice: the statement's own three and pregnancy.
pub(super) const AT_RISK: &str = "Untreated juice can make these people seriously ill: children, older people, pregnant people, and people with weak immune systems.";

/// What selling to another business brings (21 CFR 120.3(l), 120.24; that some states end the
/// exemption of shops at any amount: second-hand).
pub const SOLD_TO_A_BUSINESS: &str = "In the United States, selling juice to another business makes you a processor: a HACCP plan and a 5-log treatment for all of your juice (21 CFR 120.3(l), 120.24). The warning on the label does not replace them. Some states ask for both at any amount.";

/// What is done with low-acid juice (FDA, Guidance for Industry: Refrigerated Carrot Juice and
/// Other Refrigerated Low-Acid Juices, June 2007, written for processors).
const KEEP_COLD: &str = "Low-acid juice must be kept refrigerated, treated or not: kept warm, it can cause botulism, which can kill (FDA guidance of June 2007, written for processors).";

fn names(ids: &[IngredientId], book: &Book) -> String {
    let names: Vec<String> = ids.iter().map(|id| book.name(Key::Ingredient(*id))).collect();
    names.join(", ")
}

/// An ingredient with the pH that is published of it: "Carrots 5.88 to 6.4 (FDA list)".
fn with_ph(id: IngredientId, book: &Book) -> String {
    let name = book.name(Key::Ingredient(id));
    let Some(published) = published_ph(&name) else { return name };
    let number = |number| Speaker::plain().digits(number, 2);
    let source = match published.source {
        PhSource::FdaList => "FDA list of pH",
        PhSource::FdaHandbook => "FDA handbook",
        PhSource::FromMemory => "from memory",
    };
    format!("{name} {} to {} ({source})", number(published.least), number(published.most))
}

/// How a drink is kept, by the owner's food-safety plan; of one that was made on a day, until when.
/// Returns an empty text if nothing was entered.
pub fn keeping(drink: &Drink, made: Option<Date>) -> String {
    let cold = if drink.keep_refrigerated { "Keep refrigerated." } else { "" };
    let until = match (drink.keeps_days, made.and_then(|made| drink.use_by(made))) {
        (_, Some(last)) => format!("Use by {}.", day(last)),
        (Some(days), None) if days.is_zero() => "Use on the day of making.".to_string(),
        (Some(days), None) if days == Exact::ONE => "Use within 1 day of making.".to_string(),
        (Some(days), None) => format!("Use within {days} days of making."),
        (None, None) => String::new(),
    };
    [cold, &until].into_iter().filter(|said| !said.is_empty()).collect::<Vec<_>>().join(" ")
}

/// Why an offer with a fill for packages is not by the glass.
pub const HAS_A_FILL_TARGET: &str =
    "It has a fill target for packages, so it is packaged ahead. Take the fill target away first.";

/// Stands where nothing was entered of how a drink is kept.
pub const KEEPING_NOT_ENTERED: &str = "not entered: your food-safety plan says";

/// The warning of 21 CFR 101.17(g), word by word.
pub const UNTREATED_JUICE: &str = "WARNING: This product has not been pasteurized and, therefore, may contain harmful bacteria that can cause serious illness in children, the elderly, and persons with weakened immune systems.";

/// Stands at the foot of the sheet of warnings.
pub const WARNING_SHEET: &str = "For packages of untreated juice in the United States (21 CFR 101.17(g)). The box goes on the information panel or the principal display panel. Local codes may ask for more.";

const fn name_the_kind(allergen: Allergen) -> &'static str {
    match allergen {
        Allergen::TreeNuts => "Name the kind of nut, such as almonds or cashews.",
        Allergen::Fish => "Name the kind of fish, such as cod.",
        Allergen::Crustaceans => "Name the kind of crustacean, such as shrimp.",
        Allergen::OtherGluten => "Name the cereal with gluten, such as rye, barley or oats.",
        _ => "Name the food that it comes from.",
    }
}

/// Why there are no facts for a label, and what would mend it.
pub fn label_error(error: &LabelError, book: &Book) -> String {
    let name = |id| book.name(Key::Ingredient(id));
    match error {
        LabelError::Offer(reason) => offer_error(reason, book),
        LabelError::Mass(YieldError::NoDensity(id)) => format!(
            "A label lists ingredients by weight, and {} is poured by volume. Enter its grams per mL as it is in the drink.",
            name(*id)
        ),
        LabelError::Mass(YieldError::NoJuiceDensity(id)) => format!(
            "A label lists ingredients by weight, and the juice of {} is poured by volume. Enter grams per mL of the juice.",
            name(*id)
        ),
        LabelError::Mass(error) => yield_error(error, book),
    }
}
