//! Price watch: what suppliers' prices moved or would move, and the biggest cost drivers.

mod exposed;
mod moved;
mod since;
mod what_if;

use leptos::prelude::*;

use super::tabs::Tabs;
use crate::app::route::Route;
use crate::say;
use crate::ui::kept;
use crate::ui::live::{live, press, text};
use crate::ui::state::AppState;

/// A question to the prices.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Question {
    Since,
    WhatIf,
    Exposed,
}

impl Question {
    const ALL: [Question; 3] = [Question::Since, Question::WhatIf, Question::Exposed];

    const fn id(self) -> &'static str {
        match self {
            Question::Since => "since",
            Question::WhatIf => "what-if",
            Question::Exposed => "drivers",
        }
    }

    fn from_id(id: &str) -> Option<Question> {
        Question::ALL.into_iter().find(|it| it.id() == id)
    }

    fn name(self) -> &'static str {
        match self {
            Question::Since => say!(market::price_changes),
            Question::WhatIf => say!(market::what_if),
            Question::Exposed => say!(market::cost_drivers),
        }
    }
}

/// What suppliers' prices moved or would move, and the biggest cost drivers.
#[component]
pub fn PriceWatch() -> impl IntoView {
    let state = AppState::here();
    let question = kept::chosen("question", Question::Since, |it| it.id().to_string(), Question::from_id);
    let chip = |asks: Question| {
        let pressed = text(move || (question.get() == asks).to_string());
        view! {
            <button class="chip" aria-pressed=pressed on:click=press(move || question.set(asks))>
                {asks.name()}
            </button>
        }
    };
    let any = Memo::new(move |_| state.book.with(|book| crate::buying::price_watch::bought(book).next().is_some()));
    let page = live(move || match (any.get(), question.get()) {
        (false, _) => view! {
            <div class="teach">
                <h2>{say!(market::no_prices_yet)}</h2>
                <p>{say!(market::no_prices_how)}</p>
            </div>
        }
        .into_any(),
        (true, Question::Since) => view! { <since::SinceADay /> }.into_any(),
        (true, Question::WhatIf) => view! { <what_if::WhatIf /> }.into_any(),
        (true, Question::Exposed) => view! { <exposed::Exposed /> }.into_any(),
    });
    view! {
        <h1>{say!(goods::price_watch)}</h1>
        <Tabs here=Route::PriceWatch />
        <div class="chips watch-questions" role="group" aria-label=say!(market::choose_view)>
            {Question::ALL.map(chip).collect_view()}
        </div>
        {page}
    }
}
