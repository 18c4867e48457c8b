//! What is tried of one size: its price, or how much all prices go up by, and how full it is.

use std::sync::Arc;

use leptos::prelude::*;

use super::Trying;
use crate::app::route::Route;
use crate::book::{Book, ContainerId, Key, Scope};
use crate::foundation::jump::Kind;
use crate::foundation::measure::{Amount, Dimension, Exact, Money, System, Volume, Wanted};
use crate::say;
use crate::ui::fields::{Entry, Range, Slid, Take, asks, tried_amount, tried_change, tried_number, units};
use crate::ui::kept;
use crate::ui::live::{flag, live, press, rows, text, trouble, when};
use crate::ui::state::AppState;
use crate::words::Example;

fn size(book: &Book) -> Wanted {
    Wanted { dimensions: &[Dimension::Volume], unit: book.settings().units.drink_unit() }
}

/// The size that changes, its price and its fill.
#[component]
pub fn Size(trying: Trying) -> impl IntoView {
    let state = AppState::here();
    let shown = Memo::new(move |_| {
        trying
            .with_today(|now| now.sizes.iter().map(|row| row.container).collect::<Vec<ContainerId>>())
            .unwrap_or_default()
    });
    let asked = trying.size;
    // The size that was chosen last where it is still compared, else the one whose screen the person came from, else
    // the first.
    let came = match kept::from().map(|address| Route::from_address(&address)) {
        Some(Route::Offer(offer)) => Some(offer.container),
        _ => None,
    };
    let chosen = Memo::new(move |_| {
        let asked = ContainerId::from_text(&asked.get()).or(came);
        shown.with(|shown| shown.iter().copied().find(|id| Some(*id) == asked).or(shown.first().copied()))
    });
    let keys = Memo::new(move |_| shown.with(|shown| shown.iter().copied().map(Key::Container).collect::<Vec<Key>>()));
    let chip = move |key| {
        let Key::Container(id) = key else { return ().into_any() };
        let pressed = text(move || (chosen.get() == Some(id)).to_string());
        let name = text(move || state.book.with(|book| book.name(key)));
        view! {
            <button class="chip" aria-pressed=pressed on:click=press(move || asked.set(id.to_string()))>
                {name}
            </button>
        }
        .into_any()
    };
    let several = flag(move || shown.with(|shown| shown.len() > 1));
    let chips = move || {
        view! {
            <div class="chips" role="group" aria-label=say!(sales::size_to_change)>
                {rows(keys, chip)}
            </div>
        }
        .into_any()
    };
    let alone = matches!(trying.scope, Scope::Drink(_));
    let fields = move || match chosen.get() {
        Some(id) => tries_of(state, trying, id, alone),
        None => ().into_any(),
    };
    view! {
        {when(move || several.get(), chips)}
        {live(fields)}
    }
}

fn tries_of(state: AppState, trying: Trying, id: ContainerId, alone: bool) -> AnyView {
    let name = state.book.with_untracked(|book| book.name(Key::Container(id)));
    // A fill below what the label says is against the law.
    let short = move || {
        let declared = state.book.with(|book| book.container(id).and_then(|container| container.declared))?;
        let poured = Amount::new(trying.fill_now(id), state.units().drink_unit()).volume().ok()??;
        let short = declared.volume().ok()??.minus(poured).ok().filter(|short| *short > Volume::ZERO)?;
        Some(say!(labels::fill_below_labeled_size, short = state.speaker.get().volume(short)))
    };
    view! {
        <div class="pair tries-size">
            <div class="slider">{price_of(state, trying, id, alone, &name)}</div>
            <div class="slider">{fill_of(state, trying, id, &name)}</div>
        </div>
        {trouble(short)}
    }
    .into_any()
}

fn price_of(state: AppState, trying: Trying, id: ContainerId, alone: bool, name: &str) -> AnyView {
    let hangs = trying.hangs;
    let take: Take<Exact> =
        Box::new(move |read, visit| trying.take(read, Some(visit), |number| trying.set_price(id, number)));
    let slid: Slid = Arc::new(move |number| {
        // What the slider reaches may still be refused; the columns then say why.
        let _ = trying.take(Ok(Some(number)), None, |number| trying.set_price(id, number));
    });
    let step = Exact::new(5, state.book.with_untracked(|book| book.settings().currency.digits()));
    let ends = untrack(|| trying.price_ends(id));
    let now = Signal::derive(move || trying.price_now(id).map(Money::major).unwrap_or_default());
    let label = if alone { say!(sales::price_of, size = name) } else { say!(sales::raise_of, size = name) };
    let (called, value) = (label.clone(), text(move || trying.price(id)));
    let entry = if alone {
        let asks = asks(Kind::Price, Key::Container(id), "tried/price").while_tried();
        let commit = tried_number(Example::MenuPrice, take);
        view! { <Entry label=called asks hangs value commit /> }.into_any()
    } else {
        // How much more is no price.
        view! { <Entry label=called hangs letters=true value commit=tried_change(take) /> }.into_any()
    };
    view! {
        {entry}
        <Range label ends step value=now slid />
    }
    .into_any()
}

fn fill_of(state: AppState, trying: Trying, id: ContainerId, name: &str) -> AnyView {
    let take: Take<Amount> =
        Box::new(move |read, visit| trying.take(read, Some(visit), |amount| trying.set_fill(id, amount)));
    let slid: Slid = Arc::new(move |number| {
        let poured = Amount::new(number, untrack(|| state.units()).drink_unit());
        let _ = trying.take(Ok(Some(poured)), None, |amount| trying.set_fill(id, amount));
    });
    let step = match untrack(|| state.units()) {
        System::Metric => Exact::ONE,
        System::UsCustomary | System::Imperial => Exact::new(1, 1),
    };
    let ends = untrack(|| trying.fill_ends(id, step));
    let label = say!(sales::fill_of, size = name);
    view! {
        <Entry
            label=label.clone()
            asks=asks(Kind::Size, Key::Container(id), "tried/fill").while_tried()
            hangs=trying.hangs
            value=text(move || trying.fill(id))
            units=units(size)
            commit=tried_amount(size, take)
        />
        <Range label ends step value=Signal::derive(move || trying.fill_now(id)) slid />
    }
    .into_any()
}
