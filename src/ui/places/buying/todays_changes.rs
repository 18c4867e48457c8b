//! Today's changes: every price that changed today, what it costs or saves a week, and its own
//! Undo.

use std::time::Duration;

use leptos::prelude::*;

use crate::app::last_change::LastChange;
use crate::app::route::Route;
use crate::book::{Book, Goods, Key, PackId};
use crate::buying::price_watch::{ChangedOn, WeeklyCost, changed_on, fallen, new_on, put_back, weekly_cost};
use crate::drink::ledger::OfferChange;
use crate::foundation::measure::Money;
use crate::say;
use crate::ui::fields::Hangs;
use crate::ui::live::{flag, live, press, text, when};
use crate::ui::parts::is_wide;
use crate::ui::state::AppState;
use crate::ui::today::{midnight, today};
use crate::words;

/// How long typing rests before what a price costs a week is computed: no keystroke waits for it.
const REST: Duration = Duration::from_millis(200);

/// What changed prices cost a week, each as it stood when it was computed, or `None` if it cannot
/// be computed.
type Costs = RwSignal<Vec<(ChangedOn, Option<WeeklyCost>)>>;

/// What was undone in the list, and the place where it stood: it keeps its row, so that no other
/// slides under the finger.
type Undone = RwSignal<Vec<(usize, ChangedOn)>>;

/// Every price that changed today. Draws nothing if none did. What they cost together hangs on
/// `prices`, the fields where they are typed.
pub fn todays_changes(prices: Hangs) -> AnyView {
    let state = AppState::here();
    let costs: Costs = RwSignal::new(Vec::new());
    let changes = Memo::new(move |_| state.book.with(|book| changes(state, book)));
    let undone: Undone = RwSignal::new(Vec::new());
    let listed = Memo::new(move |_| changes.with(|changes| undone.with(|undone| with_undone(changes, undone))));
    let new = Memo::new(move |_| state.book.with(|book| new_on(book, today(), &undated(state))));
    let timer = StoredValue::new(None::<TimeoutHandle>);
    let rest = move || {
        if let Some(timer) = timer.try_update_value(Option::take).flatten() {
            timer.clear();
        }
    };
    // What a price costs depends on recipes too, and those change on other screens and in other tabs.
    Effect::new(move |_| {
        let goods = |key: &Key| matches!(key, Key::Ingredient(_) | Key::Packaging(_));
        let others = |change: &LastChange| !change.touched.iter().all(goods);
        if state.last_change.with(|change| change.as_ref().is_some_and(others)) {
            costs.set(Vec::new());
        }
    });
    Effect::new(move |_| {
        changes.track();
        costs.track();
        rest();
        let next = move || compute_next(state, changes, costs);
        timer.set_value(set_timeout_with_handle(next, REST).ok());
    });
    on_cleanup(rest);
    let fallen = Memo::new(move |_| {
        // Once all costs are known: no keystroke waits for it.
        let known = changes.with(|changes| changes.iter().all(|it| cost_of(costs, it).is_some()));
        if known { untrack(|| fallen_today(state, changes)) } else { Default::default() }
    });
    // As high before as after: a price typed moves no field down.
    let sum = text(move || {
        let prices = changes.with(Vec::len);
        if prices == 0 {
            return say!(common::none_yet).to_string();
        }
        let costs: Vec<Option<Option<WeeklyCost>>> =
            changes.with(|changes| changes.iter().map(|it| cost_of(costs, it)).collect());
        if costs.contains(&None) {
            return say!(market::adding_up).to_string();
        }
        let known: Vec<WeeklyCost> = costs.into_iter().flatten().flatten().collect();
        words::watch::weekly_costs(prices, &known, &state.speaker.get())
    });
    let unread = flag(move || prices.is_unread());
    let sum = text(move || if unread.get() { changes.with(Vec::len).to_string() } else { sum.get() });
    let list = when(
        move || listed.with(|listed| !listed.is_empty()),
        move || {
            let rows = live(move || {
                let rows = |listed: &Vec<(ChangedOn, bool)>| {
                    let rows = listed.iter().enumerate();
                    rows.map(|(place, (it, gone))| row(state, it, costs, (place, undone), *gone)).collect_view()
                };
                listed.with(rows).into_any()
            });
            let new = text(move || words::watch::new_today(new.get()));
            view! {
                {prices.answer(move || below(state, fallen))}
                <ul>{rows}</ul>
                <p class="about">{new}</p>
            }
            .into_any()
        },
    );
    view! {
        <details class="fold changes" open=is_wide()>
            <summary>
                <h2>{say!(market::todays_changes)}</h2>
                <span class="fold-figure" role="status">{sum}</span>
                {below_mark(fallen)}
            </summary>
            <div class="fold-in">{list}</div>
        </details>
    }
    .into_any()
}

/// The sizes that today's changes left below their target.
fn fallen_today(state: AppState, changes: Memo<Vec<ChangedOn>>) -> Vec<OfferChange> {
    let fallen = |book: &Book| {
        changes.with(|changes| state.ledger.with(|ledger| fallen(book, ledger, changes).unwrap_or_default()))
    };
    state.book.with(fallen)
}

