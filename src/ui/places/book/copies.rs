//! Copies of the book outside the browser: how old the last one is, and a file kept up to date.

use leptos::prelude::*;
use leptos::task::spawn_local;
use wasm_bindgen_futures::JsFuture;

use crate::backup::copies::DeviceFile;
use crate::say;
use crate::ui::beside::standing;
use crate::ui::device_file;
use crate::ui::library::Library;
use crate::ui::live::{live, press, text};
use crate::ui::parts::Section;
use crate::ui::state::AppState;
use crate::ui::today::{moment, today};
use crate::words;

/// Copies of the book.
#[component]
pub fn CopiesSection() -> impl IntoView {
    let (library, state) = (Library::here(), AppState::here());
    let promised = RwSignal::new(None::<bool>);
    let saved = Memo::new(move |_| library.saving.with(|saving| !saving.at_risk()));
    // The browser decides after the first save of an own book.
    Effect::new(move |_| {
        saved.get();
        spawn_local(async move { promised.set(persisted().await) });
    });
    let last = text(move || words::copies::last_copy(&standing(library, state), today()));
    let promise = text(move || words::copies::persisted(promised.get()).to_string());
    let file = Memo::new(move |_| library.copies.with(|copies| copies.file.clone()));
    view! {
        <Section heading=say!(book::copies)>
            <p>{last}</p>
            <p class="soft">{promise}</p>
            {live(move || on_the_device(library, state, file.get()))}
        </Section>
    }
}

fn on_the_device(library: Library, state: AppState, file: DeviceFile) -> AnyView {
    let choose = || {
        view! {
            <button class="button" on:click=press(move || device_file::choose(library, state))>
                {say!(book::copy_to_file)}
            </button>
        }
    };
    let stop = || {
        view! {
            <button class="quiet" on:click=press(move || device_file::stop(library))>
                {say!(book::stop_copies)}
            </button>
        }
    };
    match file {
        DeviceFile::None => ().into_any(),
        DeviceFile::Off => view! { <p class="actions">{choose()}</p> }.into_any(),
        DeviceFile::On { name, written } => {
            let said = match written {
                Some(at) => words::copies::file_written(&name, &moment(at)),
                None => words::copies::file_chosen(&name),
            };
            view! { <p role="status">{said}</p> <p class="actions">{stop()}</p> }.into_any()
        }
        DeviceFile::AskAgain(_) => view! {
            <p class="trouble" role="status">{words::copies::ask_again()}</p>
            <p class="actions">
                <button class="button" on:click=press(move || device_file::allow(library, state))>
                    {say!(book::allow_saving)}
                </button>
                {stop()}
            </p>
        }
        .into_any(),
        DeviceFile::Failed { name, kind } => view! {
            <p class="trouble" role="status">{words::copies::file_not_written(&name, &kind)}</p>
            <p class="actions">{choose()} {stop()}</p>
        }
        .into_any(),
    }
}

/// Whether the browser promised to keep the books. Returns `None` if it does not say.
async fn persisted() -> Option<bool> {
    let asked = window().navigator().storage().persisted().ok()?;
    JsFuture::from(asked).await.ok()?.as_bool()
}
