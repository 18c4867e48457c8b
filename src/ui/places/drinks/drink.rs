//! One drink: its sizes, its recipe, how it is made.

use std::sync::Arc;

use leptos::prelude::*;

use super::amounts::AnySize;
use super::change::changed;
use super::keeping::Keeping;
use super::making::Making;
use super::menu::size_tag;
use super::recipe::{MAKES, Recipe, drink_size};
use crate::app::route::Route;
use crate::book::{Book, Drink, DrinkId, DrinkKind, Edit, IngredientId, Key, Labour, Offer, OfferId, Record, Scope};
use crate::drink::label::{Allergens as Found, allergens_of};
use crate::foundation::measure::Amount;
use crate::say;
use crate::ui::address::go;
use crate::ui::fields::{self, Addition, Choice, Draft, Entry, Field, Hangs};
use crate::ui::live::{flag, live, press, rows, text, when};
use crate::ui::order;
use crate::ui::parts::{Back, Fold, page_of};
use crate::ui::places::buying::add_container;
use crate::ui::section;
use crate::ui::state::AppState;
use crate::words;
use crate::words::texts::{HOLE, around};

/// A field of a new drink; [`MAKES`] is the other.
const NAME: Field = Field::Name;

/// What stands for a container that is not in the book yet.
const NEW_CONTAINER: &str = "new";

/// A new drink is pressed in batches, whose time each size bears by its volume.
fn new_drink(id: DrinkId, name: String, reference: Amount) -> Drink {
    let labour = Labour { batch_volume: Some(reference), ..Labour::default() };
    Drink { labour, ..Drink::new(id, name, DrinkKind::Pressed, reference) }
}

/// One drink.
#[component]
pub fn DrinkPage(
    /// The drink.
    id: DrinkId,
) -> impl IntoView {
    page_of(Key::Drink(id), Route::Drinks, say!(first::drinks), move || view! { <Page id /> }.into_any())
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
        edit.map_or(Ok(()), |edit| state.apply(say!(drinks::drink_type), edit))
    });
    let remove = move || {
        let edit = state.book.with_untracked(|book| Edit::remove_with_offers(book, Key::Drink(id)));
        if state.apply(say!(drinks::remove_drink), edit).is_ok() {
            go(Route::Drinks);
        }
    };
    let key = Key::Drink(id);
    let there = move |book: &Book| book.contains(key);
    let new = Addition::of(Draft::of_record(key), there, say!(first::add_drink), move |typed, book| {
        let (name, reference) = (typed.name(NAME), typed.amount(MAKES, drink_size(book)));
        Some(Edit::Put(Record::Drink(new_drink(id, name?, reference?))))
    });
    let is_new = !untrack(|| new.is_there());
    let name = of(|drink| drink.name.clone());
    let rename = fields::text(say!(drinks::drink_name), move |book, name| changed(book, id, |it| it.name = name));
    let kind = of(|it| format!("{:?}", it.kind));
    let kind_name = of(|it| words::drink_kind(it.kind).to_string());
    let choice = new.once_there(move || {
        let kinds = kinds.clone();
        view! { <Choice label=say!(drinks::drink_type) options=kinds value=kind choose=choose_kind.clone() /> }
            .into_any()
    });
    let hangs = Hangs::new();
    let sold_in = new.once_there(move || view! { <SoldIn id hangs /> }.into_any());
    let rest = new.once_there(move || {
        view! {
            <Allergens id />
            <Keeping id hangs />
            <Making id hangs />
            <Fold name=say!(drinks::try_a_size) figure=Signal::stored(String::new())>
                <AnySize id />
            </Fold>
        }
        .into_any()
    });
    let actions = new.once_there(move || {
        view! {
            <p class="actions">
                <a class="button" href=Route::SideBySide(Scope::Drink(id)).address()>
                    {say!(drinks::compare_sizes)}
                </a>
                <button class="quiet" on:click=press(remove)>
                    {say!(drinks::remove_drink)}
                </button>
            </p>
        }
        .into_any()
    });
    let (value, commit) = (new.value(NAME, name), new.commit(NAME, rename));
    let named = view! {
        <Fold name=say!(drinks::name_and_type) figure=kind_name open=flag(move || is_new)>
            <div class="pair">
                <Entry
                    label=say!(common::name)
                    letters=true
                    caret=is_new
                    example=say!(drinks::example_drink)
                    value
                    commit
                />
                {choice}
            </div>
        </Fold>
    };
    // A new drink begins with its name; later it is the last that one looks for.
    let (before, after) = if is_new { (Some(named), None) } else { (None, Some(named)) };
    view! {
        <Back to=Route::Drinks name=say!(first::drinks) />
        <h1>{new.heading(say!(drinks::new_drink), name)}</h1>
        {before}
        {sold_in}
        <div class="drink-panes">
            <div class="pane">
                <Recipe id new=new.clone() hangs />
                {new.needs()}
                {new.discard()}
            </div>
            <div class="pane">
                <div class="folds">{rest} {after}</div>
                {actions}
            </div>
        </div>
    }
}

