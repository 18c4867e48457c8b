//! What is compared and what is tried: the state of the screen, none of it kept in the book.

use leptos::prelude::*;

use crate::book::{ContainerId, DrinkId, OfferId, Scope};
use crate::measure::{Amount, Exact, Money, Overflow, Share};
use crate::sizes::{Draft, SideBySide, SizeRow, WhatIf, WhatIfError, side_by_side, sold_in, sold_together, target_of};
use crate::ui::history::Session;
use crate::ui::state::AppState;
use crate::words;

/// What is tried, size by size.
#[derive(Clone, Default, PartialEq)]
struct Tried {
    ingredients: Share,
    target: Option<Share>,
    /// The price of one drink; of several drinks by how much each price rises.
    prices: Vec<(ContainerId, Money)>,
    fills: Vec<(ContainerId, Amount)>,
}

/// The comparison of what is tried, and what cannot be made any more.
pub type Then = Result<(SideBySide, Option<String>), String>;

/// The columns of the tables: the sizes as they are, and as they would be.
#[derive(Clone, Default, PartialEq)]
pub struct Columns {
    /// The sizes as they are.
    pub now: Vec<SizeRow>,
    /// The sizes with what is tried, where anything is.
    pub then: Option<Vec<SizeRow>>,
    /// The drink, where it is one.
    pub drink: Option<DrinkId>,
    /// The drink whose figures can be opened: all its sizes are shown, and nothing is tried.
    pub opens: Option<DrinkId>,
    /// How many drinks are compared.
    pub drinks: usize,
}

impl Columns {
    /// The sizes with what is tried where anything is, else as they are.
    pub fn last(&self) -> &[SizeRow] {
        self.then.as_deref().unwrap_or(&self.now)
    }
}

/// The state of the screen.
#[derive(Clone, Copy)]
pub struct Trying {
    state: AppState,
    /// The part of the menu.
    pub scope: Scope,
    /// The sizes that it is sold in.
    pub all: Memo<Vec<ContainerId>>,
    off: RwSignal<Vec<ContainerId>>,
    /// Those of them that are compared.
    pub chosen: Memo<Vec<ContainerId>>,
    /// The comparison as the book stands.
    pub now: Memo<Result<SideBySide, Overflow>>,
    draft: Memo<Draft>,
    tried: RwSignal<Tried>,
    /// What was tried before the visit to a field, and which visit.
    before: StoredValue<(Option<Session>, Tried)>,
    /// The comparison with what is tried; none where nothing is.
    pub then: Memo<Option<Then>>,
    /// How often all was set back: the fields are drawn anew then.
    pub begun: RwSignal<u32>,
}

impl Trying {
    /// Nothing tried yet.
    pub fn new(scope: Scope) -> Trying {
        let state = AppState::here();
        let all = Memo::new(move |_| state.book.with(|book| sold_in(book, scope)));
        let first = state.book.with_untracked(|book| {
            let together = state.ledger.with_untracked(|ledger| sold_together(book, ledger, scope));
            sold_in(book, scope).into_iter().filter(|id| !together.contains(id)).collect()
        });
        let off: RwSignal<Vec<ContainerId>> = RwSignal::new(first);
        let chosen = Memo::new(move |_| {
            let all = all.get().into_iter();
            off.with(|off| all.filter(|id| !off.contains(id)).collect::<Vec<ContainerId>>())
        });
        let now = Memo::new(move |_| {
            state.book.with(|book| {
                state.ledger.with(|ledger| chosen.with(|chosen| side_by_side(book, ledger, scope, chosen)))
            })
        });
        let draft = Memo::new(move |_| state.book.with(|book| chosen.with(|chosen| Draft::of(book, scope, chosen))));
        let tried = RwSignal::new(Tried::default());
        let then = Memo::new(move |_| {
            let anything = tried.with(|tried| *tried != Tried::default());
            anything.then(|| tried.with(|tried| draft.with(|draft| computed(state, scope, tried, draft, chosen, now))))
        });
        let before = StoredValue::new((None, Tried::default()));
        Trying { state, scope, all, off, chosen, now, draft, tried, before, then, begun: RwSignal::new(0) }
    }

    /// Compares a size, or leaves it out.
    pub fn toggle(self, container: ContainerId) {
        self.off.update(|off| match off.iter().position(|id| *id == container) {
            Some(place) => drop(off.remove(place)),
            None => off.push(container),
        });
    }

