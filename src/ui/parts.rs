//! Small pieces that every screen is made of.

use std::borrow::Cow;

use leptos::ev;
use leptos::prelude::*;

use super::fields::Draft;
use super::how::opens;
use super::kept;
use super::live::{live, press, text};
use super::section;
use super::state::AppState;
use crate::app::route::Route;
use crate::book::Key;
use crate::drink::ledger::OfferStatus;
use crate::say;
use crate::words;
use crate::working::Shown;

/// Where an offer stands: a shape and a word, with colour only besides.
#[component]
pub fn Mark(
    /// Where it stands.
    #[prop(into)]
    status: Signal<OfferStatus>,
) -> impl IntoView {
    let class = text(move || {
        match status.get() {
            OfferStatus::OnTarget => "mark mark-on",
            OfferStatus::UnderTarget => "mark mark-under",
            OfferStatus::WithoutPrice => "mark mark-open",
            OfferStatus::CannotCompute => "mark mark-stuck",
        }
        .to_string()
    });
    let shape = text(move || {
        match status.get() {
            OfferStatus::OnTarget => "M8 1.5a6.5 6.5 0 1 0 0 13a6.5 6.5 0 0 0 0-13ZM4.6 8.2 7 10.6l4.4-4.8",
            OfferStatus::UnderTarget => "M1.5 3h13L8 14.5ZM8 5.5v4",
            OfferStatus::WithoutPrice => "M8 1.5a6.5 6.5 0 1 0 0 13a6.5 6.5 0 0 0 0-13ZM5 8h6",
            OfferStatus::CannotCompute => "M2 2h12v12H2ZM8 4.5v4.5M8 11v.8",
        }
        .to_string()
    });
    let words = text(move || words::offer_status(status.get()).to_string());
    view! {
        <span class=class>
            <svg viewBox="0 0 16 16" aria-hidden="true">
                <path d=shape />
            </svg>
            <span class="mark-words">{words}</span>
        </span>
    }
}

/// A figure under its name.
#[component]
pub fn Figure(
    /// What it is.
    #[prop(into)]
    name: Cow<'static, str>,
    /// The figure.
    #[prop(into)]
    value: Signal<String>,
    /// The figure that matters most here.
    #[prop(optional)]
    large: bool,
    /// Its working, where it has one.
    #[prop(optional_no_strip, into)]
    how: Option<Shown>,
) -> impl IntoView {
    let value = match how {
        Some(shown) => opens(shown, value),
        None => value.into_any(),
    };
    view! {
        <div class="figure" class:figure-large=large>
            <dt>{name.into_owned()}</dt>
            <dd>{value}</dd>
        </div>
    }
}

/// A name, its figure, and the figure's working where it has one.
pub type Named = (String, String, Option<Shown>);

/// Figures under their names, following their signals.
pub fn figures(list: impl Fn() -> Vec<Named> + Send + Sync + 'static) -> AnyView {
    let figure = |(name, figure, how): Named| view! { <Figure name=name value=Signal::stored(figure) how=how /> };
    live(move || list().into_iter().map(figure).collect_view().into_any())
}

/// The warning statement of untreated juice as a label carries it: WARNING in bold capitals, set
/// off by hairlines (21 CFR 101.17(g)(5) and (6)).
pub fn warning_box() -> AnyView {
    let said = crate::say!(labels::untreated_juice_warning);
    let (warning, rest) = said.split_once(':').unwrap_or(("", said));
    view! {
        <p class="warning-box">
            <strong>{warning}</strong>
            ":"
            {rest}
        </p>
    }
    .into_any()
}

/// A section with its heading.
#[component]
pub fn Section(
    /// The heading.
    heading: &'static str,
    /// A quiet line under it.
    #[prop(optional)]
    about: Option<&'static str>,
    /// What is in it.
    children: Children,
) -> impl IntoView {
    let part = NodeRef::new();
    if section::is_wanted(heading) {
        section::show(part);
    }
    view! {
        <section class="section">
            <h2 node_ref=part tabindex="-1">{heading}</h2>
            {about.map(|about| view! { <p class="about">{about}</p> })}
            {children()}
        </section>
    }
}

