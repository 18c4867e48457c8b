//! Two plans side by side, and one kept as a scenario.

use std::sync::Arc;

use leptos::prelude::*;

use super::asked::{Asked, KEPT};
use crate::app::route::Route;
use crate::book::{ContainerId, Edit, Key, PackagingPart, Record, ScenarioId};
use crate::say;
use crate::sizes::plan::{Plan, change, keep};
use crate::ui::address::go;
use crate::ui::fields::{Ask, Choice};
use crate::ui::live::{live, press, text, trouble, when};
use crate::ui::parts::Section;
use crate::ui::random::random;
use crate::words;

/// Longest name of a scenario, in characters.
const NAME_LENGTH: usize = 80;

/// Two plans side by side.
#[component]
pub fn TwoPlans(
    /// What is asked.
    asked: Asked,
) -> impl IntoView {
    let state = asked.state;
    let first = Memo::new(move |_| sizes_at(asked, 0));
    let second = Memo::new(move |_| sizes_at(asked, 1));
    let both = move || Some((plan_of(asked, &first.get())?, plan_of(asked, &second.get())?));
    let said = text(move || {
        let Some((from, to)) = both() else { return String::new() };
        if from.sizes == to.sizes {
            return say!(decide::choose_two_plans).to_string();
        }
        let change = asked.candidates.with(|it| change(it.ledger(), &from, &to, asked.keeping()));
        match change {
            Ok(change) => asked.said(|words| words.change(&from, &to, &change)),
            Err(overflow) => words::overflow(overflow),
        }
    });
    let own = live(move || {
        let chip = |id: ContainerId| {
            let pressed = text(move || asked.own.with(|own| own.contains(&id)).to_string());
            view! {
                <button class="chip" aria-pressed=pressed on:click=press(move || compose(asked, id))>
                    {text(move || state.book.with(|book| book.name(Key::Container(id))))}
                </button>
            }
        };
        asked.sizes_now.get().into_iter().map(chip).collect_view().into_any()
    });
    let answer = move || {
        view! {
            <p class="plan-said" role="status">{said}</p>
            {live(move || both().map(|(from, to)| table(asked, &from, &to)).into_any())}
        }
        .into_any()
    };
    view! {
        <Section heading=say!(decide::two_plans)>
            <div class="two-plans">
                <Side asked place=0 sizes=first label=say!(decide::first_plan) />
                <Side asked place=1 sizes=second label=say!(decide::second_plan) />
            </div>
            {asked.hangs.answer(answer)}
            <p class="hollow">
                {say!(decide::two_plans_explained)}
            </p>
            <Explained asked sizes=first />
            <Explained asked sizes=second />
        </Section>
        <Section heading=say!(decide::own_plan) about=say!(decide::own_plan_about)>
            <div class="chips" role="group" aria-label=say!(decide::own_plan_sizes)>{own}</div>
        </Section>
    }
}

/// Takes a size into the own plan, or out, and shows it as the second.
fn compose(asked: Asked, id: ContainerId) {
    asked.own.update(|own| match own.iter().position(|size| *size == id) {
        Some(place) => drop(own.remove(place)),
        None => own.push(id),
    });
    let own = asked.own.get_untracked();
    let sizes: Vec<ContainerId> = asked.sizes_now.get_untracked().into_iter().filter(|it| own.contains(it)).collect();
    asked.own.set(sizes.clone());
    let [_, second] = asked.chosen;
    second.set(sizes);
}

fn plan_of(asked: Asked, sizes: &[ContainerId]) -> Option<Plan> {
    let find = |plans: &Vec<Plan>| plans.iter().find(|plan| plan.sizes == sizes).cloned();
    asked.plans.with(|plans| plans.as_ref().ok().and_then(find))
}

/// The sizes of the plan at a place: the one chosen, else the best of one size and of two.
fn sizes_at(asked: Asked, place: usize) -> Vec<ContainerId> {
    let chosen = asked.chosen.get(place).map(|chosen| chosen.get()).unwrap_or_default();
    asked.plans.with(|plans| {
        let plans = plans.as_deref().unwrap_or_default();
        let there = plans.iter().find(|plan| plan.sizes == chosen);
        let of_count = || plans.iter().find(|plan| plan.sizes.len() == place.saturating_add(1));
        there.or_else(of_count).or(plans.first()).map(|plan| plan.sizes.clone()).unwrap_or_default()
    })
}

