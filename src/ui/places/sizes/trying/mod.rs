//! What is compared and what is tried: the state of the screen, none of it kept in the book.

mod costs;
mod sizes;
mod tried;

use std::time::Duration;

use leptos::prelude::*;

use crate::app::history::Session;
use crate::book::{Book, ContainerId, DrinkId, Edit, KeptConditions, OfferId, Scenario, ScenarioId, Scope};
use crate::foundation::measure::{Exact, Money, Overflow};
use crate::say;
use crate::sizes::decision::{MenuToday, Told};
use crate::sizes::side_by_side::{
    Draft, SideBySide, SizeRow, Uses, Week, WhatIf, WhatIfError, mixed, side_by_side, sold_in, sold_together, week,
};
use crate::ui::address;
use crate::ui::fields::Hangs;
use crate::ui::kept;
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words;

use tried::Tried;

/// How long the screen is drawn before what is tried upon is made ready.
const SOON: Duration = Duration::from_millis(300);

/// What is sold in a week of each drink in a size.
type Sales = Vec<(OfferId, Exact)>;

/// What is tried, computed.
pub struct Then {
    draft: Draft,
    /// A week with it.
    pub week: Week,
    /// What cannot be made any more.
    pub stuck: Option<String>,
}

/// What the screen shows: the sizes as they are, and as they would be.
#[derive(Clone, PartialEq)]
pub struct Columns {
    /// The comparison as the book stands.
    pub now: Result<SideBySide, Overflow>,
    /// The comparison with what is tried. It is `None` if nothing is, or if that cannot be.
    pub then: Option<SideBySide>,
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
        self.then.as_ref().map(|then| then.sizes.as_slice())
    }

    /// The sizes with what is tried where anything is, else as they are.
    pub fn last(&self) -> &[SizeRow] {
        self.tried().unwrap_or(self.today())
    }

    /// How many drinks are compared in the tables.
    pub fn drinks(&self) -> usize {
        self.now.as_ref().map_or(0, |now| now.drinks.len())
    }
}

