//! Today's menu and all scenarios side by side.

use leptos::prelude::*;

use super::{COVER, said, then};
use crate::book::{Key, ScenarioId};
use crate::foundation::measure::Exact;
use crate::say;
use crate::sizes::scenario::{Menu, WeeklyToday};
use crate::ui::live::live;
use crate::ui::order;
use crate::ui::parts::Section;
use crate::ui::state::AppState;
use crate::words;

/// How many scenarios have a column.
const SHOWN: usize = 6;

/// A table with a column for today and one for each scenario.
#[component]
pub fn Beside(
    /// Today's weekly numbers.
    weekly: Memo<WeeklyToday>,
    /// Today's menu.
    now: Memo<Option<Menu>>,
) -> impl IntoView {
    let state = AppState::here();
    let table = live(move || {
        let Some(Columns { heads, rows }) = columns(state, weekly, now.get()) else { return ().into_any() };
        let heads = heads.into_iter().map(|name| view! { <th scope="col">{name}</th> }).collect_view();
        let rows = rows
            .into_iter()
            .map(|(name, figures)| {
                let cells = figures.into_iter().map(|figure| view! { <td>{figure}</td> }).collect_view();
                view! {
                    <tr>
                        <th scope="row">{name}</th>
                        {cells}
                    </tr>
                }
            })
            .collect_view();
        view! {
            <div class="wide" tabindex="0" role="region" aria-label=say!(sales::scenarios_compared)>
                <table class="table named-heads">
                    <thead>
                        <tr>
                            <td></td>
                            {heads}
                        </tr>
                    </thead>
                    <tbody>{rows}</tbody>
                </table>
            </div>
        }
        .into_any()
    });
    view! {
        <Section heading=say!(sales::scenarios_compared)>
            {table}
            <p class="soft">{say!(sales::scenario_terms)}</p>
        </Section>
    }
}

/// A column for today's menu and one for each scenario, and the lines with a figure for each.
pub struct Columns {
    /// What the columns are called.
    pub heads: Vec<String>,
    /// What each line is called, and its figures.
    pub rows: Vec<(&'static str, Vec<String>)>,
}

/// Today's menu, `now`, beside the first scenarios. Returns `None` where today's cannot be computed.
pub fn columns(state: AppState, weekly: Memo<WeeklyToday>, now: Option<Menu>) -> Option<Columns> {
    let today = (say!(common::today).to_string(), now?);
    let id = |key: &Key| if let Key::Scenario(id) = key { Some(*id) } else { None };
    let ids: Vec<ScenarioId> = state.book.with(order::scenarios).iter().filter_map(id).take(SHOWN).collect();
    let of = |id: ScenarioId| {
        let name = state.book.with(|book| book.name(Key::Scenario(id)));
        Some((name, then(state, id, weekly, COVER)?))
    };
    let (heads, menus): (Vec<String>, Vec<Menu>) = std::iter::once(today).chain(ids.into_iter().filter_map(of)).unzip();
    let row = |(name, figure): Figure| (name, menus.iter().map(figure).collect());
    Some(Columns { heads, rows: figures(state).into_iter().map(row).collect() })
}

/// What a line is called, and how it is written of a menu.
pub type Figure = (&'static str, Box<dyn Fn(&Menu) -> String>);

/// The lines of a comparison.
pub fn figures(state: AppState) -> Vec<Figure> {
    let count = move |of: fn(&Menu) -> usize| {
        Box::new(move |menu: &Menu| state.number(Exact::from(u32::try_from(of(menu)).unwrap_or(u32::MAX))))
            as Box<dyn Fn(&Menu) -> String>
    };
    vec![
        (say!(common::profit_per_week), Box::new(move |menu: &Menu| state.money(menu.profit))),
        (say!(common::drinks_sold_per_week), Box::new(move |menu: &Menu| state.number(words::people(menu.units)))),
        (say!(sales::number_of_sizes), count(|menu| menu.sizes)),
        (say!(common::recipe_cards), count(|menu| menu.cards)),
        (say!(first::below_target), count(|menu| menu.under_target)),
        (say!(sales::opening_stock), Box::new(move |menu: &Menu| state.money(menu.cash))),
        (say!(sales::weeks_of_stock), Box::new(move |menu: &Menu| said(state, |words| words.cover(menu.weeks)))),
    ]
}
