//! One drink: its sizes, its recipe, how it is made.

use std::sync::Arc;

use leptos::prelude::*;

use super::change::changed;
use super::list::offer_row;
use super::recipe::Recipe;
use crate::app::route::Route;
use crate::book::{Book, Drink, DrinkId, DrinkKind, Edit, Key, Offer, OfferId, Record, Scope};
use crate::jump::Kind;
use crate::label::allergens_of;
use crate::measure::Share;
use crate::ui::address::go;
use crate::ui::fields::{self, Choice, Entry, asks};
use crate::ui::live::{press, rows, text, when};
use crate::ui::order;
use crate::ui::parts::{Back, Section, page_of};
use crate::ui::state::AppState;
use crate::words;

/// One drink.
#[component]
pub fn DrinkPage(
    /// The drink.
    id: DrinkId,
) -> impl IntoView {
    page_of(Key::Drink(id), Route::Drinks, "Drinks", move || view! { <Page id /> }.into_any())
}

#[component]
fn Page(id: DrinkId) -> impl IntoView {
    let state = AppState::here();
    let of = move |show: fn(&Drink) -> String| {
        text(move || state.book.with(|book| book.drink(id).map(show).unwrap_or_default()))
    };
    let kinds = DrinkKind::ALL.iter().map(|kind| (format!("{kind:?}"), words::drink_kind(*kind).to_string())).collect();
    let kinds: Vec<(String, String)> = kinds;
    let choose_kind = Arc::new(move |chosen: &str| {
        let kind = DrinkKind::ALL.iter().copied().find(|kind| format!("{kind:?}") == chosen);
        let edit = kind.and_then(|kind| state.book.with_untracked(|book| changed(book, id, |it| it.kind = kind)));
        edit.map_or(Ok(()), |edit| state.apply("Kind of drink", edit))
    });
    let allergens = text(move || {
        state.book.with(|book| {
            let said = |drink| words::allergens(&allergens_of(book, drink), book);
            book.drink(id).map(said).unwrap_or_default()
        })
    });
    let remove = move || {
        let edit = state.book.with_untracked(|book| Edit::remove_with_offers(book, Key::Drink(id)));
        if state.apply("Remove a drink", edit).is_ok() {
            go(Route::Drinks);
        }
    };
    view! {
        <Back to=Route::Drinks name="Drinks" />
        <h1>{of(|drink| drink.name.clone())}</h1>
        <div class="pair">
            <Entry
                label="Name"
                letters=true
                value=of(|drink| drink.name.clone())
                commit=fields::text("Name of a drink", move |book, name| changed(book, id, |it| it.name = name))
            />
            <Choice label="How it is made" options=kinds value=of(|it| format!("{:?}", it.kind)) choose=choose_kind />
        </div>
        <SoldIn id />
        <Recipe id />
        <Section heading="Allergens" about="From what its ingredients hold; entered at each ingredient in Buying.">
            <p>{allergens}</p>
        </Section>
        <Making id />
        <p class="actions">
            <a class="button" href=Route::SideBySide(Scope::Drink(id)).address()>
                "Sizes side by side"
            </a>
            <button class="quiet" on:click=press(remove)>
                "Remove this drink"
            </button>
        </p>
    }
}

#[component]
fn SoldIn(id: DrinkId) -> impl IntoView {
    let state = AppState::here();
    let offers = Memo::new(move |_| state.book.with(|book| order::offers(book, id)));
    let free = Memo::new(move |_| {
        state.book.with(|book| {
            let free = |key: &Key| match key {
                Key::Container(container) => book.offer(OfferId { drink: id, container: *container }).is_none(),
                _ => false,
            };
            let mut options = order::options(book, order::containers(book).into_iter().filter(free).collect());
            options.insert(0, (String::new(), "Choose a container".to_string()));
            options
        })
    });
    let add = Arc::new(move |chosen: &str| {
        let Some(Key::Container(container)) = Key::from_text(chosen) else { return Ok(()) };
        state.apply("Add a size", Edit::Put(Record::Offer(Offer::new(OfferId { drink: id, container }))))
    });
    let choice = when(
        move || free.with(|free| free.len() > 1),
        move || {
            view! {
                <Choice label="Add a size" options=free value=Signal::stored(String::new()) choose=add.clone() />
            }
            .into_any()
        },
    );
    let no_container = when(
        move || state.book.with(|book| book.containers().next().is_none()),
        || {
            view! {
                <p class="hollow">
                    "There is no container in the book yet. " <a href=Route::Containers.address()>"Enter one"</a>
                    ", then add it here."
                </p>
            }
            .into_any()
        },
    );
    view! {
        <Section heading="Sizes it is sold in">
            <ul class="rows">{rows(offers, offer_row)}</ul>
            {choice}
            {no_container}
        </Section>
    }
}

