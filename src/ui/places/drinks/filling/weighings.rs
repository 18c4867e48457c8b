//! The packages that were weighed or measured, and how warm they were.

use leptos::ev;
use leptos::prelude::*;

use super::{changed, filling};
use crate::book::{Book, OfferId};
use crate::drink::label::Law;
use crate::drink::packaged::{Waters, counted_at};
use crate::foundation::measure::{Amount, Dimension, Wanted, read_amount};
use crate::say;
use crate::ui::fields::{self, Ask, Entry, Hangs};
use crate::ui::live::{live, press, text};
use crate::ui::state::AppState;
use crate::words;

/// Net contents as they are typed: by volume or by weight.
fn net_contents(book: &Book) -> Wanted {
    Wanted { dimensions: &[Dimension::Volume, Dimension::Mass], unit: book.settings().units.drink_unit() }
}

/// The temperature of the drink when it was measured, and each package weighed.
#[component]
pub fn Weighings(
    /// The offer.
    id: OfferId,
    /// The answers that hang on its fields.
    hangs: Hangs,
) -> impl IntoView {
    let state = AppState::here();
    let typed = RwSignal::new(String::new());
    let refused = RwSignal::new(String::new());
    let read = move || -> Result<Amount, String> {
        let units = state.units();
        let wanted = state.book.with(net_contents);
        let read = read_amount(&typed.get(), wanted, units, state.speaker.get().style());
        read.map_err(|error| words::read_error(&error, &words::example(wanted.unit, units)))
    };
    let error = text(move || {
        let wrong = if typed.with(|typed| typed.trim().is_empty()) { None } else { read().err() };
        wrong.unwrap_or_else(|| refused.get())
    });
    let add = move || {
        let added = untrack(read).and_then(|net| {
            let edit = state.book.with_untracked(|book| changed(book, id, |it| it.nets.push(net)));
            edit.map_or(Ok(()), |edit| state.apply(say!(labels::add_weighing), edit))
        });
        match added {
            Ok(()) => {
                typed.set(String::new());
                refused.set(String::new());
            }
            Err(sentence) => refused.set(sentence),
        }
    };
    let nets = move || state.book.with(|book| filling(book, id).map(|it| it.nets.clone()).unwrap_or_default());
    let net = move |(place, net): (usize, Amount)| {
        let shown = state.amount(net);
        let label = say!(labels::remove_weighing_of, number = (place + 1).to_string(), net = &shown);
        let remove = move || {
            let edit = state.book.with_untracked(|book| {
                changed(book, id, |it| {
                    if place < it.nets.len() {
                        it.nets.remove(place);
                    }
                })
            });
            // Taking a weighing out is never refused.
            let _ = edit.map(|edit| state.apply(say!(labels::remove_weighing), edit));
        };
        view! {
            <li>
                <button class="chip" aria-label=label on:click=press(remove)>
                    {shown}
                </button>
            </li>
        }
    };
    let measured_at = text(move || {
        let measured = state.book.with(|book| filling(book, id)?.measured_at);
        measured.map(|measured| state.temperature(measured)).unwrap_or_default()
    });
    let note = text(move || {
        state.book.with(|book| {
            let Some(filling) = filling(book, id) else { return String::new() };
            let refrigerated = book.drink(id.drink).is_some_and(|drink| drink.keep_refrigerated);
            let law = Law::of(book.settings());
            let waters = Waters::of(filling, law, refrigerated);
            match waters {
                Ok(waters) => {
                    words::measured_at(counted_at(filling.rule, law, refrigerated), filling.measured_at.zip(waters))
                }
                Err(error) => words::overflow(error),
            }
        })
    });
    view! {
        <div class="fields">
            <Entry
                label=say!(labels::measured_at)
                hangs
                example=fields::Example::Temperature.said(&state.speaker.get_untracked())
                note
                value=measured_at
                commit=fields::optional_temperature(say!(labels::measured_at), move |book, temperature| {
                    changed(book, id, |it| it.measured_at = temperature)
                })
            />
        </div>
        <form
            class="weigh"
            on:submit=move |event: ev::SubmitEvent| {
                event.prevent_default();
                add();
            }
        >
            <Ask label=say!(labels::package_net_contents) units=fields::units(net_contents) text=typed error=error />
            <button class="button" type="submit">
                {say!(labels::add_weighing)}
            </button>
        </form>
        <ol class="chips" aria-label=say!(labels::weighings)>
            {live(move || nets().into_iter().enumerate().map(net).collect_view().into_any())}
        </ol>
    }
}
