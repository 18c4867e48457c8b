//! What an owner says for one decision, and what comes out.

use leptos::prelude::*;

use crate::app::route;
use crate::book::{Book, ContainerId, DrinkId, OfferId};
use crate::drink::price::Hands;
use crate::foundation::measure::{Date, Exact, Money, Share};
use crate::sizes::decision::{Decision, Guess, Keeping, MenuToday, NoAnswer, OneTime, Question, Told, Verdict};
use crate::sizes::said::Said;
use crate::ui::fields::Hangs;
use crate::ui::kept;
use crate::ui::places::sizes::reaction::Reaction;
use crate::ui::places::sizes::remembered::{remember_said, said_for};
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words::Decisions;

/// Weeks of opening stock that are counted with.
pub const COVER: Exact = Exact::new(4, 0);

/// A decision that is asked, what its owner says for it, and its answer. Nothing of it is in the book.
#[derive(Clone, Copy)]
pub struct Asking {
    /// The open book.
    pub state: AppState,
    /// What is asked.
    pub of: route::Decision,
    /// What the owner says.
    pub told: RwSignal<Told>,
    /// Where the slider stands. It is `None` where it was not moved.
    pub slid: RwSignal<Option<Share>>,
    /// What labels and printing cost once.
    pub labels: RwSignal<Money>,
    /// What is left over of the old size, where the owner says so.
    pub left_over: RwSignal<Option<Money>>,
    /// Whether the menu was changed by it.
    pub done: RwSignal<bool>,
    /// The fields that the answer hangs on.
    pub hangs: Hangs,
    /// The answer.
    pub answer: Memo<Result<Decision, NoAnswer>>,
    /// The last answer that there was: what is left over by it stands in its field while there is none.
    last: Memo<Option<Decision>>,
    /// The prices in the size that comes, with an answer or without.
    prices: Memo<Vec<(OfferId, Money)>>,
    /// How customers react to a price, as the owner says.
    pub reaction: Reaction,
    /// What that makes of it. It is `None` where he said nothing.
    pub guess: Memo<Option<Guess>>,
    /// Today.
    pub day: Date,
}

impl Asking {
    /// A decision on its page: what was said on this visit of it is there again.
    pub fn new(state: AppState, of: route::Decision) -> Asking {
        Asking::with(state, of, kept::text("said", ""))
    }

    /// The same decision on its sheet, with what was said on its page.
    pub fn on_sheet(state: AppState, of: route::Decision) -> Asking {
        let kept = kept::text("said", "");
        let carried = said_for(state, of);
        let asking = Asking::with(state, of, RwSignal::new(carried.clone().unwrap_or(kept.get_untracked())));
        // From here on the sheet keeps it itself.
        Effect::new(move |_| carried.iter().for_each(|said| kept.set(said.clone())));
        asking
    }

    fn with(state: AppState, of: route::Decision, kept: RwSignal<String>) -> Asking {
        let Said { told, slid, labels, left_over } = Said::read(&kept.get_untracked());
        let (told, slid) = (RwSignal::new(told), RwSignal::new(slid));
        let (labels, left_over) = (RwSignal::new(labels), RwSignal::new(left_over));
        Effect::new(move |_| {
            let said = Said { told: told.get(), slid: slid.get(), labels: labels.get(), left_over: left_over.get() };
            let text = said.text();
            remember_said(state, of, text.clone());
            kept.set(text);
        });
        let day = today();
        let answer = Memo::new(move |_| {
            let question = question(&of).ok_or(NoAnswer::NoSales(Vec::new()))?;
            told.with(|told| with_menu(state, &of, told, day, |menu| menu.answer(&question)))
        });
        let last = Memo::new(move |before: Option<&Option<Decision>>| {
            answer.with(|answer| answer.as_ref().ok().cloned()).or_else(|| before.cloned().flatten())
        });
        let prices = Memo::new(move |_| {
            let Some(size) = of.comes else { return Vec::new() };
            let drinks: Vec<DrinkId> = state.book.with(|book| {
                book.drinks().map(|drink| drink.id).filter(|drink| book.belongs(*drink, of.scope)).collect()
            });
            let priced = |menu: &MenuToday| {
                let price = |drink| Some((at(drink, size), menu.price_then(at(drink, size))?));
                Ok(drinks.into_iter().filter_map(price).collect())
            };
            told.with(|told| with_menu(state, &of, told, day, priced)).unwrap_or_default()
        });
        let reaction = Reaction::new(state);
        let guess = Memo::new(move |_| {
            let answered = reaction.answered()?;
            answer.with(|answer| answer.as_ref().ok().and_then(|decision| decision.guess(&answered)))
        });
        Asking {
            state,
            of,
            told,
            slid,
            labels,
            left_over,
            done: RwSignal::new(false),
            hangs: Hangs::new(),
            answer,
            last,
            prices,
            reaction,
            guess,
            day,
        }
    }

