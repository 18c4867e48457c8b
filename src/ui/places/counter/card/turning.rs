//! From card to card: all drinks and sizes in the order in which they are chosen from, and from
//! the last to the first. The arrow keys turn too.

use leptos::ev;
use leptos::prelude::*;
use wasm_bindgen::JsCast;

use crate::app::route::{OfBatch, Route};
use crate::book::{Batch, Key, OfferId};
use crate::foundation::measure::Date;
use crate::say;
use crate::ui::address::go;
use crate::ui::live::{text, when};
use crate::ui::order;
use crate::ui::state::AppState;

/// Which way to turn.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Way {
    Back,
    On,
}

/// The cards before and after this one: of a batch those that it makes.
pub fn turning(state: AppState, id: OfferId, of_batch: Option<Date>) -> AnyView {
    let cards = Memo::new(move |_| {
        state.book.with(|book| match of_batch {
            None => order::cards(book),
            Some(day) => {
                let planned = book.batch(day).into_iter().flat_map(Batch::planned);
                planned.map(|make| Key::Offer(make.offer())).collect()
            }
        })
    });
    let card_of = move |offer| match of_batch {
        None => Route::Card(offer),
        Some(day) => Route::BatchCard(OfBatch { day, offer }),
    };
    let beside = move |way| cards.with(|cards| beside(cards, id, way));
    let keys = window_event_listener(ev::keydown, move |event| {
        let way = match event.key().as_str() {
            "ArrowLeft" if is_mirrored() => Way::On,
            "ArrowRight" if is_mirrored() => Way::Back,
            "ArrowLeft" => Way::Back,
            "ArrowRight" => Way::On,
            _ => return,
        };
        let with_others = event.ctrl_key() || event.alt_key() || event.meta_key() || event.shift_key();
        if with_others || is_in_a_field(&event) {
            return;
        }
        if let Some(card) = beside(way).filter(|card| *card != id) {
            go(card_of(card));
        }
    });
    on_cleanup(move || keys.remove());
    let link = move |way, name: &'static str, shape: &'static str| {
        let address = text(move || beside(way).map(|card| card_of(card).address()).unwrap_or_default());
        let of = move |name: fn(OfferId) -> Key| {
            text(move || beside(way).map(|card| state.book.with(|book| book.name(name(card)))).unwrap_or_default())
        };
        view! {
            <a class="turn" class:turn-on=way == Way::On href=address>
                <svg viewBox="0 0 16 16" aria-hidden="true">
                    <path d=shape />
                </svg>
                <span class="turn-card">
                    <span class="soft">{name}</span>
                    " "
                    <span class="turn-name">
                        <b>{of(|card| Key::Drink(card.drink))}</b>
                        " "
                        {of(|card| Key::Container(card.container))}
                    </span>
                </span>
            </a>
        }
    };
    when(
        move || cards.with(|cards| cards.len() > 1),
        move || {
            view! {
                <nav class="turns" aria-label=say!(counter::other_cards)>
                    {link(Way::Back, say!(counter::previous), "M10 2.5 4.5 8l5.5 5.5")}
                    {link(Way::On, say!(counter::next), "M6 2.5 11.5 8 6 13.5")}
                </nav>
            }
            .into_any()
        },
    )
}

fn beside(cards: &[Key], id: OfferId, way: Way) -> Option<OfferId> {
    let last = cards.len().checked_sub(1)?;
    let here = cards.iter().position(|card| *card == Key::Offer(id))?;
    let there = match way {
        Way::Back => here.checked_sub(1).unwrap_or(last),
        Way::On if here == last => 0,
        Way::On => here + 1,
    };
    match cards.get(there) {
        Some(Key::Offer(card)) => Some(*card),
        _ => None,
    }
}

/// Whether letters run from right to left, and what is next lies at the left.
fn is_mirrored() -> bool {
    document().document_element().is_some_and(|page| page.get_attribute("dir").as_deref() == Some("rtl"))
}

/// Whether the caret is in a field, where the arrow keys move it.
fn is_in_a_field(event: &ev::KeyboardEvent) -> bool {
    let target = event.target().and_then(|target| target.dyn_into::<web_sys::Element>().ok());
    target.is_some_and(|target| target.matches("input, select, textarea, dialog *").unwrap_or(false))
}
