//! What is compared and what is tried: the state of the screen, none of it kept in the book.

use leptos::prelude::*;

use crate::app::history::Session;
use crate::book::{Book, ContainerId, DrinkId, OfferId, Scope};
use crate::foundation::measure::{Amount, Exact, Money, Overflow, Share, Volume};
use crate::say;
use crate::sizes::side_by_side::{
    Draft, SideBySide, SizeRow, WhatIf, WhatIfError, side_by_side, sold_in, sold_together, target_of,
};
use crate::ui::address;
use crate::ui::fields::Hangs;
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

/// What the screen shows: the sizes as they are, and as they would be.
#[derive(Clone, PartialEq)]
pub struct Columns {
    /// The comparison as the book stands.
    pub now: Result<SideBySide, Overflow>,
    /// The comparison with what is tried. It is `None` if nothing is.
    pub then: Option<Then>,
    /// The drink, where it is one.
    pub drink: Option<DrinkId>,
    /// The drink whose figures can be opened: all its sizes are shown, and nothing is tried.
    pub opens: Option<DrinkId>,
}

impl Columns {
    /// The sizes as they are.
    pub fn today(&self) -> &[SizeRow] {
        self.now.as_ref().map(|now| now.sizes.as_slice()).unwrap_or_default()
    }

    /// The sizes with what is tried, where anything is.
    pub fn tried(&self) -> Option<&[SizeRow]> {
        match &self.then {
            Some(Ok((then, _))) => Some(&then.sizes),
            _ => None,
        }
    }

    /// The sizes with what is tried where anything is, else as they are.
    pub fn last(&self) -> &[SizeRow] {
        self.tried().unwrap_or(self.today())
    }

    /// How many drinks are compared.
    pub fn drinks(&self) -> usize {
        self.now.as_ref().map_or(0, |now| now.drinks.len())
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
    tried: RwSignal<Tried>,
    /// What was tried before the visit to a field, and which visit.
    before: StoredValue<(Option<Session>, Tried)>,
    /// What the screen shows.
    pub columns: Memo<Columns>,
    /// The fields that it hangs on.
    pub hangs: Hangs,
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
        let draft = Memo::new(move |_| state.book.with(|book| chosen.with(|chosen| Draft::of(book, scope, chosen))));
        let tried = RwSignal::new(Tried::default());
        let drink = if let Scope::Drink(drink) = scope { Some(drink) } else { None };
        let columns = Memo::new(move |_| {
            let chosen = chosen.get();
            let now = state.book.with(|book| state.ledger.with(|ledger| side_by_side(book, ledger, scope, &chosen)));
            let then = tried.with(|tried| match &now {
                Ok(now) if *tried != Tried::default() => {
                    Some(draft.with(|draft| computed(state, scope, tried, draft, &chosen, now)))
                }
                _ => None,
            });
            let opens = drink.filter(|_| then.is_none() && all.with(Vec::len) == chosen.len());
            Columns { now, then, drink, opens }
        });
        let before = StoredValue::new((None, Tried::default()));
        Trying { state, scope, all, off, chosen, tried, before, columns, hangs: Hangs::new(), begun: RwSignal::new(0) }
    }

    /// Compares a size, or leaves it out.
    pub fn toggle(self, container: ContainerId) {
        self.off.update(|off| match off.iter().position(|id| *id == container) {
            Some(place) => drop(off.remove(place)),
            None => off.push(container),
        });
    }

    /// One size as the book stands.
    pub fn today(self, container: ContainerId) -> Option<SizeRow> {
        self.columns.with(|columns| columns.today().iter().find(|row| row.container == container).copied())
    }

    /// Tries what was read in a visit to a field. Where it cannot be read or does not hold, what
    /// was tried before the visit is tried again.
    ///
    /// # Errors
    /// Why it cannot be read or does not hold, as a sentence.
    pub fn take<T>(
        self,
        read: Result<Option<T>, String>,
        visit: Option<Session>,
        set: impl FnOnce(Option<T>),
    ) -> Result<(), String> {
        if visit.is_none() || self.before.with_value(|(last, _)| *last != visit) {
            self.before.set_value((visit, self.tried.get_untracked()));
        }
        let done = read.and_then(|value| {
            set(value);
            let refused = self.columns.with_untracked(|columns| match &columns.then {
                Some(Err(error)) => Some(error.clone()),
                _ => None,
            });
            refused.map_or(Ok(()), Err)
        });
        if done.is_err() {
            self.tried.set(self.before.with_value(|(_, tried)| tried.clone()));
        }
        done
    }

    /// The price tried in a size, as a field shows it; of several drinks the rise.
    pub fn price(self, container: ContainerId) -> String {
        self.price_now(container).map(|price| self.state.plain_money(price)).unwrap_or_default()
    }

    /// The price tried in a size, or today's; of several drinks the rise.
    pub fn price_now(self, container: ContainerId) -> Option<Money> {
        let tried = self.tried.with(|tried| found(&tried.prices, container));
        match self.scope {
            Scope::Drink(_) => tried.or_else(|| Some(self.today(container)?.sold?.price)),
            Scope::Menu | Scope::Kind(_) => tried.or(Some(Money::ZERO)),
        }
    }

    /// How far the price of a size can be slid: half of today's up and down, or as far up from
    /// nothing where none is asked; of several drinks as far as half of their mean.
    pub fn price_ends(self, container: ContainerId) -> (Exact, Exact) {
        let asked = self.today(container).and_then(|row| row.sold).map(|sold| sold.price);
        let asked = asked.unwrap_or(Money::from_major(Exact::new(20, 0))).major();
        let half = asked.times(Exact::new(5, 1)).unwrap_or_default().rounded(0).max(Exact::ONE);
        let middle = match self.scope {
            Scope::Drink(_) => asked.rounded(0).max(half),
            Scope::Menu | Scope::Kind(_) => Exact::ZERO,
        };
        (middle.minus(half).unwrap_or_default(), middle.plus(half).unwrap_or(middle))
    }