    /// Something of the menu of today, with what the owner says.
    pub fn menu<T>(self, read: impl FnOnce(&MenuToday) -> Result<T, NoAnswer>) -> Result<T, NoAnswer> {
        self.told.with(|told| with_menu(self.state, &self.of, told, self.day, read))
    }

    /// The answer, where there is one.
    pub fn decided(self) -> Option<Decision> {
        self.answer.with(|answer| answer.as_ref().ok().cloned())
    }

    /// Whether it pays: by the owner's own answer where he gave one, else with the buyers of today.
    pub fn pays(self, decision: &Decision) -> bool {
        self.guess.get().map_or(decision.verdict.can_pay(), |guess| guess.pays())
    }

    /// Whether there is an answer.
    pub fn is_answered(self) -> bool {
        self.answer.with(Result::is_ok)
    }

    /// The share that is looked at: where the slider stands. Until it is moved, that is where the owner's own answer
    /// puts it.
    pub fn share(self) -> Share {
        let guessed = || {
            let stay = self.guess.get()?.stay?;
            let of_hundred = stay.percent().ok()?;
            let (least, most) = self.ends();
            (!self.adds() && least <= of_hundred && of_hundred <= most).then_some(stay)
        };
        let usual = || if self.adds() { Share::from_fraction(Exact::new(5, 1)) } else { Share::WHOLE };
        self.slid.get().or_else(guessed).unwrap_or_else(usual)
    }

    /// The sizes that stay, where only some do.
    pub fn stays(self) -> Vec<ContainerId> {
        self.of.stays.iter().flat_map(route::Stays::sizes).collect()
    }

    /// Whether a size comes and none goes.
    pub fn adds(self) -> bool {
        self.of.goes.is_none() && self.of.comes.is_some()
    }

    /// Whether one size takes the place of another.
    pub fn switches(self) -> bool {
        self.of.goes.is_some() && self.of.comes.is_some()
    }

    /// The ends of the slider, in buyers of a hundred.
    pub fn ends(self) -> (Exact, Exact) {
        let (none, hundred, most) = (Exact::ZERO, Exact::new(100, 0), Exact::new(150, 0));
        if !self.switches() {
            return (none, hundred);
        }
        // A break-even beyond the end is brought into view, and so is the owner's own answer.
        let needed = self.answer.with(|answer| match answer.as_ref().map(|decision| decision.verdict) {
            Ok(Verdict::NeedsNew { at, .. }) => at.percent().ok(),
            _ => None,
        });
        let tens = |percent: Exact| percent.over(Exact::new(10, 0))?.ceiling().times(Exact::new(10, 0));
        let guessed = self.guess.get().and_then(|guess| guess.stay?.percent().ok());
        let shown = |percent: Exact| tens(percent).ok().filter(|percent| *percent <= Exact::new(400, 0));
        let ends = [needed, guessed].into_iter().flatten().filter_map(shown);
        (Exact::new(50, 0), ends.fold(most, Exact::max))
    }

    /// Words about it.
    pub fn said<T>(self, say: impl FnOnce(&Decisions) -> T) -> T {
        self.state.book.with(|book| say(&Decisions { book, speaker: &self.state.speaker.get() }))
    }

    /// What it costs once, and what all of it comes to as typed.
    ///
    /// # Errors
    /// A [`NoAnswer`] where the question has none.
    pub fn once(self) -> Result<(OneTime, Money), NoAnswer> {
        let decision = self.last.get().map_or_else(|| self.answer.get(), Ok)?;
        let found = self.menu(|menu| Ok(menu.one_time(&decision)?))?;
        let proposed = match self.left_over.get() {
            None => found.proposed,
            Some(typed) => {
                let mut orders = found.orders.iter().filter(|order| !order.in_use).filter_map(|order| order.cost);
                orders.try_fold(typed, Money::plus)?
            }
        };
        let all = proposed.plus(self.labels.get())?;
        Ok((found, all))
    }

