//! How many of each drink and size are made.

use std::sync::Arc;

use leptos::prelude::*;

use crate::app::route::{OfBatch, Place, Route};
use crate::book::{Book, DrinkId, Key, Make, OfferId};
use crate::counter::batch::{filled, takes_up, without};
use crate::drink::make::MOST_DRINKS;
use crate::foundation::measure::{Date, Exact, read_number};
use crate::say;
use crate::ui::fields::{self, Choice, Commit, Entry, Hangs, Tick};
use crate::ui::live::{flag, live, press, rows, text, when};
use crate::ui::order;
use crate::ui::parts::{Section, TakeOut};
use crate::ui::state::AppState;
use crate::words;
use crate::words::texts::{HOLE, around};

/// How many of each drink and size are made.
#[component]
pub fn Plan(
    /// The day.
    day: Date,
    /// The answers that hang on it.
    hangs: Hangs,
) -> impl IntoView {
    let state = AppState::here();
    let listed = Memo::new(move |_| {
        let makes = |book: &Book| {
            Some(book.batch(day)?.makes.iter().map(|make| Key::Offer(make.offer())).collect::<Vec<Key>>())
        };
        state.book.with(makes).unwrap_or_default()
    });
    let options = Memo::new(move |_| {
        let taken = listed.get();
        let mut options = vec![(String::new(), say!(counter::choose_drink_and_size).to_string())];
        state.book.with(|book| {
            for drink in order::sold_drinks(book) {
                let Key::Drink(drink) = drink else { continue };
                let free = order::offers(book, drink).into_iter().filter(|key| !taken.contains(key)).collect();
                options.extend(order::options(book, free));
            }
        });
        options
    });
    let add = Arc::new(move |chosen: &str| {
        let Some(Key::Offer(offer)) = Key::from_text(chosen) else { return Ok(()) };
        let one = std::iter::once((offer, Exact::ZERO));
        let edit = state.book.with_untracked(|book| takes_up(book, day, &mut one.into_iter()));
        let step = || {
            state.book.with_untracked(|book| say!(counter::add_drink_to_batch, drink = book.name(Key::Offer(offer))))
        };
        edit.map_or(Ok(()), |edit| state.apply(&step(), edit))
    });
    let drinks = Memo::new(move |_| {
        let mut drinks: Vec<Key> = Vec::new();
        for key in listed.get() {
            let Key::Offer(offer) = key else { continue };
            if !drinks.contains(&Key::Drink(offer.drink)) {
                drinks.push(Key::Drink(offer.drink));
            }
        }
        drinks
    });
    let removing = RwSignal::new(false);
    let drink = move |key| match key {
        Key::Drink(id) => view! { <OfDrink day id listed hangs /> }.into_any(),
        _ => ().into_any(),
    };
    let remove_name = text(move || {
        if removing.get() { say!(counter::keep_drinks) } else { say!(counter::remove_drinks) }.to_string()
    });
    let any = move || options.with(Vec::len) > 1;
    let no_drinks = move || listed.with(Vec::is_empty) && !any();
    view! {
        <Section heading=say!(counter::drinks_to_make) about=say!(counter::drinks_to_make_about)>
            {when(no_drinks, || {
                let (before, after) = around(&say!(counter::menu_is_empty, drinks = HOLE));
                view! {
                    <p class="hollow">
                        {before} <a href=Route::Drinks.address()>{Place::Drinks.name()}</a> {after}
                    </p>
                }
                .into_any()
            })}
            {when(move || listed.with(Vec::is_empty) && any(), || {
                view! { <p class="hollow">{say!(counter::no_drinks_planned)}</p> }.into_any()
            })}
            <ul class="makes" class:makes-removing=removing>{rows(drinks, drink)}</ul>
            {when(any, move || {
                let choose = add.clone();
                view! {
                    <div class="fields">
                        <Choice label=say!(counter::add_to_batch) options=options value=text(String::new) choose />
                    </div>
                }
                .into_any()
            })}
            {when(move || !listed.with(Vec::is_empty), move || {
                let turn = press(move || removing.update(|it| *it = !*it));
                view! {
                    <p class="actions">
                        <button class="quiet" on:click=turn>
                            {remove_name}
                        </button>
                    </p>
                }
                .into_any()
            })}
        </Section>
    }
}

/// A drink of the plan: its card, and its sizes.
#[component]
fn OfDrink(day: Date, id: DrinkId, listed: Memo<Vec<Key>>, hangs: Hangs) -> impl IntoView {
    let state = AppState::here();
    let name = text(move || state.book.with(|book| book.name(Key::Drink(id))));
    let sizes = Memo::new(move |_| {
        let of_drink = |key: &Key| matches!(key, Key::Offer(offer) if offer.drink == id);
        listed.with(|listed| listed.iter().copied().filter(of_drink).collect::<Vec<Key>>())
    });
    // The card of its first size, for as many as are made of it; from there the others are one press away.
    let first = Memo::new(move |_| sizes.with(|sizes| sizes.first().copied()));
    let card = live(move || {
        let Some(Key::Offer(offer)) = first.get() else { return ().into_any() };
        let whole = text(move || say!(counter::card_of, drink = name.get()));
        let address = Route::BatchCard(OfBatch { day, offer }).address();
        view! { <a class="quiet" href=address aria-label=whole>{say!(drinks::recipe_card)}</a> }.into_any()
    });
    let row = move |key| match key {
        Key::Offer(offer) => view! { <MakeRow day offer hangs=hangs.within() /> }.into_any(),
        _ => ().into_any(),
    };
    view! {
        <li class="make-drink">
            <div class="make-head">
                <h3>{name}</h3>
                {card}
            </div>
            <ul>{rows(sizes, row)}</ul>
        </li>
    }
}

