//! How many sizes: sets of sizes by how many buyers choose them already, and what would have to be true for each.

mod asked;
mod comes;
mod plan;

use std::sync::Arc;

use leptos::prelude::*;

use crate::app::route::{Route, scope_from_text, scope_text};
use crate::book::Scope;
use crate::say;
use crate::sizes::decision::{Guess, MOST_SIZES, Plan, Plans};
use crate::ui::address::go;
use crate::ui::fields::{Ask, Choice, Choose, Tick};
use crate::ui::live::{flag, live, press, text, trouble, when};
use crate::ui::parts::{Back, Fold, Says, is_wide, verdict};
use crate::ui::places::sizes::asked as parts_of_the_menu;
use crate::ui::places::sizes::reaction::ReactionField;
use crate::ui::state::AppState;
use asked::Asked;
use comes::Comes;
use plan::row;

/// How many plans stand open at first.
const OPEN: usize = 6;

/// Plans in their order, each with what the owner's answer says of it.
type Listed = Vec<(Plan, Option<Guess>)>;

/// How many sizes.
#[component]
pub fn HowMany(
    /// The part of the menu.
    scope: Scope,
) -> impl IntoView {
    let asked = Asked::new(AppState::here(), scope);
    let why = move || {
        let why = asked.plans.with(|plans| plans.as_ref().err().cloned())?;
        Some(asked.said(|words| words.no_answer(&why)))
    };
    let any = move || asked.plans.with(Result::is_ok);
    view! {
        <Back to=Route::Sizes name=say!(first::sizes) />
        <h1>{say!(decide::how_many_sizes)}</h1>
        <div class="panes plans-page">
            <div class="pane decision-answer">
                {trouble(why)}
                {asked.hangs.answer(move || when(any, move || view! { <Answer asked /> }.into_any()))}
            </div>
            <div class="pane-asked">
                <Asking asked />
            </div>
            <div class="pane decision-rest">
                {asked.hangs.while_read(move || when(any, move || view! { <Listed asked /> }.into_any()))}
            </div>
        </div>
    }
}

/// What is asked: which drinks, what a size costs to keep, and how the owner's customers react.
#[component]
fn Asking(asked: Asked) -> impl IntoView {
    let state = asked.state;
    let scopes = Signal::derive(move || state.book.with(parts_of_the_menu::all_scope_options));
    let choose: Choose = Arc::new(move |chosen: &str| {
        let scope = scope_from_text(chosen).ok_or_else(|| say!(decide::gone_choose_another).to_string())?;
        go(Route::HowMany(scope));
        Ok(())
    });
    let counts = flag(move || !asked.without_labor.get());
    view! {
        <Fold name=say!(decide::what_to_ask) figure=Signal::stored(String::new()) open=Signal::stored(is_wide())>
            <Choice label=say!(decide::which_drinks) options=scopes value=Signal::stored(scope_text(asked.scope)) choose />
            <ReactionField reaction=asked.reaction hangs=asked.hangs />
            {when(
                move || asked.answered().is_some(),
                || view! { <p class="soft">{say!(decide::of_ten_moves_down)}</p> }.into_any(),
            )}
            <div class="fields">
                <Ask label=say!(decide::weeks_to_stock) text=asked.cover error=asked.cover_error() hangs=asked.hangs />
                <Ask label=say!(decide::upkeep_per_size) text=asked.keeping error=asked.keeping_error() hangs=asked.hangs />
            </div>
            <Comes asked />
            <div class="counted">
                <Tick done=counts set=move |counted: bool| asked.without_labor.set(!counted)>{say!(decide::count_labor)}</Tick>
            </div>
        </Fold>
    }
}

