//! What the drink is sold in: a container of the book, a common bottle or cup, or a size that is typed.

use std::sync::Arc;

use leptos::prelude::*;

use super::frame::{ingredients_of, onward};
use crate::app::first_price::{
    filled_to_its_label, name_of, own_container, packaging_cost, put_packaging_cost, sell_in, size as size_of,
};
use crate::app::route::{FirstPrice, Route, Step};
use crate::book::{Book, Brimful, Container, ContainerId, DrinkId, Edit, Key, Offer, OfferId, Record};
use crate::buying::starter::vessels::{Vessel, usual};
use crate::foundation::measure::{Amount, Dimension, System, Wanted, read_amount};
use crate::say;
use crate::ui::address::go;
use crate::ui::fields::{self, Ask, Entry, Example, Hangs};
use crate::ui::live::{flag, live, press, text, trouble, when};
use crate::ui::order;
use crate::ui::random::random;
use crate::ui::state::AppState;
use crate::words;

/// Sells the drink in a container, or says in a sentence why not.
type Choose = Arc<dyn Fn(Container) -> Result<(), String> + Send + Sync>;

/// The same, where what is refused is said elsewhere.
type Take = Arc<dyn Fn(Container) + Send + Sync>;

/// The step in which the drink gets its first size.
pub fn size(first: FirstPrice) -> AnyView {
    let state = AppState::here();
    let drink = first.drink;
    let choose: Choose = Arc::new(move |container| {
        let edit = state.book.with_untracked(|book| sell_in(book, drink, container, &first_name(book)));
        edit.map_or(Ok(()), |edit| state.apply(say!(drinks::add_size), edit))
    });
    let chosen = Memo::new(move |_| state.book.with(|book| size_of(book, drink)).map(|id| id.container));
    let cost = when(
        move || chosen.get().is_some(),
        move || live(move || chosen.get().map(|container| untrack(|| cost(state, container))).into_any()),
    );
    view! {
        {choices(state, drink, move || own_container(drink), chosen, &choose)}
        {cost}
        {onward(Route::FirstPrice(first.at(Step::Amounts)), say!(setup::next_amounts))}
    }
    .into_any()
}

/// The step in which a drink that has a price gets another size; its own screen comes next.
pub fn another(first: FirstPrice) -> AnyView {
    let state = AppState::here();
    let drink = first.drink;
    let choose: Choose = Arc::new(move |container| {
        let offer = OfferId { drink, container: container.id };
        let records = [Record::Container(container), Record::Offer(Offer::new(offer))];
        state.apply(say!(drinks::add_size), Edit::Together(records.map(Edit::Put).into()))?;
        go(Route::Offer(offer));
        Ok(())
    });
    let none = Memo::new(|_| None);
    choices(state, drink, || ContainerId::from_random(random()), none, &choose)
}

/// What a drink is called before anything of it is known but what may go in.
fn first_name(book: &Book) -> String {
    let ids = ingredients_of(book);
    let names = ids.iter().filter_map(|id| book.ingredient(*id)).map(|it| it.name.as_str());
    name_of(names).unwrap_or_else(|| say!(drinks::new_drink).to_string())
}

/// The containers to choose from.
fn choices(
    state: AppState,
    drink: DrinkId,
    new: impl Fn() -> ContainerId + Copy + Send + Sync + 'static,
    chosen: Memo<Option<ContainerId>>,
    choose: &Choose,
) -> AnyView {
    let refused = RwSignal::new(None::<String>);
    let choose = choose.clone();
    let take: Take = Arc::new(move |container| refused.set(choose(container).err()));
    let (of_book, of_list, typed) = (take.clone(), take.clone(), take);
    // What was made for the drink stands among the common sizes, unless its size was typed.
    let is_common = move |id: ContainerId| {
        let of = |it: &Container| usual(state.units()).any(|vessel| is_vessel(it, &vessel));
        state.book.with(|book| book.container(id).is_some_and(of))
    };
    let mine = move || {
        let keys = state.book.with(order::containers);
        let id = |key| if let Key::Container(id) = key { Some(id) } else { None };
        let shown = |id: &ContainerId| if *id == new() { !is_common(*id) } else { !sold_in(state, drink, *id, chosen) };
        keys.into_iter().filter_map(id).filter(shown).collect::<Vec<_>>()
    };
    let listed = move || mine().into_iter().filter_map(move |id| state.book.with(|book| book.container(id).cloned()));
    let of_book = live(move || {
        let listed: Vec<Container> = listed().collect();
        if listed.is_empty() {
            return ().into_any();
        }
        let button = |container: Container| {
            let (name, id) = (container.name.clone(), container.id);
            let about = brimful(state, &container);
            choice(name, about, flag(move || chosen.get() == Some(id)), of_book.clone(), move || container.clone())
        };
        let buttons = listed.into_iter().map(button).collect_view();
        view! {
            <h2>{say!(setup::your_containers)}</h2>
            <div class="size-choices">{buttons}</div>
        }
        .into_any()
    });
    let system = Memo::new(move |_| state.units());
    let common = live(move || {
        let button = |vessel: Vessel| {
            let name = words::vessel(&vessel, &state.speaker.get());
            let container = vessel.container(new(), name.clone());
            let about = brimful(state, &container);
            let is_chosen = flag(move || {
                let own = chosen.get().filter(|id| *id == new());
                let is_it = |it: &Container| is_vessel(it, &vessel);
                own.is_some_and(|id| state.book.with(|book| book.container(id).is_some_and(is_it)))
            });
            let make = move || Container { id: new(), ..container.clone() };
            choice(name, about, is_chosen, of_list.clone(), make)
        };
        let offered = |vessel: &Vessel| {
            let name = words::vessel(vessel, &state.speaker.get());
            let is_there = |book: &Book| book.containers().any(|it| it.name == name && it.id != new());
            belongs(vessel, system.get()) && !state.book.with(is_there)
        };
        usual(system.get()).filter(offered).map(button).collect_view().into_any()
    });
    view! {
        <p class="soft">{say!(setup::which_size_about)}</p>
        {trouble(move || refused.get())}
        {of_book}
        <h2>{say!(setup::common_sizes)}</h2>
        <div class="size-choices">{common}</div>
        {other_size(state, new, typed)}
    }
    .into_any()
}

