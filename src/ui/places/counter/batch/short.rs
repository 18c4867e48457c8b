//! Whether what is here is enough for a batch: what is short, the drinks that it hits, and what can be made.

use leptos::prelude::*;

use super::{Takes, some_deducted};
use crate::app::mend::mended_at;
use crate::app::route::Route;
use crate::book::{Book, Edit, Key, OfferId};
use crate::counter::batch::{on_shelf, takes_up};
use crate::counter::on_hand::{Reach, Reached, Wish, takers};
use crate::drink::make::Unmade;
use crate::foundation::measure::{Date, Exact, Overflow};
use crate::say;
use crate::ui::live::{live, press, text, trouble, when};
use crate::ui::mend::fill_in;
use crate::ui::parts::{Fold, Says, verdict};
use crate::ui::places::counter::best::{Best, best_of};
use crate::ui::places::counter::said::said;
use crate::ui::state::AppState;
use crate::words;

/// The best plan of so few sizes is found at once; that of more takes a press.
const FOUND_AT_ONCE: usize = 12;

/// Whether what is here is enough.
#[component]
pub fn Short(
    /// The day.
    day: Date,
    /// What it takes.
    takes: Memo<Result<Takes, Overflow>>,
) -> impl IntoView {
    let state = AppState::here();
    let unmade = live(move || {
        let left_out = takes.with(|takes| takes.as_ref().map(|it| it.sheet.left_out.clone()).unwrap_or_default());
        let one = |(offer, why): (OfferId, Unmade)| {
            let sentence = said(state, |words| words.unmade(offer, &why));
            let way = match why {
                Unmade::Stuck(error) => mended_at(&error, offer.drink),
                Unmade::NotOnTheMenu => Some(Route::Drink(offer.drink)),
            };
            view! { <li class="trouble">{sentence} {way.map(fill_in)}</li> }
        };
        view! { <ul class="steps">{left_out.into_iter().map(one).collect_view()}</ul> }.into_any()
    });
    let overflow = move || takes.with(|takes| takes.as_ref().err().map(|error| words::overflow(*error)));
    let of = move |is: fn(&Reached) -> bool| -> Vec<Reached> {
        takes.with(|takes| takes.as_ref().map(|it| it.reach.iter().copied().filter(is).collect()).unwrap_or_default())
    };
    let short = Memo::new(move |_| of(|it| matches!(it.reach, Reach::Short(_))));
    let counted = Memo::new(move |_| !of(|it| it.reach != Reach::NotCounted).is_empty());
    // What nobody counted may be short too: that comes before what is known to be enough.
    let not_counted = Memo::new(move |_| of(|it| it.reach == Reach::NotCounted).len());
    let shortage = move || {
        let rows = live(move || {
            let row = |reached| short_row(state, day, reached);
            view! { <ul class="shorts">{short.get().into_iter().map(row).collect_view()}</ul> }.into_any()
        });
        view! {
            {verdict(move || (Says::No, say!(counter::short_on, items = short.with(Vec::len))))}
            {rows}
            <Possible day />
        }
        .into_any()
    };
    let enough = || verdict(|| (Says::Yes, say!(counter::nothing_short).to_string()));
    let uncounted = move || {
        view! {
            {verdict(move || (Says::Open, say!(counter::items_not_counted, items = not_counted.get())))}
            {when(
                move || short.with(Vec::is_empty) && counted.get(),
                || view! { <p>{say!(counter::nothing_short)}</p> }.into_any(),
            )}
        }
        .into_any()
    };
    view! {
        <div class="batch-answer">
            {unmade}
            {trouble(overflow)}
            {when(move || !short.with(Vec::is_empty), shortage)}
            {when(move || not_counted.get() > 0, uncounted)}
            {when(move || not_counted.get() == 0 && short.with(Vec::is_empty) && counted.get(), enough)}
        </div>
    }
}

