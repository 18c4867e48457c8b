//! The packs that goods are quoted in. The first is the one bought now.

use leptos::prelude::*;
use web_sys::Element;

use super::change::{pack_changed, packs_changed, price_set};
use super::compared::side_by_side;
use super::heard::{heard_on, still_so};
use super::prices_heard::prices_heard;
use super::tiers::Tiers;
use super::usable;
use crate::book::{Book, Edit, Goods, Pack, PackId};
use crate::jump::Kind;
use crate::ledger::Tried;
use crate::measure::{Amount, Dimension, Exact, Money, Unit, Wanted};
use crate::ui::fields::{self, Entry, asks};
use crate::ui::live::{live, parts, press, text, when};
use crate::ui::parts::{Section, figures};
use crate::ui::random::random;
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words;

/// The packs that goods are quoted in.
#[component]
pub fn Packs(
    /// What is bought.
    goods: Goods,
) -> impl IntoView {
    let state = AppState::here();
    let packs =
        move || state.book.with(|book| book.packs(goods).iter().map(|pack| pack.id.number()).collect::<Vec<u64>>());
    let add = move || {
        let edit = state.book.with_untracked(|book| {
            let unit = match goods {
                Goods::Ingredient(_) => book.settings().units.buying_weight_unit(),
                Goods::Packaging(_) => Unit::Piece,
            };
            let number = Exact::from(if unit == Unit::Piece { 100 } else { 10 });
            packs_changed(book, goods, |packs| {
                packs.push(Pack {
                    id: PackId::from_random(random()),
                    supplier: String::new(),
                    contents: Amount::new(number, unit),
                    price: Money::ZERO,
                    day: None,
                    earlier: Vec::new(),
                    surcharge: Money::ZERO,
                    at_a_time: Exact::ONE,
                    tiers: Vec::new(),
                });
            })
        });
        // A new pack of ten holds, so it is not refused.
        let _ = edit.map(|edit| state.apply("Add a pack", edit));
    };
    view! {
        <Section heading="Packs" about="What one pack holds and costs. The first is the one you buy now.">
            {side_by_side(state, goods)}
            <ol class="packs">
                {parts(packs, move |pack| view! { <PackRow goods id=PackId::from_random(pack) /> }.into_any())}
            </ol>
            <button class="button" on:click=press(add)>
                "Add a pack"
            </button>
        </Section>
    }
}

