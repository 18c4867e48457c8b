//! What is sold in a week: the usual one, and those that were written down.

use std::sync::Arc;

use leptos::prelude::*;

use super::by_drink::{Units, by_drink};
use super::over_time::OverTime;
use super::till::FromTill;
use crate::app::route::Route;
use crate::book::{Key, Scope};
use crate::drink::sales::{self, Average};
use crate::foundation::measure::{Date, Exact, Money};
use crate::say;
use crate::ui::fields::Hangs;
use crate::ui::live::{live, press, rows, text, trouble, when};
use crate::ui::parts::{Back, Figure, Fold, Section};
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words;

/// What is sold in a week.
#[component]
pub fn Sales() -> impl IntoView {
    let state = AppState::here();
    let hangs = Hangs::new();
    let any = move || state.book.with(|book| book.offers().next().is_some());
    let teach = || {
        view! {
            <div class="teach">
                <h2>{say!(sales::what_sells)}</h2>
                <p>{say!(sales::add_sizes_first)}</p>
            </div>
        }
        .into_any()
    };
    view! {
        <Back to=Route::Sizes name=say!(first::sizes) />
        <h1>{say!(sales::sales)}</h1>
        <p class="about">{say!(sales::about_sales)}</p>
        {when(any, move || view! {
            <div class="panes">
                <div class="pane">
                    <Usual hangs />
                    <div class="folds">
                        <ByHand hangs />
                        <FromTill />
                    </div>
                </div>
                <div class="pane">
                    <OverTime />
                    <Written />
                </div>
            </div>
        }.into_any())}
        {when(move || !any(), teach)}
    }
}

/// The usual week, by hand.
#[component]
fn Usual(hangs: Hangs) -> impl IntoView {
    let state = AppState::here();
    let weekly = Memo::new(move |_| {
        state.book.with(|book| state.ledger.with(|ledger| sales::weekly_contribution(book, ledger, Scope::Menu)))
    });
    let figure = move |read: fn(&sales::Weekly, AppState) -> String| {
        text(move || {
            weekly.with(|weekly| weekly.as_ref().map_or_else(|over| words::overflow(*over), |it| read(it, state)))
        })
    };
    let units = figure(|weekly, state| state.number(weekly.units));
    let contribution = figure(|weekly, state| state.money(weekly.contribution));
    let working = text(move || {
        let Ok(weekly) = weekly.get() else { return String::new() };
        let said = |book: &_| {
            let working =
                state.ledger.with(|ledger| words::weekly_working(book, ledger, &weekly, &state.speaker.get()));
            [working, words::not_counted(&weekly, book)].join(" ")
        };
        state.book.with(said)
    });
    let none_sold = move || state.book.with(|book| book.sold_weekly().is_zero());
    let figures = move || {
        view! {
            <dl class="figures">
                <Figure name=say!(common::drinks_sold_per_week) value=units large=true />
                <Figure name=say!(common::profit_per_week) value=contribution large=true />
            </dl>
            <p class="soft">{say!(sales::same_terms)}</p>
            <Fold name=say!(common::show_the_math) figure=Signal::stored(String::new())>
                <p class="about">{working}</p>
            </Fold>
        }
        .into_any()
    };
    let none_yet = || view! { <p class="hollow">{say!(sales::no_sales_yet)}</p> }.into_any();
    let answer = move || view! { {when(none_sold, none_yet)} {when(move || !none_sold(), figures)} }.into_any();
    view! {
        <Section heading=say!(sales::typical_week) about=say!(sales::about_typical_week)>
            {hangs.answer(answer)}
            <AverageOfWeeks />
        </Section>
    }
}

/// The usual week, size by size.
#[component]
fn ByHand(hangs: Hangs) -> impl IntoView {
    let state = AppState::here();
    let fields = by_drink(Units {
        hangs,
        step: say!(common::drinks_sold_per_week),
        week: None,
        now: Arc::new(|book, offer| book.offer(offer)?.weekly),
        put: Arc::new(move |offer, units| {
            state.book.with_untracked(|book| {
                let gone = || words::unknown_sales(sales::Unknown::NotOffered, book);
                sales::usual_week(book, offer, units).ok_or_else(gone)
            })
        }),
    });
    let state = AppState::here();
    let figure = text(move || state.book.with(|book| say!(sales::count_sizes, sizes = book.offers().count())));
    view! {
        <Fold name=say!(sales::typical_by_size) figure>
            <p class="about">{say!(sales::about_typical_by_size)}</p>
            {fields}
        </Fold>
    }
}

/// The average of the last weeks as the usual one.
#[component]
fn AverageOfWeeks() -> impl IntoView {
    let state = AppState::here();
    let refused = RwSignal::new(None::<String>);
    let now = today().monday();
    let average = move || -> Option<Average> { state.book.with(|book| sales::average(book, now)).ok().flatten() };
    let adopt = move || {
        if let Some(average) = untrack(average) {
            refused.set(state.apply(say!(sales::use_average), average.edit).err());
        }
    };
    let about = text(move || average().map(|average| words::weeks_averaged(&average)).unwrap_or_default());
    let offered = move || {
        view! {
            <p class="actions">
                <button class="button" on:click=press(adopt)>
                    {say!(sales::use_average)}
                </button>
            </p>
            <p class="soft">{about}</p>
        }
        .into_any()
    };
    view! {
        {when(move || average().is_some_and(|average| average.offers > 0), offered)}
        {trouble(move || refused.get())}
    }
}

/// The weeks written down, the latest first.
#[component]
fn Written() -> impl IntoView {
    let state = AppState::here();
    let weeks =
        Memo::new(move |_| state.book.with(|book| book.weeks().rev().map(|week| Key::Week(week.monday)).collect()));
    let row = move |key: Key| match key {
        Key::Week(monday) => week_row(monday),
        _ => ().into_any(),
    };
    let none = move || weeks.with(Vec::is_empty);
    let now = today().monday();
    let this_week = live(move || {
        let words = if state.book.with(|book| book.week(now).is_some()) {
            say!(sales::update_this_week)
        } else {
            say!(sales::enter_this_week)
        };
        view! { <a class="button" href=Route::SalesWeek(now).address()>{words}</a> }.into_any()
    });
    view! {
        <Section
            heading=say!(sales::sales_by_week)
            about=say!(sales::about_sales_by_week)
        >
            {when(none, || view! {
                <p class="hollow">{say!(sales::no_weeks_yet)}</p>
            }.into_any())}
            <p class="actions">{this_week}</p>
            <ul class="rows">{rows(weeks, row)}</ul>
        </Section>
    }
}

fn week_row(monday: Date) -> AnyView {
    let state = AppState::here();
    let sold = Memo::new(move |_| state.book.with(|book| book.week(monday).map(sales::sold_in)));
    let figure = move |read: fn((Exact, Money), AppState) -> String| {
        text(move || match sold.get() {
            Some(Ok(sold)) => read(sold, state),
            Some(Err(over)) => words::overflow(over),
            None => String::new(),
        })
    };
    let units = figure(|(units, _), state| say!(sales::drinks_in_week, drinks = state.speaker.get().counted(units)));
    let contribution = figure(|(_, contribution), state| state.money(contribution));
    view! {
        <li>
            <a class="row" href=Route::SalesWeek(monday).address()>
                <span class="row-name">{words::week(monday)} <span class="row-about">{units}</span></span>
                <span class="row-price">{contribution}</span>
            </a>
        </li>
    }
    .into_any()
}
