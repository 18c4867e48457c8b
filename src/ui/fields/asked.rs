//! A value that may not be meant is asked about beside its field, once the visit to the field
//! ends. It is in force, and stands marked until the question is answered.

use std::fmt::Display;

use leptos::prelude::*;

use super::readings::TypeIn;
use crate::app::history::{History, Session};
use crate::book::{BookId, Key};
use crate::foundation::jump::{Doubt, Figure, Kind, Question};
use crate::foundation::measure::{Density, Time, read_density, read_time};
use crate::say;
use crate::store::asked::{keep_question, question};
use crate::ui::library::{Library, Phase};
use crate::ui::live::{live, press};
use crate::ui::state::AppState;
use crate::words;

/// What a field holds, and where, for asking about what is typed into it.
#[derive(Clone)]
pub struct Asks {
    kind: Kind,
    place: String,
    /// Whether an open question is kept when the page is loaded anew.
    kept: bool,
    /// What is asked about, where the field shows it in another unit.
    value: Option<Signal<String>>,
}

impl Asks {
    /// Of what is only tried: what is not kept itself has no question that is.
    pub fn while_tried(self) -> Asks {
        Asks { kept: false, ..self }
    }

    /// Of what the field shows in another unit: `value` is the number that is asked about.
    pub fn about(self, value: Signal<String>) -> Asks {
        Asks { value: Some(value), ..self }
    }
}

/// A field that asks about what may not be meant. The record that it writes to and the name of
/// the field in it tell it from every other of the book, also after a load.
pub fn asks(kind: Kind, record: impl Into<Key>, field: impl Display) -> Asks {
    Asks { kind, place: format!("{}/{field}", record.into()), kept: true, value: None }
}

/// The asking of one field.
#[derive(Clone)]
pub struct Asked {
    state: AppState,
    asks: Asks,
    book: Option<BookId>,
    value: Signal<String>,
    question: RwSignal<Option<Question>>,
    /// Whether the caret is in the field and its text not done with.
    visited: RwSignal<bool>,
    /// What stood in the field before the visit, and the question about that.
    before: StoredValue<(Option<Figure>, Option<Question>)>,
}

impl Asked {
    /// The asking of a field that shows `value` of what is in force.
    pub fn of(state: AppState, asks: Asks, value: Signal<String>) -> Asked {
        let book = match Library::here().phase.get_untracked() {
            Phase::Open(book) => Some(book).filter(|_| asks.kept),
            _ => None,
        };
        let open = book.and_then(|book| question(book, &asks.place));
        let value = asks.value.unwrap_or(value);
        Asked {
            state,
            asks,
            book,
            value,
            question: RwSignal::new(open),
            visited: RwSignal::new(false),
            before: StoredValue::new((None, None)),
        }
    }

    fn figure(&self, shown: &str) -> Option<Figure> {
        let speaker = self.state.speaker.get();
        match self.asks.kind {
            Kind::Labor => read_time(shown, speaker.style()).ok().map(|time| Figure::Number(time.seconds())),
            _ => Figure::shown(shown, self.state.units(), speaker.style()),
        }
    }

    fn in_force(&self) -> Option<Figure> {
        untrack(|| self.value.with(|shown| self.figure(shown)))
    }

    /// A visit to the field begins, unless one is under way.
    pub fn begin(&self) {
        if !self.visited.get_untracked() {
            let in_force = self.in_force();
            let open = self.question.get_untracked().filter(|question| Some(question.now) == in_force);
            // Typing on does not make what is asked about what was before.
            let was = open.as_ref().map_or(in_force, |question| question.was);
            self.before.set_value((was, open));
            self.visited.set(true);
        }
    }

    /// The two meanings of what was typed in this visit, if it has two; `with_unit` gives a number the unit that
    /// stands beside it.
    pub fn two_meanings(&self, text: &str, with_unit: &dyn Fn(&str) -> String) -> Option<[String; 2]> {
        let (state, kind) = (self.state, self.asks.kind);
        let (units, speaker) = untrack(|| (state.units(), state.speaker.get()));
        let read = |text: &str| match kind {
            Kind::Density => {
                let density = read_density(text, units, speaker.style()).ok()?;
                Some(Figure::Number(density.grams_per_millilitre()))
            }
            _ => Figure::shown(&with_unit(text), units, speaker.style()),
        };
        let (was, _) = self.before.get_value();
        kind.two_meanings(was, text, &read, speaker.style())
    }

    /// The question about a text with these two meanings.
    pub fn says_two(&self, text: &str, two: &[String; 2]) -> String {
        words::two_meanings(self.asks.kind, text, two)
    }

