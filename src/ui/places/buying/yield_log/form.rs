//! Writing a weighing down, or correcting one.

use std::sync::Arc;

use leptos::html;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::HtmlElement;

use crate::book::{Book, Edit, Field, IngredientId, Key, Refusal, Weighing};
use crate::buying::yield_log::{juice_weight, take_out, write_down};
use crate::foundation::measure::{Amount, Date, Dimension, Wanted, read_amount};
use crate::say;
use crate::ui::fields::{Ask, Choose, Day, units};
use crate::ui::live::{press, text, trouble, when};
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words;

/// What is typed of a weighing. Nothing of it is in the book before it is written down.
#[derive(Clone, Copy)]
pub struct Form {
    state: AppState,
    id: IngredientId,
    /// The place of the weighing that is corrected. It is `None` for a new one.
    place: RwSignal<Option<usize>>,
    day: RwSignal<Date>,
    bought: RwSignal<String>,
    trimmed: RwSignal<String>,
    juice: RwSignal<String>,
    /// What is missing is said once writing down was tried.
    tried: RwSignal<bool>,
    refused: RwSignal<Option<String>>,
    section: NodeRef<html::Section>,
}

/// What is typed in a field, or what is wrong with it; `None` if nothing is typed.
type Typed = Option<Result<Amount, String>>;

impl Form {
    /// An empty one.
    pub fn new(id: IngredientId) -> Form {
        let empty = || RwSignal::new(String::new());
        Form {
            state: AppState::here(),
            id,
            place: RwSignal::new(None),
            day: RwSignal::new(today()),
            bought: empty(),
            trimmed: empty(),
            juice: empty(),
            tried: RwSignal::new(false),
            refused: RwSignal::new(None),
            section: NodeRef::new(),
        }
    }

    /// Takes a weighing in to correct it.
    pub fn correct(self, place: usize, weighing: Weighing) {
        let state = self.state;
        let shown = |amount: Option<Amount>| amount.map(|amount| untrack(|| state.amount(amount))).unwrap_or_default();
        self.start(Some(place));
        self.day.set(weighing.day);
        self.bought.set(shown(Some(weighing.bought)));
        self.trimmed.set(shown(weighing.trimmed));
        self.juice.set(shown(weighing.pressed));
        let field = self.section.get_untracked().and_then(|section| section.query_selector("input").ok().flatten());
        if let Some(field) = field.and_then(|field| field.dyn_into::<HtmlElement>().ok()) {
            // A field that cannot take the caret is tapped by hand.
            let _ = field.focus();
        }
    }

    fn start(self, place: Option<usize>) {
        self.place.set(place);
        self.tried.set(false);
        self.refused.set(None);
        for text in [self.bought, self.trimmed, self.juice] {
            text.set(String::new());
        }
    }

    fn read(self, text: RwSignal<String>, wanted: fn(&Book) -> Wanted) -> Typed {
        let state = self.state;
        let text = text.get();
        if text.trim().is_empty() {
            return None;
        }
        let units = state.units();
        let wanted = state.book.with(wanted);
        let read = read_amount(&text, wanted, units, state.speaker.get().style());
        Some(read.map_err(|error| words::read_error(&error, &words::example(wanted.unit, units))))
    }

    fn weight(self, text: RwSignal<String>) -> Typed {
        self.read(text, weighed)
    }

    /// The weight of the juice that is typed, by weight or by volume.
    fn juice(self) -> Typed {
        let state = self.state;
        let typed = self.read(self.juice, pressed)?;
        let bought = self.weight(self.bought).and_then(Result::ok);
        let unit = bought.map_or(state.units().buying_weight_unit(), |bought| bought.unit);
        let weighed = |juice| state.book.with(|book| Some(juice_weight(book.ingredient(self.id)?, juice, unit)));
        Some(typed.and_then(|juice| match weighed(juice) {
            Some(weighed) => weighed.map_err(|error| words::yield_log::error(error, untrack(|| state.units()))),
            None => Ok(juice),
        }))
    }

    /// The weighing that is typed. Returns `None` while something of it is missing or cannot be
    /// read.
    fn weighing(self) -> Option<Weighing> {
        Some(Weighing {
            day: self.day.get(),
            bought: self.weight(self.bought)?.ok()?,
            trimmed: self.weight(self.trimmed).transpose().ok()?,
            pressed: self.juice().transpose().ok()?,
        })
    }

    fn edit(self) -> Option<Edit> {
        let state = self.state;
        let weighing = self.weighing()?;
        state.book.with(|book| write_down(book, self.id, self.place.get(), weighing).ok())
    }

    /// Why the book would refuse it, at which field: tried on a book of the ingredient alone.
    fn refusal(self) -> Option<(Field, String)> {
        let state = self.state;
        let edit = self.edit()?;
        state.book.with(|book| {
            let mut draft: Book = book.only(Key::Ingredient(self.id));
            match draft.apply(&edit).err()? {
                refusal @ Refusal::Field { field, .. } => Some((field, words::refusal(&refusal, book))),
                _ => None,
            }
        })
    }

