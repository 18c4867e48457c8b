//! One row of the list of prices: a pack of what is bought, and the field for its price.

use leptos::prelude::*;

use super::names::{Row, key_of, pack_of};
use crate::app::route::Route;
use crate::book::{Book, Goods, Pack, PackId, Settings};
use crate::buying::price_watch::changed_on;
use crate::buying::quotes::{Usable, cost_of, usable};
use crate::foundation::jump::Kind;
use crate::foundation::measure::Money;
use crate::say;
use crate::ui::fields::{self, Entry, Hangs, asks};
use crate::ui::live::{live, text, when};
use crate::ui::moved::{self, Moved};
use crate::ui::places::buying::change::price_set;
use crate::ui::places::buying::heard::{heard_on, still_so};
use crate::ui::places::buying::todays_changes::undated;
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words;
use crate::words::texts::{HOLE, around};

/// A pack of what is bought, with the field for its price.
#[component]
pub(super) fn PriceRow(
    /// What is bought, in which pack.
    row: Row,
    /// Where Enter leads from its price, if not to the next row.
    next: Signal<Option<&'static str>>,
    /// Whether it says who sells it: nothing around it does.
    with_supplier: bool,
    /// The prices that it is one of.
    prices: Hangs,
) -> impl IntoView {
    let state = AppState::here();
    let (goods, id) = row;
    let key = key_of(row);
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
        state.book.with_untracked(|book| pack_of(book, row))
    };
    let is_current = Memo::new(move |_| {
        in_force();
        state.book.with_untracked(|book| book.packs(goods).first().map(|pack| pack.id)) == id
    });
    let holds = text(move || pack().map(|pack| holds(state, pack, with_supplier)).unwrap_or_default());
    let price = text(move || pack().map(|pack| state.plain_money(pack.price_now())).unwrap_or_default());
    let hangs = prices.within();
    let step = say!(market::price_of, name = untrack(|| named(state, row, is_current.get())));
    let field = match id {
        Some(id) => price_field(goods, id, price, step, hangs),
        None => {
            view! { <a class="button" href=Route::of_goods(goods).address()>{say!(goods::add_pack)}</a> }.into_any()
        }
    };
    let answer = move || {
        view! { {live(move || cost_moved(state, row))} <Moved by=key even_none=true answers=goods /> }.into_any()
    };
    view! {
        <li class="price-row" data-next=next data-to-the-top="">
            <a class="price-name" href=Route::of_goods(goods).address()>
                <strong>{name}</strong>
                <span class="soft">{holds} {heard_on(state, pack, words::quotes::short_age)}</span>
            </a>
            {field}
            {hangs.while_read(move || still_so(state, goods, pack))}
            {hangs.answer(move || when(move || concerns(state, row, is_current.get()), answer))}
        </li>
    }
}

/// What the field of a row is called: another pack than the one bought now is told from it.
fn named(state: AppState, row: Row, is_current: bool) -> String {
    state.book.with(|book| {
        let name = book.name(key_of(row));
        let Some(pack) = pack_of(book, row).filter(|_| !is_current) else { return name };
        let size = state.amount(pack.contents);
        match pack.supplier {
            nobody if nobody.is_empty() => say!(market::item_in_pack, name = name, pack = size),
            supplier => say!(market::item_in_pack_from, name = name, pack = size, supplier = supplier),
        }
    })
}

/// Whether the last change was of this pack; one of the goods as a whole stands at the current pack.
fn concerns(state: AppState, row: Row, is_current: bool) -> bool {
    let key = key_of(row);
    let last = state.last_change.with(|change| {
        let change = change.as_ref().filter(|change| change.touched.len() == 1 && change.touched.contains(&key))?;
        Some(change.was.clone().and_then(|mut was| was.packs_mut().cloned()))
    });
    let Some(was) = last else { return false };
    let Some(was) = was else { return is_current };
    state.book.with(|book| {
        let differs = |pack: &&Pack| was.iter().find(|it| it.id == pack.id) != Some(*pack);
        let mut changed = book.packs(row.0).iter().filter(differs).peekable();
        if changed.peek().is_none() { is_current } else { changed.any(|pack| Some(pack.id) == row.1) }
    })
}

/// What a pack holds, who sells it where that is asked, and how many are bought at a time.
fn holds(state: AppState, pack: Pack, with_supplier: bool) -> String {
    let mut said = vec![state.amount(pack.contents)];
    if with_supplier && !pack.supplier.is_empty() {
        said.push(pack.supplier);
    }
    if !pack.at_a_time.is_one() {
        said.push(say!(market::packs_per_order, packs = state.number(pack.at_a_time)));
    }
    said.push(String::new());
    said.join(", ")
}

/// What a usable amount costs, beside what it cost before today's price was typed: a slip in between counts no
/// more. Draws nothing while none was typed.
fn cost_moved(state: AppState, row: Row) -> AnyView {
    let (goods, key) = (row.0, key_of(row));
    let was = state.last_change.with(|change| {
        let change = change.as_ref().filter(|change| change.touched.len() == 1 && change.touched.contains(&key))?;
        change.was.clone()?.packs_mut()?.first().cloned()
    });
    let costs = state.book.with(|book| {
        let (per, pack) = (usable(book, goods), pack_of(book, row)?);
        let was = before_today(state, book, goods, &pack).or(was)?;
        let (was, now) = (cost_of(book, goods, &was, per).ok()?, cost_of(book, goods, &pack, per).ok()?);
        (was != now).then_some((per, was, now))
    });
    costs.map(|(per, was, now)| cost_shown(state, per, was, now)).into_any()
}

/// A pack at its price before today, where today's changes list it. A pack with volume prices is not told here.
fn before_today(state: AppState, book: &Book, goods: Goods, pack: &Pack) -> Option<Pack> {
    let changes = changed_on(book, today(), &undated(state)).ok()?;
    let change = changes.iter().find(|it| it.changed.goods == goods && it.pack == pack.id)?;
    pack.tiers.is_empty().then(|| Pack { price: change.changed.before, ..pack.clone() })
}

fn cost_shown(state: AppState, per: Usable, was: Money, now: Money) -> AnyView {
    let per = words::quotes::per(per, &state.speaker.get());
    let said = say!(market::cost_per, cost = HOLE, per = per);
    let (before, after) = around(&said);
    view! {
        <p class="price-cost">
            {before} {moved::was(state.fine_money(was))} " " <strong>{moved::now(state.fine_money(now))}</strong> {after}
        </p>
    }
    .into_any()
}

/// The field for the price of a pack.
fn price_field(goods: Goods, id: PackId, value: Signal<String>, step: String, hangs: Hangs) -> AnyView {
    let set = move |book: &Book, price| {
        let pack = book.packs(goods).iter().find(|pack| pack.id == id)?;
        Some(price_set(goods, pack.id, price, today()))
    };
    let commit = fields::money(step.clone(), fields::Example::CasePrice, set);
    let asks = asks(Kind::Price, goods, format!("{id}/price"));
    view! { <Entry label=step label_hidden=true asks hangs value commit /> }.into_any()
}