    /// Something that can be read was typed in this session, or what stood before it is in force
    /// again.
    pub fn note(&self, session: Session) {
        let (was, open) = self.before.get_value();
        let now = self.in_force();
        let doubtful = now.filter(|now| self.asks.kind.doubt(was, *now).is_some());
        let asked = doubtful.map(|now| {
            let made = |history: &History| history.step_of(session).map(|step| step.id.clone());
            let mut steps = open.as_ref().map(|question| question.steps.clone()).unwrap_or_default();
            steps.extend(self.state.history.with_untracked(made));
            Question { was, now, steps }
        });
        self.put(asked.or(open.filter(|question| Some(question.now) == now)));
    }

    /// The visit ends: from here on the question is shown.
    pub fn end(&self) {
        // A field that is taken from the screen is left once more, when its signals are gone.
        let _ = self.visited.try_set(false);
    }

    fn put(&self, question: Option<Question>) {
        if self.question.get_untracked() != question {
            self.question.set(question.clone());
            if let Some(book) = self.book {
                keep_question(book, &self.asks.place, question);
            }
        }
    }

    /// The question that is shown, following it.
    pub fn open(&self) -> Option<(Doubt, Question)> {
        let question = self.question.get().filter(|_| !self.visited.get())?;
        let now = self.value.with(|shown| self.figure(shown))?;
        let doubt = self.asks.kind.doubt(question.was, now)?;
        (now == question.now).then_some((doubt, question))
    }

    /// Puts back what was before: by taking the steps back, with all that they wrote, or else by
    /// typing what stood there.
    fn back(&self, question: &Question, type_in: impl FnOnce()) {
        for id in question.steps.iter().rev() {
            let name = |history: &History| history.steps().iter().find(|it| it.id == *id).map(|it| it.name.clone());
            if let Some(name) = self.state.history.with_untracked(name) {
                self.state.take_back_alone(id, &name);
            }
        }
        if self.in_force() == question.was { self.put(None) } else { type_in() }
    }

    /// What a figure says in this field.
    fn said(&self, figure: Figure) -> String {
        let state = self.state;
        match (figure, self.asks.kind) {
            (Figure::Number(number), Kind::Price | Kind::Wage) => {
                state.money(crate::foundation::measure::Money::from_major(number))
            }
            (Figure::Number(number), Kind::Density) => {
                state.speaker.get().density(Density::from_grams_per_millilitre(number))
            }
            (Figure::Number(number), Kind::TrimYield | Kind::Yield | Kind::Tax | Kind::Margin | Kind::SmallShare) => {
                state.percentage(number)
            }
            (figure, _) => self.typed(figure),
        }
    }

    /// A figure as it is typed.
    fn typed(&self, figure: Figure) -> String {
        match figure {
            // With its unit it means the same in a book of any units.
            Figure::Number(number) if self.asks.kind == Kind::Density => format!("{} g/mL", self.state.number(number)),
            Figure::Number(number) if self.asks.kind == Kind::Labor => {
                self.state.speaker.get().typed_time(Time::from_seconds(number))
            }
            Figure::Number(number) => self.state.number(number),
            Figure::Amount(amount) => self.state.amount(amount),
            Figure::Length(length) => self.state.typed_length(length),
        }
    }

    /// The question with its two answers, while it is open.
    pub fn shown(self, type_in: TypeIn) -> AnyView {
        let asked = live(move || {
            let Some((doubt, question)) = self.open() else { return ().into_any() };
            let (was, now) = (question.was.map(|was| self.said(was)), self.said(question.now));
            let sentence = words::jump(self.asks.kind, doubt, was.as_deref(), &now, &self.state.speaker.get());
            let keep = say!(book::keep_value, value = now);
            let back =
                was.map_or_else(|| say!(book::back_to_blank).to_string(), |was| say!(book::back_to_value, value = was));
            let before = question.was.map(|was| self.typed(was)).unwrap_or_default();
            let (kept, back_to, type_in) = (self.clone(), self.clone(), type_in.clone());
            let back_again = move || back_to.back(&question, || type_in(before.clone()));
            view! {
                <span class="mark mark-asked">
                    <svg viewBox="0 0 16 16" aria-hidden="true">
                        <path d="M8 1 15 8 8 15 1 8ZM6.2 6.4c.2-2.2 3.6-2.2 3.6 0c0 1.3-1.8 1.3-1.8 2.6M8 11.5v.1" />
                    </svg>
                    {say!(book::check_this)}
                </span>
                <span>{sentence}</span>
                <span class="entry-answers">
                    <button class="button" type="button" aria-label=keep on:click=press(move || kept.put(None))>
                        {say!(book::keep)}
                    </button>
                    <button class="button" type="button" aria-label=back on:click=press(back_again)>
                        {say!(book::back)}
                    </button>
                </span>
            }
            .into_any()
        });
        view! { <div class="entry-asked" role="status">{asked}</div> }.into_any()
    }
}
