//! The frame around the screens: the head with undo, the bar of places, what last moved.

use leptos::prelude::*;

use super::address::follow_address;
use super::how::How;
use super::kept;
use super::language::{self, Reader};
use super::later::{Later, Parts, waiting};
use super::live::{flag, live, press, text, when};
use super::lock::Lock;
use super::notices::NoticeBoard;
use super::places;
use super::saving::{SavingMark, UpdateMark};
use super::state::AppState;
use super::steps::{Steps, reach};
use crate::app::history::Reach;
use crate::app::route::{Place, Route};
use crate::say;

/// The frame around the screens.
#[component]
pub fn Shell() -> impl IntoView {
    let lock = Lock::here();
    let route = follow_address(lock);
    let locked = flag(move || lock.is_on());
    let later = Later::here();
    // The screen before stays until the one gone to is here, or cannot be had.
    let shown = Memo::new(move |before: Option<&Option<Route>>| {
        let route = route.get();
        if places::is_at_once(route) || later.parts().is_some() {
            Some(route)
        } else if later.failed() {
            None
        } else {
            before.copied().flatten()
        }
    });
    Effect::new(move |_| if places::is_at_once(route.get()) { later.stop_waiting() } else { later.ask() });
    Effect::new(move |_| {
        if shown.get() == Some(route.get_untracked()) {
            kept::settle();
        }
    });
    provide_context(How::closed());
    let steps = Steps::closed();
    provide_context(steps);
    // All is drawn anew where who reads it changes, and the two read different languages.
    let reader = Memo::new(move |_| {
        let of_the_crew = later.parts().is_some() && language::crew_has_its_own() && route.get().is_for_the_crew();
        if of_the_crew { Reader::Crew } else { Reader::Owner }
    });
    live(move || {
        language::speak_to(reader.get());
        frame(route, locked, shown)
    })
}

fn frame(route: ReadSignal<Route>, locked: Signal<bool>, shown: Memo<Option<Route>>) -> AnyView {
    let (later, steps) = (Later::here(), expect_context::<Steps>());
    view! {
        <a class="skip" href="#main">{say!(first::skip_to_content)}</a>
        <div class="frame" class:frame-locked=locked>
            <Bar route locked />
            <div class="stage">
                <div class="top">
                    <Head />
                    <NoticeBoard />
                </div>
                {live(move || later.parts().map(|parts| (parts.beside)()).into_any())}
                {live(move || later.parts().map(|parts| (parts.elsewhere)(route)).into_any())}
                <main id="main" tabindex="-1">
                    {when(move || shown.get() != Some(route.get()) || (steps.is_open() && later.parts().is_none()), waiting)}
                    {live(move || shown.get().and_then(|route| drawn(route, later)).into_any())}
                </main>
            </div>
        </div>
        {live(move || later.parts().map(|parts| [(parts.sheet)(route), (parts.steps)(route)]).into_any())}
    }
    .into_any()
}

fn drawn(route: Route, later: Later) -> Option<AnyView> {
    places::at_once(route).or_else(|| later.parts().map(|parts| (parts.screen)(route)))
}

#[component]
fn Bar(route: ReadSignal<Route>, locked: Signal<bool>) -> impl IntoView {
    let item = move |place: Place| {
        let here = Signal::derive(move || (route.get().place() == place).then_some("page"));
        view! {
            <li>
                <a href=Route::of(place).address() aria-current=here>
                    <svg viewBox="0 0 24 24" aria-hidden="true">
                        <path d=icon(place) />
                    </svg>
                    <span>{place.name()}</span>
                </a>
            </li>
        }
    };
    view! {
        <nav class="bar" aria-label=say!(first::places) hidden=locked>
            <ul>{Place::ALL.into_iter().map(item).collect_view()}</ul>
        </nav>
    }
}

