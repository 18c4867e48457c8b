//! The best use of what is here, as numbers beside those wished for.

use leptos::prelude::*;

use super::said::said;
use crate::book::{Key, OfferId};
use crate::counter::on_hand::{BestUse, Stopped, Wish, best_use};
use crate::foundation::measure::Exact;
use crate::say;
use crate::ui::fields::Tick;
use crate::ui::live::{flag, live, press, rows, text, trouble, when};
use crate::ui::state::AppState;
use crate::words::texts::{HOLE, around};

/// The best use of what is here, following the book.
pub fn best_of(state: AppState, wishes: Memo<Vec<Wish>>) -> Found {
    Memo::new(move |_| {
        state.book.with(|book| state.ledger.with(|ledger| wishes.with(|wishes| best_use(book, ledger, wishes))))
    })
}

/// What was found, or why nothing was.
pub type Found = Memo<Result<BestUse, Stopped>>;

/// The best use of what is here.
#[component]
pub fn Best(
    /// What is wished for.
    wishes: Memo<Vec<Wish>>,
    /// What was found.
    best: Found,
    /// What must be made in any case, where that can be chosen.
    fixed: Option<RwSignal<Vec<OfferId>>>,
    /// Uses the numbers, where they can be used.
    adopt: Option<Callback<Vec<(OfferId, Exact)>>>,
) -> impl IntoView {
    let state = AppState::here();
    let sentence = text(move || match best.get() {
        Ok(best) => said(state, |words| words.best(&best)),
        Err(_) => String::new(),
    });
    let stopped = move || best.with(|best| best.as_ref().err().map(|why| said(state, |words| words.stopped(why))));
    // What stays as planned is told in one sentence, unless all of it is wished for in any case.
    let stays = move |wish: &Wish| {
        let count = |best: &BestUse| best.counts.iter().find(|(of, _)| *of == wish.offer).map(|(_, units)| *units);
        let kept = fixed.is_some_and(|fixed| fixed.with(|fixed| fixed.contains(&wish.offer)));
        !kept && wish.most.is_some() && best.with(|best| best.as_ref().ok().and_then(count)) == wish.most
    };
    let drinks = Memo::new(move |_| -> Vec<Key> {
        let rows =
            |wishes: &Vec<Wish>| wishes.iter().filter(|wish| !stays(wish)).map(|wish| Key::Offer(wish.offer)).collect();
        wishes.with(rows)
    });
    let unchanged = text(move || match wishes.with(|wishes| wishes.iter().filter(|wish| stays(wish)).count()) {
        0 => String::new(),
        sizes => say!(counter::made_as_planned, sizes = sizes),
    });
    let row = move |key| match key {
        Key::Offer(offer) => view! { <BestRow offer wishes best fixed /> }.into_any(),
        _ => ().into_any(),
    };
    let left = live(move || {
        let scarce = best.with(|best| best.as_ref().map(|best| best.scarce.clone()).unwrap_or_default());
        let one = |it| view! { <li>{said(state, |words| words.scarce(&it))}</li> };
        view! { <ul class="steps">{scarce.into_iter().map(one).collect_view()}</ul> }.into_any()
    });
    let use_it = move || {
        let counts = best.with_untracked(|best| best.as_ref().map(|best| best.counts.clone()).ok());
        if let (Some(counts), Some(adopt)) = (counts, adopt) {
            adopt.run(counts);
        }
    };
    let can_be_used = move || adopt.is_some() && best.with(Result::is_ok);
    view! {
        <p class="best-said" role="status">{sentence}</p>
        {trouble(stopped)}
        <ul class="best">{rows(drinks, row)}</ul>
        <p class="soft">{unchanged}</p>
        {left}
        {when(can_be_used, move || view! {
            <p class="actions">
                <button class="main" on:click=press(use_it)>
                    {say!(counter::use_this_plan)}
                </button>
            </p>
        }.into_any())}
        <p class="soft">{say!(counter::best_plan_about)}</p>
    }
}

#[component]
fn BestRow(
    offer: OfferId,
    wishes: Memo<Vec<Wish>>,
    best: Found,
    fixed: Option<RwSignal<Vec<OfferId>>>,
) -> impl IntoView {
    let state = AppState::here();
    let name = text(move || state.book.with(|book| book.name(Key::Offer(offer))));
    let planned = move || {
        let most = wishes.with(|wishes| wishes.iter().find(|wish| wish.offer == offer).and_then(|wish| wish.most));
        match most {
            Some(most) => around(&say!(counter::planned_and_now, planned = state.number(most), now = HOLE)),
            None => (String::new(), String::new()),
        }
    };
    let (before, after) = (text(move || planned().0), text(move || planned().1));
    let count = text(move || {
        let count =
            best.with(|best| best.as_ref().ok()?.counts.iter().find(|(of, _)| *of == offer).map(|(_, units)| *units));
        count.map_or_else(|| say!(common::none).to_string(), |units| state.number(units))
    });
    let keep = fixed.map(|fixed| {
        let done = flag(move || fixed.with(|fixed| fixed.contains(&offer)));
        let make_all = move || around(&say!(counter::make_all_of, unseen = HOLE, drink = name.get()));
        let (seen, unseen) = (text(move || make_all().0), text(move || make_all().1));
        let set = move |keep: bool| {
            fixed.update(|fixed| {
                fixed.retain(|of| *of != offer);
                if keep {
                    fixed.push(offer);
                }
            });
        };
        view! {
            <div class="best-keep">
                <Tick done=done set=set>
                    {seen} <span class="unseen">{unseen}</span>
                </Tick>
            </div>
        }
    });
    view! {
        <li class="best-row">
            <span class="best-name">{name}</span>
            <span class="best-count">
                <span class="soft">{before}</span>
                <b>{count}</b>
                <span class="soft">{after}</span>
            </span>
            {keep}
        </li>
    }
}
