//! What the last step moved: drinks and sizes before and after, those now under target first.

use leptos::prelude::*;

use super::history::LastChange;
use super::live::{live, press, rows, text, when};
use super::parts::Mark;
use super::route::Route;
use super::state::AppState;
use crate::book::{Key, OfferId};
use crate::ledger::{Move, Side, Standing};

/// A figure of an offer on one side of a step, as it is shown.
type Shown = fn(AppState, &Side) -> Option<String>;

/// How many are listed before the rest is asked for.
const FIRST: usize = 12;

/// The offers that the last step moved, if that step wrote `by` alone.
#[component]
pub fn Moved(
    /// What was changed.
    by: Key,
    /// Says so where nothing moved, too.
    #[prop(optional)]
    even_none: bool,
) -> impl IntoView {
    let state = AppState::here();
    let all = RwSignal::new(false);
    let ours = move |change: &LastChange| {
        let alone = change.touched.len() == 1 && change.touched.contains(&by);
        alone && (even_none || !change.moves.is_empty())
    };
    let change = Memo::new(move |_| state.last_change.with(|change| change.clone().filter(ours)));
    let is_ours = move || change.with(Option::is_some);
    let moves = move || change.with(|change| change.as_ref().map(|it| it.moves.clone()).unwrap_or_default());
    let listed = Memo::new(move |_| {
        let few = if all.get() { usize::MAX } else { FIRST };
        moves().iter().take(few).map(|moved| Key::Offer(moved.offer)).collect::<Vec<Key>>()
    });
    let sentence = text(move || {
        let summary = change.with(|change| change.as_ref().map(|change| summary(&change.name, &change.moves)));
        summary.unwrap_or_default()
    });
    let can_undo = move || state.history.with(|history| history.last_done().is_some());
    let rest = move || moves().len().saturating_sub(FIRST);
    let undo = when(
        move || is_ours() && can_undo(),
        move || {
            view! {
                <button class="button moved-undo" on:click=press(move || state.undo())>
                    "Undo"
                </button>
            }
            .into_any()
        },
    );
    let more = when(
        move || rest() > 0 && !all.get(),
        move || {
            let words = text(move || format!("Show {} more", rest()));
            view! {
                <button class="quiet" on:click=press(move || all.set(true))>
                    {words}
                </button>
            }
            .into_any()
        },
    );
    let row = move |key| match key {
        Key::Offer(id) => view! { <MovedRow id change /> }.into_any(),
        _ => ().into_any(),
    };
    view! {
        <div class="moved">
            <p class="moved-summary" role="status">
                {sentence}
            </p>
            {undo}
            <ol class="moved-list">{rows(listed, row)}</ol>
            {more}
        </div>
    }
}

fn summary(name: &str, moves: &[Move]) -> String {
    let fell = moves.iter().filter(|moved| moved.fell()).count();
    match (moves.len(), fell) {
        (0, _) => format!("{name}: no drink moved."),
        (1, 0) => format!("{name}: 1 size moved, none fell under target."),
        (count, 0) => format!("{name}: {count} sizes moved, none fell under target."),
        (1, _) => format!("{name}: 1 size moved and fell under target."),
        (count, fell) => format!("{name}: {count} sizes moved, {fell} fell under target."),
    }
}

#[component]
fn MovedRow(id: OfferId, change: Memo<Option<LastChange>>) -> impl IntoView {
    let state = AppState::here();
    let moved = move || change.with(|change| change.as_ref()?.moves.iter().find(|moved| moved.offer == id).copied());
    let name = text(move || state.book.with(|book| book.name(Key::Offer(id))));
    let standing = Signal::derive(move || {
        moved().and_then(|moved| moved.after).map_or(Standing::WithoutPrice, |side| side.standing)
    });
    let shown = live(move || moved().map(|moved| figures(state, &moved)).unwrap_or_else(|| ().into_any()));
    view! {
        <li class="moved-row">
            <a href=Route::Offer(id).address()>{name}</a>
            <Mark standing />
            <dl class="figures">{shown}</dl>
        </li>
    }
}

/// Cost, margin and suggested price of an offer, each before, where it differs, and after.
pub fn figures(state: AppState, moved: &Move) -> AnyView {
    let shown = |side: Option<Side>, figure: Shown| {
        side.and_then(|side| figure(state, &side)).unwrap_or_else(|| "none".to_string())
    };
    let kinds: [(&str, Shown); 3] = [
        ("Cost", |state, side| side.cost.map(|money| state.money(money))),
        ("Margin", |state, side| side.margin.map(|share| state.percent(share))),
        ("Suggested", |state, side| side.suggested.map(|money| state.money(money))),
    ];
    let pair = |(name, figure)| before_and_after(name, shown(moved.before, figure), shown(moved.after, figure));
    kinds.map(pair).collect_view().into_any()
}

/// A figure before, where it differs, and after.
fn before_and_after(name: &'static str, from: String, to: String) -> AnyView {
    let was = (from != to).then(|| {
        view! {
            <s class="was">
                <span class="unseen">"before "</span>
                {from}
            </s>
            " "
        }
    });
    view! {
        <div class="figure">
            <dt>{name}</dt>
            <dd>{was} <span class="unseen">"now "</span> {to}</dd>
        </div>
    }
    .into_any()
}