/// What is short, by how much, and which drinks of the plan take it.
fn short_row(state: AppState, day: Date, reached: Reached) -> AnyView {
    let name = state.book.with(|book| book.name(Key::from(reached.goods)));
    let by = said(state, |words| words.reach(&reached.reach, some_deducted(state, day)));
    let drinks = state.book.with(|book| {
        let batch = book.batch(day)?;
        let planned: Vec<OfferId> = batch.planned().map(|make| make.offer()).collect();
        let found = state.ledger.with(|ledger| takers(book, ledger, &planned, reached.goods)).ok()?;
        let names: Vec<String> = found.into_iter().map(|drink| book.name(Key::Drink(drink))).collect();
        Some(say!(counter::used_in, drinks = names.join(", ")))
    });
    view! {
        <li>
            <span>{name}</span>
            <b>{by}</b>
            <span class="shorts-of">{drinks}</span>
        </li>
    }
    .into_any()
}

/// So many of each drink beside those whose ingredients are off the shelf already.
fn made_of_the_rest(book: &Book, day: Date, counts: Vec<(OfferId, Exact)>) -> Option<Edit> {
    let off_shelf = |offer| {
        let makes = book.batch(day).map(|batch| batch.makes.as_slice()).unwrap_or_default();
        makes.iter().find(|make| make.offer() == offer).map_or(Exact::ZERO, |make| make.off_shelf)
    };
    let all = counts.into_iter().map(|(offer, units)| (offer, units.plus(off_shelf(offer)).unwrap_or(units)));
    takes_up(book, day, &mut all.into_iter())
}

/// What can be made of what is here, where it is not enough for all.
#[component]
fn Possible(day: Date) -> impl IntoView {
    let state = AppState::here();
    let fixed = RwSignal::new(Vec::<OfferId>::new());
    let wishes = Memo::new(move |_| {
        state.book.with(|book| {
            let Some(batch) = book.batch(day) else { return Vec::new() };
            let wish = |(offer, units): (OfferId, Exact)| {
                let least = if fixed.with(|fixed| fixed.contains(&offer)) { units } else { Exact::ZERO };
                Wish { offer, least, most: Some(units) }
            };
            on_shelf(batch).unwrap_or_default().into_iter().map(wish).collect::<Vec<Wish>>()
        })
    });
    let at_once = wishes.with_untracked(Vec::len) <= FOUND_AT_ONCE;
    let asked = RwSignal::new(at_once);
    let refused = RwSignal::new(None::<String>);
    let adopt = Callback::new(move |counts: Vec<(OfferId, Exact)>| {
        let edit = state.book.with_untracked(|book| made_of_the_rest(book, day, counts));
        refused.set(edit.and_then(|edit| state.apply(say!(counter::use_best_plan), edit).err()));
    });
    let ask = move || {
        view! {
            <p class="actions">
                <button class="main" on:click=press(move || asked.set(true))>
                    {say!(counter::find_best_plan)}
                </button>
            </p>
        }
        .into_any()
    };
    let found = move || {
        let best = best_of(state, wishes);
        let figure = text(move || {
            let sum = |units: Vec<Exact>| units.into_iter().try_fold(Exact::ZERO, Exact::plus).unwrap_or_default();
            let planned = sum(wishes.with(|all| all.iter().filter_map(|wish| wish.most).collect()));
            let made =
                best.with(|best| Some(sum(best.as_ref().ok()?.counts.iter().map(|(_, units)| *units).collect())));
            let shown = |units| state.number(units);
            made.map(|made| say!(counter::made_of_planned, made = shown(made), planned = shown(planned)))
                .unwrap_or_default()
        });
        view! {
            <Fold name=say!(counter::best_plan) figure=figure open=Signal::stored(!at_once)>
                <p class="about">{say!(counter::not_enough_about)}</p>
                <Best wishes best fixed=Some(fixed) adopt=Some(adopt) />
            </Fold>
        }
        .into_any()
    };
    view! {
        {when(move || !asked.get(), ask)}
        {when(move || asked.get(), found)}
        {trouble(move || refused.get())}
    }
}
