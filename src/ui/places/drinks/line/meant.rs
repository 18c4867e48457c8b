//! What the amount of a line means: an ingredient at a stage, or ice at its place.

use std::sync::Arc;

use leptos::prelude::*;

use super::{line_changed, line_of};
use crate::book::{Book, DrinkId, Ice, IcePlace, Key, Line, LineId, Stage};
use crate::drink::fill::{mass_of_ice, own_volume};
use crate::foundation::jump::Kind;
use crate::foundation::measure::{Exact, Share, Volume};
use crate::say;
use crate::ui::fields::{self, Choice, Entry, Hangs, asks};
use crate::ui::live::text;
use crate::ui::state::AppState;
use crate::words;

/// A share of ice by which the effect of melting is said while none is typed.
const A_TENTH: Share = Share::from_fraction(Exact::new(1, 1));

/// What the amount of a line means: an ingredient at a stage, or ice at its place.
#[derive(Clone, Copy)]
enum Meant {
    At(Stage),
    Ice(IcePlace),
}

impl Meant {
    fn all() -> impl Iterator<Item = Meant> {
        let stages = Stage::ALL.iter().map(|stage| Meant::At(*stage));
        stages.chain(IcePlace::ALL.iter().map(|place| Meant::Ice(*place)))
    }

    fn of(line: &Line) -> Meant {
        line.ice.map_or(Meant::At(line.stage), |ice| Meant::Ice(ice.place))
    }

    fn key(self) -> String {
        match self {
            Meant::At(stage) => format!("{stage:?}"),
            Meant::Ice(place) => format!("{place:?}"),
        }
    }

    fn words(self) -> &'static str {
        match self {
            Meant::At(stage) => words::stage(stage),
            Meant::Ice(place) => words::ice_use(place),
        }
    }

    fn put(self, line: &mut Line) {
        match self {
            Meant::At(stage) => (line.stage, line.ice) = (stage, None),
            Meant::Ice(place) => {
                let ice = line.ice.map_or(Ice::in_a_scoop(place), |ice| Ice { place, ..ice });
                (line.stage, line.ice) = (Stage::AsBought, Some(ice));
            }
        }
    }
}

/// The choice of what the amount means.
pub fn choose_stage(state: AppState, drink: DrinkId, line: LineId, label: String) -> AnyView {
    let options: Vec<(String, String)> = Meant::all().map(|meant| (meant.key(), meant.words().to_string())).collect();
    let value = text(move || {
        let meant = state.book.with(|book| line_of(book, drink, line).map(Meant::of));
        meant.map(Meant::key).unwrap_or_default()
    });
    let choose = Arc::new(move |chosen: &str| {
        let meant = Meant::all().find(|meant| meant.key() == chosen);
        let edit = state.book.with_untracked(|book| {
            line_changed(book, drink, line, |it| {
                if let Some(meant) = meant {
                    meant.put(it);
                }
            })
        });
        edit.map_or(Ok(()), |edit| state.apply(say!(drinks::prep), edit))
    });
    view! { <Choice label label_hidden=true options value choose /> }.into_any()
}

/// The field for how much of blended ice melts before it is poured; what that does is said beside it.
#[component]
pub(super) fn Melted(drink: DrinkId, line: LineId, hangs: Hangs, name: String) -> impl IntoView {
    let state = AppState::here();
    let melted = text(move || {
        let ice = state.book.with(|book| line_of(book, drink, line).and_then(|line| line.ice));
        ice.map(|ice| state.percent_if_any(ice.melted)).unwrap_or_default()
    });
    let effect = text(move || {
        let found = state.book.with(|book| less_room(book, line_of(book, drink, line)?));
        found
            .map(|(share, less)| {
                say!(
                    drinks::ice_melted_about,
                    share = state.speaker.get().short_percent(share, 0),
                    volume = state.fine_volume(less)
                )
            })
            .unwrap_or_default()
    });
    view! {
        <Entry
            label=say!(drinks::ice_melted_of, name = name)
            hangs
            of=line.number()
            unit="%"
            example=say!(common::none)
            note=effect
            value=melted
            commit=fields::optional_percent(say!(drinks::ice_melted), fields::Example::ProcessLoss, move |book, melted| {
                line_changed(book, drink, line, |it| {
                    it.ice = it.ice.map(|ice| Ice { melted: melted.unwrap_or(Share::ZERO), ..ice });
                })
            })
        />
    }
}

/// How much less room the ice of a line takes, as written, by the share that melts; by a tenth while none does.
fn less_room(book: &Book, line: &Line) -> Option<(Share, Volume)> {
    let ice = line.ice?;
    let melted = if ice.melted.is_zero() { A_TENTH } else { ice.melted };
    let ingredient = book.ingredient(line.ingredient)?;
    let mass = mass_of_ice(ingredient, ice, line.amount.measure().ok()?).ok()?;
    let room = |melted| own_volume(Ice { melted, ..ice }, mass).ok();
    Some((melted, room(Share::ZERO)?.minus(room(melted)?).ok()?))
}

/// The field for how much of a scoop of ice is solid.
#[component]
pub(super) fn Packing(drink: DrinkId, line: LineId, hangs: Hangs, name: String) -> impl IntoView {
    let state = AppState::here();
    let packing = text(move || {
        let ice = state.book.with(|book| line_of(book, drink, line).and_then(|line| line.ice));
        ice.map(|ice| state.plain_percent(ice.packing)).unwrap_or_default()
    });
    view! {
        <Entry
            label=say!(drinks::ice_packing_of, name = name)
            asks=asks(Kind::Yield, Key::Drink(drink), format!("{}/ice-packing", line.number()))
            hangs
            unit="%"
            note=say!(drinks::ice_packing_about)
            value=packing
            commit=fields::percent(say!(drinks::ice_packing), fields::Example::IcePacking, move |book, packing| {
                line_changed(book, drink, line, |it| {
                    it.ice = it.ice.map(|ice| Ice { packing, ..ice });
                })
            })
        />
    }
}
