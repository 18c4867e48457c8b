//! What every sheet has: the choice of paper, the button that prints, and papers with head and
//! foot.

use std::sync::Arc;

use leptos::prelude::*;

use crate::app::route::Route;
use crate::say;
use crate::store::paper::Paper;
use crate::ui::fields::Choice;
use crate::ui::live::{press, text, when};
use crate::ui::parts::Back;
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words;

/// A sheet as it comes out of the printer, and above it what is chosen about it.
#[component]
pub fn Frame(
    /// What it is.
    heading: &'static str,
    /// Where it belongs.
    back: Route,
    /// What is there.
    name: &'static str,
    /// What else is chosen about it.
    #[prop(optional)]
    choices: Option<AnyView>,
    /// Its papers: one [`Leaf`] or several.
    children: Children,
) -> impl IntoView {
    let state = AppState::here();
    let paper = RwSignal::new(Paper::here(state.book.with_untracked(|book| book.settings().units)));
    let option = |paper: Paper| {
        let said = match paper {
            Paper::A4 => paper.name(),
            Paper::Letter => say!(counter::letter_paper),
        };
        (paper.name().to_string(), said.to_string())
    };
    let options = Paper::ALL.map(option).to_vec();
    let choose = Arc::new(move |name: &str| {
        if let Some(chosen) = Paper::of_name(name) {
            chosen.note();
            paper.set(chosen);
        }
        Ok(())
    });
    let class = text(move || {
        match paper.get() {
            Paper::A4 => "preview",
            Paper::Letter => "preview preview-letter",
        }
        .to_string()
    });
    let print = move || {
        // A browser that cannot print does nothing.
        let _ = window().print();
    };
    view! {
        <Back to=back name=name />
        <h1>{heading}</h1>
        <div class="section sheet-choices">
            <div class="fields">
                <Choice
                    label=say!(counter::paper)
                    options=Signal::stored(options)
                    value=text(move || paper.get().name().to_string())
                    choose=choose
                />
                {choices}
            </div>
            <p class="actions">
                <button class="main" on:click=press(print)>
                    {say!(counter::print)}
                </button>
            </p>
        </div>
        <div class=class tabindex="0" role="region" aria-label=say!(counter::print_preview)>
            {children()}
        </div>
    }
}

/// A paper with the book's name and the day in its head; content longer than that goes on on
/// further ones.
#[component]
pub fn Leaf(
    /// What it is.
    #[prop(into)]
    title: String,
    /// Sentences in the foot: cautions.
    #[prop(optional)]
    foot: Vec<String>,
    /// What is on it.
    children: Children,
) -> impl IntoView {
    let state = AppState::here();
    let book = text(move || state.book.with(|book| book.settings().name.clone()));
    let invented = when(
        move || state.book.with(|book| book.settings().invented),
        || view! { <span class="tag">{say!(first::sample_data)}</span> }.into_any(),
    );
    let printed = say!(counter::printed_on, day = words::day(today()));
    let foot = foot.into_iter().map(|sentence| view! { <p>{sentence}</p> }).collect_view();
    view! {
        <article class="paper">
            <header class="paper-head">
                <div>
                    <strong>{title}</strong>
                    <span>{book} " " {invented}</span>
                    <span>{printed}</span>
                </div>
            </header>
            <div class="paper-body">{children()}</div>
            <footer class="paper-foot">{foot}</footer>
        </article>
    }
}

/// The rows of a table on paper. The first two and the last two are not torn apart: no row stands alone at the
/// end of a paper, or at the head of the next.
pub fn bodies(rows: Vec<AnyView>) -> AnyView {
    let (mut first, mut middle, mut last) = (Vec::new(), Vec::new(), Vec::new());
    let end = rows.len().saturating_sub(2).max(2);
    for (place, row) in rows.into_iter().enumerate() {
        match place {
            0 | 1 => first.push(row),
            place if place >= end => last.push(row),
            _ => middle.push(row),
        }
    }
    // A third row goes with the first two.
    if last.len() == 1 {
        first.append(&mut last);
    }
    let whole = |rows: Vec<AnyView>| (!rows.is_empty()).then(|| view! { <tbody class="paper-whole">{rows}</tbody> });
    let torn = (!middle.is_empty()).then(|| view! { <tbody>{middle}</tbody> });
    view! {
        {whole(first)}
        {torn}
        {whole(last)}
    }
    .into_any()
}
