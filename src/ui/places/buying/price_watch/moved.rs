//! What changed prices move, as it is shown.

use leptos::prelude::*;

use crate::app::route::Route;
use crate::book::{Goods, Key};
use crate::buying::price_watch::{Changed, Watched};
use crate::say;
use crate::ui::live::{text, when};
use crate::ui::moved::{first_of, moved_list};
use crate::ui::parts::{Named, figures as figures_of, wide_table};
use crate::ui::state::AppState;
use crate::words;

/// The goods whose price differs, the profit of a week, and the sizes that moved.
pub fn shown(state: AppState, watched: Memo<Option<Watched>>, heads: [&'static str; 3]) -> AnyView {
    let changed = move || watched.with(|it| it.as_ref().map(|it| it.changed.clone()).unwrap_or_default());
    let moves = move || watched.with(|it| it.as_ref().map(|it| it.moves.clone()).unwrap_or_default());
    let weekly = text(move || {
        let said = |it: &Watched| state.book.with(|book| words::watch::weekly(it, book));
        watched.with(|it| it.as_ref().map(said).unwrap_or_default())
    });
    let week = move || watched.with(|it| it.as_ref().map(|it| week(state, it)).unwrap_or_default());
    let any = move || watched.with(|it| it.as_ref().is_some_and(|it| !it.changed.is_empty()));
    when(any, move || {
        let prices = first_of(
            move || changed().len(),
            move |few| {
                let rows = changed().iter().take(few).map(|it| price_row(state, it)).collect_view().into_any();
                wide_table(say!(market::changed_prices), "table", &heads, rows)
            },
        );
        view! {
            <section class="section">
                <h2>{say!(market::changed_prices)}</h2>
                {prices}
            </section>
            <section class="section">
                <h2>{say!(common::profit_per_week)}</h2>
                <dl class="figures">{figures_of(week)}</dl>
                <p class="about">{weekly}</p>
            </section>
            <section class="section">
                <h2>{say!(market::drinks_affected)}</h2>
                {moved_list(state, moves)}
            </section>
        }
        .into_any()
    })
}

/// The profit of a usual week on both sides. Returns an empty list if nobody knows what it sells.
fn week(state: AppState, watched: &Watched) -> Vec<Named> {
    let (before, after) = (&watched.before, &watched.after);
    let Ok(change) = after.contribution.minus(before.contribution) else { return Vec::new() };
    if before.units.is_zero() {
        return Vec::new();
    }
    let figures = [
        (say!(market::before), before.contribution),
        (say!(market::after), after.contribution),
        (say!(market::change), change),
    ];
    figures.map(|(name, money)| (name.to_string(), state.money(money), None)).into()
}

/// A link to the screen of goods.
pub fn link(state: AppState, goods: Goods) -> AnyView {
    let name = state.book.with(|book| book.name(Key::from(goods)));
    view! { <a href=Route::of_goods(goods).address()>{name}</a> }.into_any()
}

fn price_row(state: AppState, changed: &Changed) -> AnyView {
    let percent = words::watch::change(changed, &state.speaker.get());
    view! {
        <tr>
            <th scope="row">{link(state, changed.goods)}</th>
            <td>{state.money(changed.before)}</td>
            <td>{state.money(changed.after)}</td>
            <td>{percent}</td>
        </tr>
    }
    .into_any()
}
