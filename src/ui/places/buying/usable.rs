//! What a usable amount of an ingredient costs.

use leptos::prelude::Get;

use crate::book::{Goods, Ingredient, Pack, Stage};
use crate::buying::quotes::Usable;
use crate::drink::cost::{bought_cost, usable_cost};
use crate::foundation::measure::{Amount, Dimension, Exact, Share, Unit};
use crate::say;
use crate::ui::parts::Named;
use crate::ui::state::AppState;
use crate::words;
use crate::working::Shown;

/// Each cost of a usable amount that can be computed.
pub fn costs(state: AppState, ingredient: &Ingredient, pack: &Pack) -> Vec<Named> {
    let units = state.units();
    let weight = units.buying_weight_unit();
    let volume = units.drink_unit();
    let mut stages = vec![(Stage::AsBought, weight), (Stage::AsBought, volume)];
    if ingredient.trim_yield < Share::WHOLE {
        stages = vec![(Stage::Trimmed, weight)];
    }
    if ingredient.press_yield.is_some() {
        stages.push((Stage::Pressed, volume));
    }
    if ingredient.soak_yield.is_some() {
        stages.push((Stage::SoakedOrBrewed, volume));
    }
    let of = |(stage, unit): (Stage, Unit)| {
        let amount = Amount::new(Exact::from(if unit == Unit::Millilitre { 100 } else { 1 }), unit);
        let measure = amount.measure().ok()?;
        let cost = usable_cost(ingredient, pack, stage, measure).ok()?;
        let per = words::quotes::label_per(Usable { stage, amount }, &state.speaker.get());
        let how = Shown::Usable { ingredient: ingredient.id, pack: pack.id, stage, amount };
        Some((per, state.fine_money(cost), Some(how)))
    };
    let mut costs: Vec<Named> = stages.into_iter().filter_map(of).collect();
    if pack.contents.unit.dimension() == Dimension::Count {
        costs.extend(piece(state, Goods::Ingredient(ingredient.id), pack));
    }
    costs
}

/// What one piece costs.
pub fn piece(state: AppState, goods: Goods, pack: &Pack) -> Option<Named> {
    let cost = bought_cost(pack, Exact::ONE).ok()?;
    Some((say!(goods::per_piece).to_string(), state.fine_money(cost), Some(Shown::Piece(goods, pack.id))))
}
