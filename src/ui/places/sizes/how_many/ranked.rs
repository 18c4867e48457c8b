//! The plans by what they earn: a drawing, and the table with its figures.

use leptos::prelude::*;

use super::asked::Asked;
use crate::book::PackagingPart;
use crate::foundation::measure::{Exact, Money};
use crate::foundation::plot::Scale;
use crate::say;
use crate::sizes::plan::{MOST_SIZES, Plan};
use crate::ui::live::{live, press, text, when};
use crate::ui::parts::Section;
use crate::words;

/// How many plans are shown until all are asked for.
const FIRST: usize = 8;
/// The drawing's length in its own parts.
const BAR: u32 = 1000;

/// The plans, the best first.
#[component]
pub fn Ranked(
    /// What is asked.
    asked: Asked,
) -> impl IntoView {
    let all = RwSignal::new(false);
    let plans = move || asked.plans.get().unwrap_or_default();
    let said = text(move || asked.said(|words| words.best(&plans(), &asked.today())));
    let shown = move || {
        let (plans, today, own) = (plans(), asked.today(), asked.own.get());
        let wanted = |(place, plan): &(usize, Plan)| {
            let marked = plan.sizes == today || plan.sizes == own || marks(&plans, plan, &[], &[]).is_some();
            all.get() || *place < FIRST || marked
        };
        let shown: Vec<(String, Plan)> = plans
            .iter()
            .cloned()
            .enumerate()
            .filter(wanted)
            .map(|(_, plan)| (marks(&plans, &plan, &today, &own).unwrap_or_default(), plan))
            .collect();
        shown
    };
    let more = move || !all.get() && shown().len() < plans().len();
    let count = text(move || say!(decide::show_all_plans, plans = plans().len()));
    view! {
        <Section heading=say!(decide::plans_by_profit)>
            <p class="about">{said}</p>
            {live(move || bars(asked, &shown()))}
            <p class="hollow">
                {say!(decide::plan_bars_explained)} " " {say!(decide::same_number_of_drinks)}
            </p>
            <table class="table plans">
                <thead>
                    <tr>
                        <th scope="col">{say!(decide::plan)}</th>
                        <th scope="col">{say!(common::profit_per_week)}</th>
                        <th scope="col">{say!(common::recipe_cards)}</th>
                        <th scope="col">{say!(decide::container_types)}</th>
                        <th scope="col">{say!(decide::lid_types)}</th>
                        <th scope="col">{say!(decide::opening_stock)}</th>
                        <th scope="col">{say!(decide::weeks_of_stock)}</th>
                    </tr>
                </thead>
                <tbody>{live(move || shown().iter().map(|plan| row(asked, plan)).collect_view().into_any())}</tbody>
            </table>
            {when(
                more,
                move || {
                    view! {
                        <button class="button" on:click=press(move || all.set(true))>
                            {count}
                        </button>
                    }
                        .into_any()
                },
            )}
        </Section>
    }
}

/// What is to be said of a plan among all: the best of its number of sizes, today's, one's own.
fn marks(
    plans: &[Plan],
    plan: &Plan,
    today: &[crate::book::ContainerId],
    own: &[crate::book::ContainerId],
) -> Option<String> {
    let best = plans.iter().find(|other| other.sizes.len() == plan.sizes.len());
    let mut said = Vec::new();
    if plan.sizes.len() <= MOST_SIZES && best.is_some_and(|best| best.sizes == plan.sizes) {
        said.push(match plan.sizes.len() {
            1 => say!(decide::best_of_one_size),
            2 => say!(decide::best_of_two_sizes),
            _ => say!(decide::best_of_three_sizes),
        });
    }
    if plan.sizes == today {
        said.push(say!(decide::todays_sizes));
    }
    if plan.sizes == own {
        said.push(say!(decide::your_plan));
    }
    if said.is_empty() { None } else { Some(said.join(", ")) }
}

fn bars(asked: Asked, plans: &[(String, Plan)]) -> AnyView {
    let state = asked.state;
    let earned = |plan: &Plan| plan.totals.contribution.major();
    let Ok(scale) = Scale::of(plans.iter().map(|(_, plan)| earned(plan)), true) else { return ().into_any() };
    let at = |number: Exact| scale.position(number, BAR);
    let bar = |(_, plan): &(String, Plan)| {
        let (zero, end) = (at(Exact::ZERO), at(earned(plan)));
        let class = if end < zero { "bars-below" } else { "bars-price" };
        view! {
            <li>
                <span class="bars-name">{state.book.with(|book| words::plan_name(&plan.sizes, book))}</span>
                <svg class="bars-bar" viewBox="0 0 1000 10" preserveAspectRatio="none" aria-hidden="true">
                    <rect class=class x=zero.min(end).to_string() width=zero.abs_diff(end).to_string() height="10" />
                    <path class="chart-zero" d=format!("M{zero} 0V10") vector-effect="non-scaling-stroke" />
                </svg>
                <span class="bars-figure">{state.money(Money::from_major(earned(plan)))}</span>
            </li>
        }
    };
    view! {
        <figure class="bars plan-bars">
            <ul>{plans.iter().map(bar).collect_view()}</ul>
        </figure>
    }
    .into_any()
}

fn row(asked: Asked, (marks, plan): &(String, Plan)) -> AnyView {
    let state = asked.state;
    let totals = &plan.totals;
    let kinds = |part| totals.kinds(part).to_string();
    let cells = [
        (say!(common::profit_per_week), state.money(totals.contribution)),
        (say!(common::recipe_cards), totals.cards.to_string()),
        (say!(decide::container_types), kinds(PackagingPart::Vessel)),
        (say!(decide::lid_types), kinds(PackagingPart::Closure)),
        (say!(decide::opening_stock), state.money(totals.cash)),
        (say!(decide::weeks_of_stock), asked.said(|words| words.cover(totals.weeks))),
    ];
    let cell = |(name, figure): (&'static str, String)| view! { <td data-name=name>{figure}</td> };
    view! {
        <tr>
            <th scope="row">
                {state.book.with(|book| words::plan_name(&plan.sizes, book))} " " <span class="soft">{marks.clone()}</span>
            </th>
            {cells.map(cell).collect_view()}
        </tr>
    }
    .into_any()
}
