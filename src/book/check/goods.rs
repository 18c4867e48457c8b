//! Checks of what is bought: ingredients, packaging, and the buying list.

use super::values::{
    Checked, Id, NAME_LENGTH, a_yield, distinct, hold, id, id_of_number, keeps, mass, name, not_negative, positive,
};
use crate::book::{
    BuyingList, Field, Goods, Ingredient, OnHand, Pack, PackId, Packaging, Problem, Season, Starting, Weighing,
};
use crate::foundation::measure::{Date, Dimension, Exact};

/// The longest list of what a mixture is made of, in characters.
const PARTS_LENGTH: usize = 400;

fn packs(packs: &[Pack]) -> Checked {
    for pack in packs {
        positive(pack.contents.number, Field::Contents)?;
        not_negative(pack.price.major(), Field::PackPrice)?;
        not_negative(pack.surcharge.major(), Field::Surcharge)?;
        hold(pack.supplier.chars().count() <= NAME_LENGTH, Field::Supplier, Problem::TooLong)?;
        tiers(pack)?;
        heard(pack)?;
    }
    distinct(packs.iter().map(|pack| id(pack.id.number())), Field::Contents)
}

fn tiers(pack: &Pack) -> Checked {
    hold(pack.at_a_time >= Exact::ONE, Field::AtATime, Problem::LessThanOne)?;
    keeps(pack.at_a_time, Field::AtATime)?;
    for tier in &pack.tiers {
        hold(tier.from > Exact::ONE, Field::TierFrom, Problem::NotAboveOne)?;
        keeps(tier.from, Field::TierFrom)?;
        not_negative(tier.price.major(), Field::TierPrice)?;
    }
    distinct(pack.tiers.iter().map(|tier| id_of_number(tier.from)), Field::TierFrom)
}

/// Prices that were heard are in the order of their days, and the one paid now is the last.
fn heard(pack: &Pack) -> Checked {
    for quoted in &pack.earlier {
        not_negative(quoted.price.major(), Field::EarlierPrice)?;
    }
    hold(pack.earlier.is_empty() || pack.day.is_some(), Field::PriceDay, Problem::Empty)?;
    let days: Vec<Date> = pack.heard().map(|quoted| quoted.day).collect();
    hold(days.windows(2).all(|pair| pair.first() < pair.last()), Field::EarlierPrice, Problem::NotAfter)
}

fn on_hand(on_hand: Option<OnHand>, may_be: impl Fn(Dimension) -> bool) -> Checked {
    let Some(OnHand { amount, .. }) = on_hand else { return Ok(()) };
    not_negative(amount.number, Field::OnHand)?;
    hold(may_be(amount.unit.dimension()), Field::OnHand, Problem::NotACount)
}

/// Nothing weighs more than what it was made from.
fn weighing(weighing: &Weighing) -> Checked {
    let mut before = mass(weighing.bought, Field::WeighedBought)?;
    let steps = [(weighing.trimmed, Field::WeighedTrimmed), (weighing.pressed, Field::WeighedPressed)];
    for (amount, field) in steps {
        let Some(amount) = amount else { continue };
        let weighed = mass(amount, field)?;
        hold(weighed <= before, field, Problem::MoreThanBefore)?;
        before = weighed;
    }
    Ok(())
}

pub(super) fn ingredient(record: &Ingredient) -> Checked {
    name(&record.name)?;
    a_yield(record.trim_yield, Field::TrimYield)?;
    record.press_yield.map_or(Ok(()), |share| a_yield(share, Field::PressYield))?;
    record.soak_yield.map_or(Ok(()), |share| positive(share.fraction(), Field::SoakYield))?;
    record.density.map_or(Ok(()), |density| positive(density.grams_per_millilitre(), Field::Density))?;
    record.juice_density.map_or(Ok(()), |density| positive(density.grams_per_millilitre(), Field::JuiceDensity))?;
    record.piece_weight.map_or(Ok(()), |weight| positive(weight.grams(), Field::PieceWeight))?;
    record.allergens.as_ref().map_or(Ok(()), |allergens| {
        distinct(allergens.iter().map(|allergen| id(*allergen as u64)), Field::Allergens)
    })?;
    hold(record.nuts.chars().count() <= NAME_LENGTH, Field::Nuts, Problem::TooLong)?;
    hold(record.sold_as.chars().count() <= NAME_LENGTH, Field::SoldAs, Problem::TooLong)?;
    let parts = record.parts.as_deref().unwrap_or_default();
    hold(parts.chars().count() <= PARTS_LENGTH, Field::Parts, Problem::LongerThanALabel)?;
    on_hand(record.on_hand, |_| true)?;
    for weighed in &record.weighings {
        weighing(weighed)?;
    }
    record.season.as_ref().map_or(Ok(()), season)?;
    record.starting.as_ref().map_or(Ok(()), starting)?;
    packs(&record.packs)
}

fn season(season: &Season) -> Checked {
    a_yield(season.trim_yield, Field::SeasonTrimYield)?;
    season.press_yield.map_or(Ok(()), |share| a_yield(share, Field::SeasonPressYield))
}

fn starting(starting: &Starting) -> Checked {
    name(&starting.key)?;
    for brought in &starting.figures {
        positive(brought.value, Field::StartingFigure)?;
    }
    distinct(starting.figures.iter().map(|brought| id(brought.figure as u64)), Field::StartingFigure)
}

pub(super) fn packaging(record: &Packaging) -> Checked {
    name(&record.name)?;
    for pack in &record.packs {
        hold(pack.contents.unit.dimension() == Dimension::Count, Field::Contents, Problem::NotACount)?;
    }
    on_hand(record.on_hand, |dimension| dimension == Dimension::Count)?;
    packs(&record.packs)
}

/// A pack of goods as an id; the goods alone where no pack is asked for.
pub(super) const fn id_of_goods(goods: Goods, pack: Option<PackId>) -> Id {
    let pack = match pack {
        Some(pack) => pack.number(),
        None => 0,
    };
    match goods {
        Goods::Ingredient(id) => [0, id.number(), pack],
        Goods::Packaging(id) => [1, id.number(), pack],
    }
}

pub(super) fn buying_list(record: &BuyingList) -> Checked {
    for line in &record.lines {
        positive(line.packs, Field::PacksToBuy)?;
        line.paid.map_or(Ok(()), |paid| not_negative(paid.major(), Field::Paid))?;
    }
    distinct(record.lines.iter().map(|line| id_of_goods(line.goods, Some(line.pack))), Field::PacksToBuy)
}
