//! What a usable amount of an ingredient costs.

use crate::book::{Ingredient, Pack, Stage};
use crate::cost::{bought_cost, usable_cost};
use crate::measure::{Amount, Dimension, Exact, Share, Unit};
use crate::ui::state::AppState;
use crate::words;

/// Each cost of a usable amount that can be computed: its name and its figure.
pub fn costs(state: AppState, ingredient: &Ingredient, pack: &Pack) -> Vec<(String, String)> {
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
        let one = Amount::new(Exact::from(if unit == Unit::Millilitre { 100 } else { 1 }), unit);
        let measure = one.measure().ok()?;
        let cost = usable_cost(ingredient, pack, stage, measure).ok()?;
        let per = if one.number == Exact::ONE { unit.to_string() } else { state.amount(one) };
        Some((format!("Per {per} {}", words::stage(stage)), state.fine_money(cost)))
    };
    let mut costs: Vec<(String, String)> = stages.into_iter().filter_map(of).collect();
    if pack.contents.unit.dimension() == Dimension::Count {
        costs.extend(piece(state, pack));
    }
    costs
}

/// What one piece costs.
pub fn piece(state: AppState, pack: &Pack) -> Option<(String, String)> {
    let cost = bought_cost(pack, Exact::ONE).ok()?;
    Some(("Per piece".to_string(), state.fine_money(cost)))
}
