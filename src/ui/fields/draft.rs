//! A new thing is typed into empty fields and is in the book once it lacks nothing: as one step,
//! while the typing goes on.

use std::borrow::Cow;
use std::sync::Arc;

use leptos::prelude::*;

use super::Commit;
use super::commit::share;
use crate::app::history::Session;
use crate::app::route::Route;
use crate::app::unfinished::Begun;
use crate::book::{Book, Edit, Key};
use crate::foundation::measure::{
    Amount, Exact, Money, Share, TypedLength, Wanted, read_amount, read_length, read_number,
};
use crate::say;
use crate::ui::address;
use crate::ui::live::{press, text, when};
use crate::ui::state::AppState;
use crate::words::unfinished::{Field, NewThing};
use crate::words::{self, Example};

/// A new thing, by what it is, what it is of, and its id.
#[derive(Clone, Copy, PartialEq, Eq)]
pub struct Draft {
    /// What it is.
    pub what: NewThing,
    /// What it is of.
    pub of: Option<Key>,
    /// Its id.
    pub id: u64,
}

impl Draft {
    /// A new record.
    pub fn of_record(key: Key) -> Draft {
        let id = match key {
            Key::Ingredient(id) => id.number(),
            Key::Packaging(id) => id.number(),
            Key::PackagingSet(id) => id.number(),
            Key::Container(id) => id.number(),
            Key::Drink(id) => id.number(),
            Key::Trial(id) => id.number(),
            Key::SeenPrice(id) => id.number(),
            Key::Scenario(id) => id.number(),
            Key::Settings | Key::Offer(_) | Key::Week(_) | Key::Batch(_) | Key::BuyingList => 0,
        };
        Draft { what: NewThing::of(key), of: None, id }
    }

    fn thing(self) -> String {
        format!("{}{:x}", place(self.what, self.of), self.id)
    }

    /// Begins it, on the screen that is open.
    pub fn begin(self, state: AppState) {
        self.begin_at(state, &address::here());
    }

    /// Begins it on a screen of its own, and goes there.
    pub fn begin_on(self, state: AppState, screen: Route) {
        self.begin_at(state, &screen.address());
        address::go(screen);
    }

    fn begin_at(self, state: AppState, address: &str) {
        state.unfinished.update(|all| all.begin(&self.thing(), address));
    }

    /// Whether it was begun and is not in the book, following it.
    pub fn is_open(self, state: AppState) -> bool {
        state.unfinished.with(|all| all.begun(&self.thing()).is_some_and(|begun| !begun.is_put))
    }

    /// The text of one of its fields, following it.
    pub fn text(self, state: AppState, field: Field) -> String {
        let text = |it: &Begun| it.text(field.id()).to_string();
        state.unfinished.with(|all| all.begun(&self.thing()).map(text)).unwrap_or_default()
    }

    /// Writes the text of one of its fields.
    pub fn set(self, state: AppState, field: Field, text: &str) {
        self.change(state, |begun| begun.set(field.id(), text));
    }

    /// Drops what is typed of it.
    pub fn discard(self, state: AppState) {
        state.unfinished.update(|all| all.drop_begun(&self.thing()));
    }

    fn change(self, state: AppState, change: impl FnOnce(&mut Begun)) {
        state.unfinished.update(|all| {
            if let Some(begun) = all.begun_mut(&self.thing()) {
                change(begun);
            }
        });
    }
}

/// The ids of what was begun and is not in the book, following them.
pub fn begun(state: AppState, what: NewThing, of: Option<Key>) -> Vec<u64> {
    let place = place(what, of);
    let id = |begun: &Begun| u64::from_str_radix(begun.thing.strip_prefix(&place)?, 16).ok();
    state.unfinished.with(|all| all.all_begun().iter().filter(|begun| !begun.is_put).filter_map(id).collect())
}

fn place(what: NewThing, of: Option<Key>) -> String {
    of.map_or_else(|| format!("{what:?} "), |of| format!("{what:?} {of} "))
}

/// The typed texts of a new thing, as they are read.
pub struct Typed<'a> {
    state: AppState,
    book: &'a Book,
    begun: Option<&'a Begun>,
    missing: Vec<Field>,
    errors: Vec<(Field, String)>,
}

