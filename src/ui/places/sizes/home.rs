//! The front page of Sizes: what the numbers say, what can be asked, and what is known.

use leptos::prelude::*;

use super::asked;
use super::remembered::{answered, point};
use crate::app::route::{self, Route, scope_from_text, scope_text};
use crate::book::{Book, ContainerId, DrinkKind, Scope, SeenPrice};
use crate::drink::sales::{foremost_kind, foremost_size};
use crate::say;
use crate::sizes::decision::{Decision, Finding, Question, Says, Told, findings};
use crate::sizes::side_by_side::sold_in;
use crate::ui::kept;
use crate::ui::live::{live, press, text, when};
use crate::ui::parts;
use crate::ui::parts::{Section, says_shape};
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words::{self, Decisions};

/// The front page of Sizes.
#[component]
pub fn Home() -> impl IntoView {
    let state = AppState::here();
    let chosen = kept::chosen("kind", None, written, read);
    let kind = Memo::new(move |_| {
        state.book.with(|book| {
            let sold = kinds(book);
            chosen.get().filter(|kind| sold.contains(kind)).or_else(|| foremost_kind(book))
        })
    });
    let none = move || kind.get().is_none();
    let teach = || {
        view! {
            <div class="teach">
                <h2>{say!(decide::nothing_sold_yet)}</h2>
                <p>{say!(decide::nothing_sold_yet_about)}</p>
                <p class="actions">
                    <a class="button" href=Route::Drinks.address()>{say!(decide::open_drinks)}</a>
                </p>
            </div>
        }
        .into_any()
    };
    let chip = move |of: DrinkKind| {
        let pressed = text(move || (kind.get() == Some(of)).to_string());
        view! {
            <button class="chip" aria-pressed=pressed on:click=press(move || chosen.set(Some(of)))>
                {words::drink_kind(of)}
            </button>
        }
    };
    let chips = live(move || state.book.with(kinds).into_iter().map(chip).collect_view().into_any());
    view! {
        <h1>{say!(first::sizes)}</h1>
        {when(none, teach)}
        <div class="chips" role="group" aria-label=say!(decide::drink_types) hidden=none>
            {chips}
        </div>
        <div class="panes-three sizes-home">
            {when(move || !none(), move || view! { <Findings kind /> }.into_any())}
            <Asks kind />
            <Data />
        </div>
    }
}

/// A kind of drink as it is kept.
fn written(kind: Option<DrinkKind>) -> String {
    kind.map(|kind| scope_text(Scope::Kind(kind))).unwrap_or_default()
}

fn read(text: &str) -> Option<Option<DrinkKind>> {
    match scope_from_text(text) {
        Some(Scope::Kind(kind)) => Some(Some(kind)),
        _ => None,
    }
}

/// The kinds of drinks that are sold in any size.
fn kinds(book: &Book) -> Vec<DrinkKind> {
    let sold = |kind: &DrinkKind| book.offers().any(|offer| book.belongs(offer.drink, Scope::Kind(*kind)));
    DrinkKind::ALL.iter().copied().filter(sold).collect()
}

/// What the numbers say of a kind of drinks, each opening the decision it is about.
#[component]
fn Findings(kind: Memo<Option<DrinkKind>>) -> impl IntoView {
    let state = AppState::here();
    let (point, answered, day) = (point(state), answered(state), today());
    let found = Memo::new(move |_| {
        let told = Told::default();
        state.book.with(|book| {
            state.ledger.with(|ledger| findings(book, ledger, &told, point, answered, day).unwrap_or_default())
        })
    });
    let list = live(move || {
        let kind = kind.get();
        found.with(|found| {
            let these: Vec<&Finding> = found.iter().filter(|finding| Some(finding.kind) == kind).collect();
            if these.is_empty() {
                return view! { <p class="soft">{say!(decide::no_findings)}</p> }.into_any();
            }
            let rows = these.into_iter().map(|finding| row(state, finding)).collect_view();
            view! { <ul class="rows findings">{rows}</ul> }.into_any()
        })
    });
    view! { <Section heading=say!(decide::numbers_say)>{list}</Section> }
}

fn row(state: AppState, finding: &Finding) -> AnyView {
    let (said, about) = state.book.with(|book| {
        let speaker = &state.speaker.get();
        Decisions { book, speaker }.finding(finding)
    });
    let says = match finding.says {
        Says::DropPays(_) | Says::OnlyPays { .. } => parts::Says::Yes,
        Says::CannotDrop(_) | Says::NotUnder { .. } => parts::Says::No,
        Says::TurnsOnPrice { .. } => parts::Says::Open,
    };
    view! {
        <li>
            <a class="row finding" href=leads_to(finding).address()>
                {says_shape(says)}
                <span class="row-name">{said} <span class="row-about">{about}</span></span>
            </a>
        </li>
    }
    .into_any()
}