/// Whether the drink is sold in a container already, and that is not the one it has on this way.
fn sold_in(state: AppState, drink: DrinkId, container: ContainerId, chosen: Memo<Option<ContainerId>>) -> bool {
    let offer = OfferId { drink, container };
    chosen.get() != Some(container) && state.book.with(|book| book.offer(offer).is_some())
}

/// Whether a container was made of this common vessel.
fn is_vessel(container: &Container, vessel: &Vessel) -> bool {
    container.declared == Some(vessel.labeled) && container.starting == Some(vessel.brimful)
}

/// Whether a common vessel is sold where these units are used.
fn belongs(vessel: &Vessel, system: System) -> bool {
    let us = system == System::UsCustomary;
    vessel.labeled.unit.belongs_to(if us { system } else { System::Metric })
}

/// What a container holds to the rim, where that is known as one volume.
fn brimful(state: AppState, container: &Container) -> String {
    match &container.brimful {
        Brimful::Weighed(volume) => say!(setup::brimful, volume = state.amount(*volume)),
        Brimful::Tapered(_) | Brimful::Poured(_) => String::new(),
    }
}

/// A container to be chosen; the one that is chosen says so.
fn choice(
    name: String,
    about: String,
    is_chosen: Signal<bool>,
    take: Take,
    container: impl Fn() -> Container + 'static,
) -> AnyView {
    let pressed = text(move || is_chosen.get().to_string());
    let mark = when(move || is_chosen.get(), || view! { <span class="tag">{say!(setup::chosen)}</span> }.into_any());
    view! {
        <button class="button size-choice" aria-pressed=pressed on:click=press(move || take(container()))>
            <strong>{name}</strong>
            <span class="soft">{about}</span>
            {mark}
        </button>
    }
    .into_any()
}

/// A volume, in the unit that drinks are poured in.
fn drink_size(book: &Book) -> Wanted {
    Wanted { dimensions: &[Dimension::Volume], unit: book.settings().units.drink_unit() }
}

/// A size that is typed: what the label says.
fn other_size(state: AppState, new: impl Fn() -> ContainerId + Copy + Send + Sync + 'static, choose: Take) -> AnyView {
    let typed = RwSignal::new(String::new());
    let example = move || Example::Amount(state.book.with(|book| drink_size(book).unit)).said(&state.speaker.get());
    let read = move || -> Option<Result<Amount, String>> {
        let typed = typed.get();
        if typed.trim().is_empty() {
            return None;
        }
        let wanted = state.book.with(drink_size);
        let read = read_amount(&typed, wanted, state.units(), state.speaker.get().style());
        let amount = read.map_err(|error| words::read_error(&error, &example()));
        let error = || say!(drinks::size_too_small, example = example());
        Some(amount.and_then(|amount| if amount.number.is_positive() { Ok(amount) } else { Err(error()) }))
    };
    let error = text(move || read().and_then(Result::err).unwrap_or_default());
    let can = move || matches!(read(), Some(Ok(_)));
    let take = move || {
        if let Some(Ok(size)) = untrack(read) {
            let name = untrack(|| state.amount(size));
            // A typed size has no other name.
            choose(filled_to_its_label(new(), name, size));
            typed.set(String::new());
        }
    };
    let take = Arc::new(take);
    view! {
        <div class="other-size">
            <Ask label=say!(setup::other_size) units=fields::units(drink_size) text=typed error />
            {when(
                can,
                move || {
                    let take = take.clone();
                    view! {
                        <button class="button" on:click=press(move || take())>
                            {say!(drinks::add_size)}
                        </button>
                    }
                    .into_any()
                },
            )}
        </div>
    }
    .into_any()
}

/// What the packaging of one drink costs, where somebody knows.
fn cost(state: AppState, container: ContainerId) -> AnyView {
    let value = text(move || {
        state.book.with(|book| packaging_cost(book, container)).map(|cost| state.plain_money(cost)).unwrap_or_default()
    });
    let has_others = state.book.with(|book| {
        book.container(container).is_some_and(|it| {
            let own = packaging_cost(book, container).is_some();
            it.set.len() > usize::from(own) || !it.shared.is_empty()
        })
    });
    if has_others {
        // Its packaging is listed piece by piece.
        return ().into_any();
    }
    let commit = fields::optional_money(say!(setup::packaging_cost), Example::CostPerDrink, move |book, cost| {
        put_packaging_cost(book, container, cost)
    });
    let example = Example::CostPerDrink.said(&state.speaker.get_untracked());
    view! {
        <Entry
            label=say!(setup::packaging_cost)
            hangs=Hangs::new()
            example
            note=say!(setup::packaging_cost_about)
            value
            commit
        />
    }
    .into_any()
}
