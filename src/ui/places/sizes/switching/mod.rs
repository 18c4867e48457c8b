//! Switching sizes.

mod asking;
mod curve;
mod drinks;
mod once;

use std::sync::Arc;

use leptos::prelude::*;

use super::asked;
use asking::Asking;
use curve::Kept;
use drinks::{Drinks, Prices};
use once::Once;

use crate::app::route::{Route, scope_from_text, scope_text};
use crate::book::{ContainerId, Key};
use crate::say;
use crate::sizes::side_by_side::sold_in;
use crate::sizes::switching::{Question, SwitchError, sell_in_the_new_size};
use crate::ui::fields::{Choice, Choose};
use crate::ui::live::{live, press, text, trouble, when};
use crate::ui::parts::{Back, Section};
use crate::ui::state::AppState;
use crate::words;

/// Switching sizes.
#[component]
pub fn Switching() -> impl IntoView {
    let state = AppState::here();
    let asking = Asking::new(state);
    let any = move || asking.question().is_some();
    let teach = || {
        view! {
            <div class="teach">
                <h2>{say!(decide::switch_teach)}</h2>
                <p>{say!(decide::switch_teach_about)}</p>
            </div>
        }
        .into_any()
    };
    view! {
        <Back to=Route::Sizes name=say!(first::sizes) />
        <h1>{say!(decide::switch_sizes)}</h1>
        <p class="about">{say!(decide::switch_sizes_explained)}</p>
        {when(move || !any(), teach)}
        {when(any, move || view! { <Page asking /> }.into_any())}
    }
}

#[component]
fn Page(asking: Asking) -> impl IntoView {
    let state = AppState::here();
    let done = RwSignal::new(false);
    let refused = RwSignal::new(None::<String>);
    let error =
        move || asking.answer.with(|answer| answer.as_ref().and_then(|(_, found)| found.as_ref().err().copied()));
    let changed = move || done.get() && matches!(error(), Some(SwitchError::NotSold(_)));
    let sentence = move || {
        error().filter(|_| !changed()).map(|error| state.book.with(|book| words::switching::switch_error(&error, book)))
    };
    let sold = text(move || match asking.question().filter(|_| changed()) {
        Some(question) => {
            let name = state.book.with(|book| book.name(Key::Container(question.to)));
            say!(decide::now_sold_in, size = name)
        }
        None => String::new(),
    });
    let sell = move || {
        let Some((question, switch)) = untrack(|| asking.found()) else { return };
        let kept = asking.kept.get_untracked();
        let edit = state.book.with_untracked(|book| sell_in_the_new_size(book, question, &switch, kept));
        asking.ask(question);
        let applied = edit.map_err(words::overflow).and_then(|edit| state.apply(say!(decide::switch_sizes), edit));
        done.set(applied.is_ok());
        refused.set(applied.err());
    };
    let label = text(move || {
        let name = |question: Question| state.book.with(|book| book.name(Key::Container(question.to)));
        asking.question().map(|question| say!(decide::switch_to, size = name(question))).unwrap_or_default()
    });
    let one = move || {
        !asking.hangs.is_unread()
            && asking.found().is_some_and(|(_, switch)| switch.drinks.iter().any(|drink| drink.then.is_ok()))
    };
    view! {
        <Which asking />
        {trouble(sentence)}
        <p class="hollow" role="status">{sold}</p>
        {when(
            move || asking.found().is_some(),
            move || {
                view! {
                    <Prices asking />
                    <Section heading=say!(decide::break_even_sales)>
                        {asking.hangs.answer(move || view! {
                            {live(move || answered(state, asking))}
                            <Drinks asking />
                        }.into_any())}
                    </Section>
                    <Kept asking />
                    <Once asking />
                }
                    .into_any()
            },
        )}
        {when(
            one,
            move || {
                view! {
                    <p class="about">
                        {say!(decide::switch_explained)}
                    </p>
                    <p class="actions">
                        <button class="main" on:click=press(sell)>
                            {label}
                        </button>
                    </p>
                }
                    .into_any()
            },
        )}
        {trouble(move || refused.get())}
    }
}

#[component]
fn Which(asking: Asking) -> impl IntoView {
    let state = AppState::here();
    let scopes = Signal::derive(move || state.book.with(|book| asked::scope_options(book, asked::scopes(book))));
    let sold = Signal::derive(move || {
        let Some(question) = asking.question() else { return Vec::new() };
        state.book.with(|book| {
            let mut sold = sold_in(book, question.scope);
            if !sold.contains(&question.from) {
                sold.push(question.from);
            }
            asked::container_options(book, sold)
        })
    });
    let all = Signal::derive(move || state.book.with(|book| asked::container_options(book, asked::containers(book))));
    let value = move |read: fn(Question) -> String| text(move || asking.question().map(read).unwrap_or_default());
    let gone = || say!(decide::gone_choose_another).to_string();
    let choose = move |change: fn(Question, &str) -> Option<Question>| -> Choose {
        Arc::new(move |value| {
            let question = untrack(|| asking.question()).and_then(|question| change(question, value));
            asking.ask(question.ok_or_else(gone)?);
            Ok(())
        })
    };
    let scope: Choose = Arc::new(move |value| {
        let scope = scope_from_text(value).ok_or_else(gone)?;
        asking.choose(scope);
        Ok(())
    });
    view! {
        <Section heading=say!(decide::sizes_to_switch)>
            <div class="fields">
                <Choice
                    label=say!(decide::which_drinks)
                    options=scopes
                    value=value(|question| scope_text(question.scope))
                    choose=scope
                />
                <Choice
                    label=say!(decide::current_size)
                    options=sold
                    value=value(|question| question.from.to_string())
                    choose=choose(|question, value| Some(Question { from: ContainerId::from_text(value)?, ..question }))
                />
                <Choice
                    label=say!(decide::new_size)
                    options=all
                    value=value(|question| question.to.to_string())
                    choose=choose(|question, value| Some(Question { to: ContainerId::from_text(value)?, ..question }))
                />
            </div>
        </Section>
    }
}

/// The large answer, with its elasticity in words.
fn answered(state: AppState, asking: Asking) -> AnyView {
    let Some((question, switch)) = asking.found() else { return ().into_any() };
    let basis = words::switching::counted_with(switch.sales);
    let sales = (!basis.is_empty()).then(|| {
        view! {
            <p class="about">
                {basis} " " <a href=Route::Sales.address()>{say!(sales::enter_weekly_sales)}</a>
            </p>
        }
    });
    let Some(together) = switch.together else {
        return view! { <p class="hollow">{say!(decide::no_drink_in_both)}</p> }.into_any();
    };
    state.book.with(|book| {
        let speaker = &state.speaker.get();
        match together.answer {
            Ok(answer) => view! {
                <p class="switch-answer">
                    {words::switching::sell_instead(together.units, &answer, switch.sales, speaker)}
                </p>
                <p class="about">{words::switching::sell_formula(&together, &answer, switch.sales, speaker)}</p>
                <p>{words::switching::elasticity(&answer, speaker)}</p>
                {sales}
            }
            .into_any(),
            // One drink alone says for itself what to mend.
            Err(losing) => {
                let (sides, containers) = ((together.now, together.then), (question.from, question.to));
                let sentence = (switch.drinks.len() > 1).then(|| {
                    words::switching::losing(losing, say!(decide::all_drinks), sides, containers, (book, speaker))
                });
                view! {
                    <p class="switch-answer">{say!(decide::no_break_even)}</p>
                    {sentence.map(|sentence| view! { <p>{sentence}</p> })}
                    {sales}
                }
                .into_any()
            }
        }
    })
}
