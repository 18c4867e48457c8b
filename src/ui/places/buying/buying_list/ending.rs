//! From the list back into the book: prices carried into the quotes, what was bought put on the
//! shelf.

use leptos::prelude::*;

use super::said;
use crate::book::Edit;
use crate::buying::buying_list::{Carried, Finished, carry, finish};
use crate::drink::ledger::Tried;
use crate::say;
use crate::ui::live::{live, press, text, trouble, when};
use crate::ui::moved::moved_list;
use crate::ui::parts::Section;
use crate::ui::state::AppState;
use crate::ui::today::today;

/// What is done with the list in the end.
#[component]
pub fn Ending() -> impl IntoView {
    let state = AppState::here();
    let refused = RwSignal::new(None::<String>);
    let done = move |step: &str, edit: Option<Edit>| {
        let Some(edit) = edit else { return };
        refused.set(state.apply(step, edit).err());
    };
    let ending = text(move || {
        finished(state).map(|finished| said(state, |words| words.finished(&finished))).unwrap_or_default()
    });
    view! {
        {when(move || carried(state).is_some(), move || view! { <Carry done /> }.into_any())}
        <Section heading=say!(market::after_shopping)>
            <p>{ending}</p>
            <p class="actions">
                <button
                    class="main"
                    on:click=press(move || {
                        done(say!(market::finish_buying_list), finished(state).map(|finished| finished.edit));
                    })
                >
                    {say!(market::finish_list)}
                </button>
            </p>
        </Section>
        {trouble(move || refused.get())}
    }
}

/// What carrying the prices would do. Returns `None` if no quote would change.
fn carried(state: AppState) -> Option<Carried> {
    let carried = state.book.with(|book| carry(book, book.buying_list()?, today()).ok())?;
    let none = carried.edit == Edit::Together(Vec::new()) && carried.not_quoted.is_empty();
    (!none).then_some(carried)
}

fn finished(state: AppState) -> Option<Finished> {
    state.book.with(|book| finish(book, book.buying_list()?, today()).ok())
}

/// The prices paid, and what they would move.
#[component]
fn Carry(done: impl Fn(&str, Option<Edit>) + Copy + Send + Sync + 'static) -> impl IntoView {
    let state = AppState::here();
    let open = RwSignal::new(false);
    let prices = live(move || {
        let prices = carried(state).map(|carried| carried.prices).unwrap_or_default();
        let line = |paid| view! { <li>{said(state, |words| words.price_paid(&paid))}</li> };
        prices.into_iter().map(line).collect_view().into_any()
    });
    let tried = move || view! { <WhatMoves done /> }.into_any();
    let ask = move || {
        view! {
            <p class="actions">
                <button class="button" on:click=press(move || open.set(true))>
                    {say!(market::show_drinks_affected)}
                </button>
            </p>
        }
        .into_any()
    };
    view! {
        <Section heading=say!(market::prices_paid) about=say!(market::prices_paid_about)>
            <ul class="buy-moves">{prices}</ul>
            {when(move || !open.get(), ask)}
            {when(move || open.get(), tried)}
        </Section>
    }
}

/// What the prices paid would move, tried beside the book.
#[component]
fn WhatMoves(done: impl Fn(&str, Option<Edit>) + Copy + Send + Sync + 'static) -> impl IntoView {
    let state = AppState::here();
    let moves = Memo::new(move |_| {
        let Some(carried) = carried(state) else { return Vec::new() };
        let tried = state.book.with(|book| state.ledger.with(|ledger| Tried::of(book, ledger, &carried.edit)));
        tried.map(|tried| tried.moves).unwrap_or_default()
    });
    let sentence = text(move || {
        let Some(carried) = carried(state) else { return String::new() };
        moves.with(|moves| said(state, |words| words.carried(&carried, moves)))
    });
    view! {
        <p role="status">{sentence}</p>
        {moved_list(state, move || moves.get())}
        <p class="actions">
            <button
                class="button"
                on:click=press(move || done(say!(market::save_prices_paid), carried(state).map(|carried| carried.edit)))
            >
                {say!(market::save_prices_paid)}
            </button>
        </p>
    }
}
