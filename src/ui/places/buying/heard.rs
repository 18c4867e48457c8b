//! When the price of a pack was quoted, and that it still holds.

use leptos::prelude::*;

use super::change::price_set;
use crate::book::{Goods, Key, Pack, PackId};
use crate::buying::quotes::{Age, age};
use crate::foundation::measure::Date;
use crate::say;
use crate::ui::live::{live, press, text, when};
use crate::ui::state::AppState;
use crate::ui::today::today;

/// When a price was quoted, as `say` puts it: an old one by a shape and a word, one without a day quietly.
pub fn heard_on(
    state: AppState,
    pack: impl Fn() -> Option<Pack> + Send + Sync + 'static,
    say: fn(Age, Date) -> String,
) -> AnyView {
    let today = today();
    live(move || {
        let Some(pack) = pack() else { return ().into_any() };
        let age = state.book.with_untracked(|book| age(&pack, book.settings(), today));
        let said = say(age, today);
        match age {
            Age::Old(_) => view! {
                <span class="mark mark-old">
                    <svg viewBox="0 0 16 16" aria-hidden="true">
                        <path d="M3.5 1.5h9M3.5 14.5h9M4.5 1.5c0 4 7 9 7 13M11.5 1.5c0 4-7 9-7 13" />
                    </svg>
                    {said}
                </span>
            }
            .into_any(),
            Age::Fresh(_) | Age::Undated => view! { <span class="soft">{said}</span> }.into_any(),
        }
    })
}

/// Dates the price of a pack today as it is; there while it is of another day.
pub fn still_so(
    state: AppState,
    goods: Goods,
    pack: impl Fn() -> Option<Pack> + Copy + Send + Sync + 'static,
) -> AnyView {
    let today = today();
    let to_ask = move || pack().is_some_and(|pack| pack.day != Some(today));
    when(to_ask, move || {
        let label =
            text(move || say!(market::no_change_of, name = state.book.with(|book| book.name(Key::from(goods)))));
        let say_so = move || say_so(state, goods, pack().map(|pack| pack.id), today);
        view! {
            <button class="button still-so" aria-label=label on:click=press(say_so)>
                {say!(market::no_change)}
            </button>
        }
        .into_any()
    })
}

fn say_so(state: AppState, goods: Goods, pack: Option<PackId>, today: Date) {
    let edit = state.book.with_untracked(|book| {
        let pack = book.packs(goods).iter().find(|it| Some(it.id) == pack)?;
        Some((price_set(goods, pack.id, pack.price_now(), today), book.name(Key::from(goods))))
    });
    // A price that holds is not refused.
    let _ = edit.map(|(edit, name)| state.apply(&say!(market::price_checked, name = name), edit));
}