impl Typed<'_> {
    fn read<T>(&mut self, field: Field, read: impl FnOnce(&str) -> Result<T, String>) -> Option<T> {
        let text = self.begun.map_or("", |begun| begun.text(field.id()));
        if text.is_empty() {
            return None;
        }
        match read(text) {
            Ok(value) => Some(value),
            Err(sentence) => {
                self.errors.push((field, sentence));
                None
            }
        }
    }

    fn needed<T>(&mut self, field: Field, value: Option<T>) -> Option<T> {
        if value.is_none() {
            self.missing.push(field);
        }
        value
    }

    /// Says at a field why what is typed there cannot be.
    pub fn refuse(&mut self, field: Field, sentence: String) {
        self.errors.push((field, sentence));
    }

    /// A name, without blanks around it.
    pub fn name(&mut self, field: Field) -> Option<String> {
        let name = self.read(field, |text| Ok(text.trim().to_string()));
        self.needed(field, name)
    }

    /// Letters that may be left out.
    pub fn letters(&mut self, field: Field) -> String {
        self.read(field, |text| Ok(text.trim().to_string())).unwrap_or_default()
    }

    /// A number.
    pub fn number(&mut self, field: Field, example: Example) -> Option<Exact> {
        let number = self.optional_number(field, example);
        self.needed(field, number)
    }

    /// A number that may be left out.
    pub fn optional_number(&mut self, field: Field, example: Example) -> Option<Exact> {
        let speaker = self.state.speaker.get_untracked();
        let read = |text: &str| read_number(text, speaker.style());
        self.read(field, |text| read(text).map_err(|error| words::read_error(&error, &example.said(&speaker))))
    }

    /// Money.
    pub fn money(&mut self, field: Field, example: Example) -> Option<Money> {
        self.number(field, example).map(Money::from_major)
    }

    /// Money that may be left out.
    pub fn optional_money(&mut self, field: Field, example: Example) -> Option<Money> {
        self.optional_number(field, example).map(Money::from_major)
    }

    /// An amount with its unit.
    pub fn amount(&mut self, field: Field, wanted: Wanted) -> Option<Amount> {
        self.amount_such_as(field, wanted, Example::Amount(wanted.unit))
    }

    /// An amount with its unit, such as `example`.
    pub fn amount_such_as(&mut self, field: Field, wanted: Wanted, example: Example) -> Option<Amount> {
        let (units, speaker) = (self.book.settings().units, self.state.speaker.get_untracked());
        let read = |text: &str| read_amount(text, wanted, units, speaker.style());
        let example = || example.said(&speaker);
        let amount = self.read(field, |text| read(text).map_err(|error| words::read_error(&error, &example())));
        self.needed(field, amount)
    }

    /// A length with its unit, such as `example`.
    pub fn length(&mut self, field: Field, example: Example) -> Option<TypedLength> {
        let (units, speaker) = (self.book.settings().units, self.state.speaker.get_untracked());
        let read = |text: &str| read_length(text, units, speaker.style());
        let example = || example.said(&speaker);
        let length = self.read(field, |text| read(text).map_err(|error| words::read_error(&error, &example())));
        self.needed(field, length)
    }

    /// A percentage.
    pub fn percent(&mut self, field: Field, example: Example) -> Option<Share> {
        self.number(field, example).and_then(share)
    }
}