/// What is typed as the sales kept with a plan.
fn typed_for<'a>(kept: &'a [(Vec<ContainerId>, String)], sizes: &[ContainerId]) -> Option<&'a String> {
    kept.iter().find(|(of, _)| of == sizes).map(|(_, typed)| typed)
}

fn key(sizes: &[ContainerId]) -> String {
    sizes.iter().map(ToString::to_string).collect::<Vec<_>>().join("+")
}

/// The choice of one of the two plans, and the sales that stay with it.
#[component]
fn Side(asked: Asked, place: usize, sizes: Memo<Vec<ContainerId>>, label: &'static str) -> impl IntoView {
    let state = asked.state;
    let options = Memo::new(move |_| {
        let option = |plan: &Plan| (key(&plan.sizes), state.book.with(|book| words::plan_name(&plan.sizes, book)));
        asked.plans.with(|plans| plans.as_deref().unwrap_or_default().iter().map(option).collect::<Vec<_>>())
    });
    let choose = Arc::new(move |wanted: &str| {
        let found = asked.plans.with_untracked(|plans| {
            let plans = plans.as_deref().unwrap_or_default();
            plans.iter().find(|plan| key(&plan.sizes) == wanted).map(|plan| plan.sizes.clone())
        });
        if let (Some(found), Some(chosen)) = (found, asked.chosen.get(place)) {
            chosen.set(found);
        }
        Ok(())
    });
    // A field of its own for each plan: drawn anew only when another plan is chosen.
    let kept = live(move || {
        let sizes = sizes.get();
        let typed =
            RwSignal::new(asked.kept.with_untracked(|kept| typed_for(kept, &sizes).cloned()).unwrap_or_default());
        Effect::new(move |_| {
            let now = typed.get();
            asked.kept.maybe_update(|kept| {
                let changes = typed_for(kept, &sizes).map_or("", String::as_str) != now;
                if changes {
                    kept.retain(|(of, _)| *of != sizes);
                    kept.push((sizes.clone(), now.clone()));
                }
                changes
            });
        });
        let label = if place == 0 { say!(decide::stay_with_first) } else { say!(decide::stay_with_second) };
        view! { <Ask label=label text=typed error=asked.error(typed, KEPT) hangs=asked.hangs /> }.into_any()
    });
    // A list of its own for each set of plans: one whose options move would show another plan than
    // the one chosen.
    let choice = live(move || {
        options.track();
        view! { <Choice label=label options value=text(move || key(&sizes.get())) choose=choose.clone() /> }.into_any()
    });
    let refused = RwSignal::new(None::<String>);
    let keep_it = move || {
        let Some(plan) = untrack(|| plan_of(asked, &sizes.get())) else { return };
        let id = ScenarioId::from_random(random());
        let scenario = state.book.with_untracked(|book| {
            let (many, plan_name) = (words::sizes(plan.sizes.len()), words::plan_name(&plan.sizes, book));
            let name = say!(decide::scenario_name, sizes = many, plan = plan_name);
            let name: String = name.chars().take(NAME_LENGTH).collect();
            keep(book, asked.scope.get_untracked(), &plan, id, &name)
        });
        match state.apply(say!(decide::save_plan), Edit::Put(Record::Scenario(scenario))) {
            Ok(()) => go(Route::Scenario(id)),
            Err(sentence) => refused.set(Some(sentence)),
        }
    };
    view! {
        <div class="plan-side">
            {choice}
            {kept}
            <button class="button" on:click=press(keep_it)>
                {if place == 0 { say!(decide::save_first_plan) } else { say!(decide::save_second_plan) }}
            </button>
            {trouble(move || refused.get())}
        </div>
    }
}

