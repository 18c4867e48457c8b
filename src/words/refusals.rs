//! Why an edit was refused.

use super::{batch, day, week};
use crate::book::{Book, Field, Key, Problem, Refusal};

/// The sentence for a refused edit.
pub fn refusal(refusal: &Refusal, book: &Book) -> String {
    match refusal {
        Refusal::Missing { key, needed_by: None } => {
            format!("This {} is not in the book any more. Undo its removal, or go back.", kind(*key))
        }
        Refusal::Missing { key, needed_by: Some(user) } => {
            format!("{} needs {} that is not in the book. Add it first.", named(book, *user), with_article(*key))
        }
        Refusal::InUse { key, by } => {
            let users: Vec<String> = by.iter().take(3).map(|user| called(book, *user)).collect();
            let more = match by.len().saturating_sub(users.len()) {
                0 => String::new(),
                count => format!(" and {count} more"),
            };
            format!("{} is used in {}{more}. Replace or remove it there first.", book.name(*key), users.join("; "))
        }
        Refusal::Field { field, problem, .. } => problem_at(*field, *problem),
    }
}

/// Said where goods are to be replaced and nothing is chosen in their place.
pub const CHOOSE_INSTEAD: &str = "Choose what takes its place, then replace.";

/// What stands at `key`, as a person would call it.
pub fn called(book: &Book, key: Key) -> String {
    match key {
        Key::Week(monday) => week(monday),
        Key::Batch(day) => batch(day),
        Key::BuyingList => "the buying list".to_string(),
        key => book.name(key),
    }
}

/// The same at the beginning of a sentence, or where it stands alone.
pub fn called_first(book: &Book, key: Key) -> String {
    match key {
        Key::BuyingList => "The buying list".to_string(),
        key => called(book, key),
    }
}

/// A record of this name in a sentence: "the ingredient Apples", "the week of 23 Nov 2026".
pub(super) fn the(key: Key, name: &str) -> String {
    match key {
        Key::Week(monday) => format!("the week of {}", day(monday)),
        Key::Batch(on) => format!("the batch of {}", day(on)),
        Key::BuyingList => format!("the {}", kind(key)),
        key if name.is_empty() => format!("the {}", kind(key)),
        key => format!("the {} {name}", kind(key)),
    }
}

/// A record of a file, its name in quotation marks: "the ingredient “Apples”".
pub(super) fn the_quoted(key: Key, name: &str) -> String {
    let quoted = if name.is_empty() { String::new() } else { format!("“{name}”") };
    the(key, &quoted)
}

fn named(book: &Book, key: Key) -> String {
    let name = called_first(book, key);
    if name.trim_matches([',', ' ']).is_empty() { format!("The {}", kind(key)) } else { name }
}

/// What kind of thing a key is of.
pub(super) const fn kind(key: Key) -> &'static str {
    match key {
        Key::Settings => "book",
        Key::Ingredient(_) => "ingredient",
        Key::Packaging(_) => "packaging",
        Key::PackagingSet(_) => "packaging set",
        Key::Container(_) => "container",
        Key::Drink(_) => "drink",
        Key::Offer(_) => "size",
        Key::Week(_) => "week",
        Key::SeenPrice(_) => "price seen elsewhere",
        Key::Trial(_) => "trial",
        Key::Scenario(_) => "scenario",
        Key::Batch(_) => "batch",
        Key::BuyingList => "buying list",
    }
}

/// "an ingredient", "a drink"; "the settings" where there is one only.
pub(super) fn with_article(key: Key) -> String {
    let article = match key {
        Key::Settings | Key::BuyingList => "the",
        Key::Ingredient(_) => "an",
        _ => "a",
    };
    format!("{article} {}", kind(key))
}

