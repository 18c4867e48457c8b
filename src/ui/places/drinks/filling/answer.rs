//! What to fill to: the answer first, then what is given away, then how it came about.

use leptos::prelude::*;

use crate::book::{FillRule, OfferId};
use crate::drink::packaged::{PackagedFill, packaged_fill, pour};
use crate::foundation::measure::{Exact, Volume};
use crate::say;
use crate::ui::live::{live, press, trouble, when};
use crate::ui::parts::{Figure, Named, figures};
use crate::ui::state::AppState;
use crate::words;
use crate::working::{OfPackaged, Shown};

/// The fill target, or why there is none.
#[component]
pub fn Answer(
    /// The offer.
    id: OfferId,
) -> impl IntoView {
    let state = AppState::here();
    let found = move || {
        state.book.with(|book| {
            let offer = book.offer(id)?;
            let rule = offer.filling.as_ref()?.rule;
            let fill = packaged_fill(book, offer).map_err(|error| words::packaged_error(&error, book));
            Some(fill.map(|fill| (fill, rule)))
        })
    };
    let fill = Memo::new(move |_| found().and_then(Result::ok));
    let missing = move || found().and_then(Result::err);
    view! {
        {trouble(missing)}
        {live(move || fill.get().map_or_else(|| ().into_any(), |(fill, _)| answer(state, id, &fill)))}
        {when(
            move || fill.with(Option::is_some),
            move || {
                view! {
                    <details class="more">
                        <summary>{say!(common::show_the_math)}</summary>
                        {live(move || fill.get().map_or_else(|| ().into_any(), |(fill, rule)| how(state, id, &fill, rule)))}
                    </details>
                }
                    .into_any()
            },
        )}
    }
}

/// Whether two fills are told apart: a container is poured up to a target to the digits that a book
/// keeps, and what is shown alike is not worth a step.
fn differs(state: AppState, poured: Volume, target: Volume) -> bool {
    let apart = poured.minus(target).is_ok_and(|off| off.millilitres().abs() > Exact::new(1, 3));
    apart && state.fill(poured) != state.fill(target)
}

/// A figure of a fill by its name.
fn named(id: OfferId, name: &str, of: OfPackaged, figure: String) -> Named {
    (name.to_string(), figure, Some(Shown::Packaged(id, of)))
}

fn answer(state: AppState, id: OfferId, fill: &PackagedFill) -> AnyView {
    let target = fill.target;
    let giveaway = [
        named(id, say!(labels::giveaway_per_package), OfPackaged::Giveaway, state.fine_volume(target.giveaway)),
        named(id, say!(labels::giveaway_cost), OfPackaged::GiveawayCost, state.fine_money(fill.giveaway_cost)),
        (say!(labels::giveaway_per_year).to_string(), state.volume(fill.giveaway_in_a_year), None),
        named(
            id,
            say!(labels::giveaway_cost_per_year),
            OfPackaged::GiveawayCostInAYear,
            state.money(fill.giveaway_cost_in_a_year),
        ),
    ];
    let warnings: Vec<AnyView> = state
        .book
        .with(|book| words::packaged_cautions(fill, book))
        .into_iter()
        .map(|sentence| view! { <p class="trouble">{sentence}</p> }.into_any())
        .collect();
    let edit = fill.to_pour().filter(|target| differs(state, fill.poured, *target)).and_then(|target| {
        state.book.with(|book| pour(book.container(id.container)?, target, book.settings().units.drink_unit()))
    });
    let set = edit.map(|edit| {
        let pour = move || {
            // The target was checked to fit the container, so it is not refused.
            let _ = state.apply(say!(labels::set_fill_step), edit.clone());
        };
        view! {
            <p class="actions">
                <button class="button" on:click=press(pour)>
                    {say!(labels::set_fill, fill = state.fill(target.target))}
                </button>
            </p>
        }
    });
    view! {
        <dl class="figures">
            <Figure
                name=say!(labels::fill_to)
                large=true
                how=Some(Shown::Packaged(id, OfPackaged::Target))
                value=Signal::stored(state.fill(target.target))
            />
        </dl>
        <p class="about">{words::fill_to_means(fill)}</p>
        <dl class="figures">{figures(move || giveaway.to_vec())}</dl>
        {warnings}
        {set}
    }
    .into_any()
}

fn how(state: AppState, id: OfferId, fill: &PackagedFill, rule: FillRule) -> AnyView {
    let volume = |volume| state.fine_volume(volume);
    let spread = |number| volume(Volume::from_millilitres(number));
    let plain = |name: &str, figure: String| (name.to_string(), figure, None);
    let apart = fill.measured.is_some_and(|(_, waters)| waters.by_law != waters.measured);
    let declared = if apart { say!(labels::labeled_size_as_measured) } else { say!(labels::labeled_size) };
    let tolerance = fill.single.map(|single| plain(say!(labels::allowed_variation), volume(single.tolerance)));
    let shown: Vec<Named> = [
        (say!(labels::current_fill).to_string(), volume(fill.poured), Some(Shown::Poured(id.container))),
        plain(declared, volume(fill.nominal)),
    ]
    .into_iter()
    .chain(tolerance)
    .chain([
        plain(say!(labels::packages_weighed), state.number(Exact::from(fill.spread.count))),
        named(id, say!(labels::average_weighed), OfPackaged::Mean, spread(fill.spread.mean)),
        named(id, say!(labels::standard_deviation), OfPackaged::Spread, spread(fill.spread.deviation)),
        named(id, say!(labels::fullest_package), OfPackaged::Highest, volume(fill.target.highest)),
        named(id, say!(labels::room_in_container), OfPackaged::Room, volume(fill.room)),
    ])
    .collect();
    let means = words::fill_target_means(fill, rule).into_iter().map(|said| view! { <p class="about">{said}</p> });
    view! {
        <dl class="figures">{figures(move || shown.clone())}</dl>
        {means.collect_view()}
    }
    .into_any()
}
