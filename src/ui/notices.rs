//! The notices under the head: what is not saved, what is asked before leaving, a new version.
//! They stay in view while the page scrolls. Where little height is left, as above a keyboard,
//! they are folded away until a mark in the head is pressed; a question never is.

use leptos::prelude::*;

use super::later::Later;
use super::library::{Leaving, Library};
use super::live::{flag, live, press, text, when};
use super::lock::Lock;
use super::saving::SavingTrouble;
use super::state::AppState;
use super::update::UpdateNotice;
use crate::say;
use crate::store::{Fault, Saving};
use crate::words;

/// Whether the notices are opened or folded by hand; by the height of the window where neither.
#[derive(Clone, Copy, Default)]
pub struct Notices(RwSignal<Option<bool>>);

impl Notices {
    /// Those of the screens above.
    pub fn here() -> Notices {
        expect_context::<Notices>()
    }

    /// Opens them, or folds them where they were opened by hand.
    pub fn turn(self) {
        self.0.update(|open| *open = Some(*open != Some(true)));
    }
}

/// All notices.
#[component]
pub fn NoticeBoard() -> impl IntoView {
    let (library, notices, later) = (Library::here(), Notices::here(), Later::here());
    let opened = flag(move || notices.0.get() == Some(true));
    let folded = flag(move || notices.0.get() == Some(false));
    // What is new is shown; what is tried again and fails as before is not new.
    let wrong = Memo::new(move |before| {
        library.saving.with(|saving| match saving {
            Saving::Saving { .. } => before.copied().unwrap_or_default(),
            saving => Some(std::mem::discriminant(saving)),
        })
    });
    Effect::new(move |_| {
        wrong.get();
        notices.0.set(None);
    });
    let asked = move || library.leaving.with(Option::is_some);
    view! {
        <div class="notices" class:notices-opened=opened class:notices-folded=folded>
            {live(move || later.parts().map(|parts| (parts.notices)()).into_any())}
            {when(move || !asked(), || view! { <UpdateNotice /> }.into_any())}
        </div>
    }
}

/// What is wrong with saving, or what is asked before the book is left.
pub fn about_saving() -> AnyView {
    let library = Library::here();
    let asked = move || library.leaving.with(Option::is_some);
    view! {
        {when(move || !asked(), || view! { <SavingTrouble /> }.into_any())}
        {when(asked, || view! { <Leaving /> }.into_any())}
    }
    .into_any()
}

/// Asks before something that is not saved is left behind.
#[component]
fn Leaving() -> impl IntoView {
    let (library, state, lock) = (Library::here(), AppState::here(), Lock::here());
    let lost = text(move || library.saving.with(words::keeping::not_saved).unwrap_or_default());
    let why = text(move || match library.saving.get() {
        Saving::NotSaved { fault, .. } => words::fault(&fault),
        _ => String::new(),
    });
    let anyway = text(move || {
        let anyway = match library.leaving.get() {
            Some(Leaving::Delete) => say!(book::delete_anyway),
            Some(Leaving::Update) => say!(book::update_anyway),
            Some(Leaving::Switch) => say!(book::switch_anyway),
            Some(Leaving::Close) | None => say!(book::close_anyway),
        };
        anyway.to_string()
    });
    let hopeless = flag(move || {
        library.saving.with(|saving| match saving {
            Saving::NotSaved { fault, .. } => {
                matches!(fault, Fault::Gone | Fault::Deleted | Fault::NewerVersionOpen | Fault::NoStorage)
            }
            Saving::InConflict { .. } | Saving::Saving { .. } | Saving::Saved { .. } => true,
        })
    });
    let locked = flag(move || lock.is_on());
    view! {
        <div class="notice notice-trouble notice-asking" role="alert">
            <p>{lost} " " {why}</p>
            <button class="button" hidden=hopeless on:click=press(move || library.retry())>
                {say!(first::try_again)}
            </button>
            <button class="button" hidden=locked on:click=press(move || library.save_copy(state))>
                {say!(book::save_copy)}
            </button>
            <button class="button" on:click=press(move || library.leave_anyway())>
                {anyway}
            </button>
            <button class="main" on:click=press(move || library.stay())>
                {say!(book::stay_here)}
            </button>
        </div>
    }
}
