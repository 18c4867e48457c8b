//! The unit beside a number. A number alone takes it; a unit that is typed moves it.

use std::sync::Arc;

use leptos::ev;
use leptos::prelude::*;
use web_sys::HtmlSelectElement;

use crate::book::Book;
use crate::jump::Figure;
use crate::measure::{LengthUnit, Unit, Wanted, read_number};
use crate::ui::live::{flag, live};
use crate::ui::state::AppState;

/// The units that a field offers, each by its symbol and as people of the book write it, and the
/// symbol of the one that an empty field begins with.
#[derive(Clone)]
pub struct Units {
    offered: Arc<dyn Fn() -> Vec<(&'static str, &'static str)> + Send + Sync>,
    usual: Arc<dyn Fn() -> &'static str + Send + Sync>,
}

/// The units of a field for an amount, those of the book first.
pub fn units(wanted: impl Fn(&Book) -> Wanted + Clone + Send + Sync + 'static) -> Units {
    let state = AppState::here();
    let usual = wanted.clone();
    let offered = move || {
        let (dimensions, system) = state.book.with(|book| (wanted(book).dimensions, book.settings().units));
        let mut offered = Vec::new();
        for of_the_book in [true, false] {
            for dimension in dimensions {
                let fits = |unit: &&Unit| unit.dimension() == *dimension && unit.belongs_to(system) == of_the_book;
                offered.extend(Unit::ALL.iter().filter(fits).map(|unit| (unit.symbol(), unit.name_in(system))));
            }
        }
        offered
    };
    Units { offered: Arc::new(offered), usual: Arc::new(move || state.book.with(|book| usual(book).unit.symbol())) }
}

/// The units of a field for a length.
pub fn length_units() -> Units {
    let state = AppState::here();
    let offered = || LengthUnit::ALL.iter().map(|unit| (unit.symbol(), unit.symbol())).collect();
    Units { offered: Arc::new(offered), usual: Arc::new(move || LengthUnit::of(state.units()).symbol()) }
}

/// The unit beside the number of one field.
#[derive(Clone)]
pub struct Picker {
    state: AppState,
    units: Units,
    /// What is in force, number and unit.
    value: Signal<String>,
    /// What was picked before a number was there.
    picked: RwSignal<Option<&'static str>>,
}

impl Picker {
    /// The unit beside the number of a field that shows `value` of what is in force.
    pub fn of(state: AppState, units: Units, value: Signal<String>) -> Picker {
        Picker { state, units, value, picked: RwSignal::new(None) }
    }

    fn in_force(&self) -> Option<(String, &'static str)> {
        let figure = self.state.style.with(|style| self.value.with(|it| Figure::shown(it, self.state.units(), style)));
        let (number, unit) = match figure? {
            Figure::Number(_) => return None,
            Figure::Amount(amount) => (amount.number, amount.unit.symbol()),
            Figure::Length(length) => (length.number, length.unit.symbol()),
        };
        Some((self.state.number(number), unit))
    }

    /// The number in force, without its unit.
    pub fn number(&self) -> String {
        self.in_force().map_or_else(|| self.value.get(), |(number, _)| number)
    }

    /// The symbol of the unit that a number alone takes.
    fn unit(&self) -> &'static str {
        // A question may hold a unit that it does not take: that is no unit for the next number.
        let offered = |unit: &&'static str| (self.units.offered)().iter().any(|(symbol, _)| symbol == unit);
        let in_force = self.in_force().map(|(_, unit)| unit).filter(offered);
        in_force.or(self.picked.get()).unwrap_or_else(|| (self.units.usual)())
    }

    /// Whether people type fractions of the unit: of inches.
    pub fn takes_fractions(&self) -> bool {
        self.unit() == LengthUnit::Inch.symbol()
    }

    /// A typed text with its unit: a number alone takes the one beside it.
    pub fn with_unit(&self, text: &str) -> String {
        untrack(|| self.with(text, self.unit())).unwrap_or_else(|| text.to_string())
    }

    /// A number with a unit; none where the text is no number alone.
    fn with(&self, text: &str, symbol: &str) -> Option<String> {
        self.state.style.with(|style| read_number(text, style)).ok()?;
        let system = self.state.units();
        let unit = Unit::from_symbol(symbol).map_or(symbol, |unit| unit.typed_in(system));
        Some(format!("{text} {unit}"))
    }

    /// The list of units, or the only one there is. Picking one keeps the number, which `put` takes in the unit picked; the
    /// first text is the number, the second has its unit.
    pub fn list(
        self,
        label: String,
        number: impl Fn() -> String + 'static,
        put: impl Fn(String, String) + 'static,
    ) -> AnyView {
        if let [(_, only)] = untrack(|| (self.units.offered)()).as_slice() {
            return view! { <span class="entry-unit entry-picker">{*only}</span> }.into_any();
        }
        let (shown, options) = (self.clone(), self.clone());
        let unit = Memo::new(move |_| shown.unit());
        let option = move |(symbol, name): (&'static str, &'static str)| {
            view! { <option value=symbol selected=flag(move || unit.get() == symbol)>{name}</option> }
        };
        let chosen = move |event: ev::Event| {
            let list = event_target::<HtmlSelectElement>(&event);
            let chosen = list.value();
            let symbol = (self.units.offered)().into_iter().map(|(symbol, _)| symbol).find(|it| *it == chosen);
            let text = number();
            if let Some(symbol) = symbol {
                self.picked.set(Some(symbol));
                if let Some(full) = untrack(|| self.with(&text, symbol)) {
                    put(text, full);
                }
            }
            // What stands there is what is in force.
            list.set_value(unit.get_untracked());
        };
        view! {
            <select class="entry-picker" aria-label=format!("Unit of {label}") on:change=chosen prop:value=unit>
                {live(move || (options.units.offered)().into_iter().map(option).collect_view().into_any())}
            </select>
        }
        .into_any()
    }
}