#[component]
fn Making(id: DrinkId) -> impl IntoView {
    let state = AppState::here();
    let of = move |show: fn(&Drink, AppState) -> String| {
        text(move || state.book.with(|book| book.drink(id).map(|it| show(it, state)).unwrap_or_default()))
    };
    let book_share = move |share: fn(&Book) -> Share| {
        text(move || format!("Empty: the book's {}", state.percent(state.book.with(share))))
    };
    view! {
        <Section heading="Making it" about="Time is paid at the wage in Book; leave at 0 what does not apply.">
            <div class="fields">
                <Entry
                    label="Stays in the press or jug"
                    unit="%"
                    value=of(|it, state| state.plain_percent(it.process_loss))
                    commit=fields::percent("Process loss", move |book, loss| {
                        changed(book, id, |it| it.process_loss = loss)
                    })
                />
                <Entry
                    label="Air beaten in"
                    unit="%"
                    note="Of the volume of what is mixed: blend, and measure before and after."
                    value=of(|it, state| state.plain_percent(it.air))
                    commit=fields::percent("Air beaten in", move |book, air| changed(book, id, |it| it.air = air))
                />
                <Entry
                    label="Hands' time per drink"
                    unit="s"
                    value=of(|it, state| state.number(it.labour.per_drink.seconds()))
                    commit=fields::seconds("Time per drink", move |book, time| {
                        changed(book, id, |it| it.labour.per_drink = time)
                    })
                />
                <Entry
                    label="And per litre"
                    unit="s"
                    value=of(|it, state| state.number(it.labour.per_litre.seconds()))
                    commit=fields::seconds("Time per litre", move |book, time| {
                        changed(book, id, |it| it.labour.per_litre = time)
                    })
                />
                <Entry
                    label="And per batch"
                    unit="s"
                    value=of(|it, state| state.number(it.labour.per_batch.seconds()))
                    commit=fields::seconds("Time per batch", move |book, time| {
                        changed(book, id, |it| it.labour.per_batch = time)
                    })
                />
                <Entry
                    label="Drinks in a batch"
                    value=of(|it, state| state.number(it.labour.batch))
                    commit=fields::count("Drinks in a batch", move |book, count| {
                        changed(book, id, |it| it.labour.batch = count)
                    })
                />
                <Entry
                    label="Treatment toll per drink"
                    asks=asks(Kind::Price, Key::Drink(id), "toll")
                    value=of(|it, state| state.plain_money(it.toll))
                    commit=fields::money("Treatment toll", move |book, toll| changed(book, id, |it| it.toll = toll))
                />
                <Entry
                    label="Made but not sold"
                    unit="%"
                    note=book_share(|book| book.settings().unsold)
                    value=of(|it, state| it.unsold.map(|share| state.plain_percent(share)).unwrap_or_default())
                    commit=fields::optional_percent("Unsold share", move |book, unsold| {
                        changed(book, id, |it| it.unsold = unsold)
                    })
                />
                <Entry
                    label="Target margin"
                    unit="%"
                    note=book_share(|book| book.settings().target)
                    value=of(|it, state| it.target.map(|share| state.plain_percent(share)).unwrap_or_default())
                    commit=fields::optional_percent("Target margin", move |book, target| {
                        changed(book, id, |it| it.target = target)
                    })
                />
            </div>
        </Section>
    }
}
