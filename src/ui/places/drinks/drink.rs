//! One drink: its sizes, its recipe, how it is made.

use std::sync::Arc;

use leptos::prelude::*;

use super::amounts::AnySize;
use super::change::changed;
use super::keeping::Keeping;
use super::menu::size_tag;
use super::recipe::{MAKES, Recipe, drink_size};
use crate::app::route::Route;
use crate::book::{Book, Drink, DrinkId, DrinkKind, Edit, Key, Offer, OfferId, Record, Scope};
use crate::drink::label::{Allergens as Found, allergens_of};
use crate::foundation::jump::Kind;
use crate::foundation::measure::{Money, Share, System};
use crate::say;
use crate::ui::address::go;
use crate::ui::fields::{self, Addition, Choice, Draft, Entry, Field, Hangs, asks};
use crate::ui::live::{flag, live, press, rows, text, when};
use crate::ui::order;
use crate::ui::parts::{Back, Fold, page_of};
use crate::ui::state::AppState;
use crate::words;
use crate::words::texts::{HOLE, around};

/// A field of a new drink; [`MAKES`] is the other.
const NAME: Field = Field::Name;

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
        Some(Edit::Put(Record::Drink(Drink::new(id, name?, DrinkKind::Pressed, reference?))))
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
    let free = Memo::new(move |_| {
        state.book.with(|book| {
            let free = |key: &Key| match key {
                Key::Container(container) => book.offer(OfferId { drink: id, container: *container }).is_none(),
                _ => false,
            };
            let mut options = order::options(book, order::containers(book).into_iter().filter(free).collect());
            options.insert(0, (String::new(), say!(drinks::choose_container).to_string()));
            options
        })
    });
    let add = Arc::new(move |chosen: &str| {
        let Some(Key::Container(container)) = Key::from_text(chosen) else { return Ok(()) };
        state.apply(say!(drinks::add_size), Edit::Put(Record::Offer(Offer::new(OfferId { drink: id, container }))))
    });
    let choice = when(
        move || free.with(|free| free.len() > 1),
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
            <p class="soft">{say!(drinks::allergens_about)}</p>
        </Fold>
    }
}

#[component]
fn Making(id: DrinkId, hangs: Hangs) -> impl IntoView {
    let state = AppState::here();
    let units = Memo::new(move |_| state.units());
    live(move || {
        let units = units.get();
        untrack(|| making(id, hangs, units))
    })
}

fn making(id: DrinkId, hangs: Hangs, units: System) -> AnyView {
    let state = AppState::here();
    let of = move |show: fn(&Drink, AppState) -> String| {
        text(move || state.book.with(|book| book.drink(id).map(|it| show(it, state)).unwrap_or_default()))
    };
    let book_share = move |share: fn(&Book) -> Share| {
        text(move || say!(drinks::blank_uses, share = state.percent(state.book.with(share))))
    };
    view! {
        <Fold name=say!(drinks::making) figure=of(|it, state| state.time_if_any(it.labour.per_drink))>
            <p class="about">{say!(drinks::making_about)}</p>
            <div class="fields">
                <Entry
                    hangs
                    label=say!(drinks::press_or_pour_loss)
                    asks=asks(Kind::SmallShare, Key::Drink(id), "loss")
                    unit="%"
                    example=say!(common::none)
                    value=of(|it, state| state.percent_if_any(it.process_loss))
                    commit=fields::optional_percent(say!(drinks::press_or_pour_loss), fields::Example::ProcessLoss, move |book, loss| {
                        changed(book, id, |it| it.process_loss = loss.unwrap_or(Share::ZERO))
                    })
                />
                <Entry
                    hangs
                    label=say!(drinks::air)
                    asks=asks(Kind::SmallShare, Key::Drink(id), "air")
                    unit="%"
                    note=say!(drinks::air_about)
                    example=say!(common::none)
                    value=of(|it, state| state.percent_if_any(it.air))
                    commit=fields::optional_percent(say!(drinks::air), fields::Example::Air, move |book, air| {
                        changed(book, id, |it| it.air = air.unwrap_or(Share::ZERO))
                    })
                />
                {labor(id, hangs, units)}
                <Entry
                    hangs
                    label=say!(drinks::processing_fee)
                    note=say!(drinks::processing_fee_about)
                    asks=asks(Kind::Price, Key::Drink(id), "toll")
                    example=say!(common::none)
                    value=of(|it, state| state.money_if_any(it.treatment_fee))
                    commit=fields::optional_money(say!(drinks::processing_fee), fields::Example::CostPerDrink, move |book, fee| {
                        changed(book, id, |it| it.treatment_fee = fee.unwrap_or(Money::ZERO))
                    })
                />
                <Entry
                    hangs
                    label=say!(drinks::waste)
                    asks=asks(Kind::SmallShare, Key::Drink(id), "waste")
                    unit="%"
                    note=book_share(|book| book.settings().unsold)
                    value=of(|it, state| it.unsold.map(|share| state.plain_percent(share)).unwrap_or_default())
                    commit=fields::optional_percent(say!(drinks::waste), fields::Example::Waste, move |book, unsold| {
                        changed(book, id, |it| it.unsold = unsold)
                    })
                />
                <Entry
                    hangs
                    label=say!(common::target_margin)
                    asks=asks(Kind::Margin, Key::Drink(id), "target")
                    unit="%"
                    note=book_share(|book| book.settings().target)
                    value=of(|it, state| it.target.map(|share| state.plain_percent(share)).unwrap_or_default())
                    commit=fields::optional_percent(say!(common::target_margin), fields::Example::TargetMargin, move |book, target| {
                        changed(book, id, |it| it.target = target)
                    })
                />
            </div>
        </Fold>
    }
    .into_any()
}

