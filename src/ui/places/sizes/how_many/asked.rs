//! What a person asks about plans. Nothing of it is kept in the book.

use leptos::prelude::*;

use crate::book::{ContainerId, Key, Scope};
use crate::foundation::measure::{Exact, Money, Overflow, Share, read_number};
use crate::say;
use crate::sizes::plan::{Candidates, Guess, MOST_CANDIDATES, Plan, plans};
use crate::sizes::side_by_side::sold_in;
use crate::ui::fields::Hangs;
use crate::ui::live::text;
use crate::ui::order;
use crate::ui::places::sizes::asked::first_scope;
use crate::ui::state::AppState;
use crate::words::{self, Plans};

/// How a typed number is read.
#[derive(Clone, Copy)]
pub struct Read {
    /// One that could be typed.
    pub example: &'static str,
    /// The most that it may be.
    pub most: Option<u32>,
}

/// A share of a whole in per cent.
pub const PER_CENT: Read = Read { example: "40", most: Some(100) };
/// Sales that stay with a plan, in per cent of today's; there may be more of them.
pub const KEPT: Read = Read { example: "95", most: None };
/// Weeks of opening stock: not more than ten years of it.
pub const WEEKS: Read = Read { example: "4", most: Some(520) };

/// Weeks that opening stock lasts until a person types other ones.
const USUAL_COVER: &str = "4";

/// The typed numbers, as far as they can be read; what cannot be leaves what stood before.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Typed {
    guess: Guess,
    keeping: Money,
}

/// Texts that are typed for one thing each.
type Texts<T> = Vec<(T, RwSignal<String>)>;

/// What is asked, and the plans that answer it.
#[derive(Clone, Copy)]
pub struct Asked {
    /// The open book.
    pub state: AppState,
    /// The part of the menu.
    pub scope: RwSignal<Scope>,
    /// The sizes pressed. It is `None` if those of today are taken.
    pub pressed: RwSignal<Option<Vec<ContainerId>>>,
    /// The sizes of the person's own plan.
    pub own: RwSignal<Vec<ContainerId>>,
    /// Weeks of opening stock.
    pub cover: RwSignal<String>,
    /// What one more size costs to keep in a week.
    pub keeping: RwSignal<String>,
    /// Weekly sales of a drink without a number.
    pub unknown: RwSignal<String>,
    /// The two plans side by side, where they were chosen.
    pub chosen: [RwSignal<Vec<ContainerId>>; 2],
    shares: StoredValue<Texts<ContainerId>>,
    /// The share of sales kept, for the plans where it was typed.
    pub kept: RwSignal<Vec<(Vec<ContainerId>, String)>>,
    /// The sizes thought of, the smallest fill first.
    pub sizes_now: Memo<Vec<ContainerId>>,
    /// What each drink would be in them.
    pub candidates: Memo<Candidates>,
    typed: Memo<Typed>,
    /// The fields that the plans hang on.
    pub hangs: Hangs,
    /// The plans, the best first.
    pub plans: Memo<Result<Vec<Plan>, Overflow>>,
}

