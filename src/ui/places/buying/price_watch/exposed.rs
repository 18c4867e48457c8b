//! The biggest cost drivers: each of the goods as a share of the week's cost.

use leptos::prelude::*;

use super::moved::link;
use crate::app::route::Route;
use crate::book::{Book, Key};
use crate::buying::price_watch::{Exposed as OfGoods, Exposure, exposure};
use crate::foundation::measure::Exact;
use crate::say;
use crate::ui::chart::{Bar, bars};
use crate::ui::live::{live, text, trouble, when};
use crate::ui::parts::{Fold, answer_figures, is_wide, wide_table};
use crate::ui::state::AppState;
use crate::words::{self, Speaker};

/// How many are shown one by one.
const FIRST: usize = 12;

/// The biggest cost drivers.
#[component]
pub fn Exposed() -> impl IntoView {
    let state = AppState::here();
    let found = Memo::new(move |_| state.book.with(|book| state.ledger.with(|ledger| exposure(book, ledger))));
    let said = move |say: fn(&Exposure, &Book, &Speaker) -> String| {
        text(move || {
            let say = |it: &Exposure| state.book.with(|book| say(it, book, &state.speaker.get()));
            found.with(|found| found.as_ref().map(say).unwrap_or_default())
        })
    };
    let any = move || found.with(|found| found.as_ref().is_ok_and(|found| found.cost.is_positive()));
    let weekly = when(
        move || !any(),
        || {
            view! {
                <p class="actions">
                    <a class="button" href=Route::Sales.address()>
                        {say!(sales::enter_weekly_sales)}
                    </a>
                </p>
            }
            .into_any()
        },
    );
    let drawn =
        move || live(move || found.with(|found| found.as_ref().map_or_else(|_| ().into_any(), |it| drawn(state, it))));
    let answers = move || {
        found.with(|found| match found.as_ref().ok().and_then(|found| Some((found.cost, found.goods.first()?))) {
            Some((cost, first)) => vec![
                (say!(market::cost_per_week).to_string(), state.money(cost)),
                (state.book.with(|book| book.name(Key::from(first.goods))), state.percent(first.share)),
                (say!(market::ten_percent_up).to_string(), less(state, first.less.major())),
            ],
            None => Vec::new(),
        })
    };
    view! {
        <section class="section">
            <h2>{say!(market::cost_drivers)}</h2>
            {when(any, move || answer_figures(answers))}
            <p class="hollow">{said(words::watch::exposure)}</p>
            {trouble(move || found.with(|found| found.as_ref().err().map(|why| words::overflow(*why))))}
            {weekly}
            {when(any, drawn)}
            {when(any, move || {
                view! {
                    <details class="more">
                        <summary>{say!(common::show_the_math)}</summary>
                        <p class="about">{said(words::watch::exposure_working)}</p>
                    </details>
                }
                .into_any()
            })}
            <p class="hollow">{said(|found, book, _| words::watch::idle(&found.idle, book))}</p>
        </section>
    }
}

/// The goods to show one by one, and all others in one line.
fn drawn(state: AppState, found: &Exposure) -> AnyView {
    let name = |goods| state.book.with(|book| book.name(Key::from(goods)));
    let (first, rest) = found.goods.split_at(FIRST.min(found.goods.len()));
    let others = words::watch::others(rest);
    let bar = |it: &OfGoods| Bar { name: name(it.goods), figure: state.percent(it.share), length: it.cost.major() };
    let drawing: Vec<Bar> = first.iter().map(bar).collect();
    let row = |head: AnyView, it: &OfGoods| {
        view! {
            <tr>
                <th scope="row">{head}</th>
                <td>{state.money(it.cost)}</td>
                <td>{state.percent(it.share)}</td>
                <td>{less(state, it.less.major())}</td>
            </tr>
        }
        .into_any()
    };
    let rows: Vec<AnyView> = first.iter().map(|it| row(link(state, it.goods), it)).collect();
    let last = others.map(|(name, it)| row(name.into_any(), &it));
    let heads = &[say!(market::cost_per_week), say!(market::share_of_cost), say!(market::ten_percent_up)];
    let table = wide_table(say!(market::cost_drivers), "table", heads, view! { {rows} {last} }.into_any());
    let count = Signal::stored(found.goods.len().to_string());
    view! {
        {bars(&drawing)}
        <Fold name=say!(market::driver_figures) figure=count open=is_wide()>{table}</Fold>
    }
    .into_any()
}

fn less(state: AppState, less: Exact) -> String {
    state.money(crate::foundation::measure::Money::from_major(less.negated()))
}
