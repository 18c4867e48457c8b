//! A recipe card: amounts to take, in the order of adding, in figures large enough to read from
//! a metre away.

mod making;
mod turning;

use leptos::html::Div;
use leptos::prelude::*;

use crate::app::history::Session;
use crate::app::mend::mended_at;
use crate::app::route::{OfBatch, Place, Route};
use crate::book::{Batch, Key, OfferId};
use crate::drink::label::allergens_of;
use crate::drink::make::{card, is_a_number_of_drinks};
use crate::foundation::measure::{Date, Exact};
use crate::say;
use crate::ui::address::here;
use crate::ui::fields::{Entry, Hangs, tried_number};
use crate::ui::live::{live, parts, press, rows, text, trouble};
use crate::ui::mend::fill_in;
use crate::ui::order;
use crate::ui::parts::{Back, page_of};
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words;

/// The recipe card of a drink at a size.
#[component]
pub fn Card(
    /// The offer.
    id: OfferId,
    /// The day of the batch from which it was opened.
    #[prop(optional_no_strip)]
    of_batch: Option<Date>,
) -> impl IntoView {
    page_of(Key::Offer(id), Route::Counter, Place::Counter.name(), move || view! { <Page id of_batch /> }.into_any())
}

/// How many of it a batch makes; one where it makes none.
fn made_in(state: AppState, id: OfferId, day: Date) -> Exact {
    let units = state.book.with_untracked(|book| {
        let make = book.batch(day)?.makes.iter().find(|make| make.offer() == id)?;
        Some(make.units)
    });
    units.filter(|units| is_a_number_of_drinks(*units)).unwrap_or(Exact::ONE)
}

#[component]
fn Page(id: OfferId, of_batch: Option<Date>) -> impl IntoView {
    let state = AppState::here();
    let drinks = RwSignal::new(of_batch.map_or(Exact::ONE, |day| made_in(state, id, day)));
    let (back, back_name) = match of_batch {
        Some(day) => (Route::Batch(day), say!(counter::batch)),
        None => (Route::Counter, say!(counter::all_cards)),
    };
    let hangs = Hangs::new();
    let drink = text(move || state.book.with(|book| book.name(Key::Drink(id.drink))));
    let container = text(move || state.book.with(|book| book.name(Key::Container(id.container))));
    let sizes = Memo::new(move |_| state.book.with(|book| order::offers(book, id.drink)));
    let size = move |key| {
        let Key::Offer(offer) = key else { return ().into_any() };
        let name = text(move || state.book.with(|book| book.name(Key::Container(offer.container))));
        let here = (offer == id).then_some("page");
        // Of a batch, the card for as many as it makes.
        let address = text(move || {
            let is = |batch: &Batch| batch.planned().any(|make| make.offer() == offer);
            let of_batch = of_batch.filter(|day| state.book.with(|book| book.batch(*day).is_some_and(is)));
            of_batch.map_or(Route::Card(offer), |day| Route::BatchCard(OfBatch { day, offer })).address()
        });
        view! { <a class="chip counter-size" href=address aria-current=here>{name}</a> }.into_any()
    };
    let made = move || state.book.with(|book| card(book, id, drinks.get()));
    let stuck = move || {
        let error = made().err()?;
        Some(state.book.with(|book| words::offer_error(&error, book)))
    };
    let allergens = text(move || {
        state.book.with(|book| {
            let drink = book.drink(id.drink);
            drink.map(|drink| words::allergens(&allergens_of(book, drink), book)).unwrap_or_default()
        })
    });
    let kept = text(move || {
        state.book.with(|book| {
            let said = |drink| words::counter::made_today(drink, today());
            book.drink(id.drink).map(said).unwrap_or_default()
        })
    });
    // Nothing moves under a thumb while a number cannot be read: its answer leaves its room behind.
    let (place, height) = (NodeRef::<Div>::new(), StoredValue::new(0));
    Effect::new(move |_| {
        let drawn = made().is_ok() && !hangs.is_unread();
        if let Some(place) = place.get().filter(|_| drawn) {
            height.set_value(place.offset_height());
        }
    });
    let room = move |hangs: Hangs| if hangs.is_unread() { format!("{}px", height.get_value()) } else { String::new() };
    view! {
        <div class="recipe-head">
            <Back to=back name=back_name />
            <h1 class="recipe-name">{drink} " " <span class="h1-size">{container}</span></h1>
        </div>
        <div class="card-choices">
            <nav class="chips" aria-label=say!(counter::sizes)>
                {rows(sizes, size)}
            </nav>
            <HowMany drinks hangs />
        </div>
        {trouble(stuck)}
        {live(move || made().err().and_then(|error| mended_at(&error, id.drink)).map(fill_in).into_any())}
        <div node_ref=place style:min-height=move || room(hangs)>
            {hangs.answer(move || live(move || match made() {
                Ok(card) => making::making(state, id, card, drinks.get(), allergens),
                Err(_) => ().into_any(),
            }))}
        </div>
        {live(move || match made() {
            Ok(card) => making::notes(state, &card),
            Err(_) => ().into_any(),
        })}
        <p class="card-kept">{kept}</p>
        {turning::turning(state, id, of_batch)}
    }
}

/// For how many drinks the amounts are. Not kept: another card begins at one.
#[component]
fn HowMany(drinks: RwSignal<Exact>, hangs: Hangs) -> impl IntoView {
    let state = AppState::here();
    // A chip takes the place of what cannot be read: the field is drawn anew.
    let fields = RwSignal::new(0);
    let choose = move |number: Exact| {
        if hangs.is_unread() {
            state.unfinished.update(|all| all.forget_unread(&here()));
            fields.update(|count| *count += 1);
        }
        drinks.set(number);
    };
    let chip = move |number: u32| {
        let number = Exact::from(number);
        let pressed = text(move || (drinks.get() == number && !hangs.is_unread()).to_string());
        view! {
            <button
                class="chip counter-size"
                aria-label=words::counter::for_drinks(number, &state.speaker.get_untracked())
                aria-pressed=pressed
                on:click=press(move || choose(number))
            >
                {number.to_string()}
            </button>
        }
    };
    // What stood before the visit to the field is in force again where its text cannot be.
    let before = StoredValue::new((0, Exact::ONE));
    let take = move |read: Result<Option<Exact>, String>, visit: Session| {
        if before.get_value().0 != visit {
            before.set_value((visit, drinks.get_untracked()));
        }
        let number = match read {
            Ok(None) => Ok(Exact::ONE),
            Ok(Some(number)) if is_a_number_of_drinks(number) => Ok(number),
            Ok(Some(_)) => Err(words::counter::number_of_drinks()),
            Err(sentence) => Err(sentence),
        };
        drinks.set(number.as_ref().copied().unwrap_or(before.get_value().1));
        number.map(|_| ())
    };
    let field = move |_| {
        view! {
            <Entry
                label=say!(counter::how_many_drinks)
                label_hidden=true
                hangs
                value=text(move || state.number(drinks.get()))
                commit=tried_number(crate::words::Example::DrinksPerBatch, Box::new(take))
            />
        }
        .into_any()
    };
    view! {
        <div class="how-many" role="group" aria-label=say!(counter::drinks_at_once)>
            {[1, 2, 3].map(chip).into_iter().collect_view()}
            {parts(move || vec![fields.get()], field)}
        </div>
    }
}
