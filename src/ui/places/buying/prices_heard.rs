//! The price history of goods, pack by pack: a small chart, a sentence, and the table to take out of.

use std::sync::Arc;

use leptos::prelude::*;

use super::change::pack_changed;
use crate::book::{Book, Goods, Pack, PackId, Quoted};
use crate::buying::quotes::{History, history};
use crate::foundation::measure::{Date, Exact, Money};
use crate::say;
use crate::ui::chart::{Axis, Look, Series, chart};
use crate::ui::fields::{Choose, Day};
use crate::ui::live::{live, parts, press, text, trouble, when};
use crate::ui::parts::{Fold, TakeOut};
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words;

/// The price history of all packs of goods. Draws nothing if no day is known.
pub fn prices_heard(state: AppState, goods: Goods) -> AnyView {
    let known = move |book: &Book| -> Vec<(PackId, usize)> {
        let prices = |pack: &Pack| history(pack).map(|history| (pack.id, history.heard.len()));
        book.packs(goods).iter().filter_map(prices).collect()
    };
    let known = Memo::new(move |_| state.book.with(known));
    let figure = text(move || {
        let prices: usize = known.with(|known| known.iter().map(|(_, prices)| *prices).sum());
        say!(goods::prices_known, prices = prices)
    });
    let ids = move || known.with(|known| known.iter().map(|(id, _)| id.number()).collect());
    when(
        move || known.with(|known| !known.is_empty()),
        move || {
            view! {
                <Fold name=say!(market::price_history) figure=figure>
                    {parts(ids, move |id| of_pack(state, goods, PackId::from_random(id)))}
                </Fold>
            }
            .into_any()
        },
    )
}

/// The price history of a pack.
fn of_pack(state: AppState, goods: Goods, id: PackId) -> AnyView {
    let pack = move || state.book.with(|book| book.packs(goods).iter().find(|pack| pack.id == id).cloned());
    let several = move || state.book.with(|book| book.packs(goods).len() > 1);
    let name = text(move || pack().map(|pack| words::quotes::pack(&pack, &state.speaker.get())).unwrap_or_default());
    let known = move || pack().and_then(|pack| history(&pack)).is_some();
    when(known, move || {
        let mending = RwSignal::new(None::<Quoted>);
        let shown = live(move || {
            let pack = pack();
            let known = pack.as_ref().and_then(history);
            known.zip(pack).map(|(history, pack)| shown(state, goods, pack.id, &history, mending)).into_any()
        });
        let form = live(move || {
            let pack = untrack(pack).map(|pack| pack.id);
            mending.get().zip(pack).map(|(quoted, id)| view! { <Mending goods id quoted mending /> }).into_any()
        });
        view! {
            {when(several, move || view! { <h3>{name}</h3> }.into_any())}
            {shown}
            {form}
        }
        .into_any()
    })
}

fn shown(state: AppState, goods: Goods, id: PackId, history: &History, mending: RwSignal<Option<Quoted>>) -> AnyView {
    let said = words::quotes::history(history, &state.speaker.get());
    let several = history.heard.len() > 1;
    let last = history.heard.len().saturating_sub(1);
    let row = |(place, quoted): (usize, &Quoted)| {
        let day = words::day(quoted.day);
        let price = say!(market::price_on, day = &day);
        let change = say!(market::change_date_of, price = &price);
        let name = Signal::stored(price);
        let quoted = *quoted;
        let take_out =
            (place < last).then(|| view! { <TakeOut name on_click=move || take_out(state, goods, id, place) /> });
        view! {
            <tr>
                <th scope="row">{day}</th>
                <td>{state.money(quoted.price)}</td>
                <td class="heard-mend">
                    <button class="quiet" aria-label=change on:click=press(move || mending.set(Some(quoted)))>
                        {say!(market::change_date)}
                    </button>
                    {take_out}
                </td>
            </tr>
        }
    };
    // The latest on top: it is what one looks for.
    let rows = history.heard.iter().enumerate().rev().map(row).collect_view();
    view! {
        <div class="heard">
            <p>{said}</p>
            {several.then(|| drawn(state, history))}
            <table class="table">
                <thead>
                    <tr>
                        <th scope="col">{say!(market::last_quoted)}</th>
                        <th scope="col">{say!(goods::case_price)}</th>
                        <td></td>
                    </tr>
                </thead>
                <tbody>{rows}</tbody>
            </table>
            <p class="about" hidden=!several>
                {say!(market::history_how)}
            </p>
        </div>
    }
    .into_any()
}

