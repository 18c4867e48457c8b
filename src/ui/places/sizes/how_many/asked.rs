//! What a person asks about plans. Nothing of it is kept in the book.

use leptos::prelude::*;

use crate::book::{ContainerId, OfferId, Scope};
use crate::foundation::measure::{Exact, Money, read_number};
use crate::say;
use crate::sizes::decision::{Answered, Decision, Guess, Hands, MenuToday, NoAnswer, Plan, Plans, Question, Told};
use crate::sizes::said::Said;
use crate::ui::fields::Hangs;
use crate::ui::kept;
use crate::ui::live::text;
use crate::ui::places::sizes::reaction::Reaction;
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words::{self, Decisions, Example};

/// Most weeks of opening stock: ten years of it.
const MOST_WEEKS: Exact = Exact::new(520, 0);
/// Weeks that opening stock lasts until a person types other ones.
const USUAL_COVER: &str = "4";

/// What is asked, and the plans that answer it.
#[derive(Clone, Copy)]
pub struct Asked {
    /// The open book.
    pub state: AppState,
    /// The part of the menu.
    pub scope: Scope,
    /// Weeks of opening stock.
    pub cover: RwSignal<String>,
    /// What one more size costs to keep in a week.
    pub keeping: RwSignal<String>,
    /// How customers react to a price, as the owner says.
    pub reaction: Reaction,
    /// Whether labor is left out.
    pub without_labor: RwSignal<bool>,
    /// Whether plans stand by evidence also where the owner's answer gives each a profit.
    pub by_evidence: RwSignal<bool>,
    /// The fields that the plans hang on.
    pub hangs: Hangs,
    /// A size that is not sold yet and that plans count with.
    pub comes: RwSignal<Option<ContainerId>>,
    /// How many are expected of drinks in it.
    pub expected: RwSignal<Vec<(OfferId, Exact)>>,
    told: Memo<Told>,
    /// The plans.
    pub plans: Memo<Result<Plans, NoAnswer>>,
}

impl Asked {
    /// A part of the menu, with what was typed on this visit.
    pub fn new(state: AppState, scope: Scope) -> Asked {
        let (cover, keeping) = (kept::text("cover", USUAL_COVER), kept::text("keeping", ""));
        let (reaction, without_labor) = (Reaction::new(state), kept::flag("without-labor", false));
        let comes = kept::chosen(
            "comes",
            None,
            |size: Option<ContainerId>| size.map(|size| size.to_string()).unwrap_or_default(),
            |text| Some(ContainerId::from_text(text)),
        );
        let kept_numbers = kept::text("expected", "");
        let expected = RwSignal::new(Said::read(&kept_numbers.get_untracked()).told.weekly);
        Effect::new(move |_| {
            let told = Told { weekly: expected.get(), ..Told::default() };
            kept_numbers.set(Said { told, ..Said::default() }.text());
        });
        let told = Memo::new(move |_| {
            let keeping = read(state, keeping, Example::OneTimeCost, None).ok().flatten().unwrap_or_default();
            let hands = if without_labor.get() { Hands::LeftOut } else { Hands::Counted };
            Told { keeping: Money::from_major(keeping), hands, weekly: expected.get(), ..Told::default() }
        });
        let plans = Memo::new(move |_| told.with(|told| with_menu(state, scope, told, |menu| menu.plans())));
        let by_evidence = kept::flag("by-evidence", false);
        Asked {
            state,
            scope,
            cover,
            keeping,
            reaction,
            without_labor,
            by_evidence,
            hangs: Hangs::new(),
            comes,
            expected,
            told,
            plans,
        }
    }

