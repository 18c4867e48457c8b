//! One plan: when it pays, how tried it is, and behind its fold what it earns and takes.

use leptos::prelude::*;

use super::asked::Asked;
use crate::app::route::{self, Route};
use crate::book::{Edit, Record, ScenarioId};
use crate::foundation::measure::{Exact, Share};
use crate::say;
use crate::sizes::decision::{Guess, Plan, Question};
use crate::ui::address::go;
use crate::ui::live::{live, press, trouble};
use crate::ui::parts::{Says, says_shape};
use crate::ui::places::sizes::decision::fact;
use crate::ui::random::random;
use crate::words::{count, of_100, overflow};

/// Longest name of a scenario, in characters.
const NAME_LENGTH: usize = 80;

/// The shares of buyers who stay that profits are shown at, in hundredths.
const SHOWN_AT: [Exact; 3] = [Exact::new(1, 0), Exact::new(75, 2), Exact::new(5, 1)];

/// A plan in the list, with what the owner's own answer says of it.
pub fn row(asked: Asked, plan: Plan, guess: Option<Guess>) -> AnyView {
    let (name, about) = asked.said(|words| (words.plan_name(&plan.sizes), words.plan_about(&plan)));
    // Where the owner's answer has it pay, what it would need of today's buyers says no more.
    let turned = guess.is_some_and(|guess| guess.pays() && !plan.verdict.can_pay());
    let pays = if turned { String::new() } else { asked.said(|words| words.plan_needs(&plan)) };
    let about = [about].into_iter().chain(guess.map(|guess| asked.said(|words| words.guess(&guess))));
    let about = about.collect::<Vec<_>>().join(" ");
    let profit = guess.map(|guess| say!(decide::about_profit, profit = asked.state.money(guess.profit)));
    let says = if guess.map_or(plan.verdict.can_pay(), |guess| guess.pays()) { Says::Yes } else { Says::No };
    let open = RwSignal::new(false);
    let inside = live(move || if open.get() { details(asked, plan.clone()) } else { ().into_any() });
    view! {
        <li>
            <details class="under" on:toggle=move |_| open.set(true)>
                <summary>
                    {says_shape(says)}
                    <span class="under-name"><span>{name}</span> " " <span class="row-about">{about}</span></span>
                    <span class="under-spare">{pays} " " {profit.map(|profit| view! { <small>{profit}</small> })}</span>
                </summary>
                {inside}
            </details>
        </li>
    }
    .into_any()
}

/// Profit a week by buyers who stay, cards, kinds, stock; and the plan kept as a scenario.
fn details(asked: Asked, plan: Plan) -> AnyView {
    let state = asked.state;
    let speaker = state.speaker.get();
    let none = String::new;
    let profit = |share: Exact| {
        let share = Share::from_fraction(share);
        let name = say!(decide::stay_of_100, buyers = of_100(share, &speaker));
        fact(name, none(), plan.line.at(share).map_or_else(overflow, |money| state.money(money)))
    };
    let profits = SHOWN_AT.map(profit);
    let kept = asked
        .decision(&plan)
        .and_then(|decision| asked.menu(|menu| Ok(menu.keeping_then(&decision, Share::WHOLE, asked.weeks())?)));
    let keeping = match kept {
        Ok(kept) => {
            let line = |name: &'static str, figure: String| fact(name.to_string(), none(), figure);
            [
                line(say!(common::recipe_cards), count(kept.cards)),
                line(say!(decide::container_types), count(kept.vessels)),
                line(say!(decide::lid_types), count(kept.closures)),
                line(say!(decide::opening_stock), state.money(kept.cash)),
                line(say!(decide::weeks_of_stock), asked.said(|words| words.lasts(kept.weeks))),
            ]
            .into_any()
        }
        Err(why) => view! { <p class="trouble">{asked.said(|words| words.no_answer(&why))}</p> }.into_any(),
    };
    let tips =
        plan.tipping().map(|tipping| view! { <p>{asked.said(|words| words.tipping(&tipping, &plan.verdict))}</p> });
    // A plan with a size that is not sold yet counts with what is typed here, which its own page would not have.
    let sold = asked.comes.get_untracked().is_none_or(|comes| !plan.sizes.contains(&comes));
    let own = route::Stays::of(&plan.sizes).filter(|_| sold).map(|stays| {
        Route::Decision(route::Decision { scope: asked.scope, goes: None, comes: None, stays: Some(stays) })
    });
    let refused = RwSignal::new(None::<String>);
    let keep = move || {
        let kept = untrack(|| scenario(asked, &plan));
        match kept.and_then(|(id, record)| state.apply(say!(decide::save_plan), Edit::Put(record)).map(|()| id)) {
            Ok(id) => go(Route::Scenario(id)),
            Err(sentence) => refused.set(Some(sentence)),
        }
    };
    view! {
        <dl class="facts">{profits} {keeping}</dl>
        {tips}
        <p class="actions">
            {own.map(|to| view! { <a class="button" href=to.address()>{say!(decide::decide_on_plan)}</a> })}
            <button class="button" on:click=press(keep)>{say!(decide::keep_as_scenario)}</button>
        </p>
        {trouble(move || refused.get())}
    }
    .into_any()
}

/// A plan as a scenario, all buyers staying.
fn scenario(asked: Asked, plan: &Plan) -> Result<(ScenarioId, Record), String> {
    let id = ScenarioId::from_random(random());
    let question = Question::Keep { sizes: plan.sizes.clone() };
    let name = asked.said(|words| words.name_with(&words.plan_name(&plan.sizes), &question, Share::WHOLE));
    let name: String = name.chars().take(NAME_LENGTH).collect();
    let made = asked
        .decision(plan)
        .and_then(|decision| asked.menu(|menu| Ok(menu.scenario(&decision, Share::WHOLE, id, &name)?)));
    match made {
        Ok(scenario) => Ok((id, Record::Scenario(scenario))),
        Err(why) => Err(asked.said(|words| words.no_answer(&why))),
    }
}
