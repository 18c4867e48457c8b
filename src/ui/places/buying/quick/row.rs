//! One row of the list of prices: what is bought, what it costs, and the field for its price.

use leptos::prelude::*;

use crate::app::route::Route;
use crate::book::{Book, Goods, Key, Pack, PackId, Settings};
use crate::buying::quotes::{Usable, cost_of, usable};
use crate::foundation::jump::Kind;
use crate::foundation::measure::Money;
use crate::say;
use crate::ui::fields::{self, Entry, Hangs, asks};
use crate::ui::live::{live, text};
use crate::ui::moved::{self, Moved};
use crate::ui::places::buying::change::price_set;
use crate::ui::places::buying::heard::{heard_on, still_so};
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words;
use crate::words::texts::{HOLE, around};

/// What was bought under this name, with the price of its pack.
#[component]
pub(super) fn PriceRow(
    /// What is bought.
    goods: Goods,
    /// Where Enter leads from its price, if not to the next row.
    next: Signal<Option<&'static str>>,
    /// The prices that it is one of.
    prices: Hangs,
) -> impl IntoView {
    let state = AppState::here();
    let key = Key::from(goods);
    // Most edits leave most rows as they are.
    let record = Memo::new(move |_| state.book.with(|book| book.record(key)));
    let settings = Memo::new(move |_| state.book.with(|book| book.settings().clone()));
    let in_force = move || (record.with(|_| ()), settings.with(|settings: &Settings| settings.currency));
    let name = text(move || {
        in_force();
        state.book.with_untracked(|book| book.name(key))
    });
    let pack = move || {
        in_force();
        state.book.with_untracked(|book| book.packs(goods).first().cloned())
    };
    let holds = text(move || pack().map(|pack| holds(state, pack)).unwrap_or_default());
    let cost = Memo::new(move |_| {
        in_force();
        state.book.with_untracked(|book| {
            let per = usable(book, goods);
            let cost = cost_of(book, goods, book.packs(goods).first()?, per).ok()?;
            Some((per, cost))
        })
    });
    let cost_before = Memo::new(move |_| {
        let (per, now) = cost.get()?;
        let was = state.last_change.with(|change| {
            let change = change.as_ref().filter(|change| change.touched.len() == 1 && change.touched.contains(&key))?;
            change.was.clone()?.packs_mut()?.first().cloned()
        })?;
        state.book.with_untracked(|book| cost_of(book, goods, &was, per)).ok().filter(|was| *was != now)
    });
    let cost_shown = move || match cost.get() {
        Some((per, now)) => cost_shown(state, per, now, cost_before.get()),
        None => ().into_any(),
    };
    let price = text(move || pack().map(|pack| state.plain_money(pack.price_now())).unwrap_or_default());
    let step = say!(market::price_of, name = name.get_untracked());
    let hangs = prices.within();
    let has_pack = Memo::new(move |_| pack().is_some());
    let field = live(move || {
        if has_pack.get() {
            price_field(goods, untrack(pack), price, step.clone(), hangs)
        } else {
            view! { <a class="button" href=Route::of_goods(goods).address()>{say!(goods::add_pack)}</a> }.into_any()
        }
    });
    view! {
        <li class="price-row" data-next=next data-to-the-top="">
            <div class="price-name">
                <a href=Route::of_goods(goods).address()>{name}</a>
                <span class="soft">{holds}</span>
                {hangs.while_read(move || view! { {live(cost_shown)} {heard_on(state, pack)} }.into_any())}
            </div>
            <div class="price-field">{field} {hangs.while_read(move || still_so(state, goods, pack))}</div>
            {hangs.answer(move || view! { <Moved by=key even_none=true answers=goods /> }.into_any())}
        </li>
    }
}

/// What a pack holds, who sells it, and how many are bought at a time.
fn holds(state: AppState, pack: Pack) -> String {
    let mut said = vec![state.amount(pack.contents)];
    if !pack.supplier.is_empty() {
        said.push(pack.supplier);
    }
    if !pack.at_a_time.is_one() {
        said.push(say!(market::packs_per_order, packs = state.number(pack.at_a_time)));
    }
    said.join(", ")
}

/// What a usable amount costs, beside what it cost before its price was typed.
fn cost_shown(state: AppState, per: Usable, now: Money, before: Option<Money>) -> AnyView {
    let per = words::quotes::per(per, &state.speaker.get());
    let now = state.fine_money(now);
    match before {
        Some(was) => {
            let said = say!(market::cost_per, cost = HOLE, per = per);
            let (before, after) = around(&said);
            view! {
                <span class="price-cost">
                    {before} {moved::was(state.fine_money(was))} " " <strong>{moved::now(now)}</strong> {after}
                </span>
            }
            .into_any()
        }
        None => view! { <span class="soft">{say!(market::cost_per, cost = now, per = per)}</span> }.into_any(),
    }
}

/// The field for the price of the pack that is bought now.
fn price_field(goods: Goods, pack: Option<Pack>, value: Signal<String>, step: String, hangs: Hangs) -> AnyView {
    let id = pack.map_or(PackId::FIRST, |pack| pack.id);
    let set = move |book: &Book, price| Some(price_set(goods, book.packs(goods).first()?.id, price, today()));
    let commit = fields::money(step.clone(), set);
    let asks = asks(Kind::Price, goods, format!("{id}/price"));
    view! { <Entry label=step label_hidden=true large=true asks hangs value commit /> }.into_any()
}
