//! The client report: what the numbers say of sizes, prices with costs and margins, and scenarios beside today's menu.

use leptos::prelude::*;

use super::frame::{Frame, Leaf};
use super::prices::{Shows, kind_tables};
use crate::app::route::{Place, Route};
use crate::book::{DrinkKind, Key, Settings};
use crate::say;
use crate::sizes::decision::Finding;
use crate::ui::live::live;
use crate::ui::order;
use crate::ui::places::sizes::{compared_on_paper, found};
use crate::ui::state::AppState;
use crate::words::{self, Decisions};

/// The report on the open book.
#[component]
pub fn Report() -> impl IntoView {
    let papers = live(move || {
        let state = AppState::here();
        view! {
            <Leaf title=say!(sales::client_report) foot=cautions()>
                {sizes(state)}
                {scenarios(state)}
            </Leaf>
            <Leaf title=say!(counter::prices) foot=terms(state)>
                {prices(state)}
                {not_known(state)}
            </Leaf>
        }
        .into_any()
    });
    view! {
        <Frame heading=say!(sales::client_report) back=Route::Sizes name=Place::Sizes.name()>
            {papers}
        </Frame>
    }
}

fn cautions() -> Vec<String> {
    vec![say!(sales::sheet_caution).to_string()]
}

/// What the numbers say, kind by kind.
fn sizes(state: AppState) -> AnyView {
    let found = found(state);
    let of_kind = |kind: &DrinkKind| -> Option<AnyView> {
        let these: Vec<&Finding> = found.iter().filter(|finding| finding.kind == *kind).collect();
        if these.is_empty() {
            return None;
        }
        let said = |finding: &&Finding| {
            let speaker = &state.speaker.get();
            let (said, about) = state.book.with(|book| Decisions { book, speaker }.finding(finding));
            view! { <li class="paper-whole">{said} " " <span class="soft">{about}</span></li> }
        };
        let list = view! {
            <h2>{words::drink_kind(*kind)}</h2>
            <ul class="bulleted">{these.iter().map(said).collect_view()}</ul>
        };
        Some(list.into_any())
    };
    let kinds: Vec<AnyView> = DrinkKind::ALL.iter().filter_map(of_kind).collect();
    if kinds.is_empty() {
        return view! { <p class="hollow">{say!(decide::no_findings)}</p> }.into_any();
    }
    kinds.into_any()
}

/// Today's menu beside the scenarios, where there are any.
fn scenarios(state: AppState) -> Option<AnyView> {
    let columns = compared_on_paper(state)?;
    let head = |name: String| view! { <th class="paper-figure" scope="col">{name}</th> };
    let cell = |figure: String| view! { <td class="paper-figure">{figure}</td> };
    let row = |(name, figures): (&'static str, Vec<String>)| {
        view! {
            <tr class="paper-whole">
                <th scope="row">{name}</th>
                {figures.into_iter().map(cell).collect_view()}
            </tr>
        }
    };
    let table = view! {
        <div class="paper-whole">
            <h2>{say!(sales::scenarios_compared)}</h2>
            <table class="paper-table">
                <thead>
                    <tr>
                        <td></td>
                        {columns.heads.into_iter().map(head).collect_view()}
                    </tr>
                </thead>
                <tbody>{columns.rows.into_iter().map(row).collect_view()}</tbody>
            </table>
            <p class="soft">{say!(sales::scenario_terms)}</p>
        </div>
    };
    Some(table.into_any())
}

/// Prices with costs and margins, on the owner's terms.
fn prices(state: AppState) -> AnyView {
    let shows = Shows { unit_price: false, costs: true };
    let kinds: Vec<AnyView> = DrinkKind::ALL.iter().flat_map(|kind| kind_tables(state, *kind, shows)).collect();
    if kinds.is_empty() {
        return view! { <p class="hollow">{say!(counter::no_drinks_to_print)}</p> }.into_any();
    }
    kinds.into_any()
}

fn terms(state: AppState) -> Vec<String> {
    let Settings { cost_basis, .. } = state.book.with(|book| book.settings().clone());
    vec![say!(counter::owner_terms, terms = words::cost_basis(cost_basis)), say!(counter::owner_copy).to_string()]
}

/// The ingredients whose figures come from the starter list and were not checked yet.
fn not_known(state: AppState) -> Option<AnyView> {
    let names = state.book.with(|book| {
        let unchecked = |key: &Key| match key {
            Key::Ingredient(id) => book.ingredient(*id).is_some_and(|it| it.starting_figures().next().is_some()),
            _ => false,
        };
        order::ingredients(book).into_iter().filter(unchecked).map(|key| book.name(key)).collect::<Vec<String>>()
    });
    if names.is_empty() {
        return None;
    }
    let list = view! {
        <div class="paper-whole">
            <h2>{say!(starter::figures_to_check)}</h2>
            <p>{names.join(", ")}</p>
        </div>
    };
    Some(list.into_any())
}
