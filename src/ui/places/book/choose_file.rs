//! A book file that the person chooses, read a piece at a time.

use leptos::ev;
use leptos::prelude::*;
use leptos::task::spawn_local;
use web_sys::HtmlInputElement;

use crate::exchange::{LeftOut, TakenIn};
use crate::say;
use crate::ui::files::book_of;
use crate::ui::live::{text, when};
use crate::words;

/// What was left out that is shown at once.
const SHOWN: usize = 20;

/// Asks for a book file and reads it.
#[component]
pub fn ChooseFile(
    /// What the file is asked for.
    label: &'static str,
    /// Names the field, as no other on the page.
    id: &'static str,
    /// What was read.
    taken: RwSignal<Option<TakenIn>>,
    /// Why nothing was taken.
    refused: RwSignal<Option<String>>,
    /// Said behind that.
    #[prop(optional)]
    unchanged: &'static str,
) -> impl IntoView {
    let progress = RwSignal::new(None::<usize>);
    let chosen = move |event: ev::Event| {
        let input: HtmlInputElement = event_target(&event);
        let Some(file) = input.files().and_then(|files| files.get(0)) else { return };
        // One file at a time.
        if progress.with_untracked(Option::is_some) {
            return;
        }
        // The same file can be chosen again only if the field is empty.
        input.set_value("");
        refused.set(None);
        taken.set(None);
        progress.set(Some(0));
        spawn_local(async move {
            let read = book_of(&file, move |percent| progress.set(Some(percent))).await;
            progress.set(None);
            refused.set(
                read.as_ref().err().map(|sentence| [sentence.as_str(), unchanged].join(" ").trim_end().to_string()),
            );
            taken.set(read.ok());
        });
    };
    let error_id = format!("{id}-error");
    let sentence = text(move || refused.get().unwrap_or_default());
    view! {
        <div class="entry">
            <label for=id>{label}</label>
            <div class="entry-box">
                <input
                    id=id
                    aria-describedby=error_id.clone()
                    type="file"
                    accept=".json,.txt,application/json,text/plain"
                    on:change=chosen
                />
            </div>
            <p class="entry-error" id=error_id role="status">{sentence}</p>
            {when(move || progress.with(Option::is_some), move || reading(progress))}
        </div>
    }
}

/// How far the reading of a file is.
fn reading(progress: RwSignal<Option<usize>>) -> AnyView {
    let percent = text(move || progress.get().unwrap_or_default().to_string());
    view! {
        <p class="soft">
            {say!(book::reading_file)}
            " "
            <progress aria-label=say!(book::reading_file) max="100" value=percent></progress>
        </p>
    }
    .into_any()
}

/// A list of sentences.
pub fn lines(sentences: Vec<String>) -> AnyView {
    view! { <ul>{sentences.into_iter().map(|line| view! { <li>{line}</li> }).collect_view()}</ul> }.into_any()
}

/// What of a stored book is not in what would be taken in.
pub fn left_out(out: &[LeftOut]) -> AnyView {
    if out.is_empty() {
        return ().into_any();
    }
    let more = match out.iter().skip(SHOWN).map(LeftOut::count).sum() {
        0 => String::new(),
        more => words::further_not_taken(more),
    };
    view! {
        <h4>{say!(book::missing_or_damaged)}</h4>
        {lines(out.iter().take(SHOWN).map(words::not_taken).collect())}
        <p class="soft">{more}</p>
    }
    .into_any()
}
