//! What changed prices move, as it is shown.

use leptos::prelude::*;

use crate::book::{Goods, Key};
use crate::ledger::{Move, Standing};
use crate::price_watch::{Changed, Watched};
use crate::ui::live::{live, press, text, when};
use crate::ui::moved::figures;
use crate::ui::parts::{Mark, Named, figures as figures_of, wide_table};
use crate::ui::route::Route;
use crate::ui::state::AppState;
use crate::words;

/// How many are listed before the rest is asked for.
const FIRST: usize = 12;

/// The goods whose price differs, what a week leaves, and the sizes that moved.
pub fn shown(state: AppState, watched: Memo<Option<Watched>>, heads: &'static [&'static str]) -> AnyView {
    let changed = move || watched.with(|it| it.as_ref().map(|it| it.changed.clone()).unwrap_or_default());
    let moves = move || watched.with(|it| it.as_ref().map(|it| it.moves.clone()).unwrap_or_default());
    let weekly = text(move || {
        let said = |it: &Watched| state.book.with(|book| words::watch::weekly(it, book));
        watched.with(|it| it.as_ref().map(said).unwrap_or_default())
    });
    let week = move || watched.with(|it| it.as_ref().map(|it| week(state, it)).unwrap_or_default());
    let any = move || watched.with(|it| it.as_ref().is_some_and(|it| !it.changed.is_empty()));
    when(any, move || {
        let prices = some_of(
            move || changed().len(),
            move |few| {
                let rows = changed().iter().take(few).map(|it| price_row(state, it)).collect_view().into_any();
                wide_table("Prices that differ", "table", heads, rows)
            },
        );
        view! {
            <section class="section">
                <h2>"Prices"</h2>
                {prices}
            </section>
            <section class="section">
                <h2>"A usual week"</h2>
                <dl class="figures">{figures_of(week)}</dl>
                <p class="about">{weekly}</p>
            </section>
            <section class="section">
                <h2>"Drinks and sizes"</h2>
                {list(state, moves)}
            </section>
        }
        .into_any()
    })
}

/// What a usual week leaves on both sides; nothing where nobody knows what it sells.
fn week(state: AppState, watched: &Watched) -> Vec<Named> {
    let (before, after) = (&watched.before, &watched.after);
    let Ok(change) = after.contribution.minus(before.contribution) else { return Vec::new() };
    if before.units.is_zero() {
        return Vec::new();
    }
    let figures = [("Left before", before.contribution), ("Left after", after.contribution), ("Change", change)];
    figures.map(|(name, money)| (name.to_string(), state.money(money), None)).into()
}

/// The sizes that moved, those that fell under target first.
pub fn list(state: AppState, moves: impl Fn() -> Vec<Move> + Copy + Send + Sync + 'static) -> AnyView {
    some_of(
        move || moves().len(),
        move |few| {
            let rows = moves().iter().take(few).map(|moved| row(state, moved)).collect_view();
            view! { <ol class="moved-list">{rows}</ol> }.into_any()
        },
    )
}

/// The first of many, and a way to the rest.
fn some_of(
    count: impl Fn() -> usize + Send + Sync + 'static,
    draw: impl Fn(usize) -> AnyView + Send + Sync + 'static,
) -> AnyView {
    let all = RwSignal::new(false);
    let rest = Memo::new(move |_| count().saturating_sub(FIRST));
    let more = when(
        move || rest.get() > 0 && !all.get(),
        move || {
            let words = text(move || format!("Show {} more", rest.get()));
            view! {
                <button class="quiet" on:click=press(move || all.set(true))>
                    {words}
                </button>
            }
            .into_any()
        },
    );
    let few = live(move || draw(if all.get() { usize::MAX } else { FIRST }));
    view! { {few} {more} }.into_any()
}

/// The screen of goods.
pub fn route(goods: Goods) -> Route {
    match goods {
        Goods::Ingredient(id) => Route::Ingredient(id),
        Goods::Packaging(id) => Route::Packaging(id),
    }
}

/// A link to the screen of goods.
pub fn link(state: AppState, goods: Goods) -> AnyView {
    let name = state.book.with(|book| book.name(Key::from(goods)));
    view! { <a href=route(goods).address()>{name}</a> }.into_any()
}

fn price_row(state: AppState, changed: &Changed) -> AnyView {
    let percent = state.style.with(|style| words::watch::change(changed, style));
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

fn row(state: AppState, moved: &Move) -> AnyView {
    let name = state.book.with(|book| book.name(Key::Offer(moved.offer)));
    let standing = moved.after.map_or(Standing::WithoutPrice, |side| side.standing);
    let was = match (moved.fell(), moved.before.map(|side| side.standing)) {
        (true, Some(before)) => format!("before: {}", words::standing(before)),
        _ if moved.rose() => format!("before: {}", words::standing(Standing::UnderTarget)),
        _ => String::new(),
    };
    view! {
        <li class="moved-row">
            <a href=Route::Offer(moved.offer).address()>{name}</a>
            <p class="watch-standing">
                <Mark standing=Signal::stored(standing) />
                <span>{was}</span>
            </p>
            <dl class="figures">{figures(state, moved)}</dl>
        </li>
    }
    .into_any()
}
