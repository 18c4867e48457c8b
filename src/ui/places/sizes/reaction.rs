//! How customers react to a price, as their owner says: typed on one screen of Sizes, it counts on all of them.

use leptos::prelude::*;

use super::remembered::{of_ten, remember_of_ten};
use crate::foundation::measure::Exact;
use crate::say;
use crate::sizes::decision::Answered;
use crate::ui::fields::{Ask, Hangs, asked_number};
use crate::ui::live::text;
use crate::ui::state::AppState;
use crate::words::Example;

/// All of ten buyers.
const TEN: Exact = Exact::new(10, 0);

/// Of ten buyers, how many stay when a price rises by 10 %, as it is typed.
#[derive(Clone, Copy)]
pub struct Reaction {
    state: AppState,
    typed: RwSignal<String>,
}

impl Reaction {
    /// What was said of it before, on whichever screen.
    pub fn new(state: AppState) -> Reaction {
        let said = of_ten(state).map(|number| state.number(number)).unwrap_or_default();
        let reaction = Reaction { state, typed: RwSignal::new(said) };
        Effect::new(move |_| {
            // What does not read changes nothing.
            if let Ok(of_ten) = reaction.read() {
                remember_of_ten(state, of_ten);
            }
        });
        reaction
    }

    /// It as an answer that profits are worked out by, following what is typed.
    pub fn answered(self) -> Option<Answered> {
        self.read().ok().flatten().and_then(Answered::of_ten)
    }

    fn read(self) -> Result<Option<Exact>, String> {
        let example = Example::Weeks;
        match asked_number(self.state, self.typed, example).transpose()? {
            Some(number) if number > TEN => {
                let speaker = &self.state.speaker.get();
                let (most, example) = (speaker.number(TEN), example.said(speaker));
                Err(say!(decide::most_to_type, most = most, example = example))
            }
            Some(number) if number.is_zero() => Err(say!(decide::of_ten_above_zero).to_string()),
            number => Ok(number),
        }
    }
}

/// The field for it, and what it asks.
#[component]
pub fn ReactionField(
    /// What is typed.
    reaction: Reaction,
    /// The answers that hang on it.
    hangs: Hangs,
) -> impl IntoView {
    let error = text(move || reaction.read().err().unwrap_or_default());
    view! {
        <Ask label=say!(decide::of_ten_stay) text=reaction.typed error hangs />
        <p class="soft">{say!(decide::of_ten_stay_about)}</p>
    }
}
