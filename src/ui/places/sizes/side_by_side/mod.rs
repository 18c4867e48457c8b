//! The sizes of a part of the menu side by side, and what if they were others: the answer on top, what is
//! tried beside it.

mod beside;
mod earned;

use leptos::prelude::*;

use super::choose::Compared;
use super::steps::Steps;
use super::tables::{PerDrink, PerPart, PerVolume, PriceAndCost};
use super::trying::Trying;
use super::what_if::WhatIf;
use crate::app::route::Route;
use crate::book::{DrinkId, Key, Scope};
use crate::say;
use crate::ui::live::{after_answer, flag, text, trouble, when};
use crate::ui::parts::{Back, page_of};
use crate::ui::present::Present;
use crate::ui::state::AppState;
use crate::words;

use beside::Beside;
use earned::Earned;

/// The sizes of a part of the menu side by side.
#[component]
pub fn SideBySide(
    /// The part of the menu.
    scope: Scope,
) -> impl IntoView {
    match scope {
        Scope::Drink(id) => {
            page_of(Key::Drink(id), Route::Sizes, say!(first::sizes), move || view! { <Page scope /> }.into_any())
        }
        Scope::Menu | Scope::Kind(_) => view! { <Page scope /> }.into_any(),
    }
}

#[component]
fn Page(scope: Scope) -> impl IntoView {
    let state = AppState::here();
    let trying = Trying::new(scope);
    let name = text(move || state.book.with(|book| words::scope(scope, book)));
    let overflow = move || trying.now.with(|now| now.as_ref().err().copied().map(words::overflow));
    let sold = flag(move || trying.all.with(|all| !all.is_empty()));
    let chosen = flag(move || trying.chosen.with(|chosen| !chosen.is_empty()));
    let any = flag(move || trying.with_today(|now| !now.sizes.is_empty()).unwrap_or_default());
    let none = move || view! { <p class="hollow">{say!(sales::no_size_chosen)}</p> }.into_any();
    let answer = move || view! { <Earned trying /> }.into_any();
    let panes = move || {
        view! {
            <div class="panes">
                <div class="pane pane-asked">
                    <section class="section tries">
                        {when(move || any.get(), move || view! { <WhatIf trying /> }.into_any())}
                        <Compared trying />
                    </section>
                </div>
                <div class="pane">
                    {when(move || !chosen.get(), none)}
                    {when(move || any.get(), move || answers(trying))}
                    {match scope {
                        Scope::Drink(id) => of_drink(id, trying),
                        Scope::Menu | Scope::Kind(_) => ().into_any(),
                    }}
                </div>
            </div>
        }
        .into_any()
    };
    view! {
        <Back to=Route::Sizes name=say!(first::sizes) />
        <div class="title-row">
            <h1>{name} " " <span class="h1-size">{say!(sales::side_by_side)}</span></h1>
            <Present />
        </div>
        {when(move || !sold.get(), move || unsold(scope))}
        {trouble(overflow)}
        {when(move || any.get(), answer)}
        {when(move || sold.get(), panes)}
    }
}

/// The tables, the most asked for open.
fn answers(trying: Trying) -> AnyView {
    let state = AppState::here();
    let hear = move || {
        trying.now.track();
        trying.then.track();
    };
    let columns = after_answer(hear, trying.columns);
    let means = text(move || {
        let (side, tried) = columns.with(|it| (it.now.clone().unwrap_or_default(), it.then.is_some()));
        let Some(row) = side.sizes.first().filter(|_| !tried) else { return String::new() };
        state
            .book
            .with(|book| state.ledger.with(|ledger| words::mean_price(&side, row, book, ledger, &state.speaker.get())))
    });
    let tables = move || {
        view! {
            <PerDrink columns means />
            <div class="folds">
                <PriceAndCost columns />
                <PerPart columns />
                <PerVolume columns />
                <Steps columns />
                <Beside trying />
            </div>
        }
        .into_any()
    };
    trying.hangs.while_read(tables)
}

/// What to do where nothing is sold.
fn unsold(scope: Scope) -> AnyView {
    match scope {
        Scope::Drink(id) => view! {
            <p class="hollow">
                {say!(sales::no_sizes_yet)} " " <a href=Route::Drink(id).address()>{say!(sales::add_size)}</a>
            </p>
        }
        .into_any(),
        Scope::Menu | Scope::Kind(_) => view! {
            <div class="teach">
                <h2>{say!(sales::which_sizes_pay)}</h2>
                <p>{say!(sales::teach_side_by_side)}</p>
            </div>
        }
        .into_any(),
    }
}

/// What cannot be computed of one drink, and the way to it.
fn of_drink(id: DrinkId, trying: Trying) -> AnyView {
    let left_out = move || {
        let shown = trying.with_today(|now| now.sizes.len()).unwrap_or_default();
        trying.chosen.with(Vec::len).saturating_sub(shown)
    };
    let incomplete = move || {
        let words = text(move || say!(sales::sizes_left_out, sizes = left_out()));
        view! {
            <p class="trouble">{words} " " <a href=Route::Drink(id).address()>{say!(sales::add_details)}</a></p>
        }
        .into_any()
    };
    view! {
        {when(move || left_out() > 0 && trying.now.with(Result::is_ok), incomplete)}
    }
    .into_any()
}
