//! What using it changes in the book and what it leaves out, said before it is pressed.

use leptos::prelude::*;

use super::Trying;
use crate::foundation::measure::Money;
use crate::say;
use crate::sizes::side_by_side::Uses;
use crate::ui::live::{flag, live, press, trouble, when};
use crate::ui::places::sizes::scenarios::keep_as_scenario;
use crate::ui::state::AppState;
use crate::words::Decisions;
use crate::words::what_if::Trials;

/// The list of changes, and the buttons.
#[component]
pub fn UseIt(trying: Trying) -> impl IntoView {
    let refused = RwSignal::new(None::<String>);
    let use_it = move || refused.set(trying.use_it().err());
    let anew = move || {
        refused.set(None);
        trying.start_anew();
    };
    let cannot = move || {
        let then = trying.columns.with(|columns| match &columns.then {
            Some(Err(error)) => Some(error.clone()),
            Some(Ok(then)) => then.stuck.clone(),
            None => None,
        });
        refused.get().or(then)
    };
    let uses = Memo::new(move |_| if trying.is_trying() { trying.uses() } else { Uses::default() });
    let useless = flag(move || {
        let cannot = trying.columns.with(|columns| columns.tried().is_none());
        trying.hangs.is_unread() || cannot || uses.with(|uses| uses.changes.is_empty())
    });
    let said = live(move || uses.with(|uses| listed(trying, uses)));
    let buttons = move || {
        view! {
            <p class="actions">
                <button class="main" disabled=useless on:click=press(use_it)>
                    {say!(sales::use_changes)}
                </button>
                <button class="button" on:click=press(anew)>
                    {say!(sales::clear_changes)}
                </button>
            </p>
            {keep_as_scenario(move |id| trying.scenario(id))}
        }
        .into_any()
    };
    view! {
        {trouble(cannot)}
        {said}
        {when(move || trying.is_trying() || trying.hangs.is_unread(), buttons)}
    }
}

/// What changes, and what stays out.
fn listed(trying: Trying, uses: &Uses) -> AnyView {
    if *uses == Uses::default() {
        return ().into_any();
    }
    let [changes, left] = said(trying.state, uses);
    let nothing = changes.is_empty().then(|| view! { <p class="soft">{say!(sales::nothing_to_use)}</p> });
    let undo = (!changes.is_empty()).then(|| view! { <p class="soft">{say!(sales::undo_brings_back)}</p> });
    let out = left_out(trying.state, left, || trying.week_with_ours().map(|(now, then)| (now.profit, then.profit)));
    view! {
        <div class="uses">
            <h3>{say!(sales::what_it_changes)}</h3>
            <ul class="bulleted uses-changes">{items(changes)}</ul>
            {nothing}
            {undo}
            {out}
        </div>
    }
    .into_any()
}

/// What stays out of the book and counts in the answer above; `alone` is what a week brings today, and without it.
pub fn left_out(state: AppState, left: Vec<String>, alone: impl FnOnce() -> Option<(Money, Money)>) -> AnyView {
    if left.is_empty() {
        return ().into_any();
    }
    let sentence = |(now, then)| {
        state.book.with(|book| Decisions { book, speaker: &state.speaker.get() }.without_these(now, then))
    };
    view! {
        <h3>{say!(sales::what_it_leaves)}</h3>
        <ul class="bulleted uses-left">{items(left)}</ul>
        {alone().map(sentence).map(|said| view! { <p class="uses-alone">{said}</p> })}
    }
    .into_any()
}

/// What changes in words, and what is not the owner's to set.
pub fn said(state: AppState, uses: &Uses) -> [Vec<String>; 2] {
    state.book.with(|book| {
        let words = Trials { book, speaker: &state.speaker.get() };
        let changes = uses.changes.iter().map(|change| words.change(change)).collect();
        [changes, uses.not_ours.iter().map(|left| words.not_ours(left)).collect()]
    })
}

/// Lines of a list.
pub fn items(said: Vec<String>) -> impl IntoView {
    said.into_iter().map(|said| view! { <li>{said}</li> }).collect_view()
}