/// How long a drink takes, a volume of it, and a batch.
fn labor(id: DrinkId, hangs: Hangs, units: System) -> AnyView {
    let state = AppState::here();
    let of = move |show: fn(&Drink, AppState) -> String| {
        text(move || state.book.with(|book| book.drink(id).map(|it| show(it, state)).unwrap_or_default()))
    };
    view! {
        <Entry
            hangs
            label=say!(drinks::labor_per_drink)
            asks=asks(Kind::Labor, Key::Drink(id), "labor/drink")
            letters=true
            unit=say!(drinks::minutes_and_seconds)
            example=say!(drinks::time_example, time = fields::Example::Time.said(&state.speaker.get_untracked()))
            value=of(|it, state| state.time_if_any(it.labour.per_drink))
            commit=fields::optional_time(say!(drinks::labor_per_drink), move |book, time| {
                changed(book, id, |it| it.labour.per_drink = time)
            })
        />
        <Entry
            hangs
            label=words::labor_per_volume(units)
            asks=asks(Kind::Labor, Key::Drink(id), "labor/volume")
            letters=true
            unit=say!(drinks::minutes_and_seconds)
            example=say!(drinks::time_example, time = fields::Example::Time.said(&state.speaker.get_untracked()))
            value=of(|it, state| state.labor_if_any(it.labour.per_litre))
            commit=fields::optional_labor_per_volume(words::labor_per_volume(units), move |book, time| {
                changed(book, id, |it| it.labour.per_litre = time)
            })
        />
        <Entry
            hangs
            label=say!(drinks::labor_per_batch)
            asks=asks(Kind::Labor, Key::Drink(id), "labor/batch")
            letters=true
            unit=say!(drinks::minutes_and_seconds)
            example=say!(drinks::time_example, time = fields::Example::Time.said(&state.speaker.get_untracked()))
            value=of(|it, state| state.time_if_any(it.labour.per_batch))
            commit=fields::optional_time(say!(drinks::labor_per_batch), move |book, time| {
                changed(book, id, |it| it.labour.per_batch = time)
            })
        />
        <Entry
            hangs
            label=say!(drinks::drinks_per_batch)
            value=of(|it, state| state.number(it.labour.batch))
            commit=fields::count(say!(drinks::drinks_per_batch), fields::Example::DrinksPerBatch, move |book, count| {
                changed(book, id, |it| it.labour.batch = count)
            })
        />
    }
    .into_any()
}
