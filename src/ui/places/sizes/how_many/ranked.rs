//! The plans by what they earn: a drawing, and the table with its figures.

use leptos::prelude::*;

use super::asked::Asked;
use crate::book::PackagingPart;
use crate::foundation::measure::{Exact, Money};
use crate::foundation::plot::Scale;
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
    let count = text(move || format!("Show all {} plans", plans().len()));
    view! {
        <Section heading="Plans by what they bring in a week">
            <p class="about">{said}</p>
            {live(move || bars(asked, &shown()))}
            <p class="hollow">
                "Bars: what is left in a week after everything, each drink in each size of the plan, at the price you ask or, where you ask none, the one suggested. "
                {words::SAME_NUMBER_OF_DRINKS}
            </p>
            <table class="table plans">
                <thead>
                    <tr>
                        <th scope="col">"Plan"</th>
                        <th scope="col">"Left a week"</th>
                        <th scope="col">"Recipe cards"</th>
                        <th scope="col">"Kinds of bottle or cup"</th>
                        <th scope="col">"Kinds of lid"</th>
                        <th scope="col">"Opening stock"</th>
                        <th scope="col">"Lasts"</th>
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
        said.push(format!("best of {}", words::sizes_within(plan.sizes.len())));
    }
    if plan.sizes == today {
        said.push("today's sizes".to_string());
    }
    if plan.sizes == own {
        said.push("your own".to_string());
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
        ("Left a week", state.money(totals.contribution)),
        ("Recipe cards", totals.cards.to_string()),
        ("Kinds of bottle or cup", kinds(PackagingPart::Vessel)),
        ("Kinds of lid", kinds(PackagingPart::Closure)),
        ("Opening stock", state.money(totals.cash)),
        ("Lasts", asked.said(|words| words.cover(totals.weeks))),
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