/// Whether a number is more than a card can be for.
fn is_too_many(units: Exact) -> bool {
    units > Exact::from(MOST_DRINKS)
}

/// Puts a number in force unless it is more than a card can be for.
fn at_most(commit: Commit) -> Commit {
    let state = AppState::here();
    Arc::new(move |text, session| {
        let speaker = state.speaker.get_untracked();
        match read_number(text, speaker.style()) {
            Ok(units) if is_too_many(units) => Err(words::counter::too_many_drinks(units, &speaker)),
            _ => commit(text, session),
        }
    })
}

#[component]
fn MakeRow(day: Date, offer: OfferId, hangs: Hangs) -> impl IntoView {
    let state = AppState::here();
    let make = move || -> Option<Make> {
        state.book.with(|book| book.batch(day)?.makes.iter().find(|make| make.offer() == offer).copied())
    };
    let units = move || make().map_or(Exact::ZERO, |make| make.units);
    let name = text(move || state.book.with(|book| book.name(Key::Offer(offer))));
    // The drink stands above; the name of the tick begins with it all the same.
    let size = text(move || state.book.with(|book| book.name(Key::Container(offer.container))));
    let of_drink = text(move || name.with(|name| name.strip_suffix(&*size.read()).unwrap_or_default().to_string()));
    let put = move |units: Exact| {
        let one = std::iter::once((offer, units));
        state.book.with_untracked(|book| takes_up(book, day, &mut one.into_iter()))
    };
    let label = state.book.with_untracked(|book| words::number_of(offer, book));
    let change = state.book.with_untracked(|book| words::change_number_of(offer, book));
    let number = change.clone();
    let step = move |by: Exact| {
        let Ok(units) = untrack(units).plus(by) else { return };
        if by.is_positive() && is_too_many(units) {
            return;
        }
        if let Some(edit) = put(units.max(Exact::ZERO)) {
            // A whole number above or below a whole one is never refused.
            let _ = state.apply(&number, edit);
        }
    };
    let tick = move |done: bool| {
        let edit = state.book.with_untracked(|book| filled(book, day, offer, done));
        let drink = name.get_untracked();
        let step = if done { say!(counter::check_off, item = drink) } else { say!(counter::uncheck, item = drink) };
        let _ = edit.map(|edit| state.apply(&step, edit));
    };
    let field = label.clone();
    let take_out = move || {
        let edit = state.book.with_untracked(|book| without(book, day, offer));
        let step = say!(counter::remove_drink_from_batch, drink = name.get_untracked());
        let _ = edit.map(|edit| state.apply(&step, edit));
        state.unfinished.update(|all| all.forget_unread_of(&Route::Batch(day).address(), &field));
    };
    let commit = at_most(fields::count(change, fields::Example::DrinksPerBatch, move |book, units| {
        takes_up(book, day, &mut std::iter::once((offer, units)))
    }));
    let fewer = text(move || say!(counter::one_fewer, drink = name.get()));
    let more = text(move || say!(counter::one_more, drink = name.get()));
    let waits = flag(move || hangs.is_unread());
    let deducted = move || make().filter(|make| make.off_shelf.is_positive());
    let said = text(move || deducted().map(|make| words::deducted(&make, &state.speaker.get())).unwrap_or_default());
    let done = flag(move || make().is_some_and(|make| make.filled));
    let remove = when(
        move || deducted().is_none(),
        move || view! { <TakeOut name=name on_click=take_out.clone() /> }.into_any(),
    );
    let steps = step.clone();
    view! {
        <li class="make">
            <Tick done=done set=tick waits=waits>
                <span class="unseen">{of_drink}</span>
                {size}
            </Tick>
            <div class="make-count">
                <button
                    class="button"
                    aria-label=fewer
                    disabled=waits
                    on:click=press(move || step(Exact::ONE.negated()))
                >
                    "\u{2212}"
                </button>
                <Entry
                    label
                    label_hidden=true
                    hangs
                    large=true
                    example="0"
                    value=text(move || state.number_if_any(units()))
                    commit
                />
                <button
                    class="button make-more"
                    aria-label=more
                    disabled=waits
                    on:click=press(move || steps(Exact::ONE))
                >
                    "+"
                </button>
                {remove}
            </div>
            <p class="make-deducted soft">{said}</p>
        </li>
    }
}
