//! Show the math: a number that is pressed opens to its working.

use leptos::ev;
use leptos::html;
use leptos::prelude::*;

use super::live::{flag, live, press};
use super::state::AppState;
use crate::app::route::Route;
use crate::drink::ledger::OfferError;
use crate::say;
use crate::words;
use crate::working::{Rule, Shown, Step, of};

/// The numbers that are open, the one on top last.
#[derive(Clone, Copy)]
pub struct How(RwSignal<Vec<Shown>>);

impl How {
    /// Nothing open.
    pub fn closed() -> How {
        How(RwSignal::new(Vec::new()))
    }

    fn open(self, shown: Shown) {
        self.0.update(|open| open.push(shown));
    }
}

/// A number that opens to its working.
pub fn opens(shown: Shown, figure: Signal<String>) -> AnyView {
    let how = expect_context::<How>();
    view! {
        <button
            class="how"
            title=say!(common::show_the_math)
            aria-haspopup="dialog"
            on:click=press(move || how.open(shown))
        >
            {figure}
        </button>
    }
    .into_any()
}

/// The sheet on which a number's working stands. `route` is the screen under it: going to another
/// one closes the sheet.
pub fn sheet(route: ReadSignal<Route>) -> AnyView {
    let How(open) = expect_context::<How>();
    Effect::new(move |_| {
        route.track();
        open.set(Vec::new());
    });
    let first = flag(move || open.with(|open| open.len() < 2));
    let back = move || {
        open.update(|open| {
            open.pop();
        });
    };
    let head = view! {
        <h2>{say!(working::the_math)}</h2>
        <button class="quiet" hidden=first on:click=press(back)>
            {say!(working::back)}
        </button>
    };
    let shown = live(move || match open.with(|open| open.last().copied()) {
        Some(shown) => working(shown),
        None => ().into_any(),
    });
    let close = move || open.set(Vec::new());
    sheet_of(say!(working::the_math), move || !open.with(Vec::is_empty), close, head.into_any(), shown)
}

/// A sheet over the screen: its head with a way to close it, and what stands on it.
pub fn sheet_of(
    name: &'static str,
    is_open: impl Fn() -> bool + Send + Sync + 'static,
    close: impl Fn() + Copy + 'static,
    head: AnyView,
    shown: AnyView,
) -> AnyView {
    let is_open = flag(is_open);
    let sheet = NodeRef::<html::Dialog>::new();
    Effect::new(move |_| {
        let (open, sheet) = (is_open.get(), sheet.get());
        match sheet {
            Some(sheet) if !open && sheet.open() => sheet.close(),
            // A sheet that is in the page and closed can be shown.
            Some(sheet) if open && !sheet.open() => drop(sheet.show_modal()),
            _ => {}
        }
    });
    view! {
        <dialog class="sheet" node_ref=sheet aria-label=name on:close=move |_: ev::Event| close()>
            <div class="sheet-head">
                {head}
                <button class="quiet" on:click=press(close)>
                    {say!(first::close)}
                </button>
            </div>
            {shown}
        </dialog>
    }
    .into_any()
}

/// A number's working, following the book.
pub fn working(shown: Shown) -> AnyView {
    let state = AppState::here();
    let step = state.book.with(|book| state.ledger.with(|ledger| of(book, ledger, shown)));
    match step {
        Ok(Some(step)) => drawn(&step, true),
        Ok(None) => said(say!(working::no_number_yet).into()),
        Err(error) => said(why(state, &error)),
    }
}

fn why(state: AppState, error: &OfferError) -> String {
    state.book.with(|book| words::offer_error(error, book))
}

fn said(sentence: String) -> AnyView {
    view! { <p class="hollow">{sentence}</p> }.into_any()
}

/// A step with those before it; `head` where it is the number that was asked for.
pub fn drawn(step: &Step, head: bool) -> AnyView {
    let state = AppState::here();
    let (name, figure, sentence) = state.book.with(|book| {
        let words = words::Working { book, speaker: &state.speaker.get() };
        (words.name(step), words.figure(step), words.sentence(step))
    });
    let figure = match step.rule {
        Rule::Opens(shown) => opens(shown, Signal::stored(figure)),
        _ => figure.into_any(),
    };
    let sentence = match step.rule {
        Rule::Opens(_) => String::new(),
        _ => sentence,
    };
    let before: Vec<AnyView> =
        step.from.iter().map(|step| view! { <li>{drawn(step, false)}</li> }.into_any()).collect();
    let none = before.is_empty();
    view! {
        <div class="step" class:step-head=head>
            <p class="step-name">{name}</p>
            <p class="step-figure">{figure}</p>
            <p class="step-said">{sentence}</p>
        </div>
        <ul class="step-before" hidden=none>{before}</ul>
    }
    .into_any()
}
