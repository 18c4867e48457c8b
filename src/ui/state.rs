//! The open book on the screen, and the commands that change it.
//!
//! Data goes one way: a command applies an edit to the book, the ledger computes anew what the
//! edit touched, what was touched is saved, and the screens follow their signals.

use leptos::prelude::*;

use super::history::{History, LastChange, Session, Step};
use super::locale;
use crate::book::{Applied, Book, Edit, OfferId, Refusal};
use crate::ledger::{Ledger, Priced, Standing};
use crate::measure::{
    Amount, Currency, Exact, Length, Measure, Money, NumberStyle, Overflow, Share, System, TypedLength, Volume,
    show_amount, show_fine_volume, show_length, show_measure, show_money, show_number, show_percent, show_volume,
};
use crate::store::Durability;
use crate::words;

/// The open book, what is computed from it, and what was done to it.
#[derive(Clone, Copy)]
pub struct AppState {
    /// The open book. Changed by [`AppState::apply`], undo and redo only.
    pub book: RwSignal<Book>,
    /// Its offers, computed.
    pub ledger: RwSignal<Ledger>,
    /// Steps that can be taken back.
    pub history: RwSignal<History>,
    /// What the last step moved.
    pub last_change: RwSignal<Option<LastChange>>,
    /// How numbers are written here.
    pub style: Memo<NumberStyle>,
    currency: Memo<Currency>,
    units: Memo<System>,
    keep: StoredValue<Keep, LocalStorage>,
    sessions: StoredValue<Session>,
}

/// Hands over an applied edit, to be saved.
pub type Keep = Box<dyn Fn(&Book, &Applied, Durability)>;

impl AppState {
    /// Opens `book`; `keep` saves what edits touch.
    pub fn new(book: Book, keep: Keep) -> AppState {
        let ledger = Ledger::of(&book);
        let book = RwSignal::new(book);
        let currency = Memo::new(move |_| book.with(|book| book.settings().currency));
        let style = Memo::new(move |_| locale::number_style(currency.get()));
        AppState {
            book,
            ledger: RwSignal::new(ledger),
            history: RwSignal::default(),
            last_change: RwSignal::default(),
            style,
            currency,
            units: Memo::new(move |_| book.with(|book| book.settings().units)),
            keep: StoredValue::new_local(keep),
            sessions: StoredValue::new(0),
        }
    }

    /// The state of the screens above.
    pub fn here() -> AppState {
        expect_context::<AppState>()
    }

    /// A new typing session.
    pub fn new_session(self) -> Session {
        self.sessions.update_value(|last| *last = last.wrapping_add(1));
        self.sessions.get_value()
    }

    /// Applies an edit as a step of its own.
    ///
    /// # Errors
    /// The refusal, as a sentence; nothing is changed.
    pub fn apply(self, name: &str, edit: Edit) -> Result<(), String> {
        self.apply_in(name, edit, None)
    }

    /// Applies an edit of a typing session.
    ///
    /// # Errors
    /// The refusal, as a sentence; nothing is changed.
    pub fn apply_in(self, name: &str, edit: Edit, session: Option<Session>) -> Result<(), String> {
        self.step(name, &edit, session, Durability::Relaxed)
    }

    /// Applies an edit of a whole book, such as an import; it is on the disk when saved.
    ///
    /// # Errors
    /// The refusal, as a sentence; nothing is changed.
    pub fn apply_whole(self, name: &str, edit: &Edit) -> Result<(), String> {
        self.step(name, edit, None, Durability::Strict)
    }

    fn step(self, name: &str, edit: &Edit, session: Option<Session>, durability: Durability) -> Result<(), String> {
        let Some(inverse) = self.change(name, edit, session, durability)? else { return Ok(()) };
        self.history.update(|history| history.note(Step { name: name.to_string(), inverse, session }));
        Ok(())
    }

    /// Takes back what a typing session did, since what is typed now does not hold.
    pub fn take_back(self, session: Session) {
        let taken = self.history.try_update(|history| history.take_session(session)).flatten();
        if let Some(step) = taken {
            // The inverse of an applied edit holds as long as nothing came between.
            let _ = self.change(&step.name, &step.inverse, Some(session), Durability::Relaxed);
        }
    }

    /// Takes the last step back.
    pub fn undo(self) {
        let taken = self.history.try_update(History::take_done).flatten();
        self.walk(taken, "Taken back", History::note_undone);
    }

    /// Does the last step taken back again.
    pub fn redo(self) {
        let taken = self.history.try_update(History::take_undone).flatten();
        self.walk(taken, "Done again", History::note_redone);
    }

    fn walk(self, step: Option<Step>, said: &str, note: fn(&mut History, Step)) {
        let Some(step) = step else { return };
        let name = format!("{said}: {}", step.name);
        let done = self.change(&name, &step.inverse, None, Durability::Relaxed);
        if let Ok(Some(inverse)) = done {
            self.history.update(|history| note(history, Step { name: step.name, inverse, session: None }));
        }
    }

    /// Takes in what another tab saved: no step of ours, and nothing to save.
    ///
    /// # Errors
    /// The refusal where it contradicts what is here; nothing is changed.
    pub fn follow(self, edit: &Edit) -> Result<(), Refusal> {
        let applied = self.book.try_maybe_update(|book| match book.apply(edit) {
            Ok(applied) => (true, Ok(applied)),
            Err(refusal) => (false, Err(refusal)),
        });
        if let Some(applied) = applied {
            self.recompute("Another tab", &applied?, None);
        }
        Ok(())
    }