/// A part of a page that opens: its name, and what it comes to, stand on the fold. Whether it is open is kept for
/// the visit.
#[component]
pub fn Fold(
    /// What is in it.
    name: &'static str,
    /// What it comes to, such as "7 lines"; empty where there is nothing to say.
    #[prop(into)]
    figure: Signal<String>,
    /// Whether it stands open at first.
    #[prop(optional, into)]
    open: Signal<bool>,
    /// Whether what is in it is drawn only once it is opened: for what is drawn anew at each key that is typed. (Browsers
    /// style closed fields and lists too, since they look for fields to fill in for a person.)
    #[prop(optional)]
    late: bool,
    /// What is in it.
    children: Children,
) -> impl IntoView {
    let wanted = section::is_wanted(name);
    let open = kept::flag(name, wanted || open.get_untracked());
    let part = NodeRef::new();
    if wanted {
        section::show(part);
    }
    let inside = if late { once(open, children) } else { children().into_any() };
    view! {
        <details
            class="fold"
            open=open.get_untracked()
            on:toggle=move |event| open.set(event_target::<web_sys::Element>(&event).has_attribute("open"))
        >
            <summary node_ref=part>
                <h2>{name}</h2>
                <span class="fold-figure">{figure}</span>
            </summary>
            <div class="fold-in">{inside}</div>
        </details>
    }
}

/// What is drawn once a fold is opened, and stays.
fn once(open: RwSignal<bool>, children: Children) -> AnyView {
    let opened = Memo::new(move |before| before == Some(&true) || open.get());
    let children = StoredValue::new_local(Some(children));
    live(move || {
        let children = if opened.get() { children.try_update_value(Option::take).flatten() } else { None };
        children.map_or_else(|| ().into_any(), |children| children().into_any())
    })
}

/// Whether there is room for panes side by side, as the window is now: what is folded on a phone stands
/// open. The panes are told apart by the same width in `style/shared.css`.
pub fn is_wide() -> bool {
    window().match_media("(min-width: 68.75rem)").ok().flatten().is_some_and(|query| query.matches())
}

/// What a verdict says about what is asked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Says {
    /// It pays.
    Yes,
    /// It does not.
    No,
    /// It hangs on what nobody knows yet.
    Open,
}

impl Says {
    /// The shape that goes with it.
    pub const fn class(self) -> &'static str {
        match self {
            Says::Yes => "mark-yes",
            Says::No => "mark-no",
            Says::Open => "mark-open-question",
        }
    }

    const fn shape(self) -> &'static str {
        match self {
            Says::Yes => "M8 2 15 14H1Z",
            Says::No => "M2 2h12v12H2Z",
            Says::Open => "M8 1.5a6.5 6.5 0 1 0 0 13a6.5 6.5 0 0 0 0-13Z",
        }
    }
}

/// The shape of a verdict, beside the sentence that says it.
pub fn says_shape(says: Says) -> AnyView {
    view! {
        <svg class=format!("says {}", says.class()) viewBox="0 0 16 16" aria-hidden="true">
            <path d=says.shape() />
        </svg>
    }
    .into_any()
}

/// The answer of a page in one large sentence.
pub fn verdict(says: impl Fn() -> (Says, String) + Send + Sync + 'static) -> AnyView {
    live(move || {
        let (says, sentence) = says();
        view! {
            <p class=format!("verdict {}", says.class()) role="status">
                {says_shape(says)}
                <span>{sentence}</span>
            </p>
        }
        .into_any()
    })
}