#[component]
fn SoldIn(id: DrinkId, hangs: Hangs) -> impl IntoView {
    let state = AppState::here();
    let offers = Memo::new(move |_| state.book.with(|book| order::offers(book, id)));
    // What stands small in each size.
    let terms = text(move || {
        let margin = words::margin_on(state.book.with(|book| book.settings().cost_basis));
        if offers.with(Vec::is_empty) { String::new() } else { say!(first::margin_and_sold, margin = margin) }
    });
    // A target of its own is the reason why a size is on target that would not be on the book's.
    let own_target = text(move || {
        let targets = state.book.with(|book| {
            let (own, of_book) = (book.drink(id)?.target?, book.settings().target);
            (own != of_book).then_some((own, of_book))
        });
        let said = |(own, of_book)| say!(drinks::own_target, own = state.percent(own), book = state.percent(of_book));
        targets.map(said).unwrap_or_default()
    });
    let free = Memo::new(move |_| {
        state.book.with(|book| {
            let free = |key: &Key| match key {
                Key::Container(container) => book.offer(OfferId { drink: id, container: *container }).is_none(),
                _ => false,
            };
            let mut options = order::options(book, order::containers(book).into_iter().filter(free).collect());
            options.insert(0, (String::new(), say!(drinks::choose_container).to_string()));
            options.push((NEW_CONTAINER.to_string(), say!(labels::new_container).to_string()));
            options
        })
    });
    let add = Arc::new(move |chosen: &str| {
        if chosen == NEW_CONTAINER {
            add_container(state, Some(id));
            return Ok(());
        }
        let Some(Key::Container(container)) = Key::from_text(chosen) else { return Ok(()) };
        state.apply(say!(drinks::add_size), Edit::Put(Record::Offer(Offer::new(OfferId { drink: id, container }))))
    });
    let choice = when(
        move || state.book.with(|book| book.containers().next().is_some()),
        move || {
            view! {
                <Choice
                    label=say!(drinks::add_size)
                    options=free
                    value=Signal::stored(String::new())
                    choose=add.clone()
                />
            }
            .into_any()
        },
    );
    let no_container = when(
        move || state.book.with(|book| book.containers().next().is_none()),
        || {
            let said = say!(drinks::no_containers, link = HOLE);
            let (before, after) = around(&said);
            view! {
                <p class="hollow">
                    {before} <a href=Route::Containers.address()>{say!(drinks::add_container)}</a> {after}
                </p>
            }
            .into_any()
        },
    );
    view! {
        <section class="sold-in">
            <h2 class="unseen">{say!(drinks::sizes_you_sell)}</h2>
            {hangs
                .answer(move || {
                    view! {
                        <ul class="size-tags">{rows(offers, tag)}</ul>
                        <p class="hollow size-terms">{terms}</p>
                        {when(
                            move || !own_target.with(String::is_empty),
                            move || view! { <p class="hollow size-terms">{own_target}</p> }.into_any(),
                        )}
                    }
                        .into_any()
                })}
            {choice}
            {no_container}
        </section>
    }
}

/// One of the sizes.
fn tag(key: Key) -> AnyView {
    match key {
        Key::Offer(id) => view! { <li>{size_tag(AppState::here(), id)}</li> }.into_any(),
        _ => ().into_any(),
    }
}

#[component]
fn Allergens(id: DrinkId) -> impl IntoView {
    let state = AppState::here();
    let said = move |say: fn(&Found, &Book) -> String| {
        text(move || {
            let said = |book: &Book| Some(say(&allergens_of(book, book.drink(id)?), book));
            state.book.with(said).unwrap_or_default()
        })
    };
    let briefly = said(|found, _| words::allergens_marked(found));
    view! {
        <Fold name=say!(labels::allergens) figure=briefly>
            <p>{said(words::allergens)}</p>
            {not_checked(state, id)}
            <p class="soft">{say!(drinks::allergens_about)}</p>
        </Fold>
    }
}

/// The ways to the allergens of each ingredient of a drink that nobody has looked at yet.
pub(super) fn not_checked(state: AppState, id: DrinkId) -> AnyView {
    let open = Memo::new(move |_| {
        let open = |book: &Book| Some(allergens_of(book, book.drink(id)?).open().collect::<Vec<IngredientId>>());
        state.book.with(open).unwrap_or_default()
    });
    live(move || {
        let open = open.get();
        let way = |id: IngredientId| {
            let address = Route::Ingredient(id).address();
            let name = state.book.with(|book| book.name(Key::Ingredient(id)));
            let wants = section::wants(address.clone(), say!(labels::allergens));
            view! { <li><a class="button" href=address on:click=wants>{name}</a></li> }
        };
        (!open.is_empty())
            .then(|| {
                view! {
                    <p class="soft">{say!(labels::check_each)}</p>
                    <ul class="actions">{open.into_iter().map(way).collect_view()}</ul>
                }
            })
            .into_any()
    })
}