    /// The columns of the tables.
    pub fn columns(self) -> Columns {
        let (now, drinks) = self.now.with(|now| {
            let now = now.as_ref().ok();
            (now.map(|now| now.sizes.clone()).unwrap_or_default(), now.map_or(0, |now| now.drinks.len()))
        });
        let then = self.then.with(|then| match then {
            Some(Ok((then, _))) => Some(then.sizes.clone()),
            _ => None,
        });
        let whole = self.all.with(Vec::len) == self.chosen.with(Vec::len);
        let drink = if let Scope::Drink(drink) = self.scope { Some(drink) } else { None };
        Columns { now, drink, opens: drink.filter(|_| whole && then.is_none()), then, drinks }
    }

    /// One size as the book stands.
    pub fn today(self, container: ContainerId) -> Option<SizeRow> {
        let find = |now: &SideBySide| now.sizes.iter().find(|row| row.container == container).copied();
        self.now.with(|now| now.as_ref().ok().and_then(find))
    }

    /// Tries what was read in a visit to a field. Where it cannot be read or does not hold, what
    /// was tried before the visit is tried again.
    pub fn take<T>(
        self,
        read: Result<Option<T>, String>,
        visit: Option<Session>,
        set: impl FnOnce(Option<T>) -> Result<(), String>,
    ) -> Result<(), String> {
        if visit.is_none() || self.before.with_value(|(last, _)| *last != visit) {
            self.before.set_value((visit, self.tried.get_untracked()));
        }
        let done = read.and_then(set);
        if done.is_err() {
            self.tried.set(self.before.with_value(|(_, tried)| tried.clone()));
        }
        done
    }

    /// The price tried in a size, as a field shows it; of several drinks the rise.
    pub fn price(self, container: ContainerId) -> String {
        let tried = self.tried.with(|tried| found(&tried.prices, container));
        let price = match self.scope {
            Scope::Drink(_) => tried.or_else(|| Some(self.today(container)?.sold?.price)),
            Scope::Menu | Scope::Kind(_) => tried.or(Some(Money::ZERO)),
        };
        price.map(|price| self.state.plain_money(price)).unwrap_or_default()
    }

    /// Tries a price, or a rise of all prices.
    pub fn set_price(self, container: ContainerId, number: Option<Exact>) -> Result<(), String> {
        let money = number.map(Money::from_major);
        let today = match self.scope {
            Scope::Drink(_) => self.today(container).and_then(|row| row.sold).map(|sold| sold.price),
            Scope::Menu | Scope::Kind(_) => Some(Money::ZERO),
        };
        let money = money.filter(|money| Some(*money) != today);
        let alone = Tried { prices: money.map(|money| (container, money)).into_iter().collect(), ..Tried::default() };
        self.accept(&alone)?;
        self.tried.update(|tried| put(&mut tried.prices, container, money));
        Ok(())
    }

    /// The fill tried in a size, as a field shows it.
    pub fn fill(self, container: ContainerId) -> String {
        match self.tried.with(|tried| found(&tried.fills, container)) {
            Some(amount) => self.state.amount(amount),
            None => self.today(container).map(|row| self.state.fine_volume(row.fill)).unwrap_or_default(),
        }
    }

    /// Tries a fill.
    pub fn set_fill(self, container: ContainerId, amount: Option<Amount>) -> Result<(), String> {
        let fills = amount.map(|amount| (container, amount)).into_iter().collect();
        self.accept(&Tried { fills, ..Tried::default() })?;
        self.tried.update(|tried| put(&mut tried.fills, container, amount));
        Ok(())
    }

    /// The change in the cost of ingredients that is tried.
    pub fn ingredients(self) -> Share {
        self.tried.with(|tried| tried.ingredients)
    }

    /// Tries a change in the cost of ingredients.
    pub fn set_ingredients(self, change: Share) {
        self.tried.update(|tried| tried.ingredients = change);
    }

    /// The target tried, or the one that holds.
    pub fn target(self) -> Share {
        let today = self.state.book.with(|book| target_of(book, self.scope));
        self.tried.with(|tried| tried.target).unwrap_or(today)
    }

