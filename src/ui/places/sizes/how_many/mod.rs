//! How many sizes.

mod asked;
mod ranked;
mod two;

use std::sync::Arc;

use leptos::prelude::*;

use crate::app::route::{Route, scope_from_text, scope_text};
use crate::book::{ContainerId, DrinkId, Key, Scope};
use crate::say;
use crate::sizes::plan::MOST_CANDIDATES;
use crate::ui::fields::{Ask, Choice};
use crate::ui::live::{live, press, text, trouble, when};
use crate::ui::order;
use crate::ui::parts::{Back, Section};
use crate::ui::state::AppState;
use crate::words;

use asked::{Asked, PER_CENT, Read, WEEKS};
use ranked::Ranked;
use two::TwoPlans;

/// How many sizes.
#[component]
pub fn HowMany() -> impl IntoView {
    let asked = Asked::new(AppState::here());
    let state = asked.state;
    let overflow = move || asked.plans.with(|plans| plans.as_ref().err().copied().map(words::overflow));
    let any = move || asked.plans.with(|plans| plans.as_ref().is_ok_and(|plans| !plans.is_empty()));
    let no_size = move || state.book.with(|book| book.containers().next().is_none());
    let teach = move || {
        view! {
            <p class="hollow">
                {say!(decide::no_containers_yet)} " "
                <a href=Route::Containers.address()>{say!(decide::add_a_container)}</a>
            </p>
        }
        .into_any()
    };
    view! {
        <Back to=Route::Sizes name=say!(first::sizes) />
        <h1>{say!(decide::how_many_sizes)}</h1>
        <p class="about">{say!(decide::how_many_sizes_explained)}</p>
        <p class="hollow">{say!(decide::rule_of_thumb_sizes)}</p>
        {when(no_size, teach)}
        <Asking asked />
        <Mix asked />
        {trouble(overflow)}
        {when(
            any,
            move || {
                view! {
                    {asked.hangs.answer(move || view! { <Ranked asked /> }.into_any())}
                    <TwoPlans asked />
                }
                    .into_any()
            },
        )}
    }
}

/// What to compare, and for how long the stock should last.
#[component]
fn Asking(asked: Asked) -> impl IntoView {
    let state = asked.state;
    let scopes = Signal::derive(move || state.book.with(super::asked::all_scope_options));
    let choose = Arc::new(move |chosen: &str| {
        asked.scope.set(scope_from_text(chosen).unwrap_or(Scope::Menu));
        asked.pressed.set(None);
        asked.own.set(Vec::new());
        Ok(())
    });
    let chip = move |id: ContainerId| {
        let pressed = text(move || asked.sizes_now.with(|sizes| sizes.contains(&id)).to_string());
        view! {
            <button class="chip" aria-pressed=pressed on:click=press(move || asked.press(id))>
                {text(move || state.book.with(|book| book.name(Key::Container(id))))}
            </button>
        }
    };
    let chips = live(move || {
        let all = state.book.with(order::containers);
        let ids = all.into_iter().filter_map(|key| if let Key::Container(id) = key { Some(id) } else { None });
        ids.map(chip).collect_view().into_any()
    });
    let most = text(move || {
        if asked.sizes_now.with(Vec::len) >= MOST_CANDIDATES {
            say!(decide::most_sizes_chosen, most = MOST_CANDIDATES)
        } else {
            String::new()
        }
    });
    let unknown = move || asked.candidates.with(|it| it.without_number().collect::<Vec<DrinkId>>());
    let unknown_said = text(move || {
        let names = unknown().into_iter().map(|id| state.book.with(|book| book.name(Key::Drink(id))));
        say!(decide::assumed_sales_for, drinks = names.collect::<Vec<_>>().join(", "))
    });
    let ask_unknown = move || {
        view! {
            <Ask
                label=say!(decide::assumed_sales)
                text=asked.unknown
                error=asked.error(asked.unknown, Read { example: "25", most: None })
                    hangs=asked.hangs
            />
            <p class="hollow">{unknown_said} " " {say!(decide::assumed_sales_zero)}</p>
        }
        .into_any()
    };
    view! {
        <Section heading=say!(decide::what_to_compare)>
            <Choice label=say!(decide::which_drinks) options=scopes value=text(move || scope_text(asked.scope.get())) choose />
            <div class="chips" role="group" aria-label=say!(decide::sizes_to_compare)>{chips}</div>
            <p class="hollow">{most}</p>
            <div class="fields">
                <Ask
                    label=say!(decide::weeks_to_stock)
                    text=asked.cover
                    error=asked.error(asked.cover, WEEKS)
                    hangs=asked.hangs
                />
                <Ask
                    label=say!(decide::upkeep_per_size)
                    text=asked.keeping
                    error=asked.error(asked.keeping, Read { example: "5.00", most: None })
                    hangs=asked.hangs
                />
            </div>
            {when(move || !unknown().is_empty(), ask_unknown)}
        </Section>
    }
}

/// The owner's guess of what is sold in each size.
#[component]
fn Mix(asked: Asked) -> impl IntoView {
    let state = asked.state;
    let fields = move || {
        let field = move |id: ContainerId| {
            let share = asked.share(id)?;
            let name = state.book.with_untracked(|book| book.name(Key::Container(id)));
            let today = asked.candidates.with_untracked(|it| it.share_today(id)).unwrap_or_default();
            let label = say!(decide::size_share, size = name, share = state.percent(today));
            Some(view! { <Ask label=label text=share error=asked.error(share, PER_CENT) hangs=asked.hangs /> })
        };
        asked.sizes_now.get().into_iter().map(field).collect_view().into_any()
    };
    let sum = text(move || asked.said(|plans| asked.shares_said(plans)));
    when(
        move || asked.sizes_now.with(|sizes| sizes.len() > 1),
        move || {
            view! {
                <Section
                    heading=say!(decide::size_mix)
                    about=say!(decide::size_mix_about)
                >
                    <div class="fields shares">{live(fields)}</div>
                    {asked.hangs.while_read(move || view! { <p class="hollow" role="status">{sum}</p> }.into_any())}
                </Section>
            }
            .into_any()
        },
    )
}
