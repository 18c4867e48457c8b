//! What a week brings, now and with what is tried: the answer that stays in view.

use leptos::prelude::*;

use super::Trying;
use crate::app::route::Route;
use crate::book::{Book, DrinkId};
use crate::foundation::measure::{Exact, Money};
use crate::say;
use crate::sizes::side_by_side::{Change, Week};
use crate::ui::live::text;
use crate::ui::parts::{Says, answer_figures, verdict};
use crate::ui::state::AppState;
use crate::words::scenarios::without_sign;
use crate::words::{self, Decisions};

/// The answer: a sentence and its figures.
#[component]
pub fn Earned(trying: Trying) -> impl IntoView {
    let state = AppState::here();
    let weeks = Memo::new(move |_| trying.weeks());
    let beyond = Memo::new(move |_| trying.whole_menu());
    let menu_loses = move || {
        let gains = weeks.get().and_then(|(now, then)| Some(then?.profit > now.profit));
        gains == Some(true) && beyond.get().is_some_and(|(now, then)| then < now)
    };
    let menu_said = move || {
        let said = |(now, then)| {
            state.book.with(|book| Decisions { book, speaker: &state.speaker.get() }.whole_menu(now, then))
        };
        beyond.get().map(said)
    };
    let said = move || match weeks.get() {
        None => (Says::Open, say!(sales::no_week_known).to_string()),
        Some((now, None)) => (Says::Open, say!(sales::week_earned, profit = state.money(now.profit))),
        Some((now, Some(then))) => {
            // What the whole menu loses by it is no gain.
            let loses = menu_said().filter(|_| menu_loses());
            loses.map_or_else(|| changed(state, now, then), |sentence| (Says::No, sentence))
        }
    };
    let figures = move || {
        let Some((now, Some(then))) = weeks.get() else { return Vec::new() };
        let names = [say!(common::today), say!(sales::with_changes), say!(sales::difference)];
        names.map(str::to_string).into_iter().zip(said_of(state, now, then)).collect()
    };
    let drinks_counted = Memo::new(move |_| trying.drinks_in_week());
    let drinks_sold = Memo::new(move |_| on_menu(state, trying));
    // What the answer counts goes with it: a field that cannot be read leaves neither.
    let terms = trying.hangs.while_read(move || match weeks.get() {
        None => view! {
            <p class="soft">
                {say!(sales::enter_week_first)} " " <a href=Route::Sales.address()>{say!(sales::enter_weekly_sales)}</a>
            </p>
        }
        .into_any(),
        Some((now, then)) => {
            let same = say!(sales::same_sales, drinks = state.speaker.get().counted(words::people(now.units)));
            let (all, compared) = (drinks_counted.get(), trying.with_today(|now| now.drinks.len()).unwrap_or_default());
            let even = then.and_then(|then| even(now, then)).map(|buyers| even_said(state, buyers));
            let priced = then.and_then(|_| priced(trying)).filter(|priced| *priced < all);
            let priced = priced.map(|priced| say!(sales::new_prices_count, drinks = priced, all = words::count(all)));
            let covers = (priced.is_none() && compared > 0 && compared != all)
                .then(|| say!(sales::week_covers, drinks = words::count(all), compared = compared));
            let menu = drinks_sold.get();
            let some = (all < menu).then(|| say!(sales::week_of_drinks, counted = all, all = words::count(menu)));
            view! { <p class="soft">{some} " " {priced} " " {same} " " {covers} " " {even}</p> }.into_any()
        }
    });
    let unread = text(move || trying.hangs.sentence());
    // Beside the answer of the one stands that of the other.
    let other = text(move || match weeks.get() {
        _ if trying.hangs.is_unread() => String::new(),
        Some((now, Some(then))) if menu_loses() => {
            say!(sales::these_sizes_more, profit = difference(state, now, then).1)
        }
        _ => menu_said().unwrap_or_default(),
    });
    view! {
        <div class="answer-bar earned">
            {trying.hangs.while_read(move || view! {
                {verdict(said)}
                {answer_figures(figures)}
            }.into_any())}
            <p class="hollow" role="status">{unread}</p>
            <p class="hollow earned-menu">{other}</p>
        </div>
        {terms}
    }
}

/// How many drinks of the part of the menu are sold at a price.
fn on_menu(state: AppState, trying: Trying) -> usize {
    state.book.with(|book| {
        let sold = book.offers().filter(|offer| offer.price.is_some() && book.belongs(offer.drink, trying.scope));
        let mut drinks: Vec<DrinkId> = sold.map(|offer| offer.drink).collect();
        drinks.sort_unstable();
        drinks.dedup();
        drinks.len()
    })
}

/// How many drinks get a new price. Returns `None` if none does.
fn priced(trying: Trying) -> Option<usize> {
    let changed = |change: &Change| if let Change::Price { offer, .. } = change { Some(offer.drink) } else { None };
    let mut drinks: Vec<DrinkId> = trying.uses.with(|uses| uses.changes.iter().filter_map(changed).collect());
    drinks.sort_unstable();
    drinks.dedup();
    Some(drinks.len()).filter(|drinks| *drinks > 0)
}

/// What a week brings now and then, and the difference.
fn said_of(state: AppState, now: Week, then: Week) -> [String; 3] {
    let words = |book: &Book| Decisions { book, speaker: &state.speaker.get() }.now_and_then(now.profit, then.profit);
    state.book.with(words)
}

/// What a week brings more, below zero less, and how much that is without its sign.
pub fn difference(state: AppState, now: Week, then: Week) -> (Money, String) {
    let more = |book: &Book| Decisions { book, speaker: &state.speaker.get() }.gain_shown(now.profit, then.profit);
    let more = state.book.with(more);
    let [_, _, difference] = said_of(state, now, then);
    (more, without_sign(&difference).to_string())
}

/// How much more or less a week brings.
fn changed(state: AppState, now: Week, then: Week) -> (Says, String) {
    let (more, by) = difference(state, now, then);
    match (more.is_positive(), more.is_negative()) {
        (true, _) => (Says::Yes, say!(sales::earns_more_a_week, profit = by)),
        (_, true) => (Says::No, say!(sales::earns_less_a_week, profit = by)),
        _ => (Says::Open, say!(sales::earns_same_a_week).to_string()),
    }
}

/// With how many buyers of a hundred, or how many more than all of them.
fn even_said(state: AppState, buyers: Exact) -> String {
    match buyers.minus(Exact::new(100, 0)) {
        Ok(more) if more.is_positive() => say!(sales::even_over, buyers = state.speaker.get().counted(more)),
        _ => say!(sales::even_at, buyers = state.number(buyers)),
    }
}

/// With how many of 100 buyers as much is earned as today. Returns `None` where that cannot be, or is the same.
fn even(now: Week, then: Week) -> Option<Exact> {
    let share = now.profit.ratio_to(then.profit).ok().filter(|_| then.profit.is_positive())?;
    let buyers = share.times(Exact::new(100, 0)).ok()?.ceiling();
    (buyers.is_positive() && buyers != Exact::new(100, 0)).then_some(buyers)
}