/// The state of the screen.
#[derive(Clone, Copy)]
pub struct Trying {
    /// The open book.
    pub state: AppState,
    /// The part of the menu.
    pub scope: Scope,
    /// The sizes that it is sold in.
    pub all: Memo<Vec<ContainerId>>,
    off: RwSignal<Vec<ContainerId>>,
    /// Those of them that are compared.
    pub chosen: Memo<Vec<ContainerId>>,
    sales: Memo<Sales>,
    draft: Memo<Draft>,
    tried: RwSignal<Tried>,
    /// What was tried before the visit to a field, and which visit.
    before: StoredValue<(Option<Session>, Tried)>,
    /// The same, with the prices of each drink.
    what_if: Memo<Result<WhatIf, Overflow>>,
    /// What using it changes in the book, and what it leaves out.
    pub uses: Memo<Uses>,
    /// The comparison as the book stands.
    pub now: Memo<Result<SideBySide, Overflow>>,
    /// A week as it is. It is `None` where no sales are known.
    pub week: Memo<Option<Week>>,
    /// What is tried, computed, or why it cannot be. It is `None` if nothing is.
    pub then: Memo<Option<Result<Then, String>>>,
    /// What the tables show. Not for the answer, which waits for no table.
    pub columns: Memo<Columns>,
    /// The fields that it hangs on.
    pub hangs: Hangs,
    /// How often all was set back: the fields are drawn anew then.
    pub begun: RwSignal<u32>,
    /// The size whose price and fill can be changed, by its id; kept for this visit.
    pub size: RwSignal<String>,
    /// The other drink that it is set beside, as its part of the menu; kept for this visit.
    pub beside: RwSignal<String>,
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
        let off = kept_sizes(first);
        let chosen = Memo::new(move |_| {
            let all = all.get().into_iter();
            off.with(|off| all.filter(|id| !off.contains(id)).collect::<Vec<ContainerId>>())
        });
        let draft = Memo::new(move |_| {
            let of =
                |book: &Book| state.ledger.with(|ledger| chosen.with(|chosen| Draft::of(book, ledger, scope, chosen)));
            state.book.with(of)
        });
        // Ready before the first key; the screen may be left by then.
        let make_ready = move || {
            let _ = draft.try_with_untracked(|_| ());
        };
        set_timeout(make_ready, SOON);
        let sales = Memo::new(move |_| chosen.with(|chosen| sold_today(state, scope, chosen)));
        let kept = kept::text("tried", "");
        let tried = RwSignal::new(Tried::read(&kept.get_untracked()));
        Effect::new(move |_| kept.set(tried.with(Tried::text)));
        let drink = if let Scope::Drink(drink) = scope { Some(drink) } else { None };
        let now = Memo::new(move |_| {
            chosen.with(|chosen| {
                let now = |book: &Book| state.ledger.with(|ledger| side_by_side(book, ledger, scope, chosen));
                state.book.with(now)
            })
        });
        let week = Memo::new(move |_| {
            let week = sales.with(|sales| state.ledger.with(|ledger| week(ledger, sales)).ok());
            week.filter(|week| week.units.is_positive())
        });
        let what_if = Memo::new(move |_| {
            now.with(|now| {
                let now = now.as_ref().map_err(|overflow| *overflow)?;
                let of = |tried: &Tried| {
                    state.book.with(|book| chosen.with(|chosen| tried.what_if(scope, book, chosen, now)))
                };
                tried.with(of)
            })
        });
        // Whoever hears of it takes it as another: to compare two books takes longer than an answer.
        let then = Memo::new_with_compare(
            move |_| {
                let is_tried = now.with(Result::is_ok) && tried.with(|tried| *tried != Tried::default());
                let of = |what_if: &Result<WhatIf, Overflow>| {
                    draft.with(|draft| sales.with(|sales| computed(state, what_if, draft, sales)))
                };
                is_tried.then(|| what_if.with(of))
            },
            |_, _| true,
        );
        let columns = Memo::new(move |_| {
            let side = |then: &Option<Result<Then, String>>| {
                let Some(Ok(Then { draft, .. })) = then else { return None };
                chosen.with(|chosen| side_by_side(&draft.book, &draft.ledger, scope, chosen).ok())
            };
            let then = then.with(side);
            let opens = drink.filter(|_| then.is_none() && all.with(Vec::len) == chosen.with(Vec::len));
            Columns { now: now.get(), then, drink, opens }
        });
        let uses = Memo::new(move |_| {
            let of = |what_if: &WhatIf| state.book.with(|book| what_if.uses(book));
            what_if.with(|what_if| what_if.as_ref().map(of).unwrap_or_default())
        });
        let before = StoredValue::new((None, Tried::default()));
        let (hangs, begun) = (Hangs::new(), RwSignal::new(0));
        let (size, beside) = (kept::text("size", ""), kept::text("beside", ""));
        Trying {
            state,
            scope,
            all,
            off,
            chosen,
            sales,
            draft,
            tried,
            what_if,
            uses,
            before,
            now,
            week,
            then,
            columns,
            hangs,
            begun,
            size,
            beside,
        }
    }

    /// How many drinks a week counts: all that are sold in any of the sizes.
    pub fn drinks_in_week(self) -> usize {
        let mut drinks: Vec<DrinkId> = self.sales.with(|sales| {
            let sold = sales.iter().filter(|(_, units)| units.is_positive());
            sold.map(|(offer, _)| offer.drink).collect()
        });
        drinks.sort_unstable();
        drinks.dedup();
        drinks.len()
    }

    /// Compares a size, or leaves it out.
    pub fn toggle(self, container: ContainerId) {
        self.off.update(|off| match off.iter().position(|id| *id == container) {
            Some(place) => drop(off.remove(place)),
            None => off.push(container),
        });
    }

    /// Something of the comparison as the book stands. Returns `None` where that cannot be computed.
    pub fn with_today<T>(self, read: impl FnOnce(&SideBySide) -> T) -> Option<T> {
        self.now.with(|now| now.as_ref().ok().map(read))
    }

    /// A week as it is, and one with what is tried where that can be. Returns `None` where no sales are known.
    pub fn weeks(self) -> Option<(Week, Option<Week>)> {
        let then = self.then.with(|then| Some(then.as_ref()?.as_ref().ok()?.week));
        self.week.get().map(|now| (now, then))
    }

    /// One size as the book stands.
    pub fn today(self, container: ContainerId) -> Option<SizeRow> {
        self.with_today(|now| now.sizes.iter().find(|row| row.container == container).copied())?
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
            let refused = self.then.with_untracked(|then| Some(then.as_ref()?.as_ref().err()?.clone()));
            refused.map_or(Ok(()), Err)
        });
        if done.is_err() {
            self.tried.set(self.before.with_value(|(_, tried)| tried.clone()));
        }
        done
    }

    /// Whether no field of the screen waits for what cannot be read: then a closed fold need not be drawn to say so.
    pub fn is_all_read(self) -> bool {
        self.state.unfinished.with_untracked(|all| all.unread_on(&address::here()).is_empty())
    }

    /// Whether anything is tried.
    pub fn is_trying(self) -> bool {
        self.tried.with(|tried| *tried != Tried::default())
    }

    /// A week as it is, and with what the owner decides of what is tried. Returns `None` where no sales are known,
    /// or where that cannot be.
    pub fn week_with_ours(self) -> Option<(Week, Week)> {
        let now = self.week.get()?;
        let ours = Ok(self.what_if.get().ok()?.ours());
        let then = self.draft.with(|draft| self.sales.with(|sales| computed(self.state, &ours, draft, sales)));
        Some((now, then.ok()?.week))
    }

    /// What a week of the whole menu brings now and with what is tried, where that reaches drinks that are not
    /// compared. Returns `None` where it does not, where no sales are known, or where it cannot be.
    pub fn whole_menu(self) -> Option<(Money, Money)> {
        let (now, then) = self.weeks()?;
        let compared = then?.profit.minus(now.profit).ok()?;
        // Prices and shares of buyers are those of the drinks compared.
        let reaches = |what_if: &WhatIf| (!what_if.conditions.are_todays()).then(|| what_if.clone());
        let what_if = self.what_if.with(|what_if| what_if.as_ref().ok().and_then(reaches))?;
        self.state.book.with(|book| {
            let (with, touched) = what_if.put_into(book).ok()?;
            let mut ledger = self.state.ledger.get();
            ledger.follow(&with, &touched, &mut |_, _, _| {});
            let mut sales = sold_today(self.state, Scope::Menu, &sold_in(book, Scope::Menu));
            let now = self.state.ledger.with(|ledger| week(ledger, &sales)).ok()?;
            let others = self.sales.with(|sales| mixed(sales, &what_if.mix)).ok()?.ok()?;
            for (offer, units) in &mut sales {
                let other = others.iter().find(|(of, _)| of == offer).map(|(_, units)| *units);
                *units = other.unwrap_or(*units);
            }
            let then = week(&ledger, &sales).ok()?;
            let beyond = then.profit.minus(now.profit).ok()?.minus(compared).ok()?;
            let cent = book.settings().currency.minor_unit();
            (beyond.major().abs() >= cent.major()).then_some((now.profit, then.profit))
        })
    }

    /// Puts in force what the owner decides of it, as one step.
    ///
    /// # Errors
    /// The refusal, as a sentence; nothing is changed.
    pub fn use_it(self) -> Result<(), String> {
        let state = self.state;
        let what_if = self.what_if.get_untracked().unwrap_or_default();
        let edit: Result<Edit, WhatIfError> = state.book.with_untracked(|book| what_if.edit(book));
        state.apply(say!(decide::use_what_if), edit.map_err(|error| said(state, &error))?)?;
        self.start_anew();
        Ok(())
    }

    /// The menu with all that is tried.
    pub fn scenario(self, id: ScenarioId) -> Option<Scenario> {
        let what_if = self.what_if.get_untracked().ok()?;
        // Where nobody is thought to choose otherwise, weekly numbers stay as they are.
        let sales = if what_if.mix.is_empty() {
            Sales::new()
        } else {
            self.sales.with_untracked(|sales| mixed(sales, &what_if.mix)).ok()?.ok()?
        };
        self.state.book.with_untracked(|book| {
            let name = say!(sales::what_if_of, drinks = words::scope(self.scope, book));
            let mut offers: Vec<_> = book.offers().cloned().collect();
            for offer in &mut offers {
                let id = offer.id();
                let price = what_if.prices.iter().find(|(of, _)| *of == id).map(|(_, price)| *price);
                let units = sales.iter().find(|(of, _)| *of == id).map(|(_, units)| units.rounded(1));
                offer.price = price.or(offer.price);
                offer.weekly = units.or(offer.weekly);
            }
            Some(Scenario { id, name, offers, conditions: KeptConditions::of(&what_if.conditions) })
        })
    }

    /// Back to what is in the book.
    pub fn start_anew(self) {
        self.state.unfinished.update(|all| all.forget_unread(&address::here()));
        self.tried.set(Tried::default());
        self.begun.update(|begun| *begun += 1);
    }
}

