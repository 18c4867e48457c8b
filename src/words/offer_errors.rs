//! Why an offer cannot be computed, or has no price.

use super::{Speaker, overflow, percent};
use crate::book::{Book, Goods, Key};
use crate::drink::cost::CostError;
use crate::drink::fill::{FillError, ScaleError};
use crate::drink::ledger::OfferError;
use crate::drink::price::PriceError;
use crate::drink::yields::YieldError;
use crate::foundation::measure::Volume;
use crate::say;

/// Why an offer cannot be computed, and what would mend it.
pub fn offer_error(error: &OfferError, book: &Book) -> String {
    match error {
        OfferError::Missing(Key::Drink(_)) => say!(drinks::size_lost_drink).to_string(),
        OfferError::Missing(Key::Container(_)) => say!(drinks::size_lost_container).to_string(),
        OfferError::Missing(_) => say!(drinks::size_gone).to_string(),
        OfferError::Fill(error) => fill_error(error, book),
        OfferError::Scale(error) => scale_error(error, book),
        OfferError::Cost(error) => cost_error(error, book),
        OfferError::Arithmetic(error) => overflow(*error),
    }
}

/// Why no price reaches the target.
pub fn price_error(error: &PriceError) -> String {
    match error {
        PriceError::NoPriceReaches { target, highest } => {
            say!(drinks::no_price_reaches, target = percent(*target), highest = percent(*highest))
        }
        PriceError::Arithmetic(error) => overflow(*error),
    }
}

/// Why a container has no fill, or no height for one.
pub fn fill_error(error: &FillError, book: &Book) -> String {
    let name = |id| book.name(Key::Container(id));
    match error {
        FillError::NotAVolume(id) => say!(drinks::size_not_a_volume, container = name(*id)),
        FillError::NothingFits(id) => say!(drinks::headspace_too_large, container = name(*id)),
        FillError::NoHeights(id) => say!(drinks::headspace_needs_heights, container = name(*id)),
        FillError::OverTheRim { container, over } => {
            say!(drinks::over_the_brim, over = volume(*over, book), container = name(*container))
        }
        FillError::Arithmetic(error) => overflow(*error),
    }
}

/// Why a recipe does not make a size, and by how much it misses.
pub fn scale_error(error: &ScaleError, book: &Book) -> String {
    match error {
        ScaleError::NoLines(_) => say!(drinks::recipe_empty).to_string(),
        ScaleError::FixedLinesOverflow { over, .. } => say!(drinks::fixed_too_much, over = volume(*over, book)),
        ScaleError::NothingScales { short, .. } => say!(drinks::nothing_scales, short = volume(*short, book)),
        ScaleError::BetweenSteps { short, over, .. } => {
            say!(drinks::between_pieces, short = volume(*short, book), over = volume(*over, book))
        }
        ScaleError::NothingToFloatIn(_) => say!(drinks::nothing_to_float_in).to_string(),
        ScaleError::Missing(_) => say!(drinks::recipe_lost_ingredient).to_string(),
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
            say!(drinks::needs_case_price, name = book.name(key))
        }
        CostError::Missing(Key::Packaging(_)) => say!(drinks::cost_lost_packaging).to_string(),
        CostError::Missing(_) => say!(drinks::cost_lost_ingredient).to_string(),
        CostError::Yield(error) => yield_error(error, book),
        CostError::Arithmetic(error) => overflow(*error),
    }
}

pub(super) fn yield_error(error: &YieldError, book: &Book) -> String {
    let name = |id| book.name(Key::Ingredient(id));
    let cups = book.settings().units.weighs_cups();
    match error {
        YieldError::NoPressYield(id) => say!(drinks::needs_juice_yield, name = name(*id)),
        YieldError::NoSoakYield(id) => say!(drinks::needs_soaked_weight, name = name(*id)),
        YieldError::NoDensity(id) if cups => say!(drinks::needs_cup_weight, name = name(*id)),
        YieldError::NoJuiceDensity(id) if cups => say!(drinks::needs_juice_cup_weight, name = name(*id)),
        YieldError::NoDensity(id) => say!(drinks::needs_density, name = name(*id)),
        YieldError::NoJuiceDensity(id) => say!(drinks::needs_juice_density, name = name(*id)),
        YieldError::NoPieceWeight(id) => say!(drinks::needs_piece_weight, name = name(*id)),
        YieldError::Arithmetic(error) => overflow(*error),
    }
}

pub(super) fn volume(volume: Volume, book: &Book) -> String {
    Speaker::plain_of(book).volume(volume)
}