const fn icon(place: Place) -> &'static str {
    match place {
        Place::Drinks => "M6 4h12l-1.6 16.5H7.6ZM6.6 9.5h10.8",
        Place::Buying => "M3.5 8.5h17l-1.6 11.5H5.1ZM8 8.5 10.5 3.5M16 8.5 13.5 3.5M9.5 12v4.5M14.5 12v4.5",
        Place::Sizes => "M3.5 20.5v-6.5h4v6.5ZM10 20.5V9.5h4v11ZM16.5 20.5v-17h4v17Z",
        Place::Counter => "M4.5 3.5h15v17h-15ZM8 8.5h8M8 12.5h8M8 16.5h5",
        Place::Book => {
            "M12 6.5c-2.3-2-5.3-2.4-8.5-2v14c3.2-.4 6.2 0 8.5 2c2.3-2 5.3-2.4 8.5-2v-14c-3.2-.4-6.2 0-8.5 2ZM12 6.5v14"
        }
    }
}

/// Who is kept to the Counter undoes what is done there, and no price that the owner changed.
#[component]
fn Head() -> impl IntoView {
    let (state, later, lock) = (AppState::here(), Later::here(), Lock::here());
    let steps = expect_context::<Steps>();
    let list = move || {
        steps.open();
        later.ask();
    };
    // There are no steps to walk over before the second file is here.
    let walk = move |way: fn(&Parts) -> fn(AppState, Reach)| {
        if let Some(parts) = later.parts_now() {
            way(parts)(state, reach(lock));
        }
    };
    let name = text(move || state.book.with(|book| book.settings().name.clone()));
    let invented = when(
        move || state.book.with(|book| book.settings().invented),
        || view! { <span class="tag">{say!(first::sample_data)}</span> }.into_any(),
    );
    view! {
        <header class="head">
            <p class="head-name">
                <span>{name}</span>
                {invented}
            </p>
            <SavingMark />
            <UpdateMark />
            <div class="head-steps">
                <StepButton
                    name=say!(first::undo)
                    titled=|change| say!(first::undo_change, change = change)
                    shape="M9 5 4 10l5 5M4.5 10H14a5.5 5.5 0 0 1 0 11h-3"
                    step=text(move || state.history.with(|it| it.undo_name(reach(lock)).unwrap_or_default().to_string()))
                    walk=move || walk(|parts| parts.undo)
                />
                <StepButton
                    name=say!(first::redo)
                    titled=|change| say!(first::redo_change, change = change)
                    shape="M15 5l5 5-5 5M19.5 10H10a5.5 5.5 0 0 0 0 11h3"
                    step=text(move || state.history.with(|it| it.redo_name(reach(lock)).unwrap_or_default().to_string()))
                    walk=move || walk(|parts| parts.redo)
                />
                <button class="quiet" title=say!(first::all_changes) aria-haspopup="dialog" on:click=press(list)>
                    <svg viewBox="0 0 24 24" aria-hidden="true">
                        <path d="M4 6h3M4 12h3M4 18h3M10 6h10M10 12h10M10 18h10" />
                    </svg>
                    <span>{say!(first::changes)}</span>
                </button>
            </div>
            <Walked />
        </header>
    }
}

/// What was taken back or done again, for a while; or why it was not, until that is read or
/// something else is done.
#[component]
fn Walked() -> impl IntoView {
    let said = AppState::here().said;
    let sentence = text(move || said.get().map(|said| said.sentence).unwrap_or_default());
    let none = flag(move || said.with(|said| said.as_ref().is_none_or(|said| said.done)));
    let done = flag(move || said.with(|said| said.as_ref().is_some_and(|said| said.done)));
    view! {
        <div class="head-said" class:head-done=done role="status">
            <p>{sentence}</p>
            <button class="quiet" hidden=none on:click=press(move || said.set(None))>
                {say!(first::close)}
            </button>
        </div>
    }
}

/// Undo or Redo; named after the step that it walks over.
#[component]
fn StepButton(
    name: &'static str,
    titled: fn(&str) -> String,
    shape: &'static str,
    step: Signal<String>,
    walk: impl Fn() + 'static,
) -> impl IntoView {
    let none = Signal::derive(move || step.with(String::is_empty));
    let title = text(move || step.with(|step| titled(step)));
    view! {
        <button class="quiet" disabled=none title=title on:click=press(walk)>
            <svg viewBox="0 0 24 24" aria-hidden="true">
                <path d=shape />
            </svg>
            <span>{name}</span>
        </button>
    }
}