pub(super) fn problem_at(field: Field, problem: Problem) -> String {
    let what = name(field);
    match problem {
        Problem::Empty => format!("{what} is empty. Type at least one letter."),
        Problem::TooLong => format!("{what} is longer than 80 letters. Shorten it."),
        Problem::NotPositive => format!("{what} must be more than zero."),
        Problem::Negative => format!("{what} cannot be below zero."),
        Problem::NotAYield => {
            format!("{what} is what is left of what went in: more than 0 % and at most 100 %. Type 90 for 90 %.")
        }
        Problem::NotAShare => format!("{what} must be at least 0 % and under 100 %. Type 65 for 65 %."),
        Problem::NotAVolume => format!("{what} must be a volume, such as 16 fl oz or 500 mL."),
        Problem::NotACount => format!("{what} must be a number of pieces, such as 250 ea."),
        Problem::NothingFits => format!("{what} leaves no room for a drink. Make it smaller."),
        Problem::MoreThanBrimful => {
            format!("{what} is more than the container holds to the rim. Check it against the brimful volume.")
        }
        Problem::LessThanOne => format!("{what} must be at least 1."),
        Problem::NotAnEnding => {
            format!("{what} must each be less than one, such as .50 or .95 (under 100 where there are no cents).")
        }
        Problem::TooLarge => format!("{what} has too many digits to compute with. Check for a digit too many."),
        Problem::NoHeights => {
            format!("{what} by height needs heights. Give the measures of the cup or readings of the bottle first.")
        }
        Problem::TooFew => format!("{what} alone is not enough: a bottle needs at least two, the last one at the rim."),
        Problem::Falls(place) => {
            format!(
                "{what} must be higher and hold more than the one before: number {place} does not. Measure it again."
            )
        }
        Problem::NotAboveOne => format!("{what} must be more than 1; the price of a single pack stands above."),
        Problem::AnotherKind => {
            format!("{what} must be measured as the amount is: a weight for a weight, pieces for pieces.")
        }
        Problem::MoreThanOne => {
            format!("{what}: only one ingredient can take what is left. Let the other follow in proportion first.")
        }
        Problem::NeitherWeightNorVolume => format!("{what} must be a weight or a volume, such as 355 mL or 12.4 oz."),
        Problem::NotAPacking => {
            format!("{what} must be more than 0 % and at most 100 %. Cubes as they fall fill 54 to 67 %: type 60.")
        }
        Problem::NotAMonday => format!("{what} begins on a Monday. Choose the Monday."),
        Problem::NotAfter => format!("{what} must come after the weeks before it. Choose a later one."),
        Problem::NotAWeight => format!("{what} must be a weight, such as 5 lb or 2 kg."),
        Problem::MoreThanBefore => {
            format!("{what} is more than the weight before it: nothing grows by trimming or pressing. Weigh again.")
        }
        Problem::NotWhole => format!("{what} must be a whole number, such as 12."),
        Problem::LongerThanALabel => format!("{what} is longer than 400 letters. Shorten it."),
        Problem::NotAPh => format!(
            "{what} of a drink lies between 1 and 14. Type what your meter shows, such as 3.8, or leave it blank."
        ),
        Problem::NotMeasuredThere => {
            format!("{what} must be 32 to 104 °F (0 to 40 °C), where water's density is known.")
        }
        Problem::TooManyDays => format!("{what} can be 730 at most. Check for a digit too many."),
        Problem::Twice => format!("{what}: the same thing stands here twice. Keep one of them."),
    }
}

