//! What local prices show: the curve through them, and our sizes beside it.

use leptos::prelude::*;

use crate::app::route::Route;
use crate::book::{DrinkKind, Key};
use crate::foundation::measure::{Date, Exact, Volume};
use crate::say;
use crate::sizes::market::{Market, Ours, market};
use crate::ui::chart::{Axis, Chart, Look, Series};
use crate::ui::live::{live, text, trouble, when};
use crate::ui::parts::Fold;
use crate::ui::state::AppState;
use crate::words;

/// Sizes that the curve is drawn by.
const DRAWN: u32 = 24;

/// The prices seen and our own, drawn, in words, and as a table.
#[component]
pub fn MarketShown(
    /// The kind of drink. It is `None` for all.
    shown: RwSignal<Option<DrinkKind>>,
    /// The day that it is.
    today: Date,
) -> impl IntoView {
    let state = AppState::here();
    let found = Memo::new(move |_| state.book.with(|book| market(book, shown.get(), today)));
    let overflow = move || found.with(|found| found.as_ref().err().copied()).map(words::overflow);
    let of = move |show: fn(&Market, AppState) -> String| {
        text(move || found.with(|found| found.as_ref().map(|market| show(market, state)).unwrap_or_default()))
    };
    let said = of(|market, state| state.book.with(|book| words::market(market, book, &state.speaker.get())));
    let how = of(|market, state| {
        let said = |curve| state.book.with(|book| words::curve(curve, book, &state.speaker.get()));
        market.curve.as_ref().map(said).unwrap_or_default()
    });
    let old = of(|market, _| match market.seen.iter().filter(|seen| seen.old).count() {
        0 => String::new(),
        count => say!(decide::prices_over_a_year_old, prices = count),
    });
    let any = move || found.with(|found| found.as_ref().is_ok_and(|market| !market.seen.is_empty()));
    let ours = move || found.with(|found| found.as_ref().is_ok_and(|market| !market.ours.is_empty()));
    let drawing = move || {
        found.with(|found| match found {
            Ok(market) => drawn(market, state),
            Err(_) => ().into_any(),
        })
    };
    let priced = move || {
        let head = text(move || say!(decide::per_unit, unit = state.units().price_volume_name()));
        let rows = live(move || {
            found.with(|found| match found {
                Ok(market) => market.ours.iter().map(|ours| our_row(ours, state)).collect_view().into_any(),
                Err(_) => ().into_any(),
            })
        });
        let count = text(move || {
            let count = found.with(|found| found.as_ref().map_or(0, |market| market.ours.len()));
            say!(sales::count_sizes, sizes = count)
        });
        view! {
            <Fold name=say!(decide::your_sizes) figure=count>
            <div class="wide" tabindex="0" role="region" aria-label=say!(decide::your_sizes_among_prices)>
                <table class="table">
                    <thead>
                        <tr>
                            <td></td>
                            <th scope="col">{say!(common::size)}</th>
                            <th scope="col">{say!(decide::your_price)}</th>
                            <th scope="col">{head}</th>
                            <th scope="col">{say!(decide::local_curve)}</th>
                            <th scope="col">{say!(decide::your_position)}</th>
                        </tr>
                    </thead>
                    <tbody>{rows}</tbody>
                </table>
            </div>
            </Fold>
        }
        .into_any()
    };
    let unpriced = || view! { <p class="hollow">{say!(decide::none_of_yours_priced)}</p> }.into_any();
    view! {
        {trouble(overflow)}
        <p>{said}</p>
        {when(any, move || {
            view! {
                <p class="hollow">{old}</p>
                {live(drawing)}
                {when(ours, priced)}
                {when(move || !ours(), unpriced)}
                <Fold name=say!(common::show_the_math) figure=Signal::stored(String::new())>
                    <p class="about">{how}</p>
                </Fold>
                <p class="hollow">{words::market_caution()}</p>
            }
            .into_any()
        })}
    }
}

fn our_row(ours: &Ours, state: AppState) -> AnyView {
    let name = state.book.with(|book| book.name(Key::Offer(ours.offer)));
    let against = ours.against;
    let on = against.and_then(|against| against.on_curve());
    let curve = on.map_or(say!(common::none).to_string(), |on| state.money(on.price));
    let said = against.map(|against| words::against_curve(&against, &state.speaker.get()));
    view! {
        <tr>
            <th scope="row">
                <a href=Route::Offer(ours.offer).address()>{name}</a>
            </th>
            <td>{state.volume(ours.size)}</td>
            <td>{state.money(ours.price)}</td>
            <td>{state.fine_money(ours.per_volume)}</td>
            <td>{curve}</td>
            <td>{said.unwrap_or_else(|| say!(decide::no_curve_yet).to_string())}</td>
        </tr>
    }
    .into_any()
}

/// The prices seen as hollow points, the curve through them, and our sizes as full ones.
fn drawn(market: &Market, state: AppState) -> AnyView {
    let unit = state.units().drink_unit();
    let across = |size: Volume| size.millilitres().over(unit.size()).unwrap_or_default();
    let seen = market.seen.iter().map(|seen| (across(seen.size), seen.price.major())).collect();
    let mut series = vec![Series { name: say!(decide::local_prices).into(), look: Look::Points, points: seen }];
    if let Ok(curve) = &market.curve {
        // Where one of ours stands, the curve is read as exactly as its table says.
        let at_ours = market.ours.iter().filter_map(|ours| Some((ours.size, ours.against?.on_curve()?.price)));
        let at_ours = at_ours.filter(|(size, _)| curve.smallest <= *size && *size <= curve.largest);
        let mut points: Vec<(Exact, Exact)> =
            curve.drawn(DRAWN).into_iter().chain(at_ours).map(|(size, price)| (across(size), price.major())).collect();
        points.sort();
        points.dedup_by_key(|(across, _)| *across);
        series.push(Series { name: say!(decide::local_curve).into(), look: Look::Guide, points });
    }
    let ours: Vec<(Exact, Exact)> = market.ours.iter().map(|ours| (across(ours.size), ours.price.major())).collect();
    if !ours.is_empty() {
        series.push(Series { name: say!(decide::your_sizes).into(), look: Look::Squares, points: ours });
    }
    let size = Axis {
        name: say!(decide::size_in_unit, unit = state.speaker.get().size_unit()),
        from_zero: false,
        mark: Box::new(move |number| state.number(number)),
    };
    let price = Axis {
        name: say!(common::price).into(),
        from_zero: true,
        mark: Box::new(move |number| state.money(crate::foundation::measure::Money::from_major(number))),
    };
    Chart { across: &size, up: &price, series: &series, marked: &[], figure: None }.with_table()
}