/// The few figures that answer a page, each under its name.
pub fn answer_figures(list: impl Fn() -> Vec<(String, String)> + Send + Sync + 'static) -> AnyView {
    live(move || {
        let figure = |(name, figure): (String, String)| {
            view! {
                <div>
                    <dt>{name}</dt>
                    <dd>{figure}</dd>
                </div>
            }
        };
        view! { <dl class="answer-figures">{list().into_iter().map(figure).collect_view()}</dl> }.into_any()
    })
}

/// Takes one thing out of a list.
#[component]
pub fn TakeOut(
    /// What is taken out.
    name: Signal<String>,
    /// Takes it out.
    on_click: impl Fn() + 'static,
) -> impl IntoView {
    let words = text(move || say!(book::remove_named, name = name.get()));
    view! {
        <button class="quiet take-out" on:click=press(on_click)>
            <svg viewBox="0 0 16 16" aria-hidden="true">
                <path d="M4 4l8 8M12 4l-8 8" />
            </svg>
            <span class="unseen">{words}</span>
        </button>
    }
}

/// The way back, above a screen's heading. Who came from there finds it as it was left.
#[component]
pub fn Back(
    /// Where it leads.
    to: Route,
    /// What is there.
    name: &'static str,
) -> impl IntoView {
    let address = to.address();
    let back = {
        let address = address.clone();
        move |event: ev::MouseEvent| {
            // Whoever wants another tab gets it.
            if !(event.ctrl_key() || event.meta_key() || event.shift_key()) {
                event.prevent_default();
                kept::back(&address);
            }
        }
    };
    view! {
        <a class="back" href=address on:click=back>
            <svg viewBox="0 0 16 16" aria-hidden="true">
                <path d="M10 2.5 4.5 8l5.5 5.5" />
            </svg>
            {name}
        </a>
    }
}

/// The sides of a place; the one that is open is marked.
pub fn sides(place: &'static str, here: Route, sides: &[(Route, &'static str)]) -> AnyView {
    let side = |(route, name): &(Route, &'static str)| {
        let current = (*route == here).then_some("page");
        view! { <a class="chip" href=route.address() aria-current=current>{*name}</a> }
    };
    view! {
        <nav class="chips" aria-label=place>
            {sides.iter().map(side).collect_view()}
        </nav>
    }
    .into_any()
}

/// The screen of a record, or of one that is typed; of one that is gone it says so, with the way back.
pub fn page_of(
    record: Key,
    back: Route,
    name: &'static str,
    page: impl Fn() -> AnyView + Send + Sync + 'static,
) -> AnyView {
    let state = AppState::here();
    let draft = Draft::of_record(record);
    let there = Memo::new(move |_| state.book.with(|book| book.contains(record)) || draft.is_open(state));
    live(move || {
        if there.get() {
            page()
        } else {
            view! {
                <Back to=back name=name />
                <h1>{say!(book::not_in_book)}</h1>
                <p class="hollow">{say!(book::not_in_book_about)}</p>
            }
            .into_any()
        }
    })
}

/// A chip that narrows a list, with how many it leaves.
pub fn filter_chip(
    name: &'static str,
    pressed: Signal<String>,
    needless: Signal<bool>,
    count: Signal<String>,
    choose: impl Fn() + 'static,
) -> AnyView {
    view! {
        <button class="chip" aria-pressed=pressed hidden=needless on:click=press(choose)>
            {name}
            " "
            <span class="chip-count">{count}</span>
        </button>
    }
    .into_any()
}

/// A table with a row for each thing and these heads over its figures; it scrolls by itself where
/// it is wider than the screen.
pub fn wide_table(name: &'static str, class: &'static str, heads: &[&'static str], rows: AnyView) -> AnyView {
    let heads = heads.iter().map(|head| view! { <th scope="col">{*head}</th> }).collect_view();
    view! {
        <div class="wide" tabindex="0" role="region" aria-label=name>
            <table class=class>
                <thead>
                    <tr>
                        <td></td>
                        {heads}
                    </tr>
                </thead>
                <tbody>{rows}</tbody>
            </table>
        </div>
    }
    .into_any()
}
