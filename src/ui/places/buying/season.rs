//! The yields of an ingredient in another part of the year, and which are in force this month.

use std::sync::Arc;

use leptos::prelude::*;

use super::change::ingredient_changed;
use super::ingredient::yields_of;
use crate::book::{Book, Edit, Ingredient, IngredientId, Key, Season as Kept};
use crate::foundation::jump::Kind;
use crate::foundation::measure::Month;
use crate::say;
use crate::ui::fields::{self, Choice, Entry, Example, Hangs, asks};
use crate::ui::live::{text, when};
use crate::ui::parts::Fold;
use crate::ui::state::AppState;
use crate::words;

/// The months of a season and its yields.
#[component]
pub fn Season(
    /// The ingredient.
    id: IngredientId,
    /// Says to the answers that hang on it what cannot be read.
    hangs: Hangs,
    /// Whether it stands open at first.
    open: bool,
) -> impl IntoView {
    let state = AppState::here();
    let season = move || state.book.with(|book| book.ingredient(id)?.season);
    let months = text(move || match season() {
        Some(season) => say!(goods::season_months, from = words::month(season.from), to = words::month(season.to)),
        None => say!(common::none).to_string(),
    });
    let starts = month_choice(state, id, say!(goods::season_starts), true, |season| season.from);
    let rest = when(move || season().is_some(), move || of_season(state, id, hangs));
    // Most have none: it is looked at where there is one.
    let open = open && untrack(|| season().is_some());
    view! {
        <Fold name=say!(goods::season) figure=months open>
            <p class="about">{say!(goods::season_about)}</p>
            <div class="fields">{starts} {rest}</div>
            <p class="soft">{text(move || in_force(state, id))}</p>
        </Fold>
    }
}

/// What is asked for once there is a season.
fn of_season(state: AppState, id: IngredientId, hangs: Hangs) -> AnyView {
    let of = move |show: fn(&Ingredient, Kept, AppState) -> String| {
        text(move || {
            let shown = state.book.with(|book| {
                let ingredient = book.ingredient(id)?;
                Some(show(ingredient, ingredient.season?, state))
            });
            shown.unwrap_or_default()
        })
    };
    let year_s_juice = of(|ingredient, _, state| {
        let juice = ingredient.press_yield.map(|share| state.percent(share));
        juice.map(|share| say!(goods::blank_uses_year, share = share)).unwrap_or_default()
    });
    let trim = fields::percent(say!(goods::season_trim_yield), Example::TrimYield, move |book, share| {
        season_changed(book, id, |season| season.trim_yield = share)
    });
    let juice = fields::optional_percent(say!(goods::season_juice_yield), Example::JuiceYield, move |book, share| {
        season_changed(book, id, |season| season.press_yield = share)
    });
    view! {
        {month_choice(state, id, say!(goods::season_ends), false, |season| season.to)}
        <Entry
            hangs
            label=say!(goods::season_trim_yield)
            asks=asks(Kind::TrimYield, Key::Ingredient(id), "season-trim-yield")
            unit="%"
            value=of(|_, season, state| state.plain_percent(season.trim_yield))
            commit=trim
        />
        <Entry
            hangs
            label=say!(goods::season_juice_yield)
            asks=asks(Kind::Yield, Key::Ingredient(id), "season-press-yield")
            unit="%"
            note=year_s_juice
            value=of(|_, season, state| season.press_yield.map(|share| state.plain_percent(share)).unwrap_or_default())
            commit=juice
        />
    }
    .into_any()
}

/// The choice of the first or the last month. Without a first month there is no season.
fn month_choice(
    state: AppState,
    id: IngredientId,
    label: &'static str,
    first: bool,
    month: fn(Kept) -> Month,
) -> AnyView {
    let named = |month: &Month| (month.stored_name().to_string(), words::month(*month));
    let none = first.then(|| (String::new(), say!(goods::no_season).to_string()));
    let options: Vec<(String, String)> = none.into_iter().chain(Month::ALL.iter().map(named)).collect();
    let value = text(move || {
        let season = state.book.with(|book| book.ingredient(id)?.season);
        season.map(|season| month(season).stored_name().to_string()).unwrap_or_default()
    });
    let choose = Arc::new(move |chosen: &str| {
        let month = Month::ALL.iter().copied().find(|month| month.stored_name() == chosen);
        let edit = state.book.with_untracked(|book| ingredient_changed(book, id, |it| put_month(it, first, month)));
        edit.map_or(Ok(()), |edit| state.apply(label, edit))
    });
    view! { <Choice label options value choose /> }.into_any()
}

/// Puts a month in force as the first or the last of the season. A new season has the yields of the year.
fn put_month(ingredient: &mut Ingredient, first: bool, month: Option<Month>) {
    let Some(month) = month else {
        ingredient.season = None;
        return;
    };
    let new = || Kept { from: month, to: month, trim_yield: ingredient.trim_yield, press_yield: None };
    let season = ingredient.season.unwrap_or_else(new);
    ingredient.season = Some(if first { Kept { from: month, ..season } } else { Kept { to: month, ..season } });
}

fn season_changed(book: &Book, id: IngredientId, change: impl FnOnce(&mut Kept)) -> Option<Edit> {
    ingredient_changed(book, id, |it| {
        if let Some(season) = &mut it.season {
            change(season);
        }
    })
}

/// Whether the season is in force this month, and the yields that are.
fn in_force(state: AppState, id: IngredientId) -> String {
    let said = state.book.with(|book| {
        let (ingredient, month) = (book.ingredient(id)?, book.month()?);
        let season = ingredient.season?;
        let now = book.ingredient_now(id)?;
        let yields = yields_of(&now, state);
        let month_name = words::month(month);
        Some(if season.has(month) {
            say!(goods::season_in_force, month = month_name, yields = yields)
        } else {
            say!(goods::season_not_in_force, month = month_name, yields = yields)
        })
    });
    said.unwrap_or_default()
}
