//! A scenario's figures beside today's.

use leptos::prelude::*;

use super::beside::{Figure, figures};
use super::{now, said, then};
use crate::book::ScenarioId;
use crate::foundation::measure::{Exact, read_number};
use crate::say;
use crate::sizes::scenario::{Menu, WeeklyToday};
use crate::ui::fields::{Ask, Hangs};
use crate::ui::live::{live, text};
use crate::ui::parts::{Section, wide_table};
use crate::ui::state::AppState;
use crate::words::{self, Example};

/// A scenario's figures beside today's.
#[component]
pub fn Compared(
    /// The scenario.
    id: ScenarioId,
    /// Today's weekly numbers.
    weekly: Memo<WeeklyToday>,
) -> impl IntoView {
    let state = AppState::here();
    let weeks = RwSignal::new("4".to_string());
    let read = move || {
        let (typed, speaker) = (weeks.get(), state.speaker.get());
        let example = Example::Weeks.said(&speaker);
        read_number(&typed, speaker.style()).map_err(|error| words::read_error(&error, &example))
    };
    let cover = Memo::new(move |before: Option<&Exact>| read().unwrap_or(before.copied().unwrap_or_default()));
    let both = Memo::new(move |_| Some((now(state, weekly, cover.get())?, then(state, id, weekly, cover.get())?)));
    let uncounted = Memo::new(move |_| {
        let of = |menu: &Menu| said(state, |it| it.uncounted(menu));
        both.get().map(|(today, then)| (of(&today), of(&then))).unwrap_or_default()
    });
    // What is left out of both is said once.
    let here = text(move || match uncounted.get() {
        (_, then) if then.is_empty() => then,
        (today, then) if today == then => say!(sales::both_leave_out, what = then),
        (_, then) => say!(sales::scenario_leaves_out, what = then),
    });
    let today = text(move || match uncounted.get() {
        (today, then) if today.is_empty() || today == then => String::new(),
        (today, _) => say!(sales::today_leaves_out, what = today),
    });
    let hangs = Hangs::new();
    let lines = move || {
        live(move || {
            let Some((today, then)) = both.get() else { return ().into_any() };
            let line = |(name, figure): Figure| {
                view! {
                    <tr>
                        <th scope="row">{name}</th>
                        <td>{figure(&today)}</td>
                        <td>{figure(&then)}</td>
                    </tr>
                }
            };
            figures(state).into_iter().map(line).collect_view().into_any()
        })
    };
    let heads = || [say!(common::today), say!(sales::in_this_scenario)];
    let answer = move || {
        view! {
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