    /// Applies, computes and keeps; gives the inverse, or none where nothing changed.
    fn change(
        self,
        name: &str,
        edit: &Edit,
        session: Option<Session>,
        durability: Durability,
    ) -> Result<Option<Edit>, String> {
        let applied = self.book.try_maybe_update(|book| match book.apply(edit) {
            Ok(applied) => (applied.inverse != *edit, Ok(applied)),
            Err(refusal) => (false, Err(words::refusal(&refusal, book))),
        });
        let Some(applied) = applied else { return Ok(None) };
        let applied = applied?;
        if applied.inverse == *edit {
            return Ok(None);
        }
        self.recompute(name, &applied, session);
        self.book.with_untracked(|book| self.keep.with_value(|keep| keep(book, &applied, durability)));
        Ok(Some(applied.inverse))
    }

    fn recompute(self, name: &str, applied: &Applied, session: Option<Session>) {
        let touched = applied.touched.clone();
        let moves = self.book.with_untracked(|book| self.ledger.try_update(|ledger| ledger.refresh(book, &touched)));
        let was = if let Edit::Put(record) = &applied.inverse { Some(record.clone()) } else { None };
        let change = LastChange { name: name.to_string(), session, touched, was, moves: moves.unwrap_or_default() };
        self.last_change.update(|last| {
            *last = Some(match last.take() {
                Some(earlier) => earlier.joined_with(change),
                None => change,
            });
        });
    }

    /// Something of an offer's result, following it; none where it cannot be computed.
    pub fn priced<T>(self, id: OfferId, read: impl FnOnce(&Priced) -> Option<T>) -> Option<T> {
        self.ledger.with(|ledger| read(ledger.get(id)?.as_ref().ok()?))
    }

    /// Why an offer cannot be computed, as a sentence, following it.
    pub fn stuck(self, id: OfferId) -> Option<String> {
        let trouble = self.ledger.with(|ledger| ledger.get(id)?.as_ref().err().copied())?;
        Some(self.book.with(|book| words::trouble(&trouble, book)))
    }

    /// Where one offer stands.
    pub fn standing(self, id: OfferId) -> Signal<Standing> {
        Signal::derive(move || {
            self.ledger.with(|ledger| ledger.get(id).map_or(Standing::CannotCompute, Standing::from))
        })
    }

    /// The units of the book.
    pub fn units(self) -> System {
        self.units.get()
    }

    /// Money in the book's currency.
    pub fn money(self, money: Money) -> String {
        self.style.with(|style| show_money(money, self.currency.get(), style))
    }

    /// Money in as many digits as it has, without the currency's sign: what a field shows.
    pub fn plain_money(self, money: Money) -> String {
        let digits = self.currency.get().digits();
        self.style.with(|style| show_number(money.major(), digits, style))
    }

    /// Money with one digit more than its currency has, for costs of small amounts.
    pub fn fine_money(self, money: Money) -> String {
        let digits = self.currency.get().digits().saturating_add(1);
        self.style.with(|style| with_sign_of_money(money.major().rounded(digits), digits, style))
    }

    /// Money at a mark of an axis: in as few digits as it takes.
    pub fn money_mark(self, number: Exact) -> String {
        self.style.with_untracked(|style| with_sign_of_money(number, 0, style))
    }

    /// A share to 0.1 %.
    pub fn percent(self, share: Share) -> String {
        said(self.style.with(|style| show_percent(share, style)))
    }

    /// A share as a percentage without its sign, all digits: what a field shows.
    pub fn plain_percent(self, share: Share) -> String {
        said(self.style.with(|style| share.percent().map(|number| show_number(number, 0, style))))
    }

    /// An exact number, all digits.
    pub fn number(self, number: Exact) -> String {
        self.style.with(|style| show_number(number, 0, style))
    }

    /// A volume in the book's units.
    pub fn volume(self, volume: Volume) -> String {
        said(self.style.with(|style| show_volume(volume, self.units(), style)))
    }

    /// A volume to one decimal more than others: what fills are judged by.
    pub fn fine_volume(self, volume: Volume) -> String {
        said(self.style.with(|style| show_fine_volume(volume, self.units(), style)))
    }

    /// A length in the book's units.
    pub fn length(self, length: Length) -> String {
        said(self.style.with(|style| show_length(length, self.units(), style)))
    }

    /// A length as it was typed.
    pub fn typed_length(self, length: TypedLength) -> String {
        format!("{} {}", self.number(length.number), length.unit.symbol())
    }

    /// An amount of any kind in the book's units.
    pub fn measure(self, measure: Measure) -> String {
        said(self.style.with(|style| show_measure(measure, self.units(), style)))
    }

    /// An amount as it was typed.
    pub fn amount(self, amount: Amount) -> String {
        self.style.with(|style| show_amount(amount, self.units(), style))
    }
}

fn with_sign_of_money(number: Exact, digits: u32, style: &NumberStyle) -> String {
    let sign = if number.is_negative() { "\u{2212}" } else { "" };
    let number = show_number(number.abs(), digits, style);
    format!("{sign}{}{number}{}", style.money_before, style.money_after)
}

fn said(shown: Result<String, Overflow>) -> String {
    shown.unwrap_or_else(words::overflow)
}
