//! The days that something is made on.

use std::sync::Arc;

use leptos::prelude::*;

use super::batch::stands;
use super::tabs::Tabs;
use crate::app::route::Route;
use crate::book::{Batch, Key, Offer};
use crate::counter::batch::{again, begun, usual_day};
use crate::foundation::measure::{Date, Exact};
use crate::say;
use crate::ui::address::go;
use crate::ui::fields::Day;
use crate::ui::live::{flag, live, press, rows, text, trouble, when};
use crate::ui::order;
use crate::ui::parts::Section;
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words;

/// The days that something is made on, today's first.
#[component]
pub fn Batches() -> impl IntoView {
    let state = AppState::here();
    let now = today();
    let days = Memo::new(move |_| {
        let mut days: Vec<Key> = state.book.with(|book| {
            let planned = book.batches().rev().filter(|batch| batch.is_planned());
            planned.map(|batch| Key::Batch(batch.day)).collect()
        });
        if let Some(here) = days.iter().position(|key| *key == Key::Batch(now)) {
            days.get_mut(..=here).unwrap_or_default().rotate_right(1);
        }
        days
    });
    let row = move |key| match key {
        Key::Batch(day) => batch_row(day, now),
        _ => ().into_any(),
    };
    let teach = || {
        view! {
            <div class="teach">
                <h2>{say!(counter::first_batch)}</h2>
                <p>{say!(counter::first_batch_about)}</p>
            </div>
        }
        .into_any()
    };
    view! {
        <h1>{say!(counter::batches)}</h1>
        <Tabs here=Route::Batches />
        {when(move || days.with(Vec::is_empty), teach)}
        <ul class="rows counter-days">{rows(days, row)}</ul>
        <New />
    }
}

fn batch_row(day: Date, now: Date) -> AnyView {
    let state = AppState::here();
    let about = text(move || stands(state, day));
    let on = words::day(day);
    let name = if day == now { say!(counter::todays_date, day = on) } else { on };
    view! {
        <li>
            <a class="row" href=Route::Batch(day).address()>
                <span class="row-name">{name} <span class="row-about">{about}</span></span>
            </a>
        </li>
    }
    .into_any()
}

/// A batch for another day.
#[component]
fn New() -> impl IntoView {
    let state = AppState::here();
    let on = RwSignal::new(today());
    let refused = RwSignal::new(None::<String>);
    let taken = Memo::new(move |_| state.book.with(|book| book.batch(on.get()).is_some_and(Batch::is_planned)));
    let put = move |batch: Batch| {
        let day = batch.day;
        let edit = state.book.with_untracked(|book| begun(book, batch));
        let put = state.apply(&say!(counter::start_batch_of, day = words::day(day)), edit);
        if put.is_ok() {
            go(Route::Batch(day));
        }
        refused.set(put.err());
    };
    let choose = Arc::new(move |text: &str| {
        let day = Date::from_text(text).ok_or_else(|| say!(counter::choose_a_day))?;
        on.set(day);
        Ok(())
    });
    let empty = move || put(Batch { day: on.get_untracked(), makes: Vec::new(), ready: Vec::new() });
    let usual = move || match state
        .book
        .with_untracked(|book| usual_day(book, on.get_untracked(), &mut order::offers_on_cards(book)))
    {
        Ok(batch) => put(batch),
        Err(error) => refused.set(Some(words::overflow(error))),
    };
    // The last batch before the day, else the last there is.
    let last = Memo::new(move |_| {
        state.book.with(|book| {
            let planned = || book.batches().rev().filter(|batch| batch.is_planned());
            let before = planned().find(|batch| batch.day < on.get());
            before.or_else(|| planned().next()).map(|batch| batch.day)
        })
    });
    let from_last = live(move || {
        let Some(day) = last.get() else { return ().into_any() };
        let copy = move || {
            let batch = state.book.with_untracked(|book| book.batch(day).map(|of| again(of, on.get_untracked())));
            if let Some(batch) = batch {
                put(batch);
            }
        };
        view! {
            <button class="button" on:click=press(copy)>
                {say!(counter::copy_batch, day = words::day(day))}
            </button>
        }
        .into_any()
    });
    let any_weekly = move || {
        let sold = |offer: &Offer| offer.weekly.is_some_and(Exact::is_positive);
        state.book.with(|book| book.offers().any(sold))
    };
    let about = || view! { <p class="about">{say!(counter::usual_day_about)}</p> }.into_any();
    let from_usual = when(any_weekly, move || {
        view! {
            <button class="button" on:click=press(usual)>
                {say!(counter::plan_usual_day)}
            </button>
        }
        .into_any()
    });
    let open = move || {
        if taken.get() {
            view! {
                <p class="actions">
                    <a class="button" href=Route::Batch(on.get()).address()>{say!(counter::open_that_batch)}</a>
                </p>
            }
            .into_any()
        } else {
            ().into_any()
        }
    };
    view! {
        <Section heading=say!(counter::make_a_batch)>
            {when(any_weekly, about)}
            <div class="fields">
                <Day label=say!(counter::batch_day) value=text(move || on.get().to_string()) choose=choose />
            </div>
            <p class="actions" hidden=flag(move || taken.get())>
                {from_last}
                {from_usual}
                <button class="button" on:click=press(empty)>
                    {say!(counter::start_empty_batch)}
                </button>
            </p>
            {live(open)}
            {trouble(move || refused.get())}
        </Section>
    }
}