/// The page that a finding opens.
fn leads_to(finding: &Finding) -> Route {
    let scope = Scope::Kind(finding.kind);
    match &finding.says {
        Says::CannotDrop(decision) | Says::DropPays(decision) => {
            Route::Decision(route::Decision { scope, goes: size_that_goes(decision), comes: None, stays: None })
        }
        Says::OnlyPays { plan, .. } => {
            Route::Decision(route::Decision { scope, goes: None, comes: None, stays: plan.sizes.first().copied() })
        }
        Says::TurnsOnPrice { .. } => Route::HowMany(scope),
        Says::NotUnder { .. } => Route::PricePoint(scope),
    }
}

fn size_that_goes(decision: &Decision) -> Option<ContainerId> {
    match &decision.question {
        Question::Drop { size } | Question::Switch { from: size, .. } => Some(*size),
        Question::Add { .. } | Question::Keep { .. } => None,
    }
}

/// What can be asked of a kind of drinks.
#[component]
fn Asks(kind: Memo<Option<DrinkKind>>) -> impl IntoView {
    let state = AppState::here();
    let rows = live(move || {
        let scope = kind.get().map_or(Scope::Menu, Scope::Kind);
        let (switch, drop) = state.book.with(|book| first_questions(book, scope));
        let asks = [
            (say!(decide::switch_a_size), Route::Decision(switch)),
            (say!(decide::add_or_drop), Route::Decision(drop)),
            (say!(decide::how_many_sizes), Route::HowMany(scope)),
            (say!(decide::sell_under), Route::PricePoint(scope)),
            (say!(decide::compare_sizes), Route::SideBySide(scope)),
        ];
        let row = |(name, to): (&'static str, Route)| {
            view! {
                <li>
                    <a class="row" href=to.address()>
                        <span class="row-name">{name}</span>
                    </a>
                </li>
            }
        };
        asks.map(row).collect_view().into_any()
    });
    view! {
        <Section heading=say!(decide::ask)>
            <ul class="rows">{rows}</ul>
        </Section>
    }
}

/// The questions to begin with: the size that sells most against the next smaller one, and the size that
/// sells least dropped.
fn first_questions(book: &Book, scope: Scope) -> (route::Decision, route::Decision) {
    let sold = sold_in(book, scope);
    let most = foremost_size(book, scope).or_else(|| sold.last().copied());
    let beside = |among: &[ContainerId]| {
        let place = among.iter().position(|size| Some(*size) == most)?;
        let smaller = place.checked_sub(1).and_then(|place| among.get(place));
        smaller.or_else(|| among.get(place.saturating_add(1))).copied()
    };
    let beside = beside(&sold).or_else(|| beside(&asked::containers(book)));
    let weekly = |size: ContainerId| {
        let here = book.offers().filter(|offer| offer.container == size && book.belongs(offer.drink, scope));
        here.filter_map(|offer| offer.weekly)
            .try_fold(Default::default(), |sum: crate::foundation::measure::Exact, it| sum.plus(it))
    };
    let least = sold.iter().copied().filter(|size| Some(*size) != most).min_by_key(|size| weekly(*size).ok());
    let switch = route::Decision { scope, goes: most, comes: beside, stays: None };
    (switch, route::Decision { goes: least, comes: None, ..switch })
}

/// What is known, each with a figure.
#[component]
fn Data() -> impl IntoView {
    let state = AppState::here();
    let day = today();
    let none = || say!(common::none_yet).to_string();
    let weeks = text(move || match state.book.with(|book| book.weeks().count()) {
        0 => none(),
        weeks => say!(decide::weeks, weeks = weeks),
    });
    let prices = text(move || {
        state.book.with(|book| {
            let newest = book.seen_prices().map(|seen: &SeenPrice| seen.day).max();
            newest.map_or_else(none, |newest| {
                say!(decide::newest_price, prices = book.seen_prices().count(), day = words::day(newest))
            })
        })
    });
    let trials = text(move || {
        let running = state
            .book
            .with(|book| book.trials().filter(|it| it.last.is_none_or(|last| last.plus_weeks(1) > day)).count());
        if running == 0 { say!(common::none).to_string() } else { say!(decide::trials_running, trials = running) }
    });
    let scenarios = text(move || match state.book.with(|book| book.scenarios().count()) {
        0 => none(),
        scenarios => words::count(scenarios),
    });
    let rows = [
        (say!(decide::weekly_sales), weeks, Route::Sales),
        (say!(decide::local_prices), prices, Route::SeenPrices),
        (say!(sales::trials), trials, Route::Trials),
        (say!(sales::scenarios), scenarios, Route::Scenarios),
    ];
    let row = |(name, figure, to): (&'static str, Signal<String>, Route)| {
        view! {
            <li>
                <a class="row data-row" href=to.address()>
                    <span class="row-name">{name}</span>
                    <span class="row-price">{figure}</span>
                </a>
            </li>
        }
    };
    view! {
        <Section heading=say!(decide::your_data)>
            <ul class="rows">{rows.map(row).collect_view()}</ul>
        </Section>
    }
}