/// The day of one price, to be put right.
#[component]
fn Mending(goods: Goods, id: PackId, quoted: Quoted, mending: RwSignal<Option<Quoted>>) -> impl IntoView {
    let state = AppState::here();
    let on = RwSignal::new(quoted.day);
    let refused = RwSignal::new(None::<String>);
    let choose: Choose = Arc::new(move |chosen| {
        on.set(Date::from_text(chosen).ok_or(say!(market::choose_quote_date))?);
        refused.set(None);
        Ok(())
    });
    let set = move || {
        let done = state.book.with_untracked(|book| {
            let pack = book.packs(goods).iter().find(|pack| pack.id == id)?;
            let redated = pack.redated(quoted.day, on.get_untracked()).map_err(words::quotes::day_error);
            Some(redated.map(|redated| pack_changed(book, goods, id, |pack| *pack = redated)))
        });
        let done = done.unwrap_or(Ok(None)).and_then(|edit| match edit {
            Some(edit) => state.apply(say!(market::change_quote_date), edit),
            None => Ok(()),
        });
        match done {
            Ok(()) => mending.set(None),
            Err(sentence) => refused.set(Some(sentence)),
        }
    };
    view! {
        <div class="heard-day">
            <Day
                label=say!(market::quoted_on)
                value=text(move || on.get().to_string())
                choose
                past=true
                note=say!(market::quoted_price, price = state.money(quoted.price))
            />
            {trouble(move || refused.get())}
            <p class="actions">
                <button class="main" on:click=press(set)>
                    {say!(market::set_date)}
                </button>
                <button class="quiet" on:click=press(move || mending.set(None))>
                    {say!(first::cancel)}
                </button>
            </p>
        </div>
    }
}

/// Each price from the day it was quoted until the next one was.
fn drawn(state: AppState, history: &History) -> AnyView {
    let Some(first) = history.heard.first().map(|quoted| quoted.day) else { return ().into_any() };
    let steps = history.steps(today());
    let last = steps.last().map_or(first, |quoted| quoted.day);
    let point = |quoted: &Quoted| {
        let days = u32::try_from(quoted.day.days_since(first)).unwrap_or_default();
        (Exact::from(days), quoted.price.major())
    };
    let line = steps.iter().map(point).collect();
    let heard = history.heard.iter().map(point).collect();
    let series = [
        Series { name: String::new(), look: Look::Guide, points: line },
        Series { name: say!(market::quoted_prices).into(), look: Look::Squares, points: heard },
    ];
    let days = Axis {
        name: words::quotes::days_axis(first, last),
        from_zero: true,
        mark: Box::new(move |number| day_at(first, number).map(words::short_day).unwrap_or_default()),
    };
    let price = Axis {
        name: say!(goods::case_price).into(),
        from_zero: false,
        mark: Box::new(move |number| state.money(Money::from_major(number))),
    };
    chart(&days, &price, &series)
}

/// The day that lies so many days on; none between two days.
fn day_at(first: Date, days: Exact) -> Option<Date> {
    let whole = (days.floor() == days).then(|| days.in_parts(1)).flatten()?;
    Some(first.plus_days(i32::try_from(whole).ok()?))
}

fn take_out(state: AppState, goods: Goods, id: PackId, place: usize) {
    let edit = state.book.with_untracked(|book| {
        pack_changed(book, goods, id, |pack| {
            if place < pack.earlier.len() {
                pack.earlier.remove(place);
            }
        })
    });
    // A history without one of its days is in order still.
    let _ = edit.map(|edit| state.apply(say!(market::remove_past_price), edit));
}