    /// The plans of some sort, by evidence or by the profit of the owner's own answer, each with what that answer
    /// says. Where it says something, it decides whether a plan pays.
    pub fn in_order(&self, plans: &Plans, wanted: fn(&Plan, bool) -> bool) -> Vec<(Plan, Option<Guess>)> {
        let both = plans.pays.iter().map(|plan| (plan, true)).chain(plans.cannot_pay.iter().map(|plan| (plan, false)));
        let answered = self.answered();
        let guess = |plan: &Plan| answered.and_then(|answered| plan.against(&plans.today, &answered));
        let all = both.map(|(plan, can)| (plan, guess(plan), can));
        let some = all.filter(|(plan, guess, can)| wanted(plan, guess.map_or(*can, |guess| guess.pays())));
        let mut all: Vec<(Plan, Option<Guess>)> = some.map(|(plan, guess, _)| (plan.clone(), guess)).collect();
        // Those of as many sizes tried stay in the order of evidence, also among those that cannot pay.
        all.sort_by_key(|(plan, _)| std::cmp::Reverse(plan.evidence));
        if self.by_profit() {
            all.sort_by_key(|(_, guess)| std::cmp::Reverse(guess.map(|guess| guess.profit)));
        }
        all
    }

    /// The owner's own answer.
    pub fn answered(self) -> Option<Answered> {
        self.reaction.answered()
    }

    /// Whether plans stand by the profit that the owner's answer gives them.
    pub fn by_profit(self) -> bool {
        self.answered().is_some() && !self.by_evidence.get()
    }

    /// Weeks of opening stock.
    pub fn weeks(self) -> Exact {
        let typed = read(self.state, self.cover, Example::Weeks, Some(MOST_WEEKS)).ok().flatten();
        typed.unwrap_or(Exact::new(4, 0))
    }

    /// A plan as a decision: only its sizes stay.
    pub fn decision(self, plan: &Plan) -> Result<Decision, NoAnswer> {
        let question = Question::Keep { sizes: plan.sizes.clone() };
        self.menu(|menu| menu.answer(&question))
    }

    /// Something of the menu of today.
    pub fn menu<T>(self, read: impl FnOnce(&MenuToday) -> Result<T, NoAnswer>) -> Result<T, NoAnswer> {
        self.told.with(|told| with_menu(self.state, self.scope, told, read))
    }

    /// Words about plans.
    pub fn said<T>(self, say: impl FnOnce(&Decisions) -> T) -> T {
        self.state.book.with(|book| say(&Decisions { book, speaker: &self.state.speaker.get() }))
    }

    /// What is wrong with the weeks of opening stock.
    pub fn cover_error(self) -> Signal<String> {
        text(move || read(self.state, self.cover, Example::Weeks, Some(MOST_WEEKS)).err().unwrap_or_default())
    }

    /// What is wrong with the cost of a size.
    pub fn keeping_error(self) -> Signal<String> {
        text(move || read(self.state, self.keeping, Example::OneTimeCost, None).err().unwrap_or_default())
    }
}

fn with_menu<T>(
    state: AppState,
    scope: Scope,
    told: &Told,
    read: impl FnOnce(&MenuToday) -> Result<T, NoAnswer>,
) -> Result<T, NoAnswer> {
    state.book.with(|book| {
        state.ledger.with(|ledger| {
            let menu = MenuToday::of(book, ledger, scope, told, today()).map_err(NoAnswer::Arithmetic)?;
            read(&menu)
        })
    })
}

/// A typed number. Returns `None` if nothing is typed.
fn read(
    state: AppState,
    typed: RwSignal<String>,
    example: Example,
    most: Option<Exact>,
) -> Result<Option<Exact>, String> {
    let typed = typed.get();
    if typed.trim().is_empty() {
        return Ok(None);
    }
    let speaker = state.speaker.get();
    let example = example.said(&speaker);
    let number = read_number(&typed, speaker.style()).map_err(|error| words::read_error(&error, &example))?;
    match most {
        Some(most) if number > most => Err(say!(decide::most_to_type, most = speaker.number(most), example = example)),
        _ => Ok(Some(number)),
    }
}
