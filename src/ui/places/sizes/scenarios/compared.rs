//! A scenario's figures beside today's.

use leptos::prelude::*;

use super::{said, then, today};
use crate::book::ScenarioId;
use crate::foundation::measure::{Exact, Money, read_number};
use crate::say;
use crate::sizes::plan::Totals;
use crate::ui::fields::{Ask, Hangs};
use crate::ui::live::{live, text};
use crate::ui::parts::{Section, wide_table};
use crate::ui::state::AppState;
use crate::words;

/// A scenario's figures beside today's.
#[component]
pub fn Compared(
    /// The scenario.
    id: ScenarioId,
) -> impl IntoView {
    let state = AppState::here();
    let weeks = RwSignal::new("4".to_string());
    let read = move || {
        let typed = weeks.get();
        read_number(&typed, state.speaker.get().style()).map_err(|error| words::read_error(&error, "4"))
    };
    let cover = Memo::new(move |before: Option<&Exact>| read().unwrap_or(before.copied().unwrap_or_default()));
    let both = Memo::new(move |_| Some((today(state, cover.get())?, then(state, id, cover.get())?)));
    let against = text(move || {
        let sentence = |(today, then): (Totals, Totals)| said(state, |words| words.against_today(&today, &then));
        both.get().map_or_else(|| words::overflow(crate::foundation::measure::Overflow::TooLarge), sentence)
    });
    let uncounted = move |of: fn((Totals, Totals)) -> Totals, say: fn(String) -> String| {
        text(move || {
            let said = both.get().map(|both| said(state, |it| it.uncounted(&of(both)))).unwrap_or_default();
            if said.is_empty() { said } else { say(said) }
        })
    };
    let here = uncounted(|(_, then)| then, |what| say!(sales::scenario_leaves_out, what = what));
    let today = uncounted(|(today, _)| today, |what| say!(sales::today_leaves_out, what = what));
    let hangs = Hangs::new();
    let lines = move || {
        live(move || {
            let Some((today, then)) = both.get() else { return ().into_any() };
            let count = |name, of: fn(&Totals) -> usize| {
                let [was, is] =
                    [&today, &then].map(|totals| Exact::from(u32::try_from(of(totals)).unwrap_or(u32::MAX)));
                (name, [state.number(was), state.number(is), more(is.minus(was).ok(), |it| state.number(it))])
            };
            let money = |name, of: fn(&Totals) -> Money| {
                let (was, is) = (of(&today), of(&then));
                let difference = is.minus(was).ok().map(Money::major);
                (name, [state.money(was), state.money(is), more(difference, |it| state.money(Money::from_major(it)))])
            };
            let (was, is) = (today.units, then.units);
            let lasts = [&today, &then].map(|totals| said(state, |words| words.cover(totals.weeks)));
            let [lasted, lasts] = lasts;
            let lines = [
                money(say!(common::profit_per_week), |totals| totals.contribution),
                (
                    say!(common::drinks_sold_per_week),
                    [state.number(was), state.number(is), more(is.minus(was).ok(), |it| state.number(it))],
                ),
                count(say!(sales::number_of_sizes), |totals| totals.sizes),
                count(say!(common::recipe_cards), |totals| totals.cards),
                count(say!(first::below_target), |totals| totals.under_target),
                money(say!(sales::opening_stock), |totals| totals.cash),
                (say!(sales::weeks_of_stock), [lasted, lasts, String::new()]),
            ];
            let line = |(name, cells): (&'static str, [String; 3])| {
                view! {
                    <tr>
                        <th scope="row">{name}</th>
                        {cells.map(|cell| view! { <td>{cell}</td> }).collect_view()}
                    </tr>
                }
            };
            lines.map(line).collect_view().into_any()
        })
    };
    let heads = || [say!(common::today), say!(sales::in_this_scenario), say!(sales::difference)];
    let answer = move || {
        view! {
            <p class="plan-said" role="status">{against}</p>
            <p class="hollow">{here}</p>
            <p class="hollow">{today}</p>
            {wide_table(say!(sales::compared_with_today), "table", &heads(), lines())}
        }
        .into_any()
    };
    view! {
        <Section heading=say!(sales::compared_with_today)>
            {hangs.answer(answer)}
            <div class="fields">
                <Ask
                    label=say!(sales::weeks_to_stock)
                    text=weeks
                    error=text(move || read().err().unwrap_or_default())
                    hangs
                />
            </div>
        </Section>
    }
}

/// A difference with its sign.
pub fn more(difference: Option<Exact>, show: impl FnOnce(Exact) -> String) -> String {
    let Some(difference) = difference else { return String::new() };
    let sign = if difference.is_positive() { "+" } else { "" };
    format!("{sign}{}", show(difference))
}
