//! One drink: its sizes, its recipe, how it is made.

use std::sync::Arc;

use leptos::prelude::*;

use super::change::changed;
use super::keeping::Keeping;
use super::list::offer_row;
use super::recipe::{MAKES, Recipe, drink_size};
use crate::app::route::Route;
use crate::book::{Book, Drink, DrinkId, DrinkKind, Edit, Key, Offer, OfferId, Record, Scope};
use crate::drink::label::allergens_of;
use crate::foundation::jump::Kind;
use crate::foundation::measure::{Money, Share};
use crate::ui::address::go;
use crate::ui::fields::{self, Addition, Choice, Draft, Entry, Hangs, asks};
use crate::ui::live::{press, rows, text, when};
use crate::ui::order;
use crate::ui::parts::{Back, Section, page_of};
use crate::ui::state::AppState;
use crate::words;

/// The field of a new drink, by what is missing while it is empty; [`MAKES`] is the other.
const NAME: &str = "a name";

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
    let key = Key::Drink(id);
    let there = move |book: &Book| book.contains(key);
    let new = Addition::of(Draft::of_record(key), there, "Add a drink", move |typed, book| {
        let (name, reference) = (typed.name(NAME), typed.amount(MAKES, drink_size(book)));
        Some(Edit::Put(Record::Drink(Drink::new(id, name?, DrinkKind::Pressed, reference?))))
    });
    let is_new = !untrack(|| new.is_there());
    let name = of(|drink| drink.name.clone());
    let rename = fields::text("Name of a drink", move |book, name| changed(book, id, |it| it.name = name));
    let kind = of(|it| format!("{:?}", it.kind));
    let choice = new.once_there(move || {
        let kinds = kinds.clone();
        view! { <Choice label="How it is made" options=kinds value=kind choose=choose_kind.clone() /> }.into_any()
    });
    let hangs = Hangs::new();
    let sold_in = new.once_there(move || view! { <SoldIn id hangs /> }.into_any());
    let rest = new.once_there(move || {
        view! {
            <Section heading="Allergens" about="From what its ingredients hold; entered at each ingredient in Buying.">
                <p>{allergens}</p>
            </Section>
            <Keeping id hangs />
            <Making id hangs />
            <p class="actions">
                <a class="button" href=Route::SideBySide(Scope::Drink(id)).address()>
                    "Sizes side by side"
                </a>
                <button class="quiet" on:click=press(remove)>
                    "Remove this drink"
                </button>
            </p>
        }
        .into_any()
    });
    view! {
        <Back to=Route::Drinks name="Drinks" />
        <h1>{new.heading("New drink", name)}</h1>
        <div class="pair">
            <Entry
                label="Name"
                letters=true
                caret=is_new
                example="Orchard Green"
                value=new.value(NAME, name)
                commit=new.commit(NAME, rename)
            />
            {choice}
        </div>
        {sold_in}
        <Recipe id new=new.clone() hangs />
        {new.needs()}
        {new.discard()}
        {rest}
    }
}

#[component]
fn SoldIn(id: DrinkId, hangs: Hangs) -> impl IntoView {
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
            {hangs.answer(move || view! { <ul class="rows">{rows(offers, offer_row)}</ul> }.into_any())}
            {choice}
            {no_container}
        </Section>
    }
}

#[component]
fn Making(id: DrinkId, hangs: Hangs) -> impl IntoView {
    let state = AppState::here();
    let of = move |show: fn(&Drink, AppState) -> String| {
        text(move || state.book.with(|book| book.drink(id).map(|it| show(it, state)).unwrap_or_default()))
    };
    let book_share = move |share: fn(&Book) -> Share| {
        text(move || format!("Empty: the book's {}", state.percent(state.book.with(share))))
    };
    view! {
        <Section heading="Making it" about="Time is paid at the wage in Book; leave empty what does not apply.">
            <div class="fields">
                <Entry
                    hangs
                    label="Stays in the press or jug"
                    unit="%"
                    example="none"
                    value=of(|it, state| state.percent_if_any(it.process_loss))
                    commit=fields::optional_percent("Process loss", move |book, loss| {
                        changed(book, id, |it| it.process_loss = loss.unwrap_or(Share::ZERO))
                    })
                />
                <Entry
                    hangs
                    label="Air beaten in"
                    unit="%"
                    note="Of the volume of what is mixed: blend, and measure before and after."
                    example="none"
                    value=of(|it, state| state.percent_if_any(it.air))
                    commit=fields::optional_percent("Air beaten in", move |book, air| {
                        changed(book, id, |it| it.air = air.unwrap_or(Share::ZERO))
                    })
                />
                <Entry
                    hangs
                    label="Hands' time per drink"
                    unit="s"
                    example="none"
                    value=of(|it, state| state.number_if_any(it.labour.per_drink.seconds()))
                    commit=fields::optional_seconds("Time per drink", move |book, time| {
                        changed(book, id, |it| it.labour.per_drink = time)
                    })
                />
                <Entry
                    hangs
                    label="And per litre"
                    unit="s"
                    example="none"
                    value=of(|it, state| state.number_if_any(it.labour.per_litre.seconds()))
                    commit=fields::optional_seconds("Time per litre", move |book, time| {
                        changed(book, id, |it| it.labour.per_litre = time)
                    })
                />
                <Entry
                    hangs
                    label="And per batch"
                    unit="s"
                    example="none"
                    value=of(|it, state| state.number_if_any(it.labour.per_batch.seconds()))
                    commit=fields::optional_seconds("Time per batch", move |book, time| {
                        changed(book, id, |it| it.labour.per_batch = time)
                    })
                />
                <Entry
                    hangs
                    label="Drinks in a batch"
                    value=of(|it, state| state.number(it.labour.batch))
                    commit=fields::count("Drinks in a batch", move |book, count| {
                        changed(book, id, |it| it.labour.batch = count)
                    })
                />
                <Entry
                    hangs
                    label="Treatment toll per drink"
                    asks=asks(Kind::Price, Key::Drink(id), "toll")
                    example="none"
                    value=of(|it, state| state.money_if_any(it.treatment_fee))
                    commit=fields::optional_money("Treatment toll", move |book, fee| {
                        changed(book, id, |it| it.treatment_fee = fee.unwrap_or(Money::ZERO))
                    })
                />
                <Entry
                    hangs
                    label="Made but not sold"
                    unit="%"
                    note=book_share(|book| book.settings().unsold)
                    value=of(|it, state| it.unsold.map(|share| state.plain_percent(share)).unwrap_or_default())
                    commit=fields::optional_percent("Unsold share", move |book, unsold| {
                        changed(book, id, |it| it.unsold = unsold)
                    })
                />
                <Entry
                    hangs
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