    /// Cards, kinds and stock now, and then if all stay.
    pub fn kept(self) -> Option<(Keeping, Keeping)> {
        let decision = self.decided()?;
        let share = if self.adds() { Share::ZERO } else { Share::WHOLE };
        self.menu(|menu| Ok((menu.keeping_now(COVER)?, menu.keeping_then(&decision, share, COVER)?))).ok()
    }

    /// The drinks that it is about.
    pub fn drinks(self) -> Vec<DrinkId> {
        let about = self.menu(|menu| {
            let concerned = menu.sold().iter().map(|sold| sold.offer());
            let concerned = concerned.filter(|id| self.goes(id.container));
            let mut drinks: Vec<DrinkId> = concerned.map(|id| id.drink).collect();
            drinks.dedup();
            if let (None, Some(size)) = (self.of.goes, self.of.comes) {
                let there = |drink: &DrinkId| menu.sold().iter().any(|sold| sold.offer() == at(*drink, size));
                drinks.retain(|drink| !there(drink));
            }
            Ok(drinks)
        });
        about.unwrap_or_default()
    }

    /// Whether a size goes; where one comes only, each is concerned.
    fn goes(self, size: ContainerId) -> bool {
        match (self.of.goes, self.of.stays) {
            (Some(goes), _) => goes == size,
            (None, Some(stays)) => stays.sizes().all(|stays| stays != size),
            (None, None) => true,
        }
    }

    /// Takes a price in the new size, or the book's own again.
    pub fn price(self, offer: OfferId, price: Option<Money>) {
        self.told.update(|told| put(&mut told.prices, offer, price));
    }

    /// Takes a weekly number, or the book's own again.
    pub fn weekly(self, offer: OfferId, number: Option<Exact>) {
        self.told.update(|told| put(&mut told.weekly, offer, number));
    }

    /// Takes where the buyers turn: one size for all, nowhere, or the nearest again.
    pub fn turn(self, to: Option<Option<ContainerId>>) {
        let goes = self.of.goes;
        let offers: Vec<OfferId> =
            goes.iter().flat_map(|size| self.drinks().into_iter().map(|it| at(it, *size))).collect();
        self.told.update(|told| {
            told.turns = to.map(|to| offers.into_iter().map(|offer| (offer, to)).collect()).unwrap_or_default();
        });
    }

    /// Counts labor, or leaves it out.
    pub fn count_labor(self, counted: bool) {
        self.told.update(|told| told.hands = if counted { Hands::Counted } else { Hands::LeftOut });
    }

    /// A price that the answer counts with, where it has one for the offer.
    pub fn price_of(self, offer: OfferId) -> Option<Money> {
        let typed = self.told.with(|told| told.price(offer));
        let counted = || {
            let prices = self.prices.get();
            prices.into_iter().find(|(of, _)| *of == offer).map(|(_, price)| price)
        };
        typed.or_else(counted)
    }
}

/// A drink in a size.
pub const fn at(drink: DrinkId, container: ContainerId) -> OfferId {
    OfferId { drink, container }
}

fn put<T>(all: &mut Vec<(OfferId, T)>, offer: OfferId, said: Option<T>) {
    all.retain(|(other, _)| *other != offer);
    all.extend(said.map(|said| (offer, said)));
}

fn with_menu<T>(
    state: AppState,
    of: &route::Decision,
    told: &Told,
    day: Date,
    read: impl FnOnce(&MenuToday) -> Result<T, NoAnswer>,
) -> Result<T, NoAnswer> {
    state.book.with(|book: &Book| {
        state.ledger.with(|ledger| {
            let menu = MenuToday::of(book, ledger, of.scope, told, day).map_err(NoAnswer::Arithmetic)?;
            read(&menu)
        })
    })
}

/// What is asked. Returns `None` where no size is chosen.
fn question(of: &route::Decision) -> Option<Question> {
    Some(match (of.goes, of.comes) {
        (Some(from), Some(to)) => Question::Switch { from, to },
        (Some(size), None) => Question::Drop { size },
        (None, Some(size)) => Question::Add { size, taken_from: None },
        (None, None) => Question::Keep { sizes: of.stays?.sizes().collect() },
    })
}