/// The sizes that are left out, kept for this visit; `first` until one is taken in or left out.
fn kept_sizes(first: Vec<ContainerId>) -> RwSignal<Vec<ContainerId>> {
    let said = |sizes: &[ContainerId]| sizes.iter().map(ToString::to_string).collect::<Vec<_>>().join(" ");
    let kept = kept::text("left-out", &said(&first));
    let read: Vec<ContainerId> = kept.get_untracked().split(' ').filter_map(ContainerId::from_text).collect();
    let off = RwSignal::new(read);
    Effect::new(move |_| kept.set(off.with(|off| said(off))));
    off
}

/// What is sold in a week in these sizes, as decisions count it: of each drink that has a price and of which
/// somebody knows.
fn sold_today(state: AppState, scope: Scope, chosen: &[ContainerId]) -> Sales {
    let told = Told::default();
    let known = |book: &Book| {
        let menu = state.ledger.with(|ledger| MenuToday::of(book, ledger, scope, &told, today()))?;
        let known = menu.sold().iter().filter_map(|sold| Some((sold.offer(), sold.weekly.number?)));
        Ok::<Sales, Overflow>(known.filter(|(offer, _)| chosen.contains(&offer.container)).collect())
    };
    state.book.with(known).unwrap_or_default()
}

fn computed(state: AppState, what_if: &Result<WhatIf, Overflow>, draft: &Draft, sales: &Sales) -> Result<Then, String> {
    let tried = || {
        let what_if = what_if.as_ref().map_err(|overflow| *overflow)?;
        let then = draft.with(what_if)?;
        let sales = mixed(sales, &what_if.mix)?.map_err(WhatIfError::Mix)?;
        let week = week(&then.ledger, &sales)?;
        let stuck = then.ledger.offers().find_map(|(id, result)| {
            let error = result.as_ref().err()?;
            draft.ledger.get(id)?.is_ok().then(|| words::offer_error(error, &then.book))
        });
        Ok(Then { draft: then, week, stuck })
    };
    tried().map_err(|error: WhatIfError| said(state, &error))
}

fn said(state: AppState, error: &WhatIfError) -> String {
    state.book.with_untracked(|book| words::what_if_error(error, book, &state.speaker.get_untracked()))
}