    /// Tries a price, or a rise of all prices.
    pub fn set_price(self, container: ContainerId, number: Option<Exact>) {
        let today = match self.scope {
            Scope::Drink(_) => self.today(container).and_then(|row| row.sold).map(|sold| sold.price),
            Scope::Menu | Scope::Kind(_) => Some(Money::ZERO),
        };
        let money = number.map(Money::from_major).filter(|money| Some(*money) != today);
        self.tried.update(|tried| put(&mut tried.prices, container, money));
    }

    /// The fill tried in a size, as a field shows it.
    pub fn fill(self, container: ContainerId) -> String {
        match self.tried.with(|tried| found(&tried.fills, container)) {
            Some(amount) => self.state.amount(amount),
            None => self.today(container).map(|row| self.state.fine_volume(row.fill)).unwrap_or_default(),
        }
    }

    /// What is poured, tried or today's, in the book's unit for drinks.
    pub fn fill_now(self, container: ContainerId) -> Exact {
        let tried = self.tried.with(|tried| found(&tried.fills, container));
        let tried = tried.and_then(|amount| amount.volume().ok().flatten());
        let volume = tried.or_else(|| self.today(container).map(|row| row.fill)).unwrap_or_default();
        self.in_drink_unit(volume)
    }

    /// How far the fill of a size can be slid: from a quarter of the container to its rim.
    pub fn fill_ends(self, container: ContainerId, step: Exact) -> (Exact, Exact) {
        let brimful = self.state.book.with_untracked(|book| book.container(container)?.brimful.volume().ok()?);
        let most = self.in_drink_unit(brimful.unwrap_or_default()).over(step).unwrap_or_default().floor();
        let least = most.times(Exact::new(25, 2)).unwrap_or_default().floor();
        (least.times(step).unwrap_or_default(), most.times(step).unwrap_or_default())
    }

    fn in_drink_unit(self, volume: Volume) -> Exact {
        volume.millilitres().over(self.state.units().drink_unit().size()).unwrap_or_default()
    }

    /// Tries a fill.
    pub fn set_fill(self, container: ContainerId, amount: Option<Amount>) {
        self.tried.update(|tried| put(&mut tried.fills, container, amount));
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
    pub fn set_target(self, target: Option<Share>) {
        let today = self.state.book.with_untracked(|book| target_of(book, self.scope));
        let target = target.filter(|target| *target != today);
        self.tried.update(|tried| tried.target = target);
    }

    /// Whether anything is tried that the book can take over.
    pub fn can_use(self) -> bool {
        let ours = self.tried.with(|tried| *tried != Tried { ingredients: tried.ingredients, ..Tried::default() });
        ours && self.columns.with(|columns| columns.tried().is_some())
    }

    /// Puts what is tried in force as one step, all but the cost of ingredients.
    ///
    /// # Errors
    /// The refusal, as a sentence; nothing is changed.
    pub fn use_it(self) -> Result<(), String> {
        let (state, scope) = (self.state, self.scope);
        let edit = state.book.with_untracked(|book| {
            let columns = self.columns.get_untracked();
            let chosen = self.chosen.get_untracked();
            let now = columns.now?;
            self.tried.with_untracked(|tried| what_if(scope, tried, book, &chosen, &now))?.edit(book, scope)
        });
        state.apply(say!(decide::use_what_if), edit.map_err(|error| said(state, &error))?)?;
        self.start_anew();
        Ok(())
    }

    /// Back to what is in the book.
    pub fn start_anew(self) {
        self.state.unfinished.update(|all| all.forget_unread(&address::here()));
        self.tried.set(Tried::default());
        self.begun.update(|begun| *begun += 1);
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
    book: &Book,
    chosen: &[ContainerId],
    now: &SideBySide,
) -> Result<WhatIf, WhatIfError> {
    let mut what_if = WhatIf { ingredients: tried.ingredients, target: tried.target, ..WhatIf::default() };
    for (container, price) in tried.prices.iter().filter(|(id, _)| chosen.contains(id)) {
        match scope {
            Scope::Drink(drink) => what_if.prices.push((OfferId { drink, container: *container }, *price)),
            Scope::Menu | Scope::Kind(_) => what_if.prices.extend(now.raised(book, *container, *price)?),
        }
    }
    for (container, amount) in tried.fills.iter().filter(|(id, _)| chosen.contains(id)) {
        what_if.fills.push((*container, amount.volume()?.unwrap_or_default()));
    }
    Ok(what_if)
}

fn computed(
    state: AppState,
    scope: Scope,
    tried: &Tried,
    draft: &Draft,
    chosen: &[ContainerId],
    now: &SideBySide,
) -> Then {
    let what_if = what_if(scope, tried, &draft.book, chosen, now);
    let then = what_if.and_then(|what_if| draft.with(&what_if, scope)).map_err(|error| said(state, &error))?;
    let side = side_by_side(&then.book, &then.ledger, scope, chosen).map_err(words::overflow)?;
    let stuck = then.ledger.offers().find_map(|(id, result)| match (result, draft.ledger.get(id)) {
        (Err(error), Some(Ok(_))) => Some(words::offer_error(error, &then.book)),
        _ => None,
    });
    Ok((side, stuck))
}

fn said(state: AppState, error: &WhatIfError) -> String {
    state.book.with_untracked(|book| words::what_if_error(error, book, &state.speaker.get_untracked()))
}