impl Asked {
    /// Nothing asked yet: the whole menu in the sizes of today.
    pub fn new(state: AppState) -> Asked {
        let all = state.book.with_untracked(order::containers);
        let text_of = |key| if let Key::Container(id) = key { Some((id, RwSignal::new(String::new()))) } else { None };
        let shares: Texts<ContainerId> = all.into_iter().filter_map(text_of).collect();
        let scope = RwSignal::new(state.book.with_untracked(first_scope).unwrap_or(Scope::Menu));
        let pressed = RwSignal::new(None::<Vec<ContainerId>>);
        let own = RwSignal::new(Vec::new());
        let cover = RwSignal::new(USUAL_COVER.to_string());
        let (keeping, unknown) = (RwSignal::new(String::new()), RwSignal::new(String::new()));
        let kept = RwSignal::new(Vec::<(Vec<ContainerId>, String)>::new());
        let candidates = Memo::new(move |_| {
            state.book.with(|book| {
                let today = || sold_in(book, scope.get()).into_iter().take(MOST_CANDIDATES).collect();
                Candidates::of(book, scope.get(), &pressed.get().unwrap_or_else(today))
            })
        });
        let sizes_now = Memo::new(move |_| candidates.with(|it| it.sizes().to_vec()));
        let shares = StoredValue::new(shares);
        let typed = Memo::new(move |before: Option<&Typed>| {
            let before = before.cloned().unwrap_or_default();
            let number = |text: RwSignal<String>, how, before| read(state, &text.get(), how).unwrap_or(before);
            let plain = |example| Read { example, most: None };
            let cover = number(cover, WEEKS, Some(before.guess.cover)).unwrap_or_default();
            let keeping = number(keeping, plain("5"), Some(before.keeping.major())).unwrap_or_default();
            let unknown = number(unknown, plain("25"), before.guess.unknown);
            let mut typed = Guess { cover, unknown, ..Guess::default() };
            for (id, text) in shares.get_value() {
                let was = before.guess.share_of(id).and_then(|share| share.percent().ok());
                if let Some(share) = number(text, PER_CENT, was).and_then(share) {
                    typed.shares.push((id, share));
                }
            }
            typed.shares.retain(|(id, _)| sizes_now.with(|sizes| sizes.contains(id)));
            for (sizes, text) in kept.get() {
                let was = before.guess.kept_by(&sizes).percent().ok();
                if let Some(share) = read(state, &text, KEPT).unwrap_or(was).and_then(share) {
                    typed.kept.push((sizes, share));
                }
            }
            Typed { guess: typed, keeping: Money::from_major(keeping) }
        });
        let plans = Memo::new(move |_| {
            state.book.with(|book| {
                let also = [sold_in(book, scope.get()), own.get()];
                candidates.with(|it| typed.with(|typed| plans(book, it, &typed.guess, &also)))
            })
        });
        let chosen = [RwSignal::new(Vec::new()), RwSignal::new(Vec::new())];
        Asked {
            state,
            scope,
            pressed,
            own,
            cover,
            keeping,
            unknown,
            chosen,
            shares,
            kept,
            sizes_now,
            candidates,
            typed,
            hangs: Hangs::new(),
            plans,
        }
    }

    /// Takes a size in, or out.
    pub fn press(self, id: ContainerId) {
        let mut sizes = self.sizes_now.get_untracked();
        if sizes.contains(&id) {
            sizes.retain(|size| *size != id);
        } else if sizes.len() < MOST_CANDIDATES {
            sizes.push(id);
        }
        self.pressed.set(Some(sizes));
    }

    /// What is typed as the share of a size.
    pub fn share(self, id: ContainerId) -> Option<RwSignal<String>> {
        self.shares.with_value(|shares| shares.iter().find(|(size, _)| *size == id).map(|(_, text)| *text))
    }

    /// What to know of the shares typed. Returns an empty text if none is typed, or if they sum to the
    /// whole.
    pub fn shares_said(self, plans: &Plans) -> String {
        let typed = self.typed.get().guess;
        let sizes = self.sizes_now.get();
        let today = |id| self.candidates.with(|it| it.share_today(id)).unwrap_or_default();
        let shares = sizes.iter().map(|id| typed.share_of(*id).unwrap_or_else(|| today(*id)));
        if typed.shares.is_empty() {
            String::new()
        } else {
            plans.shares(&shares.collect::<Vec<Share>>()).unwrap_or_else(words::overflow)
        }
    }

    /// What a further size costs to keep in a week.
    pub fn keeping(self) -> Money {
        self.typed.with(|typed| typed.keeping)
    }

    /// The sizes of today in the part of the menu.
    pub fn today(self) -> Vec<ContainerId> {
        self.state.book.with(|book| sold_in(book, self.scope.get()))
    }

    /// Words about plans.
    pub fn said(self, say: impl FnOnce(&Plans) -> String) -> String {
        self.state.book.with(|book| say(&Plans { book, speaker: &self.state.speaker.get() }))
    }

    /// What is wrong with a typed number. Returns an empty text if nothing is.
    pub fn error(self, typed: RwSignal<String>, how: Read) -> Signal<String> {
        text(move || read(self.state, &typed.get(), how).err().unwrap_or_default())
    }
}

/// A typed number. Returns `None` if nothing is typed.
fn read(state: AppState, typed: &str, how: Read) -> Result<Option<Exact>, String> {
    if typed.trim().is_empty() {
        return Ok(None);
    }
    let number = read_number(typed, state.speaker.get().style());
    let number = number.map_err(|error| words::read_error(&error, how.example))?;
    match how.most {
        Some(most) if number > Exact::from(most) => {
            Err(say!(decide::most_to_type, most = state.number(Exact::from(most)), example = how.example))
        }
        _ => Ok(Some(number)),
    }
}

fn share(percent: Exact) -> Option<Share> {
    percent.over(Exact::new(100, 0)).map(Share::from_fraction).ok()
}
