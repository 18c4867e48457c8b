//! What using it changes in the book and what it leaves out, said before it is pressed.

use leptos::prelude::*;

use super::Trying;
use crate::foundation::measure::Money;
use crate::say;
use crate::sizes::side_by_side::{Change, Uses};
use crate::ui::live::{after_answer, flag, live, press, text, trouble, when};
use crate::ui::places::sizes::scenarios::keep_as_scenario;
use crate::ui::state::AppState;
use crate::words::Decisions;
use crate::words::what_if::Trials;

/// The list of changes, and the buttons.
#[component]
pub fn UseIt(trying: Trying) -> impl IntoView {
    let refused = RwSignal::new(None::<String>);
    let done = RwSignal::new(false);
    let use_it = move || {
        let used = trying.use_it();
        done.set(used.is_ok());
        refused.set(used.err());
    };
    let changed = text(move || {
        let done = done.get() && !trying.is_trying() && trying.state.is_last_step(say!(decide::use_what_if));
        if done { say!(decide::menu_changed).to_string() } else { String::new() }
    });
    let anew = move || {
        refused.set(None);
        trying.start_anew();
    };
    let cannot = move || {
        let then = trying.then.with(|then| match then {
            Some(Err(error)) => Some(error.clone()),
            Some(Ok(then)) => then.stuck.clone(),
            None => None,
        });
        refused.get().or(then)
    };
    let uses = trying.uses;
    let useless = flag(move || {
        let cannot = trying.then.with(|then| !matches!(then, Some(Ok(_))));
        trying.hangs.is_unread() || cannot || uses.with(|uses| uses.changes.is_empty())
    });
    let each = RwSignal::new(false);
    let listing = after_answer(move || uses.track(), uses);
    let said = trying.hangs.while_read(move || live(move || listing.with(|uses| listed(trying, uses, each))));
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
            {trying.hangs.while_read(move || keep_as_scenario(move |id| trying.scenario(id)))}
        }
        .into_any()
    };
    view! {
        {trouble(cannot)}
        {said}
        {when(move || trying.is_trying() || trying.hangs.is_unread(), buttons)}
        <p class="hollow" role="status">{changed}</p>
    }
}

/// What changes, and what stays out. Prices that rise alike stand by size, and one by one where `each` is open.
fn listed(trying: Trying, uses: &Uses, each: RwSignal<bool>) -> AnyView {
    if *uses == Uses::default() {
        return ().into_any();
    }
    let state = trying.state;
    let (rises, others) = uses.by_size();
    let any = !rises.is_empty();
    let single = Uses { changes: others, not_ours: uses.not_ours.clone() };
    let [others, left] = said(state, &single);
    let mut changes: Vec<String> = state.book.with(|book| {
        let words = Trials { book, speaker: &state.speaker.get() };
        rises.iter().map(|rise| words.rise(rise)).collect()
    });
    changes.extend(others);
    let nothing = changes.is_empty().then(|| view! { <p class="soft">{say!(sales::nothing_to_use)}</p> });
    let undo = (!changes.is_empty()).then(|| view! { <p class="soft">{say!(sales::undo_brings_back)}</p> });
    let out = left_out(trying.state, left, || trying.week_with_ours().map(|(now, then)| (now.profit, then.profit)));
    view! {
        <div class="uses">
            <h3>{say!(sales::what_it_changes)}</h3>
            <ul class="bulleted uses-changes">{items(changes)}</ul>
            {any.then(|| one_by_one(trying, each))}
            {nothing}
            {undo}
            {out}
        </div>
    }
    .into_any()
}

/// Each new price, said only where a person opens the list: there may be hundreds.
fn one_by_one(trying: Trying, open: RwSignal<bool>) -> AnyView {
    let list = live(move || {
        if !open.get() {
            return ().into_any();
        }
        let is_price = |change: &&Change| matches!(change, Change::Price { .. });
        let changes = trying.uses.with(|uses| uses.changes.iter().filter(is_price).cloned().collect());
        let [prices, _] = said(trying.state, &Uses { changes, not_ours: Vec::new() });
        view! { <ul class="bulleted uses-prices">{items(prices)}</ul> }.into_any()
    });
    let turned = move |event| open.set(event_target::<web_sys::Element>(&event).has_attribute("open"));
    view! {
        <details class="more" open=open.get_untracked() on:toggle=turned>
            <summary>{say!(sales::each_new_price)}</summary>
            {list}
        </details>
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
