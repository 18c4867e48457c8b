//! Figures to check: every starting figure that stands, by what it moves on the menu.

use leptos::prelude::*;

use super::starting::{basis_of, confirm_capacity, confirm_figure, unconfirm_capacity, unconfirm_figure};
use crate::app::route::Route;
use crate::book::{Book, Figure};
use crate::buying::figures_to_check::{BY, Moves, ToCheck, Unchecked, figures_to_check, unchecked};
use crate::foundation::measure::{Money, System};
use crate::say;
use crate::ui::live::{press, text, when};
use crate::ui::parts::Back;
use crate::ui::section;
use crate::ui::starter;
use crate::ui::state::AppState;
use crate::words::{Speaker, starting};

/// A link to the figures to check, with how many there are. Draws nothing where there are none.
pub(super) fn link() -> AnyView {
    let state = AppState::here();
    let count = Memo::new(move |_| state.book.with(|book| unchecked(book).count()));
    when(
        move || count.get() > 0,
        move || {
            let said = text(move || say!(starter::figures_of, figures = count.get().to_string()));
            view! { <a class="button" href=Route::FiguresToCheck.address()>{said}</a> }.into_any()
        },
    )
}

/// Figures to check. The rows stay as long as the page is open: nothing moves under the finger.
#[component]
pub fn FiguresToCheck() -> impl IntoView {
    let state = AppState::here();
    let found = state.book.with_untracked(|book| state.ledger.with_untracked(|ledger| figures_to_check(book, ledger)));
    let left = move || state.book.with(|book| unchecked(book).next().is_some());
    let first = text(move || say!(starter::most_first, share = state.speaker.get().short_percent(BY, 0)));
    // The numbers of foods are in the list.
    starter::ask();
    let (moving, still): (Vec<ToCheck>, Vec<ToCheck>) = found.into_iter().partition(|it| it.moves != Moves::Nothing);
    let rows = |some: Vec<ToCheck>| some.into_iter().map(|it| row(state, it)).collect_view();
    let about = (!moving.is_empty()).then(|| view! { <p class="about">{first} " " {say!(starter::confirmed_by)}</p> });
    let folded = (!still.is_empty()).then(|| {
        let figures = still.len();
        view! {
            <details class="more" open=moving.is_empty()>
                <summary>{say!(starter::no_effect_yet, figures = figures)}</summary>
                <ul class="to-check">{rows(still)}</ul>
            </details>
        }
    });
    view! {
        <Back to=Route::Buying name=say!(first::buying) />
        <h1>{say!(starter::figures_to_check)}</h1>
        {about}
        <ul class="to-check">{rows(moving)}</ul>
        {folded}
        {when(move || !left(), || view! { <p class="hollow" role="status">{say!(starter::none_left)}</p> }.into_any())}
    }
}

/// One figure: whose it is, what it is, where it is from, what it moves.
fn row(state: AppState, it: ToCheck) -> AnyView {
    let said = |say: fn(&ToCheck, &Book, &Speaker) -> String| {
        state.book.with_untracked(|book| state.speaker.with_untracked(|speaker| say(&it, book, speaker)))
    };
    let (name, figure) = (said(name), said(figure));
    let basis = match it.figure {
        Unchecked::Ingredient(id, figure) => basis_of(state, id, figure),
        Unchecked::Container(..) => Signal::stored(say!(starter::usual_capacity).to_string()),
    };
    let moves = moves(it.moves, state);
    let of = say!(starter::figure_of, figure = figure_name(&it, state.units()), name = &name);
    let address = Route::of_record(it.figure.record()).unwrap_or(Route::Buying).address();
    let wants = section::wants(address.clone(), part_of_page(&it));
    view! {
        <li class="to-check-row">
            <a href=address on:click=wants>{name}</a>
            <strong class="to-check-moves">{moves}</strong>
            <span>{figure}</span>
            {confirming(state, it, of)}
            <span class="soft to-check-basis">{basis}</span>
        </li>
    }
    .into_any()
}

/// What a figure moves, as more or less that is paid.
fn moves(moves: Moves, state: AppState) -> String {
    let size = |money: Money| Money::from_major(money.major().abs());
    match moves {
        Moves::PerWeek(less) if less.is_negative() => {
            say!(starter::costs_less_per_week, money = state.money(size(less)))
        }
        Moves::PerWeek(more) => say!(starter::costs_more_per_week, money = state.money(more)),
        Moves::PerDrink(less) if less.is_negative() => {
            say!(starter::costs_less_per_drink, money = state.fine_money(size(less)))
        }
        Moves::PerDrink(more) => say!(starter::costs_more_per_drink, money = state.fine_money(more)),
        Moves::Nothing => say!(starter::moves_nothing).to_string(),
    }
}

/// The button that confirms a figure; after that, in its place, what was done and the way back.
fn confirming(state: AppState, it: ToCheck, of: String) -> AnyView {
    let stands = Memo::new(move |_| state.book.with(|book| unchecked(book).any(|other| other == it.figure)));
    let confirm = move || match it.figure {
        Unchecked::Ingredient(id, figure) => confirm_figure(state, id, figure.figure),
        Unchecked::Container(id, _) => confirm_capacity(state, id),
    };
    let undo = move || match it.figure {
        Unchecked::Ingredient(id, figure) => unconfirm_figure(state, id, figure),
        Unchecked::Container(id, brimful) => unconfirm_capacity(state, id, brimful),
    };
    let label = text(move || {
        if stands.get() {
            say!(starter::confirm_named, figure = &of)
        } else {
            say!(starter::undo_confirm, figure = &of)
        }
    });
    let name = text(move || if stands.get() { say!(starter::confirm) } else { say!(starter::undo) }.to_string());
    let done = text(move || if stands.get() { "" } else { say!(starter::confirmed) }.to_string());
    view! {
        <span class="to-check-act">
            <span class="soft" role="status">{done}</span>
            " "
            <button
                class="button"
                type="button"
                aria-label=label
                on:click=press(move || if stands.get_untracked() { confirm() } else { undo() })
            >
                {name}
            </button>
        </span>
    }
    .into_any()
}

/// The part of its page that a figure stands in.
fn part_of_page(it: &ToCheck) -> &'static str {
    match it.figure {
        Unchecked::Container(..) => say!(goods::capacity),
        Unchecked::Ingredient(_, starting) => match starting.figure {
            Figure::TrimYield | Figure::PressYield => say!(goods::yields),
            Figure::Density | Figure::JuiceDensity | Figure::PieceWeight => say!(goods::weight_and_volume),
        },
    }
}

fn name(it: &ToCheck, book: &Book, _: &Speaker) -> String {
    book.name(it.figure.record())
}

fn figure_name(it: &ToCheck, units: System) -> &'static str {
    match it.figure {
        Unchecked::Ingredient(_, starting) => starting::figure(starting.figure, units),
        Unchecked::Container(..) => say!(goods::brimful_capacity),
    }
}

/// The figure by its name and value.
fn figure(it: &ToCheck, book: &Book, speaker: &Speaker) -> String {
    let units = book.settings().units;
    let value = match it.figure {
        Unchecked::Ingredient(_, starting) => starting::value(starting, units, speaker),
        Unchecked::Container(_, brimful) => speaker.amount(brimful),
    };
    say!(starter::figure_and_value, figure = figure_name(it, units), value = value)
}
