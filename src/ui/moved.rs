//! What the last step moved: drinks and sizes before and after, those now under target first.

use leptos::prelude::*;

use super::history::LastChange;
use super::parts::Mark;
use super::route::Route;
use super::state::AppState;
use crate::book::Key;
use crate::ledger::{Move, Standing};
use crate::measure::{Money, Share};

/// How many are listed before the rest is asked for.
const FIRST: usize = 12;

/// The offers that the last step moved, if that step wrote `by` alone.
#[component]
pub fn Moved(
    /// What was changed.
    by: Key,
) -> impl IntoView {
    let state = AppState::here();
    let all = RwSignal::new(false);
    let ours = move |change: &LastChange| change.touched.len() == 1 && change.touched.contains(&by);
    let change = Memo::new(move |_| state.last_change.with(|change| change.clone().filter(ours)));
    let can_undo = move || state.history.with(|history| history.last_done().is_some());
    let moves =
        Memo::new(move |_| change.with(|change| change.as_ref().map(|it| it.moves.clone()).unwrap_or_default()));
    let listed = move || {
        let few = if all.get() { usize::MAX } else { FIRST };
        moves.with(|moves| moves.iter().take(few).copied().collect::<Vec<_>>())
    };
    let sentence = move || change.with(|change| change.as_ref().map(|change| summary(&change.name, &change.moves)));
    let rest = move || moves.with(Vec::len).saturating_sub(FIRST);
    view! {
        <div class="moved">
            <p class="moved-summary" role="status">{sentence}</p>
            <Show when=move || change.with(Option::is_some) && can_undo()>
                <button class="button moved-undo" on:click=move |_| state.undo()>
                    "Undo"
                </button>
            </Show>
            <ol class="moved-list">
                <For each=listed key=|moved| moved.offer let(moved)>
                    <MovedRow id=moved.offer moves />
                </For>
            </ol>
            <Show when=move || { rest() > 0 && !all.get() }>
                <button class="quiet" on:click=move |_| all.set(true)>
                    {move || format!("Show {} more", rest())}
                </button>
            </Show>
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
fn MovedRow(id: crate::book::OfferId, moves: Memo<Vec<Move>>) -> impl IntoView {
    let state = AppState::here();
    let moved = Memo::new(move |_| moves.with(|moves| moves.iter().find(|moved| moved.offer == id).copied()));
    let name = move || state.book.with(|book| book.name(Key::Offer(id)));
    let before = move || moved.get().and_then(|moved| moved.before);
    let after = move || moved.get().and_then(|moved| moved.after);
    let standing = Signal::derive(move || after().map_or(Standing::WithoutPrice, |side| side.standing));
    let money = move |money: Option<Money>| money.map_or("none".into(), |money| state.money(money));
    let percent = move |share: Option<Share>| share.map_or("none".into(), |share| state.percent(share));
    let pair = move |name: &'static str, from: String, to: String| {
        let same = from == to;
        view! {
            <div class="figure">
                <dt>{name}</dt>
                <dd>
                    {(!same).then(|| view! { <s class="was"><span class="unseen">"before "</span>{from}</s> " " })}
                    <span class="unseen">"now "</span>
                    {to}
                </dd>
            </div>
        }
    };
    view! {
        <li class="moved-row">
            <a href=Route::Offer(id).address()>{name}</a>
            <Mark standing />
            <dl class="figures">
                {move || pair("Cost", money(before().and_then(|it| it.cost)), money(after().and_then(|it| it.cost)))}
                {move || {
                    pair("Margin", percent(before().and_then(|it| it.margin)), percent(after().and_then(|it| it.margin)))
                }}
                {move || {
                    let suggested = |side: Option<crate::ledger::Side>| money(side.and_then(|it| it.suggested));
                    pair("Suggested", suggested(before()), suggested(after()))
                }}
            </dl>
        </li>
    }
}