    fn write(self) {
        let state = self.state;
        self.tried.set(true);
        let Some(edit) = untrack(|| self.edit()) else { return };
        let is_old = self.place.get_untracked().is_some();
        let name = if is_old { say!(goods::correct_weighing) } else { say!(goods::add_weighing) };
        match state.apply(name, edit) {
            Ok(()) => self.start(None),
            // It stands at its field.
            Err(_) if untrack(|| self.refusal()).is_some() => {}
            Err(refused) => self.refused.set(Some(refused)),
        }
    }

    fn take_out(self) {
        let state = self.state;
        let Some(place) = self.place.get_untracked() else { return };
        let edit = state.book.with_untracked(|book| {
            let units = book.settings().units;
            take_out(book, self.id, place).map_err(|error| words::yield_log::error(error, units))
        });
        match edit.and_then(|edit| state.apply(say!(goods::remove_weighing), edit)) {
            Ok(()) => self.start(None),
            Err(refused) => self.refused.set(Some(refused)),
        }
    }

    /// The fields.
    pub fn fields(self) -> AnyView {
        let state = self.state;
        let refusal = Memo::new(move |_| self.refusal());
        let error = move |read: fn(Form) -> Typed, field: Field| {
            text(move || {
                let unread = || read(self).and_then(Result::err);
                let refused = || refusal.with(|it| it.as_ref().filter(|it| it.0 == field).map(|it| it.1.clone()));
                unread().or_else(refused).unwrap_or_default()
            })
        };
        let bought = error(|form| form.weight(form.bought), Field::WeighedBought);
        let bought = text(move || match bought.get() {
            none if none.is_empty() && self.tried.get() && self.bought.with(|text| text.trim().is_empty()) => {
                let unit = state.book.with(weighed).unit;
                say!(goods::weight_needed, example = words::example(unit, state.units()))
            }
            error => error,
        });
        let taken_as = text(move || {
            let typed = self.read(self.juice, pressed).and_then(Result::ok);
            let volume = typed.filter(|typed| typed.unit.dimension() == Dimension::Volume);
            let juice = volume.and_then(|_| self.juice()?.ok());
            let said = |juice| words::yield_log::taken_as(juice, &state.speaker.get());
            juice.map(said).unwrap_or_default()
        });
        let choose: Choose = Arc::new(move |chosen| {
            let day = Date::from_text(chosen).ok_or(say!(goods::day_needed))?;
            self.day.set(day);
            Ok(())
        });
        let day = text(move || self.day.get().to_string());
        let heading = text(move || match self.place.get() {
            Some(_) => say!(goods::correct_weighing).to_string(),
            None => say!(goods::new_weighing).to_string(),
        });
        let write = text(move || match self.place.get() {
            Some(_) => say!(goods::save_weighing).to_string(),
            None => say!(goods::add_weighing).to_string(),
        });
        let others = when(
            move || self.place.get().is_some(),
            move || {
                view! {
                    <button class="button" on:click=press(move || self.take_out())>
                        {say!(goods::remove_weighing)}
                    </button>
                    <button class="quiet" on:click=press(move || self.start(None))>
                        {say!(first::cancel)}
                    </button>
                }
                .into_any()
            },
        );
        view! {
            <section class="section" node_ref=self.section>
                <h2>{heading}</h2>
                <div class="fields">
                    <Ask label=say!(goods::weight_as_purchased) units=units(weighed) text=self.bought error=bought />
                    <Ask
                        label=say!(goods::trimmed_weight)
                        units=units(weighed)
                        text=self.trimmed
                        error=error(|form| form.weight(form.trimmed), Field::WeighedTrimmed)
                    />
                    <div class="entry">
                        <Ask
                            label=say!(goods::juice_weight)
                            units=units(pressed)
                            text=self.juice
                            error=error(|form| form.juice(), Field::WeighedPressed)
                        />
                        <p class="entry-note" role="status">{taken_as}</p>
                    </div>
                    <Day label=say!(goods::weighed_on) past=true value=day choose=choose />
                </div>
                <p class="soft">{say!(goods::leave_blank)}</p>
                {trouble(move || self.refused.get())}
                <p class="actions">
                    <button class="main" on:click=press(move || self.write())>
                        {write}
                    </button>
                    {others}
                </p>
            </section>
        }
        .into_any()
    }
}

/// A weight, as what is bought is weighed.
fn weighed(book: &Book) -> Wanted {
    Wanted { dimensions: &[Dimension::Mass], unit: book.settings().units.buying_weight_unit() }
}

/// Juice, weighed or measured.
fn pressed(book: &Book) -> Wanted {
    Wanted { dimensions: &[Dimension::Mass, Dimension::Volume], ..weighed(book) }
}
