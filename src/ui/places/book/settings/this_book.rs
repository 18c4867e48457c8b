//! Whose book it is, its units and its money.

use std::sync::Arc;

use leptos::prelude::*;

use super::{changed, choice, part, shown};
use crate::app::route::Route;
use crate::book;
use crate::foundation::in_order;
use crate::foundation::measure::{Currency, System};
use crate::say;
use crate::ui::fields::{self, Choice, Entry};
use crate::ui::language;
use crate::ui::locale::currency_name;
use crate::ui::state::AppState;
use crate::words;

/// The name, units and currency of the book.
pub(super) fn this_book(state: AppState) -> AnyView {
    let units = [System::UsCustomary, System::Metric, System::Imperial];
    let units = units.map(|units| (words::system(units).to_string(), units)).to_vec();
    let rename = fields::text(say!(book::book_name), |book, name| changed(book, |it| it.name = name));
    let unit = |it: &book::Settings, _| words::system(it.units).to_string();
    let inside = view! {
            <div class="fields">
                <Entry label=say!(common::name) letters=true value=shown(state, |it, _| it.name.clone()) commit=rename />
                {choice(state, say!(book::units), units, unit, |it, units| it.units = units)}
                {currency(state)}
            </div>
            <p class="about">
                {say!(book::units_about)}
            </p>
        <p class="actions">
            <a class="button" href=Route::Shop.address()>
                {say!(book::change_country)}
            </a>
        </p>
    };
    let figure = move || {
        state.book.with(|book| {
            let settings = book.settings();
            [words::system(settings.units), settings.currency.code()].join(" · ")
        })
    };
    part(say!(book::this_book), "", figure, inside.into_any())
}

/// The currency of the book, each with its full name, by their codes.
fn currency(state: AppState) -> AnyView {
    let language = language::language();
    let mut options: Vec<(String, String)> = Vec::new();
    for currency in Currency::all() {
        let option = (currency.code().to_string(), currency_name(&language, currency));
        in_order::insert(&mut options, option, |(other, _), (code, _)| other < code);
    }
    let choose = Arc::new(move |code: &str| {
        let Some(currency) = Currency::from_code(code) else { return Ok(()) };
        let edit = state.book.with_untracked(|book| changed(book, |it| it.currency = currency));
        edit.map_or(Ok(()), |edit| state.apply(say!(book::currency), edit))
    });
    let value = shown(state, |it, _| it.currency.to_string());
    view! { <Choice label=say!(book::currency) options value choose /> }.into_any()
}