/// Reads the edit that puts a thing into the book, or `None` while something is missing.
pub type Make = Arc<dyn Fn(&mut Typed<'_>, &Book) -> Option<Edit> + Send + Sync>;

/// A new thing and how it gets into the book.
#[derive(Clone)]
pub struct Addition {
    state: AppState,
    draft: Draft,
    /// The step that Undo takes back.
    step: Cow<'static, str>,
    make: Make,
    /// Whether it is in the book.
    there: Memo<bool>,
    /// The visit to a field in which it was put.
    put_in: StoredValue<Option<Session>>,
}

impl Addition {
    /// A thing that `make` puts, as the step of this name; `there` says whether it is in the book.
    pub fn of(
        draft: Draft,
        there: impl Fn(&Book) -> bool + Send + Sync + 'static,
        step: impl Into<Cow<'static, str>>,
        make: impl Fn(&mut Typed<'_>, &Book) -> Option<Edit> + Send + Sync + 'static,
    ) -> Addition {
        let state = AppState::here();
        let there = Memo::new(move |_| state.book.with(&there));
        let (step, make, put_in) = (step.into(), Arc::new(make), StoredValue::new(None));
        let new = Addition { state, draft, step, make, there, put_in };
        if !there.get_untracked() {
            let still = new.clone();
            // What it is of may be getting its name, letter by letter.
            let of = Memo::new(move |_| draft.of.map(|key| state.book.with(|book| book.name(key))));
            Effect::new(move |_| {
                of.with(|_| ());
                let needs = still.read().needs;
                draft.change(state, |begun| begun.needs = needs);
            });
        }
        new
    }

    /// Takes the text of one of its fields; of a thing in the book, by `in_book`. What is typed
    /// in the visit that put it still makes it.
    pub fn commit(&self, field: Field, in_book: Commit) -> Commit {
        let new = self.clone();
        Arc::new(move |text, session| {
            if new.there.get_untracked() && new.put_in.get_value() != Some(session) {
                return in_book(text, session);
            }
            new.take(field, text, session)
        })
    }

    fn take(&self, field: Field, text: &str, session: Session) -> Result<(), String> {
        let (state, draft) = (self.state, self.draft);
        draft.change(state, |begun| {
            begun.is_put = false;
            begun.set(field.id(), text);
        });
        if self.put_in.get_value() == Some(session) {
            self.put_in.set_value(None);
            state.take_back(session);
        }
        let read = self.read();
        draft.change(state, |begun| begun.needs = read.needs);
        if let Some((_, sentence)) = read.errors.into_iter().find(|(of, _)| *of == field) {
            // It stands in its field, with the sentence; nothing is typed of the thing there.
            draft.set(state, field, "");
            return Err(sentence);
        }
        let Some(edit) = read.edit else { return Ok(()) };
        state.apply_in(&self.step, edit, Some(session))?;
        draft.change(state, |begun| begun.is_put = true);
        self.put_in.set_value(Some(session));
        Ok(())
    }

    fn read(&self) -> Read {
        let (state, draft) = (self.state, self.draft);
        state.book.with_untracked(|book| {
            state.unfinished.with_untracked(|all| {
                let begun = all.begun(&draft.thing());
                let mut typed = Typed { state, book, begun, missing: Vec::new(), errors: Vec::new() };
                let edit = (self.make)(&mut typed, book);
                let Typed { mut missing, errors, .. } = typed;
                let unread = errors.iter().map(|(field, _)| *field).filter(|field| !missing.contains(field));
                let unread: Vec<Field> = unread.collect();
                missing.extend(unread);
                let of = draft.of.map(|key| book.name(key));
                let needs = words::unfinished::still_needs(draft.what, of.as_deref(), &missing);
                Read { edit: edit.filter(|_| errors.is_empty()), errors, needs }
            })
        })
    }

    /// The text of one of its fields; of a thing in the book, `in_book`.
    pub fn value(&self, field: Field, in_book: Signal<String>) -> Signal<String> {
        let (state, draft, there) = (self.state, self.draft, self.there);
        text(move || if there.get() { in_book.get() } else { draft.text(state, field) })
    }

    /// The heading of its screen: its name once it is in the book.
    pub fn heading(&self, unnamed: &'static str, name: Signal<String>) -> Signal<String> {
        let there = self.there;
        text(move || if there.get() { name.get() } else { unnamed.to_string() })
    }

    /// Whether it is in the book, following it.
    pub fn is_there(&self) -> bool {
        self.there.get()
    }

    /// What shows once it is in the book.
    pub fn once_there(&self, view: impl Fn() -> AnyView + Send + Sync + 'static) -> AnyView {
        let there = self.there;
        when(move || there.get(), view)
    }

    /// What it still needs. Draws nothing once it is in the book.
    pub fn needs(&self) -> AnyView {
        let (state, draft) = (self.state, self.draft);
        let needs = |begun: &Begun| begun.needs.clone();
        let needs = text(move || state.unfinished.with(|all| all.begun(&draft.thing()).map(needs)).unwrap_or_default());
        self.until_there(move || {
            view! {
                <p class="needs" role="status">
                    {needs}
                </p>
            }
            .into_any()
        })
    }

    /// Drops what is typed of it. Draws nothing once it is in the book.
    pub fn discard(&self) -> AnyView {
        let (state, draft) = (self.state, self.draft);
        self.until_there(move || {
            view! {
                <p class="actions">
                    <button class="quiet" on:click=press(move || draft.discard(state))>
                        {say!(book::discard_draft)}
                    </button>
                </p>
            }
            .into_any()
        })
    }

    /// What shows until it is in the book.
    pub fn until_there(&self, view: impl Fn() -> AnyView + Send + Sync + 'static) -> AnyView {
        let there = self.there;
        when(move || !there.get(), view)
    }

    /// Takes it out of the book by `remove`, or drops what is typed of it.
    pub fn take_out(&self, remove: impl Fn() + 'static) -> impl Fn() + 'static {
        let (state, draft, there) = (self.state, self.draft, self.there);
        move || if there.get_untracked() { remove() } else { draft.discard(state) }
    }
}

/// What the texts of a new thing say.
struct Read {
    edit: Option<Edit>,
    errors: Vec<(Field, String)>,
    needs: String,
}