    /// Tries a target.
    pub fn set_target(self, target: Option<Share>) -> Result<(), String> {
        let today = self.state.book.with_untracked(|book| target_of(book, self.scope));
        let target = target.filter(|target| *target != today);
        self.accept(&Tried { target, ..Tried::default() })?;
        self.tried.update(|tried| tried.target = target);
        Ok(())
    }

    /// Whether anything is tried that the book can take over.
    pub fn can_use(self) -> bool {
        let ours = self.tried.with(|tried| *tried != Tried { ingredients: tried.ingredients, ..Tried::default() });
        ours && self.then.with(|then| matches!(then, Some(Ok(_))))
    }

    /// Puts what is tried in force as one step, all but the cost of ingredients.
    pub fn use_it(self) -> Result<(), String> {
        let (state, scope) = (self.state, self.scope);
        let what_if = self.tried.with_untracked(|tried| {
            self.draft.with_untracked(|draft| what_if(scope, tried, draft, self.chosen, self.now))
        });
        let edit = state.book.with_untracked(|book| what_if.and_then(|it| it.edit(book, scope)));
        state.apply("What you tried", edit.map_err(|error| said(state, &error))?)?;
        self.start_anew();
        Ok(())
    }

    /// Back to what is in the book.
    pub fn start_anew(self) {
        self.tried.set(Tried::default());
        self.begun.update(|begun| *begun += 1);
    }

    fn accept(self, alone: &Tried) -> Result<(), String> {
        let (state, scope) = (self.state, self.scope);
        let accepted = self.draft.with_untracked(|draft| {
            let what_if = what_if(scope, alone, draft, self.chosen, self.now)?;
            draft.accepts(&what_if, scope)
        });
        accepted.map_err(|error| said(state, &error))
    }
}

fn found<T: Copy>(list: &[(ContainerId, T)], container: ContainerId) -> Option<T> {
    list.iter().find(|(id, _)| *id == container).map(|(_, value)| *value)
}

fn put<T>(list: &mut Vec<(ContainerId, T)>, container: ContainerId, value: Option<T>) {
    list.retain(|(id, _)| *id != container);
    list.extend(value.map(|value| (container, value)));
}

/// What is tried in the sizes that are compared.
fn what_if(
    scope: Scope,
    tried: &Tried,
    draft: &Draft,
    chosen: Memo<Vec<ContainerId>>,
    now: Memo<Result<SideBySide, Overflow>>,
) -> Result<WhatIf, WhatIfError> {
    let mut what_if = WhatIf { ingredients: tried.ingredients, target: tried.target, ..WhatIf::default() };
    let compared = |id: &ContainerId| chosen.with(|chosen| chosen.contains(id));
    for (container, price) in tried.prices.iter().filter(|(id, _)| compared(id)) {
        match scope {
            Scope::Drink(drink) => what_if.prices.push((OfferId { drink, container: *container }, *price)),
            Scope::Menu | Scope::Kind(_) => now.with(|now| {
                let raised = now.as_ref().map(|now| now.raised(&draft.book, *container, *price));
                what_if.prices.extend(raised.map_err(|error| *error)??);
                Ok::<(), Overflow>(())
            })?,
        }
    }
    for (container, amount) in tried.fills.iter().filter(|(id, _)| compared(id)) {
        what_if.fills.push((*container, amount.volume()?.unwrap_or_default()));
    }
    Ok(what_if)
}

fn computed(
    state: AppState,
    scope: Scope,
    tried: &Tried,
    draft: &Draft,
    chosen: Memo<Vec<ContainerId>>,
    now: Memo<Result<SideBySide, Overflow>>,
) -> Then {
    let what_if = what_if(scope, tried, draft, chosen, now);
    let then = what_if.and_then(|what_if| draft.with(&what_if, scope)).map_err(|error| said(state, &error))?;
    let side = chosen.with(|chosen| side_by_side(&then.book, &then.ledger, scope, chosen)).map_err(words::overflow)?;
    let stuck = then.ledger.offers().find_map(|(id, result)| match (result, draft.ledger.get(id)) {
        (Err(trouble), Some(Ok(_))) => Some(words::trouble(trouble, &then.book)),
        _ => None,
    });
    Ok((side, stuck))
}

fn said(state: AppState, error: &WhatIfError) -> String {
    state.book.with_untracked(|book| state.style.with_untracked(|style| words::what_if_error(error, book, style)))
}
