//! Goods put on the list by hand.

use std::sync::Arc;

use leptos::prelude::*;

use super::{changed, said};
use crate::book::{Book, BuyingList, Edit, Key, Record, ToBuy};
use crate::buying::buying_list::addable;
use crate::say;
use crate::ui::fields::{Choice, Choose};
use crate::ui::order;
use crate::ui::parts::Section;
use crate::ui::state::AppState;
use crate::ui::today::today;

/// Goods put on the list by hand.
#[component]
pub fn Add() -> impl IntoView {
    let state = AppState::here();
    let options = Signal::derive(move || {
        let lines = state.book.with(by_name);
        let option = |line: ToBuy| (value(&line), said(state, |words| words.choice(line.goods, line.pack)));
        std::iter::once((String::new(), say!(common::choose).to_string()))
            .chain(lines.into_iter().map(option))
            .collect()
    });
    let choose: Choose = Arc::new(move |chosen| {
        let edit = state.book.with_untracked(|book| added(book, chosen));
        edit.map_or(Ok(()), |edit| state.apply(say!(market::add_to_list), edit))
    });
    view! {
        <Section heading=say!(market::add_by_hand)>
            <Choice label=say!(market::add_item) options value=Signal::stored(String::new()) choose />
        </Section>
    }
}

/// Every pack that may be added, by the names of the goods.
fn by_name(book: &Book) -> Vec<ToBuy> {
    let lines: Vec<ToBuy> = addable(book, book.buying_list()).collect();
    let mut keys = order::ingredients(book);
    keys.extend(order::packagings(book));
    let of = |key: Key| lines.iter().filter(move |line| Key::from(line.goods) == key).copied();
    keys.into_iter().flat_map(of).collect()
}

fn value(line: &ToBuy) -> String {
    format!("{}/{}", Key::from(line.goods), line.pack)
}

fn added(book: &Book, chosen: &str) -> Option<Edit> {
    let line = addable(book, book.buying_list()).find(|line| value(line) == chosen)?;
    let add = |list: &mut BuyingList| list.lines.push(line);
    changed(book, add).or_else(|| {
        let list = BuyingList { day: today(), lines: vec![line] };
        Some(Edit::Put(Record::BuyingList(list)))
    })
}
