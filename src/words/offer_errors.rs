//! Why an offer cannot be computed, or has no price.

use super::refusals::{kind, with_article};
use super::{Speaker, overflow, percent};
use crate::book::{Book, Goods, Key};
use crate::drink::cost::CostError;
use crate::drink::fill::{FillError, ScaleError};
use crate::drink::ledger::OfferError;
use crate::drink::price::PriceError;
use crate::drink::yields::YieldError;
use crate::foundation::measure::Volume;

/// Why an offer cannot be computed, and what would mend it.
pub fn offer_error(error: &OfferError, book: &Book) -> String {
    match error {
        OfferError::Missing(key) => {
            format!("The {} of this size is gone. Remove the size and add it again.", kind(*key))
        }
        OfferError::Fill(error) => fill_error(error, book),
        OfferError::Scale(error) => scale_error(error, book),
        OfferError::Cost(error) => cost_error(error, book),
        OfferError::Arithmetic(error) => overflow(*error),
    }
}

/// Why no price reaches the target.
pub fn price_error(error: &PriceError) -> String {
    match error {
        PriceError::NoPriceReaches { target, highest } => format!(
            "No price reaches a margin of {}: fees and commission alone leave less than {} of any price. Lower the target or the fees.",
            percent(*target),
            percent(*highest)
        ),
        PriceError::Arithmetic(error) => overflow(*error),
    }
}

/// Why a container has no fill, or no height for one.
pub fn fill_error(error: &FillError, book: &Book) -> String {
    match error {
        FillError::NotAVolume(id) => {
            format!("A size of {} is not a volume. Enter it in fl oz or mL.", book.name(Key::Container(*id)))
        }
        FillError::NothingFits(id) => {
            format!("The headspace of {} leaves no room for a drink. Make it smaller.", book.name(Key::Container(*id)))
        }
        FillError::NoHeights(id) => format!(
            "The headspace of {} is a height, but no heights of it are known. Give its measures, or readings by pouring.",
            book.name(Key::Container(*id))
        ),
        FillError::OverTheRim { container, over } => format!(
            "That is {} more than {} holds to the rim. Check the volume.",
            volume(*over, book),
            book.name(Key::Container(*container))
        ),
        FillError::Arithmetic(error) => overflow(*error),
    }
}

/// Why a recipe does not make a size, and by how much it misses.
pub fn scale_error(error: &ScaleError, book: &Book) -> String {
    match error {
        ScaleError::NoLines(_) => "The recipe is empty. Add what goes in.".to_string(),
        ScaleError::FixedLinesOverflow { over, .. } => format!(
            "The fixed amounts alone are {} more than fits here. Make the fixed amounts less, or let them follow in proportion.",
            volume(*over, book)
        ),
        ScaleError::NothingScales { short, .. } => format!(
            "Every amount is fixed, and {} of this size stays empty. Let one follow in proportion.",
            volume(*short, book)
        ),
        ScaleError::TopUpNegative { over, .. } => format!(
            "Rounded to whole steps, the rest is {} more than fits here, and nothing is left for the top-up. Make the steps smaller, or another ingredient the top-up.",
            volume(*over, book)
        ),
        ScaleError::BetweenSteps { short, over, .. } => format!(
            "No whole number of steps fills this size: {} would stay empty, and with one step more {} would be too much. Let one ingredient be the top-up.",
            volume(*short, book),
            volume(*over, book)
        ),
        ScaleError::NothingToFloatIn(_) => {
            "Ice floats, but the recipe has nothing for it to float in. Add what is poured.".to_string()
        }
        ScaleError::Missing(key) => format!("The recipe needs {} that is gone. Remove its line.", with_article(*key)),
        ScaleError::Yield(error) => yield_error(error, book),
        ScaleError::Arithmetic(error) => overflow(*error),
    }
}

fn cost_error(error: &CostError, book: &Book) -> String {
    match error {
        CostError::NoPack(goods) => {
            let key = match goods {
                Goods::Ingredient(id) => Key::Ingredient(*id),
                Goods::Packaging(id) => Key::Packaging(*id),
            };
            format!("{} has no pack yet, so no cost. Enter in Buying what a pack holds and costs.", book.name(key))
        }
        CostError::Missing(key) => {
            format!("The cost needs {} that is gone. Remove it where it is used.", with_article(*key))
        }
        CostError::Yield(error) => yield_error(error, book),
        CostError::Arithmetic(error) => overflow(*error),
    }
}

pub(super) fn yield_error(error: &YieldError, book: &Book) -> String {
    let name = |id| book.name(Key::Ingredient(id));
    match error {
        YieldError::NoPressYield(id) => format!(
            "{} is used as juice but has no press yield. Weigh what goes in and the juice that comes out, and enter the share.",
            name(*id)
        ),
        YieldError::NoSoakYield(id) => {
            format!(
                "{} is used soaked or brewed but has no yield for that. Enter weight after over weight before.",
                name(*id)
            )
        }
        YieldError::NoDensity(id) => format!(
            "{} is weighed in one place and poured by volume in another, so it needs a density. Enter grams per mL as it is in the drink.",
            name(*id)
        ),
        YieldError::NoJuiceDensity(id) => format!(
            "The juice of {} is weighed in one place and poured by volume in another, so it needs a density. Enter its grams per mL.",
            name(*id)
        ),
        YieldError::NoPieceWeight(id) => {
            format!("{} is counted in pieces but no piece has a weight. Enter the weight of one as bought.", name(*id))
        }
        YieldError::Arithmetic(error) => overflow(*error),
    }
}

pub(super) fn volume(volume: Volume, book: &Book) -> String {
    Speaker::plain_of(book).volume(volume)
}
