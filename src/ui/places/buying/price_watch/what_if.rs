//! What if prices change by a percentage: tried beside the book.

use std::sync::Arc;

use leptos::prelude::*;

use super::moved::shown;
use crate::book::{Book, Goods, Key};
use crate::buying::price_watch::{WatchError, Watched, bought, what_if};
use crate::foundation::in_order;
use crate::foundation::measure::{Exact, Share, read_change};
use crate::say;
use crate::ui::fields::{Ask, Choice, Choose};
use crate::ui::kept;
use crate::ui::live::{live, press, text, when};
use crate::ui::order;
use crate::ui::parts::{Says, TakeOut, verdict};
use crate::ui::state::AppState;
use crate::words;

/// What is typed at the start.
const FIRST: &str = "20";

/// What if prices change by a percentage.
#[component]
pub fn WhatIf() -> impl IntoView {
    let state = AppState::here();
    let chosen = chosen_before();
    let typed = kept::text("percent", FIRST);
    let percent = move || {
        let read = typed.with(|text| read_change(text, state.speaker.get().style()));
        let number = read.map_err(|error| words::read_error(&error, FIRST))?;
        number.over(Exact::new(100, 0)).map(Share::from_fraction).map_err(words::overflow)
    };
    let found = Memo::new(move |_| -> Option<Result<Watched, WatchError>> {
        let by = percent().ok()?;
        chosen.with(|goods| {
            if goods.is_empty() {
                None
            } else {
                Some(state.book.with(|book| state.ledger.with(|ledger| what_if(book, ledger, goods, by))))
            }
        })
    });
    let error = text(move || {
        let refused = || found.with(|found| found.as_ref()?.as_ref().err().cloned());
        let said = |error| state.book.with(|book| words::watch::watch_error(&error, book));
        percent().err().or_else(|| refused().map(said)).unwrap_or_default()
    });
    let watched = Memo::new(move |_| found.with(|found| found.as_ref()?.as_ref().ok().cloned()));
    let sentence = text(move || {
        if chosen.with(Vec::is_empty) {
            say!(market::choose_item_to_test).to_string()
        } else {
            watched.with(|found| found.as_ref().map(words::watch::what_if).unwrap_or_default())
        }
    });
    let risen = text(move || {
        let said = |it: &Watched| state.book.with(|book| words::watch::risen_in_fallen(it, book));
        watched.with(|found| found.as_ref().map(said).unwrap_or_default())
    });
    let answer = move || {
        verdict(move || {
            watched.with(|found| match found {
                Some(found) if found.fallen() > 0 => (Says::No, words::watch::would_fall(found)),
                Some(found) => (Says::Yes, words::watch::would_fall(found)),
                None => (Says::Open, String::new()),
            })
        })
    };
    let options = Signal::derive(move || state.book.with(|book| chosen.with(|chosen| options(book, chosen))));
    let choose: Choose = Arc::new(move |value| {
        let added = state.book.with_untracked(|book| meant(book, value));
        chosen.update(|chosen| added.into_iter().for_each(|goods| put(chosen, goods)));
        Ok(())
    });
    let taken = live(move || {
        let row = |goods: Goods| {
            let name = state.book.with(|book| book.name(Key::from(goods)));
            let out = move || chosen.update(|chosen| chosen.retain(|other| *other != goods));
            view! {
                <li>
                    <span>{name.clone()}</span>
                    <TakeOut name=Signal::stored(name) on_click=out />
                </li>
            }
        };
        chosen.get().into_iter().map(row).collect_view().into_any()
    });
    let clear = when(
        move || chosen.with(|chosen| chosen.len() > 1),
        move || {
            view! {
                <p class="actions">
                    <button class="quiet" on:click=press(move || chosen.set(Vec::new()))>
                        {say!(market::remove_all)}
                    </button>
                </p>
            }
            .into_any()
        },
    );
    view! {
        <div class="panes watch-panes">
            <section class="section pane-asked">
                <h2>{say!(market::what_if)}</h2>
                <div class="fields">
                    <Choice label=say!(market::add_item) options=options value=Signal::stored(String::new()) choose=choose />
                    <Ask label=say!(market::percent_change) letters=true text=typed error=error />
                </div>
                <ul class="watch-chosen" aria-label=say!(market::items_to_test)>
                    {taken}
                </ul>
                {clear}
                <p class="about">{say!(market::just_a_test)}</p>
            </section>
            <div class="pane">
                {when(move || watched.with(Option::is_some), answer)}
                <p class="watch-said">{risen}</p>
                <p class="hollow" role="status">{sentence}</p>
                {shown(state, watched, [say!(market::now), say!(market::new_price), say!(market::change)])}
            </div>
        </div>
    }
}

/// The goods that are tried, as they were when the screen was left.
fn chosen_before() -> RwSignal<Vec<Goods>> {
    let kept = kept::text("goods", "");
    let goods =
        |lines: &String| lines.lines().filter_map(|line| goods_at(Key::from_text(line)?)).collect::<Vec<Goods>>();
    let chosen = RwSignal::new(kept.with_untracked(goods));
    Effect::new(move |_| {
        let lines: Vec<String> = chosen.with(|chosen| chosen.iter().map(|goods| value_of(*goods)).collect());
        kept.set(lines.join("\n"));
    });
    chosen
}

/// Adds goods once.
fn put(chosen: &mut Vec<Goods>, goods: Goods) {
    if !chosen.contains(&goods) {
        chosen.push(goods);
    }
}

/// All of a supplier, then all goods by name that are not chosen yet.
fn options(book: &Book, chosen: &[Goods]) -> Vec<(String, String)> {
    let mut options = vec![(String::new(), say!(common::choose).to_string())];
    let mut suppliers: Vec<&str> = Vec::new();
    for (_, pack) in bought(book).filter(|(_, pack)| !pack.supplier.is_empty()) {
        in_order::insert_once(&mut suppliers, &pack.supplier);
    }
    options.extend(
        suppliers.iter().map(|name| (format!("{BY_SUPPLIER}{name}"), say!(market::all_from, supplier = *name))),
    );
    for key in order::ingredients(book).into_iter().chain(order::packagings(book)) {
        let Some(goods) = goods_at(key) else { continue };
        if !chosen.contains(&goods) && !book.packs(goods).is_empty() {
            options.push((value_of(goods), book.name(key)));
        }
    }
    options
}

/// What stands before a supplier's name in an option.
const BY_SUPPLIER: &str = "supplier ";

/// The goods that an option means.
fn meant(book: &Book, value: &str) -> Vec<Goods> {
    let supplier = value.strip_prefix(BY_SUPPLIER);
    let meant = |goods: Goods, of: &str| match supplier {
        Some(supplier) => of == supplier,
        None => value_of(goods) == value,
    };
    bought(book).filter(|(goods, pack)| meant(*goods, &pack.supplier)).map(|(goods, _)| goods).collect()
}

fn value_of(goods: Goods) -> String {
    Key::from(goods).to_string()
}

fn goods_at(key: Key) -> Option<Goods> {
    match key {
        Key::Ingredient(id) => Some(Goods::Ingredient(id)),
        Key::Packaging(id) => Some(Goods::Packaging(id)),
        _ => None,
    }
}
