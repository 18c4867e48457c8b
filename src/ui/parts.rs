//! Small pieces that every screen is made of.

use leptos::ev;
use leptos::prelude::*;

use crate::ledger::Standing;
use crate::words;

/// Where an offer stands: a shape and a word, with colour only besides.
#[component]
pub fn Mark(
    /// Where it stands.
    #[prop(into)]
    standing: Signal<Standing>,
) -> impl IntoView {
    let class = move || match standing.get() {
        Standing::OnTarget => "mark mark-on",
        Standing::UnderTarget => "mark mark-under",
        Standing::WithoutPrice => "mark mark-open",
        Standing::CannotCompute => "mark mark-stuck",
    };
    let shape = move || match standing.get() {
        Standing::OnTarget => "M8 1.5a6.5 6.5 0 1 0 0 13a6.5 6.5 0 0 0 0-13ZM4.6 8.2 7 10.6l4.4-4.8",
        Standing::UnderTarget => "M1.5 3h13L8 14.5ZM8 5.5v4",
        Standing::WithoutPrice => "M8 1.5a6.5 6.5 0 1 0 0 13a6.5 6.5 0 0 0 0-13ZM5 8h6",
        Standing::CannotCompute => "M2 2h12v12H2ZM8 4.5v4.5M8 11v.8",
    };
    view! {
        <span class=class>
            <svg viewBox="0 0 16 16" aria-hidden="true">
                <path d=shape />
            </svg>
            {move || words::standing(standing.get())}
        </span>
    }
}

/// A figure under its name.
#[component]
pub fn Figure(
    /// What it is.
    #[prop(into)]
    name: String,
    /// The figure.
    #[prop(into)]
    value: Signal<String>,
    /// The figure that matters most here.
    #[prop(optional)]
    large: bool,
) -> impl IntoView {
    view! {
        <div class="figure" class:figure-large=large>
            <dt>{name}</dt>
            <dd>{move || value.get()}</dd>
        </div>
    }
}

/// A section with its heading.
#[component]
pub fn Section(
    /// The heading.
    #[prop(into)]
    heading: String,
    /// A quiet line under it.
    #[prop(optional, into)]
    about: Option<String>,
    /// What is in it.
    children: Children,
) -> impl IntoView {
    view! {
        <section class="section">
            <h2>{heading}</h2>
            {about.map(|about| view! { <p class="about">{about}</p> })}
            {children()}
        </section>
    }
}

/// Takes one thing out of a list.
#[component]
pub fn TakeOut(
    /// What is taken out.
    name: Signal<String>,
    /// Takes it out.
    on_click: impl Fn(ev::MouseEvent) + 'static,
) -> impl IntoView {
    view! {
        <button class="quiet take-out" on:click=on_click>
            <svg viewBox="0 0 16 16" aria-hidden="true">
                <path d="M4 4l8 8M12 4l-8 8" />
            </svg>
            <span class="unseen">{move || format!("Take out {}", name.get())}</span>
        </button>
    }
}

/// The way back, above a screen's heading.
#[component]
pub fn Back(
    /// Where it leads.
    to: super::route::Route,
    /// What is there.
    #[prop(into)]
    name: String,
) -> impl IntoView {
    view! {
        <a class="back" href=to.address()>
            <svg viewBox="0 0 16 16" aria-hidden="true">
                <path d="M10 2.5 4.5 8l5.5 5.5" />
            </svg>
            {name}
        </a>
    }
}

/// What a screen says of something that is gone.
#[component]
pub fn Gone(
    /// Where to go instead.
    to: super::route::Route,
    /// What is there.
    #[prop(into)]
    name: String,
) -> impl IntoView {
    view! {
        <Back to=to name=name />
        <p class="hollow">"This is not in the book. It may have been removed; Undo brings it back."</p>
    }
}
