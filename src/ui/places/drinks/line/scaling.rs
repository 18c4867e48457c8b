//! How a line follows the size, and the step of one that follows in steps.

use std::sync::Arc;

use leptos::prelude::*;

use super::{LIQUID_FIRST, line_changed, line_of};
use crate::book::{Book, Drink, DrinkId, Key, LineId, Scaling};
use crate::foundation::measure::{Amount, Exact, Unit, Wanted};
use crate::say;
use crate::ui::fields::{self, Addition, Choice, Draft, Entry, Field, Hangs, NewThing};
use crate::ui::live::text;
use crate::ui::places::drinks::change::changed;
use crate::ui::state::AppState;
use crate::words;

/// The ways to follow the size, by the key of a choice.
const SCALINGS: [(&str, Scaling); 4] = [
    ("proportion", Scaling::InProportion),
    ("fixed", Scaling::Fixed),
    ("steps", Scaling::Stepped(Amount::new(Exact::ONE, Unit::Piece))),
    ("top-up", Scaling::TopUp),
];

const fn scaling_key(scaling: Scaling) -> &'static str {
    match scaling {
        Scaling::InProportion => "proportion",
        Scaling::Fixed => "fixed",
        Scaling::Stepped(_) => "steps",
        Scaling::TopUp => "top-up",
    }
}

/// Follows the size as chosen; steps are typed first. What was the top-up before follows in
/// proportion.
fn follow(drink: &mut Drink, line: LineId, chosen: &str) {
    for it in &mut drink.lines {
        if it.id != line {
            if chosen == "top-up" && it.scaling == Scaling::TopUp {
                it.scaling = Scaling::InProportion;
            }
            continue;
        }
        it.scaling = match chosen {
            "fixed" => Scaling::Fixed,
            "top-up" => Scaling::TopUp,
            _ => Scaling::InProportion,
        };
    }
}

/// The field of a new step, by what is missing while it is empty.
const STEP: Field = Field::PieceSize;

/// The step of a line that is not in the book yet.
pub(super) const fn new_step(drink: DrinkId, line: LineId) -> Draft {
    Draft { what: NewThing::PieceSize, of: Some(Key::Drink(drink)), id: line.number() }
}

/// The key of the way that is in force, or is typed.
pub(super) fn scaling_of(state: AppState, drink: DrinkId, line: LineId) -> Signal<String> {
    let step = new_step(drink, line);
    text(move || {
        let typed = step.is_open(state).then_some("steps");
        typed.or_else(|| in_book(state, drink, line)).unwrap_or_default().to_string()
    })
}

fn in_book(state: AppState, drink: DrinkId, line: LineId) -> Option<&'static str> {
    state.book.with(|book| line_of(book, drink, line).map(|line| scaling_key(line.scaling)))
}

/// The choice among the ways; `value` is the key of the one in force.
pub(super) fn choose_scaling(
    state: AppState,
    drink: DrinkId,
    line: LineId,
    value: Signal<String>,
    label: String,
) -> AnyView {
    let step = new_step(drink, line);
    let options: Vec<(String, String)> =
        SCALINGS.map(|(key, scaling)| (key.to_string(), words::scaling(scaling).to_string())).to_vec();
    let choose = Arc::new(move |chosen: &str| {
        step.discard(state);
        if untrack(|| in_book(state, drink, line)) == Some(chosen) {
            return Ok(());
        }
        if chosen == "steps" {
            step.begin(state);
            return Ok(());
        }
        let edit = state.book.with_untracked(|book| changed(book, drink, |it| follow(it, line, chosen)));
        edit.map_or(Ok(()), |edit| state.apply(say!(drinks::scaling), edit))
    });
    view! { <Choice label label_hidden=true options value choose /> }.into_any()
}

/// The field for the step.
#[component]
pub(super) fn Step(drink: DrinkId, line: LineId, hangs: Hangs, name: String) -> impl IntoView {
    let state = AppState::here();
    let step = text(move || {
        let scaling = state.book.with(|book| line_of(book, drink, line).map(|it| it.scaling));
        match scaling {
            Some(Scaling::Stepped(step)) => state.amount(step),
            _ => String::new(),
        }
    });
    let wanted = move |book: &Book| Wanted {
        dimensions: LIQUID_FIRST,
        unit: line_of(book, drink, line).map_or(Unit::Piece, |it| it.amount.unit),
    };
    let set = move |book: &Book, step| line_changed(book, drink, line, |it| it.scaling = Scaling::Stepped(step));
    let there =
        move |book: &Book| line_of(book, drink, line).is_some_and(|line| matches!(line.scaling, Scaling::Stepped(_)));
    let new = Addition::of(new_step(drink, line), there, say!(drinks::scaling), move |typed, book| {
        typed
            .amount_such_as(STEP, wanted(book), fields::Example::Step(wanted(book).unit))
            .and_then(|step| set(book, step))
    });
    let example = fields::Example::Step(state.book.with_untracked(|book| wanted(book).unit));
    let example = state.speaker.with_untracked(|speaker| example.said(speaker));
    view! {
        <div class="entry">
            <Entry
                label=say!(drinks::piece_size_of, name = name)
                hangs
                units=fields::units(wanted)
                example
                value=new.value(STEP, step)
                commit=new.commit(STEP, fields::amount(say!(drinks::piece_size), fields::Example::Step, wanted, set))
            />
            {new.needs()}
        </div>
    }
}
