//! The buying list: made from what is planned, worked off at the supplier's.

mod add;
mod ending;
mod lines;
mod making;

use std::sync::Arc;

use leptos::prelude::*;

use super::tabs::Tabs;
use crate::app::route::{Route, Sheet};
use crate::book::{Book, BuyingList, Edit, Record};
use crate::say;
use crate::ui::live::{press, text, when};
use crate::ui::parts::Section;
use crate::ui::places::sheets::{prices_choice, with_prices};
use crate::ui::share::Share;
use crate::ui::state::AppState;
use crate::words;
use crate::words::buying_list::Buying;

use add::Add;
use ending::Ending;
use lines::Lines;
use making::Making;

/// What is to be bought.
#[component]
pub fn BuyingListPage() -> impl IntoView {
    let state = AppState::here();
    let listed = Memo::new(move |_| state.book.with(|book| book.buying_list().is_some()));
    let another = RwSignal::new(false);
    // The list stands above what it was made of.
    let made = move || {
        another.set(false);
        request_animation_frame(|| window().scroll_to_with_x_and_y(0.0, 0.0));
    };
    let making = move || view! { <Making made /> }.into_any();
    let ask_another = move || {
        view! {
            <p class="actions">
                <button class="button" on:click=press(move || another.set(true))>
                    {say!(market::replace_list)}
                </button>
            </p>
        }
        .into_any()
    };
    view! {
        <h1>{say!(goods::buying_list)}</h1>
        <Tabs here=Route::BuyingList />
        {when(move || listed.get(), || view! { <Listed /> }.into_any())}
        {when(
            move || !listed.get(),
            || {
                view! {
                    <p class="about">
                        <strong>{say!(market::no_list_yet)}</strong>
                        ". "
                        {say!(market::no_list_how)}
                    </p>
                }
                    .into_any()
            },
        )}
        {when(move || listed.get() && !another.get(), ask_another)}
        {when(move || !listed.get() || another.get(), making)}
        {when(move || !listed.get(), || view! { <Add /> }.into_any())}
    }
}

/// The list that is there.
#[component]
fn Listed() -> impl IntoView {
    let state = AppState::here();
    let made = text(move || {
        let day = state.book.with(|book| book.buying_list().map(|list| words::day(list.day)));
        day.map(|day| say!(market::made_stays, day = day)).unwrap_or_default()
    });
    let prices = with_prices();
    let read = Arc::new(move || {
        let list = state.book.with_untracked(|book| book.buying_list().cloned());
        let written = |list: &BuyingList| said(state, |words| words.text(list, prices.get_untracked()));
        list.as_ref().map(|list| written(list).unwrap_or_else(words::overflow)).unwrap_or_default()
    });
    view! {
        <p class="about">{made}</p>
        <Lines />
        <Add />
        <Ending />
        <Section heading=say!(market::share_or_print)>
            <div class="buy-chosen">{prices_choice(prices)}</div>
            <div class="actions">
                <a class="button" href=Route::Sheet(Sheet::BuyingList).address()>
                    {say!(counter::print_sheet)}
                </a>
                <Share label=say!(market::share_as_text) title=say!(goods::buying_list) read />
            </div>
        </Section>
    }
}

/// Words about the list, following the book.
fn said<T>(state: AppState, speak: impl FnOnce(&Buying) -> T) -> T {
    state.book.with(|book| speak(&Buying { book, speaker: &state.speaker.get() }))
}

/// The edit that changes the list. Returns `None` if there is none.
fn changed(book: &Book, change: impl FnOnce(&mut BuyingList)) -> Option<Edit> {
    let mut list = book.buying_list()?.clone();
    change(&mut list);
    Some(Edit::Put(Record::BuyingList(list)))
}
