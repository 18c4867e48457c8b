//! Costs and fees that are tried: all ingredients, the wage, waste, card fee, commission, and the target.

use std::sync::Arc;

use leptos::prelude::*;

use super::{Trying, percent, share};
use crate::book::Scope;
use crate::foundation::measure::{Exact, Share};
use crate::say;
use crate::ui::fields::{Entry, Slider, Take, Try, tried_number};
use crate::ui::live::text;
use crate::ui::parts::Fold;
use crate::ui::state::AppState;
use crate::words::Example;

/// How far the cost of ingredients can be moved, in percent.
const INGREDIENTS: (i32, i32) = (-50, 100);
/// How far the slider of the target goes, in percent.
const TARGET: (i32, i32) = (0, 95);

/// The fold of costs and fees.
#[component]
pub fn Costs(trying: Trying) -> impl IntoView {
    let state = AppState::here();
    let hangs = trying.hangs.within();
    let figure = text(move || match trying.costs_tried() {
        _ if hangs.is_unread() => hangs.waits_for(),
        0 => say!(sales::as_in_book).to_string(),
        count => say!(sales::count_changed, count = count),
    });
    let within = move |number: Option<Exact>| {
        let number = number.unwrap_or_default();
        let (least, most) = INGREDIENTS;
        let (least, most) = (Exact::new(i64::from(least), 0), Exact::new(i64::from(most), 0));
        if number < least || number > most {
            let shown = |end| untrack(|| state.number(end));
            return Err(say!(sales::change_too_far, least = shown(least), most = shown(most)));
        }
        Ok(Some(number))
    };
    let ingredients: Try = Arc::new(move |read, visit| {
        let read = read.and_then(within);
        trying.take(read, visit, |number| trying.set_ingredients(number.map(share).unwrap_or_default()))
    });
    let target: Try =
        Arc::new(move |read, visit| trying.take(read, visit, |number| trying.set_target(number.map(share))));
    let of_target = match trying.scope {
        Scope::Menu => say!(sales::target_of_book),
        Scope::Kind(_) => say!(sales::target_of_kind),
        Scope::Drink(_) => say!(sales::target_of_drink),
    };
    let wage: Take<Exact> = Box::new(move |read, visit| {
        let read = read.and_then(|number| match number {
            Some(number) if number.is_negative() => Err(say!(sales::tried_wage_too_low).to_string()),
            number => Ok(number),
        });
        trying.take(read, Some(visit), |number| trying.set_wage(number))
    });
    let part = move |label, now: fn(Trying) -> Share, set: fn(Trying, Option<Share>), example| {
        let value = text(move || state.number(percent(now(trying))));
        let take: Take<Exact> =
            Box::new(move |read, visit| trying.take(read, Some(visit), |number| set(trying, number.map(share))));
        view! { <Entry label unit="%" hangs value commit=tried_number(example, take) /> }
    };
    view! {
        <Fold name=say!(sales::costs_and_fees) figure late=trying.is_all_read()>
            <Slider
                label=say!(sales::ingredient_cost_change)
                ends=INGREDIENTS
                value=Signal::derive(move || percent(trying.ingredients()))
                put=ingredients
                note=say!(sales::about_ingredient_cost)
                hangs
            />
            <div class="pair">
                <Entry
                    label=say!(book::hourly_wage)
                    hangs
                    value=text(move || state.plain_money(trying.wage()))
                    commit=tried_number(Example::Wage, wage)
                />
                {part(say!(drinks::waste), Trying::waste, Trying::set_waste, Example::Waste)}
                {part(say!(book::card_fee), Trying::card_fee, Trying::set_card_fee, Example::CardFee)}
                {part(say!(book::app_commission), Trying::commission, Trying::set_commission, Example::Commission)}
            </div>
            <Slider
                label=say!(common::target_margin)
                ends=TARGET
                value=Signal::derive(move || percent(trying.target()))
                put=target
                note=of_target
                hangs
            />
        </Fold>
    }
}