const fn name(field: Field) -> &'static str {
    match field {
        Field::Name => "The name",
        Field::TrimYield => "The trim yield",
        Field::PressYield => "The press yield",
        Field::SoakYield => "The soaking or brewing yield",
        Field::Density => "The density",
        Field::JuiceDensity => "The juice density",
        Field::PieceWeight => "The weight of a piece",
        Field::Contents => "What the pack holds",
        Field::PackPrice => "The price of the pack",
        Field::Surcharge => "The surcharge",
        Field::Supplier => "The supplier's name",
        Field::Brimful => "The brimful volume",
        Field::Declared => "The declared size",
        Field::Headspace => "The headspace",
        Field::Base => "The diameter at the base",
        Field::Rim => "The diameter at the rim",
        Field::Height => "The height",
        Field::Readings => "A reading",
        Field::AtATime => "The number bought at a time",
        Field::TierFrom => "The number a lower price begins at",
        Field::TierPrice => "The lower price",
        Field::Allergens => "The allergens",
        Field::Nuts => "The list of nuts",
        Field::Parts => "The list of parts",
        Field::SoldAs => "The name on labels",
        Field::Air => "The air beaten in",
        Field::Step => "The step",
        Field::TopUp => "The top-up",
        Field::Packing => "The share of a scoop that is ice",
        Field::Allowed => "What a package may be short by",
        Field::LeastHeadspace => "The room for the closure",
        Field::BatchSize => "The number of packages in a batch",
        Field::MeasuredAt => "The temperature",
        Field::Weekly => "The number sold a week",
        Field::Net => "The net contents",
        Field::SetCount => "The number per drink",
        Field::Reference => "The size the recipe is written for",
        Field::LineAmount => "The amount",
        Field::ProcessLoss => "The process loss",
        Field::PerDrink => "The time per drink",
        Field::PerLitre => "The time per litre",
        Field::PerBatch => "The time per batch",
        Field::Batch => "The number of drinks in a batch",
        Field::FlatCost(cost) => super::costs::flat_cost(cost),
        Field::Unsold => "The unsold share",
        Field::Target => "The target margin",
        Field::Ph => "The pH",
        Field::KeepsDays => "The days it keeps",
        Field::Price => "The menu price",
        Field::TaxRate => "The tax rate",
        Field::FeeShare => "The payment fee",
        Field::FeeFixed => "The fixed payment fee",
        Field::Commission => "The commission",
        Field::Wage => "The hourly wage",
        Field::Endings => "Price endings",
        Field::TillColumn => "The name of a column",
        Field::Monday => "A week",
        Field::Units => "The number sold",
        Field::Contribution => "What one contributed",
        Field::Place => "The place",
        Field::Size => "The size",
        Field::Start => "The first week of the change",
        Field::Last => "The last week",
        Field::Offers => "The sizes",
        Field::PriceDay => "The day of the price",
        Field::EarlierPrice => "An earlier price",
        Field::OnHand => "What is here",
        Field::WeighedBought => "The weight as bought",
        Field::WeighedTrimmed => "The weight after trimming",
        Field::WeighedPressed => "The weight of the juice",
        Field::Makes => "The number to make",
        Field::OffShelf => "The number off the shelf",
        Field::Ready => "What is ready",
        Field::PacksToBuy => "The number of packs",
        Field::Paid => "The price paid",
        Field::PriceDays => "The days until a price is old",
        Field::ScaleStep => "The step of the scale",
        Field::JugStep => "The step of the jugs",
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::{buying_list, day, ingredient_id};

    #[test]
    fn what_has_no_name_of_its_own_is_named_once() {
        let said = |key| the(key, "Kale");
        assert_eq!(said(Key::Ingredient(ingredient_id(1))), "the ingredient Kale");
        assert_eq!(said(Key::Week(day("2026-11-23"))), "the week of 23 Nov 2026");
        assert_eq!(said(Key::Batch(day("2026-11-26"))), "the batch of 26 Nov 2026");
        assert_eq!(said(Key::BuyingList), "the buying list");
        assert_eq!(the(Key::Settings, ""), "the book");
    }

    #[test]
    fn the_buying_list_has_a_capital_only_where_it_stands_first() {
        let book =
            crate::support::book(crate::support::settings(), [crate::book::Record::BuyingList(buying_list(&[]))]);
        assert_eq!(called(&book, Key::BuyingList), "the buying list");
        assert_eq!(called_first(&book, Key::BuyingList), "The buying list");
        let missing = Refusal::Missing { key: Key::Ingredient(ingredient_id(1)), needed_by: Some(Key::BuyingList) };
        assert_eq!(
            refusal(&missing, &book),
            "The buying list needs an ingredient that is not in the book. Add it first."
        );
    }
}