/// That sizes dropped below target. Draws nothing while none did.
fn below_mark(fallen: Memo<Vec<OfferChange>>) -> AnyView {
    live(move || match fallen.with(Vec::len) {
        0 => ().into_any(),
        sizes => view! {
            <span class="mark mark-under">
                <svg viewBox="0 0 16 16" aria-hidden="true">
                    <path d="M1.5 3h13L8 14.5ZM8 5.5v4" />
                </svg>
                {say!(market::dropped_today, sizes = sizes)}
            </span>
        }
        .into_any(),
    })
}

/// The sizes that dropped below target, to be seen one by one.
fn below(state: AppState, fallen: Memo<Vec<OfferChange>>) -> AnyView {
    let row = move |moved: &OfferChange| {
        let name = state.book.with_untracked(|book| book.name(Key::Offer(moved.offer)));
        view! {
            <li>
                <a class="change-row" href=Route::Offer(moved.offer).address()>
                    <strong>{name}</strong>
                    <span class="soft">{words::watch::fallen_to(moved, &state.speaker.get())}</span>
                </a>
            </li>
        }
    };
    let see = move || {
        view! {
            <details class="more changes-below">
                <summary>{below_mark(fallen)} <span>{say!(market::see_them)}</span></summary>
                <ul>{live(move || fallen.with(|fallen| fallen.iter().map(row).collect_view().into_any()))}</ul>
            </details>
        }
        .into_any()
    };
    when(move || fallen.with(|fallen| !fallen.is_empty()), see)
}

fn changes(state: AppState, book: &Book) -> Vec<ChangedOn> {
    changed_on(book, today(), &undated(state)).unwrap_or_default()
}

/// The price before today of a pack whose price nobody had dated, following the steps.
pub(super) fn undated(state: AppState) -> impl Fn(Goods, PackId) -> Option<Money> {
    let since = midnight();
    move |goods, pack| state.history.with(|history| history.undated_price(goods, pack, since))
}

/// The changes with those that were undone in the list, each where it stood, and whether it was. One
/// whose price changed again since is a change as any other.
fn with_undone(changes: &[ChangedOn], undone: &[(usize, ChangedOn)]) -> Vec<(ChangedOn, bool)> {
    let mut listed: Vec<(ChangedOn, bool)> = changes.iter().map(|it| (*it, false)).collect();
    let same = |one: &ChangedOn, other: &ChangedOn| (one.changed.goods, one.pack) == (other.changed.goods, other.pack);
    for place in 0..listed.len().saturating_add(undone.len()) {
        let here = undone.iter().find(|(at, it)| *at == place && !changes.iter().any(|other| same(it, other)));
        if let Some((_, it)) = here {
            listed.insert(place.min(listed.len()), (*it, true));
        }
    }
    listed
}

/// Computes the first cost that is not known, one at a time, so that the page answers in between.
fn compute_next(state: AppState, changes: Memo<Vec<ChangedOn>>, costs: Costs) {
    let next = changes.with_untracked(|changes| changes.iter().find(|it| cost_of(costs, it).is_none()).copied());
    let Some(change) = next else { return };
    let cost =
        state.book.with_untracked(|book| state.ledger.with_untracked(|ledger| weekly_cost(book, ledger, &change).ok()));
    costs.update(|costs| {
        costs.retain(|(of, _)| (of.changed.goods, of.pack) != (change.changed.goods, change.pack));
        costs.push((change, cost));
    });
}

/// What a change costs, following it. Returns `None` if it is not computed yet.
fn cost_of(costs: Costs, change: &ChangedOn) -> Option<Option<WeeklyCost>> {
    costs.with(|costs| costs.iter().find(|(of, _)| of == change).map(|(_, cost)| *cost))
}

fn row(state: AppState, change: &ChangedOn, costs: Costs, (place, undone): (usize, Undone), gone: bool) -> AnyView {
    let change = *change;
    let goods = change.changed.goods;
    let said = if gone {
        say!(market::price_back, was = untrack(|| state.money(change.changed.before)))
    } else {
        words::watch::changed(&change, &state.speaker.get_untracked())
    };
    let name = text(move || state.book.with(|book| book.name(Key::from(goods))));
    let pack = text(move || state.book.with(|book| words::watch::changed_pack(&change, book, &state.speaker.get())));
    let cost = text(move || {
        let said = |cost: Option<WeeklyCost>| words::watch::weekly_cost(cost, &state.speaker.get());
        cost_of(costs, &change).map(said).unwrap_or_default()
    });
    let step = text(move || words::steps::undo_of(&say!(market::price_of, name = name.get())));
    let undo = move || {
        undone.update(|undone| {
            undone.retain(|(at, _)| *at != place);
            undone.push((place, change));
        });
        let edit = state.book.with_untracked(|book| put_back(book, &change));
        // What stood before holds still.
        let _ = edit.map(|edit| state.apply(&step.get_untracked(), edit));
    };
    let button = if gone {
        view! { <span class="soft">{say!(book::undone)}</span> }.into_any()
    } else {
        view! {
            <button class="button" aria-label=step on:click=press(undo)>
                {say!(first::undo)}
            </button>
        }
        .into_any()
    };
    view! {
        <li class="change-line">
            <a class="change-row" href=Route::of_goods(goods).address()>
                <strong>{pack}</strong>
                <span class="soft">{said}</span>
            </a>
            <span class="change-cost">{cost}</span>
            {button}
        </li>
    }
    .into_any()
}
