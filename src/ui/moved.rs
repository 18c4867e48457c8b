//! What the last step moved: drinks and sizes before and after, those now under target first.

use leptos::prelude::*;

use super::live::{flag, live, press, rows, text, when};
use super::parts::Mark;
use super::state::AppState;
use crate::app::history::Reach;
use crate::app::last_change::LastChange;
use crate::app::route::Route;
use crate::book::{Goods, Key, OfferId};
use crate::drink::gap::{self, Lever};
use crate::drink::ledger::{OfferChange, OfferStatus, Snapshot};
use crate::say;
use crate::words;
use crate::words::texts::{HOLE, around};

/// A figure of an offer on one side of a step, as it is shown.
type Shown = fn(AppState, &Snapshot) -> Option<String>;

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
    /// Says in words which sizes fell and what would mend the worst, where these goods' price did
    /// it.
    #[prop(optional, into)]
    answers: Option<Goods>,
) -> impl IntoView {
    let state = AppState::here();
    let all = RwSignal::new(false);
    // Where the answer is said in words, the list is asked for.
    let first = if answers.is_some() { 0 } else { FIRST };
    let ours = move |change: &&LastChange| {
        let alone = change.touched.len() == 1 && change.touched.contains(&by);
        alone && (even_none || !change.moves.is_empty())
    };
    let change = Memo::new(move |_| state.last_change.with(|change| change.as_ref().filter(ours).cloned()));
    let is_ours = move || change.with(Option::is_some);
    let count = move || change.with(|change| change.as_ref().map_or(0, |change| change.moves.len()));
    let listed = Memo::new(move |_| {
        let few = if all.get() { usize::MAX } else { first };
        let keys = |change: &LastChange| change.moves.iter().take(few).map(|it| Key::Offer(it.offer)).collect();
        change.with(|change| change.as_ref().map(keys).unwrap_or_default())
    });
    let sentence = text(move || {
        let said = |change: &LastChange| words::watch::step_moved(&change.name, &change.moves);
        change.with(|change| change.as_ref().map(said).unwrap_or_default())
    });
    let answer = live(move || {
        let said = |goods| change.with(|change| change.as_ref().map(|change| answer(state, goods, &change.moves)));
        answers.and_then(said).into_any()
    });
    let can_undo = move || state.history.with(|history| history.undo_name(Reach::Everything).is_some());
    let rest = move || count().saturating_sub(first);
    let undo = when(
        move || is_ours() && can_undo(),
        move || {
            view! {
                <button class="button moved-undo" on:click=press(move || state.undo(Reach::Everything))>
                    {say!(first::undo)}
                </button>
            }
            .into_any()
        },
    );
    let more = when(
        move || rest() > 0 && !all.get(),
        move || {
            let words = text(move || match answers {
                Some(_) => say!(market::show_drinks_affected).to_string(),
                None => say!(market::show_more, count = rest()),
            });
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
    let fell = flag(move || {
        let any = |change: &LastChange| change.moves.iter().any(OfferChange::fell);
        change.with(|change| change.as_ref().is_some_and(any))
    });
    view! {
        <div class="moved" class:moved-fell=fell>
            <p class="moved-summary" role="status">
                {sentence}
            </p>
            {answer}
            {undo}
            <ol class="moved-list">{rows(listed, row)}</ol>
            {more}
        </div>
    }
}

/// Which sizes fell under target, and what would mend the worst: a menu price, or a pack price.
fn answer(state: AppState, goods: Goods, moves: &[OfferChange]) -> AnyView {
    let said = state.book.with_untracked(|book| {
        let speaker = &state.speaker.get_untracked();
        let worst = moves.iter().find(|moved| moved.fell())?;
        let way = gap::way(book, worst.offer, Lever::PackPrice(goods)).ok().flatten();
        let way = way.filter(|way| way.closes.is_ok()).map(|way| words::lever_advice(&way, book, speaker));
        let mend = words::quotes::worst(moves, book, speaker);
        Some([words::quotes::fell(moves, book), mend, way.map(words::quotes::or).unwrap_or_default()])
    });
    let sentence = |said: String| view! { <p class="moved-answer">{said}</p> };
    said.map(|said| said.into_iter().filter(|said| !said.is_empty()).map(sentence).collect_view()).into_any()
}

#[component]
fn MovedRow(id: OfferId, change: Memo<Option<LastChange>>) -> impl IntoView {
    let state = AppState::here();
    let moved = move || change.with(|change| change.as_ref()?.moves.iter().find(|moved| moved.offer == id).copied());
    let name = text(move || state.book.with(|book| book.name(Key::Offer(id))));
    let status = Signal::derive(move || {
        moved().and_then(|moved| moved.after).map_or(OfferStatus::WithoutPrice, |snapshot| snapshot.status)
    });
    let shown = live(move || moved().map_or_else(|| ().into_any(), |moved| figures(state, &moved)));
    view! {
        <li class="moved-row">
            <a href=Route::Offer(id).address()>{name}</a>
            <Mark status />
            <dl class="figures">{shown}</dl>
        </li>
    }
}

/// The sizes that moved, those that fell under target first.
pub fn moved_list(state: AppState, moves: impl Fn() -> Vec<OfferChange> + Copy + Send + Sync + 'static) -> AnyView {
    first_of(
        move || moves().len(),
        move |few| {
            let rows = moves().iter().take(few).map(|moved| row(state, moved)).collect_view();
            view! { <ol class="moved-list">{rows}</ol> }.into_any()
        },
    )
}

/// The first of many, and a way to the rest.
pub fn first_of(
    count: impl Fn() -> usize + Send + Sync + 'static,
    draw: impl Fn(usize) -> AnyView + Send + Sync + 'static,
) -> AnyView {
    let all = RwSignal::new(false);
    let rest = Memo::new(move |_| count().saturating_sub(FIRST));
    let more = when(
        move || rest.get() > 0 && !all.get(),
        move || {
            let words = text(move || say!(market::show_more, count = rest.get()));
            view! {
                <button class="quiet" on:click=press(move || all.set(true))>
                    {words}
                </button>
            }
            .into_any()
        },
    );
    let few = live(move || draw(if all.get() { usize::MAX } else { FIRST }));
    view! { {few} {more} }.into_any()
}

fn row(state: AppState, moved: &OfferChange) -> AnyView {
    let name = state.book.with(|book| book.name(Key::Offer(moved.offer)));
    let status = moved.after.map_or(OfferStatus::WithoutPrice, |snapshot| snapshot.status);
    let was = match (moved.fell(), moved.before.map(|snapshot| snapshot.status)) {
        (true, Some(before)) => say!(market::state_before, state = words::offer_status(before)),
        _ if moved.rose() => say!(market::state_before, state = words::offer_status(OfferStatus::UnderTarget)),
        _ => String::new(),
    };
    view! {
        <li class="moved-row">
            <a href=Route::Offer(moved.offer).address()>{name}</a>
            <p class="moved-standing">
                <Mark status=Signal::stored(status) />
                <span>{was}</span>
            </p>
            <dl class="figures">{figures(state, moved)}</dl>
        </li>
    }
    .into_any()
}

/// Cost, margin and suggested price of an offer, each before, where it differs, and after.
fn figures(state: AppState, moved: &OfferChange) -> AnyView {
    let shown = |snapshot: Option<Snapshot>, figure: Shown| {
        snapshot.and_then(|snapshot| figure(state, &snapshot)).unwrap_or_else(|| say!(common::none).to_string())
    };
    // On the terms of the margin beside it; the full cost where that alone moved.
    let covered = |snapshot: Option<Snapshot>| snapshot.and_then(|snapshot| snapshot.covered);
    let cost: (&str, Shown) = if covered(moved.before) == covered(moved.after) {
        (say!(common::full_cost), |state, snapshot| snapshot.cost.map(|money| state.money(money)))
    } else {
        (say!(common::cost), |state, snapshot| snapshot.covered.map(|money| state.money(money)))
    };
    let kinds: [(&str, Shown); 3] = [
        cost,
        (say!(common::margin), |state, snapshot| Some(state.margin(snapshot.margin?, snapshot.target?))),
        (say!(common::suggested_price), |state, snapshot| snapshot.suggested.map(|money| state.money(money))),
    ];
    let pair = |(name, figure)| before_and_after(name, shown(moved.before, figure), shown(moved.after, figure));
    kinds.map(pair).collect_view().into_any()
}

/// A figure before, where it differs, and after.
fn before_and_after(name: &'static str, from: String, to: String) -> AnyView {
    let was = (from != to).then(|| view! { {was(from)} " " });
    view! {
        <div class="figure">
            <dt>{name}</dt>
            <dd>{was} {now(to)}</dd>
        </div>
    }
    .into_any()
}

/// A figure as it was before, struck through.
pub fn was(figure: String) -> AnyView {
    view! { <s class="was">{heard(&say!(market::figure_before, figure = HOLE), figure)}</s> }.into_any()
}

/// A figure as it is now.
pub fn now(figure: String) -> AnyView {
    heard(&say!(market::figure_now, figure = HOLE), figure)
}

/// A figure in words that are read aloud with it and not seen.
fn heard(said: &str, figure: String) -> AnyView {
    let (before, after) = around(said);
    let unseen = |part: String| (!part.is_empty()).then(|| view! { <span class="unseen">{part}</span> });
    view! { {unseen(before)} {figure} {unseen(after)} }.into_any()
}
