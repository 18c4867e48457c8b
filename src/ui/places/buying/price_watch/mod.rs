//! Price watch: what suppliers' prices moved or would move, and what the menu hangs on.

mod exposed;
mod moved;
mod since;
mod what_if;

use leptos::prelude::*;

use super::tabs::Tabs;
use crate::app::route::Route;
use crate::ui::live::{live, press, text};
use crate::ui::state::AppState;

/// A question to the prices.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Question {
    Since,
    WhatIf,
    Exposed,
}

/// What suppliers' prices moved or would move, and what the menu hangs on.
#[component]
pub fn PriceWatch() -> impl IntoView {
    let state = AppState::here();
    let question = RwSignal::new(Question::Since);
    let chip = |words: &'static str, asks: Question| {
        let pressed = text(move || (question.get() == asks).to_string());
        view! {
            <button class="chip" aria-pressed=pressed on:click=press(move || question.set(asks))>
                {words}
            </button>
        }
    };
    let any = Memo::new(move |_| state.book.with(|book| crate::buying::price_watch::bought(book).next().is_some()));
    let page = live(move || {
        match (any.get(), question.get()) {
        (false, _) => view! {
            <div class="teach">
                <h2>"Nothing is bought yet"</h2>
                <p>
                    "Add an ingredient with a pack and its price under Quick price. Here you then see what each price moves, and which ones your menu hangs on."
                </p>
            </div>
        }
        .into_any(),
        (true, Question::Since) => view! { <since::SinceADay /> }.into_any(),
        (true, Question::WhatIf) => view! { <what_if::WhatIf /> }.into_any(),
        (true, Question::Exposed) => view! { <exposed::Exposed /> }.into_any(),
    }
    });
    view! {
        <h1>"Price watch"</h1>
        <Tabs here=Route::PriceWatch />
        <div class="chips" role="group" aria-label="What to look at">
            {chip("Since a day", Question::Since)}
            {chip("What if", Question::WhatIf)}
            {chip("What the menu hangs on", Question::Exposed)}
        </div>
        {page}
    }
}
