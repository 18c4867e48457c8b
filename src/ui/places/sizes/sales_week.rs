//! What was sold in one week.

use std::sync::Arc;

use leptos::prelude::*;

use super::by_drink::{Units, by_drink};
use crate::app::route::Route;
use crate::drink::sales;
use crate::foundation::measure::Date;
use crate::say;
use crate::ui::fields::Hangs;
use crate::ui::live::{flag, text};
use crate::ui::parts::{Back, Figure};
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words;

/// What was sold in one week.
#[component]
pub fn SalesWeek(
    /// The Monday that it begins on.
    monday: Date,
) -> impl IntoView {
    let state = AppState::here();
    let sold = Memo::new(move |_| state.book.with(|book| sales::sold_in(&sales::week_so_far(book, monday))));
    let said = move |over| words::overflow(over);
    let units = text(move || sold.get().map_or_else(said, |(units, _)| state.number(units)));
    let contribution = text(move || sold.get().map_or_else(said, |(_, money)| state.money(money)));
    let working = text(move || {
        let Ok((_, contribution)) = sold.get() else { return String::new() };
        state.book.with(|book| {
            let week = sales::week_so_far(book, monday);
            words::week_working(&week, contribution, &state.speaker.get())
        })
    });
    let running = flag(move || monday < today().monday().plus_weeks(1) && monday >= today().monday());
    let running = text(move || if running.get() { say!(sales::week_not_over).to_string() } else { String::new() });
    let hangs = Hangs::new();
    let answer = move || {
        view! {
            <dl class="figures">
                <Figure name=say!(sales::drinks_sold) value=units large=true />
                <Figure name=say!(sales::profit) value=contribution large=true />
            </dl>
            <p class="about">{working}</p>
        }
        .into_any()
    };
    let fields = by_drink(Units {
        hangs,
        step: say!(sales::drinks_sold),
        week: Some(monday),
        now: Arc::new(move |book, offer| {
            Some(book.week(monday)?.sold.iter().find(|sold| sold.offer() == offer)?.units)
        }),
        put: Arc::new(move |offer, units| {
            state.book.with_untracked(|book| {
                let edit = state.ledger.with_untracked(|ledger| sales::write_down(book, ledger, monday, offer, units));
                edit.map_err(|unknown| words::unknown_sales(unknown, book))
            })
        }),
    });
    view! {
        <Back to=Route::Sales name=say!(sales::sales) />
        <h1>{words::week(monday)} <span class="h1-size">{say!(sales::monday_to_sunday)}</span></h1>
        <p class="about">{say!(sales::about_week)}</p>
        <p class="soft">{running}</p>
        <nav class="actions" aria-label=say!(sales::other_weeks)>
            <a class="button" href=Route::SalesWeek(monday.plus_weeks(-1)).address()>{say!(sales::previous_week)}</a>
            <a class="button" href=Route::SalesWeek(monday.plus_weeks(1)).address()>{say!(sales::next_week)}</a>
        </nav>
        {hangs.answer(answer)}
        <section class="section">
            <h2>{say!(sales::sales_by_drink)}</h2>
            {fields}
        </section>
    }
}
