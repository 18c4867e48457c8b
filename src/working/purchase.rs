//! What things cost: out of a pack, by what must be bought.

use super::recipe::{self, Used, cost_error};
use super::shown::Offered;
use super::{Figure, Name, OfGoods, OfOffer, Rule, Step};
use crate::book::{Book, Goods, Ingredient, Key, LineId, Pack, Stage};
use crate::drink::cost::{bought_cost, paid, usable_cost};
use crate::drink::ledger::OfferError;
use crate::drink::yields;
use crate::foundation::measure::{Amount, Count, Dimension, Exact, Measure, Month, Overflow};

/// What a line costs in one drink.
pub fn line_cost(offered: &Offered, id: LineId) -> Result<Option<Step>, OfferError> {
    let Some(used) = offered.line(id) else { return Ok(None) };
    let cost = offered.priced.cost.lines.iter().find(|it| it.line == id);
    let (Some(cost), Some(pack)) = (cost, used.ingredient.packs.first()) else { return Ok(None) };
    let (amount, measure) = bought_as(offered, &used)?;
    let bought =
        bought(&used.ingredient, used.month, used.line.stage, amount, measure, pack.contents.unit.dimension())?;
    let from = out_of(Goods::Ingredient(used.ingredient.id), pack, bought)?;
    Ok(Some(Step::new(used.name(OfGoods::Cost), Figure::Money(cost.cost), Rule::Proportion, from)))
}

/// What is used of a line, as an amount to buy for: the mass for a scoop of ice, else the amount
/// itself.
fn bought_as(offered: &Offered, used: &Used) -> Result<(Step, Measure), OfferError> {
    let to_use = used.scaled.to_use;
    let shown = offered.shown(OfOffer::ToUse(used.line.id));
    let amount = Step::opens(used.name(OfGoods::ToUse(used.line.stage)), Figure::from(to_use), shown);
    match (used.line.ice, to_use) {
        (Some(ice), Measure::Volume(_)) => {
            let (mass, grams) = recipe::mass_of_ice(offered, used, ice, amount, to_use)?;
            Ok((mass, Measure::Mass(grams)))
        }
        _ => Ok((amount, to_use)),
    }
}

/// What a piece of the container's set costs.
pub fn packaging_cost(offered: &Offered, place: usize) -> Result<Option<Step>, OfferError> {
    let used = offered.book.set_of(offered.container).nth(place);
    let (Some(used), Some(cost)) = (used, offered.priced.cost.packaging.get(place)) else { return Ok(None) };
    let goods = Goods::Packaging(used.packaging);
    let Some(pack) = offered.book.packs(goods).first() else { return Ok(None) };
    let count = Figure::Count(Count::from_pieces(used.count));
    let count = Step::given(Name::Of(goods, OfGoods::Used), count, holder(offered, place));
    let from = out_of(goods, pack, count)?;
    Ok(Some(Step::new(Name::Of(goods, OfGoods::Cost), Figure::Money(cost.cost), Rule::Proportion, from)))
}

/// The container or the shared set that a use stands in.
fn holder(offered: &Offered, place: usize) -> Key {
    let mut before = offered.container.set.len();
    let shared = offered.container.shared.iter().filter_map(|id| offered.book.packaging_set(*id));
    let mut holds = shared.filter(|set| {
        before = before.saturating_add(set.uses.len());
        place < before
    });
    match holds.next() {
        Some(set) if place >= offered.container.set.len() => Key::PackagingSet(set.id),
        _ => Key::Container(offered.container.id),
    }
}

/// What a usable amount costs.
pub fn usable(
    book: &Book,
    ingredient: &Ingredient,
    pack: &Pack,
    stage: Stage,
    amount: Amount,
) -> Result<Step, OfferError> {
    let month = book.month();
    let ingredient = &ingredient.in_month(month);
    let measure = amount.measure()?;
    let cost = usable_cost(ingredient, pack, stage, measure)?;
    let goods = Goods::Ingredient(ingredient.id);
    let amount = Step::shown_for(Name::Of(goods, OfGoods::Usable(stage)), Figure::Amount(amount));
    let bought = bought(ingredient, month, stage, amount, measure, pack.contents.unit.dimension())?;
    let from = out_of(goods, pack, bought)?;
    Ok(Step::new(Name::Of(goods, OfGoods::UsableCost(stage)), Figure::Money(cost), Rule::Proportion, from))
}

