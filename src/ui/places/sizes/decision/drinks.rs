//! The drinks of a decision one by one, and how the break-even came about.

use leptos::prelude::*;

use super::answer::slider_label;
use super::asking::Asking;
use super::with_answer;
use crate::app::route::Route;
use crate::book::Key;
use crate::foundation::measure::{Exact, Money, Overflow, Share};
use crate::say;
use crate::sizes::decision::{Decision, Row};
use crate::ui::live::text;
use crate::ui::parts::{Fold, is_wide, wide_table};
use crate::ui::places::sizes::retention::{Retention, retention_chart};
use crate::words::{even_at, even_short, even_whole, overflow, people};

/// Drink by drink, and the math.
#[component]
pub fn ByDrink(asking: Asking) -> impl IntoView {
    let figure = text(move || {
        let drinks = asking.decided().map_or(0, |decision| decision.rows.len());
        say!(decide::drinks_counted, drinks = drinks)
    });
    let at = text(move || {
        let said = |decision: Decision| {
            let at = decision.break_even().ok()??;
            Some(even_short(at, &decision.question, &asking.state.speaker.get()))
        };
        asking.decided().and_then(said).unwrap_or_default()
    });
    let table = with_answer(asking, move |decision| table(asking, decision));
    let math = with_answer(asking, move |decision| math(asking, decision));
    let line = with_answer(asking, move |decision| line(asking, decision).unwrap_or_else(|_| ().into_any()));
    view! {
        <div class="folds by-drink">
            <Fold name=say!(decide::by_drink) figure=figure>{table}</Fold>
            <Fold name=say!(decide::profit_by_buyers) figure=at open=Signal::stored(is_wide())>{line}</Fold>
            <Fold name=say!(decide::show_the_math) figure=Signal::stored(String::new())>{math}</Fold>
        </div>
    }
}

fn table(asking: Asking, decision: &Decision) -> AnyView {
    let state = asking.state;
    let speaker = &state.speaker.get();
    let money = |money: Result<Money, Overflow>| money.map_or_else(overflow, |money| state.money(money));
    let row = |row: &Row| {
        let offer = if asking.adds() { row.then?.offer } else { row.now.or(row.then)?.offer };
        let name = state.book.with(|book| book.name(Key::Offer(offer)));
        let other = if asking.adds() { row.now } else { row.then };
        let nowhere = if asking.adds() { say!(common::none) } else { say!(decide::they_leave) };
        let to = other.map_or(nowhere.to_string(), |other| {
            state.book.with(|book| book.name(Key::Container(other.offer.container)))
        });
        let even = |at| match even_whole(at, &decision.question) {
            all if asking.adds() && all >= Exact::new(100, 0) => say!(decide::even_always).to_string(),
            whole => speaker.number(whole),
        };
        let even = row.break_even.map_or(say!(common::none).to_string(), even);
        Some(view! {
            <tr>
                <th scope="row">
                    <a href=Route::Drink(offer.drink).address()>{name}</a>
                </th>
                <td>{state.number(people(row.weekly.count()))}</td>
                <td>{to}</td>
                <td>{money(row.brought())}</td>
                <td>{money(row.brings_with_others())}</td>
                <td>{even}</td>
            </tr>
        })
    };
    let rows = decision.rows.iter().filter_map(row).collect_view().into_any();
    let heads = if asking.adds() {
        [
            say!(decide::buyers_expected),
            say!(decide::comes_from),
            say!(decide::profit_there),
            say!(decide::profit_here),
            say!(decide::breaks_even),
        ]
    } else {
        [
            say!(decide::buyers_now),
            say!(decide::turns_to),
            say!(decide::profit_now),
            say!(decide::profit_then),
            say!(decide::breaks_even),
        ]
    };
    let whose = asking.adds().then(|| say!(decide::now_of_sizes));
    let basis = asking.said(|words| words.sales_basis(decision));
    let others = asking.said(|words| words.others(decision));
    let left_out = decision.unknown.iter().map(|(offer, why)| asking.said(|words| words.not_counted(*offer, *why)));
    view! {
        {wide_table(say!(decide::by_drink), "table", &heads, rows)}
        <p class="soft">{whose} " " {say!(decide::rows_rounded)} " " {basis} " " {others}</p>
        {left_out.map(|line| view! { <p class="trouble">{line}</p> }).collect_view()}
    }
    .into_any()
}

fn math(asking: Asking, decision: &Decision) -> AnyView {
    let at = decision.break_even().ok().flatten();
    let sum = at.map(|at| asking.said(|words| words.math(decision, at)));
    let tips = decision.tipping().map(|tipping| {
        let speaker = asking.state.speaker.get();
        let number = speaker.rounded(tipping.elasticity, 2);
        let lost = tipping.elasticity.abs().over(Exact::new(100, 0)).map(Share::from_fraction).unwrap_or_default();
        let lost = speaker.percent(lost);
        view! {
            <p>{say!(decide::math_elasticity, lost = lost, elasticity = number)} " " {say!(decide::math_size)}</p>
        }
    });
    view! {
        {sum.map(|sum| view! { <p>{sum}</p> })}
        {tips}
        <p class="soft">{say!(decide::overhead_left_out)}</p>
    }
    .into_any()
}

/// Profit by buyers, with the line of today.
fn line(asking: Asking, decision: &Decision) -> Result<AnyView, Overflow> {
    let (least, most) = asking.ends();
    let share = |percent: Exact| percent.over(Exact::new(100, 0)).map(Share::from_fraction);
    let end = |percent: Exact| Ok::<_, Overflow>((share(percent)?, decision.line.at(share(percent)?)?));
    // Drawn where it is said: at a whole buyer.
    let marked = |at: Share| {
        let whole = even_whole(at, &decision.question);
        let said = even_at(at, &decision.question, &asking.state.speaker.get());
        (whole > least && whole < most).then(|| Ok((share(whole)?, said))).transpose()
    };
    let break_even = decision.break_even()?.map(marked).transpose()?.flatten();
    let retention = Retention {
        across: slider_label(asking),
        line: say!(decide::new_plan).to_string(),
        ends: [end(least)?, end(most)?],
        today: decision.now,
        break_even,
    };
    Ok(retention_chart(asking.state, &retention))
}
