//! A change of sizes on one page: the question, what has to be true, the figures, and what they count on.

use leptos::prelude::*;

use super::frame::{Frame, Leaf};
use crate::app::route::{self, Place, Route};
use crate::book::Key;
use crate::drink::price::Hands;
use crate::foundation::measure::{Exact, Money, Overflow, Share};
use crate::say;
use crate::sizes::decision::{Decision, Row, Verdict};
use crate::sizes::trial::{judge, trial_for};
use crate::ui::live::live;
use crate::ui::places::sizes::{Asking, MOST_WEEKS, decision_facts, decision_whose};
use crate::ui::state::AppState;
use crate::words;

/// Drinks that are listed one by one.
const LISTED: usize = 8;
/// What is bought, left over or not counted, each listed up to so many: more would not fit on the page.
const FEW: usize = 3;

/// The sheet of a decision, with what was said on its page.
#[component]
pub fn DecisionSheet(
    /// What is asked.
    decision: route::Decision,
) -> impl IntoView {
    let state = AppState::here();
    let asking = Asking::on_sheet(state, decision);
    let heading = untrack(|| asking.said(|words| words.heading(decision.goes, decision.comes, &asking.stays())));
    let scope = untrack(|| state.book.with(|book| words::scope(decision.scope, book)));
    let title = say!(sales::named_figure, name = scope, figure = heading);
    let shown = live(move || match asking.answer.get() {
        Ok(decided) => paper(asking, &decided),
        Err(why) => {
            let why = asking.said(|words| words.no_answer(&why));
            view! { <p class="trouble">{why}</p> }.into_any()
        }
    });
    view! {
        <Frame heading=say!(sales::decision_sheet) back=Route::Decision(decision) name=Place::Sizes.name()>
            <Leaf title foot=vec![say!(sales::sheet_caution).to_string(), words::trial_caution().to_string()]>
                <div class="paper-decision">{shown}</div>
            </Leaf>
        </Frame>
    }
}

fn paper(asking: Asking, decision: &Decision) -> AnyView {
    let guess = asking.guess.get();
    let (verdict, lines) = asking
        .said(|words| (words.verdict_by(decision, guess.as_ref()), words.under_verdict(decision, guess.as_ref())));
    view! {
        <p class="paper-verdict">
            <strong>{verdict}</strong>
        </p>
        {lines.into_iter().map(|line| view! { <p>{line}</p> }).collect_view()}
        {table(figures(asking, decision))}
        {part(say!(sales::must_be_true), true_then(asking, decision))}
        <h2>{say!(decide::customers_see)}</h2>
        {facts(asking, decision)}
        {by_drink(asking, decision)}
        <div class="paper-two">
            <div>
                <h2>{say!(decide::what_to_keep)}</h2>
                {table(kept(asking))}
            </div>
            {part(say!(sales::one_time_and_payback), once(asking, decision))}
            {part(say!(sales::trial_plan), trial(asking, decision))}
            {part(say!(sales::assumptions), assumptions(asking, decision))}
        </div>
    }
    .into_any()
}

/// Sentences under a heading.
fn part(heading: &'static str, said: Vec<String>) -> AnyView {
    let said: Vec<String> = said.into_iter().filter(|sentence| !sentence.is_empty()).collect();
    let none = said.is_empty();
    view! {
        <div class="paper-whole" hidden=none>
            <h2>{heading}</h2>
            {said.into_iter().map(|sentence| view! { <p>{sentence}</p> }).collect_view()}
        </div>
    }
    .into_any()
}

/// Names with their figures.
fn table(rows: impl IntoIterator<Item = (String, String)>) -> AnyView {
    let row = |(name, figure): (String, String)| {
        view! {
            <tr class="paper-whole">
                <th scope="row">{name}</th>
                <td class="paper-figure">{figure}</td>
            </tr>
        }
    };
    view! {
        <table class="paper-table">
            <tbody>{rows.into_iter().map(row).collect_view()}</tbody>
        </table>
    }
    .into_any()
}