#[component]
fn PackRow(goods: Goods, id: PackId) -> impl IntoView {
    let state = AppState::here();
    let pack = move |book: &Book| book.packs(goods).iter().find(|pack| pack.id == id).cloned();
    let first = Memo::new(move |_| state.book.with(|book| book.packs(goods).first().is_some_and(|it| it.id == id)));
    let here = move || state.book.with(pack);
    let of = move |show: fn(&Pack, AppState) -> String| {
        text(move || state.book.with(pack).map(|pack| show(&pack, state)).unwrap_or_default())
    };
    let free = text(move || {
        let nothing = state.book.with(pack).is_some_and(|pack| pack.price == Money::ZERO);
        if nothing { "At 0 it counts as free.".to_string() } else { String::new() }
    });
    let wanted = move |book: &Book| match goods {
        Goods::Ingredient(_) => {
            let current = book.packs(goods).iter().find(|pack| pack.id == id).map(|pack| pack.contents.unit);
            let unit = current.unwrap_or(book.settings().units.buying_weight_unit());
            Wanted { dimensions: &[Dimension::Mass, Dimension::Volume, Dimension::Count], unit }
        }
        Goods::Packaging(_) => Wanted { dimensions: &[Dimension::Count], unit: Unit::Piece },
    };
    let costs = move || {
        let Some(pack) = state.book.with(pack) else { return Vec::new() };
        match goods {
            Goods::Ingredient(id) => state.book.with(|book| {
                book.ingredient(id).map(|ingredient| usable::costs(state, ingredient, &pack)).unwrap_or_default()
            }),
            Goods::Packaging(_) => usable::piece(state, goods, &pack).into_iter().collect(),
        }
    };
    let buy_this = move || {
        let edit = state.book.with_untracked(|book| bought_instead(book, goods, id));
        // The order of packs is never refused.
        let _ = edit.map(|edit| state.apply("Buy another pack", edit));
    };
    let remove = move || {
        let edit = state.book.with_untracked(|book| packs_changed(book, goods, |packs| packs.retain(|it| it.id != id)));
        // Taking a pack out is never refused.
        let _ = edit.map(|edit| state.apply("Remove a pack", edit));
    };
    view! {
           <li class="pack" class:pack-now=first>
               <div class="fields">
                   <Entry
                       label="Holds"
                       asks=asks(Kind::Pack, goods, format!("{id}/contents"))
                       value=of(|pack, state| state.amount(pack.contents))
                       units=fields::units(wanted)
    commit=fields::amount("What a pack holds", wanted, move |book, amount| {
                           pack_changed(book, goods, id, |pack| pack.contents = amount)
                       })
                   />
                   <Entry
                       label="Price of the pack"
                       asks=asks(Kind::Price, goods, format!("{id}/price"))
                       note=free
                       value=of(|pack, state| state.plain_money(pack.price))
                       commit=fields::money("Price of a pack", move |book, price| {
                           let bought_at_it = pack(book)?.reached().is_none();
                           if bought_at_it {
                               return Some(price_set(goods, id, price, today()));
                           }
                           pack_changed(book, goods, id, |pack| pack.price = price)
                       })
                   />
                   <Entry
                       label="Delivery or deposit"
                       asks=asks(Kind::Price, goods, format!("{id}/surcharge"))
                       value=of(|pack, state| state.plain_money(pack.surcharge))
                       commit=fields::money("Surcharge of a pack", move |book, money| {
                           pack_changed(book, goods, id, |pack| pack.surcharge = money)
                       })
                   />
                   <Entry
                       label="Supplier"
                       letters=true
                       value=of(|pack, _| pack.supplier.clone())
                       commit=fields::text("Supplier of a pack", move |book, name| {
                           pack_changed(book, goods, id, |pack| pack.supplier = name)
                       })
                   />
               </div>
               <dl class="figures">
                   {figures(costs)}
               </dl>
               <Tiers goods id />
               <p class="actions">{heard_on(state, here)} {still_so(state, goods, here)}</p>
               {prices_heard(state, goods, here)}
               {when(move || !first.get(), move || would_move(state, goods, id))}
               <p class="actions">
                   {live(move || match first.get() {
                       true => view! { <span class="tag">"Bought now"</span> }.into_any(),
                       false => {
                           view! {
                               <button class="button" on:click=press(buy_this)>
                                   "Buy this one"
                               </button>
                           }
                               .into_any()
                       }
                   })}
                   <button class="quiet" on:click=press(remove)>
                       "Remove this pack"
                   </button>
               </p>
           </li>
       }
}

/// The edit that buys this pack from now on; none where the goods are gone.
fn bought_instead(book: &Book, goods: Goods, id: PackId) -> Option<Edit> {
    packs_changed(book, goods, |packs| {
        let here = packs.iter().position(|pack| pack.id == id).unwrap_or(0);
        packs.get_mut(..=here).unwrap_or_default().rotate_right(1);
    })
}

/// What buying this pack instead would move, once it is asked: the whole menu is tried.
fn would_move(state: AppState, goods: Goods, id: PackId) -> AnyView {
    let asked = RwSignal::new(false);
    let said = text(move || {
        if !asked.get() {
            return String::new();
        }
        state.book.with(|book| {
            let edit = bought_instead(book, goods, id);
            let tried = state.ledger.with(|ledger| edit.and_then(|edit| Tried::of(book, ledger, &edit).ok()));
            tried.map(|tried| words::quotes::would_move(&tried.moves, book)).unwrap_or_default()
        })
    });
    view! {
        <details class="more" on:toggle=move |event| asked.set(event_target::<Element>(&event).has_attribute("open"))>
            <summary>"What would buying this one move?"</summary>
            <p role="status">{said}</p>
        </details>
    }
    .into_any()
}
