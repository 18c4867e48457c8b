//! A decision on sizes: one goes, one comes, or one takes the place of another. The answer first, then what it
//! hangs on.

mod acts;
mod answer;
mod asking;
mod customer;
mod drinks;
mod inputs;
mod keeping;

pub use asking::Asking;
pub use customer::{fact, facts, whose};

use leptos::prelude::*;

use crate::app::route::{self, Route};
use crate::say;
use crate::ui::live::{live, text, trouble, when};
use crate::ui::parts::{Back, is_wide};
use crate::ui::present::Present;
use crate::ui::state::AppState;
use crate::words;
use acts::Acts;
use answer::Answer;
use customer::Customers;
use drinks::ByDrink;
use inputs::Inputs;
use keeping::Keeping;

/// A decision on sizes.
#[component]
pub fn DecisionPage(
    /// What is asked.
    decision: route::Decision,
) -> impl IntoView {
    let state = AppState::here();
    let asking = Asking::new(state, decision);
    let heading = text(move || asking.said(|words| words.heading(decision.goes, decision.comes, &asking.stays())));
    let scope = text(move || state.book.with(|book| words::scope(decision.scope, book)));
    let none = decision.goes.or(decision.comes).is_none() && decision.stays.is_none();
    let missing = move || {
        let why = asking.answer.with(|answer| answer.as_ref().err().cloned())?;
        // What is typed and does not read is said at its field.
        (!none && !asking.done.get() && !asking.hangs.is_unread()).then(|| asking.said(|words| words.no_answer(&why)))
    };
    let changed = text(move || {
        let done = asking.done.get() && state.is_last_step(&acts::heading(asking));
        if done { say!(decide::menu_changed).to_string() } else { String::new() }
    });
    let choose = move || {
        view! {
            <div class="teach">
                <h2>{say!(decide::decide_none)}</h2>
                <p>{say!(decide::decide_none_about)}</p>
            </div>
        }
    };
    let answered = move || {
        view! {
            <div class="pane decision-rest">
                <Customers asking />
                <Keeping asking />
                <ByDrink asking />
                <Acts asking />
            </div>
        }
        .into_any()
    };
    // What is typed stands open beside the answer where there is room, or where there is none yet.
    let open = is_wide() || !untrack(|| asking.is_answered());
    view! {
        <Back to=Route::Sizes name=say!(first::sizes) />
        <div class="title-row">
            <h1>{heading} " " <span class="h1-size">{scope}</span></h1>
            <Present />
        </div>
        <div class="panes decision">
            <div class="pane decision-answer">
                {none.then(choose)}
                {when(move || asking.is_answered(), move || view! { <Answer asking /> }.into_any())}
                {trouble(missing)}
                {when(
                    move || !asking.is_answered() && asking.hangs.is_unread(),
                    move || asking.hangs.answer(|| ().into_any()),
                )}
                <p class="hollow" role="status">{changed}</p>
            </div>
            <div class="pane-asked">
                <Inputs asking open />
            </div>
            {when(move || asking.is_answered() && !asking.hangs.is_unread(), answered)}
        </div>
    }
}

/// Follows the answer.
fn with_answer(
    asking: Asking,
    view: impl Fn(&crate::sizes::decision::Decision) -> AnyView + Send + Sync + 'static,
) -> AnyView {
    live(move || asking.answer.with(|answer| answer.as_ref().map_or_else(|_| ().into_any(), &view)))
}