/// What a piece costs.
pub fn piece(goods: Goods, pack: &Pack) -> Result<Step, OfferError> {
    let cost = bought_cost(pack, Exact::ONE)?;
    let from = vec![pack_paid(goods, pack)?, contents(goods, pack)];
    Ok(Step::new(Name::Of(goods, OfGoods::PieceCost), Figure::Money(cost), Rule::Quotient, from))
}

/// So much of what a pack holds, for what is paid for it.
fn out_of(goods: Goods, pack: &Pack, bought: Step) -> Result<Vec<Step>, Overflow> {
    Ok(vec![bought, pack_paid(goods, pack)?, contents(goods, pack)])
}

fn contents(goods: Goods, pack: &Pack) -> Step {
    of_pack(goods, OfGoods::Contents, Figure::Amount(pack.contents))
}

fn of_pack(goods: Goods, of: OfGoods, figure: Figure) -> Step {
    Step::given(Name::Of(goods, of), figure, Key::from(goods))
}

/// What is paid for a pack: its price, by the step of its prices that is reached, and what comes
/// on top.
fn pack_paid(goods: Goods, pack: &Pack) -> Result<Step, Overflow> {
    let now = Figure::Money(pack.price_now());
    let price = if pack.tiers.is_empty() {
        of_pack(goods, OfGoods::Price, now)
    } else {
        let tiers = pack.tiers.iter().map(|tier| (tier.from, tier.price));
        let tiers = std::iter::once((Exact::ONE, pack.price)).chain(tiers);
        let mut from = vec![of_pack(goods, OfGoods::AtATime, Figure::Number(pack.at_a_time))];
        from.extend(tiers.map(|(packs, price)| of_pack(goods, OfGoods::PriceFrom(packs), Figure::Money(price))));
        Step::new(Name::Of(goods, OfGoods::Price), now, Rule::TierReached, from)
    };
    if pack.surcharge.is_zero() {
        return Ok(price);
    }
    let from = vec![price, of_pack(goods, OfGoods::Surcharge, Figure::Money(pack.surcharge))];
    Ok(Step::new(Name::Of(goods, OfGoods::Paid), Figure::Money(paid(pack)?), Rule::Sum, from))
}

/// What must be bought for an amount meant at a stage, in the dimension of the pack.
fn bought(
    ingredient: &Ingredient,
    month: Option<Month>,
    stage: Stage,
    amount: Step,
    measure: Measure,
    pack: Dimension,
) -> Result<Step, OfferError> {
    let yields = recipe::yields_up_to(ingredient, month, stage);
    let in_pack = |dimension: Dimension| -> Result<Figure, OfferError> {
        let bought = yields::bought_for(ingredient, stage, measure, dimension).map_err(cost_error)?.amount()?;
        Ok(Figure::from(dimension.measure(bought)))
    };
    let name = |of| Name::Of(Goods::Ingredient(ingredient.id), of);
    let mass = |of| -> Result<Step, OfferError> {
        let figure = in_pack(Dimension::Mass)?;
        if let Measure::Count(_) = measure {
            let from = [Some(amount.clone()), recipe::piece_weight(ingredient)].into_iter().flatten().collect();
            return Ok(Step::new(name(of), figure, Rule::Product, from));
        }
        let (mass, _) = recipe::mass_at(ingredient, month, stage, amount.clone(), measure)?;
        Ok(divided(name(of), figure, mass, yields.clone()))
    };
    Ok(match (pack, measure) {
        (Dimension::Count, Measure::Count(_)) => amount,
        (Dimension::Volume, Measure::Volume(_)) if stage != Stage::Pressed => {
            divided(name(OfGoods::Bought), in_pack(pack)?, amount.clone(), yields.clone())
        }
        (Dimension::Mass, _) => mass(OfGoods::Bought)?,
        (Dimension::Count, _) => {
            let by = recipe::piece_weight(ingredient).into_iter().collect();
            divided(name(OfGoods::Bought), in_pack(pack)?, mass(OfGoods::BoughtMass)?, by)
        }
        (Dimension::Volume, _) => {
            let by = vec![recipe::density_at(ingredient, Stage::AsBought)?];
            divided(name(OfGoods::Bought), in_pack(pack)?, mass(OfGoods::BoughtMass)?, by)
        }
    })
}

/// A step divided by others; itself where there are none.
fn divided(name: Name, figure: Figure, first: Step, by: Vec<Step>) -> Step {
    if by.is_empty() {
        return first;
    }
    let mut from = vec![first];
    from.extend(by);
    Step::new(name, figure, Rule::Quotient, from)
}
