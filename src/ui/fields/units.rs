//! The unit beside a number. A number alone takes it; a unit that is typed moves it.

use std::sync::Arc;

use leptos::ev;
use leptos::prelude::*;
use web_sys::HtmlSelectElement;

use crate::book::Book;
use crate::foundation::jump::Figure;
use crate::foundation::measure::{LengthUnit, System, Unit, Wanted, read_amount, read_number};
use crate::say;
use crate::ui::live::{live, text};
use crate::ui::state::AppState;
use crate::words;

/// The units that a field offers to people of a system, each by its symbol and as they write it.
type Offered = Vec<(&'static str, &'static str)>;

/// What is typed with a unit, written so that it means the same wherever it is read.
type Clear = Arc<dyn Fn(&str) -> Option<String> + Send + Sync>;

/// What a unit of an amount or a length is called, by its symbol.
fn called(symbol: &'static str, system: System) -> &'static str {
    let length = || LengthUnit::from_symbol(symbol).map_or(symbol, words::length_unit);
    Unit::from_symbol(symbol).map_or_else(length, |unit| words::unit(unit, system))
}

/// The units that a field offers, and the symbol of the one that an empty field begins with.
#[derive(Clone)]
pub struct Units {
    offered: Arc<dyn Fn(System) -> Offered + Send + Sync>,
    clear: Clear,
    usual: Arc<dyn Fn() -> &'static str + Send + Sync>,
}

/// The units of a field for an amount, those of the book first.
pub fn units(wanted: impl Fn(&Book) -> Wanted + Send + Sync + 'static) -> Units {
    let state = AppState::here();
    let dimensions = state.book.with_untracked(|book| wanted(book).dimensions);
    let offered = move |system| {
        let mut offered = Vec::new();
        for of_the_book in [true, false] {
            for dimension in dimensions {
                let fits = |unit: &&Unit| unit.dimension() == *dimension && unit.belongs_to(system) == of_the_book;
                offered.extend(Unit::ALL.iter().filter(fits).map(|unit| (unit.symbol(), words::unit(*unit, system))));
            }
        }
        offered
    };
    let wanted = Arc::new(wanted);
    let read_as = wanted.clone();
    // An ounce that is typed where volumes are is a fluid one.
    let clear = move |text: &str| {
        let (wanted, system) = state.book.with(|book| (read_as(book), book.settings().units));
        let amount = read_amount(text, wanted, system, state.speaker.get().style()).ok()?;
        Some(format!("{} {}", state.number(amount.number), amount.unit.typed_in(system)))
    };
    let usual = move || state.book.with(|book| wanted(book).unit.symbol());
    Units { offered: Arc::new(offered), clear: Arc::new(clear), usual: Arc::new(usual) }
}

/// The units of a field for a length.
pub fn length_units() -> Units {
    let state = AppState::here();
    let offered = |_| LengthUnit::ALL.iter().map(|unit| (unit.symbol(), words::length_unit(*unit))).collect();
    let usual = move || LengthUnit::of(state.units()).symbol();
    Units { offered: Arc::new(offered), clear: Arc::new(|_| None), usual: Arc::new(usual) }
}

/// The unit beside the number of one field.
#[derive(Clone)]
pub struct Picker {
    state: AppState,
    units: Units,
    /// What is in force, number and unit.
    value: Signal<String>,
    /// What was picked before a number was there, or stood beside one that is gone.
    picked: RwSignal<Option<&'static str>>,
}

impl Picker {
    /// The unit beside the number of a field that shows `value` of what is in force.
    pub fn of(state: AppState, units: Units, value: Signal<String>) -> Picker {
        Picker { state, units, value, picked: RwSignal::new(None) }
    }

    /// The number of a shown text and the symbol of its unit. Returns `None` if the field takes no
    /// such unit: a question may hold such a text.
    fn read(&self, shown: &str) -> Option<(String, &'static str)> {
        let system = self.state.units();
        let figure = Figure::shown(shown, system, self.state.speaker.get().style());
        let (number, unit) = match figure? {
            Figure::Number(_) => return None,
            Figure::Amount(amount) => (amount.number, amount.unit.symbol()),
            Figure::Length(length) => (length.number, length.unit.symbol()),
        };
        let taken = (self.units.offered)(system).into_iter().any(|(symbol, _)| symbol == unit);
        taken.then(|| (self.state.number_of(number, unit), unit))
    }

    /// The number of a text, without its unit.
    pub fn alone(&self, text: String) -> String {
        self.read(&text).map_or(text, |(number, _)| number)
    }

    /// The number in force, without its unit.
    pub fn number(&self) -> String {
        self.alone(self.value.get())
    }

    /// The symbol of the unit that a number alone takes.
    fn unit(&self) -> &'static str {
        let in_force = self.value.with(|value| self.read(value)).map(|(_, unit)| unit);
        in_force.or(self.picked.get()).unwrap_or_else(|| (self.units.usual)())
    }

    /// Whether people type fractions of the unit: of inches, and of pieces.
    pub fn takes_fractions(&self) -> bool {
        [LengthUnit::Inch.symbol(), Unit::Piece.symbol()].contains(&self.unit())
    }

    /// A typed text with its unit: a number alone takes the one beside it.
    pub fn with_unit(&self, text: &str) -> String {
        if text.trim().is_empty() {
            self.stay();
        }
        let full = untrack(|| self.with(text, self.unit()).or_else(|| (self.units.clear)(text)));
        full.unwrap_or_else(|| text.to_string())
    }

    /// The unit of what was in force stays where its number goes: the next one takes it. (Letters on the way to a
    /// unit do not: of "2 lb", "2 l" is two litres.)
    fn stay(&self) {
        let unit = self.value.with_untracked(|value| self.read(value)).map(|(_, unit)| unit);
        self.picked.maybe_update(|picked| {
            let other = unit.is_some() && *picked != unit;
            *picked = unit.or(*picked);
            other
        });
    }

    /// A number with a unit. Returns `None` if the text is no number alone.
    fn with(&self, text: &str, symbol: &str) -> Option<String> {
        read_number(text, self.state.speaker.get().style()).ok()?;
        let system = self.state.units();
        let unit = Unit::from_symbol(symbol).map_or(symbol, |unit| unit.typed_in(system));
        Some(format!("{text} {unit}"))
    }

    /// The list of units, or the only one there is. Picking one keeps the number, which `put`
    /// takes in the unit picked: the first text is the number, the second has its unit.
    pub fn list(
        self,
        label: &str,
        number: impl Fn() -> String + 'static,
        put: impl Fn(String, String) + 'static,
    ) -> AnyView {
        let state = self.state;
        if let [(_, only)] = (self.units.offered)(untrack(|| state.units())).as_slice() {
            return view! { <span class="entry-unit entry-picker">{*only}</span> }.into_any();
        }
        let (shown, offered) = (self.clone(), self.units.offered.clone());
        let system = Memo::new(move |_| state.units());
        let unit = Memo::new(move |_| shown.unit());
        let options = live(move || {
            let now = unit.get_untracked();
            let option = |(symbol, name): (&'static str, &'static str)| {
                view! { <option value=symbol selected=symbol == now>{name}</option> }
            };
            offered(system.get()).into_iter().map(option).collect_view().into_any()
        });
        let chosen = move |event: ev::Event| {
            let list = event_target::<HtmlSelectElement>(&event);
            let chosen = list.value();
            let offered = (self.units.offered)(untrack(|| state.units()));
            if let Some((symbol, _)) = offered.into_iter().find(|(symbol, _)| *symbol == chosen) {
                self.picked.set(Some(symbol));
                let text = number();
                if let Some(full) = untrack(|| self.with(&text, symbol)) {
                    put(text, full);
                }
            }
            // What stands there is what is in force.
            list.set_value(unit.get_untracked());
        };
        // As wide as what it says: browsers make a list as wide as its longest option.
        let letters = text(move || called(unit.get(), system.get()).chars().count().to_string());
        view! {
            <select
                class="entry-picker"
                aria-label=say!(book::unit_of_field, field = label)
                style=("--letters", letters)
                on:change=chosen
                prop:value=unit
            >
                {options}
            </select>
        }
        .into_any()
    }
}
