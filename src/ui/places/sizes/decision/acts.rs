//! What can be done with a decision: tried, kept, printed, made the menu.

use leptos::prelude::*;

use super::asking::Asking;
use crate::app::route::{Route, Sheet};
use crate::book::{Edit, Offer, Record, ScenarioId};
use crate::say;
use crate::sizes::decision::{Decision, NoAnswer, Verdict};
use crate::ui::address::go;
use crate::ui::live::{live, press, text, trouble, when};
use crate::ui::places::sizes::tried_out::{Takes, TryIt, tried_out};
use crate::ui::random::random;
use crate::ui::section;

/// Longest name of a trial or scenario, in characters.
const NAME_LENGTH: usize = 80;

/// The buttons, and what is said beside them.
#[component]
pub fn Acts(asking: Asking) -> impl IntoView {
    let swings = Memo::new(move |_| asking.menu(|menu| menu.swing()));
    // A trial looks for what the slider stands at; it is worked out anew only where that takes other weeks.
    let gain = move || asking.decided().and_then(|decision| decision.gain(asking.share()).ok()).unwrap_or_default();
    let takes = Memo::new(move |_| {
        swings.with(|found| match found.as_ref().map(|swing| swing.weeks_to_tell(gain())) {
            Ok(Ok(Some(weeks))) => Takes::Weeks(weeks),
            Ok(_) => Takes::TooLong,
            Err(_) => Takes::Unknown,
        })
    });
    let about = text(move || {
        swings.with(|found| match found {
            Ok(swing) => asking.decided().map_or(String::new(), |decision| {
                let then = decision.line.at(asking.share()).unwrap_or(decision.now);
                asking.said(|words| words.swing(swing, decision.now, then))
            }),
            // The button of the trial says so itself.
            Err(_) => String::new(),
        })
    });
    let trial = tried_out(move || {
        let decision = asking.decided()?;
        // What cannot pay is not tried; a trial that there is stays to be seen.
        let lost = matches!(decision.verdict, Verdict::CannotPay { .. } | Verdict::CannotPayNew { .. });
        let offered = !lost || asking.pays(&decision);
        Some(TryIt { scope: asking.of.scope, name: heading(asking), takes: takes.get(), offered })
    });
    // Weeks that are not written down are written down there.
    let can = move || asking.decided().is_some_and(|it| it.verdict.can_pay() || it.needs_new().is_some());
    let unwritten = move || can() && swings.with(|found| matches!(found, Err(NoAnswer::NoWeeks | NoAnswer::OneWeek)));
    let enter = || {
        view! {
            <p class="to-enter">
                <a class="button" href=Route::Sales.address()>
                    {say!(sales::enter_weekly_sales)}
                </a>
            </p>
        }
        .into_any()
    };
    let refused = RwSignal::new(None::<String>);
    let open = RwSignal::new(false);
    let keep = move || {
        let made = untrack(|| made(asking));
        let kept = made
            .and_then(|(id, record)| asking.state.apply(&untrack(|| heading(asking)), Edit::Put(record)).map(|()| id));
        match kept {
            Ok(id) => go(Route::Scenario(id)),
            Err(sentence) => refused.set(Some(sentence)),
        }
    };
    let sheet = Route::Sheet(Sheet::Decision(asking.of)).address();
    let buttons = move || {
        let sheet = sheet.clone();
        view! {
            <p class="actions">
                <button class="button" on:click=press(keep)>{say!(decide::keep_as_scenario)}</button>
                <a class="button" href=sheet>{say!(decide::print_decision)}</a>
                <button class="button" on:click=press(move || open.set(true))>{say!(decide::use_this)}</button>
            </p>
        }
        .into_any()
    };
    view! {
        <section class="section acts">
            {trial}
            <p class="soft">{about}</p>
            {when(unwritten, enter)}
            {asking.hangs.answer(buttons)}
            {when(move || open.get(), move || view! { <UseThis asking open refused /> }.into_any())}
            {trouble(move || refused.get())}
        </section>
    }
}