fn table(asked: Asked, from: &Plan, to: &Plan) -> AnyView {
    let state = asked.state;
    let kinds = |plan: &Plan, part| plan.totals.kinds(part).to_string();
    let units = |plan: &Plan| state.number(plan.totals.units.rounded(1));
    let lasts = |plan: &Plan| asked.said(|words| words.cover(plan.totals.weeks));
    let lines = [
        (say!(common::profit_per_week), [from, to].map(|plan| state.money(plan.totals.contribution))),
        (say!(common::drinks_sold_per_week), [from, to].map(units)),
        (say!(common::recipe_cards), [from, to].map(|plan| plan.totals.cards.to_string())),
        (say!(decide::container_types), [from, to].map(|plan| kinds(plan, PackagingPart::Vessel))),
        (say!(decide::lid_types), [from, to].map(|plan| kinds(plan, PackagingPart::Closure))),
        (say!(decide::opening_stock), [from, to].map(|plan| state.money(plan.totals.cash))),
        (say!(decide::weeks_of_stock), [from, to].map(lasts)),
        (say!(first::below_target), [from, to].map(|plan| plan.totals.under_target.to_string())),
    ];
    let line = |(name, [first, second]): (&'static str, [String; 2])| {
        view! {
            <tr>
                <th scope="row">{name}</th>
                <td>{first}</td>
                <td>{second}</td>
            </tr>
        }
    };
    let name = |plan: &Plan| state.book.with(|book| words::plan_name(&plan.sizes, book));
    view! {
        <div class="wide" tabindex="0" role="region" aria-label=say!(decide::two_plans)>
            <table class="table">
                <thead>
                    <tr>
                        <td></td>
                        <th scope="col">{name(from)}</th>
                        <th scope="col">{name(to)}</th>
                    </tr>
                </thead>
                <tbody>{lines.map(line).collect_view()}</tbody>
            </table>
        </div>
    }
    .into_any()
}

/// How a plan's figures came about, line by line.
#[component]
fn Explained(asked: Asked, sizes: Memo<Vec<ContainerId>>) -> impl IntoView {
    let state = asked.state;
    let open = RwSignal::new(false);
    let name =
        text(move || say!(decide::plan_math, plan = state.book.with(|book| words::plan_name(&sizes.get(), book))));
    let lines = move || {
        let Some(plan) = plan_of(asked, &sizes.get()) else { return ().into_any() };
        let offers = plan
            .offers
            .iter()
            .map(|offer| asked.candidates.with(|it| asked.said(|words| words.offer(it.ledger(), offer))));
        let stock = plan.totals.stock.iter().map(|stock| asked.said(|words| words.stock(stock)));
        let left_out = plan.left_out.iter().map(|left_out| asked.said(|words| words.left_out(left_out)));
        let list = |heading: &'static str, lines: Vec<String>| {
            let none = lines.is_empty();
            view! {
                <h3 hidden=none>{heading}</h3>
                <ul class="steps">{lines.into_iter().map(|line| view! { <li>{line}</li> }).collect_view()}</ul>
            }
        };
        view! {
            {list(say!(common::profit_per_week), offers.collect())}
            {list(say!(decide::opening_stock), stock.collect())}
            {list(say!(decide::not_included), left_out.collect())}
        }
        .into_any()
    };
    let expanded = text(move || open.get().to_string());
    let uncounted = text(move || {
        let plan = plan_of(asked, &sizes.get());
        let said = plan.map(|plan| asked.said(|words| words.uncounted(&plan.totals))).unwrap_or_default();
        let name = state.book.with(|book| words::plan_name(&sizes.get(), book));
        if said.is_empty() { said } else { say!(decide::plan_note, plan = name, note = said) }
    });
    let left_out = text(move || match plan_of(asked, &sizes.get()).map_or(0, |plan| plan.left_out.len()) {
        0 => String::new(),
        count => asked.said(|words| words.left_out_count(&sizes.get(), count)),
    });
    view! {
        <p class="hollow">{left_out}</p>
        <p class="hollow">{uncounted}</p>
        <p>
            <button class="how" aria-expanded=expanded on:click=press(move || open.update(|open| *open = !*open))>
                {name}
            </button>
        </p>
        {when(move || open.get(), move || live(lines))}
    }
}
