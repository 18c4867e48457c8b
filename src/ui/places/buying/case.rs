//! The fields of what a case holds and costs.

use leptos::prelude::*;

use super::change::{pack_changed, price_set};
use super::pack::{pack_of, wanted};
use crate::book::{Goods, Pack, PackId};
use crate::foundation::jump::Kind;
use crate::foundation::measure::Money;
use crate::say;
use crate::ui::fields::{self, Addition, Entry, Example, Field, Hangs, asks};
use crate::ui::live::text;
use crate::ui::starter;
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words;

/// Which of the fields takes the caret.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Caret {
    /// Neither.
    None,
    /// What the case holds.
    Contents,
    /// What it costs.
    Price,
}

/// The fields of what a case of goods holds and costs; `note` stands under the first.
pub fn case_fields(
    goods: Goods,
    id: PackId,
    new: &Addition,
    hangs: Hangs,
    caret: Caret,
    note: Signal<String>,
) -> AnyView {
    let state = AppState::here();
    let of = move |show: fn(&Pack, AppState) -> String| {
        let pack = move || state.book.with(|book| pack_of(book, goods, id));
        text(move || pack().map(|pack| show(&pack, state)).unwrap_or_default())
    };
    let free = text(move || {
        let nothing = state.book.with(|book| pack_of(book, goods, id)).is_some_and(|pack| pack.price == Money::ZERO);
        if nothing { say!(goods::counts_as_free).to_string() } else { String::new() }
    });
    let wanted = move |book: &_| wanted(book, goods, id);
    let example = state.book.with_untracked(|book| match goods {
        Goods::Ingredient(_) => words::example(wanted(book).unit, book.settings().units),
        Goods::Packaging(_) => "100".to_string(),
    });
    // What the starter list suggested was typed by nobody: another size is asked about only after one of the owner's.
    let own_contents = text(move || {
        let suggested = match goods {
            Goods::Ingredient(id) => state.book.with(|book| book.ingredient(id).and_then(starter::row_of)),
            Goods::Packaging(_) => None,
        };
        let suggested = suggested.and_then(|row| row.contents(state.units()));
        let contents = state.book.with(|book| pack_of(book, goods, id)).map(|pack| pack.contents);
        contents.filter(|contents| Some(*contents) != suggested).map(|it| state.amount(it)).unwrap_or_default()
    });
    let set_contents = fields::amount(say!(goods::pack_size), Example::Amount, wanted, move |book, amount| {
        pack_changed(book, goods, id, |pack| pack.contents = amount)
    });
    let set_price = fields::money(say!(goods::case_price), Example::CasePrice, move |book, price| {
        let bought_at_it = pack_of(book, goods, id)?.reached().is_none();
        if bought_at_it {
            return Some(price_set(goods, id, price, today()));
        }
        pack_changed(book, goods, id, |pack| pack.price = price)
    });
    view! {
        <Entry
            label=say!(goods::pack_size)
            asks=asks(Kind::Pack, goods, format!("{id}/contents")).about(own_contents)
            of=id.number()
            hangs
            caret=caret == Caret::Contents
            example=example
            note
            value=new.value(Field::PackSize, of(|pack, state| state.amount(pack.contents)))
            units=fields::units(wanted)
            commit=new.commit(Field::PackSize, set_contents)
        />
        <Entry
            label=say!(goods::case_price)
            asks=asks(Kind::Price, goods, format!("{id}/price"))
            of=id.number()
            hangs
            caret=caret == Caret::Price
            example=Example::CasePrice.said(&state.speaker.get_untracked())
            note=free
            value=new.value(Field::CasePrice, of(|pack, state| state.plain_money(pack.price)))
            commit=new.commit(Field::CasePrice, set_price)
        />
    }
    .into_any()
}