/// What customers see, each with a small word on it.
fn facts(asking: Asking, decision: &Decision) -> AnyView {
    let row = |(name, about, figure): (String, String, String)| {
        view! {
            <tr class="paper-whole">
                <th scope="row">{name} " " <span class="soft">{about}</span></th>
                <td class="paper-figure">{figure}</td>
            </tr>
        }
    };
    let rows = decision_facts(asking, decision).into_iter().map(row).collect_view();
    view! {
        <table class="paper-table">
            <tbody>{rows}</tbody>
        </table>
        {decision_whose(asking, decision).map(|said| view! { <p class="soft">{said}</p> })}
    }
    .into_any()
}

/// Profit a week now, with the share of buyers that the slider stands at, and the difference.
fn figures(asking: Asking, decision: &Decision) -> Vec<(String, String)> {
    let state = asking.state;
    let share = asking.share();
    let buyers = words::of_100(share, &state.speaker.get());
    let with = match (asking.adds(), asking.switches()) {
        (true, _) => say!(decide::profit_taken, buyers = buyers),
        (_, true) => say!(decide::profit_per_100, buyers = buyers),
        _ => say!(decide::profit_with, buyers = buyers),
    };
    match decision.line.at(share) {
        Ok(then) => {
            let [now, then, difference] = asking.said(|words| words.now_and_then(decision.now, then));
            vec![
                (say!(decide::profit_week_now).to_string(), now),
                (with, then),
                (say!(sales::difference).to_string(), difference),
            ]
        }
        Err(error) => vec![(with, words::overflow(error))],
    }
}

/// The break-even, and how buyers would have to answer a price.
fn true_then(asking: Asking, decision: &Decision) -> Vec<String> {
    let state = asking.state;
    // What cannot pay says with its tipping point how many buyers it would take.
    let lost = matches!(decision.verdict, Verdict::CannotPay { .. });
    let even =
        decision.break_even().ok().flatten().filter(|share| *share > Share::ZERO && !asking.adds() && !lost).map(
            |share| {
                let buyers = words::even_whole(share, &decision.question);
                say!(sales::even_share, buyers = state.speaker.get().counted(buyers))
            },
        );
    let tips = decision.tipping().map(|tipping| asking.said(|words| words.tipping(&tipping, &decision.verdict)));
    even.into_iter().chain(tips).collect()
}

/// Each drink with its buyers, and its price now and then.
fn by_drink(asking: Asking, decision: &Decision) -> AnyView {
    let state = asking.state;
    let row = |row: &Row| {
        let offer = row.now.or(row.then)?.offer;
        let name = state.book.with(|book| book.name(Key::Drink(offer.drink)));
        let to = row.then.map_or(say!(decide::they_leave).to_string(), |then| state.money(then.price));
        let now = row.now.map_or(say!(common::none).to_string(), |now| state.money(now.price));
        let buyers = state.number(words::people(row.weekly.count()));
        let money = |money: Result<Money, Overflow>| money.map_or_else(words::overflow, |money| state.money(money));
        let profit = if asking.adds() {
            money(row.brings_with_others())
        } else {
            say!(decide::now_to_then, now = money(row.brought()), then = money(row.brings_with_others()))
        };
        Some(view! {
            <tr class="paper-whole">
                <th scope="row">{name}</th>
                <td class="paper-figure">{buyers}</td>
                <td class="paper-figure">{say!(decide::now_to_then, now = now, then = to)}</td>
                <td class="paper-figure">{profit}</td>
            </tr>
        })
    };
    let profit = if asking.adds() { say!(decide::profit_here) } else { say!(decide::profit_all_stay) };
    let more = decision.rows.len().saturating_sub(LISTED);
    let more = (more > 0).then(|| view! { <p class="soft">{say!(sales::drinks_not_listed, drinks = more)}</p> });
    view! {
        <table class="paper-table">
            <thead>
                <tr>
                    <th scope="col">{say!(decide::by_drink)}</th>
                    <th class="paper-figure" scope="col">{say!(decide::buyers_now)}</th>
                    <th class="paper-figure" scope="col">{say!(common::price)}</th>
                    <th class="paper-figure" scope="col">{profit}</th>
                </tr>
            </thead>
            <tbody>{decision.rows.iter().take(LISTED).filter_map(row).collect_view()}</tbody>
        </table>
        {more}
    }
    .into_any()
}

