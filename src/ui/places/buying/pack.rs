//! One pack: what it holds and costs, who sells it, and what follows from it.

use leptos::prelude::*;
use web_sys::Element;

use super::case::{Caret, case_fields};
use super::change::{pack_changed, packs_changed};
use super::first_case::costs_nothing;
use super::heard::{heard_on, still_so};
use super::starting::usual_case;
use super::tiers::Tiers;
use super::usable;
use crate::book::{Book, Edit, Goods, Key, Pack, PackId};
use crate::drink::ledger::Tried;
use crate::foundation::jump::Kind;
use crate::foundation::measure::{Dimension, Money, Unit, Wanted};
use crate::say;
use crate::ui::fields::{self, Addition, Draft, Entry, Field, Hangs, NewThing, asks};
use crate::ui::live::{press, text, when};
use crate::ui::parts::figures;
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words;

pub(super) fn pack_of(book: &Book, goods: Goods, id: PackId) -> Option<Pack> {
    book.packs(goods).iter().find(|pack| pack.id == id).cloned()
}

/// Whether it is the pack that is bought now.
fn is_first(book: &Book, goods: Goods, id: PackId) -> bool {
    book.packs(goods).first().is_some_and(|pack| pack.id == id)
}

/// What can be in a pack, and in which unit a bare number is read.
pub(super) fn wanted(book: &Book, goods: Goods, id: PackId) -> Wanted {
    match goods {
        Goods::Ingredient(_) => {
            let current = book.packs(goods).iter().find(|pack| pack.id == id).map(|pack| pack.contents.unit);
            let unit = current.unwrap_or(book.settings().units.buying_weight_unit());
            Wanted { dimensions: &[Dimension::Mass, Dimension::Volume, Dimension::Count], unit }
        }
        Goods::Packaging(_) => Wanted { dimensions: &[Dimension::Count], unit: Unit::Piece },
    }
}

/// A pack that is not in the book yet.
pub fn draft(goods: Goods, id: PackId) -> Draft {
    Draft { what: NewThing::Pack, of: Some(Key::from(goods)), id: id.number() }
}

/// How a pack gets into the book.
pub fn addition(goods: Goods, id: PackId) -> Addition {
    let there = move |book: &Book| pack_of(book, goods, id).is_some();
    Addition::of(draft(goods, id), there, say!(goods::add_pack), move |typed, book| {
        let (contents, price) = (
            typed.amount(Field::PackSize, wanted(book, goods, id)),
            typed.money(Field::CasePrice, fields::Example::CasePrice),
        );
        // A pack of nothing is refused where its size is typed, not where its price is.
        if contents.is_some_and(|contents| !contents.number.is_positive()) {
            typed.refuse(Field::PackSize, say!(refusals::not_positive, field = say!(goods::pack_size)));
        }
        let surcharge = typed.optional_money(Field::Surcharge, fields::Example::Surcharge).unwrap_or(Money::ZERO);
        let supplier = typed.letters(Field::Supplier);
        let pack = Pack { supplier, day: Some(today()), surcharge, ..Pack::new(id, contents?, price?) };
        packs_changed(book, goods, |packs| packs.push(pack))
    })
}