/// What it is called in a list of trials or scenarios.
pub fn heading(asking: Asking) -> String {
    let name = asking.said(|words| words.heading(asking.of.goes, asking.of.comes, &asking.stays()));
    name.chars().take(NAME_LENGTH).collect()
}

/// The decision as a scenario.
fn made(asking: Asking) -> Result<(ScenarioId, Record), String> {
    let id = ScenarioId::from_random(random());
    let name = heading(asking);
    let made = asking.answer.get().and_then(|decision| {
        let share = asking.share();
        let name = asking.said(|words| words.name_with(&name, &decision.question, share));
        let name: String = name.chars().take(NAME_LENGTH).collect();
        asking.menu(|menu| Ok(menu.scenario(&decision, share, id, &name)?))
    });
    match made {
        Ok(scenario) => Ok((id, Record::Scenario(scenario))),
        Err(why) => Err(asking.said(|words| words.no_answer(&why))),
    }
}

/// Exactly what becomes of the menu, and the press that does it.
#[component]
fn UseThis(asking: Asking, open: RwSignal<bool>, refused: RwSignal<Option<String>>) -> impl IntoView {
    let state = asking.state;
    let lists = live(move || {
        let Some(decision) = asking.decided() else { return ().into_any() };
        let item = |line: String| view! { <li>{line}</li> };
        let changes = match changes(asking, &decision) {
            Ok(changes) => changes,
            Err(why) => vec![asking.said(|words| words.no_answer(&why))],
        };
        let cannot: Vec<String> =
            decision.unknown.iter().map(|(offer, why)| asking.said(|words| words.not_counted(*offer, *why))).collect();
        let none = cannot.is_empty();
        let assumes = asking.said(|words| words.assumes(&decision.question, asking.share()));
        view! {
            <p class="assumes">{assumes}</p>
            <ul class="steps">{changes.into_iter().map(item).collect_view()}</ul>
            <div hidden=none>
                <h3>{say!(decide::use_cannot)}</h3>
                <ul class="steps">{cannot.into_iter().map(item).collect_view()}</ul>
            </div>
        }
        .into_any()
    });
    let make_it = move || {
        let applied = untrack(|| {
            let edit = asking.answer.get().and_then(|decision| {
                let share = asking.share();
                asking.menu(|menu| Ok(menu.edit(&decision, share)?))
            });
            match edit {
                Ok(edit) => state.apply(&heading(asking), edit),
                Err(why) => Err(asking.said(|words| words.no_answer(&why))),
            }
        });
        asking.done.set(applied.is_ok());
        refused.set(applied.err());
        open.set(false);
    };
    let top = NodeRef::new();
    section::show(top);
    view! {
        <div class="use-this">
            <h3 node_ref=top tabindex="-1">{say!(decide::use_this_list)}</h3>
            {lists}
            <p class="soft">{say!(decide::use_keeps)}</p>
            <p class="actions">
                <button class="main" on:click=press(make_it)>{say!(decide::change_menu)}</button>
                <button class="quiet" on:click=press(move || open.set(false))>{say!(decide::not_yet)}</button>
            </p>
        </div>
    }
}

/// What becomes of each drink in each size of the part of the menu.
fn changes(asking: Asking, decision: &Decision) -> Result<Vec<String>, NoAnswer> {
    let share = asking.share();
    let then = asking.menu(|menu| Ok(menu.offers_then(decision, share)?))?;
    asking.state.book.with(|book| {
        let today: Vec<&Offer> = book.offers().filter(|offer| book.belongs(offer.drink, asking.of.scope)).collect();
        let is = |offer: &Offer| then.iter().find(|other| other.id() == offer.id());
        let was = |offer: &Offer| today.iter().any(|other| other.id() == offer.id());
        let kept = today.iter().map(|offer| (Some(*offer), is(offer)));
        let new = then.iter().filter(|offer| !was(offer)).map(|offer| (None, Some(offer)));
        Ok(kept.chain(new).flat_map(|(was, then)| asking.said(|words| words.becomes(was, then))).collect())
    })
}
