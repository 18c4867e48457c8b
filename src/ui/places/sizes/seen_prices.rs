//! Local prices.

use leptos::prelude::*;

use super::market::MarketShown;
use super::seen_entry::SeenEntry;
use super::seen_row::seen_row;
use crate::app::route::Route;
use crate::book::{Book, DrinkKind, Key, SeenPriceId};
use crate::foundation::measure::Date;
use crate::say;
use crate::sizes::market::market;
use crate::ui::live::{flag, press, rows, text, when};
use crate::ui::parts::{Back, Fold, Section, is_wide};
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words;

/// Local prices.
#[component]
pub fn SeenPrices() -> impl IntoView {
    let state = AppState::here();
    let today = today();
    let kind = RwSignal::new(state.book.with_untracked(last_kind));
    let shown = RwSignal::new(Some(kind.get_untracked()));
    let open = RwSignal::new(None::<SeenPriceId>);
    let count = move |wanted: Option<DrinkKind>| {
        let fits = |of: DrinkKind| wanted.is_none_or(|wanted| wanted == of);
        state.book.with(|book| book.seen_prices().filter(|seen| fits(seen.kind)).count())
    };
    let chip = move |this: Option<DrinkKind>| {
        let pressed = text(move || (shown.get() == this).to_string());
        let needless = flag(move || this.is_some() && shown.get() != this && count(this) == 0);
        let count = text(move || count(this).to_string());
        view! {
            <button class="chip" aria-pressed=pressed hidden=needless on:click=press(move || shown.set(this))>
                {this.map_or(say!(decide::all_types), words::drink_kind)}
                " "
                <span class="chip-count">{count}</span>
            </button>
        }
    };
    let kinds = DrinkKind::ALL.iter().copied().map(Some);
    let chips = std::iter::once(None).chain(kinds).map(chip).collect_view();
    let list = move |kind: DrinkKind| {
        let keys = Memo::new(move |before: Option<&Vec<Key>>| {
            let now = if shown.get().is_none_or(|shown| shown == kind) {
                state.book.with(|book| listed(book, kind, today))
            } else {
                Vec::new()
            };
            // Rows stay where they are while one is open: a field that moves would lose its caret.
            let same = |before: &&Vec<Key>| before.len() == now.len() && now.iter().all(|key| before.contains(key));
            before.filter(same).filter(|_| open.with(Option::is_some)).cloned().unwrap_or(now)
        });
        let row = move |key| match key {
            Key::SeenPrice(id) => seen_row(state, id, open, today),
            _ => ().into_any(),
        };
        let section = move || {
            view! { <Section heading=words::drink_kind(kind)><ul class="rows">{rows(keys, row)}</ul></Section> }
                .into_any()
        };
        when(move || !keys.with(Vec::is_empty), section)
    };
    let lists = DrinkKind::ALL.iter().copied().map(list).collect_view();
    let none = flag(move || count(None) == 0);
    let newest = text(move || {
        let newest = state.book.with(|book| book.seen_prices().map(|seen| seen.day).max());
        newest.map(|day| say!(sales::newest_seen, day = words::day(day))).unwrap_or_default()
    });
    let at_once = Signal::stored(is_wide() || none.get_untracked());
    view! {
        <Back to=Route::Sizes name=say!(first::sizes) />
        <h1>{say!(decide::local_prices)}</h1>
        <p class="about">{say!(decide::local_prices_explained)}</p>
        <div class="panes">
            <div class="pane">
                <Fold name=say!(decide::add_local_price) figure=newest open=at_once>
                    <SeenEntry kind shown today />
                </Fold>
            </div>
            <div class="pane">
                <section class="section">
                    <h2>{say!(decide::where_you_stand)}</h2>
                    <div class="chips" hidden=none>
                        {chips}
                    </div>
                    <MarketShown shown today />
                </section>
                {lists}
            </div>
        </div>
    }
}

/// The kind of the price seen last; blended where there is none.
fn last_kind(book: &Book) -> DrinkKind {
    book.seen_prices().max_by_key(|seen| seen.day).map_or(DrinkKind::Blended, |seen| seen.kind)
}

/// The prices seen of a kind, smallest size first.
fn listed(book: &Book, kind: DrinkKind, today: Date) -> Vec<Key> {
    let seen = market(book, Some(kind), today).map(|market| market.seen).unwrap_or_default();
    seen.into_iter().map(|seen| Key::SeenPrice(seen.id)).collect()
}
