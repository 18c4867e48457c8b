//! What the amount of a line means: an ingredient at a stage, or ice at its place.

use std::sync::Arc;

use leptos::prelude::*;

use super::{line_changed, line_of};
use crate::book::{DrinkId, Ice, IcePlace, Key, Line, LineId, Stage};
use crate::foundation::jump::Kind;
use crate::say;
use crate::ui::fields::{self, Choice, Entry, Hangs, asks};
use crate::ui::live::text;
use crate::ui::state::AppState;
use crate::words;

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
                let packing = line.ice.map_or(Ice::usual_packing(), |ice| ice.packing);
                (line.stage, line.ice) = (Stage::AsBought, Some(Ice { place, packing }));
            }
        }
    }
}

/// The choice of what the amount means.
pub(super) fn choose_stage(state: AppState, drink: DrinkId, line: LineId, label: String) -> AnyView {
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