/// One size, two or three: of each the plan that can pay and that most buyers choose already.
#[component]
fn Answer(asked: Asked) -> impl IntoView {
    let said = move || {
        asked.plans.with(|plans| {
            let tried = plans.as_ref().map(|plans| asked.in_order(plans, |plan, pays| pays && !plan.hardly_tried()));
            let first = tried.unwrap_or_default().into_iter().next();
            match (first, asked.answered()) {
                (Some((plan, Some(guess))), _) => (Says::Yes, asked.said(|words| words.plan_guess(&plan, &guess))),
                (Some((plan, None)), _) => (Says::Yes, asked.said(|words| words.plan_pays(&plan))),
                (None, Some(_)) => (Says::No, say!(decide::no_plan_guess).to_string()),
                (None, None) => (Says::No, say!(decide::no_plan_pays).to_string()),
            }
        })
    };
    let today = text(move || {
        asked.plans.with(|plans| {
            plans.as_ref().map(|plans| asked.said(|words| words.plan_today(&plans.today))).unwrap_or_default()
        })
    });
    let counts = live(move || {
        asked.plans.with(|plans| {
            let Ok(plans) = plans else { return ().into_any() };
            // What pays comes first, and of that in the order chosen.
            let mut all = asked.in_order(plans, |_, pays| pays);
            all.extend(asked.in_order(plans, |_, pays| !pays));
            let of = |count: usize| all.iter().find(|(plan, _)| plan.sizes.len() == count);
            let line = |(plan, guess): &(Plan, Option<Guess>)| asked.said(|words| words.of_count(plan, guess.as_ref()));
            let lines = (1..=MOST_SIZES).filter_map(of).map(line);
            view! { <ul class="steps">{lines.map(|line| view! { <li>{line}</li> }).collect_view()}</ul> }.into_any()
        })
    });
    view! {
        <section class="section">
            {verdict(said)}
            <p>{today}</p>
            {counts}
            <p class="soft">{say!(decide::overhead_left_out)}</p>
        </section>
    }
}

/// The plans that can pay, those hardly tried, and those that cannot.
#[component]
fn Listed(asked: Asked) -> impl IntoView {
    let answered = move || asked.answered().is_some();
    let ordered = move |by_profit: bool| {
        let pressed = text(move || (asked.by_profit() == by_profit).to_string());
        let name = if by_profit { say!(decide::by_profit) } else { say!(decide::by_evidence) };
        view! {
            <button class="chip" aria-pressed=pressed on:click=press(move || asked.by_evidence.set(!by_profit))>
                {name}
            </button>
        }
    };
    let order = move || {
        view! {
            <div class="chips" role="group" aria-label=say!(decide::order_of_plans)>
                {ordered(false)}
                {ordered(true)}
            </div>
        }
        .into_any()
    };
    let list = move |which: fn(&Asked, &Plans) -> Listed| {
        Memo::new(move |_| {
            asked.plans.with(|plans| plans.as_ref().map(|plans| which(&asked, plans)).unwrap_or_default())
        })
    };
    let tried = list(|asked, plans| asked.in_order(plans, |plan, pays| pays && !plan.hardly_tried()));
    let hardly = list(|asked, plans| asked.in_order(plans, |plan, pays| pays && plan.hardly_tried()));
    let cannot = list(|asked, plans| asked.in_order(plans, |_, pays| !pays));
    let rows = move |plans: Memo<Listed>, from: usize, to: usize| {
        live(move || {
            let some: Vec<_> = plans.get().into_iter().skip(from).take(to.saturating_sub(from)).collect();
            view! { <ul class="plans">{some.into_iter().map(|(plan, guess)| row(asked, plan, guess)).collect_view()}</ul> }
                .into_any()
        })
    };
    let many = move |plans: Memo<Listed>, from: usize| {
        text(move || say!(decide::plans_counted, plans = plans.with(Vec::len).saturating_sub(from)))
    };
    let more = move || tried.with(|plans| plans.len() > OPEN);
    let heading = text(move || {
        let by_profit = asked.by_profit();
        if by_profit { say!(decide::plans_by_guess) } else { say!(decide::plans_tried) }.to_string()
    });
    let about = text(move || {
        let by_profit = asked.by_profit();
        if by_profit { say!(decide::by_profit_about) } else { say!(decide::plans_tried_about) }.to_string()
    });
    view! {
        <section class="section">
            <h2>{heading}</h2>
            <p class="about">{about}</p>
            {when(answered, order)}
            {rows(tried, 0, OPEN)}
        </section>
        <div class="folds">
            {when(
                more,
                move || view! {
                    <Fold name=say!(decide::more_plans) figure=many(tried, OPEN)>{rows(tried, OPEN, usize::MAX)}</Fold>
                }.into_any(),
            )}
            <Fold name=say!(decide::hardly_tried) figure=many(hardly, 0)>
                <p class="soft">{say!(decide::hardly_tried_about)}</p>
                {rows(hardly, 0, usize::MAX)}
            </Fold>
            {live(move || {
                let (name, about) = if answered() {
                    (say!(decide::plans_earn_less), say!(decide::plans_earn_less_about))
                } else {
                    (say!(decide::plans_cannot_pay), say!(decide::plans_cannot_pay_about))
                };
                view! {
                    <Fold name figure=many(cannot, 0)>
                        <p class="soft">{about}</p>
                        {rows(cannot, 0, usize::MAX)}
                    </Fold>
                }
                .into_any()
            })}
        </div>
        <p class="soft">{say!(decide::rule_of_thumb_sizes)}</p>
    }
}
