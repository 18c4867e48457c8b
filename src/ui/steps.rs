//! The list of steps: each with when it was done, and a way to take it back by itself.

use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::HtmlElement;

use super::how::sheet_of;
use super::live::{live, press};
use super::lock::Lock;
use super::state::AppState;
use super::today::moment;
use crate::app::history::{Listed, Reach, Stands};
use crate::app::route::Route;
use crate::say;
use crate::words;

/// Whether the list of steps is open.
#[derive(Clone, Copy)]
pub struct Steps(RwSignal<bool>);

impl Steps {
    /// Closed.
    pub fn closed() -> Steps {
        Steps(RwSignal::new(false))
    }

    /// Opens the list.
    pub fn open(self) {
        self.0.set(true);
    }

    /// Whether it is open, following it.
    pub fn is_open(self) -> bool {
        self.0.get()
    }
}

/// The steps that may be walked over on this device, following its lock.
pub fn reach(lock: Lock) -> Reach {
    if lock.is_on() { Reach::Counter } else { Reach::Everything }
}

/// What the list is called, for the caret to go back to.
const TITLE: &str = "steps-title";

/// The sheet with the list. Going to another screen closes it.
pub fn sheet(route: ReadSignal<Route>) -> AnyView {
    let Steps(open) = expect_context::<Steps>();
    Effect::new(move |_| {
        route.track();
        open.set(false);
    });
    let title = view! {
        <h2 id=TITLE tabindex="-1">
            {say!(first::changes)}
        </h2>
    };
    let list = live(move || {
        if open.get() {
            // What is undone here is a step as well. It is listed when the sheet opens next: now no row is to slide
            // under the finger.
            let last = AppState::here().history.with_untracked(|history| history.last_id().map(String::from));
            live(move || listed(last.as_deref())).into_any()
        } else {
            ().into_any()
        }
    });
    sheet_of(say!(first::changes), move || open.get(), move || open.set(false), title.into_any(), list)
}

/// The steps up to one, the last first.
fn listed(last: Option<&str>) -> AnyView {
    let state = AppState::here();
    let mut steps = state.history.with(|history| state.book.with(|book| history.list(book, reach(Lock::here()))));
    steps.retain(|step| Some(step.id.as_str()) <= last);
    if steps.is_empty() {
        return view! { <p class="hollow">{say!(book::no_changes_yet)}</p> }.into_any();
    }
    view! {
        <p class="soft">{say!(book::changes_about)}</p>
        <ol class="steps">{steps.into_iter().map(|step| row(state, step)).collect_view()}</ol>
    }
    .into_any()
}

fn row(state: AppState, step: Listed) -> AnyView {
    let when = moment(step.at);
    let said = match &step.stands {
        Stands::Free => String::new(),
        Stands::TakenBack => say!(book::undone).to_string(),
        Stands::Under(later) => {
            let later: Vec<(String, String)> = later.iter().map(|(name, at)| (name.clone(), moment(*at))).collect();
            words::steps::take_back_first(&later)
        }
        Stands::Hindered(hindrance) => {
            state.book.with_untracked(|book| hindrance.sentence(book, &state.speaker.get_untracked()))
        }
    };
    let did = words::steps::did(&step.name, &step.patch, &state.speaker.get_untracked());
    let of = state.book.with_untracked(|book| words::steps::of(&did, step.of, book));
    let label = say!(book::undo_change_at, change = &did, when = &when);
    let undo = (step.stands == Stands::Free).then(|| {
        let (id, name) = (step.id.clone(), step.name.clone());
        let take_back = move || {
            state.take_back_alone(&id, &name);
            to_the_title();
        };
        view! {
            <button class="button" aria-label=label on:click=press(take_back)>
                {say!(first::undo)}
            </button>
        }
    });
    view! {
        <li class="step-done">
            <p>
                <span>{did}</span>
                <span class="soft">{of}</span>
                <span class="soft">{when}</span>
                <span class="soft">{said}</span>
                {step.too_large.then(|| view! { <span class="soft">{crate::say!(refusals::too_large_to_keep)}</span> })}
            </p>
            {undo}
        </li>
    }
    .into_any()
}

/// The row that was pressed is drawn anew: the caret goes to the head of the list.
fn to_the_title() {
    let title = document().get_element_by_id(TITLE).and_then(|title| title.dyn_into::<HtmlElement>().ok());
    if let Some(title) = title {
        let _ = title.focus();
    }
}