/// Cards, kinds and stock.
fn kept(asking: Asking) -> Vec<(String, String)> {
    let Some((now, then)) = asking.kept() else { return Vec::new() };
    let both = |name: &'static str, now: String, then: String| {
        (name.to_string(), say!(decide::now_to_then, now = now, then = then))
    };
    let money = |money| asking.state.money(money);
    vec![
        both(say!(common::recipe_cards), words::count(now.cards), words::count(then.cards)),
        both(say!(decide::container_types), words::count(now.vessels), words::count(then.vessels)),
        both(say!(decide::opening_stock), money(now.cash), money(then.cash)),
    ]
}

/// What is paid once, and when it is back.
fn once(asking: Asking, decision: &Decision) -> Vec<String> {
    let Ok((found, cost)) = asking.once() else { return Vec::new() };
    let payback = decision.payback(asking.share(), cost).ok();
    let payback = payback.map(|payback| asking.said(|words| words.payback(&payback))).unwrap_or_default();
    let all = say!(decide::one_time_figure, cost = asking.state.money(cost), payback = payback);
    let orders = found.orders.iter().map(|order| asking.said(|words| words.first_order(order)));
    let left = found.left_over.iter().map(|left| asking.said(|words| words.left_over(left)));
    std::iter::once(all).chain(orders.take(FEW)).chain(left.take(FEW)).collect()
}

/// The trial that there is, with what it shows; or how long one must be to tell.
fn trial(asking: Asking, decision: &Decision) -> Vec<String> {
    let name = asking.said(|words| words.heading(asking.of.goes, asking.of.comes, &asking.stays()));
    let running = asking.state.book.with(|book| {
        let trial = trial_for(book, asking.of.scope, &name)?;
        Some((trial.start, asking.state.ledger.with(|ledger| judge(book, ledger, trial, asking.day))))
    });
    match running {
        Some((start, Ok(judged))) => {
            if start > asking.day {
                return vec![say!(sales::trial_begins, day = words::day(start))];
            }
            let since = say!(sales::trial_began, day = words::day(start));
            let verdict = words::verdict(judged.verdict).to_string();
            let speaker = asking.state.speaker.get();
            let range = judged.interval.map(|interval| {
                say!(
                    sales::named_figure,
                    name = say!(sales::likely_range),
                    figure = words::trial_interval(&interval, &speaker)
                )
            });
            let said = say!(sales::named_figure, name = since, figure = verdict);
            [Some(said), range].into_iter().flatten().collect()
        }
        Some((_, Err(error))) => vec![words::overflow(error)],
        // What cannot pay is not tried.
        None if matches!(decision.verdict, Verdict::CannotPay { .. } | Verdict::CannotPayNew { .. })
            && !asking.pays(decision) =>
        {
            Vec::new()
        }
        None => {
            let gain = decision.gain(asking.share()).unwrap_or_default();
            let weeks = asking.menu(|menu| menu.swing()).ok().map(|swing| swing.weeks_to_tell(gain).ok().flatten());
            let counted = |weeks: u32| asking.state.speaker.get().counted(Exact::from(weeks));
            vec![match weeks {
                Some(Some(weeks)) if weeks > MOST_WEEKS => say!(sales::trial_cannot_tell, weeks = counted(weeks)),
                Some(Some(weeks)) => say!(sales::plan_of_weeks, weeks = counted(weeks)),
                Some(None) => say!(sales::trial_never_tells).to_string(),
                None => say!(sales::plan_unknown).to_string(),
            }]
        }
    }
}

/// What the figures count on.
fn assumptions(asking: Asking, decision: &Decision) -> Vec<String> {
    let hands = asking.told.with(|told| told.hands);
    let labor = match hands {
        Hands::Counted => say!(sales::labor_counted),
        Hands::LeftOut => say!(sales::labor_left_out),
    };
    let left_out = decision.unknown.iter().take(FEW);
    let left_out = left_out.map(|(offer, why)| asking.said(|words| words.not_counted(*offer, *why)));
    let sure = [
        asking.said(|words| words.sales_basis(decision)),
        labor.to_string(),
        say!(decide::overhead_left_out).to_string(),
    ];
    sure.into_iter().chain(left_out).collect()
}
