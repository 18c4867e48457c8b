//! What is asked of a switch of sizes, and what comes out.

use leptos::prelude::*;

use crate::book::{Book, ContainerId, DrinkId, Scope};
use crate::drink::sales::foremost_size;
use crate::foundation::measure::{Money, Share};
use crate::sizes::side_by_side::sold_in;
use crate::sizes::switching::{DrinkSwitch, Question, Sales, Switch, SwitchError, Together, switch};
use crate::ui::fields::Hangs;
use crate::ui::places::sizes::asked;
use crate::ui::state::AppState;

/// A question with its answer.
pub type Answered = (Question, Result<Switch, SwitchError>);

/// What is asked, and what comes out. Nothing of it is kept in the book.
#[derive(Clone, Copy)]
pub struct Asking {
    scope: RwSignal<Option<Scope>>,
    from: RwSignal<Option<ContainerId>>,
    to: RwSignal<Option<ContainerId>>,
    /// Menu prices in the new size typed here.
    pub prices: RwSignal<Vec<(DrinkId, Money)>>,
    /// The share of the sales that is expected to be kept.
    pub kept: RwSignal<Share>,
    /// The fields that the answer hangs on.
    pub hangs: Hangs,
    /// The answer. It is `None` in a book where nothing is sold.
    pub answer: Memo<Option<Answered>>,
}

impl Asking {
    pub fn new(state: AppState) -> Asking {
        let scope = RwSignal::new(state.book.with_untracked(asked::first_scope));
        let (from, to) = (RwSignal::new(None), RwSignal::new(None));
        let prices = RwSignal::new(Vec::<(DrinkId, Money)>::new());
        let answer = Memo::new(move |_| {
            state.book.with(|book| {
                let question = question(book, scope.get(), from.get(), to.get())?;
                Some((question, prices.with(|prices| switch(book, question, prices))))
            })
        });
        Asking { scope, from, to, prices, kept: RwSignal::new(Share::WHOLE), hangs: Hangs::new(), answer }
    }

    /// The question, where there is one.
    pub fn question(self) -> Option<Question> {
        self.answer.with(|answer| answer.as_ref().map(|(question, _)| *question))
    }

    /// The switch that was worked out.
    pub fn found(self) -> Option<(Question, Switch)> {
        self.answer.with(|answer| match answer {
            Some((question, Ok(switch))) => Some((*question, switch.clone())),
            _ => None,
        })
    }

    /// One drink of it.
    pub fn drink(self, id: DrinkId) -> Option<DrinkSwitch> {
        self.answer.with(|answer| match answer {
            Some((_, Ok(switch))) => switch.drinks.iter().find(|drink| drink.drink == id).copied(),
            _ => None,
        })
    }

    /// All drinks together.
    pub fn together(self) -> Option<(Together, Sales)> {
        let (_, switch) = self.found()?;
        Some((switch.together?, switch.sales))
    }

    /// Another part of the menu, in the sizes to begin with.
    pub fn choose(self, scope: Scope) {
        self.prices.set(Vec::new());
        self.from.set(None);
        self.to.set(None);
        self.scope.set(Some(scope));
    }

    /// Another question: prices typed for the one before do not belong to it.
    pub fn ask(self, question: Question) {
        self.prices.set(Vec::new());
        self.scope.set(Some(question.scope));
        self.from.set(Some(question.from));
        self.to.set(Some(question.to));
    }
}

/// What is asked: what was chosen as far as the book has it, else the size that sells most of the
/// kind that does, against the next smaller one.
fn question(book: &Book, scope: Option<Scope>, from: Option<ContainerId>, to: Option<ContainerId>) -> Option<Question> {
    let there = |scope: &Scope| match scope {
        Scope::Drink(id) => book.drink(*id).is_some(),
        _ => true,
    };
    let scope = scope.filter(there).or_else(|| asked::first_scope(book))?;
    let (all, sold) = (asked::containers(book), sold_in(book, scope));
    let kept = |id: Option<ContainerId>| id.filter(|id| all.contains(id));
    let from = kept(from).or_else(|| foremost_size(book, scope)).or_else(|| sold.last().copied())?;
    let to = kept(to).or_else(|| beside(&sold, from)).or_else(|| beside(&all, from)).unwrap_or(from);
    Some(Question { scope, from, to })
}

/// The container before one, else the one after it.
fn beside(containers: &[ContainerId], one: ContainerId) -> Option<ContainerId> {
    let place = containers.iter().position(|id| *id == one)?;
    let smaller = place.checked_sub(1).and_then(|place| containers.get(place));
    smaller.or_else(|| containers.get(place.saturating_add(1))).copied()
}
