//! What changed prices move, as it is shown: the answer first, what it is made of in folds.

use leptos::prelude::*;

use crate::app::route::Route;
use crate::book::{Goods, Key};
use crate::buying::price_watch::{Changed, Watched};
use crate::say;
use crate::ui::live::{text, when};
use crate::ui::moved::{first_of, moved_list};
use crate::ui::parts::{Fold, Named, answer_figures, figures as figures_of, is_wide, wide_table};
use crate::ui::state::AppState;
use crate::words;

/// How many prices differ, sizes move, and what a week earns more or less; each opens to its list.
pub fn shown(state: AppState, watched: Memo<Option<Watched>>, heads: [&'static str; 3]) -> AnyView {
    let changed = move || watched.with(|it| it.as_ref().map(|it| it.changed.clone()).unwrap_or_default());
    let moves = move || watched.with(|it| it.as_ref().map(|it| it.moves.clone()).unwrap_or_default());
    let weekly = text(move || {
        let said = |it: &Watched| state.book.with(|book| words::watch::weekly(it, book));
        watched.with(|it| it.as_ref().map(said).unwrap_or_default())
    });
    let week = move || watched.with(|it| it.as_ref().map(|it| week(state, it)).unwrap_or_default());
    let any = move || watched.with(|it| it.as_ref().is_some_and(|it| !it.changed.is_empty()));
    let prices = text(move || changed().len().to_string());
    let sizes = text(move || moves().len().to_string());
    let profit = text(move || {
        let change = week().into_iter().next_back().map(|(_, money, _)| money);
        change.unwrap_or_else(|| say!(common::none).to_string())
    });
    let answers = move || {
        let named = |name: &'static str, figure: Signal<String>| (name.to_string(), figure.get());
        vec![
            named(say!(market::changed_prices), prices),
            named(say!(market::drinks_affected), sizes),
            named(say!(market::profit_change), profit),
        ]
    };
    when(any, move || {
        let table = first_of(
            move || changed().len(),
            move |few| {
                let rows = changed().iter().take(few).map(|it| price_row(state, it)).collect_view().into_any();
                wide_table(say!(market::changed_prices), "table", &heads, rows)
            },
        );
        let open = is_wide();
        view! {
            {answer_figures(answers)}
            <Fold name=say!(market::changed_prices) figure=prices open>
                {table}
                <p class="about">{say!(market::current_packs_only)}</p>
            </Fold>
            <Fold name=say!(common::profit_per_week) figure=profit open>
                <dl class="figures">{figures_of(week)}</dl>
                <p class="about">{weekly}</p>
            </Fold>
            <Fold name=say!(market::drinks_affected) figure=sizes open>{moved_list(state, moves)}</Fold>
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
