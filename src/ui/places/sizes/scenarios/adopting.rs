//! Making a scenario the menu: every change is listed before it is made.

use leptos::prelude::*;

use crate::app::route::Route;
use crate::backup::restore_points::Why;
use crate::book::{Offer, ScenarioId};
use crate::say;
use crate::sizes::scenario::{adopted, changes, uses};
use crate::ui::address::go;
use crate::ui::library::Library;
use crate::ui::live::{flag, live, press, text, trouble, when};
use crate::ui::parts::is_wide;
use crate::ui::places::sizes::what_if::said;
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words::{Decisions, what_if_error};

/// The button, the list that it opens, and the button that makes the changes.
#[component]
pub fn Adopting(
    /// The scenario.
    id: ScenarioId,
) -> impl IntoView {
    let state = AppState::here();
    let library = Library::here();
    let refused = RwSignal::new(None::<String>);
    // Where there is room, what it changes stands there before anything is pressed.
    let open = RwSignal::new(is_wide());
    let listed = Memo::new(move |_| {
        state.book.with(|book| {
            let words = Decisions { book, speaker: &state.speaker.get() };
            let Some(scenario) = book.scenario(id) else { return Vec::new() };
            let offers = changes(book, scenario);
            let offers = offers.iter().flat_map(|(was, is)| words.becomes(was.as_ref(), is.as_ref()));
            let [terms, _] = said(state, &uses(book, scenario));
            offers.chain(terms).collect::<Vec<String>>()
        })
    });
    let sells = flag(move || {
        state.book.with(|book| {
            let all = book.scenario(id).map(|scenario| changes(book, scenario)).unwrap_or_default();
            let weekly = |offer: &Option<Offer>| offer.as_ref().and_then(|offer| offer.weekly);
            all.iter().any(|(was, is)| is.is_some() && weekly(was) != weekly(is))
        })
    });
    let adopt = move || {
        let edit = state.book.with_untracked(|book| {
            let edit = adopted(book, book.scenario(id)?, today());
            Some(edit.map_err(|error| what_if_error(&error, book, &state.speaker.get_untracked())))
        });
        let edit = match edit {
            Some(Ok(edit)) => edit,
            Some(Err(sentence)) => return refused.set(Some(sentence)),
            None => return,
        };
        library.before(Why::Adoption);
        match state.apply(say!(sales::scenario_made_menu), edit) {
            Ok(()) => go(Route::Drinks),
            Err(sentence) => {
                library.not_done();
                refused.set(Some(sentence));
            }
        }
    };
    let none = flag(move || listed.with(Vec::is_empty));
    let expanded = text(move || open.get().to_string());
    let list = move || {
        let items =
            live(move || listed.get().into_iter().map(|said| view! { <li>{said}</li> }).collect_view().into_any());
        view! {
            <div class="uses">
                <h3>{say!(sales::what_it_changes)}</h3>
                {when(move || sells.get(), || view! { <p class="assumes">{say!(sales::scenario_assumes)}</p> }.into_any())}
                <ul class="bulleted uses-changes">{items}</ul>
                <p class="soft">{say!(sales::about_make_menu)}</p>
                <p class="actions">
                    <button class="main" on:click=press(adopt)>
                        {say!(sales::make_these_changes)}
                    </button>
                    <button class="quiet" on:click=press(move || open.set(false))>
                        {say!(first::cancel)}
                    </button>
                </p>
            </div>
        }
        .into_any()
    };
    view! {
        <p class="actions">
            <button
                class="button"
                disabled=none
                aria-expanded=expanded
                on:click=press(move || open.update(|open| *open = !*open))
            >
                {say!(sales::make_menu)}
            </button>
        </p>
        {when(move || none.get(), || view! { <p class="soft">{say!(sales::scenario_is_menu)}</p> }.into_any())}
        {when(move || open.get() && !none.get(), list)}
        {trouble(move || refused.get())}
    }
}
