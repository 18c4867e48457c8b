//! What the shop costs: wage, overhead and what a drink bears of it, waste.

use std::sync::Arc;

use leptos::prelude::*;

use super::{Setting, changed, field, money, part, percent, small_share};
use crate::app::route::Route;
use crate::book::{Key, OverheadPer};
use crate::drink::cost::{overhead, overhead_for};
use crate::foundation::jump::Kind;
use crate::say;
use crate::ui::fields::{self, Choice, Entry, Example, asks};
use crate::ui::live::live;
use crate::ui::state::AppState;
use crate::words;

/// Wage, overhead and waste.
pub(super) fn shop_costs(state: AppState) -> AnyView {
    let wage = money(state, say!(book::hourly_wage), Example::Wage, |it| it.wage, |it, money| it.wage = money);
    let unsold = percent(state, say!(drinks::waste), Example::Waste, |it| it.unsold, |it, share| it.unsold = share);
    let inside = view! {
            <div class="fields">
                <Entry
                    label=say!(book::hourly_wage)
                    asks=asks(Kind::Wage, Key::Settings, "wage")
                    note=say!(book::hourly_wage_about)
                    value=wage.value
                    commit=wage.commit
                />
                {small_share(say!(drinks::waste), "waste", say!(book::waste_about), unsold)}
                {amount(state)}
                {per(state)}
            </div>
            <p class="soft">{live(move || comes_to(state))}</p>
    };
    let figure = move || {
        let (wage, overhead) = state.book.with(|book| (book.settings().wage, book.settings().overhead));
        say!(book::wage_and_overhead, wage = state.money(wage), overhead = state.money(overhead))
    };
    part(say!(book::shop_costs), "", figure, inside.into_any())
}

/// What is typed for a drink or for a week.
fn amount(state: AppState) -> AnyView {
    let label = say!(drinks::overhead);
    let value = super::shown(state, |it, state| state.plain_money(it.overhead));
    let is_weekly = Memo::new(move |_| state.book.with(|book| book.settings().overhead_per == OverheadPer::Week));
    live(move || {
        let example = if is_weekly.get() { Example::CostPerWeek } else { Example::CostPerDrink };
        let commit = fields::money(label, example, |book, money| changed(book, |it| it.overhead = money));
        field(label, say!(book::overhead_about), Setting { value, commit })
    })
}

/// What it is typed for; the amount follows, in one step. Per drink made is offered only where a book from before has it so.
fn per(state: AppState) -> AnyView {
    let options = Memo::new(move |_| {
        let in_force = state.book.with(|book| book.settings().overhead_per);
        let offered = |per: &&OverheadPer| **per == in_force || **per != OverheadPer::DrinkMade;
        let option = |per: &OverheadPer| (per.stored_name().to_string(), words::overhead_per(*per).to_string());
        OverheadPer::ALL.iter().filter(offered).map(option).collect::<Vec<_>>()
    });
    let value = super::shown(state, |it, _| it.overhead_per.stored_name().to_string());
    let choose = Arc::new(move |chosen: &str| {
        let Some(per) = OverheadPer::ALL.iter().copied().find(|per| per.stored_name() == chosen) else {
            return Ok(());
        };
        let amount = state.book.with_untracked(|book| overhead_for(book, per)).map_err(words::overflow)?;
        let Some(amount) = amount else { return Err(say!(book::overhead_needs_sales).to_string()) };
        let edit = state.book.with_untracked(|book| {
            changed(book, |it| {
                it.overhead_per = per;
                it.overhead = amount;
            })
        });
        edit.map_or(Ok(()), |edit| state.apply(say!(book::overhead_per), edit))
    });
    view! { <Choice label=say!(book::overhead_per) options value choose /> }.into_any()
}

/// What a drink bears of overhead, and the number of drinks that it is divided by.
fn comes_to(state: AppState) -> AnyView {
    let (typed, per, each, sold) = state.book.with(|book| {
        let settings = book.settings();
        (settings.overhead, settings.overhead_per, overhead(book), book.sold_weekly())
    });
    let Ok(each) = each else { return ().into_any() };
    if typed.is_zero() {
        return say!(drinks::no_overhead_yet).into_any();
    }
    let (drinks, said) = (state.speaker.get().counted(sold), state.money(each));
    match per {
        OverheadPer::Week if sold.is_zero() => {
            view! { <a href=Route::Sales.address()>{say!(drinks::no_weekly_yet)}</a> }.into_any()
        }
        OverheadPer::Week => {
            let money = state.money(typed);
            say!(book::overhead_of_week, each = said, money = money, drinks = drinks).into_any()
        }
        OverheadPer::DrinkMade => say!(book::overhead_of_made, each = said).into_any(),
        OverheadPer::DrinkSold if sold.is_zero() => ().into_any(),
        OverheadPer::DrinkSold => match typed.times(sold) {
            Ok(week) => {
                let money = state.money(week);
                say!(book::overhead_over_week, each = said, money = money, drinks = drinks).into_any()
            }
            Err(_) => ().into_any(),
        },
    }
}