/// One pack of goods.
#[component]
pub(super) fn PackRow(
    /// What is bought.
    goods: Goods,
    /// The pack.
    id: PackId,
    /// The fields of its goods' yields, which costs hang on too.
    of_yields: Hangs,
    /// Its own fields.
    hangs: Hangs,
    /// Whether its first field takes the caret.
    caret: bool,
) -> impl IntoView {
    let state = AppState::here();
    let pack = move |book: &Book| pack_of(book, goods, id);
    let first = Memo::new(move |_| state.book.with(|book| is_first(book, goods, id)));
    let of = move |show: fn(&Pack, AppState) -> String| {
        text(move || state.book.with(pack).map(|pack| show(&pack, state)).unwrap_or_default())
    };
    let set_surcharge =
        fields::optional_money(say!(goods::delivery_or_deposit), fields::Example::Surcharge, move |book, money| {
            pack_changed(book, goods, id, |pack| pack.surcharge = money.unwrap_or(Money::ZERO))
        });
    let new = addition(goods, id);
    let caret = if caret { Caret::Contents } else { Caret::None };
    let case = case_fields(goods, id, &new, hangs, caret, usual_case(goods, id));
    let answers = of_yields.answer(move || hangs.answer(move || answers(state, goods, id, first)));
    let rest = new.once_there(move || rest(state, goods, id, first, hangs));
    let own = new.until_there(move || match goods {
        Goods::Ingredient(id) => costs_nothing(state, id),
        Goods::Packaging(_) => ().into_any(),
    });
    let is_in_book = new.clone();
    let name = text(move || {
        let name = state.book.with(pack).map(|pack| words::quotes::pack(&pack, &state.speaker.get()));
        name.unwrap_or_else(|| say!(goods::new_pack).to_string())
    });
    let figure = of(|pack, state| state.money(pack.price_now()));
    let tag = when(move || first.get(), || view! { <span class="tag">{say!(goods::current_pack)}</span> }.into_any());
    // The pack that is bought now stands open, and one that is typed.
    let open = untrack(|| first.get() || !is_in_book.is_there());
    view! {
        <li class="pack" class:pack-now=first>
            <details class="pack-fold" open=open>
                <summary>
                    <h3>{name}</h3>
                    {tag}
                    <span class="fold-figure">{figure}</span>
                </summary>
                <div class="fold-in">
                    <div class="fields">
                        {case}
                        <Entry
                            label=say!(goods::delivery_or_deposit)
                            asks=asks(Kind::Price, goods, format!("{id}/surcharge"))
                            of=id.number()
                            hangs
                            example=say!(common::none)
                            value=new.value(Field::Surcharge, of(|pack, state| state.money_if_any(pack.surcharge)))
                            commit=new.commit(Field::Surcharge, set_surcharge)
                        />
                        <Entry
                            label=say!(goods::supplier)
                            of=id.number()
                            letters=true
                            value=new.value(Field::Supplier, of(|pack, _| pack.supplier.clone()))
                            commit=new.commit(Field::Supplier, fields::text(say!(goods::supplier), move |book, name| {
                                pack_changed(book, goods, id, |pack| pack.supplier = name)
                            }))
                        />
                    </div>
                    {new.needs()}
                    {own}
                    {new.discard()}
                    {answers}
                    {rest}
                </div>
            </details>
        </li>
    }
}

/// What a usable amount costs from it, and what buying it instead would move.
fn answers(state: AppState, goods: Goods, id: PackId, first: Memo<bool>) -> AnyView {
    let costs = move || {
        let Some(pack) = state.book.with(|book| pack_of(book, goods, id)) else { return Vec::new() };
        match goods {
            Goods::Ingredient(id) => state.book.with(|book| {
                book.ingredient_now(id).map(|ingredient| usable::costs(state, &ingredient, &pack)).unwrap_or_default()
            }),
            Goods::Packaging(_) => usable::piece(state, goods, &pack).into_iter().collect(),
        }
    };
    let other = move || !first.get() && state.book.with(|book| pack_of(book, goods, id).is_some());
    let others = move || {
        view! {
            <dl class="figures">{figures(costs)}</dl>
            {would_move(state, goods, id)}
        }
        .into_any()
    };
    // What the pack costs that is bought now stands over the page.
    when(other, others)
}

/// What can be done with a pack once it is in the book.
fn rest(state: AppState, goods: Goods, id: PackId, first: Memo<bool>, hangs: Hangs) -> AnyView {
    let here = move || state.book.with(|book| pack_of(book, goods, id));
    let buy_this = move || {
        let edit = state.book.with_untracked(|book| bought_instead(book, goods, id));
        // The order of packs is never refused.
        let _ = edit.map(|edit| state.apply(say!(goods::switch_packs), edit));
    };
    let remove = move || {
        let edit = state.book.with_untracked(|book| packs_changed(book, goods, |packs| packs.retain(|it| it.id != id)));
        // Taking a pack out is never refused.
        let _ = edit.map(|edit| state.apply(say!(goods::remove_pack), edit));
    };
    let buy_this = when(
        move || !first.get(),
        move || {
            view! {
                <button class="button" on:click=press(buy_this)>
                    {say!(goods::buy_this_pack)}
                </button>
            }
            .into_any()
        },
    );
    view! {
        <Tiers goods id hangs />
        <p class="actions">{heard_on(state, here, words::quotes::age)} {still_so(state, goods, here)}</p>
        <p class="actions">
            {buy_this}
            <button class="quiet" on:click=press(remove)>
                {say!(goods::remove_pack)}
            </button>
        </p>
    }
    .into_any()
}

/// The edit that buys this pack from now on. Returns `None` if the goods are gone.
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
            <summary>{say!(goods::if_you_switch)}</summary>
            <p role="status">{said}</p>
        </details>
    }
    .into_any()
}
